"""The day of delivery: what governs a date, how it is written, and from when it counts."""

from __future__ import annotations

from datetime import date

import pytest

from bendreply.intake.model import Address, Message, OwnText
from bendreply.intake.reading import read
from bendreply.intake.reading.days.dates import find_needed_by

from ..pace import assert_quick

SENT = date(2026, 11, 4)
"""A Wednesday in ISO week 45."""


def needed(text: str, *, american: bool = True) -> date | None:
    return find_needed_by(text, SENT, american=american).day


WRITTEN = [
    ("We need these by end of March.", date(2027, 3, 31)),
    ("needed wk 49", date(2026, 12, 4)),
    ("Liefertermin KW 2", date(2027, 1, 15)),  # Friday of ISO week 2 of 2027
    ("Lieferung KW 49, spätestens 02.12.2026", date(2026, 12, 2)),
    ("Bedarf: KW 49, also 03.12.2026", date(2026, 12, 3)),
    ("Delivery within 6 weeks i.e. on 22.12.2026", date(2026, 12, 22)),
    ("Need by 12/11.", date(2026, 12, 11)),
    ("Due : '26.11.30", date(2026, 11, 30)),
    ("Arrival date 2026/12/10 at our factory", date(2026, 12, 10)),
    ("delivery reqd by 4-Dec-26", date(2026, 12, 4)),
    ("Need date 09 DEC 2026", date(2026, 12, 9)),
    ("I want it before seeding - call it the first of May.", date(2027, 5, 1)),
    ("Need her here Monday the 16th.", date(2026, 11, 16)),
    ("need it by cinco de mayo ha ha no seriously 5/5", date(2027, 5, 5)),
    ("Need them before Christmas.", date(2026, 12, 24)),
    ("We'd like delivery the week of December 7", date(2026, 12, 11)),  # that week's Friday
    ("brauchen wir bis zum 15.", date(2026, 11, 15)),
    ("Zum Abholen am Freitag, 20. November.", date(2026, 11, 20)),
    ("Lieferung innerhalb von 3 Wochen", date(2026, 11, 25)),
    ("à livrer avant fin novembre", date(2026, 11, 30)),
    ("délai : semaine 50", date(2026, 12, 11)),
    ("lo necesitamos para el 15 de diciembre", date(2026, 12, 15)),
    ("fecha de entrega: finales de noviembre", date(2026, 11, 30)),
    ("ci servono per il 15 dicembre", date(2026, 12, 15)),
    ("consegna entro fine novembre", date(2026, 11, 30)),
    ("Moet er uiterlijk vrijdag 18 december zijn", date(2026, 12, 18)),
    ("termin dostawy do 15 grudnia", date(2026, 12, 15)),
]  # fmt: skip


@pytest.mark.parametrize(("text", "day"), WRITTEN)
def test_a_day_of_delivery_in_many_spellings(text: str, day: date) -> None:
    assert needed(text) == day


GOVERNED = [
    ("Quote needed by Nov 10.", None),
    ("Your bid should reach us by Nov 10.", None),
    ("Angebot benötigt bis 12.11.2026", None),
    ("RFQ 26-1187 / tooling / due 11/10", None),
    ("RFQ due 11/10; delivery due 12/04/2026", date(2026, 12, 4)),
    ("We will order by Nov 20, need delivery by Dec 18", date(2026, 12, 18)),
    ("Our parts are due Dec 18", None),
    ("Job starts Dec 7. Need it by Dec 4.", date(2026, 12, 4)),
    ("Delivery should be 4 December", date(2026, 12, 4)),
    ("the vessel leaves 10 December so we should have it here 26 November", date(2026, 11, 26)),
    ("docking window is November 19 thru 23, so November 19 is your date", date(2026, 11, 19)),
    ("last one was delivered in 3 weeks", None),
    ("Back in the office on Nov 16", None),
    ("invoice dated 12/02/2026", None),
    ("Need it by Dec 4, sorry, Dec 11", date(2026, 12, 11)),
    (
        "Delivery by 11 December as we close for a week, no sorry, make that 4 December",
        date(2026, 12, 4),
    ),
    ("Needed by Dec 11 since we ship then, wait, make it Dec 4", date(2026, 12, 4)),
    ("Delivery by Christmas, let's say 18 December", date(2026, 12, 18)),
    ("Lieferung bis Weihnachten, sagen wir 18.12.2026", date(2026, 12, 18)),
    ("Livraison avant Noël, disons le 18 décembre", date(2026, 12, 18)),
    ("deliver 3/4 x .049 tube mandrel", None),
    ("need 2 on 1/8 wall", None),
    ("delivery by Nov 31", None),
    ("needed early December", None),
]


