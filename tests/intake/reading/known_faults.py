"""Rows that are misread today, and the likely cause. A row that is fixed is taken out here."""

from __future__ import annotations

KNOWN_FAULTS: dict[str, str] = {
    "subject-fills-a-gap": "the unit is doubted although the subject settles it",
    "d-against-radius": "3D against a stated radius: no doubt",
    "hedge-not-sure": "the hedge is heard by the wrong figure, or not at all",
    "hedge-question-mark": "the hedge is heard by the wrong figure, or not at all",
    "legend-after": "a legend or a sideways table is not matched to its figures",
    "mm-against-inch": "two units that disagree: no doubt naming both",
    "one-without-radius": "'on 4.5 clr, and also 2 x .083': a wall is taken for a radius",
    "only-plate": "another round or flat thing is taken for a tube",
    "only-rack": "another round or flat thing is taken for a tube",
    "only-washer": "another round or flat thing is taken for a tube",
    "sideways": "a legend or a sideways table is not matched to its figures",
}

# A hundred kilobytes of these take longer than two seconds, most of them minutes: not run.
KNOWN_SLOW = (
    "by friday ",
    "1-",
    "1 ",
    "1/",
    "a1-",
    "+1 ",
    "x1",
    "1.",
    "\t1",
    "1,",
    "1 x ",
    "1\n",
    "1\n\n",
    "OD 1 ",
    "one ",
    "or 1 ",
    "1/2 ",
    "1-1/2",
    "no wait 1 ",
    "|1",
    ";1",
    "1 1/2 x ",
    "½",
    "Ø",
    "1 or ",
    "R1 ",
    "not 1 ",
    "2D ",
    "qty 1 ",
    "1.75 x .095 x 5.25 clr\n",
    "1.5 od, ",
)
