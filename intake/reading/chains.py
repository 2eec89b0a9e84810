"""Roles by position: 'OD x wall x CLR', 'OD/ID', 'A x B x wall', lists that share one role."""

from __future__ import annotations

from decimal import Decimal

from .figures import Figure, Layout, shape_named
from .roles import LENGTH_ROLES, RADIUS_ROLES

_LONGEST_RATIO = Decimal(10)
"""A third figure more than 10 x OD is a cut length, not a radius (house rule)."""


def assign_by_chain(layout: Layout) -> None:
    """Read every run of figures joined by times signs or slashes."""
    for number, chain in enumerate(_chains(layout)):
        for figure in chain:
            figure.chain = number
        _header_before(layout, chain)
        _read_chain(layout, chain)


def _chains(layout: Layout) -> list[list[Figure]]:
    chains: list[list[Figure]] = []
    current: list[Figure] = []
    for position, figure in enumerate(layout.figures):
        following = layout.figures[position + 1].link if position + 1 < len(layout.figures) else ""
        if figure.link == "slash" and following == "times":
            figure.link = "apart"  # "20x1,5 / 25x1,5": a slash between two whole sizes
        if figure.link in ("times", "slash") and current:
            current.append(figure)
        elif figure.link == "restate" and current and same_size(current[-1], figure):
            figure.notes.append("same")  # '2" (50.8 mm) x .065': the bracket repeats the OD
            if figure.role is None:
                figure.role, figure.how = current[-1].role, "same"
            elif current[-1].role is None:
                current[-1].role, current[-1].how = figure.role, "same"
            continue
        else:
            if len(current) > 1:
                chains.append(current)
            current = [figure]
    if len(current) > 1:
        chains.append(current)
    return chains


def _header_before(layout: Layout, chain: list[Figure]) -> None:
    """'OD x wall x CLR: 38 x 1.5 x 57': as many cues as figures, directly before or after."""
    after = chain[-1].token + 1
    bracket = after < len(layout.tokens) and layout.tokens[after].text == "("
    for step, begin in ((-1, chain[0].token - 1), (1, after))[: 2 if bracket else 1]:
        roles: list[str] = []
        at = begin
        while 0 <= at < len(layout.tokens):
            token = layout.tokens[at]
            if token.kind == "cue" and token.cues[0].role in LENGTH_ROLES:
                roles.append(token.cues[0].role)
            elif (token.text == ")" and step > 0) or (token.kind not in ("times", "punct", "gap", "line") and token.text not in (
                "x",
                "is",
                "are",
                "by",
            )):
                break
            at += step
        if step < 0:
            roles.reverse()
        sign = layout.tokens[chain[0].token].cues
        if step < 0 and sign and sign[0].role in LENGTH_ROLES:
            roles.append(sign[0].role)  # the last label clings to the first figure: "CLR = 1.5 x"
        if len(roles) == len(chain) and len(set(roles)) == len(roles):
            for figure, role in zip(chain, roles, strict=True):
                figure.role, figure.how = role, "header"
            return


def _read_chain(layout: Layout, chain: list[Figure]) -> None:
    sizes = [f for f in chain if f.role != "noise"]
    if len(sizes) < 2 or len(sizes) < len(chain):
        _with_noise(layout, chain)
        return
    _unit_of_tail(chain)
    named = _shape_near(layout, chain)
    if named is not None and len(chain) == 2 and chain[1].unit not in ("ga", "sch", "D"):
        a, b = _comparable(chain[0], chain), _comparable(chain[1], chain)
        if a and b / a > Decimal("0.3"):
            for figure in chain:
                figure.role, figure.shape = "side", named
            return
    if all(figure.link == "slash" for figure in chain[1:]) and _alternatives(chain):
        for figure in chain[1:]:
            radii = figure.role in RADIUS_ROLES or chain[0].role in RADIUS_ROLES
            figure.link = "list" if len(chain) > 2 or radii else "or"
        return
    free = [
        f for f in chain if f.role in (None, "label", "die", "quantity") or _is_weak_diameter(f)
    ]
    if not free:
        return
    if len(chain) == 2:
        _pair(chain)
    elif len(chain) == 3:
        _triple(layout, chain)
    else:
        _four(layout, chain)


def _unit_of_tail(chain: list[Figure]) -> None:
    """'28 x 1.5 mm': the unit at the end is for the whole chain."""
    unit = chain[-1].unit
    if chain[-1].weak_unit or unit not in ("mm", "in") or any(figure.unit is not None for figure in chain[:-1]):
        return
    largest = max(figure.number.value for figure in chain)
    if unit == "mm" and largest < 4:
        return  # "1.5 x 1.6 mm": an inch OD with a metric wall
    for figure in chain[:-1]:
        figure.unit = unit


