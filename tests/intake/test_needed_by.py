"""The day of delivery: what governs a date, how it is written, and from when it counts."""

from __future__ import annotations

import time
from datetime import date

import pytest

from bendreply.intake.model import Address, Message, OwnText
from bendreply.intake.reading import read
from bendreply.intake.reading.dates import find_needed_by

SENT = date(2026, 11, 4)
"""A Wednesday in ISO week 45."""


def needed(text: str, *, american: bool = True) -> date | None:
    return find_needed_by(text, SENT, american=american).day


WRITTEN = [
    ("We need these by end of March.", date(2027, 3, 31)),
    ("needed wk 49", date(2026, 12, 4)),
    ("Liefertermin KW 2", date(2027, 1, 15)),  # Friday of ISO week 2 of 2027
    ("Lieferung KW 49, spätestens 02.12.2026", date(2026, 12, 2)),
    ("Bedarf: KW 49, also 03.12.2026", date(2026, 12, 3)),
    ("Delivery within 6 weeks i.e. on 22.12.2026", date(2026, 12, 22)),
    ("Need by 12/11.", date(2026, 12, 11)),
    ("Due : '26.11.30", date(2026, 11, 30)),
    ("Arrival date 2026/12/10 at our factory", date(2026, 12, 10)),
    ("delivery reqd by 4-Dec-26", date(2026, 12, 4)),
    ("Need date 09 DEC 2026", date(2026, 12, 9)),
    ("I want it before seeding - call it the first of May.", date(2027, 5, 1)),
    ("Need her here Monday the 16th.", date(2026, 11, 16)),
    ("need it by cinco de mayo ha ha no seriously 5/5", date(2027, 5, 5)),
    ("Need them before Christmas.", date(2026, 12, 24)),
    ("We'd like delivery the week of December 7", date(2026, 12, 11)),  # that week's Friday
    ("brauchen wir bis zum 15.", date(2026, 11, 15)),
    ("Zum Abholen am Freitag, 20. November.", date(2026, 11, 20)),
    ("Lieferung innerhalb von 3 Wochen", date(2026, 11, 25)),
    ("à livrer avant fin novembre", date(2026, 11, 30)),
    ("délai : semaine 50", date(2026, 12, 11)),
    ("lo necesitamos para el 15 de diciembre", date(2026, 12, 15)),
    ("fecha de entrega: finales de noviembre", date(2026, 11, 30)),
    ("ci servono per il 15 dicembre", date(2026, 12, 15)),
    ("consegna entro fine novembre", date(2026, 11, 30)),
    ("Moet er uiterlijk vrijdag 18 december zijn", date(2026, 12, 18)),
    ("termin dostawy do 15 grudnia", date(2026, 12, 15)),
]  # fmt: skip


@pytest.mark.parametrize(("text", "day"), WRITTEN)
def test_a_day_of_delivery_in_many_spellings(text: str, day: date) -> None:
    assert needed(text) == day


GOVERNED = [
    ("Quote needed by Nov 10.", None),
    ("Your bid should reach us by Nov 10.", None),
    ("Angebot benötigt bis 12.11.2026", None),
    ("RFQ 26-1187 / tooling / due 11/10", None),
    ("RFQ due 11/10; delivery due 12/04/2026", date(2026, 12, 4)),
    ("We will order by Nov 20, need delivery by Dec 18", date(2026, 12, 18)),
    ("Our parts are due Dec 18", None),
    ("Job starts Dec 7. Need it by Dec 4.", date(2026, 12, 4)),
    ("Delivery should be 4 December", date(2026, 12, 4)),
    ("the vessel leaves 10 December so we should have it here 26 November", date(2026, 11, 26)),
    ("docking window is November 19 thru 23, so November 19 is your date", date(2026, 11, 19)),
    ("last one was delivered in 3 weeks", None),
    ("Back in the office on Nov 16", None),
    ("invoice dated 12/02/2026", None),
    ("Need it by Dec 4, sorry, Dec 11", date(2026, 12, 11)),
    ("deliver 3/4 x .049 tube mandrel", None),
    ("need 2 on 1/8 wall", None),
    ("delivery by Nov 31", None),
    ("needed early December", None),
]


@pytest.mark.parametrize(("text", "day"), GOVERNED)
def test_the_words_before_a_date_say_what_it_is_for(text: str, day: date | None) -> None:
    assert needed(text) == day


def test_other_dates_in_the_mail_show_the_senders_order() -> None:
    found = find_needed_by("Quote due 13/11/2026. Delivery 5/12/2026", SENT, american=True)
    assert found.day == date(2026, 12, 5)
    assert found.doubt is None


def test_writers_of_other_languages_put_the_day_first_wherever_they_are() -> None:
    text = "Necesitamos la entrega antes del 5/12/2026 para el taller"
    assert needed(text, american=True) == date(2026, 12, 5)


def test_a_date_that_would_be_past_is_read_the_other_way_round() -> None:
    found = find_needed_by("Needed by 3/12/2026", SENT, american=True)  # March 12 is past
    assert found.day == date(2026, 12, 3)
    assert found.doubt is not None


def test_a_day_of_the_week_that_does_not_fit_is_doubted() -> None:
    found = find_needed_by("Delivery by Friday 5 December", SENT, american=True)
    assert found.doubt is not None
    assert found.doubt.readings == ("2026-12-05", "2026-12-04")  # the 5th is a Saturday


@pytest.mark.parametrize("sent_on", [date(1, 1, 1), date(9999, 12, 31)])
def test_a_clock_that_is_wrong_by_centuries_counts_for_nothing(sent_on: date) -> None:
    assert find_needed_by("need it in 3 weeks, by Friday", sent_on, american=True).day is None


def _days(text: str) -> list[date | None]:
    message = Message(
        message_id="x@example.com", sender=Address(name="", address=""), body=text, sent_on=SENT
    )
    own = OwnText(text=message.text, body_start=message.body_start, subject_counts=True)
    return [request.needed_by for request in read(own, message).requests]


ROWS = [
    "OD\tWall\tCLR\tDelivery\n1.5\t.065\t4.5\t2026-12-04\n2\t.083\t6\t2026-12-18",
    "item;OD [in];wall [in];CLR [in];dock\n1;1.5;.065;4.5;2026-12-04\n2;2;.083;6;2026-12-18",
    "need by:\n1.5 x .065 x 4.5 clr, 12/4/2026\n2 x .083 x 6 clr, 12/18/2026",
]


@pytest.mark.parametrize("text", ROWS)
def test_every_row_may_have_its_own_day(text: str) -> None:
    assert _days(text) == [date(2026, 12, 4), date(2026, 12, 18)]


@pytest.mark.parametrize("snippet", ["1", "1/", "a ", "by friday ", "1/1 ", "end of ", "need "])
def test_finding_the_day_takes_time_in_proportion_to_the_length(snippet: str) -> None:
    text = snippet * (100_000 // len(snippet))
    start = time.process_time()
    find_needed_by(text, SENT, american=True)
    assert time.process_time() - start < 2.0
