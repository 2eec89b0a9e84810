"""A length as it was measured, where the sender goes by the drawing: 'it is .058 per the drawing.
The one in the wreck measured .065, but I'm going by the drawing.'"""

from __future__ import annotations

from ...late_pattern import late_pattern
from ..text.figures import Figure, Layout
from ..text.patterns import any_of

_MEASURED = late_pattern(
    r"\b"
    + any_of(
        r"measur\w+ | mic(?:'d|s|ed) | calip\w+ | (?:nach)?gemessen | hat | mesur\w+ | fait",
        r"medí | medimos | mid\w+ | misur\w+ | gemeten | meet",
    )
    + r"\b"
)
_PAPER = (
    r"(?:drawing|print|plans?|spec|book|manual|zeichnung|plan|unterlagen|dessin|plano|dibujo"
    r"|disegno|tekening)"
)
_GOES_BY = late_pattern(
    r"\b(?:"
    + any_of(
        r"(?:going|go|work|working|stick|sticking) (?:by|with|to|off) the",
        r"(?:halte[n]? (?:ich |wir )?(?:mich|uns)|richte[n]? (?:ich |wir )?(?:mich|uns)) (?:an"
        r"|nach)"
        r" die | (?:es )?gilt die | nehmen? (?:ich |wir )?die",
        r"m'en tiens au | nous en tenons au | (?:on|je) suit? le | c'est le",
        r"(?:me|nos) gu(?:ío|iamos) por el | (?:sigo|seguimos) el | vale el",
        r"(?:mi|ci) atten(?:go|iamo) al | (?:seguo|seguiamo) il | vale il",
        r"(?:ga|gaan) (?:ik |we )?uit van de | (?:houd|houden) (?:me|ons) aan de",
    )
    + rf") {_PAPER}\b"
)
_BEHIND = 120
_PER = late_pattern(rf"\b{_PAPER}\b")


def hear_by_drawing(layout: Layout) -> None:
    """Deny what was only measured, where another sentence before tells what the drawing says."""
    for figure in layout.figures:
        sentence = figure.sentence
        if not _is_measured(layout, figure) or not _is_overruled(layout, figure):
            continue
        told = any(
            other.sentence < sentence and other.number.value != figure.number.value
            for other in layout.figures[: figure.index]
        )
        if told and any(layout.says(at, _PER) for at in range(max(0, sentence - 2), sentence)):
            figure.negated = True
            layout.aside.append(" ".join(layout.sentence_text(sentence).split()))


def _is_measured(layout: Layout, figure: Figure) -> bool:
    begin = layout.sentence_start(figure.sentence)
    before, after = layout.before(figure), layout.after(figure)
    alone = figure.link != "times" and (after is None or after.link != "times")
    first = before is None or before.sentence != figure.sentence
    around = f"{layout.words(begin, figure.start)} {layout.words(figure.end, figure.end + 16)}"
    return alone and first and _MEASURED.search(around) is not None


def _is_overruled(layout: Layout, figure: Figure) -> bool:
    """Whether the sender goes by the paper, in words behind it."""
    return _GOES_BY.search(layout.words(figure.end, figure.end + _BEHIND)) is not None
