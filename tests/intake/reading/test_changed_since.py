"""'You quoted 1.25 x .049 in April, now the wall is .065': the old figure is out."""

# ruff: noqa: E501 - a row of a table stands on one line

from __future__ import annotations

from decimal import Decimal

import pytest

from .support import read_text

WALLS = [
    (
        "1.651",
        "You gave me a number back in April for 1.25 x .049 in 304. Job came back to life only now it's 316L and they bumped the wall to .065. Same 3.75 CLR. Fresh quote for one mandrel?",
    ),
    (
        "1.651",
        "You quoted 1.25 x .049, 3.75 CLR, 304 back in April. Now the wall is .065. Please requote one mandrel.",
    ),
    (
        "1.651",
        "In April you quoted me 1.25 x .049 in 304 on a 3.75 CLR. They have since gone to .065 wall. Can you requote one mandrel?",
    ),
    (
        "1.651",
        "You priced 1.25 x .049 304 last year, 3.75 CLR. The wall went up to .065. One mandrel.",
    ),
    (
        "1.651",
        "Your quote was for 1.25 x .049 in 304, 3.75 CLR. Customer changed the wall to .065. New price for one mandrel please.",
    ),
    ("2.6", "You quoted us for 42.4 x 2, 1.4301, R 85 centre. Now it is 2.6 wall. One mandrel."),
    (
        "2.6",
        "Ihr habt uns im April 42,4 x 2 in 1.4301 angeboten, R 85 Mitte. Jetzt ist die Wand 2,6. Bitte neues Angebot, ein Dorn.",
    ),
    (
        "2.6",
        "Vous nous aviez chiffré en avril un mandrin 42,4 x 2 inox, rayon 85 à l'axe. L'épaisseur passe à 2,6. Merci de refaire le devis pour un mandrin.",
    ),
    (
        "2.6",
        "En abril nos cotizaron un mandril de 42,4 x 2 inox, radio 85 al eje. Ahora la pared pasa a 2,6. Nueva oferta por un mandril.",
    ),
    (
        "2.6",
        "Ad aprile ci avete quotato un mandrino 42,4 x 2 inox, raggio 85 in asse. Ora lo spessore diventa 2,6. Nuova offerta per un mandrino.",
    ),
    (
        "2.6",
        "In april hebben jullie 42,4 x 2 rvs aangeboden, straal 85 hart. Nu wordt de wand 2,6. Graag nieuwe offerte voor een doorn.",
    ),
    (
        "1.651",
        "You priced 1.25 x .049, 304, last year, 3.75 CLR. The wall went up to .065. One mandrel.",
    ),
    ("1.651", "You priced 1.25 x .049, 304, 3.75 CLR. The wall went up to .065. One mandrel."),
    ("1.651", "You quoted 1.25 x .049, 304, 3.75 CLR. The wall went to .065. One mandrel."),
]


@pytest.mark.parametrize(("wall", "text"), WALLS)
def test_the_wall_is_the_new_one(wall: str, text: str) -> None:
    (size,) = read_text(text)
    assert size.wall_mm == Decimal(wall)
    assert size.quantity == 1


@pytest.mark.parametrize(
    ("od", "clr", "text"),
    [
        (
            31.75,
            114.3,
            "Your April quote was for 1.25 x .049, 304, 3.75 CLR. Same tube but the radius is now 4.5 CLR. One mandrel, please requote.",
        ),
        (
            38,
            76,
            "You quoted me 38 x 1.5, 1.4301, R 57 centre. The radius has since changed to 76. One mandrel, new price please.",
        ),
        (
            42.4,
            57,
            "Back in May you quoted 38 x 1.5, 1.4301, R 57 centre. The OD has now gone up to 42.4. One mandrel, new price please.",
        ),
        (
            38,
            76,
            "Euer Angebot war für 38 x 1,5, 1.4301, R 57 Mitte. Der Radius wird jetzt 76. Ein Dorn, bitte neues Angebot.",
        ),
    ],
)
def test_so_are_od_and_radius(od: float, clr: float, text: str) -> None:
    (size,) = read_text(text)
    assert (float(size.od_mm or 0), float(size.clr_mm or 0)) == (od, clr)


def test_a_further_size_is_no_change() -> None:
    sizes = read_text(
        "You quoted 1.25 x .049, 3.75 CLR, 304 in April. Now we also need 1.5 x .065, 4.5 CLR, 304. One mandrel of each please."
    )
    assert [float(size.od_mm or 0) for size in sizes] == [31.75, 38.1]


@pytest.mark.parametrize(
    "text",
    [
        "You quoted 1.25 x .049, 3.75 CLR, 304 in April, still want that. And one in .065 wall as well.",
        "You quoted 38 x 1.5 and 42.4 x 2, 1.4301, R 85 centre. Now the wall is 2.6. One mandrel each.",
    ],
)
def test_where_it_is_not_clear_what_changed_nothing_is_dropped(text: str) -> None:
    assert len(read_text(text)) == 2


def test_another_tube_of_theirs_changes_nothing_in_silence() -> None:
    (size,) = read_text(
        "Your quote for 38 x 1.5, R 57, 304 was fine. The wall on our old tube was changed to 2 last year. One mandrel."
    )
    assert size.wall_mm == 1.5
