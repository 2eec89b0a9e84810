"""Lengths spelled out in German, French, Spanish, Italian and Dutch: 'vierzig Millimeter'.

Only with a unit behind them: 'un', 'six' and 'due' alone are other words, or counts.
"""

from __future__ import annotations

import re
from decimal import Decimal
from functools import lru_cache
from itertools import islice

from ...late_pattern import late_pattern
from ..text.patterns import any_of
from .dictated import dictated_at
from .numbers import Number

_SMALL: dict[str, int] = {
    word: value
    for value, words in enumerate(
        (
            "",
            "ein eins eine einen einem un une uno una één een",
            "zwei deux dos due twee",
            "drei trois tres tre drie",
            "vier quatre cuatro quattro",
            "fünf fuenf cinq cinco cinque vijf",
            "sechs six seis sei zes",
            "sieben sept siete sette zeven",
            "acht huit ocho otto",
            "neun neuf nueve nove negen",
            "zehn dix diez dieci tien",
            "elf onze once undici",
            "zwölf zwoelf douze doce dodici twaalf",
            "dreizehn treize trece tredici dertien",
            "vierzehn quatorze catorce quattordici veertien",
            "fünfzehn fuenfzehn quinze quince quindici vijftien",
            "sechzehn seize dieciséis dieciseis sedici zestien",
            "siebzehn dix-sept diecisiete diciassette zeventien",
            "achtzehn dix-huit dieciocho diciotto achttien",
            "neunzehn dix-neuf diecinueve diciannove negentien",
        )
    )
    for word in words.split()
}
_TENS: dict[str, int] = {
    word: value * 10
    for value, words in enumerate(
        (
            "",
            "",
            "zwanzig vingt veinte venti twintig",
            "dreißig dreissig trente treinta trenta dertig",
            "vierzig quarante cuarenta quaranta veertig",
            "fünfzig fuenfzig cinquante cincuenta cinquanta vijftig",
            "sechzig soixante sesenta sessanta zestig",
            "siebzig soixante-dix setenta settanta zeventig",
            "achtzig quatre-vingts ochenta ottanta tachtig",
            "neunzig quatre-vingt-dix noventa novanta negentig",
            "hundert einhundert cent cien cento honderd",
        )
    )
    for word in words.split()
}
_SMALL |= {
    f"veinti{word}": 20 + value
    for value, words in enumerate(
        (
            "", "uno ún un", "dós dos", "trés tres", "cuatro", "cinco", "séis seis", "siete",
            "ocho", "nueve",
        )
    )
    for word in words.split()
}  # fmt: skip
_HALVES: dict[str, Decimal] = {
    "anderthalb": Decimal("1.5"), "anderthalbe": Decimal("1.5"), "eineinhalb": Decimal("1.5"),
    "zweieinhalb": Decimal("2.5"), "dreieinhalb": Decimal("3.5"), "viereinhalb": Decimal("4.5"),
    "anderhalve": Decimal("1.5"), "anderhalf": Decimal("1.5"), "tweeënhalf": Decimal("2.5"),
}  # fmt: skip
_TWENTIES = {
    word: value
    for value, words in enumerate(
        (
            "veintiuno veintiún", "veintidós veintidos", "veintitrés veintitres", "veinticuatro",
            "veinticinco", "veintiséis veintiseis", "veintisiete", "veintiocho", "veintinueve",
        ),
        21,
    )
    for word in words.split()
}  # fmt: skip
_TEENS = tuple("dix onze douze treize quatorze quinze seize dix-sept dix-huit dix-neuf".split())
_SCORES = {
    # 'soixante-quinze', 'quatre-vingt-quinze', 'quatre vingt cinq'
    f"{score}{joint}{word}": value + behind
    for score, value in (("soixante", 60), ("quatre-vingt", 80), ("quatre vingt", 80))
    for joint in ("-", " ", *((" et ",) if value == 60 else ()))
    for behind, word in (
        *enumerate(("un", "deux", "trois", "quatre", "cinq", "six", "sept", "huit", "neuf"), 1),
        *enumerate(_TEENS, 10),
    )
}
_PARTS = {
    word: Decimal(1) / under
    for under, words in (
        (2, "halb halbes halber halbe demi demie medio media mezzo mezza half halve"),
        (4, "viertel quart cuarto quarto kwart"),
        (8, "achtel huitième octavo ottavo achtste"),
    )
    for word in words.split()
}


