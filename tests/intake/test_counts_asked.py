"""Mandrels wanted though hardly a number is said, counts at the ends of rows, and open choices."""

# ruff: noqa: E501 - a row of a table stands on one line: the words, then their meaning

from __future__ import annotations

import pytest

from .reading.support import read_text

IN = "1.75 x .095 wall, 5.25 clr"
MM = "38 x 1,5 mm, R 57 mm"

WANTED = [
    (f"my boss asked me to ask you for a mandrel. tube {IN}",1),
    (f"The foreman told me to get a mandrel off you, {IN}",1),
    (f"I have been asked to order a mandrel for {IN}",1),
    (f"They sent me to find a mandrel for {IN}",1),
    (f"Could I trouble you for a mandrel for {IN}",1),
    (f"My dad wants me to get hold of a mandrel, {IN}",1),
    (f"Mein Chef hat mich gebeten, bei Ihnen einen Dorn anzufragen. Rohr {MM}",1),
    (f"Der Meister sagt, ich soll einen Dorn besorgen, Rohr {MM}",1),
    (f"Ich soll bei euch einen Biegedorn bestellen, {MM}",1),
    (f"Mon patron me demande de vous demander un mandrin, tube {MM}",1),
    (f"On m'a chargé de commander un mandrin pour {MM}",1),
    (f"Mi jefe me pidió que les pidiera un mandril, tubo {MM}",1),
    (f"Me han encargado pedir un mandril para {MM}",1),
    (f"Il capo mi ha detto di chiedervi un mandrino per {MM}",1),
    (f"Mijn baas vroeg me om bij jullie een doorn te bestellen, buis {MM}",1),
    (f"Tube {IN}. Would one mandrel do the lot and could you make it for me?",1),
    (f"Tube {IN}. Will one mandrel do for all 40 and can you make me it?",1),
    (f"Tube {IN}. I suppose one mandrel would do the job, could you make one?",1),
    (f"Würde ein Dorn für alle 30 Bögen reichen, und könnten Sie ihn mir bauen? Rohr {MM}",1),
    (f"Un seul mandrin suffirait-il pour tout, et pouvez-vous me le faire ? tube {MM}",1),
    (f"Toujours un mandrin. {MM}",1),
    (f"{MM}. Toujours 2 mandrins.",2),
    (f"{IN}. Still one mandrel.",1),
    (f"{IN}. Still just the one.",1),
    (f"{IN}. Still two.",2),
    (f"{IN}. Again one mandrel please.",1),
    (f"{MM}. Weiterhin ein Dorn.",1),
    (f"{MM}. Nach wie vor zwei Dorne.",2),
    (f"{MM}. Es bleibt bei einem Dorn.",1),
    (f"{MM}. Bleibt bei einem Stück.",1),
    (f"{MM}. Siempre un mandril.",1),
    (f"{MM}. Sigue siendo un mandril.",1),
    (f"{MM}. Sempre un mandrino.",1),
    (f"{MM}. Nog steeds één doorn.",1),
    (f"{MM}. Nog altijd een doorn.",1),
    (f"{MM}. Ein Dorn.",1),
    (f"{MM}. Un mandrin.",1),
    (f"{MM}. Un mandrino.",1),
    (f"{MM}. Un mandril, por favor.",1),
    (f"Unser Dorn für {MM} ist gebrochen. Bitte bieten Sie uns einen neuen an.",1),
    (f"Unser alter Dorn für {MM} ist hin, wir brauchen einen neuen.",1),
    (f"Our mandrel for {IN} broke. Please quote a new one.",1),
    (f"Our mandrel for {IN} broke. We need a replacement.",1),
    (f"Our mandrel for {IN} is worn out, please offer a replacement",1),
    (f"Our mandrel for {IN} broke. Please quote us another.",1),
    (f"Notre mandrin {MM} est cassé. Merci de nous en proposer un neuf.",1),
    (f"Notre mandrin {MM} est cassé. Il nous en faut un nouveau.",1),
    (f"Nuestro mandril {MM} se rompió. Necesitamos uno nuevo.",1),
    (f"Il nostro mandrino {MM} è rotto. Ce ne serve uno nuovo.",1),
    (f"Onze doorn {MM} is stuk. Graag een nieuwe offreren.",1),
    (f"Onze doorn {MM} is kapot, we hebben een nieuwe nodig.",1),
    (f"Bitte bieten Sie uns einen Ersatzdorn an, {MM}",1),
    (f"Me urge un mandril para tubo {MM}",1),
    (f"Nos urge un mandril para tubo {MM}",1),
    (f"Me corre prisa un mandril para tubo {MM}",1),
    (f"Ci occorre un mandrino per tubo {MM}",1),
    (f"Mi occorre con urgenza un mandrino per tubo {MM}",1),
    (f"Il me faut d'urgence un mandrin {MM}",1),
    (f"Wir brauchen dringend einen Dorn {MM}",1),
    (f"Urgently need a mandrel for {IN}",1),
    (f"We're in dire need of a mandrel, {IN}",1),
    (f"Desperate for a mandrel, {IN}",1),
    (f"In a pinch for a mandrel {IN}",1),
    (f"Dringend: ein Dorn {MM}",1),
    (f"Hace falta un mandril para {MM}",1),
    (f"Nos hace falta un mandril para {MM}",1),
    (f"Haría falta un mandril para {MM}",1),
    (f"Se requiere un mandril para {MM}",1),
    (f"Andamos buscando un mandril para {MM}",1),
    (f"Estoy buscando un mandril para {MM}",1),
    (f"Sto cercando un mandrino per {MM}",1),
    (f"Siamo alla ricerca di un mandrino per {MM}",1),
    (f"Sono a chiedervi un mandrino per {MM}",1),
    (f"Je suis à la recherche d'un mandrin pour {MM}",1),
    (f"Nous aurions besoin d'un mandrin pour {MM}",1),
    (f"Wir sind auf der Suche nach einem Dorn für {MM}",1),
    (f"Wir bräuchten da einen Dorn, {MM}",1),
    (f"Ik ben op zoek naar een doorn voor {MM}",1),
    (f"We zouden graag een doorn hebben voor {MM}",1),
    (f"Benötigt wird ein Dorn für Rohr {MM}",1),
    (f"Gesucht: ein Dorn für Rohr {MM}",1),
    (f"Wanted: a mandrel for {IN}",1),
    (f"I fancy a mandrel for {IN}",1),
    (f"I'd be glad of a mandrel for {IN}",1),
    (f"We are short of a mandrel for {IN}",1),
    (f"Hoping you can sort me out with a mandrel for {IN}",1),
    (f"Can you sort us a mandrel for {IN}",1),
    (f"Could you knock up a mandrel for {IN}",1),
    (f"Can you help me with a mandrel for {IN}",1),
    (f"Can you help us out with a mandrel for {IN}",1),
    (f"Can you fix me up with a mandrel for {IN}",1),
    (f"Could you make a mandrel for this? {IN}",1),
    (f"¿Nos podéis hacer un mandril? {MM}",1),
    (f"Mate wants {IN}. So one for that please.",1),
    (f"mandrel for {IN}. So that's one please.",1),
    (f"Tube {IN}. One for this please.",1),
    (f"Rohr {MM}. Also einen dafür bitte.",1),
    (f"tube {MM}. Donc un pour ça.",1),
    (f"tubo {MM}. Uno para eso, por favor.",1),
    (f"Per our print 0093-A rev 4 please quote (3) mandrels:\ntube {IN}",3),
    (f"Drawing 5512 rev. 2, quote (1) mandrel for {IN}",1),
    (f"Per rev 3 please quote (2) ball mandrels {IN}",2),
    (f"per issue 2 of drawing quote one mandrel {IN}",1),
    (f"Zeichnung 4711 Rev. 2, bitte 1 Dorn anbieten, {MM}",1),
    (f"plan 77 indice 3, merci de chiffrer 2 mandrins {MM}",2),
    (f"rev 4 mandrel {IN}, need 1",1),
]  # fmt: skip


