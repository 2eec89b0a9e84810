"""Lists whose figures share one role: '1.5, 1.75 and 2 OD', 'radii of 57 and 76'."""

from __future__ import annotations

from decimal import Decimal
from itertools import pairwise

from ...late_pattern import late_pattern
from ..text.figures import LISTED, Figure, Layout
from ..text.patterns import whole_words, word_set
from ..text.roles import LENGTH_ROLES, RADIUS_ROLES, Role
from .chain_parts import LONGEST_RATIO, set_role
from .place_tests import follows_on
from .radii_below import is_alone

_BEFORE_RADIUS = word_set("on @ at with auf mit à su sur (")
_SHARED: frozenset[Role] = LENGTH_ROLES | {"times_d", "nps", "noise"}
_GIVES_WAY: frozenset[Role | None] = frozenset({None, "label", "die"})
_TUBES: frozenset[Role | None] = frozenset({"od", "label"})
_AND = word_set("and & und et y e en og i plus")
_GROWN = Decimal("1.4")
"""From a tube to its radius the figures grow by more than from one tube to the next."""
_WIDEST, _WIDEST_IN_TURN = 4, 9
_IN_TURN = whole_words(
    "respectively | respectivement | respectivamente | rispettivamente | respectievelijk | jeweils"
)
_WORD = 16
_NEAR_RADII = 2
_NEAR_SCHEDULE = 2
"""Tokens from a pipe's nominal size to its schedule: '1-1/4 in sch 10'."""
_ITEMS = late_pattern(
    r"\b(?:items?|lines?|rows?|pos|positions?|positionen|nos?|nr|parts?|teile?|postes?|partidas?"
    r"|posizion[ei]|regels?|posities?)\b\.?[\s#]*$"
)
_OD_WALL_RADIUS: tuple[Role, Role, Role] = ("od", "wall", "clr")


def share_lists(layout: Layout) -> None:
    """'1.5, 1.75 and 2 OD', 'radii of 57 and 76', '17 or 16 gauge': one role for the whole list.

    '1.5 and 1.75, each .095 and .120' holds two lists: figures of another size begin a new one.
    """
    run: list[Figure] = []
    radii = False
    for figure in layout.figures:
        if run and figure.link in LISTED and _begins_next(layout, run[-1], figure):
            figure.link = "apart"  # "1.5 x .065 on 4.5, 1.75 x .065 on 5.25"
        joined = run and figure.link in LISTED and _alike(layout, run[-1], figure)
        after = layout.after(figure)
        if joined and run[-1].role == "noise" and after is not None and after.link == "times":
            joined = False  # "12 in long, tube 2 x .065"
        if joined and _is_behind_items(layout, run, figure):
            joined = False  # "wall 1.5 for items 1 and 2, 2.6 for item 3"
        pair = radii and _begins_pair(layout, figure)
        if not joined or pair or (radii and _begins_tube(layout, figure)):
            _share_parts(layout, run)
            run, radii = [], False
        run.append(figure)
        radii = radii or figure.role in RADIUS_ROLES
    _share_parts(layout, run)
    _read_triples(layout)


def _is_behind_items(layout: Layout, run: list[Figure], figure: Figure) -> bool:
    """Whether a figure with a part behind its point stands behind the numbers of items."""
    first = run[0]
    if first.role != "noise" or any(one.number.value % 1 for one in run):
        return False
    begin = max(0, first.start - _WORD)
    said = layout.words(begin, first.start)
    return figure.number.value % 1 != 0 and _ITEMS.search(said) is not None


def join_lines(layout: Layout) -> None:
    """'Tubes:\\n2-1/4\\n2-1/2\\n3' : lines that hold one figure each list the values of one thing.

    ODs, where nothing says otherwise; three lines of unlike size are OD, wall and radius.
    """
    run: list[Figure] = []
    for figure in layout.figures:
        if not is_alone(layout, figure):
            _list_lines(run)
            run = []
            continue
        if run and not (figure.line == run[-1].line + 1 and _alike(layout, run[-1], figure)):
            _list_lines(run)
            run = []
        run.append(figure)
    _list_lines(run)


def _list_lines(run: list[Figure]) -> None:
    if len(run) < 2 or not any(figure.is_measured for figure in run):
        return
    for figure in run:
        figure.give("od", "list")
    for figure in run[1:]:
        figure.link = "list"


