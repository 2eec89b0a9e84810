"""Sizes by name: 'pipe' without a schedule, copper and conduit trade sizes, gauges of sheet.

A name is not a diameter: NPS 1-1/2 is 48.26 mm, half-inch copper 15.875 mm. Where the sender does
not say which is meant, the figure gets a note that becomes a doubt.
"""

from __future__ import annotations

import re

from ...rules import standards
from .figures import Figure, Layout
from .roles import tokens_beside

PIPE = "pipe"
COPPER = "copper trade size"
CONDUIT = "conduit trade size"
_CONDUIT = re.compile(r"\b(?:emt|conduit)\b")
_NOMINAL_WORDS = re.compile(r"\b(?:pipe|nominal|black iron|iron pipe)\b")
_REAL = re.compile(r"\b(?:od|o\.d\.?|outside|actual|measures|caliper\w*|across|true)\b")
_SHEET = re.compile(
    r"\bsheet(?: metal)? (?:gauge|ga)\b|\bgauge sheet\b|\b(?:usg|us standard gauge|manufacturer'?s standard)\b"
)


def note_names(layout: Layout) -> None:
    """Mark figures that may be the name of a size."""
    swg = re.search(r"\bs\.?w\.?g\b", layout.text, re.I) is not None
    sheet = _SHEET.search(layout.text.casefold()) is not None
    for figure in layout.figures:
        if figure.unit == "ga" and swg:
            figure.notes.append("swg")
        elif figure.unit == "ga" and sheet:
            figure.notes.append("sheet")
        if figure.role == "od" and figure.unit in ("in", None):
            _note_name(layout, figure)


def _note_name(layout: Layout, figure: Figure) -> None:
    if standards.nps_of_inches(figure.number.value) is None:
        return
    left, right = tokens_beside(layout, figure, 2, 4)
    text = layout.sentence_text(figure.sentence)
    after: list[str] = []
    for token in right:
        if token.number is not None or token.kind == "times":
            break
        after.append(token.text)
    words = " ".join(after)
    before = " ".join(token.text for token in left if token.number is None)
    if _REAL.search(words) or _REAL.search(before):
        return
    if _CONDUIT.search(words) or _CONDUIT.search(before):
        figure.notes.append(CONDUIT)
    elif re.search(r"\bcopper\b", words) and re.search(
        r"\b(?:type [klm]|pipe|plumbing|water|refrigeration|nominal|trade)\b", text
    ):
        figure.notes.append(COPPER)
    elif _NOMINAL_WORDS.search(words) and "sch" not in {f.unit for f in layout.figures}:
        figure.notes.append(PIPE)
