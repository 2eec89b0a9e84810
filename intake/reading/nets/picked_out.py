"""Nets: what is asked for is tied to one of the sizes by structure alone, so the others may only be
told of.

The words that tell of a size are endless: 'tooling made in house', 'supplier part', 'gets welded'.
But where the one line of a list that asks says so behind its figures, or the request names the one
tube by what only that is called, or one is to be like another 'but for 80 x 2', whatever the other
words are, they stand beside a size that nothing asks for.
"""

from __future__ import annotations

import re
from collections import Counter
from collections.abc import Iterator, Sequence
from itertools import pairwise

from ...late_pattern import late_pattern
from ..sizes.groups import Group, own_figures
from ..text.figures import Figure, Layout
from ..text.patterns import any_of, whole_words
from ..text.roles import LENGTH_ROLES
from ..wanted.asked_words import ASKS, TOOL
from ..wanted.each_words import OF_EACH
from ..wanted.told import opens_line
from ..wanted.told_words import ABOUT_DIE

PICKED_OUT = "the request seems to be for another of the sizes"

_TOOLS = any_of(
    r"mandrels? | \w*dorne? | mandrins? | mandril(?:es)? | mandrin[oi] | anim[ae] | doorn(?:en|s)?"
)
_LIKE = late_pattern(
    r"\b(?:(?:just |exactly |much )?like|same(?: \w+){0,3} as(?: for)?|similar to|identical to"
    r"|wie|gleich wie|genau wie"
    r"|comme|pareil (?:que|à)|como|igual (?:que|a)|come|uguale a|zoals|net als|hetzelfde als)\s"
    + any_of(
        "(?:the|that|your|our|my)(?: last| other| old| first)?(?: one| mandrel| tool| plug)?",
        r"(?:der|den|dem|die|jene[rn]?|unser\w*|euer\w*|ihr\w*)(?: \w*dorn)?",
        "(?:celui|le mandrin|notre mandrin|votre mandrin) | (?:el|aquel|nuestro|su)(?: mandril)?",
        "(?:quello|il mandrino|il nostro|il vostro) | (?:die|degene|onze|de doorn|de onze)",
    )
    + r"(?:\s(?!(?:but|aber|mais|pero|ma|maar)\b)[^\W\d]+,?){0,6}\s\W{0,2}$"
)
"""'Make me one like the one you made for 70 x 2'."""
_BUT_FOR = late_pattern(
    r"\b(?:but|only|just|except|except that|aber|nur|jedoch|mais|sauf|pero|solo|ma|però|maar|alleen"
    r"|this time|diesmal|cette fois|esta vez|questa volta|deze keer)\b"
    r"|,\s(?:in|for|für|pour|para|per|voor|en)\s$"
)
_PART = re.compile(r"[.!?;](?=\s|$)|\n")
_FOR_NAME = late_pattern(
    r"\b(?:for|to suit|to fit|to|für|fürs|zum|zur|pour|para|per|voor)\s"
    r"(?P<name>[^\W\d][^.!?;:,()\n]{0,40})"
)
_AND = re.compile(r"\b(?:and|or|und|oder|et|ou|y|o|e|en|of)\s[^\W\d]|[&+]")
_WORD = re.compile(r"[^\W\d_]+")
_NO_NAME = frozenset(
    """the a an our my your his this that these those it them one ones all both each only just and
    or of with in on at by is are was we i you please pls now need needs want mandrel mandrels tube
    tubes pipe size sizes radius wall od clr job new old der die das den dem des ein eine einen und
    oder mit auf von bitte nur ist sind dorn dorne rohr rohre radius wand le la les un une du des de
    et ou avec sur en svp mandrin mandrins tube tubes rayon el los las una y o con por mandril
    mandriles tubo tubos radio il lo gli i uno e su mandrino mandrini raggio het een van op met
    doorn doornen buis buizen straal mm inch""".split()
)
_MOST = 12
"""More sizes are a list that speaks otherwise."""
_LONG_NAME = 5
_LATTER = late_pattern(
    r"\b(?:the latter|letztere[nrs]?|ce(?:tte)? derni[eè]re?|est[ea] últim[oa]|quest['’ ]ultim[oa]"
    r"|de laatste|laatstgenoemde|het laatste)\b"
)
_ALSO = whole_words(
    "also | too | as well | auch | noch | aussi | encore | también | anche | ook | nog"
)
_FORMER = late_pattern(
    r"\b(?:the former|erstere[nrs]?|le premier cité|el primero de ellos|il primo dei due"
    r"|eerstgenoemde)\b"
)
_NAMED_FAR = 60
"""Characters before an OD in which its tube is called something."""
_TAIL_WORDS = late_pattern(r"[^\W\d_]{3,}")
_PLAIN_TAIL = whole_words(
    r"\w*st(?:eel|ahl) | inox | edelstahl | stainless\w* | alu\w* | brass | copper | messing",
    r"kupfer | titan\w* | chromoly | dom | erw | hrew | seamless | welded | acier | acero "
    r"| acciaio",
    r"staal | rvs | laiton | cuivre | latón | cobre | ottone | rame | koper | inconel | mild",
    r"clr | radius | rad | wall | centr\w+ | line | rayon | radio | raggio | straal | od | tub\w+",
    r"pipe | rohr | pcs | piece\w* | stück | stk | off | qty | each | bend\w* | degrees? | deg",
    r"rear | front | upper | lower | main | left | right | inner | outer | and | for | the | with",
    r"inch(?:es)? | die | round | rund | one | two | three | each | please | ein\w* | zwei | drei",
    r"un[aoe]? | deux | trois | dos | tres | due | tre | een | twee | drie",
)
_TAIL_ASKS = late_pattern(
    rf"\b(?:new|one|1|two|2|3|three|neue[nr]?|nouveau|nuevo|nuovo|nieuwe)"
    rf" (?:\w+ )?{_TOOLS}\b|\b(?:un|une|uno) {_TOOLS} (?:nouveau|neuf|nuevo|nuovo)\b"
    rf"|\b{_TOOLS} (?:needed|wanted|required|missing|worn|gesucht|nötig|benötigt"
    r"|fehlt|nécessaire|requis|necesario|necessario|nodig)\b"
)


