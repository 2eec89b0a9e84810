"""What stands beside a size and misled the reading: weeks, flanges, addresses, firms, corrections.

The sentences are our own. Lengths in inches are told by ``inch``, in mm by ``mm``.
"""

# ruff: noqa: E501 - sentences stand on one line

from __future__ import annotations

import pytest

from .support import Size, inch, mm, read_text

WEEKS = (
    ("We bend these every week. 1.5 x .065 304, 4.5 CLR. One mandrel", inch("1.5", ".065", "4.5")),
    ("About 40 tubes/week. 1.5 x .065 304, 4.5 CLR. One mandrel", inch("1.5", ".065", "4.5")),
    ("Rate is 8/wk. 1.75 x .095 DOM, 5.25 CLR. One mandrel", inch("1.75", ".095", "5.25")),
    ("We did some last week 1-3/4 x .095, 5.25 CLR. One mandrel", inch("1.75", ".095", "5.25")),
    ("Out of office last week. 2 x .065 304 6 CLR, one mandrel", inch("2", ".065", "6")),
    ("Schöne Woche. 42,4 x 2 1.4301, Radius 84. Ein Dorn", mm("42.4", "2", "84")),
    ("On en cintre chaque semaine. 42,4 x 2, rayon 84. Un mandrin", mm("42.4", "2", "84")),
    ("Lo hacemos cada semana. 42,4 x 2, radio 84. Un mandril", mm("42.4", "2", "84")),
    ("We began in May. 1-3/4 x .095 DOM, 5.25 CLR. One mandrel", inch("1.75", ".095", "5.25")),
    ("Dorn 42,4 x 2, Radius 84. Lieferung KW. 48. Danke", mm("42.4", "2", "84")),
    ("Dorn 42,4 x 2, Radius 84. Lieferung KW 48/2026.", mm("42.4", "2", "84")),
)
WHOLE_WORDS = (
    ("We measured the wall. 1.5 x .065 304, 4.5 CLR. One mandrel", inch("1.5", ".065", "4.5")),
    ("The tank is deep. 1.5 x .065 304, 4.5 CLR. One mandrel", inch("1.5", ".065", "4.5")),
    ("The gate is 6 ft wide. 1.5 x .065 304, 4.5 CLR. One mandrel", inch("1.5", ".065", "4.5")),
    ("We have the die. 1.5 x .065 304, 4.5 CLR. One mandrel", inch("1.5", ".065", "4.5")),
    ("Es geht um das Rohr. 42,4 x 2, Radius 84. Ein Dorn", mm("42.4", "2", "84")),
    ("C'est pour un tube. 42,4 x 2, rayon 84. Un mandrin", mm("42.4", "2", "84")),
    ("2 OD, 6 CLR. I forgot the wall. .083. One mandrel", inch("2", ".083", "6")),
    ("OD. 1.5, wall. .065, rad. 4.5. One mandrel", inch("1.5", ".065", "4.5")),
)
BESIDE_A_JOB = (
    (
        "Our machine can bend up to 2.5 x .120 at 10 inch radius. The job is 1.75 x .095, 5.25 CLR. "
        "One mandrel",
        inch("1.75", ".095", "5.25"),
    ),
    (
        "Our bender is rated 2 x .120 at 6 inch radius. Need a mandrel for 1.5 x .065, 4.5 CLR.",
        inch("1.5", ".065", "4.5"),
    ),
    (
        'I have dies in 1.5, 1.75 and 2". Right now I only need a mandrel for the 1.75 x .095, '
        "5.25 CLR",
        inch("1.75", ".095", "5.25"),
    ),
    ("1.5 x .065, 4.5 CLR, die groove radius .75. One mandrel", inch("1.5", ".065", "4.5")),
)
PUT_RIGHT = (
    (
        '1 3/4" x .095". I meant .120" sorry. DOM, 5.25 CLR. One mandrel',
        inch("1.75", ".12", "5.25"),
    ),
    ('2" x .065". Should have said .083". 304, 6 CLR. One mandrel', inch("2", ".083", "6")),
    ('2" x .065", 6" CLR. Should have written .083". One mandrel', inch("2", ".083", "6")),
    ('2" x .065", 6" CLR. I meant .083", my mistake. One mandrel', inch("2", ".083", "6")),
    ('Sorry I said .065 wall, should be .083. 2" OD, 6" CLR. One mandrel', inch("2", ".083", "6")),
)
# Legs 9 in from centre to centre are bent round half of that, 4.5 in.
ON_CENTRES = (
    ('U-bend, 9" center to center, 1.5 x .065 304. One mandrel', inch("1.5", ".065", "4.5")),
    ('U-bend with 6" center to center, tube 1 x .049. One mandrel', inch("1", ".049", "3")),
    ('9" on center return bend with 1.5 x .065 304. One mandrel', inch("1.5", ".065", "4.5")),
    ('Return bend 6" on centers, 1 x .049 304. One mandrel', inch("1", ".049", "3")),
    ("Hairpin, 4 inch between centers, 3/4 x .049. One mandrel", inch(".75", ".049", "2")),
    ("U-Bogen, 150 mm Mitte zu Mitte, Rohr 42,4 x 2. Ein Dorn", mm("42.4", "2", "75")),
    ("1.5 x .065 304, 180 deg bend, 4.5 on centerline. One mandrel", inch("1.5", ".065", "4.5")),
)
COUNTED = (
    ("1 x mandrel 1 x .065 x 3, 304", inch("1", ".065", "3")),
    ("2 x mandrel 2 x .065 x 6, 304", inch("2", ".065", "6")),
    ("1 x mandrel 1.5 x .065 x 4.5, 304", inch("1.5", ".065", "4.5")),
    ("3 x plug mandrel 2 x .065 x 6, 304", inch("2", ".065", "6")),
    ("2 x Biegedorn 30 x 2, R 60", mm("30", "2", "60")),
    ("1 x Dorn 42,4 x 2 x 84", mm("42.4", "2", "84")),
    ("2 x mandrin 42,4 x 2 x 84", mm("42.4", "2", "84")),
    ("1.5 x .065 x 4.5 mandrel", inch("1.5", ".065", "4.5")),
)


