"""Figures with roles become size requests: what belongs together, what is shared, what is new."""

from __future__ import annotations

import re
from bisect import bisect_left
from dataclasses import dataclass, field, replace
from decimal import Decimal

from .chains import nearly
from .figures import Figure, Layout
from .roles import RADIUS_ROLES

_SLOT = dict.fromkeys(RADIUS_ROLES, "clr") | {
    "od": "od",
    "nps": "od",
    "dn": "od",
    "dash": "od",
    "id": "id",
    "wall": "wall",
    "schedule": "wall",
}
_EACH = re.compile(
    r"\b(?:each|both|every|all|either|any|jeweils|beide|alle|chacun|tous|ambos|cada|entrambi|tutti|ogni|beiden|elk|elke|allebei)\b"
)
_RESPECTIVELY = re.compile(
    r"\b(?:respectively|small(?:er)? one|big(?:ger)? one|larger? one|the first|the other|bzw|jeweils|respectivement|rispettivamente|respectivamente)\b"
)
_SAME = re.compile(
    r"\b(?:same|ditto|identical|likewise|gleiche[rnms]?|selbe[rnms]?|même|mismo|misma|stesso|stessa|zelfde|dito|idem|also)\b"
)


@dataclass(slots=True)
class Group:
    """One request being put together: a figure (with its restatements) for each slot."""

    slots: dict[str, list[Figure]] = field(default_factory=dict)
    shape: str | None = None
    shared: set[str] = field(default_factory=set)
    """Slots taken over from another group."""
    row: tuple[str, int, int] | None = None
    notes: list[tuple[str, str]] = field(default_factory=list)
    """(field, why) of doubts that arise from grouping."""

    def copy(self) -> Group:
        """An independent copy whose slots can be replaced."""
        return replace(
            self,
            slots={slot: list(figures) for slot, figures in self.slots.items()},
            shared=set(self.shared),
            notes=list(self.notes),
        )

    @property
    def anchor(self) -> Figure | None:
        """The figure that tells where in the text this request stands."""
        for slot in ("od", "id", "wall", "clr"):
            if slot in self.slots:
                return self.slots[slot][0]
        return None

    def place(self, slot: str) -> int:
        """Where a slot's figure stands, or -1."""
        return self.slots[slot][0].start if slot in self.slots else -1


def gather(layout: Layout) -> list[Group]:
    """All requests in the order asked for."""
    figures = [
        figure
        for figure in layout.figures
        if (figure.role in _SLOT or figure.shape) and figure.is_measure and not figure.context_only
    ]
    groups = _Gatherer(layout, figures).run()
    context = [f for f in layout.figures if f.context_only and f.role in _SLOT]
    _fill_from_context(groups, context)
    _share(layout, groups)
    return _without_owned(layout, groups)


_OWN_ONE = re.compile(
    r"\b(?:own|have|got|already)\b[^.;]{0,40}\b(?:mandrel|one|tool)\b[^.;]{0,20}\bfor the (?P<which>biggest|largest|smallest|first|last|big one|small one)\b"
)


def _without_owned(layout: Layout, groups: list[Group]) -> list[Group]:
    """'Radii 76, 101 and 152; we own a mandrel for the biggest': that one is not asked for."""
    owned = _OWN_ONE.search(" ".join(layout.text.casefold().split()))
    if owned is None or len(groups) < 2:
        return groups
    slot = next(
        (
            s
            for s in ("clr", "od", "wall")
            if len({g.place(s) for g in groups}) == len(groups)
            and all(s in g.slots for g in groups)
        ),
        None,
    )
    if slot is None:
        return groups
    ranked = sorted(groups, key=lambda g: g.slots[slot][0].number.value)
    which = owned["which"]
    gone = {"first": groups[0], "last": groups[-1]}.get(
        which, ranked[0 if which.startswith("small") else -1]
    )
    return [group for group in groups if group is not gone]


