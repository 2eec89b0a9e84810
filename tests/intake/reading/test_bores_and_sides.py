"""A tube by its bore and its outside, and one radius told twice: by a side of the tube, or by how far
the legs are apart, and reckoned to the centre line."""

# ruff: noqa: E501 - a row of a table stands on one line

from __future__ import annotations

import pytest

from .support import Size, case, inch, mm, read_text, written_down

BORE_FIRST = [  # wall: (34.9 - 31.8) / 2 = 1.55 mm; (1.5 - 1.37) / 2 = .065 in
    case("bore-of-tube", "bore of the tube 31.8 mm, tube outside diameter 34.9 mm, CLR 114 mm", mm("34.9", "1.55", "114")),
    case("bore-and-wall-told", "- bore of the tube 31.8 mm, tube outside diameter 34.9 mm (so a wall of 1.55 mm)\n- radius 114 mm to the tube centre", mm("34.9", "1.55", "114")),
    case("bore-of-pipe-inch", 'Bore of the pipe 1.37", outside diameter 1.5", CLR 4.5"', inch("1.5", "0.065", "4.5")),
    case("internal-external", "Internal diameter of tube 31.8 mm; external diameter 34.9 mm; CLR 114 mm", mm("34.9", "1.55", "114")),
    case("miked", "Bore of the tube miked at 31.8 mm, tube OD 34.9 mm, CLR 114 mm", mm("34.9", "1.55", "114")),
    case("de", "Innendurchmesser des Rohrs 31,8 mm, Außendurchmesser 34,9 mm, Radius 114 mm", mm("34.9", "1.55", "114")),
    case("es", "Diámetro interior del tubo 31,8 mm, diámetro exterior 34,9 mm, radio 114 mm", mm("34.9", "1.55", "114")),
    case("it", "Diametro interno del tubo 31,8 mm, diametro esterno del tubo 34,9 mm, raggio 114 mm", mm("34.9", "1.55", "114")),
    case("nl", "Binnendiameter van de buis 31,8 mm, buitendiameter 34,9 mm, straal 114 mm", mm("34.9", "1.55", "114")),
    case("bore-and-wall", "Bore of the pipe 31.8 mm, wall 1.55, CLR 114", mm("34.9", "1.55", "114")),
    case("bore-of-a-size", "a mandrel to suit the bore of 38.1 x 1.65 tube, CLR 76", mm("38.1", "1.65", "76")),
]  # fmt: skip
RECKONED = [  # 111 - 44.45 / 2 = 88.775; 75 + 50 / 2 = 100; 3.6 + 1.75 / 2 = 4.475
    case("outer-edge", "44.45 x 1.5, I've only got the outside radius, it's 111 mm to the outer edge, so take off half the tube and the CLR is 88.8", mm("44.45", "1.5", "88.775")),
    case("outside-gives", "Tube 44.45 x 1.5. Outside radius 111 mm, which gives a centreline of 88.8 mm.", mm("44.45", "1.5", "88.775")),
    case("inside-add-half", 'Tube 1.75 x .065. Inside radius measures 3.6", add half the tube and CLR comes to 4.475".', inch("1.75", "0.065", "4.475")),
    case("inside-so", "Tube 50 x 2. Inside radius is 75 so on the centreline it is 100.", mm("50", "2", "100")),
    case("aussen-also-mitte", "Rohr 44,45 x 1,5. Außenradius 111 mm, also Mittenradius 88,8 mm.", mm("44.45", "1.5", "88.775")),
    case("exterieur-donc", "Tube 44,45 x 1,5. Rayon extérieur 111 mm, donc rayon à l'axe 88,8 mm.", mm("44.45", "1.5", "88.775")),
    case("one-leg-to-other", "Tube 32 x 2. The bend measured centre of one leg to centre of the other is 180mm over a full U, which I make 90mm centreline radius.", mm("32", "2", "90")),
    case("middle-of-one-leg", 'Tube 1.5 x .065. From the middle of one leg to the middle of the other is 9", so the CLR is 4.5".', inch("1.5", "0.065", "4.5")),
]  # fmt: skip
NAMED_BY_BARS = [
    case("handle-bar", "Handle bar tube dia 22.2 x thk 2.0, centre line R 60", mm("22.2", "2", "60")),
    case("bull-bar", "bull bar tube OD 63.5 x 2.5, CLR 160", mm("63.5", "2.5", "160")),
    case("sway-bar", "Sway bar pipe dia 33.7 thk 2.6, R 100", mm("33.7", "2.6", "100")),
    case("wands", ".750 OD x .035 wall, 2.25 CLR. We bend maybe 90 wands a week.", inch("0.75", "0.035", "2.25")),
]  # fmt: skip


@pytest.mark.parametrize(("text", "sizes"), [*BORE_FIRST, *RECKONED, *NAMED_BY_BARS])
def test_it_is_one_size(text: str, sizes: tuple[Size, ...]) -> None:
    requests = read_text(text)
    assert len(requests) == 1, written_down(requests)
    assert sizes[0].describes(requests[0]), written_down(requests)


@pytest.mark.parametrize(
    "words",
    [
        "Tube is 1010 throughout.",
        "All tube is 1008.",
        "Tube is 1020.",
        "Everything is 1010, all lines.",
    ],
)
def test_a_steel_by_its_number_alone(words: str) -> None:
    (request,) = read_text(f'{words}\n\n1" OD x .049" wall, 1.5" CLR')
    assert request.material == "carbon_steel"


@pytest.mark.parametrize(
    "words",
    [
        "2, possibly 3, mandrels",
        "2 (maybe 3) mandrels",
        "2 mandrels, perhaps 3:",
        "Zwei, eventuell drei Dorne",
        "deux, peut-être trois mandrins",
        "dos, quizás tres mandriles",
        "due, forse tre mandrini",
        "twee, misschien drie doorns",
    ],
)
def test_more_may_be_wanted(words: str) -> None:
    (request,) = read_text(f"{words} for 38 x 1.5, R 76")
    assert request.quantity == 2
    assert [doubt.field for doubt in request.doubts] == ["quantity"]
