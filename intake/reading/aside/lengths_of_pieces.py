"""How long pieces of tube are, or what is straight of them, and by how much a bend is spoilt."""

from __future__ import annotations

from ...late_pattern import late_pattern
from ..text.patterns import any_of

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

_STRAIGHT = late_pattern(
    _UNIT
    + any_of(
        r"(?:of )?(?:a )?straight(?:s| section| length)?\b(?! (?:[\w-]+ )?(?:tub|pipe))",
        r"(?:to|for) (?:the )?(?:clamp|grip)\w* | between (?:the )?bends | of grip\b | of clamp",
        r"gerade[nrs]?\b | zum (?:ein)?spannen | entre (?:les )?(?:cintres|coudes) | de droit\b",
        r"entre (?:las )?curvas | rectos?\b | tra le curve | di tratto (?:dritto|diritto)",
        "tussen de bochten | recht stuk",
    )
)
"""'Only 1-1/2" of straight to clamp on', '3 in of straight between bends'."""
_SPOILT = late_pattern(
    r"\b"
    + any_of(
        "flattens?(?: out)? | flattened | flattening(?: of| is)? | collapses? | collapsed | sags?",
        r"(?:goes|is|gets|comes out) (?:out of round|oval|egg shaped)(?: by)? | out of round",
        "springs? back | sprang back | springback(?: of| is)? | off by | thins? (?:out )?by",
        r"kinks? (?:in )?by | dents? in | caves? in | oval um | flach um | ovalis\w+ de",
    )
    + r"\s?(?:by\s)?(?:(?:about|around|roughly|maybe|almost|nearly|ca\.?|um)\s)?(?:an?\s)?$"
)
"""'It flattens about 1/8 in at the middle of the bend.'"""

_NARROWS = late_pattern(r"\b(?:necks?|necked|thins?|thinned|narrows?|goes|went) (?:down )?to\s$")
_IN_THE_BEND = late_pattern(
    _UNIT + r"(?:in|at|through) the (?:middle of the |center of the )?bend\b"
)


def is_length_of_pieces(before: str, after: str) -> bool:
    """Whether the casefolded words around a figure tell how long each of some pieces is."""
    return _IN_PIECES.search(before) is not None and _EACH.match(after) is not None


def is_straight_or_spoilt(before: str, after: str) -> bool:
    """Whether they tell what is left straight, or by how much a bend came out wrong."""
    if _NARROWS.search(before):
        return _IN_THE_BEND.match(after) is not None  # "it necks down to 1.2 in the bend"
    return _STRAIGHT.match(after) is not None or _SPOILT.search(before) is not None
