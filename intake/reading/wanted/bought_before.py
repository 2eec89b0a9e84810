"""A size that was bought before, here or elsewhere, told in one sentence, beside others: it may be
asked for once more or not, so that it is doubted ('el año pasado os compramos el de 40 x 1,5')."""

from __future__ import annotations

from collections.abc import Sequence

from ....rules.request import SizeRequest
from ...late_pattern import late_pattern
from ..requests import wholly_doubted
from .told_elsewhere_words import ELSEWHERE, RUNS_WELL
from .told_otherwise_words import BOUGHT

_WHY = "it was bought before, and nothing says that it is wanted again"
_BOUGHT = late_pattern(
    r"\b(?:(?:os|les|le) (?:compramos|compré)|(?:nos|me) (?:vendisteis|vendieron|hicisteis"
    r"|hicieron))"
    r"\b[^.;!?]{0,24}\b(?:mandril(?:es)?|uno|el)\b"
    r"|\b(?:vi|da voi) (?:abbiamo|ho) (?:comprato|preso)\b[^.;!?]{0,24}\b(?:mandrin[oi]|uno)\b"
    r"|\b(?:nous vous avons|on vous a|je vous ai) (?:acheté|pris)\b[^.;!?]{0,24}\b(?:mandrins?"
    r"|un)\b"
)
_SAID = (_BOUGHT, BOUGHT, ELSEWHERE, RUNS_WELL)
_SENTENCE = late_pattern(r"[.;!?](?=\s|$)|\n\s*\n|\n(?=[^\W\d_])")


def with_bought_doubted(requests: Sequence[SizeRequest], text: str) -> list[SizeRequest]:
    """The requests with those doubted that stand whole in such a sentence; one alone as it is.

    ``text`` is the sender's own.
    """
    folded = text.lower()
    if len(requests) < 2 or len(folded) != len(text) or not _says_so(folded):
        return list(requests)
    spans: list[tuple[int, int]] = []
    begin = 0
    for end in [*(cut.end() for cut in _SENTENCE.finditer(folded)), len(folded)]:
        if _says_so(folded[begin:end]):
            spans.append((begin, end))
        begin = end
    return [_doubted(one, spans) for one in requests]


def _says_so(words: str) -> bool:
    return any(pattern.search(words) for pattern in _SAID)


def _doubted(request: SizeRequest, spans: Sequence[tuple[int, int]]) -> SizeRequest:
    own = [item for item in request.evidence if item.attachment is None]
    walls = [item for item in own if item.field == "wall"]
    tube = walls or [item for item in own if item.field == "od"]  # an OD may be said again
    told = bool(tube) and all(
        any(begin <= item.start < end for begin, end in spans) for item in tube
    )
    doubted = any(doubt.about == "size" for doubt in request.doubts)
    return wholly_doubted(request, _WHY) if told and not doubted else request
