"""How many mandrels are wanted: not the tubes, the bends, the balls, or what may come later."""

from __future__ import annotations

import pytest

from bendreply.intake.model import Address, Message, OwnText
from bendreply.intake.reading import read

from .reading.support import row


def quantities(text: str) -> list[int | None]:
    message = Message(message_id="q@example.com", sender=Address(name="", address=""), body=text)
    own = OwnText(text=message.text, body_start=message.body_start, subject_counts=True)
    return [request.quantity for request in read(own, message).requests]


_IN = "1.75 x .095 wall, 5.25 clr"
_MM = "38 x 1,5 mm, R 57 mm"

ONE_SIZE = [
    ("a-mandrel", f"I need a mandrel for {_IN}.", 1),
    ("one-mandrel", f"Please quote one mandrel for {_IN}.", 1),
    ("two-mandrels", f"Please quote two mandrels for {_IN}.", 2),
    ("digits", f"We need 3 mandrels for {_IN}.", 3),
    ("qty", f"Mandrel {_IN}\nQty: 2", 2),
    ("quantity", f"Mandrel {_IN}\nQuantity: 4 pcs.", 4),
    ("qty-paren", f"Qty (2) mandrels, {_IN}", 2),
    ("pcs", f"2 pcs mandrel {_IN}", 2),
    ("ea", f"Mandrel {_IN}, 3 ea.", 3),
    ("off", f"2 off mandrels, {_IN}", 2),
    ("no", f"2 no. mandrels, {_IN}", 2),
    ("couple", f"A couple of mandrels for {_IN}, please.", 2),
    ("pair", f"We want a pair of mandrels for {_IN}.", 2),
    ("just-one", f"{_IN}. Just one for now.", 1),
    ("one-please", f"{_IN}.\n\nOne please,\nPat", 1),
    ("times", f"Mandrel {_IN}, x2", 2),
    ("bare-plural", f"Do you make mandrels for {_IN}?", None),
    ("not-said", f"{_IN}, DOM. What would it cost?", None),
    ("tubes-not-mandrels", f"We bend 200 tubes, {_IN}. Price for mandrels?", None),
    ("bends-a-year", f"One mandrel, {_IN}. About 3,500 bends a year.", 1),
    ("balls", f"Need a mandrel with 3 balls for {_IN}.", 1),
    ("two-ball", f"Need a two ball mandrel for {_IN}.", 1),
    ("later", f"1 pcs for test, {_IN}. If good we order 4 pcs more in Q2.", 1),
    ("owned", f"We have two mandrels already, need one more for {_IN}.", 1),
    ("parts", f"Qty 2 mandrels for {_IN}, we run 640 hairpins a month.", 2),
    ("de-stueck", f"Biegedorn für Rohr {_MM}, 2 Stück", 2),
    ("de-menge", f"Biegedorn für Rohr {_MM}\nMenge: 3", 3),
    ("de-einen", f"wir benötigen einen Biegedorn für Rohr {_MM}", 1),
    ("de-zwei", f"bitte zwei Dorne für Rohr {_MM} anbieten", 2),
    ("de-boegen", f"1 Dorn für Rohr {_MM}, ca. 3.500 Bögen pro Jahr", 1),
    ("fr-un", f"nous cherchons un mandrin pour tube {_MM}", 1),
    ("fr-pieces", f"mandrin pour tube {_MM}, 2 pièces", 2),
    ("fr-qte", f"mandrin pour tube {_MM}\nQuantité : 4", 4),
    ("es-un", f"necesitamos un mandril para tubo {_MM}", 1),
    ("es-cantidad", f"mandril para tubo {_MM}\nCantidad: 2", 2),
    ("es-dos", f"necesitamos dos mandriles para tubo {_MM}", 2),
    ("it-un", f"cerchiamo un mandrino per tubo {_MM}", 1),
    ("it-pezzi", f"mandrino per tubo {_MM}, 3 pezzi", 3),
    ("it-quantita", f"mandrino per tubo {_MM}\nQuantità: 2", 2),
    ("nl-stuks", f"doorn voor buis {_MM}, 2 stuks", 2),
    ("nl-een", f"wij zoeken een doorn voor buis {_MM}", 1),
    ("nl-aantal", f"doorn voor buis {_MM}\nAantal: 5", 5),
    ("how-much-for-a", f"{_IN}. how much for a mandrel", 1),
    ("how-much-for-a-for", f"How much is a mandrel for {_IN}?", 1),
    ("how-much-and-wiper", f"{_IN} how much for a mandrel and wiper", 1),
    ("what-s-a-run", f"{_IN}. What's a mandrel run and how soon?", 1),
    ("what-does-it-do", f"We bend {_IN}, price please. What does a mandrel do?", None),
    ("what-is-it-for", f"I want a price, {_IN}. What's a mandrel for?", None),
    ("need-mandrel", f"yo need mandrel {_IN} dom", 1),
    ("need-mandrel-bending", f"Our tubes need mandrel bending, {_IN}. Price?", None),
    ("does-it-need-mandrel", f"Does {_IN} need mandrel support? Price if so.", None),
    ("new-ones", f"Need two new ones, same as before: {_IN}.", 2),
    ("so-one-please", f"They rattle in the new tube, {_IN}. So one, please.", 1),
    ("o-rings", f"One mandrel, {_IN}\no-rings 25 x 2.5 NBR, 50 pcs", 1),
    ("de-kostet", f"Rohr {_MM}. Was kostet ein Dorn?", 1),
    ("de-haette-gerne", f"Rohr {_MM}. Wir hätten gerne 2 Dorne, einer geht bald kaputt.", 2),
    ("de-hatten", f"Rohr {_MM}, Angebot bitte. Wir hatten 2 Dorne, die sind verschlissen.", None),
    ("de-einzelstueck", f"Rohr {_MM}. was kostet sowas als einzelstück??", 1),
    ("de-brauche-dorn", f"brauche Biegedorn für Rohr {_MM}", 1),
    ("nl-kost", f"Wat kost een doorn voor buis {_MM}? En levertijd?", 1),
    ("fr-coute", f"Tube {_MM}. Combien coûte un mandrin ?", 1),
    ("fr-chiffrer", f"Merci de me chiffrer un mandrin à billes pour tube {_MM}", 1),
    ("fr-piece-unique", f"Mandrin pour tube {_MM}, en pièce unique. Prix ?", 1),
    ("es-cuesta", f"Tubo {_MM}. ¿Cuánto cuesta un mandril?", 1),
    ("it-costa", f"Tubo {_MM}. Quanto costa un mandrino?", 1),
    ("it-quale", f"Tubo {_MM}. Serve un'anima o ne basta una sola?", None),
]  # fmt: skip


