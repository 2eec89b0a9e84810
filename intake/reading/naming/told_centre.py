"""A centreline radius told without its word: 'vom Drehpunkt bis zur Rohrmitte sind es 110', 'die
Biegeform misst 102 bis Rohrmitte', 'bocht van 40 door het hart'; and one told in an aside: 'le
rayon, disons 127'."""

from __future__ import annotations

from ...late_pattern import late_pattern
from ..aside.phrases_beside import UNIT
from ..text.patterns import any_of
from ..text.roles import Role

_TURNS = any_of(
    r"dreh(?:mittel)?punkt\w* | \w*mittelpunkt\w* | drehachse | drehmitte | biegezentrum",
    "centre de (?:rotation|cintrage|courbure|la courbe|giration)",
    "centre du (?:galet|coude|cintre)",
    "centro de (?:giro|la curva|curvatura|rotación) | centro del (?:codo|doblez|rodillo)",
    "centro (?:di rotazione|della curva|di piega|di curvatura|del rullo|della matrice)",
    "draaipunt | draaias | middelpunt(?: van de (?:bocht|mal|buigschijf))? | pivot(?: point)?",
    "cent(?:re|er) of (?:rotation|the bend|the die|bend)",
)
_MIDDLE = any_of(
    "rohrmitte | mitte (?:des |vom )?rohre?s? | rohrachse | rohrmittellinie | achse des rohrs",
    "axe(?: du tube)? | milieu du tube | centre du tube | fibre neutre | eje(?: del? tubo)?",
    "centro del tubo | asse(?: del tubo)? | mezzeria(?: del tubo)? | (?:metà|mezzo) (?:del )?tubo",
    "hart (?:van de )?buis | hart | hartlijn | midden van de buis | buishart",
    "(?:tube|pipe) (?:cent(?:re|er)(?: ?line)?|axis)",
    "(?:cent(?:re|er)|middle) of the (?:tube|pipe)",
)
_FROM_TURN = late_pattern(rf"\b{_TURNS}\b[^.;\d]{{1,40}}?\b{_MIDDLE}\b[^.;\d]{{0,24}}$")
_TO_MIDDLE = late_pattern(
    UNIT
    + r"(?:gemessen |mesurée? |medid[oa] |misurat[oa] |gemeten )?"
    + r"(?:bis|auf|in|zur|tot|op|door|aan|à|au|sur|jusqu'à|jusqu'au|hasta|al|a|en|fino a|fino alla"
    + r"|fino all|all|alla|sull|sulla|to|at)?"
    + rf"(?:[\s'’](?:zur|der|die|das|den|het|de|l|el|la|le|the|in))?[\s'’]?{_MIDDLE}\b"
)
_BEND = late_pattern(
    r"\b"
    + any_of(
        "biegeform | biegerolle | biegesegment | biegewerkzeug | biegematrize | matrize | bogen",
        "biegung | biegebacke | bocht | boog | buigsegment | buigschoen | buigschijf | buigmal",
        "mal | matrijs | galet | forme | sabot | coude | cintre | outillage | matrice | courbe",
        "matriz | horma | codo | curva | utillaje | dado | molde | rullo | stampo | gola | piega",
    )
    + r"\b[^.;,\d]{0,32}$"
)
_ASIDE = late_pattern(
    r"\b(?:\w*radius|rayon|radio|raggio|\w*straal|clr)"
    r"(?:\s(?:de cintrage|di curvatura|de curvatura))?\s?[,:?]\s?"
    + any_of(
        "disons | c'est | on va dire | mettons | sagen wir(?: mal)? | das ist | das sind",
        "sag ich mal | digamos | pongamos | es | diciamo | è | facciamo | zeg(?: maar)? | dat is",
        "laten we zeggen",
    )
    + r"(?:\s(?:donc|also|dann|au moins|mindestens|al menos|almeno|minstens|de|di|von|van)){0,2}"
    + r"\s?$"
)

_SIDED = late_pattern(
    r"\b(?:inn|au(?:ß|ss)en|äu(?:ß|ss)er|int|ext|est|binn|buit|inwend|uitwend|dentro|fuera)\w*"
)


def told_centre(before: str, after: str) -> Role | None:
    """What the words around a figure, casefolded, say of a bend without the word beside it."""
    if _FROM_TURN.search(before):
        return "clr"
    if _TO_MIDDLE.match(after) and _BEND.search(before):
        return "clr"
    return "radius" if _ASIDE.search(before) and not _SIDED.search(before) else None
