"""Two radii of which one will be settled on: 'a 76 or a 102 former, haven't decided, I'd only get
one'. One mandrel on one of them is asked for, and no two sizes."""

from __future__ import annotations

import re

from ...late_pattern import late_pattern
from ..text.patterns import any_of

_UNDECIDED = late_pattern(
    r"\b"
    + any_of(
        r"(?:haven'?t|have not|hasn'?t|has not|not|can'?t|cannot|couldn'?t|yet to)(?: yet| quite"
        r"| really)? (?:decided?|made (?:up )?(?:my|our) minds?|settled)",
        "undecided | torn between | not sure which | don'?t know which | choice between",
        r"which(?: one| way| radius| of the two)? (?:would|do) you (?:recommend|suggest|go|choose"
        r"|pick|advise|think|prefer)",
        r"(?:would|will|'d|'ll) only (?:get|buy|take|need|want|order) (?:the )?one",
        r"(?:noch )?nicht (?:entschieden|festgelegt) | noch (?:offen|unentschieden)",
        r"welche[rn]? (?:würden sie|würdet ihr|empfehlen sie) | unschlüssig",
        r"(?:pas|rien) (?:encore )?(?:été )?(?:décidé|choisi|tranché) | j'hésite | nous hésitons",
        r"on hésite | lequel (?:me |nous )?(?:conseill|recommand|choisi)\w+",
        r"(?:no (?:lo )?(?:he(?:mos)?|está)) (?:decidido|elegido) | sin decidir | cuál (?:me |nos )"
        r"?(?:recomienda|aconseja)\w*",
        r"non (?:ho|abbiamo|è)(?: ancora)? (?:deciso|scelto) | indecis[oi] | quale (?:mi |ci )"
        r"?consigli\w*",
        r"(?:nog )?niet (?:besloten|gekozen|beslist) | welke (?:zou(?:dt)? u|raadt u|zou je)",
    )
    + r"(?![\w'])",
    re.IGNORECASE,
)


def settles_on_one(text: str) -> bool:
    """Whether the sender has still to settle on one of the values that a message offers."""
    return _UNDECIDED.search(text.replace("’", "'")) is not None
