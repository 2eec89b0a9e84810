"""Dies marked with tube and radius, quotations, mail stops, kin in a story, what should have been."""

# ruff: noqa: E501 - a row of a table stands on one line: the words, then their meaning

from __future__ import annotations

import pytest

from .support import Size, inch, mm, read_text, row, written_down

_85 = mm("42.4", "2", "85")
_TUBE = "Need a mandrel for 1.5 x .065 304 on 4.5 CLR.\n\nJ. Smith\n"
_READ = inch("1.5", "0.065", "4.5")

ONE = [
    row("marked-with-a-dash", 'One die is marked "1 3/4 - 5 1/4 R", so I\'d like a mandrel to go with it. I will be using DOM, .120 wall.', inch("1.75", "0.120", "5.25")),
    row("stamped-with-a-dash", "The die is stamped 1.50 - 4.50 R. Need a mandrel for it, .065 wall 304.", inch("1.5", "0.065", "4.5")),
    row("auf-der-form-steht", 'Auf der Biegeform steht "42,4 - R 85". Brauche einen Dorn dazu, Wand 2 mm, Edelstahl.', _85),
    row("marquee", 'La matrice est marquée "42,4 - R 85". Il me faut un mandrin, épaisseur 2 mm, inox.', _85),
    row("grabado", 'La matriz lleva grabado "42,4 - R 85". Necesito un mandril, pared 2 mm, inox.', _85),
    row("scritto", 'Sulla matrice c\'è scritto "42,4 - R 85". Mi serve un\'anima, spessore 2 mm, inox.', _85),
    row("op-de-mal-staat", 'Op de mal staat "42,4 - R 85". Ik heb een doorn nodig, wand 2 mm, rvs.', _85),
    row("in-aisi", "tubo Ø 35 x 1,5 in AISI\n304, raggio medio 52,5 mm. Una anima.", mm("35", "1.5", "52.5")),
    row("mail-stop", _TUBE + "Dept 4410 / MS 2-083", _READ),
    row("mail-stop-in-full", _TUBE + "Mail Stop 1-065", _READ),
    row("building", _TUBE + "Bldg 2-049, Rm 3", _READ),
    row("dock", "Need a mandrel for 1.5 x .065 304 on 4.5 CLR. Deliver to Dock 2-083.", _READ),
    row("mild-steel", "Mandrel for MS 2-083 tube, 4 CLR.", inch("2", "0.083", "4")),
    row("uncle-in-a-story", "I make gates. Been making them since I was sixteen with my uncle Dan, God rest him. The tube is 33.7 x 3.2 black steel, 130 CLR. One mandrel.", mm("33.7", "3.2", "130")),
    row("inherited", "I inherited my dad's bender and its dies. Tube is 1.75 x .120 DOM on 5.25 CLR, one mandrel.", inch("1.75", "0.120", "5.25")),
    row("should-have-been", "Re my mail of today: the OD should have been 1-3/8, not 1-1/4. Rest as sent.", inch("1.375")),
    row("should-of-been", "the OD should of been 1-3/8 not 1-1/4. rest as sent.", inch("1.375")),
    row("haette-sein-sollen", "Der Durchmesser hätte 42,4 sein sollen, nicht 42. Rest wie gesendet.", mm("42.4")),
    row("aurait-du", "Le diamètre aurait dû être 42,4 et non 42. Le reste est bon.", mm("42.4")),
    row("deberia-haber-sido", "El diámetro debería haber sido 42,4 y no 42. El resto igual.", mm("42.4")),
    row("avrebbe-dovuto", "Il diametro avrebbe dovuto essere 42,4 e non 42. Il resto va bene.", mm("42.4")),
]  # fmt: skip


@pytest.mark.parametrize(("text", "size"), ONE)
def test_one_size_and_no_doubt_but_its_own(text: str, size: Size) -> None:
    requests = read_text(text)
    assert len(requests) == 1, written_down(requests)
    assert size.describes(requests[0]), written_down(requests)


def test_what_a_brother_has_is_doubted_still() -> None:
    requests = read_text(
        "My brother already has that covered. 1.5 x .065 304, 4.5 CLR and 2 x .065, 6 CLR."
    )
    assert all(request.doubts for request in requests)
