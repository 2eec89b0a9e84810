"""What the approved answers say: every figure against the engine or its table, every claim against
the source that it names, the same words for everybody."""

from __future__ import annotations

import csv
import re
from collections.abc import Callable
from datetime import date
from decimal import Decimal as D
from importlib import resources
from typing import Any

import pytest

from bendreply.intake.bend_words import BendWords
from bendreply.intake.pipeline import process
from bendreply.intake.reply_facts import AMERICAN, BRITISH, Facts, ShopWords
from bendreply.intake.sources import text_message
from bendreply.intake.templates import default_templates
from bendreply.intake.wording import shop_words
from bendreply.rules.assess import assess
from bendreply.rules.gauges import bwg_mm
from bendreply.rules.ovality import boiler_tube_limit_pct
from bendreply.rules.request import Material, SizeRequest
from bendreply.rules.shop import sample_shop
from bendreply.rules.springback import springback_deg
from bendreply.rules.strain import extrados_strain
from bendreply.rules.thinning import thinning_range
from bendreply.rules.tooling_lengths import clamp_length, pressure_die_length

TEMPLATES = default_templates()
ANSWERS = TEMPLATES.answers
TOLD = tuple(answer for answer in ANSWERS if not answer.for_a_person)
SHOP = ShopWords("", (), "30", "house rule", "2.5", "house rule", 2, 15, "0.1 to 0.3 mm", "house")
INCH = D("25.4")
TODAY = date(2026, 11, 25)


def said(name: str, bend: BendWords | None = None, **more: Any) -> str:
    facts = Facts(first_name="", shop=SHOP, words=BRITISH, **more).as_variables()
    return TEMPLATES.render(f"answers/{name}.md", facts | ({"bend": bend} if bend else {}))


def table(name: str) -> list[dict[str, str]]:
    text = resources.files("bendreply.rules").joinpath("data", name).read_text("utf-8")
    return list(csv.DictReader(text.splitlines()))


