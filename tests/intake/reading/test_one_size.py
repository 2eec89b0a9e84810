"""Messages that ask for one size, in the words of many people, with other matters around it.

Expected lengths are worked out by hand in ``cases_one_size.py``, or known by how the text was put
together: an inch is 25.4 mm, a gauge by the BWG table.
"""

# ruff: noqa: E501 - a row of a table stands on one line

from __future__ import annotations

import random
from decimal import Decimal

import pytest

from bendreply.intake.message import parse_message
from bendreply.intake.pipeline import understand
from bendreply.rules.request import SizeRequest

from .cases_one_size import BESIDE, LABELS, OTHERS, PIPE, SIDES, TOOL
from .support import Size, read_text

CASES = [*BESIDE, *TOOL, *PIPE, *SIDES, *LABELS, *OTHERS]


@pytest.mark.parametrize(("text", "size"), CASES, ids=[text[:60] for text, _ in CASES])
def test_one_size_is_read(text: str, size: Size) -> None:
    (request,) = read_text(text)
    assert size.describes(request), request


@pytest.mark.parametrize(
    ("text", "material"),
    [
        ("Need a mandrel for 1.875-inch OD 4130 tubing, 11 ga, 4.25 CLR", "alloy_steel"),
        ('Need a mandrel for 3" outside diameter 4130 tube, 9.5" CLR', "alloy_steel"),
        ("Need a mandrel for 5/8-inch .065 thick wall 4130 tubing, 2-1/8 CLR", "alloy_steel"),
        (
            "I bend half inch by eighty three wall 304 on a 2 in CLR die. Need one",
            "stainless_steel",
        ),
        (
            "one and a half inch OD one oh nine wall 304 tubing, 3 CLR, one mandrel",
            "stainless_steel",
        ),
        ("Need a mandrel for 3/4 x .095 grade 2 ti - 2D bend.", "titanium"),
        ("Need a mandrel for .109 wall 1.75 OD cp ti to a 3.125 radius", "titanium"),
        ("OD: 1.5\nWall: .049\nCLR: 3.5\nMat: brass\nMandrels needed: 4", "brass"),
        ("OD: 1.5\nWall: .065\nCLR: 2.5\nMat: stainless\nBend angle: 90", "stainless_steel"),
        ("OD = 1.5\nWall = .065\nCLR = 2.5\nTube material = DOM\nClamp length = 3", "carbon_steel"),
        ("Got a mandrel for 14 ga 2 in OD steel? No thinning over 20%.", "carbon_steel"),
        ("It's steel 35 mm x 2.5 mm wall. 100 CLR. Need a mandrel.", "carbon_steel"),
    ],
)
def test_its_material_is_read(text: str, material: str) -> None:
    (request,) = read_text(text)
    assert request.material == material
    assert not any(d.field == "material" for d in request.doubts)


def _understood(said: str) -> SizeRequest:
    head = (
        "From: Pat <pat@example.com>\nDate: Mon, 12 Oct 2026 09:00:00 -0600\n"
        "Content-Type: text/plain; charset=utf-8\nContent-Transfer-Encoding: 8bit\n\n"
    )
    (request,) = understand(parse_message((head + said).encode())).requests
    return request


_ASK = "Need a mandrel for 1.5 x .065 tube, 4.5 CLR. "


@pytest.mark.parametrize(
    ("said", "day"),
    [
        (_ASK + "We start the job Nov 30 so I need it by Nov 23.", "2026-11-23"),
        (_ASK + "Job ships Dec 11, so I need the mandrel by Nov 23.", "2026-11-23"),
        (_ASK + "Job has to ship Dec 18 so I need the mandrel by Nov 27.", "2026-11-27"),
        (_ASK + "Nov 23 is when I need it by.", "2026-11-23"),
        (_ASK + "need it by november 13 we broke the last one", "2026-11-13"),
        (_ASK + "We need it by Nov 20.\n\nPS the last mandrel held up great.", "2026-11-20"),
        ("mandrel 1.5 x .065 tube 4.5 CLR its a chassis part need by nov 9", "2026-11-09"),
        ("mandrel 1.5 x .065 tube radius of 4 in required by 18 November 2026", "2026-11-18"),
        (_ASK + "\nThese are handrails for a boat\nRequired by 18 November 2026", "2026-11-18"),
    ],
)
def test_its_day_is_read(said: str, day: str) -> None:
    request = _understood(said)
    assert request.needed_by is not None
    assert request.needed_by.isoformat() == day


