"""Rows that are misread today, and the likely cause. A row that is fixed is taken out here."""

from __future__ import annotations

KNOWN_FAULTS: dict[str, str] = {
    "subject-fills-a-gap": "the unit is doubted although the subject settles it",
    "only-plate": "another round or flat thing is taken for a tube",
}
