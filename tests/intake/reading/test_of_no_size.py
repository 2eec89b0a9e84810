"""What is put off, owned or taken back and is none of the sizes read leaves them undoubted; what may
be one of them, or names one, doubts it."""

# ruff: noqa: E501 - a row of a table stands on one line

from __future__ import annotations

from decimal import Decimal

import pytest

from .support import doubted, read_text, written_down

_ASKED = {
    "IN": "Please quote mandrels for 1.75 x .120 on 5.5 CLR and 2.00 x .120 on 6.0 CLR, one each, mild steel. ",
    "DE": "Wir brauchen je einen Dorn für 38 x 1,5 mm, Radius 76, und 50 x 2 mm, Radius 100, beide 1.4301. ",
    "FR": "Il nous faut un mandrin pour tube 38 x 1,5 mm, rayon 76 et un pour tube 50 x 2 mm, rayon 100, inox 304. ",
    "ES": "Necesitamos un mandril para tubo 38 x 1,5 mm, radio 76 y otro para tubo 50 x 2 mm, radio 100, inox 304. ",
    "IT": "Ci serve un mandrino per tubo 38 x 1,5 mm, raggio 76 e uno per tubo 50 x 2 mm, raggio 100, inox 304. ",
    "NL": "Wij zoeken een doorn voor buis 38 x 1,5 mm, radius 76 en een voor buis 50 x 2 mm, radius 100, rvs 304. ",
}

OF_NO_SIZE = [
    ("IN", "If the 2 inch works out I'll probably come back for a 2-1/4 next year."),
    ("IN", "The 1/4 line I bend by hand."),
    ("IN", "The 1/4 line needs no mandrel."),
    ("IN", "Stacks are straight above 4 in. so nothing for those."),
    ("IN", "Please disregard my earlier message."),
    ("IN", "Ignore my last email please."),
    ("IN", "Please cancel my previous request, this one replaces it."),
    ("IN", "We have the machine already."),
    ("IN", "We already have the bender and a pump."),
    ("IN", "MANDREL LUBE we already have, don't quote it."),
    ("IN", "We already have mandrel lube."),
    ("IN", "We have mandrel rods already."),
    ("IN", "No need for a quick answer."),
    ("IN", "No need for a drawing, I guess."),
    ("IN", "Don't need it before Christmas."),
    ("IN", "We don't need them until March."),
    ("IN", "No need to call, email is fine."),
    ("IN", "Shipping can wait until the money is there."),
    ("IN", "We already have an account with you."),
    ("IN", "We already have your catalogue."),
    ("IN", "You sent us a price list last year."),
    ("IN", "You made us a good set of dies last year."),
    ("IN", "You did a great job on the last one."),
    ("IN", "Don't need the wiper dies."),
    ("IN", "We don't want the balls coated."),
    ("IN", "No need for a wiper."),
    ("IN", "We don't need any tooling drawings."),
    ("IN", "We will probably order the same again next year."),
    ("IN", "If it works I'd want a 2.5 next year."),
    ("IN", "The 2.5 we already have."),
    ("IN", "The 1.5 we already have, that's fine."),
    ("IN", "We already have one for the 1.5."),
    ("IN", "We got the 1.5 mandrel already."),
    ("IN", "I already own a 1.5 mandrel from you."),
    ("IN", "The 2.5 can wait."),
    ("IN", "Forget the 2.5, the customer cancelled it."),
    ("IN", "The 2.5 exhaust is straight so no mandrel needed for that."),
    ("IN", "My buddy said you are the people to ask."),
    ("IN", "My brother recommended you."),
    ("IN", "My dad used to buy from you."),
    ("IN", "Another vendor wants 8 weeks."),
    ("IN", "We had another supplier before but they closed."),
    ("IN", "Payment is settled by card."),
    ("IN", "The freight is taken care of."),
    ("IN", "Shipping is covered by our account."),
    ("IN", "Our last price for pos 010 was $285."),
    ("IN", "We did the 1-1/4 without a mandrel."),
    ("IN", "Don't bother with printed drawings."),
    ("IN", "Don't quote shipping, we pick up."),
    ("IN", "Do not quote freight."),
    ("IN", "The tube is already in the shop."),
    ("IN", "We have tube in the rack."),
    ("IN", "We have 200 ft of tube in the rack already."),
    ("IN", "I have tube in the shop."),
    ("IN", "You sold me a die in 2019."),
    ("IN", "They made the die in house."),
    ("IN", "For reference our PO is 44871."),
    ("IN", "For comparison we pay $300 now."),
    ("IN", "Not interested in used tooling."),
    ("IN", "Not interested in coatings."),
    ("IN", "Please leave out the shipping."),
    ("IN", "Please leave the VAT off."),
    ("IN", "Drop me a line if anything is unclear."),
    ("IN", "Drop ship is fine."),
    ("DE", "Die Maschine haben wir schon."),
    ("DE", "Die Biegeform ist schon da."),
    ("DE", "Den 60er haben wir schon."),
    ("DE", "Für das 25er haben wir schon einen Dorn."),
    ("DE", "Meine Mail von gestern bitte streichen."),
    ("DE", "Das Material ist schon da."),
    ("DE", "Faltenglätter haben wir schon."),
    ("DE", "Den Rohrbieger hat mein Nachbar empfohlen."),
    ("DE", "Ein anderer Lieferant braucht acht Wochen."),
    ("FR", "Le 60 nous l'avons déjà."),
    ("FR", "Pour le 25 on a déjà un mandrin."),
    ("FR", "Le 60 viendra l'an prochain."),
    ("FR", "Le tube de 20, on le cintre sans mandrin."),
    ("FR", "Merci d'annuler mon mail d'hier."),
    ("FR", "Nous avons déjà la matrice."),
    ("FR", "Nous avons déjà un compte chez vous."),
    ("FR", "Mon voisin m'a donné votre adresse."),
    ("ES", "El de 60 ya lo tenemos."),
    ("ES", "El de 60 lo pediremos el año que viene."),
    ("ES", "El tubo de 20 lo doblamos sin mandril."),
    ("ES", "La máquina ya la tenemos."),
    ("ES", "Ya tenemos la matriz."),
    ("ES", "Ya tenemos cuenta con ustedes."),
    ("ES", "Ignoren mi correo de ayer."),
    ("IT", "Il 60 lo compriamo già curvato."),
    ("IT", "Il 60 ce l'abbiamo già."),
    ("IT", "Il 60 lo prendiamo l'anno prossimo."),
    ("IT", "Il tubo da 20 lo pieghiamo senza mandrino."),
    ("IT", "La macchina ce l'abbiamo già."),
    ("IT", "Abbiamo già la matrice."),
    ("IT", "Non serve il raschiatore."),
    ("IT", "Non serve una risposta immediata."),
    ("NL", "De 60 hebben we al."),
    ("NL", "De 60 komt volgend jaar."),
    ("NL", "De buis van 20 buigen we zonder doorn."),
    ("NL", "De machine hebben we al."),
    ("NL", "De mal hebben we al."),
    ("NL", "Mijn mail van gisteren is niet meer nodig."),
    ("IN", "Without a mandrel it flattens."),
    ("IN", "We bend without a mandrel now and the tube wrinkles."),
    ("DE", "Ohne Dorn wird das Rohr oval."),
    ("FR", "Sans mandrin le tube s'aplatit."),
    ("ES", "Sin mandril el tubo se arruga."),
    ("IT", "Senza mandrino il tubo si schiaccia."),
]  # fmt: skip

