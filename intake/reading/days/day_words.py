"""How days are written: months, weekdays, spans, feasts, in the languages that customers write."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Literal

from dateutil.relativedelta import FR, MO, SA, SU, TH, TU, WE, weekday

from ..text.phrases import phrases, word_set

_MONTHS = """
1 jan january januar jänner janvier enero gennaio januari styczen stycznia janeiro
2 feb february februar feber fevrier febrero febbraio februari febr luty lutego fevereiro févr
3 mar march märz maerz mrz mars marzo maart mrt marca marzec março
4 apr april avril abril aprile avr abr kwietnia kwiecień
5 may mai mayo maggio mei maj maja maio
6 jun june juni juin junio giugno czerwca czerwiec junho
7 jul july juli juillet julio luglio lipca lipiec julho juil
8 aug august août agosto augustus augusti sierpnia sierpień ago
9 sep sept september septembre septiembre settembre września wrzesień setembro
10 oct october oktober octobre octubre ottobre okt października październik outubro
11 nov november novembre noviembre listopada listopad novembro
12 dec december dezember dez décembre decembre diciembre dicembre dic grudnia grudzień dezembro déc
"""
_WEEKDAYS: tuple[tuple[weekday, str], ...] = (
    (MO, "mon monday montag lundi lunes lunedì maandag måndag mandag segunda"),
    (TU, "tue tues tuesday dienstag mardi martes martedì dinsdag tisdag tirsdag"),
    (WE, "wed wednesday mittwoch mercredi miércoles mercoledì woensdag onsdag"),
    (TH, "thu thur thurs thursday donnerstag jeudi jueves giovedì donderdag torsdag"),
    (FR, "fri friday freitag vendredi viernes venerdì vrijdag fredag"),
    (SA, "sat saturday samstag samedi sábado sabato zaterdag"),
    (SU, "sun sunday sonntag dimanche domingo domenica zondag"),
)
_NUMBERS = """
1 a one ein eine einer einem un une uno una een
2 two couple zwei deux dos due twee
3 three drei trois tres tre drie
4 four vier quatre cuatro quattro
5 five fünf cinq cinco cinque vijf
6 six sechs seis sei zes
7 seven sieben sept siete sette zeven
8 eight acht huit ocho otto
10 ten zehn dix diez dieci tien
12 twelve zwölf douze doce dodici twaalf
14 fourteen vierzehn quatorze catorce quattordici veertien
"""
_SPANS: tuple[tuple[Literal["days", "weeks", "months"], str], ...] = (
    ("days", "day days tag tage tagen jour jours día días giorno giorni dag dagen"),
    ("weeks", "week weeks wk wks woche wochen semaine semaines semana semanas settimana settimane"),
    ("weeks", "weken veckor tygodni tygodnie"),
    ("months", "month months monat monate monaten monats mois mes meses mese mesi maand maanden"),
)


def _numbered(table: str) -> dict[str, int]:
    return {
        word: int(line.split()[0])
        for line in table.strip().splitlines()
        for word in word_set(line.split(None, 1)[1])
    }


MONTHS: Mapping[str, int] = _numbered(_MONTHS)
WEEKDAYS: Mapping[str, weekday] = {w: day for day, names in _WEEKDAYS for w in word_set(names)}
NUMBERS: Mapping[str, int] = _numbered(_NUMBERS)
SPANS: Mapping[str, Literal["days", "weeks", "months"]] = {
    w: span for span, names in _SPANS for w in word_set(names)
}
SUFFIXES = word_set("st nd rd th er ere e de te ste")
"""Of an ordinal in figures: '1st', '1er', '4e'."""

ENDS = word_set("end eom ende fin finales final fine eind einde slutet koniec końca fim konca")
MIDDLES = word_set("middle mid mitte mi mediados metà half meados medio")
BEGINNINGS = word_set("beginning start anfang début principios primeros inizio begin início")
OF_THE = word_set("of the de di du del van des der dem les le el i l la het") | {"-"}

IN_SPAN = phrases(
    "in | within | inside | in about | within about | within the next | in the next | in max",
    "innerhalb von | innerhalb | binnen | in ca | dans | sous | d ici | dans les | en | dentro de",
    "en unas | entro | tra | fra | in circa | over | om | w ciągu",
    "max | maxi | maximal | maximum | máximo | massimo | maximaal",
)
OF_NEXT_MONTH = phrases(
    "of next month | of the next month | of the coming month | nächsten monats",
    "des nächsten monats | kommenden monats | des kommenden monats | du mois prochain",
    "du mois suivant | del mes que viene | del próximo mes | del mes próximo | del mese prossimo",
    "del prossimo mese | van volgende maand | volgende maand",
)
WEEK_LETTERS = frozenset("sw")
"""'Livraison S23': a week only behind a word of delivery."""
WEEKS_SHORTENED = word_set("sem sett")
BEFORE_A_WEEK = word_set(
    "livraison livré livrer délai delivery lieferung liefertermin entrega consegna levering en"
) | {":"}
WEEK_NUMBERS = word_set(
    "s w sem sett kw cw wk week kalenderwoche semaine semana settimana vecka uge tydzień"
)
CHRISTMAS = word_set(
    "christmas xmas weihnachten noël navidad natale kerst kerstmis jul",
    "heiligabend nochebuena kerstavond",
)
PENTECOST = word_set("pentecost whitsun pfingsten pentecôte pentecostés pentecoste pinksteren")
YEAR_ENDS = word_set("jahresende silvester nochevieja")
EASTER = word_set("easter ostern pâques pascua pasqua pasen")
IN_TWO_DAYS = word_set("übermorgen overmorgen dopodomani")
TOMORROW = word_set("tomorrow morgen demain mañana domani") | IN_TWO_DAYS
OF_MORNING = word_set("guten goede la jeden am früh heute esta por this every vroege da")
"""Before these 'morgen' and 'mañana' are the morning."""
AFTER_TOMORROW = word_set("après pasado")
MONTH_ENDS = word_set("monatsende maandeinde")
FEASTS = CHRISTMAS | EASTER | PENTECOST | YEAR_ENDS | TOMORROW | {"thanksgiving"}
TODAY = word_set("today now")
FOLLOWING = word_set("next nächsten nächster prochain volgende próximo prossimo")
YEARS = word_set("year jahres année año anno jaar")
ROUGHLY = word_set("about ca max approx les the next circa environ etwa ungefähr")
TUBES = word_set("tube tubes tubing pipe rohr rohre rundrohr tubo tubos tubi buis buizen ø")
"""Right behind these '25/2' is an OD and a wall."""
LIMITS = word_set("uiterlijk tegen voor op leverdatum levering spätestens bis") | {":"}
"""Behind these '20-11' is a day too, as the Dutch write it."""
DASHED_BEHIND = word_set("op uiterlijk tegen leverdatum")
"""Behind these '30-10' is a day, as the Dutch write it."""
_FOREIGN = word_set(
    "und der die das für bitte wir mit le les des pour nous vous et el los las para con por il per",
    "di della che het een voor van wij de la le del un una es och att med com não uma dla na",
    "proszę een graag merci gracias",
)
_ENGLISH = word_set("the and for we you please is need on with by our are have it of to")


def speaks_english(words: tuple[str, ...]) -> bool:
    """Whether a text is rather English: other writers put the day before the month."""
    foreign = sum(1 for word in words if word in _FOREIGN)
    return foreign < 3 or foreign <= sum(1 for word in words if word in _ENGLISH)


MEASURES = word_set(
    "x by mm in inch inches od id wall clr rad radius thick thk ga gauge tube zoll pouce pouces",
    "pulgada pulgadas pollice pollici",
) | {'"', "*", "°"}
