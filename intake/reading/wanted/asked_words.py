"""Words that ask for the size beside them, or say that it is new; and words of requests that may
mean another."""

from __future__ import annotations

import re

from ...late_pattern import late_pattern
from ..sizes.groups import Slot
from ..text.patterns import any_of, whole_words

_TAKE_BACK = (
    r"(?:disregard|ignore|forget|skip|scrap|drop|cancel|don'?t|do not|leave|hold|note|confirm)"
)
ASKS = whole_words(
    r"needs? | needed | wants? | pric(?:e|es|ing) | how much | what (?:would|does|will)",
    r"what's the | pls",
    r"looking (?:for|to)",
    rf"please(?! {_TAKE_BACK})",
    r"(?<!the )(?<!your )(?<!last )(?<!for )quot(?:e|es|ation)(?! q?-?\d)",
    r"(?:i'm|we're|am|are) after | would like | we'd like | i'd like | ask(?:ing)? for | offer",
    r"(?:can|could|would|will) (?:you|i|we|u) | make me | make us | send me | interested in",
    r"another one | (?:have|need) to (?:bend|make|do) | costs? | requirements? (?:for|is)",
    r"tool(?:ing)? up | missing | we lack | to (?:order|buy) | require[sd]?",
    r"(?:i'?m|we'?re|am|are) (?:short(?: of)?|lacking|left without)",
    r"can'?t (?:find|get)(?! at\b| to\b| in\b)",
    r"brauch\w* | bräucht\w* | benötig\w* | bitte | such(?:e|en) | gesucht | möcht\w+ | hätte\w*",
    r"(?<!ihr )(?<!das )(?<!im )(?<!dem )angebot\w* | anbiet\w* | was (?:kostet|kosten|würden?)",
    r"müssen | möchten | fehlt",
    r"soll",
    r"sollen | wollen",
    r"il (?:nous|me|nous en|m'en) (?:faut|faudrait|faudra) | nous faut | coter | besoin",
    r"cherch\w+ | (?<!le )(?<!votre )(?<!du )devis",
    r"chiffrer",
    r"prix | voudr\w+ | souhait\w+ | combien | pourri\w+ | pouvez | devons | coûte\w* | manque",
    r"necesit\w+ | pasadme | (?<!la )(?<!su )(?<!vuestra )ofertas? | ofert(?:ar|en|ad)",
    r"solicit\w+ | rogamos | precio | cotiz\w+ | (?<!el )(?<!su )presupuest\w+",
    r"quer(?:emos|ría\w*)",
    r"quiero | busc\w+ | hace falta | falta | tenemos que | cuestan? | cuánto | podéis | pueden",
    r"podrían",
    r"serve | servono | bisogno | preventiv\w+ | prezz\w+ | vorre\w+ | cerchiam\w+ | cerco",
    r"chiediamo | (?<!la )(?<!vostra )offerta | manca | dobbiamo | quanto costano? | potete",
    r"nodig | wat (?:kost|kosten) | moeten we | zoek\w* | (?<!de )(?<!uw )offerte\w* | prijs\w*",
    r"graag",
    r"kunnen jullie | kunt u",
)
ASKS_FOR = whole_words(
    r"(?:an?|one|1|two|2) (?:\w+ )?(?:mandrels?) (?:for|to suit|to fit) | after an? | one for",
    r"i search",
    r"(?:ein(?:en)?|1|zwei|2) (?:\w+)?dorne? für | un mandrin (?:pour|en) | un mandril para",
    r"un mandrino per | uno per (?:il|la) | (?:een|één) doorn voor",
)
"""These ask where nothing speaks against it: 'he bought one for 30 x 2' does not."""
TOOL = whole_words(
    "mandrels? | one[- ]off | just one | only one | one only | qty | quantity | dorne? | mandrins?",
    "mandril(?:es)? | mandrin[oi] | doorn(?:en|s)?",
)
"""Named in a sentence on no size, it is asked for."""

