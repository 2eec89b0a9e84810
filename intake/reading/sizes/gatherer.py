"""Figures in the order of the text, each taken into the request it belongs to."""

from __future__ import annotations

from ..naming.likeness import restates
from ..said.both_asked import asks_for_both
from ..said.late_corrections import put_right_by
from ..said.one_of_two import settles_on_one
from ..text.figures import Figure, Layout, Row
from .boundaries import (
    AHEAD,
    asks_another,
    begins_item,
    is_other_bore,
    opens_next,
    starts_tube,
    wall_opens_next,
)
from .groups import Group, Slot, slot_of
from .retelling import (
    contradicts,
    is_other_form,
    is_other_kind,
    is_perhaps,
    says_which,
    was_carried_over,
)
from .runs import is_undecided, run_at
from .sharing import COMBINED, RESPECTIVELY, says_each

MOST_GROUPS = 500
"""No more are gathered: two long lists side by side would make all their pairs."""
_RIGHT_AFTER = 40
"""Characters within which 'not 1.5' says which figure takes its place."""


class Gatherer:
    """Takes figures in order. The ``open`` groups are those that the next figure may fill."""

    def __init__(self, layout: Layout, figures: list[Figure]) -> None:
        self.layout = layout
        self.figures = figures
        self.at = 0
        """Index of the figure that is being taken."""
        self.done: list[Group] = []
        self.open: list[Group] = []
        self.corrected: tuple[Slot, Figure, list[Group]] | None = None
        """What was last put right in sizes that are not open any more."""

    def run(self) -> list[Group]:
        """All groups in order, ``MOST_GROUPS`` at the most."""
        while self.at < len(self.figures) and len(self.done) + len(self.open) < MOST_GROUPS:
            run = run_at(self.layout, self.figures, self.at)
            self._take(run)
            self.at += len(run)
        self._close()
        return self.done[:MOST_GROUPS]

    def _close(self) -> None:
        self.done.extend(group for group in self.open if group.slots or group.shape)
        self.open = []

    def _new(self, row: Row | None) -> None:
        self._close()
        self.open = [Group(row=row)]

    def _take(self, run: list[Figure]) -> None:
        first = run[0]
        links = {figure.link for figure in run[1:]}
        choice = "range" if "range" in links else "choice" if "or" in links else None
        if choice == "choice" and asks_for_both(self.layout.text):
            choice = None
        if choice is not None:
            for figure in run:
                figure.notes.append(choice)
        slot = slot_of(first)
        if slot is not None and len(run) == 1 and self._corrects_earlier(slot, first):
            return
        if not self.open:
            self.open = [Group(row=first.row)]
        elif first.row != self.open[-1].row or begins_item(self.open[-1], slot, self._ahead()):
            self._new(first.row)
        elif slot in ("od", "id") and any(group.shape for group in self.open):
            self._new(first.row)  # "2 x 2 x .120 square. Round tube 1.5 OD": another one
        if slot is None:
            self._take_side(first)
        elif is_other_bore(self.open[-1], slot, self._ahead()) or self._heads_next(slot):
            self._new(first.row)
            self._fill(slot, run)
        elif not any(slot in group.slots for group in self.open):
            one_of = slot == "clr" and choice == "choice" and settles_on_one(self.layout.text)
            self._fill(slot, run[:1] if one_of else run)
            for figure in run[1:] if one_of else ():
                self._append(self.open, slot, figure)
        elif not self._restate_list(slot, run):
            self._take_again(slot, run)

    def _corrects_earlier(self, slot: Slot, figure: Figure) -> bool:
        """Put right a size that is not open any more; said once more, the value goes there too."""
        if self.corrected is not None and self.corrected[0] == slot:
            _, value, groups = self.corrected
            if restates(value, figure):
                self._append(groups, slot, figure)
                return True
        meant = put_right_by(self.layout, self.done, self.open, slot, figure)
        for group in meant:
            group.slots[slot] = [figure]
        if meant:
            self.corrected = (slot, figure, meant)
        return bool(meant)

    def _heads_next(self, slot: Slot) -> bool:
        """'For R57 we need 38 x 1.5 and 38 x 2, for R85 42.4 x 2': where radii come first, or walls
        head their lines, a tube waits for none."""
        ahead = self._ahead()
        first = next((g for g in (*self.done, *self.open) if slot in g.slots), None)
        if slot not in ("clr", "wall") or ahead[0].row is not None:
            return False  # a table's row says by itself what belongs together
        if slot in self.open[-1].slots and wall_opens_next(self.layout, ahead):
            return True
        if first is None or first.place(slot) > first.place("od"):
            return False
        if slot == "clr":
            return opens_next(ahead, first=True)
        last = self.figures[self.at - 1]
        tube = len(ahead) > 1 and slot_of(ahead[1]) == "od" and ahead[0].row is None
        return tube and ahead[0].line > last.line and self.open[-1].has_tube

    def _take_side(self, figure: Figure) -> None:
        if any(group.slots.get("od") for group in self.open):
            self._new(figure.row)
        for group in self.open:
            group.shape = figure.shape
            group.side = group.side or figure

    def _restate_list(self, slot: Slot, run: list[Figure]) -> bool:
        """'1.5 and 2 in (38.1 and 50.8 mm)': one value more for each group."""
        if not len(run) == len(self.open) > 1:
            return False
        pairs = list(zip(self.open, run, strict=True))
        if any(slot not in group.slots for group in self.open):
            return False
        if run[0].link != "restate" and not all(
            restates(group.slots[slot][0], figure) or self._repeats(slot, figure)
            for group, figure in pairs
        ):
            return False
        for group, figure in pairs:
            group.slots[slot].append(figure)
        return True

    def _take_again(self, slot: Slot, run: list[Figure]) -> None:
        """A value for a slot that is taken: the same again, put right, in doubt, or a new one."""
        first = run[0]
        single = len(run) == 1
        holding = [group for group in self.open if slot in group.slots]
        if slot == "clr" and single and opens_next(self._ahead()):
            self._new(first.row)
            self._fill(slot, run)
        elif starts_tube(self.open, slot, self._ahead()):
            self._another(slot, run)
        elif (
            single
            and all(restates(group.slots[slot][0], first) for group in holding)
            and not (
                first.corrects and any(is_other_kind(g.slots[slot][0], first) for g in holding)
            )
        ):
            self._append(holding, slot, first)
        elif single and all(was_carried_over(group, slot, first) for group in self.open):
            self._replace(slot, first)
            for group in self.open:
                group.shared.discard(slot)
        elif first.corrects or self._replaces(first):
            self._replace(slot, first)
            if slot == "od":
                for group in self.open:
                    group.slots.pop("id", None)
        elif (
            first.link == "restate"
            or self._repeats(slot, first)
            or (single and is_undecided(self.layout, first))
            or (
                single
                and (contradicts(self.open, slot, first) or is_perhaps(self.open[-1], slot, first))
            )
        ):
            self._append(holding, slot, first)
        else:
            self._another(slot, run)

    def _append(self, groups: list[Group], slot: Slot, figure: Figure) -> None:
        for group in groups:
            group.slots[slot].append(figure)

    def _replace(self, slot: Slot, figure: Figure) -> None:
        for group in self.open:
            group.slots[slot] = [figure]

    # --- an empty slot --------------------------------------------------------------------------

    def _fill(self, slot: Slot, run: list[Figure]) -> None:
        """An empty slot: a list of n values makes n requests of each open one."""
        if slot == "od" and self._belongs_to_next(run[0]):
            self._new(run[0].row)
        if len(run) == 1:
            self._replace(slot, run[0])
            return
        sentence = run[0].sentence
        respectively = self.layout.says(sentence, RESPECTIVELY)
        sure = respectively or says_which(self.layout, run)
        each = says_each(self.layout, run) or self.layout.says(sentence + 1, COMBINED)
        paired = self._awaiting(slot, run, sure=sure, each=each)
        if paired is None and len(run) == len(self.open) and (respectively or not each):
            paired = self.open
        if paired is None:
            self.open = self._spread(self.open, slot, run)
            return
        for group, figure in zip(paired, run, strict=True):
            group.slots[slot] = [figure]
            if not sure:
                group.notes.append((slot, "two lists side by side: which goes with which?"))

    def _spread(self, bases: list[Group], slot: Slot, run: list[Figure]) -> list[Group]:
        """Every base with every value of the list."""
        spread: list[Group] = []
        for base in bases:
            for figure in run[: MOST_GROUPS - len(spread)]:
                new = base.copy()
                new.slots[slot] = [figure]
                spread.append(new)
        return spread

    def _awaiting(
        self, slot: Slot, run: list[Figure], *, sure: bool, each: bool
    ) -> list[Group] | None:
        """'1/2 with .049 and 3/4 with .065, CLR 1-1/2 and 1-13/16': the sizes just named, one by
        one, where they are as many as the list has values; but 'each', or '2D and 3D', is of all.
        """
        groups = [*self.done, *self.open]
        waiting = groups[-len(run) :]
        if len(self.open) == len(run) or len(groups) < len(run):
            return None
        if any(slot in group.slots or "od" not in group.slots for group in waiting):
            return None
        if sure:
            return waiting
        before = groups[: -len(run)]
        more = any(slot not in group.slots and "od" in group.slots for group in before[-1:])
        multiples = any(figure.role == "times_d" for figure in run)
        return None if each or more or multiples else waiting

    def _belongs_to_next(self, figure: Figure) -> bool:
        """An OD after a finished wall or radius in another paragraph starts afresh."""
        anchor = self.open[-1].anchor
        return (
            anchor is not None and anchor.role == "wall" and figure.paragraph - anchor.paragraph > 1
        )

    def _ahead(self) -> list[Figure]:
        """The figure that is being taken and the next few."""
        return self.figures[self.at : self.at + AHEAD]

    # --- a slot that is taken -------------------------------------------------------------------

    def _replaces(self, figure: Figure) -> bool:
        """'It is 1.75, not 1.5': the value that stands where a negated one is named."""
        return any(
            other.negated
            and not other.owned
            and other.role in (None, figure.role)
            and other.line == figure.line
            and abs(other.start - figure.start) < _RIGHT_AFTER
            for other in self.layout.near_in_sentence(figure, _RIGHT_AFTER)
        )

    def _repeats(self, slot: Slot, figure: Figure) -> bool:
        """The radius as '2D' beside the radius as a length, or a wall beside its schedule."""
        if figure.row is not None and slot == "wall":
            return True
        held = [other for group in self.open for other in group.slots.get(slot, [])]
        if slot == "wall" and asks_another(self.layout, figure, held):
            return False
        return is_other_form(slot, figure, held) and self._near(slot, figure)

    def _near(self, slot: Slot, figure: Figure) -> bool:
        """Close enough to be one value said twice: no other tube between, same paragraph."""
        last = max((g.slots[slot][-1] for g in self.open if slot in g.slots), key=lambda f: f.start)
        if figure.paragraph != last.paragraph:
            return False
        held = {f.index for group in self.open for f in group.slots.get("od", [])}
        at = self.at - 1
        while slot != "od" and at >= 0 and self.figures[at].start > last.start:
            if slot_of(self.figures[at]) == "od" and self.figures[at].index not in held:
                return False
            at -= 1
        return True

    def _another(self, slot: Slot, run: list[Figure]) -> None:
        """A second value for a slot that is taken: a new OD starts a new request; a second wall or
        radius asks for the same tube again, changed in that one thing."""
        group = self.open[-1]
        bore_too = slot == "id" and "od" in group.slots and "id" not in group.slots
        if slot in ("od", "id") and not bore_too:
            self._new(run[0].row)
            self._fill(slot, run)
            return
        latest = group.slots.get(slot)
        bases = [g for g in self.open if latest is None or g.slots.get(slot) == latest]
        self.done.extend(self.open)
        self.open = self._spread(bases, slot, run)
        for new in self.open:
            new.shared = set(new.slots) - {slot}
