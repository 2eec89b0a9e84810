"""The words that say what a number is, looked up word by word: the longest phrase counts."""

from __future__ import annotations

import re
from dataclasses import dataclass
from functools import lru_cache

from ...late_pattern import late_pattern
from .cue_words import SIZE_CUES, Side
from .other_cue_words import OTHER_CUES
from .roles import Role


@dataclass(frozen=True, slots=True)
class Cue:
    """What a phrase says of a number beside it, and on which side the number may stand."""

    role: Role
    side: Side = "both"


# A word for the cues: letters (with inner apostrophe), the diameter sign, or '#'.
WORD = re.compile(r"Ø|#|[^\W\d_Ø]+(?:'[^\W\d_]+)?", re.IGNORECASE)

_Phrases = tuple[tuple[tuple[str, ...], Cue], ...]


@lru_cache(maxsize=1)
def _by_first_word() -> dict[str, _Phrases]:
    table: dict[str, list[tuple[tuple[str, ...], Cue]]] = {}
    for role, side, phrases in (*SIZE_CUES, *OTHER_CUES):
        for phrase in phrases.split("|"):
            words = tuple(WORD.findall(phrase.strip().casefold()))
            if words:
                table.setdefault(words[0], []).append((words, Cue(role, side)))
    return {
        first: tuple(sorted(entries, key=lambda entry: -len(entry[0])))
        for first, entries in table.items()
    }


_TUBES = ("rohr", "rohre", "rohres", "rohren", "buis", "buizen", "rör", "rør")
_LONGEST_TUBE = 6
_RADII = ("radius", "radien", "halbmesser", "straal", "stralen")
_CENTRES = ("achs", "mitt", "hart", "midden", "as", "rohrachs", "rohrmitt")
_OTHER_RADII = (
    "eck", "kant", "nut", "rille", "kugel", "nase", "schneid", "hoek", "afrond", "kop", "groef",
    "wend", "aktion", "fräs", "abrund",
)  # fmt: skip
"""Of a corner, a groove, a ball, a nose: none of a bend."""


def _known(first: str) -> _Phrases:
    table = _by_first_word()
    known = table.get(first) or (table.get(first[:-1], ()) if first.endswith("s") else ())
    if not known and first.endswith(_TUBES) and len(first) > _LONGEST_TUBE:
        return table.get("rohr", ())  # "Auspuffrohr", "handrailbuis"
    if not known and first.endswith(_RADII) and not first.startswith(_OTHER_RADII):
        # "Krümmungsradius", "zetradius"; "Achsenradius", "middenlijnradius"
        return table.get("mittelradius" if first.startswith(_CENTRES) else "biegeradius", ())
    return known


def longest_cue(first: str) -> int:
    """How many words the longest phrase takes that begins with this word; 0 where none does."""
    known = _known(first)
    return len(known[0][0]) if known else 0


@lru_cache(maxsize=4096)
def cues_of(words: tuple[str, ...]) -> tuple[int, tuple[Cue, ...]]:
    """How many words the longest phrase at their beginning takes, and every cue it gives."""
    length = 0
    found: list[Cue] = []
    for phrase, cue in _known(words[0]):
        if len(phrase) < length:
            break
        compound = len(phrase) == 1 and words[0].endswith((*_TUBES, *_RADII))
        if compound or (len(phrase) <= len(words) and all(map(_same_word, words, phrase))):
            length = len(phrase)
            found.append(cue)
    return length, tuple(found)


_NO_PLURALS = frozenset(("wands",))
"""'90 wands a week' are tubes of a spray gun: several German walls are 'Wände'."""


def _same_word(said: str, word: str) -> bool:
    """Whether a word is the phrase's, or its plural: 'outside diameters'."""
    if said == word:
        return True
    return len(word) > 3 and said == word + "s" and said not in _NO_PLURALS