def _begins_pair(layout: Layout, figure: Figure) -> bool:
    """'1-1/2 on 4.5 clr and 1-3/4 on 5.25 clr': the 1-3/4 opens the next tube."""
    after = layout.after_in_sentence(figure) if figure.role is None else None
    if after is None or after.role not in RADIUS_ROLES or after.link in LISTED:
        return False
    return any(token.text in _BEFORE_RADIUS for token in layout.between(figure, after))


def _begins_next(layout: Layout, radius: Figure, figure: Figure) -> bool:
    """Whether a figure with its wall behind it opens the next tube, after the radius that the tube
    before stands 'on'."""
    after, before = layout.after_in_sentence(figure), layout.before(radius)
    if after is None or not (after.link == "times" or after.role == "wall" or after.is_gauge):
        return False
    if before is None or before.role != "wall":
        return False
    return radius.role is None and follows_on(layout, radius)


def _begins_tube(layout: Layout, figure: Figure) -> bool:
    """'CLR 3.25, 1.000 in x 14 gauge': what stands before a wall is no second radius."""
    after = layout.after_in_sentence(figure) if figure.role is None else None
    if after is None:
        return False
    before = layout.before(figure)
    if before is not None and after.role == "wall" and _goes_on(layout, before, figure, after):
        return False
    thin = after.number.style == "decimal" and after.number.value * 3 < figure.number.value
    if after.unit == "sch" and after.token - figure.token <= _NEAR_SCHEDULE:
        return True  # "radius of 3.75 in, 1-1/4 sch 10"
    return after.link == "times" or after.role == "wall" or after.is_gauge or thin


def _goes_on(layout: Layout, before: Figure, figure: Figure, wall: Figure) -> bool:
    """'CLR 4.5 and 5.25, wall .065': the wall is of all, and no tube opens before it."""
    if before.role not in RADIUS_ROLES or "," in layout.text[before.end : figure.start]:
        return False
    named = any(cue.role == "wall" for t in layout.between(figure, wall) for cue in t.cues)
    tube = any(
        f.role in _TUBES for f in layout.in_sentence(figure.sentence) if f.end < before.start
    )
    named = named or (tube and wall.how == "cue")
    near = _within(before.number.value, figure.number.value, _NEAR_RADII)
    return named and near and "," in layout.text[figure.end : wall.start]


def _alike(layout: Layout, left: Figure, right: Figure) -> bool:
    """Whether two neighbours of a list can be values of one thing."""
    if left.role in LENGTH_ROLES and right.role in LENGTH_ROLES:
        return left.role == right.role
    if left.is_gauge != right.is_gauge or (left.unit == "D") != (right.unit == "D"):
        return False
    if {left.unit, right.unit} == {"in", "mm"}:
        return False
    return _within(left.number.value, right.number.value, _widest(layout, left, _WIDEST))


def _widest(layout: Layout, figure: Figure, usual: int) -> int:
    """How many times the smaller the larger of a list may be: more, where each has a tube of its
    own, '63.5 mm and 12 mm ..., CLR 160 and 30 respectively'."""
    return _WIDEST_IN_TURN if layout.says(figure.sentence, _IN_TURN) else usual


def _within(a: Decimal, b: Decimal, times: int) -> bool:
    """Whether the larger is at most so many times the smaller."""
    return min(a, b) > 0 and max(a, b) / min(a, b) <= times


def _share_parts(layout: Layout, run: list[Figure]) -> None:
    """'1.25 and 1.5 OD, 4 and 5 CLR' is a list of tubes and one of radii."""
    first = next((at for at, f in enumerate(run) if f.role in RADIUS_ROLES), 0)
    tubes = [at for at, figure in enumerate(run[:first]) if figure.role in _TUBES]
    if tubes and all(f.role is None or f.role in RADIUS_ROLES for f in run[first:]):
        cut = _cut(layout, run, tubes[-1] + 1, first)
        if cut is not None:
            run[cut].link = "apart"
            _share(layout, run[:cut])
            run = run[cut:]
    _share(layout, run)


