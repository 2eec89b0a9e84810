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
_OF_THE_TUBE = (
    r"(?:(?:of|in|des|du|della?|del|van|de|von)\s)?(?:(?:the|our|this|der|la|le|de|het|il|el)\s)?"
    r"(?:tub(?:e|ing)|pipe|rohre?s?|tubo|buis)"
)
_DIAMETER = r"(?:\s?(?:dia(?:m(?:eter)?)?|diamètre|diámetro|diametro|durchmesser|diameter)\b\.?)?"
_IS = (
    r"(?:\s?[:=(]|\s(?:is|of|measures|measured|mikes?|miked|comes|out|at|to|about|ist|est|es|è"
    r"|mide|misura|mesure|meet|beträgt|von|de|di|van|gemessen|mit)\b){0,4}\s?[øØ]?\s?$"
)
_INNER_OF_TUBE = late_pattern(
    r"(?:\b(?:bore|inside|inner|internal|i\.?d\.?)" + _DIAMETER + rf"\s{_OF_THE_TUBE}"
    r"|\b(?:inner|internal|inside) dia(?:m(?:eter)?)?\b\.?"
    rf"|\b(?:innen|binnen)(?:durchmesser|diameter|maß|maat)(?:\s{_OF_THE_TUBE})?"
    r"|\b(?:diam[èeé]tre|diámetro|diametro)\s(?:intérieur|interior|interno|interno)"
    rf"(?:\s{_OF_THE_TUBE})?)" + _IS
)
_BORE_OF_TUBE = late_pattern(
    r"\b(?:bore|(?:inside|inner|internal) dia(?:m(?:eter)?)?\b\.?|i\.?d\.?|innendurchmesser"
    r"|binnendiameter|(?:diam[èeé]tre|diámetro|diametro)\s(?:intérieur|interior|interno))"
    rf"\s(?:of|des|du|della?|del|van|von)\s{_OF_THE_TUBE}" + _IS
)
_OUTER_BETWEEN = late_pattern(
    r"\b(?:(?:outside|outer|external)" + _DIAMETER + rf"|o\.?d\.?(?:\s{_OF_THE_TUBE})?"
    r"|(?:au(?:ß|ss)en|buiten)(?:durchmesser|diameter|maß|maat)"
    r"|(?:diam[èeé]tre|diámetro|diametro)\s(?:extérieur|exterior|esterno))"
    rf"(?:\s{_OF_THE_TUBE})?" + _IS
)
_OD_BEHIND = late_pattern(
    r"[\"'”″ ]{0,3}(?:mm|cm|in|inch(?:es)?)?[\s(]{0,2}(?:o\.?d\b|outside|outer|tub|pipe|au(?:ß"
    r"|ss)en|buiten)"
)
_NAMED_AHEAD = 48
"""Characters before a bore in which it is named: 'inside diameter of the tube measured at 31.8'."""


def hear_bores(layout: Layout) -> None:
    """Give pairs of figures the roles of OD and bore that the words around them name."""
    _hear_pairs(layout)
    _hear_bore_first(layout)
    _hear_bore_alone(layout)


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
    """'Ø 20 int. / 25 ext.', 'bore of the tube 20, outside diameter 25' have the bore first."""
    for right in layout.figures[1:]:
        left = layout.figures[right.index - 1]
        a, b = left.number.value, right.number.value
        if left.sentence != right.sentence or {left.role, right.role} - {None, "od", "id"}:
            continue
        if left.negated or right.negated or not b or not _BORE_SHARE < a / b < 1:
            continue
        between = layout.words(left.end, right.start)
        behind = layout.words(right.end, right.end + _NEAR_BEHIND)
        far = layout.figures[left.index - 1].end if left.index else 0
        ahead = layout.words(max(far, left.start - _NAMED_AHEAD), left.start)
        named = _INNER_OF_TUBE.search(ahead) and _OUTER_BETWEEN.search(between)
        if not (named or (_INT_BETWEEN.match(between) and _EXT_BEHIND.match(behind))):
            continue
        of_radii = not named and _RADIUS_NAME.search(ahead[-24:])
        left.give("inside_r" if of_radii else "id", "cue")
        right.give("noise" if of_radii else "od", "cue")


def _hear_bore_alone(layout: Layout) -> None:
    """'Bore of the pipe 31.8 mm, wall 1.55'; 'the bore of the tube 38 x 1.5' is that of a size."""
    for figure in layout.figures:
        after = layout.after(figure)
        if figure.role is not None or figure.negated or (after and after.link == "times"):
            continue
        far = layout.figures[figure.index - 1].end if figure.index else 0
        ahead = layout.words(max(far, figure.start - _NAMED_AHEAD), figure.start)
        behind = layout.words(figure.end, figure.end + _NEAR_BEHIND)
        if _BORE_OF_TUBE.search(ahead) and not _OD_BEHIND.match(behind):
            figure.give("id", "cue")
