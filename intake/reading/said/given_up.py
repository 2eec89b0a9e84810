"""A figure that was thought of first and the one settled on: 'I was going to go 2 inch ... make it
1-7/8', 'wollte erst 40 x 2, jetzt doch 38 x 2'.

Both halves must be there: 'I was going to order 2 inch today' gives nothing up, and 'go with 1.5'
alone may choose between two that are both wanted.
"""

from __future__ import annotations

from decimal import Decimal

from ...late_pattern import late_pattern
from ..naming.place_tests import is_diameter, is_thin
from ..text.figures import Figure, Layout
from ..text.patterns import any_of
from ..text.roles import LENGTH_ROLES, NOMINAL_ROLES, RADIUS_ROLES, Role
from .dropped_whole import deny_with

_FIRST = late_pattern(
    r"\b"
    + any_of(
        r"(?:was|were) (?:\w+ )?(?:going to|gonna|planning|thinking|looking at|considering)",
        r"(?:had|been) (?:\w+ )?(?:thinking|planning|planned|meant|wanted|considering)",
        "thought (?:about|of) | toyed with | at first | first (?:i|we) (?:had|wanted|said)",
        r"to start with (?:i|we) \w+ | i had(?=[^,;]{1,24} in mind)",
        r"wollten? (?:ich |wir )?(?:erst|zuerst|eigentlich|ursprünglich|zunächst)",
        r"(?:erst|zuerst|eigentlich|ursprünglich|zunächst) (?:wollte|dachte|hatte|war)\w*",
        r"(?:dachten?|hatten?) (?:ich |wir )?(?:erst|zuerst|zunächst|eigentlich)",
        r"(?:je pensais|on pensait|nous pensions|on allait|j'allais) | au départ | à l'origine",
        r"pensaba | pensábamos | al principio | iba a | íbamos a",
        r"pensavo | pensavamo | all'inizio | stavo per | stavamo per",
        r"(?:eerst|oorspronkelijk) (?:wilde|dacht|wou|zou)\w* | wilden? (?:ik |we )?eerst",
        r"dacht(?:en)? (?:ik |we )?eerst(?: aan)?",
    )
    + r"\b[^\d.;!?]{0,32}$"
)
_IN_MIND = late_pattern(
    r"^[^\d.,;]{0,20}\b(?:in mind|was the (?:plan|idea)|was my (?:plan|idea)|im kopf|en tête"
    r"|en mente|in mente|in gedachten)\b"
)
_SETTLED = late_pattern(
    r"\b"
    + any_of(
        "make it | make that | go(?:ing)? (?:with|for|to) | went (?:with|for|to)",
        "let's (?:say|go|do|use)",
        "lets (?:say|go|do|use) | settled? on | stick(?:ing)? with | ended up (?:with|at|on)",
        "(?:i|we)(?:'ll|'re| will| are)? (?:now )?(?:use|using|take|taking|do|doing|run|running)",
        "decided on | changed (?:it )?to | switched to | now it's | it's now | it is now",
        r"(?:dann )?(?:doch )?lieber | doch | (?:machen|nehmen) wir | nehme ich",
        r"(?:wird|wurde) es",
        "jetzt | finalement | plutôt | on part sur | on prend | prenons | au final | mejor",
        "al final | vamos con | lo dejamos en | finalmente | hacemos | facciamo | meglio",
        "alla fine | prendiamo | anzi | doe maar | toch | liever | uiteindelijk | we nemen",
        "maak er | maken we",
    )
    + r"\b[^\d.;!?]{0,20}$"
)
_FAR = 6
"""Figures from the one given up to the one settled on."""
_ALIKE = (Decimal("0.3"), Decimal("3.4"))


def hear_given_up(layout: Layout) -> None:
    """Mark what was only thought of first; what was settled on puts it right."""
    for figure in layout.figures:
        if figure.negated or not _is_first_thought(layout, figure):
            continue
        settled = _settled_on(layout, figure)
        if settled is None:
            continue
        settled.corrects = True
        layout.given_up.append((figure, settled))
        last = figure
        figure.negated = True
        after = layout.after(figure)
        while after is not None and after.link == "times":
            after.negated = True
            last, after = after, layout.after(after)
        deny_with(layout, figure)
        if last.sentence == settled.sentence:
            _mark_between(layout, last, settled)


def _mark_between(layout: Layout, last: Figure, settled: Figure) -> None:
    """'... but the flange takes 1-5/8, so go with 1-5/8': the same length, said twice."""
    for figure in layout.figures[last.index + 1 : settled.index]:
        if figure.number.value == settled.number.value and figure.role is None:
            figure.give("noise", "same")


def name_settled(layout: Layout) -> None:
    """Give the figure that was settled on the role of what it stands for."""
    known: set[Role | None] = {f.role for f in layout.figures if not f.negated}
    for given_up, settled in layout.given_up:
        if settled.role is not None or settled.link == "times":
            continue
        role = given_up.role
        if role is None and _is_open_tube(known, settled):
            role = "od"
        if role in LENGTH_ROLES:
            settled.give(role, "place")


def _is_open_tube(known: set[Role | None], figure: Figure) -> bool:
    """Whether nothing else is the tube's OD, and what else is said goes round such a tube."""
    if known & ({"od", "id", "side"} | NOMINAL_ROLES) or not known & ({"wall"} | RADIUS_ROLES):
        return False
    return is_diameter(figure) and not is_thin(figure) and not figure.is_gauge


def _is_first_thought(layout: Layout, figure: Figure) -> bool:
    if figure.is_gauge and not figure.is_measure:
        return False
    begin = layout.sentence_start(figure.sentence)
    before = layout.before(figure)
    if before is not None and before.sentence == figure.sentence:
        begin = max(begin, before.end)
    ahead = " ".join(layout.words(begin, figure.start).split()) + " "
    if _FIRST.search(ahead):
        return True
    behind = " ".join(layout.words(figure.end, figure.end + 40).split())
    return _IN_MIND.match(behind) is not None


def _settled_on(layout: Layout, figure: Figure) -> Figure | None:
    """The next figure that is said to be taken, of like size."""
    for other in layout.figures[figure.index + 1 : figure.index + 1 + _FAR]:
        if other.sentence - figure.sentence > 1:
            return None
        before = layout.figures[other.index - 1]
        begin = max(before.end, layout.sentence_start(other.sentence))
        ahead = " ".join(layout.words(begin, other.start).split()) + " "
        if _SETTLED.search(ahead) and _are_alike(figure, other):
            return other
    return None


def _are_alike(figure: Figure, other: Figure) -> bool:
    if figure.number.value == other.number.value or not figure.number.value:
        return False
    if figure.is_gauge or other.is_gauge:
        return figure.is_gauge == other.is_gauge
    return _ALIKE[0] < other.number.value / figure.number.value < _ALIKE[1]
