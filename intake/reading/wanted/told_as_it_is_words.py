"""Words of statements on a tube that is no matter of the request: it stays straight, is made with
elbows or hose, is rolled, comes out well as it is, is of the old design, is not to be quoted.

Searched as those of ``told_statements_words``, in text without accents.
"""

from __future__ import annotations

_ENDS = r"(?= ?(?:[.,;:!)]|$|and\b|so\b|but\b|und\b|also\b|da\b|et\b|donc\b|y\b|e\b|en\b|dus\b))"
_WELD = r"(?:(?:butt[- ]?)?weld(?:ing|ed|ed-on)?|ready[- ]?made|bought|cast|standard|flanges and)"
_ELBOWS = (
    rf"(?:with|as|from|use|using|take|buy|have|got|keep) (?:{_WELD} )*(?:elbows?|fittings?|bends"
    rf"|hoses?|miters|mitres)(?: for (?:the|those) bends?)?{_ENDS}",
    r"(?:elbows|fittings) (?:stay|remain)",
    rf"(?:mit|als|aus|nehmen wir|haben wir|kaufen wir) (?:fertigen? |normalen? )?(?:schwei(?:ß)?"
    rf"bögen|\w*fittings?|\w*formstücken?|fertigen bögen|schläuchen?){_ENDS}",
    r"(?:nehmen|verwenden|nutzen) wir (?:einen )?schl[aä]uche?(?: für die bögen)?",
    r"(?:mit )?(?:schweißbögen|schweissbögen)",
    r"(?:avec|en|par) (?:des )?(?:coudes|raccords|courbes) (?:à souder|soudés|tout faits"
    r"|du commerce)",
    r"(?:met|mettra|mettons|prend|prenons|utilise|utilisons) (?:du |des )?(?:tuyaux? souples?"
    r"|durites"
    r"|flexibles?|raccords)",
    r"(?:con|en|como) (?:codos?|curvas) (?:soldad[oa]s|de soldar|para soldar|hech[oa]s?"
    r"|comprad[oa]s)",
    r"(?:usamos|ponemos|usaremos) (?:manguera|manguito|codos|racores)",
    r"(?:con|come|in) (?:curva|curve|gomiti|raccordi) (?:a saldare|saldat[ei]|già fatt[ei]"
    r"|già fatta|in commercio)",
    r"(?:usiamo|mettiamo|useremo) (?:(?:un )?tubo di gomma|tubi flessibili|raccordi|manicotti)",
    r"(?:met|als|in) (?:gewone? )?(?:lasbocht(?:en)?|laskniee?ën|fittingen"
    r"|kant-en-klare bocht(?:en)?)",
    r"(?:nemen|gebruiken) (?:we |wij )?(?:slang(?:en)?|fittingen|lasbochten)",
    r"(?:hier|daar) blijven (?:het )?(?:bochtstukken|lasbochten|fittingen)",
)
_STRAIGHT = (
    rf"(?:is|are|stays?|remains?)(?: all| just| only| dead| perfectly)? straight(?: ones| pieces"
    rf"| lengths)?{_ENDS}",
    rf"(?:ist|sind|bleibt|bleiben)(?: ja| alle| immer| natürlich| aber)* gerade{_ENDS}",
    rf"(?:est|sont|reste|restent|restera)(?: tous| toutes| tout| bien)* droit(?:e|s|es)?{_ENDS}",
    rf"(?:es|son|va|van|queda|quedan)(?: tod[oa]s| siempre)* rect[oa]s?{_ENDS}",
    rf"(?:è|sono|resta|restano|rimane|rimangono)(?: tutti| sempre| tutte)* dritt[oaie]{_ENDS}",
    rf"(?:is|zijn|blijft|blijven)(?: gewoon| allemaal| toch)* recht{_ENDS}",
)
_UNBENT = (
    rf"(?:(?:is|are)(?: not|n't)|(?:do|does)(?: not|n't) get|never get|won't be) bent{_ENDS}",
    r"(?:need|needs|have|has) no bend(?:s|ing)",
    r"(?:wird|werden)(?: aber| ja| auch| gar| natürlich)* nicht gebogen",
    r"(?:muss|müssen|braucht|brauchen) (?:ja )?nicht gebogen (?:zu )?werden",
    r"ne (?:sont|est|seront|sera) pas cintrée?s? | n'(?:a|ont) pas besoin d'être cintrée?s?",
    r"ne (?:se cintrent?|vous concernent?) pas",
    r"no (?:se (?:dobla|doblan|curva|curvan)|llevan? (?:ninguna )?curvas?)",
    r"non (?:si (?:piega|piegano|curva|curvano)|(?:va|vanno) (?:piegat|curvat)[oaie])",
    r"(?:wordt|worden)(?: dus| toch)? niet gebogen | (?:hoeft|hoeven) niet gebogen te worden",
)
_ROLLED = (
    r"(?:do|bend|run|rolled|made) (?:it |them |those )?on (?:a|the|our|my) roll(?:er|s|ers)",
    r"(?:gets?|is|are) rolled | roll (?:it|them|those|by hand)",
    r"so (?:don'?t|do not) worry about (?:it|that|those|them)",
    r"(?:rollen|walzen) (?:wir|ich) | (?:rolle|walze) ich | (?:wird|werden) (?:\w+ )?gewalzt",
    r"(?:fais|fait|faisons|cintrons|cintre) à la rouleuse | (?:est|sont) roulée?s? à la main",
    r"(?:hago|hacemos) en (?:la |el )?(?:curvadora de )?rodillos | se (?:curvan?|hacen?) a rodillo",
    r"(?:faccio|facciamo) (?:alla|con la) calandra | (?:è|sono) calandrat[oaie]",
    r"(?:doe|doen|buig|buigen) (?:ik |we )?op de wals | op de wals (?:doe|doen|buig|buigen)"
    r" | wals ik | walsen we",
)
_WELL = (
    r"(?:that|which|those|it|they|these)(?: one| ones)? (?:always )?(?:comes? out|works?|bends?"
    r"|goes|go|turns? out) (?:really |just |perfectly )?(?:fine|ok|okay|well|great|awesome|good"
    r"|perfect|nicely|like butter)",
    r"(?:never|not once) (?:had|given|caused|gave)(?: us| me)?(?: any)? (?:trouble|problems?|bother"
    r"|issues?)(?: with)?",
    r"(?:noch nie|nie|keinerlei) (?:ärger|probleme|schwierigkeiten)",
    r"jamais (?:eu|posé) (?:de |le moindre )?(?:soucis?|problèmes?|ennuis?)",
    r"nunca (?:hemos tenido|tuvimos|nos ha dado|ha dado|dio) (?:ningún )?problemas?",
    r"mai (?:avuto|dato) (?:nessun |alcun )?problem[ai] | nooit (?:enige )?(?:problemen|last"
    r"|gedoe)",
    r"(?:always|have|we've|i've) (?:always )?bent (?:it|that|those|them"
    r"|these)?(?: always)? ?without"
    r" (?:a )?mandrel",
    r"(?:immer|stets|alle[sn]?) (?:\S+ ){0,4}?ohne dorn(?: gebogen)?",
    r"toujours (?:été )?cintrée?s? sans mandrin | siempre (?:\w+ )?(?:doblad"
    r"|curvad)[oa]s? sin mandril",
    r"sempre (?:piegat|curvat)[oi] senza (?:anima|mandrino) | altijd zonder doorn gebogen",
    r"(?:with|had|needed|needs|needing) nothing (?:up|in|inside|down)(?: (?:the tube|it|them))?",
    r"(?:went|bent|goes|bends) (?:fine|ok|okay|well) without(?: (?:a mandrel|one|anything))?",
    r"(?:is|are|'s|all)?\s?(?:hand[- ]bent|bent by hand) | on (?:a|an|our|my) (?:\w+ )?hand bender",
    r"(?:i'?ll|we'?ll|i|we)(?: just| will)* keep welding (?:it|that|those|them)",
    r"(?:i'?m|we'?re|im|i am|we are) (?:just )?buying (?:those|the|them|that)(?: bends| in)?",
    r"with (?:a|the) mandrel that came (?:along|with (?:it|the (?:machine|bender)))",
    r"mit dem dorn(?: gebogen)?,? der (?:dabei|mit der maschine) (?:war|kam)",
    r"(?:that )?(?:i'?m|we'?re|i am|we are) selling | wants? to buy (?:it |them )?off (?:us|me)",
    r"(?:alles|altijd) (?:[^\s.]+ ){0,10}?zonder doorn | sempre (?:[^\s.]+ ){0,8}?senz(?:a"
    r" |')(?:anima"
    r"|mandrino) | siempre (?:[^\s.]+ ){0,8}?sin mandril | toujours (?:[^\s.]+ ){0,8}?sans mandrin",
    r"(?:das|die|der|es) (?:geht|gehen|läuft|laufen|klappt|klappen|gelingt) (?:\w+ )?(?:gut|prima"
    r"|problemlos|tadellos|einwandfrei|bestens)",
    r"ging (?:damit |so )?(?:jahrelang|immer)(?: gut| problemlos)?$",
    r"(?:ça|cela|qui) (?:sort|va|passe|marche|vient) (?:très |toujours )?(?:bien|sans (?:souci"
    r"|problème))",
    r"(?:sale|salen|va|van|quedan?) (?:muy |siempre )?(?:bien|perfect[oa]s?|sin problemas?)",
    r"(?:viene|vengono|va|vanno) (?:molto |sempre )?(?:bene|benissimo|senza problemi)",
    r"(?:dat|die|het) (?:gaat|gaan|lukt|lukken) (?:\w+ )?(?:prima|goed|perfect|uitstekend)",
    r"is still (?:fine|good|ok|okay) | (?:weiter(?:hin)?|nach wie vor|immer noch) (?:gut"
    r"|in ordnung|ok|brauchbar)",
    r"(?:carr(?:y|ies)|goes?|continues?) on without(?: one| a mandrel)?",
    r"(?:läuft|laufen|geht|gehen) weiter(?:hin)? ohne | (?:continue|continuent) sans",
    r"siguen? sin(?: mandril)? | continuano? senza | (?:gaat|gaan) (?:gewoon )?(?:door"
    r"|verder) zonder",
)
_PAST = (
    r"(?:is|are|'s) (?:now )?(?:ancient )?history | (?:ist|sind) geschichte | c'est du passé",
    r"(?:es|son) (?:ya )?historia | è (?:ormai )?storia | is (?:nu )?(?:verleden tijd"
    r"|geschiedenis)",
    r"(?:old|earlier|previous) (?:version|design|model) (?:was|were|used|had)",
    r"(?:alte|frühere|vorige) (?:variante|version|ausführung) (?:war|hatte)",
    r"(?:ancienne|première) version (?:était|avait) | (?:el|il) tubo (?:viejo|vecchio) era",
    r"versión (?:antigua|anterior) era | (?:vecchia|prima) versione era | oude (?:versie|buis) was",
)
PREVIOUS_OWNER = (
    r"(?:previous|former|last) owner (?:only |always |mostly )?(?:bent|ran|made|did)",
    r"vorbesitzer (?:hat |bog |fuhr )?(?:nur |immer )?",
    r"(?:ancien|précédent) propriétaire (?:ne )?(?:cintrait|faisait)",
    r"(?:dueño|propietario) anterior (?:solo )?(?:doblaba|curvaba|hacía)",
    r"(?:vecchio|precedente) proprietario (?:piegava|curvava|faceva)",
    r"vorige eigenaar (?:boog|deed|maakte)",
)
_NOT_QUOTED = (
    r"(?:please )?(?:don'?t|do not|no need to) (?:quote|price)(?: (?:that|it|this|them|those)"
    rf"(?: one| ones)?)?(?: yet| for now)?{_ENDS}",
    rf"(?:aber |das |die )?(?:bitte )?(?:noch )?nicht (?:mit)?anbieten{_ENDS}",
    r"ne (?:le |la |les )(?:chiffrez|cotez|comptez) pas | (?:est|sont) à ne pas chiffrer",
    rf"no (?:los? |las? |les? )cotic\w+ | non (?:va|vanno) quotat[oaie]{_ENDS}",
    rf"(?:nog )?niet (?:aanbieden|offreren){_ENDS}",
)
NOT_BENT = (*_ELBOWS, *_STRAIGHT, *_UNBENT, *_ROLLED)
"""Whoever gives such a tube a radius bends it all the same."""
AS_IT_IS = (*_WELL, *_PAST, *PREVIOUS_OWNER, *_NOT_QUOTED)
IF = (
    r"if | once | wenn | falls | sobald | si | dès que | se (?:va|vanno|quest[oa]|tutto|viene|il"
    r"|la)",
    r"als (?:dat|het|die|alles|deze) | zodra",
)
"""'Si va bien en primavera pediremos otro': nothing is told of."""
HARMLESS = (
    r"(?:on|auf|sur|en|con|su|sulla|op|met) (?:the same|derselben|der (?:gleichen|selben)|la même"
    r"|la misma|la stessa|stessa|dezelfde) \w*(?:machine|maschine|bender|cintreuse|máquina"
    r"|macchina)",
    r"(?:so |and )?(?:nothing|none)(?: is)? needed(?: for (?:that|those|them|it)| there)?",
    r"(?:da |dafür |dazu )?braucht es (?:ja )?nichts",
    r"(?:da |darum )?(?:brauchen|müssen) sie sich (?:\w+ )*?kümmern",
    r"(?:which |that )?needed nothing(?: inside)?",
    r"(?:don'?t|do not) want to (?:mess|bother|fiddle)(?: with (?:it|that|them|those))?",
    r"no need for you(?: there)? | (?:whole )?(?:different|other) animal",
)
"""These ask for nothing."""
ENDS = (
    r"ends? | tails? | enden | endstücke | bouts? | extrémités? | extremos? | puntas?",
    r"estremità | capi | uiteinden | einden",
)
"""Those of the tube that is bent stay straight."""
SO_FAR_OR_NOW = (
    r"so far | (?:up )?(?:to|til|till|until) now | now | new | today | currently | at present",
    r"bisher | bislang | jetzt | neu\w* | nun | heute | derzeit | künftig",
    r"jusqu'ici | jusqu'à présent | jusqu'à maintenant | maintenant | nouve\w+ | désormais",
    r"hasta (?:ahora|hoy) | ahora | nuev\w+ | de momento | hoy",
    r"finora | fino (?:a(?:d)? )?(?:ora|adesso|oggi) | adesso | nuov\w+ | oggi | ora",
    r"tot nu toe | tot nog toe | nu | nieuwe? | vandaag | voortaan",
)
"""What was so 'until now' may be just what is to be bent."""
