"""Roles for figures that nothing names: by their place in the sentence and their size.

'2 inch tube, .065, on a 6': people leave the words out when the order says it all. Only figures
that look measured (a unit, a decimal, a fraction) are taken; a bare whole number needs more.
"""

from __future__ import annotations

import re
from decimal import Decimal
from itertools import pairwise

from ...late_pattern import late_pattern
from ..said.put_right import changes_one, puts_right
from ..text.figures import LISTED, Figure, Layout
from ..text.patterns import word_set
from ..text.roles import LENGTH_ROLES, RADIUS_ROLES, Role
from .likeness import nearly, same_size
from .place_tests import (
    follows_on,
    is_diameter,
    is_radius_of,
    is_thin,
    is_wall_of,
    opens_tube,
    points_back,
    radius_follows,
    third_of_three,
    tube_follows,
    wall_follows,
    whole_before_wall,
)

_TUBE_BEFORE = word_set(
    "for tube tubing pipe rohr tubo tube: pour für per para voor in on use using of some with",
    "running bending our size sizes",
)
_TUBE_AFTER = word_set("tube tubing pipe tubes rohr od")
_TUBE = word_set("tube tubing pipe rohr tubo buis")
_BENDS = word_set("bend bending biegen cintrer doblar curvar curvare piegare buigen")
_TO = word_set("to for zum pour para per te")
_MARKS = frozenset((":", "=", "-", "–"))
_COMES_TO = late_pattern(
    r"\W{0,2}(?:also|so|thus|hence|i\.e\.|that(?: i|')s|which (?:is|makes)|equals|d\.?h\."
    r"|das (?:sind|ist)|sprich"
    r"|somit|soit|donc|c'est-à-dire|ce qui fait|o sea|es decir|lo que da|cioè|quindi|ossia|dus"
    r"|oftewel"
    r"|dat is|=):?(?: (?:about|ca\.?|roughly|circa|environ|etwa))?"
)
_GERMAN = (
    late_pattern(r"\b(?:ist|sind|wird|wir|ich|brauche\w*|das|den|het|zijn|wij|graag|wordt|van)\b"),
    late_pattern(r"\b(?:und|nicht|für|bitte|einen?|mit|een|niet|voor|nicht|doch|mehr|meer)\b"),
)
"""Words of German or Dutch, of which a text in either has some of both."""
_OF_THE_MULTIPLE = late_pattern(
    r"\W{0,3}(?:bend(?:ing)?\s|biege)?(?:(?:dies?|die sets?|formers?|tooling|formen|form|matrices?"
    r"|matriz|matric[ei]|mallen|mal)\s?)?[:,–-]\s*",
    re.IGNORECASE,
)
_FAR = 60
"""Figures looked back for one that is known; keeps the search linear."""
_INCH = Decimal("25.4")
_TWIN_LEAST = Decimal("0.8")
"""Further apart, two lengths in mm and inch are not one length with a slip in it."""
_LEAST_OD = Decimal("0.12")
_LEAST_OD_MM = 4
_OD_WALL_RADIUS: tuple[Role, Role, Role] = ("od", "wall", "clr")

_CLAMPED = frozenset((
    "clamp length", "clamping length", "grip length", "spannlänge", "spannlaenge",
    "einspannlänge", "einspannlaenge", "klemmlänge", "klemmlaenge", "longueur de serrage",
    "longueur d'amarrage", "longitud de amarre", "longitud de mordaza", "lunghezza morsa",
    "lunghezza della morsa", "lunghezza di presa", "klemlengte", "inspanlengte",
))  # fmt: skip
"""'Spannlänge 2xD': how much of the tube is clamped goes by its diameter too."""


def assign_by_place(layout: Layout) -> None:
    """Adopt unnamed figures as OD, wall or radius where place and size leave no other sense."""
    for figure in layout.figures:
        if figure.role == "label":
            _read_labelled(layout, figure)
        elif figure.role == "die":
            _read_die(layout, figure)
    _share_brackets(layout)
    for figure in layout.figures:
        if figure.role is None and not figure.negated:
            _adopt(layout, figure)
    _find_twins(layout)
    _read_bare_answer(layout)


def _share_brackets(layout: Layout) -> None:
    """'38.1 mm (1-3/8") OD': the figure before the bracket is the same length, or meant to be."""
    for figure in layout.figures:
        before = layout.before(figure) if figure.link == "restate" else None
        if before is None or before.role is not None or before.negated:
            continue
        if figure.role in LENGTH_ROLES and {figure.unit, before.unit} == {"in", "mm"}:
            mm = {f.unit: f.number.value for f in (figure, before)}
            if _TWIN_LEAST < mm["mm"] / (mm["in"] * _INCH) < 1 / _TWIN_LEAST:
                before.give(figure.role, "same")


