"""Dies told first, by tube and radius, then the tubes with their walls: 'I have 6.5 CLR dies for
1-5/8 and 1-3/4. Need mandrels for 1-5/8 x .120 and 1-3/4 x .134'. Each die tells the radius of its
tube, and is no size of its own.
"""

from __future__ import annotations

from ..naming.likeness import restates
from ..text.figures import Layout
from ..text.patterns import whole_words
from .groups import Group

_DIES = whole_words(
    r"dies? | die sets? | formers? | biegeform(?:en)? | formen | biegewerkzeuge? | matrices?",
    r"formes? | matriz | matric[ei] | matrijzen | matrijs | mal | mallen",
)
_MOST = 24


def with_radii_of_dies(layout: Layout, groups: list[Group]) -> list[Group]:
    """The tubes alone, each with the radius of its die; the groups as they are where any tube has a
    radius of its own or no die."""
    first = next((at for at, group in enumerate(groups) if "wall" in group.slots), 0)
    dies, tubes = groups[:first], groups[first:]
    if not dies or len(groups) > _MOST or any(g.row is not None or g.shape for g in groups):
        return groups
    if not all({*tube.slots} == {"od", "wall"} for tube in tubes) or not all(
        {"od"} <= {*die.slots} <= {"od", "clr"} and _is_die(layout, die) for die in dies
    ):
        return groups
    radii = {die.slots["clr"][0].index: die.slots["clr"] for die in dies if "clr" in die.slots}
    of_tube = [[die for die in dies if _is_for(die, tube)] for tube in tubes]
    for die in dies:
        if sum(_is_for(die, tube) for tube in tubes) != 1:
            return groups
    if len(radii) != 1 and not all(len(own) == 1 and "clr" in own[0].slots for own in of_tube):
        return groups
    (sole,) = radii.values() if len(radii) == 1 else (None,)
    for tube, own in zip(tubes, of_tube, strict=True):
        tube.slots["clr"] = sole or own[0].slots["clr"]
        tube.shared.add("clr")
    for die in dies:
        for figure in die.slots["od"]:
            figure.give("noise", "same")
    return tubes


def _is_for(die: Group, tube: Group) -> bool:
    return restates(die.slots["od"][0], tube.slots["od"][0])


def _is_die(layout: Layout, die: Group) -> bool:
    return layout.says(die.slots["od"][0].sentence, _DIES)
