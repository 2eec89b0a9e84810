"""How people ask: the words that open a question, a plain request, a pleasantry, in six languages.

All are searched from the start of a sentence unless they say otherwise. Line breaks are spaces by
then, case does not matter.
"""

from __future__ import annotations

_VERB = r"(?:is|are|was|does|do|did|can|could|would|should|will|shall|has|have|might)"

ASKS_WITHOUT_MARK = (
    r"what(?:['’]?s\s|\s(?!(?:i|we|you|he|they|it)\b))",
    r"how\s(?!i\b|we\b|it\b)\w+",
    r"does\s\w+|whether\s",
    r"(?:any|some)(?:one|body)\sknow|any\s(?:idea|tips|advice|chance)\b",
    rf"(?:when|where|who|why)\s{_VERB}\s(?:i|we|you|it|they|there|the|this|that|a|an|my|our|your)\b",
    rf"which\s(?!is\s(?:why|what|how|where)\b)(?:\w+\s){{0,3}}{_VERB}\b",
    r"(?:do|does|should|must|can|could|may|will|would|is|are)\s(?:i|we|you|u|ya|yall|some(?:body|one)|it|they|one|that|this|these"
    r"|those|there|the|an?|your|my|both|bends?|tubes?|mandrels?|\d\S*)\b",
    # German, French, Spanish, Italian, Dutch
    r"(?:was|wie|welche[rsnm]?|warum|wieso|wann|wo)\s(?:ist|sind|kann|können|muss|soll|kostet|viel|lange"
    r"|eng|gro[sß]{1,2}|brauch\w*|hei[sß]{1,2}t|bedeutet)\b",
    r"(?:können|könnten|kann|muss|brauche?n?|haben|gibt)\s(?:sie|ich|wir|man|es)\b",
    r"(?:quel(?:le)?s?|comment|combien|pourquoi|quand|est-ce|qu'est-ce|faut-il|pouvez-vous|peut-on)\b",
    r"(?:qué|cuál(?:es)?|cuánto|cómo|por\squé|se\spuede|pueden|puede)\s",
    r"(?:che\scosa|cosa|quale|quali|quanto|come\ssi|perché|si\spuò|potete|serve)\s",
    r"(?:wat|hoe|welke|waarom|wanneer)\s(?:is|zijn|kan|kunnen|moet|kost|lang|veel|betekent)\b",
    r"(?:kunt\su|kunnen\swij|moet\sik|heb\sik)\b",
)

ASKS_ANYWHERE = (
    r",\s(?:can|could)\s(?:some(?:body|one)|anyone|you|u)\b",
    r"(?:please|kindly|pls|plz)\s(?:\w+\s)?"
    r"(?:advi[sc]e|clarify|explain|suggest|recommend|mention|inform|confirm|tell\s(?:me|us)|let\s(?:me|us)\sknow)\b",
    r"(?:wonder(?:ing|ed)?|wanted\sto\s(?:know|ask)|(?:like|want|need)\sto\s(?:know|ask|understand))\b",
    r"(?:let|tell)\s(?:me|us)\s(?:know\s)?(?:if|whether|what|which|how|when|why)\b",
    r",\s(?:so\s|and\s|but\s|or\s)?(?:what(?:['’]?s)?|how|why|when|where|which)\s(?:is|are|was|do|does|did|can|could|should"
    r"|would|will|far|much|many|long|tight|thick|thin|often|big|exactly|that|the|a|an|my|your|kind|sort|type|come)\b",
    r",\s(?:so\s|and\s|but\s|or\s)?(?:do|does|is|are|can|could|should|will|would)\s(?:i|we|you|it|they|that|this|the|a|an|one)\b",
    r"\b(?:not\s(?:quite\s)?sure|unsure|no\sidea|don['’]?t\s(?:know|understand|get)|confused|puzzled|curious)\s"
    r"(?:about\s|as\sto\s|on\s)?(?:what|how|why|when|where|which|whether|if|the)\b",
    r"\b(?:need|want|looking\sfor|after)\s(?:some\s|a\sbit\sof\s|your\s)?(?:advice|guidance|info\w*|recommendations?)\b",
    r"\bquestions?\s(?:about|on|regarding|re)\b|\bany\s(?:idea|tips?|advice|recommendations?)\b|\bclear\s(?:that|this|it)\sup\b",
    r"\b(?:explain|clarify|tell\s(?:me|us))\s(?:the|what|how|why|when|which|where|whether|if|about)\b",
    r"\bwhats?\s(?:that|this|it|is)\b|\bhow\s(?:do|does|can|should|far|much|many|long|to)\s(?:i|we|you|it|they|a|the|of)\b",
    r"\bbitte\s(?:\w+\s){0,3}(?:mitteilen|erklären|erläutern|angeben|sagen)|bitte\sum\s(?:auskunft|mitteilung|angabe)",
    r"\bmerci\sde\s(?:\w+\s)?(?:indiquer|préciser|dire|expliquer)",
    r"\bpor\sfavor,?\s(?:indi\w+|expli\w+|dígan\w+)",
    r"\b(?:vorrei|vorremmo)\ssapere|\bgraag\s(?:vernemen|horen)\s",
)