_TEN = {word: value for word, value in _TENS.items() if value < 100}
_ONE = {word: value for word, value in _SMALL.items() if 0 < value < 10}
_COMPOUND = late_pattern(
    # 'zweiundvierzig', 'tweeënveertig'
    rf"(?P<one>{'|'.join(_ONE)})(?:und|en|ën)(?P<ten>{'|'.join(_TEN)})"
    # 'cuarenta y dos', 'quarante-deux', 'quarantadue', 'quarantotto'
    rf"|(?P<ten_before>{'|'.join(_TEN)})(?:-| | y | et |(?![aeiou]))"
    rf"(?P<one_behind>{'|'.join(_ONE)})"
    rf"|(?P<ten_cut>{'|'.join(word[:-1] for word in _TEN)})(?=[aeiou])"
    rf"(?P<one_joined>{'|'.join(_ONE)})"
)
_WHOLE: dict[str, int | Decimal] = {**_SCORES, **_TENS, **_TWENTIES, **_SMALL, **_HALVES}


_LONGEST_WORD = 40
"""'Honderdtweeëntwintig' and then some: no word of a hostile text is taken apart for long."""
_HUNDRED = late_pattern(
    r"(?:(?:ein|één|een)?hundert|honderd|cento|cent|ciento"
    r"|(?P<de>zwei|drei|vier|fünf|fuenf|sechs|sieben|acht|neun)hundert"
    r"|(?P<nl>twee|drie|vier|vijf|zes|zeven|acht|negen)honderd"
    r"|(?P<fr>deux|trois|quatre|cinq|six|sept|huit|neuf) cents?"
    r"|(?P<it>due|tre|quattro|cinque|sei|sette|otto|nove)cento"
    r"|(?P<es>dos|tres|cuatro|seis|sete|ocho|nove)cientos|(?P<five>quinientos))"
    r"(?:[ -]?(?:und|en|e|et|y)[ -]?(?=[^\W\d_])|[ -])?(?P<rest>.+)?"
)
"""'Ciento cuarenta y cinco', 'honderd en vijf', 'dreihundert', 'trois cent vingt'."""
_HUNDREDS = {**_SMALL, "sete": 7, "quinientos": 5}
_MANY = ("de", "nl", "fr", "it", "es", "five")


@lru_cache(maxsize=4096)
def value_of(word: str) -> int | Decimal | None:
    """The value of a number word in small letters, 21 to 999 also as put together."""
    if (value := _WHOLE.get(word)) is not None:
        return value
    if len(word) > _LONGEST_WORD:
        return None
    hundred = _HUNDRED.fullmatch(word)
    if hundred is not None:
        behind = value_of(hundred["rest"]) if hundred["rest"] else 0
        if behind is None or behind >= 100:
            return None
        many = next((hundred[name] for name in _MANY if hundred[name]), None)
        return behind + 100 * (_HUNDREDS[many] if many is not None else 1)
    match = _COMPOUND.fullmatch(word)
    if match is None:
        return None
    if match["ten_cut"]:
        tens = next(value for ten, value in _TEN.items() if ten[:-1] == match["ten_cut"])
        return tens + _ONE[match["one_joined"]]
    return _TEN[match["ten"] or match["ten_before"]] + _ONE[match["one"] or match["one_behind"]]


@lru_cache(maxsize=8192)
def begins_length(word: str) -> bool:
    """Whether a spelled length may begin with this word, in small letters."""
    if word in _PARTS or word in _FIRST_WORDS:
        return True
    return "-" not in word and any(
        value_of(one) is not None for one in (word, word.removesuffix("er"))
    )


