"""The type of copper water tube beside its size: 'type L' says the wall (ASTM B88)."""

from __future__ import annotations

from ...late_pattern import late_pattern
from ..text.figures import Figure, Layout
from ..text.patterns import whole_words

COPPER_TYPES = {letter: f"copper, type {letter}" for letter in "KLM"}
"""A figure's notes that say of which type the tube is."""
_COPPER = whole_words("copper")
_OTHER_METAL = whole_words(
    "\\w*steel | stainless | alumin\\w+ | brass | titanium | chromoly | 304 | 316"
)
_NAMED = late_pattern(
    r"\btypes?\s([klm])\b(?!\s(?:bender|machine|die|fitting|thread|key))|\b([kl])[ -]copper\b"
    r"|\bcopper\s([klm])\b(?!\s?\d)"
)
_BESIDE = late_pattern(r"^[\W\s]{0,3}([klm])\b(?!\s?[\d.])")
_UNSURE = late_pattern(
    r"\b(?:not|n't|no|or|unsure|sure|maybe|perhaps|either|if|whether|think|probably|may|might"
    r"|could|instead|thinner|thicker|already|have)\b|\?"
)
"""Beside a type these may say that it is another's, or none that is known."""
_TUBE_THERE = whole_words(
    r"(?:i|we)(?:'ve)?(?: have)?(?: got)?(?: already)? (?:the |some |this )?(?:pipe|tube|tubing"
    r"|stuff"
    r"|copper)(?: \w+)? already | have (?=\W?\d)",
    r"(?:i|we) (?:already )?have (?:the |some |this |a lot of )?(?:pipe|tube|tubing|stuff|copper)"
    r"(?: already)?",
)
"""'I have the pipe already, it's 1 in type L': the tube is there, and of that type."""
_DRAINAGE = whole_words("dwv | drainage")
"""Tube with a wall of its own (ASTM B306), whatever else is said."""
_FAR = 30


def note_type(layout: Layout, figure: Figure) -> None:
    """Mark a tube's OD or trade size with the one type that is plainly said of it.

    Copper and type stand in its sentence, or the whole text names no other metal.
    """
    if not layout.says_anywhere(_COPPER) or layout.says_anywhere(_DRAINAGE):
        return
    own = layout.sentence_text(figure.sentence)
    whole = layout.words(0, len(layout.text))
    spoken = own if _COPPER.search(own) and _NAMED.search(own) else whole
    if _OTHER_METAL.search(spoken):
        return
    behind = layout.words(figure.end, figure.end + _FAR)
    beside = _BESIDE.match(behind) if _COPPER.search(own) else None
    named = {next(filter(None, found.groups())) for found in _NAMED.finditer(spoken)}
    if beside is not None:
        named = {beside[1]}
    elif len(named) > 1:
        named = {next(filter(None, found.groups())) for found in _NAMED.finditer(behind)}
    if len(named) == 1 and not any(_is_unsure(layout, sentence) for sentence in layout.spans):
        figure.notes.append(COPPER_TYPES[named.pop().upper()])


def _is_unsure(layout: Layout, sentence: int) -> bool:
    """Whether a sentence that names a type is not sure of it."""
    said = _TUBE_THERE.sub(lambda there: " " * len(there[0]), layout.sentence_text(sentence))
    return any(
        _UNSURE.search(said, max(0, found.start() - _FAR), found.end() + _FAR)
        for found in _NAMED.finditer(said)
    )
