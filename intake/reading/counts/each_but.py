"""One mandrel of each size but of one that is named by its OD: 'one of each except the 2-1/2, two
of those', 'je ein Dorn, vom 35er bitte zwei'.
"""

from __future__ import annotations

from collections.abc import Sequence

from ...late_pattern import late_pattern
from ..sizes.groups import Group
from ..text.figures import Figure, Layout
from ..text.patterns import any_of
from .by_place import COUNT, MOST, TOOL, value_of

_BUT = (
    r"(?<!\w)(?:except(?:ing)?|but|only|apart from|other than|bar|just|außer|ausser|bis auf|aber"
    r"|nur|sauf|mais|hormis|excepto|salvo|menos|pero|solo|sólo|tranne|eccetto|ma|soltanto|behalve|maar"
    r"|alleen|vom|beim|von dem|bei dem)(?!\w)"
)
_LITTLE = (
    r"(?:\s(?:for|of|on|in|from|the|size|tube|ones?|vom|von|beim|bei|der|die|das|dem|den|fürs|für"
    r"|rohr|du|le|la|de|des|pour|tube|del|el|il|lo|dal|per|tubo|van|voor|het|buis|para|en))*"
)
_TO_FIGURE = late_pattern(rf"{_BUT}{_LITTLE}\s?$")
_FILLER = (
    r"(?:(?:i|we|you|i'd|we'd|please|pls|want|wants|need|needs|would|like|get|make|that|those|there"
    r"|of|it|one|ones|tube|size|er|davon|bitte|brauche|brauchen|wir|ich|hätte|hätten|gern|gerne"
    r"|da|dafür|dort|rohr|pour|celui-là|celui|là|il|en|nous|faut|voudrions|tube|de|ese|esa|este"
    r"|necesitamos|queremos|tubo|di|quello|quella|ne|servono|vorremmo|daar|daarvan|graag|van|die"
    r"|willen|we)\s)*"
)
_BEHIND = late_pattern(
    r"[\"”″']?(?:\s?mm|-?er)?[\s,;:.()–—-]*\s?"
    rf"{_FILLER}{COUNT}{TOOL}"
    r"(?:\s(?:of (?:those|them|that(?: one)?|it|these)|for (?:that|it)|davon|dafür|de ceux-là"
    r"|pour celui-(?:là|ci)|para ese|de ese|per quello|de esos|di quelli|di quello|daarvan|van"
    r"|please|bitte|graag|svp|por favor|per favore))*"
    r"(?=\s?(?:[.,;:!)\n]|$))"
)
_AHEAD = late_pattern(
    rf"{_BUT}\s{_FILLER}{COUNT}{TOOL}"
    + any_of(
        r"\s(?:of|for)(?: the)? | (?:vom|von dem|von der|für das|für den|fürs)"
        r" | (?:du|pour le|pour la) | (?:del|de la|para el|para la) | (?:del|della|per il|di)"
        r" | van (?:de|het) | voor (?:de|het)"
    ).replace("(?:", r"\s?(?:", 1)
    + r"\s?$"
)
_FAR = 48


def counts_but(layout: Layout, groups: Sequence[Group]) -> dict[int, int]:
    """The counts of the sizes that are excepted, by index; empty where none is, or it is unclear
    which size is meant."""
    ods = [group.slots["od"][0] if "od" in group.slots else None for group in groups]
    found: dict[int, int] = {}
    for figure in layout.figures:
        if any(figure is fs[0] for group in groups for fs in group.slots.values()):
            continue
        count = excepted_count(layout, figure)
        if count is None:
            continue
        meant = [n for n, od in enumerate(ods) if od is not None and _is(od, figure)]
        if len(meant) != 1 or found.setdefault(meant[0], count) != count:
            return {}
    return found


def excepted_count(layout: Layout, figure: Figure) -> int | None:
    """How many are wanted of the size that a figure names as the exception."""
    ahead = layout.words(max(0, figure.start - _FAR), figure.start)
    match = _AHEAD.search(ahead)
    if match is None and _TO_FIGURE.search(ahead):
        match = _BEHIND.match(layout.words(figure.end, figure.end + _FAR))
    if match is None:
        return None
    count = value_of(match["count"])
    return count if 0 < count <= MOST else None


def _is(od: Figure, figure: Figure) -> bool:
    same = od.number.value == figure.number.value
    return same and (od.unit or figure.unit) == (figure.unit or od.unit)
