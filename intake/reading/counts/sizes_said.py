"""How many sizes a message says that there are: 'two sizes', 'each of the three'."""

from __future__ import annotations

from ...late_pattern import late_pattern
from ..text.patterns import any_of

_NUMBERS = {
    2: "two | 2 | zwei | deux | dos | due | twee",
    3: "three | 3 | drei | trois | tres | tre | drie",
    4: "four | 4 | vier | quatre | cuatro | quattro",
    5: "five | 5 | fünf | cinq | cinco | cinque | vijf",
    6: "six | 6 | sechs | seis | sei | zes",
}
COUNTED = {word.strip(): n for n, words in _NUMBERS.items() for word in words.split("|")}
SIZES = late_pattern(
    rf"(?<![\d./,-])\b(?P<number>{any_of(*_NUMBERS.values())})\s"
    + any_of(
        r"(?:different |separate |tube |bend |mandrel )?(?:sizes|radii)",
        r"(?:different|separate) (?:tubes|radiuses|diameters)",
        r"(?:verschiedene )?(?:(?:rohr)?größen|(?:rohr)?grössen|radien|abmessungen)",
        r"verschiedene (?:rohre|durchmesser) | (?:tailles|rayons|dimensions)(?: différent\w+)?",
        r"tubes différents | diamètres différents",
        r"(?:medidas|radios|tamaños)(?: distint\w+| diferentes)? | tubos (?:distintos|diferentes)",
        r"(?:misure|raggi)(?: divers\w+)? | tubi diversi",
        r"(?:verschillende )?(?:maten|stralen|afmetingen) | verschillende buizen",
    )
    + r"\b"
)
_OF_THESE = late_pattern(
    rf"\b(?:all|each|every one|one for each|jede[nrs]?|je eine?n?|alle|chacun\w*|cada uno|ognuno"
    rf"|elk)"
    rf"(?: of| von| de| di| van)?(?: the| these| those| den| diesen| los| las| les)? "
    rf"(?P<number>{any_of(*_NUMBERS.values())})\b(?![.,/]\d)"
)


def sizes_said(text: str) -> list[int]:
    """How many sizes the text says there are."""
    return [COUNTED[found["number"]] for found in SIZES.finditer(text)]


def sizes_counted(text: str) -> set[int]:
    """How many sizes a text says that there are, or that it wants all of: 'each of the three'."""
    words = text.casefold()
    return {*sizes_said(words), *(COUNTED[found["number"]] for found in _OF_THESE.finditer(words))}
