"""Which of the materials named in a message belongs to which size."""

from __future__ import annotations

import re
from collections.abc import Sequence
from dataclasses import dataclass, replace

from ....rules.request import Evidence, Material
from ..numbers.item_numbers import items_after, items_before
from ..sizes.groups import Group
from ..tables.text_tables import RowFacts
from ..text.figures import Layout
from ..text.patterns import any_of, whole_words
from .beside import beside_sizes
from .by_line import materials_by_line
from .by_size import materials_by_size, tells_two_apart
from .left_open import is_left_open
from .materials import STEELS, MaterialMention
from .places_said import place_before

_MACHINE = whole_words(
    "machine | bender | press | maschine | biegemaschine | cintreuse | curvadora | dobladora",
    "curvatubi | macchina | buigmachine",
)
_CAN = whole_words(
    "rated | max | maximum | capacity | good for | good to | up to | can do | can take | handles",
    "maximal | kapazität | bis | schafft | capacité | jusqu'à | capacidad | hasta | máximo",
    "capacità | fino a | massimo | capaciteit | maximaal | tot",
)
"""Of a machine: what it can bend."""


@dataclass(frozen=True, slots=True)
class MaterialChoice:
    """The material of one request; ``alternatives`` where two families are possible."""

    family: Material | None = None
    grade: str | None = None
    alternatives: tuple[Material, ...] = ()
    evidence: tuple[Evidence, ...] = ()
    """Spans in the plain text: the reader leads them back to the original."""


def choose_materials(
    layout: Layout, groups: list[Group], rows: dict[tuple[str, int, int], RowFacts]
) -> list[MaterialChoice]:
    """One choice for each group, in order."""
    mentions = _wanted(layout, groups)
    in_rows = any(row.has_material_column or row.material for row in rows.values())
    by_line = {} if in_rows else materials_by_line(layout, groups, mentions)
    by_size = materials_by_size(layout, groups, mentions) if not by_line else {}
    apart = not by_size and tells_two_apart(layout, groups, mentions)
    if len(groups) == 1 or len({mention.family for mention in mentions}) == 1:
        places = _Places([], {}, {}, {})  # nothing to tell apart
    else:
        places = _places_of(layout, groups, mentions)
        places = replace(places, by_line=by_line)
    return [
        _choose(layout, groups, n, mentions, rows, by_size, places, apart=apart)
        for n in range(len(groups))
    ]


@dataclass(frozen=True, slots=True)
class _Places:
    """What is the same for every size of a text, looked up once."""

    starts: list[int]
    """Where each size's own words stand."""
    items: dict[int, list[int]]
    """The items of the list that each material is given to by number, by the material's place: as
    indexes of sizes, -1 for an item that the list doesn't have."""
    beside: dict[int, list[MaterialMention]]
    """The materials that stand right behind or right ahead of sizes of one sentence."""
    by_line: dict[int, list[MaterialMention]]
    """The materials that a list of one size a line gives by headings and remarks."""


def _places_of(layout: Layout, groups: list[Group], mentions: list[MaterialMention]) -> _Places:
    starts = [_own_place(group) for group in groups]
    order = sorted(range(len(groups)), key=starts.__getitem__)
    items = {
        mention.start: [
            -1 if item > len(groups) else order[item - 1]
            for item in items_before(layout.text, mention.start)
            or items_after(layout.text, mention.end)
            or place_before(layout.text, mention.start)
            if item
        ]
        for mention in mentions
    }
    return _Places(starts, items, beside_sizes(layout, groups, mentions), {})


def sole_material(layout: Layout) -> MaterialChoice:
    """The one material that a text names, whatever sizes it is of; none where it names two."""
    mentions = _wanted(layout)
    one = len({mention.family for mention in mentions}) == 1
    return _of(list(mentions)) if one else MaterialChoice()