NEWLY = whole_words(
    r"(?<!until )(?<!till )(?<!up to )(?<!by )"
    r"(?<!years )(?<!year )(?<!months )(?<!weeks )(?<!while )now",
    r"new(?! year| season) | this time",
    r"next (?:one|job|project|up) | mine(?:'s| is| will be)",
    r"ours is | final | separately | this year | from (?:january|now) | (?:correct|right) is",
    r"should (?:be|read) | what we're actually | actually | expanding into | moving to | valid",
    r"switched (?:me|us) to",
    r"moi,? c'est | (?:chez|pour) nous,? c'est | bei mir (?:ist|sind) | bij (?:mij|ons) is",
    r"lightweight | changed to | gone to | went up to | switched to | moved to",
    r"picked up(?! (?:an? |your |one )?(?:\w+ )?(?:mandrel|plug)\b)"
    r"(?! \d+ (?:sticks|lengths|bars|feet|ft|pieces|tubes|m|metres|meters))",
    r"turns out | (?:it'?s|this is) (?:the|a) | we only do | replacing it",
    r"is(?=\s?:) | ^(?:ma|mais|pero|maar|but|aber|sino|sondern)(?= \d)",
    r"(?<!bis )jetzt | nun | neu(?!tr)\w* | diesmal | als nächstes | gültig | aktuell ist",
    r"richtig ist | bei uns ist | sondern",
    r"(?<!jusqu'à )maintenant"
    r" | cette fois | nouve\w+ | désormais | a retenu | cette année | le mien",
    r"(?<!hasta )ahora | nuev[oa]s? | esta vez | este año | lo mío | sino",
    r"(?<!fino ad )adesso | (?<!fino ad )(?<!fino a )ora"
    r" | nuov[oa] | questa volta | quest'anno | il mio | bensì | (?<!tot )nu",
    r"nieuwe? | deze keer",
    r"de mijne",
)
"""What the sender has come to now; said before the figures."""

TROUBLE = whole_words(
    r"wrinkl\w* | kink\w* | flatten\w* | collaps\w* | goes (?:oval|flat) | folds? | folded",
    r"crush\w*",
    r"buckl\w* | rippl\w* | becomes oval | another story | can'?t hold | flattens",
    r"different animal | (?:gives?|giving|causes?|causing|makes?|making) (?:us |me )?(?:trouble"
    r"|grief"
    r"|problems?) | is (?:the|our) (?:problem|trouble) | macht (?:uns )?(?:probleme|ärger)",
    r"pose (?:un )?problème | da problemas | dà problemi | geeft problemen",
    r"knick\w* | faltet | falten | oval | fällt zusammen | pliss\w+ | s'écras\w+ | s'aplati\w*",
    r"se arruga | se aplasta | se chafa | si schiaccia | si piega male | fa le grinze | knikt",
    r"plooit | rimpelt",
)
"""What a mandrel is wanted for."""

ONLY = whole_words(
    "only | just | nur | bloß | lediglich | seulement | uniquement | juste | solo | sólo",
    "solamente | únicamente | soltanto | alleen | enkel",
)
"""With a request behind it, it asks for one of several alone."""

OWN_JOB = whole_words(
    r"(?:i|we) (?:run|bend|use|only do) | (?:i|we) have(?: an?| the| some)?(?= \W?\d)",
    r"(?:i've|we've) got(?= \d) | ^got | i'd | we'd | i'm | we're | mine | ours | doing | building",
    r"(?:my|our) (?:\w+ ){0,2}(?:is|are) | it's | these are | so | (?:this|the) (?:part|job|one)",
    r"(?:production|wall|tube|tubing|pipe|od|size|radius) (?:is|are)",
    r"(?:wir haben|ich habe) (?:ein \w+ )?(?=\d) | (?:wir|ich) biegen? | bei uns",
    r"rohr(?:e)? (?:ist|sind)",
    r"unser\w* (?:\w+ )?(?:ist|hat|sind)",
    r"(?:nous avons|j'ai) (?:du |un |le )?(?=\d) | (?:notre|mon) (?:\w+ )?(?:est|fait) | il s'agit",
    r"le tube (?:est|fait) | (?:tenemos|tengo) (?:el |un )?(?=\d) | (?:nuestro|mi) \w+ (?:es|mide)",
    r"el tubo (?:es|mide) | (?:abbiamo|ho) (?:il |un )?(?=\d) | (?:nostro|mio) \w+ è | si tratta",
    r"il tubo è | (?:wij|we) hebben (?=\d) | ik heb (?=\d) | (?:onze|mijn) \w+ is | het gaat om",
    "de buis is",
)
"""What the sender has to do: with a request for a mandrel behind it, that is for this size."""

