"""Lengths dictated in other languages with no unit behind them: 'vierziger Rohr', 'rayon cent'.

A number word alone is far more often a count or an article: it measures only beside a word that
names a length, before 'er Rohr', or on either side of a times sign.
"""

from __future__ import annotations

import re
from collections.abc import Callable
from decimal import Decimal

from ...late_pattern import late_pattern
from ..text.patterns import any_of, word_set
from .numbers import Number, Style

ValueOf = Callable[[str], "int | Decimal | None"]
_IS = r"(?:\s(?:von|ist|auf|mit|de|da|di|van|à|est|es|è|is|op|sind|beträgt|neutre|:)){0,2}:?\s$"
_NAMED = late_pattern(
    r"(?:^|[^\w-])"
    + any_of(
        "(?:biege|mitten|innen|außen)?radius | wand(?:stärke|dicke|ung)?",
        "(?:rohr)?(?:außen)?durchmesser",
        "rayon(?: de cintrage)? | [ée]paisseur | paroi | diam[èe]tre | raggio(?: di curvatura)?",
        "spesso(?:re)? | parete | diametro | radio(?: de curvatura)? | pared | espesor | diámetro",
        "straal | (?:buig|bocht)(?:radius|straal) | wand(?:dikte)? | (?:buis|buiten)?diameter",
    )
    + _IS
)
_TUBE_BEFORE = late_pattern(r"(?:^|\W)(?:tube|tuyau|tubo|rohr|buis)(?:\s(?:de|da|von|van))?\s$")
_MANDREL_BEFORE = late_pattern(
    r"(?:^|\W)(?:(?:biege)?dorn|mandrin|mandril|mandrino|doorn)\s(?:de|da|von|van|für|pour|para|per|voor)\s$"
)
_TIMES_BEFORE = late_pattern(r"[^\W_]\s(?:mal|par|per|por|bij|x|auf|sur)\s$")
_TIMES_BEHIND = late_pattern(r"\s(?:mal|par|per|por|bij|x|sur)\s(?P<next>[^\W\d_]+|\d)")
_OF_A_TUBE = late_pattern(
    r"(?:(?:,|\s(?:und|oder|bzw\.?|en|of))\s\w+er)?\s(?:\w+\s)?(?:rohre?s?|edelstahl|stahl|alu|biegedorn|dorne?|radius|wand|buis|buizen|doorn)\b"
)
_COUNTED = late_pattern(
    r"\s(?:stück|stk|meter|m\b|jahre?n?|tagen?|wochen?|dorne?|rohre|teile|prozent|grad"
    r"|pièces?|mandrins?|mètres?|tubes|jours?|semaines?|ans|degrés|piezas?|mandriles?|metros?|tubos"
    r"|días|semanas|grados|años|pezz[io]|mandrin[io]|metri|tubi|giorni|settimane|gradi|anni|stuks?"
    r"|doorn(?:en)?|dagen|weken|graden|buizen|jaar|zoll|pulgadas?|pouces?|pollic[ei]|duim|d\b"
    r"|(?:mal|fois|veces|volte|keer|maal)\s(?:d|da|od|ø|l[ea]|el|il|de[rnm]?|het|diam\w*"
    r"|(?:rohr)?durchm\w*)\b)"
)
_ALSO_ENGLISH = word_set("once due seize sept six cent sei dos tre den")
_NO_ENGLISH = late_pattern(
    r"\b(?:rayon|[ée]paisseur|paroi|raggio|spesso(?:re)?|parete|radio|pared|espesor|tubo|tuyau|diam[èe]tre"
    r"|diámetro|diametro|de|da|per|por)\b[^.;]{0,12}$"
)
"""'The radius once the die shows up', 'the wall due to': no eleven and no two."""
_WALL_BEHIND = late_pattern(
    r"\s(?:wand(?:stärke|dicke|dikte|ung)?|dick|stark|de paroi|d'épaisseur|di spessore|di parete"
    r"|de pared|de espesor|dik)\b"
)
_WORD = late_pattern(r"[^\W\d_]+(?:-[^\W\d_]+)*")
_CALLED = tuple(f"{end}er" for end in ("zig", "ßig", "ssig", "tig", "zehn", "tien", "hundert"))
"""'Vierziger'; 'center' and Dutch 'achter' are none."""
_MOST_WORDS = 5
_LEAST_OD = 8
_LEAD = 40