MAY_BE_ONE = [
    ("IN", "We already have the small one."),
    ("IN", "Leave out the second one if it's over $500."),
    ("IN", "The bigger one can wait."),
    ("IN", "We don't need both any more, just the one for the hoop."),
    ("IN", "The hoop one we already have."),
    ("IN", "The 2 inch can wait."),
    ("IN", "We already have the 1.75."),
    ("IN", "One of them we already own."),
    ("IN", "No longer need the first."),
    ("IN", "Someone else is doing the other size."),
    ("IN", "Cancel one of these, I'll tell you which."),
    ("IN", "My friend has a mandrel for the bigger one already."),
    ("IN", "The thin one is for next year."),
    ("IN", "You made us the first one in May."),
    ("IN", "We already have a mandrel for the hoop."),
    ("IN", "Don't quote the main hoop."),
    ("IN", "Drop the one for the stays."),
    ("IN", "I already have a mandrel that fits the small tube."),
    ("IN", "Only one of those for now, the other is for next year."),
    ("IN", "You sent us one of them in 2024."),
    ("IN", "We have the mandrel for the 1.75 already."),
    ("IN", "The 1.75 bends fine without a mandrel."),
    ("IN", "We have 2 in the rack."),
    ("IN", "Disregard the second size from my email of yesterday."),
    ("IN", "The 1-3/4 is taken care of."),
    ("IN", "The 5.5 die already has a mandrel."),
    ("IN", "We no longer need the mandrel for the machine in hall 2."),
    ("DE", "Den kleineren haben wir schon."),
    ("DE", "Der 38er ist schon da."),
    ("DE", "Den 50er erst nächstes Jahr."),
    ("DE", "Einen davon haben wir schon."),
    ("DE", "Der mit Radius 100 entfällt."),
    ("DE", "Das zweite Rohr geht auch ohne Dorn."),
    ("DE", "Den für das Gestell bitte streichen."),
    ("FR", "Le plus petit, nous l'avons déjà."),
    ("FR", "Le 50 sera pour l'an prochain."),
    ("FR", "L'un des deux, on l'a déjà."),
    ("FR", "Celui du cadre on a déjà."),
    ("ES", "El pequeño ya lo tenemos."),
    ("ES", "El de 50 el año que viene."),
    ("ES", "Uno de los dos ya lo tenemos."),
    ("IT", "Il piccolo ce l'abbiamo già."),
    ("IT", "Quello da 50 l'anno prossimo."),
    ("IT", "Uno dei due l'abbiamo già."),
    ("NL", "De kleine hebben we al."),
    ("NL", "De 50 komt volgend jaar."),
    ("NL", "Een van de twee hebben we al."),
    ("IN", "For the 1.750 we already have one."),
    ("IN", "The tube for the second one is not used any more."),
    ("IN", "Please disregard the first line of my email."),
    ("IN", "Disregard my email of yesterday about the smaller tube."),
    ("IN", "The job for the bigger tube is cancelled."),
    ("IN", "We bend without a mandrel and have no wrinkles on the 2 inch."),
    ("IN", "Without a mandrel the smaller one does not wrinkle."),
    ("IN", "The small tube we bend without a mandrel, no wrinkles."),
    ("IN", "Disregard my email about the hoop."),
    ("IN", "Disregard my email from yesterday on the bigger tube."),
    ("IN", "We already have lube and the mandrel for the small one."),
    ("IN", "The machine for the small one is gone, so no need for it."),
    ("IN", "The 1-3/4 we already have from another shop."),
    ("IN", "The 44.45 we have already."),
    ("IN", "The 51 we have in the rack."),
    ("IN", "We already have the 50."),
    ("IN", "My buddy said he has the smaller one."),
    ("IN", "My buddy said I can have his mandrel for the hoop."),
    ("IN", "My brother told me you made him one, and I can borrow it for the frame."),
    ("IN", "My friend gave me the mandrel you made him."),
    ("IN", "Another shop is making the first."),
    ("IN", "Another vendor quoted the second at a better price, leave it out."),
    ("IN", "Don't need it before March, the second one."),
    ("IN", "Don't quote the larger, only freight."),
    ("IN", "We have tube in the shop for the smaller but no job for it any more."),
    ("IN", "The second batch of the smaller is for next year."),
    ("IN", "You sent us the wrong mandrel last year, so we still have the smaller one."),
    ("IN", "For reference only: the second size."),
    ("IN", "For reference, our PO 4471 has the first one already on order."),
    ("IN", "Our order for the hoop is with another vendor."),
    ("IN", "Ignore my message, the customer cancelled the bigger one."),
    ("IN", "The 2 in. comes next year."),
    ("IN", "The 2.0 is for next year."),
    ("IN", "The 5-1/2 radius we no longer need."),
    ("IN", "The other two we already have."),
    ("IN", "Skip the die and the mandrel for the bigger one."),
    ("DE", "Die Maschine für das kleinere Rohr haben wir schon verkauft, der Dorn entfällt."),
    ("DE", "Ohne Dorn geht der 38er auch, da wird nichts oval."),
    ("DE", "Der 5 cm Dorn kommt nächstes Jahr."),
    ("DE", "Meine Mail von gestern bitte streichen, es bleibt nur das kleinere Rohr."),
    ("FR", "Le tube de 2 pouces, on l'a déjà."),
    ("FR", "Annulez ma demande pour le plus gros."),
    ("FR", "Mon voisin m'a donné un mandrin pour le petit."),
    ("ES", "Ya tenemos la matriz y el mandril de la pequeña."),
    ("IT", "Non serve il mandrino grande."),
    ("IT", "La macchina per il tubo piccolo ce l'abbiamo già con l'anima."),
    ("NL", "De doorn voor de kleine buis hebben we al."),
    ("NL", "De 5 cm buis komt volgend jaar."),
    ("IN", "We got the small one in the shop already."),
]  # fmt: skip

