"""Rows that are misread today, and the likely cause. A row that is fixed is taken out here."""

from __future__ import annotations

KNOWN_FAULTS: dict[str, str] = {}