ASKS_WITHIN = (
    r"\b(?:how|what|why|where|which)\s(?:do|does|can|should|would|is|are|am)\s(?:i|we|you|it|the|a|an|my|our)\b",
    r"\bhow\s(?:to|come|much|many|tight|thin|thick|deep|close)\b|\bwhat\s(?:causes?|makes?|size|kind|sort|type|gives)\b",
    r"\b(?:any|some)\s(?:ideas?|tips?|advice|suggestions?|clue|help)\b",
    r"\b(?:wie|warum)\s(?:kann|muss|messe|misst|viel|eng)\b|\b(?:comment|pourquoi)\s\w+|\b(?:cómo|por\squé)\s\w+",
    r"\b(?:come|perché)\s(?:si|mai|fa)\b|\b(?:hoe|waarom)\s\w+\sik\b",
)
"""Words in the midst of a sentence without a question mark that ask all the same."""

ASKS_PRICE = (
    r"\b(?:please|pls|kindly)\s(?:\w+\s){0,4}(?:price|pricing|lead\stime|delivery)\b",
    r"\b(?:price|pricing|lead\stime|delivery\stime)s?,?\s(?:please|pls|plz)\b",
)
"""No question by itself ("please use the delivery address below"), only with an answer to it."""

OFFER = (
    r"\b(?:quot(?:e|es|ation)|pric(?:e|es|ing)|angebot|devis|presupuesto|preventivo|offerta|offerte|preis|prix"
    r"|precio|prezzo|prijs)\b"
)
"""An offer is asked for, or at least spoken of."""

SERVICE = (
    r"(?:can|could|would|will|do)\s(?:you|u|ya)\s(?!(?:please\s|kindly\s)?(?:tell|explain|advise|clarify|translate|recommend"
    r"|suggest|quote|price|calculate|work|check|say|show|confirm))[^,;]*\sfor\s(?:us|me)\b"
)
"""Work is asked for, not an answer."""

OTHER_GOODS = (
    r"\b(?:make|sell|supply|stock|offer|do|quote|provide|build|have)\s(?:you\s)?(?:\w+\s){0,2}(?:wipers?(?:\sdies)?|(?:bend|clamp"
    r"|pressure)?\s?dies|die\ssets?|benders?|rods?|clamps?|collets?|tube|tubes|tubing|pipe|certificates?)\b(?!\s?(?:mandrel|bend))"
)
"""Something else than a mandrel is asked for."""

