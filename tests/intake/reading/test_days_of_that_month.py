"""The number of a day behind a month that stands by itself: 'in December, by the 4th at latest'.

The mail is of 12 October 2026. The sentences are made up; no published source.
"""

from __future__ import annotations

from datetime import date

import pytest

from bendreply.intake.reading.days.dates import find_needed_by

from .support import read_text

_SENT = date(2026, 10, 12)


@pytest.mark.parametrize(
    ("when", "day"),
    [
        ("delivered in November, by the 20th at the latest", date(2026, 11, 20)),
        ("needed in December please, no later than the 4th", date(2026, 12, 4)),
        ("Lieferung im Dezember, spätestens am 4.", date(2026, 12, 4)),
        ("livré en décembre, au plus tard le 4", date(2026, 12, 4)),
        ("entrega en diciembre, a más tardar el 4", date(2026, 12, 4)),
        ("consegna a dicembre, entro il 4", date(2026, 12, 4)),
        ("binnen in december, uiterlijk de 4e", date(2026, 12, 4)),
        ("has to be here in January 2027, by the 8th", date(2027, 1, 8)),
        ("needed by the 20th", date(2026, 10, 20)),
    ],
)
def test_it_is_a_day_of_that_month(when: str, day: date) -> None:
    found = find_needed_by(f"A mandrel for 38 x 1.5, CLR 76, {when}.", _SENT, american=False)
    assert found.day == day


@pytest.mark.parametrize(
    "when",
    [
        "binnen twee weken graag",
        "binnen 3 weken",
        "binnen een maand",
        "graag binnen op 4 december",
        "moet binnen zijn op 4 december",
        "bij ons binnen uiterlijk 4 december",
        "entro due settimane, all'interno del mese",
    ],
)
def test_what_is_to_come_within_a_time_names_no_side_of_the_radius(when: str) -> None:
    (size,) = read_text(f"Een doorn voor 38 x 1,5, straal 76, {when}.")
    assert size.clr_mm == 76
    assert not size.doubt_on("clr")


@pytest.mark.parametrize("radius", ["straal 57 binnen", "buigstraal binnen 57"])
def test_a_radius_to_the_inside_is_one_all_the_same(radius: str) -> None:
    (size,) = read_text(f"Een doorn voor 38 x 1,5, {radius}.")
    assert size.clr_mm == 57 + 19
