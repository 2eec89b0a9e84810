"""Sizes as Germans, French, Spaniards, Italians and Dutch write them, in prose and lines."""

# ruff: noqa: E501 - a row of a table stands on one line: the words, then their meaning

from __future__ import annotations

from datetime import date
from decimal import Decimal

import pytest

from bendreply.intake.reading import read

from .support import read_text, whole

Wanted = tuple[tuple[str, str, str], ...]
FORTY: Wanted = (("40", "2", "100"),)
PAIR: Wanted = (*FORTY, ("50", "2", "150"))

WALL_BY_ITS_WORD: list[tuple[str, Wanted]] = [
    (
        "Wat kost een doorn voor buis 25 wanddikte 2, hartlijnradius 60, staal?",
        (("25", "2", "60"),),
    ),
    ("Graag een doorn voor buis 18 wand 1, straal 45.", (("18", "1", "45"),)),
    ("Ci serve un mandrino per tubo da 22 spessore 1, raggio all'asse 44", (("22", "1", "44"),)),
    ("Mandrin pour tube de 12 ép. 1, rayon 30", (("12", "1", "30"),)),
    ("Dorn für Rohr 18 Wand 1, Radius 45", (("18", "1", "45"),)),
    ("Necesito mandril para tubo de 25 esp. 2, radio 60", (("25", "2", "60"),)),
    (
        "Mandrins : tube 33,7 ep 2,6 rayon 100; tube 42,4 ep 2,6 rayon 90",
        (("33.7", "2.6", "100"), ("42.4", "2.6", "90")),
    ),
    ("Mandrin pour du tube de 40 en 2 d'épaisseur, rayon 100", FORTY),
    ("Dorn für Rohr 40 mit 2 Wand und Radius 100", FORTY),
    ("Mandrin pour tube de 40 par 2, rayon 100 à l'axe", FORTY),
    ("Mandrin pour tube 40 sur 100 de rayon, épaisseur 2", FORTY),
    ("Mandrino per tubo 40 con 2 di spessore e raggio 100", FORTY),
]
IN_SENTENCES: list[tuple[str, Wanted]] = [
    (
        "Le tube fait 40 de diamètre, l'épaisseur est de 2 et le rayon de 100. Il me faut un mandrin.",
        FORTY,
    ),
    ("Un mandrin svp. Diamètre 40. L’épaisseur est de 2. On cintre avec un rayon de 100.", FORTY),
    ("Il me faut un mandrin. Diametre 40, l'epaisseur est de 2, le rayon est de 100", FORTY),
    ("Diameter 40. De wanddikte bedraagt 2. We buigen met radius 100. Ik zoek een doorn.", FORTY),
    ("Der Durchmesser beträgt 40, die Wand beträgt 2, der Radius 100. Bitte Dorn anbieten.", FORTY),
    ("Cerco mandrino: il diametro misura 40 mm, lo spessore è 2, il raggio vale 100", FORTY),
]
OF_THE_NEXT_TUBE: list[tuple[str, Wanted]] = [
    (
        "Mandrins pour tube diamètre extérieur 28, épaisseur 1,5, rayon moyen 70 et pour tube"
        " diamètre extérieur 76,1, épaisseur 2, rayon moyen 230.",
        (("28", "1.5", "70"), ("76.1", "2", "230")),
    ),
    (
        "Mandriles para tubo diámetro exterior 18, espesor 1, radio medio 36 y para tubo diámetro"
        " exterior 40, espesor 1.5, radio medio 100.",
        (("18", "1", "36"), ("40", "1.5", "100")),
    ),
    ("Servono mandrini per tubo 44,5/1,5 raggio 110", (("44.5", "1.5", "110"),)),
    (
        "Mandrini:\n- tubo 44.5x1.5 raggio 110\n- tubo 40x2 raggio 100",
        (("44.5", "1.5", "110"), *FORTY),
    ),
]
OWNED_ON_THE_NEXT_LINE: list[tuple[str, Wanted]] = [
    ("1 mandrin pour tube diam 40 ép 2 r 100, 304L\nNous avons déjà un mandrin pour 30x2.", FORTY),
    ("Anime per:\n- 40 x 2, R 100\nAbbiamo già un mandrino per 30x2.", FORTY),
    ("Wir brauchen einen Dorn für Rohr 40x2, R 100\nEinen Dorn für 30x2 haben wir schon", FORTY),
    ("Necesitamos un mandril para 40x2, radio 100\nYa tenemos un mandril para 30x2", FORTY),
    ("Doorn nodig voor 40x2, radius 100\nEen doorn voor 30x2 hebben we al", FORTY),
]
CREASES: list[tuple[str, Wanted]] = [
    ("Ci serve un mandrino: tubo 40x2 R100\nL'ultima curva aveva grinze all'interno.", FORTY),
    ("Dorn für 40x2 R100, der letzte Bogen hatte Falten innen.", FORTY),
    ("Mandrin 40x2 R100\nLe dernier coude avait des plis à l'intérieur", FORTY),
    ("Mandril 40x2 R100\nLa última curva salió con arrugas por dentro", FORTY),
    ("Doorn 40x2 R100\nDe laatste bocht had plooien aan de binnenkant", FORTY),
]
SEVERAL_ASKED: list[tuple[str, Wanted]] = [
    ("Was kosten Biegedorne für Rohr 40x2, Radius 100 und Rohr 50x2, Radius 150?", PAIR),
    ("Graag per maat een doorn aanbieden: buis 40x2, radius 100; buis 50x2, radius 150.", PAIR),
    ("Bitte je Größe einen Dorn anbieten: Rohr 40x2, Radius 100; Rohr 50x2, Radius 150.", PAIR),
    ("Merci de chiffrer un mandrin par tube : 40x2, rayon 100; 50x2, rayon 150.", PAIR),
    ("Merci de chiffrer : tube 40x2, rayon 100 ainsi que pour tube 50x2, rayon 150.", PAIR),
    ("Doorns voor:\nradius 100: buis 40 x 2\nradius 150: buis 50 x 2\nAlvast bedankt", PAIR),
]
LABELLED: list[tuple[str, Wanted]] = [
    (
        "Hier die Daten für den Dorn:\nRohr: 40\nWandstärke: 2 mm\nRadius: 100\nBitte anbieten",
        FORTY,
    ),
    ("Bitte einen Dorn anbieten, hier die Daten: Rohr: 40, Wandstärke: 2, Radius: 100", FORTY),
    ("Merci de chiffrer un mandrin :\n- Rayon : 100\n- Diamètre : 40\n- Épaisseur : 2,0 mm", FORTY),
    ("Graag een doorn voor:\nBuisdiameter 40\nDikte: 2 mm\nRadius (hartlijn): 100 mm", FORTY),
    ("Zoek doorn voor buis Ø 40, wd 2, buigstraal 100", FORTY),
    ("Mandriles:\n40 x 2 mm – radio de curvado 100 mm", FORTY),
    ("Servono mandrini per tubo del 40 spessore 2, raggio 100", FORTY),
]
NOT_ASKED_FOR: list[tuple[str, Wanted]] = [
    (f"{ask} {told}", FORTY)
    for ask, sentences in {
        "Wir brauchen einen Dorn für 40x2, R 100.": (
            "Den Dorn für 54 x 1,5 haben wir bei einem anderen Lieferanten bestellt.",
            "Der Dorn für 54x2 vom letzten Jahr läuft übrigens super.",
            "Das 26,9er brauchen wir nicht mehr.",
            "Unsere Biegemaschine nimmt max. 60 x 3 mm.",
        ),
        "Nous avons besoin d'un mandrin pour 40x2, R 100.": (
            "Le mandrin pour 54 x 1,5 a été commandé chez un autre fournisseur.",
            "Le mandrin 54x2 de l'an dernier marche très bien.",
            "Le 26,9 on n'en a plus besoin.",
            "Pour le tube 18 x 1 on a déjà ce qu'il faut.",
            "Notre cintreuse accepte max 60 x 3 mm.",
        ),
        "Necesitamos un mandril para 40x2, R 100.": (
            "El mandril de 54 x 1,5 lo hemos pedido a otro proveedor.",
            "El mandril de 54x2 del año pasado va muy bien.",
            "El de 26,9 ya no lo necesitamos.",
            "Nuestra curvadora admite máx. 60 x 3 mm.",
        ),
        "Ci serve un mandrino per 40x2, R 100.": (
            "Il mandrino da 54 x 1,5 l'abbiamo ordinato da un altro fornitore.",
            "Il mandrino 54x2 dell'anno scorso va benissimo.",
            "Quello da 26,9 non serve più.",
            "Abbiamo gia un mandrino per 30x2.",
        ),
        "Wij hebben een doorn nodig voor 40x2, R 100.": (
            "De doorn voor 54 x 1,5 hebben we bij een andere leverancier besteld.",
            "De doorn 54x2 van vorig jaar loopt prima.",
            "Die van 26,9 hebben we niet meer nodig.",
        ),
    }.items()
    for told in sentences
]
OF_ANOTHER_SENTENCE: list[tuple[str, Wanted]] = [
    ("Mandrino per tubo 40 x 2 con raggio 100.\nI tratti dritti sono 150 e 300 mm.", FORTY),
    ("Mandril para tubo 40 x 2, radio 100. Los tramos rectos son de 150 y 300 mm.", FORTY),
    ("Mandrin pour tube 40 x 2 rayon 100. Les parties droites font 150 et 300 mm.", FORTY),
    (
        "Un mandril. Diámetro 40. El espesor es 2. Curvamos con radio 100. Nuestra curvadora admite máx. 60 x 3 mm.",
        FORTY,
    ),
    (
        "Per il tubo 18 x 1 abbiamo già il mandrino.\n\nRichiesta mandrini:\n1. Ø 40 x 2 mm, R = 100 mm\n2. Ø 16 x 1 mm, R = 40 mm",
        (*FORTY, ("16", "1", "40")),
    ),
    ("Zoek doorn voor buis Ø 40 x 2, buigstraal 100. De mal en de geleider hebben we al.", FORTY),
    ("zwei dorne, rohr 40 x 2, r=100.\n\nhrb 5412 | ust-id de 812 345 678", FORTY),
]


