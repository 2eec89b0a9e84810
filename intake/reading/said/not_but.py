"""'Radius nicht 200, sondern 250', 'non più di raggio 200 bensì 250': the second is what is meant,
and it is what the first one would have been."""

from __future__ import annotations

from ...late_pattern import late_pattern
from ..naming.cue_fits import fits
from ..naming.cue_sides import cue_right
from ..text.figures import Figure, Layout
from ..text.patterns import any_of
from ..text.roles import RADIUS_ROLES
from .changed_from import spoken_of

_LITTLE = (
    "an?|the|of|den|von|auf|mit|de|di|da|à|a|su|con|op|van|met|un|une|einen?|een"
    "|radius|clr|rayon|radio|raggio|straal|r"
)
_NOT = late_pattern(
    r"\b"
    + any_of(
        "not | no longer | isn't | nicht(?: mehr| länger)? | kein | non(?: è)?(?: più)? | pas",
        "n'est (?:pas|plus) | no es | ya no(?: es)? | no | niet(?: meer| langer)?",
    )
    + rf"(?:\s(?:{_LITTLE})){{0,3}}\s?[:=]?\s?$"
)
_BUT = late_pattern(
    r"^\s?(?:mm|in\b|inch|zoll|\")?\s?,?\s?(?:"
    + any_of("but | sondern | mais | ma | bensì | sino | maar")
    + r"|(?:,|\bund|\bet|\be|\by|\ben|\band)?\s?"
    + any_of("now | it's(?: now)? | jetzt | nun | maintenant | ahora | ora | nu")
    + r")(?:\s(?:rather|now|bien|plutôt|jetzt|nun|ora|ahora|nu|maintenant|it's|ist|es|è|est|is"
    rf"|{_LITTLE})){{0,4}}\s?[:=]?\s?$"
)
_LEAD = 40
_LEAST, _MOST = 3, 10
"""In tenths: how many times one length another of its kind may be."""


def hear_not_but(layout: Layout) -> None:
    """Deny the first figure of such a pair, and give the second what the words ahead name."""
    for old in layout.figures:
        new = layout.after_in_sentence(old)
        if new is None or new.role is not None or new.link in ("times", "slash"):
            continue
        begin = max(layout.sentence_start(old.sentence), old.start - _LEAD)
        if not _BUT.match(layout.words(old.end, new.start)):
            continue
        if not (old.negated or _NOT.search(layout.words(begin, old.start))):
            continue
        _put_right(layout, old, new)


def _put_right(layout: Layout, old: Figure, new: Figure) -> None:
    after = layout.after(new)
    if after is not None and after.link == "times":
        return  # "nicht 40x2, sondern 45x2": a whole tube
    cue, own = spoken_of(layout, old), cue_right(layout, new)
    if cue is None or not fits(new, cue) or not _is_alike(old, new):
        return
    if own is not None and own.distance == 0 and own.cue.role not in (cue.role, *RADIUS_ROLES):
        return
    old.negated = True
    new.link = "apart"
    new.give(cue.role, "cue")


def _is_alike(old: Figure, new: Figure) -> bool:
    low, high = sorted((old.number.value, new.number.value))
    return bool(low) and high * _LEAST <= low * _MOST and old.is_gauge == new.is_gauge
