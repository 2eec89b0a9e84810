"""Chat messages one by one: what a message was joined from, so that it can grow."""

from __future__ import annotations

import sqlalchemy as sa
from alembic import op

revision = "0009"
down_revision = "0008"


def upgrade() -> None:
    """Written out, not taken from store_schema: that goes on changing, this step must not."""
    op.create_table(
        "chat_line",
        sa.Column("id", sa.Integer, primary_key=True),
        sa.Column(
            "message_row",
            sa.Integer,
            sa.ForeignKey("message.id", name="fk_chat_line_message_row"),
            nullable=False,
        ),
        sa.Column("key", sa.String, nullable=False),
        sa.Column("channel", sa.String, nullable=False),
        sa.Column("thread", sa.String, nullable=False),
        sa.Column("who", sa.String, nullable=False),
        sa.Column("at", sa.DateTime(timezone=True), nullable=False),
        sa.Column("line", sa.Text, nullable=False),
        sa.UniqueConstraint("key", name="uq_chat_line_key"),
    )
    op.create_index("ix_chat_line_message_row", "chat_line", ["message_row"])
    op.create_index(
        "ix_chat_line_channel_thread_who_at", "chat_line", ["channel", "thread", "who", "at"]
    )
