"""Remembering what was worked out before, where a whole shop is among what it depends on."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Generic, TypeVar

T = TypeVar("T")


@dataclass(frozen=True, slots=True, eq=False)
class Itself(Generic[T]):
    """A frozen value as part of a key, equal only to the same object.

    A shop's value is hundreds of rows: comparing them would cost more than what is remembered.
    The key holds the object, so that its id can't pass to another one meanwhile.
    """

    value: T

    def __eq__(self, other: object) -> bool:
        return isinstance(other, Itself) and self.value is other.value

    def __hash__(self) -> int:
        return id(self.value)
