"""A net: two radii of which one is preferred and the other only a fallback.

'I'd rather use the 4.5. If it won't go I'll live with the 6', 'am liebsten R 76, notfalls R 114':
one mandrel is wanted, and on which radius it depends on the answer.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from ..naming.likeness import restates
from ..sizes.groups import Group
from ..text.figures import Layout
from ..text.patterns import whole_words

PREFERRED = "one radius is preferred, and the other is for the case that it does not go"

_PREFERS = whole_words(
    r"(?:'d|would) (?:much )?(?:rather|prefer(?! to (?:pay|order|buy|pick))|sooner|like to use)",
    r"prefer(?:red|ably|ence)? | ideally | first choice | would be (?:best|ideal|better|nicer)",
    r"(?:am )?liebsten | lieber | bevorzug\w+ | ideal(?:erweise)? | wenn möglich | wäre "
    r"(?:besser|ideal)",
    r"de préférence | préfér\w+ | idéalement | si possible | on aimerait mieux",
    r"preferible(?:mente)? | prefer\w+ | a ser posible | si es posible | idealmente | mejor con",
    r"preferibil(?:e|mente) | se possibile | meglio (?:con|il|r)",
    r"(?:het )?liefst | bij voorkeur | als het kan | idealiter | voorkeur",
)
_FALLBACK = whole_words(
    r"live with | fall ?back | make do with | settle for | if (?:it|that|the \S+) "
    r"(?:won't|can't|doesn't"
    r"|will not|does not|isn't|is not|is too)",
    r"if (?:not|need be|necessary|you can't) | otherwise | or else | failing that | second choice",
    r"worst case | as a last resort | could (?:also )?(?:use|do|run|take) | at a push",
    r"notfalls | zur not | sonst | ansonsten | falls (?:nicht|das nicht|es nicht) | wenn nicht",
    r"sinon | à défaut | au pire | à la rigueur | si ça ne | si no | de lo contrario | en "
    r"su defecto",
    r"en el peor | altrimenti | se no | al limite | in alternativa | anders | desnoods | zo niet",
    r"als dat niet",
)
_FAR = 2
"""Sentences from a radius in which the words stand."""


def preferred(layout: Layout, groups: Sequence[Group]) -> Iterator[tuple[Group, str]]:
    """The sizes of one tube that differ in the radius, where one is a fallback."""
    radii = [group for group in groups if "clr" in group.slots and group.row is None]
    if len(radii) < 2:
        return
    sentences = {figure.sentence for group in radii for figure in group.slots["clr"]}
    near = {at + step for at in sentences for step in range(_FAR + 1)}
    prefers = any(layout.says(at, _PREFERS) for at in near)
    falls_back = any(layout.says(at, _FALLBACK) for at in near)
    if not (prefers and falls_back):
        return
    for number, group in enumerate(radii):
        others = radii[max(0, number - 4) : number + 5]
        if any(_differ_in_radius(group, other) for other in others if other is not group):
            yield group, PREFERRED


def _differ_in_radius(one: Group, other: Group) -> bool:
    for slot in ("od", "wall"):
        mine, its = one.slots.get(slot), other.slots.get(slot)
        if (mine is None) != (its is None):
            return False
        if mine and its and not restates(mine[0], its[0]):
            return False
    return one.slots["clr"][0].number.value != other.slots["clr"][0].number.value
