"""Words by which a reply relies on the mail that it quotes, in the shop's usual languages.

Data only. A sentence that names the rest (REST) and says that it stays (STAYS), in either order,
takes over all that the new words leave open; one that names a field and says that it stays takes
over that field. Matched without regard to case, within one sentence.
"""

from __future__ import annotations

# "Everything else", but not "the rest of the order".
REST = (
    r"\b(?:every ?thing|all|anything|nothing) else\b",
    r"\b(?:all )?the (?:rest|others?|remainder)\b(?! of (?!it\b|them\b|(?:the|your|my|our) (?:"
    r"specs?|figures?|data|details|dimensions|numbers|values|offer|quote|quotation|mail|enquiry)))",
    r"\b(?:all )?(?:other|remaining) (?:figures?|data|details?|dimensions?|values?|specs?|"
    r"numbers?|points?|things?|parameters?)\b|\botherwise\b|\brest (?:stays?|remains?|is|as|the "
    r"same|unchanged|like)\b",
    r"\b(?:der|den|das|die|alle[sn]?) (?:rest|restlichen?|übrige[nrs]?|anderen?|andere[nrs]?|"
    r"weitere[nrs]?)\b|\bansonsten\b|\bsonst(?:ige[snr]?| alles)?\b|\brest\b(?=[^.?!]{0,12}"
    r"\b(?:bleibt|wie|passt|stimmt|unverändert|gleich|ok))",
    r"\b(?:tout )?le reste\b(?! d)|\bles autres (?:cotes|données|dimensions|valeurs|"
    r"caractéristiques|paramètres)\b|\bpour le reste\b|\btout (?:autre|le surplus)\b",
    r"\b(?:todo )?lo (?:demás|demas|restante)\b|\bel resto\b(?! del? (?:pedido|mes|material))|"
    r"\b(?:los|las) demás (?:datos|medidas|dimensiones)\b",
    r"\b(?:tutto )?il resto\b(?! del)|\bper il resto\b|\ble altre (?:misure|quote|dimensioni)\b|"
    r"\btutto il rimanente\b",
    r"\bde rest\b(?! van)|\bal het (?:andere|overige)\b|\b(?:alles? anders|voor de rest|voor het "
    r"overige|het overige|overige gegevens|de overige \w+|verder alles)\b",
    r"\bresten\b(?! av)|\bi övrigt\b|\bövriga \w+\b|\ballt annat\b|\bi øvrigt\b|\bellers\b|"
    r"\balt andet\b|\bfor øvrig\b|\balt annet\b",
    r"\breszta\b|\bpozostałe (?:\w+)?|\bwszystko inne\b|\bo resto\b(?! d)|\btudo o (?:mais|resto)"
    r"\b|\b(?:os )?demais (?:dados|medidas)?\b|\bzbytek\b|\bostatní\b",
)  # fmt: skip

STAYS = (
    r"\b(?:the )?same\b|\bas (?:quoted|before|offered|is\b|it (?:is|was)|they (?:are|were)|"
    r"agreed|discussed|stated|in (?:the|your|my|our)|per|below|above|you (?:quoted|offered|have|"
    r"wrote))|\b(?:still )?(?:applies|apply|valid|(?:still|holds?) good)\b|"
    r"\b(?:stays?|staying|remains?|remaining|unchanged|keep|kept|identical|holds?|stands?|like (?:"
    r"it was|before|in|you quoted))\b|\b(?:is|are|was|looks?|'s) (?:still )?(?:all )?(?:right|"
    r"correct|ok(?:ay)?|fine|good|spot on)\b|\bno (?:other )?changes?\b",
    r"\b(?:bleib\w*|unverändert|gleich\w*|identisch|passt|stimmt|beibehalten|gilt|gelten)"
    r"\b|\bwie (?:gehabt|"
    r"angeboten|vorher|bisher|besprochen|zuvor|im (?:angebot|letzten)|in (?:ihrem|eurem|meiner|der)"
    r"|bei|oben|unten|gehabt|von)\b",
    r"\b(?:reste(?:nt)?|demeure(?:nt)?)\b|\bsans changement|\binchang\w+|\bidentiques?\b|"
    r"\b(?:est|sont) (?:bon|bons|correcte?s?|ok|exacte?s?)\b|\bcomme "
    r"(?:dans|sur|avant|prévu|ci-dessous|plus bas|"
    r"indiqué|devisé|votre)\b|\b(?:pareil|même)s?\b|\bne change\w* pas\b",
    r"\b(?:igual(?:es)?|qued[ao]n?|sigue[n]?|mantien\w+|correct[oa]s?)\b|\bsin cambios?\b|"
    r"\b(?:vigentes?|válid[oa]s?)\b|\bcomo (?:abajo|en|antes|estaba|ofert\w+|su|la)\b|\b(?:lo "
    r")?mism[oa]s?\b|\bno cambian?\b",
    r"\b(?:rimane|rimangono|resta(?:no)?|uguale|uguali|invariat\w+|stess\w+|identic\w+|giusto|"
    r"corrett\w+|confermat\w+)\b|\bcome (?:da|prima|nel|nella|sopra|sotto|offerto)\b|\bva bene\b|"
    r"\bnon cambia(?:no)?\b",
    r"\b(?:blijf(?:t)?|blijven|hetzelfde|ongewijzigd|gelijk|klopt|kloppen|idem|geldt)\b|\bzoals "
    r"(?:in|hieronder|"
    r"eerder|aangeboden|geoffreerd|voorheen|uw|het)\b",
    r"\b(?:samma|oförändra\w+|stämmer|kvarstår|uændre\w+|uendre\w+|samme|forbliver|bliver|blir|"
    r"förblir)\b|\bsom (?:innan|tidigere|før|förut|i|tilbudt)\b",
    r"\b(?:bez zmian|zostaje|pozostaj\w+|tak samo|jak (?:w|poprzednio|było)|zgadza|mantém|mantêm|"
    r"mantem|fica|ficam|permanece\w*|sem alteraç\w+|como (?:no|na|antes)|beze změny|stejn\w+)\b",
)  # fmt: skip

