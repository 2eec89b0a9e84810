"""The radius of a shop-made form, buck or jig: to its face, or to the middle of the tube?

A bend die's radius is to the centre line by custom of the trade; a plywood form has none.
"""

from __future__ import annotations

from ...late_pattern import late_pattern
from ..text.figures import Figure, Layout
from ..text.patterns import any_of, whole_words

_FORM = late_pattern(
    r"\b"
    + any_of(
        r"radius(?:ed)? forms? | form radius | (?:a|an|the|my|our|this|that|his|old|made) forms?",
        "bucks? | jigs? | templates? | fixtures? | moulds? | molds? | plywood | ply | mdf",
        "wood | wooden | oak | concrete | home-?\\s?made | shop-?made | pulley | drum",
        "holz\\w* | schablone\\w* | biegeschablone | lehre | biegelehre | sperrholz\\w*",
        "gabarit | moule | conformateur | contreplaqué | bois | plantilla | molde | madera",
        "sagoma | dima | legno | compensato | mal | mallen | houten | hout",
    )
    + r"\b(?!\s(?:of|for the|fit))"
)
_CENTRE = whole_words(
    r"cent(?:re|er)(?:\s?line)?s? | clr | middle | mitten?\w* | axis | axe | asse | eje | hart\w*",
    "neutral\\w* | groove | moyen | medio | mittlerer | centro | mezzeria | milieu | midden",
)
_NEAR = 44
"""Characters beside a figure in which a form is the one whose radius it is."""


def doubt_forms(layout: Layout) -> None:
    """Note on a radius that is that of a form that it may be to the inside."""
    for figure in layout.figures:
        if figure.role == "radius" and _is_of_form(layout, figure):
            figure.notes.append("inside or centreline radius")


def _is_of_form(layout: Layout, figure: Figure) -> bool:
    if any("or centreline" in note for note in figure.notes):
        return False
    first, last = layout.spans[figure.sentence]
    before, after = layout.before(figure), layout.after_in_sentence(figure)
    begin = max(layout.tokens[first].start, figure.start - _NEAR)
    if before is not None:
        begin = max(begin, before.end)
    end = min(layout.tokens[last].end, figure.end + _NEAR)
    if after is not None:
        end = min(end, after.start)
    words = layout.words(begin, end)
    return _FORM.search(words) is not None and not _CENTRE.search(words)
