"""Tooling that is there and may be wanted all the same: worn, or asked for once more; and tube that
is owned, which is no tool.
"""

from __future__ import annotations

import re
from collections.abc import Sequence

from ..text.figures import Figure, Layout
from ..text.patterns import whole_words
from .told_words import NO

_WORN = whole_words(
    r"worn(?: out)? | brok\w+ | snapped | cracked | damaged | galled | seized | chatters? | shot",
    r"(?:is|it's|got) bent",
    r"verschlissen | abgenutzt | kaputt | gebrochen | usée? | cassée? | gastado | roto | consumato",
    "rotto | versleten | kapot | gebroken",
)
_ANEW = whole_words(
    r"a new one | new ones? | another(?: one)? | spares? | cop(?:y|ies) of | duplicates?",
    r"replac\w+ | a second(?: one)?",
    "(?:quote|price|make|do|order|need|want|supply) (?:me |us )?(?:for )?(?:both|them|these"
    "|those|it|all"
    " of them|the lot|the two|either) again | (?:the )?same again | both again | re-?quote"
    " | noch ?(?:ein)?mal (?:anbieten|bestellen|machen) | beide (?:noch ?(?:ein)?mal|nochmals"
    "|wieder)",
    "lo mismo | otra vez | (?:dos|tres) más | dasselbe | nochmals? | la même chose | lo stesso",
    "hetzelfde | les deux (?:à nouveau|encore une fois) | los dos otra vez | entrambi di nuovo"
    " | allebei (?:opnieuw|nog een keer)",
    r"einen neuen",
    "noch einen | un nouveau | un autre | uno nuevo | otro | uno nuovo | un altro | een nieuwe",
)
_TUBE = whole_words("tube | tubing | pipe | rohr(?:e)? | tubo | tubos | tubi | buis | lengths")
_ANY_TOOL = whole_words(
    "dorne? | mandrin | mandrino | mandril | doorn",
    "tooling | tools? | werkzeuge? | outillage | utillaje | attrezzatura | gereedschap",
    r"mandrels? | \w+dorn | ball | plug | ones? | dies? | covered | sorted | version | set",
    r"einen?",
    "une? | uno | una",
)


def is_wanted_anew(
    text: str, owned: re.Match[str], figures: Sequence[Figure], layout: Layout
) -> bool:
    """'I have one for 1.5 x .083, but it is worn', '... would like a new one': what is there may be
    wanted all the same. And 'we have already 1.5 x .065 tube' owns no tool."""
    following = figures[-1].sentence + 1
    behind = "" if layout.in_sentence(following) else layout.sentence_text(following)
    if _WORN.search(text, owned.end()) or _ANEW.search(behind):
        return True
    anew = next(
        (m for m in _ANEW.finditer(text, owned.end()) if not NO.search(text, 0, m.start())), None
    )
    last = figures[-1].end - layout.sentence_start(figures[-1].sentence)
    if anew is not None and anew.start() > last:
        return True
    return _TUBE.search(text, owned.end()) is not None and not _ANY_TOOL.search(text)
