"""One of several sizes asked for by its rank, 'the bigger one', 'nur für das dünnere Rohr', or by
one figure of it, 'we only need the 33.7 mandrel'."""

from __future__ import annotations

from collections.abc import Sequence
from decimal import Decimal

from ...late_pattern import late_pattern
from ..sizes.groups import Group, Slot
from ..text.patterns import any_of
from .by_letter import speaks_of_other
from .place_lists import NO_REQUEST, clause_of
from .place_names import ENDS, NEEDS_ONE

_PAIR = 2
_ENGLISH = late_pattern(
    r"\b(?:only|just|do|take|want|need|quote|price|go with|have|nur|nehmen|after|looking for)\s"
    r"(?:need\s|after\s|want\s)?(?:(?:a mandrel|one|a price) (?:for|on) )?(?:(?:for|on)\s)?"
    r"(?:the|den|die|das|de|het)\s(?P<rank>big|bigg|larg|small|thick|thinn|thin|groß|größ|klein)"
    rf"(?:(?P<more>e?re?n?)|e?ste?n?)(?:\s(?:one|tube|size|die|former|radius"
    rf"|of the (?:two|lot|three)|of (?:these|those|them)))?{ENDS}",
)
_WANTED_BEHIND = late_pattern(
    r"\bthe\s(?P<rank>bigg|larg|small)er?(?:\s(?:one|die|former|radius|size))?\s(?:is|would be)\s"
    r"(?:the one|what)\s(?:i|we)(?:['’]d)?\s(?:want|need|like|are after|am after)\b"
)
_TOO_OF_US = (
    r"(?:(?:we|wir|ich|nous|noi|nosotros|wij|on)\s)?(?:(?:need|brauchen?|bräuchten|benötigen|besoin"
    r"|necesitamos|serve|nodig|mandrel|\w*dorn|mandrin|mandril|mandrino|doorn|einen|ein|un|uno|een"
    r"|d['’]un|de)\s){0,4}(?:(?:für|zu|pour|para|per|voor)\s)?"
)
_OTHERS = late_pattern(
    r"\b(?:nur|bloß|lediglich|seulement|uniquement|juste|que|solo|sólo|solamente|únicamente|soltanto"
    rf"|alleen|enkel)\s{_TOO_OF_US}"
    r"(?:d(?:as|en|ie|em)|le|la|el|il|lo|de|het)\s(?:(?:tubes?|tubos?)\s)?(?:plus\s|le plus\s"
    r"|más\s|più\s)?"
    r"(?P<word>(?:dünn|dick|klein|groß|gross|größ|gröss|stärk|schwäch)(?:e|er|st|est)\w{0,3}"
    r"|petite?|fine?|mince|grosse?|grande?|épaisse?"
    r"|pequeñ[oa]|fin[oa]|delgad[oa]|grues[oa]|piccol[oa]|sottile|spess[oa]|gross[oa]"
    r"|kleinere?|kleinste|grotere|grootste|dunnere|dunste|dikkere|dikste)"
    rf"(?:\s(?:rohr|tubes?|tubo|buis|maß|größe|durchmesser|des deux|de los dos|dei due|van de twee"
    rf"|von beiden|der beiden))?{ENDS}",
)
_LEAST = tuple(
    "small thin klein short dünn schwäch petit fin mince pequeñ delgad piccol sottil dun".split()
)
_BY_WALL = tuple(
    "th dünn dick fin mince épais delgad grues sottil spess dun dik stärk schwäch".split()
)
_FIGURE = late_pattern(
    r"\b(?:only|just|nur|bloß|lediglich|seulement|uniquement|juste|solo|sólo|solamente|soltanto|alleen"
    r"|enkel)\s(?:(?:need|want|quote|price|after|for|on|an?|one|brauchen?|wir|ich|einen|für|den|das|die"
    r"|besoin|de|du|d['’]un|un|le|pour|necesitamos|el|para|serve|il|per|uno|nodig|een|voor|het|the|that"
    r"|mandrel|\w*dorn|mandrin|mandril|mandrino|doorn)\s){0,7}"
    r"(?:the|den|das|die|dem|le|du|el|il|de|het)\s(?:tube de |tubo de |tubo da )?(?:ø\s?)?"
    r"(?P<figure>(?:\d{1,2}[ -])?\d{1,2}/\d{1,2}|\d{1,3}(?:[.,]\d{1,3})?|\.\d{2,3})"
    r"(?:\s?(?:mm|\"|inch|in|er))?"
    r"(?:[\s-](?:mandrel|one|tube|pipe|size|rohr|\w*dorn|tubo|buis))?"
    rf"(?:(?=\s(?:at (?:present|the moment|this (?:time|point|stage))|now|right now|this time|to"
    rf" (?:start|begin)|vorerst|zunächst|momentan|pour l'instant|de momento|per ora|voorlopig"
    rf"|voorerst|{NEEDS_ONE})"
    rf"\b)|{ENDS})"
)
_ALL_TOO = any_of(
    "also | as well | too | both | alle | auch | beide | aussi | también | anche | ook | every",
)
_OF_EACH = late_pattern(
    r"\b(?:each|apiece|je(?:weils)? (?:ein|1)\w*|un\w* (?:pour |par )?chac\w+|un[oa]? (?:de |por "
    r"|per )?"
    r"(?:cada|ciascun|ognun)\w*|(?:een|één) (?:van |voor )?elk)\b"
)
_SAID_TOO = late_pattern(rf"\b{_ALL_TOO}\b")


