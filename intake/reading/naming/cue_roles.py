"""Roles by the words beside a number: '1.75 OD', 'wall .095', 'CLR = 5.25', 'Ø 25'."""

from __future__ import annotations

import re
from dataclasses import replace

from ...late_pattern import late_pattern
from ..text.cues import Cue
from ..text.figures import LISTED, Figure, How, Layout
from ..text.patterns import word_set
from ..text.roles import RADIUS_ROLES
from .clause_subject import subject_of
from .cue_choice import choose, serves_next
from .cue_sides import Found, cue_left, cue_right, names_other_thing
from .place_tests import is_thin, opens_list, opens_tube

_BENT = word_set(
    "bent bend rolled roll formed form curved coiled wound gebogen cintré curvado curvato"
)
_DIAMETER = word_set("diameter dia durchmesser diamètre diámetro")
_TO = word_set("to zu auf")
_LISTS = late_pattern(
    r"\W*(?:(?:mm|in|inch(?:es)?)\b)?\W*(?:(?:and|und|et|y|e|en)\b)?\W*", re.IGNORECASE
)
_MOST_APART = 4
"""Figures of one list lie no further apart."""
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
    chosen = choose(layout, figure, left, cue_right(layout, figure))
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
        if beside is None or beside.distance or serves_next(layout, last, beside.token):
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
