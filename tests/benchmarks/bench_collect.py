"""A backlog of a Maildir collected whole, against only parsing it: run by hand, see README.md.

python tests/benchmarks/bench_collect.py                  # 1,000 and 10,000 messages
python tests/benchmarks/bench_collect.py --counts 300
python tests/benchmarks/bench_collect.py --profile        # where the time goes
"""

from __future__ import annotations

import argparse
import cProfile
import json
import pstats
import random
import re
import resource
import subprocess
import sys
import tempfile
import time
from email import policy
from email.parser import BytesParser
from pathlib import Path

TREE = Path(__file__).resolve().parents[2]
SAMPLES = ("tests/corpus/dev", "tests/corpus/dev2", "demo_mailbox")
ODS = (b"1.25", b"1.5", b"1.625", b"1.75", b"2.25", b"2.5", b"1 1/2", b"1 3/4", b"2 1/4")
WALLS = (b".049", b".065", b".083", b".095", b".120", b".134")
_FIGURES = tuple(
    (re.compile(rb"(?<![\d./,])(0?)(?:%s)(?![\d./,])" % b"|".join(map(re.escape, some))), some)
    for some in (ODS, WALLS)
)
_ID = re.compile(rb"(?im)^((?:message-id|in-reply-to|references):[^\n]*(?:\n[ \t][^\n]*)*)")
_FROM = re.compile(rb"(?im)^(from:[^\n]*?[<\s])([^<>\s@]+)@")


def varied(raw: bytes, number: int, chance: random.Random) -> bytes:
    """The message as another customer might have written it: own ids, own address, other sizes."""
    head, gap, body = raw.partition(b"\n\r\n" if b"\n\r\n" in raw else b"\n\n")
    own = b".%d@" % number
    head = _ID.sub(lambda found: found[1].replace(b"@", own), head)
    head = _FROM.sub(lambda found: found[1] + found[2] + own, head, count=1)
    if b"base64" not in raw:
        for pattern, some in _FIGURES:
            body = pattern.sub(lambda found, some=some: found[1] + chance.choice(some), body)
    return head + gap + body


def lay(folder: Path, count: int) -> None:
    """A Maildir of ``count`` messages, the same each time."""
    for box in ("new", "cur", "tmp"):
        (folder / box).mkdir(parents=True)
    raws = [file.read_bytes() for place in SAMPLES for file in sorted((TREE / place).glob("*.eml"))]
    chance = random.Random(1)
    for number in range(count):
        raw = varied(raws[number % len(raws)], number // len(raws), chance)
        (folder / "cur" / f"{number:06}.bench:2,S").write_bytes(raw)


def parse_only(folder: Path) -> None:
    """The floor: each file read and parsed, its header fields and words looked at."""
    parser = BytesParser(policy=policy.default)
    for file in sorted((folder / "cur").iterdir()):
        message = parser.parsebytes(file.read_bytes())
        for name in ("Subject", "From", "Date", "Message-ID"):
            str(message.get(name, ""))
        for part in message.walk():
            if not part.is_multipart():
                part.get_payload(decode=True)


def collect(folder: Path) -> None:
    """What ``bendreply collect`` does, in this process."""
    from bendreply.intake.cli import main

    main(["collect", "--store", str(folder.parent / "store.sqlite"), str(folder)])
    from bendreply.intake.files.nursery import NURSERY

    NURSERY.close()  # its time is known once it has ended


WORK = {"parse": parse_only, "collect": collect}


def here(what: str, folder: Path) -> None:
    """One piece of work in this process; its figures as JSON on the last line."""
    began, used = time.perf_counter(), time.process_time()
    WORK[what](folder)
    spent = resource.getrusage(resource.RUSAGE_SELF)
    files = resource.getrusage(resource.RUSAGE_CHILDREN)
    figures = {
        "clock_s": time.perf_counter() - began,
        "cpu_s": time.process_time() - used,
        "children_s": files.ru_utime + files.ru_stime,
        "peak_mb": spent.ru_maxrss / 1024,
    }
    sys.stdout.write(f"{json.dumps(figures)}\n")


def figures_of(what: str, folder: Path) -> dict[str, float]:
    """The same in a process of its own, so that each has a peak of its own."""
    command = [sys.executable, __file__, "--here", what, str(folder)]
    done = subprocess.run(command, capture_output=True, text=True, check=False)
    if not done.stdout.strip().endswith("}"):
        sys.exit(f"{what} failed:\n{done.stdout}{done.stderr}")
    lines = done.stdout.splitlines()
    if len(lines) > 1:
        sys.stdout.write(f"    {lines[-2]}\n")
    figures: dict[str, float] = json.loads(lines[-1])
    return figures


def measure(count: int) -> None:
    with tempfile.TemporaryDirectory() as base:
        folder = Path(base, "mail")
        lay(folder, count)
        found = {what: figures_of(what, folder) for what in WORK}
        found["again"] = figures_of("collect", folder)
        for what, one in found.items():
            whole = one["cpu_s"] + one["children_s"]
            sys.stdout.write(
                f"{count:6} {what:8} {count / one['clock_s']:8.0f}/s by the clock, "
                f"{1000 * whole / count:7.3f} ms of processor each "
                f"({1000 * one['children_s'] / count:.3f} for files), "
                f"peak {one['peak_mb']:.0f} MB\n"
            )
        ratio = (found["collect"]["cpu_s"] + found["collect"]["children_s"]) / (
            found["parse"]["cpu_s"] + found["parse"]["children_s"]
        )
        sys.stdout.write(f"{count:6} collect : parse = {ratio:.1f}\n")
        sys.stdout.flush()


def main() -> None:
    ask = argparse.ArgumentParser(description=__doc__)
    ask.add_argument("--counts", type=int, nargs="+", default=[1000, 10_000])
    ask.add_argument("--here", nargs=2, metavar=("WORK", "MAILDIR"), help=argparse.SUPPRESS)
    ask.add_argument("--profile", action="store_true")
    args = ask.parse_args()
    if args.here:
        here(args.here[0], Path(args.here[1]))
    elif args.profile:
        with tempfile.TemporaryDirectory() as base:
            folder = Path(base, "mail")
            lay(folder, args.counts[0])
            with cProfile.Profile() as profile:
                collect(folder)
        pstats.Stats(profile).sort_stats("tottime").print_stats(40)
    else:
        for count in args.counts:
            measure(count)


if __name__ == "__main__":
    main()
