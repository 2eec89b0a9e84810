"""Dies that are there, told with the tubes and radii they are for, beside a whole size that is
asked for: 'We also have dies for 1.5 on 4.5 and 2 on 6. Please quote a mandrel for 1.75 x .095 on
5.25'.
"""

from __future__ import annotations

import re

from ...late_pattern import late_pattern
from ..picking.named_later import ASKS_FOR_ALL
from ..text.figures import Figure, Layout
from ..text.patterns import whole_words
from ..text.roles import RADIUS_ROLES
from .asked_words import ASKS, TOOL

_DIES = whole_words(
    r"dies | die sets? | formers? | biegeform(?:en)? | biegewerkzeuge? | matrices? | formes",
    r"matriz | matrici | matrijzen | matrijs | mallen",
)
_THERE = whole_words(
    r"have | own | got | our | on hand | in house | available | in stock | run | here | haben",
    r"unsere | vorhanden | besitzen | avons | nos | disponibles? | tenemos | nuestr[oa]s | abbiamo",
    r"nostr[eoi] | disponibili | hebben | onze | beschikbaar",
)
_THOSE = late_pattern(
    r"\b(?:those|these|them|they|each|both|all|every|others?|rest|too|as well|which|whichever"
    r"|either|die alle|dafür|beide[nr]?|jeweils|ceux|celles|tou[st]|chacun\w*|es[oa]s|ambos|cada"
    r"|todos|quell[ie]|entrambi|ogni|tutti|die allemaal|allebei|elk)\b"
)
"""Words that may ask for mandrels for the dies."""
_AS_WELL = late_pattern(r"\b(?:too|as well)\b")
"""Said of the dies themselves."""
_OF_THIS_TUBE = late_pattern(
    r"\b(?:new|now|bought|purchased|just got|same (?:tub\w+|pipe)|neue[nrsm]?|jetzt|nun|gekauft"
    r"|(?:das|dem|den)selben? rohr|(?:das |dem )?gleiche[ns]? rohr|nouve\w+|maintenant|achetée?s?"
    r"|même tub\w+|nuev[oa]s?|ahora|compr(?:ado|ada|amos)|mismo tubo|nuov[oaie]|ora|adesso"
    r"|comprat[oaie]|stesso tubo|nieuwe?|nu|gekocht|dezelfde buis)\b"
)
"""Words on the die that the mandrel is for: "now we have a bigger one for the same tube"."""
_STOP = re.compile(r"(?<!\bin)(?<!\brad)(?<!\bno)(?<!\bdia)[.!?;](?=\s|$)|\n")
_MOST = 200
"""So many figures are a list, and no dies beside a tube."""
_TUBE = frozenset({"od", "wall"})


def set_listed_dies_aside(layout: Layout) -> None:
    """Set the figures of such clauses aside, where none of their tubes needs them."""
    text = layout.text.lower()
    if len(layout.figures) > _MOST or len(text) != len(layout.text) or not _DIES.search(text):
        return
    clauses = [(begin, end) for begin, end in _clauses(text) if _tells_of_dies(text[begin:end])]
    inside = [f for f in layout.figures if any(b <= f.start < e for b, e in clauses)]
    rest = [f for f in layout.figures if f not in inside and f.is_measure]
    if not inside or any(f.role == "wall" or f.row is not None for f in inside):
        return
    roles = {f.role for f in rest}
    if not (roles >= _TUBE and roles & RADIUS_ROLES) or _may_want(text, clauses):
        return
    tubes = {(f.number.value, f.unit) for f in rest if f.role == "od"}
    radii = [f for f in rest if f.role in RADIUS_ROLES]
    if len(radii) < len(tubes) or _tells_more(inside, rest):
        return
    for begin, end in clauses:
        layout.owned.append(" ".join(layout.text[begin:end].split()))
    for figure in inside:
        figure.negated = figure.owned = True


def _clauses(text: str) -> list[tuple[int, int]]:
    ends = [stop.end() for stop in _STOP.finditer(text)]
    return list(zip([0, *ends], [*ends, len(text)], strict=True))


def _tells_of_dies(words: str) -> bool:
    if (
        "?" in words
        or ASKS.search(words)
        or TOOL.search(words)
        or _OF_THIS_TUBE.search(words)
        or _THOSE.search(_AS_WELL.sub(" ", words))
    ):
        return False
    return _DIES.search(words) is not None and _THERE.search(words) is not None


def _may_want(text: str, clauses: list[tuple[int, int]]) -> bool:
    """Whether other words may ask for mandrels for the dies: 'one for each of those'."""
    rest = text
    for begin, end in clauses:
        rest = rest[:begin] + " " * (end - begin) + rest[end:]
    words = " ".join(rest.split())
    return ASKS_FOR_ALL.search(words) is not None or any(
        _THOSE.search(text[begin:end]) and not any(begin == b for b, _ in clauses)
        for begin, end in _clauses(text)
    )


def _tells_more(inside: list[Figure], rest: list[Figure]) -> bool:
    """Whether a tube that is asked for is among the dies, on another radius than its own."""
    tubes = {f.number.value for f in rest if f.role == "od"}
    radii = {f.number.value for f in rest if f.role in RADIUS_ROLES}
    behind = zip(inside, [*inside[1:], None], strict=True)
    return any(
        die.number.value in tubes
        and radius is not None
        and radius.role in RADIUS_ROLES
        and radius.number.value not in radii
        for die, radius in behind
    )
