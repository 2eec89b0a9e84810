"""A tube by its trade name, and what it measures: 'we call it 51 x 1.5, but the caliper says 50.8'.

The name is no second size: what was measured takes its place, wherever it is said again.
"""

from __future__ import annotations

from decimal import Decimal

from ...late_pattern import late_pattern
from ..text.figures import Figure, Layout
from ..text.patterns import any_of

_MEASURED = late_pattern(
    r"\b"
    + any_of(
        r"cal+ipers?(?: says?)? | micrometer | mike[sd]? | mics? (?:up|out) | measured? | measures",
        r"measuring | really | actually | in fact | in reality | true (?:od|size)",
        r"comes out (?:at|as)",
        r"schieblehre | messschieber | schublehre | gemessen | nachgemessen | misst | tatsächlich",
        r"in wirklichkeit | eigentlich | pied à coulisse | mesuré\w* | mesure | en réalité",
        r"en fait | calibre | medid[oa] | mide | en realidad | calibro | misurat[oa] | misura",
        r"in realtà | schuifmaat | gemeten | meet | eigenlijk | in werkelijkheid",
    )
    + r"\b",
)
_NAMED = late_pattern(
    r"\b"
    + any_of(
        "(?:we|they|i|everyone|people|it'?s) (?:just )?(?:call(?:ed|s)?|say)(?: it| this| that)?",
        "(?:is |was |gets )?(?:called|sold as|known as|listed as|down as|marked|nominal(?:ly)?)",
        "trade (?:name|size) | (?:wir|wij) (?:sagen|nennen|zeggen|noemen) | (?:heißt|heet)",
        "verkauft als | genannt | on (?:l'|les )?appelle | on dit | vendu comme",
        "(?:lo|le) llamamos",
        "decimos | vendido como | (?:lo|li) chiamiamo | diciamo | venduto come | verkocht als",
    )
    + r"\b",
)
_BUT = late_pattern(r"\b(?:but|though|aber|doch|mais|pero|ma|però|maar|dus|also)\b")
_NEAREST = 4
"""Figures behind the name, its wall and radius among them, of which one is what was measured."""
_FAR = 160
_LIKE = Decimal("0.04")
"""So much of the name may it be off."""


_CALLED = late_pattern(
    r"\b"
    + any_of(
        r"(?<!so )(?:we|i|they|every(?:one|body)|people|guys|folks|all)"
        r"(?: all| always| still| usually| here| just| keep)* (?:call(?:s|ing)?|say(?:ing)?)"
        r" (?:it|this|them|that) | nennen (?:wir|alle)(?: es| ihn)?",
        r"sagen (?:wir|alle) | (?:wir|alle) (?:nennen|sagen)(?: es| dazu| das)? | heißt (?:das|es)",
        r"(?:on|nous) (?:l['’]|les? )appel(?:le|ons) | l[oe]s? llamamos | l[oi] chiamiamo"
        r" | (?:we|wij) noemen (?:dat|het|die) | noemen (?:we|wij) (?:dat|het|die)",
    )
    + r"(?: just| always| nur| immer| toujours| siempre| sempre| altijd)?"
    + r"(?: the| a| an| das| ein| le| du| el| il| de| een)? $"
)


def set_names_aside(layout: Layout) -> None:
    """'1.9 OD x .145 ... (I keep calling it two inch)': a name behind the size measures nothing."""
    for figure in layout.figures[2:]:
        before, after = layout.figures[figure.index - 1], layout.after(figure)
        if figure.link == "times" or figure.row is not None:
            continue
        if after is not None and after.link == "times":
            continue  # "we call it the big one: 60 x 2"
        begin = max(before.end, layout.sentence_start(figure.sentence))
        if _CALLED.search(layout.words(begin, figure.start).casefold()):
            figure.give("noise", "cue")


def hear_measured(layout: Layout) -> None:
    """Mark what was measured as putting the trade name right."""
    for figure in layout.figures:
        measured = _measured_of(layout, figure)
        if measured is None:
            continue
        for other in layout.figures[measured.index :]:
            if other.number.value == measured.number.value and other.unit in (None, measured.unit):
                other.corrects = True


def _measured_of(layout: Layout, figure: Figure) -> Figure | None:
    """The figure that tells what the tube named by this one measures."""
    following = layout.after(figure)
    if following is None or following.link != "times" or figure.negated or figure.row is not None:
        return None  # a name is told with its wall: '51 x 1.5'
    for other in layout.figures[figure.index + 2 : figure.index + 2 + _NEAREST]:
        between = layout.words(figure.end, other.start)
        if len(between) > _FAR or not _is_like(figure, other):
            continue
        after = layout.after(other)
        if after is not None and after.link == "times":
            return None  # a tube of its own
        if _BUT.search(between) and _MEASURED.search(between):
            begin = layout.sentence_start(figure.sentence)
            return other if _NAMED.search(layout.words(begin, figure.start)) else None
    return None


def _is_like(figure: Figure, other: Figure) -> bool:
    named, value = figure.number.value, other.number.value
    return bool(named) and value != named and abs(value - named) <= named * _LIKE
