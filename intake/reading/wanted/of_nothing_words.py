"""Turns of phrase that hold a word of taking back and take nothing back: 'drop you a line', 'I
don't want to wait', 'print attached for reference', 'par ailleurs', 'sonst nichts dazu'.

``NOTHING`` takes nothing back wherever it stands. ``NOTHING_BY_ITSELF`` may be said of a size too,
so that nothing else in its clause may point to one. Searched in casefolded words.
"""

from __future__ import annotations

from ..text.patterns import any_of, whole_words

_SHOWN = (
    r"(?:attach\w*|enclos\w*|drawings?|prints?|sketch(?:es)?|photos?|pictures?|pics?|pdfs?|dwgs?"
    r"|models?|samples?|angles?|lengths?|purchase order|po|(?:order|quote|job|part) (?:no\.?"
    r"|number))"
)
_SPOILT = (
    r"(?:wrinkl\w*|rippl\w*|mark(?:s|ed)?|scratch\w*|kink\w*|crease\w*|dent\w*|crush\w*|flat\w*"
    r"|ovality|scor(?:e|ing)|gall\w*|buckl\w*|split|crack\w*|surprises?|delays?|trouble|problems?"
    r"|hassle|fuss|headaches?|excuses|junk|rubbish)"
)
_TO_DO = (
    r"(?:wait|hang around|swap|change(?:over| over| dies)?|scrap|waste|lose|risk|ruin|damage|guess"
    rf"|rush|bother|spend|overpay|end up|find out|take (?:any|a) chances?|gamble|{_SPOILT}|weld"
    r"|polish|grind|anneal|sand|be|keep|get (?:stuck|caught|burned|it wrong)|run out|worry|rely"
    r"|repeat|start over|hold (?:up|anybody|you|the)|miss|have to|pay (?:for )?(?:rush|express|air)"
    r"|share|sharing)"
)
_CHEAP = (
    r"(?:used|second[- ]hand|cheap|refurbished|reconditioned|plastic|nylon|imported|knock-?off"
    r"|rusty|worn(?:-out)?|soft)"
)
_MAKES = r"(?:vendors?|suppliers?|shops?|manufacturers?)"
_OTHER = r"(?:another|an?other|a different|one other|two other|the other|other|different)"
_KIN = r"my (?:friend|mate|buddy|neighbou?r|brother|dad|cousin|uncle|son)"
_MACHINES = (
    r"(?:(?:cnc|nc|tube|pipe|rotary|draw|bending|old|new|used) )*(?:benders?|machines?|presses"
    r"|shifts?|dies|die sets|guys?|men|people|employees|operators?|welders?|trucks?|lifts?|bays?"
    r"|sites?|plants?|branches|customers|locations|years|months|weeks|days|hours|lathes?|mills?)"
)
_FAILS = r"(?:kinks?|wrinkles?|flattens?|collapses?|ovals?|buckles?|ripples?|crush\w*|splits?|goes)"
_LATER = (
    r"(?:next year|nächstes jahr|l'an prochain|l'année prochaine|el año que viene|l'anno prossimo"
    r"|volgend jaar)"
)

