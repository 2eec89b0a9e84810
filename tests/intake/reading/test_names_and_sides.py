"""Trade names of copper and conduit, radii told to a side, finishes of a side, goods beside the
tooling, days with a slash: lengths in mm, worked out by hand."""

# ruff: noqa: E501 - a row of a table stands on one line

from __future__ import annotations

from datetime import date
from decimal import Decimal

import pytest

from bendreply.rules.request import Material, SizeRequest

from .support import read_text


def one(text: str) -> SizeRequest:
    (request,) = read_text(text)
    return request


@pytest.mark.parametrize(
    ("text", "od"),
    [
        # The real OD of US water tube is 1/8 in over its trade size.
        ('Coils out of copper, 3/4" type L, .045 wall, 2.25" CLR. One mandrel.', "22.225"),
        ('Need one mandrel: 5/8" type L copper, 1.5" CLR', "19.05"),
        ("One mandrel: copper, 3/4 nominal, .045 wall, 2.25 CLR", "22.225"),
        ("One mandrel: copper 3/4 L, .045 wall, 2.25 CLR", "22.225"),
        ("One mandrel: 2 inch copper DWV, type M, 5 inch centerline", "53.975"),
        ('Tube: copper, type K\nSize: 3/4"\nCLR: 2.25\nQty: 1 mandrel', "22.225"),
    ],
)
def test_copper_is_called_by_its_trade_size(text: str, od: str) -> None:
    request = one(text)
    assert request.od_mm == Decimal(od)
    # A wall that only the type tells hangs on the size.
    assert {"od"} <= {doubt.field for doubt in request.doubts} <= {"od", "wall"}


@pytest.mark.parametrize(
    ("text", "wall", "sure"),
    [
        # ASTM B88, as two published tables have it: 3/4 L .045, M .032, K .065; 1 K .065; 2 L .070.
        ('Mandrel for 3/4" type L copper, 3" CLR please', "1.143", False),
        ('One mandrel: bent 3/4" type M copper, 2" radius', "0.8128", False),
        ("Can you quote a 1 in type K copper tube mandrel, 4 inch CLR", "1.651", False),
        ("copper 3/4 L, 2.25 CLR, one mandrel", "1.143", False),
        ('Tube: copper, type K\nSize: 3/4"\nCLR: 2.25\nQty: 1 mandrel', "1.651", False),
        ("Need one mandrel for 7/8 OD copper, type L, 2.25 CLR", "1.143", False),
        ("One mandrel, copper type L, 2.125 OD, 5 CLR", "1.778", False),
        ('One mandrel: copper, 3/4" type L, .049 wall, 2.25" CLR', "1.2446", True),
    ],
)
def test_the_type_of_copper_tube_says_its_wall(text: str, wall: str, sure: bool) -> None:
    request = one(text)
    assert request.wall_mm == Decimal(wall)
    assert (request.doubt_on("wall") is None) == sure


@pytest.mark.parametrize(
    "text",
    [
        '5/8 type M copper, 2" CLR, one mandrel',  # B88 has no such size
        '3/4 copper pipe, 2" CLR, one mandrel',  # no type is told
        "One mandrel: 2 inch copper DWV, type M, 5 inch centerline",  # drainage tube is thinner
        "Mandrel for 7/8 OD copper tube, 3 clr. It is not type L.",
        "Not sure if type L or thinner. Mandrel for 7/8 OD copper tube, 3 clr.",
        "Mandrel for 7/8 OD copper tube, 3 clr. We have an old type M bender.",
        "3/4 copper, type L or M, 3 clr",
        "We bend 50 m copper tube a week. Need a mandrel for 7/8 OD tube, 3 clr.",
        "Mandrel for 1-1/8 OD stainless tube, 4 clr. We already have the copper type L one.",
        'One mandrel, 3/4 copper, 2" CLR. Could be type L or type M.',
    ],
)
def test_no_wall_is_made_up_for_copper_tube(text: str) -> None:
    assert one(text).wall_mm is None