@pytest.mark.parametrize(("text", "count"), [row(f"qty-{name}", *rest) for name, *rest in ONE_SIZE])
def test_mandrels_wanted_of_one_size(text: str, count: int | None) -> None:
    assert quantities(text) == [count]


_LIST = "1) 1.9 x .145, 7 clr\n2) 2.375 x .154, 9 clr\n\n"
_NAMED = "- main hoop 1.75 x .120, 6 clr\n- braces 1.5 x .095, 4.5 clr\n\n"
TWO_SIZES = [
    ("by-item", f"{_LIST}Two mandrels of item 1, one of each of the others.", [2, 1]),
    ("by-both-items", f"{_LIST}2 mandrels for line 1. 3 mandrels for line 2.", [2, 3]),
    ("by-item-fr", f"{_LIST}1 mandrin pour ligne 1. Deux mandrins pour ligne 2.", [1, 2]),
    ("no-such-item", f"{_LIST}Two mandrels of item 7, please.", [None, None]),
    ("each", "2 each: mandrel 1.5 x .065, 4.5 clr and mandrel 2 x .083, 6 clr", [2, 2]),
    ("one-of-each", "1.5 x .065, 4.5 clr and 2 x .083, 6 clr. One mandrel of each please.", [1, 1]),
    ("own-lines", "1.5 x .065, 4.5 clr - qty 1\n2 x .083, 6 clr - qty 3", [1, 3]),
    ("lines-first", "2 pcs 1.5 x .065 x 4.5 clr\n1 pc 2 x .083 x 6 clr", [2, 1]),
    ("table", "OD\tWall\tCLR\tQty\n1.5\t.065\t4.5\t2\n2\t.083\t6\t5", [2, 5]),
    ("words", "One mandrel for 1.5 x .065, 4.5 clr and two for 2 x .083, 6 clr.", [1, 2]),
    (
        "a-piece",
        "7/8 DOM, .120 and .095 wall, 3 clr. I need mandrels for both, one a piece.",
        [1, 1],
    ),
    ("not-said", "Mandrels for 1.5 x .065, 4.5 clr and 2 x .083, 6 clr?", [None, None]),
    (
        "dash",
        "- Ø 25,4 ép. 1,2 - rayon 50 - 1 mandrin\n- Ø 38 ép. 1,5 - rayon 76 - 2 mandrins",
        [1, 2],
    ),
    (
        "dash-de",
        "- Rohr 25 x 1,5 - Radius 50 - 1 Dorn\n- Rohr 38 x 2 - Radius 76 - 3 Dorne",
        [1, 3],
    ),
    ("by-name", f"{_NAMED}Two mandrels for the hoop, and one for the braces.", [2, 1]),
    (
        "by-name-ahead",
        f"{_NAMED}For the braces I want three mandrels, for the hoop one mandrel.",
        [1, 3],
    ),
    (
        "two-of-his",
        f"{_NAMED}One mandrel for the hoop, and the brace guy wants two of his.",
        [1, 2],
    ),
    ("one-each", f"{_NAMED}One mandrel each. The hoop guy has two dies.", [1, 1]),
]


