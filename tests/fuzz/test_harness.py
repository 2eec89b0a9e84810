"""The fuzzing itself still works, and the first inputs of it hold."""

from __future__ import annotations

import subprocess
import sys
from pathlib import Path

HERE = Path(__file__).parent


def test_a_hundred_mutated_messages_hold() -> None:
    run = subprocess.run(
        [sys.executable, str(HERE / "fuzz_reading.py"), "--inputs", "100", "--long", "0"],
        capture_output=True,
        text=True,
        check=False,
    )
    assert run.returncode == 0, run.stdout + run.stderr
    assert "100 inputs" in run.stdout
    assert "0 faults" in run.stdout
