"""'20/11' and '20-11' are days where the words around say so, and no tube with its bore."""

from __future__ import annotations

from datetime import date
from decimal import Decimal

import pytest

from bendreply.intake.reading import read

from .support import read_text, whole

SENT = date(2026, 10, 12)
ASKS = {
    "de": "Wir brauchen einen Dorn für Rohr 40x2, Radius 100.",
    "fr": "Nous avons besoin d'un mandrin pour tube 40x2, rayon 100.",
    "es": "Necesitamos un mandril para tubo 40x2, radio 100.",
    "it": "Ci serve un mandrino per tubo 40x2, raggio 100.",
    "nl": "Wij hebben een doorn nodig voor buis 40x2, radius 100.",
}
SAID = {
    "de": (
        "Bis spätestens 20/11.",
        "Liefertermin: 20/11",
        "Lieferung am 20/11 bitte",
        "Wir brauchen ihn am 20.11.",
        "Wir brauchen ihn zum 20.11.2026",
        "brauchen wir bis 20.11",
        "Liefertermin 20.11",
        "Termin 20.11.26",
        "bis zum 20. November",
        "Bedarf: 20.11.",
        "Der Dorn muss am 20.11. hier sein.",
        "Spätester Termin 20.11.",
        "Wunschtermin wäre der 20.11.",
    ),
    "fr": (
        "Livraison au plus tard le 20/11.",
        "Il nous le faudrait pour le 20/11/2026.",
        "Il nous le faut pour le 20/11.",
        "Il me le faut avant le 20/11",
        "Livraison souhaitée le 20/11",
        "Livraison : 20/11",
        "Délai : 20/11",
        "délai souhaité 20/11",
        "À livrer pour le 20/11",
        "On en a besoin pour le 20/11.",
        "on en aurait besoin avant le 20/11",
        "besoin pour le 20/11",
        "d'ici le 20/11 si possible",
        "Il faudrait le recevoir avant le 20/11.",
        "C'est pour le 20/11.",
        "nécessaire pour le 20.11",
        "date de livraison souhaitée : 20/11/26",
    ),
    "es": (
        "Entrega como máximo el 20/11.",
        "Nos hace falta para el 20 de noviembre.",
        "Nos haría falta para el 20/11.",
        "Lo necesitaríamos para el 20/11",
        "Entrega antes del 20/11",
        "Plazo: 20/11",
        "Fecha de entrega 20/11",
        "fecha de entrega deseada: 20/11/26",
        "Tiene que estar aquí el 20 de noviembre.",
        "Lo querríamos para el 20/11.",
        "hay que tenerlo el 20/11",
        "Entrega el 20/11 a más tardar.",
        "Sería para el 20/11.",
        "nos urge para el 20/11",
        "Debería llegar antes del 20/11",
    ),
    "it": (
        "Consegna al massimo il 20/11.",
        "Ci occorre entro il 20/11",
        "Ci servirebbe per il 20/11",
        "Ci servirebbe entro il 20/11/26",
        "Consegna entro e non oltre il 20/11",
        "Consegna 20/11",
        "Data consegna: 20/11",
        "ne abbiamo bisogno per il 20/11",
        "deve essere qui il 20/11",
        "dovrebbe arrivare entro il 20/11",
        "serve per il 20/11",
        "mi serve entro il 20/11",
        "da consegnare entro il 20/11",
        "consegna richiesta: 20/11",
    ),
    "nl": (
        "Levering uiterlijk 20/11.",
        "Graag leveren voor 20/11",
        "Levering op 20/11",
        "Leverdatum 20/11",
        "Gewenste leverdatum: 20-11-2026",
        "Moet hier zijn op 20/11",
        "moet uiterlijk 20-11 binnen zijn",
        "Hebben we nodig tegen 20/11",
        "Graag ontvangen voor 20-11",
        "Levertijd: uiterlijk 20-11",
    ),
}


@pytest.mark.parametrize(
    ("language", "said"), [(language, said) for language in SAID for said in SAID[language]]
)
def test_the_day_is_that_of_delivery_and_no_tube(language: str, said: str) -> None:
    message, own = whole(f"{ASKS[language]} {said}")
    (size,) = read(own, message.model_copy(update={"sent_on": SENT})).requests
    assert (size.od_mm, size.wall_mm, size.clr_mm) == (Decimal(40), Decimal(2), Decimal(100))
    assert size.needed_by == date(2026, 11, 20)
    assert not size.doubts


@pytest.mark.parametrize(
    "text",
    [
        "Offre souhaitée avant le 16/10 pour le mandrin 40x2, rayon 100.",
        "Graag offerte voor 16/10: doorn 40x2, radius 100.",
        "Oferta antes del 16/10 de un mandril 40x2, radio 100.",
    ],
)
def test_the_day_of_a_quotation_is_no_tube(text: str) -> None:
    assert [size.od_mm for size in read_text(text)] == [Decimal(40)]


@pytest.mark.parametrize(
    ("text", "od", "wall"),
    [
        ("Mandrin pour tube cuivre 14/12, rayon 30 mm.", "14", "1"),
        ("Mandril para tubo 16/13, radio 32 mm.", "16", "1.5"),
        ("Dorn für Rohr 12/10 mm, Radius 30 mm.", "12", "1"),
        ("Doorn voor buis 12/10 mm, radius 30 mm", "12", "1"),
    ],
)
def test_a_tube_and_its_bore_is_no_day(text: str, od: str, wall: str) -> None:
    (size,) = read_text(text)
    assert (size.od_mm, size.wall_mm) == (Decimal(od), Decimal(wall))
