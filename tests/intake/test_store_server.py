"""A store on PostgreSQL, as several people's programs use it at once. What holds for any store is
tested in test_store, test_desk, test_deliver and test_migrations, on files and on the server.
"""

from __future__ import annotations

import hashlib
import os
import subprocess
import sys
from collections import Counter
from importlib.util import find_spec
from pathlib import Path

import pytest

from bendreply.intake import desk, store_server
from bendreply.intake.cli import main
from bendreply.intake.desk_errors import StoreError
from bendreply.intake.inquiry import Said, State
from bendreply.intake.store import Store, open_store

from ..servers.postgres import PASSWORD, USER, Postgres

# Where servers are needed, a missing driver is a failure and no reason to skip.
pytestmark = pytest.mark.skipif(
    find_spec("psycopg") is None and not os.environ.get("BENDREPLY_NEEDS_SERVERS"),
    reason="a store on PostgreSQL needs the extra postgres",
)

MAILBOX = Path(__file__).parents[2] / "demo_mailbox"
ALL_MAIL = sorted(map(str, MAILBOX.glob("*.eml")))
PEOPLE = 8
INQUIRIES = 1000 if os.environ.get("BENDREPLY_NEEDS_SERVERS") else 60
APPROVE_ALL = """
import sys
from bendreply.intake import desk, desk_errors
from bendreply.intake.store import open_store
name = sys.argv[2]
with open_store(sys.argv[1]) as store:
    waiting = [row.id for row in desk.backlog(store)]
    print("ready", flush=True)
    sys.stdin.readline()
    for number in waiting:
        try:
            desk.approve(store, number, name, expected_version=1)
        except desk_errors.ChangedMeanwhileError as error:
            print("late", str(error).partition("(approved, ")[2].partition(",")[0], flush=True)
        else:
            print("approved", number, flush=True)
"""


def run_at_once(program: str, calls: list[list[str]]) -> list[list[str]]:
    """A program run several times at once; what each printed. All begin when all are ready."""
    running = [
        subprocess.Popen(
            [sys.executable, "-c", program, *call],
            stdin=subprocess.PIPE, stdout=subprocess.PIPE, text=True,
        )
        for call in calls
    ]  # fmt: skip
    for one in running:
        assert one.stdout is not None
        assert one.stdout.readline() == "ready\n"
    for one in running:
        assert one.stdin is not None
        one.stdin.write("go\n")
        one.stdin.flush()
    printed = []
    for one in running:
        said, _ = one.communicate(timeout=300)
        assert one.returncode == 0
        printed.append(said.splitlines())
    return printed


def test_eight_who_approve_a_thousand_at_once_approve_each_once(
    database_url: str, make_result
) -> None:
    with open_store(database_url) as store, store.together():
        for n in range(INQUIRIES):
            desk.take_in(store, make_result(f"c{n}"), "x")
    people = [f"Person {n}" for n in range(PEOPLE)]
    said = run_at_once(APPROVE_ALL, [[database_url, name] for name in people])
    won = Counter(line for lines in said for line in lines if line.startswith("approved"))
    assert len(won) == INQUIRIES
    assert set(won.values()) == {1}
    late = [line.removeprefix("late ") for lines in said for line in lines if "late" in line]
    assert len(late) == (PEOPLE - 1) * INQUIRIES
    assert set(late) <= set(people)
    with open_store(database_url) as store:
        assert desk.backlog(store) == []
        for lines, name in zip(said, people, strict=True):
            for line in lines[:3]:
                if line.startswith("approved"):
                    shown = desk.show(store, line.split()[1])
                    assert [(one.said, one.by) for one in shown.words] == [(Said.APPROVED, name)]
        with store.reading() as book:
            assert len(book.numbers(State.APPROVED)) == INQUIRIES


COLLECT = """
import sys
from bendreply.intake.cli import main
print("ready", flush=True)
sys.stdin.readline()
sys.exit(main(["--shop", sys.argv[1], "collect", *sys.argv[2:]]))
"""


def shop_at(folder: Path, url: str, more: str = "") -> Path:
    """A shop folder whose store is on the server."""
    assert main(["shop", "new", str(folder)]) == 0
    with (folder / "shop.toml").open("a", encoding="utf-8") as file:
        file.write(f'\n[store]\nurl = "{url}"\n{more}\n')
    return folder


