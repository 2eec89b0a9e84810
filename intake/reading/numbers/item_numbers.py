"""Sizes named by their number in the sender's list: 'item 3: 304', 'two mandrels of item 1'."""

from __future__ import annotations

import re

from ...late_pattern import late_pattern

_ITEM = (
    r"(?:items?|lines?|pos(?:\.|itions?|itionen)?|zeilen?|lignes?|articles?|art[íi]culos?|"
    r"partidas?|righe|riga|voc[ei]|regels?)"
)
_JOINED = r"(?:\s?[,&+]\s?|\s(?:and|und|et|y|e|en)\s)"
_NUMBERS = rf"{_ITEM}\s?#?(?P<numbers>\d{{1,2}}(?:{_JOINED}\d{{1,2}}){{0,5}})(?![\d.,/]\d|\s?mm)"
_BEFORE = late_pattern(
    rf"\b{_NUMBERS}\s?(?:[:=-]\s?|\s(?:is|are|in|aus|ist|sind|en|est|sont|es|son|è|sono)\s)"
    r"(?:\w{1,8}\s){0,2}$",
    re.IGNORECASE,
)
_TO = r"\s(?:of|for|on|für|von|bei|zu|pour|de|para|per|di|voor|van)\s(?:the\s)?"
_AFTER = late_pattern(rf"{_TO}{_NUMBERS}", re.IGNORECASE)
_OTHERS = late_pattern(
    rf"(?:{_TO}|\s)(?:each\s(?:of|for)\s)?(?:(?:all\s)?the\s)?(?:others?|rest|(?:die\s|den\s)?"
    r"(?:anderen|übrigen)|les\sautres|los\sdemás|gli\saltri|de\sandere)\b",
    re.IGNORECASE,
)
_LOOK = 40


def items_before(text: str, start: int) -> tuple[int, ...]:
    """The numbers of the items that lead to a word: 'Items 1 and 2: A53'; none is empty."""
    return _numbers(_BEFORE.search(text[max(0, start - _LOOK) : start]))


def items_after(text: str, end: int) -> tuple[int, ...]:
    """The numbers of the items that follow a word: 'two of item 1', 'A53 for lines 1 and 2'."""
    return _numbers(_AFTER.match(text, end, end + _LOOK))


def speaks_of_others(text: str, end: int) -> bool:
    """Whether what follows is every other item: 'one of each of the others'."""
    return _OTHERS.match(text, end, end + _LOOK) is not None


def _numbers(match: re.Match[str] | None) -> tuple[int, ...]:
    return tuple(int(n) for n in re.findall(r"\d+", match["numbers"])) if match else ()
