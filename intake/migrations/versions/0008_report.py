"""What the report counts in columns of its own, filled from what is stored; how a corrected figure
was written.
"""

from __future__ import annotations

import json
from typing import Any

import sqlalchemy as sa
from alembic import op

revision = "0008"
down_revision = "0006"

AT_A_TIME = 500
SIZE_FIELDS = ("od", "wall", "clr", "material", "shape")
MACHINES = ("noreply@", "no-reply@", "donotreply@", "web@", "www@", "form@", "forms@", "contact@")


def upgrade() -> None:
    """Written out, not taken from store_schema: that goes on changing, this step must not."""
    op.add_column("correction", sa.Column("notation", sa.String))
    tally = op.create_table(
        "tally",
        sa.Column(
            "inquiry_id",
            sa.Integer,
            sa.ForeignKey("inquiry.id", name="fk_tally_inquiry_id"),
            primary_key=True,
            autoincrement=False,
        ),
        sa.Column("at", sa.DateTime(timezone=True), nullable=False),
        sa.Column("customer", sa.String, nullable=False),
        sa.Column("kind", sa.String, nullable=False),
        sa.Column("open_questions", sa.Integer, nullable=False),
    )
    op.create_index("ix_tally_at", "tally", ["at"])
    asked = op.create_table(
        "asked",
        sa.Column("id", sa.Integer, primary_key=True),
        sa.Column(
            "inquiry_id",
            sa.Integer,
            sa.ForeignKey("inquiry.id", name="fk_asked_inquiry_id"),
            nullable=False,
        ),
        sa.Column("request_index", sa.Integer, nullable=False),
        sa.Column("shape", sa.String, nullable=False),
        sa.Column("od_mm", sa.String),
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
        sa.UniqueConstraint(
            "inquiry_id", "request_index", name="uq_asked_inquiry_id_request_index"
        ),
    )
    op.create_index("ix_asked_inquiry_id", "asked", ["inquiry_id"])
    _fill(op.get_bind(), tally, asked)


def _fill(connection: sa.Connection, tally: sa.Table, asked: sa.Table) -> None:
    inquiry = sa.table(
        "inquiry",
        sa.column("id", sa.Integer),
        sa.column("kind", sa.String),
        sa.column("created_at", sa.DateTime(timezone=True)),
        sa.column("assessments", sa.Text),
        sa.column("questions", sa.Text),
    )
    message = sa.table(
        "message",
        sa.column("id", sa.Integer),
        sa.column("inquiry_id", sa.Integer),
        sa.column("sender", sa.String),
        sa.column("received_at", sa.DateTime(timezone=True)),
        sa.column("message", sa.Text),
    )
    last = 0
    while True:
        found = connection.execute(
            sa.select(inquiry).where(inquiry.c.id > last).order_by(inquiry.c.id).limit(AT_A_TIME)
        ).all()
        if not found:
            return
        last = found[-1].id
        first_of: dict[int, Any] = {}
        for row in connection.execute(
            sa.select(message)
            .where(message.c.inquiry_id.in_([one.id for one in found]))
            .order_by(message.c.id.desc())
        ):
            first_of[row.inquiry_id] = row
        tallies, sizes = [], []
        for one in found:
            first = first_of.get(one.id)
            tallies.append(
                {
                    "inquiry_id": one.id,
                    "at": (first.received_at if first else None) or one.created_at,
                    "customer": _customer(one.id, first),
                    "kind": one.kind,
                    "open_questions": sum(
                        question["answer"] is None for question in json.loads(one.questions)
                    ),
                }
            )
            sizes += _sizes(one)
        connection.execute(sa.insert(tally), tallies)
        if sizes:
            connection.execute(sa.insert(asked), sizes)


def _customer(number: int, first: Any) -> str:
    if first is None:
        return f"inquiry {number}"
    address = first.sender.casefold()
    reply_to = json.loads(first.message).get("reply_to")
    if address.startswith(MACHINES) and reply_to and reply_to["address"]:
        address = reply_to["address"].casefold()
    return address or f"inquiry {number}"


def _sizes(one: Any) -> list[dict[str, Any]]:
    rows = []
    for index, assessment in enumerate(json.loads(one.assessments)):
        request, mandrel = assessment["request"], assessment.get("mandrel") or {}
        rows.append(
            {
                "inquiry_id": one.id,
                "request_index": index,
                "shape": request["shape"],
                "od_mm": request["od_mm"],
                "wall_mm": request["wall_mm"],
                "clr_mm": request["clr_mm"],
                "material": request["material"],
                "doubtful": any(d["field"] in SIZE_FIELDS for d in request["doubts"]),
                "decision": assessment["decision"],
                "wanted": request["quantity"],
                "buying": (request["quantity"] or 1) > 1 or request["needed_by"] is not None,
                "mandrel_low_mm": mandrel.get("diameter_low_mm"),
                "mandrel_high_mm": mandrel.get("diameter_high_mm"),
                "balls": mandrel.get("balls_low"),
                "surfaces": "|".join(mandrel.get("surfaces") or ()),
            }
        )
    return rows
