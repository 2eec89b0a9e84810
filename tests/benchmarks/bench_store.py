"""A store of many inquiries: what a person waits for at it. Run by hand, see README.md.

python tests/benchmarks/bench_store.py                      # 100,000 inquiries in a file
python tests/benchmarks/bench_store.py --count 1000
"""

from __future__ import annotations

import argparse
import random
import sqlite3
import statistics
import sys
import tempfile
import time
from collections.abc import Callable
from contextlib import closing
from pathlib import Path
from typing import Any

TREE = Path(__file__).resolve().parents[2]
SAMPLES = ("tests/corpus/dev", "tests/corpus/dev2")
STATES = ["waiting"] * 10 + ["approved"] * 2 + ["delivered"] * 30 + ["answered"] * 58
"""How inquiries stand in a shop that has used it for years."""
TABLES = ("inquiry", "message", "draft", "event")
TURNS = 7


def fill(path: Path, count: int) -> None:
    """Collect the labelled messages, then lay copies of what came of them beside them."""
    from bendreply.intake.cli import main

    main(["collect", "--store", str(path), *(str(TREE / place) for place in SAMPLES)])
    chance = random.Random(1)
    with closing(sqlite3.connect(path)) as store, store:
        store.row_factory = sqlite3.Row
        rows: dict[str, dict[int, list[dict[str, Any]]]] = {}
        for table in TABLES:
            rows[table] = {}
            for row in store.execute(f"SELECT * FROM {table}"):
                of = row["id"] if table == "inquiry" else row["inquiry_id"]
                rows[table].setdefault(of, []).append(dict(row))
        known = sorted(rows["inquiry"])
        for number in range(known[-1] + 1, count + 1):
            like = chance.choice(known)
            for table in TABLES:
                for one in rows[table].get(like, []):
                    copy = varied(table, one, number, chance)
                    names, gaps = ", ".join(copy), ", ".join("?" * len(copy))
                    store.execute(
                        f"INSERT INTO {table} ({names}) VALUES ({gaps})", list(copy.values())
                    )


def varied(table: str, row: dict[str, Any], number: int, chance: random.Random) -> dict[str, Any]:
    """The row as another customer's inquiry would have it."""
    day = f"2026-{chance.randint(1, 11):02}-{chance.randint(1, 28):02} 09:00:00.000000"
    if table == "inquiry":
        state = chance.choice(STATES) if row["state"] == "waiting" else row["state"]
        return row | {"id": number, "state": state, "created_at": day, "waiting_since": day}
    copy = {name: value for name, value in row.items() if name != "id"} | {"inquiry_id": number}
    if table == "message":
        own = {name: f"{number}.{row[name]}" for name in ("message_id", "thread")}
        sender = f"customer{number}@example.net"
        copy |= own | {"raw_sha256": f"{number:064x}", "sender": sender, "received_at": day}
    return copy


def told(what: str, work: Callable[[], object]) -> None:
    """The median of some turns, by the clock and in processor time."""
    clock, used = [], []
    for _ in range(TURNS):
        began, cpu = time.perf_counter(), time.process_time()
        work()
        clock.append(time.perf_counter() - began)
        used.append(time.process_time() - cpu)
    sys.stdout.write(
        f"{what:42}{1000 * statistics.median(clock):9.1f} ms by the clock,"
        f"{1000 * statistics.median(used):9.1f} ms of processor\n"
    )


def measure(path: Path) -> None:
    from bendreply.intake import desk
    from bendreply.intake.cli_report import count as weekly
    from bendreply.intake.store import open_store
    from bendreply.rules.shop import sample_shop

    with open_store(path) as store:
        rows = desk.backlog(store)
        sys.stdout.write(f"{path.stat().st_size / 1e6:.0f} MB, {len(rows)} wait\n")
        drafted = iter([row.id for row in rows if row.has_draft])
        known = desk.show(store, rows[-1].id).message
        told("the 200 most urgent", lambda: desk.backlog(store, 200))
        told("how many wait", lambda: desk.how_many_wait(store))
        told("all that wait", lambda: desk.backlog(store))
        told("show", lambda: desk.show(store, rows[len(rows) // 2].id))
        told("approve", lambda: desk.approve(store, next(drafted), "Ann"))
        told("is a message known", lambda: desk.already_taken(store, known, "x"))
        told("report of a week", lambda: weekly(store, sample_shop()))


def main() -> None:
    ask = argparse.ArgumentParser(description=__doc__)
    ask.add_argument("--count", type=int, default=100_000)
    args = ask.parse_args()
    with tempfile.TemporaryDirectory() as base:
        path = Path(base, "store.sqlite")
        fill(path, args.count)
        measure(path)


if __name__ == "__main__":
    main()
