"""One of two values offered that is to be reckoned with for now: named first, and still in doubt.

And numbers of inquiries in the subject, and remarks on the tool: neither is about a length. The
sentences are made up; no published source.
"""

from __future__ import annotations

from decimal import Decimal

import pytest

from .support import read_text


@pytest.mark.parametrize(
    "wall",
    [
        "Wall is going to be 1.5 or 2 mm (please use 1.5 for now).",
        "Die Wandstärke wird entweder 1,5 oder 2 mm (bitte erst einmal mit 1,5 rechnen).",
        "Die Wand wird 1,5 oder 2 mm, rechnen Sie mit 1,5.",
        "L'épaisseur sera de 1,5 ou 2 mm (comptez 1,5 pour l'instant).",
    ],
)
def test_the_value_for_now_is_likelier(wall: str) -> None:
    (size,) = read_text(f"One mandrel. {wall} 40 mm OD, CLR 80 mm.")
    assert (size.od_mm, size.wall_mm) == (40, Decimal("1.5"))
    assert size.doubt_on("wall")
    assert not size.doubt_on("od")


@pytest.mark.parametrize(
    "subject",
    [
        "Richiesta offerta n. 118/26",
        "Richiesta d'offerta n° 118/26",
        "Demande de prix n° 118/26",
        "Solicitud nº 118/26",
        "Oferta núm. 118/26",
        "Prot. 118/26",
    ],
)
def test_the_number_of_an_inquiry_is_no_tube(subject: str) -> None:
    (size,) = read_text("A mandrel for 25 x 1.5 mm, CLR 50 mm.", subject)
    assert (size.od_mm, size.wall_mm) == (25, Decimal("1.5"))
    assert not size.doubts


def test_what_the_sender_thinks_to_need_leaves_the_radius_sure() -> None:
    (size,) = read_text(
        '1.25" OD, .0625 wall, 5" radius to the middle of the tube. I think I need one of these?'
    )
    assert not size.doubt_on("clr")
