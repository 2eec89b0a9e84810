"""Words that say so plainly that the size beside them is not asked for that it may be left out.

Narrower than ``told_words``, which only take away the trust in a size: there must be a tool that
was delivered, is owned, is somebody else's, quoted already, given up, bought or for sale. Searched
in casefolded words on one size.
"""

from __future__ import annotations

from ...late_pattern import late_pattern
from ..text.patterns import whole_words
from .told_words import PERSON

_A_TOOL = (
    r"(?:mandrels?|plugs?|tool|ball mandrel|dorne?|\w+dorn|mandrin|mandril|mandrino|anima|doorn)"
)
_ONE = rf"(?:(?:an?|the|one|your|our|my|1|this|that) (?:\S+ ){{0,3}}?(?:{_A_TOOL}|one))"

_GAP = r"(?:[^.;]|[.]\d){0,60}"

DELIVERED = whole_words(
    r"(?:you|y'all|you guys|you folks|you lot|your shop|your company)(?:'ve| have| had| already)?"
    r" (?:made|built|sold|supplied|shipped|delivered|furnished|turned|did)",
    rf"(?:got|had|bought|ordered) {_ONE} (?:off|from) (?:you|y'all|your)",
    rf"with (?:your|one of your) {_A_TOOL}",
    r"(?:off|from) you(?: guys)? (?:in|last|back|this|a (?:year|while|month)|for (?!the (?:one"
    r"|new)))",
    r"(?:order|delivery|job|po) (?:from|of|in) (?:last )?(?:january|february|march|april|may|june"
    r"|july|august|september|october|november|december|spring|summer|autumn|fall|winter|year"
    r"|month|week) (?:was|were)",
    rf"your {_A_TOOL} (?:for|in) | one of your {_A_TOOL} (?:for|in)",
    rf"(?:den|der|die|welchen) sie (?:uns|mir) {_GAP}(?:geliefert|gefertigt|gebaut|gemacht)",
    rf"(?:(?:haben|hatten) sie|sie haben|sie hatten) (?:uns|mir) {_GAP}"
    r"(?:geliefert|gefertigt|gebaut|gemacht|verkauft)",
    r"von ihnen (?:haben|hatten|bekommen|erhalten|gekauft|bezogen)",
    r"ihr (?:\w*dorn) (?:für|läuft)",
    r"vous (?:nous |m')?(?:avez|aviez) (?:déjà )?(?:fourni|livré|fait|fabriqué|vendu)",
    r"(?:acheté|reçu|eu) chez vous | votre mandrin (?:pour|en)",
    r"(?:nos|me) (?:hici|suministr|vendi|fabric|entreg)\w+ | vuestro mandril (?:de|para)",
    r"(?:ci|mi) avete (?:già )?(?:fatto|fornito|venduto|consegnato|costruito)",
    r"(?:comprato|preso) da voi | il vostro mandrino (?:per|da)",
    rf"(?:(?:hebben|heeft) (?:jullie|u)|(?:jullie|u) (?:hebben|heeft|hebt)) (?:ons|mij) {_GAP}"
    r"(?:geleverd|gemaakt|verkocht)",
    r"(?:jullie|u) (?:ons|mij) (?:\S+ ){0,4}(?:geleverd|gemaakt|verkocht) (?:hebben|heeft)",
    r"van jullie (?:gekocht|gekregen)",
)
"""A tool of ours that is there: 'you made us a 2-1/2 x .065 back in June'."""
OWNED = whole_words(
    rf"(?:{_A_TOOL}|one|set) (?:on|in) (?:our|my|the) (?:shelf|rack|drawer|shop|cabinet)",
    rf"(?:i|we)(?:'ve)? (?:already |still |do )?(?:have|own|got|have got) {_ONE}(?: already)?"
    r" (?:for|to suit|that fits)",
    rf"(?:i|we) (?:already )?(?:have|own) {_ONE} for",
    r"(?:i|we)(?:'ve)? (?:already )?(?:have|got|own) the same",
    r"(?:in stock|on the shelf|in the (?:rack|drawer))"
    r" (?:we|i) (?:already )?(?:have|have already|own|got)",
    r"(?:we|i) have (?:already )?in stock",
    r"(?:we|i) (?:have )?already (?:have |own |got )?the same",
    rf"(?:the |my |our )?(?:current|existing|present) (?:one|{_A_TOOL})(?: (?:i|we) (?:have|run))?"
    r" is (?:for|an?|the)",
    r"(?:wir haben|ich habe) (?:bereits|schon) (?:einen|den) (?:\w*dorn)",
    r"(?:einen|den) \w*dorn (?:für|in) [^.;]{1,40} (?:haben wir|habe ich|besitzen wir)"
    r" (?:schon|bereits)",
    r"\d+er[ -]\w*dorne? [^.;?!]{0,24}?\b(?:haben wir|hab(?:e)? ich|besitzen wir) (?:schon"
    r"|bereits|ja)",
    r"\d+er[ -]\w*dorne? [^.;?!]{0,24}?\b(?:ist|sind|liegt|steht) (?:schon |bereits |ja )?"
    r"(?:da|hier|vorhanden)",
    r"(?:wir haben|ich habe|haben wir|hab ich) (?:(?:schon|bereits|ja|noch) )?(?:den|einen) "
    r"\d+er[ -]\w*dorn",
    r"(?:nous avons|on a|j'ai) déjà (?:un|le) mandrin | (?:ya tenemos|ya tengo) (?:un|el) mandril",
    r"(?:abbiamo|ho) già (?:un|il) mandrino | (?:we hebben|ik heb) al (?:een|de) doorn",
)
"""A tool that the sender has: 'I have a mandrel for 1.5 x .083', 'the same with wall 1.5'."""
ORDERED = whole_words(
    rf"(?:po|order|purchase order) (?:no\.? ?)?(?:\S+ )?for\b{_GAP}?\b(?:went out|is out"
    r"|(?:was|is|has been) (?:placed|sent|issued|mailed|with you|on its way))",
    r"(?:is|are|was|were|been) (?:already |now |all )?(?:on order|ordered)(?: (?:with|from) you)?",
    rf"(?:i|we)(?:'ve)? (?:have )?(?:already |just )(?:ordered|placed (?:the|an|our) (?:order|po))"
    rf"{_GAP}?\bfor",
    rf"(?:haben wir|habe ich|wir haben|ich habe) {_GAP}?(?:gestern|bereits|schon|letzte woche)"
    r" bestellt",
    r"(?:nous avons|on a|j'ai) (?:déjà |hier )commandé | ya (?:hemos |he )pedido",
    r"(?:abbiamo|ho) già ordinato | (?:hebben we|we hebben|heb ik|ik heb) al besteld",
)
"""Ordered of us already: 'PO for the 1.5 x .065 went out to you yesterday'."""
_KIN = (
    r"(?:friend|buddy|pal|mate|neighbou?r|brother|sister|dad|father|uncle|cousin|competitor"
    r"|competition)s?(?:-in-law)?"
)
"""Not those of one's own shop: a colleague's job is the shop's."""
SOMEBODY_ELSES = whole_words(
    rf"(?:(?:my|his|her|our|a|your|the) (?:\w+ )?)?{_KIN}(?: (?!(?:and|or|to"
    rf"|who wants)\b)\S+){{0,4}}?"
    r" (?:runs?|bends?|uses?|used|owns?|did|swears|bought)",
    rf"(?:(?:my|a|our|also) )?{_KIN}(?: \S+){{0,2}}? (?:has|have|got)\b(?:[^.;]|\.\d){{0,60}}"
    r"(?:his|her|their) (?:problem|own|business|thing|job)",
    rf"(?:my|a|our) {_KIN}(?: \S+){{0,2}}? (?:has|have|got) (?:one of yours|your)",
    rf"(?:made|built|did|sold|turned) (?:\S+ ){{0,4}}(?:for )?(?:my|a|one of my) {_KIN}",
    r"(?:mein|ein|unser)\w* (?:freund|kumpel|nachbar|bekannter|schwager|bruder)\w*"
    r"(?: von (?:mir|uns))? (?:fährt|biegt|nimmt|benutzt)",
    r"(?:mon|un|notre) (?:ami|voisin|copain|frère|beau-frère) (?:cintre|utilise|fait|a du)",
    r"(?:mi|un|nuestro) (?:amigo|vecino|cuñado|hermano) (?:usa|curva|dobla|tiene)",
    r"(?:il mio|mio|un) (?:amico|vicino|cognato|fratello) (?:usa|piega|curva|ha)",
    r"(?:mijn|een) (?:vriend|buurman|zwager|broer|maat) (?:gebruikt|buigt|rijdt)",
)
"""'My buddy runs 1.5 x .095 on his sand rail'."""
TAKEN_UP_AGAIN = whole_words(
    r"but | except\w* | spares? | again | still | until | unless | aber | außer | mais | sauf",
    r"pero",
    "salvo | ma | tranne | maar | behalve",
)
"""Behind words that give a size up: it may be wanted all the same."""
QUOTED = whole_words(
    r"(?:thanks|thank you|thx|many thanks) for (?:the|your) (?:\S+ )?(?:quot\w+|offer|price)"
    r"(?: \S+){0,3}? (?:of|for|on)",
    r"(?:thanks|thank you|thx) for (?:the |your )?(?:quote|quotation|offer) \w*\d[\w-]*"
    r"(?=,? ?\(| (?:for|on|of)\b)",
    r"(?:you|already) (?:have )?(?:already )?quoted(?: us| me)?(?: on| for)?",
    r"(?:vielen dank|danke|besten dank) für (?:das|ihr) angebot",
    r"merci pour (?:le|votre) (?:devis|offre)",
    r"gracias por (?:la|su|el|vuestra) (?:oferta|presup\w+)",
    r"grazie per (?:l'|la vostra |il vostro |il )?(?:offerta|preventivo)",
    r"(?:bedankt|dank) voor (?:de|uw|jullie) offerte",
)
"""Priced already: 'thanks for the quotation of 12.7 x 1.24'."""
_RUN = r"(?:run|use|make|bend|build|need|do)"
GIVEN_UP = whole_words(
    rf"(?:don'?t|do not|doesn'?t|does not) {_RUN}\b(?:[^.;!?]|\.\d){{0,40}}\b(?:any ?more"
    rf"|any longer)",
    rf"(?:no longer {_RUN}s?|stopped (?:running|using|making|bending|building|doing))",
    r"(?:size|tube|model|job|one) (?:is |was |has been )?(?:discontinued|no longer (?:used|made"
    r"|run))",
    r"(?:wird|werden) nicht mehr (?:gebraucht|gefertigt|gebogen|verwendet)",
    r"(?:laufen|läuft|brauchen wir|machen wir|fahren wir) (?:\w+ )?nicht mehr",
    r"(?:nous ne|on ne) (?:faisons|fait|cintrons|cintre|l'utilisons|l'utilise) plus",
    r"ya no (?:la |lo )?(?:usamos|hacemos|curvamos|uso|hago)",
    r"non (?:lo |la )?(?:usiamo|facciamo|pieghiamo|uso|faccio) più",
    r"(?:gebruiken|maken|buigen|draaien) we niet meer",
    r"(?:not|\w+n't) (?:be |being |going to be |to be )?replac(?:ed|ing)(?: (?:it|that"
    r"|this)(?: one)?)?",
    r"(?:wird|werden|soll|braucht) (?:\w+ )?nicht (?:mehr )?ersetzt | ersetzen wir (?:\w+ )?nicht",
    r"ne (?:le |la |les )?(?:remplaçons|remplace|remplacerons|remplacera) pas",
    r"(?:n'est|ne sera) pas remplacée?",
    r"no (?:l[oa]s? )?(?:vamos a (?:reponer|reemplazar|sustituir)|repon\w+|reemplaz\w+|sustitu\w+)",
    r"no se (?:va a )?(?:repon|reemplaz|sustitu)\w+ | non (?:l[oa] )?(?:sostituiamo|sostituiremo)",
    r"non (?:va|vanno|viene|verrà|sarà) sostituit[oaie] | (?:wordt|worden) (?:\w+ )?niet vervangen",
    r"vervangen (?:we|wij) (?:\w+ )?niet",
)
"""'I don't run that size any more'."""
BOUGHT_PARTS = whole_words(
    r"(?:bought(?:[ -]?(?:in|out))?|purchased|ready[- ]?made) (?:parts?|items?|components?|bends)",
    r"(?:those|these|they|which) (?:are|come|get) (?:bought(?:[ -]in)?|purchased|ready[- ]?bent"
    r"|pre-?bent)",
    r"we (?:buy|purchase) (?:those|these|them|that)(?: in)?(?: ready| finished| bent)?",
    r"(?:sind|ist) (?:ein )?(?:zukaufteile?|kaufteile?|zugekauft) | kaufen wir (?:fertig|zu)",
    r"(?:sont|est) (?:des |une )?(?:pièces? )?achetée?s? | on les achète",
    r"(?:son|es) (?:piezas? )?comprad[ao]s? | los compramos (?:hechos|curvados)",
    r"(?:sono|è) (?:pezzi )?comprat[iae] | zijn (?:inkoopdelen|gekocht)",
    r"i (?:buy|purchase) (?:those|these|them|that)(?: in)?(?: ready| finished| bent)?",
    r"je les achète(?: toutes?| tous| tout)?(?: faite?s)? | (?:die|das|den) kaufe ich(?: fertig)?",
    r"kaufe ich (?:fertig|zu) | (?:los|las) compro(?: ya)? hech[oa]s",
    r"(?:li|le) compro già fatt[ie]",
    r"(?:die )?koop ik (?:kant|klaar|in)",
    r"kopen we (?:kant|klaar|in)",
)
"""'... ferrules, but those are bought parts'."""
FOR_SALE = whole_words(
    r"sell (?:you|it|that|this|them|one)(?: back)?",
    rf"(?:set|one|{_A_TOOL})\b[^.;]{{0,40}}\b(?:for sale|to sell|selling|zu verkaufen|abzugeben"
    rf"|à vendre"
    r"|en venta|in vendita|da vendere|te koop)",
    r"trade[- ]?in | buy it back",
)
"""'I have a 63.5 x 3 set here I can sell you back'."""

