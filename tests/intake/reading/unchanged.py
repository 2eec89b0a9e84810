"""Words that change no reading, and labelled messages to add them to.

Each addition is something that customers' mail is full of and that measures no tube: signatures,
mail quoted below, phone numbers, prices, angles, in the languages that reach the shop.
"""

# ruff: noqa: E501 - an addition stands on one line

from __future__ import annotations

import re
from functools import cache
from pathlib import Path

from bendreply.intake.message import parse_message
from bendreply.intake.model import Kind, Message, OwnText
from bendreply.intake.own_text import mask
from bendreply.intake.reading import read
from bendreply.intake.triage import Found, automatic, classify
from bendreply.rules.request import SizeRequest

from .support import doubted

CORPUS = Path(__file__).parents[2] / "corpus"
FOLDERS = ("dev", "dev2")

SAID = {
    "price": "The last one was $185.00.",
    "price-bucks": "Last time it was 95 bucks.",
    "price-de": "Zuletzt haben wir 1.250,00 EUR bezahlt.",
    "price-fr": "Le dernier coûtait 189,50 €.",
    "price-pl": "Ostatnio płaciliśmy 780 zł.",
    "phone": "Call me at 330-555-0145.",
    "phone-ext": "My cell is (330) 555-0162, ext. 12.",
    "phone-de": "Tel. +49 89 99998-417",
    "phone-fr": "Tél. : 01 99 00 12 34",
    "phone-uk": "Mobile: 07700 900123",
    "angle": "The bend is 90 degrees.",
    "angles": "Bends are 45° and 90°.",
    "angle-de": "Der Bogen hat 90°.",
    "angle-fr": "Le coude est à 45°.",
    "angle-it": "La curva è a 180°.",
}
"""Sentences that the sender adds to his own words."""

SIGNED = {
    "signature": "-- \nPat Sample\nSample Bending LLC\n1200 Sample St., Sampleville, OH 44312\n330-555-0145 | fax 330-555-0146",
    "signature-bare": "Best regards,\n\nPat Sample\nSales Engineer\nSample Bending, since 1987\nOffice: +1 (330) 555-0145 x12\npat@example.com",
    "signature-sizes": "-- \nPat Sample\nSample Bending, 2 x .120 at 1.5D our specialty\n330-555-0145",
    "signature-de": "Mit freundlichen Grüßen\n\ni. A. Petra Muster\nMuster Rohrtechnik GmbH\nBeispielstr. 57, 80331 Musterstadt\nTel.: +49 89 99998-417\nAmtsgericht Musterstadt HRB 12345",
    "signature-fr": "Cordialement,\n\nPaul Exemple\nExemple Cintrage SARL\n12 rue de l'Exemple, 75000 Ville\nTél. : 01 99 00 12 34\nSIRET 000 000 000 00012",
    "signature-es": "Un saludo,\n\nPaula Ejemplo\nEjemplo Curvados S.L.\nC/ Ejemplo 38, 08000 Ciudad\nTel. 900 000 123",
    "signature-it": "Cordiali saluti\n\nPaolo Esempio\nEsempio Curve S.r.l.\nVia Esempio 25, 20100 Città\nTel. 02 0000 1234\nP.IVA 00000000000",
    "signature-nl": "Met vriendelijke groet,\n\nPiet Voorbeeld\nVoorbeeld Buigwerk B.V.\nVoorbeeldweg 42, 1000 AA Stad\nT 020 000 12 34\nKvK 00000000",
    "signature-pl": "Z poważaniem,\n\nPiotr Przykład\nPrzykład Gięcie Rur sp. z o.o.\nul. Przykładowa 57, 00-950 Miasto\ntel. 22 000 12 34",
    "phone-app": "Sent from my iPhone",
    "footer": "-- \nPat\nThis e-mail is confidential. ISO 9001:2015 certified. Registered in Ohio, no. 1234567.",
}
"""Signatures below all else."""

