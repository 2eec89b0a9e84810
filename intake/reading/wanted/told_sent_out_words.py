"""Words that say plainly that the tube beside them is bent elsewhere, needs no mandrel, is seen to
already, or is made no more.

As ``told_unneeded_words``: searched in casefolded words on one size.
"""

from __future__ import annotations

from ..text.patterns import whole_words

_END = r"(?= ?(?:[.,;:!)–-]|$|and\b|so\b|but\b|und\b|et\b|y\b|e\b|en\b|donc\b|also\b|dus\b))"
_GAP = r"(?:[^.;?!]|[.]\d){0,60}?"
_ELBOWS = (
    r"(?:(?:an?|ready|finished|ready[- ]made|weld(?:ing)?|butt[- ]?weld|forged|cast|standard|stock"
    r"|sweep|short|long)[ -])*(?:elbows?|bends?|weld fittings?|fittings?|returns?)"
)
_BOGEN = (
    r"(?:ein\w* |fertige?\w* )*(?:\w*bogen|\w*bögen|formstück\w*|fittings?|fertigteile?\w*)"
    r"(?: (?:zu|ein))?"
)
BOUGHT_BENT = (
    rf"(?:we|i|they) (?:always |just |simply )?(?:buy|get|purchase|source)(?: (?:it|that|this|those"
    rf"|them|these))?(?: in)? (?:as|in) {_ELBOWS}",
    rf"(?:is|are|gets?|'s|comes?) (?:bought|purchased)(?: in)?(?: as)? (?:{_ELBOWS}"
    r"|(?:ready[- ]|pre-?|already )?bent)",
    r"(?:we|i|they) (?:always |just )?(?:buy|get|purchase)(?: (?:it|that|this|those|them|these))?"
    r"(?: in)? (?:ready[- ]|pre-?|already )?bent",
    rf"(?:is|are|gets?) (?:made|done|solved|built) (?:with|from|as|out of) {_ELBOWS}",
    rf"(?:kaufen|beziehen|nehmen|holen|bestellen) wir (?:\w+ )?(?:als|in form von) {_BOGEN}",
    rf"(?:da|hier|dafür|dort) nehmen wir {_BOGEN} | (?:wird|werden) (?:als \w+ )?zugekauft",
    r"(?:nous |on )?(?:l[ae]s? |l')(?:achetons|achète|prenons|prend) (?:en|comme|sous forme de)"
    r" (?:coudes?|courbes?|raccords?) | (?:est|sont) (?:achetée?s?|prise?s?) en coudes?",
    r"(?:l[oa]s? )?(?:compramos|pedimos) (?:ya )?(?:como|en) (?:codos?|curvas?)",
    r"(?:l[oaie] )?(?:compriamo|prendiamo|acquistiamo) (?:già )?(?:come|in) (?:curv[ae]|gomit[oi]"
    r"|raccord[oi])",
    r"(?:kopen|nemen|halen|betrekken) we (?:\w+ )?(?:als|in) (?:\w+ )?(?:bocht(?:en)?|knie(?:ën)?"
    r"|fittingen|hulpstuk\w*)(?: in)?",
)
"""'108 x 2.5 we buy as elbow': nobody bends it."""
SENT_OUT = whole_words(
    *BOUGHT_BENT,
    r"(?:is|are|gets?|goes|it's|that's|those are|we have it|we have that|we have those|we)(?: all)?"
    r" (?:sub-?contracted|outsourced|farmed out|subbed out|sent out|bent outside|bought in bent)",
    r"(?:lassen|geben|vergeben) wir (?:\w+ )?(?:auswärts|extern|außer haus|nach außen)(?: biegen)?",
    r"(?:lassen wir|wird|werden) (?:\w+ )?(?:auswärts|extern|außer haus) (?:biegen|gebogen)",
    r"(?:nous|on) (?:l[ae]s? )?(?:faisons|fait|donnons) faire (?:à l'extérieur|dehors|ailleurs)",
    r"(?:est|sont) sous-traitée?s? | (?:nous|on) (?:l[ae]s? )?sous-trait\w+",
    r"(?:l[oa]s? )?(?:subcontratamos|hacemos fuera|mandamos (?:a )?(?:hacer|doblar) fuera)",
    r"(?:l[oaie] )?(?:facciamo fare|mandiamo|diamo) (?:fuori|all'esterno|a un terzista)",
    r"(?:besteden|zetten) we uit | (?:laten|doen) we (?:extern|buiten de deur)(?: buigen)?",
)
"""'Le tube de 35, nous le faisons faire à l'extérieur'."""
NO_MANDREL_FOR_IT = whole_words(
    rf"(?:bend|bent|bending|run|running|do|doing){_GAP}\bwithout (?:a |any )?mandrel\b{_GAP}\b"
    r"(?:works?|goes|runs?|bends?|comes? out|is|been) (?:\w+ ){0,2}(?:fine|well|good|great|ok|okay"
    r"|no problem)",
    rf"biegen\b{_GAP}\bohne \w*dorn\b{_GAP}\b(?:klappt|geht|läuft|funktioniert) (?:\w+ ){{0,2}}"
    r"(?:gut|prima|super|problemlos|bestens|einwandfrei)",
    rf"cintr\w+\b{_GAP}\bsans mandrin\b{_GAP}\b(?:marche|va|fonctionne|passe) (?:\w+ ){{0,2}}"
    r"(?:bien|parfaitement|impeccable)",
    rf"(?:curva|dobla)\w+\b{_GAP}\bsin mandril\b{_GAP}\b(?:va|funciona|sale) (?:\w+ ){{0,2}}"
    r"(?:bien|perfecto|perfectamente)",
    rf"(?:curvia|piegh|curva|piega)\w+\b{_GAP}\bsenza (?:anima|mandrino)\b{_GAP}\b(?:va|funziona"
    r"|viene) (?:\w+ ){0,2}(?:bene|benissimo|perfettamente)",
    rf"(?:buigen|gebogen)\b{_GAP}\bzonder doorn\b{_GAP}\b(?:werkt|gaat|loopt) (?:\w+ ){{0,2}}"
    r"(?:goed|prima|perfect)",
    r"no (?:mandrel|tool(?:ing)?) (?:is |was )?(?:wanted|needed|required|necessary)"
    r"(?: (?:for|on|with) (?:that|those|these|them|it|this|that one|this one))?" + _END,
    r"(?:so |and )?(?:nothing|no mandrel) for (?:that|those|them|it|this)(?: one)?" + _END,
    r"(?:we |i )?need nothing(?: for (?:that|those|them|it)| there)?" + _END,
    r"bend(?:ing)? (?:the |our |those |these )?(?:ø ?)?\d[\d.,/ x×*\"-]*(?:mm|in|tube|wall|ones?)?"
    r" ?(?:\w+ ){0,2}?without (?:a |any )?(?:mandrel|one)(?: already| now| today)?" + _END,
    r"we bend (?:\w+ )?without (?:a |any )?mandrel(?: already| now)?" + _END,
    r"biegen wir (?:\w+ ){0,2}ohne \w*dorn" + _END,
    r"(?:dafür|da|hierfür) (?:brauchen wir|ist) (?:aber )?kein(?:en)? \w*dorn(?: nötig)?" + _END,
    r"(?:cintrons|cintre) (?:\w+ ){0,2}sans mandrin" + _END,
    r"(?:donc |alors )?(?:rien|pas de mandrin) pour (?:celui|celle|ceux|celles)-(?:là|ci)" + _END,
    r"(?:doblamos|curvamos) (?:\w+ ){0,2}sin mandril" + _END,
    r"(?:nada|sin mandril) para (?:ese|esa|esos|este|esta)" + _END,
    r"(?:pieghiamo|curviamo) (?:\w+ ){0,2}senza (?:anima|mandrino)" + _END,
    r"(?:niente|nulla) per (?:quello|quella|questo|quelli)" + _END,
    r"buigen (?:we|wij) (?:\w+ ){0,2}zonder doorn" + _END,
    r"(?:niets|geen doorn) voor (?:die|dat|deze)" + _END,
)
"""'De buis van 25 x 1,5 buigen we nu al zonder doorn'."""
_NOT_OF_OTHERS = "".join(
    rf"(?<!\b{thing}\s)"
    for thing in "die dies shoe former wiper machine bender material steel money payment freight"
    " order drawing radius wall mandrel mandrels".split()
)
SEEN_TO = whole_words(
    _NOT_OF_OTHERS
    + r"(?:is|are|'s|'re)(?: all| now)? already (?:sorted|covered|taken care of|seen to|dealt with)"
    + _END,
    _NOT_OF_OTHERS
    + r"(?:is|are|was|were|'s|has been)(?: now| since| long)? (?:discontinued|obsolete|phased out)"
    r"(?: now)?" + _END,
    r"(?:ist|sind|wird|wurde) (?:\w+ )?(?:eingestellt|ausgelaufen|abgekündigt)" + _END,
    r"(?:est|sont|a été) (?:abandonnée?s?|arrêtée?s?|supprimée?s?)" + _END,
    r"(?:está|están|fue) (?:descatalogad|descontinuad|suprimid)[oa]s?" + _END,
    r"(?:è|sono|è stat[oa]) (?:fuori produzione|dismess[oaie]|soppress[oaie])" + _END,
    r"(?:is|zijn|wordt) (?:\w+ )?(?:uit productie|vervallen|geschrapt)" + _END,
)
"""'Old runner had 20 x 1,5 but that is discontinued'."""
