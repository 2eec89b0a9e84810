"""Which of two cues speaks of a figure: the one to its left or the one to its right."""

from __future__ import annotations

from decimal import Decimal

from ....rules.grades import family_of_designation
from ....rules.standards import bwg_of
from ..text.cue_fillers import FILLER_LEFT
from ..text.cues import Cue
from ..text.figures import LISTED, Figure, Layout
from ..text.patterns import word_set
from ..text.roles import LENGTH_ROLES, RADIUS_ROLES, Role
from .cue_fits import fits
from .cue_sides import QUALIFIERS, Found, cue_right, names_other_thing
from .heads_tube import heads_a_tube, is_nominal
from .place_tests import is_thin

_SIDED: frozenset[Role] = frozenset({"radius", "clr"})
_WEAK: frozenset[Role] = frozenset({"label", "die", "quantity"})
"""Roles that give way to a word that measures."""
_APART_OR_RADIUS = "the radius, or the distance between the centres of the legs?"
_PLAIN_RADIUS: frozenset[Role] = frozenset({"clr", "radius"})
_ON = word_set("on @ at with auf mit bei sur avec su con op met over")
"""What leads over from a tube to its radius."""
_WALLS_IN_THOUSANDTHS = word_set("wall walls wt thick thickness thk w") | {"wall thickness"}
"""Words of those who say 'a 120 wall'; 'tube 25 épaisseur 2' is metric."""


def choose(layout: Layout, figure: Figure, left: Found | None, right: Found | None) -> Found | None:
    """The cue that speaks of the figure, of one to its left and one to its right."""
    if left is not None and (not fits(figure, left.cue) or heads_a_tube(layout, figure, left)):
        left = None
    if left is not None and left.cue.role == "quantity" and is_nominal(layout, figure, left):
        left = None
    if right is not None and not fits(figure, right.cue):
        right = None
    if right is not None and right.cue.role == "centres":
        named = left is not None and left.cue.role in _PLAIN_RADIUS
        if named and layout.tokens[right.token].text != "hart op hart":
            figure.notes.append(_APART_OR_RADIUS)
        if named or figure.unit == "D":
            return left  # "straal 180 mm hart op hart van de buis"
    if left is not None and right is not None:
        weak_left, weak_right = left.cue.role in _WEAK, right.cue.role in _WEAK
        if weak_left != weak_right:
            # In "tube 40 ép. 2" the cue on the right is the next figure's.
            return left if weak_right or _next_is_likelier(layout, figure, right) else right
        if not _right_is_better(layout, figure, left, right):
            return left
    elif left is not None:
        return left
    return right if right is not None and not _next_is_likelier(layout, figure, right) else None


def _right_is_better(layout: Layout, figure: Figure, left: Found, right: Found) -> bool:
    if left.cue.role in _SIDED and layout.tokens[right.token].text in QUALIFIERS:
        return False  # "rad 57 inside"
    if right.cue.role == "nps" and right.distance == 0 and left.cue.role == "noise":
        return True  # "a new job, 1 NPS sch 80"
    if right.cue.role == "noise" and right.distance == 0 and left.distance > 0:
        # "316L EP (10 Ra)"; but "a CLR of 39 legs 200 mm"
        return left.cue.role not in LENGTH_ROLES or not serves_next(layout, figure, right.token)
    if left.cue.role == "noise":
        if names_other_thing(layout, left.token):
            return False  # "the rod is 1 in diameter"
        if right.cue.role in LENGTH_ROLES and right.distance <= 1:
            return True  # "the bend is 4.000 CLR"
    touching = left.distance >= 2 and right.distance == 0
    return touching and not serves_next(layout, figure, right.token)


