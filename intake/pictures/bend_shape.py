"""Where everything of a bend lies in its section, in mm, before any of it is drawn.

The centre of the bend is (0, 0). The tube comes from the left along y = CLR, its tangent point is
at x = 0, and from there it bends down to the right. Figures here are floats: they place ink, and
nothing is decided by them.
"""

from __future__ import annotations

import math
from dataclasses import dataclass
from itertools import pairwise
from typing import TYPE_CHECKING, Literal

from ...rules.assessment import Decision
from ...rules.ball_chart import ASSUMED_PITCH
from ...rules.readings import stated_reading

if TYPE_CHECKING:
    from matplotlib.path import Path

    from ...rules.assessment import Assessment

USUAL_ANGLE_DEG = 90.0
"""Drawn where no angle was asked for."""
MOST_ANGLE_DEG = 180.0
"""Beyond this the tube would cross itself in the picture."""
LIMIT_RULES = frozenset({"wall-factor-limit", "d-of-bend-limit"})
"""Rules of ``rules.checks`` whose finding says that a limit is broken."""
_BALL_OVER_PITCH = 0.8
_STEM_OVER_BALL = 0.2
_NOSE_OVER_MANDREL = 0.12
"""Lengths of no importance, chosen to look like the tool: how thick a ball is, how thick the stem
between balls, how far the nose is rounded."""

Point = tuple[float, float]


@dataclass(frozen=True, slots=True)
class Tool:
    """The mandrel as it is drawn."""

    diameter_mm: float
    balls: int
    advance_mm: float


@dataclass(frozen=True, slots=True)
class BendShape:
    """A complete bend of a round tube; lengths in mm, the angle as it is drawn."""

    od_mm: float
    wall_mm: float
    clr_mm: float
    angle_deg: float
    tool: Tool | None
    first: Literal["in", "mm"]

    @classmethod
    def of(cls, assessment: Assessment) -> BendShape | None:
        """The bend that was asked for, as stated; None where it is incomplete or not round."""
        request = assessment.request
        spec = stated_reading(request).spec
        if spec is None:
            return None
        angle_deg = USUAL_ANGLE_DEG if request.angle_deg is None else float(request.angle_deg)
        return cls(
            od_mm=float(spec.od_mm),
            wall_mm=float(spec.wall_mm),
            clr_mm=float(spec.clr_mm),
            angle_deg=min(angle_deg, MOST_ANGLE_DEG) if angle_deg > 0 else USUAL_ANGLE_DEG,
            tool=_tool(assessment),
            first=request.written_in,
        )

    @property
    def arc_mm(self) -> float:
        """Length of the bend along the centreline [mm]."""
        return self.clr_mm * math.radians(self.angle_deg)

    def at(self, along_mm: float, offset_mm: float = 0) -> Point:
        """The place ``along_mm`` past the tangent on the centreline, ``offset_mm`` outwards."""
        radius = self.clr_mm + offset_mm
        if along_mm <= 0:
            return along_mm, radius
        turned = min(along_mm, self.arc_mm) / self.clr_mm
        rest = max(along_mm - self.arc_mm, 0)
        return (
            radius * math.sin(turned) + rest * math.cos(turned),
            radius * math.cos(turned) - rest * math.sin(turned),
        )

    def ribbon(self, start_mm: float, end_mm: float, low_mm: float, high_mm: float) -> Outline:
        """What lies between two offsets from the centreline, from one place on it to another."""
        made = Outline(self.at(start_mm, high_mm))
        self._follow(made, start_mm, end_mm, high_mm)
        made.line_to(self.at(end_mm, low_mm))
        self._follow(made, end_mm, start_mm, low_mm)
        return made

    def centreline(self, start_mm: float, end_mm: float) -> Outline:
        """The line in the middle of the tube."""
        made = Outline(self.at(start_mm))
        self._follow(made, start_mm, end_mm, 0)
        return made

    def die(self, depth_mm: float) -> Outline:
        """The bottom of the die's groove, and ``depth_mm`` of the die inside it."""
        bottom_mm = -self.od_mm / 2
        return self.ribbon(0, self.arc_mm, bottom_mm - depth_mm, bottom_mm)

    def shank(self, start_mm: float) -> Outline:
        """The mandrel's body from its cut end to the nose: straight, as it is in the tool."""
        assert self.tool is not None
        half, nose = self.tool.diameter_mm / 2, self.tool.advance_mm
        round_mm = min(_NOSE_OVER_MANDREL * self.tool.diameter_mm, nose - start_mm)
        top, bottom = self.clr_mm + half, self.clr_mm - half
        made = Outline((start_mm, top))
        made.line_to((nose - round_mm, top))
        made.arc((nose - round_mm, top - round_mm), round_mm, 90, 0)
        made.line_to((nose, bottom + round_mm))
        made.arc((nose - round_mm, bottom + round_mm), round_mm, 0, -90)
        made.line_to((start_mm, bottom))
        return made

    def balls(self) -> tuple[Outline, ...]:
        """The balls: spheres of the mandrel's diameter, cut flat on both sides."""
        if self.tool is None:
            return ()
        radius, width_mm = self.tool.diameter_mm / 2, self._ball_mm
        reach_deg = math.degrees(math.asin(min(width_mm / 2 / radius, 1)))
        balls = []
        for along_mm in self._ball_places(self.tool):
            middle, turned = self.at(along_mm), self._turned_deg(along_mm)
            up, down = 90 - turned, -90 - turned
            ball = Outline(_around(middle, radius, up + reach_deg))
            ball.arc(middle, radius, up + reach_deg, up - reach_deg)
            ball.line_to(_around(middle, radius, down + reach_deg))
            ball.arc(middle, radius, down + reach_deg, down - reach_deg)
            balls.append(ball)
        return tuple(balls)

    def stem(self) -> Outline | None:
        """What holds the balls to the nose."""
        if self.tool is None or not self.tool.balls:
            return None
        half = _STEM_OVER_BALL * self.tool.diameter_mm / 2
        last_mm = self._ball_places(self.tool)[-1]
        return self.ribbon(self.tool.advance_mm, last_mm, -half, half)

    @property
    def reach_mm(self) -> float:
        """How far past the tangent the mandrel goes, its balls included [mm]."""
        if self.tool is None:
            return 0
        places = self._ball_places(self.tool)
        return places[-1] + self._pitch_mm / 2 if places else self.tool.advance_mm

    @property
    def _pitch_mm(self) -> float:
        return float(ASSUMED_PITCH) * self.od_mm

    @property
    def _ball_mm(self) -> float:
        """How thick a ball is: no thicker than leaves it clear of the next inside the bend."""
        radius = self.tool.diameter_mm / 2 if self.tool else 0
        return self._pitch_mm * min(_BALL_OVER_PITCH, 0.9 * (1 - radius / self.clr_mm))

    def _ball_places(self, tool: Tool) -> list[float]:
        """Middles of the balls along the centreline, the first clear of the nose."""
        first_mm = tool.advance_mm + self._pitch_mm - self._ball_mm / 2
        return [first_mm + number * self._pitch_mm for number in range(tool.balls)]

    def _turned_deg(self, along_mm: float) -> float:
        return math.degrees(max(0, min(along_mm, self.arc_mm)) / self.clr_mm)

    def _follow(self, made: Outline, start_mm: float, end_mm: float, offset_mm: float) -> None:
        """From one place to another, forwards or backwards: straight, along the arc, straight."""
        low, high = sorted((start_mm, end_mm))
        stops = [low, *(stop for stop in (0.0, self.arc_mm) if low < stop < high), high]
        if end_mm < start_mm:
            stops.reverse()
        for here, there in pairwise(stops):
            if min(here, there) >= 0 and max(here, there) <= self.arc_mm:
                made.arc(
                    (0, 0),
                    self.clr_mm + offset_mm,
                    90 - self._turned_deg(here),
                    90 - self._turned_deg(there),
                )
            else:
                made.line_to(self.at(there, offset_mm))


