"""Counting the mandrels that are wanted: six languages, lists, tables, and what counts nothing."""

# ruff: noqa: E501 - a row of a table stands on one line: the words, then their meaning

from __future__ import annotations

import pytest

from bendreply.intake.reading.counts.quantity import find_counts
from bendreply.intake.reading.text.layout import lay_out
from bendreply.intake.reading.text.lexer import lex

from ..pace import assert_quick
from .count_support import IN, MM, quantities
from .reading.support import read_text

COUNTED = [
    (f"{IN}, just the one", 1),
    (f"I'd take a pair of mandrels, {IN}", 2),
    (f"need half a dozen mandrels {IN}", 6),
    ("Dorn für 51 x 2,6, Radius 135 mm. Menge: ein halbes Dutzend.", 6),
    ("Wir brauchen ein halbes Dutzend Dorne für 51 x 2,6, R 135", 6),
    ("Mandrin pour 51 x 2,6, rayon 135 mm. Quantité : une demi-douzaine.", 6),
    ("Necesitamos media docena de mandriles para 51 x 2,6, radio 135", 6),
    ("Ci serve mezza dozzina di mandrini per 51 x 2,6, raggio 135", 6),
    ("Graag een half dozijn doornen voor 51 x 2,6, radius 135", 6),
    (f"need a dozen mandrels {IN}", 12),
    (f"Twenty-five mandrels for {IN} please", 25),
    (f"Qty two (2) mandrel {IN}", 2),
    (f"no. required: 3, mandrel {IN}", 3),
    (f"mandrel {IN}\nPcs: 4", 4),
    (f"{IN}\nMandrel\nQuantity\n3", 3),
    (f"{IN}, 2 req'd", 2),
    (f"2-off mandrel {IN}", 2),
    (f"3 × mandrels for {IN}", 3),
    (f"Mandrel {IN}. x2 please", 2),
    (f"could we have two of them {IN} mandrel", 2),
    (f"{IN} mandrel. Two, please.", 2),
    (f"What would one cost? {IN} mandrel", 1),
    (f"the old one broke. {IN}. need another", 1),
    (f"if so: one. {IN} mandrel", 1),
    (f"2 Biegedorne für Rohr {MM}", 2),
    (f"Bitte 2 Stk. Dorne {MM}", 2),
    (f"Dorn für {MM}, davon zwei bitte", 2),
    (f"Dorn für {MM}. Einer reicht.", 1),
    (f"Rohr {MM}, ein Stück Dorn", 1),
    (f"mandrin pour tube {MM}, il m'en faut trois", 3),
    (f"un seul mandrin pour tube {MM}", 1),
    (f"merci de nous chiffrer 2 mandrins pour tube {MM}", 2),
    (f"mandril {MM}, necesito dos", 2),
    (f"mandril para tubo {MM}, 1 ud.", 1),
    (f"mandrino per tubo {MM}, me ne servono due", 2),
    (f"mandrino tubo {MM}, n. 3", 3),
    (f"doorn {MM}, ik heb er twee nodig", 2),
    (f"Wat zou één kogeldoorn kosten voor {MM}?", 1),
]  # fmt: skip


@pytest.mark.parametrize(("text", "count"), COUNTED)
def test_a_count_is_heard_however_it_is_said(text: str, count: int) -> None:
    assert quantities(text) == [count]


ASKED_FOR = [
    f"Please quote a mandrel for {IN}",
    f"Can I get a price on a mandrel for {IN}?",
    f"What would a mandrel cost? {IN}",
    f"Angebot für einen Biegedorn, Rohr {MM}",
    f"J'aurais besoin d'un mandrin pour {MM}",
    f"cotización de un mandril {MM}",
    f"ci serve un mandrino per tubo {MM}",
    f"wij zoeken een buigdoorn voor {MM}",
]


@pytest.mark.parametrize("text", ASKED_FOR)
def test_a_mandrel_that_is_asked_for_is_one(text: str) -> None:
    assert quantities(text) == [1]


