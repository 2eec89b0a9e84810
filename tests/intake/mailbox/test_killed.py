"""Killed at any moment (SIGKILL), run again: nothing lost, nothing twice.

BENDREPLY_KILLS says how often each command is killed; .ci/run does it 60 times each. Only a kill
that ended a running process counts.
"""

from __future__ import annotations

import multiprocessing
import os
import random
import signal
import sqlite3
from contextlib import closing
from pathlib import Path

import pytest

from bendreply.intake.cli import main

from ...servers.dovecot import Dovecot
from .conftest import Shop, in_folder, lay
from .mails import mail

KILLS = int(os.environ.get("BENDREPLY_KILLS", "8"))
MESSAGES = max(40, 4 * KILLS)
"""So many that the last kill still meets work."""
LONGEST_S = 0.6
"""Less than a whole run takes."""


def kill_often(shop: Path, command: str) -> None:
    """Run a command again and again, killed after a random time, until KILLS runs ended by it."""
    # The program's own function: a helper in this file can't be imported everywhere tests run.
    context = multiprocessing.get_context("forkserver")
    context.set_forkserver_preload(
        ["bendreply.intake.cli_mailbox", "bendreply.intake.store_writer", "imapclient",
         "bendreply.intake.pipeline", "bendreply.intake.drafting", "bendreply.rules.assess"]
    )  # fmt: skip
    chance, killed = random.Random(20261116), 0
    for _ in range(10 * KILLS):
        process = context.Process(target=main, args=(["--shop", str(shop), command],))
        process.start()
        process.join(timeout=chance.uniform(0.02, LONGEST_S) if killed else 0.1)
        process.kill()
        process.join()
        killed += process.exitcode == -signal.SIGKILL
        if killed == KILLS:
            return
    pytest.fail(f"{command} was over before the kill too often: {killed} of {KILLS} hit it")


def ask(shop: Shop, query: str) -> list[tuple[object, ...]]:
    with closing(sqlite3.connect(shop.folder / "store.sqlite")) as connection:
        return connection.execute(query).fetchall()


def test_collect_killed_at_random_loses_and_doubles_nothing(server: Dovecot, shop: Shop) -> None:
    names = [f"p{n}" for n in range(MESSAGES)]
    lay(server, *(mail(name) for name in names))
    kill_often(shop.folder, "collect")
    assert shop.run("collect")[0] == 0
    wanted = [(f"{name}-1@example.net", 1) for name in sorted(names)]
    query = "SELECT message_id, count(*) FROM message GROUP BY 1 ORDER BY 1"
    assert ask(shop, query) == wanted
    assert ask(shop, "SELECT count(*) FROM inquiry") == [(MESSAGES,)]
    assert shop.run("check")[0] == 0
    assert shop.run("collect")[1].startswith("0 new, 0 known before")


def test_deliver_killed_at_random_lays_each_draft_once(server: Dovecot, shop: Shop) -> None:
    names = [f"p{n}" for n in range(MESSAGES)]
    lay(server, *(mail(name) for name in names))
    assert shop.run("collect")[0] == 0
    for number in range(1, MESSAGES + 1):
        assert shop.run("approve", str(number), "--by", "Robin Ashdown")[0] == 0
    kill_often(shop.folder, "deliver")
    assert shop.run("deliver")[0] == 0
    drafts = in_folder(server, "Entwurf")
    answered = sorted(
        line for raw in drafts for line in raw.splitlines() if line.startswith(b"In-Reply-To")
    )
    assert answered == sorted(f"In-Reply-To: <{name}-1@example.net>".encode() for name in names)
    assert ask(shop, "SELECT DISTINCT state FROM inquiry") == [("delivered",)]
    assert shop.run("check")[0] == 0


@pytest.mark.skipif(
    os.getuid() != 0 or (not Path("/sbin/mkfs.ext4").exists() and not Path("/bin/mount").exists()),
    reason="a small file system has to be mounted for it, which only root may",
)
def test_a_full_disk_is_said_and_the_next_run_carries_on(
    server: Dovecot, shop: Shop, tmp_path: Path
) -> None:
    import subprocess

    names = [f"p{n}" for n in range(40)]
    lay(server, *(mail(name) for name in names))
    small = tmp_path / "small"
    small.mkdir()
    mounted = subprocess.run(
        ["mount", "-t", "tmpfs", "-o", "size=260k", "tmpfs", str(small)],
        capture_output=True,
        check=False,
    )
    if mounted.returncode:
        pytest.skip("a small file system has to be mounted for it, which is not allowed here")
    try:
        store = small / "store.sqlite"
        status, _, err = shop.run("collect", "--store", str(store))
        assert status == 1
        assert err == f"bendreply: the store {store} can't be used: database or disk is full\n"
        subprocess.run(["mount", "-o", "remount,size=8m", str(small)], check=True)
        assert shop.run("collect", "--store", str(store))[0] == 0
        assert shop.run("check", "--store", str(store))[0] == 0
        with closing(sqlite3.connect(store)) as connection:
            (count,) = connection.execute("SELECT count(*) FROM message").fetchone()
        assert count == len(names)
    finally:
        subprocess.run(["umount", "-l", str(small)], check=True)
