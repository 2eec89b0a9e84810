"""Radii and walls given to sizes by their place in a list: 'CLR 57 for items 1 and 2, 100 for 3)',
'Radius Pos. 1: 57 mm', 'the first on 57, the second on 85'."""

from __future__ import annotations

import re
from collections.abc import Sequence

from ...late_pattern import late_pattern
from ..numbers.item_numbers import speaks_of_others
from ..picking.place_names import ARTICLE, COUNTED, LAST, NOUN, places
from ..picking.withdrawn import label_before
from ..text.figures import Figure, Layout
from ..text.roles import RADIUS_ROLES, Role

_JOINED = r"(?:\s?[,&+/]\s?|\s(?:and|und|et|y|e|en)\s)"
_SOME = {
    **dict.fromkeys("two beiden deux dos due twee".split(), 2),
    **dict.fromkeys("three drei trois tres tre drie".split(), 3),
    **dict.fromkeys("four vier quatre cuatro quattro".split(), 4),
}
_N = "|".join(_SOME)
_FIRST = "first|ersten|premi(?:er|ère)s|primer[oa]s|prim[ie]|eerste"
_LAST_ONES = "last|letzten|derni(?:er|ère)s|últim[oa]s|ultim[ie]|laatste"
SEVERAL = (
    rf"{ARTICLE}(?P<several>(?:(?:{_N})\s)?(?:{_FIRST}|{_LAST_ONES})(?:\s(?:{_N}))?)"
    rf"(?=\W|$)(?<!first)(?<!last)(?<!eerste)(?<!laatste)"
)
"""'The first two', 'die letzten drei', 'les deux premiers'."""
_WORDS = "|".join(sorted((*COUNTED, *LAST), key=len, reverse=True))
_PLACES = (
    rf"{ARTICLE}(?:{NOUN}\s?#?(?P<numbers>\(?(?:\d{{1,2}}|[a-h])\)?"
    rf"(?:{_JOINED}\(?(?:\d{{1,2}}|[a-h])\)?(?!\s?(?:mm|in\b)))*)"
    rf"|(?P<marks>(?:\(?(?:\d{{1,2}}|[a-h])\)|(?-i:[A-H])(?!\w))"
    rf"(?:{_JOINED}(?:\(?(?:\d{{1,2}}|[a-h])\)|(?-i:[A-H])(?!\w)))*)"
    rf"|(?P<counted>(?:{_WORDS})(?:{_JOINED}{ARTICLE}(?:{_WORDS}))*)(?:\s{NOUN})?)"
)
_LEADS = late_pattern(rf"(?<![\w.]){_PLACES}(?![\w.,\"]?\d)(?!\")[^,;\n\d]{{0,24}}$", re.IGNORECASE)
_WITHIN = r"(?:(?!(?<!\bin)(?<!\brad)(?<!\bno)[.!?]\s)[^,;\n\d()]){0,24}?"
"""A sentence that ends leads to none: '7.5 clr. Two of the first, please'."""
_FOLLOWS = late_pattern(
    rf"^{_WITHIN}\b(?:for|on|of|für|bei|von|zu|pour|sur|para|per|su|voor|bij|van)\s"
    rf"{_PLACES}(?![\w/]|[.,]\d|\s?(?:mm|in\b|inch|x\s?\d))",
    re.IGNORECASE,
)
_SEVERAL_FOLLOW = late_pattern(
    rf"^{_WITHIN}\b(?:for|on|für|bei|zu|pour|sur|para|per|su|voor|bij)\s"
    rf"{SEVERAL}",
    re.IGNORECASE,
)
_SEVERAL_LEAD = late_pattern(rf"(?<![\w.]){SEVERAL}[^,;.\n\d]{{0,24}}$", re.IGNORECASE)
_IN_SPACE = late_pattern(r"^(?:over |at |on )?(?:the )?(?:top|bottom|oberste|unterste)\b")
"""'1" OD, the half circle over the top measures 12 inches': of the bend, and of no list."""
_CLAUSE = late_pattern(
    r"[;\n]|,(?!\d)|(?<!pos)(?<!no)(?<!nr)[.!?](?=\s)|\s(?:and|und|et|y|e|en)\s", re.IGNORECASE
)
_EACH = late_pattern(r"\d{1,2}|[a-h](?![a-z])", re.IGNORECASE)
_LETTER = late_pattern(r"\b([A-H])\s?[:=)-]\s*$")
"""'Teil A: 38 x 1,5'"""
_NUMBERS_LINE = late_pattern(rf"(?:^|\n)\W*{NOUN}\s?(?:#|n°|nr\.?)?\s?$", re.IGNORECASE)
"""'Repère 3 : lissoir pour repère 2': the 3 is a place of the list itself."""
_FAR = 60
"""Characters before and behind a figure in which its clause is looked for, and tokens before it
for the word that says what it is."""