NOT_SAID = [
    f"Can you make a mandrel for {IN}?",
    f"Do you stock a mandrel for {IN}",
    f"Do you sell a mandrel for {IN}",
    f"Können Sie einen Dorn für Rohr {MM} machen?",
    f"pouvez-vous fabriquer un mandrin pour tube {MM} ?",
    f"¿pueden hacer un mandril para tubo {MM}?",
    f"potete fare un mandrino per {MM}?",
    f"Do I need a mandrel for {IN}?",
    f"Looking for some mandrels {IN}",
    f"I don't need a mandrel yet, only info on {IN}",
    f"which one of your mandrels suits {IN}",
    f"the last one was fine, {IN} mandrel",
    f"Would one mandrel do for {IN} in both walls?",
    f"We have an order for 500 pcs, {IN}. mandrel?",
    f"Qty 200 tubes, {IN}. price on mandrels?",
    f"batch size 50 pcs, {IN}. mandrels please",
    f"We need two mandrel bends in {IN}",
    f"Rohr {MM}, Losgröße 200, Dorn?",
]


@pytest.mark.parametrize("text", NOT_SAID)
def test_what_counts_no_mandrels_is_no_quantity(text: str) -> None:
    assert quantities(text) == [None]


@pytest.mark.parametrize("text", [f"quote 2-3 mandrels {IN}", f"need one or two mandrels {IN}"])
def test_two_counts_in_a_breath_are_no_quantity(text: str) -> None:
    assert quantities(text) == [None]


BESIDE_OTHER_COUNTS = [
    (f"We need 3 mandrels, {IN}. First order is 150 tubes.", 3),
    (f"We bought two mandrels from you last year. Quote one more for {IN}", 1),
    (f"We run two machines. Quote a mandrel for {IN}", 1),
    (f"Need two wiper dies and one mandrel for {IN}", 1),
    (f"Mandrel {IN}, qty 1. Wiper die, qty 2.", 1),
    (f"I'm making 12 hoops. {IN}. Quote me one.", 1),
    (f"Mandrel {IN}. Qty: 1 now, 4 later", 1),
    (f"One mandrel, not two, {IN}", 1),
    (f"x1 mandrel {IN}, x2 if you do a deal", 1),
    (f"Rohr {MM}, Jahresbedarf 2000 Bögen, 2 Dorne", 2),
    (f"One mandrel and one spare, {IN}", 2),
    (f"two mandrels and a spare for {IN}", 3),
    (f"Quote one mandrel. {IN}. Sorry, make that three.", 3),
]  # fmt: skip


@pytest.mark.parametrize(("text", "count"), BESIDE_OTHER_COUNTS)
def test_mandrels_are_told_from_what_else_is_counted(text: str, count: int) -> None:
    assert quantities(text) == [count]


def test_a_count_is_no_size() -> None:
    (request,) = read_text(f"{IN}, 2 req'd")
    assert request.od_mm is not None
    assert float(request.od_mm) == 44.45  # 1.75 x 25.4


@pytest.mark.parametrize(
    ("subject", "body"),
    [("need 2 mandrels", f"{IN}, DOM"), (f"mandrel {IN}", "size is in the subject. need 2")],
)
def test_the_other_part_of_the_message_is_asked(subject: str, body: str) -> None:
    assert quantities(body, subject) == [2]


