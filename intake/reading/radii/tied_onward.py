"""ODs that are only said again, each with the radius behind it: 'the 1.5 bends on a 4.5 CLR, the 2
on 6'. The mirror of ``tied_pairs``."""

from __future__ import annotations

from collections.abc import Sequence
from itertools import pairwise

from ..text.figures import Figure, Layout
from ..text.patterns import word_set
from ..text.roles import RADII

_ONTO = word_set(
    "is are at on to gets get takes needs wants uses goes has around with bends bend bent runs : =",
    "ist auf um bekommt braucht wird kommt mit est sur à avec es sobre con a è su con is op om met",
    "krijgt",
)
_FILLERS = word_set(
    "a an the ein einen einem un une uno una een in inch inches mm \" '' od tube one"
)
_AHEAD = word_set("the our das den dem der die le la el lo il l' de het for für pour para per voor")
_AND = word_set("and & , + und et y e en")
_OF_RADIUS = word_set("clr r radius centerline centreline")
_MOST_BETWEEN = 6
"""Tokens between an OD and its radius."""


def find_onward(layout: Layout, tubes: Sequence[Figure]) -> list[tuple[Figure, Figure]]:
    """Each radius with the OD it is said of, where two tubes or more have one so; else none."""
    ties: list[tuple[Figure, Figure]] = []
    pointers: list[Figure] = []
    for pointer, radius in pairwise(layout.figures[tubes[0].index + 1 :]):
        named = radius.role in RADII and radius.how not in ("place", "list")
        if not named and not (ties and _is_open(layout, radius)):
            continue
        leads = _leads_to(layout, pointer, radius, known=bool(ties) and named)
        together = _joined_to(layout, pointer, tubes) if leads else []
        if not together:
            continue
        last = ties[-1][0] if ties else None
        goes_on = last is not None and last.index == together[0][0].index - 1
        if named or (goes_on and last is not None and last.sentence == radius.sentence):
            ties += [(radius, tube) for _, tube in together]
            pointers += [again for again, _ in together]
    if len({tube.index for _, tube in ties}) < 2 or len({r.index for r, _ in ties}) < 2:
        return []
    for (radius, _), pointer in zip(ties, pointers, strict=True):
        if radius.role not in RADII or radius.how in ("place", "list"):
            radius.role = ties[0][0].role
        pointer.give("noise", "same")
    return ties


def _joined_to(
    layout: Layout, pointer: Figure, tubes: Sequence[Figure]
) -> list[tuple[Figure, Figure]]:
    """An OD said again with its tube, and those before it that share the radius: 'the 42 and the
    45 are 95'."""
    found: list[tuple[Figure, Figure]] = []
    figure: Figure | None = pointer
    while figure is not None:
        tube = _named(figure, tubes)
        if tube is None or not _is_pointed_at(layout, figure):
            break
        found.insert(0, (figure, tube))
        before = layout.before(figure)
        between = [] if before is None else layout.between(before, figure)
        words = {token.text for token in between if token.kind != "gap"}
        joined = bool(words & _AND) and words <= _AND | _AHEAD | _FILLERS
        figure = before if joined else None
    return found


def _named(pointer: Figure, tubes: Sequence[Figure]) -> Figure | None:
    return next((t for t in tubes if _same(t, pointer) and t.index < pointer.index), None)


def _is_pointed_at(layout: Layout, pointer: Figure) -> bool:
    """'The 45'"""
    before = layout.tokens_before(pointer, 1)
    return bool(before) and before[0].text in _AHEAD


def _is_open(layout: Layout, figure: Figure) -> bool:
    """Whether no word of its own says what a figure is: '..., the 2 on 6'."""
    if figure.negated or figure.is_gauge or figure.unit in ("D", "sch"):
        return False
    after = layout.after(figure)
    if after is not None and after.link in ("times", "slash"):
        return False
    return figure.role is None or figure.role in RADII or figure.how in ("place", "list")


def _leads_to(layout: Layout, pointer: Figure, radius: Figure, *, known: bool) -> bool:
    """'The 45 bends on a 135 mm'; where the verb is ``known``, 'the 51 a 179 radius'."""
    if radius.sentence != pointer.sentence or pointer.row is not None or pointer.link == "times":
        return False
    between = [t.text for t in layout.between(pointer, radius) if t.kind != "gap"]
    words = [word for word in between if word not in _FILLERS and word not in _OF_RADIUS]
    said = bool(words) or (known and bool(between))
    return said and len(between) <= _MOST_BETWEEN and set(words) <= _ONTO


def _same(tube: Figure, pointer: Figure) -> bool:
    return tube.number.value == pointer.number.value and (
        pointer.unit is None or tube.unit in (None, pointer.unit)
    )
