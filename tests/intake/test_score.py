"""Scoring: what counts as right, missing, doubted and misread in silence."""

from __future__ import annotations

import json
from datetime import date
from decimal import Decimal
from pathlib import Path

import pytest

from bendreply.intake.model import Kind, Message
from bendreply.intake.own_text import mask
from bendreply.intake.pipeline import Understanding
from bendreply.intake.score import Score, ScoreError, score_folder
from bendreply.intake.score_match import ALL_FIELDS, GoldRequest, compare, match
from bendreply.rules.request import Doubt, Material, Shape, SizeRequest

TUBE = SizeRequest(
    od_mm=Decimal("44.45"),
    wall_mm=Decimal("2.413"),
    clr_mm=Decimal("133.35"),
    material=Material.CARBON_STEEL,
    grade="1020 DOM",
    quantity=2,
    needed_by=date(2026, 3, 1),
)
LABEL = GoldRequest(
    od_mm=Decimal("44.45"),
    wall_mm=Decimal("2.413"),
    clr_mm=Decimal("133.35"),
    material="carbon_steel",
    grade="dom",
    quantity=2,
    needed_by="2026-03-01",
)


def verdict(field: str, label: GoldRequest, found: SizeRequest | None) -> str:
    return compare("a.eml", 1, field, label, found).verdict


def test_all_fields_as_labelled_are_right_and_a_shared_round_shape_counts_nowhere() -> None:
    verdicts = {field: verdict(field, LABEL, TUBE) for field in ALL_FIELDS}
    assert verdicts.pop("shape") == "empty"
    assert set(verdicts.values()) == {"right"}


@pytest.mark.parametrize(
    ("field", "gold", "ours", "expected"),
    [
        # 0.5 % of 133.35 is 0.66675; of 2.413 only 0.012, so 0.03 mm rules there
        ("clr", "133.35", "134.01", "right"),
        ("clr", "133.35", "134.02", "silent"),
        ("wall", "2.413", "2.443", "right"),
        ("wall", "2.413", "2.444", "silent"),
        ("wall", None, "2.413", "silent"),
        ("wall", "2.413", None, "missing"),
        ("wall", None, None, "empty"),
    ],
)
def test_a_length_is_right_within_half_a_percent_or_three_hundredths(
    field: str, gold: str | None, ours: str | None, expected: str
) -> None:
    label = GoldRequest.model_validate({f"{field}_mm": gold})
    found = SizeRequest.model_validate({f"{field}_mm": ours})
    assert verdict(field, label, found) == expected


def test_a_wrong_value_under_a_doubt_is_no_silent_misread() -> None:
    doubt = Doubt(field="od", readings=(Decimal(40), Decimal("44.45")), why="two sizes fit")
    found = TUBE.model_copy(update={"od_mm": Decimal(40), "doubts": (doubt,)})
    assert verdict("od", LABEL, found) == "doubted"


def test_a_doubt_on_a_right_value_is_needless_unless_the_label_asks_for_it() -> None:
    doubt = Doubt(field="od", readings=(Decimal("44.45"), Decimal(45)), why="two sizes fit")
    found = TUBE.model_copy(update={"doubts": (doubt,)})
    assert compare("a.eml", 1, "od", LABEL, found).needless_doubt
    doubtful = LABEL.model_copy(update={"doubt": ("od",)})
    assert not compare("a.eml", 1, "od", doubtful, found).needless_doubt


def test_a_wrong_shape_is_a_silent_misread() -> None:
    square = GoldRequest(shape="square", od_mm=Decimal(40))
    assert verdict("shape", square, SizeRequest(od_mm=Decimal(40))) == "silent"
    found = SizeRequest(od_mm=Decimal(40), shape=Shape.SQUARE)
    assert verdict("shape", square, found) == "right"


@pytest.mark.parametrize(
    ("gold", "ours", "expected"),
    [
        ("A513 Type 5", "a513-type5", "right"),
        ("1020 DOM", "DOM", "right"),
        ("304", "316", "silent"),
        ("304", None, "missing"),
    ],
)
def test_grades_are_compared_loosely(gold: str, ours: str | None, expected: str) -> None:
    assert verdict("grade", GoldRequest(grade=gold), SizeRequest(grade=ours)) == expected


def test_requests_are_matched_by_what_agrees_not_by_order() -> None:
    labels = [GoldRequest(od_mm=Decimal(n), wall_mm=Decimal(w)) for n, w in ((40, 2), (50, 2))]
    read = [SizeRequest(od_mm=Decimal(n), wall_mm=Decimal(w)) for n, w in ((50, 2), (40, 2))]
    assert match(labels, read) == [1, 0]
    assert match(labels, read[:1]) == [None, 0]
    assert match([], read) == []


