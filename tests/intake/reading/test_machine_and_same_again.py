"""What the bender can do is asked for by nobody; 'the same in 2 inch' is a size of its own."""

from __future__ import annotations

import pytest

from .test_put_right_since import _is, _sizes


@pytest.mark.parametrize(
    ("asked", "told"),
    [
        ("Please quote one mandrel for 38 x 1.5, 76 mm CLR.", "Machine limit 76 mm x 4 mm."),
        ("Bitte einen Dorn für Rohr 38 x 1,5, R 76 Mitte.", "Maschinenkapazität 60 x 3 mm."),
        ("Bitte einen Dorn für Rohr 38 x 1,5, R 76 Mitte.", "Kapazität der Maschine: 60 x 3 mm."),
        ("Un mandrin pour tube 38 x 1,5, rayon 76 à l'axe.", "Capacité machine : 60 x 3 mm."),
        ("Un mandril para tubo 38 x 1,5, radio 76 al eje.", "Capacidad de la máquina: 60 x 3 mm."),
        ("Un mandrino per tubo 38 x 1,5, raggio 76 in asse.", "Capacità macchina: 60 x 3 mm."),
        ("Een doorn voor buis 38 x 1,5, straal 76 hart.", "Machinecapaciteit 60 x 3 mm."),
    ],
)
@pytest.mark.parametrize("first", [True, False])
def test_what_the_machine_can_do_is_no_size(asked: str, told: str, first: bool) -> None:
    (size,) = _sizes(f"{told} {asked}" if first else f"{asked} {told}")
    assert _is(size, 38, 1.5, 76)


@pytest.mark.parametrize(
    ("words", "sure"),
    [
        ("A mandrel for 42.4 x 2 mm, 100 CLR, and the same again in 48.3 mm.", True),
        ("One mandrel for 42.4 x 2 mm, 100 CLR and one the same in 48.3 mm.", True),
        ("Dorne für Rohr 42,4 x 2 mm, Radius 100 Mitte und das gleiche in 48,3 mm.", True),
        ("Un mandrin pour tube 42,4 x 2 mm, rayon 100 à l'axe et le même en 48,3.", False),
        ("Un mandril para tubo 42,4 x 2 mm, radio 100 al eje y lo mismo en 48,3 mm.", False),
        ("Un mandrino per tubo 42,4 x 2 mm, raggio 100 in asse e lo stesso per 48,3 mm.", False),
    ],
)
def test_the_same_in_another_od_is_a_size_of_its_own(words: str, sure: bool) -> None:
    first, second = _sizes(words)
    assert (float(first.od_mm or 0), first.wall_mm, first.clr_mm) == (42.4, 2, 100)
    assert (float(second.od_mm or 0), second.wall_mm, second.clr_mm) == (48.3, 2, 100)
    assert sure is not bool(first.doubts or second.doubts)


@pytest.mark.parametrize(
    "words", ["the same in 304", "the same in 2 weeks again", "the same for 2 machines"]
)
def test_the_same_in_something_else_is_none(words: str) -> None:
    assert len(_sizes(f"One mandrel for 42.4 x 2 mm, 100 CLR, and {words}.")) == 1