# -- figures of the general text -----------------------------------------------------------------


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
    ("wall-factor", "a 2 in tube with a 0.100 in wall has a wall factor of {}", lambda: f"{D(2) / D('0.100'):.0f}"),
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
    *[("gauge", f"{g} gauge is {{}} in" if g == 20 else f"{g} is {{}}", lambda g=g: bwg(g))  # type: ignore[misc]
      for g in (20, 18, 16, 14, 13, 12, 11, 10)],
    ("gauge", "({} mm)", lambda: f"{D(bwg(16)) * INCH:.3f}"),
    ("gauge", "16 is {} in SWG", lambda: sheet_gauge("swg_in")),
    ("gauge", "{} in steel sheet gauge", lambda: sheet_gauge("steel_sheet_in")),
    ("price-and-lead-time", "about {} working days", lambda: str(SHOP.custom_days)),
    ("how-tight", "a CLR of {} x OD", lambda: SHOP.d_of_bend_min),
    ("how-tight", "may be {} at most", lambda: SHOP.wall_factor_max),
    ("how-tight", "6061-T6 or cold-drawn tube, are better kept at about {} D", lambda: "3"),
    ("thinnest-wall", "(OD / wall) of {} (", lambda: SHOP.wall_factor_max),
    # rulebook.csv: 8 % flattening, R >= 5 nominal diameters; TEMA 10 %; FIA 0.9.
    ("ovality", "ASME B31.1 {} %", lambda: re.search(r"<= (\d+) %", rule_book("b31-1-flattening"))[1]),  # type: ignore[index]
    ("ovality", "radius of {} nominal sizes", lambda: re.search(r"R >= (\d+) nominal", rule_book("b31-1-flattening"))[1]),  # type: ignore[index]
    ("ovality", "schedule {} or heavier", lambda: re.search(r"sched (\d+)", rule_book("b31-1-flattening"))[1]),  # type: ignore[index]
    ("ovality", "TEMA {} %", lambda: re.search(r"flattening <= (\d+) %", rule_book("tema"))[1]),  # type: ignore[index]
    ("ovality", "boiler tube practice {} % / D of bend", lambda: f"{boiler_tube_limit_pct(d_of_bend=D(1)):.0f}"),
    ("ovality", "up to {} D, then", lambda: re.search(r"up to rm = (\d) da", rule_book("en-12952"))[1]),  # type: ignore[index]
    ("ovality", "D, then {} %", lambda: f"{boiler_tube_limit_pct(d_of_bend=D(6)):.0f}"),
    ("ovality", "to be {} of the largest", lambda: re.search(r">= (0\.9)", rule_book("fia-253"))[1]),  # type: ignore[index]
    # 2 x 0.065 in at 2 D is 4 in CLR; 350 MPa, 205 GPa: 0.81 (reference facts, section 3).
    ("springback", "about {} degrees on a 90 degree bend of 2 x 0.065 in mild steel at 2 D", lambda: f"{springback('2', '0.065', '4', '350', '205'):.1f}"),
    ("wall-thinning", "3 D bend the wall thins by {} to", lambda: thinning_pct("TEMA RCB-2.31", "3")),
    ("wall-thinning", "to {} %, depending", lambda: thinning_pct("ASME B31.1 order factor", "3")),
    ("wall-thinning", "{} % by constant volume", lambda: thinning_pct("constant volume", "3")),
    ("wall-thinning", "{} % by TEMA", lambda: thinning_pct("TEMA RCB-2.31", "3")),
    ("wall-thinning", "{} % implied by", lambda: thinning_pct("ASME B31.1 order factor", "3")),
    ("mandrel-position", "starts at {} mm past the tangent for 30 to 44 mm tube", lambda: advance("30")),
    ("mandrel-position", "{} mm for 54 to 84 mm", lambda: advance("54")),
    ("mandrel-position", "{} mm for 118 to 152 mm", lambda: advance("118")),
    ("mandrel-size", "Ours is {} on the diameter", lambda: SHOP.clearance),
    ("straight-between-bends", "some {} x OD", lambda: f"{clamp_length(od_mm=D(1)):.0f}"),
    # 16.6 in is the worked example of the source (S07): pi x 4 + 2 x 2.
    ("pressure-die", "wants {} in", lambda: f"{pressure_die_length(od_mm=2 * INCH, clr_mm=4 * INCH, angle_deg=D(180)) / INCH:.1f}"),  # type: ignore[operator]
    ("very-tight", "stretch by {} %", lambda: stretch_pct("1")),
    ("very-tight", "at 1.5 D by {} %", lambda: f"{D(stretch_pct('1.5')):.0f}"),
    ("very-tight", "Our own limit is {} D", lambda: SHOP.d_of_bend_min),
    ("rule-books", "at least {} x OD in cages", lambda: re.search(r"CLR >= (\d) x tube", rule_book("fia-253"))[1]),  # type: ignore[index]
    ("rule-books", "keep {} % of their OD", lambda: re.search(r">= (75) %", rule_book("faa-flattening"))[1]),  # type: ignore[index]
    ("aluminium-t6", "listed with {} % elongation", lambda: next(r["elongation_pct"] for r in table("materials.csv") if r["name"] == "6061-T6 drawn")),
    ("aluminium-t6", "stretches the outside by {} %", lambda: stretch_pct("3")),
    # Ti-3Al-2.5V CWSR of materials.csv: 724 to 862 MPa, 107 GPa.
    ("titanium", "some {} degrees on a 90 degree bend of 1 x 0.035 in", lambda: f"{springback('1', '0.035', '3', '724', '107'):.0f} to {springback('1', '0.035', '3', '862', '107'):.0f}"),
    ("cracking", "{} % at 2 D", lambda: stretch_pct("2")),
    ("cracking", "{} % at 3 D", lambda: stretch_pct("3")),
    ("inch-or-metric", "1-1/2 in ({} mm)", lambda: f"{D('1.5') * INCH:.1f}"),
    ("inch-or-metric", "2 in ({} mm)", lambda: f"{2 * INCH:.1f}"),
    ("inch-or-metric", "pipe is {} mm", lambda: f"{D(pipe_in('od_in', '1-1/2')) * INCH:.2f}"),
    ("inch-or-metric", "({} in)", lambda: f"{D(pipe_in('od_in', '1-1/2')):.3f}"),
]  # fmt: skip


