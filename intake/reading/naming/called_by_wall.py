"""A tube called by its wall: 'would the 2 mm one run in the 1.2 tube?', 'das 1,5er Rohr'.

The figure is no OD. Where a size with that wall is named, it says nothing new; and a question
whether a mandrel serves another wall asks for none.
"""

from __future__ import annotations

from decimal import Decimal

from ...late_pattern import late_pattern
from ..text.figures import Figure, Layout
from ..text.patterns import any_of, whole_words
from .place_tests import is_thin

_WALLS = Decimal(6)
"""A tube is at least so many walls across where its wall is taken for its name."""
_MOST = 60
"""So many walls are compared with what may be one of them."""
_CALLED_BEFORE = late_pattern(
    r"(?:^|\W)(?:the|our|my|this|that|a|in|for|das|die|der|dem|den|im|fürs|le|la|du|el|il|de|het"
    r"|quello da|quella da|el de|la de|celui de|tube de|tubo da|tubo de)\s$"
)
_CALLED_OF = late_pattern(
    r"\b(?:tubes?|tubos?|tubi|buis|quello|quella|celui|el|la|le)\s(?:de|da|van|en)\s$"
)
_ENDS = late_pattern(r"^\W{0,2}(?:mm|in)?\W{0,2}(?:$|[.,;?!\n)])")
_CALLED_AFTER = late_pattern(
    r"^\W{0,2}(?:mm|in|inch|er|ers)?\s?(?:wall\s|gauge\s)?"
    r"(?:tub(?:e|es|ing)|ones?|stuff|material|rohre?n?|tubos?|tubi|buis|buizen|mandrel)\b"
)
_SERVES = whole_words(
    r"work | run | fit | go(?:es)? into | slip | be used | use (?:it|the same|that|them) | be ok",
    "be okay | be fine | serve | suit | suitable | passt | passen | geht | gehen | funktioniert",
    "verwenden | va aussi | marche\\w* | convien\\w* | sirve | vale | funciona | va bene",
    "funziona | werkt | past | gebruiken",
)
_ASKS_FOR = whole_words(
    "quote | price | another | second | need | order | buy | make | one more | as well | offer",
    "or do i | or should | both | brauchen | anbieten | besoin | necesito | serve anche | nodig",
)
_QUESTION = any_of(
    "does | do | will | would | can | could | is | are | may | kann | können | passt | geht",
    "est-ce | peut | puede | sirve | può | va | kan | werkt | past",
)
_ASKS = late_pattern(rf"(?:^|\W)(?:{_QUESTION})\b")


def hear_called_by_wall(layout: Layout) -> None:
    """Set figures aside that only name a tube by its wall."""
    found = _walls(layout)
    if not found:
        return
    of_sizes = {figure.sentence for figure in found}
    walls = list({figure.number.value: figure for figure in found}.values())[:_MOST]
    for sentence, figures in layout.by_sentence.items():
        if sentence in of_sizes:
            continue
        loose = [figure for figure in figures if figure.role != "noise"]
        if not loose or not all(_may_be_wall(figure, walls) for figure in loose):
            continue
        if _only_asks(layout, sentence):
            for figure in loose:
                figure.give("noise", "same")
            continue
        for figure in loose:
            if _is_called(layout, figure):
                known = any(wall.number.value == figure.number.value for wall in walls)
                figure.give("noise" if known else "wall", "same" if known else "cue")


def _only_asks(layout: Layout, sentence: int) -> bool:
    """'Does the .065 one work in .049?'; not '... or do I need another?'"""
    said = layout.sentence_text(sentence)
    if "?" not in said[-2:] or not _ASKS.search(said):
        return False
    return layout.says(sentence, _SERVES) and not layout.says(sentence, _ASKS_FOR)


def _walls(layout: Layout) -> list[Figure]:
    """Walls that stand behind their OD and a times sign."""
    found = []
    for wall in layout.figures:
        od = layout.before(wall)
        if wall.link != "times" or od is None or od.role == "noise" or wall.is_gauge:
            continue
        if wall.number.value * _WALLS <= od.number.value and not wall.negated:
            found.append(wall)
    return found


def _may_be_wall(figure: Figure, walls: list[Figure]) -> bool:
    """Whether a bare figure is thin beside the tubes that are named: a third to three times as
    much as one of their walls."""
    if figure.is_gauge or figure.unit not in (None, "mm", "in") or figure.negated:
        return False
    if figure.role is not None or figure.number.style not in ("decimal", "integer"):
        return False
    value = figure.number.value
    like = any(wall.number.value / 3 <= value <= wall.number.value * 3 for wall in walls)
    return like and (is_thin(figure) or all(not is_thin(wall) for wall in walls))


def _is_called(layout: Layout, figure: Figure) -> bool:
    before = layout.words(max(0, figure.start - 24), figure.start)
    after = layout.words(figure.end, figure.end + 32)
    if _CALLED_OF.search(before) and _ENDS.match(after):
        return True  # "le tube de 2"
    return _CALLED_BEFORE.search(before) is not None and _CALLED_AFTER.match(after) is not None