def dictated_at(text: str, place: int, value_of: ValueOf) -> Number | None:
    """The length in words that begins there and that the words around it say to be one."""
    first = _WORD.match(text, place)
    if first is None:
        return None
    called = _called_at(text, first, value_of)
    if called is not None:
        return called
    found = _longest(text, place, value_of)
    if found is None:
        return None
    value, end = found
    ahead = text[max(0, place - _LEAD) : place].casefold()
    times = _TIMES_BEFORE.search(ahead) is not None
    named = _NAMED.search(ahead) is not None
    article = value == 1 and first[0].casefold() != "eins"
    if value < _LEAST_OD:
        whole, behind = _with_tenths(text, value, end, value_of)
        if named or times or _WALL_BEHIND.match(text[behind : behind + 16].casefold()):
            alone = named and text[behind : behind + 1] in ("", ",", ";", ".", "\n")
            article = article and whole == value and not alone  # not "épaisseur un, rayon cent"
            named, value, end = named or not times, whole, behind
    if first[0].casefold() in _ALSO_ENGLISH and not _NO_ENGLISH.search(ahead):
        return None
    if article or _COUNTED.match(text[end : end + 32].casefold()):
        return None
    tube = _TUBE_BEFORE.search(ahead) or _MANDREL_BEFORE.search(ahead)
    large = value >= _LEAST_OD
    multiplied = large and _is_multiplied(text, end, value_of)
    if not (
        named or multiplied or (large and tube) or (times and _follows_length(ahead, value_of))
    ):
        return None
    # a whole number before "mal" would be a count: "vierzig mal zwei"
    whole_style: Style = "words" if multiplied else "integer"
    style: Style = whole_style if value == value.to_integral_value() else "decimal"
    return Number(place, end, (value,), style)


def _called_at(text: str, first: re.Match[str], value_of: ValueOf) -> Number | None:
    """'vierziger Rohr', 'zweiundvierziger'"""
    word, place, end = first[0].casefold(), first.start(), first.end()
    value = value_of(word[:-2]) if word.endswith(_CALLED) else None
    if value is None or value < _LEAST_OD or not _OF_A_TUBE.match(text[end : end + 32].casefold()):
        return None
    return Number(place, end - 2, (Decimal(value),), "integer")


def _longest(text: str, place: int, value_of: ValueOf) -> tuple[Decimal, int] | None:
    ends: list[int] = []
    at = place
    for _ in range(_MOST_WORDS):
        word = _WORD.match(text, at)
        if word is None:
            break
        ends.append(word.end())
        if text[word.end() : word.end() + 1] != " ":
            break
        at = word.end() + 1
    for end in reversed(ends):
        value = value_of(text[place:end].casefold())
        if value is not None:
            return Decimal(value), end
    return None


def _with_tenths(text: str, value: Decimal, end: int, value_of: ValueOf) -> tuple[Decimal, int]:
    """'eins fünf', 'un virgule cinq', 'uno coma cinco', 'uno e mezzo': 1.5."""
    if value != value.to_integral_value():
        return value, end
    half = _AND_HALF.match(text, end)
    if half is not None:
        return value + Decimal("0.5"), half.end()
    match = _TENTHS.match(text, end)
    part = value_of(match["part"].casefold()) if match is not None else None
    if match is None or part is None or not 0 < part < 10 or part % 1:
        return value, end
    return value + Decimal(part) / 10, match.end()


_TENTHS = late_pattern(
    r"\s(?:komma\s|punkt\s|virgule\s|virgola\s|coma\s|punto\s)?(?P<part>[^\W\d_]+)", re.IGNORECASE
)


_AND_HALF = late_pattern(r"\s(?:et demie?|y medi[oa]|e mezz[oa]|en (?:een )?half)\b", re.IGNORECASE)


def _is_multiplied(text: str, end: int, value_of: ValueOf) -> bool:
    match = _TIMES_BEHIND.match(text, end)
    if match is None:
        return False
    return match["next"].isdigit() or value_of(match["next"].casefold()) is not None


def _follows_length(ahead: str, value_of: ValueOf) -> bool:
    """Whether a number stands before the times sign: 'dreißig mal zwei'."""
    words = ahead.split()
    if len(words) < 2:
        return False
    last = words[-2]
    value = value_of(last)
    return last[-1:].isdigit() or (value is not None and value >= _LEAST_OD)
