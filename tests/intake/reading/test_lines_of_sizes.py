"""Lists of one size a line, put together at random from the forms that customers write them in.

Every size is read as it was put in, or something is doubted or missing; none is lost or made up in
silence, and no count is misread in silence. An inch is 25.4 mm.
"""

from __future__ import annotations

import random
from decimal import Decimal

from .support import read_text

DRAWN = 600
INTROS = ("Need mandrels for:\n", "Please quote mandrels:\n\n", "Hi,\nmandrel prices please\n")
AHEAD = (
    "", "- ", "{n}) ", "{n}. ", "* ", "{q} x ", "{q} pcs ", "{q} off ", "Item {n}: ", "Qty {q}: ",
    "#{n} ", "{q} mandrels for ",
)  # fmt: skip
SIZES = (
    "{o} x {w}", '{o}" x {w}"', "{o} OD x {w} wall", "{o} OD {w} wall", "{o}x{w}",
    "OD {o}, wall {w}", "{o} by {w}", "Ø{o} x {w}", "{o} dia. {w} wall thickness",
    "{w} wall {o} OD", "{o} tube, {w} wall",
)  # fmt: skip
RADII = (
    " x {r}", " x {r} CLR", ", {r} CLR", " on {r} CLR", ", CLR {r}", " R{r}", " / {r} radius",
    ', {r}" radius', " - {r} centerline", " @ {r} CLR", " with a {r} radius", " ({r} CLR)",
    ", bend radius {r}", " {r}clr",
)  # fmt: skip
BEHIND = (
    "", " qty {q}", " - {q} pcs", ", {q} off", ", 304", " DOM", " {q} ea", " x {q} pcs",
    "; quantity: {q}", ", {q} mandrels",
)  # fmt: skip
INCHES = (("1.5", ".065", "4.5"), ("1.75", ".095", "5.25"), ("2", ".120", "6"))
FRACTIONS = (("1-1/2", ".065", "4-1/2"), ("1-3/4", ".095", "5-1/4"), ("2", ".120", "6"))
METRIC = (("38", "1.5", "76"), ("42.4", "2", "100"), ("25", "2", "63"))


def _drawn(draw: random.Random) -> tuple[str, list[tuple[Decimal, ...]], list[int]]:
    """A list's text, its sizes in mm, and its counts where it tells any."""
    kind = draw.choice((INCHES, FRACTIONS, METRIC))
    ahead, size, radius, behind = (draw.choice(form) for form in (AHEAD, SIZES, RADII, BEHIND))
    if "{q}" in ahead and "{q}" in behind:
        behind = ""
    if kind is METRIC:
        size, radius = size.replace('"', ""), radius.replace('"', " mm")
    rows = kind[: draw.choice((1, 2, 3))]
    counts = [draw.choice((1, 2, 3, 4)) for _ in rows]
    line = ahead + size + radius + behind
    lines = [
        line.format(n=n, q=q, o=o, w=w, r=r)
        for n, (q, (o, w, r)) in enumerate(zip(counts, rows, strict=True), 1)
    ]
    scale = Decimal(1) if kind is METRIC else Decimal("25.4")
    decimal = INCHES if kind is FRACTIONS else kind
    sizes = [tuple(Decimal(part) * scale for part in row) for row in decimal[: len(rows)]]
    return draw.choice(INTROS) + "\n".join(lines), sizes, counts if "{q}" in line else []


def test_no_line_is_misread_in_silence() -> None:
    draw = random.Random(20261126)
    wrong = []
    for _ in range(DRAWN):
        text, sizes, counts = _drawn(draw)
        requests = read_text(text)
        if not requests or any(
            one.doubts or None in (one.od_mm, one.wall_mm, one.clr_mm) for one in requests
        ):
            continue
        if [(one.od_mm, one.wall_mm, one.clr_mm) for one in requests] != sizes:
            wrong.append((text, sizes))
        elif counts and not all(
            one.quantity in (None, count) for one, count in zip(requests, counts, strict=True)
        ):
            wrong.append((text, counts))
    assert not wrong
