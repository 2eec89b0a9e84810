"""'One mandrel for the 38 and one for the 42': each size is named with a mandrel of its own.

Where the sentence tells what somebody has, it asks for neither.
"""

from __future__ import annotations

import re

from ...late_pattern import late_pattern
from ..text.patterns import whole_words

_AND_ONE_FOR = whole_words(
    r"(?:and|plus) (?:one|another) for | und (?:noch )?einen? für | et une? (?:autre )?pour",
    r"y (?:otr[oa]|un[oa]) para | e (?:un'altra|un altro|un[oa]) per",
    r"en (?:nog )?(?:een|één) voor",
)
_STOP = late_pattern(r"[.!?;:](?=\s)|\n\s*\n")
_HAS = whole_words(
    r"have | has | had | got | own(?:s|ed)? | bought | hat | hatte\w* | habe | haben | besitz\w+",
    r"kaufte\w* | avons | a(?= un)| ont | ai | j'ai | possèd\w+ | tenemos | tiene\w? | tengo",
    r"abbiamo | ho | ha | hanno | hebben | heb | heeft",
)
_ASKS = whole_words(
    r"need\w* | want\w* | quot\w+ | pric\w+ | please | pls | order | to (?:have|buy) | like",
    r"brauch\w* | benötig\w* | bitte | hätte\w* | gern\w* | faut | faudrait | besoin | voudr\w+",
    r"necesit\w+ | quer\w+ | serv\w+ | bisogno | vorre\w+ | nodig | graag | cerc\w+ | busc\w+",
    r"cherch\w+ | such\w+ | zoek\w* | can | could | kann\w* | könn\w+ | pouvez | puede\w? | potete",
)


def asks_for_one_and_one(text: str) -> bool:
    """Whether such words stand in a casefolded text, in a sentence that does not only tell."""
    return any(not _only_tells(text, match) for match in _AND_ONE_FOR.finditer(text))


def _only_tells(text: str, match: re.Match[str]) -> bool:
    begin = max((stop.end() for stop in _STOP.finditer(text, 0, match.start())), default=0)
    words = text[begin : match.start()]
    return _HAS.search(words) is not None and _ASKS.search(words) is None
