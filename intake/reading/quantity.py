"""How many mandrels are wanted: never the number of tubes, bends or parts."""

from __future__ import annotations

import re
from dataclasses import dataclass

from .figures import Layout
from .gather import Group
from .text_tables import RowFacts

_WORDS = {
    "one": 1, "single": 1, "solitary": 1, "lone": 1, "two": 2, "pair": 2, "couple": 2, "three": 3, "four": 4,
    "five": 5, "six": 6, "seven": 7, "eight": 8, "nine": 9, "ten": 10, "twelve": 12, "dozen": 12,
    "ein": 1, "eine": 1, "einen": 1, "zwei": 2, "drei": 3, "vier": 4, "fünf": 5,
    "un": 1, "une": 1, "deux": 2, "trois": 3, "quatre": 4, "uno": 1, "una": 1, "dos": 2, "tres": 3,
    "cuatro": 4, "due": 2, "tre": 3, "quattro": 4, "een": 1, "één": 1, "twee": 2, "drie": 3,
    "jeden": 1, "dwa": 2, "um": 1, "dois": 2,
}  # fmt: skip
_N = r"(?P<n>\d{1,3}|" + "|".join(sorted(_WORDS, key=len, reverse=True)) + r")"
_NUMBER_WORD = r"(?P<n>\d{1,3}|one|two|three|four|five|six|seven|eight|nine|ten|twelve|ein|eine|einen|zwei|drei|vier|un|une|deux|trois|uno|una|dos|tres|due|tre|een|twee|drie)"
_MANDREL = r"(?:mandrels?|mandrills?|mandrals?|(?:biege|glieder|kugel)?dorne?n?|mandrins?|mandrin[oi]|mandril(?:es)?|doorn(?:en)?|trzpie[ńn]\w*|tool(?:ing)? sets?|sets?)"

# Strongest first: a labelled quantity, counted pieces, counted mandrels, then ways of saying one.
_PATTERNS: tuple[tuple[int, re.Pattern[str]], ...] = tuple(
    (rank, re.compile(pattern, re.IGNORECASE))
    for rank, pattern in (
        (
            4,
            r"\b(?:qty|quantity|quantities|q'ty|menge|anzahl|stückzahl|quantité|qté|cantidad|cant|quantità|q\.tà|aantal|antal|ilość|quantidade|数量)\b\.?\s*(?:is|of|needed|required|:|=|-|\t|\|)?\s*(?:is\s)?\(?"
            + _NUMBER_WORD
            + r"\b(?!\s?[.,/]\d)",
        ),
        (
            3,
            r"(?<![\d.,/x\"-])(?<!x )\(?"
            + _N
            + r"\)?\s?(?:x\s)?(?:pcs?\b|pieces?\b|pce\b|off\b|no\.?\s(?=of|mandrel|off|required|each)|nos\b|stücke?\b|stk\b|stueck\b|st\.(?!\s?\d)|pi[eè]ces?\b|pz\b|pezz[io]\b|piezas?\b|uds?\b|unidad(?:es)?\b|stuks?\b|szt\b|ks\b|个|個|本|units?\b(?!\s?no))(?P<tail>.{0,30})",
        ),
        (
            3,
            r"(?<![\d.,/x\"-])\(?\b"
            + _N
            + r"\)?\s(?:x\s)?(?:(?!and\b|for\b|of\b|with\b|other\b|more\b|existing\b|old\b|size\b|sizes\b|radi|mm\b|in\b|cm\b|ga\b|clr\b|od\b)[\w\"-]+\s){0,3}?"
            + _MANDREL
            + r"\b",
        ),
        (
            2,
            r"\b(?:just|only|need|want|take|order|have|quote(?: me)?(?: for)?|price(?: for| on)?|for|after|supply|make(?: me)?|send(?: me)?)\s(?:the\s|of\s)?(?P<n>one|1|two|2|three|3|four|4)\b(?!\s?(?:of (?:your|the|our|my)|more|size|thing|day|week|question|way|place|guy|bend|bends|tube|tubes|side|end|line|point|mm|in\b|inch|\"|x\b|/|\.\d|,\d|-\d|month|year|hundred|thousand|shift|machine|job|customer|die\b|has|is\b|was|that|who|which|°|deg))",
        ),
        (
            2,
            r"\b(?P<n>one|1|two|2|three|3|four|4|five|5)\s?(?:only|apiece|each|tool|set|mandril|will do|will suffice|ought to do|should do|ea\b|of each|please|off|required|needed|will do|is enough|is all|to start|for now|total)\b",
        ),
        (
            2,
            r"(?:^|[\s,;(])(?:x|×)\s?(?P<n>\d{1,2})\b(?!\s?(?:mm|in\b|inch|\"|x|\.|,\d|/|wall|ga\b|d\b|od\b))(?=\s*(?:$|[,.;)\n]|please|pls|plug|ball|mandrel))",
        ),
    )
)
_A_MANDREL = re.compile(
    r"\b(?:need|want|require|after|looking for|look for|like(?: to (?:order|buy|get|have))?|quote(?: me)?(?: for| on)?|quotation for|order|buy|price (?:on|for)|supply(?: me| us)?(?: with)?|brauche[n]?|benötige[n]?|suche[n]?|besoin d'|cherche(?:ons)?|necesit\w+|busc\w+|cerc\w+|ci serve|zoek\w*|hebben|nodig)\s?(?:us\s|me\s)?(?:for\s)?(?:a|an|einen|ein|un|une|uno|una|een)\s(?:[\w.\"/-]+\s){0,4}?(?:mandrel|mandrill|dorn|biegedorn|mandrin|mandrino|mandril|doorn)\b",
    re.IGNORECASE,
)
_NOT_WANTED = re.compile(
    r"\b(?:if (?:the|it|this|that|we)|later|next (?:year|month|quarter)|more (?:for|if|later|next|in)|already|we (?:have|own)|last (?:time|year|month)|previous(?:ly)?|ordered|bought|year|jahr|an|month|week|per|batch|series)\b",
    re.IGNORECASE,
)
_COUNTED_ELSE = re.compile(
    r"^\W{0,2}(?:of\s)?(?:[\w.,\"/-]+\s){0,2}(?:tubes?|pipes?|bends?|parts?|hairpins?|frames?|rails?|bogen|bögen|rohre|teile|lengths?|sticks?|legs?|per|a (?:year|month|week|day)|p\.?a|balls?|kugeln)\b",
    re.IGNORECASE,
)
_EACH = re.compile(
    r"\b(?:each|apiece|of each|ea\b|per size|both|je|jeweils|chacun|cada|ciascuno|elk)\b",
    re.IGNORECASE,
)