@pytest.mark.parametrize(
    ("text", "size"), [*WEEKS, *WHOLE_WORDS, *BESIDE_A_JOB, *PUT_RIGHT, *ON_CENTRES, *COUNTED]
)
def test_the_one_size_is_read_without_a_doubt(text: str, size: Size) -> None:
    """What stands beside it gives it no figure, and takes none."""
    requests = read_text(text)
    assert len(requests) == 1, requests
    assert size.describes(requests[0]), requests


OF_OTHERS = (
    "The tube gets welded to 304 flanges.",
    "We weld it to 304 later.",
    "The ends bolt to aluminum plates.",
    "It goes to the 321 header flange.",
    "One end is going into a 316 manifold.",
    "Posts are aluminum.",
    "Flanges will be 304.",
    "It mounts to an aluminum block.",
    "The clamp is 4140.",
    "It has to fit our 4140 die block.",
    "Wird an 1.4301 Flansche geschweißt.",
    "Soudé à des brides inox 304.",
    "Ship to 304 E 2nd St.",
    "We are at 2205 Main Street.",
    "Suite 316, 2205 Main.",
    "Deliver to unit 304.",
    "Matt @ 304 Stainless Works here.",
    "This is Joe from 4130 Fabrication.",
)


@pytest.mark.parametrize("said", OF_OTHERS)
def test_the_material_of_something_else_is_not_the_tubes(said: str) -> None:
    """Beside none of its own the tube has none; its own counts where it is named."""
    (request,) = read_text(f"Need a mandrel for 1.5 x .065 tube, 4.5 CLR. {said}")
    assert (request.material, request.grade) == (None, None)
    (request,) = read_text(f"Need a mandrel for 1.5 x .065 321 tube, 4.5 CLR. {said}")
    assert request.grade == "321"


