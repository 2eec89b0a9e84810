"""A radius that no word calls one: told by a verb or a noun of bending, by a die, by an answer."""

from __future__ import annotations

from decimal import Decimal

import pytest

from .support import doubted, read_text

INCH = Decimal("25.4")


def _clr(text: str) -> tuple[Decimal | None, bool]:
    """The one size's radius, and whether it is doubted."""
    (size,) = read_text(text)
    return size.clr_mm, "clr" in doubted(size)


@pytest.mark.parametrize(
    ("text", "clr"),
    [
        ("Tube de 22 mm, paroi 1,2, et je le cintre à 44.", 44),
        ("22 x 1,2 que nous cintrons à 55, quel prix ?", 55),
        ("Il tubo è 16 x 1. Piego a 32.", 32),
        ("Corrimano 48,3 x 2 girato a 145. Quanto costa?", 145),
        ("Tubo 42 x 2, lo doblamos a 126. ¿Precio?", 126),
        ("Buis 50 x 1,5. Ik buig hem 75.", 75),
        ("Buis 50 x 1,5, gebogen op 110, prijs?", 110),
        ("Rohr 25 x 1,5 gebogen auf 62,5. Was kostet der Dorn?", Decimal("62.5")),
        ("50,8 x 1,5 a catalogo? La curva sarà 76.", 76),
        ("Prezzo per 50,8 x 1,5, la curva è 102.", 102),
        ("Dorn 30 x 1,5 bitte. Radius wäre 60.", 60),
        ("Mandrin 30 x 1,5 svp. Le rayon serait 75.", 75),
        ("Doorn 30 x 1,5 graag. De straal wordt 75.", 75),
        ("Mandril 44,5 x 2,6, dado de 152.", 152),
        ("Doorn voor 40 x 2,5, matrijs 120.", 120),
        ("Dorn 40 x 2,5, Biegesegment 140.", 140),
        ("Mandrin 63,5 x 1,5, fibre neutre 95.", 95),
        ("27,9 buiten, 1,25 wand, hart op 58.", 58),
        ("Mandril 32 x 1,5, curva al eje 64.", 64),
        ("Bochten uit 33,7 x 2, hartmaat 67, prijs van een doorn?", 67),
        ("Doorn voor buis 48,3 x 2, plooistraal 72.", 72),
        ("Dorn für 40 x 1,5, Scheibenradius 80.", 80),
        ("Dorn 25,4 x 1,6. Radius wär 75.", 75),
        ("Got a wrinkle problem at R57 with 38 x 1.2. Price?", 57),
    ],
)
def test_a_radius_is_told_by_a_word_of_bending(text: str, clr: int | Decimal) -> None:
    assert _clr(text) == (Decimal(clr), False)


@pytest.mark.parametrize(
    ("text", "inches"),
    [
        ("1.5 x .049 wrinkles at 4.5 CLR; what can you offer?", "4.5"),
        ("Can you do 1.75 x .049 without wrinkles at 2.625?", "2.625"),
        ("I order a 1.5 x .120, do you cut it for a particular radius? It's 5.", "5"),
        ("Jo: mandrel, 1.5 x .120\nAgent: And the centreline radius please?\nJo: five inch", "5"),
        ('Jo: mandrel, 1.5 x .120\nAgent: What radius?\nJo: 5"\nAgent: How many?\nJo: one', "5"),
        ("Mandrel for 1.5 x .049 titanium, the die says 4.5 on it.", "4.5"),
        ("Price for 1 x .083 ERW; the die is borrowed and the die reads 3.5.", "3.5"),
        ("What goes in is 2-1/8 x .065 and what it goes round is 6-3/8. Price?", "6.375"),
        ("Tube size 1-1/4 inch, 11 gauge. Bend size 4 inch.", "4"),
        ("Any chance of 1-3/8 x .058? 4.125 is the bend radius.", "4.125"),
    ],
)
def test_the_same_in_inches(text: str, inches: str) -> None:
    assert _clr(text) == (Decimal(inches) * INCH, False)


