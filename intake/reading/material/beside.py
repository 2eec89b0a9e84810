"""Materials beside sizes of one sentence, each right behind its size or each right ahead of it:
'1.5 x .065 mild steel and 2 x .083 304', '1.5 OD: 304 in .065 and mild steel in .095'."""

from __future__ import annotations

from collections.abc import Sequence

from ..sizes.groups import Group, own_figures
from ..text.figures import Figure, Layout
from .materials import MaterialMention


def beside_sizes(
    layout: Layout, groups: Sequence[Group], mentions: Sequence[MaterialMention]
) -> dict[int, list[MaterialMention]]:
    """The materials of each size that has its own on the same side as all others of its sentence,
    by the size's number."""
    found: dict[int, list[MaterialMention]] = {}
    for sentence, sizes in _by_sentence(groups).items():
        first, last = layout.spans[sentence]
        begin, end = layout.tokens[first].start, layout.tokens[last].end
        places = sorted((figure.start, number) for number, figure in sizes.items())
        starts, numbers = [place for place, _ in places], [number for _, number in places]
        gaps = [
            [m for m in mentions if low <= m.start < high]
            for low, high in zip([begin, *starts], [*starts, end], strict=True)
        ]
        ahead, behind = gaps[:-1], gaps[1:]
        if len(numbers) < 2 or any(_has_two(gap) for gap in gaps):
            continue
        if all(behind) and (not ahead[0] or _is_said_again(ahead[0], behind)):
            found |= dict(zip(numbers, behind, strict=True))
        elif all(ahead) and not behind[-1]:
            found |= dict(zip(numbers, ahead, strict=True))
    return found


def _by_sentence(groups: Sequence[Group]) -> dict[int, dict[int, Figure]]:
    """The figure at which each size begins, by sentence and size; where sizes have one OD and
    differ in their walls, the wall of each."""
    walls = {group.place("wall") for group in groups}
    by_wall = len({group.place("od") for group in groups}) == 1 and len(walls) == len(groups)
    sentences: dict[int, dict[int, Figure]] = {}
    for number, group in enumerate(groups):
        own = group.slots.get("wall", []) if by_wall else own_figures(group)
        if own:
            sentences.setdefault(own[0].sentence, {})[number] = own[0]
    return sentences


def _has_two(gap: Sequence[MaterialMention]) -> bool:
    """Two families between two sizes, none of them a choice: one may be of either size."""
    return len({m.family for m in gap if not m.alternative and not m.base}) > 1


def _is_said_again(
    first: Sequence[MaterialMention], behind: Sequence[Sequence[MaterialMention]]
) -> bool:
    """'Stainless railing: 1.5 x .065 304 and 2 x .083 mild': what stands first is no size's own."""
    return any(m.family == first[0].family for gap in behind for m in gap)
