"""The map of the limits: each point where its two ratios put it, and the whole of it in words."""

from __future__ import annotations

import math
from decimal import Decimal

import pytest

from bendreply.intake import pictures
from bendreply.intake.pictures.limit_map import limit_map_figure
from bendreply.intake.pictures.sheet import settings
from bendreply.rules.assess import assess
from bendreply.rules.request import Doubt, Shape, SizeRequest
from bendreply.rules.shop import Shop, sample_shop
from bendreply.rules.shop_settings import Limit

from .drawn import Drawn, size
from .words_drawn import check_words

pytest.importorskip("matplotlib", reason="pictures are drawn with matplotlib: the extra 'charts'")

WALL_FACTOR_MAX, D_MIN = 30, 2.5
"""The limits of the sample shop."""


def mapped(request: SizeRequest) -> tuple[Drawn, str]:
    shop = sample_shop()
    assessment = assess(request, shop)
    svg = pictures.limit_map_svg(assessment, shop)
    assert svg is not None
    return Drawn.of(svg), pictures.limit_map_text(assessment, shop)


def ratios(picture: Drawn, name: str) -> tuple[float, float]:
    """Wall factor and D of bend of a point, measured against the limits as they are drawn: from
    the corner of the frame, where both are 0, to the corner where the limits meet."""
    left, bottom = (min(axis) for axis in zip(*picture.points("frame"), strict=True))
    corner_x, corner_y = picture.points("limits")[1]
    x, y = picture.middle_of(name)
    return (
        (y - bottom) / (corner_y - bottom) * WALL_FACTOR_MAX,
        (x - left) / (corner_x - left) * D_MIN,
    )


@pytest.mark.parametrize(
    ("request_", "wall_factor", "d_of_bend"),
    [
        (size("1.75", "0.095", "5.25"), 1.75 / 0.095, 3),
        (size("1.5", "0.05", "3.75"), 30, 2.5),  # exactly on both limits
        (size("3", "0.065", "4.5"), 3 / 0.065, 1.5),
        (size("38", "2", "100", "mm"), 19, 100 / 38),
    ],
)
def test_the_request_lies_where_its_ratios_put_it(
    request_: SizeRequest, wall_factor: float, d_of_bend: float
) -> None:
    picture, _ = mapped(request_)
    assert ratios(picture, "asked") == pytest.approx((wall_factor, d_of_bend), abs=0.02)


def test_far_beyond_a_limit_the_axis_is_logarithmic_and_says_so() -> None:
    shop = sample_shop()
    assessment = assess(size("100", "0.3", "300", "mm"), shop)
    picture, _ = mapped(assessment.request)
    with settings():
        figure = limit_map_figure(assessment, shop)
        assert figure is not None
        words = [text.get_text() for text in figure.texts]
    assert "wall factor = OD / wall (logarithmic)" in words
    assert "D of bend = CLR / OD" in words
    _, bottom = (min(axis) for axis in zip(*picture.points("frame"), strict=True))
    corner = picture.points("limits")[1][1]
    # The axis begins at 2, below which there is no tube; 100 / 0.3 = 333.3.
    per_decade = (corner - bottom) / math.log10(30 / 2)
    asked = picture.middle_of("asked")[1]
    assert 2 * 10 ** ((asked - bottom) / per_decade) == pytest.approx(333.3, abs=0.5)


@pytest.mark.parametrize(
    "request_", [size("1.75", "0.095", "5.25"), size("3", "0.065", "4.5"), size("4", "0.0004", "5")]
)
def test_either_side_of_the_limits_is_named(request_: SizeRequest) -> None:
    with settings():
        figure = limit_map_figure(assess(request_, sample_shop()), sample_shop())
        assert figure is not None
        words = {text.get_text() for text in figure.texts}
    assert {"feasible", "not likely to be feasible", "wall factor 30", "D of bend 2.5"} <= words


def test_alternatives_and_other_readings_are_points_of_their_own() -> None:
    picture, text = mapped(size("1.5", "0.035", "3"))
    # The next die for 1.5 in is 4.5 in CLR, the lightest gauge within 1.5 / 30 = 0.05 in is 0.058.
    assert ratios(picture, "alternative-A") == pytest.approx((1.5 / 0.058, 3), abs=0.02)
    assert "A, alternative: 1.5 × 0.058 × 4.5 in." in text
    doubt = Doubt(field="od", readings=(Decimal("41.275"), Decimal("47.625")), why="15/8")
    picture, text = mapped(size("1.625", "0.083", "5", doubts=(doubt,)))
    assert ratios(picture, "asked") == pytest.approx((1.625 / 0.083, 5 / 1.625), abs=0.02)
    assert ratios(picture, "reading-1") == pytest.approx((1.875 / 0.083, 5 / 1.875), abs=0.02)
    assert "?1, another way to read it: 1.875 × 0.083 × 5 in." in text