def find_item_ties(layout: Layout, tubes: Sequence[Figure]) -> list[tuple[Figure, Figure]]:
    """Pairs of a radius or wall and the OD of the size whose place the words name; none where a
    place is named that the list has not."""
    if len(tubes) < 2:
        return []
    labels = [_label(layout, tube) for tube in tubes]
    known = [label for label in labels if label is not None]
    names = known if len(set(known)) == len(tubes) else [str(n + 1) for n in range(len(tubes))]
    ties: list[tuple[Figure, Figure]] = []
    for figure in layout.figures:
        among = tubes[0].index <= figure.index < tubes[-1].index
        role = None if among or figure.row is not None else _role(layout, figure, ties)
        if role is None:
            continue
        meant = _meant(layout, figure, names, behind_tubes=_end_of_last(layout, tubes[-1]))
        if meant is None and ties and speaks_of_others(layout.text, _behind_unit(layout, figure)):
            tied = {tube.index for _, tube in ties}
            meant = [n for n, tube in enumerate(tubes) if tube.index not in tied]
        for number in meant or []:
            ties.append((figure, tubes[number]))
        if meant:
            figure.role = role
    return ties


def _end_of_last(layout: Layout, tube: Figure) -> int:
    """Where the last tube ends, with the wall that a times sign joins to it."""
    after = layout.after(tube)
    return after.end if after is not None and after.link in ("times", "slash") else tube.end


def _label(layout: Layout, tube: Figure) -> str | None:
    """What a size is called at the start of its line, or in the line: '2) 42.4 x 2'."""
    at = tube.token - 1
    while at >= 0 and layout.tokens[at].kind == "gap":
        at -= 1
    token = layout.tokens[at] if at >= 0 else None
    if token is not None and token.block == "item":
        found = _EACH.search(token.text)
        if found is not None:
            return found[0].casefold()
    line = layout.text[max(0, tube.start - _FAR) : tube.start].rpartition("\n")[2]
    letter = _LETTER.search(line)
    return letter[1].casefold() if letter is not None else label_before(layout.text, tube.start)


def _role(layout: Layout, figure: Figure, ties: Sequence[tuple[Figure, Figure]]) -> Role | None:
    """What a figure is: a radius, a wall, or bare and either by the word before it."""
    if not figure.is_measure:
        return None
    if figure.role in RADIUS_ROLES or figure.role in ("times_d", "wall"):
        return figure.role
    if figure.role is not None or _NUMBERS_LINE.search(
        layout.text, max(0, figure.start - _FAR), figure.start
    ):
        return None
    first = max(layout.spans[figure.sentence][0], figure.token - _FAR)
    for at in range(figure.token - 1, first - 1, -1):
        cue = next((c for c in layout.tokens[at].cues if c.side != "after"), None)
        if cue is not None and (cue.role in RADIUS_ROLES or cue.role == "wall"):
            return cue.role
    last = ties[-1][0] if ties else None
    if last is None or last.sentence != figure.sentence:
        return None
    return "radius" if last.role == "times_d" else last.role


def _meant(
    layout: Layout, figure: Figure, names: Sequence[str], *, behind_tubes: int
) -> list[int] | None:
    """Indexes of the sizes that the clause of a figure names by their places; before it only where
    the place is named ``behind_tubes``: in 'the second, 42 x 2 on R 85' it leads to no radius."""
    text = layout.text
    behind = text[figure.end : figure.end + _FAR]
    ahead = text[max(min(behind_tubes, figure.start), figure.start - _FAR) : figure.start]
    begin = layout.sentence_start(figure.sentence)
    several = _SEVERAL_FOLLOW.match(behind)
    match = _FOLLOWS.match(behind)
    cuts = [cut.end() for cut in _CLAUSE.finditer(ahead)]
    if several is None and match is None and ahead:
        several = _SEVERAL_LEAD.search(ahead, cuts[-1] if cuts else 0)
    if several is not None:
        return several_of(several["several"].casefold(), len(names))
    if match is None and ahead:
        match = _LEADS.search(ahead, _joined_from(ahead, cuts))
        if match is not None and behind_tubes > begin and _IN_SPACE.search(match[0]):
            return None
    if match is None:
        return None
    if match["counted"]:
        words = [w for w in re.split(r"\W+", match["counted"]) if w.casefold() in {*COUNTED, *LAST}]
        found = [places(None, word, names) for word in words]
    else:
        said = match["numbers"] or match["marks"]
        found = [places(one[0], None, names) for one in _EACH.finditer(said)]
    return [index for one in found for index in one] if found and all(found) else None


def several_of(words: str, most: int) -> list[int] | None:
    """Indexes of 'first two', 'deux derniers' among so many sizes; None where it hasn't so many."""
    count = next((_SOME[word] for word in words.split() if word in _SOME), 0)
    if not 0 < count < most:
        return None
    at_end = re.search(_LAST_ONES, words) is not None
    return list(range(most - count, most) if at_end else range(count))


def _joined_from(ahead: str, cuts: Sequence[int]) -> int:
    """Where the clause of a figure begins: 'items 1 and 2 on' is one."""
    for cut in reversed(cuts):
        if _EACH.match(ahead, cut) is None or ahead[cut - 1 : cut] == "\n":
            return cut
    return 0


def _behind_unit(layout: Layout, figure: Figure) -> int:
    """The place behind a figure and the word for what it is: '100 mm CLR'."""
    after = layout.tokens_after(figure, 1)
    return after[0].end if after and after[0].kind == "cue" else figure.end
