"""Tooling that came with a machine: 'an old bender that came with tooling for 2" and 2-1/4"'.

Nobody asks for what the machine has, whatever is asked 'of each' of the sizes behind.
"""

from __future__ import annotations

import re

from ...late_pattern import late_pattern
from ..text.figures import Figure, Layout
from ..text.patterns import any_of
from ..text.roles import RADIUS_ROLES
from .asked_words import ASKS
from .told_plainly_words import WANTED_ALL_THE_SAME

_MACHINE = any_of(
    r"(?:tube |pipe )?benders? | machine | (?:\w+)?maschine | bieger | cintreuse | curvatubi",
    "macchina | piegatrice | dobladora | curvadora | máquina | (?:buig|buizenbuig)machine",
)
_TOOLS = any_of(
    "tooling | tools | tool sets? | dies? | die sets? | mandrels? | formers",
    "werkzeuge?n? | werkzeugsätze?n? | dorne?n? | outillages? | outils | formes | mandrins?",
    "attrezzatur[ae] | utensili | matrici | anim[ae] | mandrini | utillajes? | herramientas",
    "matrices | mandriles | gereedschap(?:pen)? | matrijzen | mallen | doornen",
)
_WITH = any_of(
    "(?:came|comes|arrived|delivered|supplied|sold) with | with | has | had | includ(?:es|ed)",
    "(?:kam|kommt|geliefert) mit | mit | hat | hatte | gab es | gehör(?:en|ten) | avec | a | avait",
    "con | aveva | ha | tenía | tiene | trae | met | heeft | had",
)
_CAME_WITH = late_pattern(
    rf"\b{_MACHINE}\b[^.;:?!\d]{{0,40}}?\b{_WITH}\s(?:[^\W\d]+\s){{0,3}}?{_TOOLS}\s"
    r"(?:[^\W\d]+\s)?(?:for|in(?! it| the)|für|pour|per|para|voor|de|di|da|van)\b"
    r"(?P<sizes>[^?!;]*)",
)
_STOP = late_pattern(r"[.!?;](?=\s|$)|\n|\s(?:but|and now|aber|mais|pero|ma|maar)\s")
_SENTENCE_END = late_pattern(r"[.!?](?=\s|$)|\n\n")
_NO_MANDREL = late_pattern(
    r"\b(?:no|not? the|without(?: a| any)?|kein\w*|ohne|aucun|pas de|sans|sin|ningún|senza|nessun"
    r"|geen|zonder)\s(?:\w{1,4}\s)?"
    + any_of(
        "mandrels? | dorne?n? | mandrins? | mandril(?:es)? | mandrin[oi] | anim[ae] | doorn(?:en)?"
    )
    + r"\b"
)
_SO_MANY = 12
"""More figures would be no aside on a machine."""
_FOR_THOSE = late_pattern(
    r"\b(?:for|of|für|pour|para|per|voor)\s(?:all |both |each of )?"
    r"(?:those|these|them|diese|jene|ceux|celles|ces|es[oa]s|quell[ie]|quest[ie]|deze)\b|\bdafür\b"
    r"|\b(?:for|für|pour|para|per|voor)\s(?:all|both|each|alle|beide|jede\w*|tous|chacun\w*|ambos"
    r"|cada|todos|tutti|entrambi|ogni|elke?)\b"
)


def set_machine_tooling_aside(layout: Layout) -> None:
    """Say of the sizes that a machine has tooling for that they are there already."""
    text = layout.text.lower()
    if len(text) != len(layout.text) or _FOR_THOSE.search(text):
        return
    inside: list[Figure] = []
    words: list[str] = []
    for match in _CAME_WITH.finditer(text):
        begin, end = match.span("sizes")
        stop = _STOP.search(text, begin, end)
        end = stop.start() if stop is not None else end
        told = [f for f in layout.figures if begin <= f.start < end and f.is_measure]
        if _is_missed(text, end):
            continue
        if not told or len(told) > _SO_MANY or ASKS.search(_clause(text, match.start(), end)):
            continue
        inside += told
        words.append(" ".join(layout.text[match.start() : end].split()))
    rest = [f for f in layout.figures if f not in inside and f.is_measure]
    roles = {f.role for f in rest}
    if not inside or "od" not in roles or not ("wall" in roles or roles & RADIUS_ROLES):
        return
    if not roles & RADIUS_ROLES and any(f.role in RADIUS_ROLES for f in inside):
        return  # the die that the tube is to be bent on
    layout.owned.extend(words)
    for figure in inside:
        figure.negated = figure.owned = True


def _is_missed(text: str, end: int) -> bool:
    """'..., but no mandrel', '... but it's cracked': what is not there, or of no use, is wanted."""
    stop = _SENTENCE_END.search(text, end)
    rest = text[end : stop.start() if stop is not None else len(text)]
    return _NO_MANDREL.search(rest) is not None or WANTED_ALL_THE_SAME.search(rest) is not None


def _clause(text: str, begin: int, end: int) -> str:
    """The words from where the sentence begins."""
    stops = [stop.end() for stop in re.finditer(r"[.!?;](?=\s)|\n\n", text[:begin])]
    return text[max(stops, default=0) : end]
