"""Sizes of another tool than a mandrel: 'also a wiper for 1.75 x .065', 'pressure die for 1.5 x
.065, no mandrel', 'the balls are worn, I need two new ones'. All of them are doubted."""

# ruff: noqa: E501 - lists of words stand on one line

from __future__ import annotations

import re
from bisect import bisect_right
from collections.abc import Sequence

from ....rules.request import SizeRequest
from ...late_pattern import late_pattern
from ..requests import wholly_doubted
from ..text.patterns import any_of
from ..text.small_letters import small_letters

OTHER_TOOL = "its words ask for another tool: is a mandrel wanted, too?"
_MANDREL = late_pattern(
    r"(?:\b(?:mandrel|mandrill|mandrin|mandril|plug|anim[ae])|dorn|doorn|\b(?:sets?|tooling|package|kit|both|each)\b)"
)
_TOOL = any_of(
    "wipers?(?: dies?| inserts?)? | pressure dies? | clamp dies? | bend dies? | die sets? | dies?",
    "followers?(?: bars?)? | clamps? | collets? | formers? | radius blocks? | shoes? | boosters?",
    "faltenglätter | gleitschienen? | spannbacken? | biegerollen? | biegeformen? | spannzangen?",
    "lisseurs? | réglettes? | mors | formes? | arrugador(?:es)? | mordazas? | matri(?:z|ces)",
    "raschiatori? | tirapieghe | ganasce | matric[ei] | gladstrijkers? | klembekken",
)
_FOR = any_of(
    r"for | to (?:suit|fit|match) | in | für | passend (?:zu|für) | pour | para | per | voor"
)
_TOOL_FOR = late_pattern(
    rf"\b{_TOOL}\s{_FOR}\s(?:(?:the|a|an|our|my|this|some|das|den|ein|le|la|un|el|il|de|het|tube|rohr|tubo)\s)*"
    r"[ø\"'(]?\s?$"
)
_TOOL_FIRST = late_pattern(rf"^\W{{0,3}}(?:\d{{1,4}}\s)?{_TOOL}, (?:[a-z ]{{1,20}}, )?$")
"""'003  WIPER DIE, 1.250 OD X 2.500 CLR', as lists of parts have it."""
_ASKS = late_pattern(
    r"\b"
    + any_of(
        r"need\w* | want\w* | quot\w+ | pric\w+ | also | and | plus | order\w* | buy | looking for | after",
        r"brauch\w* | benötig\w* | auch | und | sowie | aussi | et | faut | besoin | también | necesit\w+ | y",
        "anche | serve | servono | ook | en | nodig",
    )
    + r"\b"
)
_NOT_A_MANDREL = late_pattern(
    r"(?:^|[.;,!?(\n-]\s?|\bbut )"
    r"(?:no mandrels?|not a mandrel|without (?:a |the )?mandrel|kein(?:en)? dorn|pas de mandrin|sin mandril"
    r"|niente mandrino|geen doorn)(?:\s(?:needed|required|wanted|please|this time|nötig|nodig))?\s?(?=[.;,!?)\n]|$)"
)
_NEW_BALLS = late_pattern(
    r"\b(?:need|want|buy|order|get|quote|price|replace|send|sell)\w*\s(?:[^\W\d]+\s|\d{1,2}\s){0,4}?"
    r"(?:(?:new|replacement|spare|more|extra|just)\s)+(?:[^\W\d]+\s)?balls\b"
    r"|\bballs?\s(?:are|is|got|have|were|all)\s(?:\w+\s)?(?:worn|broken|broke|cracked|shot|gone|bad|damaged)"
    r"|\bneue\skugeln\b|\bkugeln\s(?:sind|ist)\s(?:\w+\s)?(?:verschlissen|kaputt|abgenutzt)"
    r"|\bnouvelles?\s(?:billes|rotules)\b|\bbolas\snuevas\b|\bsfere\snuove\b|\bnieuwe\skogels\b"
)
_NEW_MANDREL = late_pattern(
    r"\b(?:new|replacement|another|complete|whole|second|entire|neue[rn]?|nouveau|nuevo|nuovo|nieuwe)\s(?:\w+\s){0,2}?(?:mandrel|mandrin|mandril|mandrino|doorn|\w*dorn)"
    r"|\bmandrel\s(?:with|w/)\s"
)
_BOUND = re.compile(r"[.;!?](?=\s)|\n")


def with_other_tools_doubted(requests: Sequence[SizeRequest], text: str) -> list[SizeRequest]:
    """The requests with those doubted that the words ask another tool for. ``text`` is the
    sender's own; the places of the evidence are places in it."""
    words = small_letters(text)
    none_wanted = _NOT_A_MANDREL.search(words) is not None
    balls = _NEW_BALLS.search(words) is not None and _NEW_MANDREL.search(words) is None
    ends = sorted(e.end for r in requests for e in r.evidence if not e.attachment)
    found: list[SizeRequest] = []
    for request in requests:
        begin, end = _place(request)
        begged = balls and request.quantity is None  # "mandrel 1 pc + price for spare balls"
        doubted = begged or (
            end > 0 and _is_for_tool(requests, words, begin, ends, none=none_wanted)
        )
        found.append(wholly_doubted(request, OTHER_TOOL) if doubted else request)
    return found


def _place(request: SizeRequest) -> tuple[int, int]:
    spans = [(e.start, e.end) for e in request.evidence if e.field == "od" and not e.attachment]
    return min(spans, default=(0, 0))


def _is_for_tool(
    requests: Sequence[SizeRequest], words: str, place: int, ends: Sequence[int], *, none: bool
) -> bool:
    """Whether the words before a size, since the one before or the sentence's beginning, ask for
    another tool and name no mandrel. ``ends``: where the words of sizes end, in order."""
    begin = max((m.end() for m in _BOUND.finditer(words, max(0, place - 160), place)), default=0)
    behind = bisect_right(ends, place)
    begin = max(begin, ends[behind - 1] if behind else 0)
    said = " ".join(words[begin:place].split()) + " "
    if _TOOL_FIRST.match(said):
        return True
    if _TOOL_FOR.search(said) is None or _MANDREL.search(said):
        return False
    end = min((m.start() for m in _BOUND.finditer(words, place)), default=len(words))
    if none:
        return True
    if len(requests) == 1 and _MANDREL.search(words):
        return False  # "a wiper for 1.5 x .065. Also a mandrel for it"
    return _ASKS.search(said) is not None and not _MANDREL.search(words[place:end])