def _cut(layout: Layout, run: list[Figure], begin: int, end: int) -> int | None:
    """Where the radii begin, of the places from ``begin`` to ``end``: behind the word that names
    the tubes, behind an 'and', or where the figures grow most."""
    places = range(begin, end + 1)
    named = [at for at in places if _is_named_behind(layout, run[at - 1], run[at])]
    joined = [at for at in places if at > 1 and _is_last(layout, run[at - 2], run[at - 1])]
    for told in (named, joined if len(joined) == 1 else []):
        if told:
            return told[0]
    grown = {at: run[at].number.value / run[at - 1].number.value for at in places}
    return max(grown, key=lambda at: grown[at]) if max(grown.values()) > _GROWN else None


def _is_last(layout: Layout, left: Figure, right: Figure) -> bool:
    """Whether an 'and' stands before the right figure: there a list ends."""
    return any(token.text in _AND for token in layout.between(left, right))


def _is_named_behind(layout: Layout, left: Figure, right: Figure) -> bool:
    between = layout.between(left, right)
    return any(cue.role in _TUBES for token in between for cue in token.cues)


def _share(layout: Layout, run: list[Figure]) -> None:
    """The one role that is named in a list goes to all of it; two roles part it."""
    named = next((at for at, figure in enumerate(run) if figure.role in _SHARED), 0)
    if named and _is_named_between(layout, run[named - 1], run[named]):
        run[named].link = "apart"  # "32 mm, R 80": the 32 is no radius
        run = run[named:]
    if len(run) < 2:
        return
    values = [figure.number.value for figure in run]
    roles = {figure.role for figure in run if figure.role in _SHARED}
    if roles == {"radius", "clr"}:
        roles = {"clr"}  # "dies of 4.5, 5 and 6 centerline"
    role = next(iter(roles)) if len(roles) == 1 else None
    strict = role in RADIUS_ROLES or role == "wall"
    open_roles: set[Role | None] = {None, role} if strict else {*_GIVES_WAY, role}
    if role == "clr":
        open_roles.add("radius")
    if role in RADIUS_ROLES and not any(_names_die(layout, figure) for figure in run):
        open_roles.add("die")  # "the dies are 3, 3-3/4 and 4-1/2 CLR"
    if role == "od" and values == sorted(values) and _is_last(layout, run[-2], run[-1]):
        open_roles.add("quantity")  # "Mandrels: 25, 30 and 35 OD"
    alike = role is not None and _within(min(values), max(values), _widest(layout, run[0], 6))
    if alike and all(figure.role in open_roles for figure in run):
        units = {figure.unit for figure in run if figure.unit}
        for figure in run:
            if figure.role != role:
                figure.give(role, "list")
            if figure.unit is None and len(units) == 1:
                figure.unit = next(iter(units))
        return
    for left, right in pairwise(run):
        if left.role is not None and right.role is not None and left.role != right.role:
            right.link = "apart"


def _names_die(layout: Layout, figure: Figure) -> bool:
    """'A 1 in die, 3 in CLR': the die is called by its tube."""
    after = layout.tokens_after(figure, 1)
    return bool(after) and any(cue.role == "die" for cue in after[0].cues)


def _is_named_between(layout: Layout, left: Figure, right: Figure) -> bool:
    """Whether the sign or word that names the right figure stands between the two."""
    if right.how == "sign":
        return right.role in RADIUS_ROLES
    if right.how != "cue" or right.role not in RADIUS_ROLES:
        return False
    return any(
        cue.role in RADIUS_ROLES and cue.side != "after"
        for token in layout.between(left, right)
        for cue in token.cues
    )


def _follows(layout: Layout, left: Figure, right: Figure) -> bool:
    """Whether a figure stands behind a comma, or by itself on the next line."""
    between = layout.between(left, right)
    return right.link == "list" or (len(between) == 1 and between[0].kind == "line")


def _read_triples(layout: Layout) -> None:
    """'1.75, .095, 5.25': OD, wall, radius in the order everybody is asked for them."""
    figures = layout.figures
    for triple in zip(figures, figures[1:], figures[2:], strict=False):
        if not all(_follows(layout, *pair) for pair in pairwise(triple)):
            continue
        if any(figure.role is not None or figure.unit in ("D", "sch") for figure in triple):
            continue
        if triple[0].is_gauge or triple[2].is_gauge:
            continue
        a, b, c = (figure.number.value for figure in triple)
        if a and b / a < Decimal("0.3") and Decimal("0.6") <= c / a <= LONGEST_RATIO:
            for figure, role in zip(triple, _OD_WALL_RADIUS, strict=True):
                set_role(figure, role)
                figure.link = "apart"
