"""The value that a sender leans to; what was bought before; radii for several; 'same radius'."""

from __future__ import annotations

from decimal import Decimal

import pytest

from .support import read_text

WALL = "Mandrel for 1.5 tube, 304, 4.5 clr. "


@pytest.mark.parametrize(
    ("said", "first"),
    [
        ("Wall is .065 or .083. I think .083.", "2.1082"),
        ("Wall is .065 or .083, probably the .083.", "2.1082"),
        ("Wall is .065 or .083, most likely .065.", "1.651"),
        ("I think .065 or .083 wall.", "1.651"),
        ("Wall is .065 or .083. I think you can tell me.", "1.651"),
    ],
)
def test_the_likelier_value_comes_first_and_stays_in_doubt(said: str, first: str) -> None:
    (size,) = read_text(WALL + said)
    doubt = size.doubt_on("wall")
    assert doubt is not None
    assert len(doubt.readings) == 2
    assert size.wall_mm == doubt.readings[0] == Decimal(first)


def test_the_other_value_is_no_figure_in_inches() -> None:
    (size,) = read_text("Dorn für Rohr 38, 1.4301, R 76. Wand 1,5 oder 2, wahrscheinlich 2.")
    doubt = size.doubt_on("wall")
    assert doubt is not None
    assert doubt.readings == (2, Decimal("1.5"))  # and neither 2 in nor 50.8 mm


def test_what_was_bought_before_is_never_stated_as_wanted() -> None:
    sizes = read_text(
        "El año pasado os compramos el mandril de 40 x 1,5. Ahora el cliente quiere el mismo tubo "
        "de 40 con pared de 2,5, acero S275, radio 120. Haced uno por favor."
    )
    old = next(size for size in sizes if size.wall_mm == Decimal("1.5"))
    assert old.doubt_on("wall")
    assert any(size.wall_mm == Decimal("2.5") for size in sizes)


@pytest.mark.parametrize(
    "text",
    [
        "Le pedimos un mandril de 40 x 1,5, R 120, inox, por favor.",
        "Os pedimos el precio de un mandril de 40 x 1,5, R 120, inox.",
        "Os compramos un mandril de 40 x 1,5, R 120, inox. Haced otro igual.",
        "Os compramos un mandril de 40 x 1,5, R 120, inox. Queremos lo mismo, dos más.",
        "Os compramos un mandril de 40 x 1,5, R 120, inox y se ha roto. Necesitamos otro.",
    ],
)
def test_a_size_alone_is_wanted_whatever_was_bought(text: str) -> None:
    (size,) = read_text(text)
    assert (size.od_mm, size.wall_mm, size.clr_mm) == (40, Decimal("1.5"), 120)
    assert not size.doubts


@pytest.mark.parametrize(
    "text",
    [
        "We bought mandrels from you for 1.5 x .065 304 on 4.5 clr and 2 x .065 304 on 6 clr. "
        "Quote both again please.",
        "Wir haben bei Ihnen Dorne für 40 x 1,5 R 120 und 50 x 2 R 150, 1.4301 gekauft. "
        "Bitte beide nochmals anbieten.",
    ],
)
def test_both_again_loses_neither(text: str) -> None:
    assert len(read_text(text)) == 2


TUBES = "Mandrels, 304, mm:\n30 x 1.5\n40 x 1.5\n50 x 1.5\n\n"


@pytest.mark.parametrize(
    ("said", "radii"),
    [
        ("CLR 60 for the first two and 100 for the last.", (60, 60, 100)),
        ("60 mm radius on the first two, 100 on the others.", (60, 60, 100)),
        ("Rayon 60 mm pour les deux premiers, 100 mm pour le dernier.", (60, 60, 100)),
        ("60 mm clr for the first, 100 mm clr for the last two.", (60, 100, 100)),
        ("CLR 60 for the first three.", (60, 60, 60)),
    ],
)
def test_radii_for_several_of_a_list(said: str, radii: tuple[int, ...]) -> None:
    assert tuple(size.clr_mm for size in read_text(TUBES + said)) == radii


@pytest.mark.parametrize(
    ("said", "radii"),
    [
        ("de ene keer hartradius 150 mm en de andere keer 200 mm", (150, 200)),
        ("einmal Radius 150 mm und einmal 200 mm", (150, 200)),
        ("une fois rayon 150 mm et une autre fois 200 mm", (150, 200)),
        ("clr 150 and sometimes 200", (150, 200)),
        ("clr 150, once a week we do 200 of them", (150,)),
        ("clr 150 and once 60 deg", (150,)),
    ],
)
def test_two_radii_at_two_times(said: str, radii: tuple[int, ...]) -> None:
    sizes = read_text(f"Mandrel for tube 48.3 x 2.6 S235, {said}.")
    assert tuple(size.clr_mm for size in sizes) == radii


@pytest.mark.parametrize(
    ("text", "radius"),
    [
        (
            "We bought a mandrel from you for 1.25 x .120 on a 4.5 CLR. Now we need one for "
            "1.25 x .083 DOM, same CLR.",
            "114.3",
        ),
        (
            "Wir haben schon einen Dorn für 30 x 2, R 90. Jetzt brauchen wir einen für 30 x 1,5, "
            "gleicher Radius, E235.",
            "90",
        ),
        (
            "We already have a mandrel for 1.25 x .120 on a 4.5 CLR. Now one for 2 x .083 DOM.",
            None,
        ),
        (
            "We have mandrels already for 1.25 x .120 on a 4.5 CLR and 1.5 x .120 on 5 CLR. Now "
            "need one for 1.25 x .083 DOM, same CLR.",
            None,
        ),
        ("3/8 x .035 5052 aluminum, it flattens at 1-1/8 radius. A mandrel for it pls.", "28.575"),
        ("Tube 1.5 x .065 304, clr 4.5. It flattens to 1.4 in the bend. One mandrel.", "114.3"),
    ],
)
def test_the_radius_is_that_of_the_words(text: str, radius: str | None) -> None:
    (size,) = read_text(text)
    assert size.clr_mm == (None if radius is None else Decimal(radius))


@pytest.mark.parametrize(
    "said",
    ["mag de straal hooguit 150 mm zijn", "radio como mucho 150 mm", "Radius allenfalls 150 mm"],
)
def test_a_limit_is_no_value(said: str) -> None:
    (size,) = read_text(f"Buis 60,3 x 2,9 S235, {said}.")
    assert size.clr_mm == 150
    assert size.doubt_on("clr")
