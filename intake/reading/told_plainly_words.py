"""Words that say so plainly that the size beside them is not asked for that it may be left out.

Narrower than ``told_words``, which only take away the trust in a size: there must be a tool that
was delivered, is owned, is somebody else's, quoted already, given up, bought or for sale. Searched
in casefolded words on one size.
"""

from __future__ import annotations

from .patterns import whole_words

_A_TOOL = (
    r"(?:mandrels?|plugs?|tool|ball mandrel|dorne?|\w+dorn|mandrin|mandril|mandrino|anima|doorn)"
)
_ONE = rf"(?:(?:an?|the|one|your|our|my|1|this|that) (?:\S+ ){{0,3}}?(?:{_A_TOOL}|one))"

DELIVERED = whole_words(
    r"(?:you|y'all|you guys|you folks|you lot|your shop|your company)(?:'ve| have| had| already)?"
    r" (?:made|built|sold|supplied|shipped|delivered|furnished|turned|did)",
    rf"(?:got|had|bought|ordered) {_ONE} (?:off|from) (?:you|y'all|your)",
    rf"(?:off|from) you(?: guys)? (?:in|last|back|this|a (?:year|while|month)|for (?!the (?:one|new)))",
    rf"(?:order|delivery|job|po) (?:from|of|in) (?:last )?(?:january|february|march|april|may|june"
    r"|july|august|september|october|november|december|spring|summer|autumn|fall|winter|year"
    r"|month|week) (?:was|were)",
    rf"your {_A_TOOL} (?:for|in) | one of your {_A_TOOL} (?:for|in)",
    r"(?:den|der|die|welchen) sie (?:uns|mir) [^.;\d]{0,40}(?:geliefert|gefertigt|gebaut|gemacht)",
    r"(?:haben|hatten) sie (?:uns|mir) [^.;]{0,60}(?:geliefert|gefertigt|gebaut|gemacht)",
    r"von ihnen (?:haben|hatten|bekommen|erhalten|gekauft|bezogen)",
    rf"ihr (?:\w*dorn) (?:für|läuft)",
    r"vous (?:nous |m')?(?:avez|aviez) (?:déjà )?(?:fourni|livré|fait|fabriqué|vendu)",
    r"(?:acheté|reçu|eu) chez vous | votre mandrin (?:pour|en)",
    r"(?:nos|me) (?:hicist|hicieron|suministr|vendi|fabric|entreg)\w+ | vuestro mandril (?:de|para)",
    r"(?:ci|mi) avete (?:già )?(?:fatto|fornito|venduto|consegnato|costruito)",
    r"(?:comprato|preso) da voi | il vostro mandrino (?:per|da)",
    r"(?:hebben|heeft) (?:jullie|u) (?:ons|mij) [^.;]{0,60}(?:geleverd|gemaakt|verkocht)",
    r"(?:jullie|u) (?:ons|mij) (?:\S+ ){0,4}(?:geleverd|gemaakt|verkocht) (?:hebben|heeft)",
    r"van jullie (?:gekocht|gekregen)",
)
"""A tool of ours that is there: 'you made us a 2-1/2 x .065 back in June'."""
OWNED = whole_words(
    rf"(?:i|we)(?:'ve)? (?:already |still |do )?(?:have|own|got|have got) {_ONE}(?: already)?"
    r" (?:for|to suit|that fits)",
    rf"(?:i|we) (?:already )?(?:have|own) {_ONE} for",
    rf"(?:i|we)(?:'ve)? (?:already )?(?:have|got|own) the same",
    r"(?:in stock|on the shelf|in the (?:rack|drawer))"
    r" (?:we|i) (?:already )?(?:have|have already|own|got)",
    r"(?:we|i) have (?:already )?in stock | (?:we|i) (?:have )?already (?:have |own |got )?the same",
    rf"(?:the |my |our )?(?:current|existing|present) (?:one|{_A_TOOL})(?: (?:i|we) (?:have|run))?"
    r" is (?:for|an?|the)",
    rf"(?:wir haben|ich habe) (?:bereits|schon) (?:einen|den) (?:\w*dorn)",
    rf"(?:einen|den) \w*dorn (?:für|in) [^.;]{{1,40}} (?:haben wir|habe ich|besitzen wir)"
    r" (?:schon|bereits)",
    rf"(?:nous avons|on a|j'ai) déjà (?:un|le) mandrin | (?:ya tenemos|ya tengo) (?:un|el) mandril",
    rf"(?:abbiamo|ho) già (?:un|il) mandrino | (?:we hebben|ik heb) al (?:een|de) doorn",
)
"""A tool that the sender has: 'I have a mandrel for 1.5 x .083', 'the same with wall 1.5'."""
_KIN = (
    r"(?:friend|buddy|pal|mate|neighbou?r|brother|sister|dad|father|uncle|cousin|competitor"
    r"|competition)s?(?:-in-law)?"
)
"""Not those of one's own shop: a colleague's job is the shop's."""
SOMEBODY_ELSES = whole_words(
    rf"(?:(?:my|his|her|our|a|your|the) (?:\w+ )?)?{_KIN}(?: (?!(?:and|or|to|who wants)\b)\S+){{0,4}}?"
    r" (?:runs?|bends?|uses?|used|owns?|did|swears|bought)",
    rf"(?:my|a|our) {_KIN}(?: \S+){{0,2}}? (?:has|have|got)\b[^.;]{{0,60}}(?:his|her|their) (?:problem|own"
    r"|business|thing|job)",
    rf"(?:my|a|our) {_KIN}(?: \S+){{0,2}}? (?:has|have|got) (?:one of yours|your)",
    rf"(?:made|built|did|sold|turned) (?:\S+ ){{0,4}}(?:for )?(?:my|a|one of my) {_KIN}",
    r"(?:mein|ein|unser)\w* (?:freund|kumpel|nachbar|bekannter|schwager|bruder)\w*"
    r" (?:fährt|biegt|nimmt|benutzt)",
    r"(?:mon|un|notre) (?:ami|voisin|copain|frère|beau-frère) (?:cintre|utilise)",
    r"(?:mi|un|nuestro) (?:amigo|vecino|cuñado|hermano) (?:usa|curva|dobla)",
    r"(?:il mio|mio|un) (?:amico|vicino|cognato|fratello) (?:usa|piega|curva)",
    r"(?:mijn|een) (?:vriend|buurman|zwager|broer|maat) (?:gebruikt|buigt|rijdt)",
)
"""'My buddy runs 1.5 x .095 on his sand rail'."""
QUOTED = whole_words(
    r"(?:thanks|thank you|thx|many thanks) for (?:the|your) (?:\S+ )?(?:quot\w+|offer|price)"
    r"(?: \S+){0,3}? (?:of|for|on)",
    r"(?:you|already) (?:have )?(?:already )?quoted(?: us| me)?(?: on| for)?",
    r"(?:vielen dank|danke|besten dank) für (?:das|ihr) angebot",
    r"merci pour (?:le|votre) (?:devis|offre) | gracias por (?:la|su|el|vuestra) (?:oferta|presup\w+)",
    r"grazie per (?:l'|la vostra |il vostro |il )?(?:offerta|preventivo)",
    r"(?:bedankt|dank) voor (?:de|uw|jullie) offerte",
)
"""Priced already: 'thanks for the quotation of 12.7 x 1.24'."""
GIVEN_UP = whole_words(
    r"(?:i|we|they|he|which)(?: \w+)? (?:don'?t|do not|doesn'?t|no longer|stopped)"
    r" (?:run|runs|use|uses|using|make|making|bend|bending|running|build|building|need|do) "
    r"(?:(?:that|this|it)(?: size| one| tube)?)?(?: any ?more| anymore)?",
    r"(?:size|tube|model|job|one) (?:is |was |has been )?(?:discontinued|no longer (?:used|made|run))",
    r"(?:wird|werden) nicht mehr (?:gebraucht|gefertigt|gebogen|verwendet)",
    r"(?:laufen|läuft|brauchen wir|machen wir|fahren wir) (?:\w+ )?nicht mehr",
    r"(?:nous ne|on ne) (?:faisons|fait|cintrons|cintre|l'utilisons|l'utilise) plus",
    r"ya no (?:la |lo )?(?:usamos|hacemos|curvamos|uso|hago)",
    r"non (?:lo |la )?(?:usiamo|facciamo|pieghiamo|uso|faccio) più",
    r"(?:gebruiken|maken|buigen|draaien) we niet meer",
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
    r"(?:sono|è) (?:pezzi )?comprat[iae] | zijn (?:inkoopdelen|gekocht) | kopen we (?:kant|klaar|in)",
)
"""'... ferrules, but those are bought parts'."""
FOR_SALE = whole_words(
    r"(?:can|could|will|would|want to|like to|wanna|willing to|happy to) sell(?: you| it| them| that)?",
    r"sell (?:you|it|them|that) | to sell | selling | for sale | trade[- ]?in | buy it back",
    r"(?:zu verkaufen|verkaufen) | à vendre | vendre | en venta | se vende | vendo | in vendita",
    r"te koop | verkopen",
)
"""'I have a 63.5 x 3 set here I can sell you back'."""