@pytest.mark.parametrize(
    ("request_", "said"),
    [
        (size("1.75", "0.095", "5.25"), "Wall factor 18.42, D of bend 3: within both limits."),
        (size("1.5", "0.05", "3.75"), "Wall factor 30, D of bend 2.5: within both limits."),
        (size("3", "0.065", "4.5"), "Wall factor 46.15, D of bend 1.5: beyond both limits."),
        (
            size("3", "0.065", "9"),
            "Wall factor 46.15, D of bend 3: beyond the limit of wall factor.",
        ),
        (size("1", "0.065", "2"), "Wall factor 15.38, D of bend 2: beyond the limit of D of bend."),
        (
            size("1.75", "0.095", None),
            "Wall factor 18.42, D of bend open: within the limit of wall factor.",
        ),
        (
            size("1.75", None, "5.25"),
            "Wall factor open, D of bend 3: within the limit of D of bend.",
        ),
        (SizeRequest(), "There is no map: neither wall factor nor D of bend is known"),
        (
            size("1.75", "0.095", "5", shape=Shape.SQUARE),
            "There is no map: it is for round tube only.",
        ),
    ],
)
def test_the_map_in_words(request_: SizeRequest, said: str) -> None:
    assessment = assess(request_, sample_shop())
    text = pictures.limit_map_text(assessment, sample_shop())
    assert said in text
    there = pictures.limit_map_svg(assessment, sample_shop()) is not None
    assert there == (not text.startswith("There is no map"))
    if there:
        assert "a wall factor of at most 30 together with a D of bend of at least 2.5" in text


def many_doubts() -> tuple[Doubt, ...]:
    def mm(*lengths: str) -> tuple[Decimal, ...]:
        return tuple(map(Decimal, lengths))

    return (
        Doubt(field="od", readings=mm("50", "60", "40"), why="x"),
        Doubt(field="wall", readings=mm("2", "1.5", "1", "3"), why="y"),
        Doubt(field="clr", readings=mm("150", "100", "75"), why="z"),
    )


def test_of_very_many_readings_the_rest_is_counted() -> None:
    picture, text = mapped(size("50", "2", "150", "mm", doubts=many_doubts()))
    shown = {part for part in picture.parts if part.startswith("reading-")}
    assert shown == {f"reading-{number}" for number in range(1, 9)}
    # 3 ODs, 4 walls and 3 radii make 36 readings. Two pairs fall on one place each: 60 x 3 x 150
    # and 40 x 2 x 100 (20 and 2.5), 60 x 1.5 x 150 and 40 x 1 x 100 (40 and 2.5). Of 34 points one
    # is what was asked for, and 8 are shown.
    assert text.endswith(f"{34 - 1 - 8} further readings are not shown.")


def limits(wall_factor: str, d_of_bend: str) -> Shop:
    changed = sample_shop().limits.model_copy(
        update={
            "wall_factor_max": Limit(value=Decimal(wall_factor), reason="for this test"),
            "d_of_bend_min": Limit(value=Decimal(d_of_bend), reason="for this test"),
        }
    )
    return sample_shop().model_copy(update={"limits": changed})


@pytest.mark.parametrize(
    ("wall_factor", "d_of_bend"), [("30", "2.5"), ("12.5", "1"), ("160", "5"), ("3", "0")]
)
def test_no_word_lies_on_another_whatever_the_limits(wall_factor: str, d_of_bend: str) -> None:
    shop = limits(wall_factor, d_of_bend)
    for od, wall, clr in (
        ("50", "2", "150"),
        ("50", "2", None),
        ("50", None, "150"),
        ("50", "1.6667", "125"),
        ("100", "0.3", "120"),
        ("100", "0.01", "120"),
        ("25", "1.5", "1500"),
        ("10", "4.9", "5.1"),
    ):
        for doubts in ((), many_doubts()):
            request = size(od, wall, clr, "mm", doubts=doubts)
            with settings():
                figure = limit_map_figure(assess(request, shop), shop)
                assert figure is not None
                check_words(figure, figure.get_size_inches()[1] * 72)
