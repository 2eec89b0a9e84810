"""Radii as they are told in German, French, Spanish, Italian and Dutch: multiples in words, the
sides of a bend, edges that nobody names. The sentences are made up; no published source.
"""

from __future__ import annotations

from decimal import Decimal

import pytest

from .support import read_text


@pytest.mark.parametrize(
    ("radius", "times"),
    [
        ("Radius vierfacher Rohrdurchmesser", "4"),
        ("mit dreifachem Durchmesser als Radius gebogen", "3"),
        ("Biegeradius ist das Anderthalbfache des Durchmessers", "1.5"),
        ("Biegeradius zweieinhalb mal D", "2.5"),
        ("Biegeradius gleich dem Rohrdurchmesser", "1"),
        ("mit 2,5-fachem Durchmesser gebogen", "2.5"),
        ("rayon égal à deux fois et demie le diamètre", "2.5"),
        ("cintrage à quatre fois le diamètre", "4"),
        ("R égal à trois diamètres et demi", "3.5"),
        ("rayon égal au diamètre du tube", "1"),
        ("rayon : le triple du diamètre extérieur", "3"),
        ("doblado a una vez y media el diámetro", "1.5"),
        ("radio cinco veces el diámetro", "5"),
        ("radio el cuádruple del diámetro", "4"),
        ("radio igual al diámetro exterior", "1"),
        ("raggio una volta e mezza il diametro", "1.5"),
        ("raggio di piega quattro volte il diametro del tubo", "4"),
        ("raggio pari a due diametri e mezzo", "2.5"),
        ("raggio uguale al doppio del diametro", "2"),
        ("radius anderhalf keer de buisdiameter", "1.5"),
        ("buigradius het drievoudige van de diameter", "3"),
        ("straal vier maal de diameter", "4"),
        ("radius 2,5 x buisdiameter", "2.5"),
    ],
)
def test_multiples_of_the_diameter_in_words(radius: str, times: str) -> None:
    (size,) = read_text(f"40 x 2 mm, {radius}.")
    assert (size.od_mm, size.wall_mm) == (40, 2)
    assert size.clr_mm == 40 * Decimal(times)
    assert not size.doubts


@pytest.mark.parametrize(
    "words",
    [
        "une fois le diamètre 40 x 2 mm confirmé, rayon 100",
        "tubo de diámetro 40 x 2 mm, radio 100, dos veces por semana",
        "gleicher Durchmesser 40 x 2 mm, Radius 100",
        "tre diametri diversi, il primo è 40 x 2 mm, raggio 100",
    ],
)
def test_words_that_multiply_nothing(words: str) -> None:
    size = read_text(words)[0]
    assert (size.od_mm, size.wall_mm, size.clr_mm) == (40, 2, 100)


@pytest.mark.parametrize(
    ("radius", "clr"),
    [
        ("Innenradius = 1,5 x D", "80"),
        ("Radius 1,5D innen", "80"),
        ("Biegeradius innen 1,5D = 60 mm", "80"),
        ("Radius innen gleich Rohrdurchmesser", "60"),
        ("rayon intérieur 2 fois le diamètre", "100"),
        ("radio interior = 2 veces el diámetro", "100"),
        ("raggio interno pari al diametro", "60"),
        ("uitwendige radius 2,5 keer de diameter", "80"),
        ("2D inside radius", "100"),
        ("Radius 1,5D auf Mitte", "60"),
        ("Radius 1,5D, innen poliert", "60"),
    ],
)
def test_multiples_to_one_side_of_the_bend(radius: str, clr: str) -> None:
    (size,) = read_text(f"40 x 2 mm, {radius}.")
    assert size.clr_mm == Decimal(clr)
    assert not size.doubt_on("clr")


@pytest.mark.parametrize(
    "radius",
    [
        "R 230 am Bogenrücken",
        "Radius 230 über den Rücken gemessen",
        "der äußere Bogenradius beträgt 230",
        "au dos du coude on mesure R = 230",
        "rayon d'extrados 230",
        "radio 230 por la espalda del codo",
        "raggio 230 all'estradosso",
        "sul dorso della curva raggio 230",
        "buitenste radius 230",
        "radius 230 aan de rugzijde",
        "Radius in der Kehle 170",
        "R 170 dans le creux du coude",
        "raggio di intradosso 170",
        "radio interno 170",
        "binnenste straal 170",
        "inwendige radius 170",
    ],
)
def test_sides_of_a_bend_by_other_names(radius: str) -> None:
    (size,) = read_text(f"60 x 2 mm; {radius}.")
    assert (size.od_mm, size.wall_mm, size.clr_mm) == (60, 2, 200)
    assert not size.doubts


@pytest.mark.parametrize(
    "radius",
    [
        "R 65 bis zur Rohrkante",
        "R 65, innen oder außen weiß ich nicht",
        "R 65 jusqu'au bord du tube, on ne sait pas lequel",
        "R 65 hasta el borde del tubo, no se ve cuál",
        "R 65 al bordo del tubo, interno o esterno non si capisce",
        "R 65 tot de rand van de buis",
        "R 65, of dat binnen of buiten is weet ik niet",
    ],
)
def test_an_edge_that_nobody_names_is_doubted(radius: str) -> None:
    (size,) = read_text(f"30 x 2 mm, {radius}.")
    assert (size.od_mm, size.wall_mm, size.clr_mm) == (30, 2, 80)
    assert size.doubt_on("clr")


