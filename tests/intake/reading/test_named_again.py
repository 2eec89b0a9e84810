"""What is said twice, put right from elsewhere, or picked by its place; arithmetic as written."""

# ruff: noqa: E501 - a row of a table stands on one line: the words, then their meaning

from __future__ import annotations

import pytest

from .support import Size, case, inch, mm, read_text, written_down

_R76 = mm("38", "1.5", "76")
_U = mm("12.7", "0.7", "22.25")
_LIST = "25.4 x 1.6 R 76\n38.1 x 1.6 R 114\n50.8 x 1.6 R 152\n\n"

CASES = [
    case("phone-en", "12.7 OD brass, wall 0.9. I said 40 radius on the phone to your colleague - wrong, 38.1. One mandrel.", mm("12.7", "0.9", "38.1")),
    case("phone-de", "1 Dorn 38 x 1,5, 1.4301. Am Telefon habe ich 80 Radius gesagt - falsch, 76.", _R76),
    case("phone-fr", "1 mandrin 38 x 1,5, 304. Au téléphone j'ai dit rayon 80 - faux, 76.", _R76),
    case("phone-it", "1 mandrino 38 x 1,5, 304. Al telefono ho detto raggio 80 - sbagliato, 76.", _R76),
    case("phone-nl", "1 doorn 38 x 1,5, 304. Aan de telefoon zei ik straal 80 - fout, 76.", _R76),
    case("phone-right", "1 mandrel 38 x 1.5 304, I said R 76 on the phone - that's right, and the 1.5 wall too.", _R76),
    case("again-list", "Item 2 should read 1.375 OD, not 1.250. Pasting it again with the fix:\nItem 1   1.000 OD x .065   CLR 3.00   qty 1\nItem 2   1.375 OD x .065   CLR 4.00   qty 1", inch("1", "0.065", "3"), inch("1.375", "0.065", "4")),
    case("again-also", "One mandrel 1.5 x .065, CLR 4.5. Also one for 1.5 OD, wall not known yet.", inch("1.5", "0.065", "4.5", "od")),
    case("inch-and-two", "One inch and 3/4 tube, .065 wall, 304. The one inch on 4\" CLR, the 3/4 on 3\" CLR. One mandrel each.", inch("1", "0.065", "4"), inch("0.75", "0.065", "3")),
    case("inch-and-one", "One inch and 3/4 tube, .095 wall, 304, 5.25 CLR. One mandrel.", inch("1.75", "0.095", "5.25")),
    case("inch-and-each", "One inch and 7/8 tube, .065 wall both, 4\" CLR. One mandrel of each.", inch("1.875", "0.065", "4", "od")),
    *(
        case(f"middle-{n}", _LIST + words, mm("38.1", "1.6", "114"))
        for n, words in enumerate(("It's the middle one we're after. 1 mandrel.", "I need the one in the middle. 1 mandrel.", "Es geht um den mittleren. 1 Dorn.", "C'est celui du milieu qu'il nous faut. 1 mandrin.", "Es el del medio el que necesitamos. 1 mandril.", "Ci serve quello centrale. 1 mandrino.", "Het gaat om de middelste. 1 doorn."))
    ),
    case("legs-en", "1 mandrel, 12.7 x 0.7 304. Legs 44.5 mm apart centre to centre, so the radius is 22.25 mm.", _U),
    case("legs-fr", "1 mandrin 12,7 x 0,7. Branches à 44,5 mm d'entraxe, donc rayon de 22,25 mm.", _U),
    case("legs-room", "1 mandrel 1.5 x .065 304, 3 CLR.\n\nJoe Smith\nBldg 25, Rm 1.065", inch("1.5", "0.065", "3")),
    case("inside-die-en", "1 mandrel 1.25 x .083. The inside of my die is 3\" and the tube sits in it.", inch("1.25", "0.083", "3.625", "clr")),
    case("inside-die-de", "1 Dorn 38 x 1,5. Die Innenseite meiner Biegeform ist 80 mm.", mm("38", "1.5", "99", "clr")),
]  # fmt: skip


@pytest.mark.parametrize(("text", "sizes"), CASES)
def test_it_is_read_as_meant(text: str, sizes: tuple[Size, ...]) -> None:
    """An inside radius is half the OD less than that to the centre line: 80 + 38 / 2 = 99."""
    read = read_text(text)
    assert len(read) == len(sizes), written_down(read)
    assert all(map(Size.describes, sizes, read)), written_down(read)
