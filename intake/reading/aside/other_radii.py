"""A radius of something else than the bend: 'the R5 on the print is the plate corner'.

Set aside where another radius is told.
"""

from __future__ import annotations

from ...late_pattern import late_pattern
from ..text.figures import Figure, Layout
from ..text.patterns import any_of
from ..text.roles import RADIUS_ROLES
from .phrases_beside import UNIT

_THING = any_of(
    "fillets? | chamfers? | gussets? | brackets? | (?:base )?plates?",
    "(?:plate|sheet) (?:edge|corner)s?",
    "flanges? | welds? | end ?caps? | lugs? | tabs? | washers? | sheet ?metal | (?:table|bar) ?top",
    "bleche?[sn]? | blechkanten? | flansch\\w* | lasche\\w* | kehle | platte",
    "tôle | congé | bride | platine | chapa | brida | pletina",
    "piastra | lamiera | raccordo | flangia | plaat | flens",
)
"""What no tube is bent into: a corner, an edge may be a bend's."""
_THE = any_of(
    "the | a | an | that | of | for | on | only | just | merely | der | die | das | vom | von | an",
    "nur | le | la | l' | du | de | d' | el | del | il | lo | della | dell' | het | van | alleen",
)
_DOCUMENT = any_of(
    "print | drawing | sketch | dwg | title block | pdf | model | step file | zeichnung | plan",
    "dessin | plano | dibujo | disegno | tekening",
)
_IS = any_of(
    "is | are | belongs to | belong to | refers to | means | goes with | ist | gehört zu[rm]?",
    "est | es | corresponde a | è | hoort bij",
)
_OF_THING_BEHIND = late_pattern(
    UNIT
    + rf"(?:(?:in|on|auf|sur|en|sul|op) (?:\w+ )?{_DOCUMENT} |, ?(?:that|it|which|this) ){{0,2}}"
    rf"{_IS} (?:{_THE} ?){{0,4}}(?:[\w-]+ ){{0,2}}?{_THING}\b"
    r"(?! (?:of|in) (?:the |our )?(?:tube|bend|pipe|rail|handrail|frame)\b)"
)
_OF_THING_AHEAD = late_pattern(
    rf"\b(?:corner|fillet|edge) (?:radius|rad) (?:of|on|for) (?:the |a |our )?(?:[\w-]+ )?{_THING}"
    rf" (?:{_IS} )?$"
)
_BEND = late_pattern(r"\b(?:bends?|bieg\w+|bogen|cintr\w+|curv\w+|dobl\w+|piega\w*|bocht\w*)\b")
_NEAR = 10


def set_other_radii_aside(layout: Layout) -> None:
    """Say of a radius that something else has that it is no size, where another is told."""
    radii = [f for f in layout.figures if f.role in RADIUS_ROLES and not f.negated]
    others = [figure for figure in radii if _is_of_thing(layout, figure)]
    for figure in others if len(others) < len(radii) else []:
        figure.give("noise", "cue")


def _is_of_thing(layout: Layout, figure: Figure) -> bool:
    if figure.row is not None:
        return False
    begin = layout.sentence_start(figure.sentence)
    end = begin + len(layout.sentence_text(figure.sentence))
    before, after = layout.before(figure), layout.after(figure)
    ahead = layout.words(max(begin, before.end if before else 0), figure.start)
    behind = layout.words(figure.end, min(end, after.start if after else end))
    found = _OF_THING_BEHIND.match(behind) or _OF_THING_AHEAD.search(ahead)
    # "R 4.5 is for the bracket bend": a bend is called by what it is on.
    return found is not None and not _BEND.search(found[0] + found.string[found.end() :][:_NEAR])
