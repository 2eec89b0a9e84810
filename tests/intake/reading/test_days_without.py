"""Until when somebody can do without the mandrel, and where it has to be by then."""

from __future__ import annotations

from datetime import date

import pytest

from bendreply.intake.reading.days.dates import find_needed_by

SENT = date(2026, 10, 6)
NEEDED = [
    "Parts required on our dock 11/16/2026.",
    "Quotes are due 10/29/2026. Parts required on our dock 11/16/2026.",
    "Material required at our plant 16 November 2026.",
    "Items required on site 16 November 2026.",
    "Goods needed on dock by 16 November 2026.",
    "Tools to be at our receiving dock 16 November 2026.",
    "Needed in our warehouse 16 November 2026.",
    "Launch is Nov 30 but I can live without it until 16 November.",
    "I can do without until 16 November.",
    "We can manage without it until Nov 16.",
    "We can hold out till Nov 16.",
    "I can wait until Nov 16.",
    "We can get by until 16 November.",
    "No rush, any time before Nov 16 will do.",
    "You have until Nov 16.",
    "Ware bei uns im Werk am 16.11.2026.",
    "Wareneingang bei uns 16.11.2026.",
    "Bis 16.11. kommen wir ohne aus.",
    "Wir können bis zum 16.11. warten.",
    "Nous pouvons attendre jusqu'au 16 novembre.",
    "On peut s'en passer jusqu'au 16 novembre.",
    "Arrivée dans nos locaux le 16/11/2026.",
    "Podemos esperar hasta el 16 de noviembre.",
    "Puedo aguantar sin él hasta el 16 de noviembre.",
    "Possiamo aspettare fino al 16 novembre.",
    "Possiamo farne a meno fino al 16 novembre.",
    "Merce nel nostro magazzino il 16/11/2026.",
    "We kunnen wachten tot 16 november.",
    "Tot 16 november kunnen we zonder.",
    "Goederen in ons magazijn op 16 november 2026.",
    "Der Dorn muss am 16.11.2026 auf unserem Hof sein.",
    "Bis zum 16.11. können wir noch warten. Danke!",
    "Entregado en nuestro almacén el 16/11/2026.",
]


@pytest.mark.parametrize("text", NEEDED)
def test_the_day_it_is_needed(text: str) -> None:
    american = "11/16" in text
    assert find_needed_by(text, SENT, american=american).day == date(2026, 11, 16)


def test_a_launch_is_not_the_day() -> None:
    text = "Rush if possible - launch is Oct 30 but I can live w/o until 10/19."
    assert find_needed_by(text, SENT, american=True).day == date(2026, 10, 19)


@pytest.mark.parametrize(
    "text",
    [
        "Launch is Nov 30.",
        "Quote can wait until Nov 16.",
        "I can wait until Nov 16 for your quote.",
        "We can't start until Nov 16.",
        "We have no dock until Nov 16.",
        "Our tube was on the dock 16 November.",
        "The tube will be on our dock 16 November.",
        "Customer parts required at the race on 16 November.",
        "We have work until Nov 16.",
        "Wir warten noch bis 16.11. auf das Rohr.",
        "Mit dem Angebot können wir bis 16.11. warten.",
        "We can't wait until Nov 16.",
        "I can wait for the tube until Nov 16.",
    ],
)
def test_other_days(text: str) -> None:
    assert find_needed_by(text, SENT, american=False).day is None
