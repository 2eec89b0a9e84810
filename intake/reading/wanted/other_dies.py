"""Radii of dies that are there for something else: 'The other shoes I have (R=80, R=110) are for
water pipe and not important now'.
"""

from __future__ import annotations

import re

from ...late_pattern import late_pattern
from ..text.figures import Layout
from ..text.roles import RADIUS_ROLES
from .asked_words import ASKS

_DIES = (
    r"(?:\w+ )?(?:dies|die sets|formers|shoes|radii|formen|biegeformen|schuhe|biegeschuhe|radien"
    r"|formes|sabots|galets|rayons|matrices|zapatas|radios|matrici|raggi|ganasce|mallen|matrijzen"
    r"|schoenen)"
)
_OTHERS = late_pattern(
    r"^\W*(?:(?:the|my|our|all|any) other|(?:die|meine|unsere) (?:anderen|übrigen)|(?:les|mes|nos)"
    r" autres|(?:las|los|mis|nuestr[ao]s) (?:otr[ao]s|demás)|(?:le|gli|i) (?:mie |miei |nostr[ei]"
    rf" )?altr[ei]|(?:de|mijn|onze) andere) {_DIES}\b"
)
_UNIMPORTANT = late_pattern(
    r"\b(?:(?:not|un|aren'?t|isn'?t) ?(?:important|relevant|interesting|needed|concerned)"
    r"|irrelevant|(?:don'?t|do not|doesn'?t) (?:matter|count|concern|come into)|(?:nicht|un)\s?"
    r"(?:wichtig|relevant|interessant)|spielen (?:\w+ )?keine rolle|sans importance"
    r"|pas importante?s?|n'ont pas d'importance|no (?:importan|interesan|cuentan"
    r"|son importantes)|non (?:importano|contano|interessano|sono importanti)"
    r"|niet (?:belangrijk|relevant|van belang)|doen er niet toe)\b"
)
_FOR_ELSE = late_pattern(
    r"\b(?:are|sind|sont|son|sono|zijn) (?:all |only |just |alle |nur |tou[st]e?s? |tod[ao]s |solo"
    r" |tutt[ie] |allemaal )?(?:for|für|pour|para|per|voor) (?:\w+ )?(?:\w*pipes?|conduit|emt|solid"
    r" bar|\w*rohre?|tuyaux?|tubes? d['’]eau|tuberías?|tubi d\w+|tubi dell['’]acqua|\w*leiding\w*"
    r"|\w*buis|other (?:jobs|work|tubes?|sizes))\b"
)
_PERHAPS = late_pattern(
    r"\b(?:same|also|too|as well|both|this|these|those|yet|auch|gleiche\w*|diese\w*|aussi|même|ces"
    r"|también|mism[ao]s?|est[ao]s|anche|stess[oaie]|quest[ie]|ook|dezelfde|deze)\b"
)
_SENTENCE = re.compile(r"(?:[^.!?\n]|[.!?](?!\s))+(?:[.!?]|\n|$)")
_MOST = 200


def set_other_dies_aside(layout: Layout) -> None:
    """Set radii aside of which a sentence says that they are other dies', for something else; where
    a radius of the tube is told beside them."""
    text = layout.text.lower()
    if len(layout.figures) > _MOST or len(text) != len(layout.text):
        return
    for match in _SENTENCE.finditer(text):
        if not _tells_of_others(" ".join(match[0].split())):
            continue
        inside = [f for f in layout.figures if match.start() <= f.start < match.end()]
        before = {f.role for f in layout.figures if f.end <= match.start() and not f.negated}
        whole = {"od", "wall"} <= before and before & RADIUS_ROLES
        if not whole or any(f.role in ("od", "wall") or f.row is not None for f in inside):
            continue
        for figure in inside:
            figure.negated = figure.owned = True
        layout.owned.append(" ".join(layout.text[match.start() : match.end()].split()))


def _tells_of_others(sentence: str) -> bool:
    if not _OTHERS.search(sentence) or "?" in sentence or ASKS.search(sentence):
        return False
    if _PERHAPS.search(sentence):
        return False
    return _UNIMPORTANT.search(sentence) is not None or _FOR_ELSE.search(sentence) is not None
