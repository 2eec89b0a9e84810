"""Which of several sizes is sure, where a message plainly asks for one of them, and which never is.

A size that is told of and stands without a doubt is a silent misread; so each kind of words that
takes a doubt away has neighbours here that must not.
"""

from __future__ import annotations

from decimal import Decimal

import pytest

from .cases_plainly import NOT_PLAINLY, OF_ANOTHER, PLAINLY_ASKED, SHARED
from .support import Size, doubted, read_text, written_down


@pytest.mark.parametrize(("text", "size"), PLAINLY_ASKED)
def test_the_size_asked_for_is_sure_and_no_other(text: str, size: Size) -> None:
    requests = read_text(text)
    asked = [request for request in requests if size.describes(request)]
    others = [request for request in requests if not size.describes(request)]
    shown = f"{text!r} was read as\n{written_down(requests)}"
    assert len(asked) == 1, shown
    for other in others:
        stated = {"od": other.od_mm, "wall": other.wall_mm, "clr": other.clr_mm}
        assert {name for name, mm in stated.items() if mm is not None} <= doubted(other), shown


@pytest.mark.parametrize(("text", "sure"), NOT_PLAINLY)
def test_near_misses_leave_every_other_size_doubted(text: str, sure: str) -> None:
    requests = read_text(text)
    found = {r.od_mm for r in requests if r.od_mm is not None and "od" not in doubted(r)}
    shown = f"{text!r} was read as\n{written_down(requests)}"
    assert found <= {Decimal(od) for od in sure.split()}, shown


@pytest.mark.parametrize(("text", "od", "field"), OF_ANOTHER)
def test_what_is_named_beside_the_other_size_only_is_doubted(
    text: str, od: str, field: str
) -> None:
    (request,) = [r for r in read_text(text) if r.od_mm == Decimal(od)]
    value = {"wall": request.wall_mm, "clr": request.clr_mm, "material": request.material}[field]
    assert value is None or request.doubt_on(field)


@pytest.mark.parametrize(("text", "od", "field"), SHARED)
def test_what_is_said_to_be_the_same_is_sure(text: str, od: str, field: str) -> None:
    sure = [r for r in read_text(text) if r.od_mm == Decimal(od) and not r.doubt_on("od")]
    assert len(sure) == 1, written_down(read_text(text))
    assert not sure[0].doubt_on(field)