@dataclass(frozen=True, slots=True)
class Counts:
    """Quantities by request: from its own line, else the one that the whole message states."""

    own: tuple[int | None, ...]
    whole: int | None

    def quantity(self, number: int) -> int | None:
        """Mandrels wanted of one request, or None where it isn't said."""
        own = self.own[number] if number < len(self.own) else None
        return own if own is not None else self.whole


def find_counts(
    layout: Layout, groups: list[Group], rows: dict[tuple[str, int, int], RowFacts]
) -> Counts:
    """The quantities of a message's requests."""
    text = layout.text
    found = _mentions(text)
    own: list[int | None] = []
    starts = [group.anchor.start if group.anchor else -1 for group in groups]
    for number, group in enumerate(groups):
        row = rows.get(group.row) if group.row is not None else None
        if row is not None and row.quantity is not None:
            own.append(row.quantity)
        else:
            own.append(_between(text, found, starts, number) if len(groups) > 1 else None)
    whole = _whole(text, found, len(groups), any(one is not None for one in own))
    return Counts(tuple(own), whole)


def _mentions(text: str) -> list[tuple[int, int, int]]:
    """(place, rank, count) of everything that counts mandrels."""
    found = []
    for rank, pattern in _PATTERNS:
        for match in pattern.finditer(text):
            written = match["n"].casefold()
            count = int(written) if written.isdigit() else _WORDS.get(written, 0)
            tail = match.groupdict().get("tail") or text[match.end() : match.end() + 24]
            if not 0 < count <= 500 or _COUNTED_ELSE.match(tail):
                continue
            if match[0].lstrip(" ,;(")[:1] in "xX×" and re.search(
                r"[\d\"'”″]\s?(?:mm|in)?\s*$", text[: match.start()]
            ):
                continue  # "22 x 15" is a size
            if written in (
                "a",
                "an",
                "un",
                "une",
                "uno",
                "una",
                "ein",
                "eine",
                "einen",
                "een",
                "um",
            ):
                continue
            sentence = text[max(0, match.start() - 60) : match.end() + 20]
            if rank < 4 and _NOT_WANTED.search(
                _same_sentence(sentence, match.start() - max(0, match.start() - 60))
            ):
                continue
            found.append((match.start("n"), rank, count))
    return sorted(set(found))


def _same_sentence(text: str, place: int) -> str:
    begin = max(text.rfind(mark, 0, place) for mark in (". ", "\n", "! ", "? "))
    ends = [end for mark in (". ", "\n", "! ", "? ") if (end := text.find(mark, place)) >= 0]
    return text[begin + 1 : min(ends) if ends else len(text)]


def _between(
    text: str, found: list[tuple[int, int, int]], starts: list[int], number: int
) -> int | None:
    """The count on this request's own stretch of the text, up to the next request."""
    begin = starts[number]
    later = [start for start in starts if start > begin]
    end = min(later) if later else len(text)
    line_end = text.find("\n\n", begin)
    end = min(end, line_end) if line_end >= 0 else end
    own = [item for item in found if begin <= item[0] < end]
    first = not any(item[0] < begin for item in found if item[0] >= starts[0])
    if number == len(starts) - 1 and own and first and _EACH.search(text[own[0][0] : own[0][0] + 30]):
        return None  # "one each" after the last size is for all of them
    line_begin = text.rfind("\n", 0, begin) + 1
    ahead = [item for item in found if line_begin <= item[0] < begin]
    if ahead and (number == 0 or starts[number - 1] < line_begin):
        own = own or ahead
    return max(own, key=lambda item: item[1])[2] if own else None


def _whole(text: str, found: list[tuple[int, int, int]], groups: int, some_own: bool) -> int | None:
    if found:
        best = max(rank for _, rank, _ in found)
        counts = {count for _, rank, count in found if rank == best}
        if groups > 1 and some_own and not _EACH.search(text):
            return None
        if len(counts) == 1:
            return counts.pop()
        if groups == 1:
            return next(count for _, rank, count in found if rank == best)
        return None
    return 1 if groups == 1 and _A_MANDREL.search(text) else None
