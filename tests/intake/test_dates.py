"""When the mandrel is needed: the day of delivery, counted from the day of the mail."""

# ruff: noqa: E501 - a row of a table stands on one line: the words, then their meaning

from __future__ import annotations

from datetime import date, timedelta

import pytest

from bendreply.intake.reading.days.dates import find_needed_by

from .reading.support import row

SENT = date(2026, 11, 4)
"""A Wednesday."""


def needed(text: str, *, american: bool = True) -> date | None:
    return find_needed_by(text, SENT, american=american).day


ON_A_DAY = [
    ("iso", "Need it by 2026-12-04.", date(2026, 12, 4)),
    ("slashes", "Need it by 12/4/2026.", date(2026, 12, 4)),
    ("short-year", "Delivery needed by 12/4/26.", date(2026, 12, 4)),
    ("no-year", "We need it here by 12/4.", date(2026, 12, 4)),
    ("no-year-next", "We need it here by 1/8.", date(2027, 1, 8)),  # the next January
    ("dashes", "required 11-20-2026", date(2026, 11, 20)),
    ("month-day", "Must have it by December 4.", date(2026, 12, 4)),
    ("month-day-year", "Must have it by December 4, 2026.", date(2026, 12, 4)),
    ("ordinal", "Needed by Dec 4th please.", date(2026, 12, 4)),
    ("day-month", "Delivery no later than 4 December 2026.", date(2026, 12, 4)),
    ("the-4th-of", "in hand by the 4th of December", date(2026, 12, 4)),
    ("next-january", "deliver by January 8", date(2027, 1, 8)),
    ("on-site", "It has to be on site on 20 November.", date(2026, 11, 20)),
    ("required-date", "Required date: 12/04/2026", date(2026, 12, 4)),
    ("latest", "mandrel here on 15 December 2026 the latest", date(2026, 12, 15)),
    ("de-dotted", "Liefertermin: 04.12.2026", date(2026, 12, 4)),
    ("de-spaetestens", "Wir brauchen den Dorn spätestens am 4. Dezember 2026.", date(2026, 12, 4)),
    ("de-bis", "Lieferung bis 04.12.", date(2026, 12, 4)),
    ("de-maerz", "benötigt bis 15. März 2027", date(2027, 3, 15)),
    ("fr", "livraison avant le 4 décembre 2026", date(2026, 12, 4)),
    ("fr-premier", "livraison au plus tard le 1er décembre 2026", date(2026, 12, 1)),
    ("es", "lo necesitamos antes del 4 de diciembre de 2026", date(2026, 12, 4)),
    ("it", "consegna entro il 4 dicembre 2026", date(2026, 12, 4)),
    ("nl", "levering uiterlijk 4 december 2026", date(2026, 12, 4)),
]  # fmt: skip


@pytest.mark.parametrize(("text", "day"), [row(f"date-{name}", *rest) for name, *rest in ON_A_DAY])
def test_a_day_that_is_named(text: str, day: date) -> None:
    assert needed(text) == day


COUNTED = [
    ("two-weeks", "We need it within two weeks.", SENT + timedelta(weeks=2)),
    ("from-today", "We need it 2 weeks from today.", SENT + timedelta(weeks=2)),
    ("from-now", "three weeks from now would be ideal", SENT + timedelta(weeks=3)),
    ("in-10-days", "Need delivery in 10 days.", SENT + timedelta(days=10)),
    ("friday", "Need it here by Friday.", date(2026, 11, 6)),  # Wednesday + 2
    ("next-friday", "Need it by next Friday.", date(2026, 11, 13)),  # of the week after
    ("the-20th", "Need it in hand by the 20th.", date(2026, 11, 20)),
    ("the-2nd", "Need it in hand by the 2nd.", date(2026, 12, 2)),  # November 2nd is past
    ("end-of-november", "Delivery by the end of November.", date(2026, 11, 30)),
    ("end-of-month", "We need it by end of the month.", date(2026, 11, 30)),
    ("mid-december", "needed by mid December", date(2026, 12, 15)),
    ("de-ende", "Lieferung bis Ende November", date(2026, 11, 30)),
    ("de-kw", "Liefertermin KW 49", date(2026, 12, 4)),  # Friday of ISO week 49
    ("fr-fin", "livraison pour fin novembre", date(2026, 11, 30)),
    ("de-zwei-wochen", "benötigt in zwei Wochen", SENT + timedelta(weeks=2)),
]  # fmt: skip