def _wanted(layout: Layout, groups: Sequence[Group] = ()) -> list[MaterialMention]:
    """The materials that are some tube's: of a size that was left out only where none other is."""
    ours = {f.sentence for group in groups for figures in group.slots.values() for f in figures}
    first = min((sentence for sentence in ours), default=0)
    found: list[MaterialMention] = []
    others: list[MaterialMention] = []
    trades: list[MaterialMention] = []
    for at, token in enumerate(layout.tokens):
        material = token.material
        if material is None or material.rejected or material.about_tool:
            continue
        sentence = layout.sentence_of[at]
        if sentence not in ours and _speaks_of_machine(layout, sentence, layout.line_of[at]):
            continue
        left_out = sentence not in ours and _speaks_of_size_left_out(layout, sentence)
        (others if left_out else found).append(material)
        if material.base and sentence < first:
            trades.append(material)
    found = found or others
    # "We build steel frames. 22 x 0.8 and 16 x 0.8, all 25CrMo4": steel is what they work in.
    if any(m.family in STEELS and not m.base and not m.also for m in found if m not in trades):
        found = [m for m in found if m not in trades]
    return found


def _speaks_of_size_left_out(layout: Layout, sentence: int) -> bool:
    """'Our stainless 2.5 x 1.6 goes round fine': that stainless is of no size asked for."""
    return any(
        figure.is_measured and (figure.negated or figure.context_only or figure.put_off)
        for figure in layout.in_sentence(sentence)
    )


def _speaks_of_machine(layout: Layout, sentence: int, line: int) -> bool:
    """'Machine is rated 2" x .120 mild': what a machine can bend says nothing of the tube. A label
    on the line before it does."""
    measured = [f for f in layout.in_sentence(sentence) if f.is_measured and f.line == line]
    return bool(measured) and layout.says(sentence, _MACHINE) and layout.says(sentence, _CAN)


def _choose(
    layout: Layout,
    groups: list[Group],
    number: int,
    mentions: list[MaterialMention],
    rows: dict[tuple[str, int, int], RowFacts],
    by_size: dict[int, MaterialMention],
    places: _Places,
    *,
    apart: bool,
) -> MaterialChoice:
    group = groups[number]
    facts = rows.get(group.row) if group.row is not None else None
    if facts is not None and facts.material is not None:
        return _of([facts.material])
    if facts is not None and facts.has_material_column:
        # An empty cell takes no other row's material, only one that stands outside the table.
        of_rows = [row.material for row in rows.values()]
        mentions = [mention for mention in mentions if mention not in of_rows]
    if not mentions:
        return MaterialChoice()
    mentions = _after_change(layout, mentions)
    if len(groups) > 1 and is_left_open(layout, groups, number, mentions):
        return MaterialChoice()
    families = {mention.family for mention in mentions}
    if len(families) == 1 or len(groups) == 1:
        return _of(list(mentions))
    if number in places.by_line:
        return _of(_one_family(places.by_line[number]))
    if number in by_size:
        return _of([by_size[number]])
    if apart:
        return _of(list(mentions))
    mentions = [m for m in mentions if m not in by_size.values()] or mentions
    by_item = _by_item(number, mentions, places)
    if by_item is not None:
        return _of([by_item])
    if number in places.beside:
        return _of(_one_family(places.beside[number]))
    return _of(_nearest(layout, groups, number, mentions, places.starts))


def _by_item(
    number: int, mentions: list[MaterialMention], places: _Places
) -> MaterialMention | None:
    """'Items 1 and 2: A53. Item 3: 304': the one material that is given to this item by number."""
    given: list[MaterialMention] = []
    for mention in mentions:
        items = places.items[mention.start]
        if -1 in items:
            return None
        if number in items:
            given.append(mention)
    return given[0] if len({m.family for m in given}) == 1 else None


