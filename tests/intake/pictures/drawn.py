"""An SVG of ours taken apart again: parts by name, their outlines, and where their points lie."""

from __future__ import annotations

import re
from dataclasses import dataclass
from decimal import Decimal
from xml.etree import ElementTree

from bendreply.rules.request import Material, SizeRequest
from bendreply.rules.units import MM_PER_INCH

SVG = "{http://www.w3.org/2000/svg}"
Point = tuple[float, float]


def size(
    od: str | None, wall: str | None, clr: str | None, unit: str = "in", **more: object
) -> SizeRequest:
    """A request for lengths written in one unit."""

    def mm(written: str | None) -> Decimal | None:
        if written is None:
            return None
        return Decimal(written) * (MM_PER_INCH if unit == "in" else 1)

    fields = {"od_mm": mm(od), "wall_mm": mm(wall), "clr_mm": mm(clr), "written_in": unit}
    return SizeRequest.model_validate({"material": Material.CARBON_STEEL} | fields | more)


@dataclass(frozen=True)
class Drawn:
    """A picture as a browser would read it; y grows upwards here."""

    root: ElementTree.Element
    height: float

    @classmethod
    def of(cls, svg: str) -> Drawn:
        root = ElementTree.fromstring(svg)
        *_, height = map(float, root.attrib["viewBox"].split())
        return cls(root, height)

    @property
    def parts(self) -> set[str]:
        """Names of all that was given one."""
        names = (one.get("id", "").partition("-")[2] for one in self.root.iter(f"{SVG}g"))
        return {name for name in names if name}

    def points(self, name: str) -> list[Point]:
        """The points that a part's outline goes through, in order; a curve's arms left out."""
        (group,) = (
            g for g in self.root.iter(f"{SVG}g") if g.get("id", "").partition("-")[2] == name
        )
        path = group.find(f"{SVG}path")
        assert path is not None
        found = []
        for command, figures in re.findall(r"([MLCz])([^MLCz]*)", path.attrib["d"]):
            numbers = [float(one) for one in figures.split()]
            if command != "z":
                found.append((numbers[-2], self.height - numbers[-1]))
        return found

    def width_of(self, name: str) -> float:
        """From a part's leftmost to its rightmost point."""
        xs = [x for x, _ in self.points(name)]
        return max(xs) - min(xs)

    def middle_of(self, name: str) -> Point:
        """The middle of the box around a part."""
        xs, ys = zip(*self.points(name), strict=True)
        return (min(xs) + max(xs)) / 2, (min(ys) + max(ys)) / 2
