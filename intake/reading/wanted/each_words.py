"""Words for 'one of each', in six languages."""

from __future__ import annotations

from ..text.patterns import whole_words

FOR_EACH = (
    r"(?:je|pro) (?:größe|abmessung|rohr|radius|maß|position)",
    r"par (?:taille|dimension|tube|rayon|diamètre|ligne)",
    r"por (?:medida|tubo|radio|diámetro|línea)",
    r"per (?:misura|dimensione|raggio|diametro|riga|maat|buis|straal|regel)",
)
EVERY_ONE = r"every(?! (?:single )?(?:time|day|week|month|year|body)\b)"
JE = r"je(?= (?:\d|ein|zwei|drei|vier|st|gr|abm|rohr|rad|ma|pos|dur)) | jede[rnms]?"
"""The French and the Dutch 'je' is a person."""
OF_EACH = whole_words(
    *FOR_EACH,
    r"per (?:die|size|row|line|radius|tube|item|od|wall) | each | both | apiece | a piece",
    rf"{EVERY_ONE} | {JE} | jeweils | beide[rn]? | chacun\w* | chaque | ogni | cada",
    r"ambos | ognuno | entrambi | ciascun\w* | elk | elke | beide",
)
