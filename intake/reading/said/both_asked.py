"""Two values that are both asked for, though 'or' parts them: '3 or 3.5, quote both please'."""

from __future__ import annotations

import re

from ...late_pattern import late_pattern
from ..text.patterns import any_of

_BOTH = late_pattern(
    r"\b"
    + any_of(
        r"(?:quote|price|quotes? for|prices? for|make|need|want|offer|send)"
        r"(?:\s(?:me|us))?(?:\s(?:prices?|a price)\s(?:for|on))?\sboth",
        r"(?:want|need|quote|price|take|make|order)(?:\s(?:me|us))?\s(?:a|one|1)\s"
        r"(?:mandrel|plug)\s(?:for|of|in|to suit)\s(?:each|every)"
        r"|one mandrel (?:for|of|in) each(?:\swall|\sradius| of (?:them|the two))",
        r"(?:je|jeweils) (?:einen|ein|1) \w*dorn (?:für|pro) (?:jede|beide)\w*",
        r"un mandrin (?:pour|par) (?:chaque|chacune?)(?: épaisseur| des deux)?",
        r"un mandril (?:para|por) cada (?:un[oa]|espesor|radio)",
        r"un (?:mandrino|'anima) per (?:ciascun[oa]|ogni spessore|ognuno)",
        r"(?:een|één) doorn (?:voor|per) (?:elke|ieder|elk)\w*",
        "both (?:please|of them please|quoted|priced) | each of the two | one for each",
        "bitte beide(?:s)? | beide(?:s)? (?:bitte|anbieten) | für beide(?: bitte)?",
        "les deux s'il | chiffre[rz] les deux | prix (?:pour|des) (?:les )?deux",
        "(?:precio|presupuesto) (?:de|para) (?:los|las) dos | ambos por favor | cotice(?:n)? ambos",
        "(?:prezzo|offerta|preventivo) per (?:entrambi|tutti e due) | entrambi per favore",
        "(?:prijs|offerte) voor (?:beide|allebei) | beide graag | allebei graag",
    )
    + r"\b(?!\s(?:ends|sides|bends|legs|have|has|are|is)\b)",
    re.IGNORECASE,
)


def asks_for_both(text: str) -> bool:
    """Whether a message wants both of two values that it offers."""
    return _BOTH.search(text) is not None
