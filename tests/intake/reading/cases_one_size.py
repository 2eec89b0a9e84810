"""One size in natural prose: how it is written, and the words around it that measure other things.

Found by putting messages together at random from such parts (``test_one_size.py``).
"""

# ruff: noqa: E501 - a row of a table stands on one line: the words, then their meaning

from __future__ import annotations

from .support import Size, inch, mm

# words beside a figure that name another one
BESIDE: list[tuple[str, Size]] = [
    ('Need a mandrel for 1.625" DOM tube. Wall thickness .109". CLR is 2.875.', inch("1.625", "0.109", "2.875")),
    ("Need a mandrel for 2 inch 304 tube. Wall is .065. Centerline radius 4.", inch("2", "0.065", "4")),
    ('Please quote 1 mandrel. Diameter: 1"; Wall: 0.083; Radius: 1 7/8".', inch("1", "0.083", "1.875")),
    ("Need a mandrel for 13 gauge wall 2 inch DOM, 6 inch CLR", inch("2", "0.095", "6")),
    ("Need a mandrel for 16 gauge wall 1 1/8 in 6061-T6, 3 5/8 in CLR", inch("1.125", "0.065", "3.625")),
    ('Do you stock a mandrel for 1 OD 20-gauge tube, radius of 4"?', inch("1", "0.035", "4")),
    ('Trying to do a 1.75" rad on 12 ga. 0.75 OD tube, need a mandrel.', inch("0.75", "0.109", "1.75")),
    ("Trying to do a 3xD bend radius on 50mm, 4 mm wall, brass tube, need a mandrel.", mm("50", "4", "150")),
    ("Need a mandrel, 16mm diameter 2.6 wall tube and a clr of 39 legs 200 mm and 350 mm", mm("16", "2.6", "39")),
    ('I want a 5" radius at the centerline in 1-3/8" OD DOM tubing with wall of .049", need a mandrel', inch("1.375", "0.049", "5")),
    ("Would like a mandrel for 1-1/4 dia tube, .065 thick wall / 4-1/4 in centreline radius.", inch("1.25", "0.065", "4.25")),
    ("Need a mandrel for 1.75-inch OD 49 wall tube / CLR 3 inch.", inch("1.75", "0.049", "3")),
    ("Need a mandrel for 1-5/8 OD one twenty wall 304 stainless / CLR of 5 in.", inch("1.625", "0.120", "5")),
    ('We want to order 3 mandrels for wall of .134" 2.5" titanium / 4.000" centreline radius.', inch("2.5", "0.134", "4")),
    ('Need a ball mandrel to bend 16 gage 1-1/2" 4130 to a 6" rad.', inch("1.5", "0.065", "6")),
    ('Need a mandrel for wall .065 1 1/2 inch stainless - 2 7/8" centreline radius', inch("1.5", "0.065", "2.875")),
    ('Need a mandrel for 1-1/2 in mild steel tube. Wall is .134. 3-5/8 in radius.', inch("1.5", "0.134", "3.625")),
    ('Please quote 1 mandrel. We are using 3 in mild steel tube with .083" wall. 9.5" CLR.', inch("3", "0.083", "9.5")),
    ("We have a new job, 1 x .109 brass tube, R3.5. Can you quote me a mandrel?", inch("1", "0.109", "3.5")),
    ('Legs are 8 inches and 14 inches. OD is 7/8", wall is .035", CLR is 1-7/8". Need a mandrel.', inch("0.875", "0.035", "1.875")),
]  # fmt: skip

BESIDE += [
    ('I bought a 2-3/4 inch CLR die set to bend 1-1/2" round tube with a 109 wall. Need a mandrel', inch("1.5", "0.109", "2.75")),
    ("Need a mandrel for 2-1/4 OD x 11 ga tube, 5 CLR.\n\nPS you guys did a 2 inch one for my brother.", inch("2.25", "0.120", "5")),
    ("Bender will do up to 2 inch sch 40. We bend 2.5 x .109 tube, the die is 5.25 CLR. Quote a mandrel.", inch("2.5", "0.109", "5.25")),
]  # fmt: skip

# a mandrel's own diameter, and that of the tube
TOOL: list[tuple[str, Size]] = [
    ("Need a mandrel 57 mm dia 304 tube, 4 mm thick, 215 mm CLR", mm("57", "4", "215")),
    ('Need a mandrel 1-5/8" dia 11 gauge tube 3-1/2" CLR', inch("1.625", "0.120", "3.5")),
    ("Need a mandrel 35 mm dia 2.6 mm wall 6061 tubing, radius of 59 mm", mm("35", "2.6", "59")),
    ("Need a mandrel 45 mm dia for 48.3 x 1.5 tube, radius 100 mm", mm("48.3", "1.5", "100")),
]

# pipe by schedule, in every order; 1.05, 1.315, 1.66, 1.9 and 3.5 in by ASME B36.10M
PIPE: list[tuple[str, Size]] = [
    ("Need a mandrel for sch 40 3/4 inch pipe, 4.5 CLR", inch("1.05", "0.113", "4.5")),
    ("Need a mandrel for sch 40 1 1/4 inch pipe, 4.5 CLR", inch("1.66", "0.140", "4.5")),
    ("Need a mandrel for schedule 10 1½ pipe to a 4 inch bend radius", inch("1.9", "0.109", "4")),
    ("Need a mandrel 3 sch10 pipe, 9 CLR", inch("3.5", "0.120", "9")),
    ("Need a mandrel, radius of 3.75 in, 1¼ SCH10 pipe, 316L.", inch("1.66", "0.109", "3.75")),
    ("We have a new job, 1 NPS schedule 80 pipe on a 3 1/8 CLR die. Need a mandrel.", inch("1.315", "0.179", "3.125")),
]  # fmt: skip