_THEIRS = "Your 2.5 x .065 mandrel on a 3.75 CLR is ready, 210.00 net."
_IHRE = "Ihr Dorn für Rohr 88,9 x 2,5 mm, Radius 178 mm, ist fertig."
QUOTED = {
    "quoted": f"On Tue, 3 Mar 2026 at 10:12, Sales <sales@example.net> wrote:\n> {_THEIRS}",
    "quoted-twice": f"On 3/3/26 10:12 AM, Sales wrote:\n> {_THEIRS}\n>> 1.5 x .083, 4.5 clr\n",
    "outlook": f"________________________________\nFrom: Sales <sales@example.net>\nSent: Tuesday, March 3, 2026 10:12 AM\nTo: Pat Sample <pat@example.com>\nSubject: mandrel\n\n{_THEIRS}",
    "original-message": f"-----Original Message-----\nFrom: Sales [mailto:sales@example.net]\nSent: Tuesday, March 3, 2026 10:12 AM\nTo: Pat Sample\nSubject: mandrel\n\n{_THEIRS}",
    "quoted-de": f"Am 22.08.2025 um 10:12 schrieb Sales <sales@example.net>:\n\n> {_IHRE}",
    "outlook-de": f"Von: Sales <sales@example.net>\nGesendet: Freitag, 22. August 2025 10:12\nAn: Pat Muster <pat@example.com>\nBetreff: Dorn\n\n{_IHRE}",
    "quoted-fr": f"Le mar. 3 mars 2026 à 10:12, Sales <sales@example.net> a écrit :\n\n> {_IHRE}",
    "outlook-fr": f"De : Sales <sales@example.net>\nEnvoyé : mardi 3 mars 2026 10:12\nÀ : Pat <pat@example.com>\nObjet : mandrin\n\n{_THEIRS}",
    "quoted-es": f"El mar, 3 mar 2026 a las 10:12, Sales (<sales@example.net>) escribió:\n\n> {_THEIRS}",
    "quoted-it": f"Il giorno mar 3 mar 2026 alle ore 10:12 Sales <sales@example.net> ha scritto:\n\n> {_THEIRS}",
    "quoted-nl": f"Op di 3 mrt 2026 om 10:12 schreef Sales <sales@example.net>:\n\n> {_THEIRS}",
    "quoted-pl": f"wt., 3 mar 2026 o 10:12 Sales <sales@example.net> napisał(a):\n\n> {_THEIRS}",
    "quoted-pt": f"Em ter., 3 de mar. de 2026 às 10:12, Sales <sales@example.net> escreveu:\n\n> {_THEIRS}",
}
"""What the shop wrote before, below all else."""

_POINTS_BELOW = re.compile(
    r"\b(?:below|beneath|see (?:the )?(?:mail|thread)|unten|unterhalb|ci-dessous|abajo|sotto|onder|poniżej)",
    re.IGNORECASE,
)
"""Whoever says so means what is quoted."""


def core(requests: tuple[SizeRequest, ...]) -> list[tuple[object, ...]]:
    """Everything that says which tubes and bends were read, and what of them is in doubt."""
    return [(r.shape.value, r.od_mm, r.wall_mm, r.clr_mm, sorted(doubted(r))) for r in requests]


def reading(message: Message) -> tuple[SizeRequest, ...]:
    """What is read of a message, whose words are settled first."""
    return read(mask(message), message).requests


@cache
def base(file: str) -> tuple[Message, OwnText, tuple[SizeRequest, ...]]:
    """A labelled message with what is read of it. ``file`` counts from the corpus."""
    message = parse_message((CORPUS / file).read_bytes())
    own = mask(message)
    return message, own, read(own, message).requests


@cache
def files() -> list[str]:
    """Labelled messages with a size in their own words, and nothing from elsewhere."""
    found = (
        f"{folder}/{path.name}"
        for folder in FOLDERS
        for path in sorted((CORPUS / folder).glob("*.eml"))
    )
    return [file for file in found if _is_fit(file)]


def _is_fit(file: str) -> bool:
    message, own, requests = base(file)
    return (
        bool(requests)
        and automatic(message, own) is None
        and classify(message, own, Found(len(requests)))[0] is Kind.SIZES
        and not own.attachment_texts
        and not any(part.kind in ("quoted", "forwarded") for part in own.parts)
        and _POINTS_BELOW.search(own.text) is None
    )


def saying(file: str, words: str) -> Message:
    """The message with a paragraph more, right below the sender's last own words."""
    message, own, _ = base(file)
    at = len(own.text.rstrip()) - own.body_start
    return with_body(message, f"{message.body[:at]}\n\n{words}{message.body[at:]}")


def ending(file: str, words: str) -> Message:
    """The message with something below all else."""
    message, _, _ = base(file)
    return with_body(message, f"{message.body.rstrip()}\n\n{words}\n")


def with_body(message: Message, body: str) -> Message:
    """The message with other words."""
    return message.model_copy(update={"body": body})
