"""Radii as multiples of the tube's diameter, spelled out in German, French, Spanish, Italian and
Dutch: 'quatre fois le diamètre', 'vierfacher Rohrdurchmesser', 'una vez y media el diámetro'.
"""

from __future__ import annotations

import re
from decimal import Decimal
from functools import lru_cache

from ...late_pattern import late_pattern
from ..text.patterns import any_of
from .numbers import Number

_COUNTS: dict[str, Decimal] = {
    word: Decimal(value)
    for value, words in (
        ("1", "ein un une una één een"),
        ("1.5", "anderthalb eineinhalb anderhalf anderhalve"),
        ("2", "zwei deux dos due twee"),
        ("2.5", "zweieinhalb tweeënhalf tweeëneenhalf"),
        ("3", "drei trois tres tre drie"),
        ("3.5", "dreieinhalb drieënhalf drieëneenhalf"),
        ("4", "vier quatre cuatro quattro"),
        ("4.5", "viereinhalb vierenhalf"),
        ("5", "fünf fuenf cinq cinco cinque vijf"),
        ("6", "sechs six seis sei zes"),
    )
    for word in words.split()
}
_FACTORS: tuple[tuple[Decimal, str], ...] = (
    (Decimal("1.5"), "anderthalbfach | eineinhalbfach"),
    (Decimal("2.5"), "zweieinhalbfach"),
    (Decimal("3.5"), "dreieinhalbfach"),
    (Decimal(2), "doppelt | zweifach | double | doble | doppio | dubbel | tweevoudig"),
    (Decimal(3), "dreifach | triple | triplo | driedubbel | drievoudig"),
    (Decimal(4), "vierfach | quadruple | cuádruple | cuadruple | quadruplo | viervoudig"),
    (Decimal(5), "fünffach | quintuple | quíntuple | quintuplo | vijfvoudig"),
    (Decimal(6), "sechsfach"),
)
_FACTOR = "|".join(
    f"(?P<factor{number}>{any_of(words)})" for number, (_, words) in enumerate(_FACTORS)
)
_TIMES = any_of(r"\s?mal | \s?maal | \s?keer | \sfois | \sve(?:z|ces) | \svolt[ae]")
_HALF = (
    r"(?:\s(?:et|y|ed?|en|und)\s(?:une?\s|ein\s|een\s)?"
    r"(?:demie?|medi[ao]|mezz[ao]|halb|half|halve)\b)"
)
_THE = (
    r"(?:\s(?:so gro(?:ß|ss) wie|le|la|du|el|del|il|al|der|den|dem|des|de|het|vom|van|di|son|su|suo"
    r"|seine[mns]?|zijn)){0,3}\s"
)
_OF_TUBE = r"(?:\s(?:ext[\w.]*|est[\w.]*|du tube|del tubo|van de buis|des rohre?s))?"
_DIAMETER = (
    any_of(
        r"(?:rohr)?(?:außen)?durchmessers?\b | diam[èe]tres?\b | di[áa]metr[oi]s?\b",
        r"(?:buis|buiten|pijp)?diameters?\b | o\.?d\b | d\b | da\b | (?:rohr-?)?Ø",
    )
    + _OF_TUBE
)
_NO_FIGURE = r"(?!\s?[:(]?\s?\d)"
"""'Zweimal Durchmesser 40' counts, and does not multiply."""
_SPELLED = late_pattern(
    rf"(?:(?P<count>{'|'.join(_COUNTS)}){_TIMES}(?P<half>{_HALF})?"
    rf"|(?:{_FACTOR})(?:e[nrsm]?|s|a)?){_THE}{_DIAMETER}{_NO_FIGURE}",
    re.IGNORECASE,
)
_DIAMETERS = late_pattern(
    rf"(?P<count>{'|'.join(_COUNTS)})\s"
    rf"(?:rohr)?(?:durchmesser|diam[èe]tres|di[áa]metros|diametri|diameters)\b(?P<half>{_HALF})?"
    rf"(?!\s(?:diff|versch|distint|divers))(?!\s?[:(]\s?\d){_NO_FIGURE}",
    re.IGNORECASE,
)
"""'Rayon de trois diamètres': only behind words for the radius."""
_ONCE = late_pattern(
    _DIAMETER + r"(?!\s?[:=(x×*+-]?\s?\d)(?!\s(?:mal|fois|ve(?:z|ces)|volt[ae]|keer|maal|x|plus"
    r"|minus|moins|más|più|menos|meno|min)\b)",
    re.IGNORECASE,
)
_RADIUS = (
    r"\b(?:\w*radius|\w*halbmesser|rayon|radio|raggio|\w*straal|r)"
    r"(?:\s(?:de (?:cintrage|curvatura|doblado)|di (?:piega|curvatura|piegatura)|der biegung"
    r"|moyen|neutre|medio|innen|intérieur|interior|interno|des bogens|van de bocht)){0,2}"
)
_SAID = (
    r"(?:\s?[:=]|\s(?:de|di|da|du|à|a|al|au|von|vom|van|mit|met|auf|op|is|ist|est|es|è|être|sia|beträgt"
    r"|égal|pari|igual|uguale|gleich|gelijk|aan)){1,4}\s$"
)
_RADIUS_AHEAD = late_pattern(_RADIUS + _SAID, re.IGNORECASE)
_BENT_AHEAD = late_pattern(
    r"\b(?:cintr\w+ (?:à|sur)|pieg\w+ a|curv\w+ a|dobl\w+ a|gebogen (?:auf|mit|op|met))\s$",
    re.IGNORECASE,
)
_EQUAL_AHEAD = late_pattern(
    _RADIUS + r"(?:\s(?:ist|est|es|è|is|soll|sein|doit|être|debe ser|deve essere|moet)){0,2}\s"
    r"(?:gleich(?: dem| de[sn])?|entspricht dem|égale? au|équivaut au|igual al?|equivale al"
    r"|pari al|uguale al|(?:is )?gelijk aan (?:de|het))\s$",
    re.IGNORECASE,
)
_BACK = 64
_DIAMETER_WORD = re.compile(
    r"(?:rohr)?(?:au(?:ß|ss)en)?durchmesser|diam[èe]tre|di[áa]metro|(?:buis|buiten|pijp)?diameter"
)
_COUNT_WORD = re.compile(rf"(?:{'|'.join(_COUNTS)})(?:mal|maal|keer)?")
_FACTOR_WORD = re.compile(rf"(?:{_FACTOR})(?:e[nrsm]?|s|a)?")


