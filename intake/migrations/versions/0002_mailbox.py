"""What is remembered of the shop's mailbox: how far each folder is read, what was left out."""

from __future__ import annotations

import sqlalchemy as sa
from alembic import op

revision = "0002"
down_revision = "0001"

MOMENT = sa.DateTime(timezone=True)


def upgrade() -> None:
    """Written out, not taken from store_schema: that goes on changing, this step must not."""
    op.create_table(
        "folder_mark",
        sa.Column("id", sa.Integer, primary_key=True),
        sa.Column("account", sa.String, nullable=False),
        sa.Column("folder", sa.String, nullable=False),
        sa.Column("uidvalidity", sa.BigInteger, nullable=False),
        sa.Column("next_uid", sa.BigInteger, nullable=False),
        sa.Column("since", sa.Date),
        sa.Column("at", MOMENT, nullable=False),
        sa.UniqueConstraint("account", "folder", name="uq_folder_mark_account_folder"),
    )
    op.create_table(
        "held_back",
        sa.Column("id", sa.Integer, primary_key=True),
        sa.Column("account", sa.String, nullable=False),
        sa.Column("folder", sa.String, nullable=False),
        sa.Column("uidvalidity", sa.BigInteger, nullable=False),
        sa.Column("uid", sa.BigInteger, nullable=False),
        sa.Column("at", MOMENT, nullable=False),
        sa.UniqueConstraint(
            "account", "folder", "uidvalidity", "uid",
            name="uq_held_back_account_folder_uidvalidity_uid",
        ),
    )  # fmt: skip