def test_a_match_is_swapped_when_both_together_agree_more() -> None:
    # The first label agrees with both requests in od and wall, the second only with the first.
    labels = [
        GoldRequest(od_mm=Decimal(40), wall_mm=Decimal(2)),
        GoldRequest(od_mm=Decimal(40), wall_mm=Decimal(3), clr_mm=Decimal(90)),
    ]
    read = [
        SizeRequest(od_mm=Decimal(40), wall_mm=Decimal(2), clr_mm=Decimal(90)),
        SizeRequest(od_mm=Decimal(40), wall_mm=Decimal(2), clr_mm=Decimal(80)),
    ]
    assert match(labels, read) == [1, 0]


PLAIN = b"""From: Ada <ada@example.com>
Subject: mandrel
Date: Mon, 16 Nov 2026 10:00:00 -0500
Message-ID: <1@example.com>

Please quote a mandrel for 1.75 in OD x .095 in wall DOM on a 5.25 in CLR.
"""


def folder(tmp_path: Path, *labels: dict[str, object]) -> Path:
    (tmp_path / "a.eml").write_bytes(PLAIN)
    lines = [json.dumps(label) for label in labels]
    (tmp_path / "gold.jsonl").write_text("\n".join(lines) + "\n", encoding="utf-8")
    return tmp_path


RIGHT: dict[str, object] = {
    "file": "a.eml",
    "kind": "sizes",
    "requests": [
        {"od_mm": 44.45, "wall_mm": 2.413, "clr_mm": 133.35, "material": "carbon_steel",
         "grade": "DOM", "quantity": 1}
    ],
    "tags": ["easy"],
}  # fmt: skip


def test_a_message_read_right_scores_full(tmp_path: Path) -> None:
    score = score_folder(folder(tmp_path, RIGHT))
    assert (score.messages, score.requests, score.fully_right) == (1, 1, 1)
    assert score.silent_misreads == []
    assert score.stated == 5  # od, wall, clr, material, quantity; grade is in no headline figure
    assert score.tags["easy"].fully_right == 1


def test_another_reader_is_scored_by_the_same_labels(tmp_path: Path) -> None:
    def sees_nothing(message: Message) -> Understanding:
        return Understanding(message, mask(message), Kind.OTHER, "not read")

    score = score_folder(folder(tmp_path, RIGHT), sees_nothing)
    assert (score.requests, score.fully_right, score.stated) == (1, 0, 0)
    assert [(gold, ours) for _, gold, ours, _ in score.wrong_kinds] == [(Kind.SIZES, Kind.OTHER)]


def test_each_value_of_a_made_up_size_is_a_silent_misread(tmp_path: Path) -> None:
    score = score_folder(folder(tmp_path, {**RIGHT, "requests": []}))
    assert [o.field for o in score.silent_misreads] == ["od", "wall", "clr", "material", "quantity"]
    assert {o.request for o in score.silent_misreads} == {None}


def test_a_label_wrong_by_design_lists_the_misread_with_both_values(tmp_path: Path) -> None:
    wrong = {**RIGHT, "requests": [{"od_mm": 44.45, "wall_mm": 2.1082, "clr_mm": 133.35}]}
    misread = score_folder(folder(tmp_path, wrong)).silent_misreads[0]
    assert (misread.file, misread.field, misread.stated, misread.gold) == (
        "a.eml",
        "wall",
        "2.413",
        "2.1082",
    )


def test_a_request_nobody_saw_raised_no_doubt(tmp_path: Path) -> None:
    doubtful: dict[str, object] = {"od_mm": 10, "wall_mm": 1, "doubt": ["od"]}
    both = {**RIGHT, "requests": [*RIGHT["requests"], doubtful]}  # type: ignore[misc]
    score = score_folder(folder(tmp_path, both))
    assert (score.doubts_raised, score.doubts_due) == (0, 1)
    assert score.undoubted == [("a.eml", 2, "od")]


def test_a_wrong_kind_is_named_with_the_reason(tmp_path: Path) -> None:
    score = score_folder(folder(tmp_path, {**RIGHT, "kind": "automatic"}))
    file, gold, ours, why = score.wrong_kinds[0]
    assert (file, gold, ours) == ("a.eml", "automatic", "sizes")
    assert why
    assert score.automatic() == (1, 0, 0)


def test_a_missing_message_is_named_and_the_rest_scored(tmp_path: Path) -> None:
    score = score_folder(folder(tmp_path, {"file": "gone.eml", "kind": "other"}, RIGHT))
    assert score.faults == ["gone.eml: cannot be read (No such file or directory)"]
    assert score.messages == 1


def test_labels_that_cannot_be_read_are_named_by_line(tmp_path: Path) -> None:
    with pytest.raises(ScoreError) as missing:
        score_folder(tmp_path)
    assert str(missing.value) == (
        f"{tmp_path / 'gold.jsonl'}: no labels to score against (No such file or directory)"
    )
    folder(tmp_path, RIGHT, {"file": "a.eml", "kind": "sized"})
    with pytest.raises(ScoreError, match=r"gold\.jsonl line 2: kind: Input should be"):
        score_folder(tmp_path)


def test_an_empty_score_divides_by_nothing() -> None:
    assert Score().stated == 0
