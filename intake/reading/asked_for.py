"""Whether a size that stands in the text is one that is asked for: where in doubt, it is doubted.

Words that rule a size out are endless, and a doubt is cheap. So a further size is trusted only
where it is tied to the one before, or where its own words ask for it; and where words take some
size back that was not found, every size is to be confirmed.
"""

from __future__ import annotations

import re
from collections.abc import Sequence

from ..late_pattern import late_pattern
from .figures import LISTED, Figure, Layout
from .groups import SLOTS, Group, Slot, slot_of
from .patterns import any_of, whole_words
from .sharing import BOTH

_BESIDE = "it may only be mentioned beside the size that is asked for"
_TAKEN_BACK = "some size seems to be taken back or owned already"
_EITHER = "one of two sizes is meant: which?"
_UNNAMED = frozenset({"place", "chain"})
_ASKS = whole_words(
    r"need\w* | want\w* | quot\w+ | pric\w+ | also | another | second | third | plus | each | both",
    "two | mandrels? | every | all | dorne? | auch | noch | zweite[rnms]? | jeweils | mandrins?",
    r"aussi | deux | mandril(?:es)? | también | ambos | mandrin[oi] | anche | anime | entrambi",
    "ook | doorn(?:en)? | beide | allebei | number | item | pos | chacun | cada | ognuno",
    "same (?:wall|radius|tube|od|die|clr|size|material|thing|but)",
)
_LABEL = late_pattern(r"\s*(?:[^\s\n]{1,16}\s+){0,4}[^\s\w]*")
"""What may stand before the first figure of a line: '2)', 'Egret bench -', 'dash 12 ('."""
_NO_LABEL = whole_words(
    "as | than | like | to | of | is | was | are | were | the | with | from | und | mit | wie",
    "von | comme | que | avec | como | come | con | zoals | van | met | go | goes | gehen | max",
)
_TAKES_BACK = late_pattern(
    r"\b"
    + any_of(
        r"leave (?:\w+ ){0,3}(?:out|off) | drop(?:ped)? | cancel\w* | strike | disregard | scrap",
        "no longer (?:need|want|require)\\w* | not used | don't need | do not need | don't want",
        "do not want | no use for | no need (?:for|of) | already (?:have|got|own)",
        r"(?:we|i)(?:'ve| have)? (?:got|own|have)\b[^.;\n]{0,24}\b(?:already|in the (?:rack|shop))",
        "not interested | (?:you|they) (?:made|sold|sent|supplied|did) | next year | hold off",
        "can wait | for another (?:day|time) | some other time | streichen | entfällt | nicht mehr",
        "haben wir (?:schon|bereits) | (?:ist|sind) (?:schon|bereits) (?:da|vorhanden)",
        "nächstes jahr | plus besoin | annul\\w+ | l'an prochain | on a déjà | avons déjà",
        "ya no (?:hace|necesit|quer)\\w* | ya ten\\w+ | ya hay | anulad\\w+ | el año que viene",
        "non serv\\w+ | (?:abbiamo|ce l'abbiamo) già | già (?:abbiamo|disponibile)",
        r"l'anno prossimo | (?:the others|the rest|die anderen|les autres|l[ao]s otr[ao]s|gli altri"
        r"|le altre|de andere)\b[^.;\n]{0,20}\b(?:have|got|haben|avons|tenemos|abbiamo|hebben)",
        "none for | nothing for | keinen? für | aucun pour | ninguno para | nessuno per",
        "geen voor",
        "vervalt | niet meer nodig | hebben we al | volgend jaar | have \\d{1,2}\\b",
    )
    + r"\b",
    re.IGNORECASE,
)
_ONE_MANDREL = whole_words(
    "one (?:ball |plug |bending )?mandrel | a mandrel | 1 mandrel | einen (?:biege)?dorn",
    "ein dorn",
    "un (?:seul )?mandrin | un (?:solo )?mandril | un (?:solo )?mandrino | un'anima | één doorn",
    "een doorn | just the one | only one | nur einer?",
)
_SEVERAL = whole_words(
    "each | per | both | every | all | two | three | another | also | second | either",
    "any",
    "je | jede[rnms]? | jeweils | beide[rn]?(?! fällen) | zwei | drei | noch | auch | chacun",
    "chaque | deux | trois | aussi | cada | ambos | dos | tres | también | ogni | entrambi",
    "due | tre | anche",
    "elk | elke | beide | twee | drie | ook | and one | plus | combinations? | separate(?:ly)?",
)
_OF_OTHER_THINGS = late_pattern(
    r"\s(?:the |our |all |both |my |die |les |los |i |de )?(?:dies?|formers?|benders?|wipers?|tube"
    r"|machine|clamps?|stock|drawings?|tooling|biegeformen|matrices|matrici|mallen)\b",
    re.IGNORECASE,
)
"""'We already have the dies': no size is meant."""
_OF_NO_SIZE = late_pattern(r"\b(?:no|not|nicht|al más|al plus)\b\W{1,3}$", re.IGNORECASE)


def doubt_unasked(layout: Layout, groups: list[Group]) -> None:
    """Note on each group what speaks against its being asked for; see the module."""
    if len(groups) < 2:
        return
    for number, group in enumerate(groups):
        before = groups[number - 1] if number else None
        tied = before is None or _is_tied(layout, before, group)
        listed = before is not None and _is_next_line(layout, before, group)
        if not tied or (not listed and _is_straggler(groups, group)):
            _doubt(group, _BESIDE)
        if before is not None:
            _doubt_choice(layout, before, group)
    if _takes_back(layout):
        for group in groups:
            _doubt(group, _TAKEN_BACK)
    elif _wants_one(layout):
        _doubt_variants(groups)


