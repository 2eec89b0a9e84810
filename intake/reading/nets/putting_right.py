"""Nets for what the sender puts right: a word of taking back, and nothing or the wrong thing taken.

Each raises a doubt and reads nothing anew; see ``nets.py``.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from itertools import pairwise

from ..said.put_right import is_alone
from ..sizes.groups import Group, Slot
from ..text.figures import Figure, Layout
from .words import CHANGED, ONE_FOR, PUTS_RIGHT, TAKES_BACK

PUT_RIGHT = "the message puts a figure right, and it is not clear which"
_NEAR = 24
_FAR = 160
"""Characters between two figures of one kind in which a word takes the first back."""


def _taken_back(layout: Layout, groups: Sequence[Group]) -> Iterator[tuple[Group, str]]:
    """'Quarter inch wall?? no, an eighth': two sizes that differ in one figure, and a word of
    taking back between the two."""
    for first, second in pairwise(groups):
        slot = _only_difference(first, second)
        if slot is None or first.doubtful or second.doubtful:
            continue  # which of the two is meant, or that it isn't known, was heard
        if first.row is not None and second.row is not None:
            continue  # rows of one table differ, and "No. of mandrels" takes nothing back
        one, two = first.slots[slot][0], second.slots[slot][0]
        between = layout.text[one.end : two.start]
        if len(between) <= _FAR and TAKES_BACK.search(between.casefold()):
            yield first, PUT_RIGHT
            yield second, PUT_RIGHT


def _unmended(layout: Layout, groups: Sequence[Group]) -> Iterator[tuple[Group, str]]:
    """'I gave you the wrong radius': said, and yet two sizes differ in one figure only."""
    text = " ".join(layout.text.casefold().split()) if len(groups) > 1 else ""
    if not (PUTS_RIGHT.search(text) or CHANGED.search(text)):
        return
    for first, second in pairwise(groups):
        known = first.doubtful or second.doubtful
        slot = _only_difference(first, second)
        if not known and slot is not None and not _one_for_each(layout, first, second, slot):
            yield first, PUT_RIGHT
            yield second, PUT_RIGHT


def _one_for_each(layout: Layout, first: Group, second: Group, slot: Slot) -> bool:
    """'One for R 45 as before and one for R 60': both are wanted, whatever changed."""
    figures = (first.slots[slot][0], second.slots[slot][0])
    return all(
        ONE_FOR.search(layout.words(max(0, figure.start - _NEAR), figure.start).casefold())
        for figure in figures
    )


def _left_wrong(layout: Layout, groups: Sequence[Group]) -> Iterator[tuple[Group, str]]:
    """'I gave you the wrong radius, it is 5': the figure that puts it right is in no size."""
    slots = [figures for group in groups for figures in group.slots.values()]
    held = {f.index for figures in slots for f in figures}
    said = [(figures[0].number.value, figures[0].unit) for figures in slots]
    loose = [
        f
        for f in layout.figures
        if f.index not in held
        and _is_loose(f)
        and not any(
            value == f.number.value and (unit or f.unit) == (f.unit or unit) for value, unit in said
        )
    ]  # "It's not .083, it's .095. So: 1.625 OD, .095 wall"
    wrong = {s for f in loose for s in (f.sentence, f.sentence - 1) if layout.says(s, PUTS_RIGHT)}
    alone = any(f.corrects and is_alone(layout, f) for f in loose)  # "Oops no. It is 4."
    if alone or any(f.sentence in wrong or f.sentence - 1 in wrong for f in loose):
        yield from ((group, PUT_RIGHT) for group in groups)


def _is_loose(figure: Figure) -> bool:
    return figure.role is None and figure.row is None and not figure.negated


def _only_difference(first: Group, second: Group) -> Slot | None:
    """The one slot in which two groups have different figures; None where there are more."""
    if set(first.slots) != set(second.slots):
        return None
    slots = [slot for slot in first.slots if not _alike(first, second, slot)]
    return slots[0] if len(slots) == 1 else None


def _alike(first: Group, second: Group, slot: Slot) -> bool:
    one, two = first.slots[slot][0], second.slots[slot][0]
    return one is two or (one.number.value == two.number.value and one.unit == two.unit)


PUTTING_RIGHT = (_taken_back, _unmended, _left_wrong)
