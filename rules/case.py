"""One reading before one shop: what the rules look at."""

from __future__ import annotations

from dataclasses import dataclass
from decimal import Decimal
from typing import TYPE_CHECKING, Literal

from .bend import BendSpec, d_of_bend
from .bore import BoreRange, bore_range
from .catalogue import ShelfLook, look_on_shelf
from .lazy import lazy
from .mandrel import mandrel_needed
from .readings import Reading
from .request import Shape
from .tube import wall_factor
from .units import both_units

if TYPE_CHECKING:
    from .assessment import MandrelNeeded
    from .shelf import CatalogueMandrel
    from .shop import Shop
    from .tolerances import TubeMake


@dataclass(frozen=True)
class Case:
    """A reading and the shop that judges it; figures are worked out once, when first asked for."""

    reading: Reading
    shop: Shop
    written_in: Literal["in", "mm"] = "in"
    make: TubeMake | None = None
    """How the tube is made (DOM, ERW ...), where the request says so."""
    angle_deg: Decimal | None = None

    @lazy
    def spec(self) -> BendSpec | None:
        """The complete, possible round bend, or None."""
        return self.reading.spec

    @lazy
    def wall_factor(self) -> Decimal | None:
        """OD / wall [-]; None where not given, impossible, or not a round tube."""
        if self.spec is not None:
            return self.spec.wall_factor
        r = self.reading
        if not self._is_round or r.od_mm is None or r.wall_mm is None or not r.possible_wall:
            return None
        return wall_factor(od_mm=r.od_mm, wall_mm=r.wall_mm)

    @lazy
    def d_of_bend(self) -> Decimal | None:
        """CLR / OD [-]; None where not given, impossible, or not a round tube."""
        if self.spec is not None:
            return self.spec.d_of_bend
        r = self.reading
        if not self._is_round or r.od_mm is None or r.clr_mm is None or not r.possible_clr:
            return None
        return d_of_bend(clr_mm=r.clr_mm, od_mm=r.od_mm)

    @lazy
    def too_thin(self) -> bool:
        """Whether the wall factor is above the shop's limit.

        OD against limit x wall: products, so that 1.5 in / 0.05 in is never 30.000...1.
        False also where a figure is missing or the size can't exist: nothing is broken for sure.
        """
        r = self.reading
        if r.od_mm is None or r.wall_mm is None or not self._is_judged:
            return False
        return r.od_mm > self.shop.limits.wall_factor_max.value * r.wall_mm

    @lazy
    def too_tight(self) -> bool:
        """Whether the D of bend is below the shop's limit; compared and guarded like too_thin."""
        r = self.reading
        if r.od_mm is None or r.clr_mm is None or not self._is_judged:
            return False
        return r.clr_mm < self.shop.limits.d_of_bend_min.value * r.od_mm

    @lazy
    def is_feasible(self) -> bool:
        """A complete bend within both limits."""
        return self.spec is not None and not self.too_thin and not self.too_tight

    @lazy
    def mandrel(self) -> MandrelNeeded | None:
        """The mandrel for the bend, feasible or not; None where it can't be worked out."""
        if self.spec is None:
            return None
        return mandrel_needed(
            self.spec,
            self.shop.mandrel_clearance,
            make=self.make,
            chart=self.shop.balls,
            angle_deg=self.angle_deg,
            wiper_dies=self.shop.wiper_dies,
        )

    @lazy
    def bore(self) -> BoreRange | None:
        """What is known of the tube's bore; None for a size that is incomplete or impossible."""
        if self.spec is None:
            return None
        return bore_range(od_mm=self.spec.od_mm, wall_mm=self.spec.wall_mm, make=self.make)

    @lazy
    def shelf(self) -> ShelfLook:
        """What the shelf has for a feasible bend; nothing for any other."""
        if not self.is_feasible or self.spec is None or self.mandrel is None:
            return ShelfLook(None, (), ())
        return look_on_shelf(self.spec, self.mandrel, self.shop.catalogue, self.written_in)

    @lazy
    def stock(self) -> CatalogueMandrel | None:
        """The mandrel on hand that serves the request, as many as are wanted."""
        found = self.shelf.match
        return None if found is None or (self.reading.quantity or 1) > found.on_hand else found

    def length(self, mm: Decimal, *, wall: bool = False) -> str:
        """A length in both units, the sender's first."""
        return both_units(mm, self.written_in, wall=wall)

    @property
    def _is_round(self) -> bool:
        return self.reading.shape is Shape.ROUND

    @property
    def _is_judged(self) -> bool:
        return self.spec is not None or (self._is_round and self.reading.can_be)
