"""Pipe: nominal sizes, schedules, DN, and trade sizes whose name is not their OD.

The inch column is authoritative (ASME B36.10M and B36.19M); mm is derived. Only the ISO / EN OD,
which differs a little, stands in mm.
"""

from __future__ import annotations

from decimal import Decimal, InvalidOperation
from functools import lru_cache

from .tables import rows
from .units import MM_PER_INCH, tidy

NPS_SIZES: tuple[str, ...] = (
    "1/8", "1/4", "3/8", "1/2", "3/4", "1", "1-1/4", "1-1/2",
    "2", "2-1/2", "3", "3-1/2", "4", "5", "6", "8", "10", "12",
)  # fmt: skip

# Extra heavy is the older word for extra strong.
_SAME_SCHEDULE = {"XH": "XS", "XXH": "XXS"}


def pipe_od_mm(nps: str) -> Decimal | None:
    """Real OD of a nominal pipe size such as '1-1/2' [mm]; None outside NPS 1/8 to 12.

    Source: ASME B36.10M through pipe.csv (agrees with PyPI fluids).

    >>> pipe_od_mm("1-1/2")
    Decimal('48.26')
    """
    row = _sizes().get(_plain(nps))
    return tidy(Decimal(row["od_in"]) * MM_PER_INCH) if row else None


def pipe_wall_mm(nps: str, schedule: str) -> Decimal | None:
    """Wall of a nominal pipe size in a schedule ('40', '10S', 'std', 'XXS') [mm].

    None where that size isn't made in that schedule, or is outside NPS 1/8 to 12.
    Source: ASME B36.10M, B36.19M through pipe_walls.csv (agrees with PyPI fluids).

    >>> pipe_wall_mm("1-1/2", "40")
    Decimal('3.683')
    """
    name = schedule.strip().upper()
    return _walls().get((_plain(nps), _SAME_SCHEDULE.get(name, name)))


def nominal_size_mm(pipe: str) -> Decimal | None:
    """Nominal size that a pipe's name carries, 'NPS 1-1/2 schedule 40' [mm]: 1.5 in.

    What ASME B31.1 and many benders count the diameters of a bend by. None where the name carries
    none of NPS 1/8 to 12.

    >>> nominal_size_mm("NPS 1-1/2 schedule 40")
    Decimal('38.1')
    """
    words = pipe.split()
    name = _plain(words[1]) if len(words) > 1 and words[0] == "NPS" else ""
    return tidy(_called(name) * MM_PER_INCH) if name in NPS_SIZES else None


def iso_od_mm(nps: str) -> Decimal | None:
    """OD of the same nominal size by EN 10220 / ISO 4200 [mm]; None outside NPS 1/8 to 12.

    NPS 2-1/2 and 5 differ from ASME by 3.1 and 1.6 mm, the others by less than 0.35 mm.
    Source: pipe.csv (from memory; NPS 10 and 12 too).
    """
    row = _sizes().get(_plain(nps))
    return tidy(Decimal(row["iso_od_mm"])) if row else None


def nps_of_dn(dn: int) -> str | None:
    """The NPS of a DN number, '1-1/2' for 40; None outside DN 6 to 300. Source: pipe.csv."""
    return next((nps for nps, row in _sizes().items() if int(row["dn"]) == dn), None)


def nps_of_inches(inches: Decimal) -> str | None:
    """The NPS that is called ``inches`` [in], '1-1/2' for 1.5 or 1.50; None if there is none."""
    return next((nps for nps in NPS_SIZES if _called(nps) == inches), None)


def nps_of_od(od_mm: Decimal, tolerance: Decimal) -> str | None:
    """The NPS whose ASME or ISO OD lies nearest ``od_mm``, within ``tolerance`` (both [mm])."""
    near = [
        (abs(od - od_mm), nps)
        for nps in NPS_SIZES
        for od in (pipe_od_mm(nps), iso_od_mm(nps))
        if od is not None and abs(od - od_mm) <= tolerance
    ]
    return min(near, key=lambda pair: pair[0])[1] if near else None


def pipe_ods_mm() -> frozenset[Decimal]:
    """Every pipe OD, ASME and ISO [mm]."""
    both = [od for nps in NPS_SIZES for od in (pipe_od_mm(nps), iso_od_mm(nps))]
    return frozenset(od for od in both if od is not None)


