"""Lines of a list that are asked for by a mark in them or by what they are called.

'Only the rows marked Y', 'die Zeilen mit x', 'just the one with status NEED'; 'a mandrel for the
main hoop', where one line says 'main hoop 1.75 x .120'; 'the bigger one'.
"""

from __future__ import annotations

import re
from collections.abc import Sequence
from dataclasses import dataclass

from ...late_pattern import late_pattern
from ..sizes.groups import Group
from ..text.figures import Figure, Layout
from ..text.patterns import any_of, whole_words
from .by_figures import picked_by_figures
from .by_letter import picked_by_letter
from .by_mark import bearing, picked_by_word
from .by_rank import picked_by_figure, picked_by_rank
from .by_sign import picked_by_sign
from .place_lists import NO_REQUEST, clause_of
from .place_names import ENDS, NEEDS_ONE

_ROWS = any_of(
    "rows? | lines? | items? | ones? | entry | entries | sizes? | zeilen? | positionen",
    "lignes? | filas? | l[ií]neas? | righe | riga | voc[ei] | regels? | rijen | partidas?",
)
_MARKED = any_of(
    "(?:that are |which are |i(?:'ve| have)? |we(?:'ve| have)? )?(?:marked|flagged|tagged|ticked)"
    "(?: with| as)?(?: an?)?",
    "(?:that says?|saying|showing|with status|with an?|where (?:the )?status is|where it says)",
    "(?:die )?(?:mit|markiert mit|gekennzeichnet mit)(?: einem)?",
    "(?:marquée?s?|cochée?s?|avec|marcad[oa]s? con|con|segnat[ei] con|met(?: een)?)(?: une?| la)?",
)
_BY_MARK = late_pattern(
    rf"\b(?i:{_ROWS})\s(?i:{_MARKED})\s[\"'“”„«‚‘]?(?P<mark>[A-Z]{{1,8}}|[xy]|(?<=[\"'“”„«‚‘])\w{{1,10}})"
    r"\b(?!-)"
)
_WANTS = whole_words(
    r"only | just | quote | price | need\w* | want\w* | nur | anbieten | bitte | brauch\w+",
    "seulement | uniquement | chiffrer | devis | solo | sólo | solamente | cotizar | soltanto",
    "quotare | offerta | preventivo | alleen | offerte | graag",
)
_NAME = r"(?P<name>[^\W\d]+(?:[ -][^\W\d]+){0,2}?)"
_THE = r"(?:the|die|der|das|den|le|la|les|el|los|il|lo|de|het|l['’])\s?"
_MANDREL = r"(?:mandrels?|tool|dorn|mandrin|mandril|mandrino|doorn)"
_SHORT = (
    r"(?=\s(?:only|alone|nur|seulement|solamente|soltanto|please|for now"
    rf"|(?:that )?(?:we(?:'re| are)|i(?:'m| am)) (?:short|missing|after)|{NEEDS_ONE})\b"
)
_BY_NAME = tuple(
    late_pattern(pattern, re.IGNORECASE)
    for pattern in (
        # 'just the link pipe', 'a mandrel for only the tail pipe'
        rf"\b(?:only|just|nur|seulement|uniquement|solo|sólo|solamente|soltanto|alleen)\s"
        rf"(?:(?:need|want|quote|price|do|for|an?|one|für|pour|para|per|voor|brauchen?|wir|ich|besoin"
        rf"|necesitamos|serve|nodig|{_MANDREL})\s){{0,5}}{_THE}{_NAME}{_SHORT}|{ENDS})",
        # 'what I need is a mandrel for the main hoop'
        rf"\b(?:need|want|quote|price|brauche[n]?|besoin|necesit\w+|serve|nodig)\s(?:[^\W\d]+\s){{0,6}}?"
        rf"{_MANDREL}\s(?:for|für|pour|para|per|voor)\s{_THE}{_NAME}{_SHORT}|{ENDS})",
        # 'lower tube only'
        rf"(?:^|[.;:!?,]\s|\n){_NAME}\s(?:only|alone|please only)(?=\s*(?:[.;,!\n]|please|$))",
    )
)
_ALL_TOO = whole_words(
    "also | as well | too | both | alle | auch | beide | aussi | también | anche | ook | every",
)
_PAIR = 2
_GENERIC = frozenset(
    "tube tubes pipe pipes tubing size sizes line lines one ones row rows item items rohr rohre"
    " tubo tubi buis mandrel mandrels bend bends radius wall od clr job part parts list rest"
    " others".split()
)
_WORD = re.compile(r"[^\W\d]+")
_GREETING = late_pattern(
    r"\b(?:hi|hello|hey|dear|morning|afternoon|hallo|liebe|bonjour|hola|ciao|dag|beste)\s(?:you\s)?"
    r"(?:both|all|everyone|beide|ihr beiden|zusammen|alle|à tous|tous|a todos|a tutti|allemaal)\b",
    re.IGNORECASE,
)
"""'Hi both' asks for no two sizes."""
_BLANK_LINE = re.compile(r"\s*\n[ \t]*\n\s*")
"""What stands above it is no part of a sentence below."""


