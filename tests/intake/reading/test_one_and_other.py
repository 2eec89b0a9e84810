"""Two mandrels told as 'the one' and 'the other', and lists of positions with a count each: all of
them are asked for. The sentences are made up; no published source.
"""

from __future__ import annotations

import pytest

from .support import read_text


@pytest.mark.parametrize(
    "text",
    [
        "Two mandrels for 38 x 1.5. One has to run on a 76 mm CLR die. The other one runs on a "
        "57 mm CLR die. We tried one tool for both and it was no good.",
        "Zwei Dorne für 38 x 1,5. Ein Dorn soll auf Radius 76 laufen. Der andere läuft auf "
        "Radius 57.",
        "Deux mandrins pour 38 x 1,5. L'un doit aller sur rayon 76. L'autre va sur rayon 57.",
    ],
)
def test_the_other_is_wanted_as_the_one(text: str) -> None:
    sizes = read_text(text)
    assert [size.clr_mm for size in sizes] == [76, 57]
    assert all(not size.doubts for size in sizes)


def test_the_other_that_was_is_not_sure() -> None:
    _, other = read_text(
        "Two mandrels for 38 x 1.5. One has to run on a 76 mm CLR die. The other was on a 57 mm "
        "CLR die."
    )
    assert other.doubt_on("clr")


@pytest.mark.parametrize(
    ("tool", "first", "second"),
    [
        ("Mandril de bolas, tubo", "2 uds.", "1 ud."),
        ("Mandrin à billes, tube", "2 pces", "1 pce"),
        ("Anima a sfere, tubo", "2 pezzi", "1 pz"),
        ("Kogeldoorn, buis", "2 stuks", "1 stuk"),
        ("Kugeldorn, Rohr", "2 Stk.", "1 Stk."),
    ],
)
def test_every_position_with_its_count_is_asked_for(tool: str, first: str, second: str) -> None:
    sizes = read_text(
        f"Pos. 10 - {tool} 76,1 x 2,0 mm, R 114 mm - {first}\n"
        f"Pos. 20 - {tool} 88,9 x 2,0 mm, R 133 mm - {second}\n"
    )
    assert [size.quantity for size in sizes] == [2, 1]
    assert all(not size.doubts for size in sizes)


@pytest.mark.parametrize(
    "words",
    [
        "need 1 maybe 2.",
        "Need one, possibly two",
        "qty 1 (maybe 2)",
        "Brauche 1, vielleicht 2.",
        "Einen, eventuell zwei.",
        "Il m'en faut 1, peut-être 2.",
        "Necesito 1, quizás 2.",
        "Me ne serve 1, forse 2.",
        "Ik heb er 1 nodig, misschien 2.",
    ],
)
def test_one_or_perhaps_two_is_one_in_doubt(words: str) -> None:
    (size,) = read_text(f"Mandrel for 38 x 1.5 mm, CLR 76 mm. {words}")
    assert size.quantity == 1
    assert size.doubt_on("quantity")
    assert not size.doubt_on("od")
