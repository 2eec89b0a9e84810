"""Chat pasted into a mail: what the shop said in it is not asked for, whatever the form."""

from __future__ import annotations

from itertools import product

import pytest

from .test_put_right_since import _is, _sizes

FORMS = [
    "[{time}] {who}: {words}",
    "{who}: {words}",
    "{who} ({time}): {words}",
    "{who} [{time}]: {words}",
    "{time} - {who}: {words}",
    "{who}, {time}: {words}",
    "**{who}:** {words}",
    "[26/10/2026, {time}] {who}: {words}",
    "{who} {time}\n{words}\n",
    "{who}: {words} [{time}]",
]
SPEAKERS = [
    ("Me", "Agent"),
    ("You", "Support"),
    ("Customer", "You"),
    ("Visitor", "Kim (sales)"),
    ("Pat", "Kim"),
]
IN_ENGLISH = (
    "hi, I need a mandrel for 1-3/4 OD tube",
    "Hi, how can I help? We have 1.5 x .083 and 1-5/8 x .120 in stock.",
    ".095 wall",
    "ok. our usual is 4 CLR, what radius do you bend on?",
    "5.25 CLR, just one mandrel please",
    "You'll have a quote today. The 2-3/8 x .154 mandrel is on sale.",
)


def _chat(form: str, who: tuple[str, str], said: tuple[str, ...]) -> str:
    lines = [
        form.format(time=f"10:{number:02}", who=who[number % 2], words=words)
        for number, words in enumerate(said)
    ]
    return "Here is our chat, please quote.\n\n" + "\n".join(lines) + "\n"


@pytest.mark.parametrize(("form", "who"), list(product(FORMS, SPEAKERS)))
def test_the_shops_own_lines_are_not_asked_for(form: str, who: tuple[str, str]) -> None:
    (size,) = _sizes(_chat(form, who, IN_ENGLISH))
    assert _is(size, 44.45, 2.413, 133.35)
    assert (size.quantity, size.doubts) == (1, ())


@pytest.mark.parametrize(
    ("who", "said"),
    [
        (
            ("Kunde", "Berater"),
            (
                "Hallo, ich brauche einen Dorn für Rohr 42,4 mm außen",
                "Wir haben 40 x 2 auf Lager, passt das?",
                "Wandstärke 2 mm",
                "Welcher Radius? Standard wäre R 120.",
                "Radius 100 mm Mitte",
                "Danke. Den Dorn 60,3 x 2 könnten wir mitliefern.",
            ),
        ),
        (
            ("Moi", "Conseiller"),
            (
                "Bonjour, il me faut un mandrin pour tube 42,4 mm extérieur",
                "Nous avons du 40 x 2 en stock, cela convient ?",
                "épaisseur 2 mm",
                "Quel rayon ? Nous avons du 120 en standard.",
                "rayon 100 mm à l'axe",
                "Nous pourrions ajouter le mandrin 60,3 x 2.",
            ),
        ),
        (
            ("Cliente", "Ventas"),
            (
                "Hola, necesito un mandril para tubo de 42,4 mm de exterior",
                "Tenemos 40 x 2 en stock, ¿le sirve?",
                "espesor 2 mm",
                "¿Qué radio? El estándar es 120.",
                "radio 100 mm al eje",
                "También tenemos el mandril 60,3 x 2.",
            ),
        ),
        (
            ("Io", "Assistenza"),
            (
                "Buongiorno, mi serve un mandrino per tubo 42,4 mm esterno",
                "Abbiamo 40 x 2 a magazzino, va bene?",
                "spessore 2 mm",
                "Che raggio? Il nostro standard è 120.",
                "raggio 100 mm in asse",
                "Abbiamo anche il mandrino 60,3 x 2.",
            ),
        ),
        (
            ("Klant", "Medewerker"),
            (
                "Hallo, ik heb een doorn nodig voor buis 42,4 mm buitendiameter",
                "We hebben 40 x 2 op voorraad, past dat?",
                "wanddikte 2 mm",
                "Welke straal? Standaard is 120.",
                "straal 100 mm hart",
                "De doorn 60,3 x 2 hebben we ook.",
            ),
        ),
    ],
)
def test_in_other_languages_too(who: tuple[str, str], said: tuple[str, ...]) -> None:
    (size,) = _sizes(_chat("[{time}] {who}: {words}", who, said))
    assert _is(size, 42.4, 2, 100)
    assert not size.doubts


def test_bare_answers_are_what_the_shop_asked_for() -> None:
    (size,) = _sizes(
        "Me: one mandrel please\nAgent: OD?\nMe: 1.75\nAgent: Wall?\nMe: .095\n"
        "Agent: CLR? We usually do 5.25.\nMe: 6\n"
    )
    assert _is(size, 44.45, 2.413, 152.4)


@pytest.mark.parametrize("yes", ["yes, that one please", "yep", "the second one"])
def test_what_the_shop_offered_is_never_sure(yes: str) -> None:
    (size,) = _sizes(
        "Me: I need a mandrel for our 1.5 tube, radius 4.5 to centre\n"
        f"Agent: We stock 1.5 x .065 and 1.5 x .120.\nMe: {yes}\n"
    )
    assert size.wall_mm is None or size.doubt_on("wall") is not None


def test_what_two_customers_say_to_each_other_stays_theirs() -> None:
    (size,) = _sizes(
        "From our group, one mandrel please:\nMe: whats the hoop again\nLee: 44.5 x 2.5\n"
        "Me: formers?\nLee: radius 133 to centre\n"
    )
    assert _is(size, 44.5, 2.5, 133)


def test_forms_are_no_chat() -> None:
    one = "Customer: Acme\nSales: Kim\nOD: 1.5\nWall: .095\nCLR: 4.5\n"
    two = "Customer: Acme\nSales: Kim\nOD: 1.75\nWall: .120\nCLR: 6\n"
    first, second = _sizes(f"Mandrels please:\n\n{one}\n{two}")
    assert _is(first, 38.1, 2.413, 114.3)
    assert _is(second, 44.45, 3.048, 152.4)