@pytest.mark.parametrize(("text", "day"), GOVERNED)
def test_the_words_before_a_date_say_what_it_is_for(text: str, day: date | None) -> None:
    assert needed(text) == day


# Mail of the same day from outside America, day and month as ISO date.
PLAIN_AND_ODD: list[tuple[str, str | None]] = [
    ("Angebotsabgabe bis 21.11.2026.", None),
    ("Abgabetermin 21.11.2026", None),
    ("Angebotsschluss: 21.11.2026", None),
    ("Bitte Angebot bis 20.11.", None),
    ("Bitte um Ihr Angebot bis spätestens 20.11.2026", None),
    ("Reply by: November 20, 2026", None),
    ("Please respond no later than Nov 20", None),
    ("Bids close November 20", None),
    ("Quotation until 20.11.2026.", None),
    ("Quotes due back 11/20/2026", None),
    ("Réponse souhaitée avant le 20/11/2026", None),
    ("Merci de nous remettre votre offre pour le 20 novembre", None),
    ("Date limite de remise des offres : 20/11/2026", None),
    ("Plazo de presentación de ofertas: 20/11/2026", None),
    ("Rogamos su oferta antes del 20 de noviembre", None),
    ("Scadenza presentazione offerta 20/11/2026", None),
    ("Attendiamo offerta entro il 20 novembre", None),
    ("Graag uw offerte voor 20 november", None),
    ("Offerte uiterlijk 20-11-2026 ontvangen", None),
    ("Termin składania ofert: 20.11.2026", None),
    ("RFQ closing date 20 Nov 2026. Delivery wanted 18 Dec 2026.", "2026-12-18"),
    ("Angebotsabgabe bis 21.11.2026, Liefertermin 15.12.2026", "2026-12-15"),
    ("Offre avant le 20/11/2026, livraison le 15/12/2026", "2026-12-15"),
    ("Vessel ETA Rotterdam 12/11, spare can be delivered to us until 25 November.", "2026-11-25"),
    ("Delivered until 25 November please", "2026-11-25"),
    ("can be delivered to our office until 25 November", "2026-11-25"),
    ("We need it in our house at 21 December 2026.", "2026-12-21"),
    ("Should be in our factory on 21 December", "2026-12-21"),
    ("We need the mandrel in house at 21.12.2026", "2026-12-21"),
    ("we must have the tool at us on 21 december", "2026-12-21"),
    ("to be with us latest 21.12.", "2026-12-21"),
    ("it would have to be here by the thirtieth of November.", "2026-11-30"),
    ("need it by the twenty-first of December", "2026-12-21"),
    ("need it by December the twenty first", "2026-12-21"),
    ("please deliver before the second of December", "2026-12-02"),
    ("here by November thirtieth", "2026-11-30"),
    ("Lieferung bis zum zwanzigsten November", "2026-11-20"),
    ("bis ersten Dezember brauchen wir ihn", "2026-12-01"),
    ("livraison avant le premier décembre", "2026-12-01"),
    ("livraison pour le quinze décembre", "2026-12-15"),
    ("lo necesitamos para el quince de diciembre", "2026-12-15"),
    ("ci serve per il quindici dicembre", "2026-12-15"),
    ("levering voor vijftien december", "2026-12-15"),
    ("I can measure tomorrow if you need it", None),
    ("cash on pickup sat", None),
    ("can pay when I pick up saturday", "2026-11-07"),
    ("I'll call tomorrow", None),
    ("I need to measure it tomorrow", None),
    ("We are open saturday", None),
    ("need to know by tomorrow", None),
    ("Ich kann morgen nachmessen", None),
    ("I will have the wall on Friday", None),
    ("Our bender arrives Friday", None),
    ("the tube is being delivered Friday", None),
    ("die comes in on 12/01, mandrel to match", None),
    ("The machine will be delivered 15 December. Please quote mandrel.", None),
    ("need it Saturday", "2026-11-07"),
    ("can I pick it up Friday the 20th?", "2026-11-20"),
    ("need it tomorrow if you can", "2026-11-05"),
    ("we need 26 rails. By Nov 20 at the site.", None),
    ("Rails are due on site December 18. Please price one mandrel.", None),
    ("My customer wants the frames by Dec 18, so I need the mandrel by Dec 1", "2026-12-01"),
    ("The handrail must be installed by 18 December", None),
    ("We have to ship the chairs on December 18", None),
    ("parts to be delivered to our customer 18.12.2026", None),
    ("Die Geländer müssen am 18.12. geliefert werden", None),
    ("Unser Kunde braucht die Teile am 18.12.2026", None),
    ("nous devons livrer les pièces le 18 décembre", None),
    ("tenemos que entregar las piezas el 18 de diciembre", None),
    ("dobbiamo consegnare i telai il 18 dicembre", None),
    ("wij moeten de frames op 18 december leveren", None),
    ("wij moeten de rekken uiterlijk 18 december afleveren bij de klant", None),
    ("Wir müssen die Geländer bis 18. Dezember liefern.", None),
    ("Sie müssten ihn bis 18. Dezember liefern.", "2026-12-18"),
    ("We need it for the frame by December 18.", "2026-12-18"),
    ("Need it the week after Thanksgiving", None),
    ("ASAP, by 11/20 at the latest", "2026-11-20"),
    ("Lieferung bis KW 50", "2026-12-11"),
    ("brauchen wir bis Mitte Dezember", "2026-12-15"),
    ("wanted 20/11", "2026-11-20"),
    ("Lieferzeit: bis 18.12.26", "2026-12-18"),
    ("livraison impérative le 18/12/2026", "2026-12-18"),
    ("necesario antes del 18/12/2026", "2026-12-18"),
    ("consegna richiesta: 18.12.2026", "2026-12-18"),
    ("leverdatum 18-12-2026", "2026-12-18"),
    ("Levering gewenst 13-12-2026", "2026-12-13"),
    ("potrzebne do 18 grudnia", "2026-12-18"),
    ("behöver den senast 18 december", "2026-12-18"),
    ("required on dock: December 20, 2026", "2026-12-20"),
    ("in hand by 18 December", "2026-12-18"),
    ("will collect on 18 December", "2026-12-18"),
    ("need by first week of December", None),
    ("needed before the end of the month", "2026-11-30"),
    ("before the holidays", None),
    ("by Dec 18 the latest", "2026-12-18"),
    ("Please deliver the mandrel for our handrail job by December 18", "2026-12-18"),
    ("We need a tube mandrel by December 18", "2026-12-18"),
    ("We are building a trailer, need it here by Dec 18", "2026-12-18"),
    ("Need mandrel for 2 in tube delivered by Dec 18", "2026-12-18"),
    ("The truck goes to paint Dec 20 so I need the mandrel by Dec 11", "2026-12-11"),
    ("mandrel for exhaust pipe, delivery Dec 18", "2026-12-18"),
    ("for the boat rails we need delivery by 18 December", "2026-12-18"),
    ("Material is in stock. Delivery by 18 December please.", "2026-12-18"),
    ("Delivery of tooling to our machine shop by 18 December", "2026-12-18"),
    ("need this for a customer by Dec 18", "2026-12-18"),
    ("customer needs it by Dec 18", "2026-12-18"),
    ("Kunde braucht den Dorn bis 18.12.", "2026-12-18"),
    ("Wir brauchen den Dorn für die Maschine bis 18.12.2026", "2026-12-18"),
    ("Rohr 38 x 1,5, Liefertermin 18.12.2026", "2026-12-18"),
    ("Dorn für Rohr 38 x 1,5. Lieferung bis 18.12.2026", "2026-12-18"),
    ("Für Rohre 38 x 1,5 benötigen wir bis 18.12.2026 einen Dorn", "2026-12-18"),
    ("mandrin pour tube 38 x 1,5 à livrer avant le 18/12/2026", "2026-12-18"),
    ("mandril para tubo de 38 x 1,5, entrega antes del 18/12/2026", "2026-12-18"),
    ("Tubo 38 x 1,5: entrega 18/12/2026", "2026-12-18"),
    ("mandrino per tubo 38 x 1,5 consegna entro il 18/12/2026", "2026-12-18"),
    ("doorn voor buis 38 x 1,5, levering voor 18-12-2026", "2026-12-18"),
    ("Can you ship by December 18?", "2026-12-18"),
    ("Could you ship one for 1.5 tube by December 18?", "2026-12-18"),
    ("I need one for 1.5 tube by December 18", "2026-12-18"),
    ("I need this die and mandrel by December 18", "2026-12-18"),
    ("Please ship to our plant in Ohio by December 18", "2026-12-18"),
    ("must arrive in Hamburg by December 18", "2026-12-18"),
    ("has to be on the boat by December 18", "2026-12-18"),
    ("We want to start the frames on Jan 7, so delivery by Dec 18", "2026-12-18"),
    ("Delivery: Dec 18. Parts start in January.", "2026-12-18"),
    ("Target date at our dock is the 18th of December", "2026-12-18"),
    ("If possible before Christmas", "2026-12-24"),
    ("we need it within three weeks", "2026-11-25"),
    ("Lieferung spätestens am einundzwanzigsten Dezember", "2026-12-21"),
    ("needed on the second of December", "2026-12-02"),
    ("avant le vingt et un décembre, livraison chez nous", "2026-12-21"),
    ("entrega el veintiuno de diciembre", "2026-12-21"),
    ("consegna entro il ventuno dicembre", "2026-12-21"),
    ("levering op eenentwintig december", "2026-12-21"),
    ("need a second mandrel in december", None),
    ("a second one may be needed", None),
    ("the two may differ, delivery later", None),
    ("I need it, and the first of the two frames starts Dec 7", None),
    ("vielen Dank, der Kunde hat am 18.12. Abnahme. Dorn bitte bis 1.12.", "2026-12-01"),
    ("the rails ship Dec 18, can you get me the mandrel by Dec 1?", "2026-12-01"),
    ("My tubes arrive on Nov 20. Mandrel can come the same week.", None),
    ("Please confirm you can make 18 December", None),
    ("our trade show is December 18", None),
    ("we pick up ourselves on 18 December", "2026-12-18"),
    ("Abholung durch uns am 18.12.", "2026-12-18"),
    ("wir holen am 18.12. ab", "2026-12-18"),
    ("Nous viendrons le chercher le 18/12/2026", "2026-12-18"),
    ("lo recogemos el 18/12/2026", "2026-12-18"),
    ("passiamo a ritirarlo il 18/12/2026", "2026-12-18"),
    ("we halen hem op 18-12-2026 op", "2026-12-18"),
    ("delivery due December 18", "2026-12-18"),
    ("deliver once December comes", None),
    ("consegna il due dicembre", "2026-12-02"),
]  # fmt: skip


