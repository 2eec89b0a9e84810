"""The store's tables, step by step. Each step is one file in ``versions``."""

from __future__ import annotations

from pathlib import Path

REVISIONS: tuple[str, ...] = ("0001", "0002", "0003", "0004", "0006", "0008", "0009")
"""All steps, oldest first. Kept here too, so that opening an up-to-date store needs no Alembic."""

FOLDER = Path(__file__).parent
