"""Lengths of other things beside a size: none of them is a tube, and none makes the size doubted.

The sentences are our own; every size is plain arithmetic: 1-3/4 in is 44.45 mm, .095 in 2.413 mm,
5-1/4 in 133.35 mm.
"""

from __future__ import annotations

from decimal import Decimal

import pytest

from bendreply.intake.reading import read

from .cases_shop_talk import SHOP_TALK
from .support import read_text, whole

BESIDE = (
    "The wiper is 3/4 thick.",
    "Wiper die: 0.75 in thick.",
    "The pressure die is 2 inches thick and the clamp die 3 inches long.",
    "It bolts to 10 mm thick plates.",
    "Base plate is 1/2 inch thick.",
    "Paint is 3 mils thick.",
    "Powder coat about 4 mils thick.",
    "There's a 1/4 inch hole 2 inches from the bend.",
    "A 6 mm hole sits 20 mm before the bend.",
    "Slots of 8 mm, 30 mm past the bend.",
    "The die block is 150 mm thick with a bore of 40 mm.",
    "Die Platte ist 12 mm dick.",
    "Eine 6 mm Bohrung liegt 25 mm vor dem Bogen.",
    "La plaque fait 10 mm épais.",
    "Un trou de 6 mm, 20 mm avant le coude.",
    "La placa tiene un agujero de 8 mm.",
    "La piastra ha un foro di 8 mm.",
    "De plaat is 10 mm dik, met een gat van 8 mm.",
    "Length of the tube is 1250 mm.",
    "Die Länge der Rohre ist 1400 mm.",
    "La longueur du tube est 900 mm.",
    "It flattens to 1.6 in the middle.",
    "Flattened width came out at 1.81.",
    "The tube collapses by about 3 mm.",
    "Bend deduction comes to 3.142.",
    "We measured 1.68 across the bend after the last try.",
    "We looked at 3 other shops first.",
    "I have 2 more projects after this one.",
)
SIZES = (
    ("Please quote one mandrel for 1.75 x .095, 5.25 clr.", ("44.45", "2.413", "133.35")),
    ("OD 42.4, wall 2, CLR 120. One mandrel please.", ("42.4", "2", "120")),
    (
        'I need a mandrel for 1-3/4" OD .095 wall tube on a 5-1/4" centerline radius.',
        ("44.45", "2.413", "133.35"),
    ),
)


@pytest.mark.parametrize("said", BESIDE)
@pytest.mark.parametrize(("asked", "lengths"), SIZES, ids=("short", "metric", "long"))
def test_no_size_is_made_of_other_things(
    said: str, asked: str, lengths: tuple[str, str, str]
) -> None:
    for text in (f"{said} {asked}", f"{asked}\n\n{said}"):
        (size,) = read_text(text)
        assert (size.od_mm, size.wall_mm, size.clr_mm) == tuple(map(Decimal, lengths)), text
        assert {doubt.field for doubt in size.doubts} <= {"material"}, text


@pytest.mark.parametrize(
    ("text", "od", "wall", "clr"),
    [
        ("The machine bends tube of 50 mm, 3 mm thick, R 150 mm.", 50, 3, 150),
        ("Chrome-moly 38 mm OD, 2 mm thick, CLR 114 mm.", 38, 2, 114),
        ("Our block says R 90 mm; tube 30 mm OD and 1.5 mm thick.", 30, "1.5", 90),
        ("Painted tube, 42.4 mm OD, 2 mm thick, R 120 mm.", "42.4", 2, 120),
        ("The radius is 90 mm from the bend die; tube 30 x 1.5 mm.", 30, "1.5", 90),
        ("Rohr 38 mm, 2 mm dick, Biegeradius 114 mm, auf Platte geschweißt.", 38, 2, 114),
    ],
)
def test_a_tube_keeps_its_own_lengths(
    text: str, od: float | str, wall: float | str, clr: float | str
) -> None:
    (size,) = read_text(text)
    assert size.od_mm == Decimal(od)
    assert size.wall_mm == Decimal(wall)
    assert size.clr_mm == Decimal(clr)


@pytest.mark.parametrize(
    ("text", "od"),
    [
        ('12" long parts. Mandrel for OD 12, wall 1, CLR 36.', 12),
        ('Cut to 6" pieces. Tube OD 10, wall 1, radius 30.', 10),
    ],
)
def test_a_tube_of_a_foot_is_doubted_where_no_unit_is_written(text: str, od: int) -> None:
    (size,) = read_text(text)
    assert {"od", "wall", "clr"} <= {doubt.field for doubt in size.doubts}
    doubt = size.doubt_on("od")
    assert doubt is not None
    assert Decimal(od) in doubt.readings


@pytest.mark.parametrize(
    "text",
    ["8 inch OD x .25 wall, 24 inch radius", "Mandrel for 8.625 x .322, R 36 inch"],
)
def test_a_large_pipe_in_inches_is_not_doubted(text: str) -> None:
    """NPS 8, schedule 40 is 8.625 x 0.322 in (ASME B36.10M)."""
    (size,) = read_text(text)
    assert not size.doubts


