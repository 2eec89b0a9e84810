"""A bending machine looked for, an order cancelled, a request taken back, tube offered to us, mail
that came to the wrong person: a size is named and no mandrel asked for; and near misses that are
requests."""

# ruff: noqa: E501 - a row of a table stands on one line

from __future__ import annotations

from datetime import date

import pytest

from bendreply.intake.pasted import text_message
from bendreply.intake.pipeline import understand

NO_REQUEST = [
    "Do you guys sell the complete benders too? I'm after a floor model that'll take 2x2x.120 square and up to 2\" pipe. If not no worries, figured I'd ask.",
    "Do you sell bending machines? Looking for one that can do 2 inch x .120 wall tube on a 6 inch radius.",
    "Hi, we are in the market for a used hydraulic bender that handles 50 x 3 mm, R 150. Do you have one?",
    "Do you sell mandrel benders? One that can do 2 inch x .120 on 6 CLR.",
    "Verkauft ihr auch Biegemaschinen? Ich suche eine, die 42,4 x 2 mm mit Radius 100 schafft.",
    "Vendez-vous aussi des cintreuses ? Je cherche une machine capable de cintrer du 42,4 x 2 en rayon 100.",
    "¿Venden también dobladoras? Busco una máquina que pueda con tubo de 50 x 2 mm, radio 150.",
    "Vendete anche curvatubi? Cerco una macchina che pieghi tubo 50 x 2, raggio 150.",
    "Verkopen jullie ook buigmachines? Ik zoek er een die 50 x 2 mm met radius 150 aankan.",
    "the customer has pulled the job, so please cancel our order 4471 (two mandrels, 50.8 x 1.6, R 152). Let me know about any cost so far.",
    "Bitte stornieren Sie unseren Auftrag 4471 (2 Dorne 50,8 x 1,6, R 152). Welche Kosten sind schon entstanden?",
    "Merci d'annuler notre commande 4471 (deux mandrins 50,8 x 1,6, R 152). Quels frais à ce jour ?",
    "Por favor, cancelen nuestro pedido 4471 (dos mandriles 50,8 x 1,6, R 152).",
    "Vi prego di annullare il nostro ordine 4471 (due mandrini 50,8 x 1,6, R 152).",
    "Graag onze bestelling 4471 annuleren (twee doornen 50,8 x 1,6, R 152).",
    'I think this is meant for someone else - I keep getting your delivery notes for a Mr Kettering, the last one said "1 off mandrel 50 x 1.5 R75". I don\'t own a mandrel!',
    "Wrong address - I received your quote for a mandrel 50 x 1.5, R 75 but I never asked for one. Please correct your list.",
    "Falscher Empfänger: Ich habe Ihr Angebot über einen Dorn 50 x 1,5 R 75 bekommen, bin aber nicht Herr Maier. Bitte löschen.",
    "Je pense que ce message ne m'était pas destiné : vous m'avez envoyé un devis pour un mandrin 50 x 1,5, R 75.",
    "Creo que este correo no era para mí: he recibido su oferta de un mandril 50 x 1,5 R 75.",
    "Credo abbiate sbagliato indirizzo: ho ricevuto la vostra offerta per un mandrino 50 x 1,5 R 75.",
    "Volgens mij is dit niet voor mij bestemd: ik kreeg jullie pakbon voor een doorn 50 x 1,5 R 75.",
    "Hi, do you regrind mandrels, and roughly what would it cost compared to a new one? Ours is about two years old and picking up badly.",
    "Schleifen Sie Dorne nach, und was würde das ungefähr kosten im Vergleich zu einem neuen?",
    "Rectifiez-vous les mandrins, et combien cela coûterait par rapport à un neuf ?",
    "Please disregard our RFQ of Monday (1.5 x .065 x 3 CLR, qty 4). The program was cancelled. No quote\nneeded, sorry for the trouble.",
    "Kindly ignore our inquiry from yesterday for 2 mandrels 30 x 2 R 60. No longer needed.",
    "Merci de ne pas tenir compte de notre demande de lundi (38 x 2, R 76, 4 pièces). Le projet est annulé.",
    "Por favor ignoren nuestra solicitud del lunes (38 x 2, R 76, 4 piezas). El proyecto se canceló.",
    "Vi prego di ignorare la nostra richiesta di lunedì (38 x 2, R 76, 4 pezzi). Il progetto è annullato.",
    "Gelieve onze aanvraag van maandag (38 x 2, R 76, 4 stuks) als niet verzonden te beschouwen. Project geannuleerd.",
    "I saw your stand in spring. We are precision tube mill and can offer from stock: 20 x 1,5 / 25 x 2 / 30 x 2 E235, minimum 500 kg, 1,18 €/kg. May I call you?",
    "Nous sommes producteur de tubes et pouvons vous proposer sur stock : 20 x 1,5 / 25 x 2 / 30 x 2 E235, 1,18 €/kg.",
    "Siamo produttori di tubi di precisione e possiamo offrire da magazzino: 20 x 1,5 / 25 x 2 / 30 x 2 E235, 1,18 €/kg.",
]
REQUESTS = [
    "Please disregard our RFQ of Monday and quote this instead: 1.5 x .065 x 3 CLR, qty 4.",
    "Please ignore my RFQ of Monday, wall was wrong. It is 1.5 x .083 on 4.5 CLR, one mandrel.",
    "We are a tube mill and need a mandrel 38 x 2, R 76 for our own bender. Price?",
    "We ask offer for one mandrel for duplex pipe 1.4462, 88,9 x 4,0, CLR 267 mm.",
    "Veuillez nous adresser votre offre pour : mandrin pour tube 21,3 x 2,0, R axe 50. Délai : outillage livré au 13/11/2026.",
    "Chiedo offerta per mandrino 30 x 2, R 60, consegnato entro il 13/11.",
    "Offerte graag voor doorn 30 x 2, R 60, geleverd voor 13/11.",
    'We just bought a bender that takes up to 2 inch. I need a mandrel for 1.75 x .120, 6" CLR.',
    'Do you sell benders too? Anyway, I need a mandrel for 1.75 x .120, 6" CLR.',
    "We're looking for a die set for a used bender we bought: 2 x .120, 6\" CLR.",
    'Looking for a plug for our bender: 2 x .120, 6" CLR',
    'I\'m looking for a bender mandrel 2" x .120 6" clr',
    "Suche einen Dorn für meine Biegemaschine, 42,4 x 2, R 100",
    "Please cancel order 4471 and quote instead one mandrel for 60.3 x 2, R 180.",
    "Please don't cancel order 4471. We also need one mandrel for 60.3 x 2, R 180.",
    "Our customer cancelled his order so now I want a mandrel 38 x 1.5 R 76 for the other job",
    "Sorry if this is the wrong address, but I need a mandrel 50 x 1.5 R75.",
    "Not sure I have the right person. Quote for 1 mandrel 50 x 1.5, R 75 please.",
    "Sorry, you sent the last quote to the wrong email, this is the right one. 1 mandrel, 38 x 1.5, R 76.",
    "Do you regrind mandrels? And please quote a new one for 1.5 x .065, 4.5 CLR.",
    "Can you repair our mandrel for 1.5 x .065? If not quote a new one, 4.5 CLR.",
]


