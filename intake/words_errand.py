"""Words that tell what a message is about: the tool, the tube, the bend.

Data only, in the shop's usual languages; from memory and from labelled messages.
Patterns are matched without regard to case, in one sentence at a time.
"""

from __future__ import annotations

TOOL = (
    r"\bmandr[ei]l{1,2}e?s?\b", r"\bmandrals?\b", r"\b(?:mandrl|madrel|manderl|manrel"
    r"|mandrelle)s?\b", r"\bmandrins?\b", r"\bmandrin[oi]\b",
    r"\bmandriles\b", r"\banim[ae]\b(?! (?:e|gemella))",
    r"\b\w{0,12}dorn(?:e|en|es|s)?\b", r"\b(?:buig)?doorn(?:en|tje)?\b",
    r"\btrzpie(?:ń|nia|ni|nie|niem|niowi)\b",
    r"\bdie ?sets?\b", r"\btooling\b", r"\bbieg(?:e)?werkzeuge?\b", r"\boutillages? de cintrage\b",
    r"\b(?:utillaje|herramental|matrices?) (?:de|para) (?:curvado|doblado|doblar|tubo|cintr)",
    r"\bbuiggereedschap", r"\bplugs? (?:not|or|and) ball|\bball (?:not|or) plug",
    r"芯棒|芯金|マンドレル|心轴", r"\b(?:taivutus)?tuurn\w+|\bmalafa\w*|\bohýbac\w+ trn\w*|"
    r"\b(?:hajlító)?tüsk\w+|\bbøyedor\w*|\bbukkedorn\w*",
)  # fmt: skip

# A radius: who gives one wants a tube bent. A refund or an offer of tube seldom does.
RADIUS = (
    r"\b(?:clr|c\.?l\.?r\.|radius|radii|cent(?:er|re)[- ]?lines?|rayons?|radio|raggi?o?|straal|"
    r"radien?|promie\w+|raio|poloměr|biegeradius|mittelradius)\b",
    r"\b(?:rad\.?|centers?|centres?|c/l|die|shoe|former|eje|axis)\b[^\n\d]{0,30}\.?\d",
    r"\d[\d/., -]{0,10}\s?(?:\"|”|″|''|in|inch|inches|mm)?\s?(?:-\s?)?(?:clr\b|radi|rad\b|cent|c/l|"
    r"die\b|shoe\b|mittig|to (?:the )?(?:cent|mid)|on center|bends?\b|elbow)",
    r"\br ?[=:]? ?\d|\b\d(?:[.,]\d+)? ?x? ?d\b|\b(?:x|times) (?:the )?(?:od|dia)|"
    r"\btimes\b[^.\n]{0,12}\b(?:od|d|dia)",
    r"\b(?:on|round|around|auf|sur|su|op|på|over) (?:an? |the |einen? |un |una |een "
    r")?\d[\d./]*\b(?! ?(?:tubes?|pipes?|pieces|orders?|may|june|july))",
    r"\d\s?[x×*]\s?\.?\d[\d.,]*\s?(?:mm)?\s?[x×*/]\s?\d",
)

# A dimension by its name and in figures: an answer to "which wall?".
NAMED_FIGURES = (
    r"\b(?:o\.?d\.?|wall|wt|thick\w*|outside|wandst\w*|außen\w*|épaisseur|ép\.|espesor|pared|"
    r"spessore|wanddikte|wand|ścian\w*|grubość|godstjocklek|parede)\b[^\n\d]{0,15}\.?\d",
)

# A certain mandrel, known to both: "the 1.5 x .065", "der Dorn". Who asks for one says "a".
DEFINITE = (
    r"\b(?:my|our) (?:\w+ )?mandrels?\b(?! (?:we|i) (?:need|want))|\b(?:unser|mein) (?:\w+ "
    r")?\w{0,8}dorn\b|\b(?:notre|mon) mandrin\b|\b(?:nuestro|mi) mandril\b|\b(?:nostro|mio) "
    r"mandrino\b|\b(?:onze|mijn) (?:\w+ )?doorn\b",
    r"\b(?:the|that|those|these|your) (?:\w+ )?(?:mandrels?|tool)\b(?! (?:we|i) (?:need|want))|"
    r"\b(?:the|that|your|those|the two) (?:\d[\d /.-]{0,10}[\"”]? ?(?:x|by) ?\.?\d[\d.]*|"
    r"\d*[./]\d+)[\"”]?(?:'s)?(?! ?(?:od|wall|clr|die|tube|job|in|inch|mm|radius|to|is|gauge|ga|x|"
    r"[\d/.-]))",
    r"\b(?:der|den|dem|ihr|ihren|ihrem) (?:\w+ )?\w{0,8}dorn\b|\b(?:le|les|du|votre|vos|des) "
    r"mandrins?\b|(?:\b(?:le|el|los|der|den|il|i|het)|^\W*(?:de|die)) \d+(?:[.,]\d+)? ?x|\b(?:el|"
    r"los|del|al) mandril(?:es)?\b|\b(?:il|i|dei|del|vs\.?) mandrin[oi]\b|\b(?:l'|le |"
    r"dell')anim[ae]\b|\b(?:de|jullie|uw) doorn(?:en)?\b|\bdornen\b|\bo mandril\b",
)  # fmt: skip

