"""Lines that are numbered by a noun of their own: 'Tube 1: ...', 'Job 2: ...', 'Rohr A - ...'.

Where a list is numbered so, the noun means its places throughout the message: 'we own the mandrel
for tube 1, so quote tubes 2 and 3'. It is read as 'item', which all that picks lines knows.
"""

from __future__ import annotations

import re

from ...late_pattern import late_pattern
from ..text.patterns import any_of, whole_words
from .place_names import NO_MEASURE

_NOUN = any_of(
    "tube | tubes | pipe | pipes | job | jobs | part | parts | bend | bends | piece | hoop | hoops",
    "option | options | mandrel | mandrels | tool | tools | die | dies | set | sets | type | types",
    "rohr | rohre | rohren | teil | teile | dorn | dorne | auftrag | bogen | variante | typ",
    "tuyau | tuyaux | pièce | pièces | mandrin | mandrins | coude | coudes | tubo | tubos | pieza",
    "piezas | mandril | mandriles | curva | curvas | tubi | pezzo | pezzi | mandrino | mandrini",
    "curve | anima | buis | buizen | pijp | doorn | doornen | bocht | bochten",
)
_LINE = late_pattern(
    rf"^[ \t]{{0,8}}(?:[-*•>]\s?)?(?P<noun>{_NOUN})\s?#?(?P<name>\d{{1,2}}|[A-Ha-h])"
    r"\s?(?:[:)]|\.(?!\d)|[-–—]\s)",
    re.IGNORECASE | re.MULTILINE,
)
_LEAST = 2
_ENDS = ("s", "x", "e", "en", "n", "i")
"""What a plural adds, or puts in the place of the last letter."""
_KNOWN, _KNOWN_SHORT = "item", "pos"
_WORD = late_pattern(
    rf"\b(?P<noun>{_NOUN})(?=\s?#?\(?(?P<name>\d{{1,2}}|[A-Ha-h])\b\)?{NO_MEASURE})", re.IGNORECASE
)

_ONLY = whole_words(
    "only | just | nur | seulement | uniquement | solo | sólo | solamente | soltanto | alleen",
)
"""'Drawings only for tube B': `by_letter` weighs what an 'only' before such a noun is said of."""
_CLAUSE = re.compile(r"[.;:!?\n]\s?|,\s")
_LISTED = late_pattern(
    rf"\s?#?\(?(?:\d{{1,2}}|[A-Ha-h])\)?(?:,|\s(?:and|&|und|et|y|e|en))\s(?:{_NOUN}\s)?"
    r"(?:\d{1,2}|[A-H])\b",
    re.IGNORECASE,
)
_FAR = 60


_CHOSEN = late_pattern(
    r"\b(?P<asks>(?:go(?:ing)?(?: ahead)? with|take|do|choose|pick|prefer|order|want|need"
    r"|nehmen(?: wir)?|hätten gern|wählen"
    r"|prenons|prendrons|choisissons|voulons|tomamos|queremos|elegimos|prendiamo"
    r"|vogliamo|scegliamo|nemen(?: we)?|kiezen(?: we)?|willen)(?: for)?) (?=\(?[A-H]\b(?!['’]))"
    r"|(?:^|[.!?,]\s)(?P<is>[A-H]) (?:it is|then|please|bitte|svp|s'il vous plaît|por favor"
    r"|per favore|graag)(?=\s*(?:[.,;!]|$))",
    re.MULTILINE,
)
"""'We'll take B', 'B it is': of options that bear letters."""


def with_options_named(told: str, listed: str) -> str:
    """The words of a reply on lines that another mail lists, named in them as in that mail."""
    lines = list(_LINE.finditer(listed))
    if any(line["name"].isalpha() for line in lines):
        told = _CHOSEN.sub(
            lambda m: f"{m['asks']} item " if m["asks"] else f". take item {m['is']}", told
        )
    return with_items_named(told, listed)


def with_items_named(text: str, listed: str = "") -> str:
    """The text, at equal length, with the noun of its own numbered lines read as 'item'; of the
    lines of another text, where they are ``listed`` there."""
    lines = list(_LINE.finditer(listed or text))
    if len(lines) < _LEAST:
        return text
    nouns = {line["noun"].casefold() for line in lines}
    names = {line["name"].casefold() for line in lines}
    if len(nouns) > 1 or len(names) < len(lines):
        return text
    noun = nouns.pop()

    def known(match: re.Match[str]) -> str:
        word = match["noun"]
        if not _is_of(noun, word.casefold()) or match["name"].casefold() not in names:
            return word
        ahead = _CLAUSE.split(text[max(0, match.start() - _FAR) : match.start()])[-1]
        if _ONLY.search(ahead.casefold()) and not _LISTED.match(text, match.end()):
            return word
        return (_KNOWN if len(word) >= len(_KNOWN) else _KNOWN_SHORT).rjust(len(word))

    return _WORD.sub(known, text)


def _is_of(noun: str, word: str) -> bool:
    """Whether a word is that noun, perhaps as a plural: 'tube', 'tubes'; 'tubo', 'tubi'."""
    return word == noun or any(word in (noun + end, noun[:-1] + end) for end in _ENDS)
