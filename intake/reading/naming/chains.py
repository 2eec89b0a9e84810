"""Roles by position: figures joined by times signs or slashes, as 'OD x wall x CLR', 'OD/ID'."""

from __future__ import annotations

from decimal import Decimal

from ..aside.die_stamps import is_stamped_bend, trust_stamp
from ..numbers.butted import ends_butted, read_butted
from ..text.figures import Figure, Layout
from ..text.patterns import whole_words, word_set
from ..text.roles import LENGTH_ROLES, RADIUS_ROLES
from .chain_heads import header_beside, read_legends
from .chain_parts import (
    RADIUS_OR_LENGTH,
    comparable,
    counts_in_list,
    hear_round,
    read_four,
    read_pair,
    read_triple,
    set_role,
)
from .likeness import same_size
from .place_tests import in_thousandths, is_thin
from .shapes import shape_near

_LARGEST_NPS = 12
_STUFF = word_set(
    "flat bar plate sheet strap washer washers o-ring o-rings gasket hex rebar wire screw screws",
    "bolt bolts",
) | {"flat bar"}
_LEAST_BEND, _LARGEST_BEND = Decimal("1.3"), Decimal(6)
_SECOND_IS_RADIUS = whole_words(
    r"(?:second|2nd|last|other) (?:number|figure|one|dimension|value|digit) (?:\w+ ){0,2}(?:the )?"
    r"(?:\w+ ){0,3}(?:radius|clr)",
    r"(?:tube|pipe|size|od|diameter)(?: size| od| dia(?:meter)?)? ?(?:then|and|by|over|x|/) ?"
    r"(?:the )?(?:clr|cent(?:re|er)[ -]?line(?: rad(?:ius)?)?|cent(?:re|er) rad(?:ius)?)",
    r"zweite (?:zahl|maß|wert|ziffer) (?:\w+ ){0,4}(?:radius|biegeradius)",
    r"(?:deuxième|second) (?:chiffre|nombre) (?:\w+ ){0,4}rayon",
    r"segundo (?:número|dato|valor) (?:\w+ ){0,4}radio",
    r"secondo (?:numero|valore) (?:\w+ ){0,4}raggio",
    r"tweede (?:getal|cijfer|maat) (?:\w+ ){0,4}straal",
)
_DIE_MARKED = whole_words(
    r"(?:dies?|formers?|shoes?) (?:\w+ ){0,3}(?:marked|stamped|says?|reads?|labell?ed)",
    r"(?:dies?|formers?), (?:\w+ ){0,3}(?:marked|stamped|says?|reads?)",
    r"(?:werkzeuge?|biegeformen?|matrizen?) (?:\w+ ){0,3}(?:beschriftet|gestempelt|steht)",
    r"(?:matrices?|galets?|formes?) (?:\w+ ){0,3}(?:marquées?|gravées?)",
    r"(?:matrices?) (?:\w+ ){0,3}(?:marcad[ao]s?) | matrici (?:\w+ ){0,3}(?:marcat[ei])",
    r"(?:mallen) (?:\w+ ){0,3}(?:gemarkeerd|gestempeld)",
)


def assign_by_chain(layout: Layout) -> None:
    """Read every run of figures joined by times signs or slashes."""
    read_legends(layout)
    for chain in _chains(layout):
        header_beside(layout, chain)
        _read_chain(layout, chain)


def _chains(layout: Layout) -> list[list[Figure]]:
    chains: list[list[Figure]] = []
    current: list[Figure] = []
    for figure in layout.figures:
        after = layout.after(figure)
        size = figure.link == "slash" and after is not None and after.link == "times"
        if size and not ends_butted(layout, figure):
            figure.link = "apart"  # "20x1,5 / 25x1,5": a slash between two whole sizes
        if figure.link in ("times", "slash") and current:
            current.append(figure)
        elif (
            figure.unit != "D"
            and figure.link == "restate"
            and current
            and same_size(current[-1], figure)
        ):
            figure.notes.append("same")  # '2" (50.8 mm) x .065': the bracket repeats the OD
            if figure.role is None:
                figure.give(current[-1].role, "same")
            elif current[-1].role is None:
                current[-1].give(figure.role, "same")
        else:
            chains.append(current)
            current = [figure]
    return [chain for chain in (*chains, current) if len(chain) > 1]


