"""Chains of figures beside a count in the same list, and behind a sentence that ends with a cue."""

from __future__ import annotations

from decimal import Decimal

import pytest

from .support import read_text

LISTS = [
    "Tube 18 x 1.5 / CLR 36 / qty 2",
    "Rohr Ø 18 x 1,5 / Radius 36 / 2 Stück",
    "Tube 18 x 1,5 mm / rayon 36 / 2 pièces",
    "18 x 1,5 mm / straal 36 / 2 st",
    "qty 2 / Tube 18 x 1.5 / CLR 36",
]


@pytest.mark.parametrize("line", LISTS)
def test_a_count_that_ends_a_list_of_slashes(line: str) -> None:
    (request,) = read_text(f"Please quote mandrels, all dimensions in mm.\n\n{line}")
    assert (request.od_mm, request.wall_mm, request.clr_mm) == (18, Decimal("1.5"), 36)
    assert request.quantity == 2


SENTENCES = [
    "My mandrel broke off behind the first ball.",
    "The mandrel snapped at the front bolt.",
    "It scratches the inside wall.",
    "The weld seam is on the inside wall.",
    "It kinks at the rear bend.",
    "Marks on the tube wall.",
]


@pytest.mark.parametrize("ahead", SENTENCES)
def test_a_tube_begins_behind_a_full_stop(ahead: str) -> None:
    (request,) = read_text(f"{ahead} 38 x 1.5 mm, R76. Need one.")
    assert (request.od_mm, request.wall_mm, request.clr_mm) == (38, Decimal("1.5"), 76)