def pipe_walls_mm() -> frozenset[Decimal]:
    """Every pipe wall of every schedule [mm]."""
    return frozenset(_walls().values())


_COPPER_TRADE = (
    "1/4", "3/8", "1/2", "5/8", "3/4", "1", "1-1/4", "1-1/2",
    "2", "2-1/2", "3", "3-1/2", "4", "5", "6", "8",
)  # fmt: skip


def is_pipe_wall(nps: str, wall_mm: Decimal) -> bool:
    """Whether a schedule of that size has the wall, within 0.1 mm; source: ASME B36.10M/19M."""
    return any(
        name == nps and abs(wall - wall_mm) <= Decimal("0.1")
        for (name, _), wall in _walls().items()
    )


def copper_tube_od_mm(trade: str) -> Decimal | None:
    """Real OD of US water tube (types K, L, M) of a trade size: trade + 1/8 in [mm].

    None for a trade size that isn't made. Source: ASTM B88 (from memory).

    >>> copper_tube_od_mm("1/2")
    Decimal('15.875')
    """
    name = _plain(trade)
    if name not in _COPPER_TRADE:
        return None
    return tidy((_called(name) + Decimal("0.125")) * MM_PER_INCH)


def copper_tube_wall_mm(trade: str, kind: str) -> Decimal | None:
    """Wall of US water tube of a trade size and type ('K', 'L', 'M') [mm].

    None where that size isn't made in that type, or is over 6 in. Source: ASTM B88 through
    copper_walls.csv.

    >>> copper_tube_wall_mm("3/4", "L")
    Decimal('1.143')
    """
    return _copper_walls().get((_plain(trade), kind.upper()))


def copper_trade_of_od(od_mm: Decimal) -> str | None:
    """The trade size of US water tube with that OD [mm], '3/4' for 7/8 in; None if there is none.

    >>> copper_trade_of_od(Decimal("22.225"))
    '3/4'
    """
    return next((name for name in _COPPER_TRADE if copper_tube_od_mm(name) == od_mm), None)


def emt_od_mm(trade: str) -> Decimal | None:
    """Real OD of electrical metallic tubing (EMT) of a trade size [mm]; None outside 1/2 to 4.

    Source: ANSI C80.3 through emt.csv (from memory).

    >>> emt_od_mm("3/4")
    Decimal('23.4188')
    """
    return _emt().get(_plain(trade))


def _plain(size: str) -> str:
    """'1 1/2', '1.5' and '1-1/2 ' are one size; anything else comes back as it is."""
    text = "-".join(size.strip().replace("-", " ").split())
    try:
        return _by_inches().get(Decimal(text), text)
    except InvalidOperation:
        return text


@lru_cache(maxsize=1)
def _by_inches() -> dict[Decimal, str]:
    return {_called(name): name for name in (*NPS_SIZES, *_COPPER_TRADE)}


@lru_cache(maxsize=256)
def _called(name: str) -> Decimal:
    """The number of inches in a size's name: 1.5 for '1-1/2'."""
    whole, _, fraction = name.rpartition("-")
    top, _, under = fraction.partition("/")
    return Decimal(whole or 0) + Decimal(top) / Decimal(under or 1)


@lru_cache(maxsize=1)
def _sizes() -> dict[str, dict[str, str]]:
    return {row["nps"]: row for row in rows("pipe.csv")}


@lru_cache(maxsize=1)
def _walls() -> dict[tuple[str, str], Decimal]:
    return {
        (row["nps"], row["schedule"]): tidy(Decimal(row["wall_in"]) * MM_PER_INCH)
        for row in rows("pipe_walls.csv")
    }


@lru_cache(maxsize=1)
def _copper_walls() -> dict[tuple[str, str], Decimal]:
    return {
        (row["trade"], row["type"]): tidy(Decimal(row["wall_in"]) * MM_PER_INCH)
        for row in rows("copper_walls.csv")
    }


@lru_cache(maxsize=1)
def _emt() -> dict[str, Decimal]:
    return {row["trade"]: tidy(Decimal(row["od_in"]) * MM_PER_INCH) for row in rows("emt.csv")}