@pytest.mark.parametrize(("text", "day"), PLAIN_AND_ODD)
def test_the_day_of_the_mandrel_and_no_other(text: str, day: str | None) -> None:
    found = needed(text, american=False)
    assert (found.isoformat() if found else None) == day


@pytest.mark.parametrize(
    ("text", "days"),
    [
        # SENT is a Wednesday; Christmas is the 24th or the 25th, and so the day is asked about
        ("Need it two days before December 10.", ["2026-12-08"]),
        ("Needed a week before November 20", ["2026-11-13"]),
        ("Ci serve due giorni prima del 10 dicembre.", ["2026-12-08"]),
        ("Needed two weeks from Monday.", ["2026-11-23"]),  # Monday is the 9th
        ("Need it a week on Friday", ["2026-11-13"]),  # Friday is the 6th
        ("Need it by Friday week.", ["2026-11-13"]),
        ("Il nous le faut lundi en quinze.", ["2026-11-16"]),
        ("needed within 10 days from November 16", ["2026-11-26"]),
        ("Need it three weeks after Thanksgiving", ["2026-12-17"]),  # that is November 26
        ("Need it the day before Christmas Eve.", ["2026-12-23"]),
        ("Wird zwei Wochen vor Weihnachten gebraucht.", ["2026-12-11", "2026-12-10"]),
        ("Lo necesitamos una semana antes de Navidad.", ["2026-12-18", "2026-12-17"]),
        ("We hebben hem twee weken voor kerst nodig.", ["2026-12-11", "2026-12-10"]),
        ("Wir brauchen ihn Freitag in einer Woche.", ["2026-11-13", "2026-11-06"]),
        ("Need it the week before Christmas.", []),  # a week is no day
        ("Needed by Friday. The week after December 1 we are closed.", ["2026-11-06"]),
    ],
)
def test_a_day_counted_from_another(text: str, days: list[str]) -> None:
    found = find_needed_by(text, SENT, american=True)
    stated = [found.day.isoformat()] if found.day else []
    assert (list(found.doubt.readings) if found.doubt else stated) == days


