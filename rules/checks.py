"""The rules: small functions, one id each, all listed in RULES at the end.

Here stand those on the shop's limits and tooling; those on the size itself are in ``checks_size``.
A rule looks at one case and yields findings; it never decides. ``declines`` is yielded only by the
limits, and only for a round tube whose figures can exist.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator
from decimal import Decimal

from .assessment import Finding
from .case import Case
from .catalogue import die_at, dies_for
from .checks_size import (
    missing_clr,
    missing_od,
    missing_wall,
    positive_sizes,
    possible_clr,
    possible_wall,
    shape,
)
from .mandrel import doubtful_bores
from .request import Shape

Rule = Callable[[Case], Iterator[Finding]]

UNUSUAL_WALL_FACTOR = Decimal(200)
UNUSUAL_D_OF_BEND = Decimal(50)
_SANITY = "house rule: check on figures that are seldom meant"


def wall_factor_limit(case: Case) -> Iterator[Finding]:
    """The wall factor is at most the shop's limit."""
    if not case.too_thin or case.wall_factor is None:
        return
    limit = case.shop.limits.wall_factor_max
    yield Finding(
        rule="wall-factor-limit",
        effect="declines",
        text=(
            f"Wall factor {ratio_text(case.wall_factor, limit.value)} is above our limit of "
            f"{ratio_text(limit.value)} ({limit.reason})."
        ),
        source=limit.reason,
        measured=case.wall_factor,
        limit=limit.value,
    )


def d_of_bend_limit(case: Case) -> Iterator[Finding]:
    """The D of bend is at least the shop's limit."""
    if not case.too_tight or case.d_of_bend is None:
        return
    limit = case.shop.limits.d_of_bend_min
    yield Finding(
        rule="d-of-bend-limit",
        effect="declines",
        text=(
            f"D of bend {ratio_text(case.d_of_bend, limit.value)} is below our limit of "
            f"{ratio_text(limit.value)} ({limit.reason})."
        ),
        source=limit.reason,
        measured=case.d_of_bend,
        limit=limit.value,
    )


def unusual_figures(case: Case) -> Iterator[Finding]:
    """Ratios so far out that a figure is likely to have slipped."""
    for rule, name, value, limit in (
        ("unusual-wall-factor", "Wall factor", case.wall_factor, UNUSUAL_WALL_FACTOR),
        ("unusual-d-of-bend", "D of bend", case.d_of_bend, UNUSUAL_D_OF_BEND),
    ):
        if value is not None and value > limit:
            figures = "OD and wall" if name == "Wall factor" else "OD and CLR"
            yield Finding(
                rule=rule,
                effect="warns",
                text=f"{name} {ratio_text(value, limit)} is very high: please check {figures}.",
                source=_SANITY,
                measured=value,
                limit=limit,
            )


def room_for_mandrel(case: Case) -> Iterator[Finding]:
    """The clearance must leave a mandrel, and the shop must have a clearance for this OD."""
    if not case.is_feasible or case.spec is None or case.bore is None:
        return
    rule = case.shop.mandrel_clearance
    band = rule.band_for(case.spec.od_mm)
    if band is None:
        yield Finding(
            rule="clearance-range",
            effect="notes",
            text=(
                f"Our mandrel clearances don't reach an OD of {case.length(case.spec.od_mm)}: "
                "the mandrel's diameter has to be worked out by a person."
            ),
            source=rule.reason,
        )
        return
    if case.bore.counts_mm > band.high_mm:
        return
    yield Finding(
        rule="room-for-mandrel",
        effect="asks",
        text=(
            f"A bore of {case.length(case.bore.counts_mm)} leaves no room for a mandrel "
            f"with our clearance of {case.length(band.high_mm)}."
        ),
        source=rule.reason,
        measured=case.bore.counts_mm,
        limit=band.high_mm,
        field="wall",
        question="What are the tube's OD and wall?",
    )


def doubtful_bore(case: Case) -> Iterator[Finding]:
    """A make of tube whose bore may be smaller than the one the mandrel is made for.

    Told before an order, or the mandrel would not go in: 'ERW' may have its flash left inside.
    """
    if not case.is_feasible or case.bore is None:
        return
    nominal = case.length(case.bore.counts_mm)
    smaller = doubtful_bores(case.bore)
    if smaller:
        bores = " or ".join(f"{case.length(mm)} for {title}" for title, mm in smaller)
        text = (
            f"The mandrel is worked out for the nominal bore, {nominal}; "
            f"it can be as small as {bores}."
        )
    elif case.bore.open_bead:
        text = (
            f"The mandrel is worked out for a bore of {nominal}; a weld bead inside, as "
            f"{case.bore.open_bead} may have, is not counted."
        )
    else:
        return
    yield Finding(
        rule="doubtful-bore",
        effect="warns",
        text=f"{text} Please measure the smallest bore, inside weld bead included.",
        source="tolerance.csv",
        measured=min((mm for _, mm in smaller), default=None),
        limit=case.bore.counts_mm,
    )


