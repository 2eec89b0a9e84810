"""Lines that a mail program broke in the middle of a sentence, made one again.

'... 2,6 di / spessore': a phrase must be found wherever the line ends. A break becomes a space, so
that every place stays. Lines of lists, tables and labels keep their breaks: only where the first
line is full, and the second goes on in the middle of a sentence, was it the program that broke it.
"""

from __future__ import annotations

import re

from ...late_pattern import late_pattern
from .patterns import any_of
from .plain import Plain

_SHORTEST, _LONGEST = 48, 120
"""Characters of a line that is full."""
_BACK = 64
_ROW = re.compile(r"[\t|]|;[^;]*;|\S {2,}\S|^\s*[>*•-]\s|\.{4,}|(?: \.){4,}")
_GOES_ON = re.compile(r"\s?[^\W\d_A-ZÄÖÜÉÈÀÓÍÁ]")
_FIRST = re.compile(r"\s*[^\W\d_]+")
_FIGURE = re.compile(r"\d+")
_LABEL = re.compile(r"[^.,;\d]{1,24}[:=]")
_OPEN = late_pattern(
    r"\b"
    + any_of(
        "a | an | the | of | with | and | or | to | at | on | for | by | is | x | about | from",
        "in",
        "our | my | your | mit | und | oder | auf | für | von | der | das | ein | eine | einen",
        "einem | dem | den | ist | zu | bei | mal | de | du | des | le | la | les | un | une | et",
        "ou | avec | pour | en | à | est | el | los | las | una | y | o | con | para | por",
        "il | lo",
        "i | gli | uno | e | da | di | del | dal | per | su | è | een | het | van | met | voor",
        "op | tot | nur | only | seulement | solo | alleen",
    )
    + r"$"
)
"""A line that ends so has not ended its sentence."""
_NAMES_NEXT = late_pattern(
    r"(?:^|[,;(]|\b(?:and|und|et|y|e|en|with|mit|avec|con|met)\b)[^,;(\d]{0,32}?\b"
    + any_of(
        "radius | biegeradius | rayon | radio | raggio | straal | wall | wand | wandstärke | od",
        "épaisseur | espesor | spessore | wanddikte | interior | interno | intérieur | innen",
        "binnen | exterior | esterno | extérieur | außen | buiten | diameter | durchmesser",
        "diamètre | diámetro | diametro | ø | clr",
    )
    + r"$"
)
"""'exterior 32, interior': the next line measures it; but '... on a 4-1/2 radius' has ended."""


def unwrap(plain: Plain) -> Plain:
    """The same text with a space for each break that only the width of the line has made."""
    lines = plain.text.split("\n")
    if len(lines) < 2:
        return plain
    widest = _widest(lines)
    parts = [lines[0]]
    for number in range(1, len(lines)):
        line, following = lines[number - 1], lines[number]
        parts += [" " if _is_broken(line, following, widest[number]) else "\n", following]
    return Plain("".join(parts), plain.index)


def _opens_alike(line: str, following: str) -> bool:
    """Whether two lines are items of one list: 'buis 18, wand 1, ... / buis 35, wand 1,5, ...'."""
    first, second = _FIRST.match(line), _FIRST.match(following)
    if first is None or second is None or first[0].casefold() != second[0].casefold():
        return False
    return len(_FIGURE.findall(line)) > 1 and len(_FIGURE.findall(following)) > 1


def _widest(lines: list[str]) -> list[int]:
    """For each line how long the longest of its paragraph is."""
    found = [0] * len(lines)
    begin = 0
    for number in range(len(lines) + 1):
        if number == len(lines) or not lines[number].strip():
            most = max((len(line.strip()) for line in lines[begin:number]), default=0)
            found[begin:number] = [most] * (number - begin)
            begin = number + 1
    return found


def _is_broken(line: str, following: str, widest: int) -> bool:
    said = line.strip()
    if not _SHORTEST <= len(said) <= _LONGEST or not following.strip():
        return False
    if said[-1] in ".!?:;" or _ROW.search(said) or _ROW.search(following):
        return False
    if len(said) + 1 + len(following.split(maxsplit=1)[0]) <= widest:
        return False  # the word would have had room
    if _opens_alike(line, following):
        return False
    if _GOES_ON.match(following):
        return _LABEL.match(following) is None
    ends = said.casefold()
    return _OPEN.search(ends) is not None or _NAMES_NEXT.search(ends[-_BACK:]) is not None
