"""Sizes by name: 'pipe' without a schedule, copper and conduit trade sizes, gauges of sheet.

A name is not a diameter: NPS 1-1/2 is 48.26 mm, half-inch copper 15.875 mm. Where the sender does
not say which is meant, the figure gets a note that becomes a doubt.
"""

from __future__ import annotations

from bisect import bisect_left
from decimal import Decimal

from ....rules import standards
from ...late_pattern import late_pattern
from ..text.figures import Figure, Layout
from ..text.patterns import whole_words
from .copper_types import note_type

PIPE = "pipe"
COPPER = "copper trade size"
CONDUIT = "conduit trade size"
_CONDUIT = whole_words("emt | conduit")
_NOMINAL_WORDS = whole_words(
    r"pipe | nominal | black iron | iron pipe | gas barrel | gasbui(?:s|zen) | gasrohr\w*",
    r"tubes? (?:de )?gaz | tub[oi]s? (?:de |da )?gas",
)
"""Gas tube is threaded pipe by its name: 'anderhalf duims gasbuis'."""
_REAL = whole_words(r"od | o\.d\.? | outside | actual | measures | caliper\w* | across | true")
_COPPER = whole_words("copper")
_PLUMBING = whole_words("type [klm] | pipe | plumbing | water | refrigeration | nominal | trade")
_TYPE = whole_words("types? [klm] | [klm] copper | copper [klm]")
"""Water tube by the type that says its wall: it is called by its trade size throughout."""
_LETTER = late_pattern(r"[\W\s]{0,3}[klm]\b")
_TRADE = whole_words("nominal(?:ly)? | trade size")
_OTHER_METAL = whole_words("steel | stainless | alumin\\w+ | brass | titanium | emt | conduit")
_SHEET = whole_words(
    "sheet(?: metal)? (?:gauge|ga) | gauge sheet | usg | us standard gauge",
    "manufacturer'?s standard",
)
_NO_PIPE = late_pattern(
    r"\b(?:it|this|that|they)(?:'s|'re|\sis|\sare|s)?\s(?:is\s|all\s|really\s|actually\s|just\s)?"
    r"(?:a\s|round\s|an?\sod\s)*(?:(?:tube|tubing)(?:,|\sand|;)?\snot\s|not\s|isn'?t\s|ain'?t\s)"
    r"(?:a\s)?pipe\b(?!\s(?:size|sch|die|bender|thread))"
)
_MEASURED = late_pattern(
    r"\b(?:mics?|miked?|mikes|mic'd|micrometer|caliper\w*|vernier|measures?|measured|measuring)\b"
    r"[^.;\d]{0,28}$"
)
_BACK = 48
_DENIED_WITHIN = 120
"""Characters behind a size in which 'it's tube, not pipe' speaks of it."""
REAL_D = "times the real OD"
_SAYS_D = late_pattern(
    r"(?<![\d.,])\b(?:d\s?(?:=|:)|(?:d|das d|le d|la d|el d)\s(?:is|being|means?|here is|ist"
    r"|meint|est|es|è|sendo|siendo|étant|essendo))\s?(?:(?:the|der|le|la|el|il|de|always|hier|here)\s)*"
    r"(?:actual|real|true|outside|outer|external|o\.?d\b|(?:tube|pipe)\s(?:od|outside)|\w*au(?:ß|ss)en"
    r"|tatsächlich|wirklich|diam[èe]tre ext|diámetro ext|diametro est|(?:werkelijke )?buiten)"
    r"|\b(?:actual|real|true)\s(?:pipe\s|tube\s|outside\s|outer\s)?(?:od|o\.d|dia(?:meter)?)\b"
    r"|(?:[x×*]|times|mal|fois|veces|volte|keer|maal)\s?(?:(?:the|den|dem|der|de|le|el|il|lo)\s)*"
    r"(?:(?:tube |pipe )?outside dia|outer dia|\w*au(?:ß|ss)endurchm|buitendiam|diam[èe]tre ext"
    r"|diámetro ext|diametro est)"
)
"""'5D where D = actual outside diameter'."""
_SWG = late_pattern(r"\bs\.?w\.?g\b")


