"""Words for what is measured across a bend, in the languages that customers write."""

from __future__ import annotations

import re

from ...late_pattern import late_pattern
from ..text.patterns import any_of, whole_words

_UNIT = r"^\W{0,3}(?:mm|cm|in|inch(?:es)?)?\W{0,2}\s*"
_RINGS = any_of(
    "rings? | loops? | circles? | coils? | hairpins? | return bends? | half[- ]circles?",
    r"semi-?circles? | half[- ]rounds? | crooks? | u-?\s?bends? | 180s?(?!\s?mm|[.,]\d)"
    r" | 180 deg\w* bends?",
    "ringe? | ringes | schlaufen? | bügels? | reifen | kreis\\w* | halbkreis\\w* | u-?bogen",
    "rohrschlangen? | haarnadel\\w* | wendeln?",
    "anneaux? | boucles? | cerceaux? | cercles? | épingles? | spires? | demi-cercles?",
    "anell[oi] | cerchi[o]? | spir[ae] | forcin[ae] | semicerchi[o]? | curva a u",
    "anillos? | aros? | bucles? | horquillas? | círculos? | semicírculos? | curva en u",
    "ringen | lussen | lus | beugels? | cirkels? | haarspeld\\w* | u-?bocht\\w*",
    "ringar | bygel | båge | pierście\\w+ | pętl\\w+",
)
ROUND_THING = late_pattern(rf"\b{_RINGS}\b")
"""What is bent all round, so that what is measured across it is the bend."""
_BENT = any_of(
    "hoops? | steering wheels? | steering wheel rims? | wheel rims? | lenkräder | lenkrad",
    r"bends? | curves? | arcs? | bows? | turns? | bogen | bögen | biegung(?:en)? | cintres?",
    "cintrages? | coudes? | courbes? | curvas? | curve | codos? | gomit[oi] | bocht(?:en)? | boog",
    "bögen | böj\\w* | łuk\\w*",
)
BENT_THING = late_pattern(
    rf"\b(?:{_RINGS}|{_BENT}|bent|curved|gebogen|cintrée?s?|curvad[oa]s?|curvat[oaie])\b"
    r"(?!\W{0,2}(?:tube|tubing|pipe|rohre?|tubes|tubos?|tubi|buis|buizen)\b)[^.;:\d]{0,44}$"
)
BENDS_IT = late_pattern(
    r"\b(?:(?:to|we|i|can|will|you|they|and) bend|bending|biegen|cintrer|cintrons|doblar"
    r"|curvare|buigen)\s"
    r"(?:(?:an?|some|our|my|this|the|ein|des|un|une|een)\s)?$"
)
"""A verb, behind which a diameter is that of the tube."""
LEGS = whole_words(
    "legs? | arms? | straights? | limbs? | prongs? | tines? | branches? | schenkeln? | rami",
    "ramas | patas | poten | benen | brazos | bracci | jambes? | sides of the (?:u|loop|hairpin)",
    "sidor | ben | ramion\\w* | schenkelabstand | schenkelweite",
)
A_U = late_pattern(
    r"\bu (?:of|is|measures|shape)|\bu-(?:shape[ds]?|form\w*|bow|profil\w*)\b"
    r"|\b180\b(?!\s?mm|[.,]\d)"
    r"|\b(?:the|an?|of|each|this|one|every|as|en|a|in)\su\b"
)
LEG_CENTRES = late_pattern(r"\bschenkelabstand\b|\bleg spacing\b")
"""What by itself is measured from centre to centre."""
BETWEEN_BENDS = late_pattern(
    r"(?:\b(?:between|zwischen|entre|tra|fra|tussen)\s(?:(?:the|den|les|las?|los|le|i|de|two|both|each"
    r"|zwei|deux|dos|due|twee)\s){0,3}(?:bends?|biegungen|bögen|cintrages|coudes|curvas|curve"
    r"|bochten|holes?|bolts?|rungs?|posts?|hoops?|rails?|tubes?|pipes?)\b"
    r"|\b(?:bend to bend|tangent to tangent)(?: distance)?\b)"
    r"(?:\W{1,2}(?:is|are|of|about|ca|must be|should be|ist|sind|est|es|è|we have|they are)\b)?"
    r"\W{0,3}$"
)
"""What lies between two bends is straight."""
_APART_WORD = any_of(
    "distances? | spacing | gap | space | spread | opening | clearance | span | width",
    "abstand | abstände | weite | breite | zwischenraum | schenkelabstand | schenkelweite",
    "écartement | écart | distance | espacement | largeur | espace | ouverture",
    "distanza | luce | larghezza | spazio | apertura | distancia | separación | luz | ancho",
    "espacio | abertura | afstand | tussenruimte | breedte | ruimte | avstånd | odległość",
)
APART_BEFORE = late_pattern(
    rf"\b{_APART_WORD}\b[^.;()\d]{{0,64}}$|"
    r"\b(?:inside|outside|clear)\s(?:of|between)\s(?:the\s)?(?:two\s)?(?:legs|arms|straights)\b"
    r"[^.;()\d]{0,24}$"
)
APART = late_pattern(
    _UNIT
    + any_of(
        "apart | clear | between (?:the )?(?:two )?(?:legs|arms|straights|sides|limbs|prongs)",
        "(?:inside|clear|outside) between | auseinander | zwischen den schenkeln | d'écart",
        "entre (?:les )?(?:deux )?branches | entre (?:las )?(?:dos )?(?:ramas|patas)",
        "tra (?:i )?(?:due )?(?:rami|bracci) | tussen de (?:benen|poten) | uit elkaar",
        r"(?:inside|outside|centre|center|o|i|c)\s?(?:to|/|-)\s?(?:inside|outside|centre|center"
        r"|o|i|c)\b(?: of (?:the )?legs)?",
    )
    + r"(?!\w)"
)
GAP = late_pattern(
    r"\b"
    + any_of(
        "gap | clear(?:ance)? | opening | clear space | lichte\\w* | zwischenraum | luz | luce",
        "tussenruimte | binnenwerks | dagmaat | ouverture | apertura | abertura | zwischen den",
    )
    + r"\b"
)
"""Words that by themselves say that it is clear between the legs."""
CENTRE = late_pattern(
    r"\b"
    + any_of(
        r"cent(?:re|er)s?(?:\s?lines?)? | c\s?(?:to|/|-)\s?c | middle | mid | axis | axes",
        "axe | d'axe | entraxe | mitten?\\w* | achs\\w* | mittig | milieu | moyen | interasse",
        "neutral | assi | asse | mezzeria | ejes? | centros? | medio | hart | hartlijn | midden",
    )
    + r"\b"
)
INSIDE = late_pattern(
    r"\b"
    + any_of(
        r"inside | inner | internal(?:ly)? | clear | i\.?d\.? | intrados | i\s?(?:to|/|-)\s?i",
        "innen\\w* | innere[nrs]? | licht\\w* | intérieure?s? | intérieurement | int",
        "intern[oaie] | interior(?:es)? | por dentro | binnen\\w* | inwendig\\w* | inre",
        "bottom of the groove | groove bottom | root of the groove | rillengrund",
    )
    + r"\b"
)
OUTSIDE = late_pattern(
    r"\b"
    + any_of(
        r"outside | outer | external(?:ly)? | overall | o\.?d\.? | o\s?(?:to|/|-)\s?o | extrados",
        r"o\.?a\.? | au(?:ß|ss)en\w* | äußere[nrs]? | extérieure?s? | hors tout | ext",
        "estern[oaie] | exterior(?:es)? | por fuera | buiten\\w* | uitwendig\\w* | yttre",
        "exteriormente | gesamt\\w* | in totaal | en total | in totale",
    )
    + r"\b"
)
_MIDDLE = (
    r"(?:(?:tube|pipe|tubing|groove|leg)\s)?(?:(?:the|der|le|la|el|il|de|het|du|d'|dem)\s?)?"
    r"(?:middle|cent(?:re|er)(?:\s?line)?|axis|mitte|rohrmitte|milieu|centre|centro|mezzo|asse|axe"
    r"|eje|hart|midden)"
)
_MIDDLES = (
    rf"{_MIDDLE}\b[^.;()\d]{{0,40}}?"
    rf"(?:\s(?:to|zu|bis|à|au|al|a|all'|tot|naar|auf|op|hasta)\s?"
    rf"(?:(?:the|der|dem|le|la|el|il|het|de|l')\s?)?|\s?[-/]\s?){_MIDDLE}"
)
MIDDLE_TO_MIDDLE = late_pattern(
    _UNIT
    + r"(?:(?P<diameter>(?:in )?dia(?:meter)?\.?,? )|across\W{1,2}|wide\W{1,2}|measured\s){0,3}"
    rf"(?:(?:from|between|von|de|du|da|dal|desde|van|at)\s)?{_MIDDLES}"
)
MIDDLE_TO_MIDDLE_BEFORE = late_pattern(
    rf"\b{_MIDDLES}\b(?:\s(?:of|the|legs?|arm|others?|next|second|tube|distance|is|are|measures|measured|ist|sind|est|es|è"
    r"|about|ca|gemessen|mesuré|misurato|medido|gemeten|should|be|van|de|du|del))*[\s:=.]*$"
)
_CENTRE_LINE = (
    r"(?:cent(?:re|er)\s?line|(?:tube|pipe)\s(?:axis|cent(?:re|er))"
    r"|(?:axis|middle|cent(?:re|er)) of the (?:tube|pipe)|rohrachse|rohrmitte|axe du tube"
    r"|eje del tubo|asse del tubo|hart van de buis)"
)
ON_CENTRE_LINE = late_pattern(
    rf"\b{_CENTRE_LINE}\b(?:\s(?:of|the|a|our|tube|pipe|bend|will|to))*\s(?:follows?|lies|sits|runs|makes"
    r"|describes|forms|is|goes|liegt|verläuft|suit|décrit|sigue|segue|volgt|ligt)\b[^.;\d]{0,40}$"
)
_CENTRE_DIAMETER = (
    r"(?:mean|cent(?:re|er)(?:\s?line)?|c/?l|ctr|mittlerer?) (?:coil |ring |bend |hoop )?"
    r"(?:dia\b\.?|diameter|durchmesser)"
)
CENTRE_DIAMETER_BEFORE = late_pattern(rf"\b{_CENTRE_DIAMETER}(?: (?:of|is|to be))?[\s:=]*$")
CENTRE_DIAMETER_AFTER = late_pattern(_UNIT + _CENTRE_DIAMETER)
AT_CENTRE = late_pattern(
    r"(?<!center )(?<!centre )\b(?:at|on|to|through|thru|along|an|auf|in)\s"
    rf"(?:the\s|der\s)?{_CENTRE_LINE}\b"
)
_DIA = (
    r"(?:dia(?:meters?|m(?:et(?:er|re))?)?|\w*durchmessers?|diam[èe]tres?|di[áa]metros?|ø|o\.?d"
    r"|i\.?d)"
)
_DIAMETER = r"(?:dia(?:meters?|m(?:et(?:er|re))?)?|\w*durchmessers?|diam[èe]tres?|di[áa]metros?|ø)"
_LINKS = any_of(
    "should | shall | must | needs? | has | have | having | with | is | are | to be | be | an?",
    "the",
    "inside | outside | inner | outer | overall | mean | cent(?:re|er)(?:\\s?line)? | measures",
    "required | wants? | wanted | of | in | soll | sollen | muss | hat | haben | mit | einen?",
    "der | den | doit | avoir | a | une? | de | du | tiene | debe | tener | con | deve | avere",
    "ha | van | een | moet | heeft | met | our | this | its | each | shape | intérieur | extérieur",
    "interno | esterno | interior | exterior | medio | moyen | bent | gebogen | cintré | curvado",
    "makes? | gives? | comes out at | fait | font | fa | fanno | viene | hace | hacen | mide",
    "macht",
    "ergibt | maakt | komt",
    "curvato | to | auf | à | tot | op | round | around | um | autour | about | ca | d' | per",
    "sur | su",
)
_OF_DIAMETER = (
    r"(?:\W{0,2}\s?(?:of|is|are|be|von|de|di|van|about|approx|ca|circa|the|=|:|must|should|to|at"
    r"|has|soll|ist|mesure|mide|misura|beträgt|inside|outside|measured|measures|haben)\b){0,4}"
    r"[\s:=.]*$"
)
_SIDE = (
    r"(?:inside|outside|inner|outer|overall|mean|internal|external|innen\w{0,2}|außen\w{0,2}|mittlerer?"
    r"|cent(?:re|er)\s?line)"
)
DIAMETER_BEFORE = late_pattern(
    rf"(?:{_SIDE}\s)?\b{_DIAMETER}(?:\s(?:int\w*|ext\w*|est\w*|medio|moyen))?\s"
    r"(?:of|der|des|du|de la|de l'|del|dell'|della|van de|van het|on|for)\s?(?:the\s|an?\s|each\s)?"
    rf"(?:\w+\s)?(?:{_RINGS}|{_BENT})\b[^.;:()\d,]{{0,24}}\s*$|"
    rf"\b(?:{_RINGS}|{_BENT}|bent|curved|gebogen|cintrée?s?|curvad[oa]s?|curvat[oaie])"
    rf"(?:[\s:-]{{1,2}}(?:{_LINKS})){{0,7}}?[\s:-]{{1,2}}{_DIAMETER}"
    rf"{_OF_DIAMETER}"
)
DIAMETER_AFTER = late_pattern(
    _UNIT + r"(?:(?:inside|outside|inner|outer|overall|mean|internal|external|cent(?:re|er)\s?line"
    r"|innen|außen)\s){0,2}"
    rf"(?:d[ei] )?{_DIA}\b(?!\.?\W{{0,2}}(?:(?!middle|mid\b|cent)\w+\W){{0,3}}"
    r"(?:tub(?:e|es|ing|os?|i)|pipes?|rohre?|buis|buizen|x"
    r"|wall|stainless|steel|mild|alumin\w+|copper|brass)\b)(?:\W{1,3}(?:\w+\W){0,5}?"
    r"(?:inside|outside|cent(?:re|er)\s?lines?|cent(?:re|er)|middle))?"
)
WALL_BEHIND = late_pattern(
    r"\s?(?:mm|in|inch|\")?\s?(?:w\.?t|wall|thick|wand|paroi|épaisseur|pared|espesor|parete"
    r"|spess\w*)\b",
    re.IGNORECASE,
)
BEND_DIAMETER = late_pattern(
    r"(?:\b(?:inside|outside|inner|outer|overall)\s)?"
    r"\b(?:bend(?:ing)?\s(?:inside\s|outside\s)?dia(?:meter)?|biegedurchmesser|bogendurchmesser"
    r"|diamètre de (?:cintrage|courbure)|diametro di (?:curvatura|piega)"
    r"|diámetro de (?:curvatura|curva|doblado)|buigdiameter)\b\W{0,2}[^,.;:()\d]{0,24}[\s:=]*$"
)
_PITCH_CIRCLE = r"(?:pitch (?:circle )?dia(?:meter)?|p\.?c\.?d|pitch circle|teilkreis\w*)"
PITCH_CIRCLE_BEFORE = late_pattern(
    rf"\b{_PITCH_CIRCLE}\b\.?(?:\s(?:of|is|on|for|the|our|a|bend|bending|die|former|tool|roll(?:er)?"
    r"|der|biege\w*|von|ist))*[\s:=]*$"
)
PITCH_CIRCLE_AFTER = late_pattern(_UNIT + rf"(?:on )?(?:a )?{_PITCH_CIRCLE}\b")
HAS_HOLES = whole_words(r"holes? | bolts? | flanges? | studs? | screws? | bohrung\w* | flansch\w*")
"""Their pitch circle is no bend."""
GROOVE_BOTTOM = late_pattern(
    _UNIT + rf"(?:in\s)?{_DIA}\.?\s(?:measured\s|gemessen\s)?"
    r"(?:at|to|in|on|bis|auf|im|am|à|au|en)\s?"
    r"(?:the\s|zum\s|den\s|le\s|el\s)?(?:(?:bottom|base|root|floor) of (?:the |its )?groove"
    r"|groove (?:bottom|root)|rillengrund|fond de (?:la )?gorge|fondo de la garganta"
    r"|fondo (?:della )?gola)\b"
)
OUTSIDE_PROPER = late_pattern(
    r"\b(?:outside|outer|external|o\.?d|o\s?(?:to|/|-)\s?o|extrados|außen|aussen|extérieur|estern"
    r"|exterior|por fuera|buiten|uitwendig)"
)
"""More than 'overall', which may be a length."""
TUBE = whole_words(
    "tubes? | tubing | pipes? | rohre? | tubos? | tubi | buis | buizen | tuyaux?",
    "mandrels? | stock | material",
)
SIGNED = late_pattern(
    rf"\b(?:{_RINGS}|{_BENT}|bent|gebogen|cintrés?|curvados?|curvato)"
    rf"(?:[\s:=-]{{1,2}}(?:{_LINKS}|{_SIDE})){{0,3}}[\s:=-]*$"
)
"""Right before a 'Ø240'."""
WRAPPED = late_pattern(r"\b(?:around|round)\s(?:an?|the|my|our)\s(?:piece of\s|bit of\s)?$")
A_PIPE_AFTER = late_pattern(
    _UNIT + r"(?:(?:schedule|sch)\s\d+\s)?(?:pipe|tube|tank|cylinder|bar|rod|drum|barrel)\b"
)
ROUND_A = late_pattern(
    r"\b(?:around|round|over|against|on|um|über|autour d'|autour|sur|alrededor|sobre|attorno|su"
    r"|intorno|om|rond|over)\s?(?:an?|the|our|my|some|this|einen?|une?|el|la|il|uno|una|een|de|ad)?"
    r"\s?(?:old\s|big\s|round\s|solid\s|wooden\s)*(?:of\s|de\s|di\s|a\s|ca\s|about\s)?$"
)
ROUND_THING_AFTER = late_pattern(
    _UNIT
    + rf"(?:{_DIA}\.?\s)?(?:round\s|wooden\s|steel\s|solid\s|old\s)*"
    + any_of(
        "pulley | drum | disc | disk | post | pole | sheave | barrel | bucket | wheel rim",
        rf"{_DIA}\s(?:former|form|pipe|block|plug|buck|jig|roll|roller|wheel)",
        r"former dia\w* | seilscheibe | trommel | scheibe | poulie | polea | puleggia | schijf",
    )
    + r"\b"
)
WIDE_AFTER = late_pattern(
    _UNIT
    + any_of(
        "across | wide | overall | o\\.?a\\.? | outside to outside | inside to inside | in total",
        "total | breit | de large | de ancho | de largo total | di larghezza | breed | hors tout",
        r"(?:o|c|i)\s?(?:to|/|-)\s?(?:o|c|i)\b | au(?:ß|ss)en (?:auf|zu|bis) au(?:ß|ss)en",
        r"(?:outside|inside|on the outside|on the inside|over the outsides?)\b"
        r"(?! (?:bend )?(?:radius|rad\b|r\b))",
    )
)
WIDE_BEFORE = late_pattern(
    r"\b(?:width|overall|breite|außenmaß|innenmaß|largeur|ancho|larghezza|breedte)\b[^.;()\d]{0,24}$"
)
_RADIUS = (
    r"(?:clr|c\.l\.r\.?|\w*radi(?:us|i|en)|rad|rayons?|raggi[o]?|radio|straal|cent(?:re|er)\s?line"
    r"|r)"
)
NAMED_RADIUS = late_pattern(
    rf"\b{_RADIUS}\b[^.;\n\d]{{0,24}}\d|\br\d|\d\W{{0,3}}(?:mm|cm|in|inch(?:es)?)?\W{{0,2}}"
    rf"(?:bend\s|bending\s|die\s)?{_RADIUS}\b"
)
"""A radius with its figure."""
RADIUS_WORD = late_pattern(r"radi(?:us|i)\b|\bclr\b|\brayon|\braggi|\bradio\b|\bstraal")
CALLED_RADIUS = late_pattern(
    r"(?:radius|\bclr|\brayon|\braggio|\bradio|straal)\b(?:\s(?:of|is|are|must|should|be|ist|soll|muss"
    r"|beträgt|est|es|è|de|di|van|von|moet|zijn|bedraagt))*[\s:=]*$"
)
OWN_RADIUS_AFTER = late_pattern(
    _UNIT + r"(?:cent(?:re|er)(?:\s?line)?\s|bend(?:ing)?\s|mean\s)?(?:clr|c\.l\.r\.?|radius|rad)\b"
)
OWN_RADIUS_BEFORE = late_pattern(
    r"[,;:]\s(?:[^\W\d]+['’\s]{1,2}){0,4}?(?:clr|\w*radius|rayon|radio|raggio|straal)\b"
    r"(?:\s(?:of|is|are|will be|must be|comes to|works out (?:at|to)|be|von|ist|beträgt|de|est|es|è"
    r"|di|van)){0,2}[\s:=]*$"
)
"""'Legs 44.5 apart, so the radius is': what follows is the radius, and no distance."""