@pytest.mark.parametrize(("text", "count"), WANTED)
def test_a_mandrel_wanted_in_whatever_words(text: str, count: int) -> None:
    assert [request.quantity for request in read_text(text)] == [count]


NOT_SAID = [
    f"My boss asked me whether we need a mandrel for {IN}",
    f"The old hand told me to try it without a mandrel. {IN}",
    f"Our bender broke. We need a new one. mandrels for {IN}?",
    f"Our mandrel die block cracked, the former too, and we want a new one. {IN}",
    f"We got a new one last month for {IN}",
    f"I was told you can bend {IN} with a mandrel",
    f"Wir haben einen neuen Dorn für {MM}, der passt",
    f"Je cintre avec un mandrin, tube {MM}",
    f"Is a mandrel any use for {IN}?",
    f"print rev 4: mandrel for {IN}",
    f"We already have one for that, {IN}",
    f"Can you make a mandrel for {IN}? Asking for 200 bends.",
]  # fmt: skip


@pytest.mark.parametrize("text", NOT_SAID)
def test_a_mandrel_that_is_only_spoken_of_is_no_count(text: str) -> None:
    assert {request.quantity for request in read_text(text)} <= {None}


ROWS = [
    ("1) OD 16 x 2.0 mm WT, bend radius 32 mm CLR - 2 nos\n2) OD 20 x 2.5 mm WT, bend radius 40 mm CLR - 2 nos\n3) OD 25 x 3.0 mm WT, bend radius 50 mm CLR - 1 no\n4) OD 30 x 3.0 mm WT, bend radius 75 mm CLR - 1 no",[2,2,1,1]),
    ("1.5 x .065, 4.5 CLR - 2 nos\n2 x .083, 6 CLR - 1 no.",[2,1]),
    ("1.5 x .065, 4.5 CLR: 2 nos.\n2 x .083, 6 CLR: 1 no.",[2,1]),
    ("38 x 1.5, R 57 - 3 Nos\n42.4 x 2, R 85 - 1 No",[3,1]),
    ("38 x 1.5, 57 CLR, 2 off\n42.4 x 2, 85 CLR, 1 off",[2,1]),
    ("38 x 1.5, CLR 57 (2 nos)\n42.4 x 2, CLR 85 (1 no)",[2,1]),
    ("38 x 1.5, 57 CLR = 2 pcs\n42.4 x 2, 85 CLR = 1 pc",[2,1]),
    ("38 x 1.5 mm R57 CLR -- 2 pcs\n42.4 x 2 mm R85 CLR -- 1 pc",[2,1]),
    ("38 x 1,5 mm, R 57 - 2 Stk\n42,4 x 2 mm, R 85 - 1 Stk",[2,1]),
    ("38 x 1,5 mm, rayon 57 - 2 pièces\n42,4 x 2 mm, rayon 85 - 1 pièce",[2,1]),
    ("1.5 x .065, 4.5 CLR x 2 nos\n2 x .083, 6 CLR x 1 no",[2,1]),
    ("1.5 x .065, 4.5 CLR - 2 nos",[2]),
    ("OD 38 x 1.5 mm WT, 57 mm CLR - 1 no",[1]),
    ("please quote 3 mandrels, 1 of each:\n 1/4 x .035 ... 9/16 CLR\n 3/8 x .035 ... 15/16 CLR\n 1/2 x .049 ... 1-1/2 CLR",[1,1,1]),
    ("please quote 3 mandrels, one of each:\n1 x .035, 2 CLR\n1.5 x .065, 4.5 CLR\n2 x .083, 6 CLR",[1,1,1]),
    ("please quote 3 mandrels, 1 of each:\n1 x .035, 2 CLR\n1.5 x .065, 4.5 CLR\n2 x .083, 6 CLR\nAlso 2 each of the matching nuts, no, forget the nuts, we have those.",[1,1,1]),
    ("Need 4 mandrels, 2 of each:\n1.5 x .065, 4.5 CLR\n2 x .083, 6 CLR",[2,2]),
    ("Need mandrels, two of each please: 1.5 x .065 on 4.5 CLR and 2 x .083 on 6 CLR. And 2 each of the wiper dies.",[2,2]),
    ("Need mandrels: 1.5 x .065 on 4.5 CLR and 2 x .083 on 6 CLR, one of each. Also 4 each of the collets.",[1,1]),
    ("Bitte 3 Dorne anbieten, je einen:\n25 x 1,5 mm R 50\n30 x 2 mm R 60\n35 x 2 mm R 70",[1,1,1]),
    ("Bitte 2 Dorne, je 1 Stück:\n25 x 1,5 mm R 50\n30 x 2 mm R 60",[1,1]),
    ("3 mandrins, un de chaque :\n25 x 1,5 mm R 50\n30 x 2 mm R 60\n35 x 2 mm R 70",[1,1,1]),
    ("3 mandriles, uno de cada:\n25 x 1,5 mm R 50\n30 x 2 mm R 60\n35 x 2 mm R 70",[1,1,1]),
    ("3 mandrini, uno per tipo:\n25 x 1,5 mm R 50\n30 x 2 mm R 60\n35 x 2 mm R 70",[1,1,1]),
    ("3 doorns, van elk één:\n25 x 1,5 mm R 50\n30 x 2 mm R 60\n35 x 2 mm R 70",[1,1,1]),
    ("quote 2 off each:\n1.5 x .065, 4.5 CLR\n2 x .083, 6 CLR\nand 4 nuts each",[2,2]),
]  # fmt: skip


