"""The words right before and after a figure."""

from __future__ import annotations

from .figures import Figure, Layout

_TOKENS = 8


def words_nearby(layout: Layout, figure: Figure) -> tuple[str, str]:
    """Casefolded text of a few tokens on each side, within the sentence and up to a neighbour."""
    left, right = layout.tokens_before(figure, _TOKENS), layout.tokens_after(figure, _TOKENS)
    for index in range(len(left) - 1, -1, -1):
        if left[index].number is not None:
            left = left[index + 1 :]
            break
    for index, token in enumerate(right):
        if token.number is not None:
            right = right[:index]
            break
    before = layout.text[left[0].start : figure.start] if left else ""
    after = layout.text[figure.end : right[-1].end if right else figure.end]
    words = " ".join(before.casefold().split())
    return words + (" " if before[-1:].isspace() else ""), after.casefold()
