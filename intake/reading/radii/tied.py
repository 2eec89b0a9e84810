"""A radius or wall said later for one of several tubes: 'the 1.5 is on a 4.5 CLR, the 2 on a 6',
'hoop die 6 CLR, brace die 4 CLR' behind 'hoops are 1.5 x .095, braces 1.25 x .083'."""

from __future__ import annotations

from ..sizes.groups import Group, slot_of
from ..text.figures import LISTED, Figure, Layout
from ..text.patterns import word_set
from ..text.roles import RADIUS_ROLES, Role
from .tied_clauses import find_clause_ties
from .tied_first import find_first_ties
from .tied_items import find_item_ties
from .tied_names import ARTICLES, FOR, LINKING, REACH, called_most, names_at, names_of, words_back
from .tied_onward import find_onward
from .tied_pairs import find_pairs
from .tied_picked import picked_before
from .tied_ranks import find_rank_ties

Ties = list[tuple[Figure, Figure]]
"""A radius or a wall, and the OD that it goes with."""

_HAS = word_set("er hat tiene heeft ha runs wants needs un una une een ein einen")
_IS = word_set("is takes gets uses ist bekommt est es è krijgt")

_MOST_TUBES = 60
"""Of longer lists nobody says in prose which radius is whose."""


def find_ties(layout: Layout) -> Ties:
    """Radii and walls that later words give to one of several tubes, with its OD.

    An OD that is only said again to point there measures nothing from then on.
    """
    tubes = [f for f in layout.figures if f.role == "od" and f.is_measure and f.row is None]
    if len(tubes) > _MOST_TUBES or len({(f.number.value, f.unit) for f in tubes}) < 2:
        return []
    listed = _told_before_radii(layout, tubes)
    ties = (
        find_clause_ties(layout, listed)
        or find_first_ties(layout, listed)
        or find_pairs(layout, tubes)
        or find_onward(layout, tubes)
        or find_rank_ties(layout, tubes)
        or _by_value(layout, tubes)
        or _by_name(layout, tubes)
        or find_item_ties(layout, listed)
    )
    for figure in tubes[1:]:
        again = any(_same(tube, figure) and tube.index < figure.index for tube in tubes)
        if again and figure.role == "od" and _names_material(layout, figure):
            figure.give("noise", "same")
    return ties


def _told_before_radii(layout: Layout, tubes: list[Figure]) -> list[Figure]:
    """The tubes before a sentence that has radii and no tube: 'the first' and 'the last' in it are
    of these, whatever is told of behind."""
    named = {tube.sentence for tube in tubes}
    for figure in layout.figures[tubes[1].index :]:
        if _is_radius(figure) and figure.sentence not in named:
            before = [tube for tube in tubes if tube.index < figure.index]
            return before if len(before) > 1 else tubes
    return tubes


def _names_material(layout: Layout, figure: Figure) -> bool:
    """'304 for the 1.5', 'das 38er ist 1.4301': an OD said again, with nothing but a material."""
    near = layout.tokens_before(figure, REACH) + layout.tokens_after(figure, REACH)
    after, before = layout.after(figure), layout.before(figure)
    whole = after is not None and (after.link == "times" or after.is_gauge or after.role == "wall")
    held = [f for f in (before, after) if f is not None and f.sentence == figure.sentence]
    if whole and after in held:
        return False
    alone = not any(slot_of(f) in ("wall", "clr") for f in held)
    return alone and any(token.kind == "material" for token in near)


def tie(groups: list[Group], ties: Ties) -> None:
    """Give each size what was said for it by name; nothing of it is shared with others."""
    for figure, tube in ties:
        slot = slot_of(figure)
        if slot is None:
            continue
        for group in groups:
            if tube in group.slots.get("od", []):
                group.slots[slot] = [figure]
                group.shared.discard(slot)


# --- by value ----------------------------------------------------------------------------------


def _by_value(layout: Layout, tubes: list[Figure]) -> Ties:
    """'Für das 28er R 56, für das 35er R 70', '4.5 CLR for the 1.5': each OD said again with
    nothing but a radius."""
    pointers = [
        figure
        for figure in layout.figures[tubes[0].index + 1 :]
        if (
            (figure.role == "od" and figure.is_measure)
            or (_is_bare(figure) and figure.is_measure and _is_pointed_at(layout, figure))
            or _leads_to_radius(layout, figure)
        )
        and any(_same(tube, figure) and tube.index < figure.index for tube in tubes)
    ]
    ties: Ties = []
    for pointer in pointers:
        first = next(tube for tube in tubes if _same(tube, pointer))
        radius = _radius_before(layout, pointer) or _radius_behind(layout, pointer)
        if radius is None or any(radius is taken for taken, _ in ties):
            continue
        if not _has_own(layout, first, [*tubes, *pointers], radius, ties):
            ties.append((radius, first))
            pointer.give("noise", "same")
    return ties