def mandrel_perhaps_not_needed(case: Case) -> Iterator[Finding]:
    """A bend that an empty tube may stand."""
    if (
        case.is_feasible
        and case.spec
        and case.mandrel
        and case.mandrel.needed == "may not be needed"
    ):
        yield Finding(
            rule="mandrel-perhaps-not-needed",
            effect="notes",
            text=(
                f"At wall factor {ratio_text(case.spec.wall_factor)} and "
                f"{ratio_text(case.spec.d_of_bend)} D an empty bend, without a mandrel, may do."
            ),
            source="mandrel_thresholds.csv",
        )


def missing_material(case: Case) -> Iterator[Finding]:
    """The material settles the surface: asked first only where it settles stock or custom."""
    if case.reading.material is not None or case.reading.shape is not Shape.ROUND:
        return
    if case.too_thin or case.too_tight:
        return
    fits = case.shelf.fits_by_size
    leads: tuple[str, ...] = ()
    if fits:
        parts = " and ".join(f"{m.part} ({m.surface})" for m in fits)
        text = f"{parts} would fit by size; whether the surface suits depends on the material."
        leads = (
            f"by size, {parts} on our shelf would fit; whether its surface suits depends on it",
        )
    else:
        text = "The material is not given; it settles the surface of the mandrel."
    yield Finding(
        rule="missing-material",
        effect="asks" if fits else "notes",
        text=text,
        source="mandrel_material.csv",
        field="material",
        question="What is the tube's material?",
        leads=leads,
    )


def material_surface(case: Case) -> Iterator[Finding]:
    """A material that no surface is on record for goes to a person."""
    if case.is_feasible and case.mandrel and case.reading.material and not case.mandrel.surfaces:
        yield Finding(
            rule="material-surface",
            effect="notes",
            text="We have no record of which mandrel surface suits this material.",
            source="mandrel_material.csv",
        )


def die_on_hand(case: Case) -> Iterator[Finding]:
    """Whether the shop has a bend die for this OD at this CLR."""
    if not case.is_feasible or case.spec is None:
        return
    od_mm, clr_mm = case.spec.od_mm, case.spec.clr_mm
    dies = dies_for(od_mm, case.shop.dies)
    if die_at(clr_mm, dies) is not None:
        return
    text = f"We have no bend die for {case.length(od_mm)} OD at {case.length(clr_mm)} CLR"
    radii = [die.clr_mm for die in dies]
    below = [radius for radius in radii if radius < clr_mm][-1:]
    above = [radius for radius in radii if radius > clr_mm][:1]
    if near := " and ".join(case.length(radius) for radius in below + above):
        text += f"; the nearest we have for this OD: {near}"
    yield Finding(rule="die-on-hand", effect="notes", text=f"{text}.", source="dies.csv")


def enough_on_hand(case: Case) -> Iterator[Finding]:
    """More mandrels wanted than lie on the shelf: all are made."""
    found, wanted = case.shelf.match, case.reading.quantity
    if found is not None and wanted is not None and wanted > found.on_hand:
        yield Finding(
            rule="enough-on-hand",
            effect="notes",
            text=f"{found.part} would fit, but {wanted} are wanted and {found.on_hand} on hand.",
            source="catalogue.csv",
            measured=Decimal(found.on_hand),
            limit=Decimal(wanted),
        )


def near_on_shelf(case: Case) -> Iterator[Finding]:
    """The mandrel that comes nearest, and why it does not serve."""
    shelf = case.shelf
    if shelf.match is None and shelf.near_misses and not _awaits_material(case):
        miss = shelf.near_misses[0]
        yield Finding(
            rule="near-on-shelf",
            effect="notes",
            text=(
                f"{miss.mandrel.part} comes nearest on our shelf, but {' and '.join(miss.reasons)}."
            ),
            source="catalogue.csv",
        )


def _awaits_material(case: Case) -> bool:
    return case.reading.material is None and bool(case.shelf.fits_by_size)


def ratio_text(value: Decimal, limit: Decimal | None = None) -> str:
    """A ratio with two decimals at most, but never rounded onto ``limit``: 30.004 stays 30.004."""
    for places in range(2, 13):
        text = format(value, f".{places}f").rstrip("0").rstrip(".")
        if limit is None or value == limit or Decimal(text) != limit:
            return text
    return str(value)


DECIDING: tuple[Rule, ...] = (
    shape,
    missing_od,
    missing_wall,
    missing_clr,
    positive_sizes,
    possible_wall,
    possible_clr,
    wall_factor_limit,
    d_of_bend_limit,
    room_for_mandrel,
    missing_material,
)
"""The rules that may decline or ask, in the order in which their findings are told."""

RULES: tuple[Rule, ...] = (
    *DECIDING,
    unusual_figures,
    doubtful_bore,
    mandrel_perhaps_not_needed,
    material_surface,
    die_on_hand,
    enough_on_hand,
    near_on_shelf,
)
"""All rules; after the deciding ones those that only warn or note."""
