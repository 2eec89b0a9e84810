"""Chat that was pasted into a mail: who wrote a line, and when, are no words of it."""

from __future__ import annotations

import re
from collections import Counter
from collections.abc import Sequence

from .late_pattern import late_pattern

DAY = r"\d{1,4}[/.-]\d{1,2}(?:[/.-]\d{2,4})?\.?"
TIME = r"\d{1,2}[:.]\d{2}(?:[:.]\d{2})?(?:\s?[ap]\.?m\.?)?"
_WHO = r"[^\W\d_][^:\n\d]{0,30}:"
_STAMP = late_pattern(
    rf"[ \t\u200e]*(?:\[(?:{DAY},?\s{{1,2}})?{TIME}(?:,?\s{{1,2}}{DAY})?\]\s{{0,2}}(?:{_WHO})?"
    rf"|{DAY},?\s{{1,2}}{TIME}\s-\s{_WHO}"
    rf"|[^\W\d_][^:\n\d\[]{{0,30}},?\s\[{DAY},?\s{{1,2}}{TIME}\]:?)[ \t]*",
    re.IGNORECASE,
)
"""'[26/10, 13:02] Toby: ', '26/10/2026, 13:02 - Toby: ', 'Toby, [26.10.2026 13:02]'."""
_FEWEST = 2
_IS_CHAT = late_pattern(
    r"\b(?:live|web)?[ -]?chat(?:s|verlauf|protokoll|gesprek)?\b|\btranscript\b"
    r"|\bconversation\b|\bvisitor\b"
    r"|\b(?:transcription|clavardage)\b|\bconversación\b|\bconversazione\b",
    re.IGNORECASE,
)
_SAYS = late_pattern(r"[ \t]*(?P<who>[^\W\d_][^:\n\d]{0,24}):[ \t]+(?=\S)")
_OUR_SIDE = late_pattern(
    r"(?:site|(?:web ?site |chat ?)?bot|agent|operator|support|system|assistant|sales|host|us"
    r"|staff|shop"
    r"|berater|mitarbeiter|opérateur|conseiller|operador|agente|operatore|medewerker)",
    re.IGNORECASE,
)
_LABEL = late_pattern(
    r"\b(?:tub(?:e|ing)|pipe|o\.?d|i\.?d|wall|wt|clr|radius|bend|qty|quantity|mandrels?|material|sizes?"
    r"|item|pos|line|part|rohr|wand(?:stärke)?|biegeradius|stück|anzahl|menge|werkstoff|paroi|épaisseur"
    r"|rayon|quantité|matière|tubo|pared|espesor|radio|cantidad|spessore|raggio|quantità|materiale"
    r"|buis|straal|aantal|materiaal|dorn|mandrin|mandril|mandrino|doorn|date|to|from|subject|sent)\b",
    re.IGNORECASE,
)
"""Before a colon these name what stands behind it, however often they come."""
_HEAD = 6
"""So many lines at the top tell that it is a chat."""
_FEWEST_SPOKEN = 3


def stamp_widths(lines: Sequence[str]) -> dict[int, int]:
    """How many characters of each line are such a stamp; nothing where only one line has it."""
    widths = {
        number: found.end()
        for number, line in enumerate(lines)
        if ":" in line[:60] and (found := _STAMP.match(line)) is not None
    }
    return widths if len(widths) >= _FEWEST else _speakers(lines)


def _speakers(lines: Sequence[str]) -> dict[int, int]:
    """The same for 'Annie: 1.2 wall', where the text says that it is a chat and somebody speaks
    again and again: what the shop's side says is nobody's own."""
    if not any(_IS_CHAT.search(line) for line in lines[:_HEAD]):
        return {}
    said = {
        number: found
        for number, line in enumerate(lines)
        if (found := _SAYS.match(line)) and not _LABEL.search(found["who"])
    }
    names = Counter(found["who"].casefold() for found in said.values())
    spoken = {number for number, found in said.items() if names[found["who"].casefold()] > 1}
    if len(spoken) < _FEWEST_SPOKEN:
        return {}
    widths = {number: said[number].end() for number in spoken}
    for number, found in said.items():
        asks = lines[number].rstrip().endswith("?")  # what is answered on the next line
        if _OUR_SIDE.fullmatch(found["who"].strip()):
            widths[number] = found.end() if asks else len(lines[number])
    return widths