def _same(a: Figure, b: Figure) -> bool:
    return a.number.value == b.number.value and (a.unit or b.unit) == (b.unit or a.unit)


def _is_bare(figure: Figure) -> bool:
    """Whether nothing but a list has said what a figure is."""
    return figure.role is None or figure.how == "list"


def _is_pointed_at(layout: Layout, figure: Figure) -> bool:
    """'the 1.5 is', 'for the 2', '1.75 is 5.5 clr'"""
    before, after = layout.tokens_before(figure, 1), layout.tokens_after(figure, 1)
    if after and after[0].text in _IS:
        return True
    return bool(before) and before[0].text in ARTICLES | FOR


def _leads_to_radius(layout: Layout, figure: Figure) -> bool:
    """'1.75 is 5.5 clr and 1.5 is 4.5', '42er Radius 84': what stands there in place of a name is
    no radius, though a word or a list has made it one."""
    radius = layout.after_in_sentence(figure)
    if radius is None or not _is_radius(radius) or radius.link in (*LISTED, "times", "slash"):
        return False
    repeats = figure.role == "noise" and figure.how == "same" and not figure.points
    if not (_is_bare(figure) or figure.role == "radius" or repeats):
        return False
    if figure.row is not None or figure.negated:
        return False
    between = [token for token in layout.between(figure, radius) if token.kind != "gap"]
    roles = {cue.role for token in between for cue in token.cues}
    plain = all(token.text in LINKING | _HAS or token.cues for token in between)
    return bool(between) and plain and roles <= RADIUS_ROLES


def _radius_before(layout: Layout, pointer: Figure) -> Figure | None:
    """'4.5 CLR for the 1.5'"""
    radius = layout.before(pointer)
    if radius is None or radius.sentence != pointer.sentence or not _is_radius(radius):
        return None
    words = [t.text for t in layout.between(radius, pointer) if t.kind not in ("cue", "gap")]
    said = bool(words) and words[0] in FOR and set(words) <= FOR | ARTICLES
    return radius if said else None


def _radius_behind(layout: Layout, tube: Figure) -> Figure | None:
    """The radius that follows an OD in its sentence, if no wall does."""
    radius = layout.after_in_sentence(tube)
    if radius is None or not _is_radius(radius) or radius.link == "times":
        return None
    after = layout.after_in_sentence(radius)
    return None if after is not None and after.role in ("wall", "schedule") else radius


def _is_radius(figure: Figure) -> bool:
    return (figure.role in RADIUS_ROLES or figure.role == "times_d") and figure.is_measure


def _has_own(layout: Layout, tube: Figure, tubes: list[Figure], radius: Figure, ties: Ties) -> bool:
    """Whether a tube got a radius of its own where it was first named."""
    tied = {figure.index for figure, _ in ties}
    nearest = min((f.index for f in tubes if f.index > tube.index), default=radius.index)
    end = min(nearest, radius.index)
    behind = layout.figures[tube.index + 1 : end]
    return any(_is_radius(figure) and figure.index not in tied for figure in behind)


# --- by name -----------------------------------------------------------------------------------


def _by_name(layout: Layout, tubes: list[Figure]) -> Ties:
    """'Handrail 42.4 x 2, posts 48.3 x 2.5. Handrail radius 85, post radius 120.'"""
    called = [(tube, names_of(layout, tube)) for tube in tubes]
    ties: Ties = []
    for figure in layout.figures[tubes[1].index + 1 :]:
        role = _radius_role(layout, figure, ties)
        if role is None or figure.row is not None:
            continue
        names = names_at(layout, figure.token) | picked_before(layout, figure)
        before = [(tube, own) for tube, own in called if tube.index < figure.index]
        at = called_most([own for _, own in before], names)
        if at is not None and not _has_own(layout, before[at][0], tubes, figure, ties):
            figure.role = role
            ties.append((figure, before[at][0]))
    return ties


def _radius_role(layout: Layout, figure: Figure, ties: Ties) -> Role | None:
    """The role of a radius, or of a bare figure that is one: 'Radius Holm 100', '85 for the
    handrail and 120 for the posts'."""
    if _is_radius(figure):
        return figure.role
    if figure.role is not None or not figure.is_measure:
        return None
    for token in words_back(layout, figure.token - 1)[:REACH]:
        cue = next((cue for cue in token.cues if cue.side != "after"), None)
        if cue is not None and cue.role in RADIUS_ROLES:
            return cue.role
    last = ties[-1][0] if ties else None
    goes_on = last is not None and last.index == figure.index - 1
    return last.role if goes_on and last is not None and last.sentence == figure.sentence else None
