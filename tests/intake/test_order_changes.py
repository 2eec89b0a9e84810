"""An order in hand that is cancelled, put off or sent elsewhere is no request; beside a wish it is."""

# ruff: noqa: E501 - a row of a table stands on one line

from __future__ import annotations

import pytest

from bendreply.intake.message import parse_message
from bendreply.intake.model import Kind
from bendreply.intake.pipeline import understand


def _kind(subject: str, text: str) -> Kind:
    head = f"From: a@example.com\nSubject: {subject}\nDate: Tue, 06 Oct 2026 10:00:00 +0000\nContent-Type: text/plain; charset=utf-8\nContent-Transfer-Encoding: 8bit\n\n"
    return understand(parse_message((head + text).encode())).kind


ONLY_CHANGED = [
    (
        "cancel please",
        "Please cancel line 2 of PO 5518 (1.125 x .049, 2.25 CLR). Job got pulled. If you've already cut metal let me know what we owe. Line 1 stands.",
    ),
    (
        "Report de livraison cde 30177",
        "Bonjour,  Notre chantier a pris du retard. Merci de décaler la livraison du mandrin 76,1 x 2 (commande 30177) du 10/07 au 04/09/2026, facturation à la même date. Pouvez-vous confirmer par retour ?",
    ),
    (
        "RE: Order 5120 address",
        "We have moved. From 19 October please deliver to Unit 7, not Unit 2. The 2 mandrels on order (50.8 x 1.6, CLR 76) are unchanged.",
    ),
    (
        "order",
        "Please cancel our order for the 38 x 1.5 mandrel, R114, PO D-6120. The job has gone away. If there are costs so far let me know.",
    ),
    (
        "PO 7741",
        "Could you push delivery of PO 7741 (mandrel 1.5 x .065, 4.5 CLR) back to January? Our building isn't ready.",
    ),
    (
        "PO 7741",
        "We need to postpone PO 7741. It's the 2 mandrels 1.5 x .065, 4.5 CLR. New date will be 15 January.",
    ),
    (
        "Order 88",
        "Please ship order 8821 (one mandrel 2 x .083, 6 CLR) to our Reno plant instead of Sparks.",
    ),
    (
        "Order 88",
        "Our ship-to address has changed. It affects order 8821, two mandrels 2 x .083, 6 CLR.",
    ),
    (
        "Storno",
        "Bitte stornieren Sie Pos. 2 unserer Bestellung 4711 (Dorn 42,4 x 2, R 85). Der Auftrag ist weggefallen. Was schulden wir Ihnen für die Stornokosten?",
    ),
    (
        "Bestellung 4711",
        "Wir müssen die Lieferung des Dorns 42,4 x 2, R 85 (Bestellung 4711) auf den 15.01. verschieben. Bitte um kurze Bestätigung.",
    ),
    (
        "Bestellung 4711",
        "Wir sind umgezogen. Die bestellten 2 Dorne (42,4 x 2, R 85) bitte an die neue Lieferadresse senden.",
    ),
    (
        "Commande 30177",
        "Merci d'annuler la ligne 2 de notre commande 30177 (mandrin 42,4 x 2, rayon 85). Quels sont les frais d'annulation ?",
    ),
    (
        "Commande 30177",
        "Nous avons déménagé. Les 2 mandrins en commande (42,4 x 2, rayon 85) sont à livrer à la nouvelle adresse.",
    ),
    (
        "Pedido 552",
        "Por favor anulen la línea 2 de nuestro pedido 552 (mandril 42,4 x 2, radio 85). ¿Hay gastos de anulación?",
    ),
    (
        "Pedido 552",
        "Necesitamos aplazar la entrega del mandril 42,4 x 2, radio 85 (pedido 552) hasta el 15 de enero.",
    ),
    (
        "Pedido 552",
        "Nos hemos mudado. Los 2 mandriles pedidos (42,4 x 2, radio 85) van a la nueva dirección de entrega.",
    ),
    (
        "Ordine 1180",
        "Vi preghiamo di annullare la riga 2 del nostro ordine 1180 (anima 42,4 x 2, R 85). Ci sono costi di annullamento?",
    ),
    (
        "Ordine 1180",
        "Dobbiamo posticipare la consegna del mandrino 42,4 x 2, R 85 (ordine 1180) al 15 gennaio.",
    ),
    (
        "Ordine 1180",
        "Ci siamo trasferiti. I 2 mandrini ordinati (42,4 x 2, R 85) vanno al nuovo indirizzo.",
    ),
    (
        "Bestelling 900",
        "Graag regel 2 van onze bestelling 9001 annuleren (doorn 42,4 x 2, straal 85). Zijn er annuleringskosten?",
    ),
    (
        "Bestelling 900",
        "We willen de levering van de doorn 42,4 x 2, straal 85 (bestelling 9001) uitstellen tot 15 januari.",
    ),
    (
        "Bestelling 900",
        "Wij zijn verhuisd. De 2 bestelde doornen (42,4 x 2, straal 85) graag naar het nieuwe afleveradres.",
    ),
]