@pytest.mark.parametrize(("text", "day"), [row(f"date-{name}", *rest) for name, *rest in COUNTED])
def test_a_day_counted_from_the_mail(text: str, day: date) -> None:
    assert needed(text) == day


NO_DELIVERY = [
    ("quote-due", "Please send your quote by November 12."),
    ("quote-due-slash", "Quotes are due 11/12/2026."),
    ("angebot", "Bitte Ihr Angebot bis 12.11.2026."),
    ("devis", "Merci de nous envoyer votre devis avant le 12 novembre 2026."),
    ("oferta", "Envíen su oferta antes del 12 de noviembre de 2026."),
    ("offerta", "Inviateci l'offerta entro il 12 novembre 2026."),
    ("offerte", "Graag uw offerte voor 12 november 2026."),
    ("reply", "Please reply by Friday."),
    ("past", "You shipped the last one on 10/12/2026."),
    ("holiday", "We are closed from December 24."),
    ("validity", "Prices must be valid until 12/31/2026."),
    ("size", "Need 3/4 x .049 by 1-1/2 radius"),
    ("size-slash", "need 1/2 and 3/8 tube"),
    ("drawing-date", "See drawing 1234 of 10/2/2025."),
    ("nothing", "Need a mandrel for 1.75 x .095."),
    ("asap", "Need it ASAP."),
]


@pytest.mark.parametrize("text", [row(f"date-{name}", text) for name, text in NO_DELIVERY])
def test_a_date_that_is_no_delivery(text: str) -> None:
    assert needed(text) is None


BOTH = [
    ("two-dates", "Quote due November 12, delivery needed by December 4.", date(2026, 12, 4)),
    ("other-order", "Delivery needed by December 4, quote by November 12 please.", date(2026, 12, 4)),
    ("de-both", "Angebot bis 12.11.2026, Liefertermin 04.12.2026", date(2026, 12, 4)),
    ("dock", "Ship is in dock until 26.12., so mandrel here on 15.12.2026 the latest.", date(2026, 12, 15)),
]  # fmt: skip


@pytest.mark.parametrize(("text", "day"), [row(f"date-{name}", *rest) for name, *rest in BOTH])
def test_delivery_beside_another_date(text: str, day: date) -> None:
    assert needed(text) == day


def test_day_first_where_the_sender_is_not_american() -> None:
    found = find_needed_by("Needed by 4/12/2026.", SENT, american=False)
    assert found.day == date(2026, 12, 4)
    assert found.doubt is not None
    assert set(found.doubt.readings) == {"2026-12-04", "2026-04-12"}


def test_month_first_where_the_sender_is_american() -> None:
    assert needed("Needed by 12/4/2026.") == date(2026, 12, 4)


def test_a_day_over_twelve_settles_the_order() -> None:
    found = find_needed_by("Needed by 20/11/2026.", SENT, american=True)
    assert found.day == date(2026, 11, 20)
    assert found.doubt is None


def test_points_mean_day_first_even_in_america() -> None:
    assert needed("Needed by 04.12.2026") == date(2026, 12, 4)


@pytest.mark.parametrize(
    "text", ["needed by 31 February 2027", "needed by 13/32/2026", "needed by 2026-02-30"]
)
def test_no_such_day_is_left_for_a_person(text: str) -> None:
    assert needed(text) is None


@pytest.mark.parametrize(
    "text", ["by Friday", "within two weeks", "needed by 12/4", "by the end of November"]
)
def test_without_the_day_of_the_mail_nothing_is_counted(text: str) -> None:
    assert find_needed_by(f"We need it {text}.", None, american=True).day is None
