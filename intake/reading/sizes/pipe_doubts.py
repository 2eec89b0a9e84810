"""What is to be confirmed of a size named as pipe: trade or real size, what 'D' and 'DN' mean."""

from __future__ import annotations

from decimal import Decimal

from ....rules import standards
from ..naming.copper_types import COPPER_TYPES
from ..naming.pipes import CONDUIT, COPPER, PIPE, REAL_D
from ..text.figures import Figure
from .sizing import Sizing
from .values import readings

_INCH = Decimal("25.4")


def doubt_names(size: Sizing, figure: Figure) -> None:
    """A size by its trade name: the likelier OD is stated, both are named."""
    written, nominal = size.lengths["od"], standards.nps_of_inches(figure.number.value)
    if written is None:
        return
    named: Decimal | None = None
    if COPPER in figure.notes:
        named = standards.copper_tube_od_mm(str(figure.number.value))
    elif nominal is None:
        return
    elif CONDUIT in figure.notes:
        named = standards.emt_od_mm(nominal)
    elif PIPE in figure.notes:
        wall = size.lengths["wall"]
        walled = "wall" in size.slots or "id" in size.slots
        named = standards.pipe_od_mm(nominal)
        if walled and wall is not None and not _is_of_pipe(nominal, wall):
            # "1-1/2 pipe, 3 mm wall" is likelier tube called pipe: no schedule has that wall.
            size.doubts.add("od", [written, named], "trade or nominal size, or real OD?")
            return
    if named is not None:
        size.lengths["od"] = named
        size.doubts.add("od", [named, written], "trade or nominal size, or real OD?")


def add_wall_of_type(size: Sizing, figure: Figure) -> None:
    """The wall of '3/4 type L copper', where none is told in figures; to be confirmed. Where the
    trade size may be the OD, two walls may be meant."""
    od, written = size.lengths["od"], readings(figure, "od")
    kind = next((k for k, note in COPPER_TYPES.items() if note in figure.notes), None)
    if kind is None or od is None or {"wall", "id"} & size.slots.keys():
        return
    sizes = (standards.copper_trade_of_od(mm) for mm in (od, *(value.mm for value in written)))
    walls = [standards.copper_tube_wall_mm(trade, kind) for trade in sizes if trade is not None]
    if not walls or walls[0] is None:
        return
    size.lengths["wall"] = walls[0]
    why = f"the wall that ASTM B88 has for type {kind}"
    if COPPER in figure.notes:
        why += ": trade or nominal size, or real OD?"
    size.doubts.add("wall", list(dict.fromkeys(walls)), why)


def _is_of_pipe(nominal: str, wall: Decimal) -> bool:
    """Whether a pipe is called so that has this wall; one of schedule 5 is rare, and tube of .065
    common."""
    thin = standards.pipe_wall_mm(nominal, "5S")
    if thin is not None and abs(wall - thin) <= Decimal("0.1"):
        return False
    return standards.is_pipe_wall(nominal, wall)


def doubt_nominal(size: Sizing) -> None:
    """What 'D' and 'DN' mean of a pipe."""
    best, figures = size.best, size.slots["od"]
    nominal = (best.od.nominal if best.od is not None else "") or _named_size(figures)
    if not nominal:
        return
    if size.radius_role == "times_d" and best.clr is not None and size.lengths["clr"] is not None:
        sure = any(REAL_D in figure.notes for figure in size.slots.get("clr", ()))
        od, name = standards.pipe_od_mm(nominal), _INCH * _inches_of(nominal)
        if not sure and od is not None and abs(od - name) > name * Decimal("0.01"):
            why = "D of nominal pipe: times the real OD or times the nominal size?"
            size.doubt("clr", why, best.clr.mm * name)
    if len(figures) == 1 and figures[0].role == "dn" and size.schedule is None:
        asme = standards.pipe_od_mm(nominal)
        if asme is not None and _are_apart(size.lengths["od"], asme):
            size.doubt("od", "the ISO and the ASME pipe of this nominal size differ", asme)


def _are_apart(stated: Decimal | None, other: Decimal) -> bool:
    """Whether two pipes of one nominal size differ by more than half a percent."""
    return stated is not None and abs(other - stated) > stated * Decimal("0.005")


def _named_size(figures: list[Figure]) -> str:
    """The NPS size of 'DN 40' beside a real OD, or nothing."""
    for figure in figures:
        if figure.role in ("nps", "dn"):
            return next((value.nominal for value in readings(figure, "od")), "")
    return ""


def _inches_of(nominal: str) -> Decimal:
    """1.5 for '1-1/2'."""
    whole, _, rest = nominal.rpartition("-")
    top, _, under = rest.partition("/")
    return Decimal(whole or 0) + Decimal(top) / Decimal(under or 1)
