"""Sizes of one sentence of which a clause only tells, where another of its clauses asks: 'looking
for 38 x 2 on R 90, we run 42 x 2 on R 100 at the moment', 'the 28 x 2 I have, I need 30 x 2'.

A sentence that asks speaks for all of its sizes (``told``), as long as each clause is not heard for
itself. The size is only doubted: the words are those of any story.
"""

from __future__ import annotations

from collections.abc import Sequence

from ...late_pattern import late_pattern
from ..sizes.groups import Group
from ..text.figures import Layout
from ..text.patterns import any_of, whole_words
from .each_words import OF_EACH
from .said_of import split
from .told import asks_in
from .words_on_size import Said

_MOST = 6
"""So many sizes are told apart; more are a list."""
_DO = (
    r"(?:runs?|ran|running|bends?|bent|bending|do|does|did|uses?|used|have|has|had|got|owns?|owned"
    r"|bought|made|built|tried|ordered|asked|went|stock)"
)
_FAILED = r"(?:kink|wrinkl|flatten|collaps|crack|buckl|crush|split|rippl|fail|fold)\w*"
_TELLS = whole_words(
    rf"(?:i|we|he|she|they|you)(?:'ve|'d)? (?:[a-z]+ ){{0,2}}?{_DO}",
    rf"(?:kinked|wrinkled|flattened|collapsed|cracked|buckled|failed) | (?:kept|keeps) {_FAILED}",
    r"came with | comes with | (?:comes?|is) (?:\w+ )?later | to replace (?:our|my|the) old",
    rf"(?:my|our|his|her|the|another) (?:[\w-]+ ){{1,3}}?{_DO}(?! to\b)",
    r"(?:wir|ich|er|sie) (?:\w+ )?(?:biegen?|fahren?|haben?|hatten?|nutzen?|machen?|bogen)",
    r"(?:biegen|fahren|haben|hatten|nutzen|machen) wir | (?:biege|fahre|habe|hatte|nutze) ich",
    r"knick\w+ | geknickt | kommt später | folgt später",
    r"(?:nous|on|je) (?:\w+ )?(?:cintr(?:ons|e)|avons|utilis(?:ons|e)|fais(?:ons)?|fait)",
    r"(?:on (?:en )?a|j'(?:en )?ai) (?:déjà|cintré|fait|acheté|essayé|plié)",
    r"a plié | s'écrase\w* | viendra plus tard",
    r"(?:ya )?(?:tenemos|tengo|usamos|uso|curvamos|doblamos|hacemos|compramos|hicimos)",
    r"se (?:arrugó|aplastó|arruga|aplasta) | vendrá más adelante",
    r"(?:già )?(?:abbiamo|ho|usiamo|uso|pieghiamo|curviamo|facciamo|comprammo)",
    r"si (?:è )?(?:schiacciat[oa]|schiaccia|piegava) | viene dopo | verrà più avanti",
    r"(?:we|wij|ik) (?:\w+ )?(?:buigen|buig|hebben|heb|gebruiken|gebruik|doen)",
    r"(?:buigen|hebben|gebruiken|doen) we | (?:buig|heb|gebruik) ik | knikte | komt later",
)
_AND = whole_words("and | plus | und | et | y | e | ed | en | or | oder | ou | o | of")
_TAIL = late_pattern(
    r"[\s\"'″”.]*(?:(?:mm|in|inch|clr|radius|r|wall|od|id|tube|tubing|pipe|centre|center|line"
    r"|centerline|centreline)\b[\s\"'″”.]*){0,4}"
    + any_of(
        r"(?:comes?|is|goes|will (?:come|be|follow)) (?:\w+ )?(?:later|cancell?ed|on hold)",
        rf"(?:kept|keeps) {_FAILED} | (?:kinked|wrinkled|flattened|collapsed|cracked|buckled)",
        r"can wait | kommt später | folgt später | viendra plus tard | vendrá más adelante",
        r"verrà più avanti | komt later | volgt later",
    )
    + r"\b"
)
_TOO = whole_words("too | also | as well | auch | ebenfalls | aussi | également | también | anche")
"""'We have 42 x 2 as well': it may be wanted with the other."""


def told_by_clause(layout: Layout, groups: Sequence[Group]) -> list[bool]:
    """Which sizes only a clause tells of, in a sentence of which another clause asks."""
    none = [False] * len(groups)
    if not 1 < len(groups) <= _MOST or any(group.row is not None for group in groups):
        return none
    found = split(layout, groups)
    if found is None or any(OF_EACH.search(words) and asks_in(words) for words in found.loose):
        return none
    with_tube = [p for g, p in zip(groups, found.sizes, strict=True) if _has_tube(g)]
    asked = [part for part in with_tube if asks_in(part.words)]
    if not asked and any(map(asks_in, found.loose)):  # "38 x 2, we run 42 x 2 now. Price please"
        first = min(with_tube, key=lambda part: part.begin, default=None)
        asked = [first] if first is not None and not _only_tells(first) else []
    told = [
        _has_tube(group) and _only_tells(part) and _stands_beside(part, asked)
        for group, part in zip(groups, found.sizes, strict=True)
    ]
    told = [
        tells or _tails_off(layout, part, found.sizes)
        for tells, part in zip(told, found.sizes, strict=True)
    ]
    return none if all(told) else told


def _tails_off(layout: Layout, part: Said, parts: Sequence[Said]) -> bool:
    """'Price on 38 x 2 on R 90, 42 x 2 on R 100 comes later': the last of several named in one
    breath, with a verb of its own behind it."""
    before = [p for p in parts if (p.begin, p.end) == (part.begin, part.end) and p is not part]
    starts = [p.figures[0].start for p in before]
    if not before or max(starts) > part.figures[0].start:
        return False
    last = max(p.figures[-1].end for p in before)
    between = layout.words(last, part.figures[0].start)
    if "," not in between or _AND.search(between):
        return False
    if not asks_in(layout.words(part.begin, min(starts))):
        return False
    return _TAIL.match(layout.words(part.figures[-1].end, part.end)) is not None


def _has_tube(group: Group) -> bool:
    """Whether it has an OD of its own: radii of one tube are asked for together."""
    return "od" in group.slots and "od" not in group.shared


def _only_tells(part: Said) -> bool:
    if asks_in(part.words) or any(asks_in(words) for words in part.elsewhere):
        return False
    if OF_EACH.search(part.words) or _TOO.search(part.words):
        return False
    return _TELLS.search(part.words) is not None


def _stands_beside(part: Said, asked: Sequence[Said]) -> bool:
    sentence = part.figures[0].sentence
    return any(other.figures[0].sentence == sentence for other in asked)
