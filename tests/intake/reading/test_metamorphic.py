"""What must not change a reading, and what must change it in a known way."""

# ruff: noqa: E501 - a row of a table stands on one line: the words, then their meaning

from __future__ import annotations

from decimal import Decimal

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from bendreply.intake.own_text import mask
from bendreply.intake.reading import read
from bendreply.rules.request import SizeRequest

from .support import doubted, inch, mm, read_text, whole, written_down

Core = tuple[str, Decimal | None, Decimal | None, Decimal | None, frozenset[str]]


def _core(requests: tuple[SizeRequest, ...]) -> list[Core]:
    """Everything that says which tubes and bends were read."""
    return [(r.shape.value, r.od_mm, r.wall_mm, r.clr_mm, doubted(r)) for r in requests]


REQUESTS = [
    pytest.param("Mandrel for 1.75 x .095 wall DOM, 5.25 CLR please.", id="inch"),
    pytest.param("Tube 42,4 x 2,0 mm, Biegeradius 85 mm, 1.4301.", id="metric"),
    pytest.param("2 inch sch 40 pipe on an 8 inch CLR.", id="pipe"),
    pytest.param("1.5 x .065 on 4.5 clr and 2 x .083 on 6 clr, 304.", id="two"),
    pytest.param("What would one for 7/8 x .035 4130 cost?", id="no-radius"),
    pytest.param("OD: 38 mm\nWall: 1.5 mm\nCLR: 57 mm", id="labelled"),
]  # fmt: skip

ADDITIONS = [
    pytest.param("\n\nPhone 330-555-0145", id="phone"),
    pytest.param("\n\nTel.: +49 89 99998-417", id="phone-intl"),
    pytest.param(" Last one was $185.00.", id="price"),
    pytest.param(" Zuletzt 1.250,00 EUR.", id="price-de"),
    pytest.param(" The bend is 90 degrees.", id="angle"),
    pytest.param(" Bends are 45° and 90°.", id="angles"),
    pytest.param(" We need it by March 12, 2027.", id="date"),
    pytest.param(" Needed 12.03.2027.", id="date-de"),
    pytest.param("\n\nShip to Sampleville, OH 44312.", id="zip"),
    pytest.param("\n\n00-950 Musterstadt, Beispielstr. 57", id="address"),
    pytest.param(" Our PO is 4500123.", id="order-number"),
    pytest.param(" We make 1,500 parts a year.", id="yearly"),
    pytest.param(" Qty 2.", id="quantity"),
    pytest.param(" ISO 9001:2015 shop since 1987.", id="since"),
    pytest.param(" Thread on the rod is 3/4-16.", id="thread"),
]  # fmt: skip


@pytest.mark.parametrize("addition", ADDITIONS)
@pytest.mark.parametrize("text", REQUESTS)
def test_what_is_no_size_changes_no_reading(text: str, addition: str) -> None:
    without, added = read_text(text), read_text(text + addition)
    assert without, "the request itself must be read"
    assert _core(added) == _core(without), written_down(added)


QUOTED = [
    pytest.param("\n\nOn Tue, 3 Mar 2026 at 10:12, Sales <sales@example.net> wrote:\n> Your 2.5 x .065 mandrel on 3.75 CLR is ready.\n", id="quoted"),
    pytest.param("\n\n-- \nPat Sample\nSample Bending, 2 x .120 at 1.5D our specialty\n330-555-0145\n", id="signature"),
    pytest.param("\n\nAm 22.08.2025 um 10:12 schrieb Sales <sales@example.net>:\n\n> Ihr Dorn 88,9 x 2,5 (R 178) ist fertig.\n", id="quoted-de"),
]  # fmt: skip


@pytest.mark.parametrize("below", QUOTED)
@pytest.mark.parametrize("text", REQUESTS)
def test_what_others_wrote_below_changes_no_reading(text: str, below: str) -> None:
    message, _ = whole(text + below, "Re: mandrel")
    assert _core(read(mask(message), message).requests) == _core(read_text(text))


_ODS = st.sampled_from(["0.5", "0.75", "1", "1.25", "1.5", "1.625", "1.75", "2", "2.5", "3"])
_WALLS = st.sampled_from(["0.035", "0.049", "0.065", "0.083"])
_MULTIPLES = st.sampled_from(["2", "2.5", "3", "4"])


@settings(deadline=None, max_examples=100)
@given(_ODS, _WALLS, _MULTIPLES)
def test_inches_and_the_same_in_millimetres_are_one_size(od: str, wall: str, times: str) -> None:
    clr = Decimal(od) * Decimal(times)
    inches = read_text(f"tube {od} in OD x {wall} in wall, {clr} in CLR")
    metric = read_text(f"tube {_mm(od)} mm OD x {_mm(wall)} mm wall, {_mm(clr)} mm CLR")
    assert _core(inches) == _core(metric)
    assert inch(od, wall, str(clr)).describes(inches[0])


def _mm(inches: str | Decimal) -> str:
    return format((Decimal(inches) * Decimal("25.4")).normalize(), "f")


@settings(deadline=None, max_examples=100)
@given(_ODS, _WALLS, _MULTIPLES, st.sampled_from(["wall", "clr"]))
def test_what_is_left_out_is_none_and_the_rest_stands(
    od: str, wall: str, times: str, left_out: str
) -> None:
    clr = Decimal(od) * Decimal(times)
    parts = {"od": f"{od} in OD", "wall": f"{wall} in wall", "clr": f"{clr} in CLR"}
    text = "tube " + ", ".join(part for name, part in parts.items() if name != left_out)
    (request,) = read_text(text)
    whole_size = inch(od, wall, str(clr))
    assert request.length_mm("od") == whole_size.od
    assert request.wall_mm == (None if left_out == "wall" else whole_size.wall)
    assert request.clr_mm == (None if left_out == "clr" else whole_size.clr)


@pytest.mark.parametrize(
    ("text", "size"),
    [
        pytest.param("38 x 1,5 mm", mm("38", "1.5"), id="metric-no-radius"),
        pytest.param("Rohr Ø 38 mm, Radius 57 mm", mm("38", None, "57"), id="metric-no-wall"),
        pytest.param("1.75 x .095 DOM", inch("1.75", "0.095"), id="inch-no-radius"),
        pytest.param('1-3/4" OD, 5-1/4" CLR, DOM', inch("1.75", None, "5.25"), id="inch-no-wall"),
    ],
)
def test_nothing_is_invented(text: str, size: object) -> None:
    (request,) = read_text(text)
    assert isinstance(size, type(mm()))
    assert size.describes(request), written_down((request,))
