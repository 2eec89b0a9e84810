"""The bend is drawn to scale: lengths measured in the SVG against the sizes that were asked for."""

from __future__ import annotations

import gc
import math
from decimal import Decimal
from itertools import product

import pytest

from bendreply.intake import pictures
from bendreply.intake.pictures.bend import bend_figure
from bendreply.intake.pictures.sheet import settings
from bendreply.rules.assess import assess
from bendreply.rules.assessment import Assessment, Decision
from bendreply.rules.request import Doubt, Shape, SizeRequest
from bendreply.rules.shop import Shop, sample_shop
from bendreply.rules.shop_settings import Limit

from .drawn import Drawn, size
from .words_drawn import check_words

pytest.importorskip("matplotlib", reason="pictures are drawn with matplotlib: the extra 'charts'")


def shop_without_limits() -> Shop:
    """The sample shop as if it bent anything: so that tight bends get a mandrel."""
    limits = sample_shop().limits.model_copy(
        update={
            "wall_factor_max": Limit(value=Decimal(1000), reason="for this test"),
            "d_of_bend_min": Limit(value=Decimal("0.6"), reason="for this test"),
        }
    )
    return sample_shop().model_copy(update={"limits": limits})


def drawn(request: SizeRequest, shop: Shop | None = None) -> tuple[Drawn, Assessment]:
    shop = shop or sample_shop()
    assessment = assess(request, shop)
    svg = pictures.bend_svg(assessment, shop)
    assert svg is not None
    return Drawn.of(svg), assessment


SIZES = [
    size("1.75", "0.095", "5.25"),
    size("2", "0.049", "2.4"),  # D of bend 1.2
    size("1", "0.065", "12"),  # D of bend 12
    size("100", "0.3", "300", "mm"),
    size("60.3", "8", "180", "mm", angle_deg=Decimal(30)),
    size("38", "1.5", "76", "mm", angle_deg=Decimal(135)),
    size("2", "0.12", "6", angle_deg=Decimal(180)),
]


@pytest.mark.parametrize("request_", SIZES, ids=lambda r: f"{r.od_mm}x{r.wall_mm}x{r.clr_mm}")
def test_every_length_is_to_one_scale(request_: SizeRequest) -> None:
    picture, assessment = drawn(request_, shop_without_limits())
    assert request_.od_mm is not None
    assert request_.wall_mm is not None
    assert request_.clr_mm is not None
    od, wall, clr = float(request_.od_mm), float(request_.wall_mm), float(request_.clr_mm)
    middle = picture.middle_of("centre")  # the upright of the cross is another line
    centre = (middle[0], middle[1])
    start = picture.points("centreline")[0]
    scale = (start[1] - centre[1]) / clr
    assert scale > 0

    def radii(name: str) -> set[float]:
        """Distances from the centre of the bend of all points past the tangent and up to the end
        of the bend, in mm."""
        turned = math.radians(float(request_.angle_deg or 90))
        found = set()
        for x, y in picture.points(name):
            across, up = (x - centre[0]) / scale, (y - centre[1]) / scale
            if -1e-6 <= math.atan2(across, up) <= turned + 1e-6:
                found.add(round(math.hypot(across, up), 2))
        return found

    near = pytest.approx
    assert min(radii("outer-wall")) == near(clr + od / 2 - wall, abs=0.02)
    assert od / 2 + clr in [near(one, abs=0.02) for one in radii("outer-wall")]
    assert min(radii("inner-wall")) == near(clr - od / 2, abs=0.02)
    assert clr - od / 2 + wall in [near(one, abs=0.02) for one in radii("inner-wall")]
    assert max(radii("die")) == near(clr - od / 2, abs=0.02)
    # The tube shown across is larger, at one scale of its own.
    across = picture.width_of("across-od") / od
    assert picture.width_of("across-bore") / across == near(od - 2 * wall, abs=0.02)
    needed = assessment.mandrel
    assert needed is not None
    diameter = float(needed.diameter_low_mm + needed.diameter_high_mm) / 2
    if assessment.stock is not None:
        diameter = float(assessment.stock.mandrel_diameter_mm)
    assert picture.width_of("across-mandrel") / across == near(diameter, abs=0.02)
    body = picture.points("mandrel")
    assert (max(y for _, y in body) - min(y for _, y in body)) / scale == near(diameter, abs=0.02)
    assert needed.advance_mm is not None
    nose = (max(x for x, _ in body) - centre[0]) / scale
    assert nose == near(float(needed.advance_mm), abs=0.02)


@pytest.mark.parametrize(("angle", "down"), [(30, 30), (90, 90), (135, 135), (180, 180)])
def test_the_tube_leaves_the_bend_in_the_direction_asked_for(angle: int, down: int) -> None:
    picture, _ = drawn(size("2", "0.12", "6", angle_deg=Decimal(angle)))
    before, end = picture.points("centreline")[-2:]
    heading = math.degrees(math.atan2(before[1] - end[1], end[0] - before[0]))
    assert heading % 360 == pytest.approx(down, abs=0.01)


