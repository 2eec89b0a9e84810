"""What stands in the map of the limits: the request, other ways to read it, and what would go."""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING, Literal

from ...rules.bend import d_of_bend
from ...rules.readings import Reading, all_readings, stated_reading
from ...rules.request import Shape
from ...rules.tube import wall_factor
from ...rules.units import format_in, format_mm

if TYPE_CHECKING:
    from decimal import Decimal

    from ...rules.assessment import Assessment
    from ...rules.shop import Shop
    from ...rules.shop_settings import Limits

MOST_READINGS_SHOWN = 8
"""Of a size with more readings the rest are only counted."""

PointKind = Literal["asked", "reading", "alternative"]


@dataclass(frozen=True, slots=True)
class MapPoint:
    """One bend in the map; a ratio that is None is not known, and the point becomes a line."""

    kind: PointKind
    mark: str
    """What is written beside it: 'asked', '?1', 'A'."""
    size: str
    """OD x wall x CLR in the sender's unit."""
    wall_factor: Decimal | None
    d_of_bend: Decimal | None

    def verdict(self, limits: Limits) -> str:
        """Where it lies to the limits, in words; exactly on a limit is within it."""
        thin = self.wall_factor is not None and self.wall_factor > limits.wall_factor_max.value
        tight = self.d_of_bend is not None and self.d_of_bend < limits.d_of_bend_min.value
        match thin, tight:
            case True, True:
                return "beyond both limits"
            case True, False:
                return "beyond the limit of wall factor"
            case False, True:
                return "beyond the limit of D of bend"
        if self.known:
            return "within both limits"
        return f"within the limit of {'D of bend' if self.wall_factor is None else 'wall factor'}"

    @property
    def known(self) -> bool:
        """Whether it is a point, not only a line."""
        return self.wall_factor is not None and self.d_of_bend is not None


def map_points(assessment: Assessment) -> tuple[MapPoint, ...]:
    """The request first, then its other readings, then the alternatives; () where nothing of it
    can be placed. Readings that fall on one place are one point."""
    request = assessment.request
    stated = stated_reading(request)
    points: list[MapPoint] = []
    seen: set[tuple[Decimal | None, Decimal | None]] = {(None, None)}
    for reading in (stated, *(all_readings(request, stated) or ())):
        thin, tight = _ratios(reading)
        if (thin, tight) in seen:
            continue
        seen.add((thin, tight))
        asked = reading == stated
        points.append(
            MapPoint(
                kind="asked" if asked else "reading",
                mark="asked" if asked else f"?{sum(p.kind == 'reading' for p in points) + 1}",
                size=_size(reading.lengths_mm, request.written_in),
                wall_factor=thin,
                d_of_bend=tight,
            )
        )
    for letter, offer in zip("ABCDEF", assessment.alternatives, strict=False):
        points.append(
            MapPoint(
                kind="alternative",
                mark=letter,
                size=_size((offer.od_mm, offer.wall_mm, offer.clr_mm), request.written_in),
                wall_factor=wall_factor(od_mm=offer.od_mm, wall_mm=offer.wall_mm),
                d_of_bend=d_of_bend(clr_mm=offer.clr_mm, od_mm=offer.od_mm),
            )
        )
    return tuple(points)


def shown(points: tuple[MapPoint, ...]) -> tuple[tuple[MapPoint, ...], int]:
    """Those that are drawn and told one by one, and how many further readings there are."""
    readings = [point for point in points if point.kind == "reading"]
    left_out = set(readings[MOST_READINGS_SHOWN:])
    return tuple(point for point in points if point not in left_out), len(left_out)


def why_no_map(assessment: Assessment, shop: Shop) -> str:
    """One sentence on why there is no map; '' where there is one."""
    if map_points(assessment):
        return ""
    limits = shop.limits
    where = (
        f"feasible here is a wall factor of at most {limits.wall_factor_max.value} and a D of bend "
        f"of at least {limits.d_of_bend_min.value}"
    )
    if assessment.request.shape is not Shape.ROUND:
        return "There is no map: it is for round tube only."
    return f"There is no map: neither wall factor nor D of bend is known; {where}."


def _ratios(reading: Reading) -> tuple[Decimal | None, Decimal | None]:
    """Wall factor and D of bend of one reading, None where not given or impossible."""
    od_mm, wall_mm, clr_mm = reading.lengths_mm
    if reading.shape is not Shape.ROUND or od_mm is None or not reading.can_be:
        return None, None
    return (
        None if wall_mm is None else wall_factor(od_mm=od_mm, wall_mm=wall_mm),
        None if clr_mm is None else d_of_bend(clr_mm=clr_mm, od_mm=od_mm),
    )


def _size(lengths_mm: tuple[Decimal | None, ...], unit: Literal["in", "mm"]) -> str:
    """'1.75 × 0.095 × – in': OD, wall, CLR, a dash for what is not given."""
    written = []
    for name, mm in zip(("od", "wall", "clr"), lengths_mm, strict=True):
        if mm is None:
            written.append("–")
        else:
            written.append(format_in(mm, wall=name == "wall") if unit == "in" else format_mm(mm))
    return f"{' × '.join(written)} {unit}"