def _shape_near(layout: Layout, chain: list[Figure]) -> str | None:
    """A cross-section named a few words before or after the chain."""
    text = layout.text[max(0, chain[0].start - 40) : chain[-1].end + 30]
    return shape_named(text.casefold())


def _is_weak_diameter(figure: Figure) -> bool:
    return False if figure.role != "od" else figure.how == "place"


def _with_noise(layout: Layout, chain: list[Figure]) -> None:
    """'1 in OD x 36 ft': what is left of the chain is read without the length."""
    rest = [f for f in chain if f.role != "noise"]
    if chain[-1].role == "noise" and chain[-1].how == "cue" and _is_other_stuff(layout, chain[-1]):
        for figure in rest:  # "1/4 x 1 flat bar"
            figure.role = "noise"
        return
    if chain[0].role == "noise" and chain[0].how != "unit":
        for figure in rest:  # "o-ring (.984 x .139)", "flat bar 60 x 8"
            figure.role = "noise"
    elif len(rest) == 2:
        _pair(rest)
    elif len(rest) == 1 and rest[0].role in (None, "label"):
        _set(rest[0], "od")


_STUFF = frozenset(
    "flat bar,flat,bar,plate,sheet,strap,washer,washers,o-ring,o-rings,gasket,hex,rebar,wire,screw,screws,bolt,bolts".split(",")
)


def _is_other_stuff(layout: Layout, figure: Figure) -> bool:
    """Whether the word after a figure names something that is no tube."""
    after = layout.tokens[figure.token + 1 : figure.token + 2]
    return bool(after) and after[0].text in _STUFF


def _alternatives(chain: list[Figure]) -> bool:
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
        ratio = second.number.value / first.number.value if first.number.value else Decimal(0)
        return Decimal("0.5") < ratio < 3 and first.number.style == second.number.style
    return False


def _set(figure: Figure, role: str) -> None:
    if figure.role is None or figure.role in ("label", "die", "quantity"):
        figure.role, figure.how = role, "chain"


def _comparable(figure: Figure, others: list[Figure]) -> Decimal:
    """A value in inches where any unit is known, else as written; gauges count as thin walls."""
    if figure.unit in ("ga", "bwg", "swg", "sch"):
        return Decimal("0.001")
    unit = figure.unit
    if unit is None:
        tails = [other.unit for other in others if other.unit in ("in", "mm", "cm")]
        # An inch mark on the OD says nothing about a wall written ".065" or "1.6" after it.
        unit = tails[-1] if tails else None
        if (
            unit == "mm"
            and figure.number.value < Decimal("0.35")
            and figure.number.style == "decimal"
        ):
            unit = None
    value = figure.number.value
    mixed = any(other.unit == "in" for other in others)
    if unit == "mm" and mixed:
        return value / Decimal("25.4")
    if unit == "cm":
        return value * (Decimal("0.3937") if mixed else 10)
    return value


def _pair(chain: list[Figure]) -> None:
    first, second = chain
    if second.unit == "D":
        _set(first, "od")
        second.role = "times_d"
        return
    if first.role in LENGTH_ROLES and second.role in LENGTH_ROLES:
        return
    if second.unit in ("ga", "bwg", "swg") or first.unit in ("ga", "bwg", "swg"):
        _set(first, "wall" if first.unit in ("ga", "bwg", "swg") else "od")
        _set(second, "wall" if second.unit in ("ga", "bwg", "swg") else "od")
        return
    if second.unit == "sch":
        if first.role is None or first.role in ("od", "label"):
            first.role, first.how = "nps", "chain"
        return
    a, b = _comparable(first, chain), _comparable(second, chain)
    if first.role in LENGTH_ROLES or second.role in LENGTH_ROLES:
        _complete(first, second, a, b)
    elif a and b / a < Decimal("0.5"):
        _set(first, "od")
        _set(second, "wall")
    elif a and b / a > 2:
        _small_first(first, second, a, b)
    elif first.link in ("slash",) or second.link == "slash":
        _set(first, "od" if a >= b else "id")
        _set(second, "id" if a >= b else "od")
    elif a == b:
        _square(chain)
    else:
        _near(first, second, a, b)


def _complete(first: Figure, second: Figure, a: Decimal, b: Decimal) -> None:
    """One of the two has its role from a cue: the other follows."""
    known, other = (first, second) if first.role in LENGTH_ROLES else (second, first)
    small = (b / a if a else Decimal(0)) if known is first else (a / b if b else Decimal(0))
    if known.role == "od":
        if small < Decimal("0.5"):
            _set(other, "wall")
        elif small <= 1:
            _set(other, "id" if other.link == "slash" or first.link == "slash" else "wall")
        elif other is second and small <= _LONGEST_RATIO:
            _set(other, "noise")
    elif known.role in ("wall", "id"):
        _set(other, "od")
    elif known.role in RADIUS_ROLES:
        # "6.00 CLR x 90": what follows a radius is the angle, not a tube.
        _set(other, "noise" if other is second and other.number.value >= 15 else "od")


