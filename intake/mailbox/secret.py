"""The password or token of the mailbox: out of the environment or from a command, never kept."""

from __future__ import annotations

from dataclasses import dataclass, field
from typing import Literal

from ...rules.shop_mailbox import Mailbox
from ..desk_errors import MailboxError
from ..secret import from_command, from_variable


@dataclass(frozen=True, slots=True)
class Secret:
    """What the server wants to see. Its words are left out where it is printed."""

    kind: Literal["password", "token"]
    words: str = field(repr=False)


def secret_of(settings: Mailbox) -> Secret:
    """The secret that the settings point to. Raises MailboxError, which never holds any of it."""
    if settings.password_env is not None:
        return Secret("password", from_variable(settings.password_env, "mailbox", MailboxError))
    if settings.password_command is not None:
        printed = from_command(settings.password_command, "password_command", MailboxError)
        return Secret("password", printed)
    if settings.token_env is not None:
        return Secret("token", from_variable(settings.token_env, "mailbox", MailboxError))
    assert settings.token_command is not None, "the settings name exactly one"
    return Secret("token", from_command(settings.token_command, "token_command", MailboxError))