@pytest.mark.parametrize(
    ("said", "grade"),
    [
        ("We use welded 304.", "304"),
        ("It is for 304 headers.", "304"),
        ("Bent into 304 frames.", "304"),
        ("Flanges are 316, the tube is 304.", "304"),
        ("Material 304.", "304"),
    ],
)
def test_the_tubes_own_material_is_kept(said: str, grade: str) -> None:
    """Words that only look like those of a flange or an address take nothing from it."""
    (request,) = read_text(f"Need a mandrel for 1.5 x .065, 4.5 CLR. {said}")
    assert request.grade is not None
    assert grade in request.grade


@pytest.mark.parametrize(
    "text",
    [
        "Typo above, 1.75 not 1.57. 1.57 x .095 DOM, 5.25 CLR. One mandrel",
        "It is 1.75, not 1.57. Tube: 1.57 x .095 DOM, 5.25 CLR. One mandrel",
        "42,4 x 2 mm, Radius 84. Hätte heißen sollen 2,6. Ein Dorn",
        "42,4 x 2 mm, radio 84. Debí poner 2,6. Un mandril",
    ],
)
def test_a_figure_denied_or_not_put_right_is_doubted(text: str) -> None:
    """The size that holds it all the same is not stated as sure."""
    for request in read_text(text):
        assert request.doubts, request


# 1.5 x 57 = 85.5, 3 x 1.5 = 4.5; 1.500 less twice the wall of .065 is 1.370.
@pytest.mark.parametrize(
    ("text", "size"),
    [
        ("57mm with 1.5mm wall, radius is 1.5 times. One mandrel", mm("57", "1.5", "85.5")),
        ("57 x 1,5 mm, Radius 1,5 mal. Ein Dorn", mm("57", "1.5", "85.5")),
        ("57 x 1,5 mm, rayon 1,5 fois. Un mandrin", mm("57", "1.5", "85.5")),
        ("1.5 x .065, radius equal to 3 diameters. One mandrel", inch("1.5", ".065", "4.5")),
        ("1.5 x .065, CLR is 3 tube diameters. One mandrel", inch("1.5", ".065", "4.5")),
        ("We bend it 3 times. 1.5 x .065, radius 4.5. One mandrel", inch("1.5", ".065", "4.5")),
        ("1.500 +.000/-.005 OD x 1.370 ID, 4.5 CLR. One mandrel", inch("1.5", ".065", "4.5")),
        ("1.500 +.005/-.000 dia, .065 wall, 4.5 CLR. One mandrel", inch("1.5", ".065", "4.5")),
        # 4.71 / 3.1416 = 1.499, 133 / 3.1416 = 42.3
        ("Tube is 4.71 around, .065 wall, 4.5 CLR. One mandrel", inch("1.499", ".065", "4.5", "od")),
        ("Circumference of the tube is 4.71, .065 wall, 4.5 CLR. One mandrel",
         inch("1.499", ".065", "4.5", "od")),
        ("Umfang vom Rohr 133 mm, Wand 2, Radius 84. Ein Dorn", mm("42.3", "2", "84", "od")),
        ("Radius of the tube is .75, wall .065, bend radius 4.5. One mandrel",
         inch("1.5", ".065", "4.5", "od")),
        ("Tube radius .75, wall .065, 4.5 CLR. One mandrel", inch("1.5", ".065", "4.5", "od")),
        ("Tube radius 4.5, 1.5 x .065. One mandrel", inch("1.5", ".065", "4.5")),
        ("It goes around. 1.5 x .065 tube, 4.5 CLR. One mandrel", inch("1.5", ".065", "4.5")),
    ],
)  # fmt: skip
def test_lengths_told_another_way(text: str, size: Size) -> None:
    """Multiples, tolerances, a girth and a tube's radius; the last two are doubted."""
    requests = read_text(text)
    assert len(requests) == 1, requests
    assert size.describes(requests[0]), requests


