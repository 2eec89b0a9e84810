"""A request being put together, and where in it each figure belongs."""

from __future__ import annotations

from dataclasses import dataclass, field, replace
from typing import Literal

from ..text.figures import Figure, Row
from ..text.roles import NOMINAL_ROLES, RADIUS_ROLES, Role

Slot = Literal["od", "id", "wall", "clr"]
SLOTS: tuple[Slot, ...] = ("od", "id", "wall", "clr")
_SLOT_OF: dict[Role, Slot] = {
    "od": "od",
    "id": "id",
    "wall": "wall",
    "schedule": "wall",
    **dict.fromkeys(NOMINAL_ROLES, "od"),
    **dict.fromkeys(RADIUS_ROLES, "clr"),
}


def slot_of(figure: Figure) -> Slot | None:
    """Which part of a request a figure fills; None for a side, and for what is no size."""
    if figure.shape or figure.role is None:
        return None
    return _SLOT_OF.get(figure.role)


@dataclass(slots=True, eq=False)
class Group:
    """One request being put together: a figure (with its restatements) for each slot."""

    slots: dict[Slot, list[Figure]] = field(default_factory=dict)
    shape: str | None = None
    side: Figure | None = None
    """The first figure of a cross-section that has no OD."""
    shared: set[Slot] = field(default_factory=set)
    """Slots taken over from another group."""
    row: Row | None = None
    notes: list[tuple[Slot, str]] = field(default_factory=list)
    """Doubts that arise from grouping: the slot, and why."""
    doubtful: str = ""
    """Why it may not be asked for at all: then its count and material are doubted too."""
    others_words: list[tuple[int, int]] = field(default_factory=list)
    """Where in the text sizes are told of that are not asked for: a material named there only may
    be theirs."""

    def copy(self) -> Group:
        """An independent copy whose slots can be replaced."""
        return replace(
            self,
            slots={slot: list(figures) for slot, figures in self.slots.items()},
            shared=set(self.shared),
            notes=list(self.notes),
        )

    @property
    def anchor(self) -> Figure | None:
        """The figure that tells where in the text this request stands."""
        return next((self.slots[slot][0] for slot in SLOTS if slot in self.slots), None)

    @property
    def has_tube(self) -> bool:
        """Whether an OD or a bore is known."""
        return "od" in self.slots or "id" in self.slots

    def place(self, slot: Slot) -> int:
        """Where a slot's figure stands, or -1."""
        return self.slots[slot][0].start if slot in self.slots else -1


def is_told_whole(group: Group, slot: Slot) -> bool:
    """Whether a tube's OD or bore follows from what is known: '.709 ID, .083 wall'."""
    other = {"od": "id", "id": "od"}.get(slot)
    return other is not None and {other, "wall"} <= group.slots.keys()


def own_figures(group: Group) -> list[Figure]:
    """The first figure of each slot that a group doesn't share with others, in the text's order."""
    own = [
        group.slots[slot][0] for slot in SLOTS if slot in group.slots and slot not in group.shared
    ]
    return sorted(own, key=lambda figure: figure.start)
