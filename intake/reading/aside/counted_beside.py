"""Whole numbers that count: mandrels a price is asked for, '450 of these', '45 at 90 deg'."""

from __future__ import annotations

from itertools import pairwise

from ...late_pattern import late_pattern
from ..text.figures import Figure, Layout
from ..text.patterns import any_of

_OF_THESE = late_pattern(
    r"^\s*(?:(?:or so|odd)\s)?"
    + any_of(
        r"of (?:these|those|them|each|'em|the same) | a (?:year|month|week|day)\b",
        "per (?:year|month|week|day|shift|annum) | pro (?:jahr|monat|woche|tag|schicht) | im jahr",
        "davon | par (?:an|mois|semaine|jour) | al (?:año|mes|día) | (?:por|a la) semana",
        "all'anno | al (?:mese|giorno) | a(?:lla)? settimana | per (?:jaar|maand|dag)",
    )
)
_OUTPUT_BEFORE = late_pattern(
    r"\b"
    + any_of(
        r"(?:per|a|each|every) (?:year|month|week|day|shift) | per annum | annual(?:ly)? \w+",
        r"(?:yearly|monthly|weekly|daily) \w+ | (?:pro|im|je) (?:jahr|monat|woche|tag|schicht)",
        "jahres(?:bedarf|menge|stückzahl) | par (?:an|mois|semaine|jour) | al (?:año|mes|día)",
        "(?:por|a la) semana | all'anno | al (?:mese|giorno) | a(?:lla)? settimana",
        "per (?:jaar|maand|dag)",
    )
    + r"\s?(?:[:=–-]|is|are|ist|sind|est|es|è)?\s?"
    + any_of(
        r"about | around | approx\.? | approximately | roughly | some | say | maybe | up to | etwa",
        r"rund | ca\.? | circa | zirka | environ | à peu près | unos | unas | aproximadamente",
        "ongeveer | zowat",
    )
    + r"?\s?$"
)
"""'Rails per week about 150', 'annual volume: 400'."""
_SIZE_BEHIND = late_pattern(r"^\s?(?:[x×*/@ø\"-]|,?\s?\.?\d|o\.?d\b|tub|rohr|pipe|wall|by\b)")
"""'Weekly order: 38 x 1.5'."""

_PRICE_AT = late_pattern(
    r"\b"
    + any_of(
        r"pric(?:e|es|ing)d? | quot(?:e|es|ation)d? | costs? | breaks?(?: point)? | discounts?",
        r"(?:staffel)?preise? | rabatt | staffel\w* | prix | remise | precios? | descuento",
        "prezz[oi] | sconto | prij(?:s|zen) | staffel | korting",
    )
    + r"\b[^.;:\d]{0,12}\b(?:on|at|for|of|bei|für|ab|à|pour|por|para|per|a|da|bij|voor|op|von)\s*"
    r"(?:(?:qty|quantit\w+|lots of|menge|mengen)\s*)?(?:of\s*)?$"
)
_ENDS_COUNT = late_pattern(
    r"^\W*(?:pcs?|pieces?|off|mandrels?|each|stück|stk|pièces?|piezas?|pezzi|stuks?|please)?"
    r"(?:\W{1,3}(?:and|plus) (?:the |your )?(?:lead ?time|delivery|shipping|eta|terms)\w*)?\W*$"
)
_NEXT_COUNT = late_pattern(
    r"^\W{0,3}(?:and|or|und|oder|et|ou|y|o|e|en|of|&)?\W{0,2}"
    r"(?:(?:on|at|for|of|bei|für|ab|pour|por|per|bij|voor|op)\s)?\s*$"
)

_MOST_BREAKS = 6
"""Counts that a price is asked for in one breath."""


def is_price_break(layout: Layout, figure: Figure, before: str) -> bool:
    """'Price on 1 and on 3?': whole numbers that end a sentence about prices count mandrels."""
    ahead = layout.figures[figure.index : figure.index + _MOST_BREAKS + 1]
    counts = [other for other in ahead if other.sentence == figure.sentence]
    if len(counts) > _MOST_BREAKS:
        return False
    if not all(other.unit is None and other.number.style == "integer" for other in counts):
        return False
    last = layout.spans[figure.sentence][1]
    behind = layout.words(counts[-1].end, layout.tokens[last].end)
    if not _ENDS_COUNT.match(behind):
        return False
    between = (layout.words(a.end, b.start) for a, b in pairwise(counts))
    if not all(_NEXT_COUNT.match(words) for words in between):
        return False
    earlier = layout.before(figure)
    goes_on = earlier is not None and earlier.how == "cue" and earlier.role == "noise"
    return _PRICE_AT.search(before) is not None or (
        goes_on
        and earlier is not None
        and earlier.sentence == figure.sentence
        and _NEXT_COUNT.match(layout.words(earlier.end, figure.start)) is not None
    )


def counts_of_these(figure: Figure, before: str, after: str) -> bool:
    """'450 of these', 'rails per week about 150'"""
    if figure.unit is not None or figure.number.style != "integer":
        return False
    if _OUTPUT_BEFORE.search(before) and not _SIZE_BEHIND.match(after):
        return True
    return _OF_THESE.match(after) is not None


def counts_bends(layout: Layout, figure: Figure) -> bool:
    """'45 at 90 deg and 15 at 30 deg' are bends."""
    angle = layout.after_in_sentence(figure)
    if angle is None or not (angle.unit or "").startswith(("noise:°", "noise:deg", "noise:grad")):
        return False
    joint = layout.text[figure.end : angle.start].strip().casefold()
    return figure.unit is None and figure.number.style == "integer" and joint in ("at", "@", "of")
