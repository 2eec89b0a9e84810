"""Counts that name their size: by its number, its place, its OD, a word of its line."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from ..numbers.item_numbers import items_after, speaks_of_others
from ..sizes.groups import Group
from ..text.figures import Layout
from .by_name import counts_by_name
from .by_ordinal import counts_by_ordinal
from .by_place import counts_by_place
from .by_rank import counts_by_rank
from .each_but import counts_but
from .for_all import count_for_all
from .mentions import Mention
from .more_of_one import more_of_one
from .prompts import ALONE, BARE

Own = dict[int, int | None]
"""Counts by the index of their size."""


def settled(found: list[Mention]) -> int | None:
    """One count for one request; None where two are as good as each other."""
    if not found:
        return None
    corrected = [m for m in found if m.corrects and m.rank >= BARE - 1]
    if corrected and len(found) > 1:
        return corrected[-1].count
    best = max(m.rank for m in found)
    counts = {m.count for m in found if m.rank == best}
    return counts.pop() if len(counts) == 1 else None


@dataclass(frozen=True, slots=True)
class Named:
    """The sizes of a message, and the counts that may name them; each way gives none or all."""

    layout: Layout
    groups: Sequence[Group]
    places: Sequence[int]
    """Where each size stands."""
    order: Sequence[int]
    """The sizes' indexes in the order of these places."""
    found: Sequence[Mention]

    def by_item(self) -> Own:
        """'Two mandrels of item 1, one of each of the others'; no count where one is left out."""
        own: Own = {}
        rest: list[int | None] = []
        for mention in self.found:
            text = self.layout.text
            for item in items_after(text, mention.end):
                if not 0 < item <= len(self.groups):
                    return {}
                own[self.order[item - 1]] = mention.count
            if speaks_of_others(text, mention.number_end):
                rest.append(mention.count)
        if own and len(rest) == 1:
            for number in range(len(self.groups)):
                own.setdefault(number, rest[0])
        return own if len(own) == len(self.groups) else {}

    def by_place(self) -> Own:
        named = counts_by_place(self.layout.text, [self.places[n] for n in self.order])
        own: Own = {self.order[at]: count for at, count in named.items()}
        each = settled([m for m in self.found if m.each])
        if own and each is not None:  # "One of each, but for (b) we'd take two"
            return {n: own.get(n, each) for n in range(len(self.groups))}
        return own if len(own) == len(self.groups) else {}

    def each_but(self) -> Own:
        """'One of each except the 2-1/2, two of those'."""
        each = settled([m for m in self.found if m.each])
        own = counts_but(self.layout, self.groups) if each is not None else {}
        return {n: own.get(n, each) for n in range(len(self.groups))} if own else {}

    def by_ordinal(self) -> Own:
        text, sizes = self.layout.text, len(self.groups)
        named = counts_by_ordinal(text, sizes)
        each = settled([m for m in self.found if m.each]) or count_for_all(text)
        ods = [self.groups[n].slots.get("od") for n in self.order]
        more = more_of_one(text, [od[0].number.value if od else None for od in ods])
        if not named and each is not None and more:
            named = {at: more.get(at, each) for at in range(sizes)}
        return {self.order[at]: count for at, count in named.items()}

    def by_name(self) -> Own:
        spans = [(m.start, m.end, m.count) for m in self.found if m.rank >= ALONE and not m.each]
        named = counts_by_name(self.layout.text, spans, [self.places[n] for n in self.order])
        return {self.order[at]: count for at, count in named.items()}

    def by_rank(self) -> Own:
        figures = [group.slots["od"][0] for group in self.groups if "od" in group.slots]
        if len(figures) < len(self.groups) or len({figure.unit for figure in figures}) > 1:
            return {}
        counts = counts_by_rank(self.layout.text, [figure.number.value for figure in figures])
        return dict(enumerate(counts)) if counts is not None else {}
