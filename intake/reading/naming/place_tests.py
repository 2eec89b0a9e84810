"""What a figure can be, judged by its size, its neighbours and the little words around it."""

from __future__ import annotations

from decimal import Decimal

from ..text.figures import Figure, Layout
from ..text.patterns import word_set
from ..text.roles import RADIUS_ROLES

_THIN_INCH = Decimal("0.3")
_THINNEST_INCH = Decimal("0.01")
_LARGEST_OD_MM = 220
_LARGEST_OD_IN = 8
_THICKEST_MM = 12
_INCH = Decimal("25.4")
_ON = word_set(
    "on around round onto over to at @ about auf um sur autour su attorno sobre alrededor op om"
)
_WITH = word_set("with mit avec con met à a")
_CLAUSE_ENDS = frozenset((".", ",", ";"))
_ARTICLES = word_set(
    "a an our the my your this that tight big small nice one einen einem un une uno una een 's its"
)
_THE = word_set("the das der die dem den beim le la el los il sul de het")
_JOINTS = frozenset((",", "/", "-", "wall"))
_AND = word_set("and & und et y e en i")
_ONE_TUBE = frozenset(("tube", "tubing", "pipe"))
"""Two of them would be 'tubes'."""
_PAIR = 2
_NEAR = 3
_LEAST_THOUSANDTHS = 20
_LEAST_BARE_MM = 20
_FAR = 60
_MANY = Decimal(10)
"""So many mandrels are not ordered at once."""


def is_diameter(figure: Figure) -> bool:
    """Whether tubes of that diameter are bent: 4 to 220 mm, 1/8 to 8 in."""
    value = figure.number.value
    if figure.unit == "mm":
        return 4 <= value <= _LARGEST_OD_MM
    bare_mm = figure.unit is None and 12 <= value <= _LARGEST_OD_MM
    return Decimal("0.125") <= value <= _LARGEST_OD_IN or bare_mm


def is_thin(figure: Figure) -> bool:
    """Whether it is written like a wall in inches: '.095'."""
    return figure.number.style == "decimal" and figure.number.value < _THIN_INCH


def is_wall_of(layout: Layout, figure: Figure, od: Figure) -> bool:
    """Whether the figure can be the wall of that OD, which stands before it."""
    if _is_thousandths(layout, od, figure):
        return True
    value = figure.number.value
    spoken = figure.unit == "in" and figure.number.style in ("words", "speech")
    if spoken and _THINNEST_INCH <= value < _THIN_INCH:
        return True  # "sixty-five thousandths"
    if not figure.is_measured or (figure.unit == od.unit and value * 2 >= od.number.value):
        return False
    if figure.unit == "mm" and figure.sentence == od.sentence:
        od_mm = od.number.value * (_INCH if od.unit == "in" else 1)
        return value <= _THICKEST_MM and value * 2 < od_mm
    if not is_thin(figure) or figure.unit not in (None, "in"):
        return False
    return sum(token.kind == "number" for token in layout.between(od, figure)) <= 2


def is_radius_of(figure: Figure, od: Figure) -> bool:
    """Whether the figure is between 0.7 and 10 times the OD, as far as the units tell."""
    if figure.unit is not None and od.unit is not None and figure.unit != od.unit:
        return True
    ratio = figure.number.value / od.number.value if od.number.value else Decimal(0)
    return Decimal("0.7") <= ratio <= 10


def third_of_three(layout: Layout, figure: Figure) -> bool:
    """'1.5" .065" 4.5"': nothing but space or a comma since the OD and its wall."""
    if figure.index < 2:
        return False
    od, wall = layout.figures[figure.index - 2 : figure.index]
    return (od.role, wall.role) == ("od", "wall") and all(
        token.kind in ("gap", "material", "times") or token.text in _JOINTS
        for gap in (layout.between(od, wall), layout.between(wall, figure))
        for token in gap
    )


