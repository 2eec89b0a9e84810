"""Chains whose figures are named by as many words beside them: 'OD x wall x CLR: 38 x 1.5 x 57'."""

from __future__ import annotations

from ..text.figures import Figure, Layout
from ..text.roles import LENGTH_ROLES, Role

_JOINTS = frozenset({"times", "punct", "gap", "line"})
_HEADER_WORDS = frozenset(("x", "is", "are", "by"))
_BACK = 8
_SHORT: dict[str, Role] = {"int": "id", "inn": "id", "ext": "od", "est": "od", "auß": "od"}
"""'12 x 14 (int. x ext.)': as words alone they may mean much else."""


def header_beside(layout: Layout, chain: list[Figure]) -> None:
    """'OD x wall x CLR: 38 x 1.5 x 57': as many cues as figures, directly before or after."""
    after = chain[-1].token + 1
    bracket = after < len(layout.tokens) and layout.tokens[after].text == "("
    roles = list(reversed(_header_roles(layout, chain[0].token - 1, -1)))
    ahead = layout.tokens[max(0, chain[0].token - _BACK) : chain[0].token]
    if ahead and ahead[-1].text == "." and not any(t.kind == "times" for t in ahead):
        roles = []  # "it scratches the inside wall. 38 x 1.5"
    sign = layout.tokens[chain[0].token].cues
    if sign and sign[0].role in LENGTH_ROLES:
        roles.append(sign[0].role)  # the last label clings to the first figure: "CLR = 1.5 x"
    for found in (roles, _header_roles(layout, after, 1) if bracket else []):
        if len(found) == len(chain) and len(set(found)) == len(found):
            for figure, role in zip(chain, found, strict=True):
                figure.give(role, "header")
            return


def read_legends(layout: Layout) -> None:
    """'1.75, .095, 5.25 (OD, wall, CLR)': as many words in a bracket as figures before it."""
    for last in layout.figures:
        after = last.token + 1
        if after >= len(layout.tokens) or layout.tokens[after].text != "(":
            continue
        roles = _header_roles(layout, after, 1)
        first = last.index - len(roles) + 1
        if len(roles) < 2 or len(set(roles)) < len(roles) or first < 0:
            continue
        figures = layout.figures[first : last.index + 1]
        if all(figure.link == "list" for figure in figures[1:]):
            for figure, role in zip(figures, roles, strict=True):
                figure.give(role, "header")
            for figure in figures[1:]:
                figure.link = "apart"


def _header_roles(layout: Layout, begin: int, step: int) -> list[Role]:
    """The roles of the cues met from a token on, with nothing but times signs between."""
    roles: list[Role] = []
    on_this_line = 0
    at = begin
    while 0 <= at < len(layout.tokens):
        token = layout.tokens[at]
        if token.kind == "line":
            on_this_line = len(roles)
        if token.kind == "number":
            return roles[:on_this_line]  # the cues of the line before belong to its own figures
        heads = step > 0 or any(cue.side != "after" for cue in token.cues)
        if token.kind == "cue" and token.cues[0].role in LENGTH_ROLES and heads:
            roles.append(token.cues[0].role)
        elif step > 0 and token.text.rstrip(".") in _SHORT:
            roles.append(_SHORT[token.text.rstrip(".")])
        elif (token.text == ")" and step > 0) or (
            token.kind not in _JOINTS and token.text not in _HEADER_WORDS
        ):
            break
        at += step
    return roles