def _read_chain(layout: Layout, chain: list[Figure]) -> None:
    sizes = [figure for figure in chain if not counts_in_list(chain, figure)]
    if 1 < len(sizes) < len(chain):
        _read_chain(layout, sizes)
        return
    if any(figure.role == "noise" for figure in chain):
        _read_beside_noise(layout, chain)
        return
    if read_butted(layout, chain) or _lacks_first(layout, chain):
        return
    _drop_prepositions(chain)
    _size_of_tube(chain)
    _share_unit_of_last(chain)
    if _read_sides(layout, chain):
        return
    material = any(token.kind == "material" for token in layout.between(chain[0], chain[1]))
    slashes = not material and all(figure.link == "slash" for figure in chain[1:])
    if slashes and _are_alternatives(chain):
        for figure in chain[1:]:
            radii = figure.role in RADIUS_ROLES or chain[0].role in RADIUS_ROLES
            figure.link = "list" if len(chain) > 2 or radii else "or"
        return
    if not any(_is_open(figure) for figure in chain):
        return
    if len(chain) == 2:
        if not (_read_die_pair(layout, chain) or _read_radius_behind(layout, *chain)):
            read_pair(chain)
            hear_round(layout, chain)
            trust_stamp(layout, *chain)
    elif len(chain) == 3:
        read_triple(layout, chain)
    else:
        read_four(layout, chain)


def _read_die_pair(layout: Layout, chain: list[Figure]) -> bool:
    """'The dies say 1 x 3, 1-1/2 x 4-1/2 (the second number is the radius)': a bend die is marked
    with its tube and its radius."""
    first, second = chain
    a, b = comparable(first, chain), comparable(second, chain)
    if (
        not a
        or not _LEAST_BEND <= b / a <= _LARGEST_BEND
        or first.role not in (None, "die", "label")
    ):
        return False
    if second.role is not None or first.unit != second.unit:
        return False
    told = any(layout.says(first.sentence + n, _SECOND_IS_RADIUS) for n in (-1, 0, 1))
    if not told and not layout.says(first.sentence, _DIE_MARKED):
        return False
    first.give("od", "chain")
    second.give("clr", "header" if told else "chain")
    if not told and not is_stamped_bend(layout, first, b / a):
        second.notes.append(RADIUS_OR_LENGTH)
    return True


def _read_radius_behind(layout: Layout, first: Figure, second: Figure) -> bool:
    """'.065 wall 1.5 OD x 4.5': words name OD and wall, and the third is the radius."""
    before = layout.before(first)
    if before is None or before.line != first.line or second.role is not None:
        return False
    tubes = [f for f in (before, first) if f.role in ("od", "label") and f.how == "cue"]
    if len(tubes) != 1 or "wall" not in (before.role, first.role):
        return False
    od = tubes[0]
    near = od.number.value < second.number.value <= od.number.value * _LARGEST_BEND
    if not near or second.unit not in (None, od.unit):
        return False
    second.give("radius", "chain")
    return True


def _is_open(figure: Figure) -> bool:
    """Whether its place in the chain may still say what a figure is."""
    weak = figure.role == "od" and figure.how == "place"
    return weak or figure.role in (None, "label", "die", "quantity")


def _lacks_first(layout: Layout, chain: list[Figure]) -> bool:
    """'Tube x .065 x 5.25': a times sign with nothing before it; the OD is not given."""
    before = layout.tokens[chain[0].token - 1] if chain[0].token else None
    if before is None or before.text not in ("x", "×", "*") or len(chain) > 2:
        return False
    if chain[0].number.value > chain[-1].number.value:
        return False  # "x 38.1 x 1.6": a mark before a line; no wall is more than its radius
    ahead = layout.text[layout.text.rfind("\n", 0, before.start) + 1 : before.start]
    if before.text == "*" and not is_thin(chain[0]) and not ahead.strip(" \t>-"):
        return False
    counted = layout.before(chain[0])
    if counted is not None and counted.how == "count" and counted.line == chain[0].line:
        return False  # "2x 42,4x2"
    set_role(chain[0], "wall")
    set_role(chain[-1], "radius")
    return True