def note_names(layout: Layout) -> None:
    """Mark figures that may be the name of a size, and gauges that are not BWG."""
    gauge = _gauge_of(layout) if any(figure.unit == "ga" for figure in layout.figures) else None
    denials = [found.start() for found in _NO_PIPE.finditer(layout.text.casefold())]
    for figure in layout.figures:
        if figure.unit == "sch" and _is_denied(figure, denials):
            figure.give("noise", "cue")  # "It's sch 40 right? No. It's tube, not pipe"
    times = [figure for figure in layout.figures if figure.role == "times_d"]
    if times and _SAYS_D.search(layout.text.casefold()):
        for figure in times:
            figure.notes.append(REAL_D)
    measured = {figure.number.value for figure in layout.figures if _is_measured(layout, figure)}
    scheduled = any(figure.unit == "sch" and figure.role != "noise" for figure in layout.figures)
    for figure in layout.figures:
        if figure.unit == "ga" and gauge is not None:
            figure.notes.append(gauge)
        if figure.role == "nps" and not scheduled and _is_copper(layout, figure, ""):
            figure.role = "od"  # "copper, 3/4 nominal" is no pipe
        if figure.role == "od" and figure.unit in ("in", None) and not _is_denied(figure, denials):
            name = _name_of(layout, figure, measured, scheduled=scheduled)
            if name is not None:
                figure.notes.append(name)
            note_type(layout, figure)


def _gauge_of(layout: Layout) -> str | None:
    """Which gauge the message means that is not BWG, the usual one for tube; else None."""
    text = layout.text.casefold()
    if _SWG.search(text):
        return "swg"
    return "sheet" if _SHEET.search(text) else None


def _name_of(
    layout: Layout, figure: Figure, measured: set[Decimal], *, scheduled: bool
) -> str | None:
    """Which kind of name the figure may be, or None where it is a diameter."""
    value = figure.number.value
    if standards.nps_of_inches(value) is None and standards.copper_tube_od_mm(str(value)) is None:
        return None
    if figure.number.value in measured:
        return None  # "mic says 1.500"
    after: list[str] = []
    for token in layout.tokens_after(figure, 4):
        if token.number is not None or token.kind == "times":
            break
        after.append(token.text)
    words = " ".join(after)
    left = layout.tokens_before(figure, 2)
    before = " ".join(token.text for token in left if token.number is None)
    if _REAL.search(words) or _REAL.search(before):
        return None
    if _CONDUIT.search(words) or _CONDUIT.search(before):
        return CONDUIT
    if _is_copper(layout, figure, words):
        return COPPER
    return PIPE if _NOMINAL_WORDS.search(words) and not scheduled else None


def _is_copper(layout: Layout, figure: Figure, words: str) -> bool:
    """Whether a figure, with ``words`` behind it, is one of copper called by its trade size."""
    if _COPPER.search(words) and layout.says(figure.sentence, _PLUMBING):
        return True
    if _OTHER_METAL.search(words):
        return False
    if layout.says(figure.sentence, _COPPER):
        if _LETTER.match(words):
            return True  # "copper, 3/4 L"
        return any(layout.says(figure.sentence, said) for said in (_TYPE, _TRADE))
    if layout.says(figure.sentence, _OTHER_METAL):
        return False
    return layout.says_anywhere(_TYPE) and layout.says_anywhere(_COPPER)


def trade_od(layout: Layout, figure: Figure) -> Decimal | None:
    """The real OD [mm] of conduit or copper tube, where the words beside a figure say that it is
    called by its trade size: '3/4 EMT', '3/4 type L copper'."""
    if figure.unit not in (None, "in"):
        return None
    if not (layout.says_anywhere(_CONDUIT) or layout.says_anywhere(_COPPER)):
        return None
    words = " ".join(token.text for token in layout.tokens_after(figure, 4) if token.number is None)
    if _CONDUIT.search(words):
        return standards.emt_od_mm(str(figure.number.value))
    if _is_copper(layout, figure, words):
        return standards.copper_tube_od_mm(str(figure.number.value))
    return None


def _is_measured(layout: Layout, figure: Figure) -> bool:
    """Whether a figure is said to be measured in inches."""
    if figure.unit not in ("in", None):
        return False
    ahead = layout.words(max(0, figure.start - _BACK), figure.start)
    return _MEASURED.search(ahead) is not None


def _is_denied(figure: Figure, denials: list[int]) -> bool:
    """Whether one of ``denials``, places in order, stands a little behind the figure."""
    following = bisect_left(denials, figure.end)
    return following < len(denials) and denials[following] - figure.end <= _DENIED_WITHIN
