"""A tube that is named by its OD alone beside a fuller request for that OD: 'item 2 should read
1.375 OD', and the list below has 1.375 x .065. It is that tube named again, and no further size.

Where words say that it is a further one ('also one for 1.5 OD') the OD of the fuller is doubted.
"""

from __future__ import annotations

from collections.abc import Sequence
from decimal import Decimal

from ...late_pattern import late_pattern
from ..naming.likeness import restates
from ..nets.nets import is_item
from ..text.figures import Figure, Layout
from ..text.patterns import whole_words
from .groups import Group

FURTHER = "the same OD again: is it that tube, or a further one?"

_FURTHER = whole_words(
    r"also | another | a second | one more | further | additional(?:ly)? | plus | as well as | too",
    r"different | other | different wall | auch | noch | weitere[nrs]? | zusätzlich\w* | außerdem",
    r"andere[nrs]? | zweite[nrs]? | aussi | un autre | une autre | encore | deuxième | également",
    r"también | otr[oa] | además | segund[oa] | anche | altr[oa] | ancora | inoltre | second[oa]",
    r"ook | nog | andere | tweede | bovendien",
)
_FURTHER_ONE = late_pattern(
    r"\b(?:(?:also|plus|auch|noch|aussi|encore|también|además|anche|ancora|ook|nog)\s"
    r"(?:need\s|want\s)?(?:an?|one|1|eine?n?|une?|un[oa]?|een|één)"
    r"|(?:another|a second|a further|ein(?:en)? weitere[nr]?|(?:ein(?:en)? )?zweite[nr]?|un autre"
    r"|un deuxième|otro|un segundo|un altro|un secondo|nog een|een tweede)(?:\sone)?)\s"
    r"(?:mandrel\s|\w*dorn\s|mandrin\s|mandril\s|mandrino\s|doorn\s)?"
    r"(?:(?:for|für|pour|para|per|voor)\s)?(?:an?\s|the\s|das\s|le\s|el\s|il\s|de\s|ø\s?)?$"
)
"""So a further tube of the same OD is spoken of, where it was taken for the same."""
_AND_ONE = late_pattern(
    r"(?:[.;!?]\s|^)(?:and|then|und|dann|et|puis|y|luego|e|poi|en|dan)\s(?:also\s|auch\s|aussi\s)?"
    r"(?:an?|one|1|eine?n?|une?|un[oa]?|een|één)\s(?:mandrel\s|\w*dorn\s|mandrin\s|mandril\s"
    r"|mandrino\s|doorn\s)?(?:(?:for|für|pour|para|per|voor)\s)?(?:an?\s|ø\s?)?$"
)
"""'... 4.5 CLR. And a 1.5 OD': an article names what was not spoken of before."""
_OF_ANOTHER_JOB = whole_words(
    r"(?:for|on) (?:an?|my|our|the) (?:\w+ )?(?:different|other|separate|second)"
    r" (?:job|project|customer|client|order|bike|car|machine|die|bender|part|frame|build|one)",
    r"(?:for|on) another (?:\w+ )?(?:job|project|customer|client|order|bike|car|machine|die|part)",
    r"(?:in|of|with) (?:an?other|a (?:different|thicker|heavier|thinner|lighter)) (?:wall|material"
    r"|grade|alloy|gauge|thickness)",
    r"(?:für|an) (?:einen|eine|ein) (?:ander\w+|zweite\w+|weiter\w+|neue\w*) (?:\w*auftrag|projekt"
    r"|kunden?|\w*maschine|teil|bauteil)",
    r"(?:mit|in) (?:ander\w+|dicker\w+|dünner\w+) (?:wand\w*|material|werkstoff|wandstärke)",
    r"(?:pour|sur) une? (?:autre|deuxième|nouvel\w*) (?:\w+)",
    r"(?:para|en) (?:otr[oa]|un segundo|una segunda) (?:trabajo|proyecto|cliente|máquina|pieza)",
    r"(?:per|su) (?:un altro|un'altra|un secondo|una seconda) (?:lavoro|progetto|cliente|commessa"
    r"|macchina)",
    r"(?:voor|op) een (?:ander|andere|tweede|nieuwe?) (?:klus|project|klant|opdracht|machine)",
)
_COUNTED = late_pattern(
    r"\b(?:\d+|one|two|three|four|five|six|zwei|drei|vier|deux|trois|quatre|dos|tres|cuatro|due|tre"
    r"|quattro|twee|drie|vier) (?:of|for|von|für|du|de|des|pour|para|di|del|per|van|voor)"
    r" (?:the |den |die |le |la |los |las |el |il |lo |de )?$"
)
_NEAR = 48
"""Characters before the OD, and behind it, in which such a word stands."""
_BESIDE = 60
"""So many sizes are compared to either side: it keeps a long list linear."""


