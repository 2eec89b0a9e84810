"""The subject of a clause that says what its figure is: 'the radius in our drawing is 130 mm'."""

from __future__ import annotations

from ..text.figures import Figure, Layout
from ..text.patterns import word_set
from ..text.roles import LENGTH_ROLES
from .cue_sides import COPULA, Found, begins_tube, is_complement

_FARTHEST_SUBJECT = 9
_ASIDE = 5
"""So many tokens stand at the most in what is put between two commas."""
_ARTICLES = word_set("a an the de about approx approximately around also still now our")
_LIMITED = word_set(
    "no not more less than larger bigger greater smaller tighter over under exceed go above below",
    "pasar superar de ser mayor que dépasser superare über überschreiten größer kleiner als sein",
    "darf nicht groter kleiner dan zijn",
)
_MODAL = word_set("would should will")
_WOULD_BE = word_set("wäre wären serait seraient sería serían sarebbe sarebbero")
_CLAUSE_ENDS = frozenset((",", ";", "and", "but", "with"))
_BENDS = frozenset(("bend", "bends", "bending"))


def subject_of(layout: Layout, figure: Figure, used: set[int]) -> Found | None:
    """'The radius in our drawing is 130 mm': the subject of the clause, words between."""
    at = figure.token - 1
    while at >= 0 and layout.tokens[at].text in _ARTICLES | _LIMITED:
        at -= 1
    if at > 0 and layout.tokens[at].text == "be" and layout.tokens[at - 1].text in _MODAL:
        at -= 1
    elif at < 0 or layout.tokens[at].text not in COPULA | _WOULD_BE:
        return None
    begin = _before_aside(layout, at)
    for back in range(begin - 1, max(-1, begin - 1 - _FARTHEST_SUBJECT), -1):
        token = layout.tokens[back]
        if token.number is not None or layout.sentence_of[back] != figure.sentence:
            return None
        if token.text in _CLAUSE_ENDS or (token.kind == "line" and layout.tokens[at].text == ":"):
            return None  # "... die Daten für den Dorn: / Rohr: 18"
        if token.kind != "cue" or back in used or token.text in _BENDS:
            continue  # "the radius to the inside of the bend is 5 in"
        cue = next((c for c in token.cues if c.role in _SUBJECTS), None)
        if cue is not None and cue.role == "noise" and is_complement(layout, back):
            continue  # "the distance between axes of the two legs is 152"
        following = layout.tokens[back + 1]
        if token.text == "die" and layout.text[following.start].isupper():
            continue  # "hier die Daten: Rohr: 18"
        named = following.kind == "word" and following.text.isalpha() and back + 1 < at
        if cue is not None and cue.role == "noise" and named and begins_tube(layout, figure):
            continue  # "the wheel hoop is 1.5 x .065"
        if cue is not None and (cue.side == "both" or cue.role != "noise"):
            return Found(back, cue, 2)
    return None


def _before_aside(layout: Layout, at: int) -> int:
    """Where what stands between two commas right before the verb begins: 'der Radius, Mitte Rohr,
    ist ...', 'the radius, center of tube, would be ...'."""
    tokens = layout.tokens
    if at < _ASIDE or tokens[at - 1].text != ",":
        return at
    for back in range(at - 2, at - 2 - _ASIDE, -1):
        if tokens[back].number is not None:
            return at
        if tokens[back].text == ",":
            return back if tokens[back - 1].kind == "cue" else at
    return at


_SUBJECTS = LENGTH_ROLES | {"noise", "die"}
