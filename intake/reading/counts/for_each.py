"""Counts that are told by what the mandrels are for: 'three machines, a mandrel for each', 'one for
me, one for my buddy'; and counts of which only a part is wanted now.
"""

# ruff: noqa: E501 - lists of words stand on one line

from __future__ import annotations

import re
from collections.abc import Sequence

from ....rules.request import Doubt, SizeRequest
from ...late_pattern import late_pattern
from ..text.patterns import any_of
from . import words as w

PARTED = "some are wanted at one time and some at another"
_SHY = frozenset("et en um uma fem another otro otra altro".split())
_WORDS = sorted((n for n, c in w.COUNTS.items() if 2 <= c <= 12 and n not in _SHY), key=len)[::-1]
_N = rf"(?P<count>(?<![\d.,/-])[2-9](?![\d.,/]*\d)|1[0-2](?![\d.,/]*\d)|(?:{'|'.join(_WORDS)})(?!\w))"
_PLACE = any_of(
    "presses | bending presses | machines? | benders? | bending machines? | shops? | plants? | sites? | locations? | cells?",
    "stations? | lines | lathes? | maschinen | biegemaschinen | werke | standorte | cintreuses",
    "machines à cintrer | ateliers | sites | máquinas | dobladoras | curvadoras | talleres",
    "macchine | curvatubi | curvatrici | piegatubi | officine | machines | buigmachines",
)
_ONE = any_of(
    "(?:a |one )?(?:new |spare )?mandrels? | one | 1 | einen?(?: dorn)? | je einen?(?: dorn)? | un(?: mandrin)?",
    "un mandril | uno | un mandrino | een(?: doorn)? | één(?: doorn)?",
)
_EACH = any_of(
    "(?:for|per|on|to) (?:each|every|all)(?: one)? | each | für jede[nrs]? | pour chacun[es]*",
    "pour chaque | para cada(?: una?)? | per (?:ogni|ciascun[oa]) | voor (?:elke?|ieder)",
    "apiece | a testa | chacune? | cada una? | ciascun[oa]? | elk | ieder | pro maschine",
)
_OURS = r"(?:of\s|der\s|de\s|van\s|delle\s|dei\s|von\s)?(?:the\s|our\s|my\s|these\s|those\s|unsere[rn]?\s|meiner\s|nos\s|mes\s|nuestras\s|nostre\s|onze\s)?"
_ONE_FOR_EACH = late_pattern(rf"\b{_ONE}\s{_EACH}\s{_OURS}{_N}\s(?:\w+\s)?{_PLACE}\b")
_PLACES_THEN_EACH = late_pattern(
    rf"{_N}\s(?:[^\W\d]+\s)?{_PLACE}\b[^;!?\d]{{0,60}}?\b{_ONE}\s(?:mandrel\s)?{_EACH}"
    rf"(?:\s(?:one|of (?:them|those|these)|{_PLACE}|machine|bender|shop|davon|maschine|macchina))?"
    r"(?=\s*(?:[.,;!?)]|$|please|pls))"
)
_SOME_OF_PLACES = late_pattern(
    rf"{_N}\s(?:of|von|der|de|van|delle|dei)\s(?:our|the|my|unseren|nos|nuestras|nostre|onze)\s(?:\w+\s){{0,2}}?"
    rf"{_PLACE}\b[^.;!?\d]{{0,60}}?\b{_ONE}\s(?:mandrel\s)?{_EACH}"
)
_OF_THEM = late_pattern(
    rf"{_N}\s(?:davon|of (?:them|these|those)|d.entre elles|de ellas|di (?:loro|esse)|ervan)\b"
    rf"[^.;!?\d]{{0,40}}?\b(?:je einen(?: dorn)?|{_ONE}\s{_EACH})\b"
)
"""'3 davon brauchen je einen Dorn'."""
_DOUBLE = late_pattern(
    r"\b(?:en double exemplaire|in (?:doppelter|zweifacher) ausführung|in tweevoud|por duplicado"
    r"|in (?:doppio esemplare|duplice copia))\b"
)
"""'Two of our four presses want a new mandrel apiece.'"""
_ARTICLE = r"(?:one|1|an?|einen?|un|uno|een|één)"
_ONE_AND_SPARE = late_pattern(
    rf"\b{_ARTICLE}\s(?:(?:for\s)?now|to use|in use|for the machine|jetzt|sofort|maintenant|ahora|subito|adesso|nu)?[\s,]{{0,2}}"
    rf"(?:(?:and|und|et|y|e|en|plus)\s)?{_ARTICLE}\s(?:mandrel\s|dorn\s)?(?:as a spare|as spare|for spare"
    r"|as (?:a )?back-?up|to keep|for the shelf|spare\b(?!\s(?:ball|part|wiper|one for))|als (?:ersatz|reserve)|en réserve|de rechange|de (?:repuesto|reserva)"
    r"|di (?:scorta|riserva))\b"
)
_PERSON = any_of(
    r"me | us | him | her | them | myself | (?:my|our|the|his|her|a) (?:other |old |second |new )?(?:buddy|friend"
    r"|brother|dad|father|son|partner|neighbou?r|cousin|coworker|colleague|shop|guy|boss|mate"
    r"|customer|bender|machine|plant)",
    "mich | uns | meinen? (?:kumpel|freund|bruder|vater|nachbarn|kollegen)",
    "moi | nous | mon (?:ami|copain|frère|voisin|collègue) | mí | mi (?:amigo|hermano|vecino|socio)",
    r"notre [^\W\d][^\W\d-]*(?:-[^\W\d]+)? | our (?:sister|other|second) [^\W\d]+",
    "me | il mio (?:amico|socio) | mijn (?:vriend|broer|buurman|maat) | mij",
)
_FOR_PERSON = late_pattern(
    rf"\b(?:one|1|einen?|un|uno|een|één)\s(?:for|für|pour|para|per|voor)\s{_PERSON}\b"
)
_NOW = any_of(
    "now | right away | right now | asap | first | today | immediately | jetzt | sofort | maintenant",
    "tout de suite | ahora | ya | subito | adesso | nu | direct",
)
_COUNT = rf"(?:\d{{1,2}}(?![\d.,/]*\d)|one|an?|{'|'.join(_WORDS)})"
_LATER = any_of(
    "by | in | for | later | next | end of | before | bis | im | später | nächste\\w* | pour | en",
    "plus tard | avant | para | más tarde | per | entro | dopo | voor | later",
)
_NOW_AND_LATER = late_pattern(
    rf"(?<![\d.,/])\b(?P<now>{_COUNT})\s(?:mandrels?\s|pcs?\s|pieces?\s|of them\s|dorne?\s|mandrins?\s|stück\s)?{_NOW}\b"
    rf"[\s,]{{1,2}}(?:and|plus|then|und|et|y|e|en|dann|puis|luego|poi|dan)?\s?(?:the\s(?:other|rest)\s|another\s|more\s)?"
    rf"(?P<later>{_COUNT})\s(?:(?:more|others?|mandrels?|of them|weitere|autres|más)\s){{0,2}}{_LATER}\b"
    r"(?!\s(?:the\s|our\s)?(?:shelf|stock|spares?|reserve))"
)


