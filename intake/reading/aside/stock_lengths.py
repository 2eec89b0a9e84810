"""Tube counted by the length: 'three lengths of 1.5 x .065', 'zwei Stangen 38 x 1,5'.

'Length' beside a figure says as a rule how long something is; behind a count and before a whole
tube it says what the tube comes in.
"""

from __future__ import annotations

from decimal import Decimal

from ...late_pattern import late_pattern
from ..naming.place_tests import is_thin
from ..text.figures import Figure, Layout
from ..text.patterns import any_of

_FAR = 48
_THIN = Decimal("0.25")
_COUNTED = late_pattern(
    r"\b"
    + any_of(
        r"\d{1,2}\s?(?:'|’|ft|foot|feet|m|metre|meter)\.? | an? | one | two | three | four | five",
        r"six | some | few | several | couple of | \d{1,3}",
        "ein(?:e|en)? | zwei | drei | vier | fünf | sechs | ein paar | einige | mehrere",
        "une? | deux | trois | quatre | cinq | quelques | plusieurs | una? | dos | tres | cuatro",
        "unas | varias | due | tre | quattro | alcune | qualche | een | twee | drie | vier",
        "enkele",
        "of",
    )
    + r"\s(?:\w+\s)?"
    + any_of(
        "lengths? of | sticks? of | joints? of | stangen? | längen? | stücke? | meterware",
        "longueurs?(?: de| en)? | barres?(?: de| en)? | barras?(?: de)? | tramos?(?: de)?",
        "barr[ae] da",
        "verg(?:a|he) da | spezzon[ei] da | lengtes? | staven | stukken",
    )
    + r"\s(?:von\s|à\s|van\s|rohr\s|tubo\s|tube\s|buis\s)*[øØ]?\s?$"
)


def hear_stock_lengths(layout: Layout) -> None:
    """Say of the first figure of a whole tube behind such words that it is its OD."""
    for figure in layout.figures:
        if figure.role is not None or figure.negated or not _begins_tube(layout, figure):
            continue
        before = layout.text[max(0, figure.start - _FAR) : figure.start].replace("\n", " ")
        if _COUNTED.search(before.casefold()):
            figure.give("od", "cue")


def _begins_tube(layout: Layout, figure: Figure) -> bool:
    wall = layout.after_in_sentence(figure)
    if wall is None or wall.row is not None:
        return False
    if wall.is_gauge:
        return True
    thin = 0 < wall.number.value <= figure.number.value * _THIN
    beside = is_thin(wall) and not layout.text[figure.end : wall.start].strip(' "')
    return thin and (wall.link == "times" or beside)
