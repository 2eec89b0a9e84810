"""Replies seen in the Sent folder: what closed an inquiry, how fast, how near to the draft."""

from __future__ import annotations

import sqlalchemy as sa
from alembic import op

revision = "0004"
down_revision = "0003"


def upgrade() -> None:
    """Written out, not taken from store_schema: that goes on changing, this step must not."""
    op.create_table(
        "reply",
        sa.Column("id", sa.Integer, primary_key=True),
        sa.Column(
            "inquiry_id",
            sa.Integer,
            sa.ForeignKey("inquiry.id", name="fk_reply_inquiry_id"),
            nullable=False,
        ),
        sa.Column("message_id", sa.String, nullable=False),
        sa.Column("sent_at", sa.DateTime(timezone=True)),
        sa.Column("after_s", sa.Integer),
        sa.Column("draft_number", sa.Integer),
        sa.Column("likeness", sa.Float),
        sa.Column("body", sa.Text, nullable=False),
        sa.UniqueConstraint("message_id", name="uq_reply_message_id"),
    )
    op.create_index("ix_reply_inquiry_id", "reply", ["inquiry_id"])
