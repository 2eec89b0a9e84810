"""What a message as a whole says of its units."""

from __future__ import annotations

from ...late_pattern import late_pattern
from ...model import Message
from ..text.figures import Layout
from .choices import Unit

_IN_MM = late_pattern(
    r"\b(?:unit|units|all dim\w*|dimensions|masse)\b.{0,12}\bmm\b|\bin mm\b|\(mm\)"
    r"|\b(?:all(?:e|es)?|everything|both|tout(?:es)?|todas?|todos?|tutt[eio]|sizes?|measures|figures"
    r"|values|maße|abmessungen|medidas|misure|cotes|maten|afmetingen|dims?\.?)\b[^.;:\d\n]{0,24}"
    r"\b(?:mm|millimet\w+|metric)\b|\bmm (?:throughout|everywhere|durchweg|überall)\b"
)
_IN_INCHES = late_pattern(
    r"\bin inch(?:es)?\b|\(in(?:ches)?\.?\)"
    r"|\b(?:all|everything|sizes|dims?|dimensions|figures|values)\b[^.;:\d\n]{0,24}\binch(?:es)?\b"
    r"|\binches throughout\b"
)
_SAID = 2
"""A sentence that names the unit counts as much as that many figures."""
_AMERICAN_ZONE = late_pattern(r"-0[4-9]00|-1000")
_DAY_FIRST_ZONE = late_pattern(r"\+0[1-3]00|\+0530|\+1[0-3][03]0")
"""Clocks of Europe, Africa, India, Australia and New Zealand. Britain's winter clock is that of
many a server, too, and that of Perth is that of Manila, where the month comes first."""
_BRITISH = late_pattern(
    r"\b(?:centres?|centreline|centred|aluminium|metres?|millimetres?|colour\w*|grey|tyres?|favour\w*"
    r"|galvanised|anodised|normalised|aluminised|apologis\w+|programme|cheque|enquir\w+|o/d|c/l|i/d"
    r"|swg|vat|ltd|plc|cheers|mould\w*|catalogue|tonnes?|fortnight|colleague|whilst)\b|£"
    r"|\.(?:uk|ie|au|nz|za)\b|\b0(?:1\d{3}|7\d{3}) ?\d{6}\b"
)
_AMERICAN = late_pattern(
    r"\b(?:centers?|centerline|centered|aluminum|gray|colors?|tires?|galvanized|anodized|zip code"
    r"|llc|inc)\b|[\s(]\$\s?\d"
)
_CANADIAN = late_pattern(
    r"\b(?:canada|qu[ée]bec|ontario|alberta|manitoba|saskatchewan|nova scotia|new brunswick"
    r"|british columbia|newfoundland|nouveau-brunswick|colombie-britannique|montr[ée]al|toronto)\b"
    r"|,\s(?:qc|on|ab|bc|mb|sk|ns|nb|pe|nl)\s{1,2}[a-z]\d[a-z]\s?\d[a-z]\d\b"
    r"|\b(?:[ab-eghj-npr-tv-y]\d[a-z] \d[a-z]\d)\b|@[\w.-]{1,60}\.ca\b"
)
"""Clocks of Canada are those of the States; there 3/4 is written for either day."""
_FOOT = 600
"""Characters of a message's end, where its sender signs."""
_ZONE = late_pattern(r"[+-]\d{4}")


def usual_unit(layout: Layout) -> Unit | None:
    """The unit that the message's marked figures mostly use, or None for a draw.

    Fractions speak for inches, a decimal comma for mm.
    """
    inch = metric = 0
    for figure in layout.figures:
        inch += figure.unit == "in" and not figure.weak_unit
        inch += figure.number.style in ("fraction", "mixed")
        metric += figure.unit in ("mm", "cm")
        metric += "," in layout.text[figure.start : figure.end]
    # The plain search first: it is quick, and most messages have neither.
    text = layout.text.casefold()
    if ("mm" in text or "met" in text) and _IN_MM.search(text):
        metric += _SAID
    if "in" in text and _IN_INCHES.search(text):
        inch += _SAID
    if inch == metric:
        return None
    return "in" if inch > metric else "mm"


def is_american(unit: Unit | None, message: Message) -> bool:
    """Whether 4/5 is more likely April 5 to this sender: a US clock, else inches."""
    zone = (message.header("date") or "").strip()[-5:]
    if _AMERICAN_ZONE.fullmatch(zone):
        return not _is_canadian(message)
    return unit == "in" and _ZONE.fullmatch(zone) is None


def _is_canadian(message: Message) -> bool:
    foot = f"{message.text[:_ENOUGH][-_FOOT:]}\n{message.header('from') or ''}".casefold()
    return _CANADIAN.search(foot) is not None


_ENOUGH = 10_000
"""Characters of a message that tell how its sender spells."""


def puts_day_first(message: Message) -> bool:
    """Whether 9/10 is surely October 9 to this sender: a clock or a spelling of where the day comes
    first, and nothing of where it comes last."""
    text = f"{message.subject}\n{message.text[:_ENOUGH]}".casefold()
    if _AMERICAN.search(text):
        return False
    zone = (message.header("date") or "").strip()[-5:]
    if _DAY_FIRST_ZONE.fullmatch(zone):
        return True
    home = zone in ("+0000", "-0000", "+0800") or _ZONE.fullmatch(zone) is None
    return home and _BRITISH.search(f"{text}\n{message.header('from') or ''}") is not None
