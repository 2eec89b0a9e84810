"""Sizes of a list that are named by their place and not wanted after all.

'On second thought drop 5', 'please leave out the last row', 'item 2 only', 'Position 3 entfällt'.
"""

from __future__ import annotations

import re
from collections.abc import Sequence

from ..late_pattern import late_pattern
from .patterns import any_of

_COUNTED = {
    word: number
    for number, words in enumerate(
        (
            "first erste ersten premier première primer primero primera primo prima eerste",
            "second zweite zweiten deuxième segundo segunda secondo seconda tweede",
            "third dritte dritten troisième tercero tercera terzo terza derde",
            "fourth vierte vierten quatrième cuarto cuarta quarto quarta vierde",
            "fifth fünfte fünften cinquième quinto quinta vijfde",
        ),
        start=1,
    )
    for word in words.split()
}
_LAST = frozenset(
    "last letzte letzten dernier dernière último última ultimo ultima laatste bottom".split()
)
_NOUN = (
    r"(?:items?|lines?|rows?|numbers?|no\.?|nos\.?|nr\.?|pos\.?|positions?|position(?:en)?|zeilen?|"
    r"lignes?|numéro|n°|articles?|art[íi]culos?|partidas?|filas?|líneas?|lineas?|linee|linea|righe|riga|voc[ei]|regels?|"
    r"sizes?|ones?|entry|entries|repères?|reperes?|marks?|#)"
)
_ARTICLE = r"(?:(?:the|die|der|den|das|le|la|les|el|los|il|lo|de|het)\s|l['’])?"
_COUNT_WORD = "|".join(sorted((*_COUNTED, *_LAST), key=len, reverse=True))
_NAME = r"(?P<number>\d{1,2}|[a-h](?=\))|(?-i:[A-H])\b)\)?"
_NO_MEASURE = (
    r"(?![\w/\"”'%]|[.,-]\d"
    r"|\s?(?:mm|cm|in\b|inch|ga\b|gauge|x\b|×|off\b|pcs|pieces|mandrels?\b|of\b))"
)
_COUNTED_PLACE = (
    rf"(?P<counted>{_COUNT_WORD})(?:\s(?:{_NOUN}|of (?:them|these|those)))?\b"
    r"(?!\s(?:\d|two|three|four|few|couple|zwei|drei|deux|dos|due|twee|week|month|year|mail|order|"
    r"time|quote|thing|part|bit|question))"
)
_BARE = rf"{_ARTICLE}(?:(?:{_NOUN}\s?)?\(?{_NAME}{_NO_MEASURE}|{_COUNTED_PLACE})"
"""Perhaps a number alone: 'drop 5'."""
_PLACE = rf"{_ARTICLE}(?:{_NOUN}\s?\(?{_NAME}{_NO_MEASURE}|{_COUNTED_PLACE})"
_DROP = any_of(
    "drop | scrap | strike(?: out)? | skip | cancel | delete | remove | disregard | forget",
    "ignore",
    "leave out | leave off | no longer need | don't need | do not need | don't want | scratch",
    "omit | streichen sie | streiche | annuler | supprimer | anular | quitar | togliere",
    "annullare",
)
_BUT = any_of(
    "without | except(?: for)? | not | minus | ohne | außer | sauf | sans | excepto | sin | salvo",
    "senza | eccetto | tranne | zonder | behalve",
)
_GONE = any_of(
    r"(?:is |are |has been |have been |was )?(?:no longer (?:needed|required|wanted)|cancelled"
    r"|canceled|dropped|not needed(?: any ?more)?|not required|not wanted|off the list)\b",
    r"can be (?:dropped|left out|ignored|deleted|skipped)\b",
    r"(?:bitte )?(?:streichen|entfällt|entfallen|weglassen)\b | fällt weg\b",
    r"(?:wird|werden|brauchen wir) nicht (?:mehr )?(?:gebraucht|benötigt|mehr)\b",
    r"(?:est |sont )?(?:annulée?s?|supprimée?s?)\b | n'est plus nécessaire",
    r"(?:queda |está )?(?:anulad[oa]|cancelad[oa])\b | ya no (?:es necesari[oa]|hace falta)",
    r"(?:è )?(?:annullat[oa])\b | non serve più | vervalt\b | is niet meer nodig",
)
_ONLY = any_of(
    "only | just | solely | nur | bloß | seulement | uniquement | solo | sólo | solamente",
    "soltanto | alleen | enkel",
)
_ONLY_BEHIND = any_of(
    "only | seulement | uniquement | nur | solamente | soltanto | alleen",
    "is the one (?:i|we) (?:need|want|are after|am after) | alone | allein | seul",
    "is all (?:i|we) (?:need|want)",
)
_DROPPED = late_pattern(rf"\b{_DROP}\s{_BARE}", re.IGNORECASE)
_ENDS = (
    r"(?=\s*(?:$|[.,;:!()?–-]|please\b|pls\b|bitte\b|svp\b|s['’]il\b|por favor\b|per favore\b"
    r"|graag\b|for now\b|then\b))"
)
"""'Only the second has a seam' goes on, and asks for nothing."""
_NAMED = rf"{_ARTICLE}(?:{_NOUN}\s?\(?{_NAME}{_NO_MEASURE}|{_COUNTED_PLACE}{_ENDS})"
_LEFT_OUT = late_pattern(rf"\b{_BUT}\s{_NAMED}", re.IGNORECASE)
_IS_GONE = late_pattern(rf"(?<![\w.,/-]){_BARE}\s{_GONE}", re.IGNORECASE)
_WANTED_ALONE = late_pattern(rf"\b{_ONLY}\s(?:[^\W\d]+\s){{0,7}}?{_NAMED}", re.IGNORECASE)
_WANTED_BEHIND = late_pattern(rf"(?<![\w.,/-]){_PLACE}\s{_ONLY_BEHIND}\b", re.IGNORECASE)
_LABEL = late_pattern(
    rf"^[ \t]*(?:[-*•]\s?)?(?:{_NOUN}\s?)?\(?(?P<label>\d{{1,2}}|[a-h])(?:\s?[).:]|\s-|\t|\s{{2,}})"
    r"[^\n]{0,40}$",
    re.IGNORECASE,
)