@pytest.mark.parametrize(("name", "words", "figure"), FIGURES, ids=lambda v: str(v)[:50])
def test_a_figure_is_the_engines(name: str, words: str, figure: Callable[[], str]) -> None:
    assert words.format(figure()) in " ".join(said(name).split())


# Figures that are inputs or names, not results: sizes of examples, codes, alloys, list numbers.
NAMES = re.compile(
    r"B31\.1|Art\. 253|6061-T6|Ti-3Al-2\.5V|T[46]\b|OD / \(2 x CLR\)|plus 2 x OD|1-1/2 in|38 mm|50 mm"
    r"|(?<=nor 50 mm )2 in|0\.01 mm|0\.001 in|90 degree|180 degrees|2 x 0\.065 in|1 x 0\.035 in"
    r"|15 to 70|(?:at|to|about|a|Below) [123](?:\.5)? D\b|At 1 D|2 in tube|0\.100 in|4 in CLR|6 in CLR"
    r"|30 to 44 mm|54 to 84 mm|118 to 152 mm|^\d\. |\d{2} (?:gauge )?is|16 is|schedule 40",
    re.MULTILINE,
)


@pytest.mark.parametrize("answer", TOLD, ids=lambda a: a.name)
def test_no_figure_is_left_unchecked(answer: Any) -> None:
    text = " ".join(NAMES.sub(" ", said(answer.name)).split())
    checked = " ".join(
        " ".join(NAMES.sub(" ", words.format(figure())).split())
        for name, words, figure in FIGURES
        if name == answer.name
    )
    for figure in re.findall(r"\d+(?:\.\d+)?", text):
        assert re.search(rf"(?<![\d.]){re.escape(figure)}(?![\d.]*\d)", checked), (figure, text)


# -- claims against the source that they name ----------------------------------------------------


def _surface(material: str, surface: str) -> dict[str, str]:
    rows = table("mandrel_material.csv")
    return next(r for r in rows if (r["material"], r["mandrel_surface"]) == (material, surface))


@pytest.mark.parametrize(
    ("name", "claim", "table_name", "row_has"),
    [
        ("bronze-or-chrome", "aluminium bronze would gall on aluminium", "mandrel_material.csv", "aluminium,aluminium bronze,never"),
        ("bronze-or-chrome", "stainless: aluminium bronze, on most advice", "mandrel_material.csv", "stainless_steel,chromed tool steel,never"),
        ("bronze-or-chrome", "either is used, and makers differ", "mandrel_material.csv", "carbon_steel,chromed tool steel,suits"),
        ("bronze-or-chrome", "some jobs run better on chrome", "mandrel_material.csv", "titanium,chromed tool steel,sometimes"),
        ("pick-up", "hard chrome inside aluminium, copper and brass", "mandrel_material.csv", "copper,chromed tool steel,suits"),
        ("titanium", "mostly aluminium bronze", "mandrel_material.csv", "titanium,aluminium bronze,suits"),
        ("mandrel-needed", "probably needed", "mandrel_thresholds.csv", "from a wall factor of 15 a mandrel is probably needed"),
        ("mandrel-needed", "nearly always at 1.5 D or tighter", "mandrel_thresholds.csv", "at 1.5 D and tighter a mandrel is almost always needed"),
        ("mandrel-needed", "Heavy wall on a large radius often goes without", "mandrel_thresholds.csv", "heavy wall at 3 D and wider is usually bent without a mandrel"),
        ("weld-seam", "near the neutral axis", "rulebook.csv", "seam near neutral axis"),
        ("weld-seam", "DOM and seamless have none", "tube_makes.csv", "dom,ASTM A513 Type 5 (DOM),1,steel,none"),
        ("rule-books", "Formula SAE want a CLR of at least 3 x OD", "rulebook.csv", "CLR of any bend >= 3 x OD"),
        ("rule-books", "ASME B31.1 wants extra wall ordered for bends", "rulebook.csv", "order thickness before bending"),
        ("aluminium-t6", "another mill's tube, or an extrusion, may snap", "materials.csv", "snaps lot to lot; ask for T4 or O"),
        ("ovality", "boiler tube practice", "rulebook.csv", "departure from circularity of tube bends"),
        ("d-of-bend", "some people count D as the nominal size", "rulebook.csv", "'diameter' = NOMINAL for pipe"),
    ],
)  # fmt: skip
def test_a_claim_stands_in_its_source(name: str, claim: str, table_name: str, row_has: str) -> None:
    assert claim in " ".join(said(name).split())
    data = resources.files("bendreply.rules").joinpath("data", table_name).read_text("utf-8")
    assert row_has in data.replace('"', "")


