"""OD and bore told apart by words: '25.4 outside, 22.1 inside', 'Ø 20 int. / 25 ext.'"""

from __future__ import annotations

import re
from decimal import Decimal

from ...late_pattern import late_pattern
from ..text.figures import Layout
from ..text.patterns import whole_words
from ..text.roles import RADIUS_ROLES

RADIUS_WORD = whole_words(
    "radi(?:us|i) | rad | clr | bends? | bent | bending | curve | rayon | cintrage | raggio",
    "curva",
    "radio | biegeradius | bogen | straal | bocht",
)
_RADIUS_NAME = whole_words(r"\w*radi(?:us|i|en) | clr | rayons? | raggi[o]? | radio | straal")
_OUTER_WORD = whole_words(
    "outside | outer | au(?:ß|ss)en | extérieur | exterior | esterno | buiten"
)
_BORE_SHARE = Decimal("0.6")
_PAIR_APART, _NEAR_BEHIND = 60, 32
"""Characters between OD and bore, and behind the bore, in which it is said which is which."""
_INNER_WORD = (
    r"(?:inside|inner|internal(?:ly)?|innen|innere[rn]?|(?:à )?l'intérieur|intérieure?|interior"
    r"|int\b|interno|interna|por dentro|dentro|binnen|bore)"
)
_INNER_BETWEEN = late_pattern(
    rf"\b{_INNER_WORD}\b(?!\s(?:rad|r\b|(?:for|on|für|bei|pour|para|per|voor)\s))[^,;\d]{{0,24}}$"
)
_INNER_BEHIND = late_pattern(
    rf"^[\"'”″ ]{{0,3}}(?:mm|cm|in|inch(?:es)?)?\s?(?:measured\s)?(?:à\s|all['’]|van\s|"
    rf"(?:on|across|over|at|sur|su|op)\s(?:the\s|le\s|la\s|l['’]|de\s)?)?{_INNER_WORD}\b"
    r"(?!\s(?:rad|r\b|of))"
)


_INT_BETWEEN = late_pattern(
    r"[\"'”″ ]{0,3}(?:mm|cm|in|inch(?:es)?)?\s?"
    r"(?:int(?:ern[oa]?|érieur|erior)?|inner|inside|innen|binnen|inw)\b\.?[\s/,x-]{1,4}"
    r"(?:(?:and|und|et|e|y|en)\s)?[øØ]?\s?$"
)
_EXT_BEHIND = late_pattern(
    r"[\"'”″ ]{0,3}(?:mm|cm|in|inch(?:es)?)?\s?"
    r"(?:ext(?:ern[oa]?|érieur|erior)?|est(?:erno)?|outer|outside|au(?:ß|ss)en|buiten|uitw)\b"
)


def hear_bores(layout: Layout) -> None:
    """Give pairs of figures the roles of OD and bore that the words around them name."""
    _hear_pairs(layout)
    _hear_bore_first(layout)


def _hear_pairs(layout: Layout) -> None:
    """'25.4 outside, 22.1 inside', 'der Durchmesser ist 50,8 und der innere 48,8': OD and bore."""
    for right in layout.figures[1:]:
        left = layout.figures[right.index - 1]
        if left.sentence != right.sentence or {left.role, right.role} - {None, "od", "id"}:
            continue
        signs = {cue.role for f in (left, right) for cue in layout.tokens[f.token].cues}
        a, b = left.number.value, right.number.value
        if left.negated or right.negated or not a or not _BORE_SHARE < b / a < 1:
            continue
        if (left.unit or right.unit) != (right.unit or left.unit) or left.unit == "D":
            continue
        between = layout.words(left.end, right.start)
        behind = " ".join(layout.words(right.end, right.end + _NEAR_BEHIND).split())
        inner = _INNER_BETWEEN.search(between) or _INNER_BEHIND.match(behind)
        said = re.split(r"[,;.]", behind, maxsplit=1)[0]
        far = layout.figures[left.index - 1].end if left.index else 0
        ahead = layout.words(max(far, left.start - 24), left.start)
        named = _RADIUS_NAME.search(ahead) is not None
        of_radii = named or any(RADIUS_WORD.search(words) for words in (between, said))
        if not inner or len(between) >= _PAIR_APART:
            continue
        outer = _OUTER_WORD.search(ahead + between) is not None
        if signs & RADIUS_ROLES and not outer:
            continue  # "R 76, which works out to 57 on the inside": other_side.py weighs the two
        if signs & RADIUS_ROLES or (of_radii and outer):
            left.give("outside_r", "cue")  # "R 100 on the outside and R 62 on the inside"
            right.give("noise", "cue")
        elif not of_radii:
            left.give("od", "cue")
            right.give("id", "cue")


def _hear_bore_first(layout: Layout) -> None:
    """'Ø 20 int. / 25 ext.', 'inside 20, outside 25' have the bore first."""
    for right in layout.figures[1:]:
        left = layout.figures[right.index - 1]
        a, b = left.number.value, right.number.value
        if left.sentence != right.sentence or {left.role, right.role} - {None, "od", "id"}:
            continue
        if left.negated or right.negated or not b or not _BORE_SHARE < a / b < 1:
            continue
        between = layout.words(left.end, right.start)
        behind = layout.words(right.end, right.end + _NEAR_BEHIND)
        if not (_INT_BETWEEN.match(between) and _EXT_BEHIND.match(behind)):
            continue
        far = layout.figures[left.index - 1].end if left.index else 0
        of_radii = _RADIUS_NAME.search(layout.words(max(far, left.start - 24), left.start))
        left.give("inside_r" if of_radii else "id", "cue")
        right.give("noise" if of_radii else "od", "cue")
