"""Cross-sections by name: square, rectangular, and others that are not round."""

from __future__ import annotations

import re

from ...late_pattern import late_pattern
from ..text.patterns import any_of

_NO_SHAPE = late_pattern(
    r"\bnot (?:an? |the )?(?:square|rectangular|oval|box)"
    r"|\b(?:kein\w*|nicht (?:das|die|den|der)|geen|niet (?:de|het))"
    r" (?:vierkant|quadrat|rechteck|rechthoek)\w*"
    r"|\b(?:pas (?:le|la|les|du|de)|no (?:el|la|los|de|es)|non (?:il|la|quello))"
    r" (?:tub[eo] )?(?:carr[ée]|rectang|cuadrad|quadr|rettang)\w*"
    r"|square (?:to|with|edge|cut|foot|feet|ends?)"
    r"|\b(?:without|no|avoid)(?: \w+){0,2} oval|oval(?:ity|ing|ise|ize)"
    r"|oval (?:look|shape after)|\b(?:no|sorry|actually)\W{1,3}(?:it's |its )?round\b",
    re.IGNORECASE,
)
_BENT_OVAL = late_pattern(
    r"\b"
    + any_of(
        r"becom\w+ | became | go(?:es|ing|ne)? | went | turn(?:s|ed|ing)? | get(?:s|ting)? | got",
        r"c[oa]m(?:es?|ing) out | com(?:es?|ing)? back | pull(?:s|ed|ing)? | end(?:s|ed)? up",
        r"collaps\w+ (?:to|into)(?: an?)? | flatten\w* (?:to|into)(?: an?)?",
        r"wird | werden | wurden? | würden? | zieht sich | ziehen sich | devien\w+ | deven\w+",
        r"ressort\w* | sort(?:ent)? | qued\w+ | sal(?:e|en|ía) | pon(?:e|en|ía) | vuelven?",
        r"divent\w+ | vien(?:e|i) | vengono | esc(?:e|ono) | word(?:t|en) | werd(?:en)? | komt uit",
        r"trekt | blir | bliver",
    )
    + r"\s(?:[^\W\d_']+[,']?\s){0,2}?ov[aá]\w*\b(?!\s(?:tub|pip|rohr|buis|section|profil))"
    r"|\boval\s(?:wird|werden|wurden?|gezogen|gebogen|gedrückt|verformt)|\bovaal\s(?:wordt|worden)",
    re.IGNORECASE,
)
"""What becomes of a tube in bending is no shape of the tube."""
_SHAPES: tuple[tuple[str, str], ...] = (
    ("rectangular", any_of(
        r"rectangular | rectangle | rect | rhs | box section | rechteck\w* | rectangulaire",
        r"rettangolare | rechthoekig\w*",
    )),
    ("square", any_of(
        r"square | sq | shs | quadratisch\w* | vierkant\w* | carr[ée]e? | cuadrad[oa] | quadr[oa]"
    )),
    ("other", any_of(
        r"oval | flat[- ]oval | elliptical | ellipse | d[- ]section | hexagonal | hex tube",
        r"octagonal | flach-?oval\w* | ovaal | ovale[ns]? | plat-?oval\w* | vlak-?ova\w*",
        r"ovalad\w* | oblong\w* | obround",
    )),
)  # fmt: skip
_NAMED = tuple((shape, re.compile(rf"\b{words}\b", re.IGNORECASE)) for shape, words in _SHAPES)


