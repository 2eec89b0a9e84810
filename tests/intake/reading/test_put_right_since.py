"""What a colleague wrote, what is to be ignored, what a tube is only called, and pasted chat."""

# ruff: noqa: E501 - a row of a table stands on one line

from __future__ import annotations

from decimal import Decimal

import pytest

from bendreply.intake.message import parse_message
from bendreply.intake.pipeline import understand
from bendreply.rules.request import SizeRequest

_HEAD = "From: a@example.com\nDate: Tue, 27 Oct 2026 10:00:00 +0000\nContent-Type: text/plain; charset=utf-8\nContent-Transfer-Encoding: 8bit\n\n"


def _sizes(text: str) -> tuple[SizeRequest, ...]:
    return understand(parse_message((_HEAD + text).encode())).requests


def _is(size: SizeRequest, od: float, wall: float, clr: float) -> bool:
    """Whether these are its lengths [mm], and no doubt is on them."""
    lengths = (size.od_mm, size.wall_mm, size.clr_mm)
    return lengths == tuple(Decimal(str(length)) for length in (od, wall, clr)) and not size.doubts


@pytest.mark.parametrize(
    "text",
    [
        "Tube 48.3, R 120 to the centre. Tom said 2 mm wall but it's 3 mm, I measured it. One mandrel please.",
        "Rohr 48,3, R 120 Mitte. Der Kollege schrieb 2 mm Wand, aber in der Halle liegt 3 mm. Also bitte einen Dorn für 3 mm Wand.",
        "Tube 48,3, rayon 120 à l'axe. Luc a écrit 2 mm de paroi mais à l'atelier il y a 3 mm. Donc un mandrin pour 3 mm de paroi svp.",
        "Tubo de 48,3, radio 120 al eje. Ana puso pared de 2 mm pero en el taller hay 3 mm. Un mandril para pared de 3 mm, por favor.",
        "Tubo 48,3, raggio 120 all'asse. Lui ha scritto 2 mm di parete ma in officina c'è 3 mm. Un mandrino per parete 3 mm.",
        "Buis 48,3, straal 120 hart. Hij schreef 2 mm wand maar op de bok ligt 3 mm, zelf nagemeten. Graag de doorn voor 3 mm wand.",
    ],
)
def test_what_a_colleague_wrote_is_out(text: str) -> None:
    (size,) = _sizes(text)
    assert (size.od_mm, size.wall_mm, size.clr_mm) == (Decimal("48.3"), 3, 120)


@pytest.mark.parametrize(
    "text",
    [
        "Ignore what I wrote on Monday about 90 clr, I had it to the wrong edge. It's 76 mm. Tube still 25 x 1.5 mm. One mandrel.",
        "Forget the 90 CLR of yesterday, I took the wrong edge. It works out at 76 mm. Tube is 25 x 1.5 mm. One mandrel.",
        "Disregard the 90 mm radius in my last mail. From the pivot to the middle of the groove is 76 mm. Tube 25 x 1.5 mm, one mandrel.",
        "Bitte den Radius 90 von gestern vergessen, da habe ich falsch gemessen. Es kommt 76 mm raus. Rohr bleibt 25 x 1,5. Ein Dorn.",
        "Oubliez le rayon de 90 d'hier, j'avais mal mesuré. Cela fait 76 mm. Tube 25 x 1,5. Un mandrin svp.",
        "Olvide el radio de 90 de ayer, medí mal. Sale 76 mm. Tubo 25 x 1,5. Un mandril.",
        "Lasci stare il raggio 90 di ieri, avevo misurato male. Viene 76 mm. Tubo 25 x 1,5. Un mandrino.",
        "Vergeet die straal 90 van gisteren, verkeerd gemeten. Het komt uit op 76 mm. Buis 25 x 1,5. Een doorn graag.",
    ],
)
def test_what_was_found_since_takes_the_place(text: str) -> None:
    (size,) = _sizes(text)
    assert _is(size, 25, 1.5, 76)


@pytest.mark.parametrize(
    "text",
    [
        "One mandrel for 60.3 x 2.9 mm, 150 CLR. We always call it the two inch pipe.",
        "One mandrel for 2 inch, sorry, 60.3 mm OD x 2.9 mm wall, 150 mm CLR. (I keep calling it two inch.)",
        "Ein Dorn für Rohr 60,3 x 2,9 mm, R 150 Mitte. Bei uns sagen alle 2 Zoll dazu.",
        "Un mandrin pour tube 60,3 x 2,9 mm, rayon 150 à l'axe. Chez nous on l'appelle le deux pouces.",
        "Un mandril para tubo de 60,3 x 2,9 mm, radio 150 al eje. Nosotros lo llamamos de 2 pulgadas.",
        "Un mandrino per tubo 60,3 x 2,9 mm, raggio 150 all'asse. Noi lo chiamiamo 2 pollici.",
        "Een doorn voor buis 60,3 x 2,9 mm, straal 150 hart. Wij noemen dat 2 duims.",
    ],
)
def test_what_a_tube_is_called_measures_nothing(text: str) -> None:
    (size,) = _sizes(text)
    assert _is(size, 60.3, 2.9, 150)


@pytest.mark.parametrize(
    "chat",
    [
        "[26/10, 13:02] Jo: tube is 42.4 x 2, 304\n[26/10, 13:05] Kim: radius 90 mm to centre",
        "[26.10.26, 13:02:11] Jo: tube is 42.4 x 2, 304\n[26.10.26, 13:05:40] Kim: and the former?\n[26.10.26, 13:06:02] Jo: 90 mm clr",
        "26/10/2026, 1:02 PM - Jo: tube is 42.4 x 2, 304\n26/10/2026, 1:05 PM - Kim: radius 90 mm to centre",
        "Jo, [26.10.2026 13:02]\ntube is 42.4 x 2, 304\nKim, [26.10.2026 13:05]\nradius 90 mm to centre",
    ],
)
def test_who_wrote_a_line_of_chat_and_when_is_no_size_and_no_day(chat: str) -> None:
    (size,) = _sizes(f"From our chat, one mandrel please.\n\n{chat}\n")
    assert _is(size, 42.4, 2, 90)
    assert size.needed_by is None
    assert size.quantity == 1
