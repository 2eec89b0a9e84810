"""Lines broken by a mail program are one sentence; lines of lists and labels stay lines."""

from __future__ import annotations

import textwrap
from decimal import Decimal

import pytest

from bendreply.intake.reading.text.plain import flatten
from bendreply.intake.reading.text.wrapped import unwrap

from .support import doubted, read_text

SENTENCES = {
    "en": "we need a quotation for one ball mandrel to suit 42.4 mm outside diameter tube with a "
    "2.6 mm wall thickness in stainless steel 304, bent on a centreline radius of 127 mm.",
    "de": "wir benötigen einen Biegedorn für Rohr mit 42,4 mm Außendurchmesser und einer "
    "Wandstärke von 2,6 mm aus Edelstahl, gebogen mit einem mittleren Biegeradius von 127 mm.",
    "fr": "nous aurions besoin d'un mandrin pour du tube de 42,4 mm de diamètre extérieur avec "
    "une épaisseur de paroi de 2,6 mm en inox 304L, cintré sur un rayon de 127 mm à l'axe du tube.",
    "es": "necesitamos un mandril para tubo de 42,4 mm de diámetro exterior con un espesor de "
    "pared de 2,6 mm en acero inoxidable 304, curvado con un radio medio de curvatura de 127 mm.",
    "it": "ci servirebbe un'anima per tubo con diametro esterno di 42,4 mm e 2,6 mm di spessore "
    "di parete in acciaio inox AISI 304, piegato con raggio medio di curvatura di 127 mm.",
    "nl": "wij hebben een buigdoorn nodig voor buis met een buitendiameter van 42,4 mm en een "
    "wanddikte van 2,6 mm in rvs 304, gebogen met een radius van 127 mm op hart buis gemeten.",
}
WIDTHS = range(56, 101, 2)


@pytest.mark.parametrize("width", WIDTHS)
@pytest.mark.parametrize("language", SENTENCES)
def test_a_sentence_reads_the_same_wherever_its_lines_end(language: str, width: int) -> None:
    (request,) = read_text(textwrap.fill(SENTENCES[language], width))
    lengths = (request.od_mm, request.wall_mm, request.clr_mm)
    assert lengths == (Decimal("42.4"), Decimal("2.6"), Decimal(127))
    assert not doubted(request)


def test_a_number_that_a_wrap_put_first_is_no_item_of_a_list() -> None:
    (request,) = read_text(
        "Buenos días, hacemos mobiliario de terraza. El tubo es de 32 exterior, interior\n"
        "28. La curva la medimos por dentro: 48 mm de radio interior."
    )
    # wall (32 - 28) / 2; centreline radius 48 + 32 / 2
    lengths = (request.od_mm, request.wall_mm, request.clr_mm)
    assert lengths == (Decimal(32), Decimal(2), Decimal(64))


KEPT = [
    "mandrel for 1-1/2 x .065 304 tube on a 4-1/2 inch centerline die\n1-3/4 x .065 on 5-1/4",
    "mandrel for 1-1/2 x .065 304 tube on a 4-1/2 inch centerline radius\n1-3/4 x .065 on 5-1/4",
    "40 x 2 mm tube in S235, radius 80 mm on the centreline, qty two\nradius: 80 mm",
    "the first is 40 x 2 with a radius of 80 mm on the centre line.\nthe second is 50 x 2",
    "A | 26,9 | 2,3 | 80 | P235GH | 1 | für den ersten Wärmetauscher\nb | 33,7 | 2,6 | 100",
    "38 x 1.5    R 57    stainless 304     two mandrels  for the rail\nand 42 x 2    R 63",
    "short line\nand another short line that goes on",
    "Please send us your best price for the items in the list below:\nand 38 x 1.5, R 57",
    "- 38 x 1.5 tube in stainless on a radius of 57 mm for the ladder,\n- and 42 x 2 on 63",
]


@pytest.mark.parametrize("text", KEPT)
def test_lines_that_the_sender_ended_stay(text: str) -> None:
    assert unwrap(flatten(text)).text == text


def test_every_character_keeps_its_place() -> None:
    text = textwrap.fill(SENTENCES["fr"], 64)
    plain, joined = flatten(text).text, unwrap(flatten(text)).text
    assert joined.count("\n") < plain.count("\n")
    assert [*joined.replace("\n", " ")] == [*plain.replace("\n", " ")]
