"""Counts of mandrels beside which the sender guesses: 'just one I think he wants', 'maybe 2'; or
between two of which nothing is settled: 'need 1 maybe 2'.

And a count on a line of its own behind the bare word: 'mandrel 1' at the end of a list of labels.
"""

# ruff: noqa: E501 - lists of words stand on one line

from __future__ import annotations

import re
from collections.abc import Sequence

from ....rules.request import Doubt, SizeRequest
from ...late_pattern import late_pattern
from ..text.patterns import any_of
from . import words as w

_WHY = "the message is not sure how many"
_MOST = 12
_NEAR = 24
_FEW_ENOUGH = 4
"""A "mandrel 10" may be one of 10 mm."""
_SHY = frozenset("et en um uma fem another otro otra altro".split())
_WORDS = sorted((n for n, c in w.COUNTS.items() if c <= _MOST and n not in _SHY), key=len)[::-1]
_N = rf"(?P<count>\d{{1,2}}(?![\d.,/]*\d)|(?:{'|'.join(_WORDS)})(?!\w))"
_TOOLS = any_of(
    "mandrels? | mandrills? | dorne? | biegedorne? | mandrins? | mandril(?:es)? | mandrin[oi]",
    "anim[ae] | doorn(?:en)?",
)
_PIECE = (
    rf"(?:\s?(?:{_TOOLS}|"
    + any_of(
        "pcs? | pieces? | off | ea | each | of (?:them|those|these|each) | stück | stk | st\\.",
        "pièces? | pces? | piezas? | uds? | unidades | pezz[io] | pz | stuks?",
    )
    + r")(?![^\W_]))"
)
_NO_SIZE = r"""(?!\s?(?:["”″'x×*]|mm\b|in\b|inch|ga\b|gauge|zoll|weeks?|days?|wochen|tage))"""
_PERSON = any_of(
    r"(?:he|she|they|we|you|i)(?:'ll|'d)? | er | sie | wir | il | elle | ils | nous | on | lui | hij",
    r"(?:the |my |our )?(?:boss|gaffer|guv\w*|foreman|customer|client|chief|manager|lads?|guys?|dad)",
    r"ze | der (?:chef|meister|kunde) | le patron | el jefe | il capo | de baas",
)
_WISH = any_of(
    "wants? | wanted | needs? | needed | said | says | meant | asked for | was after | is after",
    "will (?:want|need|do|take) | would do | 'll do | ll do | will | braucht | brauchen | will haben",
    "möchte | hat gesagt | meinte | wollte | veut | voulait | faut | a dit | quiere | necesita",
    "dijo | vuole | serve | servono | ha detto | wil | wilde | zei | nodig heeft",
)
_GUESS = any_of(
    "i (?:\\w+ )?think | i (?:\\w+ )?believe | i(?:'d)? guess | i (?:suppose|reckon|assume|imagine)",
    "we think | we believe | probably | maybe | perhaps | possibly | presumably | not sure(?: but)?",
    "i would guess | guessing | most likely | might be | could be | looks like | if i remember(?: right)?",
    "(?:ich )?(?:glaube?|denke?|vermute?|schätze?)(?: ich)? | wahrscheinlich | vermutlich | vielleicht",
    "wohl | je (?:crois|pense|suppose)(?: qu['e]\\w*)? | probablement | peut-être | sans doute",
    "(?:yo )?(?:creo|supongo|pienso)(?: que)? | probablemente | quizás? | tal vez | a lo mejor",
    "(?:credo|penso|suppongo)(?: che| di)? | probabilmente | forse | (?:ik )?(?:denk|geloof|vermoed)(?: ik)?",
    "waarschijnlijk | misschien",
)
_FEW = (
    r"(?:(?:that|just|only|it|it's|its|is|for|get|about|around|nur|bloß|dass|que|qu'|ci|ne|en|solo|alleen"
    r"|maar|the|an?|want|need|of|out|be|to)\s){0,3}"
)
_AHEAD = late_pattern(
    rf"\b{_GUESS}\s(?:{_PERSON}\s)?(?:{_WISH}\s)?{_FEW}{_N}{_NO_SIZE}"
    rf"(?:{_PIECE}|\s?(?:{_WISH})|\s?(?=[.,;!?)\n]|$)|\s(?:please|bitte|svp|graag)\b)"
)
_BEHIND = late_pattern(
    rf"(?<![\w.,/x×]){_N}{_NO_SIZE}{_PIECE}?(?:\s(?:will|should|would|does|please|for us|for now))?"
    rf"[,(\s-]{{1,3}}{_GUESS}(?:\s(?:that\s)?{_PERSON}\s{_WISH}|\s?(?=[.,;!?)\n]|$))"
)
_MAYBE = any_of(
    "maybe | perhaps | possibly | poss | probably | might be | could be | vielleicht | eventuell",
    "evtl\\.? | ggf\\.? | womöglich | möglicherweise | peut-être | éventuellement | quizás?",
    "tal vez | a lo mejor | posiblemente | forse | magari | eventualmente | misschien | eventueel",
)
_WANTS = any_of(
    r"(?:need|needs|want|wants|take|get|order|buy|qty|quantity)(?: (?:is|just|only|about|of|for))?"
    r"[:\s]",
    r"(?:brauche?n?|bräuchten?|nehmen?|bestellen?|benötigen?)(?: (?:wir|ich|davon|nur|ca\.?))*\s",
    r"(?:faut|faudrait|prends|prendrons|voudrais|besoin d[e'])\s? | (?:necesit|querr?)\w+\s",
    r"(?:hacen? falta|serv(?:e|ono)|serviranno|vorrei|vorremmo|prendo|prendiamo)\s",
    r"(?:er|hebben|wil|willen|bestel\w*|graag)\s",
    r"(?:^|[.!?\n]\s?)",
)
_MORE = rf"(?:{'|'.join(_WORDS)}|\d{{1,2}}(?![\d.,/]*\d))(?!\w)"
_ONE_OR_MORE = late_pattern(
    rf"(?:{_WANTS})(?P<count>\d{{1,2}}(?![\d.,/]*\d)|(?:{'|'.join(_WORDS)}|einen|un|uno|een|één)"
    rf"(?!\w)){_NO_SIZE}{_PIECE}?(?:\s(?:nodig|davon|of them|please|bitte))?"
    rf"(?:[,(\s]{{1,3}}(?:(?:or|and|oder|und|ou|et|o|y|e|of|en)\s)?{_MAYBE}\s(?:even |auch )?"
    # "Do I need one or two?" asks us, and guesses nothing.
    rf"|\s(?:or|oder|ou|o|of)\s(?!{_MORE}{_PIECE}?\s?\?))(?P<more>{_MORE}){_NO_SIZE}{_PIECE}?(?=\s?(?:[.,;!?)\n]|$))"
)
"""The first is stated, and both are readings."""
_PRONOUN = late_pattern(
    r"\b(?:the|this|that|which|another|other|first|last|next|an?|odd|strange|unusual|weird|funny|daft"
    r"|silly|cheeky|stupid|easy|simple|quick|short|long|small|little|big|tricky|hard|difficult"
    r"|awkward|tough|good|bad|new|old|different|interesting|wrong|right)\s$"
)
"""'Odd one perhaps': it counts nothing."""
_LINE = late_pattern(rf"(?:^|\n)[ \t]*(?:[-*•]\s)?{_TOOLS}[ \t]+(?P<count>\d{{1,2}})[ \t]*(?=\n|$)")


