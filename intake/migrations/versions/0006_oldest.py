"""The oldest message is found at once: the Sent folder is looked through from its day on."""

from __future__ import annotations

from alembic import op

revision = "0006"
down_revision = "0004"


def upgrade() -> None:
    """Written out, not taken from store_schema: that goes on changing, this step must not."""
    op.create_index("ix_message_received_at", "message", ["received_at"])