def label_before(text: str, start: int) -> str | None:
    """The number or letter that the line of a figure opens with: '5) 1-1/2 x .065'."""
    begin = text.rfind("\n", 0, start) + 1
    label = _LABEL.match(text[begin:start])
    return label["label"].casefold() if label is not None else None


def left_over(words: str, labels: Sequence[str | None]) -> list[int]:
    """Indexes of the listed sizes that ``words`` leave: all of them where none is taken back.

    ``labels`` are what the items are called; where any has no label, or two have the same, they
    are counted from 1. A place that the list doesn't have takes nothing away.
    """
    everything = list(range(len(labels)))
    if len(labels) < 2:
        return everything
    known = [label for label in labels if label is not None]
    names = known if len(set(known)) == len(labels) else [str(n + 1) for n in everything]
    spaced = " ".join(words.split())
    only = {
        index
        for pattern in (_WANTED_ALONE, _WANTED_BEHIND)
        for index in _places(pattern, spaced, names)
    }
    gone = {
        index
        for pattern in (_DROPPED, _LEFT_OUT, _IS_GONE)
        for index in _places(pattern, spaced, names)
    }
    kept = [index for index in everything if index not in gone and (not only or index in only)]
    return kept or everything


def _places(pattern: re.Pattern[str], words: str, names: Sequence[str]) -> list[int]:
    found: list[int] = []
    for match in pattern.finditer(words):
        number, counted = match["number"], match["counted"]
        if number is not None:
            found += [index for index, name in enumerate(names) if name == number.casefold()]
        elif counted.casefold() in _LAST:
            found.append(len(names) - 1)
        elif _COUNTED[counted.casefold()] <= len(names):
            found.append(_COUNTED[counted.casefold()] - 1)
    return found
