"""A message says what it is to its inquiry: the customer's, a copy, one from before the others."""

from __future__ import annotations

import sqlalchemy as sa
from alembic import op

revision = "0003"
down_revision = "0002"


def upgrade() -> None:
    """Written out, not taken from store_schema: that goes on changing, this step must not."""
    op.add_column(
        "message", sa.Column("role", sa.String, nullable=False, server_default="customer")
    )
    op.create_index("ix_message_sender", "message", ["sender"])
