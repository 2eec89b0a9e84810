"""Words for 'one of each', in six languages."""

from __future__ import annotations

from ..text.patterns import whole_words

FOR_EACH = (
    r"(?:je|pro) (?:größe|abmessung|rohr|radius|maß|position|wand\w*)",
    r"par (?:taille|dimension|tube|rayon|diamètre|ligne|épaisseur|paroi)",
    r"por (?:medida|tubo|radio|diámetro|línea|espesor|pared)",
    r"per (?:misura|dimensione|raggio|diametro|riga|spessore|tipo|maat|buis|straal|regel|wand\w*)",
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
_DOORN = r"(?:één|een|1)(?: doorn)?"
EACH_WALL = whole_words(
    r"(?:each|every|per|either) (?:wall|gauge|thickness) | (?:both|two|three|all) (?:walls|gauges)",
    r"(?:je|pro|jede) wand\w* | (?:zwei|drei|beiden?) (?:wand(?:stärk|dick)en|wände)",
    r"(?:chaque|par) (?:épaisseur|paroi) | (?:deux|trois|les) (?:épaisseurs|parois)",
    r"(?:cada|por) (?:espesor|pared) | (?:dos|tres|amb[oa]s) (?:espesores|paredes)",
    r"(?:ogni|per|ciascuno) spessore | (?:due|tre|entrambi gli) spessori",
    r"(?:elke|iedere|per) wand\w* | (?:twee|drie|beide) wand(?:en|diktes?)",
    r"(?:one|1|two|2) (?:mandrels? )?(?:for |of |per )?each",
    r"(?:je|jeweils) (?:ein|1)\w* (?:dorn|stück)",
    r"(?:one|1|two|2) (?:mandrels? )?per (?:size|tube|one) | von jede[rnm] (?:ein|1)\w*",
    r"(?:un|1) mandrin (?:de chaque|par tube) | (?:un|1) mandril de cada | per tipo | per misura",
    rf"voor elke maat {_DOORN}",
    r"(?:un|1) mandrin (?:pour |par )?cha(?:cun|que) | (?:un|1) mandril (?:para |por )?cada",
    r"(?:un|1) mandrino (?:per )?(?:ciascun[oa]?|ognun[oa]|ogni)",
    rf"(?:van |voor )?(?:elk|ieder|elke) {_DOORN} | {_DOORN} (?:voor |per )?elk",
)
"""Where one mandrel is asked for each wall, or of each size, a further wall needs no other word."""
