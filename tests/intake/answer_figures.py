"""The figures that the approved answers tell, each with where the engine or a table has it."""

from __future__ import annotations

import csv
import re
from collections.abc import Callable
from decimal import Decimal
from importlib import resources
from typing import Any

from bendreply.intake.bend_words import BendWords
from bendreply.intake.reply_facts import BRITISH, Facts, ShopWords
from bendreply.intake.templates import default_templates
from bendreply.rules.gauges import bwg_mm
from bendreply.rules.ovality import boiler_tube_limit_pct
from bendreply.rules.springback import springback_deg
from bendreply.rules.strain import extrados_strain
from bendreply.rules.thinning import thinning_range
from bendreply.rules.tooling_lengths import clamp_length, pressure_die_length

TEMPLATES = default_templates()
ANSWERS = TEMPLATES.answers
TOLD = tuple(answer for answer in ANSWERS if not answer.for_a_person)
SHOP = ShopWords("", (), "30", "house rule", "2.5", "house rule", 2, 15, "0.1 to 0.3 mm", "house")
D = Decimal
INCH = D("25.4")


def said(name: str, bend: BendWords | None = None, **more: Any) -> str:
    facts = Facts(first_name="", shop=SHOP, words=BRITISH, **more).as_variables()
    return TEMPLATES.render(f"answers/{name}.md", facts | ({"bend": bend} if bend else {}))


def table(name: str) -> list[dict[str, str]]:
    text = resources.files("bendreply.rules").joinpath("data", name).read_text("utf-8")
    return list(csv.DictReader(text.splitlines()))


def thinning_pct(form: str, clr_od: str) -> str:
    """Thinning of 50 x 2 mm by one form [%], to the whole percent."""
    found = thinning_range(od_mm=D(50), wall_mm=D(2), clr_mm=50 * D(clr_od))
    return f"{100 * dict(found.by_form)[form]:.0f}"


def stretch_pct(clr_od: str) -> str:
    """Strain of the outer fibre [%]: 100 / (2 k)."""
    strain = extrados_strain(od_mm=D(10), clr_mm=10 * D(clr_od))
    assert isinstance(strain, D)
    return f"{100 * strain:.1f}".removesuffix(".0")


def threshold(rule: str) -> str:
    return next(r["value"] for r in table("mandrel_thresholds.csv") if r["rule"] == rule)


def advance(od_mm_from: str) -> str:
    rows = table("mandrel_advance.csv")
    return next(r["advance_mm"] for r in rows if r["od_mm_from"] == od_mm_from)


def bwg(number: int) -> str:
    wall = bwg_mm(str(number))
    assert wall is not None
    return f"{wall / INCH:.3f}"


def sheet_gauge(column: str) -> str:
    return next(row[column] for row in table("gauges.csv") if row["gauge"] == "16")


def springback(od: str, wall: str, clr: str, flow: str, e_gpa: str) -> D:
    found = springback_deg(
        angle_deg=D(90),
        od_mm=D(od) * INCH,
        wall_mm=D(wall) * INCH,
        clr_mm=D(clr) * INCH,
        flow_mpa=D(flow),
        e_gpa=D(e_gpa),
    )
    assert isinstance(found, D)
    return found


def pipe_in(column: str, name: str, schedule: str | None = None) -> str:
    rows = table("pipe_walls.csv" if schedule else "pipe.csv")
    return next(
        row[column]
        for row in rows
        if row["nps"] == name and (schedule is None or row["schedule"] == schedule)
    )


def rule_book(key: str) -> str:
    return next(row["says"] for row in table("rulebook.csv") if row["id"] == key)


