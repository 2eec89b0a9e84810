"""How many mandrels are wanted, as apprentices, buyers and welders say it in six languages: one short
message a row.
"""

# ruff: noqa: E501 - one message a line

from __future__ import annotations

from datetime import date

import pytest

from bendreply.intake.pasted import text_message
from bendreply.intake.pipeline import understand

SENT = date(2026, 10, 12)
OF_ONE_SIZE = (
    ("Last year we had 4 off you. This year it's 2. Tube 38 x 1.5, R 76.", 2),
    ("A mandrel for each of our three machines: 38 x 1.5, R 76.", 3),
    ("2 mandrels, no, make it 3, for 38 x 1.5, R 76.", 3),
    ("Half a dozen mandrels 38 x 1.5, R 76.", 6),
    ("Un'anima per tubo alluminio 38 x 1,5, raggio 76. Ne servono 2.", 2),
    ("A pair of mandrels 38 x 1.5, R 76.", 2),
    ("One mandrel 38 x 1.5 R 76. Our tube arrives on 5 November.", 1),
    ("One mandrel 38 x 1.5 R 76. Production begins on 5 November.", 1),
    ("One mandrel 38 x 1.5 R 76. I'm on holiday until 5 November.", 1),
    ("One mandrel 38 x 1.5 R 76. Your quote please by 20 October.", 1),
    ("Mandrel 38 x 1.5 R 76, qty 1, PO date 11/05/26.", 1),
    ("Vier Dorne, zwei sofort, zwei auf Abruf: 38 x 1,5, R 76.", 4),
    ("Zwei Dorne (einer als Reserve): 38 x 1,5, R 76.", 2),
    ("Wir haben 5 Maschinen, für 3 davon brauchen wir je einen Dorn 38 x 1,5, R 76.", 3),
    ("Für unsere 3 Maschinen reicht ein Dorn 38 x 1,5, R 76.", 1),
    ("One mandrel 38 x 1.5 R 76 to do 400 bends, 8 to a frame, 50 frames.", 1),
    ("One mandrel 38 x 1.5 R 76, 3 balls.", 1),
    ("One 3-ball mandrel 38 x 1.5 R 76.", 1),
    ("2 three ball mandrels 38 x 1.5 R 76.", 2),
    ("5 mandrels ordered last year are worn. Quote the same again, 5 off: 38 x 1.5 R 76.", 5),
    ("We order 2 mandrels every year. Same again: 2 for 38 x 1.5 R 76.", 2),
    ("Ten mandrels, five this year and five next, 38 x 1.5 R 76.", 10),
    ("Mandrel, 38 x 1.5 R 76, x2.", 2),
    ("2x mandrel 38 x 1.5 R 76", 2),
    ("Mandrel (2x) 38 x 1.5 R 76", 2),
    ("Mandrel 38 x 1.5 R 76 - two of", 2),
    ("Mandrels 38 x 1.5 R 76: two.", 2),
    ("Deux mandrins dont un de secours, 38 x 1,5 rayon 76.", 2),
    ("Mandrin 38 x 1,5 rayon 76, en double exemplaire.", 2),
    ("Mandrin 38 x 1,5 rayon 76, à l'unité.", 1),
    ("Il nous en faut deux : mandrin 38 x 1,5 rayon 76.", 2),
    ("Il ne nous en faut qu'un : mandrin 38 x 1,5 rayon 76.", 1),
    ("Mandril 38 x 1,5 radio 76, un par.", 2),
    ("Mandril 38 x 1,5 radio 76, por duplicado.", 2),
    ("Mandril 38 x 1,5 radio 76. Dos unidades, una para cada turno.", 2),
    ("Mandrino 38 x 1,5 raggio 76, un paio.", 2),
    ("Mandrino 38 x 1,5 raggio 76: ce ne vogliono due.", 2),
    ("Mandrino 38 x 1,5 raggio 76, n° 2 pezzi.", 2),
    ("Doorn 38 x 1,5 straal 76, in tweevoud.", 2),
    ("Doorn 38 x 1,5 straal 76, we willen er twee.", 2),
    ("Doorn 38 x 1,5 straal 76, aantal: één.", 1),
    ("Dorn 38 x 1,5 Radius 76, in doppelter Ausführung.", 2),
    ("Dorn 38 x 1,5 Radius 76, zweimal bitte.", 2),
    ("Dorn 38 x 1,5 Radius 76, zweifach.", 2),
    ("Dorn 38 x 1,5 Radius 76, davon zwei.", 2),
    ("We have two benders. A mandrel for each. 38 x 1.5, R 76.", 2),
    ("The order is 80 frames, 4 bends each. One mandrel 38 x 1.5, R 76.", 1),
    ("Quote one (1) mandrel 38 x 1.5, R 76. We need 12 sticks of tube as well.", 1),
    ("Please quote mandrels 38 x 1.5, R 76. We make 500 chairs a month.", None),
    ("How many mandrels would I need for 5000 bends? 38 x 1.5, R 76. Quote accordingly.", None),
    ("Quote for 2 no. mandrels 38 x 1.5, R 76.", 2),
    ("Mandrels - 3 No. 38 x 1.5, R 76.", 3),
    ("Mandrel - 1 No. 38 x 1.5, R 76.", 1),
    ("1 No mandrel 38 x 1.5, R 76.", 1),
    ("Two mandrels, please, each with 2 balls. 38 x 1.5, R 76.", 2),
    ("1 mandrel w/ 2 balls. 38 x 1.5, R 76.", 1),
    ("A mandrel, two wipers, 38 x 1.5, R 76.", 1),
    ("2 mandrels and 2 wiper dies, 38 x 1.5, R 76.", 2),
    ("Couple of mandrels needed. 38 x 1.5, R 76.", 2),
    ("We will need three of them: mandrel 38 x 1.5, R 76.", 3),
    ("38 x 1.5, R 76 mandrel. I want three.", 3),
    ("38 x 1.5, R 76 mandrel. We are after three of these.", 3),
    ("38 x 1.5, R 76 mandrel. Put me down for three.", 3),
    ("38 x 1.5, R 76 mandrel. Order quantity is three.", 3),
    ("38 x 1.5, R 76 mandrel. Three's the charm, so three please.", 3),
    ("38 x 1.5, R 76 mandrel. Not one but two.", 2),
    ("38 x 1.5, R 76 mandrel. One to use, one to keep.", 2),
    ("38 x 1.5, R 76 mandrel. One for the machine and one for the shelf.", 2),
    ("38 x 1.5, R 76 mandrel. One plus a spare.", 2),
    ("38 x 1.5, R 76 mandrel. Just the one.", 1),
    ("38 x 1.5, R 76 mandrel. Only the one.", 1),
    ("38 x 1.5, R 76 mandrel. Single piece.", 1),
    ("38 x 1.5, R 76 mandrel. One will see me through.", 1),
    ("38 x 1.5, R 76 mandrel. I only want one.", 1),
    ("38 x 1.5, R 76 mandrel. Qty two (2).", 2),
    ("38 x 1.5, R 76 mandrel. Number of tools: 2", 2),
    ("38 x 1.5, R 76 mandrel. Amount: 2", 2),
    ("38 x 1.5, R 76 mandrel. Count: 2", 2),
    ("38 x 1.5, R 76 mandrel. Quantities: 2", 2),
    ("Stück: 2. Dorn 38 x 1,5, R 76.", 2),
    ("Dorn 38 x 1,5, R 76. Wir brauchen zwei davon.", 2),
    ("Dorn 38 x 1,5, R 76. Zwei Stück wären nötig.", 2),
    ("Dorn 38 x 1,5, R 76. Davon bitte zwei.", 2),
    ("Dorn 38 x 1,5, R 76. Zwei, einer davon als Ersatz.", 2),
    ("Dorn 38 x 1,5, R 76. Einer langt.", 1),
    ("Dorn 38 x 1,5, R 76. Ein einziger reicht.", 1),
    ("Dorn 38 x 1,5, R 76. Es geht nur um einen.", 1),
    ("Dorn 38 x 1,5, R 76. Wir biegen damit 300 Stück im Jahr. Einer genügt.", 1),
    ("Dorn 38 x 1,5, R 76. Losgröße 300 Teile. Bitte einen anbieten.", 1),
    ("Mandrin 38 x 1,5, rayon 76. Il en faudrait 2.", 2),
    ("Mandrin 38 x 1,5, rayon 76. Nous en voulons deux.", 2),
    ("Mandrin 38 x 1,5, rayon 76. Deux unités.", 2),
    ("Mandrin 38 x 1,5, rayon 76. Nombre de pièces : 2.", 2),
    ("Mandrin 38 x 1,5, rayon 76. Un seul suffit pour nos 300 pièces.", 1),
    ("Mandrin 38 x 1,5, rayon 76. Quantité : un.", 1),
    ("Mandrin 38 x 1,5, rayon 76. Un pour nous et un pour notre sous-traitant.", 2),
    ("Mandril 38 x 1,5, radio 76. Son dos.", 2),
    ("Mandril 38 x 1,5, radio 76. Nos hacen falta dos.", 2),
    ("Mandril 38 x 1,5, radio 76. Queremos un par de ellos.", 2),
    ("Mandril 38 x 1,5, radio 76. Solo uno, para 300 piezas al mes.", 1),
    ("Mandrino 38 x 1,5, raggio 76. Ne servono due.", 2),
    ("Mandrino 38 x 1,5, raggio 76. Due pezzi, grazie.", 2),
    ("Mandrino 38 x 1,5, raggio 76. Ne basta uno per i nostri 300 pezzi.", 1),
    ("Doorn 38 x 1,5, straal 76. Wij hebben er twee nodig.", 2),
    ("Doorn 38 x 1,5, straal 76. Twee, waarvan een als reserve.", 2),
    ("Doorn 38 x 1,5, straal 76. Eén stuk volstaat voor onze 300 bochten.", 1),
    ("Doorn 38 x 1,5, straal 76. Het gaat om één doorn.", 1),
    (
        "We run 24/7 on 36 x 2, R 108 and eat one mandrel per quarter. Please quote us for a year's worth, i.e. 4.",
        4,
    ),
    ("Qty: 1 set of mandrel + 1 extra mandrel without balls\nTube: 45 x 2\nCLR: 135", 2),
    (
        "It's for a 6-off batch of prams. 18 x 1.2 tube, R 36. Just wondering on price for mandrels.",
        None,
    ),
    ("Two of our four presses want a new mandrel apiece: 38 x 1.5, R 76.", 2),
    ("Tube 57 x 1,5, R 85,5. Un prix unitaire de mandrin nous suffira pour notre devis.", None),
    ("Compras sólo ha aprobado uno, así que coticen uno. Mandril 76,1 x 2, R 152.", 1),
    (
        "We only bend twice a year, 60 pieces in March and 60 in June, so I'd like a mandrel. 38 x 3, 152 CLR.",
        1,
    ),
    ("We'd like to buy one of your mandrels, 38 x 1.5 R 76.", 1),
    ("One of your mandrels broke. 38 x 1.5 R 76, price please.", None),
    ("Please tell us the price of the mandrel for 38 x 1.5, R 76.", 1),
    ("Need to know if the mandrel would fit 38 x 1.5 R 76.", None),
    ("Our only mandrel broke, 38 x 1.5, R 76. We need a new one on Monday.", 1),
    ("Mandrel x2 / 32 x 1.5 / R 64", 2),
)
OF_TWO_SIZES = (
    ("Zwei Dorne 38 x 1,5 R 76 und ein Dorn 42 x 2 R 84.", [2, 1]),
    ("Dos mandriles 38 x 1,5 R 76 y uno 42 x 2 R 84.", [2, 1]),
    ("Due mandrini 38 x 1,5 R 76 e uno 42 x 2 R 84.", [2, 1]),
    ("Uno por medida: mandril 38 x 1,5 R 76; 42 x 2 R 84.", [1, 1]),
    ("Uno per misura: mandrino 38 x 1,5 R 76; 42 x 2 R 84.", [1, 1]),
    (
        "I'd like to order four of your mandrels, two of them for 38 x 1.5 (R 76) and two for 42 x 2 (R 84).",
        [2, 2],
    ),
)


