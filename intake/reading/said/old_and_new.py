"""A tube that was bent until now and the one in its place: 'the old tube was 25 x 2, the new one is
25 x 1.2'. Each is named with its wall, and nobody speaks of both."""

from __future__ import annotations

import re

from ...late_pattern import late_pattern
from ..text.figures import Figure, Layout
from ..text.patterns import any_of
from .replaced_words import BOTH

_TUBE = any_of(
    r"tub(?:e|ing)|pipe|one|size|stuff|version|design|chair|frame|part|rohr|variante|ausführung"
    r"|maß|tube|taille|tubo|medida|versión|versione|misura|buis|maat|versie|stoel"
)
_FOR = r"\W{0,2}(?:[^\W\d]+\W{1,2}){0,2}\W{0,3}$"
_OLD = late_pattern(
    r"\b(?:"
    + any_of(
        rf"(?:old|previous|former|earlier) {_TUBE} (?:was|used to be|were|had been)",
        r"(?:it|that|this|they|we) (?:used to be|used to use|used to run) | formerly(?: it was)?",
        rf"(?:alte|bisherige|frühere|vorige)[snr]? {_TUBE} (?:war|ist|hatte)"
        r" | (?:früher|vorher|bislang) (?:war es|hatten wir|war)",
        rf"(?:ancien(?:ne)?|précédente?) {_TUBE} (?:était|est|faisait) | avant,? (?:c'était"
        rf"|on avait)",
        rf"{_TUBE} (?:antigu[oa]|viej[oa]|anterior) (?:era|es) | antes (?:era|usábamos)",
        rf"{_TUBE} (?:vecchi[oa]|precedente) (?:era|è) | (?:vecchi[oa]"
        rf"|precedente) {_TUBE} (?:era|è)"
        r" | prima (?:era|usavamo)",
        rf"(?:oude|vorige) {_TUBE} (?:was|is) | vroeger (?:was het|hadden we)",
    )
    + rf"){_FOR}"
)
_NEW = late_pattern(
    r"\b(?:"
    + any_of(
        rf"(?:the )?new(?: {_TUBE})? (?:is|will be|are) | now (?:it'?s|it is|we use|we run) | now",
        rf"(?:das |die |der )?neue[snr]?(?: {_TUBE})? (?:ist|wird|hat) | jetzt(?: ist es"
        rf"| haben wir)?"
        r" | nun(?: ist es| haben wir)? | neu(?: ist)?",
        rf"(?:le |la )?nouve(?:au|lle)(?: {_TUBE})? (?:est|sera|fait) | maintenant(?: c'est)?",
        rf"(?:el |la )?(?:{_TUBE} )?nuev[oa] (?:es|será) | ahora(?: es)?",
        rf"(?:il |la |quell[oa] )?(?:{_TUBE} )?nuov[oa](?: {_TUBE})?(?: è| sarà)? | adesso(?: è)?"
        r" | ora(?: è)?",
        rf"(?:de |het )?nieuwe(?: {_TUBE})? (?:is|wordt) | nu(?: is het| hebben we)?",
    )
    + rf"){_FOR}"
)
_FAR = 40
_FIGURES = 5


def hear_old_and_new(layout: Layout) -> None:
    """Deny the tube that was, where the one that is stands in the same sentence or the next."""
    for old in layout.figures:
        wall = layout.after(old)
        if wall is None or wall.link != "times" or not _said(layout, old, _OLD):
            continue
        for new in layout.figures[wall.index + 1 : wall.index + 1 + _FIGURES]:
            behind = layout.after(new)
            if new.sentence - old.sentence > 1 or layout.says(new.sentence, BOTH):
                break
            if behind is None or behind.link != "times" or not _said(layout, new, _NEW):
                continue
            between = layout.figures[old.index : new.index]
            if sum(figure.link == "times" for figure in between) == 1:
                old.negated = wall.negated = True
                layout.aside.append(layout.words(old.start, wall.end))
            break


def _said(layout: Layout, figure: Figure, words: re.Pattern[str]) -> bool:
    """Whether the words stand right before a figure."""
    before = layout.before(figure)
    begin = max(layout.sentence_start(figure.sentence), figure.start - _FAR)
    if before is not None and before.sentence == figure.sentence:
        begin = max(begin, before.end)
    return words.search(layout.words(begin, figure.start)) is not None
