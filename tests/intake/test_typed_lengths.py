"""What a person types at ``correct`` is taken as typed, or refused: never put right in silence."""

from __future__ import annotations

from decimal import Decimal

import pytest

from bendreply.intake.typed_lengths import NoLength, typed_length


@pytest.mark.parametrize(
    ("field", "words", "unit", "mm"),
    [
        ("wall", "30mm", "in", "30"),
        ("wall", "3in", "in", "76.2"),  # 3 x 25.4
        ("wall", ".83 in", "in", "21.082"),  # no slipped point: .83 x 25.4
        ("od", "-5in", "in", "-127"),
        ("od", "5000 mm", "in", "5000"),
        ("od", "1 3/4 in", "mm", "44.45"),
        ("od", "1-3/4", "mm", "44.45"),  # fractions are inches
        ("od", "1½″", "in", "38.1"),
        ("od", "38,1 mm", "in", "38.1"),
        ("wall", "95 thou", "mm", "2.413"),  # 0.095 x 25.4
        ("wall", "0 mm", "mm", "0"),
        ("wall", "16ga", "in", "1.651"),  # BWG 16 is 0.065 in
        # Bare numbers: the one unit that makes a tube of it, else the sender's.
        ("wall", ".095", "mm", "2.413"),
        ("wall", "2", "in", "2"),
        ("clr", "57", "in", "57"),
        ("clr", "6", "in", "152.4"),
        ("clr", "6", "mm", "6"),
    ],
)
def test_as_typed(field, words: str, unit, mm: str) -> None:
    assert typed_length(field, words, unit) == Decimal(mm)


@pytest.mark.parametrize(
    ("field", "words"),
    [
        ("od", "banana"),
        ("od", "16ga"),
        ("od", "NPS 1-1/2"),  # a name: its OD is 48.26 mm, not 38.1
        ("od", "1 ft 2 in"),
        ("od", "1.5.2 in"),
        ("od", "1/3 in"),
        ("wall", "1,245 mm"),
        ("wall", "83"),
        ("clr", "3D"),
        ("od", ""),
    ],
)
def test_what_is_no_one_length_is_refused(field, words: str) -> None:
    with pytest.raises(NoLength):
        typed_length(field, words, "in")
