"""One size told of and one asked for in the same breath: what is told of lends nothing in silence,
and what is asked for by 'the same' takes over the rest."""

# ruff: noqa: E501 - a row of a table stands on one line

from __future__ import annotations

from datetime import date
from decimal import Decimal

import pytest

from bendreply.intake.pasted import text_message
from bendreply.intake.pipeline import understand

from .support import row, written_down

_TODAY = date(2026, 11, 26)
_INCH = Decimal("25.4")
_ASKED = ("1.5", "0.049", "4.5")
_METRIC = ("30", "2", "90")


def _inch(*lengths: str) -> list[Decimal]:
    return [Decimal(length) * _INCH for length in lengths]


def _mm(*lengths: str) -> list[Decimal]:
    return [Decimal(length) for length in lengths]


def _sure(text: str) -> list[list[Decimal | None]]:
    """OD, wall and radius of the sizes of which no length is in doubt."""
    found = understand(text_message(text, _TODAY)).requests
    lengths = {"od", "wall", "clr"}
    return [
        [r.od_mm, r.wall_mm, r.clr_mm]
        for r in found
        if not any(d.field in lengths for d in r.doubts)
    ]


@pytest.mark.parametrize(
    ("text", "asked"),
    [
        # taken back whole, in any notation
        row("forget", 'Please quote 1.5 x .049 wall on a 4.5" CLR, forget the 2.5 OD .083 wall at 10 in CLR.', _inch(*_ASKED)),
        row("forget-behind", 'Please quote 1.5 x .049 on a 4.5" CLR. Forget the 2.5 x .083 on a 10 in CLR.', _inch(*_ASKED)),
        row("no-longer-need", 'No longer need 2.5" OD 2.310" ID with a 7.5 clr. Please quote a mandrel for 1.5 x .049 on a 4.5 CLR.', _inch(*_ASKED)),
        row("instead-of", "Need a mandrel for 1.5 x .049 on 4.5 inch CLR instead of the 3 x .120 on a 12 inch CLR I asked for.", _inch(*_ASKED)),
        row("not-yet", 'Looking for 1.5 x .049 with a 4.5 inch CLR (not the 1-1/4" sch 40 on 9 in CLR yet).', _inch(*_ASKED)),
        row("bracket-wall-first", "I need 1.5 x .049 on 4.5 CLR (not the .065 wall 1.25 tubing on a 6 CLR yet), thanks.", _inch(*_ASKED)),
        row("vergessen", "Bitte 30 x 2 mit R 90 anbieten. Vergessen Sie die 40 x 3 mit R 120.", _mm(*_METRIC)),
        row("oubliez", "Merci de chiffrer un mandrin 30 x 2 rayon 90. Oubliez le 40 x 3 avec rayon 120.", _mm(*_METRIC)),
        # a clause of its own tells
        row("we-run", "Looking for 1.5 x .049 on a 4.5 CLR, we run 1-3/8 x .083 on a 4.25 inch CLR at the moment.", _inch(*_ASKED)),
        row("we-run-price", "1.5 x .049 on a 4.5 CLR, we run 1-3/8 x .083 on a 4.25 inch CLR at the moment. Price please.", _inch(*_ASKED)),
        row("normally", 'We normally bend 1" sch 40 pipe on 6 clr but can you quote 1.5 x .049 to a 4.5 CLR?', _inch(*_ASKED)),
        row("since-it-kinked", "Looking for 1.5 x .049 on a 4.5 CLR since 3 x .095 on a 12 CLR kinked.", _inch(*_ASKED)),
        row("to-replace", "Looking for 1.5 x .049 on a 4.5 CLR to replace our old 2 x .083 on 7 CLR.", _inch(*_ASKED)),
        row("i-have", "The 2 x .083 I have, what I need is 1.5 x .049, 4.5 inch centerline radius.", _inch(*_ASKED)),
        row("comes-later", "Want to order one for 1.5 x .049 with a 4.5 CLR, 2-1/4 x .065 on 8 CLR comes later.", _inch(*_ASKED)),
        row("biegen-wir", "Wir suchen einen Dorn für 30 x 2 auf R 90, derzeit biegen wir 40 x 3 auf R 120.", _mm(*_METRIC)),
        # a sentence of its own tells
        row("every-time", "We tried 2 x .083 on 7 CLR and it kinked every time. So what I'm after is 1.5 x .049 on a 4.5 CLR.", _inch(*_ASKED)),
        row("came-tooled", "The machine came tooled for 2 x .083 on 7 CLR.\nMandrel for 1.5 x .049 at 4.5 CLR please", _inch(*_ASKED)),
        row("your-price", "You already sent me a price on 2 x .083 with a 7 CLR, thanks. What I'm short of is 1.5 x .049 on 4.5 CLR.", _inch(*_ASKED)),
    ],
)  # fmt: skip
def test_only_the_size_asked_for_is_sure(text: str, asked: list[Decimal]) -> None:
    assert _sure(text) == [asked]


