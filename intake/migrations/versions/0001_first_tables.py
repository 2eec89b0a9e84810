"""The first tables: inquiries with their messages, drafts, corrections, words and history."""

from __future__ import annotations

import sqlalchemy as sa
from alembic import op

revision = "0001"
down_revision = None

MOMENT = sa.DateTime(timezone=True)


def upgrade() -> None:
    """Written out, not taken from store_schema: that goes on changing, this step must not."""
    op.create_table(
        "inquiry",
        sa.Column("id", sa.Integer, primary_key=True),
        sa.Column("version", sa.Integer, nullable=False),
        sa.Column("state", sa.String, nullable=False),
        sa.Column("kind", sa.String, nullable=False),
        sa.Column("decision", sa.String, nullable=False),
        sa.Column("created_at", MOMENT, nullable=False),
        sa.Column("waiting_since", MOMENT, nullable=False),
        sa.Column("needed_by", sa.Date),
        sa.Column("assessments", sa.Text, nullable=False),
        sa.Column("questions", sa.Text, nullable=False),
        sa.Column("notes", sa.Text, nullable=False),
        sqlite_autoincrement=True,
    )
    op.create_index(
        "ix_inquiry_state_needed_by_waiting_since",
        "inquiry",
        ["state", "needed_by", "waiting_since"],
    )
    _create_for_inquiry(
        "message",
        sa.Column("channel", sa.String, nullable=False),
        sa.Column("message_id", sa.String, nullable=False),
        sa.Column("raw_sha256", sa.String),
        sa.Column("thread", sa.String, nullable=False),
        sa.Column("in_reply_to", sa.String),
        sa.Column("sender_name", sa.String, nullable=False),
        sa.Column("sender", sa.String, nullable=False),
        sa.Column("subject", sa.String, nullable=False),
        sa.Column("received_at", MOMENT),
        sa.Column("kind", sa.String, nullable=False),
        sa.Column("why_kind", sa.String, nullable=False),
        sa.Column("message", sa.Text, nullable=False),
        sa.Column("source", sa.String, nullable=False),
        sa.Column("taken_at", MOMENT, nullable=False),
        sa.UniqueConstraint("channel", "message_id", name="uq_message_channel_message_id"),
        sa.UniqueConstraint("channel", "raw_sha256", name="uq_message_channel_raw_sha256"),
    )
    op.create_index("ix_message_thread", "message", ["thread"])
    _create_for_inquiry(
        "draft",
        sa.Column("number", sa.Integer, nullable=False),
        sa.Column("subject", sa.String, nullable=False),
        sa.Column("body", sa.Text, nullable=False),
        sa.Column("template", sa.String, nullable=False),
        sa.Column("answers", sa.Text, nullable=False),
        sa.Column("made_at", MOMENT, nullable=False),
        sa.Column("made_by", sa.String, nullable=False),
        sa.Column("withdrawn", sa.Boolean, nullable=False),
        sa.UniqueConstraint("inquiry_id", "number", name="uq_draft_inquiry_id_number"),
    )
    _create_for_inquiry(
        "correction",
        sa.Column("request_index", sa.Integer, nullable=False),
        sa.Column("field", sa.String, nullable=False),
        sa.Column("before", sa.String),
        sa.Column("after", sa.String),
        sa.Column("by", sa.String),
        sa.Column("at", MOMENT, nullable=False),
    )
    _create_for_inquiry(
        "word",
        sa.Column("said", sa.String, nullable=False),
        sa.Column("by", sa.String, nullable=False),
        sa.Column("why", sa.String, nullable=False),
        sa.Column("at", MOMENT, nullable=False),
        sa.Column("draft_number", sa.Integer),
    )
    _create_for_inquiry(
        "event",
        sa.Column("at", MOMENT, nullable=False),
        sa.Column("who", sa.String, nullable=False),
        sa.Column("what", sa.String, nullable=False),
        sa.Column("detail", sa.Text, nullable=False),
        of_one=False,
    )


def _create_for_inquiry(
    name: str, *rest: sa.Column[object] | sa.UniqueConstraint, of_one: bool = True
) -> None:
    """A table whose rows belong to an inquiry (``of_one``: always), found by it."""
    op.create_table(
        name,
        sa.Column("id", sa.Integer, primary_key=True),
        sa.Column(
            "inquiry_id",
            sa.Integer,
            sa.ForeignKey("inquiry.id", name=f"fk_{name}_inquiry_id"),
            nullable=not of_one,
        ),
        *rest,
    )
    op.create_index(f"ix_{name}_inquiry_id", name, ["inquiry_id"])
