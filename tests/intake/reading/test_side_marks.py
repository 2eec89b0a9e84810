"""Inside radii as marks: 'R57i', 'Ri 57', 'IR 57', 'R 57 int.'; all of them 76 to the centre."""

from __future__ import annotations

import pytest

from .test_put_right_since import _sizes

MARKS = {
    "Need a mandrel for 38 x 1.5, {mark}. One please.": (
        "R57i", "57 Ri", "R57 inside", "IR 57", "57 IR", "R57 (inside)", "radius 57 inside",
        "I.R. 57", "Ri = 57", "R57 int.", "R57 inner", "57R inside", "R i 57", "R57 to the inside",
        "inside R57", "R57, inside", "R inside 57", "R.int 57", "rad 57 inside", "57 inside rad",
        "R57 at the inside", "inner R 57", "R_i=57", "bend radius 57 (i)",
    ),
    "Dorn für Rohr 38 x 1,5, {mark}.": (
        "R57 innen", "R57i", "Ri=57", "Radius 57 innen", "innen R57", "R 57 (innen)", "R_i 57",
        "R innen = 57", "R57 Innenkante", "r innen 57", "R57 an der Innenseite",
    ),
    "Un mandrin pour tube 38 x 1,5, {mark}.": (
        "R57 intérieur", "R57 int.", "rayon int. 57", "R int 57", "R. int. 57",
        "rayon 57 intérieur", "R57 (intérieur)",
    ),
    "Un mandril para tubo 38 x 1,5, {mark}.": (
        "R57 interior", "radio int. 57", "R57 (interior)", "radio 57 interior",
    ),
    "Un mandrino per tubo 38 x 1,5, {mark}.": (
        "R57 interno", "raggio 57 int.", "R57 (interno)", "R57 all'interno",
    ),
    "Een doorn voor buis 38 x 1,5, {mark}.": (
        "R57 binnen", "straal 57 binnen", "R57 (binnen)", "inwendige straal 57", "R57 binnenzijde",
    ),
}  # fmt: skip


@pytest.mark.parametrize(
    "text", [form.format(mark=mark) for form, marks in MARKS.items() for mark in marks]
)
def test_an_inside_radius_by_its_mark(text: str) -> None:
    (size,) = _sizes(text)
    assert (size.od_mm, size.wall_mm, size.clr_mm) == (38, 1.5, 57 + 38 / 2)
    assert not {doubt.field for doubt in size.doubts} & {"od", "wall"}


@pytest.mark.parametrize("mark", ["CLR 57 inside", "CLR 57 i", "57 CLR (inside)"])
def test_a_centreline_radius_to_the_inside_is_asked_about(mark: str) -> None:
    (size,) = _sizes(f"Need a mandrel for 38 x 1.5, {mark}. One please.")
    assert (size.od_mm, size.wall_mm) == (38, 1.5)
    assert size.doubt_on("clr") is not None


@pytest.mark.parametrize(
    "text",
    [
        "One mandrel for 38 x 1.5, R57, inside diameter 35.",
        "One mandrel for 38 x 1.5, CLR 57, int. 35 mm",
        "Rura 38 x 1,5, R57 i 2 sztuki trzpienia",
        "En dorn för rör 38 x 1,5, R 57 i rostfritt",
        "Dorn für 38 x 1,5, R 57 innen poliert",
        "Tubo 38 x 1,5, R 57, interior pulido, un mandril",
        "One mandrel, tube 38 OD 35 ID R57",
        "38 x 1.5, 304, R 57. Inside wrinkles when we bend it. One mandrel please.",
    ],
)
def test_words_of_an_inside_that_are_not_the_radius(text: str) -> None:
    (size,) = _sizes(text)
    assert (size.od_mm, size.wall_mm, size.clr_mm) == (38, 1.5, 57)
    assert not {doubt.field for doubt in size.doubts} & {"od", "wall", "clr"}