@dataclass(frozen=True, slots=True)
class Line:
    """The line, or lines, on which the figures of one size stand, and no other size's."""

    start: int
    end: int
    text: str


def picked(layout: Layout, groups: Sequence[Group], told: str) -> list[int]:
    """Indexes of the sizes whose lines are asked for; all where that isn't plain."""
    everything = list(range(len(groups)))
    if len(groups) < _PAIR or not all(group.slots for group in groups):
        return everything
    lines = [line_of(layout, group) for group in groups]
    if any(
        one.start < other.end and other.start < one.end
        for n, one in enumerate(lines)
        for other in lines[:n]
    ):
        return everything  # two sizes in one sentence: no list
    text = told or layout.text
    for line in () if told else lines:
        text = text[: line.start] + " " * (line.end - line.start) + text[line.end :]
    words = _GREETING.sub(" ", _BLANK_LINE.sub(". ", text))
    found = (
        picked_by_sign(text, [line.text for line in lines])
        or picked_by_word(words, [line.text for line in lines])
        or _by_mark(words, lines)
        or picked_by_letter(words, [line.text for line in lines])
        or _by_name(words, lines)
        or picked_by_rank(words, groups)
        or picked_by_figure(words, groups)
        or picked_by_figures(words, groups)
    )
    return sorted(found) if 0 < len(found) < len(groups) else everything


def lines_of_only(
    layout: Layout, gone: Sequence[Group], kept: Sequence[Group]
) -> list[tuple[int, int]]:
    """Where the lines of sizes that are gone stand; none where one that is kept has figures."""
    spans = [(line.start, line.end) for line in (line_of(layout, group) for group in gone)]
    figures = [f for group in kept for fs in group.slots.values() for f in fs]
    if any(begin <= f.start < end for f in figures for begin, end in spans):
        return []
    return spans


def line_of(layout: Layout, group: Group) -> Line:
    """Where the figures of a size stand, to the ends of their lines."""
    own: list[Figure] = [
        f for slot, fs in group.slots.items() if slot not in group.shared for f in fs
    ]
    own = own or [f for fs in group.slots.values() for f in fs]
    if "od" in group.slots:  # "All .065." stands above the list
        paragraph = group.slots["od"][0].paragraph
        own = [figure for figure in own if figure.paragraph == paragraph] or own
    lines = {fs[0].line for fs in group.slots.values()}
    own = [f for f in own if f.line in lines] or own  # "only the 35": said again elsewhere
    begin = layout.text.rfind("\n", 0, min(f.start for f in own)) + 1
    end = layout.text.find("\n", max(f.end for f in own))
    end = len(layout.text) if end < 0 else end
    return Line(begin, end, layout.text[begin:end])


def _by_mark(words: str, lines: Sequence[Line]) -> set[int]:
    spaced = " ".join(words.split())
    found: set[int] = set()
    for match in _BY_MARK.finditer(spaced):
        clause = clause_of(spaced, match.start(), match.end())
        if NO_REQUEST.search(clause) or not _WANTS.search(clause):
            continue
        mark = match["mark"].casefold()
        found |= bearing([line.text for line in lines], mark)
    return found


def _by_name(words: str, lines: Sequence[Line]) -> set[int]:
    """The one line that has all words of a name which stands alone beside 'only' or 'need'."""
    if _ALL_TOO.search(words.casefold()):
        return set()
    called = [{word.casefold() for word in _WORD.findall(line.text)} - _GENERIC for line in lines]
    found: set[int] = set()
    spaced = " ".join(words.split())
    for pattern in _BY_NAME:
        for match in pattern.finditer(spaced):
            if NO_REQUEST.search(clause_of(spaced, match.start() + 1, match.end())):
                continue
            name = {word.casefold() for word in _WORD.findall(match["name"])} - _GENERIC
            alike = [at for at, own in enumerate(called) if name and name <= own]
            if len(alike) == 1:
                found.add(alike[0])
    return found
