"""A figure that another may come to: 'CLR no more than 100, but it may come down to 95'.

It is no size of its own; the one that was said first is in doubt.
"""

from __future__ import annotations

from decimal import Decimal

from ...late_pattern import late_pattern
from ..text.figures import Figure, Layout
from ..text.roles import LENGTH_ROLES

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
    r"|(?:kan|zou)\s(?:ook |misschien |eventueel )*(?:nog|misschien|eventueel)\s(?:naar|op|tot))"
    r"\s(?:an?\s|about\s|maybe\s|etwa\s|r\s?|radius\s|clr\s)*$"
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
        if figure.sentence - other.sentence > 1 or other.role not in LENGTH_ROLES:
            continue
        if other.row is not None or other.negated or other.is_gauge != figure.is_gauge:
            continue
        if {other.unit, figure.unit} == {"in", "mm"} or not other.number.value:
            continue
        if _LEAST < figure.number.value / other.number.value < _MOST:
            same_role = figure.role in (None, other.role, "radius", "noise", "quantity", "label")
            return other if same_role and figure.number.value != other.number.value else None
    return None