NOTHING = whole_words(
    rf"{_SHOWN}\b[^.;\d]{{0,40}}? (?:just |only )?(?:for|as a) (?:your |our |my )?reference"
    r"(?: only)?",
    rf"(?:don'?t|do not|didn'?t|wouldn'?t) (?:want|need|like)(?: it| them| us| the tube| the guys"
    rf"| anybody)? to {_TO_DO}(?: (?:one|a mandrel|it|them|mandrels) (?:between|for both|for all"
    r"|across))?",
    rf"(?:don'?t|do not) (?:want|need|like) (?:any |a |an |to see )?(?:more )?{_SPOILT}",
    rf"(?:don'?t|do not) (?:want|need) (?:a |an |any )?{_CHEAP} (?:ones?|mandrels?|tools?|stuff)",
    r"(?:don'?t|do not) (?:want|need) (?:it|them|these|anything) (?:to be )?(?:chromed|coated"
    r"|plated|polished|hardened|painted|fancy|special|elaborate|certified|engraved)",
    r"drop(?:ping)? (?:you|him|her|them|someone|everyone|me|us) (?:an?|another|some) (?:quick "
    r"|short )?(?:line|note|mail|e-?mail|message|text|word|card)",
    r"drop(?:ped|ping)? (?:by|round|in on you|in (?:at|to) (?:your|the))",
    r"(?:our|my|your|less|more|no|of|high|worst|for|much|too much|a lot of|lots of|total|into|as"
    r"|in) scrap(?= (?:\w+ ){0,2}(?:rates?|bins?|heap|pile|is|was|are|numbers?|costs?|figures?|went"
    r"|goes|runs?|on|from|now|today)\b| ?[.,;!?)]| ?$)",
    r"(?:cheaper|better|best|easier|time) (?:just )?to scrap (?:it|them|that|those|the old ones?)",
    r"the scrap (?:rates?|bins?|heap|pile|man|is|was|has|numbers?|costs?|figures?)",
    r"scrap (?:rates?|bins?|heap|pile|man|men|yard|dealer|metal|value|numbers?|percentage"
    r"|costs?|figures?|was|is|runs?|went|goes)",
    r"(?:we|they|i|guys|lads|operators?|and|to|not|rather not) scrap (?:about |any |every )?"
    r"(?:one|two|half|too|so|an?|more|another|most|lots|good|expensive|less|fewer|tub(?:e|es|ing)"
    r"|material|parts|pieces|bends|stock|whole)",
    r"(?:customer|client|they|we|i|he)(?:'d|'ll)? (?:(?:may|might|could|would|can|will|have|has|to"
    r"|want|wants) ){0,3}cancel (?:if|when|unless|on us|(?:our|my|the|their) (?:slot|appointment"
    r"|visit|meeting|trip))",
    r"(?:are|were|if) they made(?= (?:to order|of|from|in|by|here|locally)\b)",
    r"cancellation (?:terms|policy|charges?|fees?|clause|period)",
    r"(?:shop|office|plant|factory|works|we|line|store|gate|dock|warehouse) (?:is|are) closed",
    r"(?:funding|the budget|visa|paperwork|transport|freight|shipping|payment|insurance|tube supply"
    r"|the po) (?:is|are) (?:all |already |now )*(?:covered|sorted|settled|taken care of|closed)",
    r"hold off (?:on )?(?:welding|production|cutting|payment|paying|ordering (?:tube|material))",
    rf"(?:quote|quotation|price|bid|offer|estimate)s? (?:in hand )?(?:already )?(?:from"
    rf"|by) {_OTHER}"
    rf" {_MAKES}",
    rf"(?:used|tried|asked|contacted|been with|been using|dealt with|bought from) {_OTHER} {_MAKES}"
    r" (?:so far|before|until now|till now|in the past|first|last (?:time|year))",
    rf"already have (?:an?|your|our) (?:\w+ )?(?:account|quote|quotation|price|offer"
    rf"|customer number"
    rf"|drawing|budget)(?: from {_OTHER} {_MAKES})?",
    r"(?:someone|somebody) else (?:(?:in|at|from|here) (?:\w+ ){0,3})?(?:recommended|told|said"
    r"|mentioned|suggested|pointed)",
    rf"{_KIN} (?:runs|owns|operates|works|mans|minds|looks after) (?:the|our|a|in|on|at|for|it)",
    rf"{_KIN} and i(?= (?:run|own|have|are|build|started|work))",
    rf"{_KIN} (?:has )?(?:always |often )?(?:used to )?(?:bought|buy|dealt|deal) (?:from|with|off)"
    r" you",
    rf"have \d{{1,2}} (?:of the \w+ )?{_MACHINES}",
    rf"(?:we|i)(?:'ve| have)? (?:got|own|have) (?:an?|the|our|\d{{1,2}}) (?:\w+ ){{0,2}}{_MACHINES}"
    r"(?: already| in the shop)?",
    r"(?:you|they) (?:guys )?did (?:an? |such |very |really |me |us )*(?:good|great|nice|fine|well"
    r"|excellent|outstanding|right|super|favou?r)",
    r"(?:you|they) sent (?:me |us |over |out )?(?:the |a |your )?(?:\w+ )?(?:catalog\w*|brochure"
    r"|e-?mail|mail|link|newsletter|card|form)",
    r"(?:can'?t|cannot|can not|couldn'?t|won'?t|impossible to|no way to|hard to) (?:\w+ ){0,5}"
    r"without (?:a |any |your )?mandrel",
    rf"without (?:a |any )?mandrel,? (?:it|they|this|these|everything|we get|you get|the tubes?"
    rf"|the pipe)(?: just| always| will)? {_FAILS}",
    r"nothing else (?:to add|for (?:now|today|the moment)|on (?:this|the) (?:one|order|job)"
    r"|thanks)",
    r"(?:that'?s|that is) (?:all|it|everything|the lot)\W{1,3}(?:and )?nothing else",
    r"only (?:this|that) (?:once|time)",
    # German
    r"nicht mehr (?:als|lange?|länger|warten|so (?:gut|viel|schnell)|rechtzeitig|erreichbar"
    r"|lieferbar|lieferfähig|liefern|weiter|rund|zufrieden|sauber|sinnvoll|biegen)",
    r"(?:liefert?|fertigt|arbeitet|antwortet|reagiert|existiert) (?:leider )?nicht mehr",
    r"haben wir (?:schon|bereits) (?:öfter|oft|oftmals|mehrfach|mehrmals|einmal|länger|lange|immer"
    r"|(?:sehr )?gute erfahrung\w*|früher|zusammengearbeitet|gesprochen|telefoniert|geschrieben)",
    r"(?:bisher|noch|derzeit|momentan|aktuell|leider) (?:haben|hatten|besitzen) wir (?:noch "
    r"|leider )*"
    r"keinen (?:passenden |geeigneten )?dorn",
    r"(?:angebot|preis)e? (?:eines|von einem|vom) anderen lieferanten",
    r"sonst nichts (?:mehr|dazu|weiter|für heute)",
    r"(?:das (?:wär'?s|wäre es|wäre alles|ist alles|war'?s))\W{1,3}sonst nichts",
    # French
    r"(?:par|d') ?ailleurs",
    r"(?:avons|on a) déjà (?:(?:bien|souvent|plusieurs fois) )?(?:travaillé|commandé|échangé|parlé"
    r"|discuté|collaboré|été client|un compte|eu (?:affaire|recours|de bons))",
    r"(?:devis|offre|prix) d'un autre fournisseur",
    r"un autre fournisseur (?:nous )?(?:annonce|demande|propose|parle de)",
    r"un altro fornitore (?:ci )?(?:chiede|offre|dice|parla di)",
    r"een andere leverancier (?:vraagt|biedt|zegt)",
    r"rien d'autre (?:pour (?:le moment|l'instant|aujourd'hui)|à (?:ajouter|signaler))",
    # Spanish
    r"(?:adjunt\w+|plano|foto|croquis|dibujo)\b[^.;\d]{0,30}? (?:solo |sólo )?como referencia",
    r"(?:oferta|presupuesto|precio) de otro proveedor",
    r"no hace falta que (?:llam\w+|corr\w+|env[ií]\w+|sea|se|contest\w+|lo|vengan?|viaj\w+)",
    r"(?:proveedor|taller|fabricante) (?:\w+ )?ya no (?:\w+ ){0,2}(?:necesit\w+|quier\w+|hac\w+)",
    r"nada más (?:por (?:ahora|el momento|hoy)|de momento|que añadir)",
    # Italian
    r"abbiamo già (?:lavorato|collaborato|acquistato|comprato|ordinato|parlato|un conto|avuto)"
    r"(?= (?:\w+ )?(?:con|da|presso|tra) )",
    r"non serve (?:che (?:chiam|telefon|mand|invi|venga)\w*|chiamare|telefonare|più (?:i "
    r"|a )?client\w+)",
    r"(?:offerta|preventivo|prezzo) di un altro fornitore",
    r"nient'altro (?:per (?:ora|il momento|oggi)|da aggiungere)",
    # Dutch
    r"hebben we al (?:vaker|eerder|vaak|jaren|lang|meerdere keren|zaken gedaan|gesproken|gebeld)",
    r"(?:op dit moment|momenteel|nu|nog|helaas) (?:hebben we (?:nog )?)?geen (?:passende )?doorn",
    r"(?:offerte|prijs) van een andere leverancier",
    r"verder niets (?:op dit moment|voor nu|meer|toe te voegen|vandaag)",
)
_WORK = any_of(
    "production | line | project | season | program(?:me)? | job | serie | serienfertigung",
    "produktion | projekt | fertigung | production | projet | producción | proyecto | produzione",
    "progetto | productie | project",
)
_STARTS = any_of(
    "starts?(?: up)? | begins? | goes live | kicks? off | ramps? up | runs? | is planned",
    "startet | beginnt | läuft | démarre | commence | débute | empieza | comienza | arranca",
    "parte | inizia | comincia | begint",
)
_COMPETES = any_of(
    rf"{_OTHER} {_MAKES} (?:is|was|has|are|quotes?|let|lets|wanted|wants|asks|offered|told|said)",
    "ein anderer lieferant (?:nennt|verlangt|bietet|hat|ist|war|braucht)",
    "otro proveedor (?:pide|ofrece|tarda|es|nos|dice)",
)
NOTHING_BY_ITSELF = whole_words(
    rf"for (?:your )?reference(?: only)?,? (?:(?:is|see|here is|here's|i|we|i've|have|put)"
    rf" )*(?:the |our |a )?{_SHOWN}",
    rf"{_WORK} {_STARTS} (?:early |late |in |anfang |début |mitte )*{_LATER}",
    rf"(?:run|running|bend|bending|making|produce) (?:these|them|this) (?:well )?into {_LATER}",
    _COMPETES,
)
