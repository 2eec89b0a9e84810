"""Roles for figures that nothing names: by their place in the sentence and their size.

'2 inch tube, .065, on a 6': people leave the words out when the order says it all. Only figures
that look measured (a unit, a decimal, a fraction) are taken; a bare whole number needs more.
"""

from __future__ import annotations

import re
from bisect import bisect_left
from decimal import Decimal

from .chains import nearly, same_size
from .figures import Figure, Layout
from .roles import LENGTH_ROLES, RADIUS_ROLES, tokens_beside

_ROLES = LENGTH_ROLES | {"times_d", "nps", "dn"}

_THIN_INCH = Decimal("0.3")
_ON = frozenset(
    "on around round onto over to at @ about auf um sur autour su attorno sobre alrededor op om".split()
)
_ARTICLES = frozenset(
    "a an our the my your this that tight big small nice one einen einem un une uno una een 's its".split()
)
_TUBE_BEFORE = frozenset(
    "for tube tubing pipe rohr tubo tube: pour für per para voor in on use using of some with running bending our size sizes".split()
)


def assign_by_place(layout: Layout) -> None:
    """Adopt unnamed figures as OD, wall or radius where place and size leave no other sense."""
    for position, figure in enumerate(layout.figures):
        if figure.role == "label":
            _labelled(figure)
        elif figure.role == "die":
            _die(layout, position)
    for position, figure in enumerate(layout.figures):
        if figure.role is None and not figure.negated:
            _adopt(layout, position)
    _twins(layout)
    _bare_answer(layout)


def _twins(layout: Layout) -> None:
    """'The tag says 1-7/8, my caliper 48 mm': a figure nearly equal to a named one is it again."""
    for figure in layout.figures:
        if figure.role is not None or figure.negated or not _measured(figure):
            continue
        near = {
            f.role for f in layout.in_sentence(figure.sentence)
            if f.role in LENGTH_ROLES and nearly(f, figure)
        }  # fmt: skip
        if len(near) == 1:
            figure.role, figure.how = near.pop(), "place"


def _bare_answer(layout: Layout) -> None:
    """Three figures and not a word of what they are: the order in which everybody is asked."""
    figures = [f for f in layout.figures if f.role != "noise" and not f.negated]
    if len(figures) != 3 or any(f.role not in (None, "wall") for f in figures):
        return
    od, wall, radius = (f.number.value for f in figures)
    if od and wall / od < Decimal("0.3") and Decimal("0.6") <= radius / od <= 10:
        for figure, role in zip(figures, ("od", "wall", "clr"), strict=True):
            figure.role, figure.how = role, "place"


def _measured(figure: Figure) -> bool:
    return figure.unit in ("in", "mm", "cm") or figure.number.style in (
        "decimal",
        "fraction",
        "mixed",
    )


def _labelled(figure: Figure) -> None:
    """'2 inch tube', 'Rohr 38': a diameter if the number can be one."""
    value = figure.number.value
    if figure.unit in ("ga", "bwg", "swg"):
        figure.role = "wall"
    elif figure.unit == "sch":
        figure.role = "schedule"
    elif _thin(figure) and figure.unit is None:
        figure.role, figure.how = "wall", "place"  # "tube is .120 dom"
    elif _measured(figure) or Decimal(12) <= value <= 200 or figure.how == "sign":
        figure.role, figure.how = ("od" if value >= Decimal("0.12") else "wall"), "place"
    elif figure.number.style in ("integer", "words") and 1 <= value <= 8 and figure.unit is None:
        figure.role, figure.how = None, ""
    else:
        figure.role = None


def _die(layout: Layout, position: int) -> None:
    """'on a 6 in die' is a radius where the tube is known; 'our 1-3/4 die set' names the tube."""
    figure = layout.figures[position]
    if figure.unit in ("ga", "sch"):
        figure.role = None
        return
    left, _ = tokens_beside(layout, figure, 3, 0)
    if any(cue.role == "die" for token in left for cue in token.cues):
        figure.role, figure.how = "radius", "place"  # "a former of 4 inches"
        return
    od = _known(layout, position, "od") or _unclaimed_tube(layout, position)
    if od is not None and figure.number.value > od.number.value:
        figure.role, figure.how = "radius", "place"
    elif od is None and _measured(figure):
        figure.role, figure.how = "od", "place"
    elif od is None:
        figure.role, figure.how = "radius", "place"
    else:
        figure.role = None


def _unclaimed_tube(layout: Layout, position: int) -> Figure | None:
    """An earlier measured figure that will be read as the OD."""
    for figure in layout.figures[max(0, position - 60) : position]:
        if figure.role is None and _measured(figure) and figure.number.value >= Decimal("0.25"):
            return figure
    return None


def _known(layout: Layout, position: int, role: str) -> Figure | None:
    for figure in reversed(layout.figures[max(0, position - 60) : position]):
        if figure.role == role and not figure.negated:
            return figure
    return None


