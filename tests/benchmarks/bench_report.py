"""How long the report takes on a store with two years of requests, and how much memory.

    python tests/benchmarks/bench_report.py [--requests 100000] [--week 2026-W47]

A store is filled with invented requests, straight into its tables; then `report` runs on it in a
process of its own: the page with pictures, on screen, and all two years as JSON.
"""

from __future__ import annotations

import argparse
import os
import random
import subprocess
import sys
import tempfile
import time
from datetime import UTC, datetime, timedelta
from decimal import Decimal
from pathlib import Path

import sqlalchemy as sa

from bendreply.intake.message import parse_message
from bendreply.intake.store import open_store
from bendreply.intake.store_json import pack_assessments, pack_message
from bendreply.intake.store_schema import asked, inquiry, message, reply, tally
from bendreply.intake.tally import BETWEEN
from bendreply.rules.assess import assess
from bendreply.rules.assessment import Assessment
from bendreply.rules.request import Material, SizeRequest
from bendreply.rules.shop import sample_shop, write_new_shop

END = datetime(2026, 11, 22, 23, 0, tzinfo=UTC)
WEEKS = 104
ODS_IN = "0.75 1 1.25 1.5 1.625 1.75 1.9 2 2.25 2.375 2.5 3".split()
WALLS_IN = ".035 .049 .058 .065 .083 .095 .109 .120 .134".split()
ODS_MM = "20 22 25 30 32 35 38 40 42.4 45 48.3 50 54 57 60.3 76.1".split()
WALLS_MM = "1 1.2 1.5 2 2.5 2.6 2.9 3 3.2 4".split()


def sizes(chance: random.Random) -> list[Assessment]:
    """Some thousand different sizes, judged by the sample shop."""
    found = []
    for unit, ods, walls in (("in", ODS_IN, WALLS_IN), ("mm", ODS_MM, WALLS_MM)):
        mm = Decimal("25.4") if unit == "in" else Decimal(1)
        for od in ods:
            for wall in walls:
                for d in ("1.5", "2", "2.5", "3", "4", "5"):
                    request = SizeRequest(
                        od_mm=Decimal(od) * mm,
                        wall_mm=Decimal(wall) * mm,
                        clr_mm=Decimal(od) * mm * Decimal(d),
                        material=chance.choice(list(Material)[:4]),
                    )
                    found.append(assess(request, sample_shop(), ()))
    chance.shuffle(found)
    return found