def picked_out(layout: Layout, groups: Sequence[Group]) -> Iterator[tuple[Group, str]]:
    """Sizes beside the one that is asked for by its line, by its name, or as another's like."""
    told = [group for group in groups if own_figures(group)]
    if not 1 < len(told) <= _MOST or any(group.row is not None for group in told):
        return
    yield from ((group, PICKED_OUT) for group in _likened(layout, told))
    asking = _asking_lines(layout, told) or _named(layout, told)
    if asking and len(asking) < len(told):
        yield from ((group, PICKED_OUT) for group in told if group not in asking)


def _likened(layout: Layout, groups: Sequence[Group]) -> list[Group]:
    """'A mandrel like the one for 70 x 2 / R 140, but for 80 x 2 / R 160': the former."""
    found = []
    for group, other in pairwise(groups):
        first, following = own_figures(group)[0], own_figures(other)[0]
        before = layout.text[layout.sentence_start(first.sentence) : first.start].casefold()
        if not _LIKE.search(before.replace("ø", " ")):
            continue
        last = max(f.end for f in own_figures(group))
        if last < following.start and _BUT_FOR.search(
            layout.text[last : following.start].casefold()
        ):
            found.append(group)
    return found


def _asking_lines(layout: Layout, groups: Sequence[Group]) -> list[Group]:
    """The sizes of a list whose lines ask for a mandrel behind their figures, where every other
    line says something else there, and no words beside the list ask."""
    lines = [_line(layout, own_figures(group)) for group in groups]
    spans = sorted({span for span in lines if span is not None})
    if None in lines or len(spans) < len(groups):
        return []
    if not all(opens_line(layout, own_figures(group)[0]) for group in groups):
        return []
    tails = {}
    for group, span in zip(groups, lines, strict=True):
        assert span is not None
        last = max(f.end for f in own_figures(group))
        tails[id(group)] = layout.text[last : span[1]].casefold()
    asking = [group for group in groups if _tail_asks(tails[id(group)])]
    others = [group for group in groups if group not in asking]
    if not asking or any(not _tells_something(tails[id(group)]) for group in others):
        return []
    rest = layout.text
    for begin, end in spans:
        rest = rest[:begin] + " " * (end - begin) + rest[end:]
    return [] if ASKS.search(" ".join(rest.casefold().split())) else asking