_MOST_WORDS = 5
"""'doscientos cuarenta y dos' is one number."""
_LONGEST = len("cuatrocientos ") + max(map(len, _TEN)) + len(" et ") + max(map(len, _ONE))
_FIRST_WORDS = frozenset(word.partition("-")[0] for word in _WHOLE) | {"ciento", "doscientos"}
_SPACE = late_pattern(r"\s")
_UNIT = (
    r"(?P<unit>(?P<mm>millim[eè]t(?:er|res?|ri|ro|ros)?|milímetros?|millimetr[io]|mm\b)"
    r"|(?P<inch>zoll|pouces?|pulgadas?|pollic[ei]|duims?|inch(?:es)?))"
)
_AND = any_of("und | et | y | e | en | ed")
_PART = rf"(?:\s{_AND}\s(?:une?\s|una?\s|ein(?:e|en)?\s|een\s)?(?P<{{}}>{'|'.join(_PARTS)})\b)?"
_BEHIND_WHOLE = late_pattern(
    _PART.format("part") + rf"\s{_UNIT}" + _PART.format("after"),
    re.IGNORECASE,
)
_HALF_ALONE = late_pattern(rf"(?P<whole>{'|'.join(_PARTS)})\s(?:de\s|di\s)?{_UNIT}", re.IGNORECASE)
_WALL_WORD = any_of(
    "dick | dik | stark | wand\\w* | di parete | de paroi | d'épaisseur | di spessore | de pared",
    "de espesor",
)
_WALL_BEFORE = late_pattern(
    r"\b(?:paroi|épaisseur|parete|spessore|pared|espesor|wand\w*)\s"
    r"(?:de |di |von |van |est |è |ist )?$"
    # "veintidós por uno y medio"
    r"|[^\W_]\s(?:mal|par|por|per|bij|x)\s$",
    re.IGNORECASE,
)
_HALVED = late_pattern(
    rf"(?:(?P<half>{'|'.join(_HALVES)})|(?P<whole>{'|'.join(w for w in _SMALL if w)})\s{_AND}\s"
    rf"(?:ein\s|een\s)?(?P<part>{'|'.join(_PARTS)}))\b(?=(?P<wall>\s{_WALL_WORD})?)",
    re.IGNORECASE,
)


def _halved_at(text: str, place: int) -> Number | None:
    """'anderhalf dik', 'paroi un et demi': a wall in millimetres, where the word wall is beside."""
    match = _HALVED.match(text, place)
    if match is None:
        return None
    if match["wall"] is None and not _WALL_BEFORE.search(text[max(0, place - 24) : place]):
        return None
    if match["half"]:
        value = _HALVES[match["half"].casefold()]
    else:
        value = Decimal(_SMALL[match["whole"].casefold()]) + _PARTS[match["part"].casefold()]
    return Number(match.start(), match.end(), (value,), "words", unit="mm")


def _whole_at(text: str, place: int) -> tuple[int | Decimal, re.Match[str]] | None:
    """The longest number word there that has a unit behind it, and what stands behind the word.

    Looked up word by word: as one pattern, some four thousand words take longer to compile than
    all other patterns together.
    """
    gaps = _SPACE.finditer(text, place, place + _LONGEST + 1)
    ends = [gap.start() for gap in islice(gaps, _MOST_WORDS)]
    for end in reversed(ends):
        value = value_of(text[place:end].casefold())
        if value is not None and (behind := _BEHIND_WHOLE.match(text, end)) is not None:
            return value, behind
    return None


def spelled_at(text: str, place: int) -> Number | None:
    """The length in words that starts there, unit and all, or None."""
    whole = _whole_at(text, place)
    if whole is not None:
        value, match = Decimal(whole[0]), whole[1]
        value += sum(
            (_PARTS[match[name].casefold()] for name in ("part", "after") if match[name]),
            Decimal(0),
        )
    else:
        half = _HALF_ALONE.match(text, place)
        if half is None:
            return _halved_at(text, place) or dictated_at(text, place, value_of)
        value, match = _PARTS[half["whole"].casefold()], half
    unit = "mm" if match["mm"] else "in"
    return Number(place, match.end(), (value,), "words", unit=unit)
