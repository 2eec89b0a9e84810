"""Sizes as five languages tell them: lists, labels, signs, and words that are no size."""

from __future__ import annotations

from decimal import Decimal

import pytest

from .support import read_text, written_down

SIZES = [
    # 'in' stands before a tube and is no unit
    ("Zoek doorn voor een radius van 75 in buis 25x2, staal", "25 2 75"),
    ("Wir suchen einen Dorn für Radius 75 in Rohr 25x2", "25 2 75"),
    # 'Er' on the next line is Dutch, glued to a figure it is German
    ("Doorns voor:\nBuis 25, wanddikte 1,5, radius 75\nEr zitten 2 bochten in.", "25 1.5 75"),
    ("Neuer Dorn: 20x1,5er Rohr, R40.", "20 1.5 40"),
    # an angle behind a wall
    ("Was kostet ein Dorn für Rohr 50 x 2, 90°-Bogen mit R125?", "50 2 125"),
    # signs and words of wall and bore
    ("Necesitamos un mandril para tubo d=60,3 e=2 R=180.", "60.3 2 180"),
    ("Un mandrin pour tube de 48,3 exterieur, 2 d'epaisseur, rayon 145", "48.3 2 145"),
    ("Necesitamos un mandril para tubo interior 35, espesor 1,5, radio 76.", "38 1.5 76"),
    ("Il nous faut un mandrin pour tube ext. 38 int. 35, rayon 76.", "38 1.5 76"),
    ("Wij hebben een doorn nodig voor buis 38 x 1,5, radius binnenkant 57.", "38 1.5 76"),
    ("Wir brauchen einen Dorn für Rohr 38 x 1,5, Biegeradius 2fach D.", "38 1.5 76"),
    ("Necesitamos un mandril para tubo 12/1 radio 30.", "12 1 30"),
    # what is clamped, the rod and the distance of bends are none of the tube
    ("Wir brauchen einen Dorn für Rohr 40x2, R=2,5D. Spannlänge 2xD.", "40 2 100"),
    ("Il nous faut un mandrin pour tube 40x2, rayon 100. Longueur de serrage 2xD.", "40 2 100"),
    ("Wir brauchen einen Dorn für Rohr 40x2, Radius 100. Dornschaft Ø 20 mm.", "40 2 100"),
    ("Il faut un mandrin pour tube 40x2, rayon 100. Entraxe des coudes 85 mm.", "40 2 100"),
    ("Un mandrin pour tube 33,7x2 rayon 85, inox\nNotre machine date de 2014.", "33.7 2 85"),
    # the data of a mandrel are a request
    ("Estos son los datos para el mandril:\nRadio: 64\nØ tubo 32\nEspesor: 1.5 mm", "32 1.5 64"),
]


@pytest.mark.parametrize(("text", "size"), SIZES)
def test_one_size(text: str, size: str) -> None:
    requests = read_text(text)
    assert len(requests) == 1, written_down(requests)
    assert [requests[0].od_mm, requests[0].wall_mm, requests[0].clr_mm] == [
        *map(Decimal, size.split())
    ]
    assert not requests[0].doubts, written_down(requests)


SEVERAL = [
    (
        "Ci servono mandrini per tubo 22 esterno, 1 di spessore, raggio 44; tubo 63.5 esterno, "
        "2 di spessore, raggio 190.",
        ["22 1 44", "63.5 2 190"],
    ),
    (
        "Wir brauchen Dorne für Rohr 50 x 2, 90°-Bogen mit R125 und Rohr 20 x 1,5, 90°-Bogen "
        "mit R40.",
        ["50 2 125", "20 1.5 40"],
    ),
    ("Dorne für Rohr 48,3/2 Radius 145 und für Rohr 12/1 Radius 30.", ["48.3 2 145", "12 1 30"]),
]


@pytest.mark.parametrize(("text", "sizes"), SEVERAL)
def test_several_sizes(text: str, sizes: list[str]) -> None:
    read = [[r.od_mm, r.wall_mm, r.clr_mm] for r in read_text(text)]
    assert read == [[*map(Decimal, size.split())] for size in sizes]


MATERIALS = [
    (
        "graag offerte voor de volgende doorns:\n"
        "buis 18, wanddikte 1, hartlijnradius 45, aluminium\n"
        "buis 35, wanddikte 1,5, hartlijnradius 70, rvs 304",
        ["aluminium", "stainless_steel"],
    ),
    (
        "richiesta mandrini:\n"
        "pos. 1: 33,7 x 2,6 mm - raggio di curvatura 100 mm, rame\n"
        "pos. 2: 38 x 2 mm - raggio di curvatura 80 mm, acciaio",
        ["copper", "carbon_steel"],
    ),
    ("Un mandrin pour tube 60x2, rayon 180.\nMatière acier doux\nAngle de 90°.", ["carbon_steel"]),
    (
        "Ci serve un mandrino per tubo 42,4x2, raggio 85.\nMateriale P235TR1\n"
        "La nostra macchina è del 2014, max 80 mm.",
        ["carbon_steel"],
    ),
]


@pytest.mark.parametrize(("text", "materials"), MATERIALS)
def test_materials(text: str, materials: list[str]) -> None:
    requests = read_text(text)
    assert [r.material and r.material.value for r in requests] == materials


COUNTS = [
    ("Ein Paar Dorne für Rohr 50x2, R100 bitte anbieten.", 2),
    ("ein paar Dorne für Rohr 50x2, R100 bitte anbieten.", None),
    ("Necesitaríamos un par de mandriles para tubo 50x2, radio 100.", 2),
    ("Was verlangt ihr für einen Dorn für Rohr 50x2, R100?", 1),
    ("Wat vragen jullie voor een doorn voor buis 50x2, radius 100?", 1),
    ("We gaan buis 50x2, radius 100 buigen en missen nog een doorn.", 1),
    ("Quanto viene un mandrino per tubo 50x2, raggio 100?", 1),
    ("Potreste costruirci un mandrino snodato per tubo 50x2, raggio 100?", 1),
    ("¿Nos cotizáis un mandril de 3 bolas para tubo 50x2, radio 100?", 1),
    ("Vi prego di quotare un mandrino: tubo 50x2, raggio 100", 1),
    # an OD before a verb counts no mandrel
    ("Cerco un mandrino. Tubo 50x2, raggio 100. Per il tubo da 18 usiamo il vecchio mandrino.", 1),
    ("Busco un mandril para tubo 50x2, radio 100. Para el tubo de 18 usamos el mandril viejo.", 1),
]


@pytest.mark.parametrize(("text", "count"), COUNTS)
def test_counts(text: str, count: int | None) -> None:
    requests = read_text(text)
    assert [(r.od_mm, r.quantity) for r in requests] == [(50, count)], written_down(requests)