@pytest.mark.parametrize(("text", "counts"), ROWS)
def test_counts_beside_their_sizes(text: str, counts: list[int]) -> None:
    assert [request.quantity for request in read_text(text)] == counts


HEADS = [
    "How many", "How many?", "Q'ty", "Count", "Tools", "To make", "Wie viele", "Wieviel", "Nombre",
    "Combien", "Cuántos", "Quanti", "Hoeveel", "Qty", "No. of mandrels", "Stück",
]  # fmt: skip


@pytest.mark.parametrize("head", HEADS)
def test_a_head_that_counts_in_a_table_either_way_round(head: str) -> None:
    across = f"Mandrels, x4\n\tA\tB\tC\nOD\t25.4\t31.75\t38.1\nWall\t1.65\t1.65\t2.1\nCLR\t76\t95\t114\n{head}\t1\t1\t2\n"
    down = f"Mandrels, x4\nOD\tWall\tCLR\t{head}\n25.4\t1.65\t76\t1\n31.75\t1.65\t95\t1\n38.1\t2.1\t114\t2\n"
    for text in (across, down):
        assert [request.quantity for request in read_text(text)] == [1, 1, 2]


OPEN: list[tuple[str, list[int]]] = [
    (f"Could you quote a mandrel for {IN}? We'd take two if there is a break at two, otherwise one.",[1,2]),
    (f"Mandrel {IN}. Price on 1 and on 3?",[1,3]),
    (f"Mandrel {IN}. Price for 1 and 5 please",[1,5]),
    (f"Mandrel {IN}. Please quote qty 1, 5 and 10.",[1,5,10]),
    (f"Please quote the mandrel price at qty 1/3/5, {IN}", [1, 3, 5]),
    (f"Mandrel {IN}. Qty: 2/5/10", [2, 5, 10]),
    (f"Dorn {IN}. Preis bei Menge 1/3/5 bitte", [1, 3, 5]),
    (f"Mandrel {IN}. Price for one or two, please.",[1,2]),
    (f"{IN}: three mandrels if the price is right, otherwise just one.",[1,3]),
    (f"If there's a price break we'd go for 4, else 2. {IN}",[2,4]),
    (f"one or two mandrels depending on price {IN}",[1,2]),
    (f"Dorn {MM}. Wir nehmen zwei, wenn es Mengenrabatt gibt, sonst einen.",[1,2]),
    (f"Dorn {MM}. Bitte Preis für 1 und 3 Stück.",[1,3]),
    (f"Dorn {MM}. Preis bei 1, 2 und 5 Stück?",[1,2,5]),
    (f"Doorn {MM}. Graag prijs en levertijd voor 1 stuk, en ook de prijs bij 3 stuks.",[1,3]),
    (f"Mandrin {MM}. Prix pour 1 et 3 pièces ?",[1,3]),
    (f"Mandrin {MM}. On en prendra deux si le prix est intéressant, sinon un.",[1,2]),
    (f"Mandril {MM}. Precio por 1 y por 3 piezas, por favor",[1,3]),
    (f"Mandril {MM}. Tomamos dos si hay descuento, si no uno.",[1,2]),
    (f"Mandrino {MM}. Prezzo per 1 e 5 pezzi.",[1,5]),
    (f"Mandrino {MM}. Ne prendiamo due se c'è uno sconto, altrimenti uno.",[1,2]),
    (f"quote 1 and 2 please. {IN}",[1,2]),
]  # fmt: skip


