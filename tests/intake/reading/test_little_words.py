"""How one size is told by little words and short names: schedules and bores in other languages, a
wall behind 'op', an OD set on its radius, what is square beside a round tube, counts of 'st'.

Values by arithmetic: pipe of 1 in schedule 40 is 33.401 x 3.3782 mm, of 1-1/2 in schedule 10S
48.26 x 2.7686 mm (ASME B36.10M, B36.19M); a wall is half of OD less bore.
"""

# ruff: noqa: E501 - a row of a table stands on one line

from __future__ import annotations

from datetime import date
from decimal import Decimal

import pytest

from ..test_needed_by import needed
from .support import Size, case, inch, mm, read_text, written_down

ONE_SIZE = [
    case("schedula", 'tubo da 1" schedula 40, raggio 76,2 mm', mm("33.401", "3.3782", "76.2")),
    case("cedule-fr", 'tuyau 1" schédule 40, rayon 76,2 mm', mm("33.401", "3.3782", "76.2")),
    case("cedula-es", 'tubo de 1 1/2" cedula 10S, radio 114 mm', mm("48.26", "2.7686", "114")),
    case("cedule-ca", 'tube 1" cédule 40, rayon 76,2 mm', mm("33.401", "3.3782", "76.2")),
    case("bore-de", "Rohraußendurchmesser 30 mm, Rohrinnendurchmesser 22 mm, Radius 75 mm", mm("30", "4", "75")),
    case("bore-nl", "buitendiameter 30 mm, buisbinnendiameter 22 mm, radius 75 mm", mm("30", "4", "75")),
    case("op", "Alubuis 45 op 2, radius 110", mm("45", "2", "110")),
    case("auf", "Rohr 45 auf 2, Radius 110", mm("45", "2", "110")),
    case("en-fr", "tube de 40 en 2, rayon 80", mm("40", "2", "80")),
    case("en-es", "tubo de 40 en 1,5, radio 80", mm("40", "1.5", "80")),
    case("na", "rura 40 na 2, R 80", mm("40", "2", "80")),
    case("auf-machines", "Rohr 45 auf 2 Maschinen, Radius 110", mm("45", None, "110")),
    case("en-pieces", "tubo de 40 en 2 piezas, radio 80", mm("40", None, "80")),
    case("op-places", "buis 45 op 2 plaatsen buigen, radius 110", mm("45", None, "110")),
    case("op-radius", "buis 45 op 90, wand 2 mm", mm("45", "2", "90")),
    case("rollers", '1 1/4 x .095, rollers are 5" center line', inch("1.25", "0.095", "5")),
    case("roller-to-centre", '1 1/4 x .095, the roller is 5" to the center', inch("1.25", "0.095", "5")),
    case("roller-size", '1 1/4 x .095 on 5" CLR, the guide rollers are 3" across', inch("1.25", "0.095", "5")),
    case("box-radius", "40 x 40 x 2 mm mild steel box, radius 120", mm(None, "2", "120", shape="square")),
    case("pieces", "I have two pieces of tube, 500 mm each. Tube is Ø60 x 2, R 180", mm("60", "2", "180")),
    case("pieces-de", "zwei Stücke Rohr, 400 mm lang. Rohr 30 x 2, R 60", mm("30", "2", "60")),
    case("pieces-fr", "deux morceaux de tube, 600 mm chacun. Tube 30 x 2, rayon 60", mm("30", "2", "60")),
    case("pieces-of-size", "two pieces of tube, 1.5 x .065 each, CLR 4.5", inch("1.5", "0.065", "4.5")),
    case("wall-in-inches", "27.2 mm OD, .065 wall, 6061", Size(Decimal("27.2"), Decimal("1.651"), None, frozenset())),
    case("wall-whole", '1.5" OD, 2 wall', Size(Decimal("38.1"), Decimal(2), None, frozenset({"wall"}))),
    case("note-to-centre", "1.000 OD X .035 WALL\nNOTE 3: BEND RADII 2.00 TO TUBE C/L UNLESS OTHERWISE SPECIFIED", inch("1", "0.035", "2")),
    case("note-de", "Rohr 30 x 2\nBiegeradien 60 auf Rohrmitte sofern nicht anders angegeben", mm("30", "2", "60")),
    case("note-of-edges", "1.000 OD X .035 WALL\nNOTE 3: ALL RADII 2.00 UNLESS OTHERWISE SPECIFIED", inch("1", "0.035", "2", "clr")),
    case("fa-diametro", "tubo 28x1,5, la curva fa diametro 120 da asse a asse", mm("28", "1.5", "60")),
    case("fait-diametre", "tube 28x1,5, le coude fait un diamètre de 120 d'axe en axe", mm("28", "1.5", "60")),
    case("hace-diametro", "tubo 28x1,5, la curva hace 120 de diámetro", mm("28", "1.5", "60", "clr")),
    case("innen-am-bogen", "Rohr 30 x 2, innen am Bogen 70 mm", mm("30", "2", "85")),
    case("am-bogen-innen", "Rohr 30 x 2, am Bogen innen 70", mm("30", "2", "85")),
    case("aussen-am-bogen", "Rohr 30 x 2, außen am Bogen 100 mm", mm("30", "2", "85")),
    case("interno-curva", "tubo 30 x 2, all'interno della curva 70", mm("30", "2", "85")),
    case("binnenkant-bocht", "buis 30 x 2, binnenkant bocht 70", mm("30", "2", "85")),
    case("falten", "Rohr 30 x 2, R 60. Wir haben Falten innen am Bogen, 1 mm hoch.", mm("30", "2", "60")),
    case("box-lid", "30 x 2, R 60, and a box 300 x 200", mm("30", "2", "60")),
]  # fmt: skip
ON_A_RADIUS = [
    case("hoops", 'all .120 wall: 2" on 6" centerline, and 1-3/4 on 5-1/4', inch("2", "0.120", "6"), inch("1.75", "0.120", "5.25")),
    case("two", "mandrels please, .065 wall: 1.5 on 3 and 2 on 4", inch("1.5", "0.065", "3"), inch("2", "0.065", "4")),
    case("three-de", "alle Wand 2 mm: 38 auf 76, 42,4 auf 85 und 60,3 auf 150", mm("38", "2", "76"), mm("42.4", "2", "85"), mm("60.3", "2", "150")),
    case("two-fr", "épaisseur 1,5 mm pour les deux : 28 sur 56, 35 sur 70", mm("28", "1.5", "56"), mm("35", "1.5", "70")),
    case("both-asked", '1" OD .120 wall. Radius is 3 or 3.5, so quote both please', inch("1", "0.120", "3"), inch("1", "0.120", "3.5")),
    case("beide", "Rohr 30 x 2, Radius 60 oder 75, bitte beide anbieten", mm("30", "2", "60"), mm("30", "2", "75")),
    case("both-ends", '1" OD .120 wall, radius 3 or 3.5 on both ends', inch("1", "0.120", "3", "clr"), inch("1", "0.120", "3.5", "clr")),
    case("counted", "one on the 1.5 x .065 and one on the 2 x .065, both 6 CLR", inch("1.5", "0.065", "6"), inch("2", "0.065", "6")),
]  # fmt: skip
SHAPES = [
    case("shoulders", "3/4 x .065 square-shouldered brackets, CLR 2.25", inch("0.75", "0.065", "2.25")),
    case("tube-is-round", "3/4 x .065 for the square sign. The tube is round. CLR 2.25", inch("0.75", "0.065", "2.25")),
    case("rohr-ist-rund", "Rohr 30 x 2 für quadratische Rahmen, das Rohr ist rund. R 60", mm("30", "2", "60")),
    case("plaque", "tube 30 x 2, rayon 60, soudé sur une platine carrée", mm("30", "2", "60")),
    case("plaat", "buis 30 x 2, radius 60, op een vierkante plaat", mm("30", "2", "60")),
    case("square-still", "40 x 40 x 2 mm square tube for square brackets, R 120", mm(None, "2", "120", shape="square")),
    case("square-plates-too", "square plates, and 30 x 30 x 2 mm square tube, R 90", mm(None, "2", "90", shape="square")),
]  # fmt: skip


