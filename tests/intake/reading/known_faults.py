"""Rows that are misread today, and the likely cause. A row that is fixed is taken out here."""

from __future__ import annotations

KNOWN_FAULTS: dict[str, str] = {
    "subject-fills-a-gap": "the unit is doubted although the subject settles it",
    "d-against-radius": "3D against a stated radius: no doubt",
    "hedge-not-sure": "the hedge is heard by the wrong figure, or not at all",
    "hedge-question-mark": "the hedge is heard by the wrong figure, or not at all",
    "legend-after": "a legend behind the figures is not matched to them",
    "mm-against-inch": "two units that disagree: no doubt naming both",
    "one-without-radius": "'on 4.5 clr, and also 2 x .083': a wall is taken for a radius",
    "only-plate": "another round or flat thing is taken for a tube",
    "only-washer": "another round or flat thing is taken for a tube",
}