class _Gatherer:
    def __init__(self, layout: Layout, figures: list[Figure]) -> None:
        self.layout = layout
        self.figures = figures
        self.starts = [figure.start for figure in figures]
        self.done: list[Group] = []
        self.open: list[Group] = []

    def run(self) -> list[Group]:
        at = 0
        while at < len(self.figures):
            run = [self.figures[at]]
            while at + len(run) < len(self.figures):
                following = self.figures[at + len(run)]
                if following.link not in ("list", "or", "range") or _slot(following) != _slot(
                    run[0]
                ):
                    break
                run.append(following)
            self._take(run)
            at += len(run)
        self._close()
        return self.done

    def _close(self) -> None:
        self.done.extend(group for group in self.open if group.slots or group.shape)
        self.open = []

    def _take(self, run: list[Figure]) -> None:
        first = run[0]
        slot = _slot(first)
        if any(figure.link == "range" for figure in run[1:]):
            for figure in run:
                figure.notes.append("range")
        elif any(figure.link == "or" for figure in run[1:]):
            for figure in run:
                figure.notes.append("choice")
        if not self.open:
            self.open = [Group(row=first.row)]
        elif first.row != self.open[-1].row or self._begins_item(first):
            self._new(first.row)
        if first.shape:
            self._side(first)
            return
        holding = [group for group in self.open if slot in group.slots]
        if not holding:
            self._fill(slot, run)
        elif (
            len(run) > 1
            and len(run) == len(self.open) == len(holding)
            and (
                run[0].link == "restate"
                or all(
                    _restates(g.slots[slot][0], f) or self._repeats(slot, f)
                    for g, f in zip(self.open, run, strict=True)
                )
            )
        ):
            for group, figure in zip(self.open, run, strict=True):
                group.slots[slot].append(figure)
        elif slot == "clr" and len(run) == 1 and self._opens_next(first):
            self._new(first.row)
            self._fill(slot, run)
        elif self._starts_tube(first):
            self._another(slot, run)
        elif len(run) == 1 and all(_restates(group.slots[slot][0], first) for group in holding):
            for group in holding:
                group.slots[slot].append(first)
        elif len(run) == 1 and all(self._inherited(group, slot, first) for group in self.open):
            for group in self.open:
                group.slots[slot] = [first]
                group.shared.discard(slot)
        elif first.corrects or self._replaces(first):
            for group in self.open:
                group.slots[slot] = [first]
                if slot == "od":
                    group.slots.pop("id", None)
        elif (
            first.link == "restate"
            or self._repeats(slot, first)
            or self._contradicts(slot, run)
            or self._perhaps(slot, run)
        ):
            for group in holding:
                group.slots[slot].append(first)
        else:
            self._another(slot, run)

    def _side(self, figure: Figure) -> None:
        if any(group.slots.get("od") for group in self.open):
            self._new(figure.row)
        for group in self.open:
            group.shape = figure.shape

    def _new(self, row: tuple[str, int, int] | None) -> None:
        self._close()
        self.open = [Group(row=row)]

    def _fill(self, slot: str, run: list[Figure]) -> None:
        """An empty slot: a list of n values makes n requests of each open one."""
        if slot == "od" and self._belongs_to_next(run[0]):
            self._new(run[0].row)
        if len(run) == 1:
            for group in self.open:
                group.slots[slot] = [run[0]]
            return
        earlier = self._awaiting(slot, run)
        if earlier is not None:
            for group, figure in zip(earlier, run, strict=True):
                group.slots[slot] = [figure]
            return
        if len(run) == len(self.open) and not self._each(run):
            sure = _RESPECTIVELY.search(self.layout.sentence_text(run[0].sentence)) is not None
            for group, figure in zip(self.open, run, strict=True):
                group.slots[slot] = [figure]
                if not sure and not _one_by_one(self.layout, run):
                    group.notes.append((slot, "two lists side by side: which goes with which?"))
            return
        spread = []
        for group in self.open:
            for figure in run:
                new = group.copy()
                new.slots[slot] = [figure]
                spread.append(new)
        self.open = spread

    def _awaiting(self, slot: str, run: list[Figure]) -> list[Group] | None:
        """'1/2 with .049 and 3/4 with .065, CLR 1-1/2 and 1-13/16 respectively': the sizes just
        named, one by one, where the words say that the two lists go together."""
        groups = [*self.done, *self.open][-len(run) :]
        if len(self.open) == len(run) or len(groups) < len(run):
            return None
        if any(slot in group.slots or "od" not in group.slots for group in groups):
            return None
        text = self.layout.sentence_text(run[0].sentence)
        if _RESPECTIVELY.search(text) or _one_by_one(self.layout, run):
            return groups
        return None

    def _inherited(self, group: Group, slot: str, figure: Figure) -> bool:
        """'.083 wall on 4 CLR, .120 wall on 6 CLR': the 4 was only carried over to the second."""
        if slot not in group.shared:
            return False
        own = [f for s, figures in group.slots.items() if s not in group.shared for f in figures]
        return any(f.line == figure.line and f.sentence == figure.sentence for f in own)

    def _belongs_to_next(self, figure: Figure) -> bool:
        """An OD after a finished wall or radius in another paragraph starts afresh."""
        anchor = self.open[-1].anchor
        return (
            anchor is not None and anchor.role == "wall" and figure.paragraph - anchor.paragraph > 1
        )

    def _each(self, run: list[Figure]) -> bool:
        text = self.layout.sentence_text(run[0].sentence)
        return _EACH.search(text) is not None and _RESPECTIVELY.search(text) is None

    def _replaces(self, figure: Figure) -> bool:
        """'It is 1.75, not 1.5': the value that stands where a negated one is named."""
        return any(
            other.negated and other.role in (None, figure.role) and abs(other.start - figure.start) < 40
            for other in self.layout.in_sentence(figure.sentence)
            if other.line == figure.line
        )

    def _repeats(self, slot: str, figure: Figure) -> bool:
        """The radius as '2D' beside the radius as a length, or a wall beside its schedule."""
        held = {f.role for group in self.open for f in group.slots.get(slot, [])}
        if figure.row is not None and slot == "wall":
            return True
        if slot == "clr":
            # As a length and as a multiple of D, once each.
            other = held - {"times_d"} if figure.role != "times_d" else held & {"times_d"}
            return not other and self._near(slot, figure)
        if slot == "wall":
            held_units = {f.unit for group in self.open for f in group.slots.get(slot, [])}
            gauge = {"ga", "bwg", "swg", "sch"}
            return (figure.unit in gauge) != bool(held_units & gauge) and self._near(slot, figure)
        if slot == "od":
            return (figure.role in ("nps", "dn", "dash")) != bool(
                held & {"nps", "dn", "dash"}
            ) and self._near(slot, figure)
        return False

    def _begins_item(self, figure: Figure) -> bool:
        """'1) 2.5 CLR, 1.625 x .134 / 2) 3 CLR, 1.75 x .049': a line with a tube of its own that
        opens with what the tube before has already."""
        slot = _slot(figure)
        group = self.open[-1]
        last = max((f.clause for figures in group.slots.values() for f in figures), default=-1)
        if figure.row is not None or figure.clause == last or figure.corrects or slot == "od":
            return False
        if slot not in group.slots or not ("od" in group.slots or "id" in group.slots):
            return False
        at = bisect_left(self.starts, figure.start)
        return any(_slot(f) == "od" and f.clause == figure.clause for f in self.figures[at : at + 6])

    def _opens_next(self, figure: Figure) -> bool:
        """'25 x 1.5, R 50 and R 90, tube 40 x 3': a second radius right before a tube that has no
        other is that tube's."""
        at = bisect_left(self.starts, figure.start)
        following = self.figures[at + 1 : at + 8]
        if not following or _slot(following[0]) != "od":
            return False
        if len(self.layout.text[figure.end : following[0].start]) > 24:
            return False
        for after in following[1:]:
            if _slot(after) == "od":
                break
            if _slot(after) == "clr":
                return False
        return True

    def _starts_tube(self, figure: Figure) -> bool:
        """An OD that brings its own wall along, though the tube before has one of the same OD."""
        if _slot(figure) != "od" or any("wall" not in g.slots for g in self.open):
            return False
        at = bisect_left(self.starts, figure.start)
        after = self.figures[at + 1] if at + 1 < len(self.figures) else None
        if after is None or after.link != "times" or _slot(after) != "wall":
            return False
        if figure.link == "restate" or figure.corrects:
            return False
        return not any(_restates(g.slots["wall"][0], after) for g in self.open)

    def _perhaps(self, slot: str, run: list[Figure]) -> bool:
        """'Schedule forty I believe, although it could be schedule ten': one value in doubt."""
        held = self.open[-1].slots[slot][-1]
        return len(run) == 1 and "hedged" in run[0].notes and held.sentence == run[0].sentence

    def _contradicts(self, slot: str, run: list[Figure]) -> bool:
        """'The tag says 1-7/8, my caliper 48 mm': one OD in two nearly equal values, nothing of
        the tube told in between."""
        if slot != "od" or len(run) > 1 or any(set(g.slots) != {"od"} for g in self.open):
            return False
        held, figure = self.open[-1].slots["od"][-1], run[0]
        if figure.sentence != held.sentence or figure.link in ("list", "or", "range", "times"):
            return False
        return nearly(held, figure)

    def _near(self, slot: str, figure: Figure) -> bool:
        """Close enough to be one value said twice: no other size figure between, same paragraph."""
        last = max((g.slots[slot][-1] for g in self.open if slot in g.slots), key=lambda f: f.start)
        between = [
            f for f in self.figures if last.start < f.start < figure.start and _slot(f) != slot
        ]
        held = [f for g in self.open for f in g.slots.get("od", [])]
        return figure.paragraph == last.paragraph and not any(
            _slot(f) == "od" and f not in held for f in between
        )

    def _another(self, slot: str, run: list[Figure]) -> None:
        """A second value for a slot that is taken: a new OD starts a new request; a second wall or
        radius asks for the same tube again, changed in that one thing."""
        if slot in ("od", "id") and not (
            slot == "id" and "od" in self.open[-1].slots and "id" not in self.open[-1].slots
        ):
            self._new(run[0].row)
            self._fill(slot, run)
            return
        bases = [group.copy() for group in self.open]
        latest = self.open[-1].slots.get(slot)
        if latest is not None:
            bases = [g.copy() for g in self.open if g.slots.get(slot) == latest] or bases
        self.done.extend(self.open)
        self.open = []
        for base in bases:
            for figure in run:
                new = base.copy()
                new.slots[slot] = [figure]
                new.shared = set(new.slots) - {slot}
                self.open.append(new)


