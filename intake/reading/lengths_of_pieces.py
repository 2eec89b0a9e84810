"""How long pieces of tube are: 'two pieces of tube, 500 mm each'."""

from __future__ import annotations

from ..late_pattern import late_pattern
from .patterns import any_of

_UNIT = r"^\W{0,3}(?:mm|cm|in|inch(?:es)?)?\W{0,2}\s*"
_IN_PIECES = late_pattern(
    r"\b"
    + any_of(
        "pieces? | lengths? | bits? | sticks? | offcuts? | blanks? | stücke? | reste?",
        "abschnitte?",
        "morceaux? | bouts? | longueurs? | chutes? | trozos? | tramos? | recortes? | pezz[io]",
        "spezzon[ei] | ritagli | stuk(?:ken|s)? | stukjes | lengtes? | reststukken",
    )
    + r"\b(?:\s(?:of|de|di|von|van|à))?(?:\s(?:the|scrap|spare|straight))?"
    r"(?:\s(?:tub(?:e|es|ing|os?|i)|pipes?|stock|rohre?|buis|tuyau))?\W{1,3}$"
)
_EACH = late_pattern(
    _UNIT + r"(?:each|apiece|a piece|long|je\b|jeweils|lang\b|chacun|de long|cada un[oa]"
    r"|de largo|ciascun|l'un[oa]|elk\b|per stuk)"
)


def is_length_of_pieces(before: str, after: str) -> bool:
    """Whether the casefolded words around a figure tell how long each of some pieces is."""
    return _IN_PIECES.search(before) is not None and _EACH.match(after) is not None
