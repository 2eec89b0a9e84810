"""Words that say plainly why the size beside them is not asked for: it was bought, it is another's
or the old one's, it is bent by hand, it is to be ignored.

As ``told_plainly_words``: searched in casefolded words on one size.
"""

from __future__ import annotations

from ..text.patterns import whole_words

_GAP = r"(?:[^.;]|[.]\d){0,40}?"

BOUGHT = whole_words(
    r"(?:i|we)(?: have|'ve)? (?:already |once )?(?:bought|got|ordered|had)\b"
    + _GAP
    + r" (?:off|from) (?:you"
    r"|y'all|your shop)",
    r"last (?:year|month|spring|summer|autumn|fall|winter|time)(?:'s|s) (?:set|mandrel|tool|one"
    r"|order|job)"
    r" (?:was|were)",
    r"(?:i|we) (?:did|made|bent|built) the (?:last|previous|first) (?:one|lot|batch|job|bike|car"
    r"|set)\b",
    r"(?:os|le|les) (?:compramos|compré|pedimos|pedí|encargamos) (?:el|un|uno|los)\b",
    r"(?:nos|me) (?:vendisteis|vendieron|suministrasteis|hicisteis)\b",
    r"(?:bei|von) (?:ihnen|euch|dir) " + _GAP + r"(?:gekauft|bestellt|bezogen|bekommen)",
    r"(?:wir|ich) (?:haben|habe|hatten) (?:bei|von) (?:ihnen|euch)",
    r"(?:vous|on vous|nous vous|je vous) (?:avons|a|ai) (?:déjà )?(?:acheté|pris|commandé)",
    r"(?:vi|da voi) (?:abbiamo|ho) (?:comprato|preso|ordinato) | (?:abbiamo|ho) (?:comprato"
    r"|preso) da voi",
    r"(?:bij|van) (?:jullie|u) " + _GAP + r"(?:gekocht|besteld|gehad|gekregen)",
)
"""'El año pasado os compramos el de 88,9 x 2', "last year's set was for 2.5 x .065"."""
OWNED_SAID_BEHIND = whole_words(
    r"(?:haben wir|habe ich|hab ich) (?:schon|bereits|ja schon)(?: da)?(?= ?(?:[.,;!)]|$|und\b))",
    r"(?:ist|sind|liegt|liegen) (?:schon|bereits) (?:da|vorhanden|im haus)(?= ?(?:[.,;!)]|$"
    r"|und\b))",
    r"(?:on l'a|on les a|nous l'avons|nous les avons|je l'ai) déjà(?= ?(?:[.,;!)]|$|et\b))",
    r"ya (?:l[oa]s? )?(?:tenemos|tengo)(?= ?(?:[.,;!)]|$|y\b)) | (?:ce l'abbiamo|le abbiamo|ce li"
    r" abbiamo"
    r"|l'ho) già(?= ?(?:[.,;!)]|$|e\b))",
    r"(?:hebben we|heb ik) (?:er )?al(?= ?(?:[.,;!)]|$|en\b))",
    r"(?:hebben|heb) (?:er )?al (?:een|één) (?:doorn )?voor",
    r"(?:haben|habe) (?:schon|bereits) (?:einen|welche) für | (?:avons|ai) déjà (?:un|le) pour",
    r"ya (?:tenemos|tengo) (?:uno|el) (?:de|para) | (?:abbiamo|ho) già (?:uno|quello) (?:da|per)",
    r"(?:we|i) (?:already )?have already(?= ?(?:[.,;!)]|$)) | (?:we|i) already (?:have|own|got)"
    r"(?: here| in stock)?(?= ?(?:[.,;!)]|$))",
)
"""'Die 35 x 1,5 haben wir bereits', 'wij hebben er al één voor 48,3 x 2,6'."""
CAME_BY = whole_words(
    r"(?:we|i)(?:'ve| have)? (?:also |just )?(?:picked up|scored|grabbed|got hold of|came across"
    r"|found|bought|got) (?:an?|your|one|this) (?:\w+ )?(?:mandrel|plug)\b",
    r"(?:haben|habe)(?: \S+){0,3}? (?:gebrauchten|alten) \w*dorn | (?:trouvé|acheté) un mandrin"
    r" d'occasion | (?:compr|encontr)\w+ un mandril (?:usado|de segunda mano)"
    r" | (?:comprato|trovato) un mandrino usato | (?:gebruikte|tweedehands) doorn",
)
"""'We picked up a used mandrel for 1.375 x .049 at an auction'."""
LENT = whole_words(
    r"(?:we|i)(?:'re| are|'m| am|'ve| have| can| could)?(?: just| also| only)? (?:borrow(?:ing|ed)?"
    r"|rent(?:ing|ed)?|hir(?:e|ing|ed))\b",
    r"(?:is|are|was|were|has been) (?:lending|loaning|renting|letting)(?: me| us)?"
    r" | (?:lends?|lent|loans?|loaned) (?:me|us)",
    r"(?:leihen|leihe|borgen|mieten) (?:wir|ich) | (?:wir|ich) (?:leihen|leihe|borgen|mieten)"
    r" | (?:leiht|borgt) (?:mir|uns)",
    r"(?:on|nous|je) (?:nous )?(?:emprunt\w+|lou\w+) | (?:me|nous) prête",
    r"(?:tomamos|tengo|tenemos|pedimos) prestad[oa] | (?:me|nos) (?:presta|deja)n? | alquilamos",
    r"(?:prendiamo|abbiamo|ho) in prestito | (?:mi|ci) presta(?:no)? | noleggiamo",
    r"(?:we|ik) (?:lenen|leen|huren|huur) | (?:leent|verhuurt) (?:me|mij|ons)",
)
"""'We're borrowing a 1-1/2 x .120 mandrel for the other job'."""
SEEN_ELSEWHERE = whole_words(
    r"(?:only|nearest|closest) (?:one|mandrel|tool|thing)s? (?:that )?(?:we|i|he|they)"
    r"(?:'ve| have)?(?: could)?"
    r" (?:f[oi]u?nd|saw|see|had|seen|got offered)\b",
    r"(?:the|our|your|a|another|other) (?:competition|competitors?|vendors?|suppliers?|shops?|guys)"
    r"(?: of ours| there| here)?(?: only| just| also)? (?:sells?|offers?|offered|stocks?|lists?"
    r"|carr(?:y|ies)|makes?)\b",
    r"(?:der|die|unser|ein) (?:wettbewerb(?:er)?|konkurrenz|mitbewerber) (?:hat|bietet|verkauft)",
    r"(?:la concurrence|un concurrent) (?:a|vend|propose) | (?:la competencia) (?:vende|ofrece"
    r"|tiene) | (?:la concorrenza|un concorrente) (?:vende|offre|ha) | (?:de concurrent(?:ie)?)"
    r" (?:verkoopt|heeft|biedt)",
)
"""'The only one I found online was for 1.75 x .120', 'the competition sells a .875 x .095 set'."""
SAME_MAKE = whole_words(
    r"(?:same|similar) (?:\w+ )?(?:thread|shank|rod|style|finish|construction|type|make|quality"
    r"|design|layout|coating|plating|balls|links|length|price|terms)(?: as| to| like)"
    r"(?: on| in| for| with)? (?:the|our|your|my)\b",
    r"gleiche[rns]? (?:gewinde|schaft|stange|ausführung|bauart|qualität|länge) wie",
    r"(?:même) (?:filetage|tige|finition|construction|exécution|qualité) que",
    r"mism[oa] (?:rosca|vástago|barra|acabado|construcción|calidad) que",
    r"stess[oa] (?:filetto|codolo|asta|finitura|costruzione|qualità) (?:di|del|come)",
    r"(?:zelfde|dezelfde) (?:schroefdraad|steel|stang|afwerking|uitvoering|kwaliteit) als",
)
"""'Same thread as on the 1-5/8 x .095 mandrel'."""
TUBE_ITSELF = whole_words(
    r"tub(?:e|es|ing) | pipes? | material | stock | lengths? | sticks? | steel | rohre? |"
    r" stangen? | meter",
    r"material | tubes? | barres? | mètres? | tubos? | barras? | metros? | tubi | barre | metri |"
    r" buis"
    r"| buizen | lengtes? | dies | die set | (?:an?|the|our|my|bend) die | formers? |"
    r" biegeform\w* | matrices? | matriz | matrijs | mal"
    r"| \w*wiper\w*",
)
"""What is there is the tube, or the die, and no mandrel."""
ANOTHERS = whole_words(
    r"(?:(?:my|his|her|our|a|an|the|your) (?:\w+ )?(?:friend|buddy|pal|mate|neighbou?r|brother"
    r"|sister|dad|father|uncle|aunt|cousin|competitor|club ?mate|brother-in-law|father-in-law)"
    r"|an? (?:\w+ )?(?:guy|fella|bloke))(?: (?!(?:and|or|wants?|needs?|asked|asks|says|said|here"
    r"|in our|in my)\b)\S+){0,5}?"
    r" (?:(?:has|have|had) (?:made|built|done|bent|used)|does|makes?|builds?|built|made|went with"
    r"|rolls?|drives?|bends?|uses?|runs?)\b",
    r"(?:another|some other|the other|an?) (?:\w+ )?(?:builder|fabricator|fabber|racer|team|shop"
    r"|member|garage|outfit|manufacturer|welder|kid|lady|gentleman)(?: (?!(?:and|or|wants?|needs?"
    r"|asked|asks|says|said|in our|in my)\b)\S+){0,4}?"
    r" (?:has (?:made|built|bent|used)|does|makes?|builds?|rolls?|bends?|uses?|runs?)\b",
    r"(?:swears?|swore|claims?|claimed|says|said|reckons?|told me|told us) (?:that )?(?:it|he"
    r"|they|his|she"
    r"|theirs) (?:had |has |have )?(?:done|did|does|bent|bends|handled|handles|used|uses|took"
    r"|takes|run)\b",
    r"(?:mein|ein|unser|der)\w* (?:\w+ )?(?:freund|kumpel|nachbar|bekannter|schwager|bruder"
    r"|vetter|onkel)\w*,?"
    r"(?: \S+){0,4}? (?:hat|macht|baut|biegt|nimmt|fährt)",
    r"(?:mon|un|notre|le) (?:\w+ )?(?:ami|voisin|copain|frère|beau-frère|cousin|oncle),?(?:"
    r" \S+){0,4}?"
    r" (?:a (?:fait|monté)|fait|cintre|utilise|prend)",
    r"(?:mi|un|nuestro|el) (?:\w+ )?(?:amigo|vecino|cuñado|hermano|primo|tío),?(?: \S+){0,4}?"
    r" (?:ha hecho|hizo|hace|usa|curva|dobla|lleva)",
    r"(?:il mio|mio|un|il) (?:amico|vicino|cognato|fratello|cugino|zio),?(?: \S+){0,4}?"
    r" (?:ha fatto|ha usato|fa|usa|piega|curva)",
    r"(?:mijn|een|onze|de) (?:\w+ )?(?:vriend|buurman|zwager|broer|maat|neef|oom),?(?: \S+){0,4}?"
    r" (?:heeft|doet|maakt|gebruikt|buigt|rijdt)",
)
"""'A neighbour in the harbour has made his with 30 x 2', 'my cousin does inch and a half'."""
BY_HAND = whole_words(
    r"(?:is|are|gets?|that's|those are|that one's|they're)(?: all| just| always)? (?:bent|done"
    r"|formed|rolled"
    r"|made|shaped) (?:by hand|on (?:the )?rolls|on (?:a|the) (?:roller|ring roller|lever bender)"
    r"|with (?:a"
    r"|the) (?:hand|lever) bender|over (?:my|a|the) knee)",
    r"needs? (?:nothing|no (?:mandrel|tool|tooling))(?: from you)?(?= ?(?:[.,;!)]|$))",
    r"(?:we|i) (?:bend|do|form|roll) (?:that|those|them|it|these)(?: ones?)? (?:by hand|on the"
    r" rolls"
    r"|ourselves on the rolls|on the roller|with (?:a|the) (?:hand|lever) bender)",
    r"(?:wird|werden) (?:von hand|mit der hand|auf der walze|auf der rundbiege\w*) (?:gebogen"
    r"|gemacht|gerollt)",
    r"(?:das|die|den)(?: \S+){0,4}? (?:biegen|walzen|machen|rollen) wir(?: (?:weiterhin|weiter"
    r"|immer"
    r"|schon|einfach|selbst|noch|nach wie vor|wie bisher)){0,2} (?:von hand|mit der hand"
    r"|auf der walze)",
    r"(?:we|i) (?:still |always |just |simply )?(?:bend|do|form) (?:by hand|freehand)(?:,? (?:no"
    r"|without"
    r" (?:a|any)) (?:problem|trouble|bother)s?)?(?= ?(?:[.,;!)]|$))",
    r"(?:se cintre|est cintré|sont cintrés|on les? cintre|on les? fait|on les? roule) (?:à la"
    r" main|aux galets"
    r"|à la rouleuse)",
    r"(?:lo|la|los|las|eso|esos) (?:ya )?(?:lo |los )?(?:curvamos|doblamos|hacemos) (?:a mano|con"
    r" (?:los )?"
    r"rodillos)",
    r"(?:lo|la|li|le|quello|quelli) (?:pieghiamo|curviamo|facciamo) (?:a mano|con i rulli|alla"
    r" calandra)",
    r"(?:die|dat|deze) (?:buigen|walsen|rollen|doen) we (?:met de hand|op de wals)",
)
"""'... but that's bent by hand with a lever bender and needs nothing from you'."""
_LEFT_ALONE = (
    r"(?:we|i)(?:'ll| will|'d| would| can)?(?: just)? (?:leave|park|skip|drop)(?: (?:that|it|those"
    r"|them|the))?(?: \S+){0,4}? (?:for now|for the moment|for the time being|at the moment)"
    r"(?= ?(?:[.,;!)]|$))",
    r"(?:we|i)(?:'ll| will|'d| would)?(?: just)? leave (?:(?:that|it|those|them) )?(?:alone|out|be)"
    r"(?= ?(?:[.,;!)]|$))",
    r"lassen wir (?:aber )?(?:vorerst|vorläufig|erst ?mal|erst einmal|zunächst|momentan|derzeit)"
    r"(?: (?:noch )?(?:sein|weg|liegen|ruhen|außen vor|bleiben))?(?= ?(?:[.,;!)]|$))",
    r"lassen wir (?:sein|weg|bleiben|außen vor)(?= ?(?:[.,;!)]|$))",
    r"(?:on|nous)(?: l[ea]s?)? (?:laisse|laissons) (?:tomber|de côté)",
    r"(?:de momento |por ahora )?l[oa]s? dejamos(?: (?:estar|fuera|de lado|de momento|por ahora"
    r"|para más adelante))?(?= ?(?:[.,;!)]|$))",
    r"(?:l[oaie] lasciamo|lasciamol[oaie]) (?:stare|perdere|da parte|fuori)",
    r"laten we (?:voorlopig |even |nog )?(?:zitten|rusten|liggen|weg|achterwege|vallen)",
)
"""'The 50 tube we'll leave for now', 'das 50er lassen wir vorerst'."""
IGNORED = whole_words(
    r"(?<!don't )(?<!not )(?<!never )(?:ignore|disregard|forget(?: about)?|never mind|pay no"
    r" attention to|don'?t worry about|leave)"
    r" (?:that|those|it|them|this)(?: one| lot| bit)?(?= ?(?:[.,;!)]|$|for now\b|though\b|out\b"
    r"|aside\b))",
    r"(?:das|die|den) (?:bitte )?(?:ignorieren|vergessen|nicht beachten) | (?:bitte )?"
    r"(?:ignorieren|nicht"
    r" beachten)(?= ?(?:[.,;!)]|$)) | spielt keine rolle",
    r"(?:oubliez|ignorez|ne tenez pas compte de)(?:-les?|-la| ça| cela| celui-là)? (?= ?"
    r"(?:[.,;!)]|$))",
    r"(?:ignorad|olvidad|ignore|olvide)(?:l[oa]s?| eso| ese)(?= ?(?:[.,;!)]|$)) | no (?:lo|la"
    r"|los) tengáis en"
    r" cuenta",
    r"(?:ignorate|lasciate perdere|ignori)(?:l[oaie]| quell[oaie])?(?= ?(?:[.,;!)]|$))",
    r"(?:die|dat) (?:mag|mogen|kunt|kun) (?:u |je |jullie )?(?:negeren|vergeten|weglaten)",
    *_LEFT_ALONE,
    r"(?:that|which|those|these)? ?(?:we|i) (?:won'?t|will not|don'?t|do not|are not|aren't"
    r"|shan't) (?:be )?(?:us(?:e|ing)"
    r"|need(?:ing)?|bend(?:ing)?)(?: (?:it|that|those|them|at all))?(?= ?(?:[.,;!)]|$))",
    r"(?:(?:that|which|those|these) )(?:won'?t be|isn't|aren't|are not|is not|will not be) "
    r"(?:used|needed"
    r"|required|wanted|bent)(?= ?(?:[.,;!)]|$))",
    r"(?:die|das|den) (?:benutzen|verwenden|brauchen|nutzen) wir nicht(?= ?(?:[.,;!)]|$))",
    r"qu'on n'utiliser?a? pas | que no (?:vamos a usar|usamos|usaremos) | che non (?:usiamo"
    r"|useremo|serve)"
    r"| die we niet (?:gebruiken|nodig hebben)",
)
"""'Also have some 50.8 x 1 left, ignore that', 'a 1.25 die, which we won't be using'."""
OLD_ONES = whole_words(
    r"(?:hang on|hold on|wait|scratch that|sorry|oops|whoops|no|nope|actually|doh)[,!.]*(?: no,?|"
    r" wait,?"
    r"| hang on,?)? (?:that'?s|thats|that was|that is|it'?s|it was) (?:the |my |our |from the "
    r"|for the )?"
    r"(?:old|previous|last|wrong|other|former|earlier|off the old)\b",
    r"(?:moment|halt|stopp?|quatsch|nein|ach nein|sorry),? (?:das (?:ist|war)) (?:das |der |die "
    r"|vom |von )?"
    r"(?:alte[nrsm]?|vorige[nrsm]?|falsche[nrsm]?|letzte[nrsm]?)\b",
    r"(?:non|attendez|pardon|attention),? (?:c'est|c'était) (?:l'ancien|la vieille|le vieux"
    r"|l'autre|le précédent"
    r"|la précédente)\b",
    r"(?:no|espera|perdón|perdona),? (?:ese|esa|eso|era|es) (?:es |era )?(?:el |la |del )?"
    r"(?:viej[oa]|anterior"
    r"|antigu[oa])\b",
    r"(?:no|aspetta|scusate|scusa),? (?:quell[oa]|era|è) (?:è |era )?(?:il |la |l'|della? )?"
    r"(?:vecchi[oa]"
    r"|precedente)\b",
    r"(?:nee|wacht|sorry|ho),? (?:dat (?:is|was)) (?:de |het |van de |van het )?(?:oude|vorige"
    r"|verkeerde)\b",
)
"""'Can I get a mandrel for 44.5 x 2.6 - hang on that's the old car. New one is 40 x 2'."""
BORROWED = whole_words(
    r"(?:with|on|using) (?:a|the|some) (?:borrowed|loaned|hired|rented) (?:mandrel|plug|tool|one)",
    r"mit (?:einem )?(?:geliehenen|geborgten|ausgeliehenen) \w*dorn | avec un mandrin (?:prêté"
    r"|emprunté)",
    r"con un mandril prestado | con un mandrino (?:prestato|in prestito) | met een (?:geleende"
    r"|gehuurde) doorn",
)
"""'Nu 38 x 1,5 met een geleende doorn; die van ons moet 38 x 2 worden'."""