AGAIN = whole_words(
    r"(?<!hello )(?<!hi )(?<!hallo )(?<!never )(?<!not )again | re-?order\w* | repeat | spare "
    r"| worn | broken? | broke",
    r"snapped | lost | duplicate",
    r"(?:the )?same (?:one|mandrel|again|as) | another of (?:those|these|them) | one more of",
    r"(?:one|another) like (?:it|that|this) | replacement(?: mandrel| one)?(?! size| tube)",
    r"noch einmal | nochmals? | ersatz | verschlissen | abgenutzt | kaputt | gebrochen",
    r"den gleichen",
    r"encore une fois | à nouveau | remplac\w+ | usé\w* | cassé\w* | le même",
    r"otra vez | de nuevo | repuesto | gastad[oa] | rot[oa] | el mismo",
    r"di nuovo | ricambio | consumat[oa] | rott[oa] | lo stesso",
    r"opnieuw | reserve | versleten | kapot | gebroken | dezelfde",
)
"""What is owned may be wanted once more."""

BY_A_DAY = whole_words(
    r"(?:need|needs|want|wants|like|require|have to have|must have|get|needed|wanted) (?:it|them"
    r"|this|everything)?"
    r" ?(?:delivered |here |in[- ]house |in hand |on (?:the|our) (?:floor|dock|bench|machine|shelf)"
    r" |with us |to us )*(?:by|before|no later than|not later than|on or before)",
    r"(?:brauchen|benötigen) (?:ihn|es|sie|das|alles) (?:\w+ ){0,2}(?:bis|spätestens|vor)",
    r"(?:il nous )?(?:le|la|les) faut (?:pour|avant) | besoin (?:pour|avant) le",
    r"(?:l[oa]s? )?(?:necesit\w+|quer\w+) (?:para|antes) (?:el|del?)",
    r"(?:ci |mi )?(?:serve|servono) (?:entro|per|prima) (?:il|del)",
    r"(?:hebben we |moet )?(?:uiterlijk )?nodig (?:voor|tegen|uiterlijk)",
)
"""'Want it on the floor by June 30': what was asked for before is wanted then, whichever it was."""
ANEW = whole_words(
    "a new one | new ones | a replacement | einen neuen | ersatz | un nouveau | un remplaçant",
    "uno nuevo | un repuesto | uno nuovo | un ricambio | een nieuwe",
)
"""Behind a size that is there: 'ist gebrochen. Bitte bieten Sie einen neuen an'."""
BY_PLACE = whole_words(
    r"(?:the )?(?:first|second|third|former|latter|other|last|upper|lower|old|top|bottom|middle)"
    r" (?:one|size|tube|of) | the former(?=\s*(?:[.,;!?]|$|please))",
    r"the (?:latter|first|second|other)(?! (?:mail|message|e-?mail|time|quote|order|drawing))",
    r"den (?:ersten|zweiten|anderen|alten) | (?:das|dem) (?:erste|zweite|andere|alte)n?",
    r"le (?:premier|deuxième|second|dernier|autre) | el (?:primero|segundo|otro|último)",
    r"il (?:primo|secondo) | l'altro | de (?:eerste|tweede)",
    r"either | which (?:one|of) | one of the two | any of | both | each",
    r"all (?:of|three|four|the)",
    r"beide[rn]? | jede[rnms]? | jeweils | alle | les deux | chacun\w* | ambos | cada | todos",
    r"per (?:die|size|row|line|radius|tube|item|od|wall) | apiece | a piece",
    r"every (?:one|size|tube|die|radius)",
    r"pro (?:größe|rohr|radius) | par (?:taille|tube) | entrambi | ognuno | tutti | allebei | elk",
)
"""A request by place, or for all, may mean any of them."""

LABELLED = late_pattern(
    r"\W*(?:(?:the|our|new|your) )?(?:tub(?:e|ing)(?: size)?|pipe|sizes?|dimensions?|specs?|what we"
    r" need|required|wanted|job|rohr|rohrmaße?|abmessung\w*|maße?|dimensions? du tube|tubos?|m"
    r"edidas?"
    r"|misur[ae]|buis|buismaat|maat) ?[:=]"
)
"""'Tube: 1.5 x .065 ...': so opens what is asked for, where others are only told of."""

RANKED = late_pattern(
    r"\bthe (?P<rank>thin|thick|heav|light|small|big|bigg|larg|fat)(?:n?er|i?er|est|y|e|er)?"
    r" (?:one|stuff|wall|tube|tubing|size|gauge)\b"
)
"""'A mandrel for the thin one'."""

