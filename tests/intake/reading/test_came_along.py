"""Mandrels that came with the machine are there, and not asked for; and near misses, in which what
came along was a die, or is wanted anew."""

# ruff: noqa: E501 - a row of a table stands on one line: the words, then their meaning
from __future__ import annotations

import pytest

from bendreply.intake.reading import read

from .support import Size, inch, mm, read_text, row, whole, written_down

_28 = mm("28", "1.5", "84")

ONE_ASKED = [
    row("bought-used", "We bought a used bender. Came with tooling: a mandrel for 76.1 x 2.6, one for 63.5 x 3.2 (bit worn but usable), a pressure die. No good to us because all our bars are 60.3. So:\n\n60.3 x 3.2 mild steel, former is 150 CLR. One mandrel to start with.", mm("60.3", "3.2", "150")),
    row("second-hand", "We picked up a second hand machine. It came with a mandrel for 76.1 x 2.6 and one for 63.5 x 3.2. Our tube is 60.3 x 3.2 mild steel, former is 150 CLR. One mandrel please.", mm("60.3", "3.2", "150")),
    row("neither-fits", "The bender came with mandrels for 1.5 x .065 and 2 x .083 but neither fits our tube. Please quote one mandrel for 1.75 x .095 DOM on 5.25 CLR.", inch("1.75", "0.095", "5.25")),
    row("wrong-size", "The machine came with a 38 x 1.5 mandrel which is the wrong size. I need one for 42.4 x 2 stainless, 85 CLR.", mm("42.4", "2", "85")),
    row("threw-in", "The fellow who sold it threw in a mandrel that says 1\" x .083, and I don't want to use it for this because my tube is 1-1/8 by .058, 5052. Radius on the die is 4.5. I want one, maybe another next year.", inch("1.125", "0.058", "4.5")),
    row("included", "Included with the machine were mandrels for 32 x 1.5 and 40 x 2. What we bend is 35 x 1.5 304 on a 70 CLR. Price for one mandrel?", mm("35", "1.5", "70")),
    row("both-kids", "I have both kids in the shop and pay the older one 15 dollars apiece. The lot came with a mandrel for 1.5 x .065. Ours is 1.75 x .065 304 on a 5.25 CLR. One mandrel please.", inch("1.75", "0.065", "5.25")),
    row("next-year", "For the current contract we need 2 mandrels for 1.625 OD x .065 wall 439 stainless, 2.4375 CLR. Next year there will be a 2.125 x .065 version on 3.1875. Please do not quote that yet.", inch("1.625", "0.065", "2.4375")),
    row("noch-nicht-anbieten", "Wir brauchen 2 Dorne für 28 x 1,5 Edelstahl, R 84. Nächstes Jahr kommt eine Variante in 42 x 1,5 mit R 126. Bitte noch nicht anbieten.", _28),
    row("l-an-prochain", "Il nous faut 2 mandrins pour 28 x 1,5 inox, rayon 84. L'an prochain il y aura une version en 42 x 1,5 rayon 126. Ne la chiffrez pas.", _28),
    row("quoted", "Thanks for quote 2274 (the 48.3 x 2). Happy with that, PO to follow.\n\nCould you also add a mandrel for 28 x 1.5, 316L, on an 84 radius? Just one.", _28),
    row("dabei-lagen", "Wir haben jetzt eine gebrauchte Biegemaschine, dabei lagen Dorne für 32 x 1,5 und 25 x 2, die passen aber nicht zu unserem Rohr. Wir brauchen einen Dorn für 28 x 1,5, Edelstahl, Biegeradius 84 mm.", _28),
    row("war-dabei", "Bei der Maschine war ein Dorn für 32 x 1,5 dabei. Wir brauchen einen Dorn für 28 x 1,5, Edelstahl, Biegeradius 84.", _28),
    row("avec-des-mandrins", "La machine est arrivée avec des mandrins pour 32 x 1,5 et 25 x 2, qui ne vont pas pour notre tube. Il nous faut un mandrin pour 28 x 1,5 inox, rayon 84 mm.", _28),
    row("venia-con", "La máquina venía con mandriles para 32 x 1,5 y 25 x 2, que no sirven para nuestro tubo. Necesitamos un mandril para 28 x 1,5 inox, radio 84 mm.", _28),
    row("in-dotazione", "Nella dotazione c'era un mandrino per 32 x 1,5 ma non va bene. Ci serve un mandrino per 28 x 1,5 inox, raggio medio 84 mm.", _28),
    row("zaten-bij", "Bij de machine zaten doorns voor 32 x 1,5 en 25 x 2. Wij hebben een doorn nodig voor 28 x 1,5 rvs, radius 84 mm.", _28),
]  # fmt: skip

BOTH_STAY = [
    row("die-and-no-mandrel", "The bender came with a die for 1.5 x .065, 4.5 CLR but no mandrel. Please quote one for it, and one for 2 x .083 on 6 CLR.", "38.1"),
    row("cracked", "The bender came with a mandrel for 1.5 x .065, 4.5 CLR but it's cracked. Please quote a new one, and one for 2 x .083, 6 CLR.", "38.1"),
    row("another-of-those", "The machine came with a mandrel for 38 x 1.5, R57, we'd like another of those, and one for 42.4 x 2, R85.", "38"),
    row("keine-dorne", "Bei der Maschine waren Biegeformen für 38 x 1,5 R 57 und 42,4 x 2 R 85, aber keine Dorne. Bitte je einen Dorn anbieten.", "38"),
]  # fmt: skip


@pytest.mark.parametrize(("text", "size"), ONE_ASKED)
def test_what_came_with_the_machine_is_left_out_and_told(text: str, size: Size) -> None:
    message, own = whole(text)
    reading = read(own, message)
    assert len(reading.requests) == 1, written_down(reading.requests)
    assert size.describes(reading.requests[0]), written_down(reading.requests)
    assert any("not asked for" in note for note in reading.notes)


@pytest.mark.parametrize(("text", "od"), BOTH_STAY)
def test_what_may_be_wanted_of_it_stays(text: str, od: str) -> None:
    requests = read_text(text)
    assert len(requests) == 2, written_down(requests)
    assert float(od) == float(requests[0].od_mm or 0)
