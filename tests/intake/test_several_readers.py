"""``collect --jobs``: the same comes of it, and nothing is left behind however it ends."""

from __future__ import annotations

import os
import signal
import sqlite3
import subprocess
import sys
import time
from contextlib import closing
from pathlib import Path

import pytest

from bendreply.intake import several_readers
from bendreply.intake.cli import main
from bendreply.intake.message import parse_message
from bendreply.intake.several_readers import Readers, ReaderStoppedError
from bendreply.rules.shop import sample_shop

MAILBOX = Path(__file__).parents[2] / "demo_mailbox"
ALL_MAIL = [*map(str, sorted(MAILBOX.glob("*.eml"))), str(MAILBOX / "enquiries.mbox")]
KEPT = """
SELECT i.id, i.kind, i.decision, i.assessments, m.message_id, m.source, d.body FROM message m
JOIN inquiry i ON m.inquiry_id = i.id LEFT JOIN draft d ON d.inquiry_id = i.id ORDER BY m.id
"""


def kept(store: Path) -> list[tuple[object, ...]]:
    with closing(sqlite3.connect(store)) as connection:
        return connection.execute(KEPT).fetchall()


def test_the_same_is_kept_in_the_same_order(tmp_path: Path, capsys) -> None:
    said = []
    for jobs in ("1", "3"):
        store = tmp_path / f"{jobs}.sqlite"
        assert main(["collect", "--jobs", jobs, "--store", str(store), *ALL_MAIL]) == 0
        said.append(capsys.readouterr().out.partition(" The store is")[0])
    assert said[0] == said[1]
    assert kept(tmp_path / "1.sqlite") == kept(tmp_path / "3.sqlite")
    again = ["collect", "--jobs", "2", "--store", str(tmp_path / "3.sqlite"), *ALL_MAIL]
    assert main(again) == 0
    assert capsys.readouterr().out.startswith("0 new, ")


def test_a_template_that_cannot_be_filled_in_is_refused_by_name(tmp_path: Path, capsys) -> None:
    shop = tmp_path / "shop"
    assert main(["shop", "new", str(shop)]) == 0
    (shop / "reply_templates").mkdir()
    (shop / "reply_templates" / "stock.j2").write_text("{{ no_such_thing }}", "utf-8")
    capsys.readouterr()
    assert main(["--shop", str(shop), "collect", "--jobs", "2", str(MAILBOX)]) == 2
    assert "stock.j2" in capsys.readouterr().err


@pytest.mark.parametrize("jobs", ["0", "65", "two"])
def test_a_number_that_is_none_is_a_wrong_call(jobs: str, capsys) -> None:
    assert main(["collect", "--jobs", jobs, "x.eml"]) == 2
    assert "is not a number from 1 to 64" in capsys.readouterr().err


def test_the_mailbox_is_read_by_one(tmp_path: Path, capsys) -> None:
    shop = tmp_path / "shop"
    assert main(["shop", "new", str(shop)]) == 0
    with (shop / "shop.toml").open("a", encoding="utf-8") as file:
        file.write('\n[mailbox]\nhost = "127.0.0.1"\nuser = "a"\npassword_env = "A"\n')
    assert main(["--shop", str(shop), "collect", "--jobs", "2"]) == 2
    assert "--jobs is for files" in capsys.readouterr().err


def test_groups_larger_than_any_pipe_block_nobody() -> None:
    """Each reader has a second group sent to it while it may be sending the answer to the first."""
    head = b"From: a@example.com\nAuto-Submitted: auto-generated\n\n"
    groups = [[parse_message(head + b"%d" % n * 300_000)] for n in range(8)]
    with Readers(2, sample_shop()) as readers:
        done = list(readers.read(groups))
    assert [[one.message.body for one in group] for group in done] == [
        [one.body for one in group] for group in groups
    ]


def test_a_reader_that_is_stopped_is_told_of() -> None:
    message = parse_message(next(iter(sorted(MAILBOX.glob("*.eml")))).read_bytes())

    def groups():
        yield [message]
        for process in readers._processes:
            process.kill()
            process.join()
        yield [message]

    with pytest.raises(ReaderStoppedError), Readers(1, sample_shop()) as readers:
        list(readers.read(groups()))


def test_readers_end_when_whoever_began_them_is_killed(tmp_path: Path) -> None:
    program = (
        "import sys, time\n"
        "from bendreply.intake.several_readers import Readers\n"
        "from bendreply.rules.shop import sample_shop\n"
        "if __name__ == '__main__':\n"
        "    readers = Readers(2, sample_shop())\n"
        "    print(*(one.pid for one in readers._processes), flush=True)\n"
        "    time.sleep(600)\n"
    )
    file = tmp_path / "begin.py"
    file.write_text(program)
    with subprocess.Popen([sys.executable, str(file)], stdout=subprocess.PIPE, text=True) as begun:
        assert begun.stdout is not None
        pids = [int(one) for one in begun.stdout.readline().split()]
        assert len(pids) == 2
        begun.kill()
    until = time.monotonic() + 30
    while any(map(runs, pids)) and time.monotonic() < until:
        time.sleep(0.05)
    left = [pid for pid in pids if runs(pid)]
    for pid in left:
        os.kill(pid, signal.SIGKILL)
    assert left == []


def runs(pid: int) -> bool:
    try:
        state = Path(f"/proc/{pid}/stat").read_text().rpartition(")")[2].split()[0]
    except OSError:
        return False
    return state != "Z"


def test_nothing_of_the_store_is_loaded_by_a_reader() -> None:
    program = f"import sys, {several_readers.__name__}; sys.exit('sqlalchemy' in sys.modules)"
    assert subprocess.run([sys.executable, "-c", program], check=False).returncode == 0
