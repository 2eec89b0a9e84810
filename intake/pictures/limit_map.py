"""The map of the limits: wall factor against D of bend, and where the request lies in it."""

from __future__ import annotations

import math
from dataclasses import dataclass
from typing import TYPE_CHECKING

from .labels import Box, Places
from .limit_points import MapPoint, map_points, shown
from .limit_words import legend, limit_map_title, more_words
from .sheet import INK, LARGE, MARGIN, PAPER, SMALL, WIDTH, Sheet, width_of, wrapped

if TYPE_CHECKING:
    from collections.abc import Sequence

    from matplotlib.figure import Figure

    from ...rules.assessment import Assessment
    from ...rules.shop import Shop

_LEFT, _RIGHT, _HEIGHT = 44.0, WIDTH - 12, 236.0
_BELOW_AXIS = 34.0
_LINE = 13.0
_SYMBOL, _HALF = 3.6, 3.3
_LOG_FROM = 4
"""A point this many times beyond a limit makes an axis logarithmic: else the corner would shrink
to nothing."""
_LOG_TICKS = (0.5, 1, 2, 3, 5, 10, 20, 30, 50, 100, 200, 300, 500, 1000, 2000, 5000, 10000)


def limit_map_figure(assessment: Assessment, shop: Shop) -> Figure | None:
    """The map; None where neither wall factor nor D of bend is known, or the tube is not round."""
    points, more = shown(map_points(assessment))
    if not points:
        return None
    limits = shop.limits
    room = WIDTH - 2 * MARGIN - 18
    rows = [
        (point, [line for words in legend(point, limits) for line in wrapped(words, room, SMALL)])
        for point in points
    ]
    more_lines = [more_words(more)] if more else []
    told = sum(len(lines) for _, lines in rows) + len(more_lines)
    bottom = MARGIN + told * _LINE + 8 + _BELOW_AXIS
    height = bottom + _HEIGHT + 26 + MARGIN
    sheet = Sheet(height)
    sheet.text(MARGIN, height - MARGIN - 11, limit_map_title(assessment), size=LARGE, bold=True)

    across = _Axis.of(
        float(limits.d_of_bend_min.value), [p.d_of_bend for p in points], _LEFT, _RIGHT, least=0.5
    )
    up = _Axis.of(
        float(limits.wall_factor_max.value),
        [p.wall_factor for p in points],
        bottom,
        bottom + _HEIGHT,
        least=2,
    )
    places = Places((_LEFT + 2, bottom + 2, _RIGHT - 2, bottom + _HEIGHT - 2))
    x, y = across.at(across.limit), up.at(up.limit)
    places.take((x - 1.5, bottom, x + 1.5, bottom + _HEIGHT))
    places.take((_LEFT, y - 1.5, _RIGHT, y + 1.5))
    _draw_limits(sheet, across, up)
    _draw_ticks(sheet, across, up)
    _draw_points(sheet, points, across, up, places)
    _draw_words(sheet, across, up, places)
    y = bottom - _BELOW_AXIS - 12
    for point, lines in rows:
        if point.known:
            _symbol(sheet, point, MARGIN + 6, y + 3.5)
        else:
            _open_line(sheet, (MARGIN, MARGIN + 13), (y + 3.5, y + 3.5))
        for line in lines:
            sheet.text(MARGIN + 18, y, line, size=SMALL)
            y -= _LINE
    for line in more_lines:
        sheet.text(MARGIN + 18, y, line, size=SMALL)
    return sheet.figure


@dataclass(frozen=True, slots=True)
class _Axis:
    """One axis: values to points on the sheet."""

    limit: float
    least: float
    most: float
    start: float
    end: float
    logarithmic: bool

    @classmethod
    def of(
        cls, limit: float, values: Sequence[object], start: float, end: float, *, least: float
    ) -> _Axis:
        """An axis that shows the limit in its middle third, and every value."""
        known = [float(str(value)) for value in values if value is not None]
        top = max([2 * limit, 4 * least, *(1.15 * value for value in known)])
        logarithmic = top > _LOG_FROM * max(limit, 1)
        return cls(limit, least if logarithmic else 0.0, top, start, end, logarithmic)

    def at(self, value: float) -> float:
        """Where a value lies [points]; a limit that geometry alone keeps lies on the edge."""
        if self.logarithmic:
            share = math.log(max(value, self.least) / self.least) / math.log(self.most / self.least)
        else:
            share = (value - self.least) / (self.most - self.least)
        return self.start + share * (self.end - self.start)

    def ticks(self) -> list[float]:
        """Round values along it."""
        if self.logarithmic:
            return [tick for tick in _LOG_TICKS if self.least <= tick <= self.most]
        rough = self.most / 6
        power = 10 ** math.floor(math.log10(rough))
        step = next(power * times for times in (1, 2, 5, 10) if power * times >= rough)
        return [step * number for number in range(int(self.most / step) + 1)]


def _draw_limits(sheet: Sheet, across: _Axis, up: _Axis) -> None:
    """The feasible corner hatched, and both limits as heavy lines."""
    x, y = across.at(across.limit), up.at(up.limit)
    sheet.box(x, up.start, across.end, y, hatch="///", colour="#9a9a9a", width=0, name="feasible")
    sheet.line((x, x), (up.start, up.end), width=0.8, dashes=(5, 3), name="d-limit-on")
    sheet.line((across.start, across.end), (y, y), width=0.8, dashes=(5, 3), name="wf-limit-on")
    sheet.line((x, x, across.end), (up.start, y, y), width=2, name="limits")
    sheet.box(across.start, up.start, across.end, up.end, width=0.8, name="frame")


