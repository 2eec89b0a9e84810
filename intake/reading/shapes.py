"""Cross-sections by name: square, rectangular, and others that are not round."""

from __future__ import annotations

import re

from .patterns import any_of

_NO_SHAPE = re.compile(
    r"\bnot (?:a )?(?:square|rectangular|oval|box)|square (?:to|with|edge|cut|foot|feet|ends?)"
    r"|\b(?:without|no|avoid)(?: \w+){0,2} oval|oval(?:ity|ing|ise|ize)|(?:going|goes|gone|go) oval"
    r"|oval (?:look|shape after)|\b(?:no|sorry|actually)\W{1,3}(?:it's |its )?round\b",
    re.IGNORECASE,
)
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


_BEFORE, _AFTER = 40, 30


def shape_near(text: str, start: int, end: int) -> str | None:
    """The cross-section named a few words before or after a place in the text, or None."""
    return shape_named(text[max(0, start - _BEFORE) : end + _AFTER].casefold())


def shape_named(text: str, behind: str = "") -> str | None:
    """The cross-section that a stretch of text names ('rectangular', 'square', 'other'), or None.

    'Square to the tube' and 'not square' name none; nor does a name that is taken back ``behind``.
    """
    if _NO_SHAPE.search(text + behind):
        return None
    return next((shape for shape, words in _NAMED if words.search(text)), None)
