"""Several days of delivery for several sizes: each its own, or a doubt on all.

'Pos. 10 by 4 December, pos. 20 by 15 January', 'A ... by the 4th and B ... by the 15th'. A day
goes to the sizes that its own clause holds or names, where all days and sizes come out even.
"""

# ruff: noqa: E501 - lists of words stand on one line

from __future__ import annotations

import re
from collections.abc import Callable, Sequence

from ....rules.request import Doubt, SizeRequest
from ...late_pattern import late_pattern
from ..picking.place_names import ARTICLE, COUNTED, COUNTED_PLACE, NOUN, SPELLED_TWICE
from .for_some import day_is_not_for, without_day_of_others
from .forms import Calendar
from .governing import Governed, governed_days

_WHY = "several days are named: which is for which size?"
_BARE = 2
"""The rank of a day that has no more than a 'by' beside it."""
_LABEL = late_pattern(
    rf"^\W*(?:{NOUN}\s?|(?:job|auftrag|commande|pedido|ordine|opdracht)\s?#?(?=\d{{3,6}}\b))?"
    r"(?P<label>\d{1,6}|[A-Za-z])(?=[).:\s-]|$)(?!\s?(?:mm|in|x|pcs?|off)\b)",
    re.IGNORECASE,
)
_INLINE_LABEL = late_pattern(
    rf"(?:^|[\s,;:(])(?:(?P<letter>[A-H])|(?i:{NOUN})\s?#?(?P<number>\d{{1,3}}))[).:]?\s[^.;,\n\d]{{0,30}}$"
)
"""'Need A 38 x 1.5', '..., line 2: 42 x 1.5': right before the OD."""
_NAMED = late_pattern(rf"\b{NOUN}\s?#?(?P<number>\d{{1,3}}|[A-Ha-h])\b(?![.,]\d)", re.IGNORECASE)
_MORE = late_pattern(
    r"\s?(?:,|and|&|und|et|y|e|en|\+)\s?(?P<number>\d{1,3})\b(?![.,]\d|\s?(?:mm|x|in)\b)"
)
_LETTER = late_pattern(r"(?<![\w'.])(?P<letter>[A-H])(?![\w'.])")
_RANK = late_pattern(rf"\b{ARTICLE}{COUNTED_PLACE}", re.IGNORECASE)
_LONG_LABEL = late_pattern(r"(?<![\w.,/-])\d{3,6}(?![\w/-]|[.,]\d|\s?(?:mm|pcs|pieces)\b)")
"""A job's number, by which it is called without more."""
_REST = late_pattern(
    r"\b(?:all|everything|rest|others?|both|the lot|alles?|restlichen?|übrigen?|anderen?|tout|tous|toutes"
    r"|reste|autres?|todos?|todas?|resto|demás|otr[oa]s?|tutt[oi]|altr[oi]|andere|overige)\b",
    re.IGNORECASE,
)


def with_days_told(
    requests: Sequence[SizeRequest], own_day: Sequence[bool], calendar: Calendar
) -> list[SizeRequest]:
    """The requests with the day that is told of each; ``own_day`` marks those that have one from
    their own row. Evidence and the calendar's text count from the same place."""
    if len(requests) < 2 or all(own_day):
        return [*requests]
    text = calendar.plain
    places = [_place(request) for request in requests]
    names = _names(text, places)
    told = _days_told(calendar)
    surest = max((day.rank for day in told), default=0)
    told = [
        day
        for at, day in enumerate(told)
        if surest <= _BARE
        or day.rank > _BARE
        or _named(text, *_before(calendar, told, at), places, names)
        or _in_one_sentence(calendar, told, at)
    ]
    days = {day.written.days[0] for day in told}
    if len(days) == 1:
        clauses = [text[slice(*clause_of(calendar, told, 0))] for clause_of in (_before, _behind)]
        others = day_is_not_for(
            clauses,
            len(requests),
            lambda words: _labelled(words, names),
        )
        return without_day_of_others(requests, own_day, others)
    if not days:
        return [*requests]
    shares = _shares(told, lambda at: _before(calendar, told, at), text, places, names)
    shares = shares or _shares(told, lambda at: _behind(calendar, told, at), text, places, names)
    return [
        request if mine else _with_day(request, shares[n] if shares else None, told)
        for n, (request, mine) in enumerate(zip(requests, own_day, strict=True))
    ]


def _days_told(calendar: Calendar) -> list[Governed]:
    """The days of delivery, and those beside one that may be: without what was put right."""
    found: list[Governed] = []
    for day in governed_days(calendar):
        past = calendar.sent_on is not None and day.written.days[0] < calendar.sent_on
        beside = bool(found) and day.loose and not day.written.fraction
        if past or day.explains or not (day.rank or beside):
            continue
        if day.corrects:
            found.clear()
        found.append(day)
    return found


def _in_one_sentence(calendar: Calendar, told: Sequence[Governed], at: int) -> bool:
    """Whether a surer day stands in the sentence of a bare one; '130 sets by Xmas' stands alone."""
    own = told[at].written.start
    return any(
        day.rank > _BARE and calendar.words.together(*sorted((day.written.start, own)))
        for day in told
    )


