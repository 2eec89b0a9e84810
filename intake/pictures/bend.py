"""The bend drawn to scale: along it in section, and below that the tube across."""

from __future__ import annotations

import math
from dataclasses import dataclass
from typing import TYPE_CHECKING

from ...rules.units import both_units
from .bend_shape import BendShape, Point, circle
from .bend_words import balls_words, bend_notes, bend_title, diameter_words
from .sheet import GREY, INK, LARGE, MARGIN, PAPER, SMALL, WIDTH, Sheet, width_of, wrapped

if TYPE_CHECKING:
    from matplotlib.figure import Figure

    from ...rules.assessment import Assessment
    from ...rules.shop import Shop

LINE = 14.0
_ROOM = WIDTH - 2 * MARGIN
_MOST_HEIGHT = 280.0
_ABOVE = 20.0
"""Above the tube: what names the mandrel and the tangent."""
_BELOW = 40.0
"""Below the centre of the bend: what names the radius and the die."""
_BESIDE = 84.0
"""Left of the centre of the bend, where the tube comes back and nothing can stand below."""
_LEAST_LEAD = 64.0
_ROD = 6.0
"""How far the mandrel stands out of the tube's cut end."""
_ACROSS = 96.0
"""Diameter of the tube shown across."""

DIE_HATCH, TOOL_HATCH = "////", "\\\\\\\\"
THINNEST_WALL = 0.6
"""What the eye still sees [points]: a thinner wall is drawn as thick, and that is told."""


def bend_figure(assessment: Assessment, shop: Shop | None = None) -> Figure | None:
    """The picture of the bend as stated; None where it is incomplete or not round."""
    shape = BendShape.of(assessment)
    if shape is None:
        return None
    along = _Along.of(shape)
    across_scale = _ACROSS / shape.od_mm
    title = wrapped(bend_title(assessment), _ROOM, LARGE, bold=True)
    notes = list(bend_notes(assessment, shop))
    if shape.wall_mm * along.scale < THINNEST_WALL:
        notes.append("The wall is thinner than the line that draws it.")
    note_lines = [line for note in notes for line in wrapped(note, _ROOM, SMALL)]

    notes_top = MARGIN + len(note_lines) * 13 + 6
    across_middle = notes_top + 34 + _ACROSS / 2
    along_bottom = across_middle + _ACROSS / 2 + 26
    along_top = along_bottom + along.height
    height = along_top + len(title) * 16 + MARGIN

    sheet = Sheet(height)
    for number, line in enumerate(title):
        sheet.text(MARGIN, height - MARGIN - 12 - number * 16, line, size=LARGE, bold=True)
    _draw_along(sheet, along, along_bottom, assessment)
    _draw_across(sheet, shape, across_scale, across_middle, assessment)
    for number, line in enumerate(note_lines):
        sheet.text(MARGIN, notes_top - 16 - number * 13, line, size=SMALL)
    return sheet.figure


@dataclass(frozen=True, slots=True)
class _Along:
    """The section along the bend: its scale and how much of the tube is shown."""

    shape: BendShape
    scale: float
    """Points a mm."""
    lead_mm: float
    """Straight tube before the tangent, and after the bend."""
    tail_mm: float
    left_mm: float
    right_mm: float
    top_mm: float
    bottom_mm: float

    @classmethod
    def of(cls, shape: BendShape) -> _Along:
        """As large as it fits, with room for the words beside it."""
        tail_mm = max(0.8 * shape.od_mm, shape.reach_mm - shape.arc_mm + 0.3 * shape.od_mm)
        beside = shape.angle_deg > 90
        least = _BESIDE if beside else _LEAST_LEAD
        scale = 1.0
        for _ in range(12):  # the lead has a least length on paper, the rest one in mm
            lead_mm = max(1.5 * shape.od_mm, least / scale)
            places = [
                shape.at(along, offset)
                for along in (-lead_mm, 0, *_steps(shape.arc_mm), shape.arc_mm + tail_mm)
                for offset in (-shape.od_mm / 2, shape.od_mm / 2)
            ]
            xs, ys = zip(*places, strict=True)
            left, right, top = min(xs), max(xs), max(ys)
            bottom = min(0.0, *ys)
            below = 0.0 if beside else max(0, _BELOW + bottom * scale)
            scale = min((_ROOM - _ROD) / (right - left), (_MOST_HEIGHT - below) / (top - bottom))
        return cls(shape, scale, lead_mm, tail_mm, left, right, top, bottom)

    @property
    def below(self) -> float:
        """Points below the centre of the bend."""
        least = _BELOW if self.shape.angle_deg <= 90 else 0
        return max(least, -self.bottom_mm * self.scale)

    @property
    def height(self) -> float:
        """Points from bottom to top, the words above the tube included."""
        return self.below + self.top_mm * self.scale + _ABOVE

    def origin(self, bottom: float) -> Point:
        """Where the centre of the bend lies on the sheet."""
        wide = (self.right_mm - self.left_mm) * self.scale
        spare = _ROOM - _ROD - wide
        return MARGIN + _ROD + spare / 2 - self.left_mm * self.scale, bottom + self.below


