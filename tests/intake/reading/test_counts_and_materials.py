"""Counts that size-names and discounts look like, and materials said in passing: our own mails."""

from __future__ import annotations

from datetime import date

import pytest

from bendreply.intake.reading.days.dates import find_needed_by
from bendreply.rules.request import Material

from .support import read_text

CS, AS, SS = Material.CARBON_STEEL, Material.ALLOY_STEEL, Material.STAINLESS_STEEL

COUNTS: tuple[tuple[str, tuple[int | None, ...]], ...] = (
    ("Brauchen einen 48er Dorn, Wand 2, R 100, Stahl, 2 Stück.", (2,)),
    ("Brauche 42er Dorne, 2 Stück, Wand 2, R 120.", (2,)),
    ("Bitte 3 20er Dorne, Wand 1,5, R 60.", (3,)),
    ("Bitte einen 3er Satz Dorne für 42 x 2, R 120.", (3,)),
    ("20er Dorn, Wandstärke 1,5, Radius 60, 4 Stück, V2A", (4,)),
    ("Wir haben schon einen 15er Dorn. Bitte einen Dorn für 18 x 1 Kupfer, R 54.", (1,)),
    ("Den 15er Dorn haben wir schon. Bitte noch einen für 18 x 1 Kupfer, R 54.", (1,)),
    ("De doorn werkt goed. Graag nog een voor 18 x 1 koper, straal 54", (1,)),
    ("Doorns voor twee buizen, 35 x 1,5 en 40 x 1,5, staal, straal 105. Van elk 1.", (1, 1)),
    ("Dorne für 35 x 1,5 und 40 x 1,5, R 105, Stahl. Von jedem 2.", (2, 2)),
    ("Mandriles para 35 x 1,5 y 40 x 1,5, radio 105. De cada uno 2.", (2, 2)),
    ("Mandrins pour 35 x 1,5 et 40 x 1,5, rayon 105. De chaque 1.", (1, 1)),
    ("Ein Dorn: Rohr 28, Wand 1,5, R 84.", (1,)),
    ("Un mandrin pour tube 28 x 1,5, rayon 84, inox. Merci", (1,)),
    ("A mandrel for 1.5 x .065, 4.5 clr. Two please.", (2,)),
    ("A mandrel for 1.5 x .065, 4.5 clr. And a mandrel for 2 x .065, 6 clr.", (1, 1)),
    ("A mandrel for 1.5 x .065, 4.5 clr is what we use today. Please quote 2 wipers.", (None,)),
    ("Prix avec remise à partir de 5 pièces ? Un mandrin 30 x 1,5, rayon 90.", (1,)),
    ("Korting vanaf 10 stuks? Graag 5 stuks doorn 30 x 1,5, straal 90.", (5,)),
    ("2 off mandrels for 1.5 x .065, 4.5 clr", (2,)),
    ("Seat is 15 off the ground. One mandrel for 1.5 x .065, 4.5 clr.", (1,)),
)


@pytest.mark.parametrize(("text", "counts"), COUNTS)
def test_what_is_counted(text: str, counts: tuple[int | None, ...]) -> None:
    assert tuple(size.quantity for size in read_text(text)) == counts


@pytest.mark.parametrize(
    ("said", "doubted"),
    [
        ("Qty 2, one spare.", True),
        ("2 pcs, one as spare.", False),
        ("Two mandrels plus one spare.", False),
        ("1 pc, one spare.", False),
    ],
)
def test_a_spare_behind_a_comma_may_be_one_of_them(said: str, *, doubted: bool) -> None:
    (size,) = read_text(f"Mandrel for 1.5 x .065 tube, 4.5 clr, 304. {said}")
    assert (size.doubt_on("quantity") is not None) == doubted


@pytest.mark.parametrize(
    "word",
    ["chrome moly", "chrome molly", "chromolly", "cromolly", "cro-mo", "crmo", "crome molly"],
)
def test_chrome_moly_is_spelled_in_many_ways(word: str) -> None:
    (size,) = read_text(f"One mandrel for 1.5 x .083 {word}, 4.5 clr")
    assert size.material is AS
    assert not size.doubts


@pytest.mark.parametrize(
    ("said", "materials"),
    [
        ("in steel. It must do stainless too.", {CS, SS}),
        ("Stahl. Manchmal auch Edelstahl.", {CS, SS}),
        ("acier, parfois aussi en inox.", {CS, SS}),
        ("staal, soms ook rvs.", {CS, SS}),
        ("The steel has 304 printed along it.", {SS}),
        ("stainless steel.", {SS}),
        ("brass. Would polished steel mark the inside?", {Material.BRASS}),
        ("Messing. Würde polierter Stahl innen kratzen?", {Material.BRASS}),
        ("polished steel tube, it must not mark inside.", {CS}),
    ],
)
def test_materials_said_in_passing(said: str, materials: set[Material]) -> None:
    (size,) = read_text(f"One mandrel. Tube 38 x 1.5, R 114, {said}")
    doubt = size.doubt_on("material")
    read = set(map(Material, doubt.readings)) if doubt is not None else {size.material}
    assert read == materials


@pytest.mark.parametrize(
    "text",
    ["38 x 2 mm, 347, radius 76. 1 mandrel", "38 x 2, 316, CLR 76. 1 mandrel"],
)
def test_a_bare_grade_before_the_radius(text: str) -> None:
    (size,) = read_text(text)
    assert size.material is SS
    assert size.clr_mm == 76
    assert not size.doubts


def test_a_number_behind_the_wall_may_be_the_radius() -> None:
    (size,) = read_text("76 x 3, 321 mm radius. 1 mandrel")
    assert size.clr_mm == 321


@pytest.mark.parametrize(
    ("text", "day"),
    [
        ("Material required at our works on or before 15/10/2027. Quote by 20/09/2027.", (10, 15)),
        ("Quote to reach by 20/09/2027. Material required at our works by 15/10/2027.", (10, 15)),
        ("Mandril disponible para el 15/10/2027?", (10, 15)),
        ("Could it be available by 15 October 2027?", (10, 15)),
        ("Tube material required by 15/10/2027.", None),
        ("I am available by phone until 15 October 2027.", None),
    ],
)
def test_whose_day_it_is(text: str, day: tuple[int, int] | None) -> None:
    needed = find_needed_by(text, date(2027, 9, 1), american=False, day_first=True)
    assert needed.day == (date(2027, *day) if day else None)


@pytest.mark.parametrize(
    ("said", "doubted"),
    [
        ("1,5, geloof ik", True),
        ("1,5, denke ich", True),
        ("1,5 je nach Charge", True),
        ("1,5, prijs hangt af van het aantal", False),
    ],
)
def test_a_wall_that_the_sender_is_not_sure_of(said: str, *, doubted: bool) -> None:
    (size,) = read_text(f"Rohr 28, R 84, Wand {said}. Ein Dorn.")
    assert (size.doubt_on("wall") is not None) == doubted
