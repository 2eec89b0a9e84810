"""Which of several sizes a message asks for, and which it only tells of; those are doubted.

'Please quote 42 x 2 on R 84. 30 x 3 we bend on R 75 without one': nothing in the second rules it
out in so many words, but nothing asks for it either.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence

from ...late_pattern import late_pattern
from ..sizes.groups import Group, own_figures, slot_of
from ..text.figures import Figure, Layout
from ..text.patterns import whole_words
from .asked_behind import is_asked_behind
from .each_words import OF_EACH
from .one_and_one import asks_for_one_and_one
from .told_sent_out_words import BOUGHT_BENT

ONLY_TOLD = "its sentence tells of it, and does not ask for it"

_ASKS = whole_words(
    r"need\w* | want\w* | quot(?:e|es|ing|ation) | pric\w+ | cost\w* | how much | please | pls",
    r"what (?:would|will|does|do)",
    r"ask(?:ing)? for | looking (?:for|to) | short of | order | buy\w* | requir\w+ | request\w*",
    r"offer | have not | haven't | (?:don't|do not|doesn't) have | lacks? | (?:have|has"
    r"|brings) nothing",
    r"missing | fehl(?:t|en) | manque(?:nt)? | faltan? | mancano? | ontbreekt | ontbreken",
    r"enquir\w+ | rfq | inquir\w+ | i'm after | we're after | after an? | interested in",
    r"would like | i'd like | we'd like | tool(?:ing)? up",
    r"can (?:you|i|we) | could (?:you|i|we) | would you | do you | make (?:me|us|up|one|two|it)",
    r"mandrels? (?:for|to suit|to fit) | also | another | first | second | third | plus | both",
    r"each",
    r"brauch\w* | benötig\w* | anfrage | anbiet\w* | angebot\w* | bitte | bestell\w* | preis\w*",
    r"kost\w+ | such(?:e|en) | möcht\w+ | hätte\w* | dorne? für | auch | noch | außerdem | dazu",
    r"besoin | cherch\w+ | devis | prix | combien | voudr\w+ | souhait\w+ | command\w+ | faudrait",
    r"faut | pouvez | pourri\w+ | aussi | également | mandrins? pour",
    r"necesit\w+ | precios? | cotiz\w+ | presupuest\w+ | quier\w+ | querem\w+ | busc\w+",
    r"quisi\w+ | hac\w+ falta | oferta | también | además | mandril(?:es)? para | pueden | podrían",
    r"podéis | serv\w+ | bisogno | preventiv\w+ | prezz\w+ | costa\w* | vorre\w+ | cerchiam\w+",
    r"cerco | offerta | anche | mandrin\w+ per | potete | può",
    r"nodig | zoek\w* | offerte\w* | prijs\w* | wil(?:len)? | graag | bestel\w* | ook | nog | kunt",
    r"doorn(?:en|s)? voor",
)
_ALSO_TELLS = late_pattern(
    r"\b(?:(?:(?:you|u) )?(?:already |have already |have )?(?:sent|gave|given|quoted|made)"
    r"(?: me| us)? (?:an? |the |your )?(?:price|quote|quotation|offer)\b"
    r"|(?:have|got|received) (?:your|the|a) (?:price|quote|quotation|offer)\b"
    r"|(?:your|the) (?:last |first |old )?(?:price|quote|quotation|offer)(?: \S*\d\S*)?"
    r" (?:was|is|for)\b"
    r"|(?:has|had|came with|comes with) (?:\w+ )?mandrels for"
    r"|(?:withdraw|forget|cancel|disregard|scrap) (?:my|our|the|this) (?:\w+ )?(?:request|enquiry"
    r"|inquiry|rfq|quote request)(?: for| on)?"
    r"|(?:came|arrived|included|there (?:were|was)) (?:\w+ )?mandrels? (?:for|in)"
    r"|(?:kam|kamen|war|waren|lag|lagen|gab es) (?:\w+ ){0,2}\w*dorne? für"
    r"|(?:étaient|sont arrivés|il y avait|avec) (?:\w+ ){0,2}mandrins? pour"
    r"|(?:ven[ií]an?|vin(?:o|ieron)|lleg(?:ó|aron)|había) (?:\w+ ){0,2}mandril(?:es)? para"
    r"|(?:c'era(?:no)?|arriva(?:to|ti|rono)) (?:\w+ ){0,2}mandrin[oi] per"
    r"|(?:kwam|kwamen|zat|zaten|waren) (?:\w+ ){0,2}doorn(?:en|s)? voor"
    r"|(?:we|i|they|he|you) also (?:run|ran|use|used|own|bend|bent|did|made|got|bought|tried"
    r"|sell)|wir (?:hatten|biegen|fahren|nutzen) auch|también (?:usamos|doblamos)"
    r"|(?:the|our|my|your|der|unser|den|euer|le|notre|votre|el|nuestro|il|nostro|de|onze)"
    r" (?:mandrel|dorn|mandrin|mandril|mandrino|doorn) (?:for|für|pour|para|per|voor)"
    r"|(?:has|have|had|hat|haben|hatten?|a|ont|tiene|tienen|tenemos|ha|hanno|heeft|hebben)"
    r" (?:an?|one|two|einen|zwei|une?|deux|un[oa]?|un'|dos|due|een|twee) ?"
    r"(?:mandrels?|dorne?|mandrins?|mandril(?:es)?|mandrin[oi]|anim[ae]|doorn(?:en)?)"
    r" (?:for|für|pour|para|per|voor))\b"
)
"""Such an 'also' asks for nothing, and no more do 'the mandrel for 1.5 x .065' and 'he has one'."""
_BOUGHT_BENT = whole_words(*BOUGHT_BENT)
_TELLS = whole_words(
    r"i | we | you | he | she | they | my | our | his | her | their | is | are | was | were | has",
    r"have | had | did | does | bent(?! (?:on|at|to|over|around|with)\b) | run | runs",
    r"goes | go | went | works?",
    r"reference | comparison | before | last | earlier | already | i've | we've | it's | that's",
    r"withdraw | i'm | (?:ours|mine)(?! ?:| is \W?\d| will be) | arrived | covered | came "
    r"| tried | kinked | collapsed | cracked",
    r"flattened | wrinkled | buckled | currently | at the moment | right now | these days",
    r"in stock | on the (?:shelf|wall) | on hand | ordered | bought | came | inherited | existing",
    r"in the (?:rack|drawer|crate|box|cabinet|cupboard|stores) | original\w*",
    r"ich | wir | ihr | ist | sind | war | waren | hat | haben | hatte\w* | mein\w* | unser\w*",
    r"bisher | vergleich | geht | läuft | funktioniert | kam | kamen | lag | lagen | gekauft",
    r"tournent? | draait | draaien | girano?",
    r"vorhanden\w* | bestehend\w* | in der schublade | im (?:regal|schrank)",
    r"nous | vous | elle | ils | est | sont | était | étaient | avons | avez | notre | j'ai",
    r"a(?= un) | ont | va | vont | marche | arrivé\w* | livré\w*",
    r"ancien\w* | acheté\w* | dans le tiroir | antigu[oa] | viej[oa] | comprad[oa]s? | en el cajón",
    r"vecchi[oa] | comprat[oaie] | nel cassetto | oude? | gekocht | in de la",
    r"era | eran | tenemos | tengo | hemos | nuestr\w+ | yo | ya | está | están | funciona | van",
    r"sono | erano | abbiamo | ho | nostr\w+ | mio | mia | già | vanno | funziona | arrivat\w+",
    r"ik | wij | jullie | zijn | hebben | heb | heeft | onze | mijn | vergelijking | gaat | werkt",
)
_THAT_ONE = whole_words(
    r"(?:for|of) (?:that|this|it|the new|the thin|the small|the big)\w*(?: one| stuff| tube)?",
    r"(?:dafür|hierfür|davon) | für (?:dieses|das neue|diese) | pour (?:celui|ce nouveau|cela)",
    r"para (?:ese|este|eso|el nuevo) | per (?:quello|questo|il nuovo) | daar\w*",
)
_THANKS = late_pattern(
    r"\bthank(?:s to)? you\b|\b(?:ich |wir )?danken? (?:ihnen|euch|dir)\b|\bmerci à vous\b"
    r"|\bgracias a (?:usted(?:es)?|vosotros)\b|\bgrazie a (?:voi|lei)\b|\bdank (?:u|je)\b"
)
_ITEM = whole_words(
    r"(?:item|pos|position|poste?|line|nr|no|posición|posizione|regel|zeile)\W{0,2} ?"
    r"(?:\d{1,3}|[a-f])",
)
"""'Item 2 - tube 45 x 1.5 ...': of a list of what is wanted."""
_TUBE_IS = late_pattern(
    r"\W*(?:the|our|das|unser|le|notre|el|nuestro|il|nostro|de|onze)?\s?"
    r"(?:tub(?:e|ing)|pipe|rohr|tubo|buis)\s(?:is|ist|est|es|è)\b"
)
"""'Need pricing for 3 mandrels. Tube is 1.5 x .065': it tells what they are for."""
_MANDRELS = whole_words(
    r"mandrels? | dorne? | mandrins? | mandril(?:es)? | mandrin[oi] | anim[ae] | doorn(?:en|s)?"
)
_FAR = 240
"""Characters of a sentence on either side of a figure that speak of it."""
_LINES = 2
_PAIR = 2
"""A sentence over so many lines is a list, and each line speaks for itself."""


_LABEL = late_pattern(r"\s*(?:[^\s\n]{1,16}\s+){0,4}[^\s\w]*")
"""What may stand before the first figure of a line: '2)', 'Egret bench -', 'dash 12 ('."""
_NO_LABEL = whole_words(
    "as | than | like | to | of | is | was | are | were | the | with | from | und | mit | wie",
    "von | comme | que | avec | como | come | con | zoals | van | met | go | goes | gehen | max",
)


def only_told(layout: Layout, groups: Sequence[Group]) -> list[bool]:
    """Which sizes are only told of; none where that goes for all, or all are asked for together."""
    lent = _lent(groups)
    firsts = [_first_figures(group, lent) for group in groups]
    if asks_for_one_and_one(layout.text.casefold()) and not _one_and_one_within(layout, firsts):
        return [False] * len(groups)
    each = _said_of_each(layout, firsts)
    said = [words_around(layout, figures) for figures in firsts]
    tells = [
        group.row is None
        and any(map(_only_tells, sentences))
        and not any(map(asks_in, sentences))
        and not any(not named or figures[0].sentence in named for named in each)
        and not _told_for(layout, group)
        and not is_asked_behind(layout, group)
        for group, figures, sentences in zip(groups, firsts, said, strict=True)
    ]
    return [False] * len(groups) if all(tells) else tells


def _one_and_one_within(layout: Layout, firsts: Sequence[Sequence[Figure]]) -> bool:
    """'One for 38 x 2 on R 76, plus one for 42 x 2 on R 84': said of the sizes that stand there;
    'one for the 38 and one for the 42' may mean sizes of another sentence."""
    return any(
        sum(any(f.sentence == sentence for f in figures) for figures in firsts) >= _PAIR
        and asks_for_one_and_one(layout.sentence_text(sentence))
        for sentence in layout.spans
    )


def _told_for(layout: Layout, group: Group) -> bool:
    """Whether a size is what the mandrels are for that the sentence before it asks for."""
    own = own_figures(group)
    if not own or not _TUBE_IS.match(layout.sentence_text(own[0].sentence)):
        return False
    ahead = own[0].sentence - 1
    if any(slot_of(figure) for figure in layout.in_sentence(ahead)):
        return False
    words = layout.sentence_text(ahead)
    return _MANDRELS.search(words) is not None and asks_in(words)


def _said_of_each(layout: Layout, firsts: Sequence[Sequence[Figure]]) -> list[frozenset[int]]:
    """For each sentence with 'both' or 'each': itself, where two sizes stand in it, of which it is
    said then; else none, and it may be said of all: 'please price both'."""
    found = []
    for sentence in layout.spans:
        if OF_EACH.search(layout.sentence_text(sentence)):
            own = sum(any(f.sentence == sentence for f in figures) for figures in firsts)
            found.append(frozenset({sentence} if own >= _PAIR else ()))
    return found


def _lent(groups: Sequence[Group]) -> dict[int, list[Group]]:
    """The sizes that share each figure with one before them."""
    lent: dict[int, list[Group]] = {}
    for group in groups:
        for slot in group.shared & group.slots.keys():
            for figure in group.slots[slot]:
                lent.setdefault(figure.index, []).append(group)
    return lent


def _first_figures(group: Group, lent: Mapping[int, Sequence[Group]]) -> list[Figure]:
    """The OD, or where that is shared whatever is a size's own: a wall may be told for all. 'OD is
    38. Option A: wall 2, option B: wall 3': the first has no more of the OD than the second."""
    held = own_figures(group)
    own = [f for f in held if all(other is group for other in lent.get(f.index, ()))] or held
    return [figure for figure in own if slot_of(figure) == "od"] or own