@pytest.mark.parametrize(
    ("text", "inches"),
    [
        ('2-1/8" x .049" titanium with a 4-1/4" bend.', "4.25"),
        ('1-1/4" tube, .083" wall, 4" bend. What do I buy?', "4"),
        ("Is .028 too thin with 1.125 OD on a 3 inch bend?", "3"),
        ("1-1/4 x .065 polished 316 with 3-3/4 corners, price?", "3.75"),
    ],
)
def test_how_large_a_bend_is_may_be_its_radius(text: str, inches: str) -> None:
    """It may be its diameter or its length, too: taken, and asked about."""
    assert _clr(text) == (Decimal(inches) * INCH, True)


@pytest.mark.parametrize(
    "text",
    [
        "Tube 40 x 2 gebogen auf 90, was kostet ein Dorn?",
        "Rohr 38 x 1,5 wird um 90 gebogen, bitte Preis.",
        "Tubo 38 x 1,5 doblado a 90 con máquina CNC, ¿precio?",
        "Buis 28 x 1,5, ik buig hem 90.",
        "25 x 2, la curva è 90, prezzo?",
        "38 x 1,5, coude 90, prix ?",
    ],
)
def test_what_may_be_an_angle_is_in_doubt(text: str) -> None:
    clr, in_doubt = _clr(text)
    assert clr is None or in_doubt


@pytest.mark.parametrize(
    "text",
    [
        'Mandrel for 2 x .065 with two 4" bends',
        'Quote 1.5 x .120 tube, the bend is 12" from the end',
        "Dorn für 25 x 2, wir biegen auf 4 Maschinen",
        "Mandrin 22 x 1, on le cintre à 45°",
        "Mandrin 22 x 1, on le cintre à 3 endroits",
        "Mandril 42 x 2, lo doblamos a 60 grados",
        "Doorn 28 x 1,5, matrijs 28",
        "Doorn 28 x 1,5, ik buig hem 3 keer",
        "Mandrel for 1.5 x .065, wrinkles at 2 places",
        "Mandril 42 x 2, dado de 42",
        "Mandrino 38 x 1,5, curvato su 3 piani",
        "Mandrel 1.25 x .083, flattens at 1.1 across",
        '1.5 x .083 with a 3" bend at each end, 12" long, need a mandrel',
        "Mandrel for 1.25 x .065, bend speed 4",
        "Mandrel for 1.75 x .065, the die says 1.75",
        "Mandrel for 1.5 x .065, the die says 2 on the left and 3 on the right",
        "Mandrel for 1.5 x .065, the frame has 4 corners",
    ],
)
def test_other_figures_beside_a_bend_are_no_radius(text: str) -> None:
    assert _clr(text)[0] is None


@pytest.mark.parametrize(
    "text",
    [
        '1.75 x .095 tube, 6" bend spacing, need a mandrel',
        '2 x .083 bent at 8" from the end, price?',
        'Exhaust 2.5 x .065, also do a 3" bend?',
        "Mandrel for 2 x .065. Do you have a radius gauge? It's 5.",
    ],
)
def test_what_is_spoken_of_as_a_radius_is_asked_about(text: str) -> None:
    """The learnt reader fills the gap with it; none is sure."""
    radius, in_doubt = _clr(text)
    assert radius is None or in_doubt


@pytest.mark.parametrize(
    "text",
    [
        "Außen 19\nWand 1\nRadius 38",
        "por fuera 19, pared 1, radio 38",
        "di fuori 19, parete 1, raggio 38",
        "Van buiten 19, wand 1, straal 38",
        "Zuschnitt 650 mm, Rohr 19 x 1, R38",
        "19 x 1 R 38, tramo de 400 mm",
    ],
)
def test_an_outside_before_a_wall_is_the_od_and_a_cut_is_none(text: str) -> None:
    (size,) = read_text(text)
    assert (size.od_mm, size.wall_mm, size.clr_mm) == (19, 1, 38)


@pytest.mark.parametrize(
    "text",
    [
        "Give me a shout about 2.0 x .083 chromo, 6.0 clr.",
        "Please call about 2.0 x .083, 6.0 clr.",
        "A project coming together around 2.0 x .083 4130, 6.0 clr.",
    ],
)
def test_a_matter_to_talk_about_is_no_hedge(text: str) -> None:
    (size,) = read_text(text)
    assert size.od_mm == Decimal("50.8")
    assert not doubted(size)
