"""Which letters a text must hold for a word pattern to be found in it: looked at before searching.

Most cues stand in no given mail. To search each is the dearest way to find that out; to ask whether
three letters of it stand anywhere in the text is the cheapest. The answer errs on one side only:
"may stand here" costs a search, "stands nowhere" is certain.
"""

from __future__ import annotations

import importlib
from collections import defaultdict
from collections.abc import Iterable
from functools import lru_cache
from typing import Any

GRAM = 3
"""Letters looked at together."""
Groups = tuple[frozenset[str], ...]
"""Of a text with a match, at least one group is there whole."""
_SELDOM_LAST = "etaoinsrhldcumfpgwybvkxjqz"
"""Letters by how often English has them; any other sign is rarer still."""

# What re.IGNORECASE takes for i, s and k besides their capitals.
_EVEN = str.maketrans({"\u0130": "i", "\u0131": "i", "\u017f": "s", "\u212a": "k"})
_MOST_GROUPS = 400
"""More than that are not looked at one by one."""


@lru_cache(maxsize=256)
def letters_of(text: str) -> frozenset[str]:
    """Every three letters that stand together in a text, without regard to case."""
    even = text.lower() if text.isascii() else text.translate(_EVEN).lower()
    return frozenset([even[at : at + GRAM] for at in range(len(even) - GRAM + 1)])


class Needs:
    """What a text has to hold for a pattern to be found in it."""

    def __init__(self, groups: Groups) -> None:
        by_rarest = defaultdict(list)
        for group in groups:
            by_rarest[max(group, key=_rarity)].append(group)
        self._by_rarest = dict(by_rarest)
        self._rarest = frozenset(by_rarest)

    def met_by(self, letters: frozenset[str]) -> bool:
        """Whether the pattern may be found in a text with these letters."""
        if self._rarest.isdisjoint(letters):
            return False
        there = self._rarest & letters
        return any(group <= letters for one in there for group in self._by_rarest[one])


def needs_of(pattern: str, flags: int) -> Needs | None:
    """What ``pattern`` needs of a text; None where nothing is certain."""
    groups = _of_items(list(_parser.parse(pattern, flags)), "")
    return None if groups is None else Needs(groups)


def _rarity(gram: str) -> tuple[int, str]:
    places = (_SELDOM_LAST.find(letter) for letter in gram)
    return sum(len(_SELDOM_LAST) if at < 0 else at for at in places), gram


# How a pattern is built, as Python's own ``re`` reads it; documented nowhere, steady since 2.0.
_parser: Any = importlib.import_module("re._parser")
_WIDTHLESS = ("AT", "ASSERT", "ASSERT_NOT")


def _of_items(items: list[Any], run: str) -> Groups | None:
    """The best of what the parts of a sequence need, after the letters ``run`` before it."""
    best: Groups | None = None
    for operation, value in items:
        name = str(operation)
        if name in _WIDTHLESS:
            continue
        if name == "LITERAL" and (letter := _letter(value)):
            run += letter
            continue
        if name == "SUBPATTERN" and len(value[3]) != 1:
            name, value = "BRANCH", (None, [value[3]])
        elif name == "SUBPATTERN":
            # A group around one thing is that thing, in its place.
            return _better(best, _of_items([*value[3], *_after(items, operation, value)], run))
        if name == "BRANCH":
            parts = [_of_items(list(branch), run) for branch in value[1]]
            whole = None if None in parts else tuple(g for part in parts if part for g in part)
            best = _better(best, whole)
        elif name in ("MAX_REPEAT", "MIN_REPEAT") and value[0] > 0:
            best = _better(best, _of_items(list(value[2]), run))
        best, run = _better(best, _of_run(run)), ""
    return _better(best, _of_run(run))


def _after(items: list[Any], operation: Any, value: Any) -> list[Any]:
    at = next(n for n, item in enumerate(items) if item[0] is operation and item[1] is value)
    return items[at + 1 :]


def _letter(code: int) -> str:
    """The letter as it stands in ``letters_of``; empty where case is not that simple."""
    letter = chr(code).translate(_EVEN)
    small = letter.lower()
    plain = code < 0x100 and code != 0xB5  # the micro sign is a Greek letter to some
    return small if plain or small == letter == letter.upper() else ""


def _of_run(run: str) -> Groups | None:
    grams = frozenset(run[at : at + GRAM] for at in range(len(run) - GRAM + 1))
    return (grams,) if grams else None


def _better(one: Groups | None, other: Groups | None) -> Groups | None:
    """Whichever is there more seldom: few groups, and of many letters."""
    known = [needs for needs in (one, other) if needs is not None and len(needs) <= _MOST_GROUPS]
    return min(known, key=_how_common, default=None)


def _how_common(needs: Iterable[frozenset[str]]) -> float:
    return sum(0.1 ** min(len(group), 4) for group in needs)
