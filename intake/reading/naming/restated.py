"""A figure that repeats, doubts or points to another: '44.45 mm (1-5/8")', 'same as the 26.9'."""

from __future__ import annotations

from decimal import Decimal

from ....rules import standards
from ...late_pattern import late_pattern
from ..text.figures import LISTED, Figure, Layout
from ..text.patterns import any_of
from ..text.roles import LENGTH_ROLES, RADIUS_ROLES
from .pipes import trade_od

_INCH = Decimal("25.4")
_LIKE = (Decimal("0.6"), Decimal("1.7"))
"""So many times another may a figure be that repeats it wrongly."""
_NEAR = 4
_BACK = 80
"""Characters before a figure in which 'same radius as the' stands."""
_SAME_PIPE = Decimal("0.01")
_MOST_GAUGES_APART = 6
_SAME_AS = late_pattern(
    r"\b"
    + any_of(
        r"same | identical | equal | gleiche[rnms]? | selbe[rnms]? | même | mism[oa] | iguale?",
        "stess[oa] | zelfde | like",
    )
    + r"\b[^.;:\d]{0,40}\b"
    + any_of("as | to | wie | que | come | als | di | al")
    + r"\s(?:(?:for|on|with|bei|beim|pour|per|para|voor|con)\s)?"
    r"(?:the\s|der\s|die\s|das\s|dem\s|den\s|de\s|het\s|le\s|la\s|el\s|il\s|al\s)?"
    r"(?:old\s|first\s|other\s)?(?:tube\s|rohr\s|tubo\s|buis\s)?(?:[øØ]\s?)?$"
)
_AND = late_pattern(r"(?<!\w)(?:and|plus|und|et|y|e|en|&)(?!\w)")
_THE = late_pattern(r"\b(?:the|das|dem|die|der|den|le|la|el|il|lo|de|het)\s$")
_TUBE = late_pattern(
    r"\s?(?:mm|in|inch|\"|er)?\s?(?:tubes?|tubing|ones?|walls?|stuff|pipe|rohr\w*|wand\w*|tubo|buis)\b"
)


def hear_references(layout: Layout) -> None:
    """'21.3 x 2.0, same radius as the 26.9': a figure that points to another size measures
    nothing here."""
    seen: set[Decimal] = set()
    for figure in layout.figures:
        begin = max(layout.sentence_start(figure.sentence), figure.start - _BACK)
        before = " ".join(layout.words(begin, figure.start).split())
        spaced = before + (" " if layout.text[figure.start - 1 : figure.start].isspace() else "")
        if figure.number.value in seen and _SAME_AS.search(spaced):
            figure.points = True
            figure.give("noise", "")
        seen.add(figure.number.value)


def join_names(layout: Layout) -> None:
    """'5/4" verwarmingsbuis, dus 42,4 buiten': a nominal size, and the OD that it stands for."""
    for figure in layout.figures:
        if figure.role != "od" or figure.negated:
            continue
        if _names_before(layout, figure):
            figure.give("noise", "same")
            continue
        for after in layout.figures[figure.index + 1 : figure.index + 1 + _NEAR]:
            if after.row != figure.row or _has_more_beside_radius(layout, figure, after):
                break  # the next line's tube
            if _are_listed(layout, figure, after):
                break
            if after.role != "od" or after.negated:
                continue
            if _is_trade_name(layout, figure, after):
                figure.give("noise", "same")
            elif names_pipe(figure, after):
                figure.role, after.link = "nps", "restate"


def _are_listed(layout: Layout, figure: Figure, after: Figure) -> bool:
    """'2.5, 3 and 3.5 inch tube': three tubes, though a pipe that is called 3 measures 3.5."""
    run = layout.figures[figure.index + 1 : after.index + 1]
    if not all(one.link in LISTED and one.role == "od" for one in run):
        return False
    more = (figure, *layout.figures[after.index + 1 : after.index + 2])
    if any(one.link in LISTED and one.role == "od" for one in more) or len(run) > 1:
        return True
    return _AND.search(layout.words(figure.end, after.start)) is not None


def _has_more_beside_radius(layout: Layout, figure: Figure, after: Figure) -> bool:
    """Whether an OD brings a wall along, or on a line of its own a radius, and a radius stands
    before it: it is the next size's. '3 tube, 4-1/2 clr', and below it '3-1/2 tube, 5-1/4 clr'."""
    between = layout.figures[figure.index + 1 : after.index]
    if not any(other.role in RADIUS_ROLES for other in between):
        return False
    behind = layout.after(after)
    if behind is None or behind.sentence != after.sentence:
        return False
    own_line = figure.line < after.line == behind.line
    return behind.role == "wall" or (own_line and behind.role in RADIUS_ROLES)