def _one_by_one(layout: Layout, run: list[Figure]) -> bool:
    """'1-1/8 on the small one and 1-1/2 on the big one' says which goes with which."""
    between = layout.text[run[0].end : run[-1].start + 40].casefold()
    return (
        re.search(
            r"\b(?:small|big|petit|gros|grand|kleine\w*|große\w*|pequeño|grande|piccolo|grote|large|first|second|other|larger|smaller|bigger|latter)\b", between
        )
        is not None
    )


def _slot(figure: Figure) -> str:
    return "side" if figure.shape else _SLOT[figure.role or ""]


def _restates(held: Figure, figure: Figure) -> bool:
    """Whether two figures are one value (in either unit), so that the second adds nothing."""
    if {held.role, figure.role} & {"times_d", "schedule", "nps", "dn", "dash"}:
        return held.role == figure.role and held.number.value == figure.number.value
    if (held.unit in ("ga", "bwg", "swg")) != (figure.unit in ("ga", "bwg", "swg")):
        return False
    if {held.role, figure.role} & {"inside_r", "outside_r"} and held.role != figure.role:
        return False
    a, b = held.number.value, figure.number.value
    if held.unit == figure.unit or None in (held.unit, figure.unit):
        near = Decimal("0.01") if held.role == "wall" else Decimal("0.002")
        if abs(a - b) <= max(a, b) * near:
            return True  # "1.498 by the calipers, so 1.5"
        if held.unit == figure.unit:
            return False
    for scale in (Decimal("25.4"), 1 / Decimal("25.4")):
        if abs(a * scale - b) <= b * Decimal("0.012"):
            return True
    return False


