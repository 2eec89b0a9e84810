"""Counts written with a point for the thousands: '1.200 pezzi all'anno', '2.500 Rohre im Jahr'."""

from __future__ import annotations

import re

from ...late_pattern import late_pattern
from ..text.patterns import any_of
from .numbers import Number

_GROUPED = re.compile(r"[1-9]\d{0,2}\.\d{3}")
_PIECES = any_of(
    r"pcs? | pieces | parts | units(?!\sin) | bends(?!\s(?:on|at|in|to|with)\b) | pi[eè]ces",
    "piezas | pezzi | pz | stk | st(?:ü|ue)ck | teile | bögen | biegungen | stuks | szt | uds",
    "unidades | bochten | cintrages | coudes | curvas | pieghe | bauteile | werkstücke",
    "onderdelen",
)
_TUBES = any_of(
    r"tubes? | pipes? | rohre?n? | tubos? | tubi | buizen | tuyaux | rails? | handles? | frames?",
    "hoops? | handrails? | hairpins? | legs? | metres? | meters? | feet",
)
_OFTEN = (
    r"\s?(?:/|per|a|an|each|every|pro|im|je|par|al|all'|por|por el|per|in het)\s?"
    r"(?:year|yr|annum|month|mo\b|week|wk|day|shift|jahr|monat|woche|tag|an\b|année|mois|semaine"
    r"|campagne|lot|série|serie|batch|run|order|job|charge|auftrag|los|commande|campaña|lote|pedido"
    r"|lotto|ordine|partij|bestelling|jour|año|mes\b|semana|anno|mese|settimana|giorno|jaar|maand|week)"
    r"|\s?(?:p\.?\s?a\b|annually|yearly|monthly|weekly|jährlich|monatlich|wöchentlich|annuels?"
    r"|annui|anuales|jaarlijks)"
)
_COUNTS = late_pattern(
    rf"\s?(?:{_PIECES}\b(?![:=])|{_TUBES}\b[^\d.;:]{{0,16}}?(?:{_OFTEN})|{_OFTEN})", re.IGNORECASE
)


def counts_thousands(text: str, number: Number) -> bool:
    """Whether a number with a point counts thousands. '1.500 tubes' alone are of 1-1/2 in."""
    if _GROUPED.fullmatch(text, number.start, number.end) is None:
        return False
    return _COUNTS.match(text, number.end) is not None
