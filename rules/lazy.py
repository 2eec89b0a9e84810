"""A figure worked out when it is first asked for, and kept."""

from __future__ import annotations

from collections.abc import Callable
from typing import Any, Generic, TypeVar, overload

T = TypeVar("T")


class lazy(Generic[T]):  # noqa: N801 -- written as a decorator, beside property
    """A property whose value is kept in the instance's ``__dict__``, frozen or not.

    functools.cached_property does the same, but up to Python 3.11 takes a lock each time, which
    was a fifth of the time that an assessment took. No lock is needed: what is worked out depends
    on nothing that changes, so doing it twice gives the same.
    """

    def __init__(self, work: Callable[[Any], T]) -> None:
        self.work = work
        self.name = work.__name__
        self.__doc__ = work.__doc__

    @overload
    def __get__(self, instance: None, owner: type) -> lazy[T]: ...

    @overload
    def __get__(self, instance: object, owner: type) -> T: ...

    def __get__(self, instance: object | None, owner: type) -> lazy[T] | T:
        if instance is None:
            return self
        value = self.work(instance)
        # From now on found before this descriptor, which defines no __set__.
        instance.__dict__[self.name] = value
        return value