class Outline:
    """A line through the plane, straight and along arcs; lengths in mm, angles in degrees."""

    def __init__(self, start: Point) -> None:
        self.points: list[Point] = [start]
        self.curved: list[bool] = [False]

    def line_to(self, point: Point) -> None:
        """Straight on to a point."""
        self.points.append(point)
        self.curved.append(False)

    def arc(self, middle: Point, radius: float, start_deg: float, end_deg: float) -> None:
        """Along a circle, from where the line has come to: cubic curves of at most 45 degrees,
        which keep to it within four millionths of the radius."""
        pieces = max(1, math.ceil(abs(end_deg - start_deg) / 45))
        step = math.radians(end_deg - start_deg) / pieces
        arm = 4 / 3 * math.tan(step / 4) * radius
        for piece in range(pieces):
            here = math.radians(start_deg) + piece * step
            there = here + step
            x0, y0 = _around(middle, radius, math.degrees(here))
            x1, y1 = _around(middle, radius, math.degrees(there))
            self.points += [
                (x0 - arm * math.sin(here), y0 + arm * math.cos(here)),
                (x1 + arm * math.sin(there), y1 - arm * math.cos(there)),
                (x1, y1),
            ]
            self.curved += [True, True, True]

    def path(self, scale: float, origin: Point, *, closed: bool = True) -> Path:
        """As matplotlib draws it: ``scale`` points a mm, ``origin`` [points] is where (0, 0) is."""
        from matplotlib.path import Path

        points = [(origin[0] + x * scale, origin[1] + y * scale) for x, y in self.points]
        codes = [Path.CURVE4 if curved else Path.LINETO for curved in self.curved]
        codes[0] = Path.MOVETO
        if closed:
            points.append(points[0])
            codes.append(Path.CLOSEPOLY)
        return Path(points, codes)


def circle(radius: float) -> Outline:
    """A whole circle about (0, 0)."""
    made = Outline((radius, 0))
    made.arc((0, 0), radius, 0, 360)
    return made


def _around(middle: Point, radius: float, deg: float) -> Point:
    turned = math.radians(deg)
    return middle[0] + radius * math.cos(turned), middle[1] + radius * math.sin(turned)


def beyond_limits(assessment: Assessment) -> bool:
    """Whether the bend as stated breaks a limit; it may still be asked about, if it is in doubt."""
    broken = {finding.rule for finding in assessment.findings} & LIMIT_RULES
    return assessment.decision is Decision.DECLINE or bool(broken)


def _tool(assessment: Assessment) -> Tool | None:
    """The mandrel on the shelf, else the middle one of those that would do; none where the bend
    is not likely to be feasible."""
    needed, stock = assessment.mandrel, assessment.stock
    if needed is None or beyond_limits(assessment):
        return None
    diameter_mm = (
        stock.mandrel_diameter_mm
        if stock is not None
        else (needed.diameter_low_mm + needed.diameter_high_mm) / 2
    )
    balls = stock.balls if stock is not None else needed.balls_high
    return Tool(
        diameter_mm=float(diameter_mm),
        balls=balls or 0,
        advance_mm=float(needed.advance_mm or 0),
    )