def test_other_dates_in_the_mail_show_the_senders_order() -> None:
    found = find_needed_by("Quote due 13/11/2026. Delivery 5/12/2026", SENT, american=True)
    assert found.day == date(2026, 12, 5)
    assert found.doubt is None


def test_writers_of_other_languages_put_the_day_first_wherever_they_are() -> None:
    text = "Necesitamos la entrega antes del 5/12/2026 para el taller"
    assert needed(text, american=True) == date(2026, 12, 5)


def test_a_date_that_would_be_past_is_read_the_other_way_round() -> None:
    found = find_needed_by("Needed by 3/12/2026", SENT, american=True)  # March 12 is past
    assert found.day == date(2026, 12, 3)
    assert found.doubt is not None


def test_a_day_of_the_week_that_does_not_fit_is_doubted() -> None:
    found = find_needed_by("Delivery by Friday 5 December", SENT, american=True)
    assert found.doubt is not None
    assert found.doubt.readings == ("2026-12-05", "2026-12-04")  # the 5th is a Saturday


@pytest.mark.parametrize("sent_on", [date(1, 1, 1), date(9999, 12, 31)])
def test_a_clock_that_is_wrong_by_centuries_counts_for_nothing(sent_on: date) -> None:
    assert find_needed_by("need it in 3 weeks, by Friday", sent_on, american=True).day is None


