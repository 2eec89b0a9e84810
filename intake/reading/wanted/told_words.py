"""Words that only tell of the size beside them: bought, borrowed, somebody else's, put off, given
up, bent well enough without. Each list holds one family, in six languages."""

from __future__ import annotations

from ...late_pattern import late_pattern
from ..text.patterns import whole_words

PERSON = (
    r"(?:builder|fabricator|shop|vendor|supplier|racer|team|member|garage|guy|customer|company|firm"
    r"|outfit|manufacturer|welder|dealer)s?\b"
)
"""'Another builder here bends ...' asks for nothing."""
_PEOPLE = (
    r"friend | buddy | pal | mate | neighbou?r | brother | sister | dad | father | uncle | cousin",
    "son | colleague | coworker | competitors? | competition | predecessor | boss",
)
_KIN = "|".join(person.strip() for people in _PEOPLE for person in people.split("|"))
_NO_PERSON = (
    r"client|customer|architect|engineer|job|tube|tubing|pipe|part|drawing|print|die|bender|machine"
    r"|former|line|frame|bike|car|project|size|chassis|one|rail|wall"
)

_SOMEBODY_ELSES = (
    rf"(?:my|his|her|our|a|your) (?:\w+[ -])?(?:{_KIN})(?:'?s|ies)?(?:-in-law)? | my buddies",
    r"(?:some|any)(?:body|one) else\w* | before me | another (?:vendor|supplier|shop|order|quote)",
    r"a firm (?:that|which|using) | (?:the )?(?:guys?|fellow|chap|bloke|lad|lads)",
    r"across the street | round the corner | (?:sister|other) (?:plant|company|site|shop)",
    rf"(?:my|our|a|the) (?!(?:\w+ )?(?:{_NO_PERSON})s?\b)(?:(?!(?:it|we|i|they) )[a-z-]+ ){{1,3}}"
    r"(?:runs|uses|bends|swears|makes|owns)",
    r"nachbar\w* | kolleg\w+ | freund\w* | bekannte[rn]? | schwager | kumpel | bruder",
    r"wettbewerber | konkurren\w+",
    "collègue | voisin | mon ami | un ami | copain | beau-frère | mon frère | concurrent\\w*",
    "vecino | amigo | compañero | colega | cuñado | hermano | competencia",
    "collega | amico | vicino | cognato | fratello | concorren\\w+",
    "buurman | vriend | zwager | maat | broer | concurrent\\w*",
)
_HAD = (
    r"(?:our|my) (?:old |existing |current |present |last )?(?:ball )?(?:mandrel|plug)(?= \W?\d"
    r"| for\b)",
    r"unser(?:en|e)? (?:alte[rn]? |jetzige[rn]? |vorhandene[rn]? )?\w*dorn(?= \W?\d| für\b)",
    r"(?:notre|mon) mandrin(?= \W?\d| pour\b| de\b)",
    r"(?:nuestro|mi) mandril(?= \W?\d| de\b| para\b)",
    r"(?:nostro|mio) mandrino(?= \W?\d| per\b| da\b) | onze doorn(?= \W?\d| voor\b)",
    r"already | (?:is|are|been|got|have)(?: \S+){0,6}? (?:covered|sorted|settled|taken care of)",
    r"all set | in stock | on hand | (?:my|our|its) own | owned | lend\w* | lent | borrow\w*",
    r"found one | (?:one|ones|mandrel) (?:i|we)(?:'ve)? (?:already )?(?:have|got|own)(?! to\b)",
    r"bought | purchased | arrived | received | (?:turned|showed) up | thanks for | thank you for",
    r"came (?:in )?(?:yesterday|today|last|on|with) | in service",
    r"(?:you|they|he|she|we|i)(?: guys)?(?:'ve|'d)? (?:made|sold|supplied|built|delivered|shipped"
    r"|furnished|ordered|did|asked for|mentioned|quoted|fixed|set) | (?:off|from) you",
    r"one of (?:yours|your mandrels) | po \d+",
    r"(?:your )?(?:quote|quotation) q?-?\d{3,}(?!\s?(?:x|mm|[,.]\d))",
    r"bereits | schon | vorhanden | erhalten | geliefert | von ihnen | bei ihnen",
    r"(?:ist|sind) (?:\w+ )?da",
    r"déjà | fourni\w* | vendu | livré\w* | reçu | équipés?",
    r"vous (?:nous |m')?(?:avez|aviez) (?:fait|fabriqué|réalisé|construit|usiné)",
    r"(?:maakten|leverden|bouwden|maakte|leverde) (?:u|jullie) | sie (?:uns |mir )?\w+ gebaut",
    r"ya | hicisteis | hicieron | os compramos | nos (?:vendi|suminis)\w+",
    r"già | avete fatto | fornito | a posto | attrezzati",
    r"(?:hebben|heb|is) (?:we|ik|er)? ?(?:al|alles) | (?:die|er) (?:al|nog) | geleverd | gekocht",
)
_CAME_ALONG = (
    r"(?:was|is|were|are) (?:\w+ )?in (?:the|that)"
    r" (?:box|crate|lot|deal|set|package|bundle|drawer)",
    r"came (?:along |in )?with (?:it|them|the \w+) | (?:was|is) included | (?:comes?|came) with it",
    r"(?:i|we)(?:'ve)? (?:already |still )?(?:have|got|own|found) (?:the|a|your) (?:\w+ )?mandrels?"
    r" (?:for|in|to)",
    r"(?:war|ist|waren|sind|lag) (?:\w+ )?(?:dabei|mit drin|im (?:karton|paket|kasten|set))",
    r"dorn (?:für|fürs|zum) [^.;,]{1,24} (?:hab(?:e|en)? (?:ich|wir)|liegt|ist hier|lag dabei)",
    r"(?:ich habe?|wir haben) (?:den|einen) (?:\w*dorn )?(?:für|fürs)",
    r"(?:était|est) (?:\w+ )?(?:dans (?:le|la) (?:lot|carton|boîte|caisse)|fourni avec|inclus)",
    r"(?:j'ai|on a|nous avons) (?:le|un|celui) (?:mandrin )?(?:pour|du|de)",
    r"(?:venía|estaba|viene|está) (?:\w+ )?(?:con (?:ella|el lote|la máquina)|en la caja"
    r"|incluid[oa]) | (?:tengo|tenemos) (?:el|un) (?:mandril )?(?:de|para) | (?:era|è) "
    r"(?:\w+ )?(?:nella (?:scatola|cassa)|inclus[oa]|compres[oa]|nel lotto)",
    r"(?:ho|abbiamo) (?:il|un|quello) (?:mandrino )?(?:per|del|da) | zat (?:er ?bij|in de doos)",
    r"(?:ik heb|we hebben|wij hebben) (?:de|een) (?:doorn )?voor",
)
"""Of a mandrel: it was among what was bought with the die, or found."""
_BOUGHT_IN = (
    r"(?:doing|does|bends?) (?:\S+ ){1,8}for (?:us|me) | farmed out | (?:sent|goes?) out",
    r"sub-?contract\w* | bending house | buy(?:ing)? in | bought in | (?:ready|pre)[- ]?bent",
    r"(?:buy|buying|bought|comes?)(?: \w+)? (?:in )?(?:already )?bent | l'achète",
    r"get(?:ting)? (?!all|also|only|just|each)\w+ (?:in )?(?:already )?bent",
    r"on (?:les )?achète | fertig gebogen | zugekauft | kaufen wir | sous-trait\w* | achetons",
    r"subcontrat\w*",
    r"compramos | compriamo | terzista | kopen we | uitbested\w*",
    r"(?:i|we) (?:just |always )?buy (?:those|them|these)(?: in)? | kaufe? ich | kauf ich",
    r"j'achète | (?:je|on) les achète | (?:los|las) compro | (?:li|le) compro | koop ik",
    r"tou(?:t|te)s? faite?s | già fatt[ei] | ya hech[oa]s | kant-en-klaar | kant en klaar",
)
_NOT_BENT = (
    r"which (?:we|i|they) (?:weld|cut|machine)\w* | (?:laser[- ]?|saw[- ]?)cut(?:,| and) (?:\w"
    r"+ )?not"
    r" bent | (?:that is|that's|is|are|stays?|which is) (?:only |just )?(?:straight|welded|cut"
    r"|machined|not bent)(?: only)?",
    r"(?:weld|cut|machine)(?:s|ed)?(?: it| them| that)?,? (?:and )?(?:not|don'?t|never) ben[dt]",
    r"(?:wird|werden) (?:nur )?(?:geschweißt|geschnitten|nicht gebogen) | bleibt gerade",
    r"(?:est|sont) (?:soudée?s?|droits?|pas cintrée?s?) | va (?:recto|soldado)",
    r"(?:è|sono) (?:saldat[oi]|dritt[oi]|non piegat[oi]) | (?:is|blijft) recht",
)
"""No bend is in it: 'the cross tube is laser cut and not bent'."""
_ORDERED = (
    r"(?:po|order|purchase order) (?:no\.? ?)?(?:\S+ )?for\b(?:[^.;]|[.]\d){0,40}?\b(?:went ou"
    r"t|is out"
    r"|(?:was|is|has been) (?:placed|sent|issued|mailed|with you|on its way))",
    r"(?:is|are|was|were|been) (?:already |now |all )?(?:on order|ordered)",
    r"(?:gestern|bereits|schon|letzte woche) bestellt | (?:bestellung|auftrag) ist raus",
    r"(?:déjà|hier) commandé | ya (?:está )?pedido | già ordinato | al besteld",
)
"""On its way to us: 'PO for the ... went out to you yesterday'."""
_LONG_AGO = (
    r"last (?:year|month|week|time|spring|summer|autumn|fall|winter|order|january|february|march"
    r"|april|may|june|july|august|september|october|november|december)",
    r"in the past | years? (?:ago|back) | for years | since \d{4} | all day | every day | so far",
    r"previous(?:ly)? | used to | until (?:now|this|last) | originally | initially | at first",
    r"(?:on )?(?:the|our|a) sample",
    r"formerly",
    r"before",
    r"first (?:we|i|it) (?:said|drew|had|thought|asked|wanted) | first (?:drew|said|spec\w*|had)",
    r"then the (?:\w+ )(?:wanted|said) | started (?:out|off) | prototype | was",
    r"(?:the )?old (?:one|size|tube|spec|job|line|model|bike|drawing|order|numbers?|design|stuff"
    r"|version|oven|frame) | from the old | on schedule | current production",
    r"bisher | früher | zuvor | ursprünglich | zuerst | vorjahr | im (?:frühjahr|sommer|herbst"
    r"|winter) | letzte[sn]? (?:jahr|monat|woche|mal) | seit (?:\w+) | alte[snrm]? | prototyp\w*",
    r"c'était (?:le|la|du|un) | era (?:el|il|un) | (?:das|dat) (?:war|was) | erano (?:i|le)",
    r"l'an dernier | l'année dernière | la dernière fois | avant | auparavant | ancien\w*",
    r"el año pasado | la última vez | antes | hasta ahora | viej[oa]s? | prototipo",
    r"l'anno scorso | l'ultima volta | prima | finora | (?:abbiamo|ho) sempre | vecchi[oa]",
    r"vorig jaar | vorige keer | vroeger | eerst | oude | tot nu toe",
)
_GOES_WELL = (
    r"(?:has|have) been (?:faultless|great|fine|perfect|good) | going strong | still good",
    r"holding up | doing (?:fine|well|great) | fine | ok | okay | good enough | good as is",
    r"alright",
    r"all right | perfectly | very well | works? (?:well|great) | (?:run|go)(?:es)? well | nicely",
    r"beautifully | like (?:butter|a dream) | a (?:treat|charm) | (?:get|gets|getting) by",
    r"make do",
    r"dry | by hand | with (?:sand|a spring)",
    r"zand | sand(?:füllung)? | au sable | con arena | con sabbia | (?:leave|left) straight",
    r"tut (?:noch |immer noch )?(?:gut |brav )?(?:seinen|ihren) dienst",
    r"fait (?:toujours )?l'affaire",
    r"doet het (?:nog )?(?:prima|goed) | fa (?:ancora )?il suo dovere | cumple",
    r"ging | lief | läuft | ist top | zufrieden | gehen gut | geht gut | immer gut | klappt",
    r"passe (?:très )?bien | va (?:très )?bien | marche bien | (?:se cintre )?bien tel quel",
    r"sigue bien | va (?:muy )?bien | perfecto | sin problemas? | tal cual",
    r"lavora bene | va bene | viene bene | gaat (?:goed|prima) | loopt (?:goed|prima)",
)
_NOT_NOW = (
    r"later | someday | down the (?:road|line) | (?:next|new) (?:year|season) | one day",
    r"(?:next|in the) (?:spring|summer|autumn|fall|winter|quarter),? (?:(?:maybe|perhaps) )?"
    r"(?:we|i)(?:'ll| will| may| might|'d)",
    r"(?:im (?:frühjahr|frühling|sommer|herbst|winter)) (?:schauen|machen|kommt|kommen|wollen"
    r"|geht)",
    r"(?:au printemps|en été|en automne|en hiver|cet hiver),? (?:on|nous) \w*(?:ra|rons)",
    r"(?:en|esta) (?:primavera|verano|otoño|invierno) \w+(?:remos|aremos) | (?:in|a) (?:primavera"
    r"|estate|autunno|inverno) \w+remo | (?:in het voorjaar|volgend voorjaar|deze winter) \w+ (?:we"
    r"|wij)",
    r"(?:may|might) (?:be|come|want|need|follow) | on (?:ice|hold)",
    r"(?<!radius )(?<!clr )(?<!drawing )(?<!qty )to follow",
    r"(?:can|will|must) (?:wait|sit) | supersed\w+ | cancel\w* | pulled | withdrawn | dropped",
    r"finished | replaced | disregard | ignore | forget | skip | scrap | scratch | strike",
    r"instead of | rather than | no longer",
    r"später | nächstes jahr | irgendwann | warten wir | wartet | erledigt | hinfällig",
    r"gestrichen | entfällt | storniert | statt",
    r"plus tard | l'an prochain | attendra | annul\w+ | abandonn\w+ | au lieu de",
    r"el año que | más adelante | anulad[oa] | cancelad[oa] | descartad[oa] | en lugar de",
    r"più avanti | l'anno prossimo | annullat[oa] | scartat[oa] | invece di",
    r"volgend jaar | vervalt | vervallen | geannuleerd | in plaats van",
)
_WRONG = (
    r"by mistake | in error | mistakenly | outdated | obsolete | out of date | void",
    r"wrong(?:ly)? | aus versehen | irrtümlich",
    r"falsch",
    "überholt | veraltet | par erreur | une erreur | périmé | obsoleto | verouderd | superato",
    "por error | per errore | per ongeluk | dans un premier temps | avions demandé",
)
_BY_THE_WAY = (
    r"for (?:reference|comparison) | for what it's worth | fyi | in case (?:it matters|you)",
    r"standard | typical",
    r"default",
    r"unless | title block | apparently",
    r"(?:catalog(?:ue)?|brochure|sample) (?:\w+ )?(?:shows?|says?)",
    r"on your (?:site|website|page) | (?:the|an) example",
    r"zum vergleich | katalog | pour comparaison | catalogue | catálogo | catalogo | catalogus",
)
_COULD_DO = (
    r"could (?:also |just )?(?:go|do|use|live with|make do with|get away with|manage with)",
    r"if (?:you (?:say so|think|insist|prefer|must)|need be|needs must|push comes to shove)",
    r"zur not | wäre auch möglich | ginge auch | notfalls | à la rigueur | irait aussi | au pire",
    r"en último caso | también podría(?:mos)? | andrebbe bene anche | al limite | desnoods",
)
"""Possible too, where another is asked for: 'I could go 3 if you say so'."""
OF_SUBJECT = whole_words(
    r"(?:the )?subject(?: line)?(?: of (?:my|the|this) (?:last )?(?:e-?)?mail)? (?:is|was|says?)"
    r"(?: all| the)?(?: \w+)? wrong | wrong subject(?: line)? | betreff (?:ist|war|stimmt) \w+",
    r"went out before i (?:was )?finished | sent (?:it )?too (?:soon|early)",
)
"""Of the subject line, and of no size: 'subject line is wrong'."""
TELLS = whole_words(
    *_SOMEBODY_ELSES,
    *_HAD,
    *_CAME_ALONG,
    *_BOUGHT_IN,
    *_NOT_BENT,
    *_ORDERED,
    *_LONG_AGO,
    *_GOES_WELL,
    *_NOT_NOW,
    *_WRONG,
    *_BY_THE_WAY,
    *_COULD_DO,
)
NOT_HERE = whole_words(
    *_SOMEBODY_ELSES, *_HAD, *_CAME_ALONG, *_BOUGHT_IN, *_NOT_BENT, *_ORDERED, *_NOT_NOW
)
"""There already, or had from elsewhere, or not now."""
TELLS_NOT = whole_words(
    r"(?:when|whenever|if|each time|every time) (?:we|i) need (?:it|one|them|that)",
    r"wenn (?:wir|ich) (?:ihn|einen|sie) brauchen?",
    r"quand (?:on|nous|j') ?en (?:a|avons|ai) besoin",
    r"cuando (?:lo|la) necesit\w+ | quando (?:ci |mi )?serve | als we (?:hem|die) nodig hebben",
    r"(?:without|needs? no|doesn'?t need|does not need|don'?t need|do not need|needs nothing)"
    r"(?: \w+){0,3}",
    r"without (?:a|any) \w+ | no mandrels?(?! (?:yet|so far|for (?:it|this|that)))"
    r"(?:(?: is| are)? (?:needed|required|wanted|necessary))?",
    r"no (?:issues?|trouble|problems?|drama|bother|complaints?|worries|wrinkles"
    r"|(?:immediate |current )?need(?: to \w+)?|budget)",
    r"(?:may|might|probably|maybe) (?:also )?(?:need|want)(?:[^.;]|[.]\d){0,40}?\b(?:next (?:year"
    r"|season|spring|summer|autumn|fall|winter)|later(?: on)?|some ?day|in the future)",
    r"(?:later(?: on)?|next (?:year|season)|some ?day|down the (?:road|line))[^.;,\d]{0,12}"
    r" (?:we|i)(?:'ll| will| may| might) (?:probably |maybe |perhaps |also )*(?:need|want)",
    r"never (?:a|any|had|needed|used|been|given|gives?|gave|caused?|causes)",
    r"(?:was|were) (?:going|fixing|about|hoping|planning) to \w+",
    r"(?:don'?t|do not|no need to|needn'?t|not|please don'?t) (?:price|quote|bother|include|worry"
    r"|to be priced|to be quoted|want) | nothing (?:inside|in it|to do|wrong)",
    r"ohne (?:\w*dorn|probleme|weiteres|klagen|beanstandung\w*|alles)",
    r"kein\w* (?:\w*dorn|problem\w*) | nicht (?:anbieten|mehr|nötig)",
    r"sans (?:mandrin|rien|problème|souci) | pas besoin | n'est plus | ne changez rien",
    r"sin (?:mandril|nada) | ningún problema | no (?:le |les )?hace falta | no necesit\w+",
    r"non più | senza (?:mandrino|anima|problemi|nulla|niente) | nessun problema | non serve",
    r"zonder (?:doorn|probleem|problemen|iets) | doen we zonder",
    r"geen (?:doorn|probleem|problemen)",
    r"niet (?:meer|nodig) | hoeft niet",
)
"""Words that hold a 'no' of their own."""

