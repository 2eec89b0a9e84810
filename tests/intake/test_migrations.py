"""Opening brings a store up to date: whole or not at all, a copy kept, a newer one refused."""

from __future__ import annotations

import shutil
import sqlite3
from contextlib import closing
from pathlib import Path

import pytest

from bendreply.intake import desk, migrations, store_open
from bendreply.intake.desk_errors import NewerStoreError, StoreError
from bendreply.intake.store import open_store
from bendreply.intake.store_open import OURS, Steps

from ..pace import assert_quick
from ..servers.postgres import PASSWORD

A_STEP = """
import sqlalchemy as sa
from alembic import op
revision = "{name}"
down_revision = "{after}"
def upgrade():
    op.add_column("inquiry", sa.Column("colour_{name}", sa.String))
    op.execute("UPDATE inquiry SET colour_{name} = 'blue'")
    {then}
"""


def later_steps(folder: Path, then: str = "pass") -> Steps:
    """Our steps and two more, the last of which also does ``then``."""
    shutil.copytree(migrations.FOLDER, folder)
    for name, after, last in (("0098", OURS.newest, "pass"), ("0099", "0098", then)):
        text = A_STEP.format(name=name, after=after, then=last)
        (folder / "versions" / f"{name}_colour.py").write_text(text)
    return Steps(folder, (*OURS.names, "0098", "0099"))


def bring_up_to_date(path: str | Path, steps: Steps) -> Path | None:
    place = store_open.find(path, create=False)
    try:
        return store_open.bring_up_to_date(place, steps)
    finally:
        place.engine.dispose()


def ask(where: str | Path, query: str) -> list[tuple[object, ...]]:
    if isinstance(where, Path):
        with closing(sqlite3.connect(where)) as connection:
            return connection.execute(query).fetchall()
    import psycopg

    with psycopg.connect(where) as connection:
        return connection.execute(query.encode()).fetchall()


def columns(where: str | Path) -> list[tuple[object, ...]]:
    """Every table's columns as the database has them."""
    if isinstance(where, Path):
        return ask(where, "SELECT sql FROM sqlite_master ORDER BY name")
    return ask(
        where,
        "SELECT table_name, column_name, data_type FROM information_schema.columns "
        "WHERE table_schema = 'public' ORDER BY table_name, column_name",
    )


def kept_at(where: str | Path, make_result) -> str | Path:
    with open_store(where) as store:
        for name in ("ana", "bo", "cy"):
            desk.take_in(store, make_result(name), "x")
    return where


@pytest.fixture
def kept(store_file: Path, make_result) -> Path:
    """A store in a file with three inquiries."""
    kept_at(store_file, make_result)
    return store_file


@pytest.fixture
def kept_anywhere(where: str | Path, make_result) -> str | Path:
    """A store with three inquiries, in a file and on PostgreSQL."""
    return kept_at(where, make_result)


def test_the_steps_named_are_the_steps_there_are() -> None:
    from alembic.config import Config
    from alembic.script import ScriptDirectory

    config = Config()
    config.set_main_option("script_location", str(migrations.FOLDER))
    walked = [one.revision for one in ScriptDirectory.from_config(config).walk_revisions()]
    assert tuple(reversed(walked)) == migrations.REVISIONS


def test_the_steps_lead_to_the_tables_that_the_program_uses(where: str | Path) -> None:
    from alembic.autogenerate import compare_metadata
    from alembic.runtime.migration import MigrationContext

    from bendreply.intake.store_schema import metadata

    place = store_open.find(where, create=False)
    with place.engine.connect() as connection:
        context = MigrationContext.configure(connection, opts={"compare_type": True})
        assert compare_metadata(context, metadata) == []
    place.engine.dispose()


def test_numbers_of_inquiries_are_never_given_out_twice(store_file: Path) -> None:
    (made,) = ask(store_file, "SELECT sql FROM sqlite_master WHERE name = 'inquiry'")
    assert "AUTOINCREMENT" in str(made[0])


def test_an_older_store_is_brought_up_to_date_and_a_copy_kept(kept: Path, tmp_path: Path) -> None:
    copy = bring_up_to_date(kept, later_steps(tmp_path / "steps"))
    assert ask(kept, "SELECT colour_0098, colour_0099 FROM inquiry") == [("blue", "blue")] * 3
    assert ask(kept, "SELECT version_num FROM alembic_version") == [("0099",)]
    assert copy is not None
    assert ask(copy, "SELECT version_num FROM alembic_version") == [(OURS.newest,)]
    with open_store(copy) as before:
        assert len(desk.backlog(before)) == 3
        assert before.backup is None


def test_a_second_opening_takes_no_step_and_no_copy(kept: Path, tmp_path: Path) -> None:
    steps = later_steps(tmp_path / "steps")
    assert bring_up_to_date(kept, steps) is not None
    assert bring_up_to_date(kept, steps) is None
    assert len(list(kept.parent.glob("*.backup"))) == 1


def test_a_store_on_a_server_is_brought_up_to_date_without_a_copy_of_ours(
    kept_anywhere: str | Path, tmp_path: Path
) -> None:
    copy = bring_up_to_date(kept_anywhere, later_steps(tmp_path / "steps"))
    assert (copy is None) == isinstance(kept_anywhere, str)
    rows = ask(kept_anywhere, "SELECT colour_0098, colour_0099 FROM inquiry")
    assert rows == [("blue", "blue")] * 3


