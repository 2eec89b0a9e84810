"""Radii given to two tubes by their rank: '1.5 x .065 and 2 x .095, the bigger one on 6 CLR and the
smaller on 4.5', '4.5 CLR for the smaller tube'."""

from __future__ import annotations

from collections.abc import Sequence

from ...late_pattern import late_pattern
from ..picking.left_by_pointer_words import RANKS
from ..text.figures import Figure, Layout
from ..text.roles import RADIUS_ROLES

_PAIR = 2
_RANK = "|".join(sorted(RANKS, key=len, reverse=True))
_NOUN = (
    r"(?:\s(?:one|tube|pipe|size|od|of (?:the two|them)|rohre?|tubes?|tubo|tubi|buis|maat))?"
    r"(?:\s(?:is|has|gets|takes|goes|ist|hat|est|es|è|tiene|ha|heeft|bekommt))?"
)
_LEADS = late_pattern(
    rf"(?<!\w)(?P<rank>{_RANK}){_NOUN}[\s:=–-]{{0,3}}(?:(?:is|bent|on|at|with|an?|the|to|has|auf|mit"
    r"|bei|einem|sur|avec|un|une|sobre|con|su|una|op|met|een|r|clr|radius|rayon|radio|raggio|straal"
    r"|cent(?:er|re) ?line)[\s:=]{1,2}){0,5}$"
)
_FOLLOWS = late_pattern(
    r"^\W{0,2}(?:mm|inch|in)?\W{0,2}(?:(?:clr|radius|rad|cent(?:er|re) ?line|rayon|radio|raggio"
    r"|straal)\b\s?){0,2}(?:for|on|für|bei|pour|sur|para|en|per|su|voor|bij)\s(?:the"
    rf"|das|den|dem|die|le|la|el|il|de|het)\s(?:\w+\s)?(?P<rank>{_RANK})(?!\w)"
)
_ARTICLE = 5
_THE = late_pattern(r"\b(?:the|das|den|dem|die|der|le|la|el|il|de|het)\s$")
_ONTO = late_pattern(
    r"^\W{0,2}(?:(?:inch|in|mm|er|one|tube|is|goes|gets|takes|hat|ist|est|a|es|tiene|è|ha|is|heeft)"
    r"\b\W{0,2}){0,3}(?:(?:on|at|auf|mit|sur|à|en|con|su|op|met)\s)?(?:an?\s)?$"
)
"""What may stand between an OD said again and its radius."""
_BEFORE, _BEHIND = 48, 40
"""Characters on either side of a figure in which its tube's rank stands."""


def find_rank_ties(layout: Layout, tubes: Sequence[Figure]) -> list[tuple[Figure, Figure]]:
    """Both radii with the OD of the tube that they are said for; none unless both are plain."""
    walls = [f for f in layout.figures if f.role == "wall"]
    whole = [tube for tube in tubes if any(wall.index == tube.index + 1 for wall in walls)]
    values = {tube.number.value for tube in whole}
    units = {tube.unit for tube in whole if tube.unit is not None}
    if len(whole) != _PAIR or len(values) != _PAIR or len(units) > 1:
        return []
    least = min(whole, key=lambda tube: tube.number.value)
    most = max(whole, key=lambda tube: tube.number.value)
    ties: list[tuple[Figure, Figure]] = []
    names: list[Figure] = []
    for figure in layout.figures[whole[-1].index + 1 :]:
        rank = _rank(layout, figure) if _may_be(figure, ties) else None
        named = _named_before(layout, figure, whole) if ties and rank is None else None
        if rank is not None:
            ties.append((figure, least if rank else most))
        elif named is not None and _may_be(figure, ties):
            ties.append((figure, named[1]))
            names.append(named[0])
    if len({tube.index for _, tube in ties}) != _PAIR or len(ties) != _PAIR:
        return []
    for name in names:
        name.give("noise", "same")
    first, second = (figure for figure, _ in ties)
    if second.role not in RADIUS_ROLES:
        second.role = first.role
    return ties


def _named_before(
    layout: Layout, figure: Figure, tubes: Sequence[Figure]
) -> tuple[Figure, Figure] | None:
    """The OD said again right before a figure, and its tube: '... and the one inch on 4-1/2'."""
    name = layout.before(figure)
    if name is None or name.sentence != figure.sentence:
        return None
    tube = next((t for t in tubes if t.number.value == name.number.value), None)
    ahead = layout.words(max(0, name.start - _ARTICLE), name.start)
    if tube is None or name.index <= tubes[-1].index or not _THE.search(ahead):
        return None
    return (name, tube) if _ONTO.search(layout.words(name.end, figure.start)) else None


def _may_be(figure: Figure, ties: Sequence[tuple[Figure, Figure]]) -> bool:
    """Whether it is a radius, or stands where the second would."""
    if not figure.is_measure or figure.row is not None:
        return False
    return figure.role in RADIUS_ROLES or (bool(ties) and figure.how not in ("cue", "sign"))


def _rank(layout: Layout, figure: Figure) -> bool | None:
    """Whether the words on a figure speak of the smaller tube; None where of neither."""
    ahead = layout.words(max(0, figure.start - _BEFORE), figure.start).casefold()
    found = _LEADS.search(" ".join(ahead.split()) + " ")
    found = found or _FOLLOWS.match(layout.words(figure.end, figure.end + _BEHIND).casefold())
    return RANKS[found["rank"]] if found is not None else None