def _fill_from_context(groups: list[Group], context: list[Figure]) -> None:
    """The die or tube of tooling already owned fills what the request itself leaves open."""
    if not groups and context:
        return
    for group in groups:
        for figure in context:
            group.slots.setdefault(_slot(figure), [figure])


def _share(layout: Layout, groups: list[Group]) -> None:
    """A wall or radius said once for several sizes, before the first or after the last."""
    if len(groups) < 2:
        return
    for slot in ("wall", "clr"):  # a shared wall first, so that it goes with every shared radius
        lacking = [group for group in groups if slot not in group.slots]
        holding = [group for group in groups if slot in group.slots]
        if not lacking or not holding:
            continue
        for group in list(groups):
            if slot in group.slots or not (
                "od" in group.slots or "id" in group.slots or slot == "wall"
            ):
                continue
            donor = _donor(layout, groups, groups.index(group), slot)
            if donor is not None:
                group.slots[slot] = list(donor)
                group.shared.add(slot)
                _spread(groups, group, slot)


def _spread(groups: list[Group], group: Group, slot: str) -> None:
    """'25x1.5 and 30x1.5 at 2D and 3D': a size that shares one of a list shares the whole list."""
    taken = group.slots[slot][0]
    giver = next(g for g in groups if g is not group and g.slots.get(slot, [None])[0] is taken)
    others = [
        g for g in groups
        if g is not giver and g is not group and slot in g.slots
        and g.slots.get("od") == giver.slots.get("od")
        and g.slots[slot][0].link in ("list", "or", "range")
    ]  # fmt: skip
    for other in others:
        if other.slots[slot][0].sentence == taken.sentence and slot not in other.shared:
            new = group.copy()
            new.slots[slot] = list(other.slots[slot])
            groups.insert(groups.index(group) + 1, new)


