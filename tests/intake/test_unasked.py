"""Messages that name a size and ask for nothing, and those that ask for another in its place."""

# ruff: noqa: E501 - a row of a table stands on one line

from __future__ import annotations

from datetime import date
from decimal import Decimal

import pytest

from bendreply.intake.model import Kind
from bendreply.intake.pasted import text_message
from bendreply.intake.pipeline import Understanding, understand

NOT_ASKED = [
    "Mandrel 51 x 1.6 R 77 came with a nick on the nose. Please call me.",
    "Have you shipped the 4 mandrels for 7/8 x .049 on 2-5/8 yet?",
    "Two mandrels 41 x 2 R 82 arrived Friday. Signed for by Ann.",
    "My trainee asks: is a 36 x 1.5 tube on R 54 considered a tight bend?",
    "Is there any general rule when a mandrel is needed, say for 1-3/8 x .065 on a 4-1/8 radius?",
    "FYI we moved the job with 46 x 2.6 on R 98 to next year. Nothing needed from you now.",
    "Quick update: 1-3/8 x .065 on 4-1/8 is bending clean, 1-5/8 x .095 on 4-7/8 still leaves a hump.",
    "Hat euer Dorn für 41 x 2 R 82 ein M16 oder M20 Gewinde?",
    "Il mandrino 34 x 1,5 arrivato ieri ha un graffio. Lo teniamo ma vorremmo uno sconto.",
    "Can I return a 1-3/8 x .083, 4 CLR, unused, bought in March?",
]

ASKED = [
    ("Mandrel for walkers\n\nTube: 24 mm x 1.5 mm\nBend: 72 mm radius centre\nRequired: 2 off, delivered by 27 November 2026", "24"),
    ("Hola, ¿hacéis mandriles para tubo de 32 x 1,5? El radio sería 64 al eje.", "32"),
    ("Our car's exhaust is 1 5/8 x .065, and the bend wants a 5 inch radius on the centre line. One mandrel would do. I saw on your website that you use BWG.", "41.275"),
    ("By now we are only interested in the mandrel for 31 x 1 / R 62, one piece.", "31"),
    ("De aanvraag voor 36 x 1,5 R 54 mag vervallen. Nieuw: 41 x 1,5 R 62, 1 doorn.", "41"),
    ("Annullate la richiesta per 36 x 1,5 R 54. Adesso serve 41 x 1,5 R 62, un mandrino.", "41"),
    ("You sent us a mandrel for 1.125 x .065 and I'm sending it back today, RMA 7. What we ordered, and still need, is a mandrel for 1.125 x .083, 3.5 CLR.", "28.575"),
    ("I withdraw my request for 1.125 x .065 on 3.5. New request: 1.375 x .083 on 4, one mandrel.", "34.925"),
]  # fmt: skip


def _read(text: str) -> Understanding:
    return understand(text_message(text, date(2026, 6, 1)))


@pytest.mark.parametrize("text", NOT_ASKED)
def test_what_is_not_asked_for_is_in_doubt(text: str) -> None:
    read = _read(text)
    for request in read.requests:
        assert {"od", "wall"} <= {doubt.field for doubt in request.doubts}, read.why_kind


@pytest.mark.parametrize(("text", "od"), ASKED)
def test_what_is_asked_for_is_sure(text: str, od: str) -> None:
    read = _read(text)
    assert read.kind is Kind.SIZES, read.why_kind
    sure = [r.od_mm for r in read.requests if all(d.about != "size" for d in r.doubts)]
    assert sure == [Decimal(od)]