def _adopt(layout: Layout, position: int) -> None:
    figure = layout.figures[position]
    if figure.unit in ("ga", "bwg", "swg"):
        figure.role, figure.how = "wall", "place"
        return
    if figure.unit == "D":
        figure.role, figure.how = "times_d", "place"
        return
    after = layout.figures[position + 1] if position + 1 < len(layout.figures) else None
    if after is not None and after.role == "schedule" and after.token - figure.token <= 3:
        figure.role, figure.how = "od", "place"  # "2 sch 40 pipe"
        return
    if figure.link == "restate" and _restated(layout, position):
        return
    if _put_right(layout, figure) or _same_but(layout, figure):
        return
    left, right = tokens_beside(layout, figure, 3, 2)
    words = [token.text for token in left if token.kind in ("word", "punct", "cue")]
    od = _known(layout, position, "od") or _known(layout, position, "nps")
    same_sentence = od is not None and figure.paragraph - od.paragraph <= 1
    if od is not None and same_sentence and _is_wall(figure, od, layout):
        figure.role, figure.how = "wall", "place"
        return
    if od is not None and same_sentence and _third_of_three(layout, position) and _is_radius(figure, od):
        figure.role, figure.how = "radius", "place"
        return
    if od is not None and same_sentence and _on_a(words) and _is_radius(figure, od):
        figure.role, figure.how = "radius", "place"
        return
    if not _measured(figure):
        after_radius = position > 0 and layout.figures[position - 1].role in RADIUS_ROLES
        if after_radius and figure.number.value <= 8 and _radius_next(layout, position):
            figure.role, figure.how = "od", "place"  # "1.75 on 5.25, 2 on 6"
        return
    beside_tube = bool(right) and (
        right[0].kind == "material"
        or right[0].text in ("tube", "tubing", "pipe", "tubes", "rohr", "od")
    )
    material_before = bool(left) and left[-1].kind == "material"
    after_radius = position > 0 and layout.figures[position - 1].role in RADIUS_ROLES
    radius_next = od is None or od.line != figure.line or after_radius
    radius_next = radius_next and _radius_next(layout, position)
    next_thin = position + 1 < len(layout.figures) and _thin_next(layout, position)
    starts = (bool(words) and words[-1] in _TUBE_BEFORE) or material_before
    if _is_diameter(figure) and (
        beside_tube or next_thin or radius_next or (starts and od is None)
    ):
        figure.role, figure.how = "od", "place"
    elif od is None and _thin(figure) and (material_before or _tube_follows(layout, position)):
        figure.role, figure.how = "wall", "place"


def _restated(layout: Layout, position: int) -> bool:
    """A bracket that repeats the figure before it takes that figure's role."""
    figure, before = layout.figures[position], layout.figures[position - 1]
    if before.role in LENGTH_ROLES and same_size(before, figure):
        figure.role, figure.how = before.role, "same"
        return True
    return False


def _put_right(layout: Layout, figure: Figure) -> bool:
    """'6.5, not 6': the figure takes the role of the value it puts right."""
    if figure.corrects and _measured(figure) and _named_wrong(layout, figure):
        return True
    for other in layout.in_sentence(figure.sentence):
        if not other.negated:
            continue
        for earlier in _held(layout, figure):
            if (
                earlier.role in _ROLES
                and earlier.number.value == other.number.value
                and earlier is not other
            ):
                figure.role, figure.how, figure.corrects = earlier.role, "place", True
                return True
    return False


_SAME_BUT = re.compile(
    r"\bsame\b[^.;]{0,30}\b(?:but|except|only|just|with)\b(?:(?!\d).){0,16}$|\b(?:also|another|plus)\b[^.;\d]{0,24}$"
)


def _same_but(layout: Layout, figure: Figure) -> bool:
    """'Same thing but 1.625': the figure changes whichever value it is nearest to."""
    begin = layout.text.rfind("\n", 0, figure.start) + 1
    before = layout.text[max(begin, figure.start - 60) : figure.start].casefold()
    if not _measured(figure) or not _SAME_BUT.search(before):
        return False
    held = _held(layout, figure)
    near = {
        f.role for f in held
        if f.number.value and Decimal("0.62") < figure.number.value / f.number.value < Decimal("1.6")
    }  # fmt: skip
    if len(near) != 1:
        return False
    figure.role, figure.how = near.pop(), "place"
    return True


_WRONG: tuple[tuple[str, str], ...] = (
    ("wall", r"wall|thickness|gauge|gage|wandst|épaisseur|espesor|spessore|wanddikte"),
    ("radius", r"clr|radius|centerline|centreline|rayon|radio|raggio|straal"),
    ("od", r"\bod\b|o\.d|diameter|tube size|durchmesser|diamètre|diámetro|diametro"),
)


def _held(layout: Layout, figure: Figure) -> list[Figure]:
    """Figures with a role that stand before this one, the nearest 60 of them."""
    at = bisect_left(layout.starts, figure.start)
    return [f for f in layout.figures[max(0, at - 60) : at] if f.role in _ROLES and not f.negated]


