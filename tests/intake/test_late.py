"""A pattern that is not searched where a text lacks its letters finds what it would find."""

from __future__ import annotations

import importlib
import pkgutil
import re
import sys
from collections.abc import Iterator
from pathlib import Path

import pytest

import bendreply.intake
from bendreply.intake import late
from bendreply.intake.late import Late
from bendreply.intake.late_cues import Cues
from bendreply.intake.late_pattern import _Late, late_pattern
from bendreply.intake.letters_needed import evened, needs_of
from bendreply.intake.may_stand import that_may_stand, without_case
from bendreply.intake.message import parse_message

TREE = Path(__file__).parents[2]
FLAGS = re.IGNORECASE | re.MULTILINE


def all_patterns() -> Iterator[tuple[str, Late]]:
    """Every such pattern that a module of ours holds, alone or in a list or table."""
    for place in pkgutil.walk_packages(bendreply.intake.__path__, "bendreply.intake."):
        # What talks to a chat server needs an extra, and has no such pattern.
        if ".migrations" in place.name or ".xmpp" in place.name or place.name.endswith(".child"):
            continue
        for name, value in vars(importlib.import_module(place.name)).items():
            for one in _within(value):
                yield f"{place.name}.{name}", one


def _within(value: object) -> Iterator[Late]:
    if isinstance(value, Late):
        yield value
    elif isinstance(value, list | tuple):
        for one in value:
            yield from _within(one)
    elif isinstance(value, dict):
        yield from _within(list(value.values()))


def texts() -> list[str]:
    """Words of labelled messages, also as shouted and with letters that only look like others."""
    files = sorted((TREE / "demo_mailbox").glob("*.eml"))[::2]
    files += sorted((TREE / "tests/corpus/dev").glob("*.eml"))[::12]
    plain = [parse_message(file.read_bytes()).text[:1500] for file in files]
    odd = str.maketrans({"s": "\u017f", "i": "\u0131", "k": "\u212a", "I": "\u0130"})
    return [*plain, *(one.upper() for one in plain[::3]), *(one.translate(odd) for one in plain)]


def test_what_is_found_is_what_the_patterns_find_without_that(
    monkeypatch: pytest.MonkeyPatch,
) -> None:
    monkeypatch.setattr(late, "WORTH_IT", 0)
    said, checked = texts(), 0
    for place, one in all_patterns():
        for text in said:
            wanted, found = one._compiled.search(text), one.search(text)
            assert (found and found.span()) == (wanted and wanted.span()), (place, text)
            every = [match.span() for match in one._compiled.finditer(text)]
            assert [match.span() for match in one.finditer(text)] == every, (place, text)
            checked += wanted is not None
    assert checked > 1000


def test_in_a_piece_of_a_text_is_found_what_the_patterns_find_there(
    monkeypatch: pytest.MonkeyPatch,
) -> None:
    """Lines of a text that was looked at before, with blanks made one, as sentences have them."""
    monkeypatch.setattr(late, "WORTH_IT", 0)
    patterns, checked = list(all_patterns()), 0
    for text in texts()[::8]:
        lines = [line for line in text.split("\n") if line.strip()][:8]
        pieces = [*lines, " ".join(text.split())[:200], f"\n\n  {lines[-1]}  \n"]
        for place, one in patterns:
            one.search(text)
            for piece in pieces:
                wanted, found = one._compiled.search(piece), one.search(piece)
                assert (found and found.span()) == (wanted and wanted.span()), (place, piece)
                checked += wanted is not None
    assert checked > 300


