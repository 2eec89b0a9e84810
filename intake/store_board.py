"""What the review page asks of the store again and again: has anything changed, and what waits."""

from __future__ import annotations

import sqlalchemy as sa

from .inquiry import State
from .store_schema import event, inquiry

_LAST_EVENT = sa.select(sa.func.count(event.c.id), sa.func.max(event.c.id))
_WAITING = (
    sa.select(inquiry.c.id, inquiry.c.version)
    .where(inquiry.c.state == State.WAITING)
    .order_by(
        inquiry.c.needed_by.is_(None),
        inquiry.c.needed_by,
        inquiry.c.waiting_since,
        inquiry.c.id,
    )
)


class BoardRead:
    """Part of ``Reader``."""

    _connection: sa.Connection

    def waiting(self) -> list[tuple[int, int]]:
        """(number, version) of what waits, in the order of ``backlog``."""
        return [(number, version) for number, version in self._connection.execute(_WAITING)]

    def last_event(self) -> tuple[int, int]:
        """(how many, highest number) of all events: another pair once anything has changed.

        Both, since on a database server a lower number can be made final after a higher one.
        """
        count, highest = self._connection.execute(_LAST_EVENT).one()
        return count, highest or 0
