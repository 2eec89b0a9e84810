"""What is offered with a decline: near, standard, and itself feasible."""

from __future__ import annotations

from decimal import Decimal
from typing import Any

import pytest
from hypothesis import given
from hypothesis import strategies as st

from bendreply.rules.assess import assess
from bendreply.rules.assessment import Assessment, Decision
from bendreply.rules.request import Material, SizeRequest
from bendreply.rules.shop import sample_shop
from bendreply.rules.units import parse_length


def judged(od: str | None, wall: str | None, clr: str | None, **more: Any) -> Assessment:
    lengths = [parse_length(text) if text else None for text in (od, wall, clr)]
    asked = SizeRequest(
        od_mm=lengths[0],
        wall_mm=lengths[1],
        clr_mm=lengths[2],
        material=Material.CARBON_STEEL,
        **more,
    )
    return assess(asked, sample_shop())


OFFERS = [
    # 2.5 x 1.75 = 4.375 in; the next die the sample shop has is 4.5 in
    (
        ("1.75 in", "0.120 in", "4 in", "in"),
        ("0.120 in", "4.5 in", "larger radius: the next die we have, 4.5 in CLR"),
    ),
    # no die for 2.25 in: 2.5 x 2.25 = 5.625 in
    (
        ("2.25 in", "0.120 in", "4 in", "in"),
        (
            "0.120 in",
            "5.625 in",
            "larger radius: 5.625 in CLR, the smallest by our limit (no die on hand)",
        ),
    ),
    # 1.75 / 30 = 0.0583 in: 17 gauge (0.058) is just too light, 16 gauge is 0.065
    (
        ("1.75 in", "0.049 in", "5.25 in", "in"),
        ("0.065 in", "5.25 in", "heavier wall: 0.065 in (16 gauge BWG)"),
    ),
    # 1.5 / 30 = 0.05 in exactly, and 18 gauge is 0.049: 17 gauge, 0.058
    (
        ("1.5 in", "0.035 in", "4.5 in", "in"),
        ("0.058 in", "4.5 in", "heavier wall: 0.058 in (17 gauge BWG)"),
    ),
    # 60 / 30 = 2 mm: exactly on the limit passes
    (("60 mm", "1.5 mm", "150 mm", "mm"), ("2 mm", "150 mm", "heavier wall: 2 mm")),
    # both: 42.4 / 30 = 1.41 mm; 2.5 x 42.4 = 106 mm, next die 127 mm
    (
        ("42.4 mm", "1.2 mm", "85 mm", "mm"),
        (
            "1.5 mm",
            "127 mm",
            "larger radius: the next die we have, 127 mm CLR; heavier wall: 1.5 mm",
        ),
    ),
    # what was not given is offered along with what is broken
    (
        ("1.75 in", "0.049 in", None, "in"),
        (
            "0.065 in",
            "4.5 in",
            "radius, as none was given: the next die we have, 4.5 in CLR; "
            "heavier wall: 0.065 in (16 gauge BWG)",
        ),
    ),
]


@pytest.mark.parametrize(
    ("asked", "offered"), OFFERS, ids=[" ".join(map(str, o[0])) for o in OFFERS]
)
def test_the_nearest_feasible_bend_is_offered(
    asked: tuple[str, str | None, str | None, Any], offered: tuple[str, str, str]
) -> None:
    *size, written_in = asked
    (offer,) = judged(*size, written_in=written_in).alternatives
    wall, clr, why = offered
    assert (offer.wall_mm, offer.clr_mm, offer.why) == (parse_length(wall), parse_length(clr), why)


@pytest.mark.parametrize(
    "size",
    [
        ("1.75 in", "0.120 in", "5.25 in"),  # feasible
        ("1.75 in", "0.875 in", "4 in"),  # no such tube
        ("1.75 in", "0.049 in", "0.8 in"),  # no such bend
        ("1.75 in", None, None),  # not judged
        ("20 in", "0.120 in", "60 in"),  # 20 / 30 = 0.667 in: heavier than any gauge
    ],
)
def test_nothing_is_offered_where_nothing_can_be(size: tuple[str | None, ...]) -> None:
    assert judged(*size).alternatives == ()


lengths = st.integers(1, 400).map(lambda n: n * Decimal("25.4") / 64)


@given(
    st.integers(16, 256).map(lambda n: n * Decimal("25.4") / 64),
    st.none() | st.integers(1, 60).map(lambda n: n * Decimal("0.127")),
    st.none() | lengths,
    st.sampled_from(["in", "mm"]),
    st.sampled_from([None, *Material]),
)
def test_what_is_offered_is_never_itself_declined(
    od: Decimal, wall: Decimal | None, clr: Decimal | None, unit: Any, material: Material | None
) -> None:
    asked = SizeRequest(od_mm=od, wall_mm=wall, clr_mm=clr, material=material, written_in=unit)
    found = assess(asked, sample_shop())
    assert not found.alternatives or found.decision is Decision.DECLINE
    assert len(found.alternatives) <= 3
    for offer in found.alternatives:
        again = assess(
            asked.model_copy(update={"wall_mm": offer.wall_mm, "clr_mm": offer.clr_mm}),
            sample_shop(),
        )
        open_fields = {f.field for f in again.findings if f.effect == "asks"}
        assert again.decision is not Decision.DECLINE
        assert open_fields <= {"material"}
        assert wall is None or offer.wall_mm >= wall
        assert clr is None or offer.clr_mm >= clr
