"""Counts that better an earlier one or sum it up: 'a new one, ideally two', 'so three in all'."""

from __future__ import annotations

import pytest

from .support import read_text

_ENGLISH = "Tube 30 x 2 mm, S235, CLR 75. "
_GERMAN = "Rohr 30 x 2 mm, S235, Radius 75 (neutrale Faser). "

BETTERED = [
    (_ENGLISH + "We need a new mandrel, ideally two.", 2),
    (_ENGLISH + "We need a mandrel, or better two while you're at it.", 2),
    (_ENGLISH + "We need a new mandrel, preferably three so there are some on the shelf.", 3),
    (_ENGLISH + "Please quote a mandrel, two would be better.", 2),
    (_GERMAN + "Wir brauchen einen neuen Dorn, am besten gleich zwei.", 2),
    (_GERMAN + "Wir brauchen einen Dorn, lieber gleich drei.", 3),
    (_GERMAN + "Wir brauchen einen Dorn. Also bitte zwei.", 2),
    ("Tube 30 x 2 acier, rayon à l'axe 75. Il nous faut un mandrin, de préférence deux.", 2),
    ("Tubo 30 x 2 acero, radio al eje 75. Necesitamos un mandril nuevo, mejor dos.", 2),
    ("Tubo 30 x 2 acciaio, raggio asse 75. Ci serve un mandrino nuovo, meglio due.", 2),
    ("Buis 30 x 2 staal, radius 75 hart. We hebben een nieuwe doorn nodig, liefst twee.", 2),
]
SUMS = [
    (_ENGLISH + "A few mandrels would be nice, so 3.", 3),
    (_ENGLISH + "Both shifts need one, so 2.", 2),
    (_ENGLISH + "One mandrel for each machine, so 2 in total.", 2),
    (_GERMAN + "Wir brauchen Dorne, für jede Maschine einen, also zwei.", 2),
    ("Tube 30 x 2 acier, rayon 75 à l'axe. Des mandrins svp, un par machine, donc 2.", 2),
    ("Tubo 30 x 2 acero, radio al eje 75. Mandriles, uno por máquina, o sea 2.", 2),
    ("Tubo 30 x 2 acciaio, raggio asse 75. Mandrini, uno per macchina, quindi 2.", 2),
    ("Buis 30 x 2 staal, radius 75 hart. Doornen graag, één per machine, dus 2.", 2),
]


@pytest.mark.parametrize(("text", "count"), BETTERED + SUMS)
def test_the_last_count_holds(text: str, count: int) -> None:
    (request,) = read_text(text)
    assert (request.od_mm, request.wall_mm, request.clr_mm) == (30, 2, 75)
    assert request.quantity == count


@pytest.mark.parametrize(
    "text",
    [
        "One mandrel for 1.5 x .065 tube. The CLR is 3.5 now, ideally 3.",
        "One mandrel for 38 x 1.5, the die is 4.5 in, so 114 CLR.",
    ],
)
def test_what_is_measured_counts_nothing(text: str) -> None:
    assert read_text(text)[0].quantity == 1
