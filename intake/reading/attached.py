"""Sizes in attached files: taken as asked for, and held against those of the message."""

from __future__ import annotations

import re
from collections.abc import Sequence

from ...rules.request import LENGTH_FIELDS, Doubt, Evidence, SizeRequest
from ..model import Message, OwnText
from .requests import requests_of
from .stretch import Stretch, read_stretch
from .subject import contradicted, differ, filled

_FIGURE = re.compile(r"\d")
_CUT = "{} is very long: only its beginning was read"


def with_attached(
    requests: list[SizeRequest], own: OwnText, message: Message, body: Stretch
) -> tuple[list[SizeRequest], list[str]]:
    """The requests with those of the attached files, and notes on what gave no size.

    ``requests`` are those of body and subject. Where a file says a size of theirs otherwise, theirs
    stands with a doubt.
    """
    notes: list[str] = []
    for name, text in own.attachment_texts:
        stretch = read_stretch(text, len(own.text))
        named = [
            _in_attachment(request, name) for request in requests_of(stretch, own, message, body)
        ]
        if stretch.is_cut:
            notes.append(_CUT.format(f"the attachment {name}"))
        if not named and _FIGURE.search(text):
            notes.append(f"no size was found in the attachment {name}")
        elif len(stretch.rows) > len(named):
            notes.append(
                f"the attachment {name}: {len(stretch.rows)} rows with figures, of which"
                f" {len(named)} were read as sizes"
            )
        requests = _joined(requests, named, name)
    return requests, notes


def _in_attachment(request: SizeRequest, name: str) -> SizeRequest:
    """The request with evidence that says in which file it stands: no place in the message."""
    evidence = tuple(_moved(item, name) for item in request.evidence)
    return request.model_copy(update={"evidence": evidence})


def _moved(item: Evidence, name: str) -> Evidence:
    how = ", ".join(part for part in (item.how, f"in the attachment {name}") if part)
    place = {"start": 0, "end": 0, "surface": "", "written": item.surface, "attachment": name}
    return item.model_copy(update={**place, "how": how})


def _joined(said: list[SizeRequest], named: list[SizeRequest], name: str) -> list[SizeRequest]:
    """The sizes of the message, each filled in from its like in the file, and the file's others."""
    if not said or not named:
        return said or named
    if all(request.od_mm is None for request in said):
        # "All on a 6 in radius, list attached": what is said goes for every size of the list.
        why = f"the message says otherwise than the attachment {name}"
        return [_filled(request, said[0], why) for request in named] if len(said) == 1 else named
    why = f"the attachment {name} says otherwise"
    joined, others = list(said), list[SizeRequest]()
    for request in named:
        at = _like(joined, request, named)
        if at is None:
            others.append(request)
        else:
            joined[at] = _filled(joined[at], request, why)
    # A lone figure in the margin of a drawing is no further tube.
    return joined + [request for request in others if _is_size(request)]


def _filled(request: SizeRequest, other: SizeRequest, why: str) -> SizeRequest:
    """``request`` with what only ``other`` says; what both say, and differently, is in doubt."""
    both = contradicted(request, other, why)
    doubts = list(both.doubts)
    for field, one, another in (
        ("quantity", request.quantity, other.quantity),
        ("needed_by", request.needed_by, other.needed_by),
    ):
        if one is not None and another is not None and one != another and not both.doubt_on(field):
            doubts.append(Doubt(field=field, readings=(str(one), str(another)), why=why))
    return filled(both.model_copy(update={"doubts": tuple(doubts)}), other)


def _is_size(request: SizeRequest) -> bool:
    return request.od_mm is not None and (request.wall_mm or request.clr_mm) is not None


def _like(
    said: Sequence[SizeRequest], request: SizeRequest, named: Sequence[SizeRequest]
) -> int | None:
    """Which size of the message is meant by one of the file.

    One that agrees in all that both say; else, where either names a single size, that one; else
    the only one of the same OD that has no better match in the file.
    """
    for at, one in enumerate(said):
        if not _apart(one, request):
            return at
    if len(said) == 1 and len(named) == 1:
        return 0
    near = [
        at
        for at, one in enumerate(said)
        if _apart(one, request) in ({"wall"}, {"clr"})
        and all(_apart(one, other) for other in named)
        and sum(_apart(one, other) in ({"wall"}, {"clr"}) for other in named) == 1
    ]
    return near[0] if len(near) == 1 else None


def _apart(one: SizeRequest, other: SizeRequest) -> set[str]:
    """The lengths in which two sizes differ; OD counts as one where either has none."""
    if one.od_mm is None or other.od_mm is None:
        return {"od"}
    return {f for f in LENGTH_FIELDS if differ(one.length_mm(f), other.length_mm(f))}