# Enough by themselves: "same but 1.5 wall", "nur die Wandstärke ändert sich".
SAME_BUT = (
    r"\b(?:(?:every ?thing|all|exactly) )?(?:the )?same\b[^.;?!]{0,40}\b(?:but|except|only|just "
    r"with|apart from|with the exception)\b|\bidentical\b[^.;?!]{0,30}\b(?:but|except)\b|"
    r"\b(?:the only (?:change|difference)|only (?:the )?(?:wall|od|radius|clr|material|diameter|"
    r"thickness)[^.;?!]{0,20}\b(?:changes|changed|is (?:wrong|different|new)))\b|\bno other "
    r"changes\b|\bnothing else changes\b",
    r"\b(?:gleich\w*|derselbe|dasselbe|genauso|identisch)\b[^.;?!]{0,30}\b(?:nur|aber|bis auf|"
    r"außer|jedoch|allerdings)\b|\bnur (?:die |der |das )?(?:wand\w*|durchmesser|radius|biege\w*|"
    r"werkstoff|material)\b[^.;?!]{0,20}\b(?:ändert|anders|falsch|neu)\b",
    r"\b(?:même chose|pareil|idem|le même|la même|identique)\b[^.;?!]{0,30}\b(?:mais|sauf|à part|"
    r"excepté)\b|\bseule? (?:l'|le |la )?[^.;?!]{0,20}\bchange\b",
    r"\b(?:mism[oa]|igual|idéntico)\b[^.;?!]{0,30}\b(?:pero|salvo|excepto|menos)\b|\bsolo cambia\b",
    r"\b(?:stess\w+|uguale|identic\w+)\b[^.;?!]{0,30}\b(?:ma|tranne|salvo|però|eccetto)\b|"
    r"\bcambia solo\b",
    r"\b(?:(?:het|de)?zelfde|hetzelfde|idem)\b[^.;?!]{0,30}\b(?:maar|behalve|alleen|op .{1,12} na)"
    r"\b|\balleen (?:de )?(?:wand\w*|diameter|straal|radius)[^.;?!]{0,20}\b(?:verandert|anders)\b",
    r"\b(?:samma|samme)\b[^.;?!]{0,30}\b(?:men|utom|bortset|bare|unntatt)\b|\b(?:to samo|tak "
    r"samo)\b[^.;?!]{0,30}\b(?:ale|tylko|oprócz)\b|\b(?:mesmo|igual)\b[^.;?!]{0,30}\b(?:mas|exceto"
    r")\b",
)  # fmt: skip

# "Forget everything below except the radius": what is named behind it stays.
ALL_BUT = (
    r"\b(?:forget|ignore|disregard|scrap|drop|bin|strike|skip) (?:about )?(?:everything|all|the "
    r"rest|anything)\b[^.;?!\d]{0,48}\b(?:except|but|bar|apart from|other than|save)\b(?: for)?",
    r"\b(?:vergessen|vergiss|vergesst|ignorier\w*|streich\w*) (?:\w+ ){0,3}alles\b"
    r"[^.;?!\d]{0,48}\b(?:bis auf|außer|ausser)\b|\balles\b[^.;?!\d]{0,48}\b(?:hinfällig|"
    r"vergessen|ignorieren|überholt|ungültig)\b[^.;?!\d]{0,16}\b(?:bis auf|außer|ausser)\b",
    r"\b(?:oubliez|oublie|ignorez|ne tenez pas compte de) tout\b[^.;?!\d]{0,48}\b(?:sauf|à part|"
    r"excepté|hormis)\b",
    r"\bolvid\w+ todo\b[^.;?!\d]{0,48}\b(?:salvo|excepto|menos)\b",
    r"\b(?:dimentic\w+|ignor\w+) tutto\b[^.;?!\d]{0,48}\b(?:tranne|salvo|eccetto)\b",
    r"\b(?:vergeet|negeer) alles\b[^.;?!\d]{0,48}\b(?:behalve|uitgezonderd)\b",
)  # fmt: skip