def without_named_again(layout: Layout, groups: list[Group]) -> list[Group]:
    """The groups without those that only name the tube of a fuller one."""
    kept: list[Group] = []
    several = _count_each(layout, groups)
    for number, group in enumerate(groups):
        near = groups[max(0, number - _BESIDE) : number + _BESIDE + 1]
        fuller = [other for other in near if other is not group and _has_more(other, group)]
        counted = not several and fuller and _is_counted(layout, group)
        if not fuller or _is_listed(layout, group) or counted:
            kept.append(group)
        elif _is_further(layout, group.slots["od"][0]):
            for other in fuller:
                other.notes.append(("od", FURTHER))
    _doubt_further(layout, kept)
    return kept


def _doubt_further(layout: Layout, groups: Sequence[Group]) -> None:
    """'1.5 x .065, CLR 4.5. Also one for 1.5 OD': taken as the same, and perhaps it is not."""
    firsts = {group.slots["od"][0].index for group in groups if "od" in group.slots}
    values = {group.slots["od"][0].number.value for group in groups if "od" in group.slots}
    further: dict[Decimal, Figure] = {}
    for figure in layout.figures:  # the last one of each value is kept
        if figure.role not in (None, "od") or figure.index in firsts or figure.row is not None:
            continue
        if figure.number.value not in values or figure.negated or figure.put_off:
            continue
        if _seems_further(layout, figure):
            further[figure.number.value] = figure
    for group in groups:
        held = group.slots["od"][0] if "od" in group.slots else None
        again = further.get(held.number.value) if held is not None else None
        if held is None or again is None or again.index < held.index:
            continue
        if {again.unit, held.unit} != {"in", "mm"}:
            group.notes.append(("od", FURTHER))


def _seems_further(layout: Layout, figure: Figure) -> bool:
    ahead = " ".join(layout.words(max(0, figure.start - _NEAR), figure.start).split()) + " "
    if _FURTHER_ONE.search(ahead) or _AND_ONE.search(ahead.casefold()):
        return True
    return _OF_ANOTHER_JOB.search(_words_behind(layout, figure).casefold()) is not None


def _has_more(other: Group, group: Group) -> bool:
    """Whether a group has the one figure of another, and a wall or a radius beside it."""
    if set(group.slots) != {"od"} or group.shape or other.shape or "od" not in other.slots:
        return False
    if not {"wall", "clr"} & set(other.slots):
        return False
    return any(restates(held, group.slots["od"][0]) for held in other.slots["od"])


def _count_each(layout: Layout, groups: Sequence[Group]) -> bool:
    """'Two for the 32 mm, one for the 45': counts of sizes that were told, and no further ones."""
    alone = [g for g in groups if set(g.slots) == {"od"} and _is_counted(layout, g)]
    told = {g.slots["od"][0].number.value for g in groups if {"wall", "clr"} & set(g.slots)
            and "od" in g.slots}  # fmt: skip
    named = {g.slots["od"][0].number.value for g in alone}
    return len(named) > 1 and named == told


def _is_counted(layout: Layout, group: Group) -> bool:
    """'What would 1.75 x .095 cost, and three of the 1.5?'"""
    begin = group.slots["od"][0].start
    return _COUNTED.search(layout.words(max(0, begin - _NEAR), begin)) is not None


def _is_listed(layout: Layout, group: Group) -> bool:
    """Whether it is an item of a list by itself."""
    od = group.slots["od"][0]
    return group.row is not None or is_item(layout, od)


def _is_further(layout: Layout, od: Figure) -> bool:
    begin = max(layout.sentence_start(od.sentence), od.start - _NEAR)
    before = layout.before(od)
    if before is not None:
        begin = max(begin, before.end)
    if _FURTHER.search(layout.words(begin, od.start)):
        return True
    return _FURTHER.search(_words_behind(layout, od)) is not None


def _words_behind(layout: Layout, od: Figure) -> str:
    """Words behind an OD, up to the next figure or the end of its line."""
    after = layout.after_in_sentence(od)
    end = min(od.end + _NEAR, after.start if after is not None else len(layout.text))
    line = layout.text.find("\n", od.end)
    end = min(end, line) if line >= 0 else end
    return layout.words(od.end, max(od.end, end))