MORE_COUNTED = [
    (f"{IN}. Could you make us a mandrel (1)?", 1),
    (f"all I need today is {IN}, 304L. 1 pc. Rod is 3/4-16 thread. Do you stock it?", 1),
    (f"u do mandrels for {IN}? after 1", 1),
    (f"u do mandrels? {IN}. after a couple", 2),
    (f"mandrel for {IN}, I'm after two of them", 2),
    (f"brauch einen Dorn für {MM}", 1),
    (f"brauch zwei Dorne für {MM}", 2),
    ("Please quote one (1) mandrel as follows:\n\n  Tube OD ... 2-1/2\"\n  Wall ... .065\"\n  CLR ... 5\"", 1),
    ("Please quote two (2) mandrels as follows:\n\n  Tube OD: 2-1/2\"\n  Wall: .065\"\n  CLR: 5\"", 2),
    (f"bitte ändern: {MM}, Stückzahl jetzt 3.", 3),
    (f"{MM} Dorn, Anzahl nun 4", 4),
    (f"mandrel {IN}, quantity now 3", 3),
    (f"mandrel {IN}, qty is now two", 2),
    (f"mandrin {MM}, quantité désormais 3", 3),
    (f"mandril {MM}, cantidad ahora 3", 3),
    (f"mandrino {MM}, quantità adesso 3", 3),
    (f"doorn {MM}, aantal nu 3", 3),
    (f"Kunnen jullie een doorn maken voor {MM}? Eén is genoeg.", 1),
    (f"Könnt ihr einen Dorn machen für {MM}? Einer genügt.", 1),
    (f"Pouvez-vous faire un mandrin pour {MM} ? Un seul suffit.", 1),
    (f"¿Pueden hacer un mandril para {MM}? Con uno basta.", 1),
    (f"Potete fare un mandrino per {MM}? Ne basta uno.", 1),
    (f"I'd like to buy a mandrel for that, {IN}.", 1),
    (f"I want to buy a mandrel, {IN}", 1),
    (f"need to order a mandrel {IN}", 1),
    (f"We would like to purchase a mandrel {IN}", 1),
    (f"Ich möchte einen Dorn kaufen, {MM}", 1),
    (f"je voudrais acheter un mandrin {MM}", 1),
    (f"quisiera comprar un mandril {MM}", 1),
    (f"vorrei acquistare un mandrino {MM}", 1),
    (f"ik wil graag een doorn kopen, {MM}", 1),
    (f"potrzebuję jeden trzpień do rury {MM}", 1),
    (f"can you do me a mandrel for {IN}. gate hoops, about 60 of them", 1),
    (f"could you do me a mandrel for {IN}", 1),
    (f"knock me up a mandrel for {IN}", 1),
    (f"make me a mandrel for {IN} please", 1),
    (f"{IN} mandrel, looking to get 2", 2),
    (f"{IN} mandrel - 2 nos", 2),
    (f"{IN} mandrel. 2 nos. required", 2),
    (f"{IN} mandrel. one'll do", 1),
    (f"{IN} mandrel. only want the one", 1),
    (f"{IN} mandrel. Just a single one.", 1),
    (f"{IN} mandrel. Order quantity: 2", 2),
    (f"{IN} mandrel. QTY REQ'D - 2", 2),
    (f"{IN} mandrel. I'll take 2 of em", 2),
    (f"{IN} mandrel. put me down for three", 3),
    (f"{MM}. Wir bräuchten davon 2 Stück.", 2),
    (f"{MM}. Bestellmenge 2", 2),
    (f"{MM} Dorn. Ich nehme zwei.", 2),
    (f"{MM} Dorn. 2x bitte.", 2),
    (f"{MM} Dorn. Bitte 1x anbieten", 1),
    (f"{MM} mandrin. J'en prends deux.", 2),
    (f"{MM} mandrin, 1 exemplaire", 1),
    (f"{MM} mandrin, en 2 exemplaires", 2),
    (f"{MM} mandril. Me llevo dos.", 2),
    (f"{MM} mandril, una unidad", 1),
    (f"{MM} mandrino. Ne prendo due.", 2),
    (f"{MM} mandrino, 1 pz", 1),
    (f"{MM} doorn. Doe er maar twee.", 2),
    (f"{MM} doorn. 1 stuk", 1),
    (f"{MM} trzpień, 2 szt.", 2),
    (f"{MM} trzpień, jedna sztuka", 1),
    (f"{MM}. Was kostet ein Dorn? Bestellen würde ich einen.", 1),
]  # fmt: skip


@pytest.mark.parametrize(("text", "count"), MORE_COUNTED)
def test_everyday_wordings_of_a_count(text: str, count: int) -> None:
    assert quantities(text) == [count]


