"""The one figure that is left for the one length that nothing has given: taken, with a doubt.

Whoever asks for a mandrel tells three lengths. Where two are known and a single figure is left
that could be the third, it most likely is; no word says so, and the reply asks.
"""

from __future__ import annotations

from collections.abc import Callable
from decimal import Decimal

from ....rules.standards import bwg_of
from ...late_pattern import late_pattern
from ..text.figures import LISTED, Figure, Layout
from ..text.patterns import whole_words, word_set
from ..text.roles import NOMINAL_ROLES, RADIUS_ROLES, Role
from .place_tests import is_diameter, is_radius_of, is_thin

_TAKEN = "taken for the {}, though no word says what it is"
_NAMES: dict[Role, str] = {"od": "OD", "wall": "wall", "radius": "radius"}
_BENT = whole_words(
    r"radi(?:us|i|en) | bend(?:s|ing)? | bent | curving | dies? | former | curve[ds]? | rayon",
    r"cintr\w+",
    r"raggio | curva\w* | radio | doblad\w+ | bieg\w+ | bogen | gebogen | straal | buig\w+ | bocht",
)
_SHEET = late_pattern(
    r"\s?,?\s?(?:(?:en|in|aus|van|de|di|con|avec)\s)?(?:chapa|lamiera|lámina|tôle|blech|plaat"
    r"|plaatdikte|blechstärke|gauge metal)\s(?:de\s|da\s|di\s|von\s|van\s)?"
)
_TUBE_BEFORE = late_pattern(
    r"\b(?:(?:tubo|tube|tuyau|rohr|buis|pipe|tubing)\s(?:è|is|est|es|ist|mide|fait|hat|misura)"
    r"(?:\s(?:da|de|di|van|von))?|außen|aussen|extérieur|exterior|esterno|buiten|outside)\s$"
)
_THICK_BEHIND = late_pattern(r"\s?(?:mm\s?)?(?:stark|dick|thick|dik|spess[oa]|épaisse?|gruesa?)\b")
_LEAD = 24
_SHORT = 2
_LEADS_ON = word_set(
    "and but for with the same this that tube tubing pipe und aber für mit rohr les pour avec tubo"
    " con para per met voor buis maar please bitte"
)
"""Words behind a figure that say nothing of what it measures."""
_INCH = Decimal("25.4")
_THICKEST_MM = 8
_SHORTEST_LIST = 2
_NEAR = 16
"""Characters before a figure in which a word of bending speaks of it."""


def assign_leftovers(layout: Layout) -> None:
    """Give a figure the role that a size lacks, where no other figure could have it."""
    figures = [figure for figure in layout.figures if figure.is_measure]
    roles = {figure.role for figure in figures} | {f.role for f in layout.earlier}
    tubes = [f for f in figures if f.role in ("od", "id") or f.role in NOMINAL_ROLES]
    if not tubes and not roles & {"od", "id", "side", "dash", *NOMINAL_ROLES}:
        walls = [f for f in figures if f.role == "wall"]
        radii = [f for f in figures if f.role in RADIUS_ROLES]
        if walls or radii:
            _take(
                layout,
                figures,
                "od",
                lambda f: (
                    _is_tube(f, walls, radii)
                    and not _is_bent(layout, f)
                    and not _goes_on(layout, f)
                ),
            )
            multiples = any(f.role == "times_d" for f in radii)
            _take_list(figures, lambda f: _is_tube(f, walls, []), sure=multiples and bool(walls))
        tubes = [f for f in figures if f.role == "od"]
    if len(tubes) != 1 or tubes[0].shape:
        return
    tube = tubes[0]
    if not roles & {"wall", "schedule", "id"}:
        _take(layout, figures, "wall", lambda f: _is_wall(f, tube))
    if not roles & RADIUS_ROLES:
        _take(
            layout,
            figures,
            "radius",
            lambda f: is_radius_of(f, tube) and layout.says(f.sentence, _BENT),
        )


def _take(
    layout: Layout, figures: list[Figure], role: Role, fits: Callable[[Figure], bool]
) -> None:
    """Give the role to the one open figure that fits."""
    bare = [f for f in figures if f.role is None and f.unit != "D" and fits(f)]
    found = [f for f in bare if f.is_measured] or [f for f in bare if _has_wall_behind(layout, f)]
    if len(found) == 1 and not layout.tokens[found[0].token].cues:
        found[0].give(role, "place")
        if not _is_plainly(layout, found[0]):
            found[0].notes.append(_TAKEN.format(_NAMES[role]))


