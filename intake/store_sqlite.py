"""All that holds for SQLite only: how transactions begin, what is set on opening, a backup copy."""

from __future__ import annotations

import sqlite3
import time
from contextlib import closing
from pathlib import Path
from typing import TYPE_CHECKING

from .desk_errors import StoreError

if TYPE_CHECKING:
    from sqlalchemy import Connection, Engine

WAIT_S = 10.0
"""How long one program waits for another that is writing."""
_MAGIC = b"SQLite format 3\0"


def check_file(path: Path, *, create: bool) -> None:
    """Refuse, in one sentence, what SQLite would open as a new store or refuse in its own words."""
    if path.is_dir():
        raise StoreError(f"{path} is a folder, not a store")
    # An empty file is what SQLite makes of a store that nothing was written to.
    if not path.exists() or (not create and path.is_file() and path.stat().st_size == 0):
        if not create:
            raise StoreError(f"there is no store at {path} yet: collect some messages first")
        if not path.parent.is_dir():
            raise StoreError(f"the folder {path.parent} for the store does not exist")
        return
    try:
        with path.open("rb") as file:
            start = file.read(len(_MAGIC))
    except OSError as error:
        raise StoreError(f"the store {path} can't be read: {error.strerror}") from error
    if start not in (b"", _MAGIC):
        raise StoreError(f"{path} is not a bendreply store: it is some other kind of file")


def prepare(engine: Engine) -> None:
    """Make each transaction of the engine begin by our word, and set what each connection needs."""
    from sqlalchemy import event

    @event.listens_for(engine, "connect")
    def _connected(connection: sqlite3.Connection, _record: object) -> None:
        # Python's own habit is to begin late and to leave table changes outside.
        connection.isolation_level = None
        with closing(connection.cursor()) as cursor:
            cursor.execute("PRAGMA foreign_keys = ON")
            # FULL: what a person said survives a power cut, not only a crash of the program.
            cursor.execute("PRAGMA synchronous = FULL")

    @event.listens_for(engine, "begin")
    def _begun(connection: Connection) -> None:
        # Two writers that both begin by reading could not both go on to write: the second would
        # be refused at once, however long it is willing to wait. So a writer says so at the start.
        writes = connection.get_execution_options().get("writes", False)
        connection.exec_driver_sql("BEGIN IMMEDIATE" if writes else "BEGIN")


def use_wal(engine: Engine) -> None:
    """Let readers and one writer work side by side. The mode stays with the file, so this comes
    after the file is known to be a store of ours.
    """
    deadline = time.monotonic() + WAIT_S
    with closing(engine.raw_connection()) as connection, closing(connection.cursor()) as cursor:
        while cursor.execute("PRAGMA journal_mode").fetchone()[0] != "wal":
            try:
                cursor.execute("PRAGMA journal_mode = WAL")
                return  # where WAL can't be had, SQLite stays as it was: slower, but as safe
            except sqlite3.OperationalError as error:
                # Another program is using the new store, and here SQLite does not wait by itself.
                if time.monotonic() > deadline:
                    raise StoreError("the store is in use by another program") from error
                time.sleep(0.01)


def overwrite_what_goes(connection: Connection) -> None:
    """From now on this connection overwrites with zeros what it takes out of the file."""
    connection.exec_driver_sql("PRAGMA secure_delete = ON")


def leave_no_trace(engine: Engine) -> None:
    """Move the log of changes into the file and empty it: it holds what was there before.

    Where another program is reading meanwhile, the next change does it.
    """
    with closing(engine.raw_connection()) as connection, closing(connection.cursor()) as cursor:
        cursor.execute("PRAGMA wal_checkpoint(TRUNCATE)")


def back_up(path: Path, copy: Path) -> None:
    """A complete copy of the store in one file, also while others read and write it.

    Written under another name first: a copy cut short must not look like one.
    """
    unfinished = copy.with_name(copy.name + ".unfinished")
    unfinished.unlink(missing_ok=True)
    with closing(sqlite3.connect(path)) as source, closing(sqlite3.connect(unfinished)) as target:
        source.backup(target)
    unfinished.replace(copy)
