"""Counts that no size took to itself: at the end of each line of a list ('R 90 (2)', '... = 2'),
by the ODs that they are for ('2 pcs for 30 and 1 pc for 32'), 'mandrel for each please'.

Only where every size gets one. Those by OD hold also where another count was read ('Mandrels: 1
for the 32 and 3 for the 30'), the others only where none was.
"""

from __future__ import annotations

import re
from collections.abc import Sequence

from ....rules.request import SizeRequest
from ...late_pattern import late_pattern
from ..picking.place_names import COUNTED, places
from ..text.patterns import any_of
from . import words as w
from .spares import names_spares

_MOST = 12
_SHY = frozenset("et en um uma fem another otro otra altro sept sei tre sex due".split())
_WORDS = "|".join(sorted((n for n in w.COUNTS if n not in _SHY), key=len, reverse=True))
_ARTICLES = "a|an|eine?n?|un|une|una|uno|één|een|due|tre|sei"
"""Beside a size that they are for, articles and everyday words count."""
_MANDREL = any_of(
    r"mandrels? | (?:biege)?dorne? | mandrins? | mandrin[oi] | mandril(?:es)? | anim[ae]",
    r"(?:buig)?doorn(?:en)?",
)
_EACH = any_of(
    "(?:for|of) each(?: (?:one|of (?:them|these|those)|tube|size|pipe|radius))? | each",
    "for (?:both|all)(?: (?:of (?:them|these|those)|sizes|tubes))? | for every (?:one|size|tube)",
    "für jede[nrs]?(?: (?:rohr|größe|radius|davon))? | für beide(?: rohre| größen)?",
    "pour chacun[es]*(?: d'eux)? | pour chaque (?:tube|rayon|taille) | pour les deux",
    "para cada (?:uno|una|tubo|radio|medida) | para los dos | para ambos",
    "per (?:ciascun[oa]|ognuno|ogni (?:tubo|raggio|misura)|entramb[ie])",
    "voor (?:elke? (?:buis|maat|straal)|ieder|elk|allebei|beide)",
)
_FOR_EACH = late_pattern(
    rf"(?:^|[.!?,;:\n]\s?|\b(?:need|want|quote|price|offer|please|bitte|graag|and|und|et|y|e|en)\s)"
    rf"(?:(?:need|want|quote|price|please|pls|bitte|just|also|so|graag)\s){{0,3}}"
    rf"(?:new\s)?{_MANDREL}\s{_EACH}(?=\s*(?:[.,;!)\n]|$|please|pls|plz|bitte|svp|por favor|graag"
    r"|thanks))",
    re.IGNORECASE,
)
"""'Mandrel for each please': no number and no article before it, and nobody asks whether."""
_PIECES = rf"(?:pcs?\.?|pieces?|off|nos?\.?|ea|stück|stk\.?|{_MANDREL})"
_FORMER = {"former": "first", "latter": "second"}
_COUNT_OF_PLACE = late_pattern(
    rf"(?<![\w.,/x×-])(?P<count>\d{{1,2}}|{_WORDS})\s(?:{_PIECES}\s)?(?:of|for|on|vom|von|für|du|de|pour"
    r"|del|della|para|per|van|voor)\s(?:(?:the|der|den|dem|das|die|le|la|les|el|los|il|lo|de|het)\s)?"
    rf"(?P<place>{'|'.join(sorted(COUNTED, key=len, reverse=True))}|{'|'.join(_FORMER)})\b"
    r"(?!\s(?:order|batch|lot|week|month|year|run|bend|quote|bestellung|woche))",
    re.IGNORECASE,
)
"""'Two of the first, one of the second.'"""
_COUNT_FOR = late_pattern(
    rf"(?<![\w.,/x×-])(?P<count>\d{{1,2}}|{_WORDS}|{_ARTICLES})\s"
    rf"(?:{_PIECES}\s)?"
    r"(?:(?:for|fürs?|pour|para|per|voor)\s"
    r"(?:(?:the|das|den|le|la|les|el|los|il|de|het|our|dem)\s)?(?:(?:de|da)\s)?"
    r"|(?:of|on|in|vom|von|de|del|della|van)\s(?:the|das|den|dem|le|la|el|il|de|het)\s)"
    r"(?:(?:tube|pipe|rohr|tubo|buis|size)\s)?[Øø]?\s?(?P<size>[\d.][\d.,/ -]{0,8}\d|\d)"
    r"(?![\d.,/]*\d|\s?(?:weeks?|days?|months?|machines?|parts?|bends?|pcs|tubes?\b(?!\s?$)))",
    re.IGNORECASE,
)
_OF_THE_OTHERS = late_pattern(
    rf"(?<![\w.,/x×-])(?P<count>\d{{1,2}}|{_WORDS}|{_ARTICLES})\s"
    rf"(?:{_PIECES}\s)?(?:each\s)?"
    r"(?:of|for|in|on|vom|von|für|du|de|pour|del|della|para|per|van|voor)\s"
    r"(?:each\sof\s|jede[nrms]?\s)?(?:all\s)?(?:the|der|den|die|les|los|las|gli|le|de)\s"
    r"(?:others?|rest|remaining|other\s\w+|anderen|übrigen|autres|demás|otr[oa]s|altr[ie]|andere|overige)"
    r"\b|\b(?:one|einen?|uno?|een)\seach\s(?:of|for|in|on)\s(?:the\s)?(?:others?|rest)\b",
    re.IGNORECASE,
)
"""'Two of the 1.5, one each of the others.'"""
_TAIL = late_pattern(
    r"^[^\w\n]{0,3}(?:(?:mm|clr|cl|inch|in)\.?)?\s{0,3}"
    r"(?P<mark>\((?P<a>\d{1,2})\)|=\s?(?P<b>\d{1,2})|[x×]\s?(?P<c>\d{1,2})"
    r"|[–-]\s(?P<e>\d{1,2})|(?:\s{2,}|\t\s*|\s[|]\s?)(?P<d>\d{1,2}))\s?[.,;|]?$",
    re.IGNORECASE,
)
"""What is left of a line behind its size: '(2)', '= 2', 'x2', or a bare number in a column."""
_COUNTS_OTHERS = late_pattern(
    r"\b(?:bends?|bögen|parts? per|pieces? per|angles?|degrees?|lengths?|sticks?|joints?"
    r"|tubes? (?:each|"
    r"per)|coudes|cintrages?|cintres?|curvas|curve|bochten|qty of (?:tubes?|parts?|bends?)|balls?"
    r"|kugeln|billes|rotules|bolas|sfere|kogels)\b",
    re.IGNORECASE,
)
"""With one of these beside a list, a bare number at a line's end may count something else."""
_OF_RADIUS = late_pattern(
    r"\b(?:clr|radi(?:us|i|en)|rad|r|cent(?:er|re)[- ]?line|rayons?|radios?|raggi?o?|straal)"
    r"\s?(?:of|is|are|[:=])?\s?\Z",
    re.IGNORECASE,
)
_BACK = 24
"""Characters before a count in which a word says that it is a radius."""
_A_MANDREL = late_pattern(rf"\b{_MANDREL}\b", re.IGNORECASE)