def follows_on(layout: Layout, figure: Figure) -> bool:
    """'... on a 6', '... around 150': the words that a radius needs no other words beside."""
    left = layout.tokens_before(figure, 3)
    words = [t.text for t in left if t.kind in ("word", "punct", "cue")]
    return _ends_in_on(words) or _closes_with(layout, figure, words)


def points_back(layout: Layout, figure: Figure) -> bool:
    """'1.5 x .065 and 1 x .065, and I get wrinkles on the 1.5 only': a tube told before."""
    left = layout.tokens_before(figure, 2)
    if not any(token.text in _THE for token in left):
        return False
    earlier = layout.figures[max(0, figure.index - _FAR) : figure.index]
    value = figure.number.value
    return any(other.role == "od" and other.number.value == value for other in earlier)


def _closes_with(layout: Layout, figure: Figure, words: list[str]) -> bool:
    """'... même épaisseur, à 75', 'gleiche Wand, mit 100 mm': a clause that ends with a length."""
    if len(words) < _PAIR or words[-1] not in _WITH:
        return False
    if figure.unit not in ("mm", "in") and not (figure.unit is None and _is_bare_mm(figure)):
        return False
    right = layout.tokens_after(figure, 1)
    ends = not right or right[0].kind in ("line", "para") or right[0].text in _CLAUSE_ENDS
    return ends and words[-2] == ","


def _is_bare_mm(figure: Figure) -> bool:
    return figure.number.style == "integer" and figure.number.value >= _LEAST_BARE_MM


def _ends_in_on(words: list[str]) -> bool:
    if not words:
        return False
    return words[-1] in _ON or (len(words) > 1 and words[-1] in _ARTICLES and words[-2] in _ON)


def wall_follows(layout: Layout, figure: Figure) -> bool:
    """Whether the next figure is a wall: an OD stands before its wall."""
    after = layout.after(figure)
    if after is None or after.negated:
        return False
    if after.sentence != figure.sentence and not _only_stops(layout, figure, after):
        return False
    if after.role == "wall" or after.is_gauge or after.unit == "sch":
        return True
    if _is_thousandths(layout, figure, after):
        return True
    thinner = after.number.value * 2 < figure.number.value
    if after.role is None and figure.unit == after.unit == "mm":
        # "44.45 mm 2.413 mm DOM" as "1.75 .095 DOM"
        return after.number.value * 4 < figure.number.value and all(
            token.kind in ("gap", "material") or token.text in _JOINTS
            for token in layout.between(figure, after)
        )
    return after.role is None and is_thin(after) and thinner


def whole_before_wall(layout: Layout, figure: Figure) -> bool:
    """'4.5 CLR, 3, 11 ga', '2, .065 wall', '2 tube, .120 wall': a whole number right before a wall,
    on a line that names no other OD."""
    after = layout.after(figure)
    if after is None or not 1 <= figure.number.value <= _LARGEST_OD_IN:
        return False
    if figure.unit is not None or figure.number.style != "integer":
        return False
    inches = after.role in (None, "wall") and is_thin(after) and after.unit in (None, "in")
    touching = all(
        token.kind in ("gap", "times", "material")
        or token.text == ","
        or (token.text in _ONE_TUBE and (figure.number.value > 1 or token.text == "tubing"))
        for token in layout.between(figure, after)
    )
    return (
        (after.is_gauge or inches)
        and touching
        and not any(
            other.role in ("od", "id", "nps") and other.line == figure.line
            for other in layout.near_in_sentence(figure)
        )
    )


def _only_stops(layout: Layout, figure: Figure, after: Figure) -> bool:
    """'1". .035. 321.' may be split by points."""
    between = layout.between(figure, after)
    return all(token.text in (".", ",") or token.kind in ("gap", "material") for token in between)


def tube_follows(layout: Layout, figure: Figure) -> bool:
    """Whether an OD is named later in the paragraph: '.083, 1.625 OD'."""
    return any(
        after.role == "od"
        and after.paragraph == figure.paragraph
        and after.number.value > 2 * figure.number.value
        for after in layout.figures[figure.index + 1 : figure.index + 4]
    )