def _steps(arc_mm: float) -> list[float]:
    return [arc_mm * step / 12 for step in range(1, 13)]


def _draw_along(sheet: Sheet, along: _Along, bottom: float, assessment: Assessment) -> None:
    shape, scale = along.shape, along.scale
    origin = along.origin(bottom)
    half, wall = shape.od_mm / 2, shape.wall_mm
    start, end = -along.lead_mm, shape.arc_mm + along.tail_mm
    depth_mm = min(0.45 * shape.od_mm, 0.55 * (shape.clr_mm - half))

    sheet.shape(shape.die(depth_mm).path(scale, origin), hatch=DIE_HATCH, colour=GREY, name="die")
    if shape.tool is not None:
        if (stem := shape.stem()) is not None:
            sheet.shape(stem.path(scale, origin), fill="#bbbbbb", name="stem")
        shank = shape.shank(start - _ROD / scale)
        sheet.shape(shank.path(scale, origin), hatch=TOOL_HATCH, fill=PAPER, name="mandrel")
        for number, ball in enumerate(shape.balls(), start=1):
            sheet.shape(ball.path(scale, origin), fill="#dddddd", name=f"ball-{number}")
    thicker = max(0, THINNEST_WALL - wall * scale)
    for name, low, high in (("outer-wall", half - wall, half), ("inner-wall", -half, wall - half)):
        ribbon = shape.ribbon(start, end, low, high)
        sheet.shape(ribbon.path(scale, origin), fill=INK, width=thicker, name=name)
    centreline = shape.centreline(start, end).path(scale, origin, closed=False)
    sheet.shape(centreline, width=0.6, colour=INK, name="centreline", dashes=(8, 2, 2, 2))
    _name_tool(sheet, along, origin)
    _name_radius(sheet, along, origin, depth_mm, assessment)


def _name_tool(sheet: Sheet, along: _Along, origin: Point) -> None:
    """What stands above the tube: the mandrel, and the tangent."""
    shape, scale = along.shape, along.scale
    top = origin[1] + (shape.clr_mm + shape.od_mm / 2) * scale
    x, y = origin
    sheet.line((x, x), (y, top + 14), width=0.6, dashes=(2, 2), colour=GREY, name="tangent")
    sheet.text(x + 4, top + 6, "tangent", size=SMALL)
    if shape.tool is None:
        return
    left = x - along.lead_mm * scale
    words = "mandrel"
    if shape.tool.balls:
        longer = f"mandrel, {'1 ball' if shape.tool.balls == 1 else f'{shape.tool.balls} balls'}"
        words = longer if left + width_of(longer, SMALL) < x - 4 else words
    sheet.text(left, top + 6, words, size=SMALL)
    foot = left + width_of("mandrel", SMALL) / 2
    sheet.line((foot, foot), (top + 4, y + (shape.clr_mm + shape.od_mm / 5) * scale), width=0.6)