@pytest.mark.parametrize(
    ("text", "counts"), [row(f"qty-{name}", *rest) for name, *rest in TWO_SIZES]
)
def test_mandrels_wanted_of_two_sizes(text: str, counts: list[int | None]) -> None:
    assert quantities(text) == counts


def test_tooling_that_is_owned_is_not_counted_among_what_is_asked_for() -> None:
    text = 'Got your mandrels for 1" and 1-1/2", both .065. Now I need one for 1-1/4 x .049, 4 clr.'
    assert quantities(text) == [1]


@pytest.mark.parametrize(
    ("text", "count", "sure"),
    [
        row("qty-many-radius", "Rohr 38 x 2. Ein R 100 Werkzeug, brauche einen Dorn.", 1, True),
        row("qty-many-named", f"We need 20 mandrels for {_IN}.", 20, True),
        row("qty-many-label", f"Mandrel {_IN}\nQty: 25", 25, True),
        row("qty-many-pieces", f"Mandrel {_IN}, 15 pcs", 15, True),
        row("qty-many-stueck", "Dorn für Rohr 38 x 2, R 90, 15 Stück bitte.", 15, True),
        row("qty-many-cell", "OD;Wall;CLR;Qty\n1.5;.065;4.5;24", 24, True),
        row("qty-many-bare", f"Mandrel for {_IN}. I'd like 20, please.", 20, False),
    ],
)
def test_many_mandrels_are_asked_back_where_no_word_counts_them(
    text: str, count: int, *, sure: bool
) -> None:
    message = Message(message_id="q@example.com", sender=Address(name="", address=""), body=text)
    own = OwnText(text=message.text, body_start=message.body_start, subject_counts=True)
    (request,) = read(own, message).requests
    assert request.quantity == count
    assert bool(request.doubt_on("quantity")) is not sure
