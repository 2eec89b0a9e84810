"""Walls listed each with its material: '.049 304, .065 4130 and .095 mild', 'spessore 1,5 AISI 304
e 2 S235'. One that is named, or stands in its place, names the rest. And walls of a mandrel each:
'one for .065 wall and the other for .095'."""

from __future__ import annotations

from itertools import pairwise

from ...late_pattern import late_pattern
from ..text.figures import Figure, Layout
from ..text.patterns import word_set
from ..text.tokens import Token
from .place_tests import is_thin

_JOINTS = word_set(", ; and & und et y e ed en plus ( ) mm in aus de di van da the a")
_AND = word_set(", ; and & und et y e ed en plus")
_AND_ONE = late_pattern(
    r"\W{0,2}(?:mm\s?|in\s?)?(?:wall\s?|wand\s?)?,?\s?(?:and|und|et|y|e|en)?\s?"
    r"(?:(?:the|die|der|de|el)\s)?"
    r"(?:one|other|another|einer|einmal|anderer?|l'autre|un|autre|otro|uno|l'altro|altro|één|een"
    r"|andere)\s(?:(?:for|in|with|für|mit|pour|en|para|con|per|da|voor|met)\s)?(?:the\s|l')?"
    r"(?:(?:wall|wand(?:stärke|dicke|dikte)?|épaisseur|paroi|pared|espesor|spessore|parete)\s)?"
    r"(?:de\s|von\s|di\s|da\s|van\s)?"
)
_THICKEST = 8
_UNLIKE = 4
"""Walls of one tube differ by less than so many times."""


def hear_walls_with_materials(layout: Layout) -> None:
    """Give figures that stand in such a list beside a wall the wall's role."""
    beside = list(pairwise(layout.figures))
    for left, right in beside:
        _name_other(layout, left, right)
    for left, right in beside:
        _name(layout, left, right, left)
    for left, right in reversed(beside):
        _name(layout, left, right, right)


def _name(layout: Layout, left: Figure, right: Figure, known: Figure) -> None:
    other = right if known is left else left
    if known.role != "wall" or other.role is not None or left.sentence != right.sentence:
        return
    if not other.is_measure or {left.unit, right.unit} == {"in", "mm"}:
        return
    if is_thin(other) != is_thin(known) or other.number.value > _THICKEST:
        return
    low, high = sorted((left.number.value, right.number.value))
    if low * _UNLIKE < high or not _is_listed(layout.between(left, right)):
        return
    if _has_material(layout, left) == _has_material(layout, right):
        other.give("wall", "list")
        if left.link != "times" and right.link != "times":
            right.link = "list"


def _name_other(layout: Layout, left: Figure, right: Figure) -> None:
    """'One for .065 wall and the other for .095', in a sentence that has no OD."""
    if left.role != "wall" or right.role not in (None, "wall") or not right.is_measure:
        return
    low, high = sorted((left.number.value, right.number.value))
    if left.sentence != right.sentence or low * _UNLIKE < high or low == high:
        return
    if any(figure.role == "od" for figure in layout.in_sentence(left.sentence)):
        return
    if _AND_ONE.fullmatch(layout.words(left.end, right.start)):
        right.give("wall", "list")
        right.link = "list"


def _is_listed(between: list[Token]) -> bool:
    """Whether a material and an 'and' or a comma stand between two figures, and no other words."""
    materials = [token for token in between if token.kind == "material"]
    rest = [t for t in between if t.kind not in ("material", "gap")]
    return (
        len(materials) == 1
        and all(token.text in _JOINTS for token in rest)
        and any(token.text in _AND for token in rest)
    )


def _has_material(layout: Layout, figure: Figure) -> bool:
    """Whether a material stands right behind a figure."""
    for token in layout.tokens[figure.token + 1 : figure.token + 4]:
        if token.kind == "material":
            return True
        if token.kind != "gap" and token.text not in _JOINTS - _AND:
            return False
    return False
