"""Signs that stand right before a number and say what it is: 'R57', 'Ø38', 's=1,5', 'sch 40'."""

from __future__ import annotations

import re
from dataclasses import dataclass

from ...late_pattern import late_pattern
from ..text.patterns import any_of
from ..text.roles import Role

_NUMBER = r"(?=[\d.])"
_GAUGE_NUMBER = r"(?=\d{1,2}\b(?!\s?[./]\d))"
_INNER = r"innen|intérieure?|interieur|interior|intern[aeo]|binnen|inw\.?"
_PREFIXES: tuple[tuple[str, Role, str], ...] = (
    ("inside", "inside_r", any_of(
        rf"\b(?:ri|ir|rin|i\.r\.?|r[._ ]i)\s?[=:]?\s?{_NUMBER}",
        rf"\br\.?\s?(?:inside|inner|int|inn|ins|{_INNER})\.?\s?[=:]?\s?{_NUMBER}",
        rf"\b(?:inside|inner|int\.?|inn\.?|{_INNER})\sr\.?\s?[=:]?\s?{_NUMBER}",
    )),
    ("radius", "radius", any_of(
        r"\br\s?[=:]\s? | \br(?=[\d.]) | \br\.?[ \t](?=\d) | \br[mcb]\s?[=:]?\s?(?=[\d.])"
    )),
    ("wall", "wall", any_of(
        r"\b[tse]\s?[=:]\s?(?=[\d.,]) | (?:\b|(?<=x))t(?=\d) | \bs(?=\d[.,]\d)",
        r"\bwt?\s?[=:]\s?(?=[\d.]) | (?<=[/,;x×|]\s)[ts]\s(?=\d[.,]\d)",
    )),
    ("od", "od", any_of(
        r"\b(?:da|od|de)(?:\s?[=:]\s?|\s?(?=\d\d\s?x)|(?=[\d.]))",
        r"\b(?-i:D[Aa])\s(?=\d)",  # not the Italian "barre da 6 m",
        r"\b(?-i:De)\s(?=\d{2,3}(?:[.,]\d)?(?:\smm)?\s?(?:[,;.]\s|\n|$))",  # "De 42,4, sp. 2"
        r"\bd\s?[=:]\s?(?=[\d.]) | \bd(?=\d\d|\d[.,]\d|\d\s?[x×]) | Ø\s?[=:]?\s?(?=[\d.,])",
    )),
    ("id", "id", any_of(r"\b(?:di|id)(?:\s?[=:]\s?|(?=[\d.])) | Øi\s?[=:]?\s?(?=\d)")),
    ("clr", "clr", rf"\bclr(?:\s?[=:]\s?|{_NUMBER})"),
    ("times", "times_d",
        r"\b(?:r\s?/\s?d|clr\s?/\s?od|d\s?ratio|d\sof\sbend|bend\sratio)\s?(?:of\s|is\s|[=:])?\s?"
        + _NUMBER),
    ("sch", "schedule",
        r"\b(?:sch(?:[ée]d(?:ul[aeo])?)?|schd|c[ée]d(?:ul[ae])?|s/)\.?\s?-?\s?\#?"
        r"(?=\d|ten\b|forty\b|eighty\b|five\b)"),
    ("dn", "dn", r"\bdn\s?(?=\d)"),
    ("nps", "nps", r"\b(?:nps|ips)\s?(?=\d)"),
    ("gauge", "wall", any_of(
        r"\b(?:gauge|gage|ga|bwg|swg|cal(?:ibre|ibro)?\.?)\s?[:\#=]?\s?(?:no\.?\s?)?"
        + _GAUGE_NUMBER,
        # a label in its column: "gauge      16", "wall (SWG) | 16", "BWG no. ..... 16"
        r"\b(?:gauge|gage|ga|bwg|swg)\.?(?:\sno)?\.?\s?\)?"
        r"(?:\s?[:=|]|\s?\.{2,40}|\s[–-](?=\s))?[ \t]{0,40}" + _GAUGE_NUMBER,
        r"\bno\.?\s?(?=\d{1,2}\s?(?:ga|gauge|gage)\b)",
    )),
    ("dash", "dash", any_of(
        r"\bdash\s?-?\s?(?=\d{1,2}\b)",
        r"(?<![\w.)])-(?=\d{1,2}\s?(?:an\b|tub(?:e|ing)\b|line\b))",
    )),
)  # fmt: skip
_PREFIX = late_pattern(
    "|".join(f"(?P<{name}>{pattern})" for name, _, pattern in _PREFIXES), re.IGNORECASE
)
_ROLE: dict[str, Role] = {name: role for name, role, _ in _PREFIXES}
PREFIX_STARTS = frozenset("bcdeginorstwBCDEGINORSTWØ-")
"""No prefix begins with another character."""
_BEHIND_FIGURE = late_pattern(
    r"(?P<chained>[x×*/][ \t]?)?(?<![\d.,/])\d(?:[\d.,/]*\d)?[ \t]?(?:mm|in|[\"”″])?[ \t]?$"
)
_THICKNESS = late_pattern(r"\d+[.,]\d|\d\s?mm")


@dataclass(frozen=True, slots=True)
class Prefix:
    """A sign before a number: its name, the role it gives, and where the number begins."""

    name: str
    role: Role
    end: int
    assigns: bool
    """It ends in ':' or '=': a label."""
    unit: str = ""
    """'ga', 'bwg' or 'swg' where the sign names a gauge."""


def prefix_at(text: str, place: int, *, after_times: bool) -> Prefix | None:
    """The sign that begins exactly there, or None. ``after_times``: a times sign stands before."""
    match = _PREFIX.match(text, place)
    if match is None or match.lastgroup is None:
        return None
    name, written = match.lastgroup, match[0]
    if "\t" in written:
        return None  # a cell that heads a row: "R	57	76"
    if place and text[place - 1].isalnum() and name != "od" and not after_times:
        return None
    if name == "inside" and " " in written.strip() and written[0] not in "rR":
        told = _BEHIND_FIGURE.search(text[max(0, place - 24) : place])
        if told is not None and not told["chained"]:
            return None  # "25 outside, 22 inside R 57": the bore
    if written == "T" and not _THICKNESS.match(text, match.end()):
        return None  # a temper or a grade: "6061 T6", "SA213 T22"
    unit = ""
    if name == "gauge":
        sign = written[:3].casefold()
        unit = sign if sign in ("bwg", "swg") else "ga"
    return Prefix(name, _ROLE[name], match.end(), written.rstrip().endswith((":", "=")), unit)
