"""Lists whose lines a noun numbers ('Row 1 ...'), and bare figures below words that make them radii.

An inch is 25.4 mm.
"""

# ruff: noqa: E501 - a form stands on one line

from __future__ import annotations

from decimal import Decimal

import pytest

from .support import read_text, written_down

_TUBE_IN = '3/4" OD x .065 wall SA-179. '
_TUBE_MM = "25 x 1,5, 1.4301. "
_INCHES = [Decimal("1.5"), Decimal("1.875"), Decimal("2.25")]
_METRIC = [Decimal(50), Decimal("62.5"), Decimal(75)]

NUMBERED = [  # a noun with a number, then what is said of that line
    "{tube}\n\n   Row 1   centerline radius {a}\n   Row 2   centerline radius {b}\n   Row 3   centerline radius {c}\n\nOne mandrel for each.",
    "{tube}\nRow 1: radius {a}\nRow 2: radius {b}\nRow 3: radius {c}\nOne mandrel each.",
    "{tube}\n- Bend 1 CLR {a}\n- Bend 2 CLR {b}\n- Bend 3 CLR {c}\nOne mandrel each.",
    "{tube}\nLayer 2 - CLR {a}\nLayer 3 - CLR {b}\nLayer 4 - CLR {c}\nOne mandrel each.",
    "{tube}\nHoop 1: {a} CLR\nHoop 2: {b} CLR\nHoop 3: {c} CLR\nOne mandrel each.",
    "{tube}\nReihe 1   Mittenradius {a}\nReihe 2   Mittenradius {b}\nReihe 3   Mittenradius {c}\nJe ein Dorn.",
    "{tube}\nPos. 1   Radius {a}\nPos. 2   Radius {b}\nPos. 3   Radius {c}\nJe ein Dorn.",
    "{tube}\nRang 1 : rayon moyen {a}\nRang 2 : rayon moyen {b}\nRang 3 : rayon moyen {c}\nUn mandrin pour chaque rang.",
    "{tube}\nFila 1   radio medio {a}\nFila 2   radio medio {b}\nFila 3   radio medio {c}\nUn mandril de cada.",
    "{tube}\nCurva 1   raggio medio {a}\nCurva 2   raggio medio {b}\nCurva 3   raggio medio {c}\nUn mandrino per ciascuna.",
    "{tube}\nBocht 1: hartlijnradius {a}\nBocht 2: hartlijnradius {b}\nBocht 3: hartlijnradius {c}\nVan elk één doorn.",
]  # fmt: skip
BELOW = [  # figures alone on their lines: the words above say that they are radii
    "All tubes are {tube}Radii are centerline:\n\n{a}\n{b}\n{c}\n\nOne mandrel per radius please.",
    "Tube is {tube}CLRs needed:\n{a}\n{b}\n{c}\nOne mandrel each.",
    "Tube is {tube}The radii are\n\n- {a}\n- {b}\n- {c}\n\nOne mandrel each.",
    "Alle Rohre {tube}Die Radien (neutrale Faser):\n\n{a}\n{b}\n{c}\n\nJe ein Dorn.",
    "Tous les tubes sont en {tube}Rayons à l'axe :\n\n{a}\n{b}\n{c}\n\nUn mandrin par rayon.",
    "Todos son de {tube}Radios al eje:\n\n{a}\n{b}\n{c}\n\nUn mandril por radio.",
    "Tutti i tubi sono {tube}Raggi all'asse:\n\n{a}\n{b}\n{c}\n\nUn mandrino per raggio.",
    "Alles buis {tube}Radii op hartlijn:\n\n{a}\n{b}\n{c}\n\nEén doorn per radius.",
]  # fmt: skip


@pytest.mark.parametrize("form", [*NUMBERED, *BELOW])
@pytest.mark.parametrize("metric", [True, False])
def test_each_line_gives_its_radius(form: str, *, metric: bool) -> None:
    """Nothing is doubted, no line is lost, and no number of a line is a radius."""
    radii = _METRIC if metric else _INCHES
    mark = "" if metric else '"'
    a, b, c = (f"{radius}{mark}" for radius in radii)
    text = form.format(tube=_TUBE_MM if metric else _TUBE_IN, a=a, b=b, c=c)
    requests = read_text(text)
    shown = f"{text}\n{written_down(requests)}"
    scale = Decimal(1) if metric else Decimal("25.4")
    assert [r.clr_mm for r in requests] == [radius * scale for radius in radii], shown
    assert {r.od_mm for r in requests} == {Decimal(25) if metric else Decimal("19.05")}, shown
    assert not [doubt for r in requests for doubt in r.doubts], shown


@pytest.mark.parametrize(
    "text",
    [
        "Mandrels for these tubes, .065 wall, one of each:\n1.5\n1.75\n2",
        "Mandrels, one each, ODs in inches, wall .065:\n1.5\n1.75\n2",
        "Mandrels, one each. Tube 1 1/2 x .065\nTube 1 3/4 x .065\nTube 2 x .065",
        "Mandrels for:\nQty 1  1.5 x .065\nQty 2  1.75 x .065\nQty 3  2 x .065",
    ],
)
def test_diameters_stay_what_they_are(text: str) -> None:
    """A list below words for tubes, and counts and diameters behind their words."""
    requests = read_text(text)
    shown = f"{text}\n{written_down(requests)}"
    assert [r.od_mm for r in requests] == [
        Decimal("38.1"), Decimal("44.45"), Decimal("50.8")
    ], shown  # fmt: skip
