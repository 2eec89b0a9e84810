"""A command answers soon after it is started: by what it loads and compiles, and by the clock."""

from __future__ import annotations

import os
import re
import subprocess
import sys

import pytest

from bendreply.intake.late import Late
from bendreply.intake.late_pattern import late_pattern

QUESTION = "do I need a wiper die for 1.75 x .065 on 5.25?"
ANSWER = f"""
import sys
from bendreply.intake.cli import main
status = main(["answer", {QUESTION!r}])
"""
COUNTED = """
import re
plain, compiled = re.compile, []
def counted(pattern, flags=0):
    if isinstance(pattern, str):
        compiled.append(len(pattern))
    return plain(pattern, flags)
re.compile = counted
"""
ENVIRONMENT = {
    name: value for name, value in os.environ.items() if name != "PYTHONDONTWRITEBYTECODE"
}


def run(script: str) -> str:
    done = subprocess.run(
        [sys.executable, "-c", script], capture_output=True, text=True, check=True, env=ENVIRONMENT
    )
    return done.stdout


def cpu_seconds(*arguments: str) -> float:
    process = subprocess.Popen(
        [sys.executable, *arguments], stdout=subprocess.DEVNULL, env=ENVIRONMENT
    )
    _, status, used = os.wait4(process.pid, 0)
    process.returncode = os.waitstatus_to_exitcode(status)
    assert process.returncode == 0
    return used.ru_utime + used.ru_stime


@pytest.mark.parametrize(
    "heavy",
    "sqlalchemy alembic pint openpyxl pypdf imapclient selectolax starlette uvicorn slixmpp "
    "matplotlib psycopg rapidfuzz bendreply.intake.store bendreply.intake.mailbox".split(),
)
def test_answer_loads_nothing_that_it_does_not_need(
    heavy: str, loaded_by_answer: frozenset[str]
) -> None:
    assert not {name for name in loaded_by_answer if name == heavy or name.startswith(heavy + ".")}


@pytest.fixture(scope="module")
def loaded_by_answer() -> frozenset[str]:
    out = run(ANSWER + 'print("LOADED", *sorted(sys.modules))')
    return frozenset(out.split("LOADED")[1].split())


def test_answer_compiles_few_patterns_and_no_huge_one() -> None:
    """Letters of pattern are what compiling takes time for; here some 130,000 stand in patterns."""
    out = run(COUNTED + ANSWER + 'print("COMPILED", sum(compiled), max(compiled))')
    letters, longest = map(int, out.split("COMPILED")[1].split())
    assert letters < 45_000
    assert longest < 3_000


def test_answer_takes_no_more_than_a_multiple_of_starting_python() -> None:
    """See benchmarks/README.md for the aim; the bound here is for a busy machine."""
    cpu_seconds("-c", ANSWER)  # bytecode may still have to be written
    pairs = []
    for _ in range(12):  # one quiet moment tells; under load the same command takes up to half more
        pairs.append(cpu_seconds("-c", ANSWER) / cpu_seconds("-c", "import pydantic, jinja2, rich"))
        if pairs[-1] < 6.5:
            return
    pytest.fail(f"answer takes {min(pairs):.1f} times what loading three of its libraries takes")


def test_a_late_pattern_finds_what_the_compiled_one_finds() -> None:
    pattern = r"\b(?:wall|od) (?P<size>\d+)|(?P<loose>loose) fit"
    late, compiled = late_pattern(pattern), re.compile(pattern)
    for text in (
        "od 5, wall 7",
        "a loose fit",
        "nothing",
        "wall",
        "",
        *map(str, range(20)),
        "od 9",
    ):
        found = [(match.span(), match.groupdict()) for match in late.finditer(text)]
        assert found == [(match.span(), match.groupdict()) for match in compiled.finditer(text)]


def test_several_patterns_find_the_leftmost_of_all() -> None:
    late = Late([r"\bsecond\b", r"\bfirst\b"])
    found = late.search("the First, then the second")
    assert found is not None
    assert found.span() == (4, 9)