def test_no_cue_that_is_found_is_left_out(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(late, "WORTH_IT", 0)
    cues = [Late([pattern]) for _, one in all_patterns() for pattern in one._patterns]
    together = Cues((1, cue) for cue in cues)
    for text in texts()[::6]:
        asked = [number for number, _ in together.that_may_stand(text)]
        found = [number for number, cue in enumerate(cues) if cue._compiled.search(text)]
        assert found
        assert asked == sorted(asked)
        assert set(found) <= set(asked)
        assert len(asked) < len(cues) / 4


def test_no_pattern_among_several_counts_its_groups() -> None:
    """Searched one by one, the numbers of their groups would not be those of the whole."""
    counted = [
        place for place, one in all_patterns() if len(one._patterns) > 1 and one._compiled.groups
    ]
    assert counted == []


@pytest.mark.parametrize(
    ("pattern", "there", "not_there"),
    [
        (r"\bmandrels?\b", "two MANDRELS", "two candles"),
        (r"(?:price|quote) (?:for|of)", "a quote of yours", "a rice form"),
        (r"(?:the )?same again", "the same again", "an other one"),
        (r"wei(?:ß|ss)", "WEIß", "sweet"),
        (r"(?:abc)+d", "abcabcd", "ab cd"),
        (r"xy{2,}abz+", "xyyabzz", "aabb"),
        (r"sick", "\u017fic\u212a", "cold"),
        (r"inch", "\u0130NCH, \u0131nch", "foot"),
        (r"芯金をください", "芯金をください", "mandrel"),
    ],
)
def test_what_a_pattern_needs(pattern: str, there: str, not_there: str) -> None:
    needs = needs_of(pattern, FLAGS)
    assert needs is not None
    assert re.search(pattern, there, FLAGS) is not None
    assert any(letters in evened(there) for letters in needs)
    assert not any(letters in evened(not_there) for letters in needs)


@pytest.mark.parametrize("pattern", [r"\w+", "(?:mandrel)?", "µ", r"[^a]{9}", "a*|mandrel"])
def test_where_nothing_is_certain_all_texts_are_searched(pattern: str) -> None:
    assert needs_of(pattern, FLAGS) is None


def test_what_is_left_of_a_pattern_finds_what_the_whole_finds() -> None:
    """Groups and all, for every late pattern of the program that is searched in whole texts."""
    said, checked = texts()[::3], 0
    for place, pattern, flags in late_patterns():
        whole = re.compile(pattern, flags)
        for text in said:
            wanted = [(m.regs, m.groupdict()) for m in whole.finditer(text)]
            left = that_may_stand(pattern, without_case(text))
            found = re.compile(left, flags).finditer(text) if left is not None else ()
            assert [(m.regs, m.groupdict()) for m in found] == wanted, (place, text)
            checked += bool(wanted)
    assert checked > 500


def late_patterns() -> Iterator[tuple[str, str, int]]:
    """Each pattern that is cut down to a text before it is compiled."""
    for place, one in all_patterns():
        for pattern in one._patterns:
            yield place, pattern, int(one._flags)
    for module in list(sys.modules.values()):
        for name, value in list(vars(module).items()):
            if isinstance(value, _Late) and not value._flags & re.VERBOSE:
                yield f"{module.__name__}.{name}", value._pattern, int(value._flags)


@pytest.mark.parametrize(
    ("pattern", "text", "left"),
    [
        (r"\b(?:wall|od)\b", "the od", r"\b(?:od)\b"),
        (r"wall|od", "neither", None),
        (r"(?:thick )?wall", "wall", "wall"),
        (r"walls?", "a wall", "walls?"),
        (r"(?P<what>wall|od) (?:\d+|none)", "od 5", r"(?P<what>od) (?:\d+)"),
        (r"(?:(?P<a>wall)|od)", "od", "(?:(?P<a>(?!))|od)"),
        (r"od(?! only| alone)", "od only", "od(?! only)"),
        (r"od(?! only)", "od", "od"),
        (r"[wall]{2,}\s*\(od\)", "wal (OD)", r"[wall]{2,}\s*\(od\)"),
        (r"sick", "\u017fic\u212a", "sick"),
        ("µm", "Μm", "µm"),
    ],
)
def test_what_is_left_of_a_pattern(pattern: str, text: str, left: str | None) -> None:
    assert that_may_stand(pattern, without_case(text)) == left


@pytest.mark.parametrize(
    ("text", "found"), [("red or blue", "r[red] or blue"), ("green", "green"), ("", "")]
)
def test_what_is_put_in_place_is_so_whether_or_not_its_words_stand_there(
    text: str, found: str
) -> None:
    pattern = late_pattern(r"(?P<first>red)|(?P<second>yellow)")
    assert pattern.sub(r"r[\g<first>]", text) == found
