"""How far apart the legs of a bend are from centre to centre: '8 inches apart, c to c'."""

from __future__ import annotations

from ...late_pattern import late_pattern
from ..naming.cue_sides import begins_tube
from ..text.figures import Figure, Layout
from ..text.patterns import any_of, whole_words
from .phrases_beside import UNIT

_CENTRES = whole_words(
    r"cent(?:re|er)(?:s|\s?lines?)? | c\W{0,3}(?:to\W)?c | axes? | axis | achs\w* | mitten?\w*",
    "entraxe | ejes?",
    "assi | asse | interasse | hart\\w* | centro | centros",
)
_LEGS = whole_words(
    "legs? | arms? | straights? | branches? | branche | schenkeln? | rami | ramas | patas | poten",
    r"benen | u-?bends? | u-?bogen | 180(?!\s?mm|[.,]\d) | return bends? | hairpins?",
    r"épingles? | haarnadel\w*",
    "forcin[ae] | horquillas? | haarspeld\\w* | rohrschlangen?",
)
_APART_AFTER = late_pattern(
    UNIT
    + r"(?:apart\W{1,3})?(?:measured\s)?(?:(?:from|on|at|between)\s)?"
    + any_of(
        r"cent(?:re|er)s?\s?(?:to|-|/)\s?cent(?:re|er)s?\b | c\s?(?:to|/|-)\s?c\b",
        "axis to axis | d'axe en axe | entre axes",
        "de centro a centro | entre centros | entre ejes | da asse ad asse | tra gli assi",
        r"(?:von )?mitte\s(?:zu|auf|bis)\smitte | hart op hart | achse zu achse",
        r"between\s(?:(?:their|the|both|two|leg|legs'?)\s){0,3}(?:cent(?:re|er)\s?lines?|axes)\b",
        r"between\s(?:the\s)?(?:tube|pipe|leg)\scent(?:re|er)s\b",
        r"cent(?:re|er)s?\s(?:spread|spacing|distance|dist)\b",
        r"leg[\s-]to[\s-]leg\W{1,3}(?:cent(?:re|er)s?\s?(?:to|-|/)\s?cent(?:re|er)s?|c\s?(?:to|/|-)\s?c)\b",
    )
)
_PITCH = late_pattern(r"\bpitch\b")
_PITCH_AFTER = late_pattern(r"(?![,;])" + UNIT + r"(?:(?:leg|tube|cent(?:re|er)s?)\s)?pitch\b")
_PITCH_BEFORE = late_pattern(
    r"\b(?:pitch|rohrteilung|teilung)(?:\s(?:of|is|at|von|between\s(?:the\s)?legs?))*[\s:=]*$"
)
_NO_PITCH = whole_words(
    "coils? | coiled | helix | helical | spirals? | fins? | threads? | holes? | louvers? | rungs?"
)
"""The pitch of these lies along them, and not across a bend."""
APART_BEFORE = late_pattern(
    r"\b"
    + any_of(
        "distance | spacing | entraxe | interasse | achsabstand | mittenabstand | schenkelabstand",
        "abstand | distanza | distancia | afstand | hartafstand | écartement",
        r"cent(?:re|er)s?\sto\scent(?:re|er)s? | c\sto\sc",
    )
    + r"\b[^;:()]{0,60}[:=]?\s*$"
)
ON_CENTRE = late_pattern(UNIT + r"on\s(?:the\s)?cent(?:re|er)s?\b(?!\W?lines?\b)")
LEGS_AHEAD = late_pattern(r"\b(?:legs|arms|straights)\b(?:\s(?:are|set|at|spaced|to be))*\s$")
RETURNS = late_pattern(
    r"\b(?:return(?:s|\sbends?)?|u[\s-]?bends?|u[\s-]?shaped?|hairpins?|serpentines?|180s?)\b"
)
"""'9" on centre return bend': what is on centres are its legs."""


def is_apart(layout: Layout, figure: Figure, before: str, after: str) -> bool:
    if _APART_AFTER.match(after):
        return True
    pitch = _PITCH_AFTER.match(after)
    if pitch and not after[pitch.end() :].strip(" :=") and layout.after_in_sentence(figure):
        pitch = None  # 'wall .014" / leg pitch 1.00"': the next figure's label
    if pitch or _PITCH_BEFORE.search(before):
        return not layout.says(figure.sentence, _NO_PITCH)
    told = APART_BEFORE.search(before)
    if told is None or begins_tube(layout, figure):
        return False
    earlier = layout.before(figure)
    # '9" centre to centre, tube 1 x .049': the words behind a distance are that one's
    return earlier is None or earlier.role != "centres" or not _APART_AFTER.match(before)


def is_of_legs(layout: Layout, figure: Figure) -> bool:
    """Whether the distance is said to be between the legs of a bend, from centre to centre."""
    sentences = range(max(0, figure.sentence - 1), figure.sentence + 1)
    centres = layout.says(figure.sentence, _CENTRES) or layout.says(figure.sentence, _PITCH)
    return centres and any(layout.says(sentence, _LEGS) for sentence in sentences)