def with_counts_for_each(requests: Sequence[SizeRequest], text: str) -> list[SizeRequest]:
    """The one request with the count that such words give; several as they are.

    ``text`` is the sender's own. What is wanted at two times is doubted, count and day.
    """
    words = " ".join(text.casefold().split())
    parted = _NOW_AND_LATER.search(words)
    if parted is not None:
        total = sum(_number(parted[part]) for part in ("now", "later"))
        return [one if one.quantity == total else _parted(one) for one in requests]
    if len(requests) != 1 or requests[0].quantity not in (None, 1):
        return list(requests)
    count = _count(words)
    return [requests[0].model_copy(update={"quantity": count})] if count else list(requests)


def _count(words: str) -> int | None:
    if _ONE_AND_SPARE.search(words):
        return 2
    if _DOUBLE.search(words):
        return 2
    for pattern in (_OF_THEM, _SOME_OF_PLACES, _ONE_FOR_EACH, _PLACES_THEN_EACH):
        found = pattern.search(words)
        if found is not None:
            number = found["count"]
            return int(number) if number.isdecimal() else w.COUNTS[number]
    persons = {re.sub(r"\s+", " ", found[0]) for found in _FOR_PERSON.finditer(words)}
    return len(persons) if len(persons) > 1 else None


def _number(word: str) -> int:
    return int(word) if word.isdecimal() else w.COUNTS.get(word, 1)


def _parted(request: SizeRequest) -> SizeRequest:
    doubts = list(request.doubts)
    if request.quantity is not None and not request.doubt_on("quantity"):
        doubts.append(Doubt(field="quantity", readings=(str(request.quantity),), why=PARTED))
    if request.needed_by is not None and not request.doubt_on("needed_by"):
        day = request.needed_by.isoformat()
        doubts.append(Doubt(field="needed_by", readings=(day,), why=PARTED))
    return request.model_copy(update={"doubts": tuple(doubts)})