def _small_first(first: Figure, second: Figure, a: Decimal, b: Decimal) -> None:
    """'.065 x 1.5' is wall first; '1.5 x 24' is OD and a cut length; '1.75 x 5.25' OD and CLR."""
    inches = first.unit == "in" or (
        first.unit is None and (a < Decimal("0.35") or first.number.style in ("fraction", "mixed"))
    )
    thin = (
        a < Decimal("0.3")
        if inches and not (first.unit is None and first.number.style == "integer")
        else a <= 8
    )
    if inches and first.number.style == "fraction" and a >= Decimal("0.1875"):
        thin = False
    if thin and (b >= 8 or inches):
        _set(first, "wall")
        _set(second, "od")
        return
    _set(first, "od")
    if second.role is None:
        if b / a <= 8 and second.unit == first.unit and second.number.style != "integer":
            _set(second, "radius")
            second.notes.append("the second figure may be the radius or a length")
        else:
            _set(second, "noise")


def _square(chain: list[Figure]) -> None:
    for figure in chain:
        figure.shape = "square"
        _set(figure, "side")


def _near(first: Figure, second: Figure, a: Decimal, b: Decimal) -> None:
    """'12 x 14' is a bore and an OD; '22 x 15' may have lost a decimal comma."""
    if b > a:
        _set(first, "id")
        _set(second, "od")
        second.notes.append("bore and OD, or the two sides of a rectangle")
        return
    _set(first, "od")
    _set(second, "wall")
    second.notes.append("lost decimal")


def _triple(layout: Layout, chain: list[Figure]) -> None:
    first, second, third = chain
    a, b, c = (_comparable(figure, chain) for figure in chain)
    named = [f.role for f in chain]
    if third.unit == "D":
        third.role = "times_d"
        _pair(chain[:2])
        return
    if third.role in RADIUS_ROLES or third.role == "noise":
        _pair(chain[:2])
        return
    if {"od", "id", "wall"} == set(named):
        return
    if (
        "id" not in named
        and c
        and a
        and b / a >= Decimal("0.4")
        and c / b < Decimal("0.5")
        and "od" not in named[1:]
    ):
        if b < a and abs((a - b) / 2 - c) <= c * Decimal("0.12") and a != b:
            for figure, role in zip(chain, ("od", "id", "wall"), strict=True):
                _set(figure, role)
            return
        for figure in (first, second):
            if figure.role in (None, "od", "label", "die"):
                figure.role, figure.shape = "side", "square" if a == b else "rectangular"
        if _shape_near(layout, chain) == "other":
            for figure in (first, second):
                figure.shape = "other"
        _set(third, "wall")
        return
    _pair(chain[:2])
    if third.role is not None:
        return
    od = a if first.role in ("od", "nps") else b
    if third.unit in ("ga", "bwg", "swg"):
        _set(third, "wall")
    elif (
        od
        and c / od <= _LONGEST_RATIO
        and c / od > Decimal("0.5")
        and not _length_follows(layout, third)
    ):
        _set(third, "clr")
        if c / od > 6:
            third.notes.append("the third figure may be the radius or a length")
    else:
        _set(third, "noise")


def _length_follows(layout: Layout, figure: Figure) -> bool:
    following = layout.tokens[figure.token + 1 : figure.token + 3]
    return any(
        t.text in ("long", "lg", "length", "pieces", "lang", "longueur", "tall") for t in following
    )


def _four(layout: Layout, chain: list[Figure]) -> None:
    a, b, c = (_comparable(figure, chain) for figure in chain[:3])
    if a and b / a >= Decimal("0.4") and c < b / 2 and chain[0].role is None:
        for figure in chain[:2]:
            figure.role, figure.shape = "side", "square" if a == b else "rectangular"
        _set(chain[2], "wall")
        _set(chain[3], "radius")
        return
    _triple(layout, chain[:3])
    for figure in chain[3:]:
        _set(figure, "noise")


def same_size(left: Figure, right: Figure) -> bool:
    """Whether two figures may be one length in two spellings (within 1.5 %, inch or mm)."""
    a, b = left.number.value, right.number.value
    gauges = ("ga", "bwg", "swg")
    if left.unit in gauges or right.unit in gauges:
        plain = right if left.unit in gauges else left
        return left.unit != right.unit and plain.number.value < (12 if plain.unit == "mm" else 1)
    if not a or not b:
        return False
    for scale in (Decimal(1), Decimal("25.4"), 1 / Decimal("25.4")):
        if abs(a * scale - b) <= b * Decimal("0.015"):
            return True
    return False


