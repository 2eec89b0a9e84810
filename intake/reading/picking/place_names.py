"""How the places of a list are named: 'line 3', 'Pos. 2', 'the last row', 'b)'."""

from __future__ import annotations

import re
from collections.abc import Iterable, Sequence

from ...late_pattern import late_pattern

COUNTED = {
    word: number
    for number, words in enumerate(
        (
            "first 1st top erste ersten oberste"
            " premier première primer primero primera primo prima eerste",
            "second 2nd zweite zweiten deuxième segundo segunda secondo seconda tweede",
            "third 3rd dritte dritten troisième tercero tercera terzo terza derde",
            "fourth 4th vierte vierten quatrième cuarto cuarta quarto quarta vierde",
            "fifth 5th fünfte fünften cinquième quinto quinta vijfde",
        ),
        start=1,
    )
    for word in words.split()
}
LAST = frozenset(
    (
        "last letzte letzten unterste dernier dernière último última ultimo ultima laatste bottom"
    ).split()
)
MIDDLE = frozenset("middle mittlere mittleren milieu centrale mezzo medio middelste".split())
"""Of an odd number of lines."""
NOUN = (
    r"(?:items?|lines?|rows?|numbers?|no\.?|nos\.?|nr\.?|pos\.?|positions?|position(?:en)?|zeilen?|"
    r"lignes?|numéro|n°|articles?|art[íi]culos?|partidas?|filas?|líneas?|lineas?|linee|linea|righe|riga|voc[ei]|regels?|"
    r"sizes?|ones?|entry|entries|repères?|reperes?|marks?|#)"
)
TUBE = (
    r"(?:tubes?|tubing|pipes?|rohre?n?|tuyaux?|tubos?|tubi|buis|buizen|options?|opci[oó]n(?:es)?"
    r"|opzion[ei]|opties?|varianten?|variantes?|varianti)"
)
"""What stands behind a place told in words: 'the first two tubes', 'la seconda opzione'."""
ARTICLE = r"(?:(?:the|die|der|den|das|le|la|les|el|los|las|il|lo|i|le|gli|de|het)\s|l['’])?"
_SEVERAL = {
    word: number
    for number, words in enumerate(
        (
            "two 2 zwei beiden deux dos due twee",
            "three 3 drei trois tres tre drie",
            "four 4 vier quatre cuatro quattro",
            "five 5 fünf cinq cinco cinque vijf",
        ),
        start=2,
    )
    for word in words.split()
}
_FROM_TOP = frozenset(
    "first top ersten premiers premières primeros primeras primi prime eerste".split()
)
_FROM_END = frozenset(
    "last bottom letzten derniers dernières últimos últimas ultimos ultimas ultimi ultime"
    " laatste".split()
)


def _any_word(words: Iterable[str]) -> str:
    return "|".join(sorted(words, key=len, reverse=True))


_ENDS_OF_LIST, _NUMBERS = _any_word(_FROM_TOP | _FROM_END), _any_word(_SEVERAL)
_SPAN = (
    rf"(?:(?:{_ENDS_OF_LIST})\s(?:{_NUMBERS})|(?:{_NUMBERS})\s(?:{_ENDS_OF_LIST}))(?!\w)"
    r"(?!\s(?:pieces?|pcs|mandrels?|dorne?|mandrins?|bends?|parts?|batch\w*|samples?|stück|quotes?"
    r"|orders?|days?|weeks?|months?|years?|times?|mails?|lots?))"
)
"""'The first two', 'die letzten drei', 'les deux premiers'."""
_COUNT_WORD = "|".join(sorted((*COUNTED, *LAST, *MIDDLE), key=len, reverse=True))
NAME = r"(?P<number>\d{1,2}|[a-h](?=\))|(?-i:[A-H])\b)\)?"
NO_MEASURE = (
    r"(?![\w/\"”'%]|[.,-]\d"
    r"|\s?(?:mm|cm|in\b|inch|ga\b|gauge|x\b|×|off\b|pcs|pieces|mandrels?\b|of\b"
    r"|ea\b|each|times\b|st(?:\b|ück|k\b)|stuks?\b|pz\b|pezzi|pièces?|piezas?|\w*dorne?\b"
    r"|mandrin|mandril|doorn|days?\b|weeks?\b))"
)
COUNTED_PLACE = (
    rf"(?P<counted>{_SPAN}|{_COUNT_WORD})(?:\s(?:{NOUN}|{TUBE}|of (?:them|these|those)))?\b"
    r"(?!\s(?:\d|two|three|four|few|couple|zwei|drei|deux|dos|due|twee|week|month|year|mail|order|"
    r"time|quote|thing|part|bit|question))"
)
BARE = rf"{ARTICLE}(?:(?:{NOUN}\s?)?\(?{NAME}{NO_MEASURE}|{COUNTED_PLACE})"
"""Perhaps a number alone: 'drop 5'."""