def with_counts_left(requests: Sequence[SizeRequest], text: str) -> list[SizeRequest]:
    """The requests with the counts that such words give; as they are where one is in doubt.

    ``text`` is the sender's own; what the requests rest on stands in it.
    """
    if len(requests) < 2 or not _A_MANDREL.search(text):
        return list(requests)
    if any(one.doubt_on("quantity") for one in requests):
        return list(requests)
    counts = _by_size(requests, text) or _by_place(requests, text)
    if not counts and any(one.quantity is not None for one in requests):
        return list(requests)
    counts = counts or _at_line_ends(requests, text)
    if not counts and _FOR_EACH.search(" ".join(text.split())):
        counts = [1] * len(requests)
    if not counts:
        return list(requests)
    return [
        one.model_copy(update={"quantity": count})
        for one, count in zip(requests, counts, strict=True)
    ]


def _by_size(requests: Sequence[SizeRequest], text: str) -> list[int]:
    """'2 pcs for 30 and 1 pc for 32': every OD as it was written, once each."""
    written = [_od_written(one, text) for one in requests]
    if "" in written or len(set(written)) < len(written) or names_spares(text):
        return []
    found: dict[str, int] = {}
    spaced = " ".join(text.split())
    for match in _COUNT_FOR.finditer(spaced):
        if _OF_RADIUS.search(spaced, max(0, match.start() - _BACK), match.start()):
            return []  # "CLR 9 on the 3 in, 6 on the 2"
        size, count = _plain(match["size"]), _value(match["count"])
        if size not in written or size in found or not 0 < count <= _MOST:
            return []
        found[size] = count
    rest = _OF_THE_OTHERS.search(" ".join(text.split())) if found else None
    if rest is not None:
        found = dict.fromkeys(written, _value(rest["count"] or "one")) | found
    counts = [found[size] for size in written] if len(found) == len(written) else []
    return [] if _number_lines(counts, text) else counts


