"""Lines that are asked for by the letter or number that a noun gives them: 'only tube B', where the
lines begin 'Tube A:' and 'Tube B:'."""

from __future__ import annotations

from collections.abc import Sequence

from ...late_pattern import late_pattern
from ..text.patterns import whole_words
from ..wanted.told_unneeded_words import OTHER_THINGS
from .place_lists import NO_REQUEST, clause_of
from .place_names import ENDS

_NOUN = (
    r"(?:tub(?:e|ing|o|i)|pipe|rohr(?:e|typ)?|buis|buizen|option|variante?|opzione|opción|optie|profil(?:e)?"
    r"|part|teil|pièce|pieza|pezzo|onderdeel|job|frame|machine|case|typ[eo]?|stelle|bend|bogen)"
)
_LABEL = late_pattern(rf"^\W*(?P<noun>{_NOUN}|item|pos)\s(?P<label>[a-h]|\d{{1,2}})\s?[:=.)–—-]")
_ONLY = late_pattern(
    rf"\b(?:only|just|nur|seulement|uniquement|solo|sólo|solamente|soltanto|alleen)\s"
    r"(?:(?:need|want|quote|price|offer|for|on|an?|one|1|mandrel|\w*dorn|mandrin|mandril|mandrino|doorn"
    r"|brauchen?|wir|einen|ein|für|das|die|den|un|pour|le|la|para|el|per|il|een|voor|de|the)\s){0,7}"
    rf"(?P<noun>{_NOUN})\s(?P<label>[a-h]|\d{{1,2}})(?:\s(?:please|bitte|anbieten|svp|graag|for now"
    rf"|vorerst|at present))?{ENDS}",
)
_ALL_TOO = late_pattern(
    r"\b(?:also|as well|too|both|auch|beide|aussi|también|anche|ook|every|all|alle|each|apiece"
    r"|jeweils"
    r"|je ein(?:en)?|chacun\w*|cada|ciascun\w*|elk)\b"
)


_OTHER_THINGS = whole_words(
    r"balls? | dies | clamps? | seam | holes? | pdf | photos? | pictures? | files? | attach\w* "
    r"| deeper",
    r"tighter | different\w* | special | longer | shorter | hardened | urgent | paint\w*",
    r"kugel\w* | naht | bohrung\w* | foto\w* | anbei | tiefer | enger | anders | gehärtet | eilig "
    r"| lack",
    r"boules? | matrices? | photo | joint\w* | différent\w* | urgent\w* | bolas? | matriz | foto",
    r"adjunt\w* | distint\w* | urgente | sfer\w+ | matrice | allegat\w* | divers\w* | kogels?",
    r"bijlage | anders | dringend",
)
"""Said before an 'only', it is this that is for one of the sizes only."""


def speaks_of_other(words: str, place: int) -> bool:
    """Whether the clause before ``place`` names another thing: 'M16 thread only for tube B'."""
    begin = max(words.rfind(sign, 0, place) for sign in (". ", ", ", "; ", "(", "! ", "? ")) + 1
    ahead = words[max(0, begin) : place]
    return any(pattern.search(ahead) for pattern in (OTHER_THINGS, _OTHER_THINGS))


def picked_by_letter(words: str, lines: Sequence[str]) -> set[int]:
    """The lines that the words ask for alone; empty where a letter fits none, or two."""
    labels = [_LABEL.match(line.casefold()) for line in lines]
    spaced = " ".join(words.split()).casefold()
    if not all(labels) or _ALL_TOO.search(spaced):
        return set()
    named = [label["label"] for label in labels if label is not None]
    found: set[int] = set()
    for match in _ONLY.finditer(spaced):
        if NO_REQUEST.search(clause_of(spaced, match.start(), match.end())):
            continue
        if speaks_of_other(spaced, match.start()):
            continue
        if named.count(match["label"]) == 1:
            found.add(named.index(match["label"]))
    return found
