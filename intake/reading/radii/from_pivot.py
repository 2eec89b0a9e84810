"""A radius told as what is measured on the bender: 'from the pivot to the middle of the groove',
'Abstand Drehachse - Rohrachse 100', '60 from die centre to the near edge of the tube'.
"""

from __future__ import annotations

from ...late_pattern import late_pattern
from ..aside.phrases_beside import UNIT
from ..text.patterns import any_of
from ..text.roles import Role

_THE = (
    r"(?:the |its |our |my |a |der |die |das |des |dem |den |vom |le |la |les |l'|du |de la |de l'"
    r"|el |los |il |lo |gli |de |het |del |della |dell'|van de |van het )?"
)
_CENTRE = r"(?:middle|cent(?:re|er)(?: ?line)?|axis)"
_PIVOT = any_of(
    rf"(?:die |former |tool |shoe |bender )?pivot(?: pin| point| bolt| {_CENTRE})?",
    rf"(?:die|former|hub|shoe|spindle|king ?pin|bend(?:ing)? die|forming roller?|tool) {_CENTRE}",
    rf"{_CENTRE} of {_THE}(?:bend(?:ing)? )?(?:die|former|hub|shoe|rotation|pivot|spindle|tool)",
    rf"{_CENTRE} of {_THE}bend | bend {_CENTRE}",
    "(?:rotation(?:al)?|rotating|turning|swing|bending) axis | spindle | king ?pin",
    "drehpunkts? | drehachse | drehmitte | rotationsachse | biegeachse | schwenkachse",
    "schwenkpunkt | werkzeugmitte | formmitte | scheibenmitte | segmentmitte",
    rf"mitte {_THE}(?:biege)?(?:form|scheibe|segments?|matrize|rolle)",
    rf"axe de rotation | axe de pivotement | pivot | centre {_THE}(?:matrice|forme|galet|outil)",
    rf"eje de giro | eje de rotación | pivote | centro {_THE}(?:dado|matriz|horma|rodillo)",
    rf"asse di rotazione | perno | fulcro | centro {_THE}(?:matrice|forma|rullo)",
    rf"draaipunt | draaias | rotatieas | hart {_THE}(?:matrijs|mal|buigmal|buigsegment)",
)
_TUBE = r"(?:tub(?:e|ing)|pipe)"
_MIDDLE = any_of(
    rf"{_CENTRE} of {_THE}(?:{_TUBE}|groove|channel)",
    rf"(?:{_TUBE}|groove) {_CENTRE}",
    rf"{_CENTRE} of where {_THE}{_TUBE} (?:sits|goes|lies|runs)",
    rf"rohrmitte | rohrachse | rohrmittellinie | mitte {_THE}(?:rohre?s?|rille|nut)",
    "rillenmitte | nutmitte",
    rf"(?:axe|milieu|centre) {_THE}(?:tube|gorge)",
    rf"(?:eje|centro|medio|mitad) {_THE}(?:tubo|garganta|ranura|canal)",
    rf"(?:asse|centro|mezzo|mezzeria) {_THE}(?:tubo|gola)",
    rf"(?:hart|midden|hartlijn) {_THE}(?:buis|groef)",
)
_INSIDE = any_of(
    rf"(?:near(?:est)?|inner|inside) (?:edge|side|face|wall) of {_THE}{_TUBE}",
    rf"inside of {_THE}{_TUBE} | (?:bottom|base|root) of {_THE}groove | groove bottom",
    "rillengrund | rohrinnenkante | fond de gorge | fond de la gorge",
)
_OUTSIDE = any_of(
    rf"(?:far|outer|outside) (?:edge|side|face|wall) of {_THE}{_TUBE} | outside of {_THE}{_TUBE}",
)
_TO = any_of(
    "to | and | up to | out to | zu | zur | bis | bis zur | bis zum | und | à | au | jusqu'à",
    "jusqu'au | et | a | al | all' | hasta | y | e | ed | tot | tot aan | naar | en | - | –",
)
_ENDS = rf"(?P<middle>{_MIDDLE})|(?P<inside>{_INSIDE})|(?P<outside>{_OUTSIDE})"
_IS = any_of(
    "and it's | and it is | and that's | which is",
    "is | of | are | measures | about | exactly | distance | ist | beträgt | misst | est | mesure",
    "es | de | mide | è | misura | di | bedraagt | gemessen | measured | ca\\.? | should be",
)
_BEFORE = late_pattern(
    rf"\b{_PIVOT} ?{_TO} ?{_THE}(?:{_ENDS})(?:,? {_IS})*[\s:=,]*$"
    rf"|\b{_MIDDLE} ?{_TO} ?{_THE}(?P<back>{_PIVOT})(?:,? {_IS})*[\s:=,]*$"
)
_AFTER = late_pattern(
    UNIT
    + r"(?:(?:measured|away|distance|abstand) )?"
    + r"(?:from|between|von|vom|zwischen|de|du|entre|da|dal|dall'|desde|van|tussen|tra|fra)? ?"
    + rf"{_THE}(?:{_PIVOT} ?{_TO} ?{_THE}(?:{_ENDS})|{_MIDDLE} ?{_TO} ?{_THE}(?P<back>{_PIVOT}))\b"
)


_STANDS_AT = late_pattern(
    rf"\b{_MIDDLE} (?:is|sits|lies|runs|stands|will be) (?:at|on)(?: an?| about)? ?$"
)


_STANDS = late_pattern(rf"\b{_MIDDLE} (?:is|sits|lies|runs|stands) (?:about )?$")
_OFF_PIVOT = late_pattern(UNIT + rf"(?:off|from|away from|out from) {_THE}{_PIVOT}\b")
"""'The centre of the tube runs 100 off the pivot'"""
_HALF_APART = late_pattern(
    r"\bhalf (?:of )?the (?:cent(?:re|er)[ -]to[ -]cent(?:re|er)|c[ -]to[ -]c|leg spacing"
    r"|cent(?:re|er) distance|pitch)(?: distance)? (?:is|=|comes to) ?$"
)


def from_pivot(before: str, after: str) -> Role | None:
    """The radius that the words around a figure, casefolded, tell from the die's axis."""
    if _STANDS_AT.search(before) or _HALF_APART.search(before):
        return "clr"  # "... so that the tube centre is at 100 from the middle"
    if _STANDS.search(before) and _OFF_PIVOT.match(after):
        return "clr"
    told = _BEFORE.search(before) or _AFTER.match(after)
    if told is None:
        return None
    if told["middle"] or told["back"]:
        return "clr"
    return "inside_r" if told["inside"] else "outside_r"
