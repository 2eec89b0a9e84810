"""The reason of a message's kind quotes whole figures, and no dimension as a count."""

from __future__ import annotations

import pytest

from bendreply.intake.errand import weigh


@pytest.mark.parametrize(
    "text",
    [
        "1.5 x .065 304, 4.5 CLR need mandrel",
        "Tube 1.75 x .095 on 5 CLR, mandrel please",
        "2 OD 16 ga mandrel, 6 CLR",
    ],
)
def test_no_dimension_counts(text: str) -> None:
    """'5 CLR need mandrel' counts nothing."""
    assert "counts them" not in weigh(text, 1).tooling.why


def test_a_count_is_told() -> None:
    """Two mandrels are two."""
    assert (
        'counts them ("2 mandrels")' in weigh("2 mandrels for 1.5 x .065, 4.5 CLR", 1).tooling.why
    )


def test_whole_figures_are_quoted() -> None:
    """'Need 1.5 x .065' does not ask for one."""
    why = weigh("Need 1.5 x .065, 4.5 CLR, mandrel", 1).tooling.why
    assert '"need 1"' not in why