@pytest.mark.parametrize(
    "said",
    [
        "Wall is .065 nominal but mikes at .061.",
        "Nominal wall .083, actual .079.",
        "Wall supposed to be .065 but our micrometer says .0598.",
        "It is sold as .065 wall, measures .058 wall.",
    ],
)
def test_a_wall_called_and_one_measured_are_doubted(said: str) -> None:
    """Which of the two the mandrel is made for is for the customer to say."""
    for request in read_text(f"Need a mandrel for 1.5 OD tube, 4.5 CLR. {said}"):
        assert request.doubt_on("wall")


def test_the_same_d_is_no_radius_in_figures() -> None:
    """2 in on 6 in is 3D; 3D of 3 in is 9 in, so the 6 in taken over is doubted."""
    first, *others = read_text(
        "Mandrel for 2 x .065, 6 CLR. Also 2.5 and 3 inch, same wall, same D."
    )
    assert first.doubt_on("clr") is None
    assert others
    assert all(request.doubt_on("clr") for request in others)


@pytest.mark.parametrize(
    ("said", "count"),
    [
        ("I have 3 machines and need a mandrel for each one.", 3),
        ("We have two benders, need one for each.", 2),
        ("Mandrels, one for each of our two benders.", 2),
        ("Mandrels please, one for me one for my buddy.", 2),
        ("Mandrels, one for me and one for my brother.", 2),
        ("Je einen Dorn für jede unserer zwei Maschinen.", 2),
        ("We have 3 machines. Need one mandrel.", 1),
        ("Annual usage 3 mandrels.", None),
        ("EAU: 5 mandrels.", None),
        ("Jahresbedarf 4 Stück.", None),
        ("Need 3 mandrels, annual usage is 12.", 3),
    ],
)
def test_mandrels_for_each_and_in_a_year(said: str, count: int | None) -> None:
    """One for each of so many machines or persons is so many; a year's use is none."""
    (request,) = read_text(f"1.5 x .065 304, 4.5 CLR. {said}")
    assert request.quantity == count


@pytest.mark.parametrize(
    ("text", "count"),
    [
        ("25 ea 2 x .083 304 elbows to make, 6 CLR. Need a mandrel.", 1),
        ("8 pcs of 1.5 x .120 DOM tube, 4.5 CLR. Please quote mandrel.", None),
        ("10 pcs 1.5 x .065 304 tube need bending, 4.5 CLR. One mandrel.", 1),
        ("40 pieces 1.5 x .065 304 tube to be bent at 4.5 CLR. Quote one mandrel.", 1),
        ("8 pcs mandrel for 1.5 x .120 DOM tube, 4.5 CLR.", 8),
        ("Mandrels: 8 pcs for 1.5 x .120 DOM tube, 4.5 CLR.", 8),
        ("2 pcs 1.5 x .065 304 tube mandrel, 4.5 CLR.", 2),
    ],
)
def test_pieces_of_tube_are_no_mandrels(text: str, count: int | None) -> None:
    """Pieces count tubes where a mandrel is asked for in other words behind."""
    (request,) = read_text(text)
    assert request.quantity == count


def test_counts_of_sizes_behind_of() -> None:
    """'1 of 2 x .065' counts; it is no OD, and the Dutch 'or' is none in English."""
    requests = read_text("3 mandrels of 1.5 x .065 x 4.5 and 1 of 2 x .065 x 6, 304")
    assert [(r.quantity, r.doubts) for r in requests] == [(3, ()), (1, ())]


