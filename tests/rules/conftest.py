"""What several tests of the rules start from."""

from __future__ import annotations

from pathlib import Path

import pytest

from bendreply.rules.shop import write_new_shop


@pytest.fixture
def folder(tmp_path: Path) -> Path:
    """A shop folder as a new shop gets it."""
    target = tmp_path / "shop"
    write_new_shop(target)
    return target
