"""``read --why``: each number with its fate, each size with what else it might have been."""

# ruff: noqa: E501 - a row of a table stands on one line: the words, then their meaning

from __future__ import annotations

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from bendreply.intake.reading import read
from bendreply.intake.reading.why import PartWhy, explain
from bendreply.rules.request import LENGTH_FIELDS

from .support import inch, whole
from .unchanged import base, files


def _body(text: str) -> PartWhy:
    message, own = whole(text)
    (part,) = explain(own, message)
    return part


# The words of a message; of each number: its own words, what it was taken for, its sizes.
FATES = [
    pytest.param(
        "1.75 x .095 on a 5.25 CLR, 90 deg",
        [("1.75", "OD", (1,)), (".095", "wall", (1,)), ("5.25", "CLR", (1,)), ("90 deg", "no size", ())],
        id="chain",
    ),
    pytest.param(
        "1.75 x .095, 5.25 clr and 6 clr. Call 330-555-0145",
        [("1.75", "OD", (1, 2)), (".095", "wall", (1, 2)), ("5.25", "CLR", (1,)), ("6", "CLR", (2,)),
         ("Call 330-555-0145", "phone", ())],
        id="shared-and-phone",
    ),
    pytest.param(
        "Rohr 38 x 1,5 mm, R 57, nicht 60",
        [("38", "OD", (1,)), ("1,5 mm", "wall", (1,)), ("R 57", "radius", (1,)),
         ("60", "nothing says what it is, ruled out by the sender", ())],
        id="ruled-out",
    ),
    pytest.param(
        "1.75 x .095 tube, radius no tighter than 6 in",
        [("1.75", "OD", (1,)), (".095", "wall", (1,)), ("6 in", "radius, as a limit", (1,))],
        id="limit",
    ),
    pytest.param(
        "2 in sch 40 pipe, 304L, on a 3D bend",
        [("2 in", "OD", (1,)), ("sch 40", "schedule", (1,)), ("304L", "a material", ()),
         ("3D", "radius as a multiple of the OD", (1,))],
        id="pipe",
    ),
]  # fmt: skip


@pytest.mark.parametrize(("text", "fates"), FATES)
def test_every_number_is_told_with_its_fate(
    text: str, fates: list[tuple[str, str, tuple[int, ...]]]
) -> None:
    part = _body(text)
    assert [(number.surface, number.what, number.sizes) for number in part.numbers] == fates


def test_the_other_reading_is_told_with_what_it_loses_by() -> None:
    """15/8: 1-5/8 with the space lost, or 1.875; nothing but the spelling sets them apart."""
    part = _body("15/8 x .083, 5 clr")
    (size,) = part.sizes
    best, other = size.weighed[:2]
    ods = [inch("1.625").od, inch("1.875").od]
    assert [one.lengths[0] for one in (best, other)] == [(od, "in") for od in ods]
    assert not best.doubted
    assert other.doubted
    ((words, points),) = other.points
    assert "space lost" in words
    assert points == pytest.approx(other.score - best.score)
    assert "radius" in " ".join(words for words, _ in size.weighed[2].points)  # 5 mm, on 41 mm tube


def test_costs_stand_beside_what_a_number_may_be() -> None:
    (od, wall, _) = _body("15/8 x .083, 5 clr").numbers
    assert [(value.mm, value.cost) for value in od.readings[:2]] == [
        (inch("1.625").od, 0.0),
        (inch("1.875").od, 0.6),
    ]
    assert "space lost" in od.readings[1].why
    assert [value.system for value in wall.readings] == ["in", "mm"]
    assert wall.readings[0].cost < wall.readings[1].cost


def test_what_is_told_is_what_was_read() -> None:
    """Every length's words are among the numbers told, and belong to a size; points add up."""
    for file in files():
        message, own, requests = base(file)
        parts = explain(own, message)
        told = {number.start: number for part in parts for number in part.numbers}
        for request in requests:
            for evidence in request.evidence:
                if evidence.field in LENGTH_FIELDS:
                    assert told[evidence.start].sizes, f"{file}: {evidence.surface}"
                    assert told[evidence.start].surface == evidence.surface
        for size in (size for part in parts for size in part.sizes if size.weighed):
            best, *others = size.weighed
            assert sum(points for _, points in best.points) == pytest.approx(best.score, abs=0.3)
            assert all(other.score <= best.score for other in others)


def test_the_subject_and_an_attachment_are_parts_of_their_own() -> None:
    message, own = whole("One mandrel for this please, qty 1.", subject="1.75 x .095, 5.25 CLR")
    assert [part.name for part in explain(own, message)] == ["body", "subject"]
    message, own = whole("Sizes attached")
    own = own.model_copy(update={"attachment_texts": (("sizes.csv", "OD,wall,CLR\n38,1.5,57\n"),)})
    (part,) = explain(own, message)
    assert part.name == "attachment sizes.csv"
    assert part.sizes


@settings(max_examples=150)
@given(st.text(alphabet="0123456789./-x\"' ,mm od wall clr ga sch 40 2D\n\t", max_size=120))
def test_any_text_can_be_explained(text: str) -> None:
    message, own = whole(text)
    read(own, message)
    for part in explain(own, message):
        for number in part.numbers:
            assert own.text[number.start :].startswith(number.surface)