@pytest.mark.parametrize(
    ("text", "wanted"),
    [
        *WALL_BY_ITS_WORD,
        *IN_SENTENCES,
        *OF_THE_NEXT_TUBE,
        *OWNED_ON_THE_NEXT_LINE,
        *CREASES,
        *SEVERAL_ASKED,
        *LABELLED,
        *NOT_ASKED_FOR,
        *OF_ANOTHER_SENTENCE,
    ],
)
def test_read_as_meant(text: str, wanted: Wanted) -> None:
    sizes = read_text(text)
    read = [(size.od_mm, size.wall_mm, size.clr_mm) for size in sizes]
    assert read == [tuple(Decimal(length) for length in one) for one in wanted]
    assert not any(size.doubts for size in sizes)


@pytest.mark.parametrize(
    "owned",
    [
        "Für 18 x 1 haben wir schon Dorne.",
        "Per il tubo 18 x 1 abbiamo già il mandrino.",
        "Para el tubo 18 x 1 ya tenemos mandril.",
    ],
)
def test_a_size_that_is_there_counts_no_mandrels(owned: str) -> None:
    (size,) = read_text(f"1 mandrel for tubo 16 spessore 1, raggio 40. {owned}")
    assert (size.od_mm, size.wall_mm) == (Decimal(16), Decimal(1))
    assert size.quantity in (None, 1)


