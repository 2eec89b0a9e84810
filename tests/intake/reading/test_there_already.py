"""Tooling that a machine came with, or somebody has, is not asked for; nor what bends without."""

from __future__ import annotations

from decimal import Decimal

import pytest

from .support import read_text

MACHINES = [
    ('Our old bender came with tooling for 2" and 2 1/4".', "en"),
    ("The machine has dies for 38 mm and 42 mm.", "en"),
    ("Bought a used bender with mandrels for 1.5 x .065 and 1.75 x .065.", "en"),
    ("Zur Maschine gab es Werkzeuge für 38 mm und 42 mm.", "de"),
    ("La cintreuse est arrivée avec des outillages pour du 38 mm et du 42 mm.", "fr"),
    ("La curvatubi è arrivata con attrezzature per il 38 mm e il 42 mm.", "it"),
    ("La dobladora vino con utillaje para 38 mm y 42 mm.", "es"),
    ("De machine kwam met gereedschap voor 38 mm en 42 mm.", "nl"),
]
ASKED = {
    "en": "We need one mandrel for 50 x 1.5 mm, CLR 100 mm, and one for 60 x 2, CLR 120. "
    "One of each for now.",
    "de": "Wir brauchen einen Dorn für 50 x 1,5, Radius 100, und einen für 60 x 2, Radius 120.",
    "fr": "Il nous faut un mandrin pour 50 x 1,5, rayon 100, et un pour 60 x 2, rayon 120.",
    "it": "Ci serve un'anima per 50 x 1,5, raggio 100, e una per 60 x 2, raggio 120.",
    "es": "Necesitamos un mandril para 50 x 1,5, radio 100, y otro para 60 x 2, radio 120.",
    "nl": "We hebben een doorn nodig voor 50 x 1,5, radius 100, en een voor 60 x 2, radius 120.",
}


@pytest.mark.parametrize(("told", "language"), MACHINES)
def test_tooling_of_a_machine(told: str, language: str) -> None:
    requests = read_text(f"{told} {ASKED[language]}")
    assert [(r.od_mm, r.clr_mm) for r in requests] == [(50, 100), (60, 120)]
    assert not any(request.doubts for request in requests)


def test_mandrels_for_what_the_machine_has_dies_for() -> None:
    text = "Our bender has tooling for 38 mm and 42 mm tube. Please quote mandrels for both."
    assert [r.od_mm for r in read_text(text)] == [38, 42]


OTHERS = [
    "The shop next door has a mandrel for 38 x 1.5 and one for 42 x 1.5. We need one mandrel for "
    "50 x 1.5, radius 100.",
    "L'atelier voisin a un mandrin pour 38 x 1,5 et un pour 42 x 1,5. Il nous faut un mandrin "
    "pour 50 x 1,5, rayon 100.",
    "Tenemos un mandril para 38 x 1,5 y otro para 42 x 1,5. Necesitamos un mandril para 50 x 1,5, "
    "radio 100.",
    "Mein Nachbar hat einen Dorn für 38 x 1,5 und einen für 42 x 1,5. Wir brauchen einen Dorn "
    "für 50 x 1,5, Radius 100.",
]


@pytest.mark.parametrize("text", OTHERS)
def test_one_and_one_that_somebody_has(text: str) -> None:
    *others, asked = read_text(text)
    assert asked.od_mm == 50
    assert not asked.doubts
    assert all(request.doubt_on("od") for request in others)


@pytest.mark.parametrize("language", ASKED)
def test_one_and_one_that_are_asked_for(language: str) -> None:
    requests = read_text(ASKED[language])
    assert [(r.od_mm, r.quantity) for r in requests] == [(50, 1), (60, 1)]
    assert not any(request.doubts for request in requests)


PICKED = [
    "We bend 38 x 1.5 and also 25 x 1.5 and get wrinkles on the 38 only. The 25 does fine without. "
    "So we would like a mandrel for the 38. Radius 76 mm to center.",
    "Nous cintrons du 38 x 1,5 et du 25 x 1,5. Des plis seulement sur le 38, le 25 passe sans "
    "mandrin. Il nous faut un mandrin pour le 38. Rayon 76 mm.",
    "Curviamo 38 x 1,5 e 25 x 1,5. Grinze solo sul 38, il 25 va bene senza. Vorrei un'anima per "
    "il 38. Raggio 76 mm.",
    "Doblamos 38 x 1,5 y 25 x 1,5. Arrugas solo en el 38, el 25 va bien sin mandril. Queremos un "
    "mandril para el 38. Radio 76 mm.",
    "We buigen 38 x 1,5 en 25 x 1,5. Plooien alleen bij de 38, de 25 gaat goed zonder. Graag een "
    "doorn voor de 38. Radius 76 mm.",
]


@pytest.mark.parametrize("text", PICKED)
def test_a_mandrel_for_one_of_two_that_are_bent(text: str) -> None:
    picked, *others = read_text(text)
    assert (picked.od_mm, picked.wall_mm, picked.clr_mm) == (38, Decimal("1.5"), 76)
    assert picked.quantity == 1
    assert not picked.doubts
    assert all(request.doubt_on("od") for request in others)


def test_a_mandrel_for_each_by_name() -> None:
    text = "Tubes are 38 x 1.5 on R76 and 25 x 1.5 on R50. Quote a mandrel for the 38 and one for "
    requests = read_text(text + "the 25.")
    assert not any(request.doubts for request in requests)