ENDS = (
    r"(?=\s*(?:$|[.,;:!()?–-]|please\b|pls\b|bitte\b|svp\b|s['’]il\b|por favor\b|per favore\b"
    r"|graag\b|for now\b|then\b|but (?:make|with|in|for|we)\b"
    r"|for (?:\d{1,2}|one|two|three|four|five|six) (?:\w+ )?(?:mandrels?|pcs|pieces?)\b"
    r"|only\b|alone\b|nur\b|anbieten\b|nodig\b|aan\b|below\b|above\b"
    r"|from below\b|(?:in|on|of|from|off|auf|aus|im|de|en|dans|della?|van|op|uit) (?:\w+ )?"
    r"(?:list[aes]?|lijst(?:je)?)\b))"
)
"""'Only the second has a seam' goes on, and asks for nothing."""

NEEDS_ONE = (
    r"(?:needs? (?:an?|one|the|to be quoted|quoting|pricing)\b|(?:is|are) needed\b"
    r"|braucht (?:einen|den)|wird gebraucht|a besoin d'un|nécessite un|necesita (?:un )?mandril"
    r"|(?:ha bisogno di|richiede) (?:un )?(?:mandrino|anima)|heeft een doorn nodig)"
)
"""'Only the second needs a mandrel': by that, too, it is the one asked for."""

SPELLED_TWICE = re.compile(
    r"\b(?P<word>one|two|three|four|five|an?|eine?n?|zwei|drei|une?|deux|trois|un[oa]?|dos|tres|due"
    r"|tre|een|één|twee|drie)\s?\(\d{1,2}\)",
    re.IGNORECASE,
)
"""'One (1) mandrel' counts, and names no line."""


def places(number: str | None, counted: str | None, names: Sequence[str]) -> list[int]:
    """Indexes of the lines that are called so; empty where the list has no such place."""
    if number is not None:
        return [index for index, name in enumerate(names) if name == number.casefold()]
    word = (counted or "").casefold()
    if " " in word:
        return _places_of_several(word.split(), len(names))
    if word in LAST:
        return [len(names) - 1]
    if word in MIDDLE:
        return [len(names) // 2] if len(names) % 2 else []
    at = COUNTED.get(word, 0)
    return [at - 1] if 0 < at <= len(names) else []


def _places_of_several(words: Sequence[str], count: int) -> list[int]:
    """'first two' of so many; empty where the list is no longer than that."""
    several = next(_SEVERAL[word] for word in words if word in _SEVERAL)
    if several >= count:
        return []
    return list(range(count - several, count) if {*words} & _FROM_END else range(several))


_WORDS = {
    word: str(number)
    for number, words in enumerate(
        (
            "one eins un uno een",
            "two zwei deux dos due twee",
            "three drei trois tres tre drie",
            "four vier quatre cuatro quattro",
            "five fünf cinq cinco cinque vijf",
            "six sechs seis sei zes",
            "seven sieben sept siete sette zeven",
            "eight acht huit ocho otto",
        ),
        start=1,
    )
    for word in words.split()
}
_WORD = (
    rf"(?:{_any_word(_WORDS)})\b"
    r"(?!\s(?:mm|inch|in\b|and a half|mandrels?|pieces?|of\b|lines|items))"
)
_IN_WORDS = late_pattern(
    r"\b(?:items?|lines?|rows?|numbers?|nos?\.|pos\.|positions?|position(?:en)?|zeilen?|lignes?|líneas?"
    rf"|filas?|partidas?|righe|riga|voc[ei]|regels?)\s{_WORD}"
    rf"(?:(?:\s?,\s?|\s(?:and|und|et|y|e|en|&)\s|,\s(?:and|und|et|y|e|en)\s){_WORD})*",
    re.IGNORECASE,
)


def with_digits(words: str) -> str:
    """'Lines two and three' as 'lines 2 and 3'."""
    return _IN_WORDS.sub(lambda match: _EACH_WORD.sub(_digit, match[0]), words)


_EACH_WORD = re.compile(rf"\b(?:{_any_word(_WORDS)})\b", re.IGNORECASE)


def _digit(match: re.Match[str]) -> str:
    return _WORDS[match[0].casefold()]
