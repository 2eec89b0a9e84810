"""A password or other secret: out of the environment or from a command, never kept."""

from __future__ import annotations

import os
import subprocess

from .desk_errors import DeskError

COMMAND_WAIT_S = 60
"""How long a command may take: it may ask a person to unlock something."""


def from_variable(name: str, of: str, error: type[DeskError]) -> str:
    """What a variable holds. ``of``: what shop.toml names it for. Raises ``error``."""
    value = os.environ.get(name, "")
    if not value:
        raise error(f"the variable {name}, which shop.toml names for {of}, is not set")
    return _one_line(value, f"the variable {name}", error)


def printed_by(command: tuple[str, ...], key: str, error: type[DeskError]) -> str:
    """The first line that a command prints. Raises ``error``, which never holds any of it."""
    name = command[0]
    try:
        done = subprocess.run(
            command, stdout=subprocess.PIPE, timeout=COMMAND_WAIT_S, check=False, shell=False
        )
    except OSError as fault:
        raise error(f"{key}: {name} can't be run: {fault.strerror or fault}") from fault
    except subprocess.TimeoutExpired:
        # "from None": the error holds what was printed so far, which may be the secret.
        raise error(f"{key}: {name} took more than {COMMAND_WAIT_S} s") from None
    if done.returncode:
        raise error(f"{key}: {name} failed with exit status {done.returncode}")
    try:
        printed = done.stdout.decode("utf-8")
    except UnicodeDecodeError:
        raise error(f"{key}: what {name} printed is no text") from None
    lines = printed.splitlines()  # a password manager may print more below the first line
    if not lines or not lines[0]:
        raise error(f"{key}: {name} printed nothing")
    return _one_line(lines[0], f"{key}: what {name} printed", error)


def _one_line(value: str, where: str, error: type[DeskError]) -> str:
    if any(ord(char) < 32 or ord(char) == 127 for char in value):
        raise error(f"{where} holds a control character: no server takes that")
    return value
