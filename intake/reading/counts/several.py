"""Which of several requests each count of mandrels belongs to."""

from __future__ import annotations

import re
from bisect import bisect_right
from dataclasses import dataclass

from ...late_pattern import late_pattern
from ..numbers.item_numbers import items_after, speaks_of_others
from ..sizes.groups import Group
from ..tables.text_tables import RowFacts
from ..text.figures import Layout
from .at_line_ends import counts_at_line_ends
from .by_name import counts_by_name
from .by_ordinal import counts_by_ordinal
from .by_place import counts_by_place
from .by_rank import counts_by_rank
from .each_but import counts_but
from .each_unless import counts_each_unless
from .for_all import count_for_all
from .halves import counts_by_halves
from .mentions import Mention, mentions
from .more_of_one import more_of_one
from .one_for import more_for, ones_for
from .prompts import ALONE, ARTICLE, BARE, LABELLED, PIECES
from .spares import spares_by_size, without_spares

Own = dict[int, int | None]
_SEPARATORS = ("", "\n", ",", ";", "|", "\t")
_FAR = 48
"""Characters before a count in which 'if not' makes it hang on an answer."""
_PARTS = 2
"""So many counts add up to a third."""
_IF_NOT = late_pattern(
    r"\b(?:if not|otherwise|or else|wenn nicht|falls nicht|sonst|andernfalls|sinon|si no|se no"
    r"|de lo contrario|altrimenti|zo niet|zo nee|anders)\b[^.?!\n]*$",
    re.IGNORECASE,
)


@dataclass(frozen=True, slots=True)
class Counts:
    """Quantities by request: from its own line, else the one that the whole message states."""

    own: tuple[int | None, ...]
    whole: int | None

    def quantity(self, number: int) -> int | None:
        """Mandrels wanted of one request, or None where it isn't said."""
        own = self.own[number] if number < len(self.own) else None
        return own if own is not None else self.whole


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


def further_ones(text: str, found: list[Mention]) -> list[Mention]:
    """Further mandrels for further sizes that none of those ``found`` counts."""
    known = [(m.start, m.end) for m in found]
    more = [n for n in more_for(text) if not any(a < n[1] and n[0] < b for a, b in known)]
    known += [(start, end) for start, end, _ in more]
    more += [(start, end, 1) for start, end in ones_for(text, known)]
    return [Mention(start, end, count, BARE, number_end=end) for start, end, count in more]


def without_sums(found: list[Mention]) -> list[Mention]:
    """'3 pcs', '2 pcs', '1 pc' and below them 'six mandrels in all': a sum is no line's count."""
    both = sum(mention.count or 0 for mention in found)
    return [
        m for m in found if not (len(found) > _PARTS and m.total and both == 2 * (m.count or 0))
    ]


