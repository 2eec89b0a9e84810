"""Materials given to tubes by their OD or name: '304 for the 1.5, 6061 for the 2', 'the hoop is
4130', 'das 38er ist 1.4301'."""

from __future__ import annotations

from collections.abc import Sequence

from ..radii.tied_names import called_most, names_at, names_of
from ..sizes.groups import Group
from ..text.figures import Figure, Layout
from ..text.patterns import word_set
from .materials import MaterialMention

_FOR = word_set("for on in für pour para per voor")
_IS = word_set("is are ist sind est sont es son è sono zijn wird in aus en : = will be gets")
_SMALL = word_set(
    "the one ones tube tubes pipe der die das dem den le la les el il de het er inch in"
)
_SMALL |= word_set('mm " tubo rohr buis od')
_OTHER = word_set("other others rest andere anderen übrigen autre autres otro otros altro altri")
_OTHER |= word_set("andere overige resto reste")
_REACH = 5


def materials_by_size(
    layout: Layout, groups: Sequence[Group], mentions: Sequence[MaterialMention]
) -> dict[int, MaterialMention]:
    """The material of each group that one is given to, by the group's number; empty where words
    give none, or give two to one."""
    tubes = [group.slots["od"][0] if "od" in group.slots else None for group in groups]
    if len({tube.number.value for tube in tubes if tube is not None}) < 2:
        return {}
    given: dict[int, MaterialMention] = {}
    rest: list[MaterialMention] = []
    tokens = {layout.tokens[at].start: at for at in range(len(layout.tokens))}
    by_token = {figure.token: figure for figure in layout.figures}
    for mention in mentions:
        at = tokens.get(mention.start)
        if at is None:
            continue
        meant = _meant(layout, tubes, at, by_token)
        for number in meant:
            if number in given and given[number].family != mention.family:
                return {}
            given[number] = mention
        if not meant and _speaks_of_others(layout, at):
            rest.append(mention)
    if given and len(rest) == 1:
        for number in range(len(groups)):
            given.setdefault(number, rest[0])
    return given


def tells_two_apart(
    layout: Layout, groups: Sequence[Group], mentions: Sequence[MaterialMention]
) -> bool:
    """'One is 304, the other 6061': words that part the sizes, but not which is which."""
    ours = {f.sentence for group in groups for figures in group.slots.values() for f in figures}
    starts = {mention.start for mention in mentions}
    return any(
        token.start in starts
        and layout.sentence_of[at] not in ours
        and _speaks_of_others(layout, at)
        for at, token in enumerate(layout.tokens)
    )


def _meant(
    layout: Layout, tubes: Sequence[Figure | None], at: int, by_token: dict[int, Figure]
) -> list[int]:
    """The groups that the words around a material's token point to."""
    figure = _behind(layout, at, by_token) or _ahead(layout, at, by_token)
    own = {tube.index for tube in tubes if tube is not None}
    if figure is not None and figure.index not in own:
        return [
            number
            for number, tube in enumerate(tubes)
            if tube is not None and tube.number.value == figure.number.value
        ]
    names = names_at(layout, at)
    if not names:
        return []
    called = called_most([names_of(layout, tube) if tube else frozenset() for tube in tubes], names)
    return [] if called is None else [called]


def _behind(layout: Layout, at: int, by_token: dict[int, Figure]) -> Figure | None:
    """'304 for the 1.5'"""
    led = False
    for place in range(at + 1, min(at + 1 + _REACH, len(layout.tokens))):
        token = layout.tokens[place]
        if token.number is not None:
            return by_token.get(place) if led else None
        if token.text in _FOR:
            led = True
        elif token.text not in _SMALL:
            return None
    return None


def _ahead(layout: Layout, at: int, by_token: dict[int, Figure]) -> Figure | None:
    """'the 1.5 is 304'"""
    led = False
    for place in range(at - 1, max(-1, at - 1 - _REACH), -1):
        token = layout.tokens[place]
        if token.number is not None:
            return by_token.get(place) if led else None
        if token.text in _IS:
            led = True
        elif token.text not in _SMALL:
            return None
    return None


def _speaks_of_others(layout: Layout, at: int) -> bool:
    """'DOM for the other'"""
    near = layout.tokens[at + 1 : at + 1 + _REACH] + layout.tokens[max(0, at - _REACH) : at]
    return any(token.text in _OTHER for token in near)