@pytest.fixture
def shop(
    database_server: Postgres, database_url: str, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> Path:
    """A shop whose store is on the server, its password in a variable."""
    monkeypatch.setenv("STORE_PASSWORD", PASSWORD)
    url = database_server.url(database_url.rpartition("/")[2], password=False)
    return shop_at(tmp_path / "shop", url, 'password_env = "STORE_PASSWORD"')


def test_the_same_mail_collected_by_four_at_once_is_there_once(
    shop: Path, database_url: str
) -> None:
    said = run_at_once(COLLECT, [[str(shop), *ALL_MAIL]] * 4)
    with open_store(database_url) as store:
        shared = everything(store)
    alone = shop.parent / "alone.sqlite"
    assert main(["--shop", str(shop), "collect", "--store", str(alone), *ALL_MAIL]) == 0
    with open_store(alone) as store:
        assert shared == everything(store)
    begun = sum(int(lines[-1].partition(" new")[0]) for lines in said)
    assert begun == len(shared)


def everything(store: Store) -> list[tuple[object, ...]]:
    """What is known of each inquiry, whatever its number."""
    with store.reading() as book:
        found = [book.inquiry(number) for number in book.all_numbers()]
    return sorted(
        (tuple(kept.message.message_id for kept in one.messages), one.decision, len(one.drafts))
        for one in found
        if one is not None
    )


def test_the_whole_way_by_commands_and_the_password_is_nowhere(
    shop: Path, database_url: str, capfd: pytest.CaptureFixture[str]
) -> None:
    def run(*call: str) -> str:
        assert main(["--shop", str(shop), *call]) == 0
        return capfd.readouterr().out

    printed = run("collect", *ALL_MAIL)
    assert f"The store is postgresql://{USER}@127.0.0.1:" in printed
    with open_store(database_url) as store:
        number = next(str(row.id) for row in desk.backlog(store) if row.has_draft)
    printed += (
        run("backlog") + run("show", number) + run("approve", number, "--by", "Robin Ashdown")
    )
    printed += run("deliver") + run("history", number) + run("report", "--json") + run("check")
    assert (shop / "drafts" / f"{number}.eml").is_file()
    assert "delivered" in printed
    kept = [path.read_bytes() for path in shop.rglob("*") if path.is_file()]
    assert not any(PASSWORD.encode() in one for one in kept)
    assert PASSWORD not in printed
    import psycopg

    with psycopg.connect(database_url) as connection:
        tables = connection.execute(
            "SELECT table_name FROM information_schema.tables WHERE table_schema = 'public'"
        ).fetchall()
        for (table,) in tables:
            rows = connection.execute(f"SELECT t::text FROM {table} t").fetchall()
            assert PASSWORD not in str(rows)


@pytest.mark.parametrize(
    ("password", "sentence"),
    [("wrong-9", "password authentication failed"), (None, "the variable STORE_PASSWORD")],
)
def test_a_wrong_or_missing_password_is_told_without_it(
    shop: Path, password: str | None, sentence: str, monkeypatch, capsys
) -> None:
    monkeypatch.delenv("STORE_PASSWORD")
    if password is not None:
        monkeypatch.setenv("STORE_PASSWORD", password)
    assert main(["--shop", str(shop), "backlog"]) == 1
    said = capsys.readouterr().err
    assert sentence in said
    assert len(said.splitlines()) == 1
    assert password is None or password not in said


def test_a_password_from_a_command(
    database_server: Postgres, database_url: str, tmp_path: Path, capsys
) -> None:
    url = database_server.url(database_url.rpartition("/")[2], password=False)
    command = f'password_command = ["{sys.executable}", "-c", "print(\'{PASSWORD}\')"]'
    shop = shop_at(tmp_path / "shop", url, command)
    capsys.readouterr()
    assert main(["--shop", str(shop), "backlog"]) == 0
    assert capsys.readouterr().out == "Nothing waits.\n"


def test_a_server_that_is_not_there_is_told_in_one_line(tmp_path: Path, capsys) -> None:
    shop = shop_at(tmp_path / "shop", "postgresql://shop@127.0.0.1:1/desk")
    assert main(["--shop", str(shop), "backlog"]) == 1
    said = capsys.readouterr().err
    assert said.startswith("bendreply: the store postgresql://shop@127.0.0.1:1/desk can't be used:")
    assert len(said.splitlines()) == 1


def test_a_person_without_rights_on_the_tables_is_told(
    database_server: Postgres, database_url: str
) -> None:
    database_server.say("CREATE ROLE guest LOGIN PASSWORD 'guest-1'")
    url = database_url.replace(f"{USER}:{PASSWORD}", "guest:guest-1")
    try:
        with pytest.raises(StoreError, match="permission denied") as refused:
            open_store(url, create=False)
    finally:
        database_server.say("DROP ROLE guest")
    assert "guest-1" not in str(refused.value)


def test_a_database_that_cannot_hold_every_script_is_refused(database_server: Postgres) -> None:
    name = database_server.new_database(more="ENCODING 'LATIN1' LOCALE 'C'")
    with pytest.raises(StoreError, match="keeps text as LATIN1"):
        open_store(database_server.url(name))
    database_server.drop(name)


def test_an_inquiry_that_somebody_holds_on_to_is_told_of(
    database_url: str, make_result, monkeypatch
) -> None:
    monkeypatch.setattr(store_server, "LOCK_WAIT_S", 1)
    with open_store(database_url) as store, open_store(database_url) as other:
        number = desk.take_in(store, make_result(), "x").inquiry
        with other.writing() as book:
            book.inquiry(number, to_change=True)
            with pytest.raises(StoreError, match="another program is writing to it; try again"):
                desk.approve(store, number, "Ann")
        desk.approve(store, number, "Ann")


def test_what_is_read_is_one_moment_though_others_write(database_url: str, make_result) -> None:
    with open_store(database_url) as store, open_store(database_url) as other:
        desk.take_in(store, make_result("ana"), "x")
        with store.reading() as book:
            assert book.all_numbers() == (1,)
            desk.take_in(other, make_result("bo"), "x")
            assert book.all_numbers() == (1,)


@pytest.mark.parametrize(
    ("url", "query"),
    [
        ("postgresql://shop@127.0.0.1/desk", {}),
        ("postgresql://shop@[::1]/desk", {}),
        ("postgresql://shop@localhost/desk", {}),
        ("postgresql:///desk?host=/run/postgresql", {"host": "/run/postgresql"}),
        (
            "postgresql://shop@db.example.com/desk",
            {"sslmode": "verify-full", "sslrootcert": "system"},
        ),
        (
            "postgresql://shop@/desk?host=[::1]:5432&host=db.example.com:5433",
            {
                "host": ("[::1]:5432", "db.example.com:5433"),
                "sslmode": "verify-full",
                "sslrootcert": "system",
            },
        ),
        ("postgresql://shop@db.example.com/desk?sslmode=require", {"sslmode": "require"}),
        (
            "postgresql://shop@db.example.com/desk?sslrootcert=/etc/ca.pem",
            {"sslmode": "verify-full", "sslrootcert": "/etc/ca.pem"},
        ),
    ],
)
def test_over_a_network_the_certificate_is_checked_unless_the_url_says_otherwise(
    url: str, query: dict[str, object]
) -> None:
    engine = store_server.engine_for(store_server.url_of(url), "hush")
    assert dict(engine.url.query) == query
    assert "hush" not in repr(engine)
    engine.dispose()


@pytest.fixture
def long_id() -> str:
    """An id that no index of PostgreSQL takes: 2,704 bytes are its most, and these don't shrink."""
    return "".join(hashlib.sha256(bytes([n])).hexdigest() for n in range(100)) + "@example.net"


def test_an_endless_id_is_kept_and_known_again(store: Store, make_result, long_id: str) -> None:
    result = make_result(message_id=long_id, references=(long_id + "1",))
    assert desk.take_in(store, result, "x").new
    again = make_result("other", message_id=long_id, body=result.message.body)
    assert not desk.take_in(store, again, "y").new
    assert desk.show(store, 1).message.message_id == long_id