def with_counts_guessed(requests: Sequence[SizeRequest], text: str) -> list[SizeRequest]:
    """The requests with a doubt on each count that the sender only guesses, and with the count of
    the one size where that stands on a line of its own. ``text`` is the sender's own."""
    words = text.casefold().replace("’", "'")
    if len(requests) == 1 and requests[0].quantity is None:
        requests = [requests[0].model_copy(update={"quantity": _on_a_line(words)})]
    requests = _with_one_or_more(requests, words)
    guessed = {
        _value(found["count"])
        for pattern in (_AHEAD, _BEHIND)
        for found in pattern.finditer(words)
        if found["count"] != "one" or not _PRONOUN.search(words[: found.start("count")][-_NEAR:])
    }
    return [_doubted(request) if request.quantity in guessed else request for request in requests]


def _with_one_or_more(requests: Sequence[SizeRequest], words: str) -> Sequence[SizeRequest]:
    """'Need 1 maybe 2' goes for every size that is asked for so many times, or whose count was not
    read."""
    said = {(_several(f["count"], 1), _several(f["more"], 0)) for f in _ONE_OR_MORE.finditer(words)}
    if len(said) != 1:
        return requests
    (least, most) = said.pop()
    if not least < most:
        return requests
    doubt = Doubt(field="quantity", readings=(str(least), str(most)), why=_WHY)
    return [
        request.model_copy(update={"quantity": least, "doubts": (*request.doubts, doubt)})
        if request.quantity in (None, least, most) and not request.doubt_on("quantity")
        else request
        for request in requests
    ]


def _several(count: str, article: int) -> int:
    """As ``_value``, where an article may stand: 'einen, vielleicht zwei'."""
    return int(count) if count.isdecimal() else w.COUNTS.get(count, article)


def _value(count: str) -> int:
    return int(count) if count.isdecimal() else w.COUNTS[count]


def _on_a_line(words: str) -> int | None:
    """'mandrel 1': of several such lines each may be the name of one; so may a '2' above all."""
    found = list(_LINE.finditer(words))
    if len(found) != 1:
        return None
    count = int(found[0]["count"])
    named = re.search(r"\d", words[: found[0].start()]) is not None
    return count if count == 1 or (named and 1 < count <= _FEW_ENOUGH) else None


def _doubted(request: SizeRequest) -> SizeRequest:
    if request.doubt_on("quantity"):
        return request
    doubt = Doubt(field="quantity", readings=(str(request.quantity),), why=_WHY)
    return request.model_copy(update={"doubts": (*request.doubts, doubt)})
