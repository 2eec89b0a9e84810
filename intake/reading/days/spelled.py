"""Days of the month in words: 'the thirtieth', 'twenty-first', 'zwanzigsten', 'vingt et un'."""

from __future__ import annotations

from ..text.phrases import Words, fold

_ORDINALS = (
    "first second third fourth fifth sixth seventh eighth ninth tenth eleventh twelfth thirteenth "
    "fourteenth fifteenth sixteenth seventeenth eighteenth nineteenth twentieth",
    "ersten zweiten dritten vierten fünften sechsten siebten achten neunten zehnten elften "
    "zwölften dreizehnten vierzehnten fünfzehnten sechzehnten siebzehnten achtzehnten neunzehnten "
    "zwanzigsten einundzwanzigsten zweiundzwanzigsten dreiundzwanzigsten vierundzwanzigsten "
    "fünfundzwanzigsten sechsundzwanzigsten siebenundzwanzigsten achtundzwanzigsten "
    "neunundzwanzigsten dreißigsten einunddreißigsten",
)
_CARDINALS = (
    "deux trois quatre cinq six sept huit neuf dix onze douze treize quatorze quinze seize",
    "dos tres cuatro cinco seis siete ocho nueve diez once doce trece catorce quince dieciséis "
    "diecisiete dieciocho diecinueve veinte veintiuno veintidós veintitrés veinticuatro "
    "veinticinco veintiséis veintisiete veintiocho veintinueve treinta",
    "due tre quattro cinque sei sette otto nove dieci undici dodici tredici quattordici quindici "
    "sedici diciassette diciotto diciannove venti ventuno ventidue ventitré ventiquattro "
    "venticinque ventisei ventisette ventotto ventinove trenta trentuno",
    "twee drie vier vijf zes zeven acht negen tien elf twaalf dertien veertien vijftien zestien "
    "zeventien achttien negentien twintig eenentwintig tweeëntwintig drieëntwintig "
    "vierentwintig vijfentwintig zesentwintig zevenentwintig achtentwintig negenentwintig dertig "
    "eenendertig",
)


def _numbered(tables: tuple[str, ...], first: int) -> dict[str, int]:
    return {
        fold(word): number for words in tables for number, word in enumerate(words.split(), first)
    }


ORDINALS = _numbered(_ORDINALS, 1) | {
    "thirtieth": 30, "premier": 1, "primero": 1, "primo": 1, "eerste": 1,
}  # fmt: skip
CARDINALS = _numbered(_CARDINALS, 2)
TENS = {"twenty": 20, "thirty": 30, "vingt": 20, "trente": 30, "treinta": 30}
_ENGLISH_TOO = frozenset(("due", "once", "six", "elf"))
"""'Delivery due December 4', 'once March comes': these are days only behind an article."""
_ARTICLES = frozenset(("le", "el", "il", "den", "per", "para", "op"))
STARTS = ORDINALS.keys() | CARDINALS.keys() | TENS.keys()


def day_in_words(words: Words, at: int) -> tuple[int, int, bool]:
    """(day of the month, index behind it, whether it is an ordinal); a day of 0 is none.

    Cardinals are read for other languages than English, where they name days.
    """
    word = words.at(at)
    if word in TENS:
        english = word in ("twenty", "thirty")
        joint = at + 1 + (words.at(at + 1) in ("-", "et", "y"))
        added = ORDINALS.get(words.at(joint), 0) if english else _unit(words.at(joint))
        if 0 < added < 10 and TENS[word] + added <= 31:
            return TENS[word] + added, joint + 1, english
        return (0, at, False) if english else (TENS[word], at + 1, False)
    if word in ORDINALS:
        return ORDINALS[word], at + 1, True
    if word in _ENGLISH_TOO and words.at(at - 1) not in _ARTICLES:
        return 0, at, False
    return CARDINALS.get(word, 0), at + 1, False


def _unit(word: str) -> int:
    return 1 if word in ("un", "uno") else CARDINALS.get(word, 0)