def radius_follows(layout: Layout, figure: Figure) -> bool:
    """'1-1/2 on a 3 in CLR', '2-1/2 on 3-3/4': an unnamed figure before its radius is the OD."""
    after = layout.after(figure)
    if after is None or after.line != figure.line or after.negated:
        return False
    if not is_radius_of(after, figure):
        return False
    if after.role in RADIUS_ROLES:
        return True
    left = layout.tokens_before(after, 2)
    return after.role is None and _ends_in_on([t.text for t in left if t.number is None])


def _is_thousandths(layout: Layout, od: Figure, figure: Figure) -> bool:
    """'1.5 120': a whole number right after an inch OD is a wall in thousandths."""
    if figure.unit is not None or figure.number.style != "integer":
        return False
    if not (28 <= figure.number.value <= 250 and od.number.value <= 6 and od.is_measured):
        return False
    touching = all(token.kind == "gap" for token in layout.between(od, figure))
    return touching and od.unit in ("in", None)


def in_thousandths(figure: Figure) -> bool:
    """'49 wall / CLR 3 in': a whole number called a wall needs no unit to be one in thousandths."""
    whole = figure.number.style in ("integer", "speech", "words")
    return figure.role == "wall" and whole and figure.number.value >= _LEAST_THOUSANDTHS


def opens_list(layout: Layout, figure: Figure) -> bool:
    """'Dorne: 25, 30 und 35 AD': so many mandrels are not ordered, and not of two kinds. Nor are
    'Mandrels: 2, 3 and 4 OD' two of each."""
    value, after = figure.number.value, layout.after(figure)
    if after is not None and _is_called_od(layout, after) and _is_near(value, after):
        between = layout.text[figure.end : after.start].strip().casefold()
        if between in _AND and figure.unit is None:
            return True  # "mandrels: 2 and 1.75 OD"
    many = value >= _MANY or (after is not None and _is_called_od(layout, after))
    while after is not None and after.link == "list" and value < after.number.value <= 2 * value:
        if many and layout.text[figure.end : after.start].strip().casefold() in _AND:
            return True
        value, figure, many = after.number.value, after, True
        after = layout.after(figure)
    return False


def _is_near(value: Decimal, other: Figure) -> bool:
    return value <= 2 * other.number.value and other.number.value <= 2 * value


def opens_tube(layout: Layout, figure: Figure) -> bool:
    """'One mandrel, 2 .083 wall on a 7 CLR': a whole number that only the OD can be."""
    wall = layout.after_in_sentence(figure)
    if wall is None or not 1 <= figure.number.value <= _LARGEST_OD_IN or not is_thin(wall):
        return False
    if figure.unit is not None or figure.number.style != "integer" or wall.unit not in (None, "in"):
        return False
    if layout.text[figure.end : wall.start].strip():
        return False
    behind = [token for token in layout.tokens_after(wall, 2) if token.kind != "gap"]
    if not behind or not any(cue.role == "wall" for cue in behind[0].cues):
        return False
    third = layout.after_in_sentence(wall)
    if third is None or third.line != figure.line:
        return len(behind) < _PAIR or behind[1].kind != "word"
    between = layout.text[wall.end : third.start].casefold().split()
    if between and between[-1] in _AND:
        return True  # "2 .065 wall and 1.375 OD x .049"
    own = layout.tokens[third.token]
    near = [*layout.tokens_before(third, _NEAR), own, *layout.tokens_after(third, _NEAR)]
    return any(cue.role in RADIUS_ROLES for token in near for cue in token.cues)


def _is_called_od(layout: Layout, figure: Figure) -> bool:
    """'Mandrels: 2 and 3 OD'."""
    return any(cue.role == "od" for token in layout.tokens_after(figure, 1) for cue in token.cues)