def _find_twins(layout: Layout) -> None:
    """'The tag says 1-7/8, my caliper 48 mm': a figure nearly equal to a named one is it again."""
    for figure in layout.figures:
        if figure.role is not None or figure.negated or not figure.is_measured:
            continue
        after = layout.after(figure)
        if after is not None and after.link in LISTED:
            continue  # "45 mm and 22 mm, 160 mm and 45 mm CLR respectively"
        near = {
            other.role for other in layout.near_in_sentence(figure)
            if other.role in LENGTH_ROLES and nearly(other, figure)
        }  # fmt: skip
        if len(near) == 1:
            figure.give(near.pop(), "place")


def _read_bare_answer(layout: Layout) -> None:
    """Three figures and not a word of what they are: the order in which everybody is asked."""
    figures = [figure for figure in layout.figures if figure.is_measure]
    if len(figures) != 3 or any(figure.role not in (None, "wall") for figure in figures):
        return
    if figures[0].is_gauge or figures[2].is_gauge or any(f.unit in ("D", "sch") for f in figures):
        return
    od, wall, radius = (figure.number.value for figure in figures)
    if od and wall / od < Decimal("0.3") and Decimal("0.6") <= radius / od <= 10:
        for figure, role in zip(figures, _OD_WALL_RADIUS, strict=True):
            figure.give(role, "place")


def _read_labelled(layout: Layout, figure: Figure) -> None:
    """'2 inch tube', 'Rohr 38': a diameter if the number can be one."""
    value = figure.number.value
    after = layout.after(figure)
    if after is not None and after.role == "wall" and _is_labels_value(layout, figure):
        figure.give("od", "place")  # "Tube: 3", and on the next line "Wall: .120"
        return
    if figure.is_gauge:
        figure.role = "wall"
    elif figure.unit == "sch":
        figure.role = "schedule"
    elif is_thin(figure) and figure.unit is None:
        figure.give("wall", "place")  # "tube is .120 dom"
    elif figure.is_measured or 12 <= value <= 200 or figure.how == "sign":
        least = _LEAST_OD_MM if figure.unit == "mm" else _LEAST_OD
        figure.give("od" if value >= least else "wall", "place")  # 'unser Rohr hat 1,0 mm'
    elif figure.number.style in ("integer", "words") and 1 <= value <= 8 and figure.unit is None:
        figure.give(None, "")  # "2 tubes" or a 2 in tube: its neighbours tell
    else:
        figure.role = None


def _is_labels_value(layout: Layout, figure: Figure) -> bool:
    """'Tube: 3', 'Rohr - 38', not 'tubes: 3'."""
    ahead = layout.tokens[max(0, figure.token - 2) : figure.token]
    return len(ahead) == 2 and ahead[1].text in _MARKS and ahead[0].text in _TUBE


def _read_die(layout: Layout, figure: Figure) -> None:
    """'on a 6 in die' is a radius where the tube is known; 'our 1-3/4 die set' names the tube."""
    if figure.unit in ("ga", "sch") or _is_article(layout, figure) or _is_behind(layout, figure):
        figure.role = None
        return
    right = layout.tokens_after(figure, 1)
    if right and right[0].text in _TUBE_AFTER and is_diameter(figure):
        figure.give("od", "place")  # "two dies, 1.5 tube 4.5 clr and 1.75 tube 5.25 clr"
        return
    left = layout.tokens_before(figure, 3)
    texts = [token.text for token in left]
    if _is_to_bend(texts) and is_diameter(figure):
        figure.give("od", "place")  # "a 2-3/4 CLR die set to bend 1-1/2 round tube"
        return
    if any(cue.role == "die" for token in left for cue in token.cues):
        figure.give("radius", "place")  # "a former of 4 inches"
        return
    od = _known(layout, figure, "od") or _unclaimed_tube(layout, figure)
    if od is None and puts_right(layout, figure):
        return  # "the former turns out to be 4.5, not 4"
    if od is None:
        figure.give("od" if figure.is_measured else "radius", "place")
    elif figure.number.value > od.number.value:
        figure.give("radius", "place")
    else:
        figure.role = None


def _is_behind(layout: Layout, figure: Figure) -> bool:
    """'On 3D dies: 1", 1-1/4" and 1-1/2"': the dies have their radius."""
    before = layout.before(figure)
    if before is None or before.unit != "D":
        return False
    return _OF_THE_MULTIPLE.fullmatch(layout.words(before.end, figure.start)) is not None


def _is_to_bend(words: list[str]) -> bool:
    """'to bend 60 mm nudge bars', 'para curvar 42 mm'."""
    return any(first in _TO and second in _BENDS for first, second in pairwise(words))


def _is_article(layout: Layout, figure: Figure) -> bool:
    """'Die 60,3 ist weggefallen' in a text in German, or in Dutch."""
    left = layout.tokens_before(figure, 1)
    if not left or left[0].text != "die":
        return False
    return all(layout.says_anywhere(words) for words in _GERMAN)


def _unclaimed_tube(layout: Layout, figure: Figure) -> Figure | None:
    """An earlier measured figure that will be read as the OD."""
    for other in layout.figures[max(0, figure.index - _FAR) : figure.index]:
        if other.role is None and other.is_measured and other.number.value >= Decimal("0.25"):
            return other
    return None