def test_some_now_and_some_later_are_doubted() -> None:
    """Neither the count nor the day is the whole truth."""
    for said in ("Need 1 mandrel now and 3 by March 1.", "2 mandrels now and 2 more in June."):
        (request,) = read_text(f"1.5 x .065 304, 4.5 CLR. {said}")
        assert request.doubt_on("quantity")
        assert request.needed_by is None or request.doubt_on("needed_by")


@pytest.mark.parametrize(
    ("text", "doubted"),
    [
        ("Need mandrel 1.5 x .065 304 4.5 CLR, also wiper for 1.75x.065 304 5.25", (False, True)),
        ("Mandrel 1.5 x .065, 4.5 CLR. And a pressure die for 2 x .083, 6 CLR.", (False, True)),
        ("Dorn 42,4 x 2, R 84, und Faltenglätter für 48,3 x 2, R 100", (False, True)),
        ("We need pressure die for 1.5 x .065 304 4.5 CLR. No mandrel.", (True,)),
        ("My 1.5 x .065 4.5 CLR mandrel's balls are worn, need 2 new balls.", (True,)),
        ("Need replacement balls for our 1.5 x .065 mandrel, 4.5 CLR.", (True,)),
        ("Need a mandrel and wiper die for 1.5 x .065, 4.5 CLR.", (False,)),
        ("Need a wiper for 1.5 x .065, 4.5 CLR. Also a mandrel for the same tube.", (False,)),
        ("I have dies for 1.5 x .065, 4.5 CLR. Need a mandrel for it.", (False,)),
        ("Need one mandrel for 1.5 x .065, 4.5 CLR with 2 balls.", (False,)),
        ("Balls are worn, need a new mandrel 1.5 x .065, 4.5 CLR.", (False,)),
        ("We have no mandrel. Need one for 1.5 x .065, 4.5 CLR.", (False,)),
    ],
)
def test_sizes_of_other_tools_are_doubted(text: str, doubted: tuple[bool, ...]) -> None:
    """A wiper, a die or balls asked for by a size ask for no mandrel."""
    requests = read_text(text)
    assert tuple(request.doubt_on("od") is not None for request in requests) == doubted


@pytest.mark.parametrize(
    ("text", "sizes"),
    [
        ('Mandrel for 2" x 14ga, 3.5" CLR, also in 2.25" same radius.',
         [inch("2", ".083", "3.5"), inch("2.25", ".083", "3.5")]),
        ("Mandrels for 1.5 x .065 and 2 x .065, 3D each. Also a 2.5 at the same wall.",
         [inch("1.5", ".065", "4.5"), inch("2", ".065", "6"), inch("2.5", ".065", "7.5")]),
        ("42,4 x 2, R 84, auch in 48,3 gleicher Radius.",
         [mm("42.4", "2", "84"), mm("48.3", "2", "84")]),
        ("Quoted with .095 but can only get .120 now. 1.75 OD DOM, 5.25 CLR. One mandrel.",
         [inch("1.75", ".12", "5.25")]),
        ("Wall was .065, but we only have .083. 2 OD, 6 CLR. One mandrel.",
         [inch("2", ".083", "6")]),
        ("Steel furniture legs 1 x 18 ga, 3 clr. One mandrel.", [inch("1", ".049", "3")]),
        ("To bend a 1.5 dia 0.049 wall titanium tube to a 2.25 CLR. Qty of tubes: 60.",
         [inch("1.5", ".049", "2.25")]),
        ("Bending a 1.5 dia .049 wall tube, 2.25 CLR. Number of parts is 60.",
         [inch("1.5", ".049", "2.25")]),
        ("1.5 x .065, 4.5 R 90 deg. One mandrel.", [inch("1.5", ".065", "4.5")]),
    ],
)  # fmt: skip
def test_no_size_is_lost(text: str, sizes: list[Size]) -> None:
    """A further OD that shares the rest, a wall that is all there is, legs of a gauge."""
    requests = read_text(text)
    assert len(requests) == len(sizes), requests
    for size, request in zip(sizes, requests, strict=True):
        assert size.describes(request), request
