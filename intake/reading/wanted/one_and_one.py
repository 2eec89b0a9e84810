"""'One mandrel for the 38 and one for the 42': each size is named with a mandrel of its own.

Where the sentence tells what somebody has, it asks for neither. So with 'one mandrel has to run on
a 4 CLR die. The other one runs on a 2-3/4'.
"""

from __future__ import annotations

import re
from collections.abc import Sequence

from ...late_pattern import late_pattern
from ..sizes.groups import Group, own_figures
from ..text.figures import Layout
from ..text.patterns import any_of, whole_words

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
_HAS_TO = any_of(
    "has to | must | needs? to | should | shall | will | would | is to | soll(?:te)? | muss | doit",
    "devra(?:it)? | debe(?:ría)? | tiene que | deve | dovrebbe | moet | zal",
)
_ONE_HAS_TO = late_pattern(
    r"\W*(?:one(?: (?:mandrel|tool|of them))?|eine?r?(?: \w*dorn| davon)?|l'un|un mandrin"
    r"|un[ao]?(?: (?:mandril|mandrino|anima))?|[eé]+n(?: doorn| ervan)?)"
    rf" (?:{_HAS_TO})\b"
)
_THE_OTHER = late_pattern(
    r"\W*(?:(?:and|und|et|y|e|en) )?"
    r"(?:the other|d(?:er|ie|en) andere|l'autre|el otro|l'altr[oa]|de andere)\b"
)
_THERE = whole_words(
    r"was | were | had | already | still | not | don't | doesn't | can wait | war | schon | noch",
    r"nicht | était | déjà | pas | era | ya | no | già | non | al | niet | was al",
)
_TWO = 2


def is_one_and_other(layout: Layout, groups: Sequence[Group]) -> bool:
    """Whether two sizes are told as what the one and the other mandrel have to do: both wanted."""
    own = [own_figures(group) for group in groups]
    if len(own) != _TWO or not all(own):
        return False
    first, second = own[0][-1].sentence, own[1][0].sentence
    one, other = (layout.sentence_text(at).casefold() for at in (first, second))
    return (
        second == first + 1
        and _ONE_HAS_TO.match(one) is not None
        and _THE_OTHER.match(other) is not None
        and not _THERE.search(other)
    )


def asks_for_one_and_one(text: str) -> bool:
    """Whether such words stand in a casefolded text, in a sentence that does not only tell."""
    return any(not _only_tells(text, match) for match in _AND_ONE_FOR.finditer(text))


def _only_tells(text: str, match: re.Match[str]) -> bool:
    begin = max((stop.end() for stop in _STOP.finditer(text, 0, match.start())), default=0)
    words = text[begin : match.start()]
    return _HAS.search(words) is not None and _ASKS.search(words) is None
