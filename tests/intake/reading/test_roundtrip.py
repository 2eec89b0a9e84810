"""Any possible size, written in any notation we claim to know, is read back exactly.

One request, the very lengths, and nothing to ask about them.
"""

# ruff: noqa: E501 - a row of a table stands on one line: the words, then their meaning

from __future__ import annotations

from decimal import Decimal

from hypothesis import given, note, settings
from hypothesis import strategies as st

from .notation import (
    IN,
    Tube,
    inch_line,
    inch_tubes,
    labelled_fields,
    metric_line,
    metric_tubes,
    text_table,
)
from .support import doubted, read_text, written_down

# The same examples in every run: a rare misreading must not turn a change red that has nothing to
# do with it. To look for new faults, set BENDREPLY_DRAW_NEW.
EXAMPLES = settings(max_examples=200)


def _read_back(text: str, od: Decimal, wall: Decimal, clr: Decimal) -> None:
    note(text)
    requests = read_text(text)
    assert len(requests) == 1, written_down(requests)
    (request,) = requests
    assert (request.od_mm, request.wall_mm, request.clr_mm) == (od, wall, clr), repr(text)
    assert not doubted(request), f"{text!r}: {request.doubts}"


@EXAMPLES
@given(inch_tubes(), st.data())
def test_inch_sizes_in_a_line(tube: Tube, data: st.DataObject) -> None:
    _read_back(data.draw(inch_line(tube)), *tube.mm)


@EXAMPLES
@given(metric_tubes(), st.data())
def test_metric_sizes_in_a_line(tube: Tube, data: st.DataObject) -> None:
    _read_back(data.draw(metric_line(tube)), *tube.mm)


@EXAMPLES
@given(st.one_of(inch_tubes(), metric_tubes()), st.data())
def test_labelled_fields_in_six_languages(tube: Tube, data: st.DataObject) -> None:
    _read_back(data.draw(labelled_fields(tube)), *tube.mm)


@EXAMPLES
@given(st.one_of(inch_tubes(), metric_tubes()), st.data())
def test_text_tables(tube: Tube, data: st.DataObject) -> None:
    _read_back(data.draw(text_table(tube)), *tube.mm)


# ASME B36.10M / B36.19M, inches: name, DN, schedule -> OD, wall
PIPE = [
    ("1/2", "15", "40", "0.840", "0.109"), ("1/2", "15", "80", "0.840", "0.147"),
    ("3/4", "20", "40", "1.050", "0.113"), ("3/4", "20", "80", "1.050", "0.154"),
    ("1", "25", "10", "1.315", "0.109"), ("1", "25", "40", "1.315", "0.133"),
    ("1-1/4", "32", "40", "1.660", "0.140"), ("1-1/4", "32", "80", "1.660", "0.191"),
    ("1-1/2", "40", "10", "1.900", "0.109"), ("1-1/2", "40", "40", "1.900", "0.145"),
    ("2", "50", "10", "2.375", "0.109"), ("2", "50", "40", "2.375", "0.154"),
    ("3", "80", "40", "3.500", "0.216"),
]  # fmt: skip


@settings(max_examples=100)
@given(
    st.sampled_from(PIPE),
    st.sampled_from(["{n} sch {s} pipe", '{n}" Sch. {s}', "NPS {n} schedule {s}", "{n} inch sch{s} pipe", "{n} in. SCH {s} 304L pipe"]),
    st.integers(4, 24),
    st.sampled_from([", {c} inch CLR", " on a {c} in radius", ', CLR {c}"']),
)  # fmt: skip
def test_pipe_by_name_and_schedule(
    pipe: tuple[str, str, str, str, str], size: str, half_inches: int, radius: str
) -> None:
    name, _, schedule, od, wall = pipe
    clr = max(Decimal(half_inches) / 2, Decimal(int(Decimal(od) * 2) + 1))
    text = size.format(n=name, s=schedule) + radius.format(c=f"{clr.normalize():f}")
    _read_back(text, Decimal(od) * IN, Decimal(wall) * IN, clr * IN)


@settings(max_examples=60)
@given(st.sampled_from(PIPE), st.integers(40, 300))
def test_pipe_by_dn_is_the_iso_or_asme_diameter(
    pipe: tuple[str, str, str, str, str], clr: int
) -> None:
    _, dn, schedule, od, wall = pipe
    clr = max(clr, int(dn) * 2 + 20)
    text = f"DN {dn} sch {schedule} pipe, R {clr} mm"
    note(text)
    (request,) = read_text(text)
    assert request.od_mm is not None
    assert abs(request.od_mm - Decimal(od) * IN) <= Decimal("0.35")  # 33.401 or 33.7
    assert (request.wall_mm, request.clr_mm) == (Decimal(wall) * IN, clr)
    assert not doubted(request)


@st.composite
def _two_lines(draw: st.DrawFn) -> tuple[str, Tube, Tube]:
    """A list of two, each line a whole size of its own, in whatever order of its parts."""
    tubes = draw(st.sampled_from([inch_tubes(), metric_tubes()]))
    first = draw(tubes)
    second = draw(tubes.filter(lambda tube: tube.mm != first.mm))
    lines = [
        draw(
            inch_line(tube, whole_mail=False)
            if tube.unit == "in"
            else metric_line(tube, whole_mail=False)
        )
        for tube in (first, second)
    ]
    form = draw(
        st.sampled_from(["1) {}\n2) {}", "{}\n{}", "- {}\n- {}", "{}\n\n{}", "a) {}\nb) {}"])
    )
    return form.format(*lines), first, second


@EXAMPLES
@given(_two_lines())
def test_a_list_of_two_sizes_mixes_nothing(drawn: tuple[str, Tube, Tube]) -> None:
    text, *tubes = drawn
    note(text)
    requests = read_text(text)
    assert [(r.od_mm, r.wall_mm, r.clr_mm) for r in requests] == [tube.mm for tube in tubes], repr(
        text
    )
    assert not any(doubted(r) for r in requests)
