"""Sizes in attached files: taken as asked for, and held against those of the message."""

from __future__ import annotations

import re
from collections import Counter
from collections.abc import Sequence

from ...rules.request import LENGTH_FIELDS, Doubt, Evidence, FieldName, SizeRequest
from ..model import Message, OwnText
from .material.choice import sole_material
from .requests import requests_of, wholly_doubted
from .stretch import Stretch, read_stretch
from .subject import contradicted, differ, filled
from .wanted.taken_back import TAKEN_BACK, picks_out

Named = tuple[SizeRequest, str]
"""A size, and the attached file that names it."""

_FIGURE = re.compile(r"\d")
_CUT = "{} is very long: only its beginning was read"


def with_attached(
    requests: list[SizeRequest], own: OwnText, message: Message, body: Stretch
) -> tuple[list[SizeRequest], list[str], bool]:
    """The requests with those of the attached files, notes on what gave no size, and whether a
    file was so long that only its beginning was read.

    ``requests`` are those of body and subject. Where a file says a size of theirs otherwise, theirs
    stands with a doubt.
    """
    notes: list[str] = []
    is_cut = False
    named: list[tuple[SizeRequest, str]] = []
    for name, text in own.attachment_texts:
        words = "" if requests else body.layout.text
        stretch = read_stretch(text, len(own.text), told=words)
        found = requests_of(stretch, own, message, body)
        left_out = stretch.layout.left_out
        notes += [
            f"a size of the attachment {name} was taken as not asked for: {said}"
            for said in left_out
        ]
        if len(found) > 1 and not left_out and picks_out(body.layout.text):
            found = [wholly_doubted(request, TAKEN_BACK) for request in found]
        moved = (_in_attachment(request, name) for request in found)
        named += ((_in_material(request, body), name) for request in moved)
        if stretch.is_cut:
            is_cut = True
            notes.append(_CUT.format(f"the attachment {name}"))
        if not found and _FIGURE.search(text):
            notes.append(f"no size was found in the attachment {name}")
        elif len(stretch.rows) > len(found) + len(left_out):
            notes.append(
                f"the attachment {name}: {len(stretch.rows)} rows with figures,"
                f" a size read in {len(found)} of them"
            )
    joined, left_out = _joined(requests, named)
    notes += [
        f"the attachment {name}: not taken, for want of wall and radius: {count} more OD"
        for name, count in Counter(left_out).items()
    ]
    return joined, notes, is_cut


def _in_attachment(request: SizeRequest, name: str) -> SizeRequest:
    """The request with evidence that says in which file it stands: no place in the message."""
    evidence = tuple(_moved(item, name) for item in request.evidence)
    return request.model_copy(update={"evidence": evidence})


def _in_material(request: SizeRequest, body: Stretch) -> SizeRequest:
    """'List attached, all in 1.4301': the message's one material, where the row names none."""
    choice = sole_material(body.layout) if request.material is None else None
    if choice is None or choice.family is None:
        return request
    return request.model_copy(update={"material": choice.family, "grade": choice.grade})


def _moved(item: Evidence, name: str) -> Evidence:
    how = ", ".join(part for part in (item.how, f"in the attachment {name}") if part)
    place = {"start": 0, "end": 0, "surface": "", "written": item.surface, "attachment": name}
    return item.model_copy(update={**place, "how": how})


def _joined(said: list[SizeRequest], named: Sequence[Named]) -> tuple[list[SizeRequest], list[str]]:
    """The sizes of the message, each held against its like in the files, and the files' others.

    Beside them the file of each figure that was not taken: a lone one in the margin of a drawing
    is no further tube.
    """
    if not said or not named:
        return said or [request for request, _ in named], []
    if all(request.od_mm is None for request in said):
        # "All on a 6 in radius, list attached": what is said goes for every size of the list.
        return [_row_filled(row, said[0]) for row in named], []
    joined: list[SizeRequest] = []
    rest = list(named)
    alone: list[int] = []
    for one in said:
        alike = [row for row in rest if not _apart(one, row[0])]
        rest = [row for row in rest if row not in alike]
        if len(alike) > 1 and None in (one.wall_mm, one.clr_mm):
            # "Mandrels for 1.75 tube, see the list": each row of that OD is a size.
            joined += (_row_filled(row, one) for row in alike)
            continue
        for row in alike:
            one = _filled(one, row)
        if not alike:
            alone.append(len(joined))
        joined.append(one)
    for at in alone:
        near = _near(joined[at], rest, only=len(said) == len(named) == 1)
        if len(near) == 1 and sum(len(_near(joined[n], near, only=False)) for n in alone) <= 1:
            joined[at] = _filled(joined[at], near[0])
            rest.remove(near[0])
    taken = [request for request, _ in rest if _is_size(request)]
    return joined + taken, [name for request, name in rest if not _is_size(request)]


def _near(one: SizeRequest, rows: Sequence[Named], *, only: bool) -> list[Named]:
    """The rows that may mean this size, though they say it otherwise; ``only``: there is but one
    size in the message and one in the files.
    """
    return [row for row in rows if only or _apart(one, row[0]) in ({"wall"}, {"clr"})]


def _row_filled(row: Named, said: SizeRequest) -> SizeRequest:
    """A size of a file with what the message says of all: the file stands."""
    request, name = row
    return _both(request, said, f"the message says otherwise than the attachment {name}")


def _filled(request: SizeRequest, row: Named) -> SizeRequest:
    """A size of the message with what a file says of it: the message stands."""
    other, name = row
    return _both(request, other, f"the attachment {name} says otherwise")


def _both(request: SizeRequest, other: SizeRequest, why: str) -> SizeRequest:
    """``request`` with what only ``other`` says; what both say, and differently, is in doubt."""
    both = contradicted(request, other, why)
    doubts = list(both.doubts)
    beside: tuple[tuple[FieldName, object, object], ...] = (
        ("quantity", request.quantity, other.quantity),
        ("needed_by", request.needed_by, other.needed_by),
    )
    for field, one, another in beside:
        if one is not None and another is not None and one != another and not both.doubt_on(field):
            doubts.append(Doubt(field=field, readings=(str(one), str(another)), why=why))
    return filled(both.model_copy(update={"doubts": tuple(doubts)}), other)


def _is_size(request: SizeRequest) -> bool:
    return request.od_mm is not None and (request.wall_mm or request.clr_mm) is not None


def _apart(one: SizeRequest, other: SizeRequest) -> set[str]:
    """The lengths in which two sizes differ; OD counts as one where either has none."""
    if one.od_mm is None or other.od_mm is None:
        return {"od"}
    return {f for f in LENGTH_FIELDS if differ(one.length_mm(f), other.length_mm(f))}
