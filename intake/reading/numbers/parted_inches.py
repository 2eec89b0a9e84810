"""'One inch and 7/8 tube': 1-7/8, or a one inch tube and one of 7/8?

The text tells where it names the two on their own: 'the one inch on a 4 inch center line and the
7/8 on 3-1/2'. Where it names one only, or says 'both' or 'one of each' beside a single such tube,
it cannot be told: that is a doubt.
"""

from __future__ import annotations

import re
from functools import lru_cache

from ...late_pattern import late_pattern

ONE_OR_TWO = "one size, or a size in whole inches and a fraction of an inch?"

_WHOLES = {
    word: number
    for number, word in enumerate("one two three four five six seven eight".split(), start=1)
}
_PARTS = {
    "half": "1/2", "quarter": "1/4", "three quarter": "3/4", "three quarters": "3/4",
    "seven eighths": "7/8", "seven eighth": "7/8", "five eighths": "5/8", "five eighth": "5/8",
    "three eighths": "3/8", "three eighth": "3/8",
}  # fmt: skip
_THE = r"(?:the|das|die|der|den|dem|le|la|el|il|lo|de|het|beim|im|du|al|del)"
_INCH = r"(?:\"|''|inch(?:es)?|in\b|zoll|pouces?|pulgadas?|pollic[ei]|duim)"
_PART = r"\d{1,2}/\d{1,2}|" + "|".join(sorted(map(re.escape, _PARTS), key=len, reverse=True))
_JOINED = late_pattern(
    rf"\b(?P<whole>\d{{1,2}}|{'|'.join(_WHOLES)})[\s-]?{_INCH}\s?(?:and|&|und|et|y|e|en)\s(?:an?\s)?"
    rf"(?P<part>{_PART})(?![\d/])"
)
_WHOLE_ALONE = late_pattern(
    rf"\b{_THE}\s(?P<whole>\d{{1,2}}|{'|'.join(_WHOLES)})[\s-]?{_INCH}"
    rf"(?!\s?(?:and|&|und|et|y|e|en)?\s?(?:an?\s)?(?:{_PART}))"
)
_PART_ALONE = late_pattern(rf"\b{_THE}\s(?P<part>{_PART})(?![\d/])")


def are_two(text: str, start: int, end: int) -> bool:
    """Whether what is written there, 'one inch and 7/8', is two sizes by the rest of ``text``."""
    whole, part = _joined(text[start:end].casefold())
    wholes, parts = _named_alone(text)
    return whole in wholes and part in parts


def perhaps_two(text: str, start: int, end: int) -> bool:
    """Whether it may be two: one of them is named alone."""
    whole, part = _joined(text[start:end].casefold())
    wholes, parts = _named_alone(text)
    return whole in wholes or part in parts


def is_joined(said: str) -> bool:
    """Whether the words are whole inches and a fraction joined by an 'and'."""
    return _joined(said) != ("", "")


def _joined(said: str) -> tuple[str, str]:
    match = _JOINED.match(" ".join(said.split()))
    return (_digits(match["whole"]), _fraction(match["part"])) if match is not None else ("", "")


@lru_cache(maxsize=16)
def _named_alone(text: str) -> tuple[frozenset[str], frozenset[str]]:
    said = " ".join(text.casefold().split())
    return (
        frozenset(_digits(match["whole"]) for match in _WHOLE_ALONE.finditer(said)),
        frozenset(_fraction(match["part"]) for match in _PART_ALONE.finditer(said)),
    )


def _digits(word: str) -> str:
    return str(_WHOLES.get(word, word))


def _fraction(word: str) -> str:
    return _PARTS.get(word, word)