def _tail_asks(tail: str) -> bool:
    tool = _TAIL_ASKS.search(tail) is not None
    return tool or (ASKS.search(tail) is not None and TOOL.search(tail) is not None)


def _tells_something(tail: str) -> bool:
    if ASKS.search(tail) or _TAIL_ASKS.search(tail) or "?" in tail:
        return False
    return _TAIL_WORDS.search(_PLAIN_TAIL.sub(" ", tail)) is not None


def _line(layout: Layout, figures: Sequence[Figure]) -> tuple[int, int] | None:
    """The line on which all figures stand."""
    begin = layout.text.rfind("\n", 0, figures[0].start) + 1
    end = layout.text.find("\n", figures[0].end)
    end = len(layout.text) if end < 0 else end
    return (begin, end) if all(begin <= f.start < end for f in figures) else None


def _named(layout: Layout, groups: Sequence[Group]) -> list[Group]:
    """The sizes that the one request is for, by words that only their tubes are called by."""
    called = _called(layout, groups)
    meant: list[Group] = []
    for begin, end in _parts(layout):
        if any(begin <= f.start < end and f.role in LENGTH_ROLES for f in layout.figures):
            continue
        said = " ".join(layout.text[begin:end].casefold().split())
        if not (ASKS.search(said) or TOOL.search(said)):
            continue
        if _ALSO.search(said) or (ABOUT_DIE.search(said) and not TOOL.search(said)):
            continue
        picked = _by_rank(said, groups) or _picked(said, groups, called)
        if not picked or OF_EACH.search(said):
            return []
        meant += [group for group in picked if group not in meant]
    return meant


def _by_rank(said: str, groups: Sequence[Group]) -> list[Group]:
    """'Three mandrels of the latter'."""
    if _LATTER.search(said):
        return [groups[-1]]
    return [groups[0]] if _FORMER.search(said) else []


def _picked(said: str, groups: Sequence[Group], called: Sequence[set[str]]) -> list[Group]:
    for match in _FOR_NAME.finditer(said):
        if _AND.search(match["name"]):
            continue  # "for tube A and B"
        words = {word.removesuffix("s") for word in _WORD.findall(match["name"])}
        behind = said[match.end() :]
        spoken = {w.removesuffix("s") for w in _WORD.findall(behind)}
        spoken = spoken if ASKS.search(behind) else set()
        found = [g for g, own in zip(groups, called, strict=True) if own & words]
        others = set().union(*(own for own in called if not own & words))
        if found and not any(_alike(one, other) for one in spoken for other in others):
            return found
    return []


def _alike(one: str, other: str) -> bool:
    """'Scroll' and 'scrollwork'."""
    long = min(len(one), len(other)) >= _LONG_NAME
    return one == other or (long and (one.startswith(other) or other.startswith(one)))


def _called(layout: Layout, groups: Sequence[Group]) -> list[set[str]]:
    """For each size the words before its tube that stand before no other."""
    heads = []
    for group in groups:
        first = min(own_figures(group), key=lambda f: f.start)
        before = layout.before(first)
        begin = max(before.end if before is not None else 0, first.start - _NAMED_FAR)
        begin = max([m.end() for m in _PART.finditer(layout.text, begin, first.start)] or [begin])
        words = layout.text[begin : first.start].casefold()
        heads.append({word.removesuffix("s") for word in _WORD.findall(words)} - _NO_NAME)
    often = Counter(word for head in heads for word in head)
    return [{word for word in head if often[word] == 1} for head in heads]


def _parts(layout: Layout) -> Iterator[tuple[int, int]]:
    begin = 0
    for match in _PART.finditer(layout.text):
        yield begin, match.end()
        begin = match.end()
    yield begin, len(layout.text)