_TABLE = "Quotation please, all 316:\n\n| item | tube | radius | pcs |\n|---|---|---|---|\n| A | 38 x 1.2 | 57 | 2 |\n| B | 51 x 1.2 | 76.5 | 2 |\n| C | 63.5 x 1.6 | 95 | 2 |\n\n"
_LIST = "Bitte um Angebot, alles 1.4301:\n\n1) 38 x 1,2, R 57\n2) 51 x 1,2, R 76,5\n3) 63,5 x 1,6, R 95\n\n"
LEFT_OUT = [
    (_TABLE, "Item C is on hold, please leave it out."),
    (_TABLE, "Item C is for later, don't quote it."),
    (_TABLE, "Item C is cancelled."),
    (_LIST, "Position 3 ist noch nicht freigegeben, bitte weglassen."),
    (_LIST, "Pos. 3 entfällt."),
    (_LIST, "Position 3 ist zurückgestellt, bitte nicht anbieten."),
]  # fmt: skip
NOT_LEFT_OUT = [
    "Item C is on hold, please quote it all the same.",
    "Item C is on hold, please leave it out of the delivery but quote it.",
    "Item C is for later, but please price it now.",
    "Please leave item C out of the first shipment.",
]

PLAIN = [
    ("a 1.5 inch die off an auction, its stamped 1.50 / 4.50. Tube would be .095 dom. want 1 mandrel", "38.1 2.413 114.3"),
    ("need one mandrel. got a die stamped 1.75 / 5.25, tube is 1.75 x .120 dom", "44.45 3.048 133.35"),
    ("Got a pile of 1-1/4 pipe, measures 1.66 outside, wall mics at .140 so it's sched 40. Die is 5 inch center line. Quote one mandrel, 304.", "42.164 3.556 127"),
    ("tube 2 in OD, wall mics .083, 4 inch CLR. Quote one mandrel, 304.", "50.8 2.1082 101.6"),
    ("Me hace falta un mandril de 2 pulgadas y media, chapa 1.5 mm, inox 304. El radio es de 95 mm a la línea central.", "63.5 1.5 95"),
    ('Pieghiamo tubo da 1" schedula 40 in TP304L, raggio di curvatura 3 volte il diametro nominale, cioè 76,2 mm sull\'asse. Un mandrino, per favore.', "33.401 3.3782 76.2"),
    ('7/8" chromoly, 18 gauge, tightest bend 2-1/4" centre line radius, and 3" for the sweeps. Quote mandrels.', "22.225 1.2446 57.15"),
    ("1.5 x .065 tube, smallest radius 3 in and 4.5 in for the rear. mandrels for both please, 304", "38.1 1.651 76.2"),
]  # fmt: skip
UNCLEAR = [
    ("got a 1.75 inch die stamped 1.75 / 4.72, tube is .120 dom. need one mandrel", "clr"),
    ("got a die stamped 1.75 / 5.25, wall is .120 dom. need one mandrel", "clr"),
    ("Necesito un mandril de 50 mm, chapa 1,5 mm, radio 100 al eje, inox.", "od"),
    ("Hola, un mandril de 2 pulgadas para tubo. Soldamos también chapa de 3 mm. Radio 100 mm al eje.", "wall"),
    ('2" sch 40 pipe, bends are 3D, 5 inch CLR. One mandrel please, 304.', "clr"),
    ("1.5 x .065 tube, tightest radius we can do is 3 in CLR. mandrel please, 304", "clr"),
    ("1.5 x .065 tube, tightest bend 3 in CLR, and 4 legs per frame. mandrel please, 304", "clr"),
    ("1.5 x .065 tube, 3 in clr would be the tightest, and 4 in is fine for the job. mandrel please, 304", "clr"),
]  # fmt: skip