_CHANGED = re.compile(
    r"\b"
    + any_of(
        "changed(?: it)? to | switch(?:ed|ing)? to | (?:it's|its|is|are) now | now (?:it's|its|in)",
        "make (?:it|that) | actually | scratch that | no wait | correction | i meant | should be",
        "sondern",
    )
    + r"\b[^.;\n]{0,24}$"
)


def _after_change(layout: Layout, mentions: list[MaterialMention]) -> list[MaterialMention]:
    """'It was to be 304 but they changed to 6061': what is said after the change is meant."""
    for place in range(len(mentions) - 1, 0, -1):
        before = layout.words(max(0, mentions[place].start - 48), mentions[place].start)
        if _CHANGED.search(before):
            return mentions[place:]
    return mentions


def _nearest(
    layout: Layout,
    groups: list[Group],
    number: int,
    mentions: list[MaterialMention],
    starts: list[int],
) -> list[MaterialMention | None]:
    """The material said between this size and the next, else the last before it, else the first."""
    begin = _line_start(layout, starts[number])
    later = [start for start in starts if start > starts[number]]
    paragraph = layout.text.find("\n\n", starts[number])
    end = _line_start(layout, min(later)) if later else len(layout.text)
    end = min(end, paragraph) if paragraph >= 0 else end
    if later and end <= starts[number]:
        end = min(later)
        begin = starts[number] if number else begin
    if number and starts[number] > starts[number - 1]:
        # Not before the end of the previous size's last figure on the same line.
        last = max(
            f.end
            for figures in groups[number - 1].slots.values()
            for f in figures
            if f.start < starts[number]
        )
        begin = max(begin, last)
    own = [m for m in mentions if begin <= m.start < end]
    first, last = _sentence_around(layout, groups[number], starts[number])
    before = [m for m in mentions if m.start < starts[number]]
    heads = min((s for s in later if s >= last), default=0)
    if before and heads:  # "Mild: 1.5 x .065; 1.5 x .095. Stainless: 2 x .065"
        opened, _ = _sentence_around(layout, groups[starts.index(heads)], heads)
        own = [m for m in own if not last <= opened <= m.start]
    own = [m for m in own if first <= m.start < last] or own
    if own:
        return _one_family(own)
    return [before[-1]] if before else [mentions[0]]


def _one_family(own: list[MaterialMention]) -> list[MaterialMention | None]:
    """Of the materials of one size, the first with those that are another choice."""
    return [m for m in own if m.family == own[0].family or m.alternative]


def _sentence_around(layout: Layout, group: Group, place: int) -> tuple[int, int]:
    """Where the sentence begins and ends in which a group's own words stand."""
    figures = (f for held in group.slots.values() for f in held if f.start == place)
    sentence = next((figure.sentence for figure in figures), None)
    if sentence is None:
        return 0, len(layout.text)
    first, last = layout.spans[sentence]
    return layout.tokens[first].start, layout.tokens[last].end


def _own_place(group: Group) -> int:
    """Where the group's own words stand: 'the same OD, but 4130 in .095' is at its .095."""
    own = [f[0].start for slot, f in group.slots.items() if slot not in group.shared]
    return min(own) if own else (group.anchor.start if group.anchor else 0)


def _line_start(layout: Layout, place: int) -> int:
    return layout.text.rfind("\n", 0, place) + 1


def _of(mentions: list[MaterialMention | None]) -> MaterialChoice:
    named = [m for m in mentions if m is not None]
    if any(m.family in STEELS and not m.base and not m.also for m in named):
        named = [m for m in named if not m.base]  # "The steel has 304 printed along it"
    families = list(dict.fromkeys(m.family for m in named))
    first = families[0]
    graded = next((m for m in named if m.family == first and m.grade), None)
    evidence = tuple(
        Evidence(field="material", start=m.start, end=m.end, surface=m.surface)
        for m in named
        if m.family == first
    )[:2]
    return MaterialChoice(
        first,
        graded.grade if graded else None,
        tuple(families) if len(families) > 1 else (),
        evidence,
    )
