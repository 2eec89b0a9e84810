"""Short words placed beside points of a map so that none lies on another."""

from __future__ import annotations

import math
from collections.abc import Iterable
from dataclasses import dataclass, field

Box = tuple[float, float, float, float]
"""Left, bottom, right, top [points]."""

_DISTANCES = (7.0, 13.0, 20.0, 30.0, 42.0, 56.0, 72.0)
_APART = 8.0
_DIRECTIONS_DEG = (45, 135, -45, -135, 90, -90, 0, 180)


@dataclass(slots=True)
class Places:
    """What is taken within a frame, and what is still free."""

    frame: Box
    taken: list[Box] = field(default_factory=list)

    def take(self, box: Box) -> None:
        """Nothing else is to lie here."""
        self.taken.append(box)

    def beside(self, x: float, y: float, width: float, height: float) -> tuple[Box, bool] | None:
        """A free place for words beside a point, the nearest first; and whether it is so far off
        that a line has to lead to it. None where all is full."""
        for distance in _DISTANCES:
            for turned in map(math.radians, _DIRECTIONS_DEG):
                # The nearest edge of the box, not its middle, lies at that distance.
                middle_x = x + math.cos(turned) * (distance + width / 2)
                middle_y = y + math.sin(turned) * (distance + height / 2)
                box = _about(middle_x, middle_y, width, height)
                if self._is_free(box):
                    self.take(box)
                    return box, distance > _DISTANCES[0]
        return None

    def first_free(
        self, middles: Iterable[tuple[float, float]], width: float, height: float
    ) -> Box | None:
        """The first of several places that is free, with some room around it: what stands for a
        whole region is not to be read together with a point."""
        for x, y in middles:
            if self._is_free(_about(x, y, width + _APART, height + _APART)):
                box = _about(x, y, width, height)
                self.take(box)
                return box
        return None

    def _is_free(self, box: Box) -> bool:
        left, bottom, right, top = box
        inside = (
            self.frame[0] <= left
            and self.frame[1] <= bottom
            and right <= self.frame[2]
            and top <= self.frame[3]
        )
        return inside and not any(overlap(box, other) for other in self.taken)


def overlap(one: Box, other: Box) -> bool:
    """Whether two boxes share more than an edge."""
    return one[0] < other[2] and other[0] < one[2] and one[1] < other[3] and other[1] < one[3]


def _about(x: float, y: float, width: float, height: float) -> Box:
    return x - width / 2, y - height / 2, x + width / 2, y + height / 2