AGAIN_HARMLESS = whole_words(
    r"(?:hey|hello|hi|hallo|morning|evening|afternoon|thanks|thank you|me|us|you) again",
    r"(?:pric\w+|cost\w*|terms|delivery|finish|lead time|quality|paid|pay|deal|discount|rate)"
    r"(?: \w+)?(?: the)? same(?: as)? | same (?:pric\w+|terms|delivery|finish|deal|discount|way"
    r"|thread|machine|bender|quality|tube material|material|grade)",
    r"(?:never|not|don't want to \w+(?: \w+)?) again | once again",
)
"""Words that only look as if a tool were wanted once more."""
WANTED_ALL_THE_SAME = whole_words(
    r"both | each | all (?:of )?(?:them|these|those|three|two) | either | every one | the pair",
    r"as well | too(?= ?(?:[.,;!?]|$)) | (?:one|two|three|\d) more(?! mandrel as)",
    r"more of (?:those|them|that|it) | re-?quote | re-?order\w* | renew\w* | still (?:valid|good for)",
    r"accept\w* | go(?:ing)? ahead | proceed | confirm\w* | we'?ll take | i'?ll take | po (?:is )?attached",
    r"attached (?:our |the )?po | damaged | cracked | stolen | gone | missing | chipped | galled",
    r"seized | dead | shot | chew\w* | (?:is|it's|got) (?:now )?bent | lost | broke\w* | worn | spare",
    r"(?:for|and) (?:him|her|them|us both)(?: too| as well)? | like (?:his|hers|theirs)",
    r"(?:two|2|three|3|four|4) (?:\w+ )?(?:mandrels|sizes|tubes|tools) | instead | return\w* | swap\w*",
    r"same (?:here|for me|as (?:his|mine|ours)) | me too | mine(?:'s| is) (?:the )?same | so do (?:i|we)",
    r"the two | on our (?:bender|machine|shop) | our (?:bender|machine)",
    r"on his behalf | on behalf | for the two of us | for my (?:friend|buddy|mate|brother|neighbou?r)",
    r"beide[nrs]? | jeweils | je einen? | ebenfalls | kaputt | gebrochen | verschlissen | bestellen wir",
    r"les deux | chacun\w* | également | cassé | usé | ambos | cada uno | los dos | también | roto",
    r"entrambi | tutti e due | ciascuno | anche | rotto | allebei | elk | ook | kapot | versleten",
    r"akzeptier\w* | bestätig\w* | accept\w+ | confirm\w+ | bestell\w+ | command\w+ | pedimos",
    r"ordiniamo",
)
"""Said of a size that is there, quoted or another's: it may be wanted all the same."""
PLURAL_TOOLS = whole_words(
    "mandrels | plugs | dorne | biegedorne | mandrins | mandriles | mandrini | doornen",
)