@pytest.mark.parametrize(("text", "counts"), OPEN)
def test_counts_that_a_price_decides_are_a_doubt(text: str, counts: list[int]) -> None:
    (request,) = read_text(text)
    doubt = request.doubt_on("quantity")
    assert request.quantity == counts[0]
    assert doubt is not None
    assert doubt.readings == tuple(map(str, counts))


SETTLED = [
    (f"Quote 1 mandrel and 2 wiper dies for {IN}",1),(f"Need 3 mandrels for {IN}, quote by 5 pm.",3),
    (f"please quote qty 2, 4 balls, {IN}",2),(f"quote 2 mandrels, 304, {IN}",2),(f"x1 mandrel {IN}, x2 if you do a deal",1),
    (f"Qty 2. Price for 2 please {IN}",2),(f"We need 1 mandrel. If 5 would be much cheaper per piece please tell also. {IN}",1),
    (f"quote 2 mandrels for {IN}, one now and one in May",2),
    (f"quote two mandrels {IN}, 6 weeks delivery is fine",2),
    (f"Price for 2 mandrels, {IN}. 1 and 2 are the machine numbers.",2),
    (f"quote one mandrel if you have time, otherwise call me. {IN}",1),
    (f"two mandrels if you can do it by May, otherwise one by June and one later {IN}",2),
    ("Quote 2 pcs, 1.5 x .065, 4.5 clr",2),("quote 1 mandrel, 1 and 3/4 x .095, 5.25 clr",1),("quote a mandrel, 1 or 1.5 D, 38 x 1.5 mm R 57",1),
    (f"Price for one and delivery of one to Ohio. {IN}",1),
    (f"Could you quote for 1 mandrel & 5 mandrels so we can see the break? We will order just one at first. {IN}", 1),
    (f"Please quote for line 3, two mandrels. {IN}", 2),
]  # fmt: skip


@pytest.mark.parametrize(("text", "count"), SETTLED)
def test_a_count_that_is_settled_is_no_doubt(text: str, count: int) -> None:
    (request,) = read_text(text)
    assert request.quantity == count
    assert request.doubt_on("quantity") is None