@pytest.mark.parametrize(("text", "count"), OF_ONE_SIZE)
def test_of_one_size(text: str, count: int | None) -> None:
    (size,) = understand(text_message(text, SENT)).requests
    assert size.quantity == count
    assert not size.doubt_on("quantity")


@pytest.mark.parametrize(("text", "counts"), OF_TWO_SIZES)
def test_of_two_sizes(text: str, counts: list[int]) -> None:
    assert [size.quantity for size in understand(text_message(text, SENT)).requests] == counts


def test_numbers_of_a_tender_and_round_the_clock() -> None:
    for text in (
        "Tender 26/114: mandrel 60.3 x 3.6, R 180, 2 off",
        "Our bender runs 24/7. Need a mandrel for 60.3 x 3.6, R 180, 2 off.",
    ):
        (size,) = understand(text_message(text, SENT)).requests
        assert (str(size.od_mm), size.quantity) == ("60.3", 2)


@pytest.mark.parametrize(
    "text",
    [
        "Regarding 42.4 x 2 / R 85 / 1.4571: the mandrels should arrive at us latest 5th March.",
        "Il mandrino (60,3 x 2, R 120, 1 pezzo) deve essere qui mercoledì 28 ottobre.",
        "Wegen 38 x 1,5 / R 57: die Dorne sollten bis 5. November bei uns sein.",
    ],
)
def test_what_has_to_come_is_asked_for(text: str) -> None:
    assert understand(text_message(text, SENT)).kind.value == "sizes"