# How the shop deals as a rule: payment, shipping, what it takes on.
HABIT = (
    r"\bdo (?:you|y'all|youse) (?:guys |also |ever )?(?:take|accept|ship|offer|make|charge|invoice|"
    r"bill|work with|deliver|open|run|repair|regrind|rent|hire|post|mail|send (?:to|out|abroad)|"
    r"courier|dispatch)\b|\b(?:nehmen|machen|liefern|"
    r"versenden|akzeptieren) sie\b|\b(?:acceptez|livrez|(?<!que )faites|prenez|expédiez)-vous\b|"
    r"\b(?:aceptan|hacen|envían|trabajan con|cobran)\b|\b(?:accettate|fate|spedite|lavorate)\b|"
    r"\b(?:is|are|would|will|does|do|should) (?:the )?(?:vat|gst|sales tax|postage|carriage|sh"
    r"ipping|"
    r"duty|customs)\b|\b(?:is it|is that|do (?:i|we) pay|can (?:i|we) pay|pay) (?:by |with |in"
    r" )?(?:"
    r"card|cash|paypal|bank transfer|cheque|check|invoice)\b(?![^.?\n]{0,30}\b(?:invoice|order"
    r"|po)\b)|\b(?:do|would|will) (?:i|we) (?:have to|"
    r"need to|must) pay\b|\b(?:could|can|would|will) you (?:post|ship|mail|send) (?:it |one |t"
    r"hem )?to\b",
    r"\bare (?:you|y'all|ye)(?: guys| folks| lads)? (?:still |also |ever )?(?:open|closed)\b|"
    r"\b(?:opening|business|office|shop) (?:hours|times)\b|"
    r"\b(?:habt ihr|haben sie)\b[^.?\n]{0,60}\b(?:offen|geöffnet|auf|zu"
    r"|geschlossen)\b|\böffnungszeiten\b|\bêtes-vous (?:ouverts?|fermés?)\b|\bhoraires\b|"
    r"\b(?:abren|están abiertos|horario)\b|\b(?:siete|è) apert[oi]\b|\borari(?:o)? di apertura\b|"
    r"\b(?:zijn jullie|bent u) (?:open|gesloten|dicht)\b|\bopeningstijden\b",
    r"\b(?:leveren|verzenden|accepteren|sturen) jullie\b|"
    r"\b(?:kan|moet) (?:ik|wij) (?:met \w+ |vooraf )?betalen\b|"
    r"\b(?:accepteert|levert|doet|maakt|verzendt) u\b|\b(?:skickar|levererar|tar|gör) ni\b|\bczy "
    r"(?:wysyłacie|akceptujecie|robicie)\b|\b(?:aceitam|enviam|fazem)\b",
)  # fmt: skip

DRAWING = (
    r"\b(?:attached|enclosed|see|per) (?:the )?(?:\w+ )?(?:print|drawing|drg|dwg|sketch|pdf|file|"
    r"sheet|spreadsheet|list|photo|step|dxf)s?\b|\bas per (?:print|drawing|attach)|\battached\b|"
    r"\b(?:zeichnung|skizze|anbei|anhang|liste)\b|\b(?:plan|dessin|croquis|pièce jointe|"
    r"ci-joint)\b|\b(?:plano|adjunto|dibujo)\b|\b(?:disegno|allegat[oa])\b|\b(?:tekening|bijlage|"
    r"bijgevoegd)\b|\b(?:rysun|załącz)",
)  # fmt: skip

# Words of bending that make figures a bend to judge.
BENDING = (
    r"\bclr\b|\bcent(?:er|re)[- ]?line\b|\bradi(?:us|i)\b|\brad\b|\bbend|\bbent\b|\bd of bend\b|"
    r"\b\d(?:\.\d)?\s?d\b|\bformer\b|\b(?:the|a|an|my|our|your|this|that|same|bend(?:ing)?|inch|"
    r"\d\"?) dies?\b|\bdie ?sets?\b|\b(?:biege|radius|mittellinie)|\brayon\b|\bcintr|\bradio\b|"
    r"\bcurv|\bdoblar|\braggio\b|\bpieg|\bstraal\b|\bbuig|\bpromie|\bgi[ęe]c",
)  # fmt: skip

