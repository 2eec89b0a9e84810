"""Spaces that say nothing change no reading; columns that spaces set apart stay."""

from __future__ import annotations

from datetime import date

import pytest

from bendreply.intake.pasted import text_message
from bendreply.intake.pipeline import understand
from bendreply.intake.spacing import even_spaces


@pytest.mark.parametrize(
    ("text", "evened"),
    [
        ("One mandrel please.  It is for 1.5 x .065.", "One mandrel please. It is for 1.5 x .065."),
        ("R 76.  38 x 2?  Thanks!", "R 76.  38 x 2?  Thanks!"),  # too short to tell from numbers
        ("38 x 2, R 76 mm   \nThanks \n", "38 x 2, R 76 mm\nThanks\n"),
        ("Item no.  OD    Wall", "Item no.  OD    Wall"),
        ("1.  38 x 2", "1.  38 x 2"),
        ("38 x 2, R 76\n-- \nJoe", "38 x 2, R 76\n-- \nJoe"),  # RFC 3676 4.3
        ("", ""),
    ],
)
def test_only_spaces_that_say_nothing_go(text: str, evened: str) -> None:
    assert even_spaces(text) == evened


@pytest.mark.parametrize(
    "text",
    [
        "We had 38 x 2 until now. One mandrel for 42.4 x 2, R 85 please. The 30s stay straight.",
        "Two mandrels please. The tube is 1.75 x .095. It goes round a 5.25 CLR die. Thanks.",
        "Wir haben Platz. Ein Dorn für 42,4 x 2 mit R 85 bitte. Bis 20. November. Danke.",
        "Mandrels, one each:\n38 x 1.5 R 76\n42.4 x 2 R 85\nTwo of the last. Thank you.",
    ],
)
def test_spaces_behind_sentences_and_lines_change_no_reading(text: str) -> None:
    sent = date(2026, 11, 2)
    plain = understand(text_message(text, sent))
    typed = text.replace(". ", ".  ").replace("\n", "  \n") + "  "
    spaced = understand(text_message(typed, sent))
    assert plain.requests
    assert [r.model_copy(update={"evidence": ()}) for r in spaced.requests] == [
        r.model_copy(update={"evidence": ()}) for r in plain.requests
    ]


@pytest.mark.parametrize("closing", ["Grüße aus Maßfeld", "\u0130stanbul", "Stra\u1e9ee"])
def test_letters_that_are_two_when_small_change_no_reading(closing: str) -> None:
    text = "Mandrels:\n38 x 1.5 R 76\n42.4 x 2 R 85\nTwo of the first and one of each other."
    sent = date(2026, 11, 2)
    counts = [r.quantity for r in understand(text_message(f"{text}\n\n{closing}", sent)).requests]
    assert counts == [2, 1]