@pytest.mark.parametrize(
    ("text", "od"),
    [
        ("Mandrel for 7/8 OD copper type L, .045 wall, 2.25 CLR", "22.225"),
        ('3/4 EMT. It mikes .922 OD and .049 wall. 2" centerline. Two mandrels.', "23.4188"),
        ('Two mandrels for 3/4" EMT (.922 od x .049 wall) on a 2" clr.', "23.4188"),
        ("Two mandrels: .922 OD (3/4 EMT), .049 wall, 2 in clr.", "23.4188"),
        ("Two mandrels: 7/8 OD, that's 3/4 type L copper, .045 wall, 2-1/4\" clr.", "22.225"),
        ("Mandrel 1.5 x .065 304 stainless, 4 clr. Not for the copper type L job.", "38.1"),
    ],
)
def test_what_is_measured_beside_its_name_is_sure(text: str, od: str) -> None:
    request = one(text)
    assert request.od_mm == Decimal(od)
    assert not request.doubts


@pytest.mark.parametrize(
    ("text", "clr"),
    [
        # To the inside, half of the OD of 20 is added; to the outside, taken away.
        ("Bräuchte einen Dorn, Rohr 20 x 1,5. Innen soll der Radius 40 sein.", "50"),
        ("Bräuchte einen Dorn, Rohr 20 x 1,5. Außen soll der Radius 60 sein.", "50"),
        ("Need a mandrel, 20 x 1.5 tube. Inside, the radius has to be 40 mm.", "50"),
        ("Un mandrin, tube 20 x 1,5. À l'intérieur le rayon doit être de 40.", "50"),
        ("Un mandril, tubo 20 x 1,5. Por dentro el radio debe ser 40.", "50"),
        ("Un mandrino, tubo 20 x 1,5. All'interno il raggio deve essere 40.", "50"),
        ("Een doorn, buis 20 x 1,5. Aan de binnenkant moet de straal 40 zijn.", "50"),
        # A finish is the tube's.
        ("1 Dorn, Rohr 20 x 1,5, Radius 50, innen poliert.", "50"),
        ("1 Dorn, Rohr 20 x 1,5, R 50, außen verzinkt und innen blank.", "50"),
        ("1 mandrel, pipe 20 x 1.5, radius 50, polished on the inside.", "50"),
        ("1 mandrel, pipe 20 x 1.5, radius 50, galvanized outside.", "50"),
        ("1 mandrel, pipe 20 x 1.5 polished on the inside, radius 50.", "50"),
        ("1 mandrin, tube 20 x 1,5, rayon 50, intérieur poli.", "50"),
        ("1 mandril, tubo 20 x 1,5, radio 50, pulido por dentro.", "50"),
        ("1 mandrino, tubo 20 x 1,5, raggio 50, lucidato all'interno.", "50"),
        ("1 doorn, buis 20 x 1,5, straal 50, binnen gepolijst.", "50"),
        # A multiple beside a radius only tells it again.
        ("One mandrel, 20 x 1.5, CLR 60 (it is about 3D but take 60).", "60"),
        ("Ein Dorn 20 x 1,5, R = 3 x Außendurchmesser, also 60,0 mm.", "60"),
    ],
)
def test_the_side_of_a_radius(text: str, clr: str) -> None:
    request = one(text)
    assert request.clr_mm == Decimal(clr)
    assert not request.doubts


@pytest.mark.parametrize(
    "words",
    [
        "Also a box of M8 bolts and 2 m of the 20x20.",
        "Also 3 lengths of 40x40 box and a tin of paint.",
        "Außerdem eine Schachtel M8 Schrauben und 2 m vom 20x20.",
        "Aussi une boîte de vis M8 et 2 m de 20x20.",
    ],
)
def test_goods_beside_the_tooling_are_no_size(words: str) -> None:
    assert one(f"I need a mandrel, 30 x 2 in 304, CLR 90, by 18 December.\n{words}").od_mm == 30


def test_another_mandrel_is_no_goods() -> None:
    text = "I need a mandrel, 30 x 2, CLR 90. Also a mandrel for the 42 x 2, R 120."
    assert [request.od_mm for request in read_text(text)] == [30, 42]


