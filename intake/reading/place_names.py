"""How the places of a list are named: 'line 3', 'Pos. 2', 'the last row', 'b)'."""

from __future__ import annotations

from collections.abc import Sequence

COUNTED = {
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
LAST = frozenset(
    "last letzte letzten dernier dernière último última ultimo ultima laatste bottom".split()
)
MIDDLE = frozenset("middle mittlere mittleren milieu centrale mezzo middelste".split())
"""Of an odd number of lines."""
NOUN = (
    r"(?:items?|lines?|rows?|numbers?|no\.?|nos\.?|nr\.?|pos\.?|positions?|position(?:en)?|zeilen?|"
    r"lignes?|numéro|n°|articles?|art[íi]culos?|partidas?|filas?|líneas?|lineas?|linee|linea|righe|riga|voc[ei]|regels?|"
    r"sizes?|ones?|entry|entries|repères?|reperes?|marks?|#)"
)
ARTICLE = r"(?:(?:the|die|der|den|das|le|la|les|el|los|il|lo|de|het)\s|l['’])?"
_COUNT_WORD = "|".join(sorted((*COUNTED, *LAST, *MIDDLE), key=len, reverse=True))
NAME = r"(?P<number>\d{1,2}|[a-h](?=\))|(?-i:[A-H])\b)\)?"
NO_MEASURE = (
    r"(?![\w/\"”'%]|[.,-]\d"
    r"|\s?(?:mm|cm|in\b|inch|ga\b|gauge|x\b|×|off\b|pcs|pieces|mandrels?\b|of\b"
    r"|ea\b|each|times\b|st(?:\b|ück|k\b)|stuks?\b|pz\b|pezzi|pièces?|piezas?|\w*dorne?\b"
    r"|mandrin|mandril|doorn|days?\b|weeks?\b))"
)
COUNTED_PLACE = (
    rf"(?P<counted>{_COUNT_WORD})(?:\s(?:{NOUN}|of (?:them|these|those)))?\b"
    r"(?!\s(?:\d|two|three|four|few|couple|zwei|drei|deux|dos|due|twee|week|month|year|mail|order|"
    r"time|quote|thing|part|bit|question))"
)
BARE = rf"{ARTICLE}(?:(?:{NOUN}\s?)?\(?{NAME}{NO_MEASURE}|{COUNTED_PLACE})"
"""Perhaps a number alone: 'drop 5'."""

ENDS = (
    r"(?=\s*(?:$|[.,;:!()?–-]|please\b|pls\b|bitte\b|svp\b|s['’]il\b|por favor\b|per favore\b"
    r"|graag\b|for now\b|then\b|only\b|alone\b|nur\b|anbieten\b|nodig\b|aan\b|below\b|above\b"
    r"|from below\b|(?:in|on|of|from|off|auf|aus|im|de|en|dans|della?|van|op|uit) (?:\w+ )?"
    r"(?:list[aes]?|lijst(?:je)?)\b))"
)
"""'Only the second has a seam' goes on, and asks for nothing."""


def places(number: str | None, counted: str | None, names: Sequence[str]) -> list[int]:
    """Indexes of the lines that are called so; empty where the list has no such place."""
    if number is not None:
        return [index for index, name in enumerate(names) if name == number.casefold()]
    word = (counted or "").casefold()
    if word in LAST:
        return [len(names) - 1]
    if word in MIDDLE:
        return [len(names) // 2] if len(names) % 2 else []
    at = COUNTED.get(word, 0)
    return [at - 1] if 0 < at <= len(names) else []
