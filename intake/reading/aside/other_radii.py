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
    "corners? | edges? | fillets? | chamfers? | gussets? | brackets? | (?:base )?plates?",
    "flanges? | welds? | end ?caps? | lugs? | tabs? | washers? | sheet ?metal | (?:table|bar) ?top",
    "ecken? | kanten? | bleche? | flansch\\w* | lasche\\w* | kehle | platte",
    "coin | arête | tôle | congé | bride | platine | esquina | canto | chapa | brida | pletina",
    "spigolo | angolo | piastra | lamiera | raccordo | flangia | hoek | rand | plaat | flens",
)
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
    return bool(_OF_THING_BEHIND.match(behind) or _OF_THING_AHEAD.search(ahead))