@pytest.mark.parametrize(("text", "sizes"), ONE_SIZE + ON_A_RADIUS + SHAPES)
def test_read(text: str, sizes: tuple[Size, ...]) -> None:
    requests = read_text(text)
    assert len(requests) == len(sizes), written_down(requests)
    for size, request in zip(sizes, requests, strict=True):
        assert size.describes(request), written_down(requests)


@pytest.mark.parametrize(
    ("grade", "family"),
    [
        ("25CD4", "alloy_steel"), ("25 CD 4", "alloy_steel"), ("15CDV6", "alloy_steel"),
        ("35NCD16", "alloy_steel"), ("30CD12", "alloy_steel"), ("42CD4", "alloy_steel"),
        ("20NC6", "alloy_steel"), ("20NCD2", "alloy_steel"), ("E24", "carbon_steel"),
    ],
)  # fmt: skip
def test_french_names_of_steel(grade: str, family: str) -> None:
    """AFNOR's names before the EN ones: carbon in hundredths, C chromium, D molybdenum, N nickel."""
    (request,) = read_text(f"tube 16 x 1, acier {grade}, rayon 48")
    assert request.material is not None
    assert request.material.value == family


@pytest.mark.parametrize(
    ("text", "counts"),
    [
        ("1) buis 22 x 1,5 - R 44 - 2 st\n2) buis 28 x 1,5 - R 56 - 1 st", [2, 1]),
        ("Rohr 22 x 1,5, R 44 mm, 3 St", [3]),
        ("22 x 1,5, R 44, 1 st", [1]),
        ("Rohr 22 x 1,5 aus St 37, R 44", [None]),
        ("twee doornen: één voor 16 x 1 en één voor 20 x 1,5, R 60", [1, 1]),
        ("zwei Dorne: einer für 16 x 1 und einer für 20 x 1,5, R 60", [1, 1]),
        ("deux mandrins : un pour 16 x 1 et un pour 20 x 1,5, rayon 60", [1, 1]),
        ('2" x .083, 6" clr, 1020 dom, two of them so i have a spare', [2]),
        ('2" x .083, 6" clr. Two of them please', [2]),
        ("30 x 2, R 60. Put me down for two.", [2]),
        ("50er Rohr, 3er Wand, 125er Radius. Also einer.", [1]),
        ("30 x 2, R 60. Eight bends, two of them.", [None]),
        ("30 x 2, R 60, both ends bent, two of those, 90 degrees", [None]),
        ("30 x 2, R 60. We have three benders, two of them are broken.", [None]),
        ("30 x 2, R 60. Four tubes, two of them so far.", [None]),
        ("three mandrels: two for 16 x 1 and one for 20 x 1.5, R 60", [2, 1]),
    ],
)
def test_counts(text: str, counts: list[int | None]) -> None:
    assert [request.quantity for request in read_text(text)] == counts