@pytest.mark.parametrize(
    "told",
    [
        "Letztes Jahr haben wir bei Ihnen einen Dorn für 26,9 x 2,3 gekauft.",
        "Vorig jaar hebben we bij u een doorn voor 26,9 x 2,3 gekocht.",
        "L'anno scorso vi abbiamo comprato un mandrino da 26,9 x 2,3.",
    ],
)
def test_a_size_bought_before_is_never_sure(told: str) -> None:
    sizes = read_text(f"Mandrels please:\nØ 40 x 2, R 100\nØ 50 x 2, R 150\n{told}")
    assert [size.od_mm for size in sizes][:2] == [Decimal(40), Decimal(50)]
    assert all(size.doubt_on("od") for size in sizes[2:])


@pytest.mark.parametrize(
    ("said", "material"),
    [
        ("C'est de l'acier S235.", "carbon_steel"),
        ("Il tubo è dell'alluminio 6060.", "aluminium"),
        ("material s235jr", "carbon_steel"),
        ("matière p235tr1", "carbon_steel"),
        ("werkstoff e235+n", "carbon_steel"),
        ("R 110, Kupfer", "copper"),
    ],
)
def test_materials_behind_an_article_and_in_small_letters(said: str, material: str) -> None:
    (size,) = read_text(f"Mandrin pour tube 40x2, rayon 110. {said}")
    assert size.material is not None
    assert size.material.value == material
    assert size.grade != "110"


def test_an_od_and_its_wall_are_no_day() -> None:
    text = "Wir benötigen Dorne für Rohr 25/2 mit Radius 75 und für Rohr 16/1 mit Radius 32."
    message, own = whole(text)
    sizes = read(own, message.model_copy(update={"sent_on": date(2026, 10, 12)})).requests
    assert [size.needed_by for size in sizes] == [None, None]


def test_a_verb_with_its_pronoun_asks_for_one() -> None:
    (size,) = read_text("Potete quotarci un mandrino per tubo 40x2, raggio 100?")
    assert size.quantity == 1
