"""Days that are for some of several sizes only, and days that are none of the mandrel's: those of
the customer's own bends, of an offer to come by, of an earlier mail."""

# ruff: noqa: E501 - a row of a table stands on one line

from __future__ import annotations

import pytest

from bendreply.intake.message import parse_message
from bendreply.intake.pipeline import understand


def _days(text: str) -> list[str]:
    head = "From: a@example.com\nDate: Tue, 06 Oct 2026 10:00:00 +0000\nContent-Type: text/plain; charset=utf-8\nContent-Transfer-Encoding: 8bit\n\n"
    return [
        str(size.needed_by) for size in understand(parse_message((head + text).encode())).requests
    ]


_THREE = (
    "One mandrel each:\n1) 44.5 x 2.0, CLR 90 mm\n2) 50 x 3.0, CLR 125 mm\n3) 60 x 3, CLR 150 mm\n"
)
_DREI = "Bitte je einen Dorn:\n1) 44,5 x 2,0, R 90 Mitte\n2) 50 x 3,0, R 125 Mitte\n3) 60 x 3, R 150 Mitte\n"


@pytest.mark.parametrize(
    "text",
    [
        _THREE + "Line 3 asap, the rest by November 27.",
        _THREE + "Items 1 and 2 by November 27, item 3 no hurry.",
        _THREE + "Lines 1 and 2 are needed by 27 November 2026.",
        _DREI + "Zeile 3 ist eilig, die anderen bis 27.11.2026.",
        _DREI + "Position 3 so schnell wie möglich, der Rest bis 27.11.2026.",
        _DREI + "Pos. 1 und 2 bis 27.11.2026, Pos. 3 eilt nicht.",
    ],
)
def test_the_one_day_is_for_the_others(text: str) -> None:
    assert _days(text) == ["2026-11-27", "2026-11-27", "None"]


@pytest.mark.parametrize(
    "said",
    [
        "Everything by November 27, item 3 is the one for the boat.",
        "Item 3 is 304. All by November 27.",
        "We need them by November 27.",
    ],
)
def test_the_one_day_is_for_all(said: str) -> None:
    assert _days(_THREE + said) == ["2026-11-27"] * 3


def test_a_day_for_a_job_that_is_called_by_its_number() -> None:
    jobs = "Job 7741: 44.5 OD x 2.0 wall, CLR 90, 1 mandrel.\nJob 7742: 50 OD x 3.0 wall, CLR 125, 1 mandrel.\nAll mm. "
    assert _days(jobs + "7742 has to ship by 4 Dec 2026, 7741 whenever.") == ["None", "2026-12-04"]


_ONE = "One mandrel for 38 x 2 mm on a 76 mm CLR please. "


@pytest.mark.parametrize(
    "said",
    [
        "We have 60 bends to do before Christmas.",
        "I've 12 frames to build by December 18.",
        "There are 200 elbows to make before 12 December.",
        "Wir haben 300 Bögen bis Weihnachten zu biegen.",
        "Nous avons 300 coudes à cintrer avant Noël.",
        "Tenemos 300 codos que hacer antes de Navidad.",
        "Abbiamo 300 curve da fare entro Natale.",
        "We hebben 300 bochten te buigen voor Kerst.",
        "Can collect Thursday if you're near the station.",
        "Could pick it up Friday if you are open.",
        "Ich könnte ihn am Freitag abholen, wenn Sie da sind.",
    ],
)
def test_no_day_of_the_mandrel(said: str) -> None:
    assert _days(_ONE + said) == ["None"]


@pytest.mark.parametrize(
    "said",
    [
        "We shut down the week of Dec 14 and I need it in by December 8.",
        "We are shut the week of Dec 14, so it has to be here by December 8.",
        "It must be fitted by December 14, so it has to arrive by December 8 at the latest.",
        "We have 60 bends to do before Christmas, so we need the mandrel by December 8.",
        "Hay que tenerlo montado el 14 de diciembre, que llegue como tarde el 8 de diciembre.",
    ],
)
def test_the_day_of_coming_beside_another(said: str) -> None:
    assert _days(_ONE + said) == ["2026-12-08"]


def test_a_day_of_an_earlier_mail_is_not_next_years() -> None:
    mail = (
        "Same again as below please.\n\n> From: Ann Lee\n> Sent: 14 April 2026\n"
        "> We order 1 mandrel for tube 42.4 x 2 mm, 304, radius 90 mm.\n> Deliver by 8 May.\n"
    )
    assert _days(mail) == ["None"]