@pytest.mark.parametrize(
    "then",
    ["raise RuntimeError('the power went')", "op.execute('UPDATE nowhere SET a = 1')"],
    ids=["raises", "bad-sql"],
)
def test_a_step_that_fails_leaves_the_store_as_it_was(
    kept_anywhere: str | Path, tmp_path: Path, then: str
) -> None:
    before = columns(kept_anywhere)
    told = "it is as it was before" + (
        "; a copy lies at" if isinstance(kept_anywhere, Path) else "$"
    )
    with pytest.raises(StoreError, match=told) as failed:
        bring_up_to_date(kept_anywhere, later_steps(tmp_path / "steps", then))
    assert "could not be brought up to version 0099" in str(failed.value)
    assert columns(kept_anywhere) == before
    assert ask(kept_anywhere, "SELECT version_num FROM alembic_version") == [(OURS.newest,)]
    with open_store(kept_anywhere) as store:
        assert len(desk.backlog(store)) == 3


def test_a_process_killed_within_a_step_leaves_the_store_as_it_was(
    kept_anywhere: str | Path, tmp_path: Path
) -> None:
    import subprocess
    import sys

    steps = later_steps(tmp_path / "steps", "import os, signal; os.kill(os.getpid(), 9)")
    program = (
        "import sys; from pathlib import Path; from bendreply.intake import store_open as s\n"
        "place = s.find(sys.argv[1], create=False)\n"
        f"s.bring_up_to_date(place, s.Steps(Path(sys.argv[2]), {steps.names!r}))\n"
    )
    done = subprocess.run(
        [sys.executable, "-c", program, str(kept_anywhere), str(steps.folder)], check=False
    )
    assert done.returncode == -9
    with open_store(kept_anywhere) as store:
        assert len(desk.backlog(store)) == 3
    assert "colour" not in str(columns(kept_anywhere))


def test_a_store_from_a_newer_program_is_refused_and_left_alone(
    kept_anywhere: str | Path, tmp_path: Path
) -> None:
    bring_up_to_date(kept_anywhere, later_steps(tmp_path / "steps"))
    before = (
        kept_anywhere.read_bytes() if isinstance(kept_anywhere, Path) else columns(kept_anywhere)
    )
    name = (
        kept_anywhere if isinstance(kept_anywhere, Path) else kept_anywhere.replace(PASSWORD, "***")
    )
    with pytest.raises(NewerStoreError) as refused:
        open_store(kept_anywhere)
    assert str(refused.value) == (
        f"the store {name} was written by a newer bendreply (its version is 0099, this program "
        f"knows up to {OURS.newest}): update bendreply; nothing was changed"
    )
    assert before == (
        kept_anywhere.read_bytes() if isinstance(kept_anywhere, Path) else columns(kept_anywhere)
    )


def test_another_programs_versioned_database_is_not_taken_for_a_newer_store(
    tmp_path: Path,
) -> None:
    path = tmp_path / "songs.sqlite"
    with closing(sqlite3.connect(path)) as other, other:
        other.execute("CREATE TABLE alembic_version (version_num)")
        other.execute("INSERT INTO alembic_version VALUES ('8f3a')")
    with pytest.raises(StoreError, match="is a database, but not a bendreply store"):
        open_store(path)


def test_a_copy_cut_short_does_not_look_like_one(kept: Path, tmp_path: Path, monkeypatch) -> None:
    def no_space(*_: object) -> None:
        raise OSError("No space left on device")

    monkeypatch.setattr(Path, "replace", no_space)
    with pytest.raises(StoreError, match=r"no backup copy .* No space left on device; nothing was"):
        bring_up_to_date(kept, later_steps(tmp_path / "steps"))
    assert list(kept.parent.glob("*.backup")) == []
    assert ask(kept, "SELECT version_num FROM alembic_version") == [(OURS.newest,)]


def test_opening_an_up_to_date_store_is_quick(kept: Path) -> None:
    open_store(kept).close()  # the imports are not what is measured
    assert_quick(lambda: open_store(kept).close(), within=0.03)


def test_an_older_store_gets_the_figures_that_a_new_one_has(store_file: Path, make_result) -> None:
    """What the report counts, filled in from what was stored before there was a tally."""
    from importlib import import_module

    import sqlalchemy as sa

    from bendreply.intake.store_schema import asked, tally
    from bendreply.rules.assess import assess
    from bendreply.rules.shop import sample_shop

    step = import_module("bendreply.intake.migrations.versions.0008_report")
    with open_store(store_file) as store:
        for name in ("ana", "form"):
            made = make_result(name, reply_to={"name": "", "address": "Cy@example.org"})
            assessments = tuple(assess(one.request, sample_shop()) for one in made.assessments)
            desk.take_in(store, made.model_copy(update={"assessments": assessments}), "x")
        desk.take_in(store, make_result("bo", received_at=None), "x")
        with store.writing() as book:
            rows = [sa.select(t).order_by(t.c.inquiry_id) for t in (tally, asked)]
            before = [[tuple(row) for row in book._connection.execute(one)] for one in rows]
            for table in (asked, tally):
                book._connection.execute(sa.delete(table))
            bare = sa.MetaData()  # as the step sees them, with the database's own types
            named = ("tally", "asked")
            tables = [sa.Table(one, bare, autoload_with=book._connection) for one in named]
            step._fill(book._connection, *tables)
            after = [[tuple(row) for row in book._connection.execute(one)] for one in rows]
    assert after == before
    assert [row[2] for row in before[0]] == ["ana@example.net", "cy@example.org", "bo@example.net"]
