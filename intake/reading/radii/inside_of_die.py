"""'The inside of my die is 3 in': a radius or a diameter, to the bottom of the groove or not?

Most likely the radius to the bottom of the groove, against which the tube lies; a doubt names all.
"""

from __future__ import annotations

from ...late_pattern import late_pattern
from ..text.figures import Figure, Layout
from ..text.patterns import any_of

OF_DIE = "measured inside the die: a radius or a diameter, and to the bottom of the groove?"

_INSIDE = any_of(
    "inside | inner side | inner edge | innenseite | innere | das innere | intérieur | interior",
    "parte interior | interno | parte interna | binnenkant | binnenzijde",
)
_DIE = any_of(
    r"(?:bend(?:ing)? |radius )?(?:dies?|formers?|shoe|block) | \w*biegeform | \w*werkzeug(?:es)?",
    r"biegescheibe | biegesegment\w* | (?:ma |la |notre )?(?:forme|matrice) | galet | "
    r"matriz | horma",
    r"matrice | forma | stampo | mal | buigmal | matrijs | biegerolle",
)
_OF = r"(?:of|in|on|von|der|des|de|du|del|della|dell|di|van|d)"
_MY = any_of(
    r"(?:my|our|the|this|your|that|his) | (?:mein|unser|dies|d)(?:er|es|em|en) | mein\w* | "
    r"unser\w*",
    r"(?:ma|mon|notre|la|le|l|nos) | (?:mi|nuestra|nuestro|la|el) | "
    r"(?:mia|nostra|mio|nostro|la|il)",
    "(?:mijn|onze|ons|de|het|deze)",
)
_MEASURES = any_of(
    r"(?:is|are|measures?|comes to|comes out (?:at|to)|reads) | (?:ist|hat|misst|beträgt|sind)",
    r"(?:fait|est|mesure|est de) | (?:es|mide|es de|tiene) | (?:è|misura|è di) | (?:is|meet)",
)
_ABOUT = r"(?:(?:of|about|around|roughly|ca|circa|de|di|a|an|exactly|genau)\.?\s)?"
_BEFORE = late_pattern(
    rf"\b{_INSIDE}(?:\s|['’])(?:{_OF}(?:\s|['’]))?(?:{_MY}(?:\s|['’])){{0,2}}{_DIE}\s{_MEASURES}\s{_ABOUT}$"
)
_DIE_BEFORE = late_pattern(rf"\b{_DIE}\s{_MEASURES}\s{_ABOUT}$")
_UNIT = r"^\W{0,3}(?:mm|cm|in|inch(?:es)?)?\W{0,2}\s*"
_INSIDE_AFTER = late_pattern(
    _UNIT + r"(?:on|at|an|auf|à|a|por|all|aan)\s?['’]?(?:the\s|der\s|l['’]|el\s|la\s|de\s)?"
    rf"{_INSIDE}\b(?!\s(?:edge|radius))"
)
_SURE = late_pattern(
    r"\b(?:groove|cent(?:re|er)\s?line|clr|rillengrund|gorge|garganta|gola|groef|to the "
    r"cent(?:re|er))\b"
)


def inside_of_die(layout: Layout, figure: Figure, before: str, after: str) -> bool:
    """Whether a figure is what a die measures on its inside; notes the doubt.

    ``before`` and ``after`` are the words around it, casefolded.
    """
    said = _BEFORE.search(before) or (_DIE_BEFORE.search(before) and _INSIDE_AFTER.match(after))
    if not said or figure.is_gauge or figure.unit == "D" or _SURE.search(after):
        return False
    following = layout.after(figure)
    if figure.link == "times" or (following is not None and following.link == "times"):
        return False
    figure.notes.append(OF_DIE)
    return True
