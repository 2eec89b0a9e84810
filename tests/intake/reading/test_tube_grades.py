"""Grades of steel tube as European standards name them; what only looks like one is none."""

from __future__ import annotations

from decimal import Decimal

import pytest

from bendreply.rules.request import Material

from .support import read_text

CS, AS, SS = Material.CARBON_STEEL, Material.ALLOY_STEEL, Material.STAINLESS_STEEL
GRADES = {
    # EN 10255, 10217-1, 10216-1, 10216-2, 10216-3, 10305, 10219, 10346, 10224, ISO 3183, NF A 49
    CS: (
        "S195T S195 P195TR1 P195TR2 P195GH P235TR1 P235TR2 P235GH P265TR1 P265GH P215NL P255QL"
        " P355N E155 E190 E195 E215 E220 E235 E235+N E255 E275 E320 E355 E370 E410 S235JRH S275J2H"
        " S355J2H S420MH S460NH S220GD S250GD+Z L235N L245NB L275 L290NB L355 L360NE L415ME TU37b"
        " St35 St37-2 1.0026 1.0107 1.0345 DC01"
    ).split(),
    AS: "16Mo3 13CrMo4-5 10CrMo9-10 10CrMo5-5 14MoV6-3 X10CrMoVNb9-1 25CrMo4 34CrMo4".split(),
    SS: "X5CrNi18-10 X2CrNiMo17-12-2".split(),
}


@pytest.mark.parametrize(
    ("grade", "family"), [(grade, family) for family, grades in GRADES.items() for grade in grades]
)
@pytest.mark.parametrize(
    "text",
    [
        "Ein Dorn für Stahlrohr 21,3 x 2,6 {}, R 55 Mitte.",
        "One mandrel, steel tube {}: 21.3 x 2.6 mm, centreline radius 55 mm.",
    ],
)
def test_the_family_of_a_tube_grade(text: str, grade: str, family: Material) -> None:
    (size,) = read_text(text.format(grade))
    assert size.material is family
    assert (float(size.od_mm or 0), float(size.wall_mm or 0)) == (21.3, 2.6)
    assert float(size.clr_mm or 0) == 55


@pytest.mark.parametrize("grade", ["S195T", "P235GH", "E235", "L245NB", "TU37b", "1.0026"])
def test_it_needs_no_other_word_for_steel(grade: str) -> None:
    (size,) = read_text(f"Doorn voor buis {grade}, 21,3 x 2,6, straal hart 55.")
    assert size.material is CS


@pytest.mark.parametrize("behind", ["St 37", "St 37-2", "St 35", "St 52"])
def test_the_wall_before_a_grade_with_a_gap_is_no_count(behind: str) -> None:
    (size,) = read_text(f"Ein Dorn für Rohr 42,4 x 2 {behind}, R 85 Mitte.")
    assert (size.wall_mm, size.material) == (2, CS)
    assert size.quantity == 1


@pytest.mark.parametrize(
    "words", ["Zeichnung S1950", "Los P200", "L1200", "L200", "L 355", "Halle E12", "2 St"]
)
def test_what_only_looks_like_a_grade(words: str) -> None:
    (size,) = read_text(f"Dorn für Rohr 21,3 x 2,6, {words}, R 55 Mitte.")
    assert size.material is None


BY_CONTENT = {
    Material.COPPER: "CuNi10Fe1.6Mn CuNi10Fe1,6Mn CuNi10Fe1Mn CuNi30Mn1Fe CuNi30Fe2Mn2".split(),
    Material.ALUMINIUM: "AlMg4.5Mn0.7 AlMg2Mn0,8 AlSi1MgMn AlZn5.5MgCu AlZnMgCu1.5".split(),
    Material.NICKEL_ALLOY: "NiCr15Fe NiCr22Mo9Nb".split(),
}


@pytest.mark.parametrize(
    ("grade", "family"),
    [(grade, family) for family, grades in BY_CONTENT.items() for grade in grades],
)
@pytest.mark.parametrize("text", ["Mandrel for {} pipe, 57 x 2", "Mandrel, pipe ({}):\n57 x 2"])
def test_a_grade_named_by_its_content(grade: str, family: Material, text: str) -> None:
    (request,) = read_text(text.format(grade))
    assert (request.od_mm, request.wall_mm, request.material) == (57, 2, family)
    assert request.grade == grade


@pytest.mark.parametrize("grade", ["1018", "1020", "1026", "4130", "6061", "3003", "304"])
@pytest.mark.parametrize(
    "line",
    [
        "Item 1   Mandrel   1.000 OD x .120 wall   {}     CLR 4.000   qty 1",
        "Item 1   Mandrel   1.000 OD   .120 wall   {}   radius 4.000   qty 1",
        "Item 1   Mandrel   1.000 x .120   {}   4.000 CLR   qty 1",
    ],
)
def test_a_grade_set_in_columns_is_no_radius(line: str, grade: str) -> None:
    (size,) = read_text(line.format(grade))
    assert size.clr_mm == Decimal("101.6")
    assert size.material is not None


@pytest.mark.parametrize("words", ["seamless 1010", "welded 1008", "DOM 1026"])
def test_a_number_behind_how_tube_is_made_is_its_steel(words: str) -> None:
    sizes = read_text(f"Mandrels, all {words}:\n 3/4 x .065  2-1/4 clr\n 1 x .095  3 clr\n")
    assert [size.material for size in sizes] == [Material.CARBON_STEEL] * 2