def picked_by_rank(words: str, groups: Sequence[Group]) -> set[int]:
    """'Let's do the bigger one', of two; 'only the smallest', of any number."""
    spaced = " ".join(words.split()).casefold()
    found: set[int] = set()
    if _SAID_TOO.search(spaced):
        return found
    for match in _ENGLISH.finditer(spaced):
        clause = clause_of(spaced, match.start(), match.end())
        if NO_REQUEST.search(clause) or (match["more"] and len(groups) > _PAIR):
            continue
        found |= _ranked(groups, match["rank"], strict=False)
    for match in () if _OF_EACH.search(spaced) else _OTHERS.finditer(spaced):
        clause = clause_of(spaced, match.start(), match.end())
        other = speaks_of_other(spaced, match.start())
        if not other and not NO_REQUEST.search(clause) and len(groups) == _PAIR:
            found |= _ranked(groups, match["word"], strict=True)
    return found


def rank_asked(words: str) -> str:
    """'large' or 'small' where words ask for the larger or the smaller of two, 'only for the bigger
    one please'; '' where they don't, or ask for both."""
    spaced = " ".join(words.split()).casefold()
    if _SAID_TOO.search(spaced) or _OF_EACH.search(spaced):
        return ""
    asked: set[str] = set()
    for pattern, name in ((_ENGLISH, "rank"), (_OTHERS, "word"), (_WANTED_BEHIND, "rank")):
        for match in pattern.finditer(spaced):
            clause = clause_of(spaced, match.start(), match.end())
            if not NO_REQUEST.search(clause) and not match[name].startswith(_BY_WALL):
                asked.add("small" if match[name].startswith(_LEAST) else "large")
    return asked.pop() if len(asked) == 1 else ""


def _ranked(groups: Sequence[Group], rank: str, *, strict: bool) -> set[int]:
    """The one size of that rank, of one tube by its radius. 'Thin' is of the wall where walls
    differ; ``strict`` where the OD must not say otherwise: 'das dünnere Rohr' may be either."""
    by_od = _extreme(groups, "od", least=rank.startswith(_LEAST))
    ods = {group.slots["od"][0].number.value for group in groups if "od" in group.slots}
    if not by_od and len(ods) < 2 and not rank.startswith(_BY_WALL):
        return _extreme(groups, "clr", least=rank.startswith(_LEAST))
    if not rank.startswith(_BY_WALL):
        return by_od
    by_wall = _extreme(groups, "wall", least=rank.startswith(_LEAST))
    if strict and by_od and by_wall and by_od != by_wall:
        return set()
    return by_wall or (by_od if strict else set())


def _extreme(groups: Sequence[Group], slot: Slot, *, least: bool) -> set[int]:
    figures = [group.slots[slot][0] for group in groups if slot in group.slots]
    values = [figure.number.value for figure in figures]
    if len(set(values)) != len(groups) or len({figure.unit for figure in figures}) != 1:
        return set()
    return {values.index(min(values) if least else max(values))}


def picked_by_figure(words: str, groups: Sequence[Group]) -> set[int]:
    """The one size whose OD, or else wall or radius, stands alone beside 'only'."""
    spaced = " ".join(words.split()).casefold()
    if _SAID_TOO.search(spaced) or _OF_EACH.search(spaced):
        return set()
    found: set[int] = set()
    for match in _FIGURE.finditer(spaced):
        # What stands before 'only' in its clause may correct another thing: "316L, not 304, and"
        if NO_REQUEST.search(spaced[match.start() : _stop(spaced, match.end())]):
            continue
        if speaks_of_other(spaced, match.start()):
            continue
        value = length_of(match["figure"])
        for slot in ("od", "wall", "clr"):
            alike = having(groups, slot, value)
            if alike:
                found |= alike if len(alike) == 1 else set()
                break
    return found


def length_of(figure: str) -> Decimal:
    """'33.7', '33,7', '1-3/4', '7/8'"""
    whole, _, part = figure.replace("-", " ").rpartition(" ")
    above, _, below = part.replace(",", ".").partition("/")
    share = Decimal(above) / Decimal(below) if below.strip("0") else Decimal(above)
    return Decimal(whole or 0) + share


def _stop(words: str, begin: int) -> int:
    ends = (words.find(sign, begin) for sign in (".", ",", ";", "(", "!", "?"))
    return min((at for at in ends if at >= 0), default=len(words))


def having(groups: Sequence[Group], slot: Slot, value: Decimal) -> set[int]:
    """Indexes of the sizes that have such a figure."""
    return {
        at
        for at, group in enumerate(groups)
        if slot in group.slots and any(f.number.value == value for f in group.slots[slot])
    }
