"""The README is true: its commands run, and what it quotes of them is what they print.

So is what can be checked of DEVELOPERS.md and CHANGELOG.md.
"""

from __future__ import annotations

import os
import re
import subprocess
import sys
import tomllib
from collections.abc import Iterator
from dataclasses import dataclass
from itertools import pairwise
from pathlib import Path

import pytest

TOP = Path(__file__).parents[1]
README = (TOP / "README.md").read_text("utf-8")
PROJECT = tomllib.loads((TOP / "pyproject.toml").read_text("utf-8"))["project"]
BIN = Path(sys.executable).parent
LEFT_OUT = "..."
"""A line of its own in a quoted output: any number of lines may stand there."""


@dataclass(frozen=True)
class Quoted:
    """A command of the README and what it says of its output."""

    command: str
    output: tuple[str, ...]


def blocks(language: str) -> Iterator[str]:
    """The code blocks of the README in one language."""
    for match in re.finditer(rf"^```{language}\n(.*?)^```$", README, re.MULTILINE | re.DOTALL):
        yield match[1]


def tour() -> list[Quoted]:
    """All that is typed in the README's console blocks, in order."""
    typed = []
    for block in blocks("console"):
        lines = block.splitlines()
        starts = [n for n, line in enumerate(lines) if line.startswith("$ ")]
        for start, end in pairwise([*starts, len(lines)]):
            output = tuple(line.rstrip() for line in lines[start + 1 : end])
            typed.append(Quoted(lines[start].removeprefix("$ "), output))
    return typed


def stands_in(quoted: tuple[str, ...], printed: list[str]) -> bool:
    """Whether ``printed`` is what is quoted, with something at each line that leaves out."""
    pattern = "".join(
        r"(?:.*\n)*?" if line == LEFT_OUT else re.escape(line) + r"\n" for line in quoted
    )
    return re.fullmatch(pattern, "".join(f"{line}\n" for line in printed)) is not None


def environment() -> dict[str, str]:
    """A terminal of 100 columns, as the README says, and the program of this very Python first."""
    env = {name: value for name, value in os.environ.items() if not name.startswith("BENDREPLY_")}
    path = os.pathsep.join((str(BIN), env.get("PATH", "")))
    return env | {"PATH": path, "COLUMNS": "100", "PYTHONIOENCODING": "utf-8"}


def test_what_the_tour_quotes_is_what_it_prints(tmp_path: Path) -> None:
    env = environment()
    quotes = tour()
    assert len(quotes) >= 8
    wrong = []
    for quoted in quotes:
        if set_variable := re.fullmatch(r"export (\w+)=(\S+)", quoted.command):
            env[set_variable[1]] = set_variable[2]
            continue
        run = subprocess.run(
            ["sh", "-c", quoted.command],
            cwd=tmp_path,
            env=env,
            stdout=subprocess.PIPE,
            stderr=subprocess.STDOUT,
            text=True,
            encoding="utf-8",
            timeout=120,
            check=False,
        )
        printed = [line.rstrip() for line in run.stdout.rstrip().splitlines()]
        if run.returncode or not stands_in(quoted.output, printed):
            wrong.append(f"$ {quoted.command}\n" + "\n".join(printed))
    assert not wrong, "README.md quotes otherwise than is printed:\n\n" + "\n\n".join(wrong)


@pytest.mark.parametrize(
    ("quoted", "printed", "true"),
    [
        ((), [], True),
        (("a",), ["a"], True),
        (("a",), ["a", "b"], False),
        (("a", LEFT_OUT), ["a", "b", "c"], True),
        (("a", LEFT_OUT, "c"), ["a", "b", "c"], True),
        (("a", LEFT_OUT, "c"), ["a", "c", "b"], False),
        ((LEFT_OUT, "b"), ["a", "b c"], False),
    ],
)
def test_only_whole_lines_can_be_left_out(
    quoted: tuple[str, ...], printed: list[str], true: bool
) -> None:
    assert stands_in(quoted, printed) is true