def fill(file: Path, requests: int) -> None:
    """Put so many requests into a new store."""
    chance = random.Random(8)
    kinds = sizes(chance)
    how_often = [1 / (rank + 3) for rank in range(len(kinds))]
    packed = {id(one): pack_assessments([one]) for one in kinds}
    mail = parse_message(b"From: a@example.com\r\nSubject: Mandrel\r\n\r\n1.75 x .095 on 5.25\r\n")
    words = pack_message(mail)
    rows: dict[str, list[dict[str, object]]] = {"i": [], "m": [], "t": [], "a": [], "r": []}
    for number in range(1, requests + 1):
        at = END - timedelta(seconds=chance.randrange(WEEKS * 7 * 86400))
        one = chance.choices(kinds, how_often)[0]
        request, mandrel = one.request, one.mandrel
        sender = f"customer{chance.randrange(requests // 3)}@example.com"
        rows["i"].append(
            {
                "id": number,
                "version": 1,
                "state": "answered",
                "kind": "sizes",
                "decision": one.decision,
                "created_at": at,
                "waiting_since": at,
                "assessments": packed[id(one)],
                "questions": "[]",
                "notes": "[]",
            }
        )
        rows["m"].append(
            {
                "inquiry_id": number,
                "channel": "email",
                "message_id": f"{number}@example.com",
                "thread": f"{number}@example.com",
                "sender_name": "",
                "sender": sender,
                "subject": "Mandrel",
                "received_at": at,
                "kind": "sizes",
                "why_kind": "",
                "message": words,
                "source": "x",
                "taken_at": at,
            }
        )
        rows["t"].append(
            {
                "inquiry_id": number,
                "at": at,
                "customer": sender,
                "kind": "sizes",
                "open_questions": 0,
            }
        )
        rows["a"].append(
            {
                "inquiry_id": number,
                "request_index": 0,
                "shape": "round",
                "od_mm": str(request.od_mm),
                "wall_mm": str(request.wall_mm),
                "clr_mm": str(request.clr_mm),
                "material": request.material,
                "doubtful": chance.random() < 0.1,
                "decision": one.decision,
                "wanted": 1,
                "buying": chance.random() < 0.3,
                "mandrel_low_mm": str(mandrel.diameter_low_mm) if mandrel else None,
                "mandrel_high_mm": str(mandrel.diameter_high_mm) if mandrel else None,
                "balls": mandrel.balls_low if mandrel else None,
                "surfaces": BETWEEN.join(mandrel.surfaces) if mandrel else "",
            }
        )
        after = chance.randrange(600, 400_000)
        rows["r"].append(
            {
                "inquiry_id": number,
                "message_id": f"r{number}@example.com",
                "body": "",
                "after_s": after,
                "sent_at": at + timedelta(seconds=after),
            }
        )
    tables = {"i": inquiry, "m": message, "t": tally, "a": asked, "r": reply}
    with open_store(file) as store, store.writing() as book:
        for name, table in tables.items():
            book._connection.execute(sa.insert(table), rows[name])


def say(*words: str) -> None:
    """One line of the outcome."""
    sys.stdout.write(" ".join(words) + "\n")
    sys.stdout.flush()


def measured(*arguments: str) -> str:
    """Run a command of bendreply: seconds and peak memory."""
    begin = time.perf_counter()
    process = subprocess.Popen(
        [sys.executable, "-c", "from bendreply.intake.cli import main; raise SystemExit(main())",
         *arguments], stdout=subprocess.PIPE,
    )  # fmt: skip
    assert process.stdout is not None
    told = len(process.stdout.read())
    _, status, usage = os.wait4(process.pid, 0)
    assert status == 0
    took, busy = time.perf_counter() - begin, usage.ru_utime + usage.ru_stime
    return f"{took:.1f} s ({busy:.1f} s of one core), {usage.ru_maxrss / 1024:.0f} MB, {told} bytes"


def main() -> None:
    """Fill and measure."""
    parser = argparse.ArgumentParser()
    parser.add_argument("--requests", type=int, default=100_000)
    parser.add_argument("--week", default="2026-W47")
    parser.add_argument("--keep", type=Path, help="a new folder to keep shop and store in")
    parser.add_argument("--fill", type=Path, help=argparse.SUPPRESS)
    args = parser.parse_args()
    if args.fill:
        fill(args.fill / "store.sqlite", args.requests)
        return
    folder = args.keep or Path(tempfile.mkdtemp()) / "shop"
    if not folder.exists():
        write_new_shop(folder)
        # In a process of its own: what is forked from a large one counts its memory as theirs.
        fill_it = [
            sys.executable,
            __file__,
            "--fill",
            str(folder),
            "--requests",
            str(args.requests),
        ]
        subprocess.run(fill_it, check=True)
    say(f"{args.requests} requests, {(folder / 'store.sqlite').stat().st_size / 1e6:.0f} MB")
    shop = ("--shop", str(folder), "report")
    page = str(folder / "report.html")
    say("page with pictures:  ", measured(*shop, "--week", args.week, "--out", page))
    say("on screen:           ", measured(*shop, "--week", args.week))
    say("two years, as JSON:  ", measured(*shop, "--week", "2024-W48..2026-W47", "--json"))
    say("two years, page:     ", measured(*shop, "--week", "2024-W48..2026-W47", "--out", page))


if __name__ == "__main__":
    main()
