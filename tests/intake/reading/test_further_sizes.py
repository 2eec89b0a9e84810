"""A further size in running words has its own OD and radius, however short they are told."""

from __future__ import annotations

import pytest

from bendreply.rules.request import Material

from .support import read_text

Size = tuple[float | None, float | None, float | None]


def _sizes(text: str) -> list[Size]:
    return [
        tuple(None if v is None else round(float(v), 2) for v in (r.od_mm, r.wall_mm, r.clr_mm))
        for r in read_text(text)
    ]


CLOSED_BY_RADIUS = [
    "Il nous faut un mandrin pour du tube de 25 mm, épaisseur 1,5 mm, cintré à 60 mm de rayon, et "
    "un mandrin pour du 30 mm, même épaisseur et même nuance, à 75 mm.",
    "Wir brauchen einen Dorn für Rohr 25 mm, Wand 1,5 mm, gebogen mit 60 mm Radius, und einen für "
    "30 mm, gleiche Wand, mit 75 mm.",
    "Ci serve un'anima per tubo 25 x 1,5 curvato a 60 mm di raggio, e una per il 30, stesso "
    "spessore, a 75 mm.",
    "Necesitamos un mandril para tubo de 25 x 1,5 curvado a 60 mm de radio, y otro para tubo de "
    "30 mm, mismo espesor, a 75 mm.",
    "Graag een doorn voor buis 25 x 1,5 gebogen op 60 mm radius, en een voor 30 mm, zelfde wand, "
    "op 75 mm.",
    "Need a mandrel for 25 mm tube, 1.5 mm wall, on a 60 mm radius, and another for 30 mm, same "
    "wall, with 75 mm.",
]


@pytest.mark.parametrize("text", CLOSED_BY_RADIUS)
def test_a_clause_that_ends_with_a_length_ends_with_its_radius(text: str) -> None:
    assert _sizes(text) == [(25, 1.5, 60), (30, 1.5, 75)]
    assert not any(request.doubts for request in read_text(text))


def test_a_radius_that_was_not_heard_is_not_replaced_in_silence() -> None:
    text = "Mandrel 25 x 1.5 on a 60 mm radius, and one for 30 mm, same wall, 75 mm."
    assert all(request.doubt_on("clr") for request in read_text(text)[1:])


PAIRS: list[tuple[str, list[Size]]] = [
    ("Mandrels for tube 38 mm R76 and 50 mm R100, wall 1.5.", [(38, 1.5, 76), (50, 1.5, 100)]),
    ("Mandrels for 38 R76 and 50 R100. Wall 1.5 mm both.", [(38, 1.5, 76), (50, 1.5, 100)]),
    ("Dorne für 38 mm R76 und 50 mm R100, Wand 1,5 mm.", [(38, 1.5, 76), (50, 1.5, 100)]),
    ("Mandrins pour 38 mm rayon 76 et 50 mm rayon 100, épaisseur 1,5.",
     [(38, 1.5, 76), (50, 1.5, 100)]),
    ("Mandriles para 38 mm radio 76 y 50 mm radio 100, espesor 1,5.",
     [(38, 1.5, 76), (50, 1.5, 100)]),
    ("Anime per 38 mm raggio 76 e 50 mm raggio 100, spessore 1,5.",
     [(38, 1.5, 76), (50, 1.5, 100)]),
    ("Doornen voor 38 mm straal 76 en 50 mm straal 100, wand 1,5.",
     [(38, 1.5, 76), (50, 1.5, 100)]),
    ('Mandrels for 1.5" 4.5 CLR, 1.75" 5.25 CLR and 2" 6 CLR, .065 wall.',
     [(38.1, 1.65, 114.3), (44.45, 1.65, 133.35), (50.8, 1.65, 152.4)]),
    ("Tube 38 x 1.5 mm, R76, 90 and 100 CLR.", [(38, 1.5, 76), (38, 1.5, 90), (38, 1.5, 100)]),
    ("25 x 1.5 R 50 and R 60.", [(25, 1.5, 50), (25, 1.5, 60)]),
]  # fmt: skip


@pytest.mark.parametrize(("text", "sizes"), PAIRS)
def test_pairs_of_tube_and_radius(text: str, sizes: list[Size]) -> None:
    assert _sizes(text) == sizes


PARTS = [
    "Two mandrels: one for the short legs 22 x 1, radius 90, and one for the long ones, 28 x 1.5, "
    "radius 110.",
    "Zwei Dorne: einen für die kurzen Bügel 22 x 1, Radius 90, und einen für die hohen, 28 x 1,5, "
    "Radius 110.",
    "Deux mandrins : un pour les petits arceaux 22 x 1, rayon 90, et un pour les hauts, 28 x 1,5, "
    "rayon 110.",
    "Due anime: una per i foderi bassi 22 x 1, raggio 90, e una per quelli alti, 28 x 1,5, raggio "
    "110.",
    "Dos mandriles: uno para los bajos 22 x 1, radio 90, y otro para los largos, 28 x 1,5, radio "
    "110.",
]


@pytest.mark.parametrize("text", PARTS)
def test_tubes_named_by_parts_that_are_long_or_high(text: str) -> None:
    assert _sizes(text) == [(22, 1, 90), (28, 1.5, 110)]


def test_legs_beside_a_tube_are_lengths() -> None:
    (request,) = read_text("Mandrel for tube 38 x 1.5, legs 100 mm, radius 76.")
    assert (request.od_mm, request.clr_mm) == (38, 76)


TRADES = [
    ("We build steel frames. Two mandrels: 22 x 1 on R66 and 16 x 1 on R50. Everything is 4130.",
     Material.ALLOY_STEEL),
    ("Faccio telai in acciaio. Due anime: 22 x 1, raggio 66 e 16 x 1, raggio 50. Tutto 25CrMo4.",
     Material.ALLOY_STEEL),
    ("Wir bauen Rahmen aus Stahl. Zwei Dorne: 22 x 1, R66 und 16 x 1, R50. Alles 1.4301.",
     Material.STAINLESS_STEEL),
    ("Nous faisons des cadres en acier. Deux mandrins : 22 x 1, R66 et 16 x 1, R50. Tout en inox.",
     Material.STAINLESS_STEEL),
]  # fmt: skip


@pytest.mark.parametrize(("text", "material"), TRADES)
def test_the_steel_of_a_trade_is_no_tubes(text: str, material: Material) -> None:
    assert [request.material for request in read_text(text)] == [material, material]


@pytest.mark.parametrize(
    "said",
    [
        "bend radius to centre line 120 mm",
        "radius to center line of 120 mm",
        "radius to the centre line is 120 mm",
        "Biegeradius zur Mittellinie 120 mm",
        "rayon de cintrage à l'axe 120 mm",
        "raggio di curvatura all'asse 120 mm",
        "radio de curvatura al eje 120 mm",
        "buigradius op de hartlijn 120 mm",
    ],
)
@pytest.mark.parametrize("tube", ["Square tube 30 x 30 x 2 mm", "Tube 30 x 2 mm"])
def test_a_radius_to_the_centre_line(tube: str, said: str) -> None:
    (request,) = read_text(f"{tube}, {said}.")
    assert (request.wall_mm, request.clr_mm) == (2, 120)
