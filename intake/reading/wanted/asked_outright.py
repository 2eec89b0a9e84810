"""A size that is asked for in so many words right before it: 'looking for a mandrel for 38 x 2'.

Where a message names no other size, none of its words need be weighed.
"""

from __future__ import annotations

from ...late_pattern import late_pattern
from ..text.patterns import any_of

_FAR = 120
"""Characters before a figure in which the request stands."""
_OUTRIGHT = late_pattern(
    r"\b"
    + any_of(
        "(?:i|we|you|guys|pls|please|to|hi|hey|hello|still)\\s(?:also |just |now |do |would )?"
        "(?:need|want|quote|order|buy|make|supply)",
        "looking for | in need of | i am after | i'm after | we are after | we're after",
        "could use | have a need for | rfq:?",
        "(?:price|pricing|quote|quotation) (?:on|for) | (?:would|'d) like | what would | how much",
        "brauche[n]? | benötige[n]? | suche[n]? | bitte um | anfrage für",
        "cherch(?:e|ons) | besoin d'un | il (?:nous|me) faut | devis pour",
        "necesit(?:o|amos) | busc(?:o|amos) | presupuesto (?:para|de)",
        "cerc(?:o|hiamo) | (?:ci|mi) serve | preventivo per | zoek(?:en)? | nodig",
    )
    + r"(?![\w'])[^.;:?!\n]{0,32}?"
    r"\b(?:mandrels?|dorn|dorne|mandrin|mandrins|mandril|mandriles|mandrin[oi]|doorn)"
    r"(?:\s(?:for|to (?:suit|fit|bend|do)|für|zum biegen von|pour|para|per|voor)\b|\s?:)"
    r"[^.;:?!\n]{0,24}$"
)
_HEADED = late_pattern(
    r"(?:^|\n)\W{0,3}(?:\d{1,2}|one|two|three|four)\W{1,3}(?:(?:pcs?|ea|each|off|x)\.?\s)?"
    r"(?:\w+\s){0,2}mandrels?\s?[-–—:,(]{1,2}\s?$"
)
"""'(1) mandrel - 3.000 OD x .083': a line of an order."""
_OTHERS = late_pattern(
    r"\b(?:not|no|never|n't|if|when|next|last|later|maybe|might|someday|eventually|nicht|kein|wenn"
    r"|später|pas|si|plus tard|cuando|más adelante|quando|più avanti|niet|geen|als|later)\b"
)


def asked_outright(text: str, place: int) -> bool:
    """Whether words right before a place ask for a mandrel for what stands there."""
    before = text[max(0, place - _FAR) : place].casefold()
    if _HEADED.search(before):
        return True
    asked = _OUTRIGHT.search(before)
    return asked is not None and _OTHERS.search(before, max(0, asked.start() - 24)) is None
