"""All that holds for PostgreSQL only: how it is reached, how programs keep out of each other's way.

A store there is backed up by whoever keeps the server (``pg_dump``): no copy is made before a
step of the migrations, which are taken in one transaction, all or none.
"""

from __future__ import annotations

import re
from contextlib import closing
from typing import TYPE_CHECKING

import sqlalchemy as sa

from ..rules.shop_mailbox import is_loopback
from .desk_errors import StoreError

if TYPE_CHECKING:
    from sqlalchemy import Connection, Engine
    from sqlalchemy.engine.interfaces import DBAPIConnection

CONNECT_WAIT_S = 10
LOCK_WAIT_S = 10
"""How long one program waits for another that is changing the same inquiry."""
_OURS = 0x62656E64  # "bend": other programs' advisory locks in the same database are not ours
_MIGRATING, _COLLECTING = 1, 2


def url_of(where: str) -> sa.URL:
    """The address of a ``postgresql://`` URL. Raises StoreError."""
    try:
        url = sa.make_url(where)
    except (sa.exc.ArgumentError, ValueError) as error:  # ValueError: a port that is no number
        raise StoreError("the URL of the store can't be understood") from error
    if url.get_backend_name() != "postgresql":
        raise StoreError(f"a store can be a file or a postgresql:// URL, not {url.drivername}://")
    return url


def engine_for(url: sa.URL, password: str | None) -> Engine:
    """How a store on a server is reached. Raises StoreError where psycopg is missing.

    Over a network only with TLS and a certificate that is checked, unless the URL itself says
    otherwise (``?sslmode=``).
    """
    if password is not None:
        url = url.set(password=password)
    if not _on_this_machine(url) and "sslmode" not in url.query:
        checked = {"sslmode": "verify-full"}
        if "sslrootcert" not in url.query:
            checked["sslrootcert"] = "system"
        url = url.update_query_dict(checked)
    try:
        engine = sa.create_engine(
            url.set(drivername="postgresql+psycopg"),
            hide_parameters=True,  # customers' words don't belong in error messages
            pool_pre_ping=True,
            connect_args={"connect_timeout": CONNECT_WAIT_S, "application_name": "bendreply"},
        )
    except ModuleNotFoundError as error:
        raise StoreError(
            "a store on PostgreSQL needs the package psycopg: pip install 'psycopg[binary]'"
        ) from error

    @sa.event.listens_for(engine, "connect")
    def _connected(connection: DBAPIConnection, _record: object) -> None:
        with closing(connection.cursor()) as cursor:
            cursor.execute(f"SET lock_timeout = '{LOCK_WAIT_S}s'")
        connection.commit()

    return engine


def alone_migrating(connection: Connection) -> None:
    """Wait until no other program changes the tables, and keep them out until the end of this
    transaction. Raises StoreError where the database can't hold every customer's words.
    """
    _alone(connection, _MIGRATING)
    encoding = connection.exec_driver_sql("SHOW server_encoding").scalar_one()
    if encoding != "UTF8":
        raise StoreError(
            f"the database keeps text as {encoding}: a store needs one made with ENCODING 'UTF8'"
        )


def alone_collecting(connection: Connection) -> None:
    """Let one program at a time look whether a message is known and write it down.

    Whoever only changes an inquiry does not wait for that. One that takes messages in may hold on
    to several inquiries: with two of them, each could wait for the other for ever.
    """
    _alone(connection, _COLLECTING)


def _alone(connection: Connection, doing: int) -> None:
    lock = sa.select(sa.func.pg_advisory_xact_lock(sa.literal(_OURS), sa.literal(doing)))
    connection.execute(lock)


def _on_this_machine(url: sa.URL) -> bool:
    """Several hosts may be named, also as ``?host=one:5432&host=[::1]:5433``."""
    named = (host for one in url.normalized_query.get("host", ()) for host in one.split(","))
    hosts = [url.host or "", *(re.sub(r"(?<=[^:]):\d+$", "", one).strip("[]") for one in named)]
    return all(not host or host.startswith("/") or is_loopback(host) for host in hosts)
