"""All formulas of tube and bend by name: what is tested for its description, and explained."""

from __future__ import annotations

from collections.abc import Callable

from .bend import clr_from_d, clr_from_inside_radius, clr_from_outside_radius, d_of_bend
from .ovality import (
    boiler_tube_limit_pct,
    flattening_pct,
    out_of_roundness_pct,
    roundness_ratio,
    smallest_diameter_faa,
)
from .pressure_wall import extrados_factor, intrados_factor, pressure_wall
from .springback import (
    flow_stress_range,
    plastic_modulus,
    plastic_moment,
    second_moment,
    springback_deg,
)
from .strain import (
    elastic_limit_radius,
    elongation_share,
    extrados_strain,
    intrados_strain,
    smallest_d_by_elongation,
)
from .thinning import (
    b31_1_extrados_wall,
    b31_1_order_factor,
    extrados_wall,
    handbook_extrados_wall,
    intrados_wall,
    tema_extrados_wall,
    tema_wall_before,
    thinning_range,
)
from .tooling_lengths import arc_length, clamp_length, pressure_die_length, straight_between_bends
from .tube import bore, od_from_bore, wall_factor, wall_from_bore

FORMULAS: tuple[Callable[..., object], ...] = (
    wall_factor,
    bore,
    wall_from_bore,
    od_from_bore,
    d_of_bend,
    clr_from_inside_radius,
    clr_from_outside_radius,
    clr_from_d,
    extrados_strain,
    intrados_strain,
    elongation_share,
    smallest_d_by_elongation,
    elastic_limit_radius,
    extrados_wall,
    intrados_wall,
    tema_wall_before,
    tema_extrados_wall,
    handbook_extrados_wall,
    b31_1_order_factor,
    b31_1_extrados_wall,
    thinning_range,
    plastic_modulus,
    second_moment,
    plastic_moment,
    flow_stress_range,
    springback_deg,
    clamp_length,
    straight_between_bends,
    arc_length,
    pressure_die_length,
    intrados_factor,
    extrados_factor,
    pressure_wall,
    flattening_pct,
    out_of_roundness_pct,
    boiler_tube_limit_pct,
    roundness_ratio,
    smallest_diameter_faa,
)
"""Every public formula; tests hold each docstring to symbols, units, range, source, example."""
