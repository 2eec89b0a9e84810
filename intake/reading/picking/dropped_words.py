"""Words that strike a size out by its name: 'customer dropped the 2.375', 'die 60,3 entfällt'.

Searched in the casefolded words of a sentence, each of its figures written '#'. Beside them the
words that ask us to leave it out, which ask for nothing.
"""

from __future__ import annotations

from ...late_pattern import late_pattern
from ..text.patterns import any_of

_ARTICLE = (
    r"(?:(?:the|that|our|das|die|den|der|dem|celui de|celui du|celui en|le|la|les|du|l|el de|la de"
    r"|el|la|los|las|quello da|quelli da|il|lo|quello|de|het|dat|van de)\s)?"
)
_NOUN = (
    r"(?:tube|tubes|tubing|pipe|size|line|one|ones|od|rohr|rohre|größe|abmessung|tuyau|taille|tubo"
    r"|medida|misura|buis|maat|mandrel|\w*dorn|mandrin|mandril|mandrino|doorn)"
)
_ONE = (
    rf"{_ARTICLE}(?:{_NOUN}\s)?(?:(?:mit|von|de|da|van)\s)?ø?\s?#(?:\s?x\s?#)*"
    rf"(?:\s?(?:\"|''|mm\b|inch\b|in\b|-?er\b))?(?:\s{_NOUN}\b)?"
)
_IT = rf"{_ONE}(?:,?\s?(?:and|und|et|y|e|en|&|,)\s{_ONE})*"
_NOW = (
    r"(?:\s(?:now|just|since|also|all|been|already|unfortunately|after all|gerade|jetzt|nun|leider"
    r"|inzwischen|auch|doch|heute|soeben|eben|bitte|mittlerweile|finalement|maintenant|ya|finalmente"
    r"|ora|net|nu|helaas|inmiddels|toch|meteen|ook))*"
)
_END = r"(?![\w-])"
_NOT_TO = r"(?!\s(?:to|auf|à|a|naar|by|um|for|für|zu)\s(?:the\s)?#)"
"""'They dropped the 2.375 to 2.25' changes it."""
_CLOSES = (
    r"(?=\s?(?:[.;!)\n]|$)|,?\s(?:please|pls|thanks|thank you|for now|bitte|danke|svp|merci"
    r"|por favor|gracias|per favore|grazie|graag|aub|alstublieft)\s?(?:[.;!)\n]|$))"
)
_ALL_BUT = (
    rf"(?:each|all|every(?:thing)?|them|these|apiece)[^.;#]{{0,16}}?,?\s(?:except(?: for)?"
    rf"|apart from|other than|excluding|but not(?: for)?)\s{_IT}{_CLOSES}",
    rf"(?:je|jede[nmrs]?|alle[ns]?|jeweils)[^.;#]{{0,32}}?\s(?:au(?:ß|ss)er|bis auf"
    rf"|mit ausnahme)(?: für| von| vom)?\s{_IT}{_CLOSES}",
    rf"(?:chaque|chacune?|tous|toutes|tout)[^.;#]{{0,24}}?\s(?:sauf|excepté|hormis|à part)"
    rf"(?: pour)?\s{_IT}{_CLOSES}",
    rf"(?:cada|todos|todas)[^.;#]{{0,24}}?\s(?:excepto|salvo|menos)(?: para)?\s{_IT}{_CLOSES}",
    rf"(?:ciascun[oa]?|ognuno|tutti|tutte|ogni)[^.;#]{{0,24}}?\s(?:tranne|eccetto|escluso)"
    rf"(?: per)?\s{_IT}{_CLOSES}",
    rf"(?:elke?|alle|allemaal|ieder)[^.;#]{{0,24}}?\s(?:behalve|uitgezonderd)(?: voor| van)?\s"
    rf"{_IT}{_CLOSES}",
)
"""'One of each except the 35.': and no count of its own behind it."""
_EXCEPTS = late_pattern(r"(?<![\w-])" + any_of(*_ALL_BUT) + _END)
_STRUCK = late_pattern(
    r"(?<![\w-])"
    + any_of(
        *_ALL_BUT,
        # English: who strikes it, how it has gone, what we are to do with it
        r"(?:drop(?:ped|ping|s)?|scrap(?:ped|ping)?|kill(?:ed)?|nix(?:ed)?|cancel(?:l?ed|s)?"
        r"|delete[ds]?|remove[ds]?|strike|struck|scratch(?:ed)?|skip(?:ped)?|omit(?:ted)?|axed"
        r"|withdrew|disregard|ignore|forget(?: about)?|leave (?:off|out)|left (?:off|out)"
        rf"|cross(?:ed)? (?:off|out)|took (?:off|out)|take (?:off|out))\s{_IT}{_NOT_TO}",
        rf"(?:take|took|leave|left|cross(?:ed)?|pull(?:ed)?|cut)\s{_IT}\s(?:off|out)"
        r"(?!\s(?:of (?:the )?(?:rack|shop|stock|tube|bar)|a\b))",
        rf"pull(?:ed)?\s{_IT}\sfrom (?:the|this|their) (?:list|order|job|quote|rfq|bom|project)",
        r"(?:no longer (?:need|want|require)s?|(?:don'?t|doesn'?t|do not|won'?t) (?:need|want)"
        r"|(?:don'?t|do not|no need to|please don'?t) (?:quote|price|offer|bother with|include)"
        rf"|no (?:longer any )?(?:need|use) for|no quote for)\s{_IT}"
        r"(?:\s(?:any ?more|any longer|after all|now))?",
        rf"{_IT}(?:(?:'s|\s(?:is|are|was|were|has|have|got|gets|just|will be|can be)))"
        rf"{_NOW}\s(?:dropped|cancell?ed|scrapped|deleted|removed|killed|withdrawn|dead|axed|nixed"
        r"|off the (?:list|table|order|job|quote|project|cards)|struck(?: off| out)?|left (?:off"
        r"|out)"
        r"|no longer (?:needed|required|wanted|on|part)|not (?:needed|required|wanted)"
        r"|(?:gone|fallen|dropped) (?:away|out|through|off))",
        rf"{_IT}\s(?:fell (?:off|through|away|out)|went away|dropped (?:out|off)|can come off"
        r"|comes off)",
        rf"{_IT}\s(?:is|are) off,?(?:\sso)?(?:\splease)?\s(?:don'?t|do not|no need to) (?:quote"
        rf"|price)"
        r" (?:it|that|them|those)",
        # German
        rf"{_IT}\s(?:ist|sind|wurde|wurden|wird|werden|hat sich|haben sich){_NOW}(?:\s(?:vom"
        r" (?:end)?kunden|von der konstruktion))?\s(?:weggefallen"
        r"|entfallen|gestrichen|storniert|raus|hinfällig|erledigt|abgesagt|zurückgezogen"
        r"|nicht mehr (?:nötig|erforderlich|benötigt|aktuell|dabei))",
        rf"{_IT}\s(?:fällt|fallen){_NOW}\s(?:weg|aus|raus|flach) | {_IT}\s(?:entfällt|entfallen)",
        rf"{_IT}\s(?:brauch\w*|benötig\w*)\s(?:wir|ich){_NOW}\s(?:nicht|nicht mehr)",
        rf"(?:hat|haben)(?:\suns)?{_NOW}\s{_IT}{_NOW}\s(?:gestrichen|storniert|rausgenommen"
        r"|herausgenommen|abgesagt|zurückgezogen|fallen ?(?:ge)?lassen|abgekündigt)",
        rf"{_IT}{_NOW}\s(?:weglassen|streichen|rausnehmen|nicht (?:mit )?anbieten|ignorieren"
        r"|vergessen)",
        rf"(?:streichen|vergessen|ignorieren)\s(?:sie\s)?{_NOW.lstrip()}\s?{_IT}",
        rf"lassen sie{_NOW}\s{_IT}\s(?:bitte\s)?(?:weg|raus)",
        # French
        r"(?:a|ont|avons|vient d'|viennent d')\s?(?:\w+\s)?(?:abandonn(?:é|er)|annul(?:é|er)"
        r"|supprim(?:é|er)|retir(?:é|er)"
        rf"|laissé tomber|enlevé|sorti)\s{_IT}",
        rf"{_IT}\s(?:est|sont|a été|ont été|vient d'être){_NOW}\s(?:annulée?s?|abandonnée?s?"
        r"|supprimée?s?|retirée?s?|tombée?s? à l'eau)",
        rf"{_IT}\s(?:tombe à l'eau|n'est plus (?:nécessaire|d'actualité|demandé|à chiffrer|utile)"
        r"|saute)",
        r"(?:supprimez|retirez|annulez|oubliez|enlevez|laissez tomber|on abandonne|on laisse tomber"
        rf"|ne chiffrez (?:pas|plus)|(?:nous n'avons |on n'a )?plus besoin)\s{_IT}",
        # Spanish
        r"(?:ha|han|hemos)\s(?:anulado|cancelado|quitado|eliminado|retirado|descartado|tachado)\s"
        + _IT,
        rf"{_IT}\s(?:se ha|ha sido|está|queda|se|ha){_NOW}\s(?:cancela(?:do)?|anula(?:do)?"
        r"|descarta(?:do)?|elimina(?:do)?|cae|caído|fuera)",
        rf"{_IT}\sya no (?:hace falta|va|se necesita|lo necesitamos|la necesitamos|es necesario"
        r"|lo queremos)",
        r"(?:quiten|quitad|quite|eliminen|elimine|olviden|olvide|olvidad|cancelen|cancele|anulen"
        r"|no cotice[ns]?|no coticéis|no incluyan|ya no (?:necesitamos|queremos|hace falta))"
        rf"\s{_IT}",
        # Italian
        r"(?:ha|hanno|abbiamo)\s(?:tolto|annullato|cancellato|eliminato|abbandonato|scartato"
        rf"|stralciato)\s{_IT}",
        rf"{_IT}\s(?:è stato|è stata|è|viene|sono stati){_NOW}\s(?:tolt[oai]|annullat[oai]"
        r"|cancellat[oai]|eliminat[oai]|abbandonat[oai]|stralciat[oai]|saltat[oai]|fuori)",
        rf"{_IT}\s(?:salta|non (?:ci )?serve più|non è più necessario|decade)",
        r"(?:togliete|tolga|togli|eliminate|lasciate perdere|lasciate fuori|cancellate|annullate"
        rf"|non quotate|non offrite|dimenticate|non (?:ci )?serve più)\s{_IT}",
        # Dutch
        rf"(?:heeft|hebben){_NOW}\s{_IT}{_NOW}\s(?:laten vallen|geschrapt|geannuleerd|eraf gehaald"
        r"|eruit gehaald|ingetrokken)",
        rf"{_IT}\s(?:is|zijn|werd|wordt){_NOW}\s(?:vervallen|geschrapt|geannuleerd|van de baan"
        r"|niet meer nodig|eraf|eruit)",
        rf"{_IT}\s(?:vervalt|vervallen|gaat niet door|hebben we{_NOW} niet(?: meer)? nodig)",
        rf"{_IT}\s(?:mag|kan|kunt u|mogen){_NOW}\s(?:eraf|weg|eruit|weggelaten worden|vervallen"
        r"|uit de offerte|weglaten|schrappen)",
        rf"(?:schrap|vergeet|annuleer)\s{_IT} | laat\s{_IT}{_NOW}\s(?:maar\s)?(?:weg|eruit|vallen)",
    )
    + _END
)
_OUT_OF = (
    r"(?:\s(?:off|out|from|out of|off of)(?:\s(?:of\s)?(?:the|your|this)"
    r"\s(?:quote|quotation|offer|list|rfq|price))?|\s(?:from|in|on) (?:the|your) (?:quote"
    r"|quotation|offer))?"
)
_THAT = r"(?:\s(?:that|it|this|them|those|these)(?:\s(?:one|ones|size|line))?)?"
_ASKS_FOR_NONE = late_pattern(
    r"(?<![\w-])(?:so\s|and\s|please\s|just\s|bitte\s|also\s|donc\s|así que\s|quindi\s|dus\s)*"
    + any_of(
        rf"(?:leave|keep|take|drop|strike|cross|skip|omit|remove){_THAT}{_OUT_OF}",
        rf"(?:don'?t|do not|no need to|needn'?t|please don'?t) (?:quote|price|offer|bother with"
        rf"|include|bother quoting){_THAT}{_OUT_OF}",
        rf"no (?:need for a |need of a )?(?:quote|price)(?:\s(?:needed|required|for){_THAT})?",
        r"(?:off|from|out of) (?:the|your|this|that) (?:quote|quotation|offer|list|rfq|order|job)",
        r"(?:just |only )?(?:quote|price) (?:me |us )?(?:just |only )?(?:the )?"
        r"(?:other|remaining|rest|first)(?: (?:two|three|four|ones?|sizes?))?",
        r"(?:everything|all) (?:else|the rest)(?: (?:is|stays|remains|stands)(?: the same| as is"
        r"| unchanged| good)?)?",
        r"(?:das|die|den|der|es)?\s?(?:also )?(?:bitte )?(?:nicht (?:mit )?anbieten|weglassen"
        r"|rauslassen|streichen|aus dem angebot (?:nehmen|lassen))",
        r"ne (?:le|la|les|l') ?(?:chiffrez|cotez|mettez|proposez|incluez) (?:pas|plus)"
        r"(?: (?:dans|sur) (?:le|votre) devis)?",
        r"(?:ne pas|inutile de|merci de ne pas) (?:le |la |les |l')?(?:chiffrer|coter|mettre"
        r"|inclure)(?: (?:dans|sur) (?:le|votre) devis)?",
        r"(?:retirez|enlevez|sortez|laissez)-l[ea]s?(?: (?:du|de votre) devis| de côté)?"
        r" | du devis | de votre devis | le reste (?:est )?inchangé",
        r"no (?:lo|la|los|las) (?:cotice[ns]?|coticéis|incluya[ns]?|incluyáis|oferten?|pongan?)"
        r"(?: en (?:la oferta|el presupuesto))?",
        r"(?:déjen?l[oa]s?|quíten?l[oa]s?|sáquen?l[oa]s?)(?: fuera)?(?: de la oferta"
        r"| del presupuesto)? | de la oferta | del presupuesto",
        r"(?:lasciatel[oaie]|toglietel[oaie]) ?(?:fuori|via)?(?: dall'offerta| dal preventivo)?",
        r"non (?:l[oaie] |ce l[oaie] )?(?:quotate|offrite|mettete|quotatel[oaie]|inserite|serve"
        r" (?:la )?quotazione)(?: (?:nell'offerta|nel preventivo))? | dall'offerta"
        r" | dal preventivo",
        r"(?:die|deze|dat|dit)?\s?(?:mag|kan|hoeft|kunt u|mogen|hoeven)(?: dus)? (?:uit de offerte"
        r"|niet in de offerte|eraf|eruit|er niet bij|niet mee|niet aangeboden te worden"
        r"|uit de offerte (?:laten|weglaten))",
        r"laat (?:die|deze|dat)(?: maar)? (?:weg|eruit|buiten de offerte) | uit de offerte",
        r"niet (?:aanbieden|offreren)",
    )
    + _END
)


def strikes_out(words: str) -> bool:
    """Whether a sentence strikes out the sizes that its figures, written '#', name."""
    return _STRUCK.search(words) is not None


def without_leaving_out(words: str) -> str:
    """The words without those that ask us to leave something out: 'so don't quote that one'."""
    return _ASKS_FOR_NONE.sub(" ", _EXCEPTS.sub(" ", words))
