"""What shop.toml says of the shop's mailbox: where it is, which folders, how the secret is had."""

from __future__ import annotations

import ipaddress
from datetime import date
from typing import Annotated, Literal, Self

from pydantic import Field, model_validator

from .shop_fields import Line
from .shop_secrets import WithSecret


class Mailbox(WithSecret):
    """Where the shop's mail lies. Secrets stay outside: a variable's name or a command."""

    host: Line
    port: Annotated[int, Field(strict=True, gt=0, lt=65536)] | None = None
    """None: 993 with TLS from the start, else 143."""
    user: Line
    security: Literal["tls", "starttls", "plain"] = "tls"
    """``plain`` is for a server on this very machine only: a password would be readable."""
    ca_file: Line | None = None
    """Certificates to trust besides those of the system, for a server with one of its own."""
    password_env: Line | None = None
    password_command: tuple[Line, ...] | None = None
    token_env: Line | None = None
    token_command: tuple[Line, ...] | None = None
    """An OAuth 2 bearer token instead of a password (RFC 7628)."""
    inbox: Line | tuple[Line, ...] = "INBOX"
    """One folder or several that customers' mail comes into."""
    drafts: Line | None = None
    """None: the folder that the server marks as Drafts (RFC 6154)."""
    sent: Line | None = None
    """None: the folder that the server marks as Sent."""
    since: date | None = None
    """Mail that came in before this day is left alone; None: all of it is collected."""
    largest_mb: Annotated[int, Field(strict=True, ge=1, le=200)] = 10
    """Of a larger mail only the beginning is fetched, and that is said."""
    patience_seconds: Annotated[int, Field(strict=True, ge=1, le=600)] = 60
    """How long a server may stay silent before the run is given up."""

    @property
    def inboxes(self) -> tuple[str, ...]:
        """The folders that are collected from, each once."""
        named = (self.inbox,) if isinstance(self.inbox, str) else self.inbox
        return tuple(dict.fromkeys(named))

    @property
    def usual_port(self) -> int:
        """The port in force."""
        return self.port or (993 if self.security == "tls" else 143)

    @property
    def account(self) -> str:
        """Which mailbox this is, for what is remembered of it."""
        return f"{self.user}@{self.host}:{self.usual_port}"

    @model_validator(mode="after")
    def _whole(self) -> Self:
        if not self.inboxes:
            raise ValueError("inbox names no folder")
        if self.security == "plain" and not is_loopback(self.host):
            raise ValueError(
                'security = "plain" would show the password to the network: it is for a server on '
                "this machine only"
            )
        return self


def is_loopback(host: str) -> bool:
    """Whether a server of that name is this very machine."""
    if host == "localhost":
        return True
    try:
        return ipaddress.ip_address(host).is_loopback
    except ValueError:
        return False
