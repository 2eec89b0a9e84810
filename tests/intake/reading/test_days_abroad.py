"""Days of delivery as they are told in five languages, with and without accents."""

from __future__ import annotations

from datetime import date

import pytest

from bendreply.intake.reading.days.dates import find_needed_by

SENT = date(2026, 10, 12)
SAID = [
    ("Wir brauchen ihn bis Heiligabend.", date(2026, 12, 24)),
    ("Wird am 20.11. benötigt.", date(2026, 11, 20)),
    ("Wird am 20.11. benoetigt.", date(2026, 11, 20)),
    ("Liefertermin spaetestens 20.11.", date(2026, 11, 20)),
    ("Benoetigt wird er heute in zwei Wochen.", date(2026, 10, 26)),
    ("Date limite : 15/01/2027", date(2027, 1, 15)),
    ("Il nous le faut impérativement le 20 novembre.", date(2026, 11, 20)),
    ("Il nous le faut pour la veille de Noël.", date(2026, 12, 24)),
    ("Il nous le faut la veille du 5 décembre.", date(2026, 12, 4)),
    ("Lo necesitamos para Nochebuena.", date(2026, 12, 24)),
    ("Nos hace falta a mediados de noviembre.", date(2026, 11, 15)),
    ("Debe estar en nuestra casa el 4 de diciembre.", date(2026, 12, 4)),
    ("Es urgente, para el 30/10.", date(2026, 10, 30)),
    ("Que esté aquí el 1 de diciembre.", date(2026, 12, 1)),
    ("Data limite: 15/01/2027", date(2027, 1, 15)),
    ("Ci serve per la vigilia di Natale.", date(2026, 12, 24)),
    ("Deve essere da noi il 4 dicembre.", date(2026, 12, 4)),
    ("Ne abbiamo bisogno il 1° dicembre.", date(2026, 12, 1)),
    ("Uiterste datum: 15-01-2027", date(2027, 1, 15)),
    ("We hebben hem voor kerstavond nodig.", date(2026, 12, 24)),
    ("Op 18 december te leveren.", date(2026, 12, 18)),
    ("Gewenste levertijd: eind november", date(2026, 11, 30)),
    # An earlier day is that of their own work.
    ("Wir müssen am 7.12. anfangen, der Dorn sollte am 4.12. da sein.", date(2026, 12, 4)),
    ("Wir starten am 7. Dezember und brauchen ihn am 4.", date(2026, 12, 4)),
    ("On démarre le 7 décembre, il nous le faut le 4.", date(2026, 12, 4)),
    ("Arrancamos el 7 de diciembre, lo necesitamos el 4.", date(2026, 12, 4)),
    ("Tenemos que tenerlo montado el 16 de noviembre, que llegue el 9.", date(2026, 11, 9)),
    ("Partiamo il 7 dicembre, ci serve il 4.", date(2026, 12, 4)),
    ("We starten 7 december, de doorn moet er 4 december zijn.", date(2026, 12, 4)),
    ("We start December 7 and need it by the 4th.", date(2026, 12, 4)),
    ("Start ist der 1.12., der Dorn muss eine Woche vorher da sein.", date(2026, 11, 24)),
    ("Nous lançons le 1er décembre, il nous le faut une semaine avant.", date(2026, 11, 24)),
    ("Empezamos el 1 de diciembre, lo necesitamos una semana antes.", date(2026, 11, 24)),
    ("We starten 1 december, de doorn moet er een week eerder zijn.", date(2026, 11, 24)),
    # As long as it may take.
    ("Lieferzeit max. 4 Wochen.", date(2026, 11, 9)),
    ("Délai maxi 4 semaines.", date(2026, 11, 9)),
    ("Levertijd max 4 weken.", date(2026, 11, 9)),
    ("Bitte bis Jahresende.", date(2026, 12, 31)),
]


@pytest.mark.parametrize(("words", "day"), SAID)
def test_the_day_of_delivery(words: str, day: date) -> None:
    needed = find_needed_by(words, SENT, american=False, day_first=True)
    assert (needed.day, needed.doubt) == (day, None)


@pytest.mark.parametrize(
    "words", ["Date limite de remise des offres : 20/11/2026", "Offerta entro il 16/10, grazie."]
)
def test_the_day_of_an_offer_is_none(words: str) -> None:
    assert find_needed_by(words, SENT, american=False, day_first=True).day is None


def test_a_number_beyond_the_day_named_may_be_of_the_month_before() -> None:
    needed = find_needed_by("We start December 2, need it by the 28th.", SENT, american=True)
    assert needed.doubt is not None
