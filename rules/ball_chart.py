"""The shop's ball chart (balls.csv): how many balls, what nose and pitch, and whether a wiper."""

from __future__ import annotations

import re
from collections.abc import Callable, Iterable, Iterator, Mapping
from dataclasses import dataclass, replace
from decimal import Decimal
from functools import cached_property
from typing import Literal

from .formula import PI
from .request import Frozen, Material
from .shop_fields import CellNumber, Count

TubeGroup = Literal["ferrous", "soft non-ferrous"]
Nose = Literal["none", "none or plug", "plug", "plug or ball", "ball", "specialist"]
Pitch = Literal["regular", "regular or close", "close", "close or ultra", "ultra"]
Wiper = Literal["no", "maybe", "yes"]

ASSUMED_PITCH = Decimal("0.45")
"""Pitch of the balls over OD [-]: assumed, common practice, no source."""

GROUPS: dict[Material, TubeGroup] = {
    Material.CARBON_STEEL: "ferrous",
    Material.ALLOY_STEEL: "ferrous",
    Material.STAINLESS_STEEL: "ferrous",
    # Charts mean aluminium, copper and brass by "non-ferrous"; these two behave like stainless.
    Material.TITANIUM: "ferrous",
    Material.NICKEL_ALLOY: "ferrous",
    Material.ALUMINIUM: "soft non-ferrous",
    Material.COPPER: "soft non-ferrous",
    Material.BRASS: "soft non-ferrous",
}


BallFaults = Callable[[Mapping[str, str]], Iterable[tuple[str, str]]]


class BallRow(Frozen):
    """One row of balls.csv: above each 'over', up to and including each 'to'."""

    wall_factor_over: CellNumber
    wall_factor_to: CellNumber
    d_over: CellNumber
    d_to: CellNumber
    angle_to: CellNumber
    """Bend angle [degrees] up to which the row holds."""
    tube: TubeGroup
    nose: Nose
    balls_low: Count
    balls_high: Count
    pitch: Pitch | None = None
    wiper: Wiper | None = None


_Band = tuple[Decimal, Decimal, tuple[tuple[BallRow, "BallsNeeded"], ...]]


class BallChart(Frozen):
    """The whole chart; empty where the shop has none."""

    rows: tuple[BallRow, ...] = ()

    @cached_property
    def bands(self) -> dict[str, tuple[_Band, ...]]:
        """The rows by kind of tube and band of wall factors, so that few are looked through; each
        with what it says of a bend at its own angle."""
        found: dict[str, dict[tuple[Decimal, Decimal], list[tuple[BallRow, BallsNeeded]]]] = {}
        for row in self.rows:
            ends = (row.wall_factor_over, row.wall_factor_to)
            found.setdefault(row.tube, {}).setdefault(ends, []).append((row, _said_by([row])))
        return {
            tube: tuple((over, to, tuple(rows)) for (over, to), rows in of_tube.items())
            for tube, of_tube in found.items()
        }

    def row_for(
        self, tube: TubeGroup, wall_factor: Decimal, d_of_bend: Decimal
    ) -> tuple[BallRow, BallsNeeded] | None:
        """The row for that tube and bend, and what it says; None where the chart does not reach."""
        for over, to, rows in self.bands.get(tube, ()):
            if over < wall_factor <= to:
                for row, said in rows:
                    if row.d_over < d_of_bend <= row.d_to:
                        return row, said
        return None


@dataclass(frozen=True, slots=True)
class BallsNeeded:
    """What a chart says of one bend; None where ferrous and soft tube differ and either may be."""

    low: int
    high: int
    nose: Nose | None
    pitch: Pitch | None
    wiper: Wiper | None
    note: str = ""


def balls_needed(
    chart: BallChart,
    *,
    wall_factor: Decimal,
    d_of_bend: Decimal,
    material: Material | None,
    angle_deg: Decimal | None = None,
) -> BallsNeeded | str:
    """What the chart says of a bend; a sentence where it says nothing. Never clamped.

    Without a material the range spans ferrous and soft non-ferrous tube. Without an angle the
    chart's own is taken; below it no more balls are named than have room in the bend.
    Source: balls.csv of the shop.
    """
    if not chart.rows:
        return "the shop has no ball chart (balls.csv)"
    if material is Material.OTHER:
        return "the ball chart has no rows for this material"
    kinds: tuple[TubeGroup, ...] = ("ferrous", "soft non-ferrous")
    if material is not None:
        kinds = (GROUPS[material],)
    found = [chart.row_for(kind, wall_factor, d_of_bend) for kind in kinds]
    held = [row for row in found if row is not None]
    if len(held) < len(kinds):
        return (
            f"wall factor {wall_factor:.2f} at {d_of_bend:.2f} D lies outside the ball chart: "
            "a person has to choose the balls"
        )
    said = held[0][1] if len(held) == 1 else _said_by([row for row, _ in held])
    if angle_deg is None:
        return said
    limit_deg = min(row.angle_to for row, _ in held)
    if angle_deg > limit_deg:
        return f"the ball chart ends at {limit_deg} degrees: a person has to choose the balls"
    if 0 < angle_deg < limit_deg:
        room = balls_that_fit(angle_deg=angle_deg, pitch_over_od=ASSUMED_PITCH, d_of_bend=d_of_bend)
        if room < said.high:
            note = (
                f"no more than {room} have room in {angle_deg} degrees (pitch {ASSUMED_PITCH} OD)"
            )
            return replace(said, low=min(said.low, room), high=room, note=note)
    return said