def join_restated(layout: Layout) -> None:
    """'44.45 mm (1-5/8")', '18 ga (I think, could be 16)': what a bracket says of the figure before
    it is that figure's again, whether it agrees or not."""
    for figure in layout.figures[1:]:
        before = layout.figures[figure.index - 1]
        if figure.link == "restate" and _lacks_one(before, figure) and _is_like(before, figure):
            known, other = (before, figure) if before.role in LENGTH_ROLES else (figure, before)
            if _is_trade_name(layout, other, known):
                other.give("noise", "same")
            else:
                other.give("nps" if names_pipe(other, known) else known.role, "same")
        elif _is_open(figure) and _is_gauge_in_bracket(layout, figure):
            _as_gauge(layout, figure)


def _is_open(figure: Figure) -> bool:
    return figure.role is None and figure.is_measure


def _lacks_one(before: Figure, figure: Figure) -> bool:
    """Whether just one of the two has a role, and the other is measured."""
    known = before.role in LENGTH_ROLES, figure.role in LENGTH_ROLES
    open_one = figure if known[0] else before
    return known.count(True) == 1 and _is_open(open_one) and open_one.is_measured


def _is_like(before: Figure, figure: Figure) -> bool:
    """Whether two lengths are near enough for one to be meant by both, in some pair of units."""
    if before.is_gauge or figure.is_gauge or "sch" in (before.unit, figure.unit):
        return False
    a, b = before.number.value, figure.number.value
    scales = (Decimal(1),) if before.unit == figure.unit else (Decimal(1), _INCH, 1 / _INCH)
    return bool(a and b) and any(_LIKE[0] < a * scale / b < _LIKE[1] for scale in scales)


def names_pipe(figure: Figure, held: Figure) -> bool:
    """'5/4 Zoll (42,4 x 3,2 mm)': the nominal size of the pipe whose OD is told beside it."""
    nominal = standards.nps_of_inches(figure.number.value)
    od = standards.pipe_od_mm(nominal) if nominal is not None else None
    return figure.unit in (None, "in") and od is not None and _measures(held, od)


def _names_before(layout: Layout, figure: Figure) -> bool:
    """'.922 OD (3/4 EMT)': the trade size behind what is measured."""
    before = layout.before(figure)
    if before is None or before.negated or before.sentence != figure.sentence:
        return False
    return _is_trade_name(layout, figure, before)


def _is_trade_name(layout: Layout, figure: Figure, held: Figure) -> bool:
    """'3/4 EMT, it mikes .922 OD': the trade size of what is measured beside it."""
    od = trade_od(layout, figure)
    return od is not None and _measures(held, od)


def _measures(held: Figure, od: Decimal) -> bool:
    """Whether an OD is the one of that many mm, in its unit or in either."""
    if held.role != "od":
        return False
    scales = {"in": (_INCH,), "mm": (Decimal(1),)}.get(held.unit or "", (Decimal(1), _INCH))
    return any(abs(od - held.number.value * scale) <= od * _SAME_PIPE for scale in scales)


def _is_gauge_in_bracket(layout: Layout, figure: Figure) -> bool:
    """'18ga (I think its 18, could be 16)': a number of the bracket behind a gauge."""
    held = _gauge_before(layout, figure)
    if held is None or figure.unit is not None or figure.number.style != "integer":
        return False
    between = layout.text[held.end : figure.start]
    inside = between.lstrip().startswith("(") and ")" not in between
    near = abs(held.number.value - figure.number.value) <= _MOST_GAUGES_APART
    return inside and near and "hedged" in figure.notes


def _gauge_before(layout: Layout, figure: Figure) -> Figure | None:
    for index in range(figure.index - 1, max(-1, figure.index - 4), -1):
        if layout.figures[index].is_gauge:
            return layout.figures[index]
    return None


def _as_gauge(layout: Layout, figure: Figure) -> None:
    held = _gauge_before(layout, figure)
    if held is not None:
        figure.unit, figure.link = held.unit, "restate"
        figure.give(held.role, "same")


def hear_walls_named(layout: Layout) -> None:
    """'Would the 2 mm one run in the 1.2 tube?': a wall told before says which tube is meant."""
    walls = {f.number.value for f in layout.figures if f.role == "wall" and not f.negated}
    for figure in layout.figures:
        if figure.role not in ("od", None) or figure.how not in ("", "place"):
            continue
        if figure.number.value not in walls or figure.link == "times" or figure.row is not None:
            continue
        after = layout.after(figure)
        if after is not None and after.link == "times":
            continue
        ahead = layout.words(max(0, figure.start - _BACK), figure.start)
        behind = layout.words(figure.end, figure.end + _BACK)
        if _THE.search(ahead) and _TUBE.match(behind):
            figure.give("noise", "same")
