"""One of two figures is meant: of two papers, of two dies, a least radius and the one that is bent."""

# ruff: noqa: E501 - a row of a table stands on one line

from __future__ import annotations

from decimal import Decimal

import pytest

from bendreply.rules.request import SizeRequest

from .support import doubted, read_text


def _lengths(size: SizeRequest) -> tuple[Decimal | None, Decimal | None, Decimal | None]:
    return size.od_mm, size.wall_mm, size.clr_mm


@pytest.mark.parametrize(
    "text",
    [
        "The drawing says 35 x 2, the parts list says 35 x 1.5. Radius 88 mm CLR either way. Please quote one mandrel.",
        "Print calls for 35 x 2 mm, the BOM says 35 x 1.5. CLR 88. Quote one mandrel please.",
        "Laut Zeichnung ist das Rohr 35 x 2, laut Stückliste 35 x 1,5. Radius 88 mm Mitte. Bitte ein Angebot für einen Dorn.",
        "Volgens de tekening is de buis 35 x 2, volgens de stuklijst 35 x 1,5. Straal 88 hart. Eén doorn.",
    ],
)
def test_two_papers_doubt_the_figure_in_which_they_differ(text: str) -> None:
    first, second = read_text(text)
    assert _lengths(first) == (35, 2, 88)
    assert "wall" in doubted(first)
    assert {"od", "wall", "clr"} <= doubted(second)


@pytest.mark.parametrize(
    "text",
    [
        "I have some 38 x 2 mm and some 38 x 1.5, same die, 90 clr. Does one mandrel fit both? If it has to be one or the other I want the 1.5.",
        "Rohr 38 x 2 und 38 x 1,5, R 90 Mitte. Passt ein Dorn für beide? Wenn nicht, dann den für 1,5.",
    ],
)
def test_a_second_choice_doubts_the_other_size(text: str) -> None:
    other, kept = read_text(text)
    assert (other.wall_mm, kept.wall_mm) == (2, Decimal("1.5"))
    assert {"od", "wall", "clr"} <= doubted(other)
    assert doubted(kept) == {"wall"}


@pytest.mark.parametrize(
    "text",
    [
        "42.4 x 2.6 mm. We have two dies, R 85 and R 127. Only for the bigger one please, the small one has its mandrel. One mandrel.",
        "42.4 x 2.6 mm tube. The formers are 85 and 127 centreline. The larger one is what I want. One mandrel please.",
        "42,4 x 2,6. Wir haben zwei Werkzeuge, R 85 und R 127. Einen Dorn bitte, nur für das größere.",
        "42,4 x 2,6. Nous avons deux galets, rayon 85 et 127 à l'axe. Un mandrin, seulement pour le plus grand.",
        "42,4 x 2,6. Tenemos dos matrices, radio 85 y 127 al eje. Un mandril solo para la más grande.",
        "Our dies for 42.4 mm tube are 85, 127 and 180 mm CLR. Mandrel for the 127 please. Wall is 2.6. Qty 1.",
        "Tube 42.4 x 2.6 mm, minimum bend radius per print 85 mm. We bend at 127 CLR. One mandrel please.",
        "Rohr 42,4 x 2,6, Mindestbiegeradius laut Zeichnung 85, wir biegen mit R 127 Mitte. Ein Dorn.",
        "Tube 42,4 x 2,6, rayon mini 85 selon plan, on cintre à 127 à l'axe. Un mandrin.",
        "Tubo 42,4 x 2,6, radio mínimo 85 según plano, doblamos a 127 al eje. Un mandril.",
        "Tubo 42,4 x 2,6, raggio minimo 85 da disegno, pieghiamo a 127 all'asse. Un mandrino.",
        "Buis 42,4 x 2,6, minimale buigradius 85 volgens tekening, wij buigen op 127 hart. Een doorn.",
        "42.4 x 2.6 mm tube, bent into quarter circles, CLR 127. One mandrel.",
    ],
)
def test_the_one_radius_that_is_meant(text: str) -> None:
    (size,) = read_text(text)
    assert _lengths(size) == (Decimal("42.4"), Decimal("2.6"), 127)
    assert not size.doubts


@pytest.mark.parametrize(
    "text",
    [
        "42.4 x 2.6 mm. Dies R 85 and R 127. One mandrel for each please, the bigger one first.",
        "42.4 x 2.6 mm. Our dies are 85 and 127 mm CLR. A mandrel for the 85 and one for the 127 please.",
    ],
)
def test_both_radii_are_meant(text: str) -> None:
    assert [size.clr_mm for size in read_text(text)] == [85, 127]


def test_a_mandrel_for_some_bends_only() -> None:
    text = "Copper 5/8 OD x .040 wall. Coils have a 5 inch center radius. Mandrel for the lead-in bends only, those are 1-7/8 CLR."
    coil, _ = read_text(text)
    assert coil.clr_mm == 127
    assert {"od", "clr"} <= doubted(coil)


@pytest.mark.parametrize(
    "text",
    [
        "Ik wil een leuning van anderhalf duims buis, gewone gasbuis, buigen. Straal 200 mm hart. Een doorn graag.",
        "Handrail of 1-1/2 inch gas pipe, 200 mm CLR. One mandrel.",
    ],
)
def test_gas_tube_is_called_by_its_bore(text: str) -> None:
    (size,) = read_text(text)
    assert "od" in doubted(size)
