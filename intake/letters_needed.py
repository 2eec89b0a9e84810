"""What a text must hold for a word pattern to be found in it: looked at before searching.

Most cues stand in no given mail. To search each is the dearest way to find that out; to ask whether
a few letters of it stand anywhere in the text is the cheapest. The answer errs on one side only:
"may stand here" costs a search, "stands nowhere" is certain.
"""

from __future__ import annotations

import importlib
import re
from collections.abc import Iterable
from functools import cache
from typing import Any

Letters = tuple[str, ...]
"""Of a text with a match, at least one of them is there, case and kinds of digits made even."""

_SELDOM_LAST = " etaoinsrhldcumfpgwybv0kxjqz"
"""Letters by how often mail has them; any other sign is rarer still."""
_LONGEST = (8, 5, 3, 2, 1)
_MOST = 60
"""More spellings of so many letters are not told apart: fewer letters are looked at."""
_MOST_STARTS = 200
_SELDOM = 1e-7
"""Letters as seldom as that are seldom enough; nothing better is looked for."""

# What re.IGNORECASE takes for i, s and k besides their capitals.
_ALIKE = str.maketrans({"\u0130": "i", "\u0131": "i", "\u017f": "s", "\u212a": "k"})
_DIGIT, _SPACE = re.compile(r"\d"), re.compile(r"\s")


def _plain(letter: str) -> str:
    if letter.isspace():
        return " "
    return "0" if letter.isdecimal() else letter.lower()


_EVEN_ASCII = {code: _plain(chr(code)) for code in range(128)}


def evened(text: str) -> str:
    """A text of the same length without regard to case, to which digit, to which blank."""
    if text.isascii():
        return text.translate(_EVEN_ASCII)
    return _SPACE.sub(" ", _DIGIT.sub("0", text.translate(_ALIKE).lower()))


def needs_of(pattern: str, flags: int) -> Letters | None:
    """What ``pattern`` needs of a text; None where nothing is certain."""
    return _best(_parsed(pattern, flags))


def starts_of(pattern: str, flags: int) -> Letters | None:
    """What a match of ``pattern`` begins with; None where that may be anything."""
    items = _parsed(pattern, flags)
    for longest in _LONGEST[1:-1]:
        starts = _strings(items, longest, _MOST_STARTS)
        if starts is not None:
            return tuple(sorted(starts)) if min(map(len, starts)) > 1 else None
    return None


# How a pattern is built, as Python's own ``re`` reads it; documented nowhere, steady since 2.0.
_parser: Any = importlib.import_module("re._parser")
_WIDTHLESS = ("AT", "ASSERT", "ASSERT_NOT")
_REPEATS = ("MAX_REPEAT", "MIN_REPEAT", "POSSESSIVE_REPEAT")
Items = list[tuple[str, Any]]


def _parsed(pattern: str, flags: int) -> Items:
    return list(_flat(_parser.parse(pattern, flags)))


def _flat(parsed: Any) -> Iterable[tuple[str, Any]]:
    """The parts of a sequence by name, groups that only bracket some of them opened."""
    for operation, value in parsed:
        name = str(operation)
        if name == "SUBPATTERN":
            yield from _flat(value[3])
        elif name == "ATOMIC_GROUP":
            yield from _flat(value)
        elif name == "BRANCH":
            yield name, [list(_flat(one)) for one in value[1]]
        elif name in _REPEATS:
            yield "REPEAT", (value[0], value[1], list(_flat(value[2])))
        elif name not in _WIDTHLESS:
            yield name, value


def _best(items: Items) -> Letters | None:
    """What stands most seldom in a text, of all that the parts of a sequence need."""
    best: Letters | None = None
    least = 1.0
    run = False
    for at, (name, value) in enumerate(items):
        within, run = run, name == "LITERAL"
        if within and run:
            continue  # what begins within a word is more common than the word
        for needs in _candidates(items, at, name, value):
            common = sum(map(_odds, needs))
            if best is None or common < least:
                best, least = needs, common
        if least < _SELDOM:
            break
    return best


