"""'But two pieces, we have two shifts': a reply that counts anew what the quoted mail asks for.

Pieces are often the parts to be bent; a whole clause that only counts them, right above a mail that
asks for so many mandrels, speaks of those.
"""

from __future__ import annotations

import re

from ...late_pattern import late_pattern
from ..counts import words as w
from ..text.patterns import any_of

_MOST = 20
_SHY = frozenset("et en um uma fem another otro otra altro a an".split())
_WORDS = sorted(
    (word for word, n in w.COUNTS.items() if n <= _MOST and word not in _SHY), key=len, reverse=True
)
_N = rf"(?P<count>\d{{1,2}}(?![.,/]?\d)|{'|'.join(map(re.escape, _WORDS))})"
_BUT = any_of(
    "but | only | just | though | aber | nur | jedoch | doch | allerdings | mais | seulement",
    "pero | solo | sólo | sin embargo | ma | però | soltanto | maar | echter | wel | alleen",
    "men | however | and | und",
)
_MAKE = any_of(
    "make (?:it|that) | we(?:'ll| will)? (?:need|want|take) | i(?:'ll| will)? (?:need|want|take)",
    "please | now | in fact | bitte | wir (?:brauchen|nehmen|wollen) | dann | diesmal | il en faut",
    "il nous en faut | nous en voulons | necesitamos | queremos | que sean | ne servono | vogliamo",
    "we hebben | we willen | doe (?:er )?| nu | jetzt",
)
_PIECES = any_of(
    "pieces? | pcs? | pc | off | of them | of those | units? | stück | stk | stueck | pièces?",
    "exemplaires? | piezas? | unidades | uds? | pezz[io] | pz | stuks? | st | stycken",
    r"mandrels? | \w*dorne? | mandrins? | mandriles | mandrin[oi] | doornen",
)
_CLAUSE = late_pattern(
    rf"(?:^|[.!?;]\s|\n)(?:{_BUT},?\s)?(?:{_MAKE}\s)?{_N}\s{_PIECES}\.?"
    r"(?:\s(?:please|pls|bitte|s'il vous plaît|svp|por favor|per favore|graag|instead|now|though"
    r"|this time|dann|nodig))?(?=\s?[,.!;\n–-]|\s?$)"
    r"(?!\s?,\s(?:each|per|a week|pro|je|par|cada|al|ogni)\b)"
)


def count_changed(words: str) -> int | None:
    """The mandrels that the new words of a reply count in a clause of its own; None for none, or
    where two such clauses differ."""
    found = {_value(match["count"]) for match in _CLAUSE.finditer(words.casefold())}
    return found.pop() if len(found) == 1 else None


def _value(word: str) -> int | None:
    count = int(word) if word.isdecimal() else w.COUNTS.get(word)
    return count or None
