"""The side of a bend as a mark right behind a radius: 'R57i', 'R 57 (int.)', 'CLR 3 inside'."""

from __future__ import annotations

from typing import Literal

from ...late_pattern import late_pattern
from ..text.figures import Figure, Layout

_UNIT = (
    r"(?:\s?(?:mm|cm|inch(?:es)?|in|zoll|pouces?|pulgadas?|pollici|duim|[\"”″])(?![^\W\d_])\.?)?"
)
_NOUN = r"(?:\s?(?:radius|rad|clr|r|rayon|radio|raggio|straal)\b\.?)?"
_MEASURED = (
    r"(?:(?:that'?s|that is|is|ist|c'est|est|è|es)\s)?(?:measured|gemessen|mesuré|misurato|medido"
    r"|gemeten)?\s?(?:(?:to|on|at|an|auf|à|al|all|por|per|aan|op)\s)?"
    r"(?:(?:the|der|die|de|la|le)\s|all'|à l')?"
)
_INNER = (
    r"inside|inner|internal|(?:int|i\.?d|i\.?r|inn|inw)(?!\.?[ \t]{0,2}\d)|innen(?:seite|kante)?"
    r"|intérieure?|interieur|interior|intern[aeo]|(?:a)?dentro|intrados|binnen(?:kant|zijde)?|inwendig"
)
_OUTER = (
    r"outside|outer|external|ext(?!\.?[ \t]{0,2}\d)|au(?:ß|ss)en(?:seite|kante)?|extérieure?"
    r"|exterieur|exterior|estern[ao]|extern[aeo]|fuera|extrados|buiten(?:kant|zijde)?"
)
_PARTED = r"[ \t]?[,(–-]?[ \t]?"
_ENDS = (
    r"\.?(?=[ \t]{0,2}(?:$|[.,;)\n\r!?|/]|[–—-]\s"
    r"|(?:please|pls|thanks|bitte|danke|svp|merci|gracias|grazie|graag|aub)\b))"
)
_BEHIND = late_pattern(
    rf"{_UNIT}{_NOUN}(?:{_PARTED}{_MEASURED}(?:(?P<inner>{_INNER})|(?P<outer>{_OUTER})){_ENDS}"
    rf"|(?P<i>i(?![\w'’])|[ \t]?\(i\)|[ \t]i{_ENDS}))"
)
"""A single 'i' parted by a blank is the Polish 'and' and the Swedish 'in', but for a clause's end;
and no figure follows, which the word might name instead: 'R57, int. 35'."""
_FAR = 64

Side = Literal["inside", "outside"]


def side_behind(layout: Layout, figure: Figure) -> Side | None:
    """The side that the words right behind a radius name, if they do."""
    found = _BEHIND.match(layout.words(figure.end, figure.end + _FAR))
    if found is None:
        return None
    return "outside" if found["outer"] else "inside"
