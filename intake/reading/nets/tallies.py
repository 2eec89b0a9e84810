"""What a message counts, held against what was read: how many sizes, how many mandrels.

Two nets below the reading, each raising a doubt only. 'Two sizes' where four were read, or one:
some size may be made up, or lost. And more than some ten mandrels are asked for so seldom that the
count must have its noun or its label beside it: in 'R 100 tool' the 100 is a radius.
"""

from __future__ import annotations

import re
from collections.abc import Sequence

from ....rules.request import Doubt, SizeRequest
from ...late_pattern import late_pattern
from ..counts import words as w
from ..counts.sizes_said import COUNTED, SIZES, sizes_said
from ..requests import wholly_doubted
from ..text.phrases import fold
from ..wanted.asked_words import ASKS

_MANY = 12
"""More mandrels than that are seldom asked for at once."""
_UNSURE = "so many mandrels are seldom asked for, and no word beside the figure counts them"
_PIECES = late_pattern(
    r"\W{0,3}\b(?:[^\W\d]+[ -]){0,3}?(?:"
    + "|".join(
        sorted(
            {re.escape(" ".join(phrase)) for found in w.PIECES.values() for phrase in found}
            - w.SHY_PIECES
            | {re.escape(word) for word in w.MANDRELS}
        )
    )
    + r"|\w*d(?:orn|orne|ornen|oorn|oorns)|sets?)\b"
)
_LABEL = late_pattern(
    r"\b(?:q|qt?y|qtt?y|quantity|menge|anzahl|stuckzahl|stk|quantite|qte|nombre|nbre|cantidad|cant"
    r"|quantita|q\.ta|qta|aantal|pcs|pieces|mandrels?|need|order|for)\b[^\w\n]{0,8}$"
)
_MEASURED = late_pattern(
    r"(?:\b(?:cl)?r|\brad(?:ius)?|rayon|radio|raggio|straal|ø|\bwall)[^\w\n,;.]{0,3}$"
)
_CELLS = late_pattern(r"[\t;|]|,(?! )| {3,}")


def with_tallies(requests: Sequence[SizeRequest], text: str, told: int = 0) -> list[SizeRequest]:
    """The requests with doubts where the text counts otherwise. ``text`` is the sender's own;
    ``told`` is how many sizes were left out as only told of: they may be counted or not."""
    counted = sizes_said(text.casefold())
    folded = fold(text)
    held = [_with_sure_count(request, folded) for request in requests]
    sure = sum(all(doubt.about != "size" for doubt in request.doubts) for request in requests)
    if counted and sure > 1 and not {sure, sure + told} & {*counted}:
        why = f"the message speaks of {counted[0]} sizes, and {sure} were read"
        return [wholly_doubted(request, why) for request in held]
    return held


def counts_more(text: str, left: int, read: int) -> bool:
    """Whether the text counts more sizes than were ``read``, or asks for more than are ``left``."""
    words = text.casefold()
    return any(
        COUNTED[found["number"]] > (left if _is_asked(words, found) else read)
        for found in SIZES.finditer(words)
    )


def _is_asked(words: str, count: re.Match[str]) -> bool:
    """Whether words of its sentence before a count of sizes ask for so many."""
    begin = max(words.rfind(sign, 0, count.start()) for sign in ".!?\n")
    return ASKS.search(words[begin + 1 : count.start()]) is not None


def _with_sure_count(request: SizeRequest, text: str) -> SizeRequest:
    many = request.quantity
    if many is None or many <= _MANY or request.doubt_on("quantity"):
        return request
    places = list(re.finditer(rf"(?<![\w.,/]){many}(?![\w/]|[.,]\d)", text))
    if not places or any(_counts(text, place) for place in places):
        return request
    doubt = Doubt(field="quantity", readings=(str(many),), why=_UNSURE)
    return request.model_copy(update={"doubts": (*request.doubts, doubt)})


def _counts(text: str, place: re.Match[str]) -> bool:
    """Whether the number there has a label, a noun, or a cell of a table."""
    before = text[max(0, place.start() - 40) : place.start()]
    if _MEASURED.search(before):
        return False
    begin, end = text.rfind("\n", 0, place.start()) + 1, text.find("\n", place.end())
    line = text[begin : end if end >= 0 else len(text)]
    return (
        _PIECES.match(text, place.end()) is not None
        or _LABEL.search(before) is not None
        or len(_CELLS.findall(line)) > 1
    )
