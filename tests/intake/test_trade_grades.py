"""Grades by the standards of several countries, and materials that are only thought of."""

from __future__ import annotations

import pytest

from bendreply.rules.request import Material

from .reading.support import read_text

GRADES = {
    Material.STAINLESS_STEEL: "1.4509 1.4512 1.4513 1.4003 409 430 439 441 3CR12 X2CrTiNb18 2205",
    Material.CARBON_STEEL: "S235JRH E220 E235 E355 C350 C350L0 C250 CFS3 CEW5 ERW1 S700MC DP600 "
    "HX340LAD AS1163 L245NB HFS4",
    Material.ALLOY_STEEL: "25CrMo4 34CrMo4 1.7216 SCM430 4140",
    Material.ALUMINIUM: "5754 5083 6082 AlMgSi AlMgSi0.5 AlMgSi1F31 HE30 7020",
    Material.COPPER: "CW024A CW352H CuNi10Fe1Mn",
    Material.BRASS: "CZ126 CZ108 CW508L CW702R Ms60",
}


@pytest.mark.parametrize(
    ("grade", "family"),
    [(grade, family) for family, all_ in GRADES.items() for grade in all_.split()],
)
def test_a_grade_by_its_standard(grade: str, family: Material) -> None:
    (request,) = read_text(f"Need a mandrel for tube 38 x 2 mm, {grade}, centreline radius 76 mm")
    assert request.material is family
    assert not request.doubts


@pytest.mark.parametrize(
    ("words", "family"),
    [
        ("Grade 250 pipe", Material.CARBON_STEEL),
        ("grade 350L0", Material.CARBON_STEEL),
        ("CuNi 90/10", Material.COPPER),
        ("cupro-nickel 90/10", Material.COPPER),
        ("stainless 3CR12", Material.STAINLESS_STEEL),
        ("aluminised", Material.CARBON_STEEL),
    ],
)
def test_a_material_in_words(words: str, family: Material) -> None:
    (request,) = read_text(f"Mandrel: 44.5mm OD, 2mm wall, {words}\nCentre line radius: 90mm")
    assert request.material is family


@pytest.mark.parametrize("code", ["4CQ15", "3ZX12", "7F12", "8KT4B", "2PQ7"])
def test_a_code_that_begins_with_a_figure_is_no_wall(code: str) -> None:
    (request,) = read_text(f"Tube: 44.5mm OD, 2mm wall, {code}\nCentre line radius: 90mm")
    assert (str(request.od_mm), str(request.wall_mm)) == ("44.5", "2")


@pytest.mark.parametrize("size", ["25R50 s2", "2pcs 25x2 R50", "25mmx2mm R50", "25od 2wall 50clr"])
def test_figures_run_into_their_roles_stay_a_size(size: str) -> None:
    assert any(request.clr_mm is not None for request in read_text(f"mandrel {size}"))


BESIDE_A_COUNT = [
    ('mandrel 1.5 OD x .065 x 3" CLR 304 qty 2', Material.STAINLESS_STEEL),
    ('1.5 OD x .065, 4.5" CLR, 316 qty 1', Material.STAINLESS_STEEL),
    ("1.75 x .095 x 5.25 CLR 4130 qty 2", Material.ALLOY_STEEL),
    ("38 x 1.5 R57 304 qty: 2", Material.STAINLESS_STEEL),
    ("60 x 2 tube CLR 304 qty 2", None),
    ("60 x 2 mm tube, radius 316 qty 2", None),
]


@pytest.mark.parametrize(("text", "family"), BESIDE_A_COUNT)
def test_a_number_before_qty_is_a_grade_unless_it_measures(
    text: str, family: Material | None
) -> None:
    (request,) = read_text(text)
    assert request.material is family
    assert request.quantity == int(text[-1])


A, B, C = "Mandrel for 1.5 x .065 mild steel, 4.5 CLR. ", "Rohr 38 x 1,5 Stahl, R 57. ", "38 x 1,5 "
LATER = [
    A + "And later maybe stainless in the same size, if that matters.",
    A + "We may go to stainless later.",
    A + "Next year maybe in aluminium too.",
    A + "Possibly stainless down the road.",
    A + "Some day we'd like to do 304 as well.",
    A + "Eventually we might run chromoly through it.",
    B + "Später vielleicht auch Edelstahl in der gleichen Abmessung.",
    B + "Irgendwann möchten wir auch Alu biegen.",
    C + "acier, R 57. Plus tard peut-être aussi en inox.",
    C + "acero al carbono, radio 57. Más adelante quizás también inoxidable.",
    C + "acciaio, raggio 57. Più avanti forse anche inox.",
    C + "staal, R 57. Later misschien ook rvs.",
]
NOT_LATER = [
    A + "Sometimes stainless.",
    A + "Stainless goes through it, too.",
    A + "First that, later stainless with the same mandrel, so it has to take both.",
    "Mandrel for 1.5 x .065, 4.5 CLR, mild steel or maybe stainless, not sure yet.",
    A + "It must do 304 later, that may come.",
]


@pytest.mark.parametrize("text", LATER)
def test_a_material_for_some_later_day_is_not_that_of_the_tube(text: str) -> None:
    (request,) = read_text(text)
    assert request.material is Material.CARBON_STEEL
    assert request.doubt_on("material") is None


@pytest.mark.parametrize("text", NOT_LATER)
def test_a_second_material_of_today_is_a_doubt(text: str) -> None:
    (request,) = read_text(text)
    assert request.doubt_on("material") is not None


def test_the_only_material_is_taken_though_it_is_for_later() -> None:
    (request,) = read_text("Mandrel for 1.5 x .065, 4.5 CLR. Later maybe in 304.")
    assert request.material is Material.STAINLESS_STEEL
