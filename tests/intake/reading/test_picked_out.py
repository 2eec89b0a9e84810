"""Sizes that stand beside the one that is asked for, told by structure: they are in doubt."""

# ruff: noqa: E501 - a row of a table stands on one line: the words, then their meaning

from __future__ import annotations

from collections.abc import Sequence
from decimal import Decimal

import pytest

from bendreply.rules.request import SizeRequest

from .support import read_text, row, written_down


def _asked(name: str, text: str, *ods: str) -> object:
    """``ods``: the tubes that are asked for; each other size has to be in doubt, or left out."""
    return row(name, text, {Decimal(od) for od in ods})


ROWS = [
    _asked("line-asks", "Client 1 / 20 x 1.5 / R 40 / supplies the tool\nClient 2 / 26 x 1.5 / R 52 / supplies nothing, so 1 mandrel from you", "26"),
    _asked("line-asks-new", "Armrest: 21 x 2, R 63, tooling comes from a sister firm.\nBackrest: 24 x 2, R 72, needs a new mandrel.", "24"),
    _asked("line-asks-es", "Útiles del taller:\n60 x 2 / R 90 - bien\n66 x 2 / R 99 - roto, un mandril nuevo por favor", "66"),
    _asked("by-letter", "Order K, 24 x 1.5 at 48 mm, has been on your tools since May. Order L is new: 21 x 1 at 42 mm. Need mandrels for order L only.", "21"),
    _asked("by-name", "Ladder sides 41 x 2 on 120 stay as they are, steps 31 x 2 on 90 are new here. Mandrel for the steps please.", "31"),
    _asked("latter", "40 x 1.5 R 60 liegt bei uns im Schrank, 42 x 1.5 R 63 nicht. Für letzteres bitte 1 Dorn anbieten.", "42"),
    _asked("like-that", "Can you make a mandrel like the one for 66 x 2 / R 130 from 2024, but for 76 x 2 / R 150?", "76"),
    _asked("like-that-in", "Same style as my 2 x .065 / 4 CLR mandrel please, in 2.5 x .065 / 5 CLR.", "63.5"),
    _asked("drawer", "What's in the drawer: 7/8 x .065 on 2-5/8, 1-1/8 x .083 on 3-3/8.\nWhat's not, and what I ask for: 1 x .065 on 3. One please.", "25.4"),
    _asked("have-not", "Have: 36 x 1.5 R 54, 40 x 2 R 80. Have not: 46 x 2 R 92. Please offer the missing one.", "46"),
    _asked("came-de", "Mit der alten Presse kamen Dorne für 18 x 1,5 und 21 x 1,5. Was fehlt, ist 26 x 1,5 auf R 52. Davon bitte drei Stück.", "26"),
    _asked("original", "We rebuild an old pram. Original: 20.5 x 1.5 on 45 mm. Ours: 20.5 x 2 on 55 mm. So a mandrel to ours, please.", "20.5"),
    _asked("came-ps", "Please offer one mandrel to suit tube 46.6 x 2.3 mm with 110 mm centreline radius.\n\nPS: The 41.7 x 2.3 arrived yesterday. Perfect.", "46.6"),
    _asked("runs-fr", "L'affaire A en 34 x 2 R 68 tourne. Il manque le 39 x 2 R 78, un mandrin svp.", "39"),
]  # fmt: skip

ALL_ASKED = [
    _asked("each-named", "Frame: 31 x 2, R 93\nRail: 36 x 2, R 108\nOne mandrel for the frame, and the rail man wants two of his.", "31", "36"),
    _asked("counts-by-line", "31 x 2, R 93: 1 mandrel\n36 x 2, R 108, stainless: 2 mandrels", "31", "36"),
]  # fmt: skip


def _sure(requests: Sequence[SizeRequest]) -> set[Decimal | None]:
    return {r.od_mm for r in requests if all(doubt.about != "size" for doubt in r.doubts)}


@pytest.mark.parametrize(("text", "ods"), ROWS)
def test_nothing_else_is_sure(text: str, ods: set[Decimal]) -> None:
    requests = read_text(text)
    shown = f"{text}\n{written_down(requests)}"
    assert ods <= {request.od_mm for request in requests}, shown
    assert _sure(requests) <= ods, shown


@pytest.mark.parametrize(("text", "ods"), ALL_ASKED)
def test_all_that_is_asked_for_is_sure(text: str, ods: set[Decimal]) -> None:
    requests = read_text(text)
    assert _sure(requests) == ods, f"{text}\n{written_down(requests)}"
