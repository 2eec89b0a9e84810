"""The one size that is wanted of several that are not: 'dies for 1, 1-1/4 and 1-1/2, none of which
interest me apart from the 1-1/2'."""

from __future__ import annotations

from collections import Counter
from collections.abc import Sequence

from ..said.hedges import is_the_one
from ..sizes.groups import Group
from ..text.figures import Layout


def the_one_named(layout: Layout, groups: Sequence[Group]) -> list[int]:
    """Indexes of the sizes that are left: all, unless one alone has the OD that is named so."""
    everything = list(range(len(groups)))
    ods = [group.slots["od"][0].number.value if "od" in group.slots else None for group in groups]
    once = Counter(ods)
    for figure in layout.figures:
        if once[figure.number.value] == 1 and is_the_one(layout, figure):
            return [ods.index(figure.number.value)]
    return everything
