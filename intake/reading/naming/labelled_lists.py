"""Lists with a label each, their values parted by slashes or dashes: 'Diameters 20 – 25 – 30 mm,
walls 1 – 1.5 – 2 mm, radii 40 – 50 – 75 mm'. Neither fractions nor ranges: all are as long."""

from __future__ import annotations

from ..text.figures import Figure, Layout
from ..text.patterns import word_set
from ..text.roles import LENGTH_ROLES, RADIUS_ROLES, Role
from .cue_fits import fits

_PARTS = word_set("/ - – —")
_BETWEEN = word_set(": = mm in inch inches are is sind sont son sono zijn ( )")
_LEAST = 3
"""Two values may be a range or a fraction."""


def hear_labelled_lists(layout: Layout) -> None:
    """Give the figures of such lists their roles, and join them as lists."""
    lists: dict[Role, list[Figure]] = {}
    by_token = {figure.token: figure for figure in layout.figures}
    for at, token in enumerate(layout.tokens):
        cue = next((cue for cue in token.cues if cue.side != "after"), None)
        if cue is None or cue.role not in LENGTH_ROLES or token.number is not None:
            continue
        values = _values_behind(layout, at, by_token)
        if not all(figure.role is None and fits(figure, cue) for figure in values):
            continue
        if len(values) >= _LEAST:
            if cue.role in lists:
                return  # the same length listed twice: of two kinds of tube
            lists[cue.role] = values
    radius = any(role in RADIUS_ROLES for role in lists)
    if not ("od" in lists and (radius or "wall" in lists)):
        return
    if len({len(values) for values in lists.values()}) > 1:
        return
    for role, values in lists.items():
        for figure in values:
            figure.give(role, "list")
        for figure in values[1:]:
            figure.link = "list"


def _values_behind(layout: Layout, label: int, by_token: dict[int, Figure]) -> list[Figure]:
    """The figures behind a label that one and the same mark parts."""
    values: list[Figure] = []
    mark = ""
    for at in range(label + 1, len(layout.tokens)):
        token = layout.tokens[at]
        figure = by_token.get(at)
        if figure is not None:
            if values and layout.tokens[at - 1].text not in _PARTS:
                break
            values.append(figure)
        elif token.text in _PARTS and values and mark in ("", token.text):
            mark = token.text
        elif token.text not in _BETWEEN or token.kind == "cue":
            break
    return values