@pytest.mark.parametrize(
    "radius",
    [
        "radius not 200 but 250",
        "the radius is no longer 200, it's 250",
        "Radius nicht 200, sondern 250",
        "Radius nicht mehr 200, sondern 250",
        "le rayon n'est plus de 200 mais de 250",
        "rayon 250 et non plus 200",
        "el radio ya no es 200 sino 250",
        "le curve non più di raggio 200, bensì 250",
        "il raggio non è 200 ma 250",
        "radius is niet langer 200 maar 250",
    ],
)
def test_not_this_but_that(radius: str) -> None:
    (size,) = read_text(f"101,6 x 3 mm; {radius}.")
    assert (size.od_mm, size.wall_mm, size.clr_mm) == (Decimal("101.6"), 3, 250)
    assert not size.doubts


def test_not_this_wall_but_that() -> None:
    (size,) = read_text("Rohr 101,6, Wand nicht 3 sondern 2,6, Radius 250.")
    assert (size.od_mm, size.wall_mm, size.clr_mm) == (Decimal("101.6"), Decimal("2.6"), 250)


def test_a_whole_tube_put_right_stays_one() -> None:
    (size,) = read_text("Rohr nicht 40x2 sondern 45x2, Radius 100.")
    assert (size.od_mm, size.wall_mm, size.clr_mm) == (45, 2, 100)


@pytest.mark.parametrize(
    "radius",
    [
        "Krümmungsradius",
        "Bogenhalbmesser",
        "Achsenradius",
        "Radius bis Mitte Rohr",
        "rayon de coude",
        "rayon sur axe",
        "rayon pris à l'axe",
        "rayon au milieu du tube",
        "radio de doblez",
        "radio de plegado al eje",
        "radio de línea media",
        "raggio mezzeria",
        "raggio della curva",
        "raggio a metà tubo",
        "zetradius",
        "straal van de bocht",
        "radius tot hart buis",
        "middenlijnradius",
    ],
)
def test_other_names_of_the_radius(radius: str) -> None:
    ahead = read_text(f"{radius} 113, 40 x 2 mm")
    behind = read_text(f"40 x 2 mm, {radius}: 113 mm")
    for (size,) in (ahead, behind):
        assert (size.od_mm, size.wall_mm, size.clr_mm) == (40, 2, 113)


def test_a_radius_of_a_corner_is_none_of_a_bend() -> None:
    (size,) = read_text("40 x 2 mm, Biegeradius 113, Eckenradius 5")
    assert size.clr_mm == 113


@pytest.mark.parametrize(
    "radii",
    [
        "Radius 60 am Sitz und 90 an der Lehne",
        "einmal mit 60er und einmal mit 90er Biegeradius",
        "mit 60er und 90er Radius",
        "am Sitz ist der Radius 60 und an der Lehne 90",
        "rayon de 60 pour l'assise et de 90 pour le dossier",
        "rayon 60 devant et 90 derrière",
        "en el asiento el radio es 60 y en el respaldo 90",
        "uno con radio 60 y otro con 90",
        "raggio 60 per la seduta e 90 per lo schienale",
        "raggio 60 davanti e 90 dietro",
        "radius 60 voor de zitting en 90 voor de rug",
        "een keer radius 60 en een keer 90",
        "radius 60 for the seat and 90 for the back",
    ],
)
def test_two_radii_each_with_its_place(radii: str) -> None:
    first, second = read_text(f"22 x 1,5 mm, {radii}.")
    for size, clr in ((first, 60), (second, 90)):
        assert (size.od_mm, size.wall_mm, size.clr_mm) == (22, Decimal("1.5"), clr)


@pytest.mark.parametrize(
    "words",
    [
        "Radius 60 am Sitz und 2 Dorne dazu",
        "Radius 60 am Sitz und 90 Grad an der Lehne",
        "Radius 60 am Rahmen",
    ],
)
def test_one_radius_with_its_place(words: str) -> None:
    (size,) = read_text(f"22 x 1,5 mm, {words}.")
    assert size.clr_mm == 60


@pytest.mark.parametrize(
    "radii",
    [
        "Radius beim 18er 36, beim 22er 55",
        "Radius: für das 18er 36, für das 22er 55",
        "rayon pour le 18 : 36, pour le 22 : 55",
        "radio para el de 18: 36; para el de 22: 55",
        "straal bij de 18 is 36, bij de 22 is 55",
    ],
)
def test_radii_behind_the_tubes_they_are_for(radii: str) -> None:
    first, second = read_text(f"18 x 1,5 mm, 22 x 1,5 mm. {radii}.")
    assert (first.od_mm, first.clr_mm) == (18, 36)
    assert (second.od_mm, second.clr_mm) == (22, 55)


@pytest.mark.parametrize(
    "words",
    [
        "vom Drehpunkt bis zur Rohrmitte sind es 110 mm",
        "die Biegeform misst 110 bis zur Rohrmitte",
        "du centre de rotation à l'axe du tube il y a 110 mm",
        "on a l'outillage en 110 axe",
        "entre el centro de giro y el eje del tubo hay 110 mm",
        "dal centro della curva alla mezzeria del tubo 110 mm",
        "van draaipunt tot hart buis is het 110 mm",
        "bocht van 110 door het hart",
        "buigsegment van 110 op de hartlijn",
        "le rayon, disons 110",
        "el radio, digamos 110",
        "il raggio, diciamo 110",
    ],
)
def test_a_radius_without_its_word(words: str) -> None:
    (size,) = read_text(f"44,5 x 2 mm; {words}.")
    assert (size.od_mm, size.wall_mm, size.clr_mm) == (Decimal("44.5"), 2, 110)
