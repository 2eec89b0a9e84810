"""The map of the limits in words."""

from __future__ import annotations

from typing import TYPE_CHECKING

from .bend_words import ratio
from .limit_points import MapPoint, map_points, shown, why_no_map

if TYPE_CHECKING:
    from ...rules.assessment import Assessment
    from ...rules.shop import Shop
    from ...rules.shop_settings import Limits

_WHAT = {
    "asked": "asked for",
    "reading": "another way to read it",
    "alternative": "alternative",
}


def limit_map_title(assessment: Assessment) -> str:
    """Where the request lies: 'Wall factor 18.42, D of bend 3'."""
    asked = next(iter(map_points(assessment)), None)
    return "Wall factor and D of bend" if asked is None else ratios(asked)


def limit_map_text(assessment: Assessment, shop: Shop) -> str:
    """What the map shows, in sentences; without a map the sentence that says why."""
    if why := why_no_map(assessment, shop):
        return why
    limits = shop.limits
    points, more = shown(map_points(assessment))
    said = [
        "Map of wall factor against D of bend, with the limits of this shop: feasible is a wall "
        f"factor of at most {ratio(limits.wall_factor_max.value)} together with a D of bend of at "
        f"least {ratio(limits.d_of_bend_min.value)}."
    ]
    said += [" ".join(legend(point, limits)) for point in points]
    if more:
        said.append(more_words(more))
    return " ".join(said)


def legend(point: MapPoint, limits: Limits) -> tuple[str, str]:
    """What stands in one place of the map, and what that means, a sentence each."""
    name = _WHAT[point.kind]
    if point.kind != "asked":
        name = f"{point.mark}, {name}"
    return (
        f"{name[0].upper()}{name[1:]}: {point.size}.",
        f"{ratios(point)}: {point.verdict(limits)}.",
    )


def ratios(point: MapPoint) -> str:
    """'Wall factor 18.42, D of bend 3', or which of them is open."""
    thin, tight = point.wall_factor, point.d_of_bend
    return (
        f"Wall factor {'open' if thin is None else ratio(thin)}, "
        f"D of bend {'open' if tight is None else ratio(tight)}"
    )


def more_words(more: int) -> str:
    """How many readings are not told one by one."""
    return f"{more} further {'reading is' if more == 1 else 'readings are'} not shown."
