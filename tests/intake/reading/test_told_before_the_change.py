"""What was bent until now goes whole, with its radius, where another size has come in its place.

Each language tells of 38 x 2 on R 76 and asks for 42.4 x 2 on R 85.
"""

from __future__ import annotations

from itertools import product

import pytest

from .support import Size, doubted, inch, mm, read_text, written_down

OLD, NEW = ("38", "2", "76"), ("42.4", "2", "85")
FORMS = ("{} x {}, R {}", "{} x {} (R {})", "{}x{} R{}")
WORDS = [  # how the size is told, and how the other is asked for
    ("Until now it was {A}.", "Now it is {B}. Please quote one mandrel."),
    ("It used to be {A}.", "The new one is {B}, please quote a mandrel."),
    ("Up to now we had {A}.", "Now we need a mandrel for {B}."),
    ("The old tube was {A}.", "It is now {B}, and we need a mandrel for that."),
    ("Wir hatten bisher {A}.", "Der Kunde hat uns nun {B} vorgegeben und wartet auf den Dorn."),
    ("Ursprünglich war es {A}.", "Nun wird es {B}, dafür brauchen wir einen Dorn."),
    ("Bislang war das Rohr {A}.", "Jetzt brauchen wir einen Dorn für {B}."),
    ("Jusqu'à présent c'était {A}.", "C'est désormais {B}, il nous faut un mandrin pour cela."),
    ("À l'origine c'était {A}.", "Maintenant c'est {B}. Merci de chiffrer un mandrin."),
    ("Hasta ahora teníamos {A}.", "El nuevo es {B}, presupuesto de un mandril por favor."),
    ("El tubo anterior era {A}.", "Ahora necesitamos un mandril para {B}."),
    ("Finora avevamo {A}.", "Ora è {B}, ci serve un mandrino per questo."),
    ("In origine era {A}.", "Adesso è {B}. Vorrei un'offerta per un mandrino."),
    ("Tot nu toe hadden we {A}.", "De nieuwe is {B}, graag een doorn aanbieden."),
    ("Oorspronkelijk was het {A}.", "Nu hebben we een doorn nodig voor {B}."),
]
INSTEAD = [
    "Please quote one mandrel for 42.4 x 2, R 85 instead of 38 x 2, R 76.",
    "Not 38 x 2, R 76, but 42.4 x 2, R 85 please. One mandrel.",
    "Statt 38 x 2, R 76 brauchen wir nun einen Dorn für 42,4 x 2, R 85.",
    "Anstelle von 38 x 2, R 76 brauchen wir einen Dorn für 42,4 x 2, R 85.",
    "Au lieu de 38 x 2, R 76 il nous faut maintenant un mandrin pour 42,4 x 2, R 85.",
    "En vez de 38 x 2, R 76 necesitamos ahora un mandril para 42,4 x 2, R 85.",
    "En lugar de 38 x 2, R 76 necesitamos un mandril para 42,4 x 2, R 85.",
    "Invece di 38 x 2, R 76 ora ci serve un mandrino per 42,4 x 2, R 85.",
    "In plaats van 38 x 2, R 76 hebben we nu een doorn nodig voor 42,4 x 2, R 85.",
]


@pytest.mark.parametrize(("words", "form"), list(product(WORDS, FORMS)))
def test_only_what_it_has_become_is_asked_for(words: tuple[str, str], form: str) -> None:
    told, asked = words
    text = f"{told} {asked}".format(A=form.format(*OLD), B=form.format(*NEW))
    _is_one(text, mm(*NEW))


@pytest.mark.parametrize("text", INSTEAD)
def test_what_it_comes_instead_of_goes_with_its_radius(text: str) -> None:
    _is_one(text, mm(*NEW))


def test_a_wall_behind_a_comma_goes_with_its_tube() -> None:
    asked = "a mandrel for 1.5 OD, .120 wall, 4.5 CLR instead of 1.75 OD, .095 wall, 6 CLR"
    _is_one(f"We need {asked}.", inch("1.5", "0.120", "4.5"))


def test_the_radius_of_a_denied_tube_stays_where_the_other_has_none() -> None:
    _is_one(
        "1.5 x .095, not 1.5 x .065, on a 4.5 CLR. One mandrel please.",
        inch("1.5", "0.095", "4.5"),
    )


@pytest.mark.parametrize(
    "text",
    [
        "So far we had 38 x 2, R 76 only. Now also 42.4 x 2, R 85. Please quote both.",
        "Previously we bent 38 x 2, R 76, now we also bend 42.4 x 2, R 85. Two mandrels please.",
        "Prima avevamo 38 x 2, R 76 senza anima e si schiaccia. Ora anche 42,4 x 2, R 85. "
        "Due mandrini.",
        "Avant c'était 38 x 2, R 76. Il nous faut aussi 42,4 x 2, R 85.",
        "Zuvor war es 38 x 2, R 76. Jetzt kommt auch 42,4 x 2, R 85. Bitte Dorne anbieten.",
    ],
)
def test_what_stays_beside_the_new_size_is_not_left_out(text: str) -> None:
    requests = read_text(text)
    assert len(requests) == 2, f"{text!r} was read as\n{written_down(requests)}"


def _is_one(text: str, size: Size) -> None:
    requests = read_text(text)
    shown = f"{text!r} was read as\n{written_down(requests)}"
    assert len(requests) == 1, shown
    assert size.describes(requests[0]), shown
    assert not doubted(requests[0]) & {"od", "wall", "clr"}, shown
