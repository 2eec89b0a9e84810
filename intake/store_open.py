"""Opening a store: where it is, whether it is ours, and bringing it up to date.

Alembic is imported only when there is a step to take: opening an up-to-date store is quick.
"""

from __future__ import annotations

from dataclasses import dataclass
from datetime import UTC, datetime
from pathlib import Path
from typing import TYPE_CHECKING

from . import migrations
from .desk_errors import NewerStoreError, StoreError

if TYPE_CHECKING:
    from sqlalchemy import Connection, Engine

VERSION_TABLE = "alembic_version"
A_TABLE_OF_OURS = "inquiry"


@dataclass(frozen=True, slots=True)
class Steps:
    """The migrations: their folder, and their names, oldest first."""

    folder: Path
    names: tuple[str, ...]

    @property
    def newest(self) -> str:
        """What an up-to-date store says of itself."""
        return self.names[-1]


OURS = Steps(migrations.FOLDER, migrations.REVISIONS)


@dataclass(frozen=True, slots=True)
class Place:
    """Where a store is: a file, or a database server."""

    engine: Engine
    name: str
    """For sentences; never holds a password."""
    file: Path | None
    create: bool = True
    """Whether a store may be made here."""


def find(where: str | Path, *, create: bool, password: str | None = None) -> Place:
    """The place named by a path or by a ``postgresql://`` URL. Raises StoreError.

    ``password``: for the server, where the URL bears none.
    """
    if isinstance(where, Path) or "://" not in where:
        import sqlalchemy as sa

        from . import store_sqlite

        path = Path(where).absolute()
        store_sqlite.check_file(path, create=create)
        engine = sa.create_engine(
            sa.URL.create("sqlite", database=str(path)),
            connect_args={"timeout": store_sqlite.WAIT_S},
            hide_parameters=True,  # customers' words don't belong in error messages
        )
        store_sqlite.prepare(engine)
        return Place(engine, str(where), path, create)
    from . import store_server

    url = store_server.url_of(where)
    name = url.render_as_string(hide_password=True)
    return Place(store_server.engine_for(url, password), name, None, create)


def bring_up_to_date(place: Place, steps: Steps = OURS) -> Path | None:
    """Take the steps that the store lacks, all or none; the backup copy made before, if any.

    Raises NewerStoreError where the store is ahead of us, StoreError where it is not ours or a
    step fails.
    """
    with place.engine.connect() as connection, connection.begin():
        version = _version(connection, place, steps)
        if version == steps.newest:
            return None
        if version is None and not place.create:
            raise StoreError(f"there is no store at {place.name} yet: collect some messages first")
    with place.engine.connect().execution_options(writes=True) as connection, connection.begin():
        if place.file is None:
            from .store_server import alone_migrating

            alone_migrating(connection)
        version = _version(connection, place, steps)
        if version == steps.newest:  # another program has been quicker
            return None
        copy = None
        if version is not None and place.file is not None:
            copy = _back_up(place, place.file, version)
        _upgrade(connection, place, steps, copy)
        return copy


def _version(connection: Connection, place: Place, steps: Steps) -> str | None:
    """The store's version; None where the store is empty."""
    import sqlalchemy as sa

    inspector = sa.inspect(connection)
    if not inspector.has_table(VERSION_TABLE):
        if inspector.get_table_names():
            raise StoreError(f"{place.name} is a database, but not a bendreply store")
        return None
    columns = [column["name"] for column in inspector.get_columns(VERSION_TABLE)]
    versions: list[object] = []
    if "version_num" in columns:
        table = sa.table(VERSION_TABLE, sa.column("version_num", sa.String))
        versions += connection.execute(sa.select(table.c.version_num)).scalars()
    version = versions[0] if len(versions) == 1 else None
    if not isinstance(version, str) or not version:
        raise StoreError(
            f"the store {place.name} is damaged: it doesn't say of which version it is; put a "
            "backup copy in its place"
        )
    if version not in steps.names:
        if not inspector.has_table(A_TABLE_OF_OURS):
            raise StoreError(f"{place.name} is a database, but not a bendreply store")
        raise NewerStoreError(
            f"the store {place.name} was written by a newer bendreply (its version is {version}, "
            f"this program knows up to {steps.newest}): update bendreply; nothing was changed"
        )
    return version


def _back_up(place: Place, file: Path, version: str) -> Path:
    from . import store_sqlite

    moment = f"{datetime.now(UTC):%Y%m%dT%H%M%S%fZ}"
    copy = file.with_name(f"{file.name}.version-{version}-{moment}.backup")
    try:
        store_sqlite.back_up(file, copy)
    except Exception as error:
        raise StoreError(
            f"no backup copy of the store {place.name} could be made before bringing it up to "
            f"date: {error}; nothing was changed"
        ) from error
    return copy


def _upgrade(connection: Connection, place: Place, steps: Steps, copy: Path | None) -> None:
    from alembic import command
    from alembic.config import Config

    config = Config()
    # Alembic reads "%" in its settings as the start of a variable.
    config.set_main_option("script_location", str(steps.folder).replace("%", "%%"))
    config.attributes["connection"] = connection
    try:
        command.upgrade(config, steps.newest)
    except Exception as error:
        kept = f"; a copy lies at {copy}" if copy else ""
        raise StoreError(
            f"the store {place.name} could not be brought up to version {steps.newest}: {error}; "
            f"it is as it was before{kept}"
        ) from error
