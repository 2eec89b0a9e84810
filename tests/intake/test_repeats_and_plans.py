"""Repeat orders without a size; an inquiry only prepared; 'when does one need a mandrel?'."""

from __future__ import annotations

from datetime import date

import pytest

from bendreply.intake.pasted import text_message
from bendreply.intake.pipeline import understand

ROWS: list[tuple[str, str]] = [
    ("sizes", "Can we have another two of what we had in March please. PO 4471, same account."),
    ("sizes", "Bitte noch einmal zwei Dorne wie im März, Bestellung 4471."),
    ("sizes", "Können wir noch zwei von den Dornen haben, die wir im März bekommen haben?"),
    ("sizes", "Pouvons-nous avoir encore deux mandrins comme en mars ? Commande 4471."),
    ("sizes", "¿Nos pueden mandar otros dos mandriles como los de marzo? Pedido 4471."),
    ("sizes", "Possiamo avere altri due mandrini come quelli di marzo? Ordine 4471."),
    ("sizes", "Kunnen we nog twee doornen krijgen zoals in maart? Bestelling 4471."),
    ("other", "Where is PO 4471? We ordered two mandrels in March."),
    ("other", "PO 4471: can we have another two weeks to pay please?"),
    (
        "question",
        "I have to prepare a request for quotation for mandrels. What do you need from me?",
    ),
    ("question", "Ich soll eine Anfrage für Dorne vorbereiten. Welche Angaben brauchen Sie dafür?"),
    (
        "question",
        "Je dois préparer une demande de devis. De quelles informations avez-vous besoin ?",
    ),
    ("question", "Tengo que preparar una solicitud de oferta de mandriles. ¿Qué datos necesitan?"),
    ("question", "Devo preparare una richiesta di offerta per mandrini. Quali dati vi servono?"),
    ("question", "Ik moet een offerteaanvraag voor doornen maken. Welke gegevens hebt u nodig?"),
    ("sizes", "Je souhaite faire une demande de devis pour deux mandrins, dimensions demain."),
    ("sizes", "We need two mandrels for our new machine. What info do you need?"),
    ("question", "Hi! When do you actually need a mandrel? Is there some rule of thumb?"),
    ("question", "Why would one need a mandrel at all?"),
    ("question", "Wann braucht man eigentlich einen Dorn?"),
]


@pytest.mark.parametrize(("kind", "text"), ROWS)
def test_what_kind_it_is(kind: str, text: str) -> None:
    said = understand(text_message(text, date(2026, 11, 25)))
    assert said.kind.value == kind, said.why_kind
    assert not said.requests
