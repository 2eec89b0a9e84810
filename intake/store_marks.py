"""How far each folder of the shop's mailbox is read, and which of its messages were left out."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import date, datetime

import sqlalchemy as sa

from .store_schema import folder_mark, held_back


@dataclass(frozen=True, slots=True)
class Mark:
    """Up to where a folder is read. UIDs count only within one UIDVALIDITY (RFC 3501 2.3.1.1)."""

    uidvalidity: int
    next_uid: int
    since: date | None = None
    """Older mail was passed over; None: none was."""


class MarksRead:
    """Looking marks up. Part of ``store_reader.Reader``."""

    _connection: sa.Connection

    def mark(self, account: str, folder: str) -> Mark | None:
        """How far a folder is read; None where it never was."""
        found = self._connection.execute(
            sa.select(folder_mark.c.uidvalidity, folder_mark.c.next_uid, folder_mark.c.since).where(
                folder_mark.c.account == account, folder_mark.c.folder == folder
            )
        ).one_or_none()
        return None if found is None else Mark(*found)

    def held_back(self, account: str, folder: str, uidvalidity: int) -> tuple[int, ...]:
        """UIDs of messages that could not be used so far, to be tried again."""
        found = self._connection.execute(
            sa.select(held_back.c.uid)
            .where(
                held_back.c.account == account,
                held_back.c.folder == folder,
                held_back.c.uidvalidity == uidvalidity,
            )
            .order_by(held_back.c.uid)
        )
        return tuple(found.scalars())


class MarksWrite:
    """Setting marks. Part of ``store_writer.Writer``."""

    _connection: sa.Connection
    now: datetime

    def set_mark(self, account: str, folder: str, mark: Mark) -> None:
        """A folder is read up to there. What was held back under another UIDVALIDITY is forgotten:
        all of the folder is looked through again then.
        """
        place = (folder_mark.c.account == account, folder_mark.c.folder == folder)
        values = {
            "uidvalidity": mark.uidvalidity,
            "next_uid": mark.next_uid,
            "since": mark.since,
            "at": self.now,
        }
        done = self._connection.execute(sa.update(folder_mark).where(*place).values(values))
        if not done.rowcount:
            self._connection.execute(
                sa.insert(folder_mark).values(account=account, folder=folder, **values)
            )
        self._connection.execute(
            sa.delete(held_back).where(
                held_back.c.account == account,
                held_back.c.folder == folder,
                held_back.c.uidvalidity != mark.uidvalidity,
            )
        )

    def hold_back(
        self, account: str, folder: str, uidvalidity: int, uid: int, *, usable: bool
    ) -> None:
        """A message that can't be used now is tried again at each run, until it is ``usable``."""
        self._connection.execute(
            sa.delete(held_back).where(
                held_back.c.account == account,
                held_back.c.folder == folder,
                held_back.c.uidvalidity == uidvalidity,
                held_back.c.uid == uid,
            )
        )
        if not usable:
            self._connection.execute(
                sa.insert(held_back).values(
                    account=account, folder=folder, uidvalidity=uidvalidity, uid=uid, at=self.now
                )
            )
