"""The wall after bending, as a range over the published forms: no one figure is fact.

At 3 D the sources run from 8 % (TEMA) to 20 % (implied by the ASME B31.1 order factor, which is a
purchasing allowance). Boost and wiper lessen it, drag thickens it.
"""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from decimal import Decimal
from itertools import pairwise

from .formula import Outside, no_bend, no_tube, not_positive

B31_1_ORDER_FACTORS: tuple[tuple[Decimal, Decimal], ...] = (
    (Decimal(3), Decimal("1.25")),
    (Decimal(4), Decimal("1.14")),
    (Decimal(5), Decimal("1.08")),
    (Decimal(6), Decimal("1.06")),
)
"""(radius in pipe diameters, wall to order / wall needed): ASME B31.1 Table 102.4.5, by S11."""


def extrados_wall(*, od_mm: Decimal, wall_mm: Decimal, clr_mm: Decimal) -> Decimal | Outside:
    """Outer wall after bending, constant volume: te = t x CLR / (CLR + OD/2).

    Symbols: te wall at the outside of the bend [mm]; t wall before [mm]; CLR centreline radius
        [mm]; OD outside diameter [mm].
    Range: t below OD/2, CLR above OD/2; neutral axis on the centreline.
    Source: a US tooling maker's formula page (S02: (Ro - R) / Ro).

    >>> extrados_wall(od_mm=Decimal(50), wall_mm=Decimal(2), clr_mm=Decimal(100))
    Decimal('1.6')
    """
    wrong = no_tube(od_mm, wall_mm) or no_bend(od_mm, clr_mm)
    return wrong or wall_mm * clr_mm / (clr_mm + od_mm / 2)


def intrados_wall(*, od_mm: Decimal, wall_mm: Decimal, clr_mm: Decimal) -> Decimal | Outside:
    """Inner wall after bending, constant volume: ti = t x CLR / (CLR - OD/2).

    Symbols: ti wall at the inside of the bend [mm]; t wall before [mm]; CLR centreline radius
        [mm]; OD outside diameter [mm].
    Range: t below OD/2, CLR above OD/2; neutral axis on the centreline, no wrinkle.
    Source: derived here, as the outer wall.

    >>> intrados_wall(od_mm=Decimal(50), wall_mm=Decimal(2), clr_mm=Decimal(75))
    Decimal('3')
    """
    wrong = no_tube(od_mm, wall_mm) or no_bend(od_mm, clr_mm)
    return wrong or wall_mm * clr_mm / (clr_mm - od_mm / 2)


def tema_wall_before(*, od_mm: Decimal, wall_mm: Decimal, clr_mm: Decimal) -> Decimal | Outside:
    """Least wall before bending, TEMA RCB-2.31: t0 = t1 x (1 + OD / (4 x CLR)).

    Symbols: t0 wall before [mm]; t1 wall needed after bending [mm]; OD outside diameter [mm];
        CLR centreline radius [mm].
    Range: t1 below OD/2, CLR above OD/2; written for U-tubes of heat exchangers.
    Source: TEMA RCB-2.31 as in a worked report (S14).

    >>> tema_wall_before(od_mm=Decimal(50), wall_mm=Decimal(2), clr_mm=Decimal(100))
    Decimal('2.250')
    """
    wrong = no_tube(od_mm, wall_mm) or no_bend(od_mm, clr_mm)
    return wrong or wall_mm * (1 + od_mm / (4 * clr_mm))


def tema_extrados_wall(*, od_mm: Decimal, wall_mm: Decimal, clr_mm: Decimal) -> Decimal | Outside:
    """Outer wall after bending by TEMA RCB-2.31: te = t / (1 + OD / (4 x CLR)).

    Symbols: te wall at the outside of the bend [mm]; t wall before [mm]; OD outside diameter [mm];
        CLR centreline radius [mm].
    Range: t below OD/2, CLR above OD/2; written for U-tubes of heat exchangers.
    Source: TEMA RCB-2.31 (S14) solved for the wall after bending.

    >>> tema_extrados_wall(od_mm=Decimal(50), wall_mm=Decimal("2.25"), clr_mm=Decimal(100))
    Decimal('2')
    """
    wrong = no_tube(od_mm, wall_mm) or no_bend(od_mm, clr_mm)
    return wrong or wall_mm / (1 + od_mm / (4 * clr_mm))


def handbook_extrados_wall(
    *, od_mm: Decimal, wall_mm: Decimal, clr_mm: Decimal
) -> Decimal | Outside:
    """Outer wall after bending, handbook form: te = t x (1 - (1 - t/OD) x OD / (2 x CLR)).

    Symbols: te wall at the outside of the bend [mm]; t wall before [mm]; OD outside diameter [mm];
        CLR centreline radius [mm].
    Range: t below OD/2, CLR above OD/2.
    Source: handbooks, from memory; no page read.

    >>> handbook_extrados_wall(od_mm=Decimal(50), wall_mm=Decimal(2), clr_mm=Decimal(100))
    Decimal('1.52')
    """
    wrong = no_tube(od_mm, wall_mm) or no_bend(od_mm, clr_mm)
    return wrong or wall_mm * (1 - (1 - wall_mm / od_mm) * od_mm / (2 * clr_mm))