IN_MORE_WORDS = [
    (f"hi have you got a mandrel for {IN}. cheers", 1),
    (f"u got a mandrel for {IN}?", 1),
    (f"Would you have a mandrel to suit {IN}?", 1),
    (f"Haben Sie einen Dorn für Rohr {MM}?", 1),
    (f"hast du einen Dorn für Rohr {MM}?", 1),
    (f"Avez-vous un mandrin pour tube {MM} ?", 1),
    (f"¿Tienen un mandril para tubo {MM}?", 1),
    (f"Avete un mandrino per tubo {MM}?", 1),
    (f"Heeft u een doorn voor buis {MM}?", 1),
    (f"hebben jullie een doorn voor {MM}?", 1),
    (f"Can you do me 2 mandrels to suit {IN}. For utes, all 45s and 60s.", 2),
    (f"what would two mandrels run for {IN}?", 2),
    (f"{IN}, 22 pieces. what do you charge for one mandrel?", 1),
    (f"{IN}. What's the damage for a mandrel?", 1),
    (f"what do you get for a mandrel? {IN}", 1),
    (f"{IN}. Please send price and lead time for one.", 1),
    (f"{IN}. Please give me price and delivery for one.", 1),
    (f"Rohr {MM}. Preis und Lieferzeit für einen, bitte.", 1),
    (f"{IN}. How much would a one-off be?", 1),
    (f"Price for mandrels, {IN}. It is a one-off job.", None),
    (f"tube de {MM}. Vous pouvez faire un mandrin à l'unité ?", 1),
    (f"{IN}. One of, please.", 1),
    (f"{IN}. One's plenty.", 1),
    (f"{IN}. Kindly quote 2 nos. Also confirm whether a wiper die comes along", 2),
    (f"We have the wiper die for {IN}. Need 1 pc.", 1),
    (f"mandrel for {IN}\nWiper die to suit it, qty 4.", None),
    (f"{IN}. If we do need it quote me 1.", 1),
    (f"Would need one mandrel for a run of 75 bends, {IN}.", 1),
    (f"We use 2 mandrels a run, {IN}. Price?", None),
    (f"{IN}. need\n2 asap cheers", 2),
    (f"{IN}. I need one bad.", 1),
    (f"{IN}. If it is on the shelf ship two, PO to follow.", 2),
    (f"I'm in search of a mandrel for {IN}.", 1),
    (f"looking to get a mandrel for {IN}", 1),
    (f"Rohr {MM}. Ein Dorn wäre super.", 1),
    (f"Rohr {MM}. Es wäre ein Dorn.", 1),
    (f"Bitte bieten Sie uns einen\nDorn an für {MM}.", 1),
    (f"Preis für {MM}? Können Sie mir sagen, ob ein Dorn nötig ist?", None),
    (f"Bonjour, un mandrin pour tube {MM}, c'est combien ?", 1),
    (f"tube {MM}. Un mandrin SVP, et combien ça coûte ?", 1),
    (f"ik heb een doorn nodig voor buis {MM}", 1),
    (f"wil je een doorn laten maken voor {MM}, graag offerte voor 2 stuks", 2),
    (f"requiero un mandril para tubo {MM}", 1),
    (f"tubo {MM}. Un mandril solamente, por favor.", 1),
    (f"- bending mandrel 2 pcs\n- pipe {MM}", 2),
    ("Tube OD ......... 1.250\"\nWall ............ .065\"\nMandrels req'd .. 2", 2),
    ("Outside diameter .... 1 7/8\nWall ................ 16 ga\nQuantity ............ 2", 2),
    (f"same again but 2 pcs this time. 1 pc mandrel for tube {MM}.", 2),
    (f"wie zuletzt 1 Stück Dorn {MM}, diesmal aber 3 Stück", 3),
    (f"1 mandrin {MM} la dernière fois, 2 cette fois", 2),
    ("38 x 1.5 tube, radius 200. mandrel?", None),
    (f"Wir suchen Dorne für Hydraulikrohr {MM}.", None),
    (f"{IN}. Price please. Do you think a mandrel would help?", None),
]  # fmt: skip


