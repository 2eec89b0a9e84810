"""Run by Alembic: takes the steps on the connection, and in the transaction, of the opener."""

from __future__ import annotations

from alembic import context

context.configure(
    connection=context.config.attributes["connection"],
    # SQLite can take table changes back; Alembic assumes that it can't.
    transactional_ddl=True,
)
with context.begin_transaction():
    context.run_migrations()
