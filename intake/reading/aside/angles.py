"""The bend angle: '90 deg', '180°', 'two 90s', 'U-bend', 'a quarter turn', 'coude à 90 degrés'.

Only what a bend can be meant by: a 37 degree flare, a cut, a temperature, a tolerance or the
turning of the tube between two bends is none. Of several angles the largest counts, since it asks
the most of the tooling.
"""

from __future__ import annotations

import re
from collections.abc import Iterator, Sequence
from decimal import Decimal
from itertools import pairwise

from ...late_pattern import late_pattern

WHOLE_TURN = Decimal(360)
_USUAL = frozenset(map(Decimal, (15, 30, 45, 60, 90, 120, 135, 180)))
"""Angles that stand without a word for degrees: '90 bend', 'two 45s'."""
_PLURAL = frozenset(map(Decimal, (45, 90, 180)))
"""'two 90s'; '60s' may be anything."""

_DEGREES = (
    r"(?:°|º|˚|degrees?\b|degs?\b|grad\b(?!\s?c\b)|gradi\b|grados?\b|graden\b|graad\b|degrés?\b"
    r"|degres?\b|stopni\b|grader\b)"
)
_BEND = (
    r"(?:bends?|bows?|elbows?|return\sbends?|biegung(?:en)?|bögen|bogen|rohrbogen|coudes?|cintrages?"
    r"|curv[ae]s?|codos?|gomiti|gomito|bocht(?:en)?|piegh?[ae])"
)
# A number is at most three digits and two decimals; nothing here can run away on a long text.
_ANGLE = late_pattern(
    rf"""
    (?P<sign>\+/?-\s?|±\s?|[-–−](?=\d))?
    (?<![\w.,/])(?P<number>\d{{1,3}}(?:[.,]\d{{1,2}})?)
    (?: \s?-?\s?(?P<degrees>{_DEGREES})
      | (?P<plural>['’]?s\b) | (?P<german>er\b)(?=[\s-]{{0,2}}{_BEND})
      | (?P<bend>[\s-]{{1,2}}{_BEND}\b)
    )
    """,
    re.VERBOSE | re.IGNORECASE,
)
_AFTER_WORD = late_pattern(
    rf"\b(?:{_BEND}|bent|bending|gebogen"
    r"|(?P<angle>(?:\w{0,8}winkel|angle|angolo|ángulo|angulo|hoek)))(?:\s?[:=]|\s)\s?(?:of\s|to\s|at\s|von\s|um\s|de\s|à\s|a\s|di\s|van\s|op\s)?"
    r"(?P<number>\d{1,3}(?:[.,]\d{1,2})?)(?!\s?(?:mm|cm|in\b|inch|\"|x\b|%|/)|\w|[.,/]\d)",
    re.IGNORECASE,
)
_WORDS: tuple[tuple[re.Pattern[str], Decimal], ...] = tuple(
    (late_pattern(rf"(?<!\w)(?:{words})(?!\w)", re.IGNORECASE), Decimal(angle))
    for angle, words in (
        (90, r"quarter[\s-]turns?|right[\s-]angle\sbends?|viertelkreis|quart\sde\stour"),
        (
            180,
            r"u-?\s?bends?|return\sbends?|hairpins?|half[\s-]turns?|u-?bogen|u-?bögen|halbkreis"
            r"|demi-tour|épingles?|curva\sa\su|curvas\sen\su|u-?bocht(?:en)?",
        ),
    )
)
# What is no bend, right after the degrees or a little before the number.
_NO_BEND_AFTER = late_pattern(
    r"\s?-?(?:[cfk]\b(?!\s?bend)|celsius|fahrenheit"
    r"|(?:included\s)?(?:flares?|flaring|cones?|chamfers?|bevels?|cuts?|mitres?|miters?|countersinks?"
    r"|tapers?|nose|twist|rotations?|plane|apart|weather|heat|outside|wedge|ball|per\sjoint|a\sjoint"
    r"|fasen?|konus|kegel|gehrung|chanfrein|bisel|smusso)\b)",
    re.IGNORECASE,
)
_NO_BEND_BEFORE = late_pattern(
    r"(?:temperature|temp|preheat\w*|heat(?:ed)?\sto|rotat(?:ed?|ion|ing)(?:\sby|\sof)?|twist(?:ed)?"
    r"|tolerance(?:\sof)?|springback(?:\sof)?|plus\sor\sminus|within|chamfered|mitred|mitered"
    r"|flared|cut\sat|seam\sat|weld\sat|apart\sby|turned)\s?(?:to|at|of|is|:)?\s?$"
    # years, and a radius or size: 'in the 90s', 'r 90 bend'
    r"|(?:in|of|since|from)\sthe\s(?:early\s|late\s|mid[\s-])?$"
    r"|\b(?:r|rad|radius|rayon|raggio|radio|straal|clr|od|x)\s?[:=]?\s?$",
    re.IGNORECASE,
)


def find_angle(text: str, start: int = 0, end: int | None = None) -> Decimal | None:
    """The largest bend angle [deg] named in ``text[start:end]``; None where none is.

    Above 0 and up to 360; anything more is no bend. Never raises.

    >>> find_angle("1.75 x .083 on 4.5 clr, 90 deg"), find_angle("37 degree flare, 20 °C")
    (Decimal('90'), None)
    """
    return max(_angles(text[start:end]), default=None)


def angles_of(text: str, spans: Sequence[tuple[int, int]]) -> list[Decimal | None]:
    """The bend angle of each request, whose words stand at ``spans`` of ``text``.

    Each has the angle that follows it up to the next request, the last up to the end of its line;
    else what is said before or after all of them ("all 90 degrees"). Requests that share words
    ("on 3, 4 and 6 in radius") share the angle.
    """
    if not spans:
        return []
    starts = [start for start, _ in spans]
    if len(spans) == 1 or any(later <= start for start, later in pairwise(starts)):
        return [find_angle(text)] * len(spans)
    line_end = text.find("\n", spans[-1][1])
    last = len(text) if line_end < 0 else line_end
    around = (find_angle(text, 0, starts[0]), find_angle(text, last))
    shared = max((angle for angle in around if angle is not None), default=None)
    own = [find_angle(text, start, end) for start, end in pairwise([*starts, last])]
    return [shared if angle is None else angle for angle in own]


def _angles(text: str) -> Iterator[Decimal]:
    for found in _ANGLE.finditer(text):
        value = Decimal(found["number"].replace(",", "."))
        if found["sign"] or not 0 < value <= WHOLE_TURN:
            continue
        if found["degrees"] is None and value not in _USUAL:
            continue
        if found["plural"] and value not in _PLURAL:
            continue
        if found["bend"] and found[0].rstrip().casefold().endswith("s"):
            continue  # '90 bends' is how many
        before = text[max(0, found.start() - 40) : found.start()]
        if _NO_BEND_BEFORE.search(before) or _NO_BEND_AFTER.match(text, found.end()):
            continue
        yield value
    for found in _AFTER_WORD.finditer(text):
        value = Decimal(found["number"].replace(",", "."))
        if value in _USUAL or (found["angle"] and 0 < value <= WHOLE_TURN):
            yield value
    for words, value in _WORDS:
        if words.search(text):
            yield value
