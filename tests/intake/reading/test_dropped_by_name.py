"""A size of a list that another sentence strikes out by its OD is left out; where that is not
plain it is doubted. ODs in mm: 1.66 in is 42.164, 1.90 in is 48.26, 2.375 in is 60.325."""

from __future__ import annotations

import pytest

from .support import read_text

INCH = "One each:\n1.66 x .109, 5 CLR\n1.90 x .120, 6 CLR\n2.375 x .120, 8 CLR\n\n"
GERMAN = "Ich brauche je einen Dorn:\n42,4 x 2, R 85\n48,3 x 2, R 100\n60,3 x 2, R 120\n\n"
FRENCH = "Il me faut un mandrin de chaque :\n42,4 x 2, R 85\n48,3 x 2, R 100\n60,3 x 2, R 120\n\n"
SPANISH = "Necesito un mandril de cada:\n42,4 x 2, R 85\n48,3 x 2, R 100\n60,3 x 2, R 120\n\n"
ITALIAN = "Ci serve un mandrino per ciascuno:\n42,4 x 2, R 85\n48,3 x 2, R 100\n60,3 x 2, R 120\n\n"
DUTCH = "Graag van elk een doorn:\n42,4 x 2, R 85\n48,3 x 2, R 100\n60,3 x 2, R 120\n\n"


def sure(text: str) -> list[str]:
    """The ODs that are stated without a doubt."""
    return [f"{r.od_mm:f}" for r in read_text(text) if not r.doubts]


def doubted(text: str) -> list[str]:
    """Those that are stated with one."""
    return [f"{r.od_mm:f}" for r in read_text(text) if r.doubts]


@pytest.mark.parametrize(
    "text",
    [
        INCH
        + "PS just got off the phone, customer dropped the 2.375, so leave that one off the quote.",
        INCH + "The 2.375 got dropped, leave it off.",
        INCH + "Boss says drop the 2.375.",
        INCH + "PS: Forget about the 2.375, they cancelled it.",
        INCH + "PS the 2.375 is off, don't quote it.",
        INCH + "Please take the 2.375 x .120 off. Thanks",
        INCH + "PS: Customer dropped the 2.375. Leave that one off the quote.",
        INCH + "Update: our customer has dropped the last one so no need to quote that.",
    ],
)
def test_a_size_struck_out_by_its_od_is_left_out(text: str) -> None:
    assert sure(text) == ["42.164", "48.26"]
    assert doubted(text) == []


@pytest.mark.parametrize(
    "text",
    [
        GERMAN + "PS: Die 60,3 ist gerade weggefallen, bitte nicht mit anbieten.",
        GERMAN + "PS: Der Kunde hat das 60,3er gestrichen, das also bitte weglassen.",
        GERMAN + "Die 60,3 brauchen wir doch nicht mehr.",
        GERMAN + "Nachtrag: 60,3er fällt weg.",
        FRENCH + "PS : le client a abandonné le 60,3, ne le chiffrez pas.",
        FRENCH + "PS : supprimez le 60,3 svp.",
        SPANISH + "PD: el cliente ha anulado el de 60,3, así que no lo coticen.",
        SPANISH + "El de 60,3 ya no hace falta.",
        ITALIAN + "PS: il cliente ha tolto il 60,3, quindi lasciatelo fuori dall'offerta.",
        ITALIAN + "Il 60,3 non serve più.",
        DUTCH + "PS: de klant heeft de 60,3 laten vallen, die mag uit de offerte.",
        DUTCH + "De 60,3 vervalt.",
    ],
)
def test_so_it_is_in_other_languages(text: str) -> None:
    assert sure(text) == ["42.4", "48.3"]
    assert doubted(text) == []


def test_what_is_not_plainly_struck_out_stays_with_a_doubt_or_without() -> None:
    again = INCH + "Customer dropped the 2.375 but is thinking of it again, so quote it too."
    assert doubted(again) == ["60.325"]
    assert sure(INCH + "PS the 2.375 is urgent.") == ["42.164", "48.26", "60.325"]
    changed = INCH + "We dropped the 2.375 to .109 wall."
    assert "60.325" in sure(changed) + doubted(changed)