def _known(layout: Layout, figure: Figure, role: Role) -> Figure | None:
    """The nearest earlier figure of a role."""
    for index in range(figure.index - 1, max(-1, figure.index - 1 - _FAR), -1):
        other = layout.figures[index]
        if other.role == role and not other.negated:
            return other
    return None


def _adopt(layout: Layout, figure: Figure) -> None:
    """Give a figure without a role the one that its place and size leave, if any."""
    after = layout.after(figure)
    if figure.is_gauge:
        figure.give("wall", "place")
    elif figure.unit == "D":
        clamped = any(token.text in _CLAMPED for token in layout.tokens_before(figure, 2))
        figure.give("noise" if clamped else "times_d", "place")
    elif after and after.unit == "D" and after.link == "restate":
        figure.give("radius", "same")  # "bending on 96 mm (3 x D)"
    elif _is_worked_out(layout, figure):
        figure.give("radius", "same")
    elif after and after.role == "schedule" and after.token - figure.token <= 3:
        figure.give("od", "place")  # "2 sch 40 pipe"
    elif not (
        _restated(layout, figure)
        or puts_right(layout, figure)
        or changes_one(layout, figure)
        or _beside_od(layout, figure)
    ):
        _read_unknown(layout, figure)


def _is_worked_out(layout: Layout, figure: Figure) -> bool:
    """'R = 1,5 x Außendurchmesser, also 90,45 mm': what the multiple comes to."""
    before = layout.before(figure)
    if before is None or before.role != "times_d" or not figure.is_measured:
        return False
    between = " ".join(layout.words(before.end, figure.start).split())
    return before.sentence == figure.sentence and _COMES_TO.fullmatch(between) is not None


def _restated(layout: Layout, figure: Figure) -> bool:
    """A bracket that repeats the figure before it takes that figure's role."""
    before = layout.before(figure) if figure.link == "restate" else None
    if before is not None and before.role in LENGTH_ROLES and same_size(before, figure):
        figure.give(before.role, "same")
        return True
    return False


def _beside_od(layout: Layout, figure: Figure) -> bool:
    """Whether the figure is a wall or a radius of an OD that is known."""
    od = _known(layout, figure, "od") or _known(layout, figure, "nps")
    if od is None or figure.paragraph - od.paragraph > 1:
        return False
    apart = figure.item != od.item or figure.paragraph != od.paragraph
    if apart and wall_follows(layout, figure):
        return False  # "1) 4 in, .109 / 2) .25 in, .049"
    own = any(f.role == "wall" for f in layout.figures[od.index + 1 : figure.index])
    own = own or (figure.link in LISTED and layout.before(figure) is od)
    if own and figure.unit == "mm" and wall_follows(layout, figure):
        return False  # "45 OD 2.5 mm wall and 12 mm 1.2 mm thick", "60 mm and 12 mm, 1 mm wall"
    if is_wall_of(layout, figure, od):
        figure.give("wall", "place")
        return True
    if figure.link in LISTED and layout.before(figure) is od:
        return False  # "1.75 then step to 1.875": two of one thing
    if points_back(layout, figure):
        return False
    if (third_of_three(layout, figure) or follows_on(layout, figure)) and is_radius_of(figure, od):
        figure.give("radius", "place")
        return True
    return False


def _read_unknown(layout: Layout, figure: Figure) -> None:
    """An OD by what stands around it, or a wall before its OD."""
    before = layout.before(figure)
    after_radius = before is not None and before.role in RADIUS_ROLES
    if not figure.is_measured:
        after = layout.after(figure)
        listed = after is not None and after.link in LISTED
        fits_radius = figure.number.value <= 8 and radius_follows(layout, figure)
        on_radius = after_radius and fits_radius and not listed
        if on_radius or whole_before_wall(layout, figure) or opens_tube(layout, figure):
            figure.give("od", "place")  # "1.75 on 5.25, 2 on 6"
        return
    od = _known(layout, figure, "od") or _known(layout, figure, "nps")
    left = layout.tokens_before(figure, 3)
    material_before = bool(left) and left[-1].kind == "material"
    if is_diameter(figure):
        new_tube = od is None or od.line != figure.line or after_radius
        words = [token.text for token in left if token.kind in ("word", "punct", "cue")]
        leads = bool(words) and (words[-1] in _TUBE_BEFORE or _is_to_bend(words))
        starts = od is None and (material_before or leads)
        if (
            starts
            or _is_beside_tube(layout, figure)
            or wall_follows(layout, figure)
            or (new_tube and radius_follows(layout, figure))
        ):
            figure.give("od", "place")
            return
    if od is None and is_thin(figure) and (material_before or tube_follows(layout, figure)):
        figure.give("wall", "place")


def _is_beside_tube(layout: Layout, figure: Figure) -> bool:
    """'1.5 304', '2 inch tubing'."""
    right = layout.tokens_after(figure, 1)
    return bool(right) and (right[0].kind == "material" or right[0].text in _TUBE_AFTER)
