"""Words, then their meaning: tables of notations as a careful sales engineer would read them.

The values come from the words by arithmetic (1 in = 25.4 mm), gauges from the BWG column and pipe
from ASME B36.10M / B36.19M. A row counts as read only when every size is right, none is missing or
invented, and exactly those fields are doubted that he would ask back.
"""

from __future__ import annotations

import pytest

from bendreply.intake.reading import read

from . import cases_across as across
from . import cases_checked as checked
from . import cases_lost as lost
from . import cases_nets as nets
from . import cases_order as order
from . import cases_prose as prose
from . import cases_said as said
from . import cases_spoken as spoken
from .cases_asked_for import (
    BESIDE,
    IN_WORDS,
    NAMED_FROM_AFAR,
    NOT_TAKEN_BACK,
    PERHAPS,
    TAKEN_BACK,
    TOLD_AGAIN,
)
from .cases_doubts import DOUBTS
from .cases_metric import METRIC
from .cases_not_sizes import NO_SIZE, NOISE
from .cases_phrases import (
    BELOW_EACH_OTHER,
    BORES,
    FROM_AFAR,
    LEGS,
    NO_PART_OF_IT,
    STRAGGLERS,
)
from .cases_picked import (
    BY_SIGN,
    IN_WORDS_TOO,
    MARKED_LINES,
    NAMED_LINES,
    NO_MARK,
    NO_NAME,
    NO_PLACES,
    NO_SIGN,
    NOT_SOME_ONLY,
    SEVERAL_PLACES,
    UNHEARD,
)
from .cases_several import CORRECTIONS, SEVERAL, TABLES
from .cases_signs import SIGNS
from .cases_told import (
    ALL_ASKED_FOR,
    BESIDE_A_BOX,
    DASHES,
    DIES_OF_TUBES,
    GROOVE,
    HEADS,
    ONE_OF_SEVERAL,
    ONLY_TOLD,
    OWNED_LISTS,
    PICKED_OUT,
    SAID_AGAIN,
    TWO_WAYS,
    WALL_OF_A_TUBE,
)
from .cases_us import CHAINS, GAUGES, PIPE, RADIUS, SLANG
from .support import Size, read_text, whole, written_down

FAMILIES = (
    SLANG, CHAINS, GAUGES, PIPE, RADIUS, METRIC,
    DOUBTS, NOISE, NO_SIZE, CORRECTIONS, SEVERAL, TABLES, SIGNS,
    LEGS, BORES, NO_PART_OF_IT, BELOW_EACH_OTHER, FROM_AFAR, STRAGGLERS,
    DIES_OF_TUBES, GROOVE, SAID_AGAIN, TWO_WAYS, WALL_OF_A_TUBE,
    ONLY_TOLD, ONE_OF_SEVERAL, PICKED_OUT, ALL_ASKED_FOR, BESIDE_A_BOX, OWNED_LISTS, DASHES,
    HEADS,
    TAKEN_BACK, NOT_TAKEN_BACK, PERHAPS, TOLD_AGAIN, NAMED_FROM_AFAR, IN_WORDS, BESIDE,
    SEVERAL_PLACES, NO_PLACES, MARKED_LINES, NO_MARK, NAMED_LINES, NO_NAME,
    BY_SIGN, NO_SIGN, IN_WORDS_TOO, UNHEARD, NOT_SOME_ONLY,
    *lost.FAMILIES,
    said.BENT_OVAL, said.ANGLE_BEHIND, said.DIE_MARKS, said.GIVEN_UP, said.INSIDE_OR_CENTRE,
    said.MIN_WALL, said.SAID_TWICE, said.DRAWING_DEFAULTS, said.REFERENCES, said.OF_TWO,
    said.PLACES_AND_PARTS, said.IN_WORDS_TOO,
    *nets.FAMILIES,
    *across.FAMILIES,
    order.NAMED_ORDER, order.REMARKS, order.TIED, order.PLACES_OF_ONE_TUBE, order.CHANGED,
    order.UNITS_FOR_ALL, order.MACHINES, order.PRICES_AND_TOOLS, order.MORE_LANGUAGES,
    order.TIED_BY_PLACE, order.RADIUS_FIRST, order.SMALL_SIGNS, order.MULTIPLIED, order.TENTHS,
    order.MORE_ORDERS, order.HEADS_OF_LINES, order.BESIDE_LIMITS,
    *spoken.FAMILIES,
    *checked.FAMILIES,
    *prose.FAMILIES,
)  # fmt: skip


@pytest.mark.parametrize(("text", "sizes"), [row for family in FAMILIES for row in family])
def test_words_are_read_as_meant(text: str, sizes: tuple[Size, ...]) -> None:
    requests = read_text(text)
    right = len(requests) == len(sizes) and all(
        size.describes(request) for size, request in zip(sizes, requests, strict=True)
    )
    assert right, f"{text!r} was read as\n{written_down(requests)}"


@pytest.mark.parametrize(
    ("text", "left_out"),
    [
        ("1) 1 x .065, 3 CLR\n2) 1.5 x .065, 4.5 CLR\n\nPlease drop 2.", "1.5 x .065, 4.5"),
        ("Tube 28 x 1.5 mm, R 56. The 35 x 1.5 can wait.", "35 x 1.5"),
    ],
)
def test_a_size_that_is_not_taken_is_told(text: str, left_out: str) -> None:
    message, own = whole(text)
    assert read(own, message).notes == (f"a size was taken as not asked for: {left_out}",)
