"""The words on each of several sizes: from where those on the one before end, to where those on the
next begin, and what other sentences say that name one of its figures or point to it."""

from __future__ import annotations

import re
from collections.abc import Sequence
from dataclasses import dataclass
from itertools import pairwise

from ...late_pattern import late_pattern
from ..sizes.groups import Group
from ..text.figures import Layout
from .asked_words import ASKS, CONTRAST, POINTS, REFERS, TOO, TOOL
from .named_elsewhere import name_elsewhere
from .told import opens_line
from .told_words import TELLS
from .words_on_size import Said, contrast_in, plain, sentence_end

_SHORT = 24
"""Characters of a label before the first figure of a line: 'IS:  1.25 x .065'."""
_STOP = re.compile(r"[.!?]\s+(?=[A-ZÄÖÜÉ\d])")
_SOFT_STOP = re.compile(
    r"(?<![a-z])(?!(?:approx|dia|rad|min|max|qty|thk|ext|int|incl|excl|pcs|pos|mat|nos|vgl|inkl|ref|fig"
    r"|env|esp|spess|stk|usw|etc)\.)[^\W\d_]{3,}[.!?]\s+(?=[^\W\d_])"
)
"""'... 95 clr. had a go on a 51 x 2': whoever writes no capitals ends a sentence all the same."""
_ENDS = re.compile(r"[.!?]\s")
_JOINED = late_pattern(
    r"\W*(?:(?:mm|in|inch|od|wall|clr|ga|gauge|tube|rohr|mild|dom|steel)\b\W*)*"
    r"(?:(?:and|und|et|y|e|ed|en|n|or|plus)\b\W*)?(?:(?:the|an?|die|le|la|el|il|de|un|une)\b\W*)?"
)
_MOST_ASIDE = 40
"""Where more is put aside, no sentence is told apart."""
_BUT = 1
"""Which of ``CONTRAST`` are words like 'but'."""


@dataclass(slots=True)
class Split:
    """What a text says on each of its sizes, in their order, and on none of them."""

    sizes: list[Said]
    loose: list[str]


def split(layout: Layout, groups: Sequence[Group]) -> Split | None:
    """The words on each size; None where the figures of two are mixed, or nothing parts them."""
    found = _figures(groups)
    if found is None:
        return None
    aside = _set_aside(layout, found)
    ordered = sorted([*found, *aside], key=lambda part: part.begin)
    if len(aside) > _MOST_ASIDE or any(one.end > other.begin for one, other in pairwise(ordered)):
        return None
    bundles = _bundles(layout, ordered)
    edges = [_edge(layout, one[-1], other[0]) for one, other in pairwise(bundles)]
    loose: list[str] = []
    for number, bundle in enumerate(bundles):
        left = layout.sentence_start(bundle[0].figures[0].sentence)
        right = sentence_end(layout, bundle[-1].figures[-1].sentence)
        before = edges[number - 1] if number else left
        after = edges[number] if number < len(edges) else right
        if before is None or after is None:
            return None
        left, right = max(left, before), min(right, after)
        stops = list(_STOP.finditer(layout.text, left, bundle[0].figures[0].start))
        if stops:  # "... einen Dorn. 42 x 2": the digit hid the end of a sentence
            loose.append(plain(layout.text[left : stops[-1].end()]))
            left = stops[-1].end()
        last = bundle[-1].figures[-1].end
        for part in bundle:
            part.ahead, part.words = plain(layout.text[left:last]), plain(layout.text[left:right])
            part.begin, part.end = left, right
    loose += _other_sentences(layout, bundles)
    for one, other in pairwise(bundles):
        _move_back(layout, one, other)
    for bundle in bundles:
        loose += _turned_away(layout, bundle)
    name_elsewhere(layout, found)
    return Split(found, loose)


def _figures(groups: Sequence[Group]) -> list[Said] | None:
    """The figures of each size that no other has, in the text's order."""
    used: dict[int, int] = {}
    for group in groups:
        for index in {figures[0].index for figures in group.slots.values()}:
            used[index] = used.get(index, 0) + 1
    found: list[Said] = []
    for group in groups:
        own = sorted(
            (fs[0] for slot, fs in group.slots.items() if slot not in group.shared),
            key=lambda figure: figure.start,
        )
        own = [figure for figure in own if used[figure.index] == 1]
        if not own:
            return None
        found.append(Said(own, own[0].start, own[-1].end))
    return found


