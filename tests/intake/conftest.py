"""An invented shop's desk: a store in a fresh file or database, and results made by hand."""

from __future__ import annotations

import os
from collections.abc import Callable, Iterator
from itertools import count
from pathlib import Path

import pytest

from bendreply.intake.store import Store, open_store

from ..servers import postgres
from ..servers.postgres import Postgres
from .by_hand import Clock, MakeResult, made_result
from .report_support import Take, taker


@pytest.fixture
def make_result() -> MakeResult:
    """Makes results by hand, see ``by_hand``."""
    return made_result


@pytest.fixture(scope="session")
def new_store_file(tmp_path_factory: pytest.TempPathFactory) -> bytes:
    """What a store that holds nothing yet looks like on disk."""
    path = tmp_path_factory.mktemp("store") / "new.sqlite"
    open_store(path).close()
    return path.read_bytes()


@pytest.fixture
def store_file(tmp_path: Path, new_store_file: bytes) -> Path:
    """The file of a store that holds nothing yet."""
    path = tmp_path / "store.sqlite"
    path.write_bytes(new_store_file)
    return path


@pytest.fixture(scope="session")
def database_server() -> Iterator[Postgres]:
    """A PostgreSQL for all tests of a run, each with a database of its own."""
    if lacking := postgres.missing():
        sentence = f"a PostgreSQL server is needed: {lacking}"
        if os.environ.get("BENDREPLY_NEEDS_SERVERS"):
            pytest.fail(sentence)
        pytest.skip(sentence)
    server = Postgres()
    try:
        yield server.start()
    finally:
        server.stop()


@pytest.fixture(scope="session")
def new_database(database_server: Postgres) -> str:
    """A database with a store that holds nothing yet, for copies to be made of."""
    name = database_server.new_database()
    open_store(database_server.url(name)).close()
    return name


@pytest.fixture
def database_url(database_server: Postgres, new_database: str) -> Iterator[str]:
    """Where a database is whose store holds nothing yet."""
    name = database_server.new_database(new_database)
    yield database_server.url(name)
    database_server.drop(name)


@pytest.fixture(params=["file", "server"])
def new_place(
    request: pytest.FixtureRequest, tmp_path: Path, new_store_file: bytes
) -> Iterator[Callable[[], str | Path]]:
    """Makes places with a store that holds nothing yet: files, and databases on PostgreSQL."""
    if request.param == "file":
        numbers = count(1)

        def new_file() -> Path:
            path = tmp_path / f"store{next(numbers)}.sqlite"
            path.write_bytes(new_store_file)
            return path

        yield new_file
        return
    server: Postgres = request.getfixturevalue("database_server")
    like: str = request.getfixturevalue("new_database")
    made: list[str] = []

    def new_url() -> str:
        made.append(server.new_database(like))
        return server.url(made[-1])

    yield new_url
    for name in made:
        server.drop(name)


@pytest.fixture
def where(new_place: Callable[[], str | Path]) -> str | Path:
    """Where a store is that holds nothing yet: a file, and a database on PostgreSQL."""
    return new_place()


@pytest.fixture
def store(where: str | Path) -> Iterator[Store]:
    """An open store that holds nothing yet; its clock starts on 2026-11-25 at 09:00 UTC."""
    with open_store(where, clock=Clock()) as opened:
        yield opened


@pytest.fixture
def take(store: Store) -> Take:
    """Takes a message in, for the report; its inquiry's number."""
    return taker(store)
