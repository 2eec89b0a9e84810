"""What ends with a text's end is found as if all of the text were searched for it."""

from __future__ import annotations

import re
import sys
from collections.abc import Iterator

import pytest

from bendreply.intake import message, pipeline
from bendreply.intake.ends import Ending, reach_from_end
from bendreply.intake.late_pattern import _Late

from .test_late import TREE, texts

assert pipeline  # all patterns of the reading are there


def ending_patterns() -> Iterator[tuple[str, re.Pattern[str]]]:
    """Every late pattern of the program that ends with a text's end, alone or among several."""
    for module in list(sys.modules.values()):
        for name, value in list(vars(module).items()):
            for one in value if isinstance(value, list | tuple) else [value]:
                if isinstance(one, _Late) and one._pattern.endswith("$"):
                    yield f"{module.__name__}.{name}", re.compile(one._pattern, one._flags)


def before_figures() -> list[str]:
    """What stands before each of some figures of labelled messages, with much before it, and with
    many blanks and letters in a row near the end."""
    much = " ".join(texts()[:3]).casefold()[:1500]
    said = []
    for file in sorted((TREE / "tests/corpus/dev").glob("*.eml"))[::14]:
        text = message.parse_message(file.read_bytes()).text.casefold()
        for figure in list(re.finditer(r"\d+", text))[::3][:8]:
            ahead = f"{much}. {' '.join(text[: figure.start()].split())} "
            said += [ahead, ahead.rstrip(), ahead.replace(" ", "\n")]
    gap, word = " " * 90, "a" * 90
    return [*said, f"{much} wall{gap}", f"{much} about{gap}the{gap}", f"{much} no {word} "]


def test_what_is_found_is_what_is_found_in_all_of_the_text() -> None:
    said, checked, short = before_figures(), 0, 0
    for place, whole in ending_patterns():
        ending = Ending(whole)
        short += reach_from_end(whole.pattern, whole.flags) < 1000
        for text in said[:: 1 if "reading" in place else 7]:
            wanted, found = whole.search(text), ending.search(text)
            assert (found and found.regs) == (wanted and wanted.regs), (place, text[-80:])
            checked += wanted is not None
    assert checked > 300
    assert short > 80  # of most patterns it is known how far they reach


@pytest.mark.parametrize(
    ("pattern", "reach"),
    [
        ("ab$", 2 + 2),  # "$" may stand before a last line's end; one more than that is looked at
        (r"(?<!no )ab{0,24}$", 1 + 24 + 2),
        ("(?:a|bcd)$", 3 + 2),
        ("ab$|bcd$", 3 + 2),
        (r"wall\s*$", 4 + 40 + 2),
        (r"\w+\W*$", 60 + 40 + 2),
        (r"is[\s:=]*$", 2 + 40 + 2),
        ("a|b$", sys.maxsize),
        (r"a\$", sys.maxsize),
        ("(?:ab)*$", sys.maxsize),
        (r"a\\s*$", sys.maxsize),
        ("(?m)ab$", sys.maxsize),
    ],
)
def test_how_far_a_pattern_reaches(pattern: str, reach: int) -> None:
    assert reach_from_end(pattern, 0) == reach


def test_more_blanks_than_are_reckoned_with_hide_nothing() -> None:
    text = "x" * 300 + " wall" + " " * 100
    found = Ending(re.compile(r"\bwall\s*$")).search(text)
    assert found is not None
    assert found.start() == 301
