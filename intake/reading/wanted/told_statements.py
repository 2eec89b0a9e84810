"""Sizes told of in a statement of its own, beside one that is asked for: the statement is left out,
so that neither its count nor its material nor its place in the list goes with another size.

'Der 26,9er Dorn liegt noch bei uns im Regal.' Narrower than the words on whole sizes
(``told_plainly``): one size stands in the statement, nothing in it or behind it asks or points
back, and another tube, of which nothing only tells, stands elsewhere.
"""

from __future__ import annotations

import re
from bisect import bisect_left
from collections.abc import Iterator, Sequence
from decimal import Decimal

from ..said.replaced_words import FAILED
from ..text.figures import Figure, Layout
from ..text.roles import RADIUS_ROLES
from ..text.tokens import Token
from .asked_words import AGAIN, ASKS, NEWLY, REFERS, TROUBLE
from .each_words import OF_EACH
from .told_elsewhere_words import ELSEWHERE, NOT_ANY_MORE, RUNS_WELL
from .told_otherwise_words import BOUGHT
from .told_statements_words import (
    AS_IT_IS,
    BOTH,
    ENDS,
    HARMLESS,
    IF,
    NOT_BENT,
    PREVIOUS_OWNER,
    PRICE,
    SAME,
    SO_FAR_OR_NOW,
    TOLD,
    UNNEEDED,
    WHEN,
    folded,
)
from .told_words import TELLS

_END = re.compile(r"[!?;](?=\s)|\.(?=\s+\D)|(?<!\b[^\W\d]{2})(?<!\b[^\W\d]{3})\.(?=\s+\d)|\n")
"""A point before a figure ends no statement behind 'máx.' or 'ca.'."""
_OPENS = re.compile(r"[\s>*•-]*")
_MOST_FIGURES = 4
_LONGEST = 160
"""Characters of a statement that only tells."""
_TWO = 2
_WHOLE = 3
"""So many figures without a times sign may be a tube with its radius."""
_CHAIN = frozenset(("times", "slash"))
_PATTERNS = (BOUGHT, ELSEWHERE, RUNS_WELL, NOT_ANY_MORE)
_NAMED_WITHIN = 3
"""Tokens before a figure in which a radius is named."""
_RADIUS_SIGN = re.compile(r"\br ?=? ?\d")
_AT_THAT_RADIUS = re.compile(
    r"\b(?:that|this|dem|diesem|der|dieser|ce|cette|ese|esa|quel|quella|die|deze)\s(?:radius|wall"
    r"|thickness|wandstärke|rayon|épaisseur|radio|pared|raggio|parete|straal|wanddikte)\b"
)
_MM = Decimal("25.4")
_NEAR = Decimal("0.04")
"""'Le tube de 2 pouces' may be the 50 of the list."""


def hear_told_statements(layout: Layout) -> None:
    """Leave out statements that only tell of a size."""
    statements = list(_statements(layout))
    told = [span for span in statements if _only_tells(layout, *span)]
    told += [s for s in statements if s not in told and _is_as_it_is(layout, s, statements)]
    if not told:
        return
    rest = [f for span in statements if span not in told for f in _measures(layout, *span)]
    if not _has_tube(rest):
        return
    if _tells_of_rest(layout, statements, told):  # what is not bent is told of all the same
        told = [span for span in told if NOT_BENT.search(folded(layout.words(*span)))]
    for begin, end in told:
        measures = _measures(layout, begin, end)
        if not measures or _names_one(layout, measures[0], rest) or _points_back(layout, end):
            continue
        layout.lines_out.append((begin, end))
        for figure in layout.figures:
            if begin <= figure.start < end:
                figure.put_off = True
                figure.give("noise", "")


def _statements(layout: Layout) -> Iterator[tuple[int, int]]:
    """Where each statement with a figure in it begins and ends."""
    done = 0
    for figure in layout.figures:
        if figure.start < done:
            continue
        begin = done
        for match in _END.finditer(layout.text, done):
            if match.end() > figure.start:
                break
            begin = match.end()
        ends = _END.search(layout.text, figure.end)
        done = ends.end() if ends is not None else len(layout.text)
        yield begin, done


def _measures(layout: Layout, begin: int, end: int) -> list[Figure]:
    first, last = (bisect_left(layout.figures, at, key=_start) for at in (begin, end))
    return [f for f in layout.figures[first:last] if f.is_measure and not f.put_off]


def _start(figure: Figure) -> int:
    return figure.start


def _only_tells(layout: Layout, begin: int, end: int) -> bool:
    figures = _measures(layout, begin, end)
    if end - begin > _LONGEST or not 0 < len(figures) <= _MOST_FIGURES:
        return False
    words = layout.words(begin, end).strip()
    if "?" in words or sum(figure.link in _CHAIN for figure in figures) > 1:
        return False
    rest = _without_telling(words)
    return rest is not None and not any(p.search(rest) for p in (ASKS, AGAIN, SAME))


