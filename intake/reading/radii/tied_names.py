"""What tubes are called, and by which of these names a later figure is said to belong to one:
'1.5 x .120 for the main hoop ... the main hoop gets a 6 CLR'."""

from __future__ import annotations

from collections.abc import Sequence

from ..text.figures import Figure, Layout
from ..text.patterns import word_set
from ..text.roles import Role
from ..text.tokens import Token

LINKING = word_set(
    "is are : = - on at gets takes uses with has of goes go sits runs ist sind bekommt mit auf est"
)
LINKING |= word_set(
    "sont sur avec à es son con en è sono su met op zijn a an the in inch geht kommt va pasa gaat"
)
LINKING |= word_set("au aux al alla allo am im beim to")
ARTICLES = word_set("the our my a an der die das den dem le la les el los il lo i de het un une")
FOR = word_set("for on pour für per para voor bei sur")
_NO_NAMES = word_set(
    """and or but with for the mandrel mandrels tooling tool need want quote price have run bend
    both all each same one ones two three that this it them these those also then please size
    sizes tube tubes tubing pipe od wall radius die dies centerline centreline centre center
    inside outside und oder mit für dorn dorne rohr bitte alle beide et ou avec pour mandrin
    tous y o con para mandril e per mandrino tutti en of met voor doorn first second other new
    old qty pcs is are on at our my your we i you they he she was were be been not no x by in mm
    inch inches steel stainless aluminum aluminium dom erw hrew standard min max about approx
    around only just"""
)
_MAY_BE_NAMES: frozenset[Role] = frozenset({"label", "noise", "bend_dia"})
_SHORTEST = 3
_MOST_WORDS = 3
REACH = 4
"""Tokens between a name and the figure or word that it belongs to."""


def names_of(layout: Layout, tube: Figure) -> frozenset[str]:
    """What a tube is called right before it, 'main hoop is', or right behind its figures."""
    begin = tube.token - 1
    names = _last_name(words_back(layout, begin))
    end = tube
    after = layout.after(end)
    while (
        after is not None and after.sentence == tube.sentence and after.role in ("wall", "schedule")
    ):
        end, after = after, layout.after(after)
    return names | _next_name(layout, end.token + 1)


def names_at(layout: Layout, at: int) -> frozenset[str]:
    """What a token is said to belong to: 'the hoop die is 6', '85 for the handrail'."""
    return _last_name(words_back(layout, at - 1)) | _next_name(layout, at + 1)


def words_back(layout: Layout, at: int) -> list[Token]:
    """The tokens before a place, back to a figure or the end of a clause."""
    found: list[Token] = []
    while at >= 0 and layout.tokens[at].kind not in ("number", "line", "para", "block"):
        if layout.tokens[at].text in (",", ";", ".", "!", "?", ")"):
            break
        found.append(layout.tokens[at])
        at -= 1
    return found


def _last_name(back: list[Token]) -> frozenset[str]:
    """The name that ends a clause, over 'is', 'die', 'radius'; the tokens come last first."""
    for at, token in enumerate(back[: REACH + 1]):
        if not _is_passed(token) and token.text not in LINKING:
            return _words(back[at : at + _MOST_WORDS])
    return frozenset()


def _is_passed(token: Token) -> bool:
    """Whether a token says what a figure is: 'radius', 'die'; a 'handrail' is a name."""
    roles = {cue.role for cue in token.cues}
    return bool(roles) and (not roles <= _MAY_BE_NAMES or token.text in _NO_NAMES)


def _next_name(layout: Layout, at: int) -> frozenset[str]:
    """The name behind figures: '1.5 x .065 for the hoop', '1.5 x .065 hoops'."""
    for place, token in enumerate(layout.tokens[at : at + REACH], at):
        if (
            _is_passed(token)
            or token.kind == "material"
            or token.text in FOR
            or token.text in ARTICLES
            or token.text == "("
        ):
            continue
        return _words(layout.tokens[place : place + _MOST_WORDS])
    return frozenset()


def _words(tokens: Sequence[Token]) -> frozenset[str]:
    """All words of a name: a 'main hoop' is called both 'main' and 'hoop'."""
    words: frozenset[str] = frozenset()
    for token in tokens:
        word = frozenset() if token.text in LINKING else _name(token)
        if not word:
            break
        words |= word
    return words


def _name(token: Token) -> frozenset[str]:
    word = token.text
    if (
        token.kind not in ("word", "cue")
        or len(word) < _SHORTEST
        or word in _NO_NAMES
        or not word.isalpha()
    ):
        return frozenset()
    return frozenset((word[:-1] if word.endswith("s") else word,))


def called_most(called: Sequence[frozenset[str]], names: frozenset[str]) -> int | None:
    """Which of several things a name means: the one that shares most of its words, if one does.

    A 'front hoop' and a 'rear hoop' are both hoops.
    """
    shared = [len(own & names) for own in called]
    most = max(shared, default=0)
    return shared.index(most) if most and shared.count(most) == 1 else None
