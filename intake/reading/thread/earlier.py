"""The sizes of the mails that a message quotes, read oldest first, so that the newest counts."""

from __future__ import annotations

import re
from dataclasses import replace

from ....rules.request import SizeRequest
from ...late_pattern import late_pattern
from ...model import Message, OwnText, QuotedMail
from ..requests import requests_of
from ..stretch import read_stretch
from ..wanted.asked_words import ASKS
from .quoted import Relied, rely
from .staying import fields_asked
from .tube_asked_about import with_tube_asked_about

_WE_WORKED_OUT = late_pattern(
    r"\b(?:wall\s+factor|bend)\s+[\d.]{1,8}(?:\s+d)?,\s+our\s+limit\s+\d[\d.]{0,7}(?:\s+d\b)?"
    r"|(?<![\w.])\d[\d.]{0,7}(?:\s+to\s+\d[\d.]{0,7})?\s+(?:in|mm)\s+\([^()]{1,40}\)\s+diameter"
    r"(?=,\s+\d{1,2}(?:\s+to\s+\d{1,2})?\s+balls?\b)",
    re.IGNORECASE,
)
"""'Bend 2.8 D, our limit 2.5 D', '1.483 to 1.491 in (...) diameter, 1 ball': what our own reply
works out, rounded. It is no radius of the tube's, and no OD."""


def read_earlier(own: OwnText, message: Message) -> Relied | None:
    """What the quoted mails say, and how the new words rely on it; None where nothing is quoted."""
    if not own.quoted:
        return None
    known: list[SizeRequest] = []
    quantity: int | None = None
    for mail in reversed(own.quoted):
        found = _sizes(mail, message, known)
        if found:
            known = found
            counted = {request.quantity for request in found}
            quantity = counted.pop() if mail.by_sender and len(counted) == 1 else quantity
    known = with_tube_asked_about(known, own.quoted[0])
    words = own.text[own.body_start :]
    relied = rely(
        known,
        words,
        refers=own.refers_to_quoted,
        quantity=quantity,
        asked=fields_asked(own.quoted[0].text),
    )
    return replace(relied, picked=_picked(own, message, words))


_HAS_ONE = late_pattern(
    r"\b(?:have|got|own) (?:a|the) (?:mandrel|tool) for (?:line|item|pos(?:ition)?|no)\b",
    re.IGNORECASE,
)
"""'We have a mandrel for line 2 already, thank you': by itself that asks for none of the others."""


def _picked(own: OwnText, message: Message, words: str) -> tuple[SizeRequest, ...]:
    """The sizes that the new words pick out of the newest list; empty where that isn't plain."""
    if _HAS_ONE.search(words) and "?" not in words and not ASKS.search(words.casefold()):
        return ()
    for mail in own.quoted:
        listed = _sizes(mail, message, [])
        if len(listed) > 1:
            picked = _sizes(mail, message, [], told=words)
            return tuple(picked) if len(picked) < len(listed) else ()
    return ()


def _sizes(
    mail: QuotedMail, message: Message, known: list[SizeRequest], told: str = ""
) -> list[SizeRequest]:
    """The sizes of one quoted mail, completed from the mails before it; empty where it has none."""
    text = _WE_WORKED_OUT.sub(lambda told: re.sub(r"\S", " ", told[0]), mail.text)
    relied = replace(rely(known, text), same_tube=True)
    stretch = read_stretch(text, mail.start, earlier=relied.figures, told=told)
    nothing = OwnText(text="", body_start=0, subject_counts=False)
    found = requests_of(stretch, nothing, message, beside=None, relied=relied)
    if known and all(request.od_mm is None for request in found):
        return []  # "60 degrees on a 6 inch die, can you?" names no other tube
    return [
        request.model_copy(
            update={
                "needed_by": None,
                "doubts": tuple(d for d in request.doubts if d.field != "needed_by"),
            }
        )
        for request in found
    ]
