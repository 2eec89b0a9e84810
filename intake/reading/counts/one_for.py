"""A further mandrel for a further size, named by an article alone: 'zwei Dorne für 53 x 1,5 und
einen für 43 x 1,5'; and further ones, by a word for 'more': 'and 2 more for 2 x .083'."""

from __future__ import annotations

import re
from collections.abc import Iterator, Sequence

from ...late_pattern import late_pattern

_FOR_SIZE = r"\s(?:for|für|pour|para|per|voor)\s(?:[^\W\d]+,?\s){0,3}?(?=[Øø]?\s?\.?\d)"
_ONE_FOR = late_pattern(
    r"(?:\b(?:and|und|et|y|e|en|sowie|plus)|[,;:+&])\s(?:also\s|noch\s|auch\s|aussi\s|también\s|anche\s|ook\s)?"
    r"(?P<one>one|eine?n?|eins|une?|uno|una|één|een)" + _FOR_SIZE,
    re.IGNORECASE,
)
_WORDS = {
    1: "one a an eine? einen einer eins une? uno una één een",
    2: "two zwei deux dos due twee",
    3: "three drei trois tres tre drie",
    4: "four vier quatre cuatro quattro",
    5: "five fünf cinq cinco cinque vijf",
    6: "six sechs seis sei zes",
}
_COUNT = r"(?P<count>[1-9]\d?|" + "|".join(" ".join(_WORDS.values()).split()) + ")"
_TOOL = (
    r"(?:\s(?:mandrels?|tools?|pcs?|pieces?|off|ones?|dorne?|stück|mandrins?|pièces?|anim[ae]"
    r"|mandrin[io]|pezz[io]|mandril(?:es)?|piezas?|doorn(?:en)?|stuks?))?"
)
_MORE_BEHIND = (
    r"(?:more|further|additional|extra|weitere[rnsm]?|zusätzliche[rns]?|autres?|de\splus|altr[aeio]"
    r"|in\spiù|más|supplémentaires?|adicional(?:es)?)"
)
_MORE_BEFORE = r"(?:another|noch|weitere|encore|ancora|altr[ei]|otros|otras|nog|d'autres)"
_MORE_FOR = late_pattern(
    r"(?<![\w.,/'-])(?:"
    + rf"{_COUNT}{_TOOL}\s{_MORE_BEHIND}{_TOOL}"
    + "|"
    + rf"{_MORE_BEFORE}\s{_COUNT.replace('?P<count>', '?P<behind>')}{_TOOL}"
    + r"|(?P<another>another|otro|otra|un'altra)(?:\sone)?"
    + _TOOL
    + r")"
    + _FOR_SIZE,
    re.IGNORECASE,
)


def ones_for(text: str, known: Sequence[tuple[int, int]]) -> list[tuple[int, int]]:
    """Where such articles stand that none of the ``known`` counts covers."""
    spans = [match.span("one") for match in _ONE_FOR.finditer(text)]
    return [(a, b) for a, b in spans if not any(a < end and start < b for start, end in known)]


def more_for(text: str) -> Iterator[tuple[int, int, int]]:
    """Where the count of further mandrels for a size begins and ends, and how many they are."""
    for match in _MORE_FOR.finditer(text):
        name = match.lastgroup or ""
        yield *match.span(name), 1 if name == "another" else _value(match[name])


def _value(said: str) -> int:
    if said.isdecimal():
        return int(said)
    words = ((n, form) for n, forms in _WORDS.items() for form in forms.split())
    return next((n for n, form in words if re.fullmatch(form, said, re.IGNORECASE)), 1)
