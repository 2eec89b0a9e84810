"""Numbers as customers write them, each with every value its spelling allows.

"1-3/4", "1 3/4", '1" 3/4', ".095", "38,1", "15/8" (1-5/8 with the space lost, or 1.875),
"inch and three quarter", "one twenty". No unit and no role here: only what the figures say.
"""

from __future__ import annotations

import re
from dataclasses import dataclass, replace
from decimal import Decimal
from fractions import Fraction
from typing import Literal

Style = Literal["integer", "decimal", "fraction", "mixed", "words", "speech"]
_INCH_FRACTIONS = frozenset({2, 4, 8, 16, 32, 64})


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


# Longest forms first. All quantifiers are bounded, so no input can make the match run away.
NUMBER = re.compile(
    r"""
    (?P<whole>\d{1,3})
      (?:(?P<mark>\s?(?:"|''|-?\s?(?:in(?:ch)?|pulgadas?|plg|polegadas?|zoll|pouces?|pollici)\b\.?)\s?(?:and\s|-\s?)?)|\s?-\s{0,3}|\ {1,2}(?:and\ |&\ )?|\.(?=\d{1,2}/\d))
      (?P<top>\d{1,2})\s?[/\\]\s?(?P<under>\d{1,2})(?:ths?|rds?|nds?)?(?![\d/\\]|[.,]\d)
  | (?P<numer>\d{1,3})\s?[/\\]\s?(?P<denom>\d{1,2})(?:ths?|rds?|nds?)?(?![\d/\\]|[.,]\d)
  | (?P<long>\d{1,3}(?:\.\d{3}){1,3},\d{1,4}|\d{1,3}(?:,\d{3}){1,3}\.\d{1,4})(?![\d.,]\d)
  | (?P<thousands>\d{1,3}(?:[.,']\d{3}){1,3}(?![\d.,]\d|\d))
  | (?P<decimal>\d{0,6}\.\d{1,6}|\d{0,6},\d{1,6}(?![.]\d)|\d{1,9})
    """,
    re.VERBOSE,
)


def number_at(text: str, position: int) -> Number | None:
    """The number that starts exactly at ``position``, or None."""
    match = NUMBER.match(text, position)
    if match is None:
        return None
    if match["under"] is not None:
        return _mixed(match) or _shorter(text, match)
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
    if under not in _INCH_FRACTIONS or not 0 < top < under:
        return None
    value = int(match["whole"]) + _exact(Fraction(top, under))
    if int(match["whole"]) > 99:
        return None
    unit = "in" if match["mark"] else None
    return Number(match.start(), match.end(), (value,), "mixed", unit=unit)


def _shorter(text: str, match: re.Match[str]) -> Number | None:
    """What stands at the start of something that looked like a mixed number but is none."""
    return _plain_decimal(text, match.start())


def _fraction(match: re.Match[str]) -> Number | None:
    numer, denom = int(match["numer"]), int(match["denom"])
    if denom not in _INCH_FRACTIONS or numer == 0:
        return None
    value = _exact(Fraction(numer, denom))
    if numer < denom:
        return Number(match.start(), match.end(), (value,), "fraction")
    digits = match["numer"]
    if len(digits) >= 2:
        # "15/8": the space of "1 5/8" is easily lost; nobody measures in fifteen eighths.
        whole, rest = int(digits[:-1]), int(digits[-1])
        if len(digits) == 3 or (denom >= 16 and int(digits[1:]) < denom and len(digits) > 2):
            whole, rest = int(digits[0]), int(digits[1:])
        if 0 < rest < denom and whole > 0:
            joined = whole + _exact(Fraction(rest, denom))
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


def _exact(fraction: Fraction) -> Decimal:
    return Decimal(fraction.numerator) / Decimal(fraction.denominator)


# --- number words -------------------------------------------------------------------------------

_UNITS = {
    "zero": 0, "oh": 0, "o": 0, "one": 1, "two": 2, "three": 3, "four": 4, "five": 5, "six": 6,
    "seven": 7, "eight": 8, "nine": 9, "ten": 10, "eleven": 11, "twelve": 12, "thirteen": 13,
    "fourteen": 14, "fifteen": 15, "sixteen": 16, "seventeen": 17, "eighteen": 18, "nineteen": 19,
}  # fmt: skip
_TENS = {
    "twenty": 20, "thirty": 30, "forty": 40, "fourty": 40, "fifty": 50,
    "sixty": 60, "seventy": 70, "eighty": 80, "ninety": 90,
}  # fmt: skip
_PARTS = {
    "half": 2, "halves": 2, "quarter": 4, "quarters": 4, "fourth": 4, "fourths": 4,
    "eighth": 8, "eighths": 8, "eigth": 8, "eigths": 8, "eights": 8,
    "tenth": 10, "tenths": 10, "hundredth": 100, "hundredths": 100,
    "sixteenth": 16, "sixteenths": 16, "thirtysecond": 32, "thirtyseconds": 32,
}  # fmt: skip
WORDS = frozenset(_UNITS) | frozenset(_TENS) | frozenset(_PARTS) | {"point", "hundred", "half"}
_WORD = re.compile(r"[a-z]+|\d{1,2}\s?/\s?\d{1,2}|[\s-]{1,3}|.", re.IGNORECASE | re.DOTALL)
_LONGEST = 90