@lru_cache(maxsize=8192)
def begins_multiple(word: str) -> bool:
    """Whether a multiple may begin with this word, casefolded."""
    return any(
        words.fullmatch(word) is not None for words in (_COUNT_WORD, _FACTOR_WORD, _DIAMETER_WORD)
    )


def foreign_multiple_at(text: str, place: int) -> Number | None:
    """The number of diameters that words starting exactly there name, or None."""
    found = _SPELLED.match(text, place)
    if found is not None and found["count"] is None:
        times = next(
            value for number, (value, _) in enumerate(_FACTORS) if found[f"factor{number}"]
        )
        return Number(place, found.end(), (times,), "words")
    ahead = text[max(0, place - _BACK) : place]
    if found is None:
        found = _DIAMETERS.match(text, place)
        if found is not None and not (_RADIUS_AHEAD.search(ahead) or _BENT_AHEAD.search(ahead)):
            return None
    if found is not None:
        times = _COUNTS[found["count"].casefold()] + (Decimal("0.5") if found["half"] else 0)
        # "einmal Durchmesser ...", "une fois le diamètre confirmé" tell of no radius
        return Number(place, found.end(), (times,), "words") if times > 1 else None
    once = _ONCE.match(text, place)
    if once is None or not _EQUAL_AHEAD.search(ahead):
        return None
    return Number(place, once.end(), (Decimal(1),), "words")