@pytest.mark.parametrize(
    "said",
    [
        "Looking for a mandrel for 1-1/2 inch SCH40 HREW pipe. Do I need a wiper die too?",
        "We need a mandrel for 1 inch sch 40 pipe in DOM. Bender is a rotary draw. It kinks.",
        "Do you have a mandrel for DOM tubing 28 x 3.2? Can you quote it? Wiper die we already own.",
    ],
)
def test_what_is_asked_for_outright_is_not_doubted(said: str) -> None:
    assert not _understood(said).doubts


@pytest.mark.parametrize("said", ["Prototype is 3 pieces.", "First run is 10 pieces."])
def test_a_run_counts_no_mandrels(said: str) -> None:
    assert _understood(_ASK + said).quantity == 1


# --- put together at random ----------------------------------------------------------------------

DRAWN = 400
ASKS = (
    "Need a mandrel for {}.", "Looking for a mandrel for {}.", "Please quote one mandrel for {}.",
    "Could you price up a mandrel to suit {}?", "I'm after a mandrel for {}.",
    "Do you make a mandrel for {}?", "Need a ball mandrel to bend {}.",
)  # fmt: skip
TUBES = (
    "{o} x {w} {m} tube", "{o} OD {w} wall {m} tube", "{m} tube, {o} OD x {w} wall",
    "{o} inch {m} tubing with a {w} wall", "{w} wall {o} inch OD {m}", '{o}" dia {m} tube, {w} wall',
    "{o} OD {m} tube. Wall thickness is {w}",
)  # fmt: skip
RADII = (
    ", {r} CLR", " on a {r} inch CLR die", ". Radius is {r} on the centerline", " bent to a {r} radius",
    " - {r} inch center line radius", " / {r} CLR", ". The die is {r} CLR", ". CLR = {r}",
)  # fmt: skip
AROUND = (
    "", "Legs are 8 inches and 14 inches.", "90 degree bends only.", "We have 500 parts to make.",
    "Our bender maxes out at 3 inch.", "Mandrel rod is 5/8-18 thread.", "It's for a roll cage.",
    "I already have the bend die.", "Trying to keep it under $400.", "Call me at 555-0142.",
    "I keep getting wrinkles on the inside.", "See drawing 1045-220 attached.", "Cut length is 36 in.",
    "Only 1-1/2 inches of straight to clamp on.", "What's the lead time?", "First 5 we tried collapsed.",
)  # fmt: skip
DRAWN_SIZES = (
    ("1.5", ".065", "4.5"), ("1-3/4", ".095", "5-1/4"), ("2", ".120", "6"), ("5/8", ".049", "2"),
    ("1.25", "16 gauge", "3.75"), ("1 3/8", "14 ga", "4 1/8"),
)  # fmt: skip
IN_MM = (
    ("38.1", "1.651", "114.3"), ("44.45", "2.413", "133.35"), ("50.8", "3.048", "152.4"),
    ("15.875", "1.2446", "50.8"), ("31.75", "1.651", "95.25"), ("34.925", "2.1082", "104.775"),
)  # fmt: skip
MATERIALS = ("304", "DOM", "6061-T6", "chromoly", "mild steel")


def test_one_size_put_together_at_random_is_read() -> None:
    """Never misread in silence, and seldom doubted: what is put in says one thing only."""
    draw = random.Random(20261126)
    doubted = 0
    for _ in range(DRAWN):
        at = draw.randrange(len(DRAWN_SIZES))
        od, wall, clr = DRAWN_SIZES[at]
        size = draw.choice(TUBES).format(o=od, w=wall, m=draw.choice(MATERIALS))
        core = draw.choice(ASKS).format(size + draw.choice(RADII).format(r=clr))
        text = " ".join([draw.choice(AROUND), core, draw.choice(AROUND), draw.choice(AROUND)])
        requests = read_text(text)
        if len(requests) != 1 or any(d.field != "quantity" for d in requests[0].doubts):
            doubted += 1
            continue
        found = (requests[0].od_mm, requests[0].wall_mm, requests[0].clr_mm)
        wrong = [
            (is_, want)
            for is_, want in zip(found, map(Decimal, IN_MM[at]), strict=True)
            if is_ != want
        ]
        assert not any(is_ is not None for is_, _ in wrong), text
        doubted += bool(wrong)
    assert doubted <= DRAWN // 33