def _candidates(items: Items, at: int, name: str, value: Any) -> Iterable[Letters]:
    for longest in _LONGEST:
        strings = _strings(items[at:], longest, _MOST)
        if strings is not None:
            yield _shortest(strings)
            break
    if name == "BRANCH":
        parts = [_best(one) for one in value]
        if None not in parts:
            yield _shortest({one for part in parts if part for one in part})
    elif name == "REPEAT" and value[0] and (inner := _best(value[2])) is not None:
        yield inner


class _TooManyError(Exception):
    """There are more spellings than are worth looking at."""


def _strings(items: Items, longest: int, most: int) -> set[str] | None:
    """What a sequence begins with, up to ``longest`` letters; None where that may be nothing."""
    done: set[str] = set()
    try:
        done |= _extended({""}, items, longest, most, done)
    except _TooManyError:
        return None
    return None if "" in done else done


def _extended(begun: set[str], items: Items, longest: int, most: int, done: set[str]) -> set[str]:
    """What has begun, one step on for each part; what is long enough or may go on in any way goes
    to ``done``."""
    for name, value in items:
        if not begun:
            break
        if name == "BRANCH":
            ends = [_extended(begun, one, longest, most, done) for one in value]
            begun = set().union(*ends)
        elif name == "REPEAT":
            begun = _repeated(begun, value, longest, most, done)
        else:
            letters = _letters(name, value)
            if letters is None:
                done |= begun
                return set()
            begun = {one + letter for one in begun for letter in letters}
        whole = {one for one in begun if len(one) >= longest}
        done |= whole
        begun -= whole
        if len(begun) + len(done) > most:
            raise _TooManyError
    return begun


def _repeated(
    begun: set[str], repeat: tuple[int, int, Items], longest: int, most: int, done: set[str]
) -> set[str]:
    least, times, items = repeat
    ends = set(begun) if least == 0 else set()
    for number in range(1, min(int(times), least + longest) + 1):
        begun = _extended(begun, items, longest, most, done)
        if number >= least:
            if begun <= ends:
                break
            ends |= begun
    return ends


def _letters(name: str, value: Any) -> frozenset[str] | None:
    """The letters, made even, that one part of a pattern may be; None where they are many."""
    if name == "LITERAL":
        letter = _letter(value)
        return frozenset([letter]) if letter else None
    if name != "IN":
        return None
    found: set[str] = set()
    for operation, one in value:
        kind = str(operation)
        if kind == "LITERAL":
            found.add(_letter(one))
        elif kind == "CATEGORY" and str(one) in _CATEGORIES:
            found.add(_CATEGORIES[str(one)])
        elif kind == "RANGE" and one[1] - one[0] < 10:
            found.update(map(_letter, range(one[0], one[1] + 1)))
        else:
            return None
    return frozenset(found) if "" not in found and len(found) <= 10 else None


_CATEGORIES = {"CATEGORY_DIGIT": "0", "CATEGORY_SPACE": " "}


@cache
def _letter(code: int) -> str:
    """The letter as it stands in an evened text; empty where case is not that simple."""
    letter = chr(code).translate(_ALIKE)
    small = _plain(letter)
    simple = code < 0x100 and code != 0xB5  # the micro sign is a Greek letter to some
    return small if simple or letter.lower() == letter == letter.upper() else ""


def _shortest(strings: set[str]) -> Letters:
    """Without those in which another one stands: that is there, too."""
    kept: list[str] = []
    for one in sorted(strings, key=lambda string: (len(string), string)):
        if not any(other in one for other in kept):
            kept.append(one)
    return tuple(kept)


_ODDS = {letter: 0.17 * 0.88**at for at, letter in enumerate(_SELDOM_LAST)}


def _odds(string: str) -> float:
    """How likely these letters are to stand at some place of a text."""
    likely = 1.0
    for letter in string:
        likely *= _ODDS.get(letter, 0.003)
    return likely
