"""An OD that is set on its radius in running words: 'down bars, 1.5 on a 4.5 CLR', '42 auf R 150'.

Beside another tube such a figure would be in no size, and its radius would go to that other one. A
bare whole number below ten stays what it is: 'two of these, 2 on a 6 CLR' counts. Nor is the 50 a
second radius in '38 mm R76 and 50 mm R100'.
"""

from __future__ import annotations

from decimal import Decimal

from ...late_pattern import late_pattern
from ..naming.place_tests import is_diameter
from ..text.figures import LISTED, Figure, Layout
from ..text.patterns import any_of
from ..text.roles import RADIUS_ROLES

_LEAST, _MOST = Decimal("0.9"), Decimal(8)
"""How many ODs a radius is."""
_COUNTS = Decimal(10)
_FAR = 40
_ON = late_pattern(
    r"^[\"']?\s?(?:(?:mm|in|inch(?:es)?|od|dia|tub(?:e|ing)|stuff|one|bars?|pipe|rohr|tubo"
    r"|buis)\s){0,2}"
    + any_of(
        "on | onto | at | @ | with | w/ | over | around | auf | mit | um | sur | avec | en | con "
        "| su",
        "sobre | a | op | met | bij",
    )
    + r"\s(?:(?:an?|the|our|my|einen?|einem|den|dem|un|une|le|la|el|il|uno|una|een|de|bending|bend"
    r"|cent(?:er|re)[ -]?line|mittleren?)\s){0,3}"
    r"(?:(?:r|radius|rad|clr|biegeradius|rayon|radio|raggio|straal|buigradius)\W{0,2}(?:of|von|de"
    r"|di|van)?\s?)?$"
)
_AND = late_pattern(r"\ben\s?$")
"""'60, 75 en 90 radius' is a Dutch list; 'tubo 42 en radio 150' sets it on its radius."""
_NO_TUBE = late_pattern(
    r"\b"
    + any_of(
        "wall | thick | gauge | ga | leg | legs | long | length | springback | from | every | qty"
        " | no\\.?",
        "item | line | pos | up to | bis | jusqu'à | hasta | fino a | tot | wand | pared | paroi",
        "spessore | wanddikte | lang | schenkel | about | spacing | apart | step",
    )
    + r"\W{0,3}$"
)


def hear_on_radius(layout: Layout) -> None:
    """Make an OD of a figure that nothing names and that stands on the radius behind it."""
    _hear_pairs(layout)
    if not any(figure.role == "od" for figure in layout.figures):
        return  # one tube alone: its place tells
    for figure, radius in zip(layout.figures, layout.figures[1:], strict=False):
        if _is_on(layout, figure, radius):
            figure.give("od", "place")


def _hear_pairs(layout: Layout) -> None:
    """'38 mm R76 and 50 mm R100': the 50 stands before its radius as the 38 does, and is none."""
    figures = layout.figures
    for four in zip(figures, figures[1:], figures[2:], figures[3:], strict=False):
        if not _is_pair_of_pairs(layout, *four):
            continue
        for tube in (four[0], four[2]):
            if tube.role is None:
                tube.give("od", "place")
        four[2].link = "apart"


def _is_pair_of_pairs(
    layout: Layout, tube: Figure, radius: Figure, other: Figure, others: Figure
) -> bool:
    if tube.role not in (None, "od", "label", "wall") or other.role not in (None, "od", "label"):
        return False
    if other.link not in LISTED or others.link in LISTED or other.row is not None:
        return False
    if not all(f.role in RADIUS_ROLES and f.how in ("sign", "cue") for f in (radius, others)):
        return False
    if not is_diameter(other) or other.number.value >= others.number.value:
        return False
    if tube.role is None and not (is_diameter(tube) and tube.number.value < radius.number.value):
        return False
    return all(_are_beside(layout, *pair) for pair in ((tube, radius), (other, others)))


def _are_beside(layout: Layout, left: Figure, right: Figure) -> bool:
    between = layout.between(left, right)
    return all(t.kind in ("gap", "cue", "material") or t.text == "," for t in between)


def _is_on(layout: Layout, figure: Figure, radius: Figure) -> bool:
    if figure.role is not None or not figure.is_measure or figure.row is not None:
        return False
    if radius.role not in RADIUS_ROLES or radius.unit == "D" or figure.is_gauge:
        return False
    if figure.link in ("times", "slash") or figure.sentence != radius.sentence:
        return False
    value = figure.number.value
    if figure.unit not in (None, "in", "mm") or not (
        figure.unit or figure.is_measured or value >= _COUNTS
    ):
        return False
    if not _sets_on(layout, figure, radius):
        return False
    begin = max(layout.sentence_start(figure.sentence), figure.start - _FAR)
    if _NO_TUBE.search(layout.words(begin, figure.start).casefold()):
        return False
    alike = figure.unit is None or radius.unit is None or figure.unit == radius.unit
    return is_diameter(figure) and (not alike or _LEAST <= radius.number.value / value <= _MOST)


def _sets_on(layout: Layout, figure: Figure, radius: Figure) -> bool:
    if radius.start - figure.end > _FAR:
        return False
    joint = layout.words(figure.end, radius.start).casefold()
    return _ON.match(joint) is not None and not _AND.search(joint)