@pytest.mark.parametrize(
    ("text", "day"),
    [
        ("We need it until 30.11.2026.", date(2026, 11, 30)),
        ("We need one until end of November.", date(2026, 11, 30)),
        ("We want them till 4 December.", date(2026, 12, 4)),
        ("by like nov 20 if poss", date(2026, 11, 20)),
        ("need it by maybe 20 November", date(2026, 11, 20)),
        ("We have to wait until 5 December.", None),
        ("We need an answer until 4 December.", None),
        ("I need the machine until 5 December.", None),
        ("Hope it pays for itself by Xmas.", None),
        ("It should earn its keep by Easter.", None),
        ("It is amortised by Christmas.", None),
        ("I want it to pay off by Christmas.", None),
        ("Need it by 4 Dec so that it pays for itself by Xmas.", date(2026, 12, 4)),
    ],
)
def test_days(text: str, day: date | None) -> None:
    """Until when it is needed, as German speakers put it; by when it has paid is no delivery."""
    assert needed(text, american=False) == day


def test_a_tube_that_is_round_has_its_od() -> None:
    (request,) = read_text("Mandrel for 3/4 x .065, square brackets. The tube is round.")
    assert request.od_mm == Decimal("19.05")


@pytest.mark.parametrize(
    ("subject", "body", "doubts"),
    [
        ("R 76 bends", "we need bends in 38 x 1,5 stainless, R 76", set()),
        ("mandrel 38", "one mandrel for tube OD 38 mm, wall 1.5 mm, R 76 mm", set()),
        ("R 80 bends", "we need bends in 38 x 1,5 stainless, R 76", {"clr"}),
        ('R 76" bends', "we need bends in 38 x 1,5 mm stainless, R 76 mm", {"clr"}),
    ],
)
def test_figure_of_the_subject(subject: str, body: str, doubts: set[str]) -> None:
    """A subject's figure without a unit is in that of the body."""
    (request,) = read_text(body, subject)
    assert {doubt.field for doubt in request.doubts} == doubts