def _with_day(
    request: SizeRequest, share: Governed | None, told: Sequence[Governed]
) -> SizeRequest:
    days = share.written.days if share is not None else tuple(day.written.days[0] for day in told)
    readings = tuple(day.isoformat() for day in dict.fromkeys(days))
    # Whatever casts doubt on the whole size casts it on this day too.
    doubts = tuple(
        doubt.model_copy(update={"readings": readings}) if doubt.field == "needed_by" else doubt
        for doubt in request.doubts
        if doubt.field != "needed_by" or doubt.about == "size"
    )
    if len(readings) > 1 and all(doubt.field != "needed_by" for doubt in doubts):
        why = share.written.why if share is not None else _WHY
        doubts = (*doubts, Doubt(field="needed_by", readings=readings, why=why))
    needed = days[0] if share is not None else request.needed_by or days[0]
    return request.model_copy(update={"needed_by": needed, "doubts": doubts})


def _place(request: SizeRequest) -> tuple[int, int]:
    """Where its OD stands."""
    spans = [(item.start, item.end) for item in request.evidence if item.field == "od"]
    return min(spans, default=(-1, -1))


def _names(text: str, places: Sequence[tuple[int, int]]) -> list[set[str]]:
    """What each size may be called: the label of its line, its OD as written."""
    found: list[set[str]] = []
    for start, end in places:
        line = text[text.rfind("\n", 0, start) + 1 : start] if start >= 0 else ""
        inline, first = _INLINE_LABEL.search(line), _LABEL.match(line)
        label = (inline["letter"] or inline["number"]) if inline else first and first["label"]
        found.append({text[start:end].strip(" \"'")} if start >= 0 else set())
        if label:
            found[-1].add("#" + label.upper())
    if not any(name.startswith("#") for names in found for name in names):
        for number, names in enumerate(found, start=1):
            names.add(f"#{number}")
    return found


def _before(calendar: Calendar, told: Sequence[Governed], at: int) -> tuple[int, int]:
    """The clause that ends with a day."""
    words, start = calendar.words, told[at].written.start
    begin = words.start[words.first[start]]
    if at:
        begin = max(begin, words.end[told[at - 1].written.end - 1])
    line = calendar.plain.rfind("\n", 0, words.start[start]) + 1
    return max(begin, line), words.start[start]


def _behind(calendar: Calendar, told: Sequence[Governed], at: int) -> tuple[int, int]:
    """The clause that a day begins."""
    words, end = calendar.words, told[at].written.end
    stop = words.end[words.behind[end - 1] - 1]
    if at + 1 < len(told):
        stop = min(stop, words.start[told[at + 1].written.start])
    begin = words.end[end - 1]
    line = calendar.plain.find("\n", begin)
    return begin, max(begin, min(stop, line) if line >= 0 else stop)


def _shares(
    told: Sequence[Governed],
    clause_of: Callable[[int], tuple[int, int]],
    text: str,
    places: Sequence[tuple[int, int]],
    names: Sequence[set[str]],
) -> list[Governed] | None:
    """The day of each size, where each has one and each day some size; else None."""
    found: dict[int, Governed] = {}
    rest: Governed | None = None
    for at, day in enumerate(told):
        begin, end = clause_of(at)
        named = _named(text, begin, end, places, names)
        if not named:
            if rest is not None or not _REST.search(text[begin:end]):
                return None
            rest = day
        for number in named:
            if number in found and found[number] is not day:
                return None
            found[number] = day
    shares = [found.get(number, rest) for number in range(len(places))]
    if rest is not None and len(found) == len(places):
        return None
    return [share for share in shares if share is not None] if all(shares) else None


def _named(
    text: str,
    begin: int,
    end: int,
    places: Sequence[tuple[int, int]],
    names: Sequence[set[str]],
) -> set[int]:
    """The sizes that a clause holds, or calls by their place in the list, letter, or OD."""
    held = {number for number, (start, _) in enumerate(places) if begin <= start < end}
    if held:
        return held
    clause = SPELLED_TWICE.sub(" ", text[begin:end])
    called = _labels(clause, names)
    sizes = {number for number, own in enumerate(names) if own & called}
    if sizes or called:
        return sizes
    for found in _RANK.finditer(clause):
        rank = COUNTED.get(found["counted"].casefold(), 0)
        sizes |= {rank - 1} if 0 < rank <= len(names) else set()
    by_od = {
        number
        for number, own in enumerate(names)
        if any(
            re.search(rf"(?<![\w.,/]){re.escape(name)}(?![\w/]|[.,]\d)", clause)
            for name in own
            if not name.startswith("#") and name
        )
    }
    return sizes or by_od


def _labelled(words: str, names: Sequence[set[str]]) -> set[int]:
    """The sizes that some words call by their label in the list."""
    called = _labels(SPELLED_TWICE.sub(" ", words), names)
    return {number for number, own in enumerate(names) if own & called}


def _labels(clause: str, names: Sequence[set[str]]) -> set[str]:
    """What a clause names as the labels of a list are named: 'lines 1 and 2', 'B', '8834'."""
    called: set[str] = set()
    for found in _NAMED.finditer(clause):
        called.add("#" + found["number"].upper())
        at = found.end()
        while (more := _MORE.match(clause, at)) is not None:
            called.add("#" + more["number"])
            at = more.end()
    labels = {name for several in names for name in several if name.startswith("#")}
    if any(re.fullmatch(r"#[A-H]", name) for name in labels):
        called |= {"#" + found["letter"] for found in _LETTER.finditer(clause)}
    return called | {f"#{found[0]}" for found in _LONG_LABEL.finditer(clause)} & labels