def _said_by(held: list[BallRow]) -> BallsNeeded:
    """What one row says, or those for ferrous and soft tube together."""
    first, last = held[0], held[-1]
    limit_deg = min(row.angle_to for row in held)
    return BallsNeeded(
        low=min(row.balls_low for row in held),
        high=max(row.balls_high for row in held),
        nose=first.nose if first.nose == last.nose else None,
        pitch=first.pitch if first.pitch == last.pitch else None,
        wiper=first.wiper if first.wiper == last.wiper else None,
        note=f"from the shop's chart for bends up to {limit_deg} degrees",
    )


def ball_faults() -> BallFaults:
    """What contradicts itself in a row of balls.csv, or an earlier row: (column, sentence)."""
    earlier: list[tuple[str | None, list[Band | None]]] = []

    def faults(cells: Mapping[str, str]) -> Iterator[tuple[str, str]]:
        for low, high in (*_BANDS, ("balls_low", "balls_high")):
            least, most = _number(cells, low), _number(cells, high)
            if least is None or most is None:
                continue
            if least > most or (least == most and low != "balls_low"):
                than = "more than" if least > most else "no less than"
                yield low, f"{cells[low]} is {than} {high} {cells[high]}"
        tube, bands = cells.get("tube"), [_band(cells, *ends) for ends in _BANDS]
        if any(tube == its_tube and _overlap(bands, its_bands) for its_tube, its_bands in earlier):
            yield "wall_factor_over", "this row covers bends that an earlier row covers already"
        earlier.append((tube, bands))

    return faults


Band = tuple[Decimal, Decimal]
_BANDS = (("wall_factor_over", "wall_factor_to"), ("d_over", "d_to"))


def _band(cells: Mapping[str, str], low: str, high: str) -> Band | None:
    over, to = _number(cells, low), _number(cells, high)
    return None if over is None or to is None else (over, to)


def _overlap(bands: list[Band | None], others: list[Band | None]) -> bool:
    """Whether two rows speak of the same bends; False where a figure can't be read."""
    return all(
        one is not None and other is not None and max(one[0], other[0]) < min(one[1], other[1])
        for one, other in zip(bands, others, strict=True)
    )


def _number(cells: Mapping[str, str], column: str) -> Decimal | None:
    text = cells.get(column, "")
    return Decimal(text) if re.fullmatch(r"\d{1,6}(?:\.\d{1,6})?", text) else None


def swing_per_joint(*, pitch_over_od: Decimal, d_of_bend: Decimal) -> Decimal:
    """Swing of one ball joint: s = (p / k) 180 / pi.

    Symbols: s swing [degrees]; p pitch of the balls over OD [-]; k D of bend [-].
    Range: p and k above 0.
    Source: arc over radius; the pitch is assumed (common practice, no source).

    Raises ValueError outside its range.

    >>> round(swing_per_joint(pitch_over_od=Decimal("0.45"), d_of_bend=Decimal(1)), 2)
    Decimal('25.78')
    """
    if pitch_over_od <= 0 or d_of_bend <= 0:
        raise ValueError("Pitch and D of bend have to be above 0.")
    return pitch_over_od / d_of_bend * 180 / PI


def balls_that_fit(*, angle_deg: Decimal, pitch_over_od: Decimal, d_of_bend: Decimal) -> int:
    """Most balls with room in the bend: n = whole part of A / s.

    Symbols: n balls [-]; A bend angle [degrees]; s swing of one joint [degrees].
    Range: all above 0.
    Source: geometry; the pitch is assumed (common practice, no source).

    Raises ValueError outside its range.

    >>> balls_that_fit(angle_deg=Decimal(90), pitch_over_od=Decimal("0.45"), d_of_bend=Decimal(1))
    3
    """
    if angle_deg <= 0:
        raise ValueError("The bend angle has to be above 0.")
    return int(angle_deg / swing_per_joint(pitch_over_od=pitch_over_od, d_of_bend=d_of_bend))
