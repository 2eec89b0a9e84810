"""A text in small letters, each in its place: what is found in one is at the same place in the
other. (Casefolded, a sharp s becomes two letters, and so does a capital dotted I even in small
ones.)"""

from __future__ import annotations


def small_letters(text: str) -> str:
    """``text`` in small letters, of the same length."""
    return text.replace("\u0130", "i").lower()
