"""A material that comes beside the one named before: 'in steel. It must do stainless too'."""

from __future__ import annotations

from ...late_pattern import late_pattern
from ..text.patterns import any_of

_FAR = 60
_AHEAD = late_pattern(
    r"\b"
    + any_of(
        "also (?:do|does|be used|be used for|used for|suit|work|works|bend|bends|bent|run|runs|for"
        "|in|with|on|take|handle)",
        "sometimes | occasionally | now and then | from time to time | and also | as well as",
        "manchmal | gelegentlich | ab und zu | hin und wieder | auch (?:mal |für |in |aus )?",
        "parfois | de temps en temps | aussi (?:pour|en|avec|du|de l')? | également",
        "a veces | de vez en cuando | también (?:para|en|con)?",
        "a volte | qualche volta | ogni tanto | anche (?:per|in|con|su)?",
        "soms | af en toe | ook (?:voor|in|met|wel)?",
    )
    + r"\s?(?:(?:the|some|a|an|on|in|for|with|of|it|we|do|bend|run|wir|on|le|la|l')\s?){0,3}$"
)
_BEHIND = late_pattern(
    r"^(?:\s(?:tube|tubing|pipe|rohr|tubo|buis|steel))?,?\s"
    + any_of(
        "too | as well | also | now and then | sometimes | occasionally | from time to time",
        "auch | manchmal | ab und zu | gelegentlich | aussi | également | parfois | también",
        "a veces | anche | a volte | ook | soms | at times | on occasion",
    )
    + r"(?![^\W_])"
)


def is_also_wanted(text: str, start: int, end: int) -> bool:
    """Whether the words beside ``text[start:end]`` say that it is one of several."""
    before = text[max(0, start - _FAR) : start].casefold()
    return bool(_AHEAD.search(before) or _BEHIND.match(text[end : end + _FAR].casefold()))