def _name_radius(
    sheet: Sheet, along: _Along, origin: Point, depth_mm: float, assessment: Assessment
) -> None:
    """The centre of the bend, its radius with an arrow, and the die."""
    shape, scale = along.shape, along.scale
    x, y = origin
    middle = shape.at(shape.arc_mm / 2)
    sheet.arrow(origin, (x + middle[0] * scale, y + middle[1] * scale), both=False)
    sheet.line((x - 4, x + 4), (y, y), width=0.8, name="centre")
    sheet.line((x, x), (y - 4, y + 4), width=0.8)
    die_x, die_y = shape.at(0.8 * shape.arc_mm, -shape.od_mm / 2 - depth_mm / 2)
    die = (x + die_x * scale, y + die_y * scale)
    clr_mm = assessment.request.clr_mm
    assert clr_mm is not None
    words = f"CLR {both_units(clr_mm, shape.first)}"
    if shape.angle_deg > 90:
        lines = words.replace(" ", "\n", 1).replace(" (", "\n(").split("\n")
        for number, line in enumerate(lines):
            sheet.text(x - 8, y + 18 - number * 13, line, ha="right")
        sheet.text(x - 8, y - 30, "bend die", ha="right", size=SMALL)
        sheet.line((x - 6, die[0]), (y - 27, die[1]), width=0.6)
        return
    left = MARGIN
    die_width, clr_width = width_of("bend die", SMALL), width_of(words)
    # Clear of the tube, which comes down to the right of the die.
    free = x + (shape.clr_mm - shape.od_mm / 2) * scale - die_width - 8
    die_left = max(x - 20, min(die[0] - die_width / 2, free))
    clr_left = max(left, min(x - clr_width / 2, die_left - 10 - clr_width))
    sheet.text(clr_left, y - 20, words)
    sheet.text(die_left, y - 32, "bend die", size=SMALL)
    sheet.line((die_left + die_width / 2, die[0]), (y - 22, die[1]), width=0.6)


def _draw_across(
    sheet: Sheet, shape: BendShape, scale: float, middle: float, assessment: Assessment
) -> None:
    """The tube across with the mandrel in it, and each figure beside what it measures."""
    request = assessment.request
    assert request.od_mm is not None
    assert request.wall_mm is not None
    radius = shape.od_mm / 2 * scale
    origin = (MARGIN + 8 + radius, middle)
    outer, inner = circle(shape.od_mm / 2), circle(shape.od_mm / 2 - shape.wall_mm)
    sheet.shape(outer.path(scale, origin), fill=INK, width=0.3, name="across-od")
    sheet.shape(inner.path(scale, origin), fill=PAPER, width=0.3, name="across-bore")
    words_at = MARGIN + 2 * radius + 34
    rows = [(middle + radius - 10, f"wall {both_units(request.wall_mm, shape.first, wall=True)}")]
    turned = math.radians(52)
    at_wall = radius - shape.wall_mm * scale / 2
    targets = [(origin[0] + at_wall * math.cos(turned), origin[1] + at_wall * math.sin(turned))]
    if shape.tool is not None:
        disc = circle(shape.tool.diameter_mm / 2)
        sheet.shape(
            disc.path(scale, origin), hatch=TOOL_HATCH, fill=PAPER, width=0.6, name="across-mandrel"
        )
        rows.append((middle + 8, f"mandrel {diameter_words(assessment)}"))
        targets.append((origin[0] + radius * 0.55, middle + 11))
    for (y, words), target in zip(rows, targets, strict=True):
        # The other unit keeps to itself, so that no figure is parted from its unit.
        parts = words.replace(" (", "\n(").split("\n") if " to " in words else [words]
        lines = [line for part in parts for line in wrapped(part, WIDTH - MARGIN - words_at)]
        if words.startswith("mandrel") and (balls := balls_words(assessment)):
            lines.append(balls)
        for number, line in enumerate(lines):
            sheet.text(words_at, y - number * LINE, line)
        sheet.line((words_at - 4, target[0]), (y + 4, target[1]), width=0.6)
    _measure_od(sheet, origin, radius, words_at, f"OD {both_units(request.od_mm, shape.first)}")


def _measure_od(sheet: Sheet, origin: Point, radius: float, words_at: float, words: str) -> None:
    x, y = origin
    below = y - radius - 14
    for side in (x - radius, x + radius):
        sheet.line((side, side), (y, below - 4), width=0.5, colour=GREY)
    sheet.arrow((x - radius, below), (x + radius, below), both=True)
    sheet.text(words_at, below - 4, words)
    sheet.line((x + radius, words_at - 4), (below, below), width=0.6)