def _is_as_it_is(
    layout: Layout, span: tuple[int, int], statements: Sequence[tuple[int, int]]
) -> bool:
    """'The uprights are 48.3 x 2.6, but those don't get bent': the others have a tube told whole,
    with a radius where this one has one."""
    figures = _measures(layout, *span)
    if span[1] - span[0] > _LONGEST or not 0 < len(figures) <= _MOST_FIGURES:
        return False
    words = folded(layout.words(*span)).rstrip(" .!;\n")
    on_radius = _says_radius(layout, *span)
    if on_radius and OF_EACH.search(layout.words(0, len(layout.text))):
        return False  # a whole size, and "one of each"
    rest = words if IF.search(words) else AS_IT_IS.sub(" ", words)
    if not on_radius and not ENDS.search(words):
        rest = NOT_BENT.sub(" ", rest)
    asks = "?" in words and not PREVIOUS_OWNER.search(words)  # "... and left a rod, can we use it?"
    if rest == words or asks or sum(figure.link in _CHAIN for figure in figures) > 1:
        return False
    rest = HARMLESS.sub(" ", UNNEEDED.sub(" ", rest))
    if any(p.search(rest) for p in (ASKS, AGAIN, SAME, TROUBLE, SO_FAR_OR_NOW)):
        return False
    others = [other for other in statements if other != span]
    measures = [f for other in others for f in _measures(layout, *other)]
    whole = any(f.link in _CHAIN for f in measures) or len(measures) >= _WHOLE
    return whole and (not on_radius or any(_says_radius(layout, *other) for other in others))


def _says_radius(layout: Layout, begin: int, end: int) -> bool:
    first, last = (bisect_left(layout.tokens, at, key=_token_start) for at in (begin, end))
    named = any(c.role in RADIUS_ROLES for token in layout.tokens[first:last] for c in token.cues)
    return named or _RADIUS_SIGN.search(layout.words(begin, end)) is not None


def _token_start(token: Token) -> int:
    return token.start


def _without_telling(words: str) -> str | None:
    """What is left of a statement but for the words that only tell; None where it has none."""
    plain = folded(words).rstrip(" .!;\n")
    found = TOLD.search(plain)
    if found is not None:
        return UNNEEDED.sub(" ", f"{plain[: found.start()]} {plain[found.end() :]}")
    found = next((match for p in _PATTERNS if (match := p.search(words))), None)
    return f"{words[: found.start()]} {words[found.end() :]}" if found is not None else None


def _tells_of_rest(
    layout: Layout, statements: Sequence[tuple[int, int]], told: Sequence[tuple[int, int]]
) -> bool:
    """'30 x 2 läuft ohne Probleme. 40 x 2 haben wir schon.': none of them may be asked for."""
    for span in statements:
        words = layout.words(*span)
        if (
            span in told
            or "?" in words
            or ASKS.search(words)
            or PRICE.search(words)
            or any(p.search(words) for p in (TROUBLE, FAILED, NEWLY))
            or not TELLS.search(words)
        ):
            continue
        if _has_tube(_measures(layout, *span)):
            return True
    return False


def _names_one(layout: Layout, figure: Figure, rest: Sequence[Figure]) -> bool:
    """Whether the figure may be that of another size: 'der 38er ist schon da', of a 38 x 1,5. One
    of another wall than that has is another tube."""
    wall = layout.after(figure)
    if wall is not None and wall.link in _CHAIN:
        walls = [
            behind.number.value
            for other in rest
            if other.number.value == figure.number.value
            and (behind := layout.after(other)) is not None
            and behind.link in _CHAIN
        ]
        if walls and wall.number.value not in walls:
            return False
    value, radius = _length(figure), _is_radius(layout, figure)
    return any(
        abs(_length(other) - value) <= (value * _NEAR if other.unit != figure.unit else 0)
        and _is_radius(layout, other) == radius
        for other in rest
    )


def _is_radius(layout: Layout, figure: Figure) -> bool:
    near = [layout.tokens[figure.token], *layout.tokens_before(figure, _NAMED_WITHIN)]
    return any(cue.role in RADIUS_ROLES for token in near for cue in token.cues)


def _length(figure: Figure) -> Decimal:
    value = Decimal(figure.number.value)
    return value * _MM if figure.unit == "in" else value


def _points_back(layout: Layout, end: int) -> bool:
    """Whether what stands behind may mean the size that was told of."""
    behind = layout.words(end, len(layout.text))
    if SAME.search(folded(behind)) or AGAIN.search(behind):
        return True
    tubes = sum(f.link in _CHAIN for f in layout.figures if f.start >= end)
    if tubes < _TWO and BOTH.search(folded(behind)):
        return True
    opens = _OPENS.match(layout.text, end)
    nearest = _END.search(layout.text, opens.end() if opens is not None else end)
    following = layout.words(end, nearest.end() if nearest else len(layout.text))
    numbers = any(char.isdigit() for char in following)
    if numbers or WHEN.search(folded(following)):
        return False  # "lo necesito en tres semanas"
    return bool(ASKS.search(following) and REFERS.search(_AT_THAT_RADIUS.sub(" ", following)))


def _has_tube(measures: Sequence[Figure]) -> bool:
    """Whether they hold a tube that is told with its wall, or with so many figures."""
    chain = any(figure.link in _CHAIN for figure in measures)
    measured = sum(figure.is_measured for figure in measures)
    return chain or measured > 1 or len(measures) >= _WHOLE
