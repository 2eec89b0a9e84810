"""The customer's words shown with a reason are whole words, and few."""

from __future__ import annotations

import re

import pytest

from bendreply.intake.said_words import said_words


@pytest.mark.parametrize(
    ("pattern", "text", "said"),
    [
        ("mandr", "do you sell mandrels?", "mandrels"),
        ("andrel", "do you sell mandrels?", "mandrels"),
        (r"ask\s+a\s+price", "I ask\n  a price", "ask a price"),
        (".+", "x" * 100, "x" * 58 + " …"),
        (".+", "please cancel the order that we placed with you in the middle of last week",
         "please cancel the order that we placed with you in the …"),
    ],
)  # fmt: skip
def test_words_are_shown_whole(pattern: str, text: str, said: str) -> None:
    found = re.search(pattern, text)
    assert found is not None
    assert said_words(found) == said
    assert len(said) <= 60
