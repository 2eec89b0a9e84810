"""Another's parcel, an address put right, and pieces that are only to be bent name a size and ask
for no mandrel; near misses of each do."""

# ruff: noqa: E501 - a row of a table stands on one line

from __future__ import annotations

from datetime import date

import pytest

from bendreply.intake.model import Kind
from bendreply.intake.pasted import text_message
from bendreply.intake.pipeline import understand

NO_REQUEST = [
    "The box that arrived this morning isn't ours. There is a mandrel in it, tagged 50.8 x 1.65 R101.6. Please have it picked up.",
    "Yesterday we got somebody else's package: inside is a mandrel labelled 38 x 2 R 76. Please collect it.",
    "Das Paket von heute ist nicht für uns. Darin liegt ein Dorn 38 x 2, R 76. Bitte abholen lassen.",
    "Le colis reçu ce matin n'est pas pour nous : il contient un mandrin 38 x 2, R 76. Merci de le reprendre.",
    "El paquete que llegó hoy no es nuestro. Trae un mandril 38 x 2, R 76.",
    "Il pacco arrivato oggi non è nostro. Contiene un mandrino 38 x 2, R 76. Potete ritirarlo?",
    "Het pakket van vandaag is niet voor ons. Er zit een doorn 38 x 2, R 76 in.",
    "On PO 4512 (1 mandrel, 38 x 2, R 76) please update the delivery address to Hall 4. Everything else stays as confirmed.",
    "Please amend the ship-to on order 8841: Dock 3, not Dock 2. No other changes (two mandrels 1.5 x .065, 4.5 CLR as acknowledged).",
    "Bitte korrigieren Sie die Lieferadresse zur Bestellung 4711 auf Tor 5. Sonst bleibt alles wie bestätigt (1 Dorn 38 x 2, R 76).",
    "Merci de modifier l'adresse de livraison de la commande 4711. Le reste ne change pas (1 mandrin 38 x 2, R 76).",
    "Rogamos corrijan la dirección de entrega del pedido 4711. El resto sigue igual (1 mandril 38 x 2, R 76).",
    "Vi preghiamo di correggere l'indirizzo di consegna dell'ordine 4711. Il resto rimane invariato (1 mandrino 38 x 2, R 76).",
    "Wijzig alstublieft het afleveradres van bestelling 4711. De rest blijft zoals bevestigd (1 doorn 38 x 2, R 76).",
    "Not looking for a mandrel, I just need four lengths of 1.5 x .120 bent to 90 on a 6 inch radius.",
    "I don't want to buy tooling, only 8 pieces bent: 1.625 x .083, 90 degrees.",
    "Wir brauchen kein Werkzeug, nur 6 Rohre 38 x 2, R 76, fertig gebogen.",
    "Nous ne voulons pas d'outillage, seulement 6 tubes 38 x 2 cintrés à 90°, R 76.",
    "No necesitamos utillaje, solo 6 tubos 38 x 2 curvados a 90°, R 76.",
    "Non ci serve il mandrino, solo 6 tubi 38 x 2 piegati a 90°, R 76.",
    "We hebben geen doorn nodig, alleen 6 buizen 38 x 2, R 76, gebogen op 90°.",
]
REQUEST = [
    "You sent the wrong mandrel last time. Please quote a new one, 38 x 2, R 76.",
    "Please update the address on PO 4512. Also please quote 1 mandrel 38 x 2, R 76.",
    "Please correct the wall on our RFQ from 2 to 2.5 mm: 1 mandrel 38 x 2.5, R 76. Nothing else changes.",
    "We don't need a die, only a mandrel for 38 x 2, R 76.",
    "Wir brauchen keine Matrize, nur einen Dorn für 38 x 2, R 76.",
    "I don't need a die set, just the mandrel to get this tube bent: 1.5 x .120, 6 CLR.",
    "I'd like one mandrel for 1.5 x .120 DOM at 4.5 CLR, what does that run?",
    "One mandrel, 1.75 x .095 4130 on a 5.25 CLR, what does that come to?",
    "One mandrel for 2 x .120, 6 CLR, what does it set me back?",
]


@pytest.mark.parametrize("text", NO_REQUEST)
def test_no_mandrel_is_asked_for(text: str) -> None:
    assert understand(text_message(text, today=date(2026, 10, 6))).kind is Kind.OTHER


@pytest.mark.parametrize("text", REQUEST)
def test_a_near_miss_asks_for_one(text: str) -> None:
    assert understand(text_message(text, today=date(2026, 10, 6))).kind is Kind.SIZES
