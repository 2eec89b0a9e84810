"""Lines of another list than this one taken back, and earlier lists as a whole: 'HB-06 to HB-09
have been cancelled' where the list ends at HB-05, 'please disregard the earlier list'.

Nothing of it is said where the message holds such a line, or speaks of the earlier list again: it
may stand in it.
"""

from __future__ import annotations

import re
from collections.abc import Iterator

from ...late_pattern import late_pattern
from ..text.patterns import any_of

_AND = r"(?:to|through|thru|and|und|bis|et|à|au|y|al?|e|en|t/m)"
_GONE = any_of(
    r"cancel(?:l?ed) | dropped | deleted | withdrawn | removed | scrapped | off",
    r"no longer (?:needed|required|wanted) | on hold | obsolete",
    r"entfallen | entfällt | gestrichen | storniert | nicht mehr (?:nötig|gebraucht|benötigt)",
    r"annulée?s? | supprimée?s? | anulad[oa]s? | eliminad[oa]s? | annullat[aeio] | eliminat[aeio]",
    r"vervallen | vervalt | geschrapt | niet meer nodig",
)
_CODE = r"[a-z]{0,9}[-. #]{0,2}\d{1,4}"
_CODES_GONE = late_pattern(
    rf"(?<![\w.,/])(?P<codes>[a-z]{{1,9}}[-. #]{{0,2}}\d{{1,4}}(?:\s?(?:{_AND}\s"
    rf"|[,&–-]\s?){_CODE}){{0,4}})"
    rf"(?![\w/]|[.,]\d)[^.;\d]{{0,40}}?\b{_GONE}\b"
)
_ONE_CODE = late_pattern(r"(?P<name>[a-z]{2,9})?[-. #]{0,2}(?P<number>\d{1,4})")
_JOINS = frozenset("to through thru and und bis et au al en".split())
_SPANS = late_pattern(r"\b(?:to|through|thru|bis|à|au|al?|t/m)\b|\d\s?[–-]\s?\D{0,9}\d")
_PLACES = frozenset(
    "item items line lines row rows pos position positions no nos nr zeile zeilen ligne lignes"
    " línea líneas linea lineas riga righe regel regels partida partidas".split()
)
"""Names of a list's lines that are numbered from 1."""
_EARLIER = r"(?:earlier|previous|old|older|prior|outdated|superseded|last week's|yesterday's)"
_LIST = r"(?:lists?|versions?|tables?|spreadsheets?|sheets?|revisions?|files?|attachments?)"
_IGNORE = r"(?:disregard|ignore|cancel|scrap|forget|discard|delete|bin)"
_LIST_GONE = late_pattern(
    rf"\b(?:{_IGNORE} (?:please )?(?:the|my|our|that|this|any) {_EARLIER} {_LIST}"
    rf"|(?:the|my|our|that|any) {_EARLIER} {_LIST}\b[^.;\d]{{0,30}}?\b{_IGNORE} (?:it|that one|that"
    r"|them|this one)"
    r"|(?:meine|die|unsere) (?:frühere|alte|letzte|vorherige|vorige) (?:liste|tabelle|version)"
    r" (?:bitte )?(?:streichen|entfällt)"
    r"|annul\w+ (?:et remplace )?(?:ma|la|notre) (?:(?:liste|version) )?(?:précédente|antérieure)"
    r"|anul\w+ (?:y sustituye )?(?:a )?(?:mi|la|nuestra) (?:lista|versión)? ?anterior"
    r"|(?:de|mijn|onze) (?:vorige|oude|eerdere) (?:lijst|versie) (?:vervalt|is vervallen))\b"
)
_EARLIER_AGAIN = late_pattern(
    rf"\b(?:{_EARLIER}|frühere|alte|vorherige|précédent\w*|anterior\w*|vorige|oude|eerdere)\b"
)


def spans_of_other_lists(said: str, sizes: int) -> Iterator[tuple[int, int]]:
    """Where such words stand in a casefolded text of so many sizes."""
    for match in _CODES_GONE.finditer(said):
        rest = f"{said[: match.start()]} {said[match.end() :]}"
        if _are_elsewhere(match["codes"], rest, sizes):
            yield match.span()
    for match in _LIST_GONE.finditer(said):
        rest = f"{said[: match.start()]} {said[match.end() :]}"
        if not _EARLIER_AGAIN.search(rest):
            yield match.span()


def _are_elsewhere(codes: str, rest: str, sizes: int) -> bool:
    """Whether none of the codes is one of this message's lines, though these are named alike."""
    found = list(_ONE_CODE.finditer(codes))
    name = next((m["name"] for m in found if m["name"] and m["name"] not in _JOINS), None)
    numbers = {int(match["number"]) for match in found}
    if _SPANS.search(codes):
        numbers.update(range(min(numbers), max(numbers) + 1))
    if name is None:
        return False
    if name in _PLACES:
        return min(numbers) > sizes
    alike = re.findall(rf"(?<!\w){name}[-. #]{{0,2}}(\d{{1,4}})(?![\w.])", rest)
    return len(alike) > 1 and not numbers & {int(number) for number in alike}