@pytest.mark.parametrize(("subject", "text"), ONLY_CHANGED)
def test_a_change_to_an_order_asks_for_nothing_new(subject: str, text: str) -> None:
    assert _kind(subject, text) is Kind.OTHER


ASKED = [
    ("PO", "Please cancel line 2 of PO 5518 and make it 1.25 x .065, 2.25 CLR instead."),
    (
        "PO",
        "Please cancel our order 5518 with you. Quote one mandrel for 1.25 x .065, 2.25 CLR, 304.",
    ),
    (
        "RFQ",
        "We have moved, our new address is below. Please quote a mandrel for 1.25 x .065, 2.25 CLR, 304.",
    ),
    (
        "RFQ",
        "Mandrel 1.25 x .065, 2.25 CLR, 304, qty 1. Ship to our new address please. This is for our PO 8812.",
    ),
    (
        "RFQ",
        "Our supplier's order was delayed so we need a mandrel for 1.25 x .065, 2.25 CLR, 304 fast.",
    ),
    (
        "RFQ",
        "We cancelled our order with the other shop. Looking for one mandrel, 1.25 x .065, 2.25 CLR, 304.",
    ),
    (
        "RFQ",
        "Last order 5518 was fine. One more mandrel, 1.25 x .065, 2.25 CLR, 304. Please ship to Reno, not Sparks.",
    ),
    ("Anfrage", "Wir sind umgezogen. Bitte um Angebot für einen Dorn 42,4 x 2, R 85."),
    (
        "Anfrage",
        "Bitte stornieren Sie Pos. 2 unserer Bestellung 4711 und bieten Sie stattdessen einen Dorn 42,4 x 2, R 85 an.",
    ),
    (
        "Demande",
        "Merci d'annuler notre commande 30177. À la place il nous faut un mandrin 42,4 x 2, rayon 85.",
    ),
    (
        "Demande",
        "Notre chantier a pris du retard. Il nous faut un mandrin 42,4 x 2, rayon 85, inox, pour septembre.",
    ),
    (
        "Consulta",
        "Nos hemos mudado. Necesitamos un mandril 42,4 x 2, radio 85, para nuestro pedido 552.",
    ),
    (
        "Richiesta",
        "Annullate la riga 2 del nostro ordine 1180 e offriteci invece un mandrino 42,4 x 2, R 85.",
    ),
    ("Aanvraag", "Wij zijn verhuisd. Graag een offerte voor een doorn 42,4 x 2, straal 85."),
    (
        "PO",
        "Please cancel line 2 of our order 5518 (1.5 x .065, 4.5 CLR). We'll take a 1.25 x .065, 2.25 CLR, 304 instead, one mandrel.",
    ),
    (
        "Bestelling",
        "Graag regel 2 van onze bestelling 9001 annuleren en in plaats daarvan een doorn 42,4 x 2, straal 85.",
    ),
    ("Pedido", "Anulen la línea 2 del pedido 552 y en su lugar un mandril 42,4 x 2, radio 85."),
]


@pytest.mark.parametrize(("subject", "text"), ASKED)
def test_a_size_asked_for_beside_it_is_a_request(subject: str, text: str) -> None:
    assert _kind(subject, text) is Kind.SIZES
