"""Offers changed, parts to be rolled, a question before an offer is answered."""

from __future__ import annotations

import pytest

from bendreply.intake.message import parse_message
from bendreply.intake.model import Kind
from bendreply.intake.pipeline import understand

CASES: list[tuple[Kind, str]] = [
    (
        Kind.SIZES,
        "Thanks for the quote. Please change it to 2 mandrels instead of 1, and make the radius 90 "
        "instead of 75. Tube as quoted, 30 x 1.5, 304.",
    ),
    (
        Kind.SIZES,
        "Bitte das Angebot ändern: 2 Dorne statt 1, Rohr 30 x 1,5, Radius 90 statt 75, 1.4301, "
        "sonst wie angeboten.",
    ),
    (Kind.OTHER, "Please change our PO 4711 as quoted to 2 instead of 1, 30 x 1.5, CLR 75, 304."),
    (Kind.OTHER, "Thanks for the quote, we'll talk to the boss and get back to you."),
    (
        Kind.QUESTION,
        'Two things before I talk to the boss. What does "pulled 1/8 past tangent" mean in your '
        "note, and why three balls and not one?",
    ),
    (Kind.OTHER, "Can you roll me some rings? 20 in 50 x 5 flat bar and 4 in 33.7 tube."),
    (Kind.OTHER, "Could you roll us 6 hoops in 33.7 x 2.6 tube, 1200 mm diameter?"),
    (Kind.OTHER, "Können Sie uns 10 Ringe aus 33,7 x 2 Rohr walzen, Durchmesser 1200?"),
    (Kind.SIZES, "We roll rings from 33.7 x 2.6 tube, 304, radius 150, and need a mandrel for it."),
    (Kind.SIZES, "Can you quote a mandrel for 33.7 x 2.6 rolled tube, 304, radius 150?"),
    (Kind.SIZES, "Tubo de 40 x 2,5, acero S275, radio 120. Haced uno por favor."),
]


@pytest.mark.parametrize(("kind", "text"), CASES)
def test_kind(kind: Kind, text: str) -> None:
    raw = (
        "From: Pat <pat@example.com>\nTo: mandrels@example.com\nSubject: Re: our job\n"
        "Message-ID: <a@example.com>\nContent-Type: text/plain; charset=utf-8\n\n" + text + "\n"
    )
    assert understand(parse_message(raw.encode())).kind is kind


@pytest.mark.parametrize(
    "above",
    [
        "Can you quote on a mandrel for what my customer wants below? Aluminum pipe, 6061. One.",
        "os reenvío lo que me pide el encargado del taller, ¿me dais precio de un mandril? Gracias",
    ],
)
def test_a_forward_is_read_where_the_words_hand_it_over(above: str) -> None:
    raw = (
        "From: Pat <pat@example.com>\nTo: mandrels@example.com\nSubject: Fwd: rail\n"
        "Message-ID: <b@example.com>\nContent-Type: text/plain; charset=utf-8\n\n"
        f"{above}\n\n---------- Forwarded message ----------\nFrom: Site <site@example.net>\n"
        "Subject: rail\n\nTop rail is 42.4 x 2 mm, radius 150 mm.\n"
    )
    sizes = understand(parse_message(raw.encode())).requests
    assert sizes[0].clr_mm == 150
