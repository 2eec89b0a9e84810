"""Parts that we are to roll for the sender: rings, hoops, a canopy. No tooling is named, and we
roll none."""

from __future__ import annotations

from . import words_errand
from .late import Late
from .said_words import said_words

_TOOL = Late(words_errand.TOOL)
_IN = r"(?:[^.?!\n]|\.\d)"
_ROLLED = Late(
    (
        r"\b(?:can|could|would|will|do|are) (?:you|u|ya|y'all)(?: guys| folks| lads)?"
        r"(?: able to| please| possibly| also)? roll (?:me|us|up|some|these|those|our|my|an?|the"
        r"|\d{1,3}|tube|pipe|bar|angle|rings?|hoops?|it|them)\b",
        r"\b(?:need|want|like|quote|price|cost)\b" + _IN + r"{0,40}\b(?:rings?|hoops?|tubes?|pipes?"
        r"|bars?|angles?|sections?|arches|it|them|some)\b" + _IN + r"{0,30}\brolled\b(?! (?:steel"
        r"|tube|edge))",
        r"\b(?:können|könnt|könnten|würden) (?:sie|ihr)\b" + _IN + r"{0,80}\b(?:walzen|einrollen"
        r"|rundwalzen)\b",
        r"\b(?:pouvez|pourriez)[- ]vous (?:nous |me )?(?:rouler|cintrer en cercle)\b",
        r"\b(?:pueden?|podéis|podrían?) (?:rolar|curvar en rodillos)\w*\b",
        r"\b(?:potete|può|potreste) calandrar\w*\b",
        r"\b(?:kunnen jullie|kunt u|kun je)\b" + _IN + r"{0,80}\b(?:walsen|rondwalsen)\b",
    )
)
_ROLL_THEMSELVES = Late(
    (
        r"\b(?:we|i)(?:'re| are)? roll(?:ing)?\b|\b(?:our|my) (?:ring )?roll(?:er|s|ing machine)\b"
        r"|\bwir walzen\b",
    )
)


def rolled_for_us(text: str) -> str:
    """Why we are only asked to roll parts, or ''."""
    asked = _ROLLED.search(text)
    if asked is None or _TOOL.search(text) or _ROLL_THEMSELVES.search(text):
        return ""
    return f'asks for parts to be rolled ("{said_words(asked)}")'
