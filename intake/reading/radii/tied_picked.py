"""A radius said right behind the one tube that is asked for: 'just the cage tube for now, 5.25
CLR'. Which tube that is, its name tells."""

from __future__ import annotations

from ...late_pattern import late_pattern
from ..text.figures import Figure, Layout
from ..text.patterns import any_of

_FAR = 120
_NAMED = (
    r"\b(?:just|only|nur|seulement|uniquement|juste|solo|sólo|solamente|soltanto|alleen)\s(?:(?:need"
    r"|want|quote|price|brauchen?|wir|we|i|an?|one|einen?|un|uno|een|mandrel|\w*dorn|mandrin|mandril"
    r"|mandrino|doorn|for|für|pour|para|per|voor)\s){0,6}"
    r"(?:the|our|my|der|den|die|das|dem|unser\w*|le|la|les|el|los|las|il|lo|i|gli|de|het)\s"
    r"(?P<name>[^\W\d_]{3,})(?P<more>\s[^\W\d_]{3,}){0,1}?(?:\s(?:tub(?:e|es|ing|o|i)|pipe|one|rohre?|buis))?(?:,?\s"
    + any_of(
        "for now | at present | at the moment | at this point | now | this time | please | bitte",
        "vorerst | erstmal | erst mal | zunächst | pour l'instant | pour le moment | de momento",
        "por ahora | per ora | per il momento | voorlopig",
    )
    + r"){0,2}"
)
_PICKED = late_pattern(
    _NAMED + r"\W{0,3}(?:(?:on|at|with|auf|mit|sur|avec|con|su|op|met|an?|einem|un|une|una|een"
    r"|the)\s){0,2}"
    r"(?:(?:clr|r|rad|radius|rayon|radio|raggio|straal)[\s:=]{0,3})?$"
)


_PICKED_ALONE = late_pattern(_NAMED + r"(?=\s?(?:[.,;:!?)]|$))")


def picked_alone(words: str) -> frozenset[str]:
    """What the one tube is called that casefolded words ask for alone: 'so just the cage tube for
    now'; empty where they name none, or two."""
    found = list(_PICKED_ALONE.finditer(words))
    said = " ".join((found[0]["name"], found[0]["more"] or "")) if len(found) == 1 else ""
    return frozenset(word.removesuffix("s") for word in said.split())


def picked_before(layout: Layout, radius: Figure) -> frozenset[str]:
    """What the one tube is called that is asked for right before a radius; empty where none is."""
    before = layout.before(radius)
    begin = max(layout.sentence_start(radius.sentence), radius.start - _FAR)
    if before is not None:
        begin = max(begin, before.end)
    words = " ".join(layout.words(begin, radius.start).casefold().split()) + " "
    picked = _PICKED.search(words)
    if picked is None:
        return frozenset()
    last = (picked["more"] or picked["name"]).strip()
    return frozenset((last.removesuffix("s"),))
