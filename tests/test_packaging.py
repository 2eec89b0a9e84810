"""The packaging lists are whole: what the folders hold is what an installed copy has.

Only lists and files are looked at; `.ci/run` builds the wheel and works with it.
"""

from __future__ import annotations

import tomllib
from collections.abc import Iterator
from importlib import resources
from pathlib import Path

import pytest

TOP = Path(__file__).parents[1]
PROJECT = tomllib.loads((TOP / "pyproject.toml").read_text("utf-8"))
SETUPTOOLS = PROJECT["tool"]["setuptools"]
FOLDERS = {folder: package for package, folder in SETUPTOOLS["package-dir"].items()}


def package_of(folder: Path) -> str:
    """The package that a folder of the clone is installed as."""
    top, *below = folder.relative_to(TOP).parts
    return ".".join((FOLDERS[top], *below))


def files(folder: str) -> set[Path]:
    """All files of one room, but for what Python leaves behind when it runs."""
    return {f for f in (TOP / folder).rglob("*") if f.is_file() and f.suffix != ".pyc"}


def packed() -> Iterator[Path]:
    """What a wheel holds: the modules of the listed packages, and the listed data files."""
    for package in SETUPTOOLS["packages"]:
        folder = next(f for f in FOLDERS if package.startswith(FOLDERS[f]))
        below = package.removeprefix(FOLDERS[folder]).strip(".").replace(".", "/")
        yield from (TOP / folder / below).glob("*.py")
    for package, patterns in SETUPTOOLS["package-data"].items():
        for pattern in patterns:
            yield from (TOP / SETUPTOOLS["package-dir"][package]).glob(pattern)


def test_each_room_is_installed_below_our_own_name() -> None:
    # PyPI has other projects named "rules" and "intake": plain names would overwrite them.
    assert set(FOLDERS) == {"demo_mailbox", "intake", "reply_templates", "rules"}
    assert all(package == f"bendreply.{folder}" for folder, package in FOLDERS.items())


def test_every_package_is_listed_and_every_listed_one_is_there() -> None:
    there = {
        package_of(init.parent)
        for folder in FOLDERS
        for init in files(folder)
        if init.name == "__init__.py"
    }
    assert set(SETUPTOOLS["packages"]) == there


@pytest.mark.parametrize("folder", sorted(FOLDERS))
def test_every_file_of_a_room_is_packed(folder: str) -> None:
    assert files(folder)
    assert files(folder) - set(packed()) == set()


def test_every_pattern_of_data_files_finds_some() -> None:
    idle = [
        (package, pattern)
        for package, patterns in SETUPTOOLS["package-data"].items()
        for pattern in patterns
        if not any((TOP / SETUPTOOLS["package-dir"][package]).glob(pattern))
    ]
    assert idle == []


@pytest.mark.parametrize(
    ("package", "file"),
    [
        ("bendreply.demo_mailbox", "enquiries.mbox"),
        ("bendreply.demo_mailbox", "counter-chat.jsonl"),
        ("bendreply.intake", "py.typed"),
        ("bendreply.intake", "migrations/versions/0001_first_tables.py"),
        ("bendreply.reply_templates", "stock.j2"),
        ("bendreply.reply_templates", "answers/wall-factor.md"),
        ("bendreply.rules", "data/gauges.csv"),
        ("bendreply.rules", "sample_shop/shop.toml"),
    ],
)
def test_what_the_program_opens_is_found_where_it_is_installed(package: str, file: str) -> None:
    assert resources.files(package).joinpath(*file.split("/")).is_file()


def test_a_dependency_is_named_once_and_from_which_version_on() -> None:
    optional = PROJECT["project"]["optional-dependencies"].values()
    needs = [*PROJECT["project"]["dependencies"], *(need for extra in optional for need in extra)]
    names = [need.split(">=")[0] for need in needs]
    assert sorted(names) == sorted(set(names))