def _wants_one(layout: Layout) -> bool:
    """Whether one mandrel is asked for in so many words, and nothing is said of each size."""
    text = " ".join(layout.text.casefold().split())
    return _ONE_MANDREL.search(text) is not None and not _SEVERAL.search(text)


def _doubt_variants(groups: list[Group]) -> None:
    """'The drawing says 35 x 2, the list 35 x 1.5 ... one mandrel': one size, told in two ways."""
    ods = {group.slots["od"][0].number.value for group in groups if "od" in group.slots}
    if len(ods) != 1:
        return
    order: tuple[Slot, ...] = ("wall", "clr")
    for slot in order:
        values = {group.slots[slot][0].number.value for group in groups if slot in group.slots}
        if len(values) > 1:
            groups[0].notes += [(slot, _EITHER)] if slot in groups[0].slots else []
            for group in groups[1:]:
                _doubt(group, _EITHER)
            return


def _doubt(group: Group, why: str) -> None:
    group.doubtful = why
    group.notes += [(slot, why) for slot in group.slots]


def _doubt_choice(layout: Layout, before: Group, group: Group) -> None:
    """'We don't know yet whether 30 x 3 or 30 x 4': one of two, unless both are asked for."""
    own = _own(group, before)
    if not own or own[0].link != "or" or slot_of(own[0]) != "od":
        return
    if layout.says(own[0].sentence, BOTH):
        return
    before.notes += [(slot, _EITHER) for slot in ("od", "wall") if slot in before.slots]
    _doubt(group, _EITHER)


def _is_straggler(groups: Sequence[Group], group: Group) -> bool:
    """A further OD that no word names, with no radius of its own beside sizes that have theirs,
    may be a box, a machine or a length."""
    figure = group.slots["od"][0] if "od" in group.slots else None
    if figure is None or figure.how not in _UNNAMED or figure.row is not None:
        return False
    others = [other for other in groups if other is not group]
    poor = "clr" not in group.slots or "clr" in group.shared
    richer = any("clr" in other.slots and "clr" not in other.shared for other in others)
    beside = any(
        other.slots["od"][0].sentence == figure.sentence for other in others if "od" in other.slots
    )
    return poor and richer and not beside


def _is_tied(layout: Layout, before: Group, group: Group) -> bool:
    """Whether a further size goes on from the one before it, or asks for itself."""
    if group.row is not None or any(f.row is not None for f in _own(group, None)):
        return True
    own, others = _own(group, before), _own(before, None)
    if not own or not others:
        return True
    if len(own) == _WHOLE:
        return True
    figure = own[0]
    beside = any(o.sentence == figure.sentence and o.line == figure.line for o in others)
    if figure.link in LISTED or (beside and len(own) > 1):
        return not before.doubtful
    if _is_next_line(layout, before, group) or _is_next_radius(own, before):
        return True
    return _ASKS.search(_words_around(layout, figure)) is not None


def _is_next_line(layout: Layout, before: Group, group: Group) -> bool:
    """Whether two sizes stand on lines of one list."""
    own, others = _own(group, before), _own(before, None)
    if len(own) < _PAIR or not others:
        return False
    slot = slot_of(own[0])
    last = before.slots[slot][0] if slot is not None and slot in before.slots else others[0]
    opens = all(_opens_line(layout, first) for first in (own[0], last))
    return opens and own[0].line - last.line <= _LINES


def _is_next_radius(own: Sequence[Figure], before: Group) -> bool:
    """'radius A: 70 mm / radius B: 105 mm': a further radius, named as one, right after another."""
    radius = before.slots["clr"][-1] if "clr" in before.slots else None
    if radius is None or len(own) != 1 or own[0].how not in ("cue", "sign"):
        return False
    beside = own[0].line - radius.line <= 1 and own[0].index - radius.index == 1
    return slot_of(own[0]) == "clr" and beside


_PAIR = 2
_WHOLE = 3
"""OD, wall and radius of its own: whoever writes all three asks for it."""
_LINES = 2
"""So far apart stand the lines of one list."""


def _own(group: Group, before: Group | None) -> list[Figure]:
    """The figures that a group doesn't share, in the order of the text; without those of
    ``before``."""
    taken = set()
    if before is not None:
        taken = {f.index for figures in before.slots.values() for f in figures}
    own = [
        group.slots[slot][0] for slot in SLOTS if slot in group.slots and slot not in group.shared
    ]
    return sorted((f for f in own if f.index not in taken), key=lambda f: f.start)


def _opens_line(layout: Layout, figure: Figure) -> bool:
    begin = layout.text.rfind("\n", 0, figure.start) + 1
    words = layout.text[begin : figure.start].casefold()
    return _LABEL.fullmatch(words) is not None and not _NO_LABEL.search(words)


def _words_around(layout: Layout, figure: Figure) -> str:
    """The figure's sentence, or of a sentence of many lines its own line."""
    figures = layout.in_sentence(figure.sentence)
    if figures[-1].line - figures[0].line < _LINES:
        return layout.sentence_text(figure.sentence)
    begin = layout.text.rfind("\n", 0, figure.start) + 1
    end = layout.text.find("\n", figure.end)
    return layout.text[begin : end if end >= 0 else len(layout.text)].casefold()


def _takes_back(layout: Layout) -> bool:
    """Whether words take back, own or put off some size, and no figure was found to be meant."""
    if any(f.negated or f.context_only or f.put_off for f in layout.figures):
        return False
    return any(
        not _OF_NO_SIZE.search(layout.text[max(0, words.start() - 12) : words.start()])
        and not _OF_OTHER_THINGS.match(layout.text, words.end())
        for words in _TAKES_BACK.finditer(layout.text)
    )
