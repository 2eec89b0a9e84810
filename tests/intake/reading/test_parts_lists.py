"""Lists of parts with the noun first, lists of ODs on dies, and hoops that are tube."""

# ruff: noqa: E501 - a row of a table stands on one line

from __future__ import annotations

from decimal import Decimal

import pytest

from bendreply.intake.message import parse_message
from bendreply.intake.pipeline import understand
from bendreply.rules.request import SizeRequest

_HEAD = "From: a@example.com\nDate: Tue, 27 Oct 2026 10:00:00 +0000\nContent-Type: text/plain; charset=utf-8\nContent-Transfer-Encoding: 8bit\n\n"
_INCH = Decimal("25.4")


def _sizes(text: str) -> tuple[SizeRequest, ...]:
    return understand(parse_message((_HEAD + text).encode())).requests


def _inch(*lengths: str) -> tuple[Decimal, ...]:
    return tuple(Decimal(length) * _INCH for length in lengths)


def test_the_noun_first_and_its_kind_behind() -> None:
    first, second, *others = _sizes(
        "Please quote:\n"
        "001   MANDREL, BALL, 1.500 OD X .065 W X 3.000 CLR    2   EA\n"
        "002   MANDREL, PLUG, 1.750 OD X .083 W X 4.000 CLR    1   EA\n"
        "003   WIPER DIE, 1.750 OD X 4.000 CLR                 3   EA\n"
    )
    assert (first.od_mm, first.wall_mm, first.clr_mm) == _inch("1.5", ".065", "3")
    assert (second.od_mm, second.wall_mm, second.clr_mm) == _inch("1.75", ".083", "4")
    assert (first.quantity, second.quantity) == (2, 1)
    assert not first.doubts
    assert not second.doubts
    assert all(wiper.doubt_on("od") for wiper in others)


def test_each_tube_on_its_die_is_a_size() -> None:
    sizes = _sizes(
        "All 4130, all .083\n\n1-1/4 on the 4 inch die\n1-1/2 on the 5 inch die\n1-5/8 on the 6 inch die\n\nDies are marked CLR. One mandrel each."
    )
    assert [(size.od_mm, size.clr_mm) for size in sizes] == [
        _inch("1.25", "4"),
        _inch("1.5", "5"),
        _inch("1.625", "6"),
    ]
    assert not any(size.doubts for size in sizes)


@pytest.mark.parametrize(
    "text",
    [
        "main hoop is 1.75 .120 dom, die is 6.5 clr. price for one mandrel",
        'The main hoop is 1.75" .120 wall dom on a 6.5 clr die. One mandrel.',
        'main hoop is 1.75 .120 dom, 6.5 clr. also friend has 2" .120 but thats his problem. price for one mandrel',
    ],
)
def test_a_hoop_with_a_wall_is_tube(text: str) -> None:
    size = _sizes(text)[0]
    assert (size.od_mm, size.wall_mm, size.clr_mm) == _inch("1.75", ".12", "6.5")


def test_one_for_each_radius_though_the_offer_is_changed() -> None:
    sizes = _sizes(
        "Bitte das Angebot ändern: zwei Dorne für 30 x 1,5, einer für R 45 wie gehabt und einer für R 60."
    )
    assert [size.clr_mm for size in sizes] == [45, 60]
    assert not any(size.doubt_on("clr") for size in sizes)
