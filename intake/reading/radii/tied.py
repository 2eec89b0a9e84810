"""A radius or wall said later for one of several tubes: 'the 1.5 is on a 4.5 CLR, the 2 on a 6',
'hoop die 6 CLR, brace die 4 CLR' behind 'hoops are 1.5 x .095, braces 1.25 x .083'."""

from __future__ import annotations

from ..sizes.groups import Group, slot_of
from ..text.figures import LISTED, Figure, Layout
from ..text.patterns import word_set
from ..text.roles import RADIUS_ROLES, Role
from ..text.tokens import Token
from .tied_first import find_first_ties
from .tied_items import find_item_ties
from .tied_onward import find_onward
from .tied_pairs import find_pairs
from .tied_picked import picked_before
from .tied_ranks import find_rank_ties

Ties = list[tuple[Figure, Figure]]
"""A radius or a wall, and the OD that it goes with."""

_LINKING = word_set(
    "is are : = - on at gets takes uses with has of goes go sits runs ist sind bekommt mit auf est"
)
_LINKING |= word_set(
    "sont sur avec à es son con en è sono su met op zijn a an the in inch geht kommt va pasa gaat"
)
_HAS = word_set("er hat tiene heeft ha runs wants needs un una une een ein einen")
_ARTICLES = word_set("the our my a an der die das den dem le la les el los il lo i de het un une")
_FOR = word_set("for on pour für per para voor bei sur")
_IS = word_set("is takes gets uses ist bekommt est es è krijgt")
_NO_NAMES = word_set(
    """and or but with for the mandrel mandrels tooling tool need want quote price have run bend
    both all each same one ones two three that this it them these those also then please size
    sizes tube tubes tubing pipe od wall radius die dies centerline centreline centre center
    inside outside und oder mit für dorn dorne rohr bitte alle beide et ou avec pour mandrin
    tous y o con para mandril e per mandrino tutti en of met voor doorn first second other new
    old qty pcs is are on at our my your we i you they he she was were be been not no x by in mm
    inch inches steel stainless aluminum aluminium dom erw hrew standard min max about approx
    around only just"""
)
_MAY_BE_NAMES: frozenset[Role] = frozenset({"label", "noise", "bend_dia"})
_SHORTEST = 3
_REACH = 4
"""Tokens between a name and the figure or word that it belongs to."""


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
        find_first_ties(layout, listed)
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
    near = layout.tokens_before(figure, _REACH) + layout.tokens_after(figure, _REACH)
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
    return bool(before) and before[0].text in _ARTICLES | _FOR


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
    plain = all(token.text in _LINKING | _HAS or token.cues for token in between)
    return bool(between) and plain and roles <= RADIUS_ROLES


def _radius_before(layout: Layout, pointer: Figure) -> Figure | None:
    """'4.5 CLR for the 1.5'"""
    radius = layout.before(pointer)
    if radius is None or radius.sentence != pointer.sentence or not _is_radius(radius):
        return None
    words = [t.text for t in layout.between(radius, pointer) if t.kind not in ("cue", "gap")]
    said = bool(words) and words[0] in _FOR and set(words) <= _FOR | _ARTICLES
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
        meant = [tube for tube, own in called if own & names and tube.index < figure.index]
        if len(meant) == 1 and not _has_own(layout, meant[0], tubes, figure, ties):
            figure.role = role
            ties.append((figure, meant[0]))
    return ties


def _radius_role(layout: Layout, figure: Figure, ties: Ties) -> Role | None:
    """The role of a radius, or of a bare figure that is one: 'Radius Holm 100', '85 for the
    handrail and 120 for the posts'."""
    if _is_radius(figure):
        return figure.role
    if figure.role is not None or not figure.is_measure:
        return None
    for token in words_back(layout, figure.token - 1)[:_REACH]:
        cue = next((cue for cue in token.cues if cue.side != "after"), None)
        if cue is not None and cue.role in RADIUS_ROLES:
            return cue.role
    last = ties[-1][0] if ties else None
    goes_on = last is not None and last.index == figure.index - 1
    return last.role if goes_on and last is not None and last.sentence == figure.sentence else None


def names_of(layout: Layout, tube: Figure) -> frozenset[str]:
    """What a tube is called right before it, 'main hoop is', or right behind its figures."""
    begin = tube.token - 1
    names = _last_name(words_back(layout, begin))
    end = tube
    after = layout.after(end)
    while (
        after is not None and after.sentence == tube.sentence and after.role in ("wall", "schedule")
    ):
        end, after = after, layout.after(after)
    return names | _next_name(layout, end.token + 1)


def names_at(layout: Layout, at: int) -> frozenset[str]:
    """What a token is said to belong to: 'the hoop die is 6', '85 for the handrail'."""
    return _last_name(words_back(layout, at - 1)) | _next_name(layout, at + 1)


def words_back(layout: Layout, at: int) -> list[Token]:
    """The tokens before a place, back to a figure or the end of a clause."""
    found: list[Token] = []
    while at >= 0 and layout.tokens[at].kind not in ("number", "line", "para", "block"):
        if layout.tokens[at].text in (",", ";", ".", "!", "?", ")"):
            break
        found.append(layout.tokens[at])
        at -= 1
    return found


def _last_name(back: list[Token]) -> frozenset[str]:
    """The name that ends a clause, over 'is', 'die', 'radius'; the tokens come last first."""
    for token in back[: _REACH + 1]:
        if _is_passed(token) or token.text in _LINKING:
            continue
        return _name(token)
    return frozenset()


def _is_passed(token: Token) -> bool:
    """Whether a token says what a figure is: 'radius', 'die'; a 'handrail' is a name."""
    roles = {cue.role for cue in token.cues}
    return bool(roles) and (not roles <= _MAY_BE_NAMES or token.text in _NO_NAMES)


def _next_name(layout: Layout, at: int) -> frozenset[str]:
    """The name behind figures: '1.5 x .065 for the hoop', '1.5 x .065 hoops'."""
    for token in layout.tokens[at : at + _REACH]:
        if (
            _is_passed(token)
            or token.kind == "material"
            or token.text in _FOR
            or token.text in _ARTICLES
        ):
            continue
        return _name(token)
    return frozenset()


def _name(token: Token) -> frozenset[str]:
    word = token.text
    if (
        token.kind not in ("word", "cue")
        or len(word) < _SHORTEST
        or word in _NO_NAMES
        or not word.isalpha()
    ):
        return frozenset()
    return frozenset((word[:-1] if word.endswith("s") else word,))