# A field by name, to be said that it stays.
FIELDS: dict[str, str] = {
    "od": r"\b(?:o\.?d\.?|(?:outside |tube )?diameters?|dia|(?:außen|rohr)?durchmesser|diamètre|"
    r"diámetro|diametro|buitendiameter|ytterdiameter|średnica|diâmetro)\b",
    "wall": r"\b(?:wall(?: thickness)?|thickness|how thick|gauge|wandst\w+|wanddicke|wie dick|"
    r"rohrwand|wand|épaisseur|paroi|espesor|grosor|pared|spessore|parete|hoe dik|"
    r"wanddikte|väggtjocklek|godstykkelse|grubość|espessura)\b",
    "clr": r"\b(?:clr|\w{0,10}radi(?:us|i|en|ussen)|"
    r"cent(?:er|re) ?line|rayons?|radios?|raggio?|(?:buig|bocht)?stra(?:al|len)|"
    r"radie|promień|raio)\b",
    "material": r"\b(?:materials?|grade|alloy|werkstoff|matière|matériau|materiale?s?|nuance|"
    r"materiaal|materiał|stahlsorte|güte)\b",
    "quantity": r"\b(?:qty|quantit\w+|stückzahl|menge|anzahl|cantidad|aantal|antal|ilość|"
    r"quantidade)\b",
}  # fmt: skip

# So plain a change of the request that a figure beside it replaces the quoted one.
CORRECTS = (
    r"\bchang(?:e|ed|es|ing) (?:it |that |this |(?:the )?\w+ )?(?:to|from)\b|\binstead\b|\bmake (?:"
    r"it|that)\b|\bshould (?:be|have been|read)\b|\b(?:wrong|correction|corrected|typo|mistake|"
    r"meant)\b|\bswitch(?:ed)? to\b",
    r"\b(?:geändert|ändern|ändert|korrigier\w+|korrektur|stattdessen|anstatt|statt|falsch|sondern)\b",
    r"\b(?:passer à|passe à|plutôt|erreur|corriger|correction|au lieu de|remplacer|modifier)\b",
    r"\b(?:cambi(?:ar|en|e|ado|amos)|en vez de|en lugar de|corregir|corrección|error)\b",
    r"\b(?:cambi(?:are|ate|ato|amo)|invece|corregg\w+|correzione|errore|diventa)\b",
    r"\b(?:wordt|worden|wijzig\w+|in plaats van|gecorrigeerd|correctie|fout)\b",
    r"\b(?:istället|ändra\w*|ændre\w*|i stedet|zamiast|zmian\w+|zmieni\w+|mudar|alter\w+)\b",
)  # fmt: skip

# Weaker: a figure that nothing names, and that is near to a quoted one, takes its place.
CHANGES = (
    *CORRECTS,
    r"\b(?:now|is now|it's|no sir|correct|went to|go(?:ing)? (?:up|down|with|to))\b|^\W*(?:no|nope|"
    r"nein|non|nee|nej|nie)\b",
    r"\b(?:jetzt|nun|neu|richtig|doch|devient|maintenant|désormais|finalement|ahora|mejor|adesso|"
    r"ora|nu|moet|teraz|agora)\b",
)  # fmt: skip

# Kept of a quoted question, so that the number below it is a count.
HOW_MANY = (
    r"\bhow many(?: mandrels| pieces| pcs| of them)?\b|\b(?:qty|quantity)\b",
    r"\bwie ?viele?(?: dorne?| stück)?\b|\bstückzahl\b|\bcombien(?: de mandrins)?\b|\bquantité\b",
    r"\bcu[áa]nt[oa]s(?: mandriles)?\b|\bcantidad\b|\bquant[ie](?: mandrini)?\b|\bquantità\b",
    r"\bhoeveel(?: doornen)?\b|\baantal\b|\bhur många\b|\bantal\b|\bhvor mange\b|\bile\b",
)  # fmt: skip

# How a mail asks without a question mark.
NEEDS = (
    r"\b(?:we|i) (?:still |also |only )?(?:need|require|miss|lack)\b|\b(?:please|kindly) (?:tell|"
    r"let|send|advise|confirm|give|state|specify)\b|\bmissing\b|\bneed to know\b",
    r"\b(?:brauchen|benötigen|fehl(?:t|en)|bitte (?:teilen|nennen|geben|ergänzen))\b",
    r"\b(?:il nous (?:faut|manque)|merci de (?:nous |me )?(?:préciser|indiquer|donner|communiquer"
    r"|confirmer)|manquent?|besoin)\b",
    r"\b(?:necesitamos|nos falta|faltan?|indíquenos|díganos|(?:ruego|rogamos) (?:nos )?indi\w+|"
    r"(?:ci|mi) (?:indichi|indicate|dica|dite)|laat (?:ons|me) weten|geef \w+ nog|"
    r"ci serve|ci servono|ci manca|mancano?|"
    r"indicateci|hebben we nodig|missen|ontbreekt|graag nog|behöver|saknar|mangler|"
    r"potrzebujemy|precisamos)\b",
)  # fmt: skip
