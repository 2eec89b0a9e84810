"""The password or token of the mailbox: out of the environment or from a command, never kept."""

from __future__ import annotations

import os
import subprocess
from dataclasses import dataclass, field
from typing import Literal

from ...rules.shop_mailbox import Mailbox
from ..desk_errors import MailboxError

COMMAND_WAIT_S = 60
"""How long a command may take: it may ask a person to unlock something."""


@dataclass(frozen=True, slots=True)
class Secret:
    """What the server wants to see. Its words are left out where it is printed."""

    kind: Literal["password", "token"]
    words: str = field(repr=False)


def secret_of(settings: Mailbox) -> Secret:
    """The secret that the settings point to. Raises MailboxError, which never holds any of it."""
    if settings.password_env is not None:
        return Secret("password", _variable(settings.password_env))
    if settings.password_command is not None:
        return Secret("password", _printed_by(settings.password_command, "password_command"))
    if settings.token_env is not None:
        return Secret("token", _variable(settings.token_env))
    assert settings.token_command is not None, "the settings name exactly one"
    return Secret("token", _printed_by(settings.token_command, "token_command"))


def _variable(name: str) -> str:
    value = os.environ.get(name, "")
    if not value:
        raise MailboxError(
            f"the variable {name}, which shop.toml names for the mailbox, is not set"
        )
    return _one_line(value, f"the variable {name}")


def _printed_by(command: tuple[str, ...], key: str) -> str:
    name = command[0]
    try:
        done = subprocess.run(
            command, stdout=subprocess.PIPE, timeout=COMMAND_WAIT_S, check=False, shell=False
        )
    except OSError as error:
        raise MailboxError(f"{key}: {name} can't be run: {error.strerror or error}") from error
    except subprocess.TimeoutExpired:
        # "from None": the error holds what was printed so far, which may be the secret.
        raise MailboxError(f"{key}: {name} took more than {COMMAND_WAIT_S} s") from None
    if done.returncode:
        raise MailboxError(f"{key}: {name} failed with exit status {done.returncode}")
    try:
        printed = done.stdout.decode("utf-8")
    except UnicodeDecodeError:
        raise MailboxError(f"{key}: what {name} printed is no text") from None
    lines = printed.splitlines()  # a password manager may print more below the first line
    if not lines or not lines[0]:
        raise MailboxError(f"{key}: {name} printed nothing")
    return _one_line(lines[0], f"{key}: what {name} printed")


def _one_line(value: str, where: str) -> str:
    if any(ord(char) < 32 or ord(char) == 127 for char in value):
        raise MailboxError(f"{where} holds a control character: no server takes that")
    return value