# Figures as only a tube has them: "2 x .083", "38x1,5", "R 57".
TUBE_FIGURES = (
    r"\d\s?[\"”″']?\s?(?:x|×|\*|by|/)\s?0?[.,]\d{2,4}|\d[.,]\d+\s?(?:mm)?\s?[x×*]\s?\d|"
    r"\d\s?(?:mm)?\s?[x×*]\s?\d+[.,]\d|(?<![\d$€£])\.\d{2,3}\b|\br ?=? ?\d{2,3}\b|[øØ⌀φΦ]\s?\d|"
    r"\d/\d+\"?\s?[x×]"
)

# What makes figures a tube's: without one of these "9 x 13" may be a baking tin.
TUBE = (
    r"\bo\.?d\b|\bi\.?d\b|\bwall\b|\bwt\b|\bclr\b|\bgau?ge?\b|\b\d+ ?ga\b|\b[sb]wg\b|\bsch(?:ed|"
    r"edule)?\b|\b(?:dn|nps|nb) ?\d|\btub(?:e|es|ing|o|os|i)\b|\bpipes?\b|\w*rohre?s?\b|"
    r"\btuyaux?\b|\bbuis|\brur[aęy]\b|\brör\b|\bconduit\b|\bhoops?\b|管",
    r"\bsteel|\bstainless|\binox|\bss ?3\d\d|\balum|\balu\b|\bcopper|\bbrass|\bchro?mol+y|"
    r"\bwand(?:stärke|dicke|dikte|ung)?\b|\bparoi\b|\bépaisseur|\bpared\b|\bespesor|\bparete\b|"
    r"\bspessore|\brm ?=? ?\d{2,3}\b|\bda ?=? ?\d{2,3}(?:[.,]\d)?[,;] ?(?:s|t|w) ?=? ?\d|"
    r"\bmoly\b|\b4130|\bdom\b|\bh?r?erw\b|\bhrew\b|\b30[34]l?\b|\b316|\b321\b|\b6061|\b1\.\d{4}\b|"
    r"\b[se]t? ?[23]\d{1,2}\b|\bstahl|\bedelstahl|\bkupfer|\bacier|\blaiton|\bcuivre|\bacero|"
    r"\bacciaio|\brame\b|\brvs\b|\bstaal|\bti\b|\btitan|\bcuni",
    TUBE_FIGURES,
)  # fmt: skip

# Solid sections, and what a machine can take: their figures are no tube to be bent.
SOLID = (
    r"\b(?:flat|solid|square|round|hex|angle|c-?channel|rebar|plate|sheet) ?(?:bars?|rods?|iron|"
    r"stock|plate|metal)\b|\brebar\b|\bi-?beams?\b|\b(?:flach|rund|vierkant)(?:stahl|eisen)\b|"
    r"\bcapacity\b|\bkapazität\b|\bcapacité\b|\bcapacidad\b|\bcapacità\b|\bcapaciteit\b|\bfer "
    r"plat\b|\bpletina\b|(?<!di )\bpiatto\b|\bplatstaf\b",
)  # fmt: skip

