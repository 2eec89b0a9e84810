"""The store: one file (or a PostgreSQL database) with every inquiry, read and changed whole.

SQLAlchemy is imported only when a store is opened, so that commands without one start quickly.
"""

from __future__ import annotations

import glob
from collections.abc import Callable, Iterator
from contextlib import contextmanager, suppress
from datetime import UTC, datetime
from pathlib import Path
from typing import TYPE_CHECKING, Self

from .desk_errors import StoreError

if TYPE_CHECKING:
    from sqlalchemy import Connection

    from .store_forget import Eraser
    from .store_later import Later
    from .store_open import Place
    from .store_reader import Reader
    from .store_tally import TallyRead
    from .store_writer import Writer


NOT_PERMITTED = "42501"
BUSY = ("55P03", "40P01")
"""What PostgreSQL says where another program holds on to what is wanted: lock_not_available,
deadlock_detected (Appendix A of its manual).
"""


def _now() -> datetime:
    return datetime.now(UTC)


def open_store(
    where: str | Path,
    *,
    create: bool = True,
    clock: Callable[[], datetime] = _now,
    password: str | None = None,
) -> Store:
    """Open the store at a path or ``postgresql://`` URL, bringing it up to date first.

    ``create=False`` refuses where there is none yet. ``clock`` gives the present moment, aware.
    ``password`` is the server's.
    Raises StoreError in one sentence; NewerStoreError where a later program wrote it.
    """
    from .store_open import bring_up_to_date, find
    from .store_sqlite import use_wal

    place = find(where, create=create, password=password)
    try:
        with _plainly(place.name):
            backup = bring_up_to_date(place)
            if place.file is not None:
                use_wal(place.engine)
    except BaseException:
        place.engine.dispose()
        raise
    return Store(place, clock, backup)


class Store:
    """An open store. Close it, or use it in a ``with``."""

    def __init__(
        self, place: Place, clock: Callable[[], datetime], backup: Path | None = None
    ) -> None:
        self._place = place
        self._whole: Connection | None = None
        self._later: Later | None = None
        engine, on_server = place.engine, place.file is None
        # On a server each statement would see the moment it runs in, not that of the transaction.
        one_moment = {"isolation_level": "REPEATABLE READ"} if on_server else {}
        self._reads = engine.execution_options(writes=False, **one_moment)
        self._writes = engine.execution_options(writes=True)
        self.clock = clock
        self.backup = backup
        """The copy made before this opening changed the store, or None."""

    @property
    def name(self) -> str:
        """Where it is, for people."""
        return self._place.name

    def close(self) -> None:
        """Let go of the file or server."""
        self._place.engine.dispose()

    def __enter__(self) -> Self:
        return self

    def __exit__(self, *_: object) -> None:
        self.close()

    @contextmanager
    def reading(self) -> Iterator[Reader]:
        """The store as it is at one moment."""
        from .store_reader import Reader

        with self._transaction(writes=False) as connection:
            yield Reader(connection)

    @contextmanager
    def counting(self) -> Iterator[TallyRead]:
        """What the report counts, as it is at one moment."""
        from .store_tally import TallyRead

        with self._transaction(writes=False) as connection:
            yield TallyRead(connection)

    @contextmanager
    def writing(self) -> Iterator[Writer]:
        """One change of the store: whole when the ``with`` ends, undone when it raises."""
        from .store_writer import Writer

        with self._transaction(writes=True, puts_off=True) as connection:
            yield Writer(connection, self.clock(), self._later)

    @contextmanager
    def erasing(self) -> Iterator[Eraser]:
        """Words taken out, whole or not at all, and out of the file too, not only out of sight."""
        from .store_forget import Eraser
        from .store_sqlite import leave_no_trace, overwrite_what_goes

        with self._transaction(writes=True) as connection:
            if self._place.file is not None:
                overwrite_what_goes(connection)
            yield Eraser(connection, self.clock())
        if self._place.file is not None:
            with _plainly(self.name):
                leave_no_trace(self._place.engine)

    @property
    def backups(self) -> tuple[Path, ...]:
        """Copies of the store's file that were made before it was brought up to date."""
        file = self._place.file
        if file is None:
            return ()
        return tuple(sorted(file.parent.glob(f"{glob.escape(file.name)}.*.backup")))

    @contextmanager
    def together(self) -> Iterator[None]:
        """Several changes of one thread, made final at once: after a kill, all are there or none.

        Each is still whole or undone by itself. Only for taking messages in: of the programs that
        do that, one at a time holds on to several inquiries.
        """
        from .store_later import Later

        with self._transaction(writes=True) as self._whole:
            self._later = Later(self._whole)
            try:
                yield
                self._later.write()
            finally:
                self._whole = self._later = None

    @contextmanager
    def _transaction(self, *, writes: bool, puts_off: bool = False) -> Iterator[Connection]:
        """``puts_off``: may leave rows for ``_later``, and has them written before it looks."""
        if self._whole is not None and self._later is not None:
            if not puts_off:
                self._later.write()
            with _plainly(self.name), _part_of(self._whole, self._later):
                yield self._whole
            return
        engine = self._writes if writes else self._reads
        with _plainly(self.name), engine.begin() as connection:
            yield connection


@contextmanager
def _part_of(whole: Connection, later: Later) -> Iterator[None]:
    """A part of a transaction, undone by itself where it raises. SQLAlchemy's own way of saying
    this builds both statements anew each time, which takes longer than carrying them out.
    """
    from sqlalchemy.exc import DatabaseError

    whole.exec_driver_sql("SAVEPOINT part")
    waiting = later.how_many()
    try:
        yield
    except BaseException:
        later.undo(waiting)
        # A full disk undoes the whole by itself: then there is no part, and what counts is why.
        with suppress(DatabaseError):
            whole.exec_driver_sql("ROLLBACK TO SAVEPOINT part")
            whole.exec_driver_sql("RELEASE SAVEPOINT part")
        raise
    whole.exec_driver_sql("RELEASE SAVEPOINT part")


@contextmanager
def _plainly(name: str) -> Iterator[None]:
    """What the database refuses, in one sentence. A fault of ours (broken SQL, a broken rule of
    the schema) goes through as it is: it is no sentence for a person.
    """
    from sqlalchemy.exc import DatabaseError, OperationalError

    try:
        yield
    except DatabaseError as error:
        code = getattr(error.orig, "sqlstate", None)
        if type(error) not in (DatabaseError, OperationalError) and code != NOT_PERMITTED:
            raise
        why = " ".join(str(error.orig).split())
        if "locked" in why or code in BUSY:
            why = "another program is writing to it; try again in a moment"
        raise StoreError(f"the store {name} can't be used: {why}") from error