def _draw_ticks(sheet: Sheet, across: _Axis, up: _Axis) -> None:
    for value in across.ticks():
        x = across.at(value)
        sheet.line((x, x), (up.start, up.start - 3), width=0.8)
        sheet.text(x, up.start - 13, f"{value:g}", size=SMALL, ha="center")
    for value in up.ticks():
        y = up.at(value)
        sheet.line((across.start, across.start - 3), (y, y), width=0.8)
        sheet.text(across.start - 5, y, f"{value:g}", size=SMALL, ha="right", va="center")
    log = " (logarithmic)"
    middle = (across.start + across.end) / 2
    words = f"D of bend = CLR / OD{log if across.logarithmic else ''}"
    sheet.text(middle, up.start - 28, words, size=SMALL, ha="center")
    words = f"wall factor = OD / wall{log if up.logarithmic else ''}"
    sheet.text(
        MARGIN + 4,
        (up.start + up.end) / 2,
        words,
        size=SMALL,
        ha="center",
        va="center",
        rotation=90,
    )


def _draw_points(
    sheet: Sheet, points: Sequence[MapPoint], across: _Axis, up: _Axis, places: Places
) -> None:
    spots = []
    for point in points:
        x = None if point.d_of_bend is None else across.at(float(point.d_of_bend))
        y = None if point.wall_factor is None else up.at(float(point.wall_factor))
        if x is not None and y is not None:
            places.take((x - 5, y - 5, x + 5, y + 5))
            spots.append((point, x, y))
        elif y is not None:
            _open_line(sheet, (across.start, across.end), (y, y))
            places.take((across.start, y - 1.5, across.end, y + 1.5))
            spots.append((point, (across.start + 3 * across.end) / 4, y))
        elif x is not None:
            _open_line(sheet, (x, x), (up.start, up.end))
            places.take((x - 1.5, up.start, x + 1.5, up.end))
            spots.append((point, x, (up.start + 3 * up.end) / 4))
    for point, x, y in spots:
        if point.known:
            _symbol(sheet, point, x, y, name=_name(point))
        bold = point.kind == "asked"
        width, height = width_of(point.mark, SMALL, bold=bold) + 4, 12.0
        found = places.beside(x, y, width, height)
        if found is None:
            continue  # the legend names it, and its symbol stands there
        box, far = found
        if far:
            sheet.line((x, (box[0] + box[2]) / 2), (y, (box[1] + box[3]) / 2), width=0.5)
        sheet.box(*box, fill=PAPER, width=0)
        _centred(sheet, box, point.mark, bold=bold)


def _open_line(sheet: Sheet, xs: tuple[float, float], ys: tuple[float, float]) -> None:
    """Where a request may lie of which one ratio is not known."""
    sheet.line(xs, ys, width=1.4, dashes=(1, 2))


def _draw_words(sheet: Sheet, across: _Axis, up: _Axis, places: Places) -> None:
    """The limits' figures, and what either side of them means: where no point lies."""
    x, y = across.at(across.limit), up.at(up.limit)
    left, bottom, right, top = places.frame
    thin, tight = f"wall factor {up.limit:g}", f"D of bend {across.limit:g}"
    said = [
        (thin, False, _along(right - 44, left, y + 12), 0),
        (tight, False, _along(top - 44, bottom, x + 12, upright=True), 90),
        ("feasible", True, _spread(x, bottom, right, y), 0),
        ("not likely to be feasible", True, _spread(left, y, right, top), 0),
    ]
    for words, bold, middles, rotation in said:
        width, height = width_of(words, SMALL, bold=bold) + 4, 13.0
        if rotation:
            width, height = height, width
        box = places.first_free(middles, width, height)
        if box is None:
            continue  # the text below the map tells the limits, too
        sheet.box(*box, fill=PAPER, width=0)
        _centred(sheet, box, words, bold=bold, rotation=rotation)


def _centred(sheet: Sheet, box: Box, words: str, *, bold: bool, rotation: float = 0) -> None:
    sheet.text(
        (box[0] + box[2]) / 2,
        (box[1] + box[3]) / 2,
        words,
        size=SMALL,
        bold=bold,
        ha="center",
        va="center",
        rotation=rotation,
    )


def _along(
    start: float, end: float, beside: float, *, upright: bool = False
) -> list[tuple[float, float]]:
    """Places along a line, those near ``start`` first."""
    steps = [start + (end - start) * number / 60 for number in range(61)]
    return [(beside, step) if upright else (step, beside) for step in steps]


def _spread(left: float, bottom: float, right: float, top: float) -> list[tuple[float, float]]:
    """Places all over a rectangle, those near its middle first."""
    middle = ((left + right) / 2, (bottom + top) / 2)
    steps = [number / 24 for number in range(25)]
    places = [
        (left + (right - left) * across, bottom + (top - bottom) * up)
        for across in steps
        for up in steps
    ]
    return sorted(places, key=lambda place: math.dist(place, middle))


def _symbol(sheet: Sheet, point: MapPoint, x: float, y: float, *, name: str = "") -> None:
    """A disc for what was asked, a ring for another reading, a square for an alternative."""
    match point.kind:
        case "asked":
            sheet.disc(x, y, _SYMBOL + 0.6, fill=INK, name=name)
        case "reading":
            sheet.disc(x, y, _SYMBOL, fill=PAPER, name=name)
        case "alternative":
            box = (x - _HALF, y - _HALF, x + _HALF, y + _HALF)
            sheet.box(*box, fill=PAPER, width=1.3, name=name)


def _name(point: MapPoint) -> str:
    """Its id in the SVG."""
    return "asked" if point.kind == "asked" else f"{point.kind}-{point.mark.lstrip('?')}"
