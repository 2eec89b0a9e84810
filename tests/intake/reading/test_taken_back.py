"""Words of having, not needing or picking that are on no size of the list: nothing is doubted; and
those that may be on one: all are."""

# ruff: noqa: E501 - a row of a table stands on one line

from __future__ import annotations

import pytest

from .support import read_text, row, written_down

_PAIR = "Mandrels please, one of each:\n- 1.5 x .065 304, 4.5 clr\n- 1.75 x .095 304, 5.25 clr\n\n"
_METRIC = "- 25 x 2, R 50, S235\n- 30 x 2, R 60, S235\n\n"

OF_NO_SIZE = [
    row("wiper-owned", _PAIR + "The wiper dies we already have."),
    row("clamps-covered", _PAIR + "Clamps and formers are covered."),
    row("raschiatore", "Preventivo per due mandrini, uno per tipo:\n" + _METRIC + "Il raschiatore lo abbiamo già."),
    row("faltenglaetter", "Bitte Dorne anbieten, je 1 Stück:\n" + _METRIC + "Die Faltenglätter haben wir schon."),
    row("lisseur", "Prix pour un mandrin de chaque:\n" + _METRIC + "Le lisseur, on l'a déjà."),
    row("alisador", "Precio de un mandril de cada:\n" + _METRIC + "El alisador ya lo tenemos."),
    row("gladstrijker", "Graag prijs voor een doorn van elk:\n" + _METRIC + "De gladstrijkers hebben we al."),
    row("welder-says", _PAIR + "My welder says the braces don't need one but he's not the one paying for scrapped tube."),
    row("boss-thinks", _PAIR + "The boss thinks we don't need any of this but I do the bending, not him."),
    row("kollege-meint", "Bitte Dorne anbieten, je 1 Stück:\n" + _METRIC + "Mein Kollege meint, das geht ohne Dorn, aber er biegt ja nicht."),
    row("just-1", "need a mandrel for 1.5 x .065 304, 4.5 clr and one for 1.75 x .095 304, 5.25 clr. just 1 of each."),
]  # fmt: skip

MAY_BE_MEANT = [
    row("just-1-of-numbers", "1) 1.5 x .065 on 4.5 clr\n2) 1.75 x .095 on 5.25 clr\nMandrels. Just 1 please."),
    row("only-2", "Only 2 please: 1.5 x .065 on 4.5 clr, 1.75 x .095 on 5.25 clr, 2 x .120 on 6 clr. Mandrels."),
    row("mandrel-for-the-die", "Tooling for 1.5 x .065 on 4.5 clr and 1.75 x .095 on 5.25 clr. For the second die we already have a mandrel."),
    row("boss-and-no-but", _PAIR + "My boss says the thin ones don't need one."),
]  # fmt: skip


@pytest.mark.parametrize("text", OF_NO_SIZE)
def test_what_is_on_no_size_raises_no_doubt(text: str) -> None:
    requests = read_text(text)
    assert len(requests) == 2, written_down(requests)
    assert not any(request.doubts for request in requests), written_down(requests)


@pytest.mark.parametrize("text", MAY_BE_MEANT)
def test_what_may_be_on_one_is_doubted(text: str) -> None:
    requests = read_text(text)
    assert len(requests) >= 2, written_down(requests)
    assert all(request.doubts for request in requests), written_down(requests)