def not_asked(layout: Layout, groups: Sequence[Group]) -> list[bool]:
    """All sizes but the one, where there is just one, whose sentence or the next one asks."""
    asked = [any(map(asks_in, words_around(layout, own_figures(group)))) for group in groups]
    if not any(asked):
        asked = [_asked_behind(layout, group) for group in groups]
    return [not (asks and sum(asked) == 1) for asks in asked]


def asks_in(words: str) -> bool:
    """Whether casefolded words ask for what stands among them."""
    return _ASKS.search(_BOUGHT_BENT.sub(" we ", _ALSO_TELLS.sub(" ", words))) is not None


def _asked_behind(layout: Layout, group: Group) -> bool:
    """'Now we picked up a job in 1.625 x .083. Need a mandrel for that one.'"""
    own = own_figures(group)
    following = own[-1].sentence + 1 if own else 0
    if not own or layout.in_sentence(following):
        return False
    return _THAT_ONE.search(layout.sentence_text(following)) is not None


def _only_tells(words: str) -> bool:
    words = _THANKS.sub(" ", words)
    return _TELLS.search(words) is not None and _ITEM.search(words) is None


def words_around(layout: Layout, figures: Sequence[Figure]) -> list[str]:
    """The sentence of each figure, or of a list its own line of it; casefolded."""
    return [_words_around(layout, figure) for figure in figures]


def _words_around(layout: Layout, figure: Figure) -> str:
    figures = layout.in_sentence(figure.sentence)
    begin = layout.sentence_start(figure.sentence)
    end = begin + len(layout.sentence_text(figure.sentence))
    if figures[-1].line - figures[0].line >= _LINES or opens_line(layout, figure):
        begin = max(begin, layout.text.rfind("\n", 0, figure.start) + 1)
        line_end = layout.text.find("\n", figure.end)
        end = min(end, line_end if line_end >= 0 else end)
    near = layout.text[max(begin, figure.start - _FAR) : min(end, figure.end + _FAR)]
    return near.replace("\n", " ").casefold()


def opens_line(layout: Layout, figure: Figure) -> bool:
    """Whether a figure is the first of its line, but for a label: '2) 1.5 x .065'."""
    begin = layout.text.rfind("\n", 0, figure.start) + 1
    words = layout.words(begin, figure.start)
    return _LABEL.fullmatch(words) is not None and not _NO_LABEL.search(words)
