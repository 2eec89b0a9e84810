"""What of a word pattern may be found in a text, told without compiling it.

To compile a pattern takes some twenty times as long as to look which of its words stand in a text,
and most words of most patterns stand in no given message. What is left out is certain to be found
nowhere; what is kept need not be found.
"""

from __future__ import annotations

import re
from functools import lru_cache

_REPEAT = r"(?:[*+?]|\{\d*,?\d*\})[?+]?"
# The pieces of a pattern, by the syntax that the documentation of ``re`` gives.
_PIECE = re.compile(
    r"\\(?:x..|u.{4}|U.{8}|N\{[^}]*\}|[0-7]{1,3}|.)"  # \b, \d, \.
    r"|\[\^?\]?(?:\\.|[^\]\\])*\]"  # [^abc]
    r"|\(\?P=\w+\)"  # the same again as a group before
    r"|\((?:\?(?:P<\w+>|<?[=!]|[a-zA-Z-]*[:>]))?"  # a group, and what kind of group
    rf"|\)(?:{_REPEAT})?"  # its end, and how often
    rf"|{_REPEAT}"  # how often a sign or a set
    rf"|[^\\\[\](){{}}|.?*+^$]+(?!{_REPEAT})"  # words, without a last letter that is repeated
    rf"|.(?:{_REPEAT})?",  # a letter or a sign, and how often
    re.DOTALL,
)
_NOWHERE = "(?!)"
_NO_WORDS = frozenset("\\[]{}.?*+^$")
_MAY_LACK = re.compile(r"\)(?:[*?]|\{0?,|\{0\})")
# What re.IGNORECASE takes for i, s and k besides their capitals.
_ALIKE = str.maketrans({"\u0130": "i", "\u0131": "i", "\u017f": "s", "\u212a": "k"})


@lru_cache(maxsize=256)
def without_case(text: str) -> str:
    """A text as ``that_may_stand`` looks at it."""
    return text.lower() if text.isascii() else text.translate(_ALIKE).lower()


class _Group:
    """The branches of a group, or of the whole pattern, as far as they have been walked through."""

    def __init__(self, opening: str) -> None:
        self.opening = opening
        self.branches: list[str] = []
        """Those that are kept."""
        self.found = False
        """Whether one of them may stand."""
        self.counted = opening == "(" or opening.startswith("(?P<")
        """Whether it is, or holds, a group that can be asked for: such are kept in any case."""
        self.branch: list[str] = []
        self.may_stand = True
        self.counts = False

    def end_branch(self) -> None:
        if self.may_stand or self.counts:
            self.branches.append("".join(self.branch))
        self.found |= self.may_stand
        self.counted |= self.counts
        self.branch, self.may_stand, self.counts = [], True, False

    def take(self, inner: _Group, closing: str) -> None:
        """A group within this branch, all of whose own branches are known."""
        inner.end_branch()
        must_stand = inner.opening not in ("(?!", "(?<!") and not _MAY_LACK.match(closing)
        if inner.found or inner.counted or must_stand:
            branches = "|".join(inner.branches) if inner.branches else _NOWHERE
            self.branch.append(f"{inner.opening}{branches}{closing}")
        self.may_stand &= inner.found or not must_stand
        self.counts |= inner.counted


def that_may_stand(pattern: str, text: str) -> str | None:
    """``pattern`` without those branches that stand nowhere in a text; None where none is left.

    ``text`` is ``without_case`` of the one to be searched: in that, what is left finds what the
    whole finds, with the same groups. ``pattern`` is one that ``re`` takes without ``re.VERBOSE``,
    has no comment and no condition; flags make no difference.
    """
    group, outside = _Group(""), []
    for piece in _PIECE.findall(pattern):
        first = piece[0]
        if first == "|":
            group.end_branch()
        elif first == "(" and not piece.startswith("(?P="):
            outside.append(group)
            group = _Group(piece)
        elif first == ")":
            inner, group = group, outside.pop()
            group.take(inner, piece)
        else:
            group.branch.append(piece)
            if group.may_stand and first not in _NO_WORDS and piece[-1] not in "?*+})":
                one_case = piece.isascii() or _one_case(piece)
                group.may_stand = not one_case or piece.lower() in text
    group.end_branch()
    return "|".join(group.branches) if group.found else None


def _one_case(words: str) -> bool:
    """Whether ``lower`` tells what letters ``re.IGNORECASE`` takes for these beyond ASCII."""
    # The micro sign is a Greek letter to some.
    return "\xb5" not in words and max(words) < "\u0100"
