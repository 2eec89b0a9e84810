"""The figures of one bend as words, for the answers: 'your 1.75 x 0.083 in has ...'.

Every figure is the engine's own, as ``bendreply explain`` prints it; '' where it can't be worked
out from what is known. Worked out when an answer asks for it, not before.
"""

from __future__ import annotations

from collections.abc import Callable
from decimal import ROUND_UP, Decimal
from functools import cached_property
from typing import TYPE_CHECKING

from ..rules.advance import advance_by_table
from ..rules.assessment import Assessment, Decision
from ..rules.needed import mandrel_need
from ..rules.request import Material, Shape, SizeRequest
from ..rules.units import MM_PER_INCH, both_units, converted_in, format_in, format_mm
from .wording import ratio
from .wording_tool import mandrel_words, plain, round_to

if TYPE_CHECKING:
    from ..rules.sheet import Figure
    from ..rules.shop import Shop
    from .reply_facts import Words


class BendWords:
    """``bend`` in the answers. Text, '' for unknown; lengths in both units, the sender's first."""

    def __init__(self, assessment: Assessment | None, shop: Shop | None, words: Words) -> None:
        """``assessment`` None: nothing is known, everything is ''."""
        if assessment is None:
            assessment = Assessment(request=SizeRequest(), decision=Decision.ASK)
        self._assessment = assessment
        self._request = assessment.request
        self._limits = shop.limits if shop else None
        self._shop = shop
        self._words = words

    @property
    def tube(self) -> str:
        """'1.75 x 0.083 in' or '38 x 1.5 mm'; the OD alone where no wall is given."""
        request = self._request
        figures = [
            self._short(mm, wall=wall)
            for mm, wall in ((request.od_mm, False), (request.wall_mm, True))
            if mm is not None
        ]
        return f"{' x '.join(figures)} {request.written_in}" if request.od_mm is not None else ""

    @property
    def clr(self) -> str:
        """The radius, in both units."""
        return self._length(self._request.clr_mm)

    @property
    def radius(self) -> str:
        """'6 in' or '114 mm': the radius in the sender's unit alone."""
        mm = self._request.clr_mm
        return "" if mm is None else f"{self._short(mm, wall=False)} {self._request.written_in}"

    @property
    def od(self) -> str:
        """The OD, in both units."""
        return self._length(self._request.od_mm)

    @property
    def pipe(self) -> str:
        """'NPS 2 schedule 40' where the size was given as pipe."""
        return self._request.nominal_pipe or ""

    @property
    def family(self) -> str:
        """'stainless_steel' ...: the material's family."""
        return self._request.material or ""

    @property
    def steel(self) -> bool:
        """Carbon or alloy steel."""
        return self._request.material in (Material.CARBON_STEEL, Material.ALLOY_STEEL)

    @property
    def wall_factor(self) -> str:
        """OD / wall, to one decimal."""
        value = self._assessment.wall_factor
        return ratio(value, self._limits.wall_factor_max.value) if self._limits else ""

    @property
    def d_of_bend(self) -> str:
        """CLR / OD, to one decimal: '3.0'."""
        value = self._assessment.d_of_bend
        return ratio(value, self._limits.d_of_bend_min.value) if self._limits else ""

    @property
    def need(self) -> str:
        """'needed', 'either' or 'may not be needed': a mandrel, by published thresholds."""
        a = self._assessment
        if a.wall_factor is None or a.d_of_bend is None or self._is_odd:
            return ""
        return mandrel_need(
            wall_factor=a.wall_factor, d_of_bend=a.d_of_bend, material=self._request.material
        ).needed

    @property
    def smallest_clr(self) -> str:
        """The smallest CLR for this OD by the shop's limit."""
        od = self._request.od_mm
        if od is None or self._limits is None:
            return ""
        return self._length(od * self._limits.d_of_bend_min.value)

    @property
    def thinnest_wall(self) -> str:
        """The thinnest wall for this OD by the shop's limit, rounded up, never below it."""
        od = self._request.od_mm
        if od is None or self._limits is None:
            return ""
        return self._rounded_up(od / self._limits.wall_factor_max.value)

    @property
    def diameter(self) -> str:
        """The mandrel that would be made: '1.547 to 1.555 in (39.29 to 39.5 mm) diameter'."""
        return mandrel_words(self._assessment, self._words).partition(" diameter")[0]

    @property
    def bore(self) -> str:
        """The nominal bore."""
        mandrel = self._assessment.mandrel
        return "" if mandrel is None else self._length(mandrel.bore_mm)

    @property
    def balls(self) -> str:
        """'2 to 3 balls', by the shop's chart."""
        mandrel = self._assessment.mandrel
        if mandrel is None or mandrel.balls_low is None or mandrel.balls_high is None:
            return ""
        few, many = mandrel.balls_low, mandrel.balls_high
        if few == many:
            return {0: "no balls", 1: "1 ball"}.get(few, f"{few} balls")
        return f"{few} to {many} ball{'s' if many != 1 else ''}"

    @property
    def nose(self) -> str:
        """'plug', 'ball', 'plug or ball', 'none or plug', by the shop's chart."""
        mandrel = self._assessment.mandrel
        return (mandrel.nose or "") if mandrel else ""

    @property
    def wiper(self) -> str:
        """'no', 'maybe' or 'yes', by the shop's chart."""
        mandrel = self._assessment.mandrel
        return (mandrel.wiper or "") if mandrel else ""

    @property
    def advance(self) -> str:
        """How far past the tangent to set the mandrel first, by geometry."""
        mandrel = self._assessment.mandrel
        return self._about(mandrel.advance_mm) if mandrel else ""

    @property
    def advance_table(self) -> str:
        """The same by a machine maker's table, which looks at the OD alone."""
        od = self._request.od_mm
        return self._about(advance_by_table(od_mm=od)) if od is not None else ""

    @property
    def stretch(self) -> str:
        """Strain at the outside [%], to one decimal."""
        from ..rules.strain import extrados_strain

        return self._range(extrados_strain, places=1)

    @property
    def thinning(self) -> str:
        """Thinning at the outside [%], from the least formula to the most: '8 to 20'."""
        from ..rules.thinning import thinning_range

        return self._range(thinning_range, places=0)

    @property
    def wall_left(self) -> str:
        """The wall that this leaves at the outside: '0.066 to 0.076 in (1.68 to 1.93 mm)'."""
        from ..rules.thinning import thinning_range

        figure, wall = self._figure(thinning_range), self._request.wall_mm
        if figure is None or not figure.values or wall is None:
            return ""
        ends = sorted(wall * (100 - share) / 100 for share in figure.values)
        return self._span(ends)

    @property
    def springback(self) -> str:
        """Springback in theory [degrees]: '0.8 to 1.1'; needs the angle and a listed grade."""
        from ..rules.springback import springback_deg

        return self._range(springback_deg, places=1)

    @property
    def angle(self) -> str:
        """The bend angle [degrees]."""
        angle = self._request.angle_deg
        return "" if angle is None else plain(angle)

    @property
    def clamp(self) -> str:
        """The clamp length preferred, which is also the straight wanted between two bends."""
        from ..rules.tooling_lengths import clamp_length

        if self._request.od_mm is None:
            return ""
        length = clamp_length(od_mm=self._request.od_mm)
        return self._length(length) if isinstance(length, Decimal) else ""

    @property
    def pressure_die(self) -> str:
        """Length of the pressure die; needs the angle."""
        from ..rules.tooling_lengths import pressure_die_length

        figure = self._figure(pressure_die_length)
        return self._about(figure.values[0]) if figure is not None and figure.values else ""

    @property
    def boiler_limit(self) -> str:
        """Limit of ovality of boiler tubes at this D of bend [%], to one decimal."""
        from ..rules.ovality import boiler_tube_limit_pct

        d_of_bend = self._assessment.d_of_bend
        limit = None if d_of_bend is None else boiler_tube_limit_pct(d_of_bend=d_of_bend)
        return round_to(limit, 1) if isinstance(limit, Decimal) else ""

    @property
    def _is_odd(self) -> bool:
        return self._request.shape is not Shape.ROUND

    @cached_property
    def _sheet(self) -> dict[str, Figure]:
        from ..rules.sheet import sheet

        sections = sheet(self._assessment, self._shop) if self._shop else ()
        return {figure.name: figure for section in sections for figure in section.figures}

    def _figure(self, formula: Callable[..., object]) -> Figure | None:
        from ..rules.formula import described

        return self._sheet.get(described(formula).title)

    def _range(self, formula: Callable[..., object], *, places: int) -> str:
        figure = self._figure(formula)
        if figure is None:
            return ""
        return " to ".join(dict.fromkeys(round_to(value, places) for value in figure.values))

    def _length(self, mm: Decimal | None) -> str:
        return "" if mm is None else both_units(mm, self._request.written_in)

    def _short(self, mm: Decimal, *, wall: bool) -> str:
        if self._request.written_in == "mm":
            return format_mm(mm)
        return format_in(mm, wall=wall)

    def _about(self, mm: Decimal | None) -> str:
        """A length that is only roughly so: to 0.1 mm, or 1 mm from 100 mm on, and 0.01 in."""
        if mm is None:
            return ""
        coarse = mm >= 100
        return self._both(
            f"{round_to(mm / MM_PER_INCH, 1 if coarse else 2)} in",
            f"{round_to(mm, 0 if coarse else 1)} mm",
        )

    def _rounded_up(self, mm: Decimal) -> str:
        """A least length: rounded up to 0.01 mm and 0.001 in."""
        inches = converted_in(_up(mm / MM_PER_INCH, "0.001") * MM_PER_INCH, wall=True)
        return self._both(f"{inches} in", f"{plain(_up(mm, '0.01'))} mm")

    def _span(self, ends: list[Decimal]) -> str:
        inches = " to ".join(dict.fromkeys(round_to(end / MM_PER_INCH, 3) for end in ends))
        mms = " to ".join(dict.fromkeys(round_to(end, 2) for end in ends))
        return self._both(f"{inches} in", f"{mms} mm")

    def _both(self, inches: str, mms: str) -> str:
        first, second = (inches, mms) if self._request.written_in == "in" else (mms, inches)
        return f"{first} ({second})"


def _up(value: Decimal, step: str) -> Decimal:
    return value.quantize(Decimal(step), ROUND_UP)
