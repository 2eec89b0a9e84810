"""Rows that nothing looks for yet, written for several messages at once.

A row costs more on its way through SQLAlchemy than in the database; twenty of one table at once
cost little more than one. Whatever might look at them has them written first.
"""

from __future__ import annotations

from collections import defaultdict
from typing import Any, TypeVar, cast

import sqlalchemy as sa

from .store_schema import asked, draft, event, tally

_INSERTS = {one.name: sa.insert(one) for one in (asked, draft, event, tally)}
_ELSEWHERE: dict[int, sa.Executable] = {}
_Statement = TypeVar("_Statement", bound=sa.Executable)


def elsewhere(statement: _Statement) -> _Statement:
    """A statement that is kept and used again, and has nothing to do with those tables."""
    _ELSEWHERE[id(statement)] = statement
    return statement


class Later:
    """Rows of one transaction that wait to be written."""

    def __init__(self, connection: sa.Connection) -> None:
        self._connection = connection
        self._rows: dict[str, list[dict[str, Any]]] = defaultdict(list)

    def add(self, table: sa.Table, rows: list[dict[str, Any]]) -> None:
        """Rows that all have the same columns."""
        self._rows[table.name] += rows

    def write(self) -> None:
        """Write down what waits."""
        waiting, self._rows = self._rows, defaultdict(list)
        for name, rows in waiting.items():
            if rows:
                self._connection.execute(_INSERTS[name], rows)

    def how_many(self) -> dict[str, int]:
        """How many rows of each table wait."""
        return {name: len(rows) for name, rows in self._rows.items()}

    def undo(self, since: dict[str, int]) -> None:
        """Forget what came after ``how_many`` said so."""
        for name, rows in self._rows.items():
            del rows[since.get(name, 0) :]

    def before_looking(self) -> sa.Connection:
        """The connection, before whose statements the rows are written."""
        return cast("sa.Connection", _WritesFirst(self._connection, self))


class _WritesFirst:
    def __init__(self, connection: sa.Connection, later: Later) -> None:
        self._connection = connection
        self._later = later

    def execute(self, statement: sa.Executable, *args: Any, **kwargs: Any) -> sa.CursorResult[Any]:
        if id(statement) not in _ELSEWHERE:
            self._later.write()
        return self._connection.execute(statement, *args, **kwargs)

    def __getattr__(self, name: str) -> Any:
        return getattr(self._connection, name)