# Answer, the words with the figure in them, and the figure as the engine or a table has it.
FIGURES: list[tuple[str, str, Callable[[], str]]] = [
    (
        "wall-factor",
        "a 2 in tube with a 0.100 in wall has a wall factor of {}",
        lambda: f"{D(2) / D('0.100'):.0f}",
    ),
    ("wall-factor", "Our own limit is {}.", lambda: SHOP.wall_factor_max),
    ("d-of-bend", "a 2 in tube on a 6 in CLR is a {} D bend", lambda: f"{D(6) / D(2):.0f}"),
    ("d-of-bend", "Our own limit is {} D", lambda: SHOP.d_of_bend_min),
    ("mandrel-needed", "of {}, others", lambda: threshold("thin-probably")),
    ("mandrel-needed", "others from {}", lambda: threshold("thin")),
    ("mandrel-needed", "at {} D or tighter", lambda: threshold("tight")),
    ("pipe-or-tube", '"1-1/2 in pipe" is {} in', lambda: f"{D(pipe_in('od_in', '1-1/2')):.3f}"),
    ("pipe-or-tube", "({} mm) OD", lambda: f"{D(pipe_in('od_in', '1-1/2')) * INCH:.2f}"),
    ("pipe-or-tube", "schedule 40 of it {} in", lambda: pipe_in("wall_in", "1-1/2", "40")),
    ("pipe-or-tube", "({} mm) wall", lambda: f"{D(pipe_in('wall_in', '1-1/2', '40')) * INCH:.3f}"),
    *[
        ("gauge", f"{g} gauge is {{}} in" if g == 20 else f"{g} is {{}}", lambda g=g: bwg(g))  # type: ignore[misc]
        for g in (20, 18, 16, 14, 13, 12, 11, 10)
    ],
    ("gauge", "({} mm)", lambda: f"{D(bwg(16)) * INCH:.3f}"),
    ("gauge", "16 is {} in SWG", lambda: sheet_gauge("swg_in")),
    ("gauge", "{} in steel sheet gauge", lambda: sheet_gauge("steel_sheet_in")),
    ("price-and-lead-time", "about {} working days", lambda: str(SHOP.custom_days)),
    ("how-tight", "a CLR of {} x OD", lambda: SHOP.d_of_bend_min),
    ("how-tight", "may be {} at most", lambda: SHOP.wall_factor_max),
    ("how-tight", "6061-T6 or cold-drawn tube, are better kept at about {} D", lambda: "3"),
    ("thinnest-wall", "(OD / wall) of {} (", lambda: SHOP.wall_factor_max),
    # rulebook.csv: 8 % flattening, R >= 5 nominal diameters; TEMA 10 %; FIA 0.9.
    (
        "ovality",
        "ASME B31.1 {} %",
        lambda: re.search(r"<= (\d+) %", rule_book("b31-1-flattening"))[1],
    ),  # type: ignore[index]
    (
        "ovality",
        "radius of {} nominal sizes",
        lambda: re.search(r"R >= (\d+) nominal", rule_book("b31-1-flattening"))[1],
    ),  # type: ignore[index]
    (
        "ovality",
        "schedule {} or heavier",
        lambda: re.search(r"sched (\d+)", rule_book("b31-1-flattening"))[1],
    ),  # type: ignore[index]
    ("ovality", "TEMA {} %", lambda: re.search(r"flattening <= (\d+) %", rule_book("tema"))[1]),  # type: ignore[index]
    (
        "ovality",
        "boiler tube practice {} % / D of bend",
        lambda: f"{boiler_tube_limit_pct(d_of_bend=D(1)):.0f}",
    ),
    (
        "ovality",
        "up to {} D, then",
        lambda: re.search(r"up to rm = (\d) da", rule_book("en-12952"))[1],
    ),  # type: ignore[index]
    ("ovality", "D, then {} %", lambda: f"{boiler_tube_limit_pct(d_of_bend=D(6)):.0f}"),
    (
        "ovality",
        "to be {} of the largest",
        lambda: re.search(r">= (0\.9)", rule_book("fia-253"))[1],
    ),  # type: ignore[index]
    # 2 x 0.065 in at 2 D is 4 in CLR; 350 MPa, 205 GPa: 0.81 (reference facts, section 3).
    (
        "springback",
        "about {} degrees on a 90 degree bend of 2 x 0.065 in mild steel at 2 D",
        lambda: f"{springback('2', '0.065', '4', '350', '205'):.1f}",
    ),
    (
        "wall-thinning",
        "3 D bend the wall thins by {} to",
        lambda: thinning_pct("TEMA RCB-2.31", "3"),
    ),
    ("wall-thinning", "to {} %, depending", lambda: thinning_pct("ASME B31.1 order factor", "3")),
    ("wall-thinning", "{} % by constant volume", lambda: thinning_pct("constant volume", "3")),
    ("wall-thinning", "{} % by TEMA", lambda: thinning_pct("TEMA RCB-2.31", "3")),
    ("wall-thinning", "{} % implied by", lambda: thinning_pct("ASME B31.1 order factor", "3")),
    (
        "mandrel-position",
        "starts at {} mm past the tangent for 30 to 44 mm tube",
        lambda: advance("30"),
    ),
    ("mandrel-position", "{} mm for 54 to 84 mm", lambda: advance("54")),
    ("mandrel-position", "{} mm for 118 to 152 mm", lambda: advance("118")),
    ("mandrel-size", "Ours is {} on the diameter", lambda: SHOP.clearance),
    ("straight-between-bends", "some {} x OD", lambda: f"{clamp_length(od_mm=D(1)):.0f}"),
    # 16.6 in is the worked example of the source (S07): pi x 4 + 2 x 2.
    (
        "pressure-die",
        "wants {} in",
        lambda: (
            f"{pressure_die_length(od_mm=2 * INCH, clr_mm=4 * INCH, angle_deg=D(180)) / INCH:.1f}"
        ),
    ),  # type: ignore[operator]
    ("very-tight", "stretch by {} %", lambda: stretch_pct("1")),
    ("very-tight", "at 1.5 D by {} %", lambda: f"{D(stretch_pct('1.5')):.0f}"),
    ("very-tight", "Our own limit is {} D", lambda: SHOP.d_of_bend_min),
    (
        "rule-books",
        "at least {} x OD in cages",
        lambda: re.search(r"CLR >= (\d) x tube", rule_book("fia-253"))[1],
    ),  # type: ignore[index]
    (
        "rule-books",
        "keep {} % of their OD",
        lambda: re.search(r">= (75) %", rule_book("faa-flattening"))[1],
    ),  # type: ignore[index]
    (
        "aluminium-t6",
        "listed with {} % elongation",
        lambda: next(
            r["elongation_pct"] for r in table("materials.csv") if r["name"] == "6061-T6 drawn"
        ),
    ),
    ("aluminium-t6", "stretches the outside by {} %", lambda: stretch_pct("3")),
    # Ti-3Al-2.5V CWSR of materials.csv: 724 to 862 MPa, 107 GPa.
    (
        "titanium",
        "some {} degrees on a 90 degree bend of 1 x 0.035 in",
        lambda: (
            f"{springback('1', '0.035', '3', '724', '107'):.0f} to "
            f"{springback('1', '0.035', '3', '862', '107'):.0f}"
        ),
    ),
    ("cracking", "{} % at 2 D", lambda: stretch_pct("2")),
    ("cracking", "{} % at 3 D", lambda: stretch_pct("3")),
    ("inch-or-metric", "1-1/2 in ({} mm)", lambda: f"{D('1.5') * INCH:.1f}"),
    ("inch-or-metric", "2 in ({} mm)", lambda: f"{2 * INCH:.1f}"),
    ("inch-or-metric", "pipe is {} mm", lambda: f"{D(pipe_in('od_in', '1-1/2')) * INCH:.2f}"),
    ("inch-or-metric", "({} in)", lambda: f"{D(pipe_in('od_in', '1-1/2')):.3f}"),
]