def _next_is_likelier(layout: Layout, figure: Figure, right: Found) -> bool:
    """'1.75 wall .095': the cue between two figures is the next one's where only that can be it."""
    role = right.cue.role
    after = layout.after_in_sentence(figure)
    behind = right.cue == Cue("centres", "after")
    if behind or (after is not None and (after.unit or "")[:5] == "noise"):
        return False  # 'on 2-1/2" centers (180 return)', '3 in rad 90 deg'
    if role not in LENGTH_ROLES or after is None or not serves_next(layout, figure, right.token):
        return False
    if role != "wall" and after.is_gauge:
        return False  # "1 OD 20 gauge", "a 1-3/4 rad on 12 ga"
    if role == "wall" and figure.is_gauge and not (is_thin(after) or after.unit == "mm"):
        return False  # "13 gauge wall 2 inch DOM"
    if figure.unit == "D" and _leads_over(layout, right.token, after):
        return False  # "a 3xD bend radius on 50 mm"
    if layout.tokens[right.token - 1].text == "(":
        return True  # "62.5 (inside radius 50)"
    own = cue_right(layout, after)
    whole = own is not None and {own.cue.role, role} <= RADIUS_ROLES and own.cue.side == "after"
    if own is not None and role in _SIDED and layout.tokens[own.token].text in QUALIFIERS:
        whole = True  # "38 x 1.5 CLR 57 inside"
    alike = figure.unit == after.unit
    plain = figure.unit is None and after.unit == "mm"  # "38 épaisseur 1mm5 rayon 57"
    thin = role == "wall" and (alike or plain) and after.number.value * 3 < figure.number.value
    if thin and own is not None and own.cue.role in RADIUS_ROLES:
        whole = True  # "da 25 sp. 1,5 curva raggio 50": no radius is that small
    if layout.tokens[after.token].cues or (_has_own_cue(layout, after) and not whole):
        return False  # "35 ID R76": the next figure has its own sign; not "radio 50 al eje"
    graded = family_of_designation("number", layout.text[after.number.start : after.number.end])
    if graded and not _is_wall_in_chain(layout, figure):
        return False  # "2 C.L.R. 304"; but "44,5 x 1,5 raggio 110"
    # "da 25 sp. 1,5", "38 épaisseur 1mm5"
    metric = after.unit == "mm" or "," in layout.text[after.start : after.end]
    thousandths = figure.unit is None and figure.number.style != "decimal" and not metric
    thousandths = thousandths and layout.tokens[right.token].text in _WALLS_IN_THOUSANDTHS
    if role == "wall" and thousandths and bwg_of(figure.number.value * Decimal("0.0254")):
        return False  # "120 wall 1-1/2 DOM"
    if role == "wall":
        inches = figure.unit == "in" and after.unit == "mm"  # 'da 1" spessore 1,65 mm'
        scale = Decimal("25.4") if inches else 1
        return after.number.value * 2 < figure.number.value * scale
    if after.unit == "D" and figure.link == "times":
        return True  # "33,7 x 2,6 Radius = 3 x D"
    if after.link in LISTED and after.unit == figure.unit:
        return after.number.value > figure.number.value * 6
    return after.number.value > figure.number.value * Decimal("1.5") and after.unit != "D"


def _is_wall_in_chain(layout: Layout, figure: Figure) -> bool:
    """Whether a figure is so much smaller than the one it is multiplied with that it is a wall."""
    before = layout.before(figure)
    joined = before is not None and figure.link in ("times", "slash")
    return joined and before is not None and figure.number.value * 3 < before.number.value


def _has_own_cue(layout: Layout, figure: Figure) -> bool:
    """Whether a figure has a size cue of its own directly after it."""
    found = cue_right(layout, figure)
    return found is not None and found.cue.role in LENGTH_ROLES and found.distance == 0


def serves_next(layout: Layout, figure: Figure, cue_index: int) -> bool:
    """Whether the cue to the right stands directly before the next figure."""
    after = layout.after(figure)
    if after is None:
        return False
    gap = layout.tokens[cue_index + 1 : after.token]
    of_tube = any(cue.role == "od" for cue in layout.tokens[cue_index].cues)
    if of_tube and _leads_over(layout, cue_index, after):
        return False  # "1.75 OD on 4, 5 and 6 CLR"
    return all(token.text in FILLER_LEFT and token.text not in ",.)" for token in gap)


def _leads_over(layout: Layout, cue_index: int, after: Figure) -> bool:
    """Whether a word between a cue and the next figure leads to another length."""
    return any(token.text in _ON for token in layout.tokens[cue_index + 1 : after.token])
