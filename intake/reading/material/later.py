"""A material that is only thought of for some later day: 'and later maybe stainless in the same
size'. The tube that is asked for is of the one named before."""

from __future__ import annotations

import re

from ...late_pattern import late_pattern
from ..text.patterns import any_of

_LATER = late_pattern(
    r"\b"
    + any_of(
        "later(?: on)? | next year | some ?day | one day | eventually | down the (?:road|line)",
        "in (?:the )?future | at some point | in the long run | further down the line",
        "später | irgendwann | künftig | in zukunft | nächstes jahr | eines tages",
        "plus tard | à l'avenir | l'an prochain | l'année prochaine | un jour",
        "más adelante | en (?:el )?futuro | el año que viene | el próximo año | algún día",
        "più avanti | in futuro | l'anno prossimo | un domani | in de toekomst",
        "volgend jaar | ooit",
    )
    + r"(?![^\W_])",
    re.IGNORECASE,
)
_THOUGHT_OF = late_pattern(
    r"\b"
    + any_of(
        "maybe | perhaps | possibly | might | may | could | would like | 'd like",
        "want | hope | plan",
        "thinking | vielleicht | eventuell | evtl | wollen | möchten | möglicherweise | könnte[n]?",
        "peut-être | éventuellement | voudrions | pourrait | quizás? | tal vez | puede que",
        "posiblemente | querríamos | forse | magari | eventualmente | vorremmo | potrebbe",
        "misschien | eventueel | willen | wellicht",
    )
    + r"(?![^\W_])",
    re.IGNORECASE,
)
_STILL_MEANT = late_pattern(
    r"\d\s?(?:mm|in\b|x|[\"'])|\b"
    + any_of(
        "must | has to | have to | needs? to | should | so (?:make|build|it)",
        "same (?:mandrel|tool)",
        "both | as well as now | muss | müssen | soll(?:te)? | gleichen? (?:dorn|werkzeug) | beide",
        "doit | même (?:mandrin|outil) | debe | mismo mandril | deve",
        "stesso (?:mandrino|utensile)",
        "moet | dezelfde doorn | instead | stattdessen | wider | quote | price | angebot | devis",
    )
    + r"(?![^\W_])",
    re.IGNORECASE,
)
_FAR = 90


def is_for_later(text: str, start: int, end: int) -> bool:
    """Whether the sentence only muses on it: a day to come, 'maybe' or 'might', no size of its own
    and no word that the tool has to take it, too."""
    begin = max((text.rfind(mark, max(0, start - _FAR), start) for mark in ".!?\n"), default=-1) + 1
    begin = max(begin, start - _FAR)
    ends = [at for mark in ".!?\n" if (at := text.find(mark, end, end + _FAR)) >= 0]
    stop = min(ends, default=min(len(text), end + _FAR))
    around = f"{text[begin:start]} {text[end:stop]}"
    return bool(
        _LATER.search(around) and _THOUGHT_OF.search(around) and not _STILL_MEANT.search(around)
    )
