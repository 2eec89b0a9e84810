"""A figure that another may come to: 'CLR no more than 100, but it may come down to 95'.

It is no size of its own; the one that was said first is in doubt. So is one that a supplier may
have to replace: '14 gauge, but they may only have 16'.
"""

from __future__ import annotations

from decimal import Decimal

from ...late_pattern import late_pattern
from ..text.figures import Figure, Layout
from ..text.patterns import any_of
from ..text.roles import LENGTH_ROLES

_ONLY_HAS = any_of(
    r"(?:may|might|could)(?:\s(?:well|also|even|then))*\s(?:only|just)\s(?:have|hold|stock|get|carry"
    r"|supply|offer|be able to (?:get|supply))",
    r"(?:unless|in case|if)\s(?:\w+\s){1,2}(?:only|just)\s(?:have|has|hold|stock|get|gets|carry)",
    r"(?:vielleicht|eventuell|evtl\.?|womöglich|möglicherweise|falls(?:\s\w+){1,2})\s(?:auch\s)?nur"
    r" | (?:peut-être|sauf s'il n'a) que",
    r"(?:quizás?|tal vez|a lo mejor|puede que|salvo que|por si)\s(?:\w+\s){0,2}(?:solo|sólo)"
    r"\s(?:tenga|tiene|haya|hay)",
    r"(?:forse|magari)\s(?:ha|avrà|hanno)\s(?:solo|soltanto) | potrebbe avere solo",
    r"misschien\s(?:alleen|enkel|slechts)(?:\smaar)?",
)
"""'14 gauge, but my supplier may only have 16'"""
_MAY = late_pattern(
    r"\b(?:(?:may|might|could)(?:\s(?:well|also|even|yet|still|possibly|have to|need to|then))*"
    r"\s(?:come|go|get|drop|end|creep|move|shrink|grow|change|increase|decrease|be (?:reduced"
    r"|changed"
    r"|increased|moved))(?:\s(?:down|up|out|back|in|over))*(?:\s(?:to|at|as|by|from))?"
    r"(?:\s(?:as )?(?:low|tight|small|little|big|much|far|thin|thick)(?: down)? as)?"
    r"|(?:könnte|dürfte)(?:\s(?:es|sich|der|die|das|er|sie|auch|noch|evtl\.?|eventuell|vielleicht|später"
    r"|dann|am ende))*\s(?:auf|bis)(?:\s(?:auf|zu))?"
    r"|(?:pourrait|risque de|va peut-être)(?:\s(?:encore|aussi|même|bien))*\s(?:descendre|passer"
    r"|aller"
    r"|baisser|monter|tomber)(?:\s(?:jusqu'à|à|en))?"
    r"|podría(?:\s(?:aún|también|incluso))*\s(?:bajar|subir|quedar|pasar|llegar)(?:\s(?:hasta|a|en))*"
    r"|potrebbe(?:\s(?:anche|ancora))*\s(?:scendere|salire|diventare|arrivare|passare)(?:\s(?:fino|a))*"
    r"|(?:kan|zou)\s(?:ook |misschien |eventueel )*(?:nog|misschien|eventueel)\s(?:naar|op|tot)"
    rf"|{_ONLY_HAS})"
    r"\s(?:an?\s|about\s|maybe\s|etwa\s|r\s?|radius\s|clr\s|the\s|it\sin\s|in\s|du\s|de\s|den?\s)*$"
)
_BEHIND = late_pattern(
    r"\W{0,2}(?:mm|in|inch(?:es)?|\")?\s?(?:mandrels?|pcs|pieces|off|weeks?|days?|bends|feet|ft|%|percent"
    r"|stück|dorne|wochen|tage)\b"
)
_MACHINE = late_pattern(
    r"\b(?:bender|machine|die|maschine|biegemaschine|cintreuse|máquina|macchina|you|we|i|sie|wir|vous"
    r"|nous|ustedes|jullie|wij)\b[^,;]{0,24}$"
)
"""What a machine can do, or who asks: 'could we go up to 120'."""
_FAR = 80
_BACK = 3
"""So many figures back stands the one that may change."""
_LEAST, _MOST = Decimal("0.55"), Decimal("1.8")
MAY_BECOME = "the message says that it may still change"


def hear_may_become(layout: Layout) -> None:
    """Set such figures aside, and note on those said before that they may change."""
    for figure in layout.figures:
        if figure.negated or figure.row is not None or figure.how in ("sign", "chain"):
            continue
        begin = max(layout.sentence_start(figure.sentence), figure.start - _FAR)
        before = layout.before(figure)
        if before is not None:
            begin = max(begin, before.end)
        ahead = " ".join(layout.words(begin, figure.start).casefold().split()) + " "
        if (
            not _MAY.search(ahead)
            or _MACHINE.search(ahead)
            or _BEHIND.match(layout.text[figure.end : figure.end + 16])
        ):
            continue
        after = layout.after(figure)
        if after is not None and after.link == "times":
            continue  # a whole size: it may be another tube
        held = _may_change(layout, figure)
        if held is not None:
            held.notes.append(MAY_BECOME)
            figure.give("noise", "same")


def _may_change(layout: Layout, figure: Figure) -> Figure | None:
    """The nearest length said before that can be of the same kind."""
    for other in reversed(layout.figures[max(0, figure.index - _BACK) : figure.index]):
        known = other.role in LENGTH_ROLES or (other.role is None and other.is_gauge)
        if figure.sentence - other.sentence > 1 or not known:
            continue
        if other.row is not None or other.negated or not _of_one_scale(other, figure):
            continue
        if {other.unit, figure.unit} == {"in", "mm"} or not other.number.value:
            continue
        if _LEAST < figure.number.value / other.number.value < _MOST:
            same_role = figure.role in (None, other.role, "radius", "noise", "quantity", "label")
            return other if same_role and figure.number.value != other.number.value else None
    return None


def _of_one_scale(first: Figure, second: Figure) -> bool:
    """'14 gauge, but they may only have 16': a whole number without a unit may be a gauge, too."""
    bare = second.unit is None and second.number.style == "integer"
    return first.is_gauge == second.is_gauge or (first.is_gauge and bare)