def _days(text: str) -> list[date | None]:
    message = Message(
        message_id="x@example.com", sender=Address(name="", address=""), body=text, sent_on=SENT
    )
    own = OwnText(text=message.text, body_start=message.body_start, subject_counts=True)
    return [request.needed_by for request in read(own, message).requests]


ROWS = [
    "OD\tWall\tCLR\tDelivery\n1.5\t.065\t4.5\t2026-12-04\n2\t.083\t6\t2026-12-18",
    "item;OD [in];wall [in];CLR [in];dock\n1;1.5;.065;4.5;2026-12-04\n2;2;.083;6;2026-12-18",
    "need by:\n1.5 x .065 x 4.5 clr, 12/4/2026\n2 x .083 x 6 clr, 12/18/2026",
]


@pytest.mark.parametrize("text", ROWS)
def test_every_row_may_have_its_own_day(text: str) -> None:
    assert _days(text) == [date(2026, 12, 4), date(2026, 12, 18)]


OTHERS_COME = [
    "Stools ship Dec 18.",
    "The bender has been bought, arriving in week 47.",
    "We paint in house; the paint arrives on November 12.",
    "When could you deliver? Snow comes to us about November 20.",
    "Schnee kommt bei uns meistens um den 20. November.",
    "La neige arrive chez nous vers le 20 novembre.",
    "La tôle arrive le 12 novembre.",
    "La chapa llega el 12 de noviembre.",
    "La lamiera arriva il 12 novembre.",
    "De sneeuw komt bij ons rond 20 november.",
]
OURS_COMES = [
    "It should ship by Nov 20.",
    "Please ship Nov 20.",
    "Could it ship on November 20?",
    "The mandrel has to arrive by November 20.",
    "One mandrel, arriving by November 20, please.",
    "Stools ship Dec 18 so I want the mandrel in hand by Nov 20.",
    "Our order should arrive by November 20.",
    "Der Dorn sollte am 20. November bei uns eintreffen.",
    "Il doit arriver chez nous le 20 novembre.",
    "Tiene que llegar el 20 de noviembre.",
    "Deve arrivare il 20 novembre.",
]


@pytest.mark.parametrize("text", OTHERS_COME)
def test_a_day_on_which_something_else_comes_is_not_that_of_the_mandrel(text: str) -> None:
    assert needed(text, american=False) is None


@pytest.mark.parametrize("text", OURS_COMES)
def test_a_day_on_which_the_mandrel_comes_is_needed_by(text: str) -> None:
    assert needed(text, american=False) == date(2026, 11, 20)


@pytest.mark.parametrize("snippet", ["1", "1/", "a ", "by friday ", "1/1 ", "end of ", "need "])
def test_finding_the_day_takes_time_in_proportion_to_the_length(snippet: str) -> None:
    text = snippet * (100_000 // len(snippet))
    assert_quick(lambda: find_needed_by(text, SENT, american=True), within=2.0)
