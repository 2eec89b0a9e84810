"""Roles by the words beside a number: '1.75 OD', 'wall .095', 'CLR = 5.25', 'Ø 25'."""

from __future__ import annotations

import re
from dataclasses import replace
from decimal import Decimal

from ....rules.grades import family_of_designation
from ....rules.standards import bwg_of, nps_of_dn, nps_of_inches
from ...late_pattern import late_pattern
from ..text.cue_fillers import FILLER_LEFT
from ..text.cues import Cue
from ..text.figures import LISTED, Figure, How, Layout
from ..text.patterns import word_set
from ..text.roles import LENGTH_ROLES, RADIUS_ROLES, Role
from .clause_subject import subject_of
from .cue_sides import QUALIFIERS, Found, cue_left, cue_right, names_other_thing
from .heads_tube import heads_a_tube, is_nominal
from .place_tests import is_thin, opens_list, opens_tube

_SIDED: frozenset[Role] = frozenset({"radius", "clr"})
_WEAK: frozenset[Role] = frozenset({"label", "die", "quantity"})
"""Roles that give way to a word that measures."""
_APART_OR_RADIUS = "the radius, or the distance between the centres of the legs?"
_PLAIN_RADIUS: frozenset[Role] = frozenset({"clr", "radius"})
_BENT = word_set(
    "bent bend rolled roll formed form curved coiled wound gebogen cintré curvado curvato"
)
_DIAMETER = word_set("diameter dia durchmesser diamètre diámetro")
_TO = word_set("to zu auf")
_ON = word_set("on @ at with auf mit bei sur avec su con op met over")
"""What leads over from a tube to its radius."""
_WALLS_IN_THOUSANDTHS = word_set("wall walls wt thick thickness thk w") | {"wall thickness"}
"""Words of those who say 'a 120 wall'; 'tube 25 épaisseur 2' is metric."""
_MOST_COUNTED = 500
_LISTS = late_pattern(
    r"\W*(?:(?:mm|in|inch(?:es)?)\b)?\W*(?:(?:and|und|et|y|e|en)\b)?\W*", re.IGNORECASE
)
_MOST_APART = 4
"""Figures of one list lie no further apart."""
_LEAST_RADIUS_IN = Decimal("0.2")
_THICKEST_MM = 25
_THICKEST_IN = 13
"""More in a 'wall' would be a length; written as inch it may still be a slip for mm."""
_THINNEST_OD_IN = Decimal("0.1")
_LONG_UNITS = {
    f"noise:{word}": unit
    for unit, words in (("m", "m metre metres meter meters mtr"), ("ft", "ft foot feet '"))
    for word in words.split()
}
_FOOT = 12
_MOST_LONG = 4
"""No radius bent over a mandrel is longer, in metres or in feet."""


def assign_by_cue(layout: Layout) -> None:
    """Give each figure the role that a neighbouring cue names, reading left to right.

    A cue serves one figure: in '1.75 OD .095 wall' the OD is used up by the 1.75, so the .095
    takes what follows it; in 'OD 1.75 wall .095' it is the other way round.
    """
    used: set[int] = set()
    for figure in layout.figures:
        if figure.role is not None and figure.role != "noise":
            own = cue_right(layout, figure)
            if own is not None and own.cue.role == figure.role and own.distance == 0:
                used.add(own.token)  # '1.5 OD on 4.5 CLR': no name of the 4.5
            continue
        signs = layout.tokens[figure.token].cues
        if not signs and _is_multiple_in_figures(layout, figure):
            figure.give("radius", "same")  # "radius 3D: 150 mm" is what the length says
        elif signs and figure.role is None:
            _take(figure, signs[0], "sign")
            _inner_or_outer(layout, figure, used)
        elif (figure.unit or "").strip(".") in _LONG_UNITS and figure.number.value < _MOST_LONG:
            _long_radius(layout, figure, used)
        else:
            _by_neighbours(layout, figure, used)


