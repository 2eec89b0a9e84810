"""Numbers as customers write them, each with every value its spelling allows.

"1-3/4", "1 3/4", '1" 3/4', ".095", "38,1", "15/8" (1-5/8 with the space lost, or 1.875),
"inch and three quarter", "one twenty". No unit and no role here: only what the figures say.
"""

from __future__ import annotations

import re
from dataclasses import dataclass, replace
from decimal import Decimal
from fractions import Fraction
from math import gcd
from typing import Literal

from ...late_pattern import late_pattern
from .bore_by_od import is_bore_by_od
from .parted_inches import are_two

Style = Literal["integer", "decimal", "fraction", "mixed", "words", "speech"]
INCH_FRACTIONS = frozenset({2, 4, 8, 16, 32, 64})
"""Denominators that an inch is divided by."""


@dataclass(frozen=True, slots=True)
class Number:
    """A number at a place in the plain text; the first value is the likeliest."""

    start: int
    end: int
    values: tuple[Decimal, ...]
    style: Style
    why: str = ""
    """Why there is more than one value."""
    unit: str | None = None
    """A unit that is part of the spelling itself ('inch and a half')."""

    @property
    def value(self) -> Decimal:
        """The likeliest value."""
        return self.values[0]


_FRACTION_END = r"(?:ths?|rds?|nds?)?(?![\d/\\]|[.,]\d)"
_INCH_MARK = (
    r"\s?(?:\"|''|-?\s?(?:in(?:ch)?|pulgadas?|plg|polegadas?|zoll|pouces?|pollic[ei])\b\.?)"
    r"[^\S\n]?(?:(?:and|&|und|et|y|e|en)\s|-[^\S\n]?)?"
)
"""A dash or a fraction on the next line begins a row of its own."""
_MARKED = r"\s?(?:\"|''|-?\s?(?:in(?:ch)?|pulgadas?|zoll|pouces?|pollic[ei])\b\.?)"
_TWO_MARKED = re.compile(
    rf"\d{{1,3}}{_MARKED}\s?(?:and|&|und|et|y|e|en)\s\d{{1,2}}/\d{{1,2}}{_MARKED}", re.IGNORECASE
)
"""'1" and 7/8"', '1 inch and 1/2 inch' are two lengths."""
# Longest forms first. All quantifiers are bounded, so no input can make the match run away.
_NUMBER = late_pattern(
    r"(?P<whole>\d{1,3})"
    rf"(?:(?P<mark>{_INCH_MARK})|[^\S\n]?-\s{{0,3}}| (?:and |& )?|\.(?=\d{{1,2}}/\d))"
    rf"(?P<top>\d{{1,2}})\s?[/\\]\s?(?P<under>\d{{1,2}}){_FRACTION_END}"
    rf"|(?P<numer>\d{{1,3}})\s?[/\\]\s?(?P<denom>\d{{1,2}}){_FRACTION_END}"
    r"|(?P<long>\d{1,3}(?:\.\d{3}){1,3},\d{1,4}|\d{1,3}(?:,\d{3}){1,3}\.\d{1,4})(?![\d.,]\d)"
    r"|(?P<thousands>\d{1,3}(?:[.,']\d{3}){1,3}(?![\d.,]\d|\d))"
    r"|(?P<decimal>\d{0,6}\.\d{1,6}|\d{0,6},\d{1,6}(?![.]\d)|\d{1,9})",
    re.IGNORECASE,
)


_PART_OF_INCH = {
    "0.5": "half | mezzo | mezza | media | medio | demi | halb\\w* | halve? | meia",
    "0.25": "quarter | quarto | cuarto | quart | viertel | kwart",
    "0.125": "eighth | ottavo | octavo | huitième | achtel | achtste",
    "0.75": "three[ -]quarters? | tre quarti | tres cuartos | trois quarts | dreiviertel",
}
_WITH_PART = late_pattern(
    r"(?P<whole>\d{1,2})\s?(?:inch(?:es)?|pollic[ei]|pulgadas?|pouces?|zoll|duim|polegadas?)\s"
    r"(?:and|e|y|et|und|en)\s(?!half\sfor\s)"
    r"(?:an?\s|une?\s|uno?\s|una\s|eine?\s|een\s)?(?:"
    + "|".join(
        f"(?P<p{number}>{words.replace(' | ', '|')})"
        for number, words in enumerate(_PART_OF_INCH.values())
    )
    + r")\b(?!\s(?:dozen|of\b))",
    re.IGNORECASE,
)
"""'1 inch and a half', '1 pollice e mezzo', '1 Zoll und ein Viertel'; in 'on 4 inch and half for
2 x .065' it is half of the mandrels."""


def _with_part(text: str, position: int) -> Number | None:
    match = _WITH_PART.match(text, position)
    if match is None:
        return None
    parts = [part for n, part in enumerate(_PART_OF_INCH) if match[f"p{n}"] is not None]
    value = int(match["whole"]) + Decimal(parts[0])
    return Number(match.start(), match.end(), (value,), "mixed", unit="in")


def number_at(text: str, position: int) -> Number | None:
    """The number that starts exactly at ``position``, or None."""
    spoken = _with_part(text, position)
    if spoken is not None and not are_two(text, position, spoken.end):
        return spoken
    match = _NUMBER.match(text, position)
    if match is None:
        return None
    if match["under"] is not None:
        return _mixed(match) or _plain_decimal(text, match.start())
    if match["denom"] is not None and is_bore_by_od(
        text, position, int(match["numer"]), int(match["denom"])
    ):
        return _plain_decimal(text, position)
    if match["denom"] is not None:
        return _fraction(match) or _plain_decimal(text, match.start())
    if match["long"] is not None:
        digits = match["long"].replace("." if match["long"][-5:].find(",") >= 0 else ",", "")
        value = Decimal(digits.replace(",", "."))
        return Number(match.start(), match.end(), (value,), "decimal")
    if match["thousands"] is not None:
        return _thousands(match)
    return _plain_decimal(text, match.start())


