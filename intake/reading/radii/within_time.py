"""Words for 'inside' that tell of time, or of what has come in: no side of the radius.

'Straal 76, binnen twee weken graag', 'moet binnen zijn op 4 december'.
"""

from __future__ import annotations

from ...late_pattern import late_pattern
from ..text.patterns import any_of

_COUNT = r"een | één | twee | drie | vier | vijf | zes | acht | tien | enkele | enige | \d+"
_SPAN = r"(?:week|weken|maand|maanden|dag|dagen|werkdagen|termijn|tijd|jaar)"
_MONTH = (
    r"(?:jan|feb|maart|april|mei|juni|juli|aug|sep|okt|nov|dec)\w*"
    r"|(?:de )?(?:loop|week|maand|eerste|tweede|laatste)"
)
_WITHIN = late_pattern(
    r"\b(?:"
    + any_of(
        rf"binnen (?:{any_of(_COUNT)}|de|deze|dezelfde|afzienbare|korte)(?: \w+)? {_SPAN}",
        rf"binnen (?:een|één|deze) {_SPAN} | binnen in (?:{_MONTH})",
        r"binnen (?:te )?(?:zijn|hebben|krijgen|komen)",
        r"(?:graag|liefst|moet(?:en)?|bij ons|hier|hem|deze|week|weken)(?: \w+)? binnen"
        r"(?= (?:op|voor|vóór|voor eind|uiterlijk|per|tegen|vanaf|begin|eind|half|rond)\b|\W*$)",
        r"all'interno (?:del mese|della settimana|dell'anno)",
    )
    + r")(?!\w)"
)


def without_times(words: str) -> str:
    """Casefolded words without those that tell in what time something is to come."""
    return _WITHIN.sub(" ", words)
