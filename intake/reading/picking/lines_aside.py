"""Lines of a list that a note sets aside by their place: they are there already, or can wait.

'We already have line 3', 'line 2 can wait', 'no need to quote item 4', 'Pos. 3 ist vorhanden'.
"""

from __future__ import annotations

import re
from collections.abc import Iterator, Sequence

from ...late_pattern import late_pattern
from ..text.patterns import any_of
from .place_names import ARTICLE, NAME, NO_MEASURE, NOUN, places

_LINE = rf"{ARTICLE}{NOUN}\s?\(?{NAME}{NO_MEASURE}"
_ALONE = (
    r"(?=\s*(?:[.;,!)]|$|-\s|\s(?-i:[A-ZÄÖÜÉÀ])))"
    r"(?![^.;!?]{0,80}\b(?:but|though|worn|(?<!no )need|want|quote it|aber|brauchen|jedoch|mais"
    r"|pero|necesit\w+|ma|serve|maar|nodig|anyway|all the same|trotzdem)\b)"
)
"""Behind such words nothing takes the line in again."""
_TOOL = any_of(
    "(?:the |an? |that )?(?:mandrel|tooling|tool|one) (?:for|of|from)",
    "(?:den |einen )?(?:biege)?dorn (?:für|zu|von|aus)",
    "(?:le |un )?mandrin (?:pour|de)",
    "(?:el |un )?mandril (?:para|de)",
    "(?:il |un )?mandrino (?:per|di|della)",
    "(?:de |een )?(?:buig)?doorn (?:voor|van)",
)
_NOT_QUOTED = any_of(
    r"no need to (?:quote|price|offer)(?: on| for)?",
    r"(?:you )?(?:do not|don't) (?:need to |have to )?(?:quote|price|offer)(?: on| for)?",
    r"(?:you )?needn't (?:quote|price)",
    r"ne pas (?:chiffrer|coter)",
    r"no (?:hace falta )?(?:cotizar|ofertar)",
    r"non (?:serve )?(?:quotare|offrire)",
)
_HAVE = any_of(
    r"(?:we|i)(?:'ve| have)? (?:already |still )?(?:have|got|own)(?: already)?",
    r"(?:wir haben|haben wir)(?: schon| bereits)?",
    r"(?:nous avons|on a) déjà",
    r"ya tenemos",
    r"abbiamo già",
    r"(?:we|wij) hebben(?: al)?",
)
_BEFORE = late_pattern(
    rf"\b(?:{_NOT_QUOTED} (?:{_TOOL} )?|{_HAVE} (?:{_TOOL} )?){_LINE}"
    rf"(?: already| schon| bereits| déjà| ya| già| al)?{_ALONE}",
    re.IGNORECASE,
)
_WAITS = any_of(
    r"(?:can|could|may|will have to) wait",
    r"(?:is|are) (?:not|less) urgent",
    r"(?:kann|können|darf) (?:noch |gerne |auch )?warten",
    r"hat (?:noch )?zeit",
    r"peut(?: encore)? attendre",
    r"puede(?: todavía| aún)? esperar",
    r"può(?: ancora)? (?:aspettare|attendere)",
    r"kan (?:nog )?(?:even )?wachten",
)
_THERE = any_of(
    r"(?:is )?(?:on the shelf|in stock)(?: already)?",
    r"(?:we )?(?:already (?:have|got|own)|(?:have|got) already)(?: that one| that| this one| it)?",
    r"(?:ist |sind )?(?:schon |bereits )?(?:vorhanden|bei uns vorhanden|im haus)",
    r"(?:est |nous est )?déjà (?:en stock|là|disponible)",
    r"(?:ya )?(?:está|la tenemos) en (?:stock|almacén)",
    r"(?:è )?(?:già )?(?:a magazzino|disponibile|presente)",
    r"(?:is )?(?:al )?(?:aanwezig|op voorraad)",
)
_LATER = r"(?: for now| for the moment| until later| till later| vorerst| noch| pour l'instant)?"
_HELD = any_of(
    r"is (?:still )?on hold,? (?:so )?(?:please )?(?:do not|don't) (?:quote|price) it",
    r"is (?:still )?on hold,? (?:so )?(?:please )?leave it out",
)
_BEHIND = late_pattern(
    rf"(?<![\w.,/-]){_LINE}\s(?:- |: )?(?:(?:{_WAITS}|{_THERE}){_LATER}{_ALONE}"
    rf"|{_HELD}(?: yet| for now)?(?=\s*(?:[.;,!)]|$)))",
    re.IGNORECASE,
)
_OF_IT = re.compile(
    r"(?:\b(?:for|of|on|to|with|für|zu|von|pour|de|para|per|di|voor|van)\s(?:the\s|la\s)?"
    r"|\d ?(?:,|and|und|et|y|e|en|&|to|-|bis) ?)$",
    re.IGNORECASE,
)
"""'The drawing for item 1 is in stock' says nothing of the line, '2 and 3 can wait' not all."""
_NEAR = 32


def set_aside(words: str, names: Sequence[str]) -> Iterator[int]:
    """Indexes of the lines called ``names`` that the notes in ``words`` set aside."""
    for match in _BEFORE.finditer(words):
        yield from places(match["number"], None, names)
    for match in _BEHIND.finditer(words):
        if not _OF_IT.search(words[: match.start()][-_NEAR:]):
            yield from places(match["number"], None, names)
