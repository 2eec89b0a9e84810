"""Nets for lines of a list that seem to be picked, or set aside, in words that were not understood.

'Quote the others', where no line was set aside; 'the second one is being redesigned'. All lines are
doubted then: which are wanted, the reply asks.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from ...late_pattern import late_pattern
from ..picking.place_names import ARTICLE, COUNTED_PLACE, ENDS, NAME, NO_MEASURE, NOUN
from ..picking.place_spoken import CLEFT_BEFORE, CLEFT_BEHIND, plainly_placed
from ..picking.places_there import is_picked_unsurely, labels_of
from ..sizes.groups import Group
from ..text.figures import Layout
from ..text.patterns import any_of, whole_words
from ..wanted.told import ONLY_TOLD
from ..wanted.told_plainly import PLAINLY_TOLD

SOME_ONLY = "the message seems to ask for some of its sizes only"

_OTHERS = any_of(
    r"the (?:others|rest|remaining(?: \w+)?) | (?:the )?other (?:two|three|four|ones|2|3|4)",
    r"die (?:anderen|übrigen|restlichen)(?: zwei| drei| beiden)? | les (?:deux |trois )?autres",
    r"l[oa]s otr[oa]s(?: dos| tres)? | (?:gli|degli|le|delle) altr[ie](?: due| tre)?",
    r"de (?:andere|overige)(?: twee| drie)?",
)
_ASKS = any_of(
    r"quot(?:e|es|ing) | pric(?:e|es|ing) | need | want | offer | mandrels? | just | only | after",
    r"anbieten | angebot\w* | brauch\w+ | dorne? | nur | chiffrer | devis | prix | mandrins?",
    r"cotiz\w+ | precios? | mandril(?:es)? | prezz[oi] | offerta | preventivo | mandrin[oi]",
    r"prij[sz]\w* | offerte | doorn(?:en)? | graag | bitte",
)
_OTHERS_ASKED = (
    late_pattern(rf"\b{_ASKS}\s(?:[^\W\d]+\s){{0,3}}?{_OTHERS}\b"),
    late_pattern(rf"\b{_OTHERS}\s(?:[^\W\d]+\s){{0,2}}?(?:anbieten|quoted|priced|aan)\b"),
)
_TOO = whole_words(
    r"too | also | as well | all | both | each | every | auch | alle | aussi | tou[st]e?s?",
    r"también",
    "tod[oa]s | anche | tutt[ie] | ook | later | follow | second | instead | than",
)
_SET_ASIDE = whole_words(
    r"already (?:ordered|done|made|here|bought|have|got|own)",
    r"(?:being|to be) (?:redesigned|redrawn)",
    r"crossed out | deleted | forget (?:about)? | not now | a maybe | is done(?= ?(?:[.,;!?]|$))",
    r"we own | decide (?:on|about) (?:the|that|it) | no mandrel",
    r"(?:only |just )?for (?:reference|info|information)(?= ?(?:[.,;!?]|$))",
    r"brauchen wir nicht | fällt weg | schon (?:bestellt|da) | n'est plus | pas d'actualité",
    r"laissez",
    r"ya l[oa]s? tenemos | no hace falta | non serve | già (?:ordinat[oa]|fatt[oa]) | hoeft niet",
    r"al besteld",
)
_OTHER_THINGS = whole_words(
    r"dies | (?:the|an?|our|my|bend) die | formers? | wipers? | tooling | tools | clamps?",
    r"werkzeuge? | biegeform\w* | outils?",
    r"matrices? | matriz | utillaje | attrezz\w+ | stamp[oi] | gereedschap | mal | mallen",
    r"catalog\w*",
)
_PLACE = late_pattern(
    rf"(?<![\w.,/-])(?:{ARTICLE}{NOUN}\s?\(?{NAME}{NO_MEASURE}|"
    rf"(?:the|die|das|der|den|le|la|el|il|de|het)\s{COUNTED_PLACE.replace('counted', 'place')})"
    r"|(?:^|,\s)\d{1,2}(?:(?:,|\s(?:and|&|und|et|y|e|en))\s?\d{1,2})*\s(?:we|is|are|i|ist|sind|est|sont)\b",
)
_PLACE_ASKED = late_pattern(
    rf"\b{CLEFT_BEFORE}\s?{ARTICLE}{COUNTED_PLACE},?\s{CLEFT_BEHIND}\b{ENDS}"
    rf"|(?:^|,\s){ARTICLE}{COUNTED_PLACE.replace('counted', 'place')}\s{CLEFT_BEHIND}\b{ENDS}"
)
"""'It's the middle one we're after', of four."""
_LETTERS_THERE = late_pattern(
    r"(?:^|,\s)[a-h](?:(?:,|\s(?:and|&|und|et|y|e|en))\s?[a-h])+,?\s(?:(?:we|i)\s(?:\w+\s)?(?:have|own|got)"
    r"|are (?:here|in stock|covered)|haben wir|sind (?:da|vorhanden)|on les a|hebben we)\b"
)
"""'A and C we have', where the lines bear no such letters that are sure."""
_CLAUSE = late_pattern(r"[.;!?]\s|\n")
_LEAST = 2


def picks_unheard(layout: Layout, groups: Sequence[Group]) -> Iterator[tuple[Group, str]]:
    """All sizes, where words pick some of them that no step has heard."""
    told = any(group.doubtful in (ONLY_TOLD, PLAINLY_TOLD) for group in groups)
    if len(groups) < _LEAST or layout.left_out or layout.owned or told:
        return
    if any(figure.negated or figure.put_off for figure in layout.figures):
        return
    names = labels_of(layout.text)
    sizes = [f.number.value for group in groups for fs in group.slots.values() for f in fs]
    if len(names) == len(groups) and is_picked_unsurely(
        " ".join(layout.text.split()), names, sizes
    ):
        yield from ((group, SOME_ONLY) for group in groups)
        return
    for said in _CLAUSE.split(_own_words(layout, groups)):
        words = plainly_placed(" ".join(said.split()))
        others = any(pattern.search(words) for pattern in _OTHERS_ASKED) and not _TOO.search(words)
        if _OTHER_THINGS.search(words):
            continue
        aside = _SET_ASIDE.search(words) and _PLACE.search(words)
        if others or aside or _LETTERS_THERE.search(words) or _PLACE_ASKED.search(words):
            yield from ((group, SOME_ONLY) for group in groups)
            return


def _own_words(layout: Layout, groups: Sequence[Group]) -> str:
    """The text in small letters, without the lines on which the sizes stand."""
    text = layout.text.lower()
    if len(text) != len(layout.text):
        return ""
    for group in groups:
        for figures in group.slots.values():
            begin = text.rfind("\n", 0, figures[0].start) + 1
            end = text.find("\n", figures[0].end)
            end = end if end >= 0 else len(text)
            text = text[:begin] + " " * (end - begin) + text[end:]
    return text