def _donor(layout: Layout, groups: list[Group], number: int, slot: str) -> list[Figure] | None:
    group = groups[number]
    anchor = group.anchor
    text = layout.sentence_text(anchor.sentence) if anchor is not None else ""
    before = [g for g in groups[:number] if slot in g.slots]
    if before and _SAME.search(text):
        return before[-1].slots[slot]
    first = groups[0]
    if (
        number
        and slot in first.slots
        and first.place(slot) < first.place("od")
        and first.row is None
    ):
        return first.slots[slot]  # said ahead of the whole list
    last = groups[-1]
    tail = [g for g in groups if slot in g.slots and g.slots.get("od") == last.slots.get("od")]
    last = tail[0] if tail else last
    if slot in last.slots and all(
        slot not in g.slots or g in tail or slot in g.shared for g in groups
    ):
        figure = last.slots[slot][0]
        od = last.slots.get("od", [figure])[0]
        if figure.row is not None:
            return None
        several_lines = anchor is not None and anchor.line != od.line
        if (
            not several_lines
            or figure.line != od.line
            or _EACH.search(layout.sentence_text(figure.sentence))
        ):
            return last.slots[slot]
    after = [g for g in groups[number + 1 :] if slot in g.slots]
    if after and anchor is not None:
        donor = after[0].slots[slot]
        od = after[0].slots.get("od", donor)[0]
        if (
            donor[0].sentence == anchor.sentence
            and od.sentence == anchor.sentence
            and od.link in ("list", "or")
        ):
            return donor
    each = [
        g.slots[slot] for g in groups
        if slot in g.slots and _EACH.search(layout.sentence_text(g.slots[slot][0].sentence))
    ]  # fmt: skip
    values = {figures[0].start for figures in each}
    return each[0] if len(values) == 1 else None
