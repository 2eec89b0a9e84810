"""A password or token that stands in no file of ours: out of the environment or from a command."""

from __future__ import annotations

import os
import subprocess

from .desk_errors import DeskError

COMMAND_WAIT_S = 60
"""How long a command may take: it may ask a person to unlock something."""


def from_variable(name: str, owner: str, fault: type[DeskError]) -> str:
    """The secret in the variable that shop.toml names for the ``owner`` (the mailbox, the store).

    Raises ``fault``, whose sentence never holds any of it.
    """
    value = os.environ.get(name, "")
    if not value:
        raise fault(f"the variable {name}, which shop.toml names for the {owner}, is not set")
    return _one_line(value, f"the variable {name}", fault)


def from_command(command: tuple[str, ...], key: str, fault: type[DeskError]) -> str:
    """The first line that the command of the setting ``key`` prints. Raises as above."""
    name = command[0]
    try:
        done = subprocess.run(
            command, stdout=subprocess.PIPE, timeout=COMMAND_WAIT_S, check=False, shell=False
        )
    except OSError as error:
        raise fault(f"{key}: {name} can't be run: {error.strerror or error}") from error
    except subprocess.TimeoutExpired:
        # "from None": the error holds what was printed so far, which may be the secret.
        raise fault(f"{key}: {name} took more than {COMMAND_WAIT_S} s") from None
    if done.returncode:
        raise fault(f"{key}: {name} failed with exit status {done.returncode}")
    try:
        printed = done.stdout.decode("utf-8")
    except UnicodeDecodeError:
        raise fault(f"{key}: what {name} printed is no text") from None
    lines = printed.splitlines()  # a password manager may print more below the first line
    if not lines or not lines[0]:
        raise fault(f"{key}: {name} printed nothing")
    return _one_line(lines[0], f"{key}: what {name} printed", fault)


def _one_line(value: str, where: str, fault: type[DeskError]) -> str:
    if any(ord(char) < 32 or ord(char) == 127 for char in value):
        raise fault(f"{where} holds a control character: no server takes that")
    return value
