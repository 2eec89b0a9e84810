"""How long a command takes from start to end, as times ``python -c pass``; see README.md beside it.

python tests/benchmarks/bench_start.py              # medians of 15 runs of each, taken in turns
python tests/benchmarks/bench_start.py --runs 5
"""

from __future__ import annotations

import argparse
import os
import statistics
import subprocess
import sys

QUESTION = "do I need a wiper die for 1.75 x .065 on 5.25?"
COMMAND = "import sys; from bendreply.intake.cli import main; sys.exit(main(sys.argv[1:]))"
"""What the installed script does."""
WORK = {
    "python -c pass": ["-c", "pass"],
    "bendreply --help": ["-c", COMMAND, "--help"],
    f'bendreply answer "{QUESTION}"': ["-c", COMMAND, "answer", QUESTION],
}
# Bytecode is kept, as pip leaves it; an environment that forbids that would measure compiling.
ENVIRONMENT = {
    name: value for name, value in os.environ.items() if name != "PYTHONDONTWRITEBYTECODE"
}

WITHIN = f"""
import contextlib, io, sys, time
from bendreply.intake import cli_read, drafting, pasted, pipeline, screen, template_limits
from bendreply.rules import assess, shop
from bendreply.intake.cli import main
for turn in ("first", "second"):
    start = time.process_time()
    with contextlib.redirect_stdout(io.StringIO()):
        main(["answer", {QUESTION!r}])
    print(turn, time.process_time() - start)
"""


def cpu_seconds(arguments: list[str]) -> float:
    """Processor time of one process, start and end included."""
    process = subprocess.Popen(
        [sys.executable, *arguments],
        stdout=subprocess.DEVNULL,
        stderr=subprocess.DEVNULL,
        env=ENVIRONMENT,
    )
    _, status, used = os.wait4(process.pid, 0)
    process.returncode = os.waitstatus_to_exitcode(status)
    if process.returncode:
        raise SystemExit(f"{arguments}: exit status {process.returncode}")
    return used.ru_utime + used.ru_stime


def in_turns(runs: int) -> dict[str, list[float]]:
    """Seconds of each run of each command: in turns, so that a busy while falls on all alike."""
    for arguments in WORK.values():
        cpu_seconds(arguments)  # not counted: it may still have to write bytecode
    taken: dict[str, list[float]] = {name: [] for name in WORK}
    for _ in range(runs):
        for name, arguments in WORK.items():
            taken[name].append(cpu_seconds(arguments))
    return taken


def say(line: str) -> None:
    sys.stdout.write(line + "\n")


def main() -> None:
    parser = argparse.ArgumentParser(description=__doc__.splitlines()[0])
    parser.add_argument("--runs", type=int, default=15)
    taken = in_turns(parser.parse_args().runs)
    floor = taken["python -c pass"]
    say(f"Python {sys.version.split()[0]}; processor time, median (least) of {len(floor)} runs")
    for name, seconds in taken.items():
        median, least = statistics.median(seconds), min(seconds)
        ratio, least_ratio = median / statistics.median(floor), least / min(floor)
        say(
            f"{median * 1000:6.0f} ms ({least * 1000:4.0f})   "
            f"{ratio:5.1f} x ({least_ratio:5.1f})   {name}"
        )
    run = [sys.executable, "-c", WITHIN]
    for line in subprocess.check_output(run, text=True, env=ENVIRONMENT).splitlines():
        turn, took = line.split()
        say(f"{float(took) * 1000:6.0f} ms   the {turn} answer of a process that has imported all")


if __name__ == "__main__":
    main()
