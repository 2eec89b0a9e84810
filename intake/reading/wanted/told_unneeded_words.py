"""More words that say plainly why the size beside them needs no mandrel: it stays straight, it is
bent empty, it is done already, it is not needed here, it comes later if all goes well.

As ``told_plainly_words``: searched in casefolded words on one size, and narrower than
``told_words``.
"""

from __future__ import annotations

from ..text.patterns import whole_words

_PIECES = (
    r"(?: (?:runs?|pieces?|lengths?|sections?|bits?|stuff|cuts?|bars?|tubes?|only|through))?"
    r"(?= ?(?:[.,;!?)]|$|and\b|so\b|anyway\b))"
)
_STRETCHES = r"(?: (?:stücke?|strecken?|längen?|abschnitte?|rohre?))?(?= ?(?:[.,;!?)]|$|und\b))"
STRAIGHT = whole_words(
    r"(?<!so )(?:they|those|these|that|which|them|it)(?:'s|s|'re| are| is| all| both| of course"
    r"| will| do)* (?:just |only |all |dead )?(?:stays? |remains? |be |kept )?"
    r"(?:just |only |all |dead )?straight" + _PIECES,
    r"(?<=\d)\W? (?:(?:mm|in|wall|od) )*(?:[^\W\d_]+ ){0,2}?(?:stays?|remains?|(?:is|are)(?: just"
    r"| only| all)?) straight" + _PIECES,
    r"(?:bleib(?:t|en)|ist|sind) (?:ja |natürlich |alle |ohnehin |nur )*gerade" + _STRETCHES,
    r"(?:reste|restent|est|sont) (?:bien sûr |tou[st] |toutes )?droit(?:e|s|es)?(?= ?(?:[.,;!?)]|$"
    r"|et\b))",
    r"(?:va|van|es|son|queda|quedan) (?:siempre |todos )?(?:tramos )?rect[oa]s?(?= ?(?:[.,;!?)]|$"
    r"|y\b))",
    r"(?:resta|restano|è|sono) (?:sempre |tutti |solo )?(?:tratti )?dritt[oaie](?= ?(?:[.,;!?)]|$"
    r"|e\b))",
    r"(?:blijft|blijven|is|zijn) (?:gewoon |allemaal |alleen )?(?:recht|rechte stukken)"
    r"(?= ?(?:[.,;!?)]|$|en\b))",
    r"(?:there (?:are|is) )?(?:no bends?|nothing to bend|no bending)(?: (?:at all|in|on|there)"
    r"(?: (?:it|them|that|those|these))?)?(?= ?(?:[.,;!?)]|$))",
    r"(?:(?:is|are)(?: not|n't)|never|(?:does|do)(?: not|n't) get) bent(?= ?(?:[.,;!?)]|$))",
    r"(?:da (?:sind|ist|wird) )?(?:keine (?:bögen|biegung(?:en)?)|nichts (?:zu biegen|gebogen))"
    r"(?: (?:drin|dabei|daran|dran))?(?= ?(?:[.,;!?)]|$))",
    r"(?:pas de (?:coudes?|cintrages?)|rien à cintrer|sin curvas|nada que (?:curvar|doblar)"
    r"|senza curve|niente (?:curve|da (?:curvare|piegare))|geen bochten|niets te buigen)"
    r"(?= ?(?:[.,;!?)]|$))",
)
"""'The collectors are 3-1/2 x .065 but they are straight'."""
BENT_EMPTY = whole_words(
    r"(?:thick|heavy|stiff|strong) enough to (?:bend|go|do|be bent) (?:it |them |that "
    r"|those )?(?:empty"
    r"|without(?: (?:a|any|one))?(?: mandrel)?)",
    r"(?:we|i)(?: can| just| always)? (?:bend|do|roll) (?:it|them|that|those|these|that one"
    r"|this one)"
    r" (?:cold |just |fine |ok )?(?:empty|without(?: (?:a |any )?(?:mandrel|one|anything))?)"
    r"(?= ?(?:[.,;!?)]|$|and\b|so\b))",
    r"(?:is|are|gets?) (?:all )?(?:bent|rolled|done) (?:empty|without(?: (?:a|any))?(?: mandrel"
    r"| one)?)"
    r"(?= ?(?:[.,;!?)]|$|and\b|so\b))",
    r"(?<=[\d)\w\"]) (?:(?!them|it)\w+ ){0,2}?(?:we|i) (?:just |always |can )?(?:bend|run|roll"
    r"|form)"
    r"(?: it| them| cold){0,2} (?:empty|dry)(?= ?(?:[.,;!?)]|$|and (?:nothing|none|no)\b|so\b))",
    r"(?:is|are|gets?) (?:all )?(?:bent|rolled|run) dry(?= ?(?:[.,;!?)]|$|so\b))",
    r"(?:das|den|die|es) (?:biegen|rollen|machen) wir (?:\w+ )?ohne(?: (?:\w*dorn|alles|etwas))?"
    r"(?= ?(?:[.,;!?)]|$|und\b))",
    r"(?:biege|mache) ich (?:\w+ )?ohne(?: \w*dorn)?(?= ?(?:[.,;!?)]|$|und\b))",
    r"(?:on|nous) (?:le|la|les) (?:cintre|cintrons|fait|faisons) (?:à froid "
    r"|déjà )?(?:sans(?: mandrin"
    r"| rien)?|à vide)(?= ?(?:[.,;!?)]|$|et\b))",
    r"(?:lo|la|los|las) (?:curvamos|doblamos|hacemos) (?:\w+ )?(?:sin (?:mandril|nada)|en vacío)",
    r"(?:lo|la|li|le) (?:pieghiamo|curviamo|facciamo) (?:\w+ )?(?:senza(?: (?:anima|mandrino"
    r"|niente))?"
    r"|a vuoto)(?= ?(?:[.,;!?)]|$|e\b))",
    r"(?:dat|die|deze) buigen we (?:\w+ )?(?:zonder(?: doorn)?|leeg)(?= ?(?:[.,;!?)]|$|en\b))",
)
"""'The links are thick enough to bend empty', 'das biegen wir kalt ohne'."""
DONE = whole_words(
    r"(?<!for )(?<!of )(?<!on )(?<!with )(?<!to )(?<!in )"
    r"(?:that|those|these|they|which|that one|that part|that bit)(?:'s|'re| is| are"
    r"| was| were)(?: all| both)?(?: already)? (?:done|finished|bent|built|in the car|in place"
    r"|welded in"
    r"|out of the way)(?: already| and welded| long ago| and dusted)?(?= ?(?:[.,;!?)]|$))",
    r"(?:das|die|der|den) (?:ist|sind|war|haben wir) (?:alles |schon |bereits |ja |alle )+(?:fertig"
    r"|erledigt|gebogen|gemacht|verbaut|durch)(?= ?(?:[.,;!?)]|$))",
    r"(?:c'est|est|sont|c'est tout|tout est) (?:déjà |tout )+(?:fait|faite?s|terminée?s?"
    r"|cintrée?s?|monté)(?= ?(?:[.,;!?)]|$))",
    r"(?:ya está|ya están) (?:todo |toda |todos )?(?:hech[oa]s?|terminad[oa]s?|doblad[oa]s?"
    r"|curvad[oa]s?)(?= ?(?:[.,;!?)]|$))",
    r"(?:è|sono) già (?:tutt[oaie] )?(?:fatt[oaie]|finit[oaie]|piegat[oaie]"
    r"|curvat[oaie])(?= ?(?:[.,;!?)]|$))",
    r"(?:is|zijn) (?:allemaal |al )+(?:klaar|af|gedaan|gebogen)(?= ?(?:[.,;!?)]|$))",
)
"""'The main hoop stuff is 45 x 2.5 but that's all done already'."""
_THAT_ONE = r"(?:that|this|those|these|them|it)(?: one| size| tube)?"
_FOR_THAT_ONE = rf"(?:there|(?:for|on|with) {_THAT_ONE})"
_AT_END = r"(?= ?(?:[.,;!?)]|$|so\b))"
NOT_NEEDED_HERE = whole_words(
    r"(?:they|those|these|that|it|which|that one|neither|both)(?:'re|'s| are| is)?(?: \w+)??"
    r" ?(?:not|n't)(?: be)? (?:needed|required|wanted|used|relevant|of interest)(?: any ?more)?"
    r" (?:in|for|on|here|at) ?(?:this|the|that)? ?(?:project|job|order|one|time|moment|inquiry"
    r"|enquiry|customer|part)?",
    r"(?:they|those|these|that|it|which)(?:'re| are| is)?n't (?:needed|required|wanted|used)"
    r" (?:in|for|on|here) ?(?:this|the|that)? ?(?:project|job|order|one|time)?",
    r"(?:don'?t|doesn'?t|do not|does not|won'?t|will not) (?:need|want|require)"
    r" (?:a mandrel|a tool|one|any|anything|that|those|them|it) (?:for|on|in) (?:that|those|them|it"
    r"|these|this (?:project|job|order|one))(?= ?(?:[.,;!?)]|$))",
    rf"(?:nothing|none|no (?:mandrel|tool|plug|tooling))(?: is| are|'s)? (?:needed|required|wanted"
    rf"|necessary) {_FOR_THAT_ONE}{_AT_END}",
    rf"so nothing {_FOR_THAT_ONE}{_AT_END}",
    rf"(?:don'?t|do not|won'?t) (?:need|want|require) (?:a mandrel|anything|one"
    rf"|any) {_FOR_THAT_ONE}"
    rf"{_AT_END}",
    rf"(?:we'?re|we are|i'?m|i am) (?:all |already )*(?:fine|good|ok|okay|set|covered|sorted)"
    rf" (?:on|for|with|there)(?: {_THAT_ONE})?{_AT_END}",
    rf"{_THAT_ONE}(?:'s| is| are) (?:already |all )*(?:fine|covered|sorted|taken care of"
    rf"|no problem)"
    rf"(?: already)?{_AT_END}",
    r"(?:our|the|my) (?:old|existing|current|own|present) (?:mandrel|plug|one) (?:does|covers"
    r"|handles"
    rf"|serves|takes care of|is fine for|works for|still does) {_THAT_ONE}{_AT_END}",
    r"(?:dafür|da|hierfür) (?:brauchen|benötigen) wir (?:nichts|keinen|keine)" + _AT_END,
    r"(?:dafür|da|damit) (?:sind|wären) wir (?:schon |bereits |gut )*(?:versorgt|ausgestattet"
    r"|eingedeckt)" + _AT_END,
    r"(?:rien|aucun mandrin) (?:à prévoir|de nécessaire|besoin) pour (?:celui-là|ça|celui-ci)"
    + _AT_END,
    r"(?:on est|nous sommes) (?:déjà )?(?:équipés?|couverts?) (?:pour (?:celui-là|ça|celui-ci))?"
    + _AT_END,
    r"para (?:ese|eso|ésta?|ese tubo) no (?:hace falta|necesitamos) (?:nada|ninguno)" + _AT_END,
    r"ya (?:lo tenemos|está) (?:cubierto|resuelto|solucionado)" + _AT_END,
    r"per quello non (?:serve|ci serve|occorre) (?:niente|nulla)" + _AT_END,
    r"(?:ce l'abbiamo|è|siamo) già (?:copert[oai]|a posto)" + _AT_END,
    r"daar(?:voor)? hebben we niets (?:voor )?nodig | daar(?:voor)? zijn we al (?:van )?voorzien",
    r"hebben we al (?:ge|af)dekt" + _AT_END,
    r"(?:die|das|sie|diese|der|welche) (?:werden|sind|wird|ist) (?:\w+ ){0,4}?nicht (?:gebraucht"
    r"|benötigt|nötig|relevant)",
    r"(?:die|das|den|sie|diese) (?:\w+ ){0,4}?nicht (?:gebraucht|benötigt) (?:werden|wird)",
    r"(?:die|das|den|diese) brauchen wir (?:aber |jedoch )?(?:dafür|hier|hierfür|diesmal) nicht",
    r"(?:ils|elles|ceux-ci|celles-ci|qui) (?:ne |n')?(?:sont|est) pas (?:nécessaires?|utiles?)",
    r"on n'en a pas besoin (?:pour|dans|ici)",
    r"(?:pero|que|esos|esas|estos|ellos) no (?:son necesari[oa]s|hacen falta|se necesitan)"
    r" (?:para|en|aquí)",
    r"(?:ma|che|quelli|questi|loro) non (?:servono|sono necessari) (?:per|in|qui)",
    r"(?:die|ze|deze|maar) (?:zijn|hebben we) (?:\w+ ){0,3}?niet nodig | (?:die|ze"
    r"|deze) hoeven niet",
)
"""'... but they are not needed in this project'."""
OF_SEVERAL_SIZES = whole_words(
    r"they(?:'re)? | them | those | these | both | neither | sie | die beiden | beide | diese | ils"
    r"| elles | les deux | ces | ellos | esos | ambos | los dos | essi | entrambi | questi | ze "
    r"| zij"
    r"| beide | deze"
)
"""Words on two sizes that were named in one breath: they are on both."""
_ONE_DAY = (
    r"(?:eventually|some ?day|one day|down the (?:road|line)|at some point|in the future|sooner or"
    r" later)"
)
_LIKE_ONE = (
    r"(?:we|i)(?:'d|'ll| would| will| may| might)?(?: also| probably| maybe)* (?:like|love|want"
    r"|need|get|order|buy)\b"
)
_SEASON = r"(?:year|season|spring|summer|autumn|fall|winter)"
_PUT_OFF = (
    rf"(?:next|in the|come) {_SEASON},? (?:maybe |perhaps )?(?:we|i)(?:'ll| will| may| might|'d)"
    r"(?: also| probably| maybe)? (?:look|need|want|do|try|get|bend|tackle|think|move|start|be)",
    rf"(?:we|i) (?:may|might)(?: also)? (?:need|want|look|do|get)\b(?:[^.;]|[.]\d){{0,60}}?"
    rf"\b(?:next {_SEASON}|down the (?:road|line)|some ?day)",
    r"(?:job|project|order|run|work|frame|build)s? (?:got|was|were|is|are|has been|have been)"
    r"(?: just| now)? (?:pushed|moved|postponed|bumped|delayed|put off|shelved|put on hold)",
    r"(?:auftrag|projekt|job)\w* (?:ist|wurde|sind|wurden) (?:\w+ )?(?:verschoben|vertagt)",
    r"(?:commande|projet|chantier)s? (?:est|a été|sont) (?:\w+ )?(?:reportée?s?|repoussée?s?)",
    r"(?:pedido|proyecto|trabajo)s? (?:se|está|fue|ha sido) (?:\w+ )?(?:aplaz\w+|pospuest\w+)",
    r"(?:ordine|progetto|lavoro) (?:è|è stato|è stata) (?:rinviat[oa]|spostat[oa]|rimandat[oa])",
    r"(?:opdracht|project|klus|order) (?:is|wordt) (?:\w+ )?(?:uitgesteld|verschoven)",
    r"nächstes jahr (?:brauchen|machen|wollen|schauen) wir | l'an prochain,? (?:on|nous) \w+ra\w*",
    r"el año que viene (?:necesit|har|ver)\w+ | l'anno prossimo (?:servir|far|vedr)\w+",
    r"volgend jaar (?:hebben|doen|willen|maken) we",
)
"""'The 2 x .083 job got pushed to next year', 'Next spring we'll look at 1.5 x .065'."""
IF_ALL_GOES_WELL = whole_words(
    *_PUT_OFF,
    rf"{_ONE_DAY},? {_LIKE_ONE} | {_LIKE_ONE}(?:[^.;,]|[.]\d){{0,60}}? {_ONE_DAY}",
    r"irgendwann (?:möchten|brauchen|hätten|wollen|bräuchten|möchte|brauche|hätte) (?:wir|ich)",
    r"un jour,? (?:on|nous|j['e]) ?(?:voudr|aimer|aur)\w+ | alg[úu]n día (?:querr|necesitar)\w+",
    r"un giorno (?:vorre|avre|servir)\w+ | ooit (?:willen|wil|zouden) (?:we|ik)",
    r"if (?:that|this|it|the (?:first|one)\b|they|all)\b(?:[^.;]|[.]\d){0,40}?\b(?:works?|goes"
    r"|turns"
    r"|pans|holds|good|right|happy|does)\b(?:[^.;]|[.]\d){0,80}?\b(?:later|after|next|then|another"
    r"|back (?:to you )?for|in (?:the )?(?:spring|summer|autumn|fall|winter|new year)"
    r"|down the (?:road|line))",
    r"wenn (?:das|der|es|er|alles)\b(?:[^.;]|[.]\d){0,40}?"
    r"\b(?:klappt|funktioniert|läuft|passt|geht|taugt|gut (?:ist|wird))\b"
    r"(?:[^.;]|[.]\d){0,80}?\b(?:später|dann|nächste\w*|nach|danach|im (?:frühjahr|sommer|herbst"
    r"|winter))",
    r"si (?:ça|cela|tout)\b(?:[^.;]|[.]\d){0,30}?\b(?:marche|va|fonctionne|convient)\b"
    r"(?:[^.;]|[.]\d){0,80}?\b(?:plus tard|après|ensuite|prochain\w*|au printemps)",
    r"si (?:eso|todo|esto)?\b(?:[^.;]|[.]\d){0,30}?\b(?:va bien|funciona|sale bien)\b"
    r"(?:[^.;]|[.]\d){0,80}?\b(?:más adelante|después|luego|próxim\w+)",
    r"se (?:quest[oa]|tutto)?\b(?:[^.;]|[.]\d){0,30}?\b(?:va bene|funziona)\b(?:[^.;]|[.]\d){0,80}?"
    r"\b(?:più avanti|dopo|poi|prossim\w+)",
    r"als (?:dat|het|alles|die)\b(?:[^.;]|[.]\d){0,30}?\b(?:werkt|goed gaat|bevalt|lukt)\b"
    r"(?:[^.;]|[.]\d){0,80}?\b(?:later|daarna|dan|volgend\w*)",
)
"""'If that mandrel works out I'll want one for the bumper (1.5 x .095) after Christmas'."""
NEXT_TIME = whole_words(
    r"next (?:year|season|spring|summer|autumn|fall|winter) | later(?: on)? | in the future",
    r"nächste[sn]? (?:jahr|saison) | später | l'an prochain | l'année prochaine | plus tard",
    r"el (?:próximo año|año que viene) | más adelante | l'anno prossimo | più avanti | in futuro",
    r"volgend jaar | volgend seizoen | (?:for|in|until|für|en|pour|para|per|nel|voor) 20\d\d",
)
_NOT_YET = (
    r"(?: just| for)?(?: yet| now| noch| nog)?(?= ?(?:[.,;!)–-]|$|until\b|till\b|as\b|the\b))"
)
NOT_TO_QUOTE = whole_words(
    r"(?:don'?t|do not|no need to|need not|needn'?t) (?:quote|price|offer|include)"
    r"(?: (?:that|it|this|them|those|these)(?: one| size)?)?" + _NOT_YET,
    r"(?:noch )?nicht (?:mit)?(?:anbieten|bepreisen|kalkulieren)",
    r"ne (?:le |la |les )?(?:chiffrez|cotez|comptez) pas | (?:à )?ne pas (?:chiffrer|coter)",
    r"no (?:l[oae]s? )?(?:cotic\w+|oferten?|presupuest\w+)",
    r"non (?:l[oaie] )?quota\w+ | da non quotare",
    r"(?:nog )?niet (?:aanbieden|offreren|prijzen)",
)
"""'Next year there will be a 2.125 x .065 version. Please do not quote that yet.'"""
PRICED_NOW = whole_words(
    r"quot\w+ | pric\w+ | cost\w* | how much | offer\w* | both | all | each | also | as well | too"
    r"| already | right away | angebot\w* | preis\w* | anbiet\w* | beide | alle | auch | devis "
    r"| prix"
    r"| chiffr\w+ | aussi | les deux | precio\w* | cotiz\w+ | también | ambos | prezz\w+ | offerta"
    r"| preventiv\w+ | anche | entrambi | prijs\w* | offerte | ook | beide"
)
"""A later one may be priced now all the same."""
ON_DRAWING = whole_words(
    r"(?:on|in|of|from|auf|sur|en|in|nel|op) (?:the|that|this|our|der|dieser|le|ce|el|ese|il|quel"
    r"|de|deze|sul|sulla) ?(?:same )?(?:drawings?|prints?|zeichnung|plan|dessin|plano|disegno"
    r"|tekening)"
)
"""'The other tube on that drawing': it tells where the tube is, and is nothing that may be"
" needed."""
OTHER_THINGS = whole_words(
    r"wipers? | polish\w* | coat\w* | chrom\w+ | plating | threads? | drawings? | cert\w* "
    r"| samples?"
    r"| deliver\w+ | rods? | balls? | lube | lubric\w+ | stamps? | drill\w* | export | customs",
    r"abstreifer\w* | faltenglätter\w* | zeichnung\w* | zeugnis\w* | muster | beschichtung\w* "
    r"| gewinde"
    r"| lieferung | verchrom\w+ | stange",
    r"lisseurs? | racleurs? | plans? | certificats? | filetage | chrom\w+ | échantillon\w*",
    r"alisador\w* | planos? | certificado\w* | rosca | cromad\w+ | muestra\w*",
    r"raschiator\w+ | disegn\w+ | certificat\w+ | filett\w+ | cromat\w+ | campion\w+",
    r"gladstrijker\w* | plooi\w* | tekening\w* | certifica\w+ | schroefdraad | verchroom\w*",
)
"""It may be these that are done, or not needed."""