def _by_place(requests: Sequence[SizeRequest], text: str) -> list[int]:
    """'Two of the first and three of the second': every size once, in the order they are named."""
    names = [str(number) for number in range(len(requests))]
    found: dict[int, int] = {}
    for match in _COUNT_OF_PLACE.finditer(" ".join(text.split())):
        named = places(None, _FORMER.get(match["place"].casefold(), match["place"]), names)
        count = _value(match["count"])
        if len(named) != 1 or named[0] in found or not 0 < count <= _MOST:
            return []
        found[named[0]] = count
    return [found[index] for index in range(len(names))] if len(found) == len(names) else []


def _number_lines(counts: Sequence[int], text: str) -> bool:
    """'1 MANDREL FOR 1.5 x .065   2 EA', then '2 MANDREL FOR ...': the lines are numbered."""
    return counts == list(range(1, len(counts) + 1)) and all(
        re.search(rf"^\s*{n}\b", text, re.MULTILINE) for n in counts
    )


def _od_written(request: SizeRequest, text: str) -> str:
    for item in request.evidence:
        if item.field == "od" and not item.attachment:
            number = re.match(r"[Øø]?\s?([\d.][\d.,/ -]{0,8}\d|\d)", text[item.start : item.end])
            return _plain(number[1]) if number else ""
    return ""


def _plain(number: str) -> str:
    return re.sub(r"[\s-]+", "-", number.strip(" -.,")).replace(",", ".")


def _value(count: str) -> int:
    return int(count) if count.isdecimal() else w.COUNTS.get(count.casefold(), 1)


def _at_line_ends(requests: Sequence[SizeRequest], text: str) -> list[int]:
    """The counts behind the sizes of a list, one size a line and all in one form."""
    counts: list[int] = []
    marks: set[str] = set()
    lines: set[int] = set()
    for one in requests:
        places = [item for item in one.evidence if item.field in ("od", "wall", "clr")]
        places = [item for item in places if text[item.start : item.end] == item.surface]
        if not places:
            return []
        ods = [item.start for item in places if item.field == "od"]
        begin = text.rfind("\n", 0, min(ods or [places[0].start])) + 1
        end = text.find("\n", begin)
        end = len(text) if end < 0 else end
        behind = max((item.end for item in places if begin <= item.start < end), default=end)
        tail = _TAIL.match(text[behind:end].rstrip())
        if tail is None or begin in lines:
            return []
        lines.add(begin)
        form = next(name for name in "abcde" if tail[name])
        marks.add(form)
        counts.append(int(tail[form]))
    if len(marks) != 1 or not all(0 < count <= _MOST for count in counts):
        return []
    numbered = counts == list(range(1, len(counts) + 1)) and len(counts) > 2
    if numbered or ("d" in marks and _COUNTS_OTHERS.search(text)):
        return []
    return counts
