"""Replies that pick lines of a list in the mail they quote, and near misses.

The words, the quoted list, and what is asked for: OD, wall, CLR [mm], material, quantity.
"""

from __future__ import annotations

IN = 25.4
_OURS = (
    "\n\nOn Tue, 3 Mar 2026 at 09:10, Mandrel Desk <desk@example.com> wrote:\n"
    "> 1) tube 35 x 1.5 mm, 304, CLR 70, 1 pc, 290 EUR\n"
    "> 2) tube 40 x 1.5 mm, 304, CLR 80, 1 pc, 310 EUR\n"
    "> 3) tube 50 x 2.0 mm, 304, CLR 100, 1 pc, 350 EUR\n"
)
_NAMED = (
    "\n\nOn Tue, 3 Mar 2026 at 09:10, Ellie <ellie@example.com> wrote:\n"
    "> upper   57 x 2 mm, 304, CLR 171\n> lower   41 x 2 mm, 304, CLR 123\n"
)
_TWO = (
    "\n\nOn Tue, 3 Mar 2026 at 09:10, Mandrel Desk <desk@example.com> wrote:\n"
    "> a) 35 x 1.5 mm, 304, CLR 70 - 1 pc\n> b) 40 x 1.5 mm, 304, CLR 80 - 1 pc\n"
)
_OPTIONS = (
    "\n\nOn Tue, 3 Mar 2026 at 09:10, Mandrel Desk <desk@example.com> wrote:\n"
    "> Two ways to go:\n>\n> Option A: plug mandrel for 38 x 2 mm on CLR 114, E235\n"
    "> Option B: two-ball mandrel for 38 x 1.5 mm on CLR 76, 304\n>\n> Both 3 weeks.\n"
)
_AGAINST = (
    "\n\n>> From: Ellie\n>> We need mandrels for these tubes in 304:\n"
    ">>   25 x 2 mm, R 63\n>>   32 x 2 mm, R 96\n>\n"
    "> Hi Ellie, the 25 on R 63 is close to its limit. The 32 is fine.\n"
)
_TUBES = (
    "\n\nVon: Technik <technik@example.net>\nGesendet: Mittwoch, 7. Oktober 2026 15:48\n"
    "An: Ellie Ott\nBetreff: Dorne\n\n"
    "Rohr 1: 15 x 1,5, R 40\nRohr 2: 22 x 2, R 60\nRohr 3: 28 x 2,5, R 80\nalles E355\n"
)
_INOX = "stainless_steel"
_A, _B = (38, 2, 114, "carbon_steel"), (38, 1.5, 76, "stainless_steel")
_R1, _R2 = (15, 1.5, 40, "carbon_steel", 1), (22, 2, 60, "carbon_steel", 1)
_FIRST, _SECOND, _THIRD = (
    (35, 1.5, 70, _INOX, 1),
    (40, 1.5, 80, _INOX, 1),
    (50, 2, 100, _INOX, 1),
)

PICKED: list[tuple[str, list[tuple[object, ...]]]] = [
    ("item 2 only please, one piece." + _OURS, [_SECOND]),
    ("Please quote lines 1 and 3 only, one of each." + _OURS, [_FIRST, _THIRD]),
    ("We will go ahead with line 2 only, please update the quote." + _OURS, [_SECOND]),
    ("Please go ahead and quote the third one in your list, just one mandrel." + _OURS, [_THIRD]),
    ("The second one is the one for you, the others are rolled." + _OURS, [_SECOND]),
    ("Bitte nur Pos. 2 anbieten, 1 Stück." + _OURS, [_SECOND]),
    ("Seulement les lignes 1 et 3, s'il vous plaît." + _OURS, [_FIRST, _THIRD]),
    ("Alleen de eerste graag, één doorn." + _OURS, [_FIRST]),
    ("Let's do the bigger one." + _TWO, [_SECOND]),
    ("Quote b) only please, we'd take one." + _TWO, [_SECOND]),
    ("Need one mandrel for the lower tube only." + _NAMED, [(41, 2, 123, _INOX, 1)]),
    (
        "We'll go with option B, but make it three pieces instead of one. Please re-send the quote."
        + _OPTIONS,
        [(*_B, 3)],
    ),
    ("We'd like option A please. Quantity 2." + _OPTIONS, [(*_A, 2)]),
    ("Please re-quote option B for three mandrels." + _OPTIONS, [(*_B, 3)]),
    ("Let's do B, two pieces." + _OPTIONS, [(*_B, 2)]),
    (
        "Then drop the 25 x 2. Please offer only the other one, 2 pcs." + _AGAINST,
        [(32, 2, 96, _INOX, 2)],
    ),
    (
        "OK, we leave out the 25. Please quote the other one, 2 pieces." + _AGAINST,
        [(32, 2, 96, _INOX, 2)],
    ),
    ("Then please quote only the 32, two of them." + _AGAINST, [(32, 2, 96, _INOX, 2)]),
    (
        "Siehe unten, bitte nur die ersten beiden Rohre anbieten. Das dritte hat sich erledigt. Je"
        " ein Dorn." + _TUBES,
        [_R1, _R2],
    ),
    ("Siehe unten, bitte nur Rohr 1 und 2 anbieten. Je ein Dorn." + _TUBES, [_R1, _R2]),
    ("Siehe unten, das dritte Rohr entfällt. Je ein Dorn bitte." + _TUBES, [_R1, _R2]),
]

NOT_PICKED = [
    "Thanks, line 2 arrived." + _OURS,
    "We have a mandrel for line 2 already, thank you." + _OURS,
    "Go ahead with line 2, PO 4471 attached." + _OURS,
    "OK." + _OURS,
    "The bigger one broke." + _TWO,
]
"""Ordered, owned or spoken of: no new request."""
