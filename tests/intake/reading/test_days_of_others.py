"""Days that are not those of the mandrel: when a date is to be told, when the order goes out, when
the customer's own work is due. The mail is of Wednesday, 25 November 2026, from the US."""

from __future__ import annotations

from datetime import date

import pytest

from bendreply.intake.message import parse_message
from bendreply.intake.pipeline import understand
from bendreply.rules.request import SizeRequest


def _read(said: str) -> SizeRequest:
    head = (
        "From: Pat <pat@example.com>\nDate: Wed, 25 Nov 2026 10:00:00 -0600\n"
        "Content-Type: text/plain; charset=utf-8\nContent-Transfer-Encoding: 8bit\n\n"
    )
    mail = f"{head}One mandrel for 1.5 x .065 304, 4.5 CLR please. {said}\n"
    (request,) = understand(parse_message(mail.encode())).requests
    return request


@pytest.mark.parametrize(
    "said",
    [
        "I need a delivery date by Monday.",
        "Let me know your ship date by Thursday.",
        "Please confirm your delivery time by Friday.",
        "Bitte nennen Sie uns einen Liefertermin bis Freitag.",
        "Merci de nous donner votre délai avant vendredi.",
        "I have to place the order by Dec 4.",
        "We must order by Dec 4.",
        "We have to make 36 pieces by Jan 20.",
        "We need to start bending by Dec 14.",
        "The scrutineer wants the certificate by Dec 4.",
        "The inspector needs our paperwork by Dec 4.",
        "I have to hand in the entry form by Dec 4.",
        "Der Prüfer braucht die Unterlagen bis 4. Dezember.",
        "Der TÜV will das Gutachten bis 4. Dezember.",
        "Le commissaire technique veut le dossier avant le 4 décembre.",
        "El inspector necesita el certificado antes del 4 de diciembre.",
        "Il commissario vuole il certificato entro il 4 dicembre.",
        "De keurmeester wil het certificaat voor 4 december.",
    ],
)
def test_no_day_of_delivery(said: str) -> None:
    """None of these says when the mandrel has to be there."""
    assert _read(said).needed_by is None


@pytest.mark.parametrize(
    ("said", "day"),
    [
        ("We need it by Dec 4.", date(2026, 12, 4)),
        ("Delivery date by Dec 4 please.", date(2026, 12, 4)),
        ("Need a delivery date of Dec 4.", date(2026, 12, 4)),
        ("We need you to make it by Dec 4.", date(2026, 12, 4)),
        ("I need to have the mandrel by Dec 4.", date(2026, 12, 4)),
        ("We need it with certificate by Dec 4.", date(2026, 12, 4)),
        ("We need the mandrel and its papers by Dec 4.", date(2026, 12, 4)),
        ("Please deliver, with cert, by Dec 4.", date(2026, 12, 4)),
        ("Need by 12/11.", date(2026, 12, 11)),
        ("Need by 1/12.", date(2027, 1, 12)),
    ],
)
def test_the_day_of_delivery(said: str, day: date) -> None:
    """Words that only look like those of another day; nothing in doubt."""
    request = _read(said)
    assert request.needed_by == day
    assert request.doubt_on("needed_by") is None


def test_a_day_just_past_is_hardly_of_next_year() -> None:
    """12 November is 13 days ago: in 352 days, or 11 December in 16?"""
    request = _read("Need by 11/12.")
    doubt = request.doubt_on("needed_by")
    assert doubt is not None
    assert set(doubt.readings) == {"2026-12-11", "2027-11-12"}


@pytest.mark.parametrize(
    "said",
    [
        "Der Wagen muss zum 1. Februar zur Abnahme, Dorn bitte bis 18. Januar.",
        "Dorn bitte bis 18. Januar, das Boot muss bis 1. Februar ins Wasser.",
        "Le bateau doit être à l'eau le 2 février, mandrin avant le 18 janvier svp.",
        "El coche tiene que estar para el 1 de febrero, el mandril antes del 18 de enero.",
        "La barca deve essere in acqua il 1 febbraio, mandrino entro il 18 gennaio.",
        "De boot moet op 1 februari te water, doorn graag voor 18 januari.",
        "The car has to be at inspection by February 1, mandrel please by January 18.",
    ],
)
def test_the_day_of_a_vehicle(said: str) -> None:
    assert _read(said).needed_by == date(2027, 1, 18)
