"""Mutated messages through all of ``bendreply read``: no exception, evidence in its place, in time.

python tests/fuzz/fuzz_reading.py --inputs 20000            # inputs 0 to 19999 of seed 1
python tests/fuzz/fuzz_reading.py --seconds 600 --seed 7    # ten minutes of others
python tests/fuzz/fuzz_reading.py --only 4711 --profile     # one of them, and where its time goes
python tests/fuzz/fuzz_reading.py --file faults/x.pasted    # one that was kept

Exit status 1 where anything was found. With ``--keep DIR`` each new kind of fault is written there,
as found and as short as it could be made; the file's suffix says the way it came in.
"""

from __future__ import annotations

import argparse
import cProfile
import pstats
import re
import sys
import time
from collections import Counter
from collections.abc import Iterator
from dataclasses import replace
from pathlib import Path
from typing import get_args

from judge import Fault, Judge
from mutate import Input, Inputs, Way
from shrink import shrunk

SCREEN = 50
"""One input in so many is also laid out for a terminal: that takes as long as all the rest."""


def main() -> int:
    args = _arguments()
    judge = Judge()
    if args.file:
        return _one(judge, _kept_input(args.file), profile=args.profile)
    inputs = Inputs(args.seed, args.long)
    if args.only is not None:
        return _one(judge, inputs.make(args.only), profile=args.profile)
    found = _run(judge, inputs, args)
    for kind, count in found.most_common():
        say(f"{count:6} times  {kind}")
    return 1 if found else 0


def _arguments() -> argparse.Namespace:
    parser = argparse.ArgumentParser(
        description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter
    )
    parser.add_argument("--inputs", type=int, help="so many")
    parser.add_argument("--seconds", type=float, help="so long")
    parser.add_argument("--first", type=int, default=0, help="the number to begin with")
    parser.add_argument("--seed", type=int, default=1)
    parser.add_argument(
        "--long", type=int, default=400, help="one input in so many is up to 100 kB long; 0: none"
    )
    parser.add_argument("--only", type=int, help="one input by its number")
    parser.add_argument("--file", type=Path, help="one input that was kept")
    parser.add_argument("--profile", action="store_true", help="with --only or --file")
    parser.add_argument("--keep", type=Path, metavar="DIR", help="where faults are written")
    args = parser.parse_args()
    if args.inputs is None and args.seconds is None:
        args.inputs = 10_000
    return args


def _run(judge: Judge, inputs: Inputs, args: argparse.Namespace) -> Counter[str]:
    found: Counter[str] = Counter()
    begin, total, told, number = time.monotonic(), 0, 1000, args.first
    for number in _numbers(args):
        given = inputs.make(number)
        total += len(given.raw)
        fault = judge.fault(given, on_screen=number % SCREEN == 0)
        if fault is not None:
            found[fault.kind] += 1
            if found[fault.kind] == 1:
                say(f"input {number}: {fault.kind}: {fault.detail}")
                if args.keep:
                    _keep(judge, given, fault, number, args.keep)
        if number - args.first + 1 == told:
            told = min(told * 2, told + 50_000)
            _say_how_far(judge, number - args.first + 1, total, begin, found)
    _say_how_far(judge, number - args.first + 1, total, begin, found)
    return found


def _numbers(args: argparse.Namespace) -> Iterator[int]:
    until = time.monotonic() + args.seconds if args.seconds is not None else None
    number = args.first
    while args.inputs is None or number < args.first + args.inputs:
        if until is not None and time.monotonic() >= until:
            return
        yield number
        number += 1


def _say_how_far(judge: Judge, count: int, total: int, begin: float, found: Counter[str]) -> None:
    say(
        f"{count} inputs, {total / 1e6:.1f} MB, {judge.sizes} sizes read, "
        f"{time.process_time():.0f} s of process time ({time.monotonic() - begin:.0f} s passed), "
        f"the slowest good one {judge.slowest:.2f} s, "
        f"{found.total()} faults of {len(found)} kinds"
    )


def _keep(judge: Judge, given: Input, fault: Fault, number: int, folder: Path) -> None:
    def still(raw: bytes) -> bool:
        again = judge.fault(replace(given, raw=raw), on_screen=True)
        return again is not None and again.kind == fault.kind

    folder.mkdir(parents=True, exist_ok=True)
    name = re.sub(r"\W+", "-", fault.kind)
    (folder / f"{number}-{name}.{given.way}").write_bytes(given.raw)
    # A slow input is slow because it is long: each try would take its time.
    if fault.kind != "slow":
        short = shrunk(given.raw, still)
        (folder / f"{number}-{name}-short.{given.way}").write_bytes(short)
        say(f"    as short as {short!r}")


def _kept_input(file: Path) -> Input:
    way: Way = next((way for way in get_args(Way) if file.suffix == f".{way}"), "pasted")
    return Input(file.read_bytes(), way)


def _one(judge: Judge, given: Input, *, profile: bool) -> int:
    say(f"{given.way}: {given.raw[:500]!r}{' ...' if len(given.raw) > 500 else ''}")
    watch = cProfile.Profile()
    if profile:
        judge.fault(Input(b"1.75 x .095", "pasted"), on_screen=False)  # imports and first looks
        watch.enable()
    fault = judge.fault(given, on_screen=not profile)
    watch.disable()
    if profile:
        pstats.Stats(watch, stream=sys.stdout).sort_stats("tottime").print_stats(25)
    say(f"{fault.kind}: {fault.detail}" if fault else f"no fault, {judge.slowest:.2f} s")
    return 1 if fault else 0


def say(line: str) -> None:
    """A line at once: a long run is watched through a file."""
    sys.stdout.write(f"{line}\n")
    sys.stdout.flush()


if __name__ == "__main__":
    sys.exit(main())
