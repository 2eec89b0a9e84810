"""Numbers in words: 'inch and a half', 'one twenty', 'point zero nine five'."""

from __future__ import annotations

import re
from decimal import Decimal
from fractions import Fraction

from ...late_pattern import late_pattern
from .numbers import INCH_FRACTIONS, Number, Style, exact
from .parted_inches import are_two

UNITS = {
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
WORDS = frozenset(UNITS) | frozenset(_TENS) | frozenset(_PARTS) | {"point", "hundred", "half"}
_WORD = re.compile(r"[a-z]+|\d{1,2}\s?/\s?\d{1,2}|[\s-]{1,3}|.", re.IGNORECASE | re.DOTALL)
_LONGEST = 90
_LONE_INCH = late_pattern(
    r"(?:an\s)?inch(?:,\s|\s?/\s?|,?\s(?:and|or|&)\s)(?:an?\s)?"
    r"(?:inch\b|(?:one|two|three|four)\s(?:inch|and\b)"
    r"|\d{1,2}(?:[- ]\d{1,2}/\d{1,2}|\.\d{1,4})?\s?-?(?:\"|''|in\b|inch))",
    re.IGNORECASE,
)
"""'Inch, inch and a quarter and inch and a half': the first is one inch."""
_OF_A_CIRCLE = re.compile(r"[\s-](?:circles?|turns?|rounds?|arcs?|rings?)\b", re.IGNORECASE)
_PER_INCH = late_pattern(
    r"(?:[\d\"/-]\s?|\b(?:per|square|cubic|every|of|half|quarter|eighths?|sixteenths?|a|the|by)\s)$",
    re.IGNORECASE,
)


def words_at(text: str, position: int) -> Number | None:
    """A number in words that starts at ``position`` ('inch and a half', 'one twenty'), or None."""
    parts: list[tuple[str, int, int]] = []
    for match in _WORD.finditer(text, position, position + _LONGEST):
        piece = match[0].lower()
        if piece.isspace() or set(piece) <= {" ", "-", "\n"}:
            continue
        if piece == "&" and parts:
            piece = "and"  # "inch & 1/8"
        if not (piece[0].isalpha() or "/" in piece):
            break
        parts.append((piece, match.start(), match.end()))
        if len(parts) >= 8:
            break
    return _spoken(parts, text) if parts else None


def _spoken(parts: list[tuple[str, int, int]], text: str) -> Number | None:
    names = [name for name, _, _ in parts]
    start = parts[0][1]

    def number(used: int, value: Decimal, style: Style, unit: str | None = None) -> Number:
        return Number(start, parts[used - 1][2], (value,), style, unit=unit)

    if names[0] in ("inch", "an") and (names[0] == "inch" or names[1:2] == ["inch"]):
        used = 1 if names[0] == "inch" else 2
        more = _part(names, used, needs_and=False)
        if (
            more is None
            and _LONE_INCH.match(text, start)
            and not _PER_INCH.search(text[max(0, start - 12) : start])
        ):
            return number(used, Decimal(1), "words", "in")
        return number(more[0], 1 + more[1], "words", "in") if more else None
    if names[0] == "point":
        digits = []
        for name in names[1:]:
            if name in UNITS and UNITS[name] < 10:
                digits.append(str(UNITS[name]))
            elif name in _TENS or name in UNITS:
                digits.append(str(_TENS.get(name, UNITS.get(name))))
            else:
                break
        used = 1 + len(digits)
        return number(used, Decimal("0." + "".join(digits)), "decimal") if digits else None
    bare = _part(names, 0, needs_and=False)
    if bare and bare[0] == 1 and _OF_A_CIRCLE.match(text, parts[0][2]):
        return None  # "a series of quarter circles"
    if bare and (names[0] != "half" or names[1:2] in (["inch"], ["an"])):
        return number(bare[0], bare[1], "words")
    behind_oh = _whole(names[1:]) if names[0] in ("oh", "zero") else None
    if behind_oh is not None and 10 <= behind_oh[1] < 1000:
        thousandths = Decimal(behind_oh[1]).scaleb(-3)
        return number(1 + behind_oh[0], thousandths, "decimal")  # "oh nine five"
    whole = _whole(names)
    if whole is None:
        return None
    used, value, speech = whole
    if names[used : used + 1] == ["point"]:
        rest = _spoken(parts[used:], text)
        if rest is not None:
            return Number(start, rest.end, (value + rest.value,), "decimal")
    if names[used : used + 1] in (["inch"], ["inches"]):
        more = _part(names, used + 1, needs_and=True)
        if more and not are_two(text, start, parts[more[0] - 1][2]):
            return number(more[0], value + more[1], "words", "in")
    more = _part(names, used, needs_and=True)
    if more and not speech:
        return number(more[0], value + more[1], "words")
    return number(used, Decimal(value), "speech" if speech else "words")


def _whole(names: list[str]) -> tuple[int, int, bool] | None:
    """(words used, value, spoken as bare digits) for 'six', 'ninety five', 'one twenty'."""
    if names[1:3] == ["hundred", "and"] and len(names) > 3:
        # "One hundred and five", but "one hundred and three quarters".
        part = names[4:5] and names[4] in _PARTS
        spoken = None if part or names[3] == "a" else _whole([names[0], "hundred", *names[3:]])
        if spoken is not None and spoken[0] > 2 and spoken[2]:
            return spoken[0] + 1, spoken[1], True
    run: list[int] = []
    for name in names:
        if name in UNITS:
            run.append(UNITS[name])
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
    if at < len(names) and names[at] in ("and", "an", "n"):
        at += 1
    elif needs_and and not (at < len(names) and names[at] in UNITS):
        return None
    if at >= len(names):
        return None
    written = re.fullmatch(r"(\d{1,2})\s?/\s?(\d{1,2})", names[at])
    if written and int(written[2]) in INCH_FRACTIONS and int(written[1]) < int(written[2]):
        return at + 1, exact(Fraction(int(written[1]), int(written[2])))
    top = 1
    if names[at] in ("a", "an"):
        at += 1
    elif names[at] in UNITS and 0 < UNITS[names[at]] < 64:
        top = UNITS[names[at]]
        at += 1
    if at < len(names) and names[at] in _PARTS and top < _PARTS[names[at]]:
        return at + 1, exact(Fraction(top, _PARTS[names[at]]))
    return None
