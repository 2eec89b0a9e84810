"""Sizes that are named, but not now: for next year, refused, or in stock as their line says."""

from __future__ import annotations

import re

from .figures import Figure, Layout
from .patterns import any_of, whole_words

_LATER = whole_words(
    "leave (?:that|it|this|those|them)(?: one)? (?:out|off|aside|for now)(?: for now)?",
    "not (?:for now|now|yet|this time) | (?:that|this|it)'s (?:for )?next year | for next year",
    r"(?:we'll|we will) (?:see|come back to|talk) | hold off on | can wait | comes? later",
    "that's next year's | later this year maybe | someday | some day | another time",
    "down the road",
    "erst (?:nächstes jahr|später) | kommt später | sehen wir (?:dann|später) | hat zeit",
    "vorerst nicht | (?:on )?verra (?:l'an prochain|plus tard|ensuite) | ce sera pour plus tard",
    "(?:lo )?ver(?:emos|á) (?:el año|más) | más adelante | el año que viene | (?:lo )?vediamo",
    "l'anno prossimo | più avanti | volgend jaar | later pas | komt later",
)
_REFUSED = re.compile(
    r"\b"
    + any_of(
        r"(?:don'?t|do not|no need to|please don'?t|needn'?t|never)\s(?:quote|price|bother|include"
        r"|make|offer|send|count|sell)",
        r"(?:tried to|wants? to|wanted to) (?:sell|push|offer) (?:me|us)",
        "no use for | not interested in | nicht anbieten | pas besoin (?:de|du) | ne pas chiffrer",
        "no (?:necesit|quier)\\w+ | non (?:mi|ci) serve",
    )
    + r"\b[^.;:\d]{0,24}$"
)
_HAVE = whole_words(
    r"have(?: \d{1,2})? | have it | got(?: \d{1,2})? | in stock | on hand | on the shelf",
    "ok | okay",
    "not used(?: any ?more)? | no longer used | obsolete | vorhanden | haben wir | da | auf lager",
    "en stock | on l'a | tenemos | hay | en almacén | abbiamo | presente | hebben we | aanwezig",
    "done | covered | fine",
)
_NEED = whole_words(
    r"need(?: \d{1,2})?(?: ea| more)? | needed | want(?:ed)? | order | buy | missing | quote",
    "make",
    "brauche[n]? | fehlt | gesucht | bestellen | besoin | manque | falta | necesit\\w+ | serve",
    "manca | nodig | ontbreekt",
)
_BACK = 80
"""Characters before a figure in which a refusal stands."""


def hear_not_now(layout: Layout) -> None:
    """'We also look at 30 x 2 next year, leave that out for now', '50 x 3   have 1'."""
    _hear_later(layout)
    _hear_refused(layout)
    _hear_status(layout)


def _hear_later(layout: Layout) -> None:
    if len(layout.by_sentence) < 2:
        return
    for sentence, figures in layout.by_sentence.items():
        if layout.says(sentence, _LATER):
            words = _LATER.search(layout.sentence_text(sentence))
            place = layout.sentence_start(sentence) + (words.start() if words else 0)
            named = [figure for figure in figures if figure.start < place]
            for figure in named:
                if figure.line == named[-1].line:  # not the other lines of a list
                    _put_off(figure)


def _hear_refused(layout: Layout) -> None:
    for figure in layout.figures:
        begin = max(figure.start - _BACK, layout.sentence_start(figure.sentence))
        if _REFUSED.search(" ".join(layout.text[begin : figure.start].casefold().split()) + " "):
            _put_off(figure)
            after = layout.after(figure)
            while after is not None and after.link == "times":
                _put_off(after)
                after = layout.after(after)


def _hear_status(layout: Layout) -> None:
    """Lines that say of each size whether it is needed or there already."""
    lines: dict[int, list[Figure]] = {}
    for figure in layout.figures:
        lines.setdefault(figure.line, []).append(figure)
    told = {line: _status(layout, figures) for line, figures in lines.items() if len(figures) > 1}
    if not {"have", "need"} <= set(told.values()):
        return
    for line, status in told.items():
        if status == "have":
            for figure in lines[line]:
                _put_off(figure)


def _put_off(figure: Figure) -> None:
    figure.put_off = True
    figure.give("noise", "")


def _status(layout: Layout, figures: list[Figure]) -> str:
    """What is said behind the figures of a line: 'have', 'need', or nothing."""
    last = figures[1]
    end = layout.text.find("\n", last.end)
    rest = layout.text[last.end : end if end >= 0 else len(layout.text)].casefold()
    if _NEED.search(rest):
        return "need"
    return "have" if _HAVE.search(rest) else ""
