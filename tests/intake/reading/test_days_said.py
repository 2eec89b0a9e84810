"""By when mandrels are wanted, as apprentices, buyers and welders say it in six languages: one short
message a row, sent on Monday 12 October 2026.
"""

# ruff: noqa: E501 - one message a line

from __future__ import annotations

from datetime import date

import pytest

from bendreply.intake.pasted import text_message
from bendreply.intake.pipeline import understand

SENT = date(2026, 10, 12)
TUBE = "One mandrel for 38 x 1.5, R 76.\n"
WHOLE = (
    (
        "Hello, 3 mandrels to fit 38 x 1.5 tube, 76 mm centreline radius. We bend 200 hoops from 20 October and would want them on the 6th of November at the very latest, even if 2 come first.",
        "2026-11-06",
    ),
    ("One mandrel 38 x 1.5 R 76. Two weeks from today.", "2026-10-26"),
    ("One mandrel 38 x 1.5 R 76, needed the day after tomorrow.", "2026-10-14"),
    ("Ein Dorn 38 x 1,5 R 76, wird übermorgen gebraucht.", "2026-10-14"),
    ("Ein Dorn 38 x 1,5 R 76, wird morgen gebraucht.", "2026-10-13"),
    ("Un mandrin 38 x 1,5 R 76, il me le faut demain.", "2026-10-13"),
    ("Un mandril 38 x 1,5 R 76, lo necesito mañana.", "2026-10-13"),
    ("Un mandrino 38 x 1,5 R 76, mi serve domani.", "2026-10-13"),
    ("Een doorn 38 x 1,5 R 76, morgen nodig.", "2026-10-13"),
    ("One mandrel 38 x 1.5 R 76 by the last Friday of the month.", "2026-10-30"),
    ("One mandrel 38 x 1.5 R 76, needed by the first Monday in November.", "2026-11-02"),
    ("One mandrel 38 x 1.5 R 76, mid-November delivery.", "2026-11-15"),
    ("One mandrel 38 x 1.5 R 76. Quote by 20 October, mandrel by 20 November.", "2026-11-20"),
    (
        "One mandrel 38 x 1.5 R 76. We shut on 23 November so it has to come by 20 November.",
        "2026-11-20",
    ),
    (
        "One mandrel 38 x 1.5 R 76. The boat race is on 28 November; I want it in my hands on the 20th.",
        "2026-11-20",
    ),
    ("One mandrel 38 x 1.5 R 76 before Christmas.", "2026-12-24"),
    ("One mandrel 38 x 1.5 R 76, month end please.", "2026-10-31"),
    ("One mandrel 38 x 1.5 R 76, by the end of the month.", "2026-10-31"),
    ("Ein Dorn 38 x 1,5 R 76 bis Monatsende.", "2026-10-31"),
    ("Ein Dorn 38 x 1,5 R 76 noch diesen Monat, also bis 31.10.", "2026-10-31"),
    ("Ein Dorn 38 x 1,5 R 76 bis Freitag.", "2026-10-16"),
    ("Ein Dorn 38 x 1,5 R 76, KW 43.", "2026-10-23"),
    ("One mandrel 38 x 1.5 R 76. Required: W43.", "2026-10-23"),
    ("The mandrel (1 pc) 38 x 1.5 R 76 shall be delivered at 5.11.2026.", "2026-11-05"),
    ("Need date 5-Nov. One mandrel 38 x 1.5 R 76.", "2026-11-05"),
    ("Bonjour, pouvez-vous chiffrer un lot de deux mandrins 38 x 1,5 rayon 76 ?", None),
    ("38 x 1.5 / R 76 / 1 pc / wk 46", "2026-11-13"),
    ("38 x 1.5 / R 76 / 1 off / delivery wk 46", "2026-11-13"),
    ("One mandrel for 38 x 1.5, R 76. I'd be happy with 20 November.", "2026-11-20"),
    ("One mandrel for 38 x 1.5, R 76. Target: 20 November.", "2026-11-20"),
    ("One mandrel for 38 x 1.5, R 76. Delivery target 20 November.", "2026-11-20"),
    ("One mandrel for 38 x 1.5, R 76. My deadline is 20 November.", "2026-11-20"),
    (
        "One mandrel for 38 x 1.5, R 76. It would have to leave you so that it lands here on 20 November.",
        "2026-11-20",
    ),
    ("One mandrel for 38 x 1.5, R 76. Any time up to 20 November suits.", "2026-11-20"),
    (
        "One mandrel for 38 x 1.5, R 76. If it's not here by 20 November we are in trouble.",
        "2026-11-20",
    ),
    (
        "One mandrel for 38 x 1.5, R 76. The installation is booked for 23 November, so we need it three days earlier.",
        "2026-11-20",
    ),
    (
        "One mandrel for 38 x 1.5, R 76. We need it on site on Friday 20 November at 7 am.",
        "2026-11-20",
    ),
    ("One mandrel for 38 x 1.5, R 76. Can you get it to us for 20 November?", "2026-11-20"),
    (
        "One mandrel for 38 x 1.5, R 76. Could I have it by the 20th of November, I go away on the 22nd.",
        "2026-11-20",
    ),
    ("One mandrel for 38 x 1.5, R 76. Wanted for 20 November.", "2026-11-20"),
    ("One mandrel for 38 x 1.5, R 76. Due in our works 20 November.", "2026-11-20"),
    ("One mandrel for 38 x 1.5, R 76. Ship to arrive 20 November.", "2026-11-20"),
    (
        "One mandrel for 38 x 1.5, R 76. Please have it ready for pick-up on 20 November.",
        "2026-11-20",
    ),
    ("One mandrel for 38 x 1.5, R 76. I'll pick it up on 20 November.", "2026-11-20"),
    ("One mandrel for 38 x 1.5, R 76. My son will fetch it on 20 November.", "2026-11-20"),
    ("One mandrel for 38 x 1.5, R 76. Latest acceptable delivery: 20 November.", "2026-11-20"),
    ("Urgent: one mandrel for 38 x 1.5, R 76, 20 November at the latest.", "2026-11-20"),
    ("We'd need one mandrel for 38 x 1.5, R 76 for the 20th of November.", "2026-11-20"),
    ("One mandrel for 38 x 1.5, R 76. We open again on 20 November.", None),
    ("One mandrel for 38 x 1.5, R 76. We have a shutdown from 20 November.", None),
    ("One mandrel for 38 x 1.5, R 76. Our customer expects his rails on 20 November.", None),
    ("One mandrel for 38 x 1.5, R 76. The board decides on 20 November.", None),
    ("One mandrel for 38 x 1.5, R 76. I'm at the trade fair until 20 November.", None),
    ("One mandrel for 38 x 1.5, R 76. Prices by 20 November please.", None),
    ("One mandrel for 38 x 1.5, R 76. No hurry, the machine comes on 20 November.", None),
    (
        "One mandrel for 38 x 1.5, R 76. Our budget must be spent by 20 November, so please quote before.",
        None,
    ),
    ("One mandrel for 38 x 1.5, R 76. The old one will last until 20 November or so.", None),
    ("Ein Dorn für 38 x 1,5, R 76. Am 20. November muss er hier liegen.", "2026-11-20"),
    ("Ein Dorn für 38 x 1,5, R 76. Der 20. November wäre uns recht.", "2026-11-20"),
    ("Ein Dorn für 38 x 1,5, R 76. Bis spätestens Freitag, 20.11., 10 Uhr.", "2026-11-20"),
    ("Ein Dorn für 38 x 1,5, R 76. Liefertag: 20.11.", "2026-11-20"),
    ("Ein Dorn für 38 x 1,5, R 76. Ich hole ihn am 20. November.", "2026-11-20"),
    ("Ein Dorn für 38 x 1,5, R 76. Wunsch: 20. November.", "2026-11-20"),
    ("Ein Dorn für 38 x 1,5, R 76. Wir haben ab 20. November Betriebsruhe.", None),
    ("Ein Dorn für 38 x 1,5, R 76. Die Montage beginnt am 20. November.", None),
    ("Ein Dorn für 38 x 1,5, R 76. Unser Kunde will die Geländer am 20. November.", None),
    ("Ein Dorn für 38 x 1,5, R 76. Ich bin bis 20. November im Urlaub.", None),
    ("Un mandrin pour 38 x 1,5, rayon 76. Le 20 novembre nous irait.", "2026-11-20"),
    ("Un mandrin pour 38 x 1,5, rayon 76. À recevoir le 20 novembre.", "2026-11-20"),
    ("Un mandrin pour 38 x 1,5, rayon 76. Nous l'attendons le 20 novembre.", "2026-11-20"),
    ("Un mandrin pour 38 x 1,5, rayon 76. Je viendrai le chercher le 20 novembre.", "2026-11-20"),
    ("Un mandrin pour 38 x 1,5, rayon 76. Date souhaitée : 20/11.", "2026-11-20"),
    ("Un mandrin pour 38 x 1,5, rayon 76. L'atelier ferme du 20 au 27 novembre.", None),
    ("Un mandrin pour 38 x 1,5, rayon 76. La production démarre le 20 novembre.", None),
    ("Un mandril para 38 x 1,5, radio 76. Tiene que estar aquí el 20 de noviembre.", "2026-11-20"),
    ("Un mandril para 38 x 1,5, radio 76. El 20 de noviembre nos vendría bien.", "2026-11-20"),
    ("Un mandril para 38 x 1,5, radio 76. Fecha: 20 de noviembre.", "2026-11-20"),
    ("Un mandril para 38 x 1,5, radio 76. El taller cierra del 20 al 27 de noviembre.", None),
    ("Un mandril para 38 x 1,5, radio 76. El 20 de noviembre es fiesta aquí.", None),
    ("Un mandrino per 38 x 1,5, raggio 76. Il 20 novembre andrebbe bene.", "2026-11-20"),
    (
        "Un mandrino per 38 x 1,5, raggio 76. Ci arrivi per il 20 novembre, per favore.",
        "2026-11-20",
    ),
    ("Un mandrino per 38 x 1,5, raggio 76. Data: 20 novembre.", "2026-11-20"),
    ("Un mandrino per 38 x 1,5, raggio 76. Il 20 novembre siamo chiusi.", None),
    ("Een doorn voor 38 x 1,5, straal 76. Hij moet er 20 november zijn.", "2026-11-20"),
    ("Een doorn voor 38 x 1,5, straal 76. 20 november komt goed uit.", "2026-11-20"),
    ("Een doorn voor 38 x 1,5, straal 76. Wij halen hem op 20 november op.", "2026-11-20"),
    ("Een doorn voor 38 x 1,5, straal 76. Van 20 tot 27 november zijn we dicht.", None),
)
BEHIND_THE_TUBE = (
    ("Could do with it within the week.", "2026-10-19"),
    ("Not before 6 November as we are closed.", None),
    ("No sooner than 6 November please, the store is full.", None),
    ("Take your time but not beyond 6 November.", "2026-11-06"),
    ("Can you make 6 November?", "2026-11-06"),
    ("I would need it by mid-November; let's say the 15th.", "2026-11-15"),
    ("Could it be here in a fortnight?", "2026-10-26"),
    ("In KW 45 bitte.", "2026-11-06"),
    ("Bis Ende des Monats.", "2026-10-31"),
    ("Heute in drei Wochen.", "2026-11-02"),
    ("Innerhalb von vier Wochen.", "2026-11-09"),
    ("Am 6.11. brauchen wir ihn.", "2026-11-06"),
    ("Pour fin octobre.", "2026-10-31"),
    ("Sous 3 semaines.", "2026-11-02"),
    ("Courant semaine 45.", "2026-11-06"),
    ("Para finales de octubre.", "2026-10-31"),
    ("En tres semanas, por favor.", "2026-11-02"),
    ("Paso a recogerlo el 6 de noviembre.", "2026-11-06"),
    ("Fra tre settimane andrebbe bene.", "2026-11-02"),
    ("Binnen drie weken.", "2026-11-02"),
    ("Eind oktober bij ons.", "2026-10-31"),
    ("Vor Pfingsten sollte er da sein.", "2027-05-16"),
    ("In drei Wochen wärs super.", "2026-11-02"),
    ("Bitte bis nächsten Mittwoch, den 21.10.", "2026-10-21"),
    ("Wanted by the 14th of next month.", "2026-11-14"),
    ("Lieferung bis 14. nächsten Monats.", "2026-11-14"),
    ("Livraison le 14 du mois prochain.", "2026-11-14"),
    ("Entrega el 14 del mes que viene.", "2026-11-14"),
    ("Consegna il 14 del mese prossimo.", "2026-11-14"),
    ("Levering op de 14e van volgende maand.", "2026-11-14"),
    ("Livraison S46.", "2026-11-13"),
    ("Settimana 47 va bene.", "2026-11-20"),
    ("Semana 46.", "2026-11-13"),
    ("Before the Thanksgiving weekend, so Tuesday November 24.", "2026-11-24"),
    ("Chef will bis Donnerstag 3 Angebote haben.", None),
    ("The boss wants by Thursday 3 quotes.", None),
    ("Wir haben vom 1. bis 22. November zu.", None),
    ("Nous sommes fermés du 1er au 22 novembre.", None),
    ("Closed from the 1st to the 22nd of November.", None),
    ("Please no delivery on 12 November.", None),
    (
        "Notre arrêt technique commence le 20 novembre ; le mandrin doit être chez nous le 10 au plus tard.",
        "2026-11-10",
    ),
    ("It must be delivered on 15 January 2027.", "2027-01-15"),
)
LISTED = (
    ("tube 38 x 1.5, radius 76\nmandrels: 2\ndate: 28.11.2026", "2026-11-28"),
    ("tube 38 x 1.5, radius 76\nmandrels: 2\nwhen = 20 Nov 2026", "2026-11-20"),
    ("tube 38 x 1.5, radius 76\nHow many: just one.\nWhen: the 30th is good.", "2026-10-30"),
    ("Rohr 38 x 1,5, Radius 76\nAnzahl: 2\nWann: 20. November", "2026-11-20"),
    ("tubo 38 x 1,5, radio 76\ncantidad: 2\ncuándo: 20 de noviembre", "2026-11-20"),
    ("tube 38 x 1.5, radius 76\nNumber: one.\nDay: twelve days from now.", "2026-10-24"),
    (
        "- tube 38 x 1.5\n- radius 76\n- a mandrel\n- end of next week if humanly possible",
        "2026-10-23",
    ),
    ("1 mandrel, 38 x 1.5, R 76, 6 Nov.", "2026-11-06"),
    ("1 mandrel / 38 x 1.5 / R 76 / 6 Nov / DAP", "2026-11-06"),
    ("1 mandrel, 38 x 1.5, R 76, wk 46", "2026-11-13"),
    # The letter's own date, and one that is past.
    ("Date: 12 October 2026\nPlease quote one mandrel 38 x 1.5, R 76.", None),
    ("1 mandrel, 38 x 1.5, R 76, drawing of 6 Oct 2026.", None),
)


@pytest.mark.parametrize(
    ("text", "day"), [*WHOLE, *((TUBE + words, day) for words, day in BEHIND_THE_TUBE), *LISTED]
)
def test_by_when(text: str, day: str | None) -> None:
    (size,) = understand(text_message(text, SENT)).requests
    assert size.needed_by == (None if day is None else date.fromisoformat(day))
    assert not size.doubt_on("needed_by")


def test_each_line_its_day() -> None:
    lines = "Mandrels as follows.\n A) 38 x 1.5, R 76, 2 off\n B) 42 x 2, R 84, 1 off\n"
    for told in (
        "We'd want A on 19 November and B on 4 December.",
        "A is wanted by 19 November. B can wait until 4 December.",
    ):
        sizes = understand(text_message(lines + told, SENT)).requests
        assert [size.needed_by for size in sizes] == [date(2026, 11, 19), date(2026, 12, 4)]