@pytest.mark.parametrize(
    "words",
    ["Consegna: 29/01.", "Entrega: 13/11", "Livraison : 29/11.", "Levering: 29/1", "Liefertermin: 29/01.",
     "Delivery: 13/11.", "Needed by 29/01.", "livré pour le 13/11", "geleverd voor 13/11"],
)  # fmt: skip
def test_a_day_of_delivery_is_no_size(words: str) -> None:
    request = one(f"One mandrel, tube 40x2, R 100.\n{words}")
    assert (request.od_mm, request.wall_mm) == (40, 2)


def test_an_inch_fraction_behind_a_wish_is_no_day() -> None:
    assert one("Mandrel needed for 3/4 tube, .065 wall, 2 CLR.").od_mm == Decimal("19.05")


@pytest.mark.parametrize(
    ("text", "material"),
    [
        ("1 дорн: труба 57х3,5, радиус 150 мм", None),
        ("1 дорн: труба 57 х 3,5 мм, сталь 20, радиус 150 мм", Material.CARBON_STEEL),
        ("1 дорн: труба 57х3,5 ст. 20, радиус 150 мм", Material.CARBON_STEEL),
        ("1 дорн: труба 57х3,5, сталь 12Х18Н10Т, радиус 150 мм", Material.STAINLESS_STEEL),
        ("1 дорн: труба нержавеющая 57х3,5, радиус 150 мм", Material.STAINLESS_STEEL),
        ("trzpień do rury 57x3,5, gat. 1.4301, promień 150 mm", Material.STAINLESS_STEEL),
    ],
)
def test_russian_and_polish(text: str, material: Material | None) -> None:
    request = one(text)
    assert (request.od_mm, request.wall_mm, request.clr_mm) == (57, Decimal("3.5"), 150)
    assert request.material is material


@pytest.mark.parametrize(
    ("text", "od", "clr"),
    [
        (
            "A mandrel, 2-1/2 x .083, 5 in centerline. Oops no. It is 2-3/8. Wall is right.",
            "60.325",
            "127",
        ),
        ('A mandrel, 2.5 x .083, 5" CLR. Oops, that should be 2.375.', "60.325", "127"),
        ("Ein Dorn für 50 x 2, R 100. Nein, Moment, es sind 48,3. Wand stimmt.", "48.3", "100"),
    ],
)
def test_the_words_of_a_whole_size_name_nothing_put_right(text: str, od: str, clr: str) -> None:
    request = one(text)
    assert (request.od_mm, request.clr_mm) == (Decimal(od), Decimal(clr))
    assert not request.doubts


def test_a_whole_number_that_puts_something_right_is_asked_about() -> None:
    assert one("A mandrel, 1.75 x .083, 3.5 centerline. Oops no. It is 4.").doubts


def test_clamp_dies_that_are_there_own_no_radius() -> None:
    text = (
        "Wir brauchen Dorne für Rohr 42,4 x 2,0. Es gibt drei Radien, jeweils\n"
        "Mitte Rohr: 64 / 85 / 127. Je Radius ein Dorn, die Spannbacken haben wir schon."
    )
    assert [request.clr_mm for request in read_text(text)] == [64, 85, 127]


def test_a_day_at_the_end_of_a_sentence_ends_it() -> None:
    assert one("Mandrel 30 x 2, R 60 by 18 December.\nThanks").needed_by in (
        None,
        date(2026, 12, 18),
    )


@pytest.mark.parametrize(
    "finish",
    [
        "innen roh", "innen leicht rostig", "innen unbehandelt", "innen und außen roh",
        "inside raw", "inside as drawn", "inside slightly rusty", "not deburred inside",
        "intérieur brut", "intérieur légèrement peint", "interior en bruto", "interno grezzo",
        "binnenkant onbehandeld", "binnen licht roestig",
    ],
)  # fmt: skip
def test_how_a_side_was_left_is_no_side_of_the_radius(finish: str) -> None:
    assert one(f"Tube 30 x 2 mm, {finish}, R57").clr_mm == 57