KEPT: tuple[tuple[str, tuple[tuple[str, str, str], ...]], ...] = (
    (
        "Our bender does 2 x .120 and we need a mandrel for that on 6 clr. "
        "Also one for 1.75 x .095, 5.25 clr.",
        (("50.8", "3.048", "152.4"), ("44.45", "2.413", "133.35")),
    ),
    (
        "The bender takes 2 x .120, 6 clr. The other 1.75 x .095, 5.25 clr. "
        "Mandrels for both machines.",
        (("50.8", "3.048", "152.4"), ("44.45", "2.413", "133.35")),
    ),
    (
        "Maschine schafft 60 x 3. Bitte beide Dorne anbieten: 60 x 3 R 180, 42 x 2 R 120.",
        (("60", "3", "180"), ("42", "2", "120")),
    ),
    (
        "Tube A 38 x 1.5 R 114. Tube B 42 x 2 is not bent today but will be, R 120. Quote both.",
        (("38", "1.5", "114"), ("42", "2", "120")),
    ),
    (
        "1.5 x .065, no bends tighter than 4.5 clr, and 1.75 x .095 on 5.25. Mandrels for both.",
        (("38.1", "1.651", "114.3"), ("44.45", "2.413", "133.35")),
    ),
    (
        "The wheel hoop is 1.5 x .065, 12 clr. The frame is 1.75 x .095, 5.25 clr. One each.",
        (("38.1", "1.651", "304.8"), ("44.45", "2.413", "133.35")),
    ),
    (
        "The bolt cage is 1.5 x .095. Radius 5. Also 1.75 x .120, radius 6. One each.",
        (("38.1", "2.413", "127"), ("44.45", "3.048", "152.4")),
    ),
    (
        "Engine has 1.75 x .049 tubes. 2.5 clr. Collector 3 x .065 at 4.5 clr. One mandrel each.",
        (("44.45", "1.2446", "63.5"), ("76.2", "1.651", "114.3")),
    ),
    ("Gas pipe 25 x 1.5, R 75, one mandrel.", (("25", "1.5", "75"),)),
    ("Argon lines: 12.7 mm x 0.89, 38 CLR, 316L. Two mandrels.", (("12.7", "0.89", "38"),)),
    ("Wire rack tubing 3/4 x .049 on 2.25 clr, one mandrel.", (("19.05", "1.2446", "57.15"),)),
    ("Cut the tubes to 38 x 1.5 spec, R 114, one mandrel.", (("38", "1.5", "114"),)),
    ("We cut it down to 1.5 OD, .065 wall, 4.5 clr. One mandrel.", (("38.1", "1.651", "114.3"),)),
    ("Distance between bends: 40, radius 75, tube 25 x 1.5. One mandrel.", (("25", "1.5", "75"),)),
    ("Feed line is .250 x .035 on .75 clr. One mandrel.", (("6.35", "0.889", "19.05"),)),
    ("Spiel 0,1, Wand 0,8: Rohr 12 x 0,8, R 36. Ein Dorn.", (("12", "0.8", "36"),)),
    ("Rohr 20 h8 x 2, R 60, ein Dorn.", (("20", "2", "60"),)),
    ("Bolt circle tube 1.5 x .065 on 4.5 clr. One mandrel.", (("38.1", "1.651", "114.3"),)),
    ("Pool rail is 1.9 x .145 on 6 clr, one mandrel.", (("48.26", "3.683", "152.4"),)),
)


@pytest.mark.parametrize(("text", "sizes"), KEPT)
def test_a_tube_of_such_things_is_read(text: str, sizes: tuple[tuple[str, str, str], ...]) -> None:
    """What speaks of a machine, a wheel, gas or a wire may be the tube all the same."""
    read = [(size.od_mm, size.wall_mm, size.clr_mm) for size in read_text(text)]
    assert sorted(read, key=str) == sorted((tuple(map(Decimal, size)) for size in sizes), key=str)


@pytest.mark.parametrize("said", SHOP_TALK)
def test_talk_of_the_shop_makes_no_size(said: str) -> None:
    asked, lengths = SIZES[len(said) % 3]
    for text in (f"{said} {asked}", f"{asked}\n\n{said}"):
        (size,) = read_text(text)
        assert (size.od_mm, size.wall_mm, size.clr_mm) == tuple(map(Decimal, lengths)), text
        assert size.quantity == 1, text
        assert not size.doubts, text


def test_a_tube_that_is_set_aside_is_told() -> None:
    """Set aside, and not in silence: the person sees what was taken as no tube to bend."""
    message, own = whole("Posts are 1.5 x .065, no bends. One mandrel for 1.75 x .095, 5.25 clr.")
    reading = read(own, message)
    assert [size.od_mm for size in reading.requests] == [Decimal("44.45")]
    assert any("1.5 x .065" in note for note in reading.notes)


@pytest.mark.parametrize("old", ["22er und 18er", "22er, 18er", "18 und 22 mm"])
def test_each_of_a_list_that_is_told_of_is_doubted_or_left_out(old: str) -> None:
    sizes = read_text(
        f"Brauche einen Dorn für 28 x 1,5, R 56. Die alten Dorne für {old} gehen noch."
    )
    assert sizes[0].od_mm == Decimal(28)
    assert all(size.doubt_on("od") for size in sizes[1:])