def _is_plainly(layout: Layout, figure: Figure) -> bool:
    """Whether the reply need not ask: a gauge's wall written in inches, '.095', or called thick;
    an OD told of the tube, 'il tubo è da 42,4', or of what is outside, or in eighths and all that
    its sentence says, 'Inch and a half.'."""
    inches = figure.unit in (None, "in")
    if figure.role == "wall":
        stock = is_thin(figure) and inches and bwg_of(figure.number.value * _INCH) is not None
        thick = _THICK_BEHIND.match(layout.words(figure.end, figure.end + _LEAD)) is not None
        return (
            (stock and not _is_of_thing(layout, figure))
            or thick
            or _is_sheet_of_tube(layout, figure)
        )
    if figure.role != "od":
        return False
    if _has_wall_behind(layout, figure) or is_said_of_tube(layout, figure):
        return True
    first, last = layout.spans[figure.sentence]
    alone = not any(
        token.kind in ("word", "cue", "number", "material")
        for at, token in enumerate(layout.tokens[first : last + 1], first)
        if at != figure.token
    )
    return figure.unit == "in" and alone and not figure.number.value * 8 % 1


def _is_of_thing(layout: Layout, figure: Figure) -> bool:
    """'With a .12 nose': a word behind it that says nothing of tube may be what it measures."""
    behind = layout.tokens_after(figure, 1)
    if not behind or behind[0].kind != "word" or behind[0].cues:
        return False
    return len(behind[0].text) > _SHORT and behind[0].text not in _LEADS_ON


def _has_wall_behind(layout: Layout, figure: Figure) -> bool:
    """'28 ép. 2': nothing but the word for a wall stands between a figure and its wall."""
    wall = layout.after_in_sentence(figure)
    if wall is None or wall.role != "wall" or wall.number.value * 3 > figure.number.value:
        return False
    between = [t for t in layout.between(figure, wall) if t.kind != "gap"]
    return (
        len(between) <= 2
        and all(t.text == "." or any(cue.role == "wall" for cue in t.cues) for t in between)
        and any(t.cues for t in between)
    )


def is_said_of_tube(layout: Layout, figure: Figure) -> bool:
    """'Il tubo è da 42,4 mm', 'außen 40 mm'"""
    ahead = layout.words(max(0, figure.start - _LEAD), figure.start)
    return _TUBE_BEFORE.search(ahead) is not None


def _is_sheet_of_tube(layout: Layout, wall: Figure) -> bool:
    """'Un mandril de 2 pulgadas y media, chapa 1.5 mm': the sheet that the tube is rolled from, in
    the same breath as its OD."""
    before = layout.before(wall)
    if before is None or before.sentence != wall.sentence or before.role not in (None, "od"):
        return False
    return _SHEET.fullmatch(layout.words(before.end, wall.start)) is not None


def _take_list(figures: list[Figure], fits: Callable[[Figure], bool], *, sure: bool) -> None:
    """'1", 1-1/4" and 1-1/2". Wall is 16 ga on all of them': the one list that nothing names.

    It is sure where the wall is told and the radius as so many ODs: no other length is left.
    """
    open_ones = [f for f in figures if f.role is None]
    first = next((at for at, f in enumerate(open_ones) if f.link not in LISTED), 0)
    run = open_ones[first : first + 1]
    for figure in open_ones[first + 1 :]:
        if figure.link not in LISTED or figure.index != run[-1].index + 1:
            return
        run.append(figure)
    if len(run) < _SHORTEST_LIST or not all(f.is_measured and fits(f) for f in run):
        return
    for figure in run:
        figure.give("od", "list")
        if not sure:
            figure.notes.append(_TAKEN.format(_NAMES["od"]))


def _goes_on(layout: Layout, figure: Figure) -> bool:
    """Whether it goes on a list whose other figures nothing names either."""
    before = layout.before(figure)
    return before is not None and before.role is None and figure.link in LISTED


def _is_bent(layout: Layout, figure: Figure) -> bool:
    """'curving three inches from its spine': a word of bending right before the figure."""
    before = layout.words(max(0, figure.start - _NEAR), figure.start)
    return _BENT.search(before) is not None


def _mm(figure: Figure) -> Decimal | None:
    if figure.unit in ("in", "mm"):
        return figure.number.value * (_INCH if figure.unit == "in" else 1)
    return None


def _is_tube(figure: Figure, walls: list[Figure], radii: list[Figure]) -> bool:
    """Whether a diameter has room for the walls and can be bent to the radii."""
    if not is_diameter(figure) or is_thin(figure):
        return False
    own = _mm(figure)
    for wall in walls:
        other = _mm(wall)
        if own is not None and other is not None and other * 2 >= own:
            return False
    for radius in radii:
        other = _mm(radius)
        if own is not None and other is not None and not own / 2 < other <= own * 10:
            return False
    return True


def _is_wall(figure: Figure, tube: Figure) -> bool:
    own, od = _mm(figure), _mm(tube)
    if own is None:
        return is_thin(figure) and (figure.unit, tube.unit) != (None, "mm")
    return own <= _THICKEST_MM and (od is None or own * 2 < od)