# which side the radius is to, and which side only goes wrong; inside = centre - OD/2
SIDES: list[tuple[str, Size]] = [
    # a gauge is no radius: 3-3/8 - 3/4 / 2, 3 + 1-1/2 / 2; 16 gauge is .065 by BWG
    ("3/4 tube, 16 gauge, radius to the outside of bend 3-3/8, one mandrel", inch("0.75", "0.065", "3")),
    ("1-1/2 tube, 16 ga, radius to the inside of the bend is 3, need a mandrel", inch("1.5", "0.065", "3.75")),
    ("Need a mandrel for 1.5 x .065 tube. 2.5 inch inside bend radius.", inch("1.5", "0.065", "3.25")),
    ("Need a mandrel for 1.5 x .065 tube, 6 inch radius on the inside", inch("1.5", "0.065", "6.75")),
    ("Straight leg after the bend is 4 inches. Need a mandrel for 1.5 OD x 16 ga tube, 7 inside radius.", inch("1.5", "0.065", "7.75")),
    ("Need a mandrel for 1.5 x .065 tube bent around a 6 inch rad. Weld seam is on the inside of the bend.", inch("1.5", "0.065", "6")),
    ("Need a mandrel for 1.5 x .065 tube bent around a 6 inch radius\nI keep getting wrinkles on the inside", inch("1.5", "0.065", "6")),
    ("Need a mandrel for 1.5 x .065 tube, radius of 6 in and it kinks on the inside", inch("1.5", "0.065", "6")),
    ("Need a mandrel for 1.5 x .065 tube, radius 6 in. The outside of the bend cracks", inch("1.5", "0.065", "6")),
    ("Brauche einen Dorn für Rohr 38 x 1,5, Radius 76, es gibt Falten auf der Innenseite", mm("38", "1.5", "76")),
    ("Il me faut un mandrin pour tube 38 x 1,5, rayon 76, il fait des plis à l'intérieur", mm("38", "1.5", "76")),
    ("Necesito un mandril para tubo 38 x 1,5, radio 76, salen arrugas por dentro", mm("38", "1.5", "76")),
    ("Mi serve un mandrino per tubo 38 x 1,5, raggio 76, fa le grinze all'interno", mm("38", "1.5", "76")),
    ("Ik zoek een doorn voor buis 38 x 1,5, straal 76, er komen plooien aan de binnenkant", mm("38", "1.5", "76")),
]  # fmt: skip

# lists of labels: the next line's label says nothing of this line's value
LABELS: list[tuple[str, Size]] = [
    (
        "Need a mandrel.\n\nOD: 1.5\nWall: .065\nCLR: 4.5\nMax angle: 180",
        inch("1.5", "0.065", "4.5"),
    ),
    (
        "Need a mandrel.\n\nTube: 45\nwall: 2.5\nCenter line radius: 115mm\nDegree of bend: 90",
        mm("45", "2.5", "115"),
    ),
    (
        "Need mandrels.\n\nod = 4\nWall thickness = .109\nBend radius = 1.5D\nQty = 3",
        inch("4", "0.109", "6"),
    ),
    (
        "Need mandrels.\n\nTube - 3\nTube wall - .120\nCLR - 5.5 in\nHow many - 4",
        inch("3", "0.120", "5.5"),
    ),
    (
        "Need a mandrel.\n\nTube OD - 2.5\nwall - .095\nCLR - 6.500\nBends per part - 3",
        inch("2.5", "0.095", "6.5"),
    ),
    (
        "Need a mandrel.\n\nTube dia - 60 mm\nWall - 2 mm\nRadius - 2D\nMax angle - 180",
        mm("60", "2", "120"),
    ),
    (
        'Need a mandrel.\n\nOutside dia... 1"\nThickness... 0.109\nCLR... 2.875"',
        inch("1", "0.109", "2.875"),
    ),
    ("Need a mandrel. OD 1.5, wall .065, CLR 4.5 max", inch("1.5", "0.065", "4.5", "clr")),
]

# lengths of other things, in sentences of their own
OTHERS: list[tuple[str, Size]] = [
    (f"Need a mandrel for 51 mm x 2.6 mm, 84 mm rad. {said}", mm("51", "2.6", "84"))
    for said in (
        "Our bender maxes out at 3 inch.",
        "It's on a 76 mm electric machine.",
        "It flattens about 4 mm at the middle of the bend.",
        "There's 80 mm of straight between bends.",
        "Only 40 mm of straight to clamp on.",
        "It's for a 5.7 liter engine swap.",
        "I attached 2 pictures of the bend.",
        "We're a 6 man shop.",
        "It necks down to 1.2 in the bend.",
        "It's one bend at 90.",
        "Six bends a part, none over 90.",
        "Bend to bend is 180 mm center to center.",
        "Let me know cost on 1 and lead time.",
        "Ship to 410 W 9th St.",
        "Bender will do up to 2 inch sch 40.",
    )
] + [
    (f"{said} Need a mandrel for 2 x .109 tube, 8 CLR.", inch("2", "0.109", "8"))
    for said in (
        'Only 1-1/2" of straight to clamp on.',
        "There's 3\" of straight between bends.",
        'It flattens about 1/8" at the middle of the bend.',
        "Our bender maxes out at 3 inch.",
        "It's on a 3 inch hydraulic machine.",
        "Bender will do up to 2 inch sch 40.",
        "First run is 10 parts, then 400. Tolerance +/- 1/32 on the legs.",
    )
]
