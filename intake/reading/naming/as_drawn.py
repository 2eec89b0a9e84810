"""A radius as a drawing tells it: 'beim Radius steht auf der Skizze "ca. 110"', 'radius per
sketch "110"'."""

from __future__ import annotations

from ...late_pattern import late_pattern
from ..text.patterns import any_of

_NOT_ANOTHER = (
    r"(?:(?!\b(?:tub|od\b|wall|die\b|rohr|wand|dorn|tubo|pared|paroi|parete|buis|angle|winkel"
    r"|corner|inside|outside))[^.;:\d])"
)
_AS_DRAWN = late_pattern(
    r"\b(?:bend(?:ing)? radius|\w*radius|clr|rayon|radio|raggio|straal)\b"
    + _NOT_ANOTHER
    + r"{0,40}?\b(?:"
    + any_of(
        r"says? | said | gives? | shows? | reads? | states? | calls for | steht | sagt | zeigt",
        r"indique | dit | donne | marque | porte | pone | dice | indica | marca | scritto",
        r"riporta | staat | zegt | vermeldt",
    )
    + r"\b[^.;:,\d]{0,28}?[\s\"'«„“]|"
    # Without the mark of a quotation it may be the drawing's number.
    + any_of(
        "per | as per | according to | laut | gemäß | nach | selon | d'après | suivant | según",
        "secondo | come da | volgens",
    )
    + r"\b[^.;:,\d]{0,24}?[\"«„“])"
    + r"(?:(?:about|approx|ca|circa|env|environ|aprox|etwa|rund|ongeveer)\.?\s?)?[\"'«]?\s?$"
)


def is_radius_as_drawn(before: str) -> bool:
    """Whether the words before a figure, casefolded, say that a drawing has it as the radius."""
    return _AS_DRAWN.search(before) is not None
