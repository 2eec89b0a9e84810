"""The tables of the store. Imported late: it brings SQLAlchemy with it.

Whoever changes a table here adds a step in ``migrations/versions`` and its name to
``migrations.REVISIONS``; a test compares the two.
"""

from __future__ import annotations

from datetime import UTC, datetime

import sqlalchemy as sa
from sqlalchemy.engine import Dialect


class UtcDateTime(sa.types.TypeDecorator[datetime]):
    """An aware moment, kept in UTC. SQLite keeps no zone, so it is put back on the way out."""

    impl = sa.DateTime(timezone=True)
    cache_ok = True

    def process_bind_param(self, value: datetime | None, dialect: Dialect) -> datetime | None:
        """Aware moments only: a bare clock time would be a guess."""
        if value is None:
            return None
        if value.tzinfo is None:
            raise ValueError("a moment without a time zone can't be kept")
        moment = value.astimezone(UTC)
        return moment.replace(tzinfo=None) if dialect.name == "sqlite" else moment

    def process_result_value(self, value: datetime | None, dialect: Dialect) -> datetime | None:
        """Always aware, always UTC."""
        if value is None:
            return None
        return value.replace(tzinfo=UTC) if dialect.name == "sqlite" else value.astimezone(UTC)


metadata = sa.MetaData(
    naming_convention={
        "pk": "pk_%(table_name)s",
        "fk": "fk_%(table_name)s_%(column_0_name)s",
        "uq": "uq_%(table_name)s_%(column_0_N_name)s",
        "ix": "ix_%(table_name)s_%(column_0_N_name)s",
    }
)


def _inquiry_id() -> sa.Column[int]:
    return sa.Column("inquiry_id", sa.ForeignKey("inquiry.id"), nullable=False, index=True)


inquiry = sa.Table(
    "inquiry",
    metadata,
    sa.Column("id", sa.Integer, primary_key=True),
    sa.Column("version", sa.Integer, nullable=False),
    sa.Column("state", sa.String, nullable=False),
    sa.Column("kind", sa.String, nullable=False),
    sa.Column("decision", sa.String, nullable=False),
    sa.Column("created_at", UtcDateTime, nullable=False),
    sa.Column("waiting_since", UtcDateTime, nullable=False),
    sa.Column("needed_by", sa.Date),
    sa.Column("assessments", sa.Text, nullable=False),
    sa.Column("questions", sa.Text, nullable=False),
    sa.Column("notes", sa.Text, nullable=False),
    sa.Index(None, "state", "needed_by", "waiting_since"),
    sqlite_autoincrement=True,  # people quote these numbers: none is ever given out twice
)

message = sa.Table(
    "message",
    metadata,
    sa.Column("id", sa.Integer, primary_key=True),
    _inquiry_id(),
    sa.Column("channel", sa.String, nullable=False),
    sa.Column("message_id", sa.String, nullable=False),
    sa.Column("raw_sha256", sa.String),
    sa.Column("thread", sa.String, nullable=False, index=True),
    sa.Column("in_reply_to", sa.String),
    sa.Column("sender_name", sa.String, nullable=False),
    sa.Column("sender", sa.String, nullable=False, index=True),
    sa.Column("subject", sa.String, nullable=False),
    sa.Column("received_at", UtcDateTime, index=True),
    sa.Column("kind", sa.String, nullable=False),
    sa.Column("why_kind", sa.String, nullable=False),
    sa.Column("message", sa.Text, nullable=False),
    sa.Column("source", sa.String, nullable=False),
    sa.Column("taken_at", UtcDateTime, nullable=False),
    sa.Column("role", sa.String, nullable=False, server_default="customer"),
    sa.UniqueConstraint("channel", "message_id"),
    sa.UniqueConstraint("channel", "raw_sha256"),
)

draft = sa.Table(
    "draft",
    metadata,
    sa.Column("id", sa.Integer, primary_key=True),
    _inquiry_id(),
    sa.Column("number", sa.Integer, nullable=False),
    sa.Column("subject", sa.String, nullable=False),
    sa.Column("body", sa.Text, nullable=False),
    sa.Column("template", sa.String, nullable=False),
    sa.Column("answers", sa.Text, nullable=False),
    sa.Column("made_at", UtcDateTime, nullable=False),
    sa.Column("made_by", sa.String, nullable=False),
    sa.Column("withdrawn", sa.Boolean, nullable=False),
    sa.UniqueConstraint("inquiry_id", "number"),
)

correction = sa.Table(
    "correction",
    metadata,
    sa.Column("id", sa.Integer, primary_key=True),
    _inquiry_id(),
    sa.Column("request_index", sa.Integer, nullable=False),
    sa.Column("field", sa.String, nullable=False),
    sa.Column("before", sa.String),
    sa.Column("after", sa.String),
    sa.Column("by", sa.String),
    sa.Column("at", UtcDateTime, nullable=False),
    sa.Column("notation", sa.String),
)