def test_every_source_key_of_an_answer_is_on_record() -> None:
    known = resources.files("bendreply.rules").joinpath("data", "SOURCES.md").read_text("utf-8")
    for answer in TOLD:
        assert len(answer.source) > 20, answer.name
        for key in re.findall(r"\bS\d\d\b", answer.source):
            assert re.search(rf"\b{key}\b", known), (answer.name, key)


def test_what_has_no_source_says_so() -> None:
    assert "no published figure" in said("mandrel-life")
    assert "no published comparison" in said("lubricant")
    assert "no one published figure" in said("wiper-die")
    assert "no published figure was found" in said("mandrel-size")


@pytest.mark.parametrize("name", ["cracking", "aluminium-t6", "rule-books", "wall-thinning"])
def test_what_touches_safety_leaves_it_to_whom_it_belongs(name: str) -> None:
    assert re.search(r"for the (?:part's designer|code|rule book)|designer", said(name))


# -- the asker's own figures ---------------------------------------------------------------------

REQUEST = SizeRequest(
    od_mm=2 * INCH,
    wall_mm=D("0.065") * INCH,
    clr_mm=6 * INCH,
    angle_deg=D(90),
    material=Material.STAINLESS_STEEL,
    grade="304",
)


def bend(request: SizeRequest = REQUEST) -> BendWords:
    shop = sample_shop()
    return BendWords(assess(request, shop), shop, BRITISH)


def test_the_figures_of_a_bend_are_the_engines() -> None:
    found = bend()
    assert found.tube == "2 x 0.065 in"
    assert found.wall_factor == "30.8"  # 2 / 0.065 = 30.77
    assert found.d_of_bend == "3.0"
    assert found.stretch == "16.7"  # 100 / 6
    # 3 D: TEMA 1/13 = 7.7 %, B31.1 order factor 1 - 1/1.25 = 20 %.
    assert found.thinning == "8 to 20"
    assert found.wall_left == "0.052 to 0.06 in (1.32 to 1.52 mm)"  # 0.065 x 0.8, x 12/13
    assert found.clamp == "6 in (152.4 mm)"  # 3 x 2
    # pi x 6 x 90 / 180 + 2 x 2 = 13.42 in
    assert found.pressure_die == "13.4 in (341 mm)"
    assert found.smallest_clr == "5 in (127 mm)"  # 2.5 x 2
    assert found.thinnest_wall == "0.067 in (1.7 mm)"  # 2 / 30 = 0.0667, 1.693 mm, rounded up
    assert found.boiler_limit == "6.7"  # 20 / 3
    assert found.need == "needed"  # wall factor above 20
    low, high = (D(end) for end in found.springback.split(" to "))
    assert D("0.5") < low < high < D("3")


def test_a_thinnest_wall_is_never_rounded_below_the_limit() -> None:
    for thousandths in range(500, 3000, 37):
        od = D(thousandths) / 1000 * INCH
        words = bend(SizeRequest(od_mm=od)).thinnest_wall
        inches = D(words.split(" in")[0])
        mm = D(re.search(r"\(([\d.]+) mm\)", words)[1])  # type: ignore[index]
        assert inches * INCH >= od / 30
        assert mm >= od / 30


def test_what_is_not_known_is_left_out() -> None:
    empty = BendWords(None, None, BRITISH)
    properties = [n for n in dir(BendWords) if isinstance(getattr(BendWords, n), property)]
    assert len(properties) > 20
    assert all(not getattr(empty, name) for name in properties)
    only_od = bend(SizeRequest(od_mm=2 * INCH))
    assert only_od.smallest_clr
    assert not (only_od.wall_factor or only_od.springback or only_od.thinning or only_od.balls)


def reply(text: str) -> str:
    made = process(text_message(text, TODAY), sample_shop(), TEMPLATES).draft
    assert made is not None, text
    return made.body