def _is_multiple_in_figures(layout: Layout, figure: Figure) -> bool:
    """'3D: 150 mm'; not '3D (54 and 66)', which is one for each of two tubes, and not
    '3D: 1", 1-1/4" and 1-1/2"', which are tubes."""
    before = layout.before(figure) if figure.link == "restate" else None
    if before is None or before.unit != "D" or figure.unit == "D":
        return False
    after = layout.after(figure)
    bracket = "(" in layout.text[before.end : figure.start]
    value = figure.number.value
    named = after is not None and any(token.cues for token in layout.tokens_after(after, 1))
    alike = (
        after is not None
        and not named
        and _LISTS.fullmatch(layout.words(figure.end, after.start)) is not None
        and value < _MOST_APART * after.number.value < _MOST_APART**2 * value
    )
    return after is None or after.link not in LISTED or not (bracket or alike)


def _by_neighbours(layout: Layout, figure: Figure, used: set[int]) -> None:
    left = cue_left(layout, figure, used)
    if left is None or left.cue.role == "label":
        left = _subject(layout, figure, used) or left
    if left is not None and _is_told(layout, figure, left):
        left = None
    chosen = _choose(layout, figure, left, cue_right(layout, figure))
    if chosen is None:
        return
    if chosen.cue.role == "quantity" and (opens_list(layout, figure) or opens_tube(layout, figure)):
        return
    if chosen.cue.role != "noise":  # an o-ring's two figures are both the o-ring's
        used.add(chosen.token)
    if figure.role is None:
        cue = chosen.cue
        if cue.role == "label" and layout.tokens[chosen.token].text == "thick wall":
            cue = Cue("wall") if is_thin(figure) else cue  # ".065 thick wall", '2" thick wall tube'
        _take(figure, _bent_diameter(layout, figure, cue), "cue")


def _is_told(layout: Layout, figure: Figure, left: Found) -> bool:
    """'25er Rohr mit 60, 75 und 90 Radius', '1 off 38 tube': what it names stands before it."""
    if left.cue.role == "quantity":
        return left.token > 0 and layout.tokens[left.token - 1].number is not None
    before = layout.before(figure)
    if left.cue.role != "label" or before is None or before.role != "od":
        return False
    return left.token - 2 <= before.token < left.token


def _subject(layout: Layout, figure: Figure, used: set[int]) -> Found | None:
    """What the clause is about; "the gap on the shelf is 50.8 x 1.6" is a whole size, no gap."""
    subject = subject_of(layout, figure, used)
    after = layout.after(figure)
    whole = after is not None and after.link == "times"
    if subject is not None and subject.cue.role == "noise" and whole:
        return subject if names_other_thing(layout, subject.token) else None
    return subject


def _take(figure: Figure, cue: Cue, how: How) -> None:
    times = figure.unit == "D" and cue.role in RADIUS_ROLES
    figure.give("times_d" if times else cue.role, how)


def _long_radius(layout: Layout, figure: Figure, used: set[int]) -> None:
    """'Radius 0.6 m', 'one foot CLR', 'CLR 1\' 6"': so lengths of stock are told, unless a radius
    is said to be."""
    inches = _inches_behind(layout, figure)
    last = inches or figure
    beside = cue_left(layout, figure, used)
    if beside is None or beside.cue.role not in RADIUS_ROLES:
        beside = cue_right(layout, last)
        if beside is None or beside.distance or _serves_next(layout, last, beside.token):
            return  # "3 m, radius 57"
    if beside.cue.role not in RADIUS_ROLES:
        return
    used.add(beside.token)
    figure.give(beside.cue.role, "cue")
    figure.unit = _LONG_UNITS[(figure.unit or "").strip(".")]
    if inches is not None:
        whole = figure.number.value * _FOOT + inches.number.value
        figure.number = replace(figure.number, values=(whole,))
        figure.unit, figure.end = "in", inches.end
        inches.give("noise", "cue")


def _inches_behind(layout: Layout, figure: Figure) -> Figure | None:
    """The inches of '1 ft 6 in'."""
    after = layout.after(figure)
    if after is None or after.unit != "in" or after.number.value >= _FOOT:
        return None
    if _LONG_UNITS[(figure.unit or "").strip(".")] != "ft":
        return None
    joint = layout.text[figure.end : after.start].strip(" -,").casefold()
    return after if joint in ("", "and") else None