def share_lists(layout: Layout) -> None:
    """'1.5, 1.75 and 2 OD', 'radii of 57 and 76', '17 or 16 gauge': one role for the whole list.

    '1.5 and 1.75, each .095 and .120' holds two lists: figures of another size begin a new one.
    """
    run: list[Figure] = []
    for figure in layout.figures:
        joined = run and figure.link in ("list", "or", "range") and _alike(run[-1], figure)
        radii = any(f.role in RADIUS_ROLES for f in run)
        if joined and not _begins_pair(layout, figure) and not (radii and _begins_tube(layout, figure)):
            run.append(figure)
            continue
        _share_if_list(run)
        run = [figure]
    _share_if_list(run)
    _triples(layout)


def _begins_pair(layout: Layout, figure: Figure) -> bool:
    """'1-1/2 on 4.5 clr and 1-3/4 on 5.25 clr': the 1-3/4 opens the next tube."""
    if figure.role is not None:
        return False
    inside = layout.in_sentence(figure.sentence)
    at = inside.index(figure)
    after = inside[at + 1] if at + 1 < len(inside) else None
    if after is None or after.role not in RADIUS_ROLES or after.link in ("list", "or", "range"):
        return False
    between = {token.text for token in layout.between(figure, after)}
    return bool(between & {"on", "@", "at", "with", "auf", "mit", "à", "su", "sur", "("})


def _begins_tube(layout: Layout, figure: Figure) -> bool:
    """'CLR 3.25, 1.000 in x 14 gauge': what stands before a wall is no second radius."""
    inside = layout.in_sentence(figure.sentence)
    at = inside.index(figure)
    after = inside[at + 1] if at + 1 < len(inside) else None
    if figure.role is not None or after is None:
        return False
    thin = after.number.style == "decimal" and after.number.value * 3 < figure.number.value
    return after.link == "times" or after.role == "wall" or after.unit in ("ga", "swg", "bwg") or thin


def _alike(left: Figure, right: Figure) -> bool:
    """Whether two neighbours of a list can be values of one thing."""
    if left.role in LENGTH_ROLES and right.role in LENGTH_ROLES:
        return left.role == right.role
    gauges = ("ga", "bwg", "swg")
    if (left.unit in gauges) != (right.unit in gauges) or (left.unit == "D") != (right.unit == "D"):
        return False
    if left.unit in ("in", "mm") and right.unit in ("in", "mm") and left.unit != right.unit:
        return False
    a, b = left.number.value, right.number.value
    return min(a, b) > 0 and max(a, b) / min(a, b) <= 4


def _share_if_list(run: list[Figure]) -> None:
    if len(run) > 1:
        _share(run)


def _triples(layout: Layout) -> None:
    """'1.75, .095, 5.25': OD, wall, radius in the order everybody is asked for them."""
    for first, second, third in zip(
        layout.figures, layout.figures[1:], layout.figures[2:], strict=False
    ):
        if (
            second.link != "list"
            or third.link != "list"
            or {first.role, second.role, third.role} != {None}
        ):
            continue
        a, b, c = first.number.value, second.number.value, third.number.value
        if a and b / a < Decimal("0.3") and Decimal("0.6") <= c / a <= _LONGEST_RATIO:
            for figure, role in ((first, "od"), (second, "wall"), (third, "clr")):
                _set(figure, role)
                figure.link = "apart"


def _share(run: list[Figure]) -> None:
    values = [figure.number.value for figure in run]
    alike = min(values) > 0 and max(values) / min(values) <= 6
    roles = [f.role for f in run if f.role in LENGTH_ROLES or f.role in ("times_d", "nps", "noise")]
    plain = (None,) if roles and roles[0] in RADIUS_ROLES | {"wall"} else (None, "label", "die")
    if alike and len(set(roles)) == 1 and all(f.role == roles[0] or f.role in plain for f in run):
        units = [figure.unit for figure in run if figure.unit]
        for figure in run:
            if figure.role != roles[0]:
                figure.role, figure.how = roles[0], "list"
            if figure.unit is None and len(set(units)) == 1:
                figure.unit = units[0]
        return
    for left, right in zip(run, run[1:], strict=False):
        if left.role is not None and right.role is not None and left.role != right.role:
            right.link = "apart"


def nearly(left: Figure, right: Figure) -> bool:
    """Whether two figures are within 3 % in whichever unit brings them closest."""
    a, b = left.number.value, right.number.value
    inch = Decimal("25.4")
    scales = [Decimal(1)] if left.unit == right.unit else [Decimal(1), inch, 1 / inch]
    return bool(a and b) and any(abs(a * scale - b) <= b * Decimal("0.03") for scale in scales)
