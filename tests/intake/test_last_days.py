"""The last possible day, days that a delivery word follows, and whose habit puts the day first."""

# ruff: noqa: E501 - a row of a table stands on one line: the words, then their meaning

from __future__ import annotations

from datetime import date

import pytest

from bendreply.intake.message import parse_message
from bendreply.intake.pipeline import understand
from bendreply.intake.reading.days.dates import find_needed_by

SENT = date(2026, 10, 2)

DAYS: list[tuple[str, str | None]] = [
    ("Can you do them before the end of the month? 30 October would be the last day that is any use to us.","2026-10-30"),
    ("We'd like it by the end of October; the 28th is the last possible day.","2026-10-28"),
    ("Need them end of next month. 25 November is the last day I can use them.","2026-11-25"),
    ("Ideally within three weeks. 26 October is the absolute latest.","2026-10-26"),
    ("By the end of the month would be great, October 29 is our drop dead date.","2026-10-29"),
    ("Wir brauchen ihn vor Monatsende, der 29. Oktober wäre der letzte Tag.","2026-10-29"),
    ("Lieferung bis Ende Oktober, der 28.10.2026 ist der letztmögliche Termin.","2026-10-28"),
    ("Livraison avant la fin du mois, le 29 octobre serait le dernier jour.","2026-10-29"),
    ("Lo necesitamos antes de fin de mes, el 29 de octubre sería el último día.","2026-10-29"),
    ("Consegna entro fine mese, il 29 ottobre sarebbe l'ultimo giorno utile.","2026-10-29"),
    ("Levering voor het einde van de maand, 29 oktober is de laatste dag.","2026-10-29"),
    ("möglichst bis Ende November lieferbar","2026-11-30"),
    ("bieten Sie uns einen neuen an, möglichst bis Ende November lieferbar.","2026-11-30"),
    ("lieferbar bis Mitte November","2026-11-15"),
    ("verfügbar bis Ende November","2026-11-30"),
    ("bis Ende Oktober lieferbar?","2026-10-31"),
    ("livrable fin novembre","2026-11-30"),
    ("livrable pour fin novembre si possible","2026-11-30"),
    ("disponibile entro fine novembre","2026-11-30"),
    ("leverbaar voor eind november","2026-11-30"),
    ("deliverable by the end of November","2026-11-30"),
    ("available by end of November?","2026-11-30"),
    ("Need them before the show so November 20 latest.","2026-11-20"),
    ("Need them before the race, so 20 November at the latest","2026-11-20"),
    ("We need it for the show, November 20 latest","2026-11-20"),
    ("Need it before the season so Nov 20 latest","2026-11-20"),
    ("Need one for the event, latest 20 November","2026-11-20"),
    ("Show is November 28, need them November 20 latest.","2026-11-20"),
    ("The race is November 28 so we need it by November 20","2026-11-20"),
    ("Wir brauchen sie vor der Messe, also spätestens 20. November","2026-11-20"),
    ("Il nous les faut avant le salon, donc le 20 novembre au plus tard","2026-11-20"),
    ("Los necesitamos antes de la feria, o sea el 20 de noviembre a más tardar","2026-11-20"),
    ("Ci servono prima della fiera, quindi entro il 20 novembre","2026-11-20"),
    ("We need them before the beurs, so uiterlijk 20 november","2026-11-20"),
    ("Show opens November 20. Price please.",None),
    ("Our season starts November 20.",None),
    ("Please quote by 20 November latest.",None),
    ("angebot bis Ende November gültig?",None),
    ("Angebot bis Ende Oktober bitte",None),
    ("The last day of our show is November 20.",None),
    ("30 October is my last day at the company, so call my colleague after that.",None),
    ("Quotes are due at the end of the month. 30 October is the last day we accept them.",None),
    ("Material available end of November.",None),
]  # fmt: skip


@pytest.mark.parametrize(("text", "day"), DAYS)
def test_the_strictest_day_that_is_named(text: str, day: str | None) -> None:
    found = find_needed_by(text, SENT, american="November 2" in text or "Nov " in text)
    assert (found.day.isoformat() if found.day else None) == day


def doubted(zone: str, words: str) -> bool:
    """Whether '09/10/26' is in doubt in a mail of 11 September with these words."""
    raw = (
        f"From: Ada <ada@example.org>\nSubject: mandrel\nDate: Fri, 11 Sep 2026 11:30:44 {zone}\n\n"
        f"One mandrel for 38 x 2 mm tube, R 76 mm. Delivery no later than 09/10/26. {words}\n"
    )
    (request,) = understand(parse_message(raw.encode())).requests
    assert request.needed_by == date(2026, 10, 9)
    return request.doubt_on("needed_by") is not None


SURE = [
    ("+0100", ""), ("+0200", ""), ("+0530", ""), ("+1000", ""), ("+1300", ""),
    ("+0000", "Centreline radius please."), ("+0000", "Aluminium."), ("+0000", "Price in £."),
    ("+0000", "O/D is to spec."), ("+0000", "Plus VAT."), ("+0800", "Perth, aluminium."),
    ("+0000", "Ring me on 01632 960772."), ("+0000", "Quote due 25/09/26."),
]  # fmt: skip
UNSURE = [
    ("+0000", ""), ("+0800", ""), ("+0000", "Aluminum."), ("+0100", "Centerline radius."),
    ("+0200", "Aluminum."), ("+0000", "Call me."), ("+0100", "Budget is $400."),
]  # fmt: skip


@pytest.mark.parametrize(("zone", "words"), SURE)
def test_the_day_comes_first_where_clock_or_spelling_say_so(zone: str, words: str) -> None:
    assert not doubted(zone, words)


@pytest.mark.parametrize(("zone", "words"), UNSURE)
def test_the_doubt_stays_where_nothing_tells(zone: str, words: str) -> None:
    assert doubted(zone, words)