def _put_for(held: Figure, role: str, figure: Figure) -> bool:
    """Whether the figure can be what puts a held one of this role right: of like size."""
    same = held.role == role or (role == "radius" and held.role in RADIUS_ROLES)
    ratio = figure.number.value / held.number.value if held.number.value else Decimal(0)
    return same and Decimal("0.3") < ratio < Decimal("3.4")


def _named_wrong(layout: Layout, figure: Figure) -> bool:
    """'Scratch that wall. It's .095': the correction names what it corrects, or its size tells."""
    text = layout.sentence_text(figure.sentence - 1) + " " + layout.sentence_text(figure.sentence)
    named = [role for role, words in _WRONG if re.search(words, text)]
    held = _held(layout, figure)
    if len(named) == 1 and any(_put_for(f, named[0], figure) for f in held):
        figure.role, figure.how = named[0], "place"
        return True
    near = [
        f
        for f in held
        if Decimal("0.5") < figure.number.value / max(f.number.value, Decimal("0.001")) < 2
    ]
    if len({f.role for f in near}) == 1:
        figure.role, figure.how = near[0].role, "place"
        return True
    return False


def _third_of_three(layout: Layout, position: int) -> bool:
    """'1.5" .065" 4.5"': nothing but space or a comma since the OD and its wall."""
    if position < 2:
        return False
    od, wall, figure = layout.figures[position - 2 : position + 1]
    gaps = [layout.between(od, wall), layout.between(wall, figure)]
    plain = all(t.kind in ("gap", "material", "times") or t.text in (",", "/", "-", "wall") for gap in gaps for t in gap)
    return (od.role, wall.role) == ("od", "wall") and plain


def _on_a(words: list[str]) -> bool:
    if not words:
        return False
    if words[-1] in _ON:
        return True
    return len(words) > 1 and words[-1] in _ARTICLES and words[-2] in _ON


def _is_diameter(figure: Figure) -> bool:
    value = figure.number.value
    if figure.unit == "mm":
        return 4 <= value <= 220
    return Decimal("0.125") <= value <= 8 or (figure.unit is None and 12 <= value <= 220)


def _thin(figure: Figure) -> bool:
    return figure.number.style == "decimal" and figure.number.value < _THIN_INCH


def _thin_next(layout: Layout, position: int) -> bool:
    """Whether the next figure is a wall: an OD stands before its wall."""
    figure, after = layout.figures[position], layout.figures[position + 1]
    between = layout.between(figure, after)
    stops = all(t.text in (".", ",") or t.kind in ("gap", "material") for t in between)
    if (after.sentence != figure.sentence and not stops) or after.negated:
        return False  # '1". .035. 321.' may be split by points
    if _thousandths(layout, figure, after):
        return True
    return (
        after.role == "wall"
        or after.unit in ("ga", "bwg", "swg", "sch")
        or (after.role is None and _thin(after) and after.number.value * 2 < figure.number.value)
    )


def _tube_follows(layout: Layout, position: int) -> bool:
    """Whether an OD is named later in the paragraph: '.083, 1.625 OD'."""
    figure = layout.figures[position]
    return any(
        f.role == "od"
        and f.paragraph == figure.paragraph
        and f.number.value > 2 * figure.number.value
        for f in layout.figures[position + 1 : position + 4]
    )


def _radius_next(layout: Layout, position: int) -> bool:
    """'1-1/2 on a 3 in CLR', '2-1/2 on 3-3/4': an unnamed figure before its radius is the OD."""
    if position + 1 >= len(layout.figures):
        return False
    figure, after = layout.figures[position], layout.figures[position + 1]
    if after.line != figure.line or after.negated or not _is_radius(after, figure):
        return False
    if after.role in RADIUS_ROLES:
        return True
    left, _ = tokens_beside(layout, after, 2, 0)
    words = [t.text for t in left if t.number is None]
    return after.role is None and _on_a(words)


def _thousandths(layout: Layout, od: Figure, figure: Figure) -> bool:
    """'1.5 120': a whole number right after an inch OD is a wall in thousandths."""
    touching = all(token.kind == "gap" for token in layout.between(od, figure))
    whole = figure.unit is None and figure.number.style == "integer"
    inch = od.unit in ("in", None) and od.number.value <= 6 and _measured(od)
    return touching and whole and inch and 28 <= figure.number.value <= 250


def _is_wall(figure: Figure, od: Figure, layout: Layout) -> bool:
    if _thousandths(layout, od, figure):
        return True
    if not _measured(figure) or (
        figure.unit == od.unit and figure.number.value * 2 >= od.number.value
    ):
        return False
    if figure.unit == "mm" and figure.sentence == od.sentence:
        od_mm = od.number.value * (Decimal("25.4") if od.unit == "in" else 1)
        return figure.number.value <= 12 and figure.number.value * 2 < od_mm
    between = [t for t in layout.between(od, figure) if t.kind == "number"]
    return _thin(figure) and figure.unit in (None, "in") and len(between) <= 2


def _is_radius(figure: Figure, od: Figure) -> bool:
    if figure.unit == od.unit or figure.unit is None or od.unit is None:
        ratio = figure.number.value / od.number.value if od.number.value else Decimal(0)
        return Decimal("0.7") <= ratio <= 10
    return True