# So plain a wish for a tool that a question in the same sentence doesn't make it general.
WANTS_TOOL = (
    r"(?<!\byou )(?<!\bdo i )(?<!\bdo we )(?<!\bif i )(?<!\bif we )(?<!\bwhen i )"
    r"(?<!\bwhen we )(?<!whether i )(?<!whether we )(?<!\bwhy i )(?<!\bwhy we )(?<!minimum )"
    r"(?<!\bmin )(?<!\bto )(?<!does it )(?<!n't )(?<!n’t )(?<!\bnot )(?<!\bnever )"
    r"\b(?:need|want|require|order|buy|purchase|looking for|in the market "
    r"for|quote(?: me)?(?: for| on)?|rfq for|price on|after) (?!to )(?:a|an|one|two|three|another|"
    r"some|the|\d{1,2}|new)? ?(?:\(\d+\) )?(?:\w+[ -]){0,3}?(?:mandrels?|die ?sets?|tooling)\b",
    r"(?<!\byou )(?<!\byou'd )(?<!\bif i )(?<!\bif we )(?<!n't )(?<!n’t )(?<!\bnot )(?<!\bnever )"
    r"(?<!\bwhen i )(?<!\bwhen we )\b(?:like|love|want|looking|wish|hoping|keen|ready) to "
    r"(?:buy|purchase|order|get|have) (?:a|an|one|two|three|another|some|the|your|our|my|"
    r"\d{1,2}|new)? ?(?:\w+[ -]){0,3}?(?:mandrels?|die ?sets?|tooling)\b",
    r"\b(?:möchten?|würden?|wollen|will) (?:wir |ich )?(?:\w+ ){0,3}?\w{0,10}dorne?\b"
    r"[^.?!\n]{0,40}\b(?:kaufen|bestellen|beziehen|bekommen|erwerben)\b",
    r"\b(?:aimer|voudr|souhait|désir)\w+ (?:\w+ ){0,2}?(?:acheter|commander|acquérir) "
    r"(?:\w+ ){0,3}?mandrins?\b",
    r"\b(?:quer|quisi|gustar|dese)\w+ (?:comprar|pedir|encargar)\w* (?:\w+ ){0,3}?mandril",
    r"\bvorre(?:i|mmo) (?:comprar|acquistar|ordinar)\w+ (?:\w+ ){0,3}?mandrin[oi]\b",
    r"\b(?:wil|willen|graag) (?:\w+ ){0,3}?\w{0,10}doorn(?:en)?\b[^.?!\n]{0,40}"
    r"\b(?:kopen|bestellen|afnemen)\b",
    r"\b(?:i'd|we'd|i'll|we'll|i would|we would|let me|let's) (?:start|begin|go|kick off) with "
    r"(?:an?|one|two|three|\d{1,2}) (?:\w+[ -]){0,2}?mandrels?\b",
    r"\b(?:brauche[n]?|benötige[n]?|suche[n]?|bestelle[n]?) (?:wir |ich )?(?:einen?|zwei|"
    r"drei|\d{1,2}|noch)? ?(?:\w+[ -]){0,2}?\w{0,10}dorne?\b",
    r"\b(?:besoin d'un|besoin de \d|cherch(?:e|ons) un|faut(?: un)?|command(?:e|"
    r"ons)) ?(?:\w+ ){0,2}?mandrins?\b",
    r"\b(?:necesit(?:o|amos)|busc(?:o|amos)) (?:un|dos|\d)? ?mandril",
    r"\b(?:serve|servono|cerc(?:o|hiamo)) (?:un|due|\d)? ?mandrin[oi]",
    r"(?<!geen )\bdoorn(?:en)? nodig\b|\bzoek(?:en)? (?:een )?doorn",
    r"\b(?:hier|anbei|nachstehend|im folgenden)(?: sind)?(?: noch)? die (?:daten|maße|angaben) "
    r"(?:für|zu) (?:den|dem) \w{0,10}dorn\b|\b(?:voici|ci-dessous) les (?:données|dimensions|cotes)"
    r" (?:pour le|du) mandrin\b|\b(?:estos son|aquí (?:van|están)) los datos (?:para el|del) "
    r"mandril\b|\b(?:questi|ecco) (?:sono )?i dati (?:per il|del) mandrino\b"
    r"|\bhier(?:bij)?(?: zijn)? de "
    r"gegevens (?:voor|van) de doorn\b|\bhere (?:are|is) the (?:data|details|dimensions|specs?"
    r"|info) (?:for|of) the mandrel\b",
    r"\bhow much (?:is|are|for|would|does|do|will)? ?(?:a|an|one|two|that|the|such a) "
    r"(?:\w+ ){0,2}?mandrels?\b",
    r"\bwhat (?:does|do|would|will) (?:a|an|one|two|that|the|such a) (?:\w+ ){0,2}?mandrels? "
    r"(?:cost|run|go for|set me back)\b",
    r"\b(?:price|cost|quote|quotation) (?:of|for|on) (?:a|an|one|two|that|the|such a) "
    r"(?:\w+ ){0,2}?mandrels?\b",
    r"\bwas kostet (?:ein|so ein|der|dieser) \w{0,10}dorn\b|\bprix d'un mandrin\b"
    r"|\bcombien (?:coûte|pour) un mandrin\b|\bcu[aá]nto cuesta un mandril\b"
    r"|\bquanto costa un(?:'anima| mandrino)\b|\bwat kost een doorn\b",
    r"\b(?:one|two|three|four|\d) (?:\w+ ){0,2}mandrels?,? (?:please|pls|plz)\b|\b(?:einen?|zwei|"
    r"drei|\d) (?:\w+ ){0,2}\w{0,10}dorne?,? bitte\b|\b(?:un|deux|trois|\d) mandrins?,? (?:svp|"
    r"s'il vous pla[iî]t)\b|\b(?:un|dos|tres|\d) mandril(?:es)?,? por favor\b|\b(?:un|due|tre|\d) "
    r"mandrin[oi],? per favore\b|\b(?:een|één|twee|drie|\d) doorn(?:en)?,? (?:graag|alstublieft|"
    r"aub)\b|\bgraag (?:(?:de|een|één|twee|drie|\d) )?(?:\w+ )?doorn(?:en)?\b"
    r"|\bbitte (?:den|einen|zwei|drei) (?:\w+ )?\w{0,10}dorne?\b",
)  # fmt: skip