def test_without_an_angle_a_right_angle_is_drawn_and_said_to_be_assumed() -> None:
    picture, assessment = drawn(size("2", "0.12", "6"))
    before, end = picture.points("centreline")[-2:]
    assert end[0] == pytest.approx(before[0])
    text = pictures.bend_text(assessment, sample_shop())
    assert "Drawn as a bend of 90°, since no angle was given." in text


@pytest.mark.parametrize(
    ("request_", "balls"),
    [
        (size("1.75", "0.095", "5.25"), 1),  # FM-1750-095 on the sample shop's shelf has 1
        (size("2", "0.049", "2.4"), 3),  # balls.csv: wall factor 40.8 at 1.2 D, 3 to 3
        (size("63.5", "1.2", "127", "mm"), 3),  # 52.9 at 2 D, 2 to 3: drawn with the most
        (size("1", "0.065", "12"), 0),
    ],
)
def test_as_many_balls_as_the_mandrel_has(request_: SizeRequest, balls: int) -> None:
    picture, assessment = drawn(request_, shop_without_limits())
    assert {part for part in picture.parts if part.startswith("ball-")} == {
        f"ball-{number}" for number in range(1, balls + 1)
    }
    assert ("stem" in picture.parts) == (balls > 0)
    if balls == 3 and assessment.mandrel and assessment.mandrel.balls_low == 2:
        assert "Drawn with 3 balls." in pictures.bend_text(assessment, sample_shop())


def test_balls_touch_neither_the_wall_nor_each_other() -> None:
    request = size("2", "0.049", "2.4")
    picture, _ = drawn(request, shop_without_limits())
    centre = picture.middle_of("centre")
    scale = (picture.points("centreline")[0][1] - centre[1]) / (2.4 * 25.4)
    bore_low, bore_high = (2.4 - 1 + 0.049) * 25.4, (2.4 + 1 - 0.049) * 25.4
    ends = []
    for number in (1, 2, 3):
        points = picture.points(f"ball-{number}")
        out = [math.dist(point, centre) / scale for point in points]
        assert bore_low - 0.01 <= min(out)
        assert max(out) <= bore_high + 0.01
        turns = [math.atan2(x - centre[0], y - centre[1]) for x, y in points]
        ends.append((min(turns), max(turns)))
    assert ends[0][1] < ends[1][0] < ends[1][1] < ends[2][0]


def test_a_bend_that_is_not_feasible_is_drawn_without_a_mandrel_and_says_so() -> None:
    picture, assessment = drawn(size("3", "0.065", "4.5"))
    assert assessment.decision is Decision.DECLINE
    assert not picture.parts & {"mandrel", "across-mandrel", "ball-1", "stem"}
    assert {"outer-wall", "inner-wall", "die"} <= picture.parts
    told = pictures.bend_text(assessment, sample_shop())
    assert "Not likely to be feasible on our tooling: drawn without a mandrel." in told
    assert "In the tube" not in told


def test_a_doubtful_bend_beyond_a_limit_as_first_read_gets_no_mandrel_either() -> None:
    readings = (Decimal("76.2"), Decimal("127"))  # 3 in is 1.7 D, 5 in is 2.86 D
    doubt = Doubt(field="clr", readings=readings, why="3 or 5")
    picture, assessment = drawn(size("1.75", "0.095", "3", doubts=(doubt,)))
    assert assessment.decision is Decision.ASK
    assert "mandrel" not in picture.parts
    told = pictures.bend_text(assessment, sample_shop())
    assert "As first read, not likely to be feasible on our tooling" in told


@pytest.mark.parametrize(
    ("request_", "why"),
    [
        (size("1.75", "0.095", None), "There is no picture of the bend: CLR is not given."),
        (size("1.75", None, None), "There is no picture of the bend: wall and CLR are not given."),
        (SizeRequest(), "There is no picture of the bend: OD, wall and CLR are not given."),
        (
            size("1.75", "0.095", "5", shape=Shape.SQUARE),
            "There is no picture of the bend: only round tube is drawn.",
        ),
        (
            size("1", "0.6", "5"),
            "There is no picture of the bend: there can be none with 1 in OD, 0.600 in wall, "
            "5 in CLR.",
        ),
        (
            size("1", "0.1", "0.5"),
            "There is no picture of the bend: there can be none with 1 in OD, 0.100 in wall, "
            "0.5 in CLR.",
        ),
    ],
)
def test_what_cannot_be_drawn_is_a_sentence(request_: SizeRequest, why: str) -> None:
    assessment = assess(request_, sample_shop())
    assert pictures.bend_text(assessment, sample_shop()) == why
    assert pictures.why_no_bend(assessment) == why
    assert pictures.bend_svg(assessment, sample_shop()) is None
    assert pictures.bend_png(assessment, sample_shop()) is None
    assert pictures.bend_pdf(assessment, sample_shop()) is None