NO = late_pattern(
    r"(?:\b(?:not|never|no|nothing|without|nicht|nie|kein\w*|pas|plus|non|niet|geen|sin|senza"
    r"|sans|zonder|ohne|(?:do|does|did|is|are|was|were|has|have|had|ca|wo|would|could|should|need"
    r"|must)n'?t)|n't)\s(?:[^\W\d]+\s){0,2}$"
)
"""Right before a word of ``TELLS``: it doesn't count."""

WAS_GOING_TO = whole_words(r"(?:was|were) (?:going|about|hoping|planning) to \w+")
"""With an 'also' behind it, it was done after all: 'I was going to ask for ... Also ...'."""
ABOUT_DIE = late_pattern(
    r"\b(?:dies?|die set|formers?|matrices?|matriz|biege(?:form|block)\w*|matrijs|mal|wipers?|"
    r"clamps?"
    r"|clamp blocks?|boosters?|benders?|lube|lubricant|faltenglätter|gleitschienen?|spannbacken?"
    r"|lisseurs?|racleurs?|réglettes?|mordaches?|patins?|alisador\w*|rascador\w*|mordazas?"
    r"|raschiator\w+|pattin[oi]|morsett\w+|gladstrijkers?|plooienstrijkers?|klembek\w*"
    r"|glijschoen\w*)\b"
)
"""Another tool of the bender, or what goes with it: to have that says nothing of a mandrel."""
HAD_ALREADY = whole_words(
    "already | in stock | on hand | owned | came with | arrived | schon | bereits | vorhanden",
    "déjà | ya | già | hebben we al | al",
)
"""Of a die it says nothing about the mandrel: 'Biegeblock ist vorhanden'."""
HAS_MANDREL = whole_words("mandrels? | dorne? | mandrins? | mandril(?:es)? | mandrin[oi] | doorn")
