"""Parts that we are to make for the sender out of tube are no tooling, whatever size they name."""

from __future__ import annotations

import pytest

from bendreply.intake.message import parse_message
from bendreply.intake.model import Kind
from bendreply.intake.pipeline import understand

CASES: list[tuple[Kind, str]] = [
    (
        Kind.OTHER,
        "What's the price for 30 curved spindles, made up for us out of 1 x .065 steel tube, each "
        "bent on a 12 inch radius? We haven't got a bender.",
    ),
    (Kind.OTHER, "Price please on 12 handrails made for us from 1-1/2 x .120 tube, 6 inch radius."),
    (Kind.OTHER, "Could you make me up some bench legs out of 1 x .065 tube, 4 inch radius?"),
    (Kind.OTHER, "My garden needs an arch of 25 x 1.5 tube bent to a 600 mm radius. How much?"),
    (Kind.OTHER, "Was kosten 20 Streben, für uns gefertigt aus Rohr 20 x 2, Radius 100?"),
    (Kind.OTHER, "Prix pour 20 barreaux réalisés pour nous en tube 20 x 2, rayon 100 ?"),
    (Kind.OTHER, "Precio de 20 barrotes fabricados para nosotros en tubo 20 x 2, radio 100."),
    (Kind.OTHER, "Prezzo per 20 montanti realizzati per noi in tubo 20 x 2, raggio 100."),
    (Kind.OTHER, "Prijs voor 20 spijlen, voor ons gemaakt van buis 20 x 2, radius 100."),
    (
        Kind.SIZES,
        "A mandrel for balusters, made for us from 3/4 x .065 tube, 3 inch radius, please.",
    ),
    (Kind.SIZES, "We bend spindles out of 3/4 x .065 tube, 3 inch radius. Price for one please."),
]


@pytest.mark.parametrize(("kind", "text"), CASES)
def test_kind(kind: Kind, text: str) -> None:
    raw = (
        "From: Jo <jo@example.com>\nTo: shop@example.org\nSubject: Enquiry\n"
        f"Message-ID: <a@example.com>\nContent-Type: text/plain; charset=utf-8\n\n{text}\n"
    )
    assert understand(parse_message(raw.encode())).kind is kind
