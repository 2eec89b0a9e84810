"""A net for a diameter that is in no size though it stands beside one that is: 'mostly 2" but also
3"', 'primary 1 5/8, secondary 1 3/4'.

Between the two there must be a word that joins, or a comma right behind the first, and nothing
that tells of somebody else's.
"""

from __future__ import annotations

from ...late_pattern import late_pattern
from ..naming.place_tests import is_diameter, is_thin
from ..text.figures import Figure, Layout
from ..text.patterns import any_of, whole_words

_FAR = 32
"""Characters between two sizes that are named in one breath."""
_STEPS = 2
"""So many figures lie at most between them: a wall of the one."""
_JOINS = whole_words(
    r"and | & | or | plus | also | as well as | then | \+ | und | oder | sowie | auch | et | ou",
    r"ainsi que | aussi | y | o | también | e | anche | en | of | ook | alsook",
)
_RIGHT_BEHIND = late_pattern(r"\W{0,2},\s")
_ANOTHERS = whole_words(
    r"my | his | her | their | he(?:'s)? | she | they | mein\w* | sein\w* | mon | son | su | mi",
    r"suo | mio | mijn | zijn | not | nicht | kein\w* | pas | non | niet | no | i(?:'m| am)?",
    r"with | mit | avec | con | met | (?:is|ist|est|es|è) (?:or|oder|ou|o|of)",
)
_MEASURE_OF_ANOTHER = late_pattern(
    r"[\s\"'-]{0,2}(?:"
    + any_of(
        r"gauge | scale | long | length | legs? | straight | bolts? | holes? | nps | sch\w* "
        r"| nominal",
        r"pipe | gas | npt | bsp | thread | rod | dies? | shoe | from | off | radius | clr "
        r"| cent\w+",
        r"apart | spacing | deep | wide | high | thick | lang\w* | breit | hoch | dick | stark "
        r"| plate",
        r"sheet | bar | blech | ends? | tails? | wheels? | tires? | drop | rise | lift | tall "
        r"| overlap",
        r"per | each | cuts? | block | bench | balls? | shank | bore | id | inside | mark",
    )
    + r")\b"
)


def is_beside_one(layout: Layout, figure: Figure, held: set[int]) -> bool:
    """Whether a figure that no size has is a diameter named in one breath with an OD that one has.

    ``held`` are indexes of the figures that sizes have.
    """
    if figure.role is not None or figure.negated or figure.put_off or figure.context_only:
        return False
    if figure.index in held or figure.points or figure.row is not None or not figure.is_measure:
        return False
    if figure.unit not in ("in", "mm", None) or not (figure.unit or figure.is_measured):
        return False
    if not is_diameter(figure) or is_thin(figure) or _is_of_another(layout, figure):
        return False
    ends = range(figure.index - _STEPS, figure.index + _STEPS + 1)
    others = [layout.figures[at] for at in ends if 0 <= at < len(layout.figures)]
    return any(_are_joined(layout, figure, other) for other in others if other.index in held)


def _is_of_another(layout: Layout, figure: Figure) -> bool:
    words = layout.text[figure.end : figure.end + _FAR].casefold()
    return _MEASURE_OF_ANOTHER.match(words) is not None


def _are_joined(layout: Layout, figure: Figure, other: Figure) -> bool:
    if other.role != "od" or other.sentence != figure.sentence or other.row is not None:
        return False
    if other.number.value == figure.number.value or {other.unit, figure.unit} == {"in", "mm"}:
        return False
    first, last = sorted((figure, other), key=lambda one: one.index)
    between = layout.text[first.end : last.start].casefold()
    if len(between) > _FAR or _ANOTHERS.search(between):
        return False
    return _JOINS.search(between) is not None or _RIGHT_BEHIND.match(between) is not None
