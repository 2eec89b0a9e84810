"""Who may import whom, read from the source: the rules know no world, and nothing can send."""

from __future__ import annotations

import ast
from collections.abc import Iterator
from pathlib import Path

import pytest

import bendreply.intake
import bendreply.rules

RULES = Path(bendreply.rules.__file__).parent
INTAKE = Path(bendreply.intake.__file__).parent
FILES = sorted((*RULES.rglob("*.py"), *INTAKE.rglob("*.py")))
RULES_FILES = [file for file in FILES if file.is_relative_to(RULES)]
READING = INTAKE / "reading"

SENDING = {
    "smtplib",
    "aiosmtplib",
    "http.client",
    "urllib.request",
    "urllib3",
    "requests",
    "httpx",
    "aiohttp",
    "xmlrpc",
    "ftplib",
    "telnetlib",
    "nntplib",
    "poplib",
    "slixmpp",
}
"""Clients that can hand something to the outside. A mailbox is only laid drafts into (IMAP)."""
WRAPPED = {"xmpp/account.py": {"slixmpp"}}
"""Who may import one all the same: to listen with it, every write passing ``xmpp/guard.py``.
``tests/intake/xmpp/test_guard.py`` holds that nothing else gets through."""
WORLD = {
    "bendreply.intake",
    "sqlite3",
    "sqlalchemy",
    "alembic",
    "email",
    "mailbox",
    "imaplib",
    "socket",
    "ssl",
    "asyncio",
    "http",
    "urllib",
    "subprocess",
    "time",
    "calendar",
    "random",
}
"""What the rules must not touch: storage, mail, network, other programs, clocks, chance."""
CLOCKS = {"now", "utcnow", "today", "localtime", "monotonic"}


def package_of(file: Path) -> str:
    """The package that a file's relative imports start from."""
    root, name = (
        (RULES, "bendreply.rules") if file.is_relative_to(RULES) else (INTAKE, "bendreply.intake")
    )
    return ".".join([name, *file.parent.relative_to(root).parts])


def imports(source: str, package: str) -> Iterator[str]:
    """Every module that a source imports, wherever in it, as an absolute name."""
    for node in ast.walk(ast.parse(source)):
        if isinstance(node, ast.Import):
            yield from (alias.name for alias in node.names)
        elif isinstance(node, ast.ImportFrom):
            module = node.module or ""
            if node.level:
                above = package.split(".")[: 1 - node.level or None]
                module = ".".join(filter(None, [*above, module]))
            yield module
            # "from . import lengths" imports a module by its name
            yield from (f"{module}.{alias.name}" for alias in node.names)
        elif isinstance(node, ast.Call) and _called(node) in ("__import__", "import_module"):
            first = node.args[0] if node.args else None
            if isinstance(first, ast.Constant) and isinstance(first.value, str):
                yield first.value


def _called(node: ast.Call) -> str:
    function = node.func
    if isinstance(function, ast.Attribute):
        return function.attr
    return function.id if isinstance(function, ast.Name) else ""


def forbidden(file: Path, modules: set[str]) -> set[str]:
    return {
        name
        for name in imports(file.read_text("utf-8"), package_of(file))
        if any(name == module or name.startswith(f"{module}.") for module in modules)
    }


def label(file: Path) -> str:
    return f"{file.parent.name}/{file.name}"


def test_there_is_something_to_check() -> None:
    assert {"rules/assess.py", "intake/pipeline.py"} <= {label(file) for file in FILES}


@pytest.mark.parametrize("file", FILES, ids=label)
def test_nothing_can_send(file: Path) -> None:
    assert forbidden(file, SENDING - WRAPPED.get(label(file), set())) == set()


def test_who_wraps_a_client_is_there_and_does() -> None:
    found = {label(file): forbidden(file, SENDING) for file in FILES}
    assert {name for name, modules in found.items() if modules} == set(WRAPPED)


@pytest.mark.parametrize("file", RULES_FILES, ids=label)
def test_the_rules_know_nothing_of_the_world(file: Path) -> None:
    assert forbidden(file, WORLD) == set()


@pytest.mark.parametrize("file", RULES_FILES, ids=label)
def test_the_rules_look_at_no_clock(file: Path) -> None:
    tree = ast.parse(file.read_text("utf-8"))
    used = {node.attr for node in ast.walk(tree) if isinstance(node, ast.Attribute)}
    assert used & CLOCKS == set()


@pytest.mark.parametrize("file", RULES_FILES, ids=label)
def test_the_rules_reckon_without_floats(file: Path) -> None:
    tree = ast.parse(file.read_text("utf-8"))
    numbers = {node.value for node in ast.walk(tree) if isinstance(node, ast.Constant)}
    called = {_called(node) for node in ast.walk(tree) if isinstance(node, ast.Call)}
    assert not any(isinstance(number, float) for number in numbers)
    assert "float" not in called


@pytest.mark.parametrize("file", FILES, ids=label)
def test_each_package_is_imported_by_its_full_name(file: Path) -> None:
    # "import rules" would load a second copy, or another project of that name.
    assert forbidden(file, {"rules", "intake", "reply_templates"}) == set()


@pytest.mark.parametrize("file", sorted(READING.rglob("*.py")), ids=label)
def test_reading_needs_neither_store_nor_command_line(file: Path) -> None:
    above = {"pipeline", "store", "mailbox", "report", "review", "cli", "drafting"}
    assert forbidden(file, {f"bendreply.intake.{name}" for name in above}) == set()


@pytest.mark.parametrize("file", FILES, ids=label)
def test_only_what_faces_a_person_imports_commands(file: Path) -> None:
    if file.stem.startswith(("cli", "screen", "demo", "__")) or file.parent.name == "review":
        return
    commands = {f"bendreply.intake.{other.stem}" for other in INTAKE.glob("cli*.py")}
    assert forbidden(file, commands) == set()


@pytest.mark.parametrize(
    ("line", "seen"),
    [
        ("import smtplib", "smtplib"),
        ("from urllib import request", "urllib.request"),
        ("from ..intake import store", "bendreply.intake.store"),
        ("from ..intake.store import open_store", "bendreply.intake.store"),
        ("from . import units", "bendreply.rules.units"),
        ("def late():\n    import_module('http.client')", "http.client"),
    ],
)
def test_every_way_of_importing_is_seen(line: str, seen: str) -> None:
    assert seen in set(imports(line, "bendreply.rules"))