class Several:
    """Which of several requests each count belongs to."""

    def __init__(
        self,
        layout: Layout,
        groups: list[Group],
        rows: dict[tuple[str, int, int], RowFacts],
        found: list[Mention],
        beside: Layout | None,
    ) -> None:
        self.layout = layout
        self.groups = groups
        self.rows = rows
        self.beside = beside
        self.breaks = [at for at, char in enumerate(layout.text) if char == "\n"]
        self.places = places_of(groups)
        self.order = sorted(range(len(groups)), key=lambda n: self.places[n])
        more = further_ones(layout.text, found)
        found = sorted([*found, *more], key=lambda mention: mention.start)
        found = self._without_numbering(without_spares(layout, groups, found))
        self.found = without_sums(found)

    def counts(self) -> Counts:
        counts = self._without_spares()
        spares = spares_by_size(self.layout, self.groups)
        if not spares:
            return counts
        own = [counts.quantity(n) for n in range(len(self.groups))]
        more = (spares.get(n, 0) for n in range(len(own)))
        sums = (None if n is None else n + add for n, add in zip(own, more, strict=True))
        return Counts(tuple(sums), None)

    def _without_spares(self) -> Counts:
        number = len(self.groups)
        own = self._from_rows()
        if own:
            return Counts(tuple(own.get(n) for n in range(number)), None)
        own = (
            counts_each_unless(self.layout, self.groups)
            or self._each_but()
            or self._by_halves()
            or self._by_item()
            or self._by_place()
            or self._by_ordinal()
            or self._at_line_ends()
            or self._one_a_gap()
            or self._by_line()
            or self._by_name()
        )
        own = own or self._by_rank()
        whole = self._whole(own)
        if not own and whole is None and self.beside is not None:
            others = [m for m in mentions(self.beside, frozenset()) if m.each]
            whole = settled(others) or count_for_all(self.beside.text)
        return Counts(tuple(own.get(n) for n in range(number)), whole)

    def _from_rows(self) -> Own:
        found: Own = {}
        for number, group in enumerate(self.groups):
            row = self.rows.get(group.row) if group.row is not None else None
            if row is not None and row.quantity is not None:
                found[number] = row.quantity
        return found

    def _by_halves(self) -> Own:
        total = settled([m for m in self.found if self._gap(m) == 0 and m.rank >= PIECES])
        folded = self.layout.words(0, len(self.layout.text))
        counts = counts_by_halves(folded, [self.places[n] for n in self.order], total)
        return dict(zip(self.order, counts, strict=False))

    def _by_item(self) -> Own:
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

    def _by_place(self) -> Own:
        named = counts_by_place(self.layout.text, [self.places[n] for n in self.order])
        own: Own = {self.order[at]: count for at, count in named.items()}
        each = settled([m for m in self.found if m.each])
        if own and each is not None:  # "One of each, but for (b) we'd take two"
            return {n: own.get(n, each) for n in range(len(self.groups))}
        return own if len(own) == len(self.groups) else {}

    def _each_but(self) -> Own:
        """'One of each except the 2-1/2, two of those'."""
        each = settled([m for m in self.found if m.each])
        own = counts_but(self.layout, self.groups) if each is not None else {}
        return {n: own.get(n, each) for n in range(len(self.groups))} if own else {}

    def _by_ordinal(self) -> Own:
        text, sizes = self.layout.text, len(self.groups)
        named = counts_by_ordinal(text, sizes)
        each = settled([m for m in self.found if m.each]) or count_for_all(text)
        ods = [self.groups[n].slots.get("od", [None])[0] for n in self.order]
        more = more_of_one(text, [od and od.number.value for od in ods])
        if not named and each is not None and more:
            named = {at: more.get(at, each) for at in range(sizes)}
        return {self.order[at]: count for at, count in named.items()}

    def _line(self, place: int) -> int:
        return bisect_right(self.breaks, place)

    def _without_numbering(self, found: list[Mention]) -> list[Mention]:
        """'(1) 22.2 x 1.0', '(2) 25.4 x 1.2': what counts up only numbers the lines; so does a
        column of a table that no head calls a count ('10,mandrel,1.000,.065')."""
        rows = {self._line(f.start) for f in self.layout.figures if f.row is not None}
        found = [m for m in found if self._line(m.start) not in rows or not self._fills_cell(m)]
        brackets = [m.count for m in found if m.bracket]
        if brackets == list(range(1, len(brackets) + 1)):
            found = [m for m in found if not m.bracket]
        heads = [m for m in found if self._opens_line(m)]
        others = {self._line(m.start) for m in found if m not in heads}
        counts_up = len(heads) > 1 and [m.count for m in heads] == list(range(1, len(heads) + 1))
        if counts_up and all(self._line(m.start) in others for m in heads):
            return [m for m in found if m not in heads]  # '2 MANDREL FOR 1.5 X .065    1 EA'
        return found

    def _fills_cell(self, mention: Mention) -> bool:
        """Whether the number stands alone between the separators of a table."""
        begin, end = mention.start, mention.number_end
        if self.layout.text[max(0, begin - 2) : begin] == "  " and self.layout.text[
            end : end + 40
        ].split("\n")[0][:2] in ("", "  "):
            return True  # in a column that blanks set apart
        before = self.layout.text[max(0, begin - 40) : begin].rstrip(" ")[-1:]
        return (
            before in _SEPARATORS
            and self.layout.text[end : end + 40].lstrip(" ")[:1] in _SEPARATORS
        )

    def _opens_line(self, mention: Mention) -> bool:
        begin = self.breaks[self._line(mention.start) - 1] + 1 if self._line(mention.start) else 0
        return not self.layout.text[begin : mention.start].strip()

    def _gap(self, mention: Mention) -> int:
        """How many requests stand before the mention."""
        return bisect_right([self.places[n] for n in self.order], mention.start)

    def _one_a_gap(self) -> Own:
        """A count before each size, or one after each: no doubt what belongs together."""
        gaps: dict[int, Mention] = {}
        for mention in self.found:
            if mention.rank < ARTICLE:
                continue
            gap = self._gap(mention)
            # Before the first size a total may come first: "two mandrels, one for 35 x 1,5 ...".
            if gap not in gaps or gap == 0 or mention.rank > gaps[gap].rank:
                gaps[gap] = mention
        number = len(self.groups)
        if len(set(self.places)) < number:
            return {}
        for first in (0, 1):
            if set(gaps) == set(range(first, first + number)):
                return {self.order[gap - first]: m.count for gap, m in gaps.items()}
        return {}

    def _by_line(self) -> Own:
        """A count on the line of one size alone, or on a line of its own below it."""
        on_line: dict[int, list[int]] = {}
        for number, place in enumerate(self.places):
            on_line.setdefault(self._line(place), []).append(number)
        own: Own = {}
        used: list[Mention] = []
        labels = {m.start for m in self.found if m.bracket and self._is_bettered(m)}
        for mention in self.found:
            if mention.start in labels:
                continue
            here = on_line.get(self._line(mention.start), [])
            if len(here) != 1:
                here = self._above(mention)
            if len(here) == 1 and here[0] not in own and mention.rank >= ALONE:
                own[here[0]] = mention.count
                used.append(mention)
        lone = len(own) == 1 and (used[0].each or self._closes(used[0]))
        return {} if lone else own

    def _is_bettered(self, bracket: Mention) -> bool:
        """'(4) 50 x 4 / 150 - one pc': the bracket numbers the line."""
        line = self._line(bracket.start)
        return any(m.rank >= PIECES and self._line(m.start) == line for m in self.found)

    def _at_line_ends(self) -> Own:
        ends = {self._line(at): n for at, n in counts_at_line_ends(self.layout.text).items()}
        lines = [self._line(place) for place in self.places]
        one_each = len({*lines}) == len(lines) and {*lines} == {*ends}
        return {n: ends[line] for n, line in enumerate(lines)} if one_each else {}

    def _by_name(self) -> Own:
        spans = [(m.start, m.end, m.count) for m in self.found if m.rank >= ALONE and not m.each]
        named = counts_by_name(self.layout.text, spans, [self.places[n] for n in self.order])
        return {self.order[at]: count for at, count in named.items()}

    def _by_rank(self) -> Own:
        figures = [group.slots["od"][0] for group in self.groups if "od" in group.slots]
        if len(figures) < len(self.groups) or len({figure.unit for figure in figures}) > 1:
            return {}
        counts = counts_by_rank(self.layout.text, [figure.number.value for figure in figures])
        return dict(enumerate(counts)) if counts is not None else {}

    def _above(self, mention: Mention) -> list[int]:
        """The size above a line that only says 'Qty 2'."""
        gap = self._gap(mention)
        if mention.rank < LABELLED or not 0 < gap < len(self.order):
            return []
        above = self.order[gap - 1]
        distance = self._line(mention.start) - self._line(self.places[above])
        return [above] if distance <= 1 else []

    def _closes(self, mention: Mention) -> bool:
        """Whether the only count stands before the first size or after the last."""
        return self._gap(mention) in (0, len(self.groups))

    def _whole(self, own: Own) -> int | None:
        """The count for every size that has none of its own."""
        each = [m for m in self.found if m.each]
        if own or any(
            _IF_NOT.search(self.layout.text[max(0, m.start - _FAR) : m.start]) for m in each
        ):
            return None  # "One does for both? If not, one for each": it depends on the answer
        if each:
            return settled(each)
        for_all = count_for_all(self.layout.text)
        if for_all is not None:
            return for_all  # "All lines qty 2" above two lines: two of each
        count = settled(self.found)
        if count == 1:
            # "A mandrel" for one tube on two radii is one tool; for two tubes it may be either.
            return 1 if any(m.rank >= ALONE for m in self.found) or self._one_tube() else None
        # "Two mandrels: 1.5 x .065 and 2 x .083" is one of each.
        ahead = [m for m in self.found if self._gap(m) == 0]
        total = any(m.total for m in self.found if m.count == count)
        wanted = sum(not group.doubtful for group in self.groups)
        if wanted == 1 and count is not None:
            return count  # the others are hardly asked for
        return 1 if (ahead or total) and count == len(self.groups) else None

    def _one_tube(self) -> bool:
        ods = {group.place("od") for group in self.groups}
        return len(ods) == 1 and -1 not in ods


def places_of(groups: list[Group]) -> list[int]:
    """Where each request stands in the layout's text: at the first figure of its very own."""
    owners: dict[int, int] = {}
    for group in groups:
        for start in {f.start for figures in group.slots.values() for f in figures}:
            owners[start] = owners.get(start, 0) + 1
    places = []
    for group in groups:
        starts = [
            figure.start
            for slot, figures in group.slots.items()
            for figure in figures
            if owners[figure.start] == 1 and slot not in group.shared
        ]
        anchor = group.anchor
        places.append(min(starts) if starts else anchor.start if anchor is not None else -1)
    return places