@pytest.mark.parametrize(
    ("text", "asked"),
    [
        row("same-thing-in", 'Our bread and butter is 1.5 x .083, 5 inch CLR. Can you do the same thing in 2.5"?', _inch("2.5", "0.083", "5")),
        row("same-both-but", 'The shop down the street uses 2.25" OD x .083" wall, 7" CLR. Price for the same wall and radius but 1.375"?', _inch("1.375", "0.083", "7")),
        row("same-for", 'The machine came tooled for 1 3/4 x .065 on a 6" radius. Please quote the same for 1 1/4".', _inch("1.25", "0.065", "6")),
        row("same-but-wall", "Right now we run 63.5 x 2.6 mm at 159 mm radius. Please quote the same but 1.5 mm.", _mm("63.5", "1.5", "159")),
        row("same-in-wall", 'In stock here: 1 1/4 x .083 on 4" clr. Please quote the same in .065 wall.', _inch("1.25", "0.065", "4")),
        row("das-gleiche", "Letztes Jahr hatten wir 42,4 x 2 auf R 100 von Ihnen. Bitte das gleiche in 48,3 anbieten.", _mm("48.3", "2", "100")),
        row("la-meme-chose", "L'an dernier vous nous avez fait un mandrin 30 x 2, rayon 90. Il nous faut la même chose en 35.", _mm("35", "2", "90")),
        row("lo-mismo", "El año pasado compramos un mandril para 30 x 2 con radio 90. Necesitamos lo mismo en 35 mm.", _mm("35", "2", "90")),
    ],
)  # fmt: skip
def test_what_is_the_same_but_for_one_length_takes_over_the_rest(
    text: str, asked: list[Decimal]
) -> None:
    assert _sure(text) == [asked]


@pytest.mark.parametrize(
    "text",
    [
        row("kinked", "We tried 1.75 x .083 on a 7 CLR and it kinked every time. Could you price one for 1.5 x .049?"),
        row("dropped", "No longer need 2-1/2 x .083 on a 10 in CLR. Can you do a mandrel for 1.5 x .049 wall?"),
        row("owner", "The previous owner used it for 2 x .083 at 7 inch radius. Please quote a mandrel for 1.5 x .049."),
        row("last-year", "Last year I bent 2 x .083 on a 7 CLR.\n\nNow we need one for 1.5 x .049."),
    ],
)  # fmt: skip
def test_a_radius_of_what_is_only_told_of_is_not_stated_for_another_tube(text: str) -> None:
    found = understand(text_message(text, _TODAY)).requests
    (asked,) = [r for r in found if r.od_mm == Decimal("38.1")]
    assert asked.wall_mm == Decimal("1.2446")  # .049 in
    open_or_doubted = asked.clr_mm is None or any(d.field == "clr" for d in asked.doubts)
    assert open_or_doubted, written_down(found)


@pytest.mark.parametrize(
    ("text", "count"),
    [
        row("radius-of-the-first", "Please quote 1.5 x .095, not 1.5 x .065, on a 4.5 CLR.", 1),
        row("per-radius", 'Everything is 1-3/4 x .083 4130. We have a 5" CLR die and a 7" CLR die and use both. One mandrel for each radius please.', 2),
        row("off-to-suit", "Please price up 4 off mandrels to suit 19.05 OD x 1.63 wall on a 57 CLR, and 2 off to suit 25.4 x 1.63 on a 76 CLR.", 2),
        row("one-plus-one", "I need one for 1.5 x .049 on 4.5 CLR, plus one for 1.75 x .065 on 6 CLR. Most of what we bend is 2 x .083 on 7 CLR.", 2),
        row("as-well", "Please quote 1.5 x .049 on a 4.5 CLR, we have 2 x .083 on 7 CLR to bend as well.", 2),
    ],
)  # fmt: skip
def test_words_like_these_that_leave_nothing_in_doubt(text: str, count: int) -> None:
    assert len(_sure(text)) == count
