"""The side of a bend on which something goes wrong, or the seam lies: no side of the radius.

'Radius of 6 in and it wrinkles on the inside', 'the weld seam is on the outside of the bend'.
"""

from __future__ import annotations

from ...late_pattern import late_pattern
from ..text.patterns import any_of

_FAULT = r"\b" + any_of(
    r"wrinkl\w* | kink\w* | buckl\w* | crush\w* | crack\w* | rippl\w* | humps? | dent\w*",
    r"scratch\w* | thin(?:s|ned|ning)? | flat(?:s|tens?|tened|tening|spots?) | collaps\w*",
    r"creas\w* | bulg\w*",
    r"gall(?:s|ed|ing) | fold\w* | split\w* | tear\w* | tore | torn | stretch\w* | marks? | marked",
    r"puckers?\w* | caves? | caved | weld(?:ed|s)? | seams?",
    r"falten\w* | faltig | knick\w* | riss\w* | reiß\w* | beulen? | schweißnaht | naht | dellen?",
    r"plis | plisse\w* | fissur\w* | craqu\w* | bosses? | soudure | cordon",
    r"arrug\w* | pliegues? | griet\w* | abolla\w* | soldadura | costura",
    r"risse? | grinz\w* | piegh\w* | crepe | cricc\w* | ammacca\w* | saldatura | cordone",
    r"kreuk\w* | plooi\w* | rimpel\w* | scheur\w* | deuk\w* | lasnaad | naad",
)
_SIDE = any_of(
    r"(?:on|at|along|in|to|around) (?:the |its )?(?:very )?(?:inside|outside|inner|outer|intrados"
    r"|extrados)(?: (?:radius|wall|edge|side|face))?",
    r"(?:an der |auf der |am |im )?(?:innen|außen|aussen)\w* | à l'(?:intérieur|extérieur)",
    r"(?:por|en el|de|por la parte de|por el) (?:dentro|fuera|interior|exterior) | interiore?s?",
    r"all'(?:interno|esterno) | (?:lato )?(?:intern|estern)[aeo]",
    r"(?:aan de |op de )?(?:binnen|buiten)\w* | intérieure?s? | interieure?s?",
)
_OF_BEND = (
    r"(?: of (?:the |each |every )?(?:bend|curve|tube|arc)s?\b| du coude\b| de la curva\b"
    r"| della curva\b| (?:van|in) de bocht\b)?"
)
_FAULT_ON_SIDE = late_pattern(rf"{_FAULT}\b[^.;:\d]{{0,32}}?\b{_SIDE}{_OF_BEND}")
_SIDE_AT_FAULT = late_pattern(
    rf"\bthe (?:inside|outside){_OF_BEND}\s(?:\w{{1,10}}\s){{0,2}}?{_FAULT}\b"
)


def without_faults(words: str) -> str:
    """The casefolded words without those on a fault and its side."""
    return _SIDE_AT_FAULT.sub(" ", _FAULT_ON_SIDE.sub(" ", words))