def test_a_doubt_is_told_beside_the_first_reading() -> None:
    readings = (Decimal("41.275"), Decimal("47.625"))  # 1-5/8 and 1-7/8 in
    doubt = Doubt(field="od", readings=readings, why="15/8 may be 1-5/8 with the space lost")
    _, assessment = drawn(size("1.625", "0.083", "5", doubts=(doubt,)))
    told = pictures.bend_text(assessment, sample_shop())
    assert "In doubt: OD 1.625 in (41.275 mm) or 1.875 in (47.625 mm)." in told


def test_a_screen_reader_is_told_what_the_picture_shows() -> None:
    shop = sample_shop()
    picture, assessment = drawn(size("1.75", "0.095", "5.25"))
    root = picture.root
    assert root.get("role") == "img"
    title, desc = root[0], root[1]
    assert root.get("aria-labelledby") == f"{title.get('id')} {desc.get('id')}"
    assert title.text == "1.75 in OD, 0.095 in wall, 5.25 in CLR"
    assert desc.text == pictures.bend_text(assessment, shop)
    # 1.75 / 0.095 = 18.42; 5.25 / 1.75 = 3; the shelf's FM-1750-095 measures 1.55 in
    for said in (
        "OD 1.75 in (44.45 mm), wall 0.095 in (2.413 mm), CLR 5.25 in (133.35 mm)",
        "a mandrel of 1.55 in (39.37 mm) with 1 ball",
        "Wall factor 18.42 (our limit 30), D of bend 3 (our limit 2.5).",
    ):
        assert said in (desc.text or "")


GRID = [
    size(od, str(round(float(od) * wall, 3)), str(round(float(od) * d, 3)), unit, angle_deg=angle)
    for (od, unit), wall, d, angle in product(
        [("0.25", "in"), ("6.625", "in"), ("101.6", "mm")],
        [0.003, 0.06, 0.3],
        [1.2, 3, 12],
        [None, Decimal(20), Decimal(90), Decimal(180)],
    )
]


@pytest.mark.parametrize("part", range(4))
def test_no_word_lies_on_another_whatever_the_size(part: int) -> None:
    shop = shop_without_limits()
    for request in GRID[part::4]:
        with settings():
            figure = bend_figure(assess(request, shop), shop)
            assert figure is not None
            check_words(figure, figure.get_size_inches()[1] * 72)


@pytest.mark.parametrize(
    "request_",
    [
        size("1.2345", "0.0625", "10.9375"),
        size("1234.567", "12.345", "9876.543", "mm"),
        size("38.123", "1.234", "114.369", "mm", angle_deg=Decimal("90.5")),
        size("2", "0.065", "6", angle_deg=Decimal(360)),
        size("2", "0.065", "6", angle_deg=Decimal("0.5")),
        size(
            "2", "0.065", "6",
            doubts=tuple(
                Doubt(field=f, readings=(Decimal("50.8"), Decimal("60.325")), why="y")
                for f in ("od", "clr")
            ),
        ),
    ],
)  # fmt: skip
def test_odd_figures_find_room_too(request_: SizeRequest) -> None:
    with settings():
        figure = bend_figure(assess(request_, sample_shop()), sample_shop())
        assert figure is not None
        check_words(figure, figure.get_size_inches()[1] * 72)


def test_the_same_request_gives_the_same_bytes() -> None:
    shop = sample_shop()
    assessment = assess(size("1.75", "0.095", "5.25"), shop)
    for draw in (pictures.bend_svg, pictures.bend_png, pictures.bend_pdf):
        assert draw(assessment, shop) == draw(assessment, shop)


def test_pictures_are_what_they_say() -> None:
    assessment = assess(size("1.75", "0.095", "5.25"), sample_shop())
    png, pdf = pictures.bend_png(assessment), pictures.bend_pdf(assessment)
    assert png is not None
    assert pdf is not None
    assert png.startswith(b"\x89PNG\r\n\x1a\n")
    # 360 points, three pixels each (PNG specification 11.2.2: width at byte 16)
    assert int.from_bytes(png[16:20], "big") == 1080
    assert pdf.startswith(b"%PDF-")
    assert b"CreationDate" not in pdf


def test_drawing_many_leaves_nothing_behind() -> None:
    assessment = assess(size("1.75", "0.095", "5.25"), sample_shop())

    def after(pictures_drawn: int) -> int:
        for _ in range(pictures_drawn):
            pictures.bend_svg(assessment)
        gc.collect()
        return len(gc.get_objects())

    after(3)  # fonts and the like are kept once
    before = after(1)
    assert after(20) - before < 200
