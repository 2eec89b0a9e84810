"""Days written without their year by people who write the day first, and days of other things."""

from __future__ import annotations

from datetime import date

import pytest

from bendreply.intake.message import parse_message
from bendreply.intake.pipeline import understand
from bendreply.rules.request import SizeRequest

HEAD = (
    "From: a@example.com\nSubject: RFQ\nDate: Mon, 12 Oct 2026 10:00:00 +0000\n"
    "Content-Type: text/plain; charset=utf-8\nContent-Transfer-Encoding: 8bit\n\n"
)
FRENCH = "Il nous faut un mandrin pour tube 42,4 x 2,6 mm, rayon 100. "
GERMAN = "Wir brauchen einen Dorn für 42,4 x 2,6, R 100. "
SPANISH = "Necesitamos un mandril para 42,4 x 2,6 mm, radio 100. "
ITALIAN = "Ci serve un mandrino per 42,4 x 2,6 mm, R 100. "
DUTCH = "We zoeken een doorn voor 42,4 x 2,6, R 100. "


def _read(text: str) -> SizeRequest:
    (size,) = understand(parse_message((HEAD + text + "\n").encode())).requests
    return size


@pytest.mark.parametrize(
    "text",
    [
        FRENCH + "Livraison avant le 30/10.",
        FRENCH + "Il nous le faut pour le 30/10",
        FRENCH + "Livraison souhaitée : 30/10",
        ITALIAN + "Consegna richiesta: 30/10",
        GERMAN + "Lieferung bis 30/10",
        SPANISH + "Lo requerimos para el 30/10.",
        SPANISH + "Debe estar aquí el 30 de octubre.",
        ITALIAN + "Consegna entro il 30/10.",
        ITALIAN + "Ne abbiamo bisogno per il 30 ottobre.",
        DUTCH + "Levering uiterlijk 30-10.",
        DUTCH + "We hebben hem op 30-10 nodig.",
        DUTCH + "Moet hier zijn op 30 oktober.",
    ],
)
def test_the_day_is_read_and_no_size_made_of_it(text: str) -> None:
    size = _read(text)
    assert size.needed_by == date(2026, 10, 30)
    assert not size.doubts


@pytest.mark.parametrize(
    "text",
    [
        FRENCH + "Nous sommes au salon le 30/10.",
        ITALIAN + "Offerta entro il 30/10.",
        GERMAN + "Ich bin bis 30.10. im Urlaub.",
        FRENCH + "Je suis en congés jusqu'au 30/10.",
        DUTCH + "Ik ben tot 30-10 op vakantie.",
    ],
)
def test_days_of_other_things(text: str) -> None:
    size = _read(text)
    assert size.needed_by is None
    assert not size.doubts


@pytest.mark.parametrize(
    ("text", "od"),
    [
        ("Wir biegen Rohre bis 3/4 Zoll. Wir brauchen einen Dorn für 1/2 x .049, R 50 mm", 12.7),
        ("Mandrin pour le 12/10 mm cuivre, rayon 40 mm", 12.0),
    ],
)
def test_parts_of_an_inch_and_bores_are_no_days(text: str, od: float) -> None:
    requests = understand(parse_message((HEAD + text + "\n").encode())).requests
    assert any(float(size.od_mm or 0) == od for size in requests)
    assert all(size.needed_by is None for size in requests)
