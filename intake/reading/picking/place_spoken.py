"""Places of a list as people speak of them: 'the one in the middle', 'it's the last one we're
after', 'c'est celui du milieu qu'il nous faut'.
"""

from __future__ import annotations

import re

from ...late_pattern import late_pattern
from ..text.patterns import any_of

_IN_THE_MIDDLE = late_pattern(
    r"\b(?:"
    r"(?P<en>the (?:one|line|row|size|tube|item) in the middle|the (?:centre|center) one)"
    r"|(?P<de>(?:den|der|das|die)(?:jenigen?)? (?:\w+ )?in der mitte)"
    r"|(?P<fr>cel(?:ui|le) du milieu|cel(?:ui|le) au milieu)"
    r"|(?P<es>(?:el|la) (?:del|de(?:l)? en) medio|(?:el|la) que está en (?:el )?medio)"
    r"|(?P<it>quell[oa] (?:centrale|in mezzo|di mezzo|nel mezzo))"
    r"|(?P<nl>(?:degene|de buis|die|deze) in het midden)"
    r")(?!\w)",
    re.IGNORECASE,
)
_PLAIN = {
    "en": "the middle one",
    "de": "den mittleren",
    "fr": "le milieu",
    "es": "el medio",
    "it": "il centrale",
    "nl": "de middelste",
}

CLEFT_BEFORE = any_of(
    r"(?:it's|its|it is|that's|that is|'tis) (?:only |just )?",
    r"es geht (?:uns |mir |nur |hier ){0,2}um (?:nur )? | (?:c'est|ce serait) (?:seulement )?",
    r"(?:es|sería) (?:sólo |solo )? | è (?:solo )? | het gaat (?:ons |mij |alleen ){0,2}om",
)
"""'It's the middle one', before the words that say what of it."""
CLEFT_BEHIND = any_of(
    r"(?:that |which )?(?:we|i)(?:'re|'m| are| am)? (?:really |actually )?"
    r"(?:after|need|want|looking for|interested in|asking (?:about|for)|require)",
    r"(?:brauchen|bräuchten|benötigen|suchen|möchten) wir | "
    r"(?:brauche|bräuchte|benötige|suche) ich",
    r"(?:qu'il (?:nous|me) faut|que (?:nous voulons|je veux|nous cherchons|je cherche)"
    r"|qui (?:nous|m')\s?intéresse|dont (?:nous avons|j'ai) besoin)",
    r"(?:(?:el|la) )?que (?:necesit\w+|quer\w+|quiero|(?:nos|me) interesa|buscamos|nos hace falta)",
    r"(?:quell[oa] )?che (?:ci|mi) (?:serve|interessa|occorre) | che (?:vogliamo|cerchiamo)",
    r"(?:hebben we|heb ik) nodig | (?:die )?(?:we|wij|ik) (?:nodig hebben|nodig heb|zoeken|willen)",
)
"""What makes it the one that is asked for."""


def plainly_placed(words: str) -> str:
    """'The one in the middle' as 'the middle one'; the words else as they are."""
    return _IN_THE_MIDDLE.sub(lambda m: _PLAIN[m.lastgroup or "en"], words)
