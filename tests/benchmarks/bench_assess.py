"""How many assessments a second one core does: run by hand, see README.md beside it.

python tests/benchmarks/bench_assess.py                  # this tree
python tests/benchmarks/bench_assess.py --against DIR    # and another tree, taken in turns
python tests/benchmarks/bench_assess.py --profile        # where the time goes
"""

from __future__ import annotations

import argparse
import cProfile
import json
import os
import pstats
import random
import statistics
import subprocess
import sys
import tempfile
import time
from decimal import Decimal
from pathlib import Path

COUNT = 5000
INCH = Decimal("25.4")


def requests(count: int, sizes: int) -> list[object]:
    """``count`` requests over ``sizes`` different ones: stock tube, usual walls, 2 to 6 D."""
    from bendreply.rules.request import Material, SizeRequest

    chance = random.Random(1)
    ods = [Decimal(x) * INCH for x in "0.75 1 1.25 1.5 1.625 1.75 1.9 2 2.5 3".split()]
    ods += map(Decimal, "22 25 30 38 42.4 50 60.3".split())
    walls = [Decimal(x) * INCH for x in "0.049 0.065 0.083 0.095 0.120 0.134".split()]
    walls += map(Decimal, "1.5 2 2.5 3".split())
    materials = [m for m in Material if m is not Material.OTHER]
    found: dict[tuple[object, ...], object] = {}
    while len(found) < sizes:
        od = chance.choice(ods)
        values = {
            "od_mm": od,
            "wall_mm": chance.choice(walls),
            "clr_mm": od * chance.randrange(200, 600) / 100,
            "material": chance.choice(materials),
            "grade": chance.choice([None, "304", "4130", "DOM", "6061-T6"]),
            "written_in": chance.choice(["in", "mm"]),
        }
        found[tuple(values.values())] = SizeRequest(**values)  # type: ignore[arg-type]
    different = list(found.values())
    return different + chance.choices(different, k=count - sizes)


def rate(work: list[object]) -> float:
    """Assessments a second of processor time, the best of three."""
    from bendreply.rules.assess import assess
    from bendreply.rules.shop import sample_shop

    shop = sample_shop()
    best = float("inf")
    for _ in range(3):
        start = time.process_time()
        for request in work:
            assess(request, shop)  # type: ignore[arg-type]
        best = min(best, time.process_time() - start)
    return len(work) / best


WORK = {"all different": (COUNT, COUNT), "1 in 10 new": (COUNT, COUNT // 10)}


def measured() -> dict[str, float]:
    return {name: rate(requests(*sizes)) for name, sizes in WORK.items()}


def of_tree(tree: Path) -> dict[str, float]:
    """The rates of another tree, in a process of its own."""
    with tempfile.TemporaryDirectory() as folder:
        package = Path(folder, "bendreply")
        package.mkdir()
        package.joinpath("rules").symlink_to(tree.resolve() / "rules")
        run = subprocess.run(
            [sys.executable, __file__, "--json"],
            env=os.environ | {"PYTHONPATH": folder},
            capture_output=True,
            text=True,
            check=True,
        )
    return dict(json.loads(run.stdout))


def main() -> None:
    parser = argparse.ArgumentParser(description=__doc__.splitlines()[0] if __doc__ else "")
    parser.add_argument("--against", type=Path, help="another tree of this project")
    parser.add_argument("--turns", type=int, default=5)
    parser.add_argument("--profile", action="store_true")
    parser.add_argument("--json", action="store_true")
    args = parser.parse_args()
    say = sys.stdout.write
    if args.json:
        say(json.dumps(measured()))
    elif args.profile:
        work = requests(COUNT, COUNT)
        rate(work)
        with cProfile.Profile() as profile:
            rate(work)
        pstats.Stats(profile, stream=sys.stdout).sort_stats("tottime").print_stats(20)
    elif args.against:
        here = Path(__file__).parents[2]
        turns = [(of_tree(args.against), of_tree(here)) for _ in range(args.turns)]
        for name in WORK:
            was, now = (statistics.median(t[i][name] for t in turns) for i in (0, 1))
            ratio = statistics.median(t[1][name] / t[0][name] for t in turns)
            say(f"{name:15} {was:8.0f}/s -> {now:8.0f}/s, {ratio:.2f} times as many\n")
    else:
        for name, found in measured().items():
            say(f"{name:15} {found:8.0f}/s\n")


if __name__ == "__main__":
    main()