def _mixed(match: re.Match[str]) -> Number | None:
    top, under = int(match["top"]), int(match["under"])
    if under not in INCH_FRACTIONS or not 0 < top < under:
        return None
    value = int(match["whole"]) + exact(Fraction(top, under))
    if int(match["whole"]) > 99 or _TWO_MARKED.match(match.string, match.start()):
        return None
    if match["mark"] and are_two(match.string, match.start(), match.end()):
        return None
    unit = "in" if match["mark"] else None
    return Number(match.start(), match.end(), (value,), "mixed", unit=unit)


def _fraction(match: re.Match[str]) -> Number | None:
    numer, denom = int(match["numer"]), int(match["denom"])
    if denom not in INCH_FRACTIONS or numer == 0:
        return None
    value = exact(Fraction(numer, denom))
    if _parts_a_line(match, value):
        return None
    if numer < denom:
        return Number(match.start(), match.end(), (value,), "fraction")
    if gcd(numer, denom) > 1 and not _INCH_BEHIND.match(match.string, match.end()):
        return None  # "tube 20/16": OD and bore; nobody leaves an inch measure unreduced
    digits = match["numer"]
    if len(digits) >= 2:
        # "15/8": the space of "1 5/8" is easily lost; nobody measures in fifteen eighths.
        whole, rest = int(digits[:-1]), int(digits[-1])
        if len(digits) == 3 or (denom >= 16 and int(digits[1:]) < denom and len(digits) > 2):
            whole, rest = int(digits[0]), int(digits[1:])
        if 0 < rest < denom and whole > 0:
            joined = whole + exact(Fraction(rest, denom))
            return Number(
                match.start(),
                match.end(),
                (joined, value),
                "mixed",
                why=f"{match[0].strip()} may be {whole}-{rest}/{denom} with the space lost",
            )
    if numer % denom == 0 or numer > 3 * denom:
        return None  # "8/2" or "31/4" is no measure: a date or a ratio
    return Number(match.start(), match.end(), (value,), "fraction")


def _parts_a_line(match: re.Match[str], value: Decimal) -> bool:
    """'Mandrel x2 / 32 x 1.5 / R 64': no tube of 2/32 has a wall of 1.5. Nor is 12/16 a part of
    'diameters 12 / 16 / 22'."""
    if _SPACED.fullmatch(match[0]) is None:
        return False
    ahead = match.string[max(0, match.start() - _SLASH_AHEAD) : match.start()]
    if _LISTED_BEHIND.match(match.string, match.end()) or _LISTED_AHEAD.search(ahead):
        return True
    wall = _TIMES.match(match.string, match.end())
    return wall is not None and Decimal(wall[1].replace(",", ".")) >= value


def _thousands(match: re.Match[str]) -> Number:
    """'1,500' or '2.350': a thousands mark or a decimal mark, which only the context can tell."""
    written = match["thousands"]
    joined = Decimal(re.sub(r"[.,']", "", written))
    marks = re.findall(r"[.,']", written)
    if len(marks) > 1 or marks[0] == "'":
        return Number(match.start(), match.end(), (joined,), "integer")
    pointed = Decimal(written.replace(",", "."))
    if marks[0] == "." or written.startswith("0"):
        return Number(match.start(), match.end(), (pointed,), "decimal")
    why = f"{written} may be {pointed} with a decimal comma"
    return Number(match.start(), match.end(), (joined, pointed), "integer", why=why)


_SPACED = re.compile(r"\d{1,3}\s[/\\]\s\d{1,2}")
_SLASH_AHEAD = 8
_LISTED_BEHIND = re.compile(r"(?:\s?mm)?\s/\s\d{1,3}(?![\d/]|[- ]\d)")
_LISTED_AHEAD = re.compile(r"\d(?:\s?mm)?\s/\s$")
_TIMES = re.compile(r"\s?[x×*]\s?(\d{0,3}[.,]\d{1,4}|\d{1,3})(?![\d/])")
_INCH_BEHIND = re.compile(r"\s?-?\s?(?:\"|''|in\b|inch)", re.IGNORECASE)
_DECIMAL = re.compile(r"\d{0,6}\.\d{1,6}|\d{1,6},\d{1,6}(?!\.\d)|\d{1,9}")


def _plain_decimal(text: str, position: int) -> Number | None:
    match = _DECIMAL.match(text, position)
    if match is None:
        return None
    written = match[0]
    if re.fullmatch(r"0\d{2}", written):
        # "049 wall": nobody writes a count with a leading zero; a wall loses its point.
        return Number(match.start(), match.end(), (Decimal(f"0.{written}"),), "decimal")
    style: Style = "decimal" if "." in written or "," in written else "integer"
    return Number(match.start(), match.end(), (Decimal(written.replace(",", ".")),), style)


def exact(fraction: Fraction) -> Decimal:
    """A fraction of an inch in decimals: 0.375 for 3/8."""
    return Decimal(fraction.numerator) / Decimal(fraction.denominator)


def scaled(number: Number, factor: Decimal) -> Number:
    """The same spelling with every value multiplied ('ninety five thou')."""
    return replace(number, values=tuple(value * factor for value in number.values))