_ROUND = re.compile(
    r"\b(?<!half[ -])(?:round|rund\w*|ronde?|redond[oa]|tond[oi]|rotond[oi]|rond[eo]?)\b",
    re.IGNORECASE,
)
_SQUARE_THING = late_pattern(
    r"\bsquare[- ](?:shoulder|corner|head|cut)\w*"
    r"|\bsquare (?:brackets?|plates?|bases?|flanges?|drives?|nuts?)\b"
    r"|\bquadratische?[nrs]? (?:\w*platten?|\w*halter\w*|flansche?|winkel|konsolen?)\b"
    r"|\b(?:plaques?|platines?|brides?|équerres?) carrées?\b"
    r"|\b(?:piastr[ae]|flang[ei]|staff[ae]) quadrat[ae]\b"
    r"|\b(?:placas?|bridas?|escuadras?) cuadradas?\b"
    r"|\bvierkante (?:plaat|platen|flens|flenzen|voet|beugels?)\b",
    re.IGNORECASE,
)
"""What is square beside the tube tells nothing of the tube."""
_TUBE_IS_ROUND = late_pattern(
    r"\b(?:tub(?:e|es|ing)|pipes?|rohre?|tubos?|tubi|buis|buizen)\s"
    r"(?:(?:itself|selbst|stesso|stessi|zelf)\s)?"
    r"(?:is|are|ist|sind|est|sont|es|son|è|sono|zijn)\s"
    r"(?:(?:just|all|aber|wel|bien|gewoon|ganz normal)\s)?"
    r"(?:round|rund|ronde?s?|redondos?|tond[oi]|rotond[oi])\b",
    re.IGNORECASE,
)
"""What is square then is something else: 'the tube is round, it's the brackets that are square'."""
_ROUND_TUBE = late_pattern(
    r"\b(?<!half[ -])(?:round (?:\w{1,12} )?(?:tub(?:e|es|ing)|pipes?)|rundrohre?s?|runde[nsr]? "
    r"rohr|tubes? (?:\w{1,12} )?ronds?|tubos? (?:\w{1,12} )?redondos?|tub[oi] (?:\w{1,12} )?"
    r"tond[oi]|ronde (?:\w{1,12} )?(?:buis|buizen)|rondbuis)\b[^.;\n]{0,30}$",
    re.IGNORECASE,
)
_BEFORE, _AFTER = 40, 30
_TO_ROUND = 70
"""Characters before two figures in which their tube is called round."""
_ASIDE = re.compile(r"\([^()\n]{0,80}\)")
_WITH_ASIDE = 120
"""Characters before a size in which a remark in brackets is passed over."""


def tube_is_round(text: str) -> bool:
    """Whether a message says in so many words that its tube is round."""
    return _TUBE_IS_ROUND.search(text) is not None


def is_called_round(text: str, start: int) -> bool:
    """Whether the tube whose figures begin there is called round: 'tubo tondo inox, 25 x 15'."""
    return _ROUND_TUBE.search(text[max(0, start - _TO_ROUND) : start]) is not None


def shape_near(text: str, start: int, end: int) -> str | None:
    """The cross-section named a few words before or after a place in the text; see below."""
    before = _ASIDE.sub(_unless_of_shape, text[max(0, start - _WITH_ASIDE) : start])[-_BEFORE:]
    after = text[end : end + _AFTER]
    shape = shape_around(before, text[start:end], after)
    return None if shape is not None and tube_is_round(text) else shape


def shape_around(before: str, size: str, after: str, behind: str = "") -> str | None:
    """The cross-section named in a size or beside it on its line, or None; 'round' nearer by is
    none, nor is a name taken back ``behind``."""
    before = before.casefold().rpartition("\n")[2]
    after, line_break, _ = after.casefold().partition("\n")
    named = shape_named(f"{before}{size.casefold()}{after}", "" if line_break else behind)
    if named is None or shape_named(size.casefold()) is not None:
        return named
    round_named = _ROUND.search(size) is not None or _nearest(before, after) == "round"
    return None if round_named else named


def _unless_of_shape(aside: re.Match[str]) -> str:
    """'Oval tube (half circles, straight sides), 40 x 20': the name stands before the remark."""
    names = (*(words for _, words in _NAMED), _ROUND)
    return aside[0] if any(words.search(aside[0]) for words in names) else ""


def _nearest(before: str, after: str) -> str | None:
    """Which cross-section, 'round' among them, stands nearest to what is between two texts."""
    names = (*_NAMED, ("round", _ROUND))
    found = [
        (len(before) - m.end(), shape) for shape, words in names for m in words.finditer(before)
    ]
    found += [(m.start(), shape) for shape, words in names for m in words.finditer(after)]
    return min(found)[1] if found else None


def shape_named(text: str, behind: str = "") -> str | None:
    """The cross-section that a stretch of text names ('rectangular', 'square', 'other'), or None.

    'Square to the tube' and 'not square' name none; nor does a name that is taken back ``behind``.
    """
    said = _SQUARE_THING.sub(lambda thing: " " * len(thing[0]), text + behind)
    text = said[: len(text)]
    if _NO_SHAPE.search(said) or _BENT_OVAL.search(said):
        return None
    return next((shape for shape, words in _NAMED if words.search(text)), None)