word = sa.Table(
    "word",
    metadata,
    sa.Column("id", sa.Integer, primary_key=True),
    _inquiry_id(),
    sa.Column("said", sa.String, nullable=False),
    sa.Column("by", sa.String, nullable=False),
    sa.Column("why", sa.String, nullable=False),
    sa.Column("at", UtcDateTime, nullable=False),
    sa.Column("draft_number", sa.Integer),
)

event = sa.Table(
    "event",
    metadata,
    sa.Column("id", sa.Integer, primary_key=True),
    sa.Column("inquiry_id", sa.ForeignKey("inquiry.id"), index=True),
    sa.Column("at", UtcDateTime, nullable=False),
    sa.Column("who", sa.String, nullable=False),
    sa.Column("what", sa.String, nullable=False),
    sa.Column("detail", sa.Text, nullable=False),
)

reply = sa.Table(
    "reply",
    metadata,
    sa.Column("id", sa.Integer, primary_key=True),
    _inquiry_id(),
    sa.Column("message_id", sa.String, nullable=False),
    sa.Column("sent_at", UtcDateTime),
    sa.Column("after_s", sa.Integer),
    sa.Column("draft_number", sa.Integer),
    sa.Column("likeness", sa.Float),
    sa.Column("body", sa.Text, nullable=False),
    sa.UniqueConstraint("message_id"),
)

folder_mark = sa.Table(
    "folder_mark",
    metadata,
    sa.Column("id", sa.Integer, primary_key=True),
    sa.Column("account", sa.String, nullable=False),
    sa.Column("folder", sa.String, nullable=False),
    sa.Column("uidvalidity", sa.BigInteger, nullable=False),  # 32 bits without a sign: RFC 3501
    sa.Column("next_uid", sa.BigInteger, nullable=False),
    sa.Column("since", sa.Date),
    sa.Column("at", UtcDateTime, nullable=False),
    sa.UniqueConstraint("account", "folder"),
)

held_back = sa.Table(
    "held_back",
    metadata,
    sa.Column("id", sa.Integer, primary_key=True),
    sa.Column("account", sa.String, nullable=False),
    sa.Column("folder", sa.String, nullable=False),
    sa.Column("uidvalidity", sa.BigInteger, nullable=False),
    sa.Column("uid", sa.BigInteger, nullable=False),
    sa.Column("at", UtcDateTime, nullable=False),
    sa.UniqueConstraint("account", "folder", "uidvalidity", "uid"),
)

# What the report counts, in narrow columns: two years of it have to be read in a moment, which the
# whole assessments, as JSON, would not allow. Both tables follow from the inquiry, and outlive its
# words.
tally = sa.Table(
    "tally",
    metadata,
    sa.Column("inquiry_id", sa.ForeignKey("inquiry.id"), primary_key=True, autoincrement=False),
    sa.Column("at", UtcDateTime, nullable=False, index=True),
    sa.Column("customer", sa.String, nullable=False),
    sa.Column("kind", sa.String, nullable=False),
    sa.Column("open_questions", sa.Integer, nullable=False),
)

asked = sa.Table(
    "asked",
    metadata,
    sa.Column("id", sa.Integer, primary_key=True),
    _inquiry_id(),
    sa.Column("request_index", sa.Integer, nullable=False),
    sa.Column("shape", sa.String, nullable=False),
    sa.Column("od_mm", sa.String),  # decimals as text: exact in every database
    sa.Column("wall_mm", sa.String),
    sa.Column("clr_mm", sa.String),
    sa.Column("material", sa.String),
    sa.Column("doubtful", sa.Boolean, nullable=False),
    sa.Column("decision", sa.String, nullable=False),
    sa.Column("wanted", sa.Integer),
    sa.Column("buying", sa.Boolean, nullable=False),
    sa.Column("mandrel_low_mm", sa.String),
    sa.Column("mandrel_high_mm", sa.String),
    sa.Column("balls", sa.Integer),
    sa.Column("surfaces", sa.String, nullable=False),
    sa.UniqueConstraint("inquiry_id", "request_index"),
)

chat_line = sa.Table(
    "chat_line",
    metadata,
    sa.Column("id", sa.Integer, primary_key=True),
    sa.Column("message_row", sa.ForeignKey("message.id"), nullable=False, index=True),
    sa.Column("key", sa.String, nullable=False),
    sa.Column("channel", sa.String, nullable=False),
    sa.Column("thread", sa.String, nullable=False),
    sa.Column("who", sa.String, nullable=False),
    sa.Column("at", UtcDateTime, nullable=False),
    sa.Column("line", sa.Text, nullable=False),
    sa.UniqueConstraint("key"),
    sa.Index(None, "channel", "thread", "who", "at"),
)
