"""Walls and radii told of places of a list, a clause for each: 'the first two have 1 mm wall and
radius 40, the last one 1.5 mm wall and radius 70', 'the former bends on 76, the latter on 95'."""

from __future__ import annotations

from collections.abc import Sequence

from ...late_pattern import late_pattern
from ..picking.place_names import COUNTED, LAST
from ..text.figures import Figure, Layout
from ..text.roles import RADIUS_ROLES
from .tied_items import SEVERAL, several_of

_FORMER = frozenset("former ersteres ersterer".split())
_LATTER = frozenset("latter letzteres letzterer".split())
_RANK = "|".join(sorted((*COUNTED, *LAST, *_FORMER, *_LATTER), key=len, reverse=True))
_PLACE = late_pattern(
    rf"(?<![\w.])(?:{SEVERAL}|(?:(?:the|der|die|das|den|dem|le|la|el|il|lo|de|het)\s|l['’])"
    rf"(?P<rank>{_RANK})(?!\w)|(?P<alone>ersteres|letzteres)(?!\w))"
)
_PAIR = 2


def find_clause_ties(layout: Layout, tubes: Sequence[Figure]) -> list[tuple[Figure, Figure]]:
    """Each wall and radius with the OD of its place; none unless every tube of the list has its
    clause, all clauses tell the same lengths, and no other clause tells one of these."""
    if len(tubes) < _PAIR:
        return []
    text = layout.text.lower()
    if len(text) != len(layout.text):
        return []
    named = list(_PLACE.finditer(text, tubes[-1].end))
    if not named:
        return []
    ends = [*(match.start() for match in named[1:]), len(text)]
    ties: list[tuple[Figure, Figure]] = []
    placed: list[int] = []
    bare: list[Figure] = []
    told: set[tuple[str, ...]] = set()
    for match, end in zip(named, ends, strict=True):
        held = _figures(layout, match.end(), end)
        if not held:
            continue
        places = _places(match["several"], match["rank"] or match["alone"], len(tubes))
        if len(held) == 1 and held[0].role is None and told == {("radius",)}:
            bare += held  # "the former bends on a 76 radius, the latter on 95"
        else:
            told.add(tuple(sorted(_kind(figure) for figure in held)))
        placed += places
        ties += [(figure, tubes[place]) for place in places for figure in held]
    if sorted(placed) != list(range(len(tubes))) or len(told) != 1:
        return []
    kinds = next(iter(told))
    known = {figure.index for figure, _ in ties}
    others = any(
        _kind(figure) in kinds and figure.is_measure and figure.index not in known
        for figure in layout.figures
    )
    plain = len({*kinds}) == len(kinds) and {*kinds} <= {"wall", "radius"}
    if others or not plain:
        return []
    for figure in bare:
        figure.role = ties[0][0].role
    return ties


def _figures(layout: Layout, begin: int, end: int) -> list[Figure]:
    """The figures of a clause, up to the end of its sentence."""
    found = [f for f in layout.figures if begin <= f.start < end and f.role != "noise"]
    return [f for f in found if f.sentence == found[0].sentence and not _parted(layout, begin, f)]


def _parted(layout: Layout, begin: int, figure: Figure) -> bool:
    first = next((at for at, token in enumerate(layout.tokens) if token.start >= begin), 0)
    return layout.sentence_of[first] != figure.sentence


def _kind(figure: Figure) -> str:
    if figure.role in RADIUS_ROLES:
        return "radius"
    return figure.role or ""


def _places(several: str | None, rank: str | None, most: int) -> list[int]:
    if several is not None:
        return several_of(several, most) or []
    if rank in LAST or (rank in _LATTER and most == _PAIR):
        return [most - 1]
    if rank in _FORMER:
        return [0] if most == _PAIR else []
    at = COUNTED.get(rank or "", 0)
    return [at - 1] if 0 < at <= most else []
