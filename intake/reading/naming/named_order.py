"""Lengths in an order that the sender names first: 'OD, wall and radius: 38 mm, 2 mm, 76 mm'."""

from __future__ import annotations

from ..text.cues import Cue
from ..text.figures import Figure, Layout, Link
from ..text.patterns import word_set
from ..text.roles import LENGTH_ROLES, RADIUS_ROLES
from .cue_fits import fits
from .cue_sides import cue_right

_JOINTS = word_set(", / & + ; x and und et y e ed en och og i then puis dann luego poi")
_JOINTS |= word_set("tube the la le der die das il el lo de del di des du × *")
_LEADS = word_set(": = - are is sind sont son sono zijn as")
_FARTHEST = 14
"""Words between the last name and the first figure: 'so here goes', 'in inches, in that order'."""
_JOINED: frozenset[Link] = frozenset({"list", "slash", "times"})


def assign_named_order(layout: Layout) -> None:
    """Give listed figures the roles listed before them, where both lists are as long."""
    by_token = {figure.token: figure for figure in layout.figures}
    at = 0
    while at < len(layout.tokens):
        cues, end = _names_from(layout, at)
        behind_figure = at > 0 and layout.tokens[at - 1].number is not None
        if len(cues) > 1 and not behind_figure:  # not '1.625 OD, wall is an eighth'
            first = _first_behind(layout, end, by_token)
            while first is not None:
                first = _assign(layout, cues, first)
        at = max(end, at + 1)


def _kind(cue: Cue) -> str:
    return "radius" if cue.role in RADIUS_ROLES else cue.role


def _names_from(layout: Layout, begin: int) -> tuple[list[Cue], int]:
    """The lengths named one after the other from a token on, and the token behind them; the last
    may cling to the first figure: 'CLR: 1.5'."""
    cues: list[Cue] = []
    at = end = begin
    while at < len(layout.tokens):
        token = layout.tokens[at]
        cue = next((cue for cue in token.cues if cue.side != "after"), None)
        if cue is not None and cue.role in LENGTH_ROLES:
            if cues and end == at:
                break  # two names side by side list nothing
            cues.append(cue)
            end = at + (1 if token.number is None else 0)
            if token.number is not None:
                break
        elif not cues or not (token.kind in ("gap", "times") or token.text in _JOINTS):
            break
        at += 1
    return (cues if len({_kind(cue) for cue in cues}) == len(cues) else []), end


def _first_behind(layout: Layout, end: int, by_token: dict[int, Figure]) -> Figure | None:
    """The first figure behind the names, if something leads over to it."""
    led = False
    for at in range(end, min(end + _FARTHEST, len(layout.tokens))):
        token = layout.tokens[at]
        if token.number is not None:
            return by_token.get(at) if led or token.cues else None
        if token.kind in ("para", "cue", "block"):
            return None
        led = led or token.text in _LEADS
    return None


def _assign(layout: Layout, cues: list[Cue], first: Figure) -> Figure | None:
    """Give the figures from the first one on their roles; the figure that begins a further list of
    that kind on the line below, or None."""
    own = cue_right(layout, first)
    if own is not None and own.cue.role in LENGTH_ROLES and own.distance == 0:
        layout.tokens[first.token].cues = ()  # "OD, wall and CLR: 1.5 OD, .065 wall, 4.5 CLR"
        return None
    run = [first]
    after = layout.after(first)
    slashed = after is not None and after.link in ("slash", "times")
    while after is not None and after.link in _JOINED:
        if slashed and after.link == "list" and len(run) == len(cues):
            break  # "38/1.5/57, 42.4/2/85"
        if any(token.cues for token in layout.between(run[-1], after)):
            return None  # "OD and wall: 1.5, radius 4.5"
        run.append(after)
        after = layout.after(after)
    if len(run) != len(cues) or any(figure.role is not None for figure in run):
        return None
    named = [cue_right(layout, figure) for figure in run]
    if any(found is not None and found.cue.role in LENGTH_ROLES for found in named):
        return None
    if not all(fits(figure, cue) for figure, cue in zip(run, cues, strict=True)):
        return None
    shared = run[-1].unit if {figure.unit for figure in run} <= {None, run[-1].unit} else None
    for figure, cue in zip(run, cues, strict=True):
        times = figure.unit == "D" and cue.role in RADIUS_ROLES
        figure.give("times_d" if times else cue.role, "header")
        figure.unit = figure.unit or shared
    for figure in run[1:]:
        figure.link = "apart"
    if after is None or layout.tokens[after.token].cues:
        return None
    below = after.line == run[-1].line + 1
    beside = slashed and after.link == "list"
    if beside:
        after.link = "apart"
    return after if below or beside else None