@pytest.mark.parametrize(("language", "words"), OF_NO_SIZE)
def test_what_is_none_of_the_sizes_doubts_none(language: str, words: str) -> None:
    requests = read_text(_ASKED[language] + words)
    assert len(requests) == 2, written_down(requests)
    assert not any(request.doubts for request in requests), written_down(requests)


@pytest.mark.parametrize(("language", "words"), MAY_BE_ONE)
def test_what_may_be_one_of_them_is_doubted_or_left_out(language: str, words: str) -> None:
    requests = read_text(_ASKED[language] + words)
    assert len(requests) != 2 or any(doubted(request) for request in requests)


@pytest.mark.parametrize(("sizes", "words"), LEFT_OUT)
def test_a_line_put_off_is_left_out(sizes: str, words: str) -> None:
    requests = read_text(sizes + words)
    assert [request.od_mm for request in requests] == [Decimal(38), Decimal(51)]
    assert not any(request.doubts for request in requests), written_down(requests)


@pytest.mark.parametrize("words", NOT_LEFT_OUT)
def test_a_line_that_is_asked_for_all_the_same_stays(words: str) -> None:
    assert len(read_text(_TABLE + words)) == 3


@pytest.mark.parametrize(("text", "size"), PLAIN)
def test_what_is_plain_is_not_doubted(text: str, size: str) -> None:
    request = read_text(text)[0]
    assert [request.od_mm, request.wall_mm, request.clr_mm] == [*map(Decimal, size.split())]
    assert not doubted(request), written_down([request])


@pytest.mark.parametrize(("text", "field"), UNCLEAR)
def test_what_is_not_stays_doubted(text: str, field: str) -> None:
    assert field in doubted(read_text(text)[0])