def b31_1_order_factor(*, diameters: Decimal) -> Decimal | Outside:
    """Wall to order / wall needed, ASME B31.1: f of the table, straight lines between its rows.

    Symbols: f factor on the wall needed after bending [-]; diameters CLR / D, where D is the
        NOMINAL size for pipe and the OD for tube [-].
    Range: 3 diameters and more (6 and more is one row, 1.06); nothing is said below 3.
    Source: ASME B31.1 Table 102.4.5, repeated in US government criteria (S11).

    >>> b31_1_order_factor(diameters=Decimal("4.5"))
    Decimal('1.110')
    """
    if diameters < B31_1_ORDER_FACTORS[0][0]:
        return Outside("ASME B31.1 Table 102.4.5 says nothing below 3 diameters")
    for (low, at_low), (high, at_high) in pairwise(B31_1_ORDER_FACTORS):
        if diameters < high:
            return at_low + (at_high - at_low) * (diameters - low) / (high - low)
    return B31_1_ORDER_FACTORS[-1][1]


def b31_1_extrados_wall(*, wall_mm: Decimal, diameters: Decimal) -> Decimal | Outside:
    """Outer wall that the ASME B31.1 order factor allows for: te = t / f.

    Symbols: te wall at the outside of the bend [mm]; t wall before [mm]; f order factor at CLR / D
        (see Wall to order) [-].
    Range: 3 diameters and more, t above 0; a purchasing allowance, not a forecast.
    Source: ASME B31.1 Table 102.4.5 (S11), turned round.

    >>> b31_1_extrados_wall(wall_mm=Decimal("2.5"), diameters=Decimal(3))
    Decimal('2')
    """
    factor = b31_1_order_factor(diameters=diameters)
    if isinstance(factor, Outside):
        return factor
    return not_positive(wall=wall_mm) or wall_mm / factor


@dataclass(frozen=True, slots=True)
class Thinning:
    """The wall lost at the outside of a bend as a share of the wall [-], by every form."""

    by_form: tuple[tuple[str, Decimal | Outside], ...]
    """(name of the form, share or why it says nothing)."""

    @property
    def low(self) -> Decimal | None:
        """The least of the forms [-]; None where none applies."""
        return min(self._shares, default=None)

    @property
    def high(self) -> Decimal | None:
        """The most of the forms [-]; None where none applies."""
        return max(self._shares, default=None)

    @property
    def _shares(self) -> list[Decimal]:
        return [share for _, share in self.by_form if not isinstance(share, Outside)]


def thinning_range(
    *, od_mm: Decimal, wall_mm: Decimal, clr_mm: Decimal, nominal_mm: Decimal | None = None
) -> Thinning:
    """Thinning at the outside of the bend: (t - te) / t, from the least form to the most.

    Symbols: t wall before [mm]; te wall at the outside after bending by each form [mm]; the share
        has no unit [-].
    Range: that of each form; one that says nothing for this bend is named with its reason.
    Source: S02, TEMA RCB-2.31 (S14), handbooks (memory), ASME B31.1 Table 102.4.5 (S11).

    ``nominal_mm`` is the nominal size of a pipe, by which B31.1 counts diameters.

    >>> t = thinning_range(od_mm=Decimal(50), wall_mm=Decimal(2), clr_mm=Decimal(150))
    >>> f"{t.low:.3f} to {t.high:.3f}"
    '0.077 to 0.200'
    """
    diameters = clr_mm / (nominal_mm or od_mm) if od_mm > 0 else Decimal(0)
    forms: tuple[tuple[str, Callable[[], Decimal | Outside]], ...] = (
        (
            "constant volume",
            lambda: extrados_wall(od_mm=od_mm, wall_mm=wall_mm, clr_mm=clr_mm),
        ),
        (
            "TEMA RCB-2.31",
            lambda: tema_extrados_wall(od_mm=od_mm, wall_mm=wall_mm, clr_mm=clr_mm),
        ),
        (
            "handbook form",
            lambda: handbook_extrados_wall(od_mm=od_mm, wall_mm=wall_mm, clr_mm=clr_mm),
        ),
        (
            "ASME B31.1 order factor",
            lambda: b31_1_extrados_wall(wall_mm=wall_mm, diameters=diameters),
        ),
    )
    return Thinning(tuple((name, _share(form(), wall_mm)) for name, form in forms))


def _share(wall_after_mm: Decimal | Outside, wall_mm: Decimal) -> Decimal | Outside:
    return wall_after_mm if isinstance(wall_after_mm, Outside) else 1 - wall_after_mm / wall_mm
