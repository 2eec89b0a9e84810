"""A figure with those that follow it in one list, and values that are one, in doubt."""

from __future__ import annotations

from ..text.figures import LISTED, Figure, Layout
from .boundaries import AHEAD, has_wall_behind, wall_opens_next
from .groups import slot_of
from .sharing import BOTH, EITHER


def run_at(layout: Layout, figures: list[Figure], at: int) -> list[Figure]:
    """The figure there, with what follows it in a list of the same slot."""
    end = at + 1
    while end < len(figures):
        following = figures[end]
        if following.link not in LISTED or slot_of(following) != slot_of(figures[at]):
            break
        if _opens_own_tube(layout, figures, end):
            break
        if is_undecided(layout, following) or (
            following.role == "wall" and following.is_gauge != figures[at].is_gauge
        ):
            break  # "wall is 12 gauge, .120": one wall, told twice
        if (following.role == "times_d") != (figures[at].role == "times_d"):
            break  # "3D bend, 5 inch CLR": one radius, said twice
        end += 1
    return figures[at:end]


def _opens_own_tube(layout: Layout, figures: list[Figure], at: int) -> bool:
    """'2 in 20 gauge and 10 gauge 3 in', '65 wall 2 in and 4 in x .109': no lists."""
    ahead = figures[at : at + AHEAD]
    if wall_opens_next(layout, ahead):
        return True
    tube = figures[max(0, at - 2) : at]
    return wall_opens_next(layout, tube) and has_wall_behind(layout, ahead)


def is_undecided(layout: Layout, figure: Figure) -> bool:
    """'2 mm, but maybe 1.5', 'either .065 or .058 wall': one value in doubt, not two that are
    wanted; but 'both', 'each' and radii are."""
    if figure.link != "or":
        return False
    one = layout.says(figure.sentence, EITHER) or not layout.says(figure.sentence, BOTH)
    return (slot_of(figure) == "wall" and one) or "hedged" in figure.notes
