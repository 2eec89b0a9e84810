"""Reading the package's own data tables (``data/*.csv``; ``data/SOURCES.md`` says whence)."""

from __future__ import annotations

import csv
from pathlib import Path

# Beside this file, in a clone as in a wheel. importlib.resources would say the same, but costs
# 14 ms at every start of the program.
_DATA = Path(__file__).with_name("data")


def rows(name: str) -> tuple[dict[str, str], ...]:
    """All rows of ``data/<name>``, by column name. Not cached: each user keeps what it needs."""
    text = (_DATA / name).read_text(encoding="utf-8")
    return tuple(csv.DictReader(text.splitlines()))
