"""'With both kids in the back', 'at $85 apiece': what is counted are people, days or prices, and no
sizes, so that nothing is asked for by it."""

from __future__ import annotations

from ...late_pattern import late_pattern
from ..text.patterns import any_of

_PEOPLE = any_of(
    "kids? | child(?:ren)? | boys? | girls? | lads? | sons? | daughters? | brothers? | sisters?",
    "men | man | guys? | fell(?:ow|a)s? | chaps? | blokes? | people | parents? | knees? | eyes?",
)
_TIMES = any_of(
    "days? | weeks? | months? | years? | times? | evenings? | mornings? | nights? | weekends?",
    "seasons? | winters? | summers? | springs? | saturdays? | sundays? | shifts?",
)
_OF_MINE = r"(?:of )?(?:(?:the|my|our|his|her|their|these|those)\s)?(?:\w+\s)?"
_PRICE = any_of("€ | euros? | eur | dollars? | bucks | pounds | quid")
_EACH = any_of(
    "apiece | each | a piece | per \\w+ | pro \\w+ | jeweils | das stück | chacune? | pièce",
    "cada un[oa] | ciascun[oa] | l'un[oa] | per stuk",
)

COUNTED_OTHERWISE = late_pattern(
    r"\b"
    + any_of(
        rf"(?:both|each|every|all|either) {_OF_MINE}(?:{_PEOPLE}|{_TIMES})",
        rf"the (?:other|first|second|last) (?:{_PEOPLE}|{_TIMES}|thing|half|place|owner)",
        "beide[nr]? (?:kinder\\w*|söhne\\w*|jungs|brüder\\w*|leute)",
        "(?:jede[nrms]?|alle) (?:kinder\\w*|leute|tage?s?|wochen?|monate?|jahre?s?|mal|schichten?)",
        "les deux (?:enfants|fils|frères|gamins) | chaque (?:jour|semaine|mois|année|fois|été)",
        "(?:ambos|los dos) (?:hijos|hermanos|niños) | (?:cada|todos los) (?:días?|años?)",
        "cada (?:vez|semana|mes) | todas las semanas",
        "(?:entrambi|tutti e due) i (?:figli|fratelli)",
        "ogni (?:giorno|settimana|mese|anno|volta) | tutti i (?:giorni|mesi) | tutte le (?:volte)",
        "beide (?:zoons|zonen|jongens|kinderen) | elke? (?:dag|week|maand|keer|jaar)",
    )
    + rf"\b|[$£€]\s?\d[\d.,]*\s{_EACH}\b|\d\s?{_PRICE}\s{_EACH}\b"
)
COUNTED_TOOLS = late_pattern(
    r"\b(?:two|three|four|zwei|drei|deux|trois|dos|tres|due|tre|twee|drie|\d{1,2})\s(?:mandrels"
    r"|plugs"
    r"|pieces|pcs|\w*dorne|mandrins|mandriles|mandrini|doorn(?:en|s))\b"
)
"""Mandrels that are counted: of the size as it is now, where the other is past."""
COUNTED_FOR_IT = late_pattern(
    r"\b(?:two|three|four|\d{1,2}) (?:mandrels|plugs|pieces|pcs|\w*dorne|mandrins|mandriles"
    r"|mandrini|doorn(?:en|s))"
    r" (?:for|für|pour|para|per|voor) (?=\W?\d)"
)
"""'4 mandrels for 3/8 x .035': as many of the one size."""
TUBES_COUNTED = late_pattern(
    r"\b(?:two|2|three|3|four|4) (?:\w+ )?(?:tubes|pipes|sizes|bends|diameters)\b"
)
"""'We run two tubes': that asks for neither."""
QUANTITY = late_pattern(
    r"\b(?:qty|quantity|menge|stückzahl|anzahl|quantité|qté|cantidad|cant|quantità|aantal)"
    r"\b\W{0,3}\d"
)