def words_at(text: str, position: int) -> Number | None:
    """A number in words that starts at ``position`` ('inch and a half', 'one twenty'), or None."""
    parts: list[tuple[str, int, int]] = []
    for match in _WORD.finditer(text, position, position + _LONGEST):
        piece = match[0].lower()
        if piece.isspace() or set(piece) <= {" ", "-", "\n"}:
            continue
        if not (piece[0].isalpha() or "/" in piece):
            break
        parts.append((piece, match.start(), match.end()))
        if len(parts) >= 8:
            break
    return _spoken(parts) if parts else None


def _spoken(parts: list[tuple[str, int, int]]) -> Number | None:
    names = [name for name, _, _ in parts]
    start = parts[0][1]

    def number(used: int, value: Decimal, style: Style, unit: str | None = None) -> Number:
        return Number(start, parts[used - 1][2], (value,), style, unit=unit)

    if names[0] in ("inch", "an") and (names[0] == "inch" or names[1:2] == ["inch"]):
        used = 1 if names[0] == "inch" else 2
        more = _part(names, used, needs_and=False)
        return number(more[0], 1 + more[1], "words", "in") if more else None
    if names[0] == "point":
        digits = []
        for name in names[1:]:
            if name in _UNITS and _UNITS[name] < 10:
                digits.append(str(_UNITS[name]))
            elif name in _TENS or name in _UNITS:
                digits.append(str(_TENS.get(name, _UNITS.get(name))))
            else:
                break
        used = 1 + len(digits)
        return number(used, Decimal("0." + "".join(digits)), "decimal") if digits else None
    bare = _part(names, 0, needs_and=False)
    if bare and (names[0] != "half" or names[1:2] in (["inch"], ["an"])):
        return number(bare[0], bare[1], "words")
    whole = _whole(names)
    if whole is None:
        return None
    used, value, speech = whole
    if names[used : used + 1] == ["point"]:
        rest = _spoken(parts[used:])
        if rest is not None:
            return Number(start, rest.end, (value + rest.value,), "decimal")
    if names[used : used + 1] in (["inch"], ["inches"]):
        more = _part(names, used + 1, needs_and=True)
        if more:
            return number(more[0], value + more[1], "words", "in")
    more = _part(names, used, needs_and=True)
    if more and not speech:
        return number(more[0], value + more[1], "words")
    return number(used, Decimal(value), "speech" if speech else "words")


def _whole(names: list[str]) -> tuple[int, int, bool] | None:
    """(words used, value, spoken as bare digits) for 'six', 'ninety five', 'one twenty'."""
    run: list[int] = []
    for name in names:
        if name in _UNITS:
            run.append(_UNITS[name])
        elif name in _TENS:
            run.append(_TENS[name])
        elif name == "hundred":
            run.extend([100] if run else [1, 100])  # "hundred twenty wall"
        else:
            break
        if len(run) >= 4:
            break
    if not run or names[0] == "o":
        return None
    if len(run) == 1:
        return (1, run[0], False) if run[0] else None
    if run[0] >= 20 and 0 < run[1] < 10:
        return 2, run[0] + run[1], True
    if len(run) >= 2 and run[1] == 100:
        used = len(run) - (1 if names[0] == "hundred" else 0)
        rest = sum(run[2:]) if all(part < 100 for part in run[2:]) else 0
        return used, run[0] * 100 + rest, True
    digits = "".join(str(one) for one in run)
    if len(run) == 3 and run[1] >= 20 and 0 < run[2] < 10:
        digits = f"{run[0]}{run[1] + run[2]}"
    return len(run), int(digits), True


def _part(names: list[str], at: int, *, needs_and: bool) -> tuple[int, Decimal] | None:
    """(words used in all, fraction) for '[and] three quarters', 'and a half', 'and 3/4'."""
    if at < len(names) and names[at] in ("and", "an"):
        at += 1
    elif needs_and and not (at < len(names) and names[at] in _UNITS):
        return None
    if at >= len(names):
        return None
    written = re.fullmatch(r"(\d{1,2})\s?/\s?(\d{1,2})", names[at])
    if written and int(written[2]) in _INCH_FRACTIONS and int(written[1]) < int(written[2]):
        return at + 1, _exact(Fraction(int(written[1]), int(written[2])))
    top = 1
    if names[at] in ("a", "an"):
        at += 1
    elif names[at] in _UNITS and 0 < _UNITS[names[at]] < 64:
        top = _UNITS[names[at]]
        at += 1
    if at < len(names) and names[at] in _PARTS and top < _PARTS[names[at]]:
        return at + 1, _exact(Fraction(top, _PARTS[names[at]]))
    return None


def scaled(number: Number, factor: Decimal) -> Number:
    """The same spelling with every value multiplied ('ninety five thou')."""
    return replace(number, values=tuple(value * factor for value in number.values))