def _bent_diameter(layout: Layout, figure: Figure, cue: Cue) -> Cue:
    """'Bent to a 12 inch diameter' is the diameter of the bend, not of the tube."""
    if cue.role != "od":
        return cue
    after = layout.tokens_after(figure, 1)
    if not after or after[0].text not in _DIAMETER:
        return cue
    near = [token.text for token in layout.tokens_before(figure, 4) if token.number is None]
    bent = next((at for at, text in enumerate(near) if text in _BENT), None)
    # "to bend a 1.5 dia tube": 'to' leads to no diameter there
    return Cue("bend_dia") if bent is not None and _TO & set(near[bent:]) else cue


def _inner_or_outer(layout: Layout, figure: Figure, used: set[int]) -> None:
    """'Ø34 inside' is a bore: the word after the number says more than the sign before it."""
    if figure.role != "od":
        return
    right = cue_right(layout, figure)
    if right is not None and right.cue.role in ("od", "id", "noise") and right.distance == 0:
        figure.role = right.cue.role
        used.add(right.token)
        return
    left = cue_left(layout, figure, used)
    if left is not None and left.cue == Cue("noise") and left.distance == 0:
        figure.role = "noise"  # "max capacity fi 51"


# --- which of two ------------------------------------------------------------------------------


def _choose(
    layout: Layout, figure: Figure, left: Found | None, right: Found | None
) -> Found | None:
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
        return left.cue.role not in LENGTH_ROLES or not _serves_next(layout, figure, right.token)
    if left.cue.role == "noise":
        if names_other_thing(layout, left.token):
            return False  # "the rod is 1 in diameter"
        if right.cue.role in LENGTH_ROLES and right.distance <= 1:
            return True  # "the bend is 4.000 CLR"
    touching = left.distance >= 2 and right.distance == 0
    return touching and not _serves_next(layout, figure, right.token)


def _next_is_likelier(layout: Layout, figure: Figure, right: Found) -> bool:
    """'1.75 wall .095': the cue between two figures is the next one's where only that can be it."""
    role = right.cue.role
    after = layout.after_in_sentence(figure)
    behind = right.cue == Cue("centres", "after")
    if behind or (after is not None and (after.unit or "")[:5] == "noise"):
        return False  # 'on 2-1/2" centers (180 return)', '3 in rad 90 deg'
    if role not in LENGTH_ROLES or after is None or not _serves_next(layout, figure, right.token):
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


def _serves_next(layout: Layout, figure: Figure, cue_index: int) -> bool:
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


# --- can it be that? ---------------------------------------------------------------------------


def fits(figure: Figure, cue: Cue) -> bool:
    """Whether a number of this spelling can be what the cue says."""
    unit, value = figure.unit, figure.number.value
    if cue.role == "quantity":
        counts = unit is None and figure.number.style in ("integer", "words")
        return counts and value <= _MOST_COUNTED and figure.link not in ("times", "slash")
    if (
        cue.role == "noise"
        and cue.side == "before"
        and (figure.number.style != "integer" or unit in ("mm", "in", "cm"))
    ):
        return False  # "RFQ: 1.75 x .083": orders and drawings have whole numbers
    if figure.is_gauge:
        return cue.role == "wall"
    if unit == "sch":
        return False
    if cue.role == "nps" and cue.side == "after":
        # "0.049 nominal" is a wall, "50 NB" a DN
        whole = value == value.to_integral_value()
        return nps_of_inches(value) is not None or (whole and nps_of_dn(int(value)) is not None)
    if unit == "D":
        return cue.role in ("clr", "radius", "times_d", "inside_r", "outside_r")
    if cue.role in RADIUS_ROLES:
        return not (unit in ("in", None) and value < _LEAST_RADIUS_IN)
    if cue.role == "id":
        # "weld bead inside max 0.3 mm"
        return value >= (2 if unit == "mm" else Decimal("0.1"))
    if cue.role == "wall" and unit == "mm":
        return value <= _THICKEST_MM  # "38 mm dick" is a diameter
    if cue.role == "wall":
        return not (unit == "in" and value > _THICKEST_IN)
    return not (cue.role == "od" and unit in ("in", None) and value < _THINNEST_OD_IN)