def _size_of_tube(chain: list[Figure]) -> None:
    """'Pipe size 32 * 2': what is multiplied by a wall is measured in mm, not called so."""
    first, second = chain[:2]
    if first.role == "nps" and second.unit != "sch" and first.number.value > _LARGEST_NPS:
        first.give("od", "chain")


def _drop_prepositions(chain: list[Figure]) -> None:
    """'30mm x 2 in 25CrMo4': beside millimetres the "in" is no inch."""
    if any(figure.unit == "mm" for figure in chain):
        for figure in chain:
            if figure.weak_unit:
                figure.unit, figure.weak_unit = None, False


def _share_unit_of_last(chain: list[Figure]) -> None:
    """'28 x 1.5 mm': the unit at the end is for the whole chain."""
    unit = chain[-1].unit
    if chain[-1].weak_unit or unit not in ("mm", "in"):
        return
    if any(figure.unit is not None for figure in chain[:-1]):
        return
    if unit == "mm" and max(figure.number.value for figure in chain) < 4:
        return  # "1.5 x 1.6 mm": an inch OD with a metric wall
    for figure in chain[:-1]:
        if unit == "mm" or not in_thousandths(figure):
            figure.unit = unit


def _read_sides(layout: Layout, chain: list[Figure]) -> bool:
    """'40 x 20 rectangular': two sides, if the cross-section is named near them."""
    if len(chain) != 2 or chain[1].unit in ("ga", "sch", "D"):
        return False
    named = shape_near(layout.text, chain[0].start, chain[-1].end)
    a, b = comparable(chain[0], chain), comparable(chain[1], chain)
    if named is None or not a or b / a <= Decimal("0.3"):
        return False
    for figure in chain:
        figure.role, figure.shape = "side", named
    return True


def _read_beside_noise(layout: Layout, chain: list[Figure]) -> None:
    """'1 in OD x 36 ft': what is left of the chain is read without the length."""
    rest = [figure for figure in chain if figure.role != "noise"]
    first, last = chain[0], chain[-1]
    other_thing = last.role == "noise" and last.how == "cue" and _is_other_stuff(layout, last)
    if other_thing or (first.role == "noise" and first.how != "unit"):
        for figure in rest:  # "1/4 x 1 flat bar", "o-ring (.984 x .139)"
            figure.role = "noise"
    elif len(rest) == 2:
        read_pair(rest)
    elif len(rest) == 1 and rest[0].role in (None, "label"):
        set_role(rest[0], "od")


def _is_other_stuff(layout: Layout, figure: Figure) -> bool:
    """Whether the word after a figure names something that is no tube."""
    after = layout.tokens[figure.token + 1 : figure.token + 2]
    return bool(after) and after[0].text in _STUFF


def _are_alternatives(chain: list[Figure]) -> bool:
    """'R50/R75', '.065/.083 wall': two values of one role, not OD over wall."""
    first, second = chain[:2]
    values = [figure.number.value for figure in chain]
    if len(chain) > 2:
        named = {figure.role for figure in chain} - {None}
        return min(values) > 0 and max(values) / min(values) <= 3 and len(named) == 1
    if first.role == second.role == "od" and Decimal("0.7") < values[1] / values[0] < 1:
        second.role = "id"  # "Ø38/Ø34"
        return False
    if first.role in LENGTH_ROLES and first.role == second.role:
        return True
    if first.role is None and second.role in ("wall", "clr", "radius"):
        ratio = values[1] / values[0] if values[0] else Decimal(0)
        return Decimal("0.5") < ratio < 3 and first.number.style == second.number.style
    return False
