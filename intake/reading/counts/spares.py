"""Spares that are wanted beside what was counted: 'one of each and also 1 spare for the 22'."""

from __future__ import annotations

import re
from collections.abc import Iterator, Sequence
from decimal import Decimal

from ...late_pattern import late_pattern
from ..sizes.groups import Group
from ..text.figures import Figure, Layout
from ..text.patterns import any_of
from .mentions import Mention

_ONE = {"two": 2, "zwei": 2, "deux": 2, "dos": 2, "due": 2, "twee": 2}
_COUNT = rf"(?P<count>\d{{1,2}}|{'|'.join(_ONE)}|one|an?|eine?n?|une?|uno|een|één)"
_SPARE = any_of(
    r"(?:spare|extra|additional|further|more|backup|back-up)(?:\s(?:one|mandrel)s?)?",
    r"weitere[rn]?(?:\sdorn)? | de plus | en plus | más | in più",
    r"(?:ersatz|reserve)(?:dorn)?(?:\sdazu)? | zum ersatz | als (?:ersatz|reserve)",
    r"(?:mandrin\s)?de (?:rechange|secours) | (?:mandril\s)?de (?:repuesto|recambio)",
    r"(?:mandrino\s)?di (?:scorta|ricambio) | als reserve | reservedoorn",
)
_FOR = any_of("for | of | für | zu | pour | de | para | per | voor | van")
_THE = r"(?:(?:the|das|den|die|le|la|el|il|de|het)\s)?(?:de\s|da\s|van\s|[øØ]\s?)?"
_SPARES = late_pattern(rf"(?<![\w.,/-]){_COUNT}\s{_SPARE}\s{_FOR}\s{_THE}(?=\d)", re.IGNORECASE)
_NO_SIZE = late_pattern(r"\s?(?:sets?|pcs|pieces|balls?|links?|stück|kugeln?)\b")


def names_spares(text: str) -> bool:
    """Whether spares, or more of a size, are spoken of."""
    return _SPARES.search(text) is not None


def spares_by_size(layout: Layout, groups: Sequence[Group]) -> dict[int, int]:
    """How many mandrels more are wanted of each size whose OD stands behind 'a spare for the'.

    Nothing of a size that the words do not single out by its OD alone.
    """
    found: dict[int, int] = {}
    for match, figure in _named(layout, groups):
        held = [n for n, group in enumerate(groups) if _is_od(group, figure.number.value)]
        if len(held) == 1:
            said = match["count"].casefold()
            more = int(said) if said.isdecimal() else _ONE.get(said, 1)
            found[held[0]] = found.get(held[0], 0) + more
    return found


def without_spares(layout: Layout, groups: Sequence[Group], found: list[Mention]) -> list[Mention]:
    """The counts without those that only count spares of one size."""
    spans = [match.span() for match, _ in _named(layout, groups)]
    return [m for m in found if not any(begin <= m.start < end for begin, end in spans)]


def _named(layout: Layout, groups: Sequence[Group]) -> Iterator[tuple[re.Match[str], Figure]]:
    """The words on spares with the OD behind them that tells again for which size they are.

    'One additional mandrel for 50 x 2' where no 50 was told before asks for that size.
    """
    told_there = {group.place("od") for group in groups}
    for match in _SPARES.finditer(layout.text):
        figure = next((f for f in layout.figures if f.start >= match.end()), None)
        if figure is None or figure.start != match.end() or figure.start in told_there:
            continue
        if not _NO_SIZE.match(layout.text, figure.end):
            yield match, figure


def _is_od(group: Group, value: Decimal) -> bool:
    return any(figure.number.value == value for figure in group.slots.get("od", ()))
