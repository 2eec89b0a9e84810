"""Sizes that are named, but not now: for next year, refused, or in stock as their line says."""

from __future__ import annotations

from itertools import groupby

from ...late_pattern import late_pattern
from ..picking.line_status import set_aside
from ..text.figures import Figure, Layout
from ..text.patterns import any_of, whole_words

_LATER = whole_words(
    "leave (?:that|it|this|those|them)(?: one)? (?:out|off|aside|for now)(?: for now)?",
    "not (?:for now|this time) | (?:that|this|it)'s (?:for )?next year | for next year",
    r"(?:we'll|we will) come back to (?:that|it|this) | hold off on | can wait(?!\s(?:un)?til)",
    r"comes? later",
    "that's next year's | later this year maybe | someday | some day | another time",
    "down the road",
    "erst (?:nächstes jahr|später) | kommt später | sehen wir (?:dann|später) | hat zeit",
    "vorerst nicht | (?:on )?verra (?:l'an prochain|plus tard|ensuite) | ce sera pour plus tard",
    "(?:lo )?ver(?:emos|á) (?:el año|más) | más adelante | el año que viene | (?:lo )?vediamo",
    "l'anno prossimo | più avanti | volgend jaar | later pas | komt later",
)
_BUT_NOT_NOW = late_pattern(
    r"\b"
    + any_of(
        r"but not (?:for now|now|yet|right now|just yet|at the moment|today|this time)",
        "aber (?:vorerst|jetzt(?: noch)?|momentan|im moment|noch|heute|zunächst|derzeit) nicht",
        "mais pas (?:pour le moment|pour l'instant|encore|maintenant|tout de suite|cette fois)",
        "pero (?:por ahora|de momento|por el momento|ahora|todavía|aún) no",
        "ma (?:per ora|per adesso|per il momento|adesso|ancora|al momento) no",
        "ma non (?:ora|adesso|ancora|per ora) | pero no (?:ahora|todavía|por ahora)",
        "maar (?:nu|voorlopig|op dit moment|vandaag)(?: nog)? niet | maar nog niet",
    )
    + r"(?=\s*(?:[.,;!)]|$))"
)
"""Right behind the one size that it puts off: '... auch für 30 x 2, aber vorerst nicht'."""
_WHEN_IT_COMES = whole_words(
    r"deliver\w* | ship\w* | rush | urgent | invoice | payment | prices? | liefer\w* | eilig",
    r"livr\w+ | urgent | entrega\w* | urge | consegn\w+ | urgente | lever\w+ | haast | rechnung",
)
"""It is the delivery that can wait, and not the size."""
_REFUSED = late_pattern(
    r"\b"
    + any_of(
        r"(?:don'?t|do not|no need(?: to)?|please don'?t|needn'?t|never)\s(?:quote|price|bother"
        r"|include|make|offer|send|count|sell)",
        r"(?:tried to|wants? to|wanted to) (?:sell|push|offer) (?:me|us)",
        "no use for | not interested in | nicht anbieten | pas besoin (?:de|du) | ne pas chiffrer",
        "no (?:necesit|quier)\\w+ | non (?:mi|ci) serve",
    )
    + r"\b[^.;:\d]{0,24}$"
)
_COST_THEN = late_pattern(
    r"^\W{0,2}(?:mm|in(?:ch)?)?\s?(?:one|mandrel|tube|size)?\s(?:had\s)?cost\s(?:us\s|me\s)?"
    r"(?:back|last|then|at the time"
    r"|in (?:january|february|march|april|may|june|july|august|september|october|november"
    r"|december|20\d\d))\b"
)
"""'Could you tell me what the 30 mm one cost back in August': it is there."""
_MARKS = " \t-*•·–Øø"
_BACK = 80
"""Characters before a figure in which a refusal stands."""


def hear_not_now(layout: Layout) -> None:
    """'We also look at 30 x 2 next year, leave that out for now', '50 x 3   have 1'."""
    _hear_later(layout)
    _hear_but_not_now(layout)
    _hear_refused(layout)
    _hear_status(layout)
    for put_off, run in groupby(layout.figures, key=lambda figure: (figure.put_off, figure.line)):
        figures = list(run)
        if put_off[0]:
            words = layout.text[figures[0].start : figures[-1].end]
            layout.left_out.append(" ".join(words.split()))


def _hear_later(layout: Layout) -> None:
    for sentence, figures in layout.by_sentence.items():
        words = _LATER.search(layout.sentence_text(sentence))
        if words is None:
            continue
        place = layout.sentence_start(sentence) + words.start()
        named = [figure for figure in figures if figure.start < place]
        if not named or _WHEN_IT_COMES.search(layout.words(named[-1].end, place)):
            continue
        if not _has_another_size(layout, sentence):
            continue
        for figure in named:
            if figure.line == named[-1].line:  # not the other lines of a list
                _put_off(figure)


def _hear_but_not_now(layout: Layout) -> None:
    for sentence, figures in layout.by_sentence.items():
        words = _BUT_NOT_NOW.search(layout.sentence_text(sentence))
        if words is None or not _has_another_size(layout, sentence):
            continue
        place = layout.sentence_start(sentence) + words.start()
        named = [figure for figure in figures if figure.start < place and figure.is_measure]
        # One size alone: of two it may be the last only that has to wait.
        if named and all(figure.link == "times" for figure in named[1:]):
            for figure in named:
                _put_off(figure)


def _has_another_size(layout: Layout, sentence: int) -> bool:
    """Whether figures of another sentence look like a size: what would be left to ask for."""
    return any(
        figure.link == "times" or figure.is_measured
        for figure in layout.figures
        if figure.sentence != sentence and figure.is_measure and not figure.put_off
    )


def _hear_refused(layout: Layout) -> None:
    for figure in layout.figures:
        behind = layout.words(figure.end, figure.end + _BACK).casefold()
        if figure.number.end <= figure.end and _COST_THEN.match(behind):
            figure.give("noise", "")
        begin = max(figure.start - _BACK, layout.sentence_start(figure.sentence))
        begin = max(begin, _own_line(layout, figure))
        if _REFUSED.search(" ".join(layout.words(begin, figure.start).split()) + " "):
            _put_off(figure)
            after = layout.after(figure)
            while after is not None and after.link == "times":
                _put_off(after)
                after = layout.after(after)


def _own_line(layout: Layout, figure: Figure) -> int:
    """Where its line begins if that is an item of a list, as is the line before: the refusal at
    the end of '42.4 x 2, R 85 - do not quote' is not of the next one; else 0."""
    begin = layout.text.rfind("\n", 0, figure.start) + 1
    above = layout.text.rfind("\n", 0, max(0, begin - 1)) + 1
    if layout.text[begin : figure.start].strip(_MARKS) or begin == 0:
        return 0
    return begin if layout.text[above:begin].lstrip(_MARKS)[:1].isdigit() else 0


def _hear_status(layout: Layout) -> None:
    for figures in set_aside(layout):
        begin = layout.text.rfind("\n", 0, figures[0].start) + 1
        end = layout.text.find("\n", figures[-1].end)
        layout.lines_out.append((begin, end if end >= 0 else len(layout.text)))
        for figure in figures:
            _put_off(figure)


def _put_off(figure: Figure) -> None:
    figure.put_off = True
    figure.give("noise", "")
