"""'Make it 3 instead of 1': a reply whose one figure counts the mandrels of the quoted mail anew.

A bare figure ('make it 3') could be a length of the quoted tube as well, which is doubted then. All
else of the quoted request stays as it was.
"""

from __future__ import annotations

import re
from dataclasses import dataclass

from ...late_pattern import late_pattern
from ...model import OwnText
from ..counts import words as w
from ..text.patterns import any_of
from .quoted import Relied

_MOST = 20
_SHY = frozenset("et um uma fem another otro otra altro a an".split())
_WORDS = sorted(
    (word for word, n in w.COUNTS.items() if n <= _MOST and word not in _SHY), key=len, reverse=True
)
_COUNT = rf"(?:\d{{1,2}}(?![.,/]?\d)|(?:{'|'.join(map(re.escape, _WORDS))})(?!\w))"
_NEW = rf"(?<![\d.,/-])(?<!\w)(?P<new>{_COUNT})"
_PIECES = (
    r"(?:\s?(?:x|pieces?|pcs?|off|units?|stück|stk|stueck|pièces?|exemplaires?|piezas?|unidades|uds?"
    r"|pezz[io]|pz|stuks?|mandrels?|(?:biege)?dorne?|mandrins?|mandril(?:es)?|mandrin[oi]"
    r"|(?:buig)?doorn(?:en)?|davon"
    r"|of (?:them|these|those|each)(?!\s(?:bend|part|tube|frame|leg|piece))))"
)
_INSTEAD = any_of(
    "instead of | rather than | in place of | not | up from | statt | anstatt | anstelle von",
    "und nicht | nicht | au lieu de | au lieu d' | plutôt que | plutôt qu' | et non | pas",
    "en vez de | en lugar de | y no | invece di | anziché | al posto di | e non | non",
    "in plaats van | i\\.p\\.v\\. | ipv | en niet | niet",
)
_OLD = rf"(?:only |just |nur |the )?(?P<old>{_COUNT}|an? |einem|einer|eines|een\b|un[ao']?\b|une\b)"
_MEASURE = (
    r"(?!\s?(?:mm\b|cm\b|in\b|inch|\"|''|”|d\b|ga\b|gauge|wall|clr|x\s?[.\d]|radius|degrees?|°"
    r"|days|weeks))"
)
_FOR = rf"{_NEW}{_PIECES}?(?: van| daraus| sein)?,? {_INSTEAD}\s?{_OLD}{_MEASURE}"
_MAKE = any_of(
    "make (?:it|that|this|them)",
    "(?:bump|change|increase|raise|up|put|set|amend|update|switch|take)"
    " (?:it |that |this |us |(?:the )?(?:count|quantity|qty|quote|quotation|number) )?"
    "(?:up |down )?(?:to|at) | let'?s (?:do|make it|go with|have|say)",
    "machen(?: sie| wir)? | mach | macht | die (?:menge|stückzahl) auf",
    "mettez-en | mettez en | faites-en | disons | comptez-en | passez (?:à|la quantité à)",
    "que sean | pon(?:ga|gan)?(?:me)? | mejor | dejémoslo en | súbalo a | cámbielo a",
    "fate(?:ne)? | facciamo(?:ne)? | mettete(?:ne)? | portatela a | portate a | meglio",
    "maak er | maak daar | doe er | maak het",
)
_SOFTLY = r"(?:\s(?:please|bitte|doch|lieber|toch|maar|liever|graag|better|even|per favore))*"
_ANEW = rf"\b{_MAKE}{_SOFTLY}\s{_NEW}(?P<pieces>{_PIECES}| daraus| van\b)?{_MEASURE}"
_AUF = rf"\bauf\s{_NEW}(?P<pieces>{_PIECES})?\s(?:ändern|erhöhen|setzen|aufstocken){_MEASURE}"
_NEED = (
    r"\b(?:need|want|take|have|quote|brauchen|nehmen|möchten|prendrons|voulons|faut|necesitamos"
    rf"|queremos|servono|vogliamo|willen|nemen)\s(?:us\s|me\s)?{_NEW}(?P<pieces>{_PIECES}|\sinstead)"
)
_AGAIN = tuple(late_pattern(one) for one in (_FOR, _ANEW, _AUF))
_OF_OWN = (*_AGAIN, late_pattern(_NEED))
"""'I need 2 of these' above our own offer orders; above the sender's request it counts anew."""
_NAMED = late_pattern(rf"quantity|qty|count|menge|stückzahl|quantité|{_PIECES}")
_TUBE = late_pattern(r"\d\"?\s?[x×*]\s?[.,]?\d")
"""A size of its own beside the count: which the count is of is not told."""
_LONGEST = 400
"""Characters of a reply that changes no more than a count."""


@dataclass(frozen=True, slots=True)
class Recounted:
    """How many mandrels a reply makes of the quoted ones."""

    count: int
    sure: bool
    """Whether the words say that it counts; else it may be a length of the tube as well."""


def count_instead(own: OwnText, relied: Relied) -> Recounted | None:
    """The count that the reply puts in place of the quoted one; None where it does not."""
    words = own.text[own.body_start :]
    known = relied.picked or relied.known
    if len(known) != 1 or len(words.strip()) > _LONGEST or _TUBE.search(words):
        return None
    was = known[0].quantity or relied.quantity
    said = " ".join(words.casefold().replace("’", "'").split())
    found: dict[int, bool] = {}
    for pattern in _OF_OWN if own.quoted[0].by_sender else _AGAIN:
        for match in pattern.finditer(said):
            parts = match.groupdict()
            new, old = _value(parts["new"]), parts.get("old")
            if new is None or (old is not None and was is not None and _value(old) != was):
                return None  # "6 instead of 5": another length
            sure = old is not None and was is not None
            sure = sure or not parts["new"].isdecimal() or _NAMED.search(match[0]) is not None
            found[new] = found.get(new, False) or sure or bool(parts.get("pieces"))
    return Recounted(*found.popitem()) if len(found) == 1 else None


def _value(word: str) -> int | None:
    word = word.strip(" '")
    if word.isdecimal():
        return int(word)
    return 1 if word in _ONE else w.COUNTS.get(word)


_ONE = frozenset("a an einem einer eines een un una uno une".split())
