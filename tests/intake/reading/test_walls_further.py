"""Walls and ODs in further words: plurals and small words abroad, sizes dictated, walls listed each
with its material."""

from __future__ import annotations

import pytest

from bendreply.rules.request import Material

from .support import Size, inch, mm, read_text

SAID: list[tuple[str, Size]] = [
    ("Ø 40, wandje van 1,5, RVS, hartlijn 90. Eén doorn.", mm("40", "1.5", "90")),
    ("Tubo diametro 40, spesso 2, S235, raggio 100 all'asse.", mm("40", "2", "100")),
    ("Il tubo è di diametro quaranta, spesso due. Raggio cento, asse.", mm("40", "2", "100")),
    ("De buis is 40 in doorsnee, 2 dik, S235, straal 100 hart.", mm("40", "2", "100")),
    # the mandrel is called by its tube; a gauge's wall, and an OD alone in its sentence, are plain
    ('Do you sell 2-1/4" mandrels? .120 wall 6061, 6.75 CLR.', inch("2.25", ".120", "6.75")),
    ('Do you have a 2" mandrel? Wall is .083, CLR 6. 304.', inch("2", ".083", "6")),
    ('This time .095 and 1-1/2", same 4-1/2" centerline, 4130.', inch("1.5", ".095", "4.5")),
    ("Inch and a half. Wall's sixty-five thou. 4-1/2 inch centreline.", inch("1.5", ".065", "4.5")),
    # labels abroad, set before or behind
    ("30 bij 1,5; titanium; straal hart 75. Eén doorn.", mm("30", "1.5", "75")),
    ("De 22, ottone, lo spessore è 1,5 mm, raggio in asse 44 mm.", mm("22", "1.5", "44")),
    ("Rayon à l'axe 100 mm. D ext 40. Cuivre. Épaisseur : 2.", mm("40", "2", "100")),
    ("28 ép. 2. Laiton. Rayon à l'axe 56 mm.", mm("28", "2", "56")),
    ("Mittelradius 100; Wanddicke 2; außen 40 mm. Ein Dorn.", mm("40", "2", "100")),
    ("Esterno 30 mm. Lo spessore è 1,5 mm. Raggio in asse 75 mm.", mm("30", "1.5", "75")),
    ("Il tubo è da 42,4 mm. Con parete da 2,6. Raggio in asse 120.", mm("42.4", "2.6", "120")),
    ("1 mm stark, Ø 12, R 30 (Mitte), 1.4404.", mm("12", "1", "30")),
    # dictated, without a unit
    (
        "Tube is seven eighths by sixty five, centreline two and a half.",
        inch(".875", ".065", "2.5"),
    ),
    ("One and a half by one twenty, DOM, four and a half CLR. One.", inch("1.5", ".120", "4.5")),
    ("One and three quarters by ninety five, 5.25 CLR. One mandrel.", inch("1.75", ".095", "5.25")),
    ("Tube inox, vingt-deux par un et demi, rayon quarante-quatre à l'axe.", mm("22", "1.5", "44")),
    ("Tube inox, quarante par deux, rayon quatre-vingts à l'axe.", mm("40", "2", "80")),
    (
        "Tubo inox, veintidós por uno y medio, radio cuarenta y cuatro al eje.",
        mm("22", "1.5", "44"),
    ),
    ("Tubo inox, quaranta per due, raggio ottanta all'asse.", mm("40", "2", "80")),
    ("Buis RVS, tweeëntwintig bij anderhalf, straal 44 hart.", mm("22", "1.5", "44")),
]
WALLS: list[tuple[str, list[Size]]] = [
    (f"{said} Radius 80. {each}", [mm("40", "1.5", "80"), mm("40", "2", "80")])
    for said, each in (
        ("Zwei Wandstärken: 1,5 und 2. Durchmesser 40.", "Je Wandstärke ein Dorn."),
        ("Deux épaisseurs : 1,5 et 2. Diamètre 40.", "Un mandrin par épaisseur."),
        ("Dos espesores: 1,5 y 2. Diámetro 40.", "Un mandril por espesor."),
        ("Due spessori: 1,5 e 2. Diametro 40.", "Un mandrino per ogni spessore."),
        ("Twee wanddiktes: 1,5 en 2. Diameter 40.", "Eén doorn per wanddikte."),
        ("One mandrel for 1.5 mm wall, the other for 2 mm wall.", "Tube 40 mm."),
        ("Zwei Dorne: einmal Wand 1,5, einmal Wand 2.", "Rohr Ø 40."),
        ("Dos mandriles: uno para pared 1,5 y el otro para 2.", "Tubo de 40."),
        ("Due mandrini: uno per spessore 1,5 e l'altro per spessore 2.", "Tubo Ø 40."),
        ("Twee doornen: een voor wand 1,5 en de andere voor 2.", "Buis Ø 40."),
        ("Diametro 40, spessore 1,5 AISI 304 e 2 S235.", "Un mandrino ciascuno."),
    )
]


ON_RADII: list[str] = [
    "Wall .065: 1.5 OD on 4.5 CLR and 2 OD on 6 CLR",
    ".065 wall. 1.5 OD on 4.5 CLR, 2 OD on 6 CLR",
    "1.5 OD at 4.5 CLR and 2 OD at 6 CLR, both .065 wall",
    "1.5 OD with 4.5 CLR and 2 OD with 6 CLR, .065 wall",
    "1.5 OD on 4.5 CLR\n2 OD on 6 CLR\nwall .065",
    "1.5 OD on 4.5 CLR and 2 on 6, .065 wall",
]
MATERIALS: list[tuple[str, Material]] = [
    ("1-1/4 x .058 x 4130, 3-3/4 clr, one mandrel", Material.ALLOY_STEEL),
    ('2" x .083 x 6061, 6" CLR, one mandrel', Material.ALUMINIUM),
    ("pipe 30 mm x 2 mm iron, radius 90 mm in center, 1 mandrel", Material.CARBON_STEEL),
    ('Pipe says "1-1/2 SCH 40 A500". Die says "6.00 CLR".', Material.CARBON_STEEL),
    ("Cuproníquel 90/10, 88,9 por 2,5; radio 180 al eje.", Material.COPPER),
    ("Cupronichel 90/10, 88,9 x 2,5, raggio 180 in asse.", Material.COPPER),
    ("Kopernikkel 90/10, 88,9 x 2,5, straal hart 180.", Material.COPPER),
    ("Aluminium\nDie Wand ist 3 mm\nRohr 48 mm\nMittelradius 150", Material.ALUMINIUM),
    ("Copper 22 x 1, CLR 66. The fins are aluminium, pressed on after.", Material.COPPER),
]


@pytest.mark.parametrize("text", ON_RADII)
def test_tubes_set_on_their_radii(text: str) -> None:
    first, second = read_text(text)
    assert inch("1.5", ".065", "4.5").describes(first)
    assert inch("2", ".065", "6").describes(second)


@pytest.mark.parametrize(("text", "material"), MATERIALS)
def test_material(text: str, material: Material) -> None:
    (request,) = read_text(text)
    assert request.material is material
    assert not request.doubt_on("material")


@pytest.mark.parametrize(("text", "size"), SAID)
def test_one_size(text: str, size: Size) -> None:
    (request,) = read_text(text)
    assert size.describes(request), request


@pytest.mark.parametrize(("text", "sizes"), WALLS)
def test_two_walls(text: str, sizes: list[Size]) -> None:
    requests = read_text(text)
    assert len(requests) == len(sizes)
    for size, request in zip(sizes, requests, strict=True):
        assert size.describes(request), request