NO_MANDREL = whole_words(
    r"(?:made|built|sold|supplied|shipped|delivered|furnished|turned|did|got|bought|ordered|ha"
    r"ve|own"
    r"|sell|selling)(?: (?!(?:for|on|to|with|in|of|from|off|mandrels?|plugs?)\b)\S+){0,7}?"
    r" (?:dies?|formers?|benders?|machines?|wipers?|tub(?:e|es|ing)|pipes?|stock|jobs?|hoops?"
    r"|rails?"
    r"|orders? for)",
    r"(?:biegeform|matrize|matrice|matriz|matrijs|maschine|machine|macchina|máquina|cintreuse)\w*"
    r" (?:geliefert|fourni\w*|livré\w*|fornit\w+|geleverd)",
)
"""What was delivered, or is owned or sold, is no mandrel: a die, a bender, tube."""
AGAIN_HARMLESS = whole_words(
    r"(?:did|made|bent|built) the (?:last|previous|first) (?:one|lot|set)",
    r"(?:hey|hello|hi|hallo|morning|evening|afternoon|thanks|thank you|me|us|you) again",
    r"(?:pric\w+|cost\w*|terms|delivery|finish|lead time|quality|paid|pay|deal|discount|rate)"
    r"(?: \w+)?(?: the)? same(?: as)? | same (?:pric\w+|terms|delivery|finish|deal|discount|way"
    r"|thread|machine|bender|quality|tube material|material|grade)",
    r"(?:never|not) again | once again",
    r"instead of (?:\w+ing|(?:\w+ )?(?:elbows?|fittings?|bends|mitres?|joints?|segments?"
    r"|sections?))",
    r"(?:an)?statt (?:\w+ )?(?:bögen|\w*bögen|schweißen|fittings?|segmente?n?)",
    r"au lieu (?:de (?:coudes|souder|raccords)|d'acheter) | en (?:vez|lugar) de (?:codos|soldar"
    r"|comprar)",
    r"invece (?:di|delle|che) (?:curve|saldare|comprare) | in plaats van (?:bochten|lassen"
    r"|fittings)",
    r"\d{1,3} (?:bends?|tubes?|legs?|cuts?|holes?|feet|ft|hits|bögen|biegungen|rohre|coudes|tubos"
    r"|codos"
    r"|curve|tubi|bochten|buizen) (?:each|apiece|per \w+|jeweils|chacun\w*|cada uno|ciascun\w*)",
    r"(?:bestellung|auftrag|po|order|commande|pedido|ordine|bestelling)"
    r" (?:will |is to |shall |to )?(?:follows?|folgt|suit|suivra|sigue|segue|seguir[áà]|volgt)",
    r"same(?: thing| one| mandrel| again)? (?:but|only|just|in|for|at)(?: the| a)?(?= \W?\d)",
    r"another(?: one| mandrel)? (?:for|in|at|to suit|to fit|size)",
    r"(?:noch|noch mal) ein(?:en)?(?: \w*dorn)? (?:für|in) | un autre(?: mandrin)? (?:pour|en)",
    r"(?:one|two|\d) more(?: \w+)? (?:as|for|in|to)(?! (?:that|this|it|those|them))",
    r"otro(?: mandril)? (?:para|de|en) | un altro(?: mandrino)? (?:per|da|in)",
    r"nog een(?: doorn)? (?:voor|in)",
    r"(?:maybe|perhaps|possibly|might (?:want|need)|may (?:want|need))"
    r" (?:another|a second|one more)(?: one| mandrel)?"
    r" (?:later|next|come|in|after|down the|some ?day|one day)",
    r"vielleicht (?:später |im \w+ |nächstes jahr )noch (?:einen?|ein zweiter)",
    r"peut-être un (?:autre|deuxième) (?:plus tard|l'an prochain|l'année prochaine)",
    r"(?:quizás?|tal vez) otro más adelante | forse un (?:altro|secondo) più avanti",
    r"misschien (?:later|volgend jaar) nog een(?: tweede)?",
)
"""Words that only look as if a tool were wanted once more."""
WANTED_ALL_THE_SAME = whole_words(
    r"both | each | all (?:of )?(?:them|these|those|three|two) | either | every one | the pair",
    r"(?:quote|want|need|get|make|do|give)(?: me| us)? the same(?=,? (?:and|plus)\b| ?(?:[.;!?]"
    r"|$)) | (?:want|like|need|plan|hope) to(?=,)",
    r"cop(?:y|ies) | asks? (?:me |us |you )?(?:for|to)",
    r"as well | too(?= ?(?:[.,;!?]|$)) | (?:one|two|three|\d) more",
    r"more of (?:those|them|that|it) | re-?quote | re-?order\w* | renew\w*",
    r"still (?:valid|good for)",
    r"accept\w* | go(?:ing)? ahead | proceed | confirm\w* | we'?ll take | i'?ll take",
    r"po (?:is )?attached",
    r"attached (?:our |the )?po | damaged | cracked | stolen | gone | missing | chipped | galled",
    r"seized | dead | shot | chew\w* | (?:is|it's|got) (?:now )?bent | lost | broke\w* | worn",
    r"spares?",
    r"never (?:arrived|came|got here) | (?:not|hasn't|haven't|still) (?:arrived|received|waiting)",
    r"too (?:long|short|big|small|tight|loose) | does(?:n't| not) fit(?! (?:us|me|our|my)\b)",
    r"wrong | redo | return\w* | swap\w*",
    r"(?:for|and) (?:him|her|them|us both)(?: too| as well)? | like (?:his|hers|theirs)",
    r"(?:two|2|three|3|four|4) (?:\w+ )?(?:mandrels|sizes|tubes|tools) | instead",
    r"same (?:here|for me|as (?:his|mine|ours)) | me too | mine(?:'s| is) (?:the )?same",
    r"so do (?:i|we) | the two(?: of (?:us|them))?",
    r"on (?:his|her|their) behalf | for my (?:friend|buddy|mate|brother|neighbou?r)",
    r"(?:that|this|it|those|them)(?: one)? (?:and|plus)",
    rf"(?:another(?! {PERSON})|a second(?![ -]hand))(?: one| mandrel)?",
    r"the (?:first|old|other|previous|last) (?:one|size|mandrel)",
    r"beide[nrs]? | jeweils | je ein(?:en|e|er)? | ebenfalls | kaputt | gebrochen | verschlissen",
    r"davon | noch ein(?:en)? | les deux | chacun\w* | également | cassé | usé",
    r"un (?:autre|deuxième)",
    r"ambos | cada uno | los dos | también | roto | otro | un segundo | eso y",
    r"entrambi | tutti e due | ciascuno | anche | rotto | un (?:altro|secondo) | quello e",
    r"allebei | elk | ook | kapot | versleten | nog een | een tweede",
    r"akzeptier\w* | bestätig\w* | bestell\w+ | command\w+ | pedimos | ordiniamo | repeat",
    r"encore un",
)
"""Said of a size that is there, quoted or another's: it may be wanted all the same."""
OF_SEVERAL = whole_words(
    r"the other (?:two|2|three|3|four|4|ones) | the others | the rest | the remaining(?: \w+)?",
    r"die (?:anderen|übrigen|restlichen) | les (?:\w+ )?autres | l[ao]s otr[ao]s | gli altri",
    r"le altre | de andere(?: \w+)?",
    r"both | each | the two | the pair | all (?:of )?(?:them|these|those) | beide[nrs]? | jeweils",
    r"je ein(?:en|e|er)? | les deux | chacun\w* | ambos | cada uno | los dos | entrambi | tutti e"
    r" due",
    "ciascuno | allebei | elk",
)
"""Said where several sizes are left, it may be said of those."""
THIS_ONE = late_pattern(
    r"[,;]\s(?:(?:but |and )?(?:this|the new) (?:one|time|tube|mandrel)|dieser|dieses|celui-ci|este"
    r"|questo|deze)\s(?:should|must|shall|needs? to|has to|is to|soll\w*|muss|doit|debe|deve"
    r"|moet)\b"
)
"""'In stock we have the same with wall 1.5, this one should have ...': here the other begins."""
ONE_AGAIN = late_pattern(r"(?:just |only )?(?:one|1|two|2)(?: piece| off| pc)? again\W*")
ON_OUR_MACHINE = whole_words("(?:on|uses|borrows) (?:our|my) (?:bender|machine|shop)")
"""'My uncle uses my bender for ...': what he bends may be wanted here."""
MAY_SERVE = whole_words(
    r"(?:would|will|could|can) (?:the|that|our) (?:\S+ ){1,3}(?:run|work|fit|do|go|serve)"
)
"""'Would the 2 mm one run in it meanwhile?': it is there."""
PLURAL_TOOLS = whole_words(
    "mandrels | plugs | dorne | biegedorne | mandrins | mandriles | mandrini | doorn(?:en|s)",
)