REQUESTS = (
    r"(?:(?:and|so|also|then|hi|hello),?\s)?(?:(?:please|kindly)\s)?(?:can|could|would|will|do|are)\s"
    r"(?:you|u|ya|your\sshop|you\sguys)\s(?:(?:please|kindly|possibly|still|guys|able\sto|be\sable\sto|also|maybe)\s){0,2}"
    r"(?:make|quote|supply|stock|build|offer|manufacture|furnish|do|help|bend|sell|have|carry|provide|send|price|produce|fabricate|give)\b",
    r"(?:please|kindly|pls|plz)\s(?:quote|offer|send|supply|provide|price|give|find|see|note)\b",
    r"(?:(?:is|would)\s(?:it|this|that)\s(?:be\s)?(?:possible|something\syou)|any\schance)\b.{0,40}\b"
    r"(?:make|quote|supply|build|mandrel)",
    r"(?:who|where)\s(?:makes?|can\sI\s(?:buy|get))\b",
    r"(?:can|could|may|might)\s(?:i|we)\s(?:please\s)?(?:get|have|buy|order|receive)\b",
    r"(?:können|könnten|würden)\ssie\s.{0,80}(?:anbieten|liefern|fertigen|herstellen|machen|unterbreiten)",
    r"(?:pouvez|pourriez)-vous\s.{0,60}(?:fabriquer|fournir|faire|proposer|chiffrer|envoyer|livrer)",
    r"(?:pueden|podrían|puede|podría)\s.{0,60}(?:fabricar|suministrar|hacer|cotizar|ofertar|enviar)",
    r"(?:potete|potreste)\s.{0,60}(?:fare|fornire|produrre|quotare|realizzare|inviare)",
    r"(?:kunt|kunnen|zou)\s(?:u|jullie)\s.{0,60}(?:maken|leveren|aanbieden|offreren|sturen)",
    r"(?:please|kindly|pls)\s(?:\w+\s)?confirm\s(?:receipt|you|that\syou|by\sreturn)",
)

PLEASANTRIES = (
    r"how\s(?:are|r)\s(?:you|u|things|ya)|how(?:'s|’s|\sis)\s(?:it\sgoing|things|life|business|everything)",
    r"how\s(?:was|were)\s(?:your|the)\s|what(?:'s|’s)\s(?:up|new)\b|(?:hope|trust)\s(?:you|all|this)\b",
    r"(?:everything|all|you)\s(?:ok|okay|good|well|fine|alright)\b",
    r"(?:(?:please|just|kindly)\s){0,2}(?:let\s(?:me|us)\sknow|tell\s(?:me|us)|(?:do\snot|don['’]t)\shesitate)\s"
    r"(?:if|when|whether|should)\s(?:you|there|anything|that|this)\s",
    r"wie\sgeht(?:['’]?s|\ses)\b|(?:comment\s)?(?:ça|ca|allez-vous|vas)\b.{0,12}(?:va|vous|bien)?\?",
    r"(?:cómo|qué)\s(?:está|están|estás|tal)\b|come\s(?:sta|stai|va)\b|hoe\s(?:gaat|is)\s(?:het|'t)\b",
    r"(?:remember|guess)\s(?:me|us|what)\b|(?:ok|okay|right|yes|no|huh|eh|really|deal|thanks)\s?\?",
)

GREETINGS = (
    r"(?:hi|hello|hey|hiya|dear|good\s(?:morning|afternoon|day|evening)|greetings|hallo|moin|guten\s(?:tag|morgen)"
    r"|sehr\sgeehrte\w*|liebe[rs]?|bonjour|salut|hola|buenos\sd[ií]as|buenas|estimad[oa]s?|buongiorno|salve|ciao"
    r"|gentil\w*|geachte|beste|goedendag|respected|sirs?|madam)"
)

ABBREVIATIONS = """
    approx dia diam rad min max thk qty pcs incl excl resp etc nos nom ref fig ext int tol deg std
    sch mat matl mrs dipl bzw evtl inkl zzgl ggf usw vgl env art núm esp aprox circa
"""
"""A full stop behind one of these ends no sentence ("dia. 38", "approx. 5")."""

NEEDS_NONE = (
    r"\b(?:won['’]?t|don['’]?t|doesn['’]?t|do not|does not|will not|no longer|never)\b"
    r"[^.?!\n]{0,20}\b(?:need|want|use|require)"
    r"|\bno\b[^.?!\n]{0,16}\bneed(?:ed)?\b|\bno need\b"
    r"|\b(?:brauch\w*|benötig\w*)\b[^.?!\n]{0,16}\bkein|\b(?:pas|plus) besoin\b"
    r"|\bno (?:necesit\w*|hace falta)|\bnon (?:ci |mi )?(?:serve|occorre)"
    r"|\bgeen\b[^.?!\n]{0,24}\bnodig\b|\bniet nodig\b"
)
"""What says that a thing is not wanted: nothing is asked about it."""