@pytest.mark.parametrize("text", NO_REQUEST)
def test_it_names_a_size_or_a_price_and_asks_for_no_mandrel(text: str) -> None:
    understood = understand(text_message(text, today=date(2026, 11, 26)))
    assert understood.kind.value in ("other", "question"), understood.why_kind
    assert not understood.requests


@pytest.mark.parametrize("text", REQUESTS)
def test_a_mandrel_is_asked_for_all_the_same(text: str) -> None:
    understood = understand(text_message(text, today=date(2026, 11, 26)))
    assert understood.kind.value == "sizes", understood.why_kind
    assert understood.requests


@pytest.mark.parametrize(
    "text",
    [
        "Run me a repeat of what you made on my order 5512, only two of them this time. Here by June 19 ok?",
        "Please make me another one like on my order 5512. You have the drawing.",
        "I'd like a repeat of order 5512, qty 2.",
        "Wir bestellen nach: wie Auftrag 5512, zwei Stück, bitte bis 19. Juni.",
        "Même chose que sur ma commande 5512, deux pièces svp.",
        "Lo mismo que en mi pedido 5512, dos piezas por favor.",
        "Stesso mandrino del mio ordine 5512, due pezzi.",
        "Graag nog eens hetzelfde als op mijn order 5512, twee stuks.",
    ],
)
def test_an_order_that_is_wanted_again_asks(text: str) -> None:
    assert understand(text_message(text, today=date(2026, 11, 26))).kind.value == "sizes"


def test_an_order_that_is_late_does_not() -> None:
    text = "Where is my order 5512? Same as last time you are late."
    assert understand(text_message(text, today=date(2026, 11, 26))).kind.value == "other"
