"""More of one size than of the others: 'one each, two of the last', 'je 1 Dorn, von der letzten
bitte 2', 'un de chaque, deux du 50', '1 pc each, except 57 which is 2'."""

from __future__ import annotations

import re
from collections.abc import Iterator, Sequence
from decimal import Decimal

from ...late_pattern import late_pattern
from ..picking.place_names import ARTICLE, COUNTED, LAST
from ..text.small_letters import small_letters
from ..wanted.each_words import OF_EACH
from .by_place import COUNT, MOST, TOOL, value_of

_COUNT = COUNT.replace(r"(?![.,/\d)]|\s?mm)", r"(?![/\d)]|[.,]\d|\s?mm)")
"""May end a sentence: '... and of the last 2.'"""
_TO = r"(?:of|for|von|vom|für|de|du|del|dell['’]|della|pour|para|per|di|van|voor)"
_RANK = "|".join(sorted((*COUNTED, *LAST, "latter"), key=len, reverse=True))
_OD = r"(?P<od>\d{1,3}(?:[.,]\d{1,3})?)(?:er|s|\s?mm|\s?in(?:ch)?|\")?"
_SIZE = rf"{ARTICLE}(?:(?P<rank>{_RANK})|{_OD})"
_SIZE += r"(?:\s(?:one|size|tube|line|rohr|größe|zeile|tubo|medida|misura|buis|maat))?"
_BEHIND = re.sub(r"<(\w+)>", r"<\1_behind>", _SIZE)
_PLEASE = r"(?:please|pls|bitte|s['’]il vous plaît|svp|por favor|per favore|graag)"
_ENDS = rf"(?=\s?(?:[,;:!?)\n]|\.(?!\d)|$|{_PLEASE}|instead))"
_BUT = r"(?:except|apart from|but|außer|sauf|excepto|salvo|tranne|behalve)"
_MORE = late_pattern(
    rf"(?<![\w.,/(]){_COUNT}{TOOL}\s{_TO}\s?{_SIZE}{_ENDS}"
    rf"|(?<!\w){_TO}\s?{_BEHIND},?\s(?:{_PLEASE}\s)?{_COUNT.replace('<count>', '<count_behind>')}"
    rf"{TOOL}{_ENDS}"
    rf"|\b{_BUT}\s(?:{_TO}\s)?{ARTICLE}{_OD.replace('>', '_but>')},?\s(?:where\s)?"
    rf"(?:(?:which|that)\s(?:is|needs|gets)\s|is\s|needs\s|:\s?|=\s?)?"
    rf"{_COUNT.replace('<count>', '<count_but>')}{TOOL}{_ENDS}"
)


def more_of_one(text: str, ods: Sequence[Decimal | None]) -> dict[int, int]:
    """The counts of single sizes by their places in the list, from 0 on; ``ods`` as written. Empty
    where one is none of the list's, or gets two counts."""
    found: dict[int, int] = {}
    for match in _more(text):
        rank = match["rank"] or match["rank_behind"]
        od = match["od"] or match["od_behind"] or match["od_but"]
        if rank:
            places = [COUNTED.get(rank, len(ods)) - 1]
        else:
            places = [n for n, one in enumerate(ods) if one == Decimal(od.replace(",", "."))]
        count = value_of(match["count"] or match["count_behind"] or match["count_but"])
        if len(places) != 1 or places[0] >= len(ods) or count > MOST:
            return {}
        if found.setdefault(places[0], count) != count:
            return {}
    return found


def where_more(text: str) -> set[int]:
    """Where such counts begin, and the ODs that they are of: none of these measures another."""
    names = ("count", "count_behind", "count_but", "od", "od_behind", "od_but")
    return {match.start(name) for match in _more(text) for name in names} - {-1}


def _more(text: str) -> Iterator[re.Match[str]]:
    words = small_letters(text)
    if OF_EACH.search(words):
        yield from _MORE.finditer(words)
