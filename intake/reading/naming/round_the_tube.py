"""Tubes told by their girth or by their radius: 'it is 4.71 around', 'radius of the tube is .75'.

The OD is worked out, and doubted: who measures so may have measured something else.
"""

# ruff: noqa: E501 - lists of words stand on one line

from __future__ import annotations

from decimal import Decimal

from ...late_pattern import late_pattern
from ..numbers.numbers import Number, scaled
from ..text.figures import Figure, Layout
from ..text.patterns import any_of, whole_words
from .cue_sides import begins_tube
from .place_tests import is_thin

OF_GIRTH = "the OD is worked out from what the tube measures around"
OF_RADIUS = "the OD is worked out as twice the radius of the tube"
_PI = Decimal("3.14159265")
_FINEST = {"mm": Decimal("0.1")}
_INCH_STEP = Decimal("0.001")
_UNIT = r"^\W{0,3}(?:mm|cm|in|inch(?:es)?|zoll|pouces?|pulgadas?)?\W{0,2}\s*"
_AROUND = late_pattern(
    _UNIT
    + any_of(
        r"(?:all the way )?(?:a?round)(?=\s*(?:[,;)]|[.](?!\d)|$|(?:the|its) (?:tube|pipe|outside|od)\b))",
        r"(?:in )?(?:circumference|girth|umfang) | de (?:circonférence|tour|circunferencia|contorno)",
        r"di circonferenza | omtrek",
    )
    + r"(?!\w)"
)
_GIRTH_BEFORE = late_pattern(
    r"\b(?:circumference|girth|umfang|circonférence|circunferencia|circonferenza|omtrek)\b"
    r"(?:\s(?:of|around|vom|der|des|du|de|del|van|het)\s(?:the\s|my\s|our\s)?(?:tube|pipe|rohre?s?|tubo|buis))?"
    r"(?:\s?[:=]|\s(?:is|of|measures|comes|to|out|at|about|ist|von|est|es|è|di|de|mide|misura))*\s?$"
)
_OF_TUBE = whole_words("tub(?:e|es|ing) | pipes? | rohre? | tubos? | tub[oi] | buis | buizen")
_OF_BEND = whole_words("bend | bent | loop | ring | coil | hoop | bogen | wheel")
_TUBE_RADIUS = late_pattern(
    r"\b(?:(?<!corner )(?<!edge )(?:outside |outer )?radius\sof\s(?:the|our|my|this)\s(?:tube|pipe|tubing)"
    r"|(?:tube|pipe|tubing)(?:'s)?\s(?:outside |outer )?radius|rohrradius|rayon\sdu\stube|radio\sdel\stubo"
    r"|raggio\sdel\stubo|straal\svan\sde\sbuis)"
    r"(?:\s?[:=]|\s(?:is|of|about|ist|est|es|è))*\s?$"
)
_BEND_RADIUS = whole_words(
    r"clr | bend(?:ing)? radius | center ?line | centre ?line | biegeradius | rayon de cintrage",
    "radio de curva(?:tura|do)? | raggio di curva(?:tura)? | buigradius | radius of the bend",
    "bent to | bend it to",
)
_BACK = 64


def hear_round_the_tube(layout: Layout) -> None:
    """Make ODs of such figures, each with its doubt."""
    for figure in layout.figures:
        if figure.role is not None or figure.negated or begins_tube(layout, figure):
            continue
        if figure.unit not in (None, "in", "mm", "cm") or is_thin(figure):
            continue
        begin = layout.sentence_start(figure.sentence)
        before = layout.words(max(begin, figure.start - _BACK), figure.start)
        end = layout.tokens[layout.spans[figure.sentence][1]].end
        after = layout.words(figure.end, max(figure.end, min(end, figure.end + _BACK)))
        around = _AROUND.match(after) or _GIRTH_BEFORE.search(before)
        near = range(max(0, figure.sentence - 1), figure.sentence + 1)
        if around and any(layout.says(sentence, _OF_TUBE) for sentence in near):
            if not layout.says(figure.sentence, _OF_BEND):
                _make_od(figure, _diameter(figure), OF_GIRTH)
        elif _TUBE_RADIUS.search(before) and _BEND_RADIUS.search(layout.text.casefold()):
            _make_od(figure, scaled(figure.number, Decimal(2)), OF_RADIUS)


def _make_od(figure: Figure, number: Number, why: str) -> None:
    figure.number = number
    figure.give("od", "cue")
    figure.notes.append(why)


def _diameter(figure: Figure) -> Number:
    """Its figures divided by pi, as exact as one measures with a tape."""
    number = scaled(figure.number, 1 / _PI)
    large = max(number.values) > 12  # a bare number: so many inches no tube is across
    step = _FINEST["mm"] if figure.unit == "mm" or large else _INCH_STEP
    values = tuple(value.quantize(step) for value in number.values)
    return Number(number.start, number.end, values, number.style)