def _set_aside(layout: Layout, found: Sequence[Said]) -> list[Said]:
    """Figures that were heard as not wanted: the words on those are on no size that is left."""
    runs: list[Said] = []
    for figure in layout.figures:
        if not (figure.negated or figure.put_off):
            continue
        if any(part.begin <= figure.start < part.end for part in found):
            continue
        last = runs[-1] if runs else None
        if (
            last is not None
            and last.figures[-1].index == figure.index - 1
            and (last.figures[-1].line == figure.line)
        ):
            last.figures.append(figure)
            last.end = figure.end
        else:
            runs.append(Said([figure], figure.start, figure.end))
    return runs


def _bundles(layout: Layout, parts: Sequence[Said]) -> list[list[Said]]:
    """Sizes named in one breath are spoken of together: '1.25 x .065 and 1.5 x .065'."""
    bundles: list[list[Said]] = []
    for part in parts:
        last = bundles[-1][-1].figures[-1] if bundles else None
        first = part.figures[0]
        if last is not None and last.sentence == first.sentence:
            between = layout.words(last.end, first.start)
            apart = "\n" in between.strip(" ") or _ENDS.search(between)
            if not apart and _JOINED.fullmatch(between):
                bundles[-1].append(part)
                continue
        bundles.append([part])
    return bundles


def _edge(layout: Layout, one: Said, other: Said) -> int | None:
    """Where the words on one size end and those on the next begin."""
    last, first = one.figures[-1], other.figures[0]
    if last.sentence != first.sentence:
        return layout.sentence_start(first.sentence)
    line = layout.text.rfind("\n", 0, first.start) + 1
    label = layout.text[line : first.start].strip()
    if line > last.end and (
        opens_line(layout, first) or (label[-1:] == ":" and len(label) < _SHORT)
    ):
        return line
    between = layout.text[last.end : first.start]
    stops = list(_STOP.finditer(between)) or list(_SOFT_STOP.finditer(between))
    if stops:
        return last.end + stops[-1].end()
    cut = contrast_in(between)
    return None if cut is None else last.end + cut


def _other_sentences(layout: Layout, bundles: Sequence[Sequence[Said]]) -> list[str]:
    """All sentences on no size; those right behind one are kept with it too."""
    ours = {figure.sentence for bundle in bundles for part in bundle for figure in part.figures}
    spans = [(bundle[0].begin, bundle[0].end) for bundle in bundles]
    found: list[str] = []
    for sentence in layout.spans:
        begin = layout.sentence_start(sentence)
        if sentence in ours or any(left <= begin < right for left, right in spans):
            continue
        words = plain(layout.sentence_text(sentence))
        if not words:
            continue
        found.append(words)
        for bundle in bundles:
            if bundle[-1].figures[-1].sentence == sentence - 1:
                for part in bundle:
                    part.behind.append(words)
    return found


def _move_back(layout: Layout, one: Sequence[Said], other: Sequence[Said]) -> None:
    """'That has been superseded: tube is now ...': what points back is on the size before."""
    begin, first = other[0].begin, other[0].figures[0].start
    ahead = layout.text[begin:first]
    cut = contrast_in(ahead)
    if cut is None or not POINTS.match(plain(ahead)) or not TELLS.search(plain(ahead[:cut])):
        return
    for part in one:
        part.behind.append(plain(ahead[:cut]))
    for part in other:
        part.begin = begin + cut
        part.ahead = plain(layout.text[part.begin : other[-1].figures[-1].end])
        part.words = plain(layout.text[part.begin : part.end])


def _turned_away(layout: Layout, bundle: Sequence[Said]) -> list[str]:
    """'He doesn't need one, but mine goes oval, so I want a mandrel': the rest is on another."""
    last = bundle[-1].figures[-1].end
    behind = layout.words(last, bundle[0].end)
    but = CONTRAST[_BUT].search(behind)
    if but is None:
        return []
    rest = plain(behind[but.start() :])
    points = REFERS.search(rest) or TOO.search(rest)
    if points or not (ASKS.search(rest) and TOOL.search(rest)):
        return []
    for part in bundle:
        part.end = last + but.start()
        part.words = plain(layout.text[part.begin : part.end])
    return [rest]