ASKERS = [
    ("1.75 x .083", "4.5"), ("2 x .065", "6"), ("1.5 x .095", "4.5"), ("1 x .049", "3"),
    ("2.5 x .120", "10"), ("1.625 x .065", "5"), ("3 x .120", "9"), ("1.25 x .065", "4"),
    ("2.25 x .083", "7"), ("1.375 x .058", "4.125"),
]  # fmt: skip


@pytest.mark.parametrize(
    ("question", "key"),
    [
        ("How much will the wall thin on the outside of the bend with {} on {} clr?", "thins by"),
        ("How much does the outside stretch with {} on a {} clr?", "stretches by"),
        ("Where do I set the mandrel for {} stainless on {} clr?", "between shank and nose"),
        ("{} stainless, {} clr. How long does the clamp die need to be?", "The clamp wants"),
    ],
)
def test_ten_people_get_the_same_words_apart_from_their_figures(question: str, key: str) -> None:
    told = set()
    for asker in ASKERS:
        body = reply(question.format(*asker))
        (answer,) = [part for part in body.split("\n\n") if key in part]
        told.add(re.sub(r"\d[\d.]*(?: to [\d.]+)?", "#", answer))
    assert len(told) == 1


@pytest.mark.parametrize(
    "asked",
    [
        "What is a wall factor?", "can you explain the wall factor", "Was bedeutet Wandfaktor?",
        "hi, whats a wall factor", "Qu'est-ce que le facteur de paroi ?", "Please explain wall factor.",
        "How do you work out the wall factor?", "¿Qué es el factor de pared?",
        "meaning of wall factor?", "Could you tell me what wall factor means?",
    ],
)  # fmt: skip
def test_however_it_is_asked_the_answer_is_the_same(asked: str) -> None:
    assert said("wall-factor").strip() in reply(asked)


def test_the_asker_finds_his_own_figures() -> None:
    # 1.75 / 0.083 = 21.08; 4.375 = 2.5 x 1.75
    assert "Your 1.75 x 0.083 in has 21.1." in reply("What is the wall factor of 1.75 x .083?")
    assert "4.375 in" in reply("What is the smallest radius you can do with 1.75 OD tube?")


def test_a_doubtful_size_gets_no_figures_of_its_own() -> None:
    text = reply("How much does the wall thin, about 1.75 or maybe 2 OD, .083 wall, 6 clr?")
    assert "3 D bend the wall thins by 8 to 20 %" in text


# -- spelling, and nothing said twice ------------------------------------------------------------


@pytest.mark.parametrize("answer", TOLD, ids=lambda a: a.name)
def test_an_answer_is_spelled_as_the_shop_spells(answer: Any) -> None:
    for words, foreign in ((BRITISH, "aluminum|centerline"), (AMERICAN, "aluminium|centreline")):
        facts = Facts(first_name="", shop=shop_words(sample_shop()), words=words).as_variables()
        text = TEMPLATES.render(f"answers/{answer.name}.md", facts)
        assert not re.search(foreign, text, re.IGNORECASE)


@pytest.mark.parametrize("answer", TOLD, ids=lambda a: a.name)
@pytest.mark.parametrize("size", ["1.75 x .095 DOM 5.25 clr", "2 x .049 304 4 clr", "1.6 x .083 3003"])
def test_a_reply_with_sizes_says_no_sentence_twice(answer: Any, size: str) -> None:
    from bendreply.intake.drafting import draft
    from bendreply.intake.model import Kind, OwnText, Question
    from bendreply.intake.own_text import mask
    from bendreply.intake.reading import read

    shop = sample_shop()
    message = text_message(f"Please quote a mandrel, {size}.", TODAY)
    own: OwnText = mask(message)
    assessments = tuple(assess(one, shop, today=TODAY) for one in read(own, message).requests)
    asked = (Question(surface="?", answer=answer.name),)
    made = draft(message, Kind.SIZES, assessments, asked, own, shop)
    assert made is not None
    sentences = [s.strip() for s in re.split(r"(?<=[.:?])\s", made.body) if len(s.split()) > 3]
    assert len(sentences) == len(set(sentences))
    for fact in (r"wall factor [\d.]+, our limit", r"our limit is", r"Our own limit"):
        assert len(re.findall(fact, made.body, re.IGNORECASE)) <= 1
    assert len(made.body.split()) < 250
