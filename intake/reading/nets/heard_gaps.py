"""A length that no rule heard, filled in where what was learnt of words says which figure it is.

'Thru the middle of the pipe, 6 3/4': how a radius can be put has no end. Where a size lacks a
length and one figure that is in no size is heard as just that (``roles_learnt.py``), it is stated
with a doubt: to confirm a figure is less work for the customer than to be asked for it again.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from decimal import Decimal

from ..sizes.groups import Group, Slot
from ..text.figures import Figure, Layout
from ..text.roles import Role
from .around_figure import LONGEST, MOST, Figures, overlapping
from .roles_learnt import shares

HEARD = "no rule reads it so: taken for it by the words around it"
_ROLE: dict[Slot, Role] = {"clr": "radius", "wall": "wall", "od": "od"}
_LIKELY, _SURELY = 0.3, 0.8
"""The share from which a figure that is likelier that than another length is taken for it: one that
nothing was read as, and one that was read as an OD without anything else, or as no measure."""
_TO_OD: dict[Slot, tuple[Decimal, Decimal]] = {
    "clr": (Decimal("1.05"), Decimal(12)),
    "wall": (Decimal("0.008"), Decimal("0.2")),
}
"""How much of the OD a radius and a wall are, within which one is filled in."""
_INCH = Decimal("25.4")
_SHORT = 3
"""Letters of words that say nothing of what is counted: 'mit', 'und'."""


def fill_gaps(layout: Layout, groups: list[Group]) -> None:
    """Fill in what sizes lack; a size that was only such a figure is none any more."""
    slots = [slot for slot in _ROLE if any(_lacks(group, slot) for group in groups)]
    if layout.earlier:
        return  # what is lacking may stand in the mail that is answered
    if not slots or len(layout.text) > LONGEST or len(layout.figures) > MOST:
        return
    free = list(_free(layout, groups))
    if not free:
        return
    figures = Figures(layout.text)
    heard = {figure.index: _shares(figures, figure) for figure, _ in free}
    for slot in slots:
        taken = [
            figure
            for figure, least in free
            if not (slot == "wall" and _counts_things(layout, figure))
            and heard[figure.index].get(slot, 0) >= least
            and heard[figure.index][slot] == max(heard[figure.index].values())
        ]
        lacking = [g for g in groups if _lacks(g, slot) and _sole_od(g) not in taken]
        for group, figure in _pairs(lacking, taken):
            if _fits(group, slot, figure):
                _fill(groups, group, slot, figure)


def _lacks(group: Group, slot: Slot) -> bool:
    """Whether a size is there that lacks a length, and no bore or shape that tells it."""
    if slot in group.slots or group.shape or group.side is not None or group.row is not None:
        return False
    if slot == "od":
        return "id" not in group.slots and {"wall", "clr"} <= group.slots.keys()
    if slot == "wall":
        return "od" in group.slots and "id" not in group.slots
    return group.has_tube


def _free(layout: Layout, groups: Sequence[Group]) -> Iterator[tuple[Figure, float]]:
    """The figures that are in no size, or in one that is nothing but an OD told by its place; and
    the share from which each is taken for something."""
    held = {f.index for group in groups for figures in group.slots.values() for f in figures}
    alone = {figure.index for group in groups if (figure := _sole_od(group)) is not None}
    for figure in layout.figures:
        if figure.negated or figure.context_only or figure.put_off or figure.row is not None:
            continue
        if figure.index in alone:
            yield figure, _SURELY
        elif figure.index not in held and figure.role in (None, "noise"):
            yield figure, _SURELY if figure.role else _LIKELY


def _counts_things(layout: Layout, figure: Figure) -> bool:
    """'45 on 2 machines': a whole number without a unit, and a word that is no cue behind it."""
    behind = layout.tokens_after(figure, 1)
    if figure.unit is not None or figure.number.value % 1 or not behind:
        return False
    return behind[0].kind == "word" and not behind[0].cues and len(behind[0].text) > _SHORT


def _sole_od(group: Group) -> Figure | None:
    own = [slot for slot in group.slots if slot not in group.shared]
    if own != ["od"] or len(group.slots["od"]) > 1:
        return None
    figure = group.slots["od"][0]
    return figure if figure.how in ("place", "chain") and figure.role == "od" else None


def _shares(figures: Figures, figure: Figure) -> dict[Slot, float]:
    found = [shares(figures.traits(at)) for at in overlapping(figures, figure.start, figure.end)]
    return {slot: max((one[slot] for one in found), default=0.0) for slot in _ROLE}


def _pairs(lacking: Sequence[Group], taken: Sequence[Figure]) -> Iterator[tuple[Group, Figure]]:
    """Which size gets which figure: the one there is, or as many in the same order."""
    if len(taken) == 1:
        yield from ((group, taken[0]) for group in lacking)
    elif len(taken) == len(lacking):
        yield from zip(lacking, taken, strict=True)


def _fits(group: Group, slot: Slot, figure: Figure) -> bool:
    """Whether such a length goes with the OD, in one unit or in the other."""
    od = group.slots.get("od")
    if not od or slot not in _TO_OD or od[0].is_gauge or figure.is_gauge:
        return slot == "wall" or not figure.is_gauge
    least, most = _TO_OD[slot]
    ratio = figure.number.value / od[0].number.value if od[0].number.value else Decimal(0)
    units = {od[0].unit, figure.unit}
    other = (ratio / _INCH, ratio * _INCH) if len(units) > 1 else ()
    return any(least <= one <= most for one in (ratio, *other))


def _fill(groups: list[Group], group: Group, slot: Slot, figure: Figure) -> None:
    groups[:] = [other for other in groups if other is group or _sole_od(other) is not figure]
    figure.give(_ROLE[slot], "place")
    group.slots[slot] = [figure]
    group.notes.append((slot, HEARD))