def test_the_two_commands_need_nothing_but_python_and_this_project() -> None:
    install, test = (line for block in blocks("sh") for line in block.splitlines())
    steps = [step.split() for step in install.split(" && ")]
    assert [step[0] for step in steps] == ["python3.11", ".venv/bin/pip", ".venv/bin/bendreply"]
    extras = re.findall(r"\[([\w,]+)\]", install)[0].split(",")
    assert extras == ["test", "charts"]
    assert any(need.startswith("pytest") for need in PROJECT["optional-dependencies"]["test"])
    assert "bendreply" in PROJECT["scripts"]
    assert PROJECT["requires-python"] == ">=3.11"
    assert test == ".venv/bin/pytest"


def test_every_command_that_there_is_stands_in_the_readme() -> None:
    help_text = subprocess.run(
        [BIN / "bendreply", "--help"],
        env=environment(),
        capture_output=True,
        text=True,
        check=True,
    ).stdout
    commands = re.findall(r"^    ([a-z][a-z-]*)(?:\s|$)", help_text, re.MULTILINE)
    assert {"demo", "read", "deliver", "set-aside", "shop"} <= set(commands)
    assert [command for command in commands if f"`{command}" not in README] == []


@pytest.mark.parametrize(
    "folder",
    [
        "rules",
        "intake",
        "intake/reading",
        "intake/reading/text",
        "intake/reading/numbers",
        "intake/reading/aside",
        "intake/reading/naming",
        "intake/reading/radii",
        "intake/reading/tables",
        "intake/reading/said",
        "intake/reading/picking",
        "intake/reading/wanted",
        "intake/reading/sizes",
        "intake/reading/nets",
        "intake/reading/thread",
        "intake/reading/material",
        "intake/reading/counts",
        "intake/reading/days",
        "intake/mailbox",
        "intake/pictures",
        "intake/review",
        "intake/xmpp",
    ],
)
def test_the_map_names_every_module_and_no_other(folder: str) -> None:
    text = (TOP / "DEVELOPERS.md").read_text("utf-8")
    part = text.split(f"\n### {folder}/\n")[1].split("\n### ")[0]
    rows = [line.split("|")[1] for line in part.splitlines() if line.startswith("| `")]
    named = [name for row in rows for name in re.findall(r"`(\w+\.py)`", row)]
    there = {file.name for file in (TOP / folder).glob("*.py")} - {"__init__.py"}
    assert (there - set(named), set(named) - there) == (set(), set()), "not in the map; not there"
    assert len(named) == len(set(named))


@pytest.mark.parametrize("document", ["README.md", "DEVELOPERS.md", "CHANGELOG.md"])
def test_every_file_that_is_linked_is_there(document: str) -> None:
    text = (TOP / document).read_text("utf-8")
    links = re.findall(r"\]\((?!https?:)([^)#]+)", text)
    assert [link for link in links if not (TOP / link).exists()] == []


def test_the_version_has_an_entry_in_the_changelog() -> None:
    changelog = (TOP / "CHANGELOG.md").read_text("utf-8")
    assert f"## {PROJECT['version']}" in changelog


def test_nothing_tells_people_to_fetch_bendreply_from_an_index() -> None:
    # It is on none: whoever follows such a line gets an error, or a stranger's package.
    told = {"README.md": README} | {
        str(file.relative_to(TOP)): file.read_text("utf-8")
        for part in ("intake", "rules")
        for file in (TOP / part).rglob("*.py")
    }
    fetching = re.compile(r"pip install '?\"?bendreply\b|bendreply\[")
    assert [name for name, text in told.items() if fetching.search(text)] == []


def test_each_heading_of_the_readme_stands_apart() -> None:
    lines = README.split("\n")
    headings = [at for at, line in enumerate(lines) if re.match("##+ ", line)]
    assert [lines[at] for at in headings if lines[at - 1]] == []