_GOES_ON = re.compile(r"[ \t]*[:=]|[ \t]*\n?[ \t]*(?![A-ZÀ-Þ][a-zß-ÿ'])\S|[ \t]*$")
_RADIUS_WORDS = frozenset(("clr", "rad", "cl"))
_BEHIND_A_LENGTH = re.compile(r"\d[ \t]*(?:mm|cm|in|inch|inches|[\"”″])?[ \t]*[a-z]{2,3}\.?$", re.I)
_NEAR = 16
_LONG_ABBREVIATIONS = frozenset(
    "wandst wandd wanddik biegerad bieger aussend spess espes épais epais grub".split()
)


_WHOLE = frozenset(
    "wall wide high deep tall long thin tube tubes pipe bend bends die dies leg legs rod hole ball"
    " bolt bar bars ring hoop line size form part job unit tool shoe rim seam weld wire gap edge"
    " coil bore box"
    " rohr wand tubo tubi buis tige asta foro breit hoch lang dick haut long".split()
)
"""Words that nobody writes with a point: behind one it ends the sentence, where the word has an
article or the like before it, or a figure that it measures."""
_WHOLE_TOO = frozenset(
    "radius radii centerline centreline inside outside rayon raggio radio mandrel mandrels".split()
)
_ADJECTIVES = frozenset("wide high deep tall long breit hoch lang haut".split())
_A_TUBE = re.compile(
    r"\s{0,3}\d[\d.,/ -]{0,8}\s?(?:in|mm|[\"”″])?\s?[x×*]\s?[.,\d]"
    r"|\s{0,3}\d[\d.,/-]{0,8}(?: \d/\d{1,2})?[\"”″]? \.\d{2,3}\b",  # "1.75 .120"
    re.I,
)
_IN_A_SENTENCE = late_pattern(
    r"\b(?:the|our|an?|my|your|his|this|that|these|those|each|every|both|is|are|was|and|or|of|for|per|on"
    r"|in|to|too|very|so|same|with|der|die|das|den|dem|ein|eine|einen|unser|sehr|und|le|la|les|un|une|du|des"
    r"|el|los|una|il|lo|gli|uno|de|het|een|en)(?:[ \t]{1,2}[^\W\d]+)?\s{1,2}[^\W\d]+\.$"
    r"|\b(?:clr|radius|rad|cent(?:er|re)line)[ \t](?:dies?|tool|shoe|form)\.$"
    r"|\d[ \t]*(?:mm|cm|m|ft|feet|in|inch|inches|[\"”″'])?[ \t]"
    r"(?:wide|high|deep|tall|long|thin|breit|hoch|lang)\.$",
    re.I,
)


def parts_phrase(word: str, gap: str) -> bool:
    """Whether a full stop behind a word parts it from the next: '1.5 tube. Wall .065'.

    The words of a label may bear points: 'outs. dia. 38'.
    """
    return "." in gap and gap[-1] == " " and (word in _WHOLE or word in _WHOLE_TOO)


def point_belongs(word: str, text: str, place: int) -> bool:
    """Whether the point before ``place`` belongs to the word, as in 'dia. 38'.

    That of 'cut the legs. The tube is 38' ends the sentence.
    """
    if word in _RADIUS_WORDS and _BEHIND_A_LENGTH.search(text, max(0, place - _NEAR), place):
        return False  # "3 inch clr. 16 ga": what was said is whole
    whole = word in _WHOLE and _IN_A_SENTENCE.search(text, max(0, place - 2 * _NEAR), place)
    # "I forgot the wall. .120" tells it all the same
    if whole and (word in _ADJECTIVES or _A_TUBE.match(text, place)):
        return False  # "we measured the wall. 1.5 x .065", "it is 3 ft deep. 1.5 x .065"
    short = len(word) <= 4 or word in _LONG_ABBREVIATIONS
    return len(word) == 1 or (short and _GOES_ON.match(text, place) is not None)