REFERS = whole_words(
    r"that | it | it's | that's | this | those | these | them | they | he | she | him | his | her",
    r"hers | theirs | er | sie | ihm | elle | lui | él | ella | lei | hij | zij | dafür | das",
    r"der | die",
    r"davon | celui-là | ça | cela | le | l'a | ese | ésa? | eso | lo | quello | questo | lo",
    r"l'ha",
    r"daar\w* | die | dat",
)

POINTS = late_pattern(r"(?:that|it|this|which|those|they|das|der|die|ça|cela|eso|quello|dat)\b")
TOO = whole_words("too | also | as well | auch | aussi | también | anche | ook")

CONTRAST = (
    late_pattern(r"[;–—]|\s-{1,2}\s"),
    late_pattern(
        r"\b"
        + any_of(
            "but | however | whereas | while | though | aber | doch | hingegen | mais | alors que",
            "pero | mientras | ma | mentre | però | maar | terwijl",
        )
        + r"\b"
    ),
    late_pattern(r":(?=\s)"),
    late_pattern(
        r"\b"
        + any_of(
            "now | so | then | instead | after that | jetzt | nun | dann | maintenant | ahora",
            "adesso | ora | nu | dus | not | nicht | non | pas | niet",
            r"since(?! \d{4}\b) | to replace(?= (?:our|my|the)\b)",
            "because | weil | denn | parce que | puisque | porque | perché | omdat",
        )
        + r"\b"
    ),
    late_pattern(r"[,()]"),
    late_pattern(r"\b(?:and|und|et|y|e|en|n|&)\b"),
)
"""Where the words on one size end and those on the next begin, the surest first."""

_SAME = any_of(
    "same | gleiche[rnms]? | selbe[rnms]? | même | mism[oa] | stess[oa] | zelfde | dito | ditto",
)
_STAYS = any_of(
    "stays | remains | unchanged | as before | the same | as well | bleibt | unverändert | reste",
    "inchangé | igual | queda | resta | rimane | invariato | blijft",
)


_ALL_ELSE = any_of(
    r"(?:everything|all) else\b[^.;]{0,24}\b(?:same|stays|unchanged|identical) | (?:the )?rest"
    r" (?:stays|is|remains)(?: all)? (?:the )?(?:same|unchanged)",
    r"(?:sonst|ansonsten|rest|übrige)\b[^.;]{0,16}\b(?:gleich|unverändert|wie gehabt)",
    r"(?:le reste|tout le reste)\b[^.;]{0,16}\b(?:identique|inchangé|même|pas)",
    r"(?:lo demás|el resto|todo lo demás)\b[^.;]{0,16}\b(?:igual|no cambia)",
    r"(?:il resto|tutto il resto)\b[^.;]{0,16}\b(?:uguale|invariato|non cambia)",
    r"(?:de rest|al het andere)\b[^.;]{0,16}\b(?:hetzelfde|gelijk|ongewijzigd)",
)
"""'Everything else stays the same'."""


def _kept(*nouns: str) -> re.Pattern[str]:
    noun = any_of(*nouns)
    return late_pattern(
        rf"\b{_ALL_ELSE}|\b{_SAME}\b[^.;,]{{0,20}}?\b(?:{noun}\b|\d)|\b{noun}\b[^.;,]{{0,16}}\b{_STAYS}\b"
    )


SAME_TOOL: dict[Slot, re.Pattern[str]] = {
    "od": _kept("diameter | od | tube | pipe | size | durchmesser | rohr | diamètre | tubo | buis"),
    "wall": _kept("wall | gauge | thickness | wand\\w* | épaisseur | pared | spessore"),
    "clr": _kept(
        "die | former | radius | clr | rad | r | bend | rayon | radio | raggio | straal",
        "biegeform",
        "matrice | matriz | mal | matrijs",
    ),
}
SAME_MATERIAL = _kept(
    "material | grade | alloy | stuff | steel | stainless | werkstoff | stahl | matière | acier",
    "material | acero | materiale | acciaio | materiaal | staal | tube | rohr | tubo | buis",
)
SAME_TOOL["id"] = SAME_TOOL["od"]
"""'Same R50 die', 'CLR 90 stays': what is told of the other size holds for this one too."""
