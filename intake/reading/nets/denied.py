"""A net for a figure that the message denies and a size that has it all the same.

"Typo above, 1.75 not 1.57", and then 1.57 x .095 once more; "scratch the 1.75", and below it is.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from decimal import Decimal

from ..sizes.groups import Group, Slot, own_figures
from ..text.figures import Figure, Layout
from ..text.patterns import whole_words

DENIED = "the message says elsewhere that it is not this"

_TAKEN_BACK = whole_words(
    "scratch | scrap | forget | ignore | disregard | never mind | typo | wrong | meant | mistake",
    "vergessen sie | vertippt | falsch | oubliez | erreur | olvide | error | dimenticate | errore",
    "vergeet | fout",
)
_LEAST, _MOST = Decimal("0.5"), Decimal(2)
"""How the figure beside it stands to one that is denied: of the same kind."""


def denied(layout: Layout, groups: Sequence[Group]) -> Iterator[tuple[Group, str]]:
    """Groups whose own OD is denied; a wall or a radius that is gets a note of its own."""
    said = [f for f in layout.figures if f.negated and _is_denied(layout, f)]
    for group in groups if said else ():
        own = own_figures(group)
        # "And a 50 x 3, not on R 80 but R 100" says nothing of the size before
        others = {
            f.sentence
            for other in groups
            if other is not group
            for f in other.slots.get("od", ())
            if f not in own
        }
        for slot in ("od", "wall", "clr"):
            figure = next(iter(group.slots.get(slot, ())), None)
            if figure is None or figure not in own:
                continue
            if not any(_is(f, figure) and (slot == "od" or f.sentence not in others) for f in said):
                continue
            if slot == "od":
                yield group, DENIED
            else:
                _note(group, slot)


def _note(group: Group, slot: Slot) -> None:
    group.notes.append((slot, DENIED))


def _is_denied(layout: Layout, figure: Figure) -> bool:
    """Whether the sentence has another figure in its place, or words that take it back; and not
    the same figure as something else ('3 inch CLR, not 3 inch diameter')."""
    if figure.owned or figure.row is not None or not _stands_alone(layout, figure):
        return False
    value = figure.number.value
    near = [f.number.value for f in layout.near_in_sentence(figure, 2) if not f.negated]
    if value in near:
        return False
    instead = any(_LEAST < other / value < _MOST for other in near)
    return instead or layout.says(figure.sentence, _TAKEN_BACK)


def _stands_alone(layout: Layout, figure: Figure) -> bool:
    """'Not the 1.75 x .095 but the 1.75 x .120' denies a pair, and none of its figures."""
    after = layout.after(figure)
    return figure.link != "times" and (after is None or after.link != "times")


def _is(denied_one: Figure, figure: Figure) -> bool:
    same = denied_one.number.value == figure.number.value
    return same and (denied_one.unit or figure.unit) == (figure.unit or denied_one.unit)