@pytest.mark.parametrize(("text", "count"), IN_MORE_WORDS)
def test_one_is_heard_in_many_words_and_not_where_only_advice_is_asked(
    text: str, count: int | None
) -> None:
    assert quantities(text) == [count]


def test_the_count_is_that_of_the_size_that_is_asked_for() -> None:
    """The other size is only mentioned beside it; a radius said in two ways is one size."""
    text = (
        "We require mandrel for U bends, tube 25.4 mm OD x 2.11 mm wall, TP304. Distance of the"
        " legs 120 mm, i.e. CLR 60 mm. Kindly quote for 2 nos. Machine is 40 NB."
    )
    assert quantities(text)[0] == 2


MORE_NOT_SAID = [
    f"chciałbym kupić trzpień do {MM}",
    f"tubo {MM}. Serve un'anima per ogni raggio o ne basta una sola? Fateci un preventivo.",
    f"Do I need one mandrel for each or will the same mandrel do both? Quote whichever way. {IN}",
    f"{MM}. Brauche ich einen Dorn oder zwei? Bitte Angebot.",
    f"{MM}. Faut-il un mandrin ou deux ? Merci de chiffrer.",
    f"{MM}. ¿Necesito un mandril o dos?",
    f"{MM}. Heb ik één doorn nodig of twee?",
    f"Now what I need is the same idea in {IN}. Send me a number. I already have mandrels from y'all.",
    f"{IN} mandrel, singles fine",
    f"How much for 1, and how much for 3? mandrel {IN}",
    f"mandrel for {IN}, 2 balls",
    f"We have 2 benders and 3 shifts. {IN} mandrel?",
    f"{IN}. We make about 40 of these a year at $185. mandrel price?",
    f"{IN} mandrel, need it in 2 weeks",
    f"{IN} mandrel. Machine no. 2. Rod 1 in",
    f"{IN}. My frame has 4 bends, 2 each side. mandrel price",
    f"Rohr {MM}. Wir fertigen 300 Stück im Jahr. Was kosten Dorne?",
    f"See page 2, item 1: mandrel {IN}",
    f"{IN} mandrel. Call me after 1 please",
    f"{IN} mandrel. I am in after 2.",
]


@pytest.mark.parametrize("text", MORE_NOT_SAID)
def test_questions_hours_and_other_things_count_no_mandrels(text: str) -> None:
    assert quantities(text) == [None]


@pytest.mark.parametrize(
    "text",
    [
        "un mandrin pour tube en 42,4 x 2, rayon 100",
        "doorn voor buis in rvs en 42,4 x 2, straal 100",
        "mandril de 42,4 x 2 en 100 mm de radio, EN 10305-1",
        "need 1 for 42.4 x 2.0 mm tube on R 100 mm",
    ],
)
def test_a_little_word_before_a_size_hides_nothing_and_adds_nothing(text: str) -> None:
    sizes = [(float(r.od_mm or 0), float(r.wall_mm or 0)) for r in read_text(text)]
    assert sizes == [(42.4, 2.0)]


@pytest.mark.parametrize("snippet", ["1", "a ", "a mandrel ", "qty ", "one and ", "need 1 "])
def test_counting_takes_time_in_proportion_to_the_length(snippet: str) -> None:
    layout = lay_out([], snippet * (100_000 // len(snippet)))
    assert_quick(lambda: find_counts(layout, [], {}), within=2.0)


def test_an_empty_message_counts_nothing() -> None:
    assert find_counts(lay_out(lex(""), ""), [], {}).quantity(0) is None


@pytest.mark.parametrize(
    ("text", "count"),
    [
        (f"Wand niet 1,5 maar 2. Graag een doorn voor {MM}", 1),
        (f"Het is geen 1,5 mm maar 2. Graag een doorn voor {MM}", 1),
        (f"Graag een offerte: {MM}, maar 2 doorns", 2),
    ],
)
def test_a_dutch_but_between_figures_counts_nothing(text: str, count: int) -> None:
    assert set(quantities(text)) == {count}
