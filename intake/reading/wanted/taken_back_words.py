"""The words by which some size is taken back, owned or put off, and those that say it of none."""

from __future__ import annotations

import re

from ...late_pattern import late_pattern
from ..text.patterns import any_of

TAKES_BACK = late_pattern(
    r"\b"
    + any_of(
        r"leave (?:\w+ ){0,3}(?:out|off) | drop(?:ped)? | cancel\w* | strike | disregard | scrap",
        "no longer (?:need|want|require)\\w* | not used | don'?t need | do not need | don'?t want",
        "do not want | no use for | no need (?:for|of) | already (?:have|got|own)",
        r"(?:we|i)(?:'ve| have)? (?:got|own|have)\b[^.;\n]{0,24}\b(?:already|in the (?:rack|shop))",
        "not interested | (?:you|they) (?:made|sold|sent|supplied|did) | (?<!again )(?<!same )"
        "(?<!more )next year | hold off",
        r"ignore (?:\w+'s|his|her|their|my|both|the (?:first|second|others?|rest|upper|lower|old))",
        "the new year | no mandrel (?:wanted|needed|required|for) | only owns?",
        r"(?<!may )(?<!can )(?<!could )(?:we|i)(?:'ve)? (?:have|got|own) (?:the|a|your) mandrels?"
        r" (?:for|in)",
        r"without (?:a |any |your )?mandrel(?! (?:right )?(?:now|today|so far|currently"
        r"|at (?:present|the moment))\b) | (?:ohne|keinen?|kein) (?:\w+)?dorn | sans mandrin",
        "pas de mandrin | sin mandril | (?:senza|niente) mandrino | (?:zonder|geen) doorn",
        r"(?:mandrel|one)\b[^.;\n]{0,24}\b(?:we|i) (?:already )?own",
        r"(?:is|are|all) (?:covered|sorted|taken care of|settled|closed) | nothing to do",
        r"(?:don'?t|do not|no need(?: to)?|needn'?t) (?:quote|price|bother|offer)",
        r"(?:someone|somebody) else | (?:another|other|different) (?:vendor|supplier|shop|order)",
        r"for (?:reference|comparison)",
        r"my (?:friend|mate|buddy|neighbou?r|brother|dad|cousin|uncle|son)\b",
        r"mein\w* (?:freund|nachbar|bruder|vater|schwager) | mon (?:ami|voisin|frère|père)",
        r"mi (?:amigo|vecino|hermano|padre) | (?:mio|un mio) (?:amico|vicino|fratello|padre)",
        r"mijn (?:vriend|buurman|broer|vader)",
        r"have (?:\w+ ){0,2}(?:tooling|mandrels?|one|tools) for (?:this|that|it|these|those|them)",
        r"(?:be|come|get|write|circle) back (?:to you )?(?:for|on|about) (?:the|that|those)",
        r"(?:order|do|get|buy|want|need) the (?:others?|rest)"
        r" (?:\w+ )?(?:later|in|next|when|after)",
        r"(?:den|die|das) (?:anderen?|zweiten?|rest)\b[^.;\n]{0,24}\b(?:später|dann|im (?:frühjahr"
        r"|sommer|herbst|winter))",
        r"rev(?:ien|en)\w+ (?:vers vous )?pour (?:l'autre|les autres|le second)",
        r"(?:l'altro|gli altri|l'altra) (?:\w+ )?(?:più avanti|in seguito|dopo|poi)",
        r"(?:el otro|los otros|la otra) (?:\w+ )?(?:más adelante|luego|después)",
        r"(?:de andere|de rest) (?:\w+ ){0,2}(?:later|daarna)",
        "(?:the )?(?:others?|rest|second|first) (?:one )?(?:is|are|can be) (?:for )?later",
        "can wait | for another (?:day|time) | some other time | streichen | entfällt | nicht mehr",
        "haben wir (?:schon|bereits) | (?:ist|sind) (?:schon|bereits) (?:da|vorhanden)",
        r"nächstes jahr | zum vergleich | anderen? lieferant\w* | nicht anbieten",
        "plus besoin | annul\\w+ | l'an prochain | on a déjà | avons déjà",
        r"(?:pour|à titre de) comparaison | autre fournisseur | ailleurs",
        "ya no (?:hace|necesit|quer)\\w* | ya ten\\w+ | ya hay | anulad\\w+ | el año que viene",
        r"otro proveedor | no hace falta que | como referencia",
        "non serv\\w+ | (?:abbiamo|ce l'abbiamo) già | già (?:abbiamo|disponibile)",
        r"altro fornitore | (?:per|a titolo di) confronto",
        r"l'anno prossimo | (?:the others|the rest|die anderen|les autres|l[ao]s otr[ao]s|gli altri"
        r"|le altre|de andere)\b[^.;\n]{0,20}\b(?:have|got|haben|avons|tenemos|abbiamo|hebben)",
        "none for | nothing for | keinen? für | aucun pour | ninguno para | nessuno per",
        "geen voor | andere leverancier | ter vergelijking",
        "vervalt | niet meer nodig | hebben we al | volgend jaar",
        "have \\d{1,2}\\b(?![.,/]\\d|\\s?(?:mm|x|in|cm|\\d))",
    )
    + r"\b",
    re.IGNORECASE,
)
BY_PLACE = late_pattern(
    r"\b"
    + any_of(
        r"(?:only|just|quote|price|want|need|(?:quote|price|mandrel|offer)s? for) (?:the )?"
        r"(?:line|row|item|pos(?:ition)?|no)"
        r"\.? ?#?\d{1,3}\b(?!\s*[:–-])",
        r"only (?:the )?(?:lines?|rows?|items?|ones|sizes?) | the only (?:line|row|item|one|size)"
        r"(?! (?:that )?(?:we|i|they|he)(?:'ve| have)?(?: could)? (?:found|find|saw|seen|see"
        r"|got)\b)",
        r"(?:lines?|rows?|items?|ones?|sizes?) (?:that are |which are |i )?"
        r"(?:marked|highlighted|ticked|circled|flagged|in (?:red|bold|yellow)|with an? [xy]\b)",
        r"(?:marked|highlighted|ticked|circled|flagged) (?:lines|rows|items|ones|sizes)",
        r"gemarkeerde (?:regels|rijen) | lignes (?:surlign|coch)ées | (?:righe|voci) (?:segnate"
        r"|evidenziate) | (?:líneas|filas) (?:marcadas|resaltadas)",
        r"(?:quote|price|want|need|offer|mandrels? for|look at|interested in)(?: (?:up|on|for|us|me"
        r"|just|only)){0,2} (?:the )?(?:lines|rows|items|positions|pos\.?|nos\.?) #?\d{1,2}"
        r"(?:, ?\d{1,2})*(?:,? (?:and|&) \d{1,2})",
        r"(?:need|want|take|quote|price|only|just)\w* (?:the )?(?:first|second|third|fourth|fifth"
        r"|last|top|bottom|middle|bigger|smaller|other) (?:one|line|row|item|size|entry)",
        r"(?:only|just|nur|seulement|sólo|solo|alleen) (?:(?:#|nos?\.? ?)\d{1,2}|(?!1\b(?! ?(?"
        r":,|and"
        r"|und|et|y|e|en|&) ?\d))\d{1,2})"
        r"(?: ?(?:,|and|und|et|y|e|en|&) ?\d{1,2})*(?= ?(?:please|pls|bitte|svp|thanks|[.;!]|$))",
        r"(?:only|just|quote|price|need|want)\w* (?:for )?(?:the )?(?:first|last|top|bottom)"
        r" (?:two|three|four|2|3|4)(?! (?:is|are|has|have|pieces|weeks|days))",
        r"(?:only|just|nur|seulement|s[oó]lo|alleen)\b[^.;\n]{0,24}\b(?:with|mit|avec|con|met)"
        r"(?: an?| the| einem| dem| une?| una?| een)? (?:star|asterisk|arrow|stern\w*|étoile"
        r"|astérisque"
        r"|asterisco|estrella|sterretje|pfeil|flèche)(?! (?:is|are|ist|sind))",
        "(?:only|just) (?:the )?(?:starred|asterisked|ticked)",
        r"only (?:that|this)(?: one)? | just (?:that|this) one | nothing else",
        r"nur (?:die |den |das )?(?:zeilen?|positionen?|pos|eine)\b | (?:die )?markierten?",
        r"angekreuzt\w* | sonst nichts | rien d'autre | nada más | nient'altro | verder niets",
        r"seulement (?:la|les) (?:lignes?|positions?) | lignes? (?:marqu|surlign|coch)ées?",
        r"s[oó]lo (?:las?|los?) (?:líneas?|filas?|marcad\w+) | solo (?:le|la) (?:rig[ah]e?|voci?)",
        r"alleen (?:de )?(?:regels?|positie)",
        r"(?:angebot|preis|dorne?|anfrage) für (?:die )?(?:pos\.?|position|zeile|nr\.?) ?\d{1,3}",
        r"(?:devis|prix|offre|mandrin) pour (?:la |le )?(?:ligne|repère|poste|n°) ?\d{1,3}",
        r"(?:precio|oferta|mandril) (?:de|para) (?:la |el )?(?:línea|fila|pos\.?|partida) ?\d{1,3}",
        r"(?:prezzo|offerta|mandrino) per (?:la )?(?:riga|pos\.?|voce|linea) ?\d{1,3}",
        r"(?:offerte|prijs|doorn) voor (?:de )?(?:regel|pos\.?|positie|nr\.?) ?\d{1,3}",
    )
    + r"\b",
    re.IGNORECASE,
)
"""A line of a list picked out; `withdrawn` knows the plain ways, and has heard them already."""
OLD_AND_NEW = late_pattern(
    r"(?:^|\n)[ \t]*(?:was|old|before|alt|bisher|avant|antes|prima|oud)\b[ \t]*:"
    r"|\b(?:old|was|before|current|existing|alt|bisher|ancien|actuel|viejo|actual|vecchio|oud)"
    r"[ \t|;,]{2,}(?:new|is|after|proposed|revised|neu|nouveau|nuevo|nuovo|nieuw)\b",
    re.IGNORECASE,
)
JUST_ONE = late_pattern(r"\b(?:only|just|nur|seulement|sólo|solo|alleen) 1\b", re.IGNORECASE)
NUMBERED = late_pattern(r"^[ \t]*\(?1\s?[.):]", re.MULTILINE)
OF_OTHER_THINGS = late_pattern(
    r"\s(?:the |our |all |both |my |die |les |los |i |de )?(?:dies?|formers?|benders?|wipers?|tube"
    r"|machine|clamps?|stock|drawings?|tooling|biegeformen|matrices|matrici|mallen)\b",
    re.IGNORECASE,
)
"""'We already have the dies': no size is meant."""
SOMEBODY_SAYS = late_pattern(
    r"\b(?:says?|said|thinks?|thought|reckons?|reckoned|claims?|claimed|swears|insists?|told ("
    r"?:me|us)"
    r"|keeps saying|sagt|meint|behauptet|glaubt|dit|prétend|pense|dice|cree|insiste|sostiene|pensa"
    r"|zegt|vindt|beweert)\b(?:[^.;!?\n]|[.]\d)*$",
    re.IGNORECASE,
)
BUT = late_pattern(
    r"(?:[^.;!?\n]|[.]\d)*\b(?:but|though|however|yet|aber|doch|jedoch|mais|pourtant|pero|ma|p"
    r"erò|maar"
    r"|echter)\b",
    re.IGNORECASE,
)
"""'My welder says they don't need one, but ...': he is not heeded."""
SINCE = late_pattern(r"[.;!?](?!\d)\s?|\n|,\s")
OF_NO_SIZE = late_pattern(r"\b(?:no|not|nicht|al más|al plus)\b\W{1,3}$", re.IGNORECASE)
THE_ONE_WITH = late_pattern(
    r"(?:^|[^\w])(?:(?:the|that) one (?:with|for|in|on|at)|(?:the|that|one for the)"
    r"|(?:den|der|die|das|einen) (?:mit|für|in|zu)|celui (?:de|avec|pour|en)|l[ea]|el de|la de|el"
    r"|il|quello"
    r" (?:da|con|per)|die (?:van|met|voor)|de)\s(?:(?:r|radius|rad|clr|ø|rayon|radio|raggio"
    r"|straal)\s?)?$"
)
"""'Den mit 180', 'the one for 2.25'."""
FOR_THOSE = late_pattern(
    r"\b(?:nothing|none|no mandrels?|keinen?|nichts|rien|aucun|nada|ninguno|niente|nessuno|niets"
    r"|geen)\s(?:needed\s)?"
    r"(?:for|für|dafür|pour|para|per|voor)\s?(?:those|that|them|these|it|die|diese|ceux-là|esos"
    r"|quelli)?\b"
)
"""'Stacks are straight above 4 in., so nothing for those'."""
PRICED_BEFORE = late_pattern(
    r"\b(?:last|previous|old|earlier|former|current|target|your|our|letzte[rn]?|bisherige[rn]?"
    r"|dernier|último"
    r"|ultimo|laatste)\s$",
    re.IGNORECASE,
)
"""'Our last price for pos 010 was $285'."""
CALLED_BY_SIZE = late_pattern(
    r"\W{0,2}(?:mm\b|in(?:ch)?\b)?\W{0,2}(?:od\s)?(?:mandrel|plug|one|tool)\b", re.IGNORECASE
)
OF_DIE = late_pattern(
    r"\s(?:the|a|an|our|my|all the)\s(?:(?:bend|bending|form|round|clamp|pressure|wiper) )?"
    r"(?:dies?(?: sets?| blocks?)?|formers?|wipers?|clamps?|boosters?)(?:,| and|$)"
)
IS_OFF = late_pattern(
    r"\b(?:is|are|was|has been|have been|'s|ist|sind|wurde|est|a été|está|es|è|is) (?:now |all |"
    r"completely )?(?:off|cancel\w*|dead|dropped|gone|on hold|scrapped|storniert|abgesagt"
    r"|gestrichen|annul\w*|anulad\w*|vervallen|geannuleerd)\b",
    re.IGNORECASE,
)
