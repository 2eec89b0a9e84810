"""Writing things down in the store: every statement that changes it."""

from __future__ import annotations

from datetime import date, datetime
from typing import Any

import sqlalchemy as sa

from . import store_json as packing
from .desk_errors import ChangedMeanwhileError, ClashError
from .inquiry import Correction, Inquiry, Reply, Role, State, Word
from .message_keys import as_key, thread
from .model import Draft, Result
from .store_chat import ChatWrite
from .store_json import keepable
from .store_later import Later, elsewhere
from .store_marks import MarksWrite
from .store_reader import Reader
from .store_schema import (
    asked,
    correction,
    draft,
    event,
    inquiry,
    message,
    reply,
    tally,
    word,
)
from .store_tally import TallyWrite

_INSERTS = {
    one.name: sa.insert(one)
    for one in (asked, correction, draft, event, inquiry, message, reply, tally, word)
}
elsewhere(_INSERTS[inquiry.name])
elsewhere(_INSERTS[message.name])


class Writer(Reader, MarksWrite, ChatWrite, TallyWrite):
    """What can be written within one transaction. Made by ``Store.writing``."""

    def __init__(
        self, connection: sa.Connection, now: datetime, later: Later | None = None
    ) -> None:
        super().__init__(connection if later is None else later.before_looking())
        self.now = now
        """All that one transaction writes bears the same time."""
        self._later = later

    def begin_collecting(self) -> None:
        """Let nobody else take messages in until this transaction ends; in a file nobody can."""
        if self._connection.dialect.name == "postgresql":
            from .store_server import alone_collecting

            alone_collecting(self._connection)

    def add_inquiry(
        self, result: Result, *, state: State, decision: str, needed_by: date | None
    ) -> int:
        """A new inquiry; its number."""
        judged = _judged(result, decision, needed_by)
        key = self._insert(
            inquiry,
            version=1,
            state=state,
            created_at=self.now,
            waiting_since=result.message.received_at or self.now,
            **judged,
        )
        assert key is not None, "one row was put in"
        number: int = key[0]
        self.tally_new(number, result)
        return number

    def add_message(
        self,
        number: int,
        result: Result,
        *,
        key: str,
        source: str,
        role: Role = Role.CUSTOMER,
    ) -> int:
        """A message of an inquiry, kept under ``key``; the number of its row.

        Raises ClashError where it is there already; nothing of the transaction can stay then.
        """
        came = result.message
        values = {
            "inquiry_id": number,
            "channel": came.channel,
            "message_id": key,
            "raw_sha256": came.raw_sha256 or None,
            "thread": as_key(thread(came)),
            "in_reply_to": _kept(came.in_reply_to),
            "sender_name": keepable(came.sender.name),
            "sender": as_key(came.sender.address),
            "subject": keepable(came.subject),
            "received_at": came.received_at,
            "kind": result.kind,
            "why_kind": keepable(result.why_kind),
            "message": packing.pack_message(came),
            "source": keepable(source),
            "taken_at": self.now,
            "role": role,
        }
        try:
            row = self._insert(message, **values)
        except sa.exc.IntegrityError as error:
            raise ClashError(f"the message from {source} is in the store already") from error
        assert row is not None, "one row was put in"
        number_of_row: int = row[0]
        return number_of_row

    def add_draft(self, number: int, draft_number: int, words: Draft, *, by: str) -> None:
        """One more wording of the reply."""
        self._put(
            draft,
            inquiry_id=number,
            number=draft_number,
            subject=keepable(words.subject),
            body=keepable(words.body),
            template=keepable(words.template),
            answers=packing.pack_words(words.answers),
            made_at=self.now,
            made_by=keepable(by),
            withdrawn=False,
        )

    def withdraw_drafts(self, number: int) -> None:
        """No draft of the inquiry stands any more; all are kept."""
        self._connection.execute(
            sa.update(draft).where(draft.c.inquiry_id == number).values(withdrawn=True)
        )

    def add_correction(self, number: int, made: Correction) -> None:
        """One field put right."""
        self._insert(
            correction,
            inquiry_id=number,
            request_index=made.index,
            field=made.field,
            before=_kept(made.before),
            after=_kept(made.after),
            by=_kept(made.by),
            at=made.at,
            notation=made.notation,
        )

    def add_word(self, number: int, given: Word) -> None:
        """What a person said."""
        self._insert(
            word,
            inquiry_id=number,
            said=given.said,
            by=keepable(given.by),
            why=keepable(given.why),
            at=given.at,
            draft_number=given.draft_number,
        )

    def add_reply(self, number: int, seen: Reply) -> None:
        """A reply found in the Sent folder."""
        self._insert(
            reply,
            inquiry_id=number,
            message_id=as_key(seen.message_id),
            sent_at=seen.sent_at,
            after_s=None if seen.after is None else int(seen.after.total_seconds()),
            draft_number=seen.draft_number,
            likeness=seen.likeness,
            body=keepable(seen.body),
        )

    def log(self, number: int, who: str, what: str, **detail: object) -> None:
        """A line of the history."""
        self._put(
            event,
            inquiry_id=number,
            at=self.now,
            who=keepable(who),
            what=what,
            detail=packing.pack_detail(detail),
        )

    def move(self, seen: Inquiry, state: State) -> None:
        """The inquiry stands elsewhere from now on.

        Raises ChangedMeanwhileError where it is no longer the version that was ``seen``.
        """
        self._change(seen, state=state)

    def judge_again(
        self, seen: Inquiry, result: Result, *, decision: str, needed_by: date | None
    ) -> None:
        """The inquiry as judged anew; it waits for a person. Raises as ``move`` does."""
        self._change(seen, state=State.WAITING, **_judged(result, decision, needed_by))
        self.tally_again(seen.id, result)

    def _change(self, seen: Inquiry, **values: Any) -> None:
        done = self._connection.execute(
            sa.update(inquiry)
            .where(inquiry.c.id == seen.id, inquiry.c.version == seen.version)
            .values(version=seen.version + 1, **values)
        )
        if done.rowcount != 1:
            raise ChangedMeanwhileError.of(seen.id)

    def _insert(self, table: sa.Table, **values: Any) -> sa.Row[Any] | None:
        return self._connection.execute(_INSERTS[table.name], values).inserted_primary_key

    def _put(self, table: sa.Table, **values: Any) -> None:
        self._put_all(table, [values])

    def _put_all(self, table: sa.Table, rows: list[dict[str, Any]]) -> None:
        """Rows whose numbers nobody asks for: written with others where there are several."""
        if self._later is None:
            self._connection.execute(_INSERTS[table.name], rows)
        else:
            self._later.add(table, rows)


def _kept(text: str | None) -> str | None:
    return None if text is None else keepable(text)


def _judged(result: Result, decision: str, needed_by: date | None) -> dict[str, Any]:
    return {
        "kind": result.kind,
        "decision": decision,
        "needed_by": needed_by,
        "assessments": packing.pack_assessments(result.assessments),
        "questions": packing.pack_questions(result.questions),
        # What could not be decoded, too: a line of the backlog is made of the inquiry alone.
        "notes": packing.pack_words((*result.message.faults, *result.notes)),
    }
