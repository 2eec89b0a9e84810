"""The reader: own text in, size requests out."""

from __future__ import annotations

import re

from ...rules.request import Frozen, SizeRequest
from ..model import Message, OwnText
from .attached import with_attached
from .patterns import any_of
from .requests import empty_request, requests_of, with_material_of
from .stretch import read_stretch
from .subject import with_subject


class Reading(Frozen):
    """What was read: one request for each distinct tube and radius, in the order asked for."""

    requests: tuple[SizeRequest, ...] = ()
    notes: tuple[str, ...] = ()
    """For the person, not the customer: 'no size was found in the attachment terms.csv'."""


_ATTACHED = re.compile(
    r"\b"
    + any_of(
        "attached | attachment | enclosed | per (?:the )?(?:print|drawing) | as per drawing",
        "acc\\.? to (?:the |our |your )?drawing | according to (?:the |our |your )?drawing",
        "nach zeichnung | laut zeichnung | selon plan | según plano",
        "(?:secondo|da|come da) disegno | volgens tekening",
        "see (?:the )?(?:print|drawing|sketch|photo) | on the (?:print|drawing) | anbei",
        "im anhang | anhang | beigefügt | liegt bei | ci-joint | en pièce jointe | pièce jointe",
        r"adjunto | adjunta | in allegato | allegato | bijlage | bijgevoegd | załącz\w+",
    )
    + r"\b",
    re.IGNORECASE,
)
_TOOLING = re.compile(
    r"\b"
    + any_of(
        "mandrels? | mandrills? | dorne? | biegedorne? | mandrins? | mandrin[oi] | mandril(?:es)?",
        r"doorn(?:en)? | trzpie\w* | tooling",
    )
    + r"\b",
    re.IGNORECASE,
)


def read(own: OwnText, message: Message) -> Reading:
    """Every size the sender asks for in their own text. Never raises on any text."""
    body = read_stretch(own.text[own.body_start :], own.body_start)
    head = own.text[: max(0, own.body_start - 2)]
    subject = read_stretch(head, 0) if own.subject_counts else None
    notes = ["the message is very long: only its beginning was read"] if body.is_cut else []
    requests = with_material_of(requests_of(body, own, message, beside=subject), subject)
    if subject is not None:
        of_subject = requests_of(subject, own, message, beside=body)
        requests = with_subject(requests, with_material_of(of_subject, body))
    requests, told = with_attached(requests, own, message, body)
    notes += told
    if not requests and _ATTACHED.search(own.text) and _TOOLING.search(own.text):
        requests = [empty_request(body, own, message, beside=subject)]
    return Reading(requests=_distinct(requests), notes=tuple(notes))


def _distinct(requests: list[SizeRequest]) -> tuple[SizeRequest, ...]:
    """The same tube and radius named twice is one request."""
    first: dict[tuple[object, ...], SizeRequest] = {}
    for request in requests:
        key = (request.shape, request.od_mm, request.wall_mm, request.clr_mm, request.material)
        first.setdefault(key, request)
    return tuple(first.values())
