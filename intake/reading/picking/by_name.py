"""One of several sizes asked for by what the sender calls it: 'let's start with the front one',
'just a mandrel for the braces for now', 'so we want a mandrel for the 38'. The others are doubted.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Sequence

from ...late_pattern import late_pattern
from ..radii.tied_names import names_of, words_back
from ..radii.tied_picked import picked_alone
from ..sizes.groups import Group
from ..text.figures import Layout
from ..text.patterns import whole_words
from ..wanted.asked_words import ASKS
from ..wanted.one_and_one import asks_for_one_and_one
from ..wanted.told_words import NO

OTHER_PICKED = "another of the sizes is asked for by its name"

_PICKS = whole_words(
    r"(?:start|begin|starting|beginning|go) (?:off |out |first )?with | for now",
    "at this (?:time|point|stage) | to (?:start|begin) with | for the moment",
    r"(?:just|only) (?:need|want|quote|price|after|looking for|interested in)",
    r"(?:just|only) (?:the |an? |one |1 )?(?:\w+ )?mandrel",
    r"(?:need|want|quote|price) (?:just|only) | mandrel (?:just|only) for",
    r"(?:fang\w*|beginn\w*|start\w*) (?:wir |ich )?(?:erst ?mal |zuerst )?mit | erst ?mal",
    r"vorerst | zunächst | nur (?:den |einen |ein )?(?:\w*dorn|angebot|preis)",
    r"commen\w+ par | pour (?:l'instant|le moment) | (?:seulement|uniquement) (?:le |un )?mandrin",
    r"juste (?:le |un )?mandrin | emp(?:ez|iez|ec)\w+ (?:con|por) | por (?:ahora|el momento)",
    r"de momento | s[oó]lo (?:el |un )?mandril",
    r"(?:cominci|inizi|partir|partiam)\w* (?:con|da|dal)",
    r"per (?:ora|adesso|il momento) | solo (?:il |un )?mandrino | (?:beginnen|starten) (?:we )?met",
    r"voorlopig | alleen (?:de |een )?doorn",
)
_OF_ALL = whole_words(
    "both | each | all | beide[rn]? | jede[rnms]? | alle | les deux | chacun\\w* | ambos | cada",
    "entrambi | ognuno | tutti | allebei | elk",
)


_FOR_THE = late_pattern(
    r"\b(?:an?|one|1|the|ein(?:en)?|une?|un[oa]?|een|één|un')\s?(?:\w+\s)?"
    r"(?:mandrel|dorn|mandrin|mandril|mandrino|anima|doorn)\s"
    r"(?:for the|für (?:das|den|die)|pour (?:le|du)|para el|per il|voor de)\s(?:ø\s?)?(?=[.\d])"
)
_MOST = 6
_REACH = 5


def picked_by_name(layout: Layout, groups: Sequence[Group]) -> list[bool]:
    """Which sizes are not the one that is asked for by name; none where no such words are."""
    nothing = [False] * len(groups)
    if len(groups) < 2:
        return nothing
    by_od = _picked_by_od(layout, groups)
    if any(by_od):
        return by_od
    alone = _picked_alone(layout, groups)
    if alone is not None:
        return [number != alone for number in range(len(groups))]
    names = _names(layout, groups)
    if not any(names):
        return nothing
    for sentence in layout.spans:
        said = " ".join(layout.sentence_text(sentence).casefold().split())
        picks = _PICKS.search(said)
        if picks is None or _OF_ALL.search(said) or NO.search(said, 0, picks.start()):
            continue
        words = {word.removesuffix("s") for word in _words(said)}
        meant = {own for own in names if own & words}
        if len(meant) == 1:
            return [not own & words for own in names]
    return nothing


def _picked_by_od(layout: Layout, groups: Sequence[Group]) -> list[bool]:
    """'We bend 38 x 1.5 and 25 x 1.5. Need a mandrel for the 38': which sizes are not that one."""
    nothing = [False] * len(groups)
    tubes = [group.slots["od"][0] for group in groups if "od" in group.slots]
    text = " ".join(layout.text.casefold().split())
    if len(tubes) < len(groups) or _OF_ALL.search(text) or asks_for_one_and_one(text):
        return nothing
    picks = list(_FOR_THE.finditer(layout.text.casefold()))
    figure = next((f for f in layout.figures if picks and f.start == picks[0].end()), None)
    if len(picks) != 1 or figure is None or not ASKS.search(layout.sentence_text(figure.sentence)):
        return nothing
    if any(ASKS.search(layout.sentence_text(tube.sentence)) for tube in tubes):
        return nothing
    others = [tube.number.value != figure.number.value for tube in tubes]
    return nothing if all(others) else others


def _picked_alone(layout: Layout, groups: Sequence[Group]) -> int | None:
    """Which size 'just the rear hoop for now' means: all words of the name stand before its OD."""
    tubes = [group.slots["od"][0] if "od" in group.slots else None for group in groups]
    if any(tube is None for tube in tubes) or len(groups) > _MOST:
        return None
    called = [
        {t.text.removesuffix("s") for t in words_back(layout, tube.token - 1)[:_REACH]}
        | names_of(layout, tube)
        for tube in tubes
        if tube is not None
    ]
    for sentence in layout.spans:
        said = " ".join(layout.sentence_text(sentence).casefold().split())
        if _OF_ALL.search(said) or "?" in said:
            continue
        name = picked_alone(said)
        meant = [number for number, own in enumerate(called) if name and name <= own]
        if len(meant) == 1:
            return meant[0]
    return None


def _words(said: str) -> list[str]:
    return ["".join(c for c in word if c.isalpha()) for word in said.split()]


def _names(layout: Layout, groups: Sequence[Group]) -> list[frozenset[str]]:
    """What each size's tube is called, but for what several tubes are."""
    tubes = [group.slots["od"][0] if "od" in group.slots else None for group in groups]
    names = [names_of(layout, tube) if tube is not None else frozenset() for tube in tubes]
    used = Counter(
        name
        for name, index in {
            (name, tube.index)
            for own, tube in zip(names, tubes, strict=True)
            if tube is not None
            for name in own
        }
    )
    return [frozenset(name for name in own if used[name] == 1) for own in names]
