"""What shop.toml says of chat: how long a burst may pause, the hook, the account that listens."""

from __future__ import annotations

import re
from datetime import date
from typing import Annotated, Literal, Self

from pydantic import Field, field_validator, model_validator

from .request import Frozen
from .shop_fields import Line
from .shop_mailbox import is_loopback
from .shop_secrets import WithSecret


class Hook(WithSecret):
    """``POST /messages``: what a chat system hands over has to be signed with this secret."""

    secret_env: Line | None = None
    secret_command: tuple[Line, ...] | None = None
    largest_kb: Annotated[int, Field(strict=True, ge=1, le=10_000)] = 256
    """A larger body is refused before it is read."""
    window_seconds: Annotated[int, Field(strict=True, ge=10, le=3600)] = 300
    """How far the time that is signed may be from our clock, before and after."""


class ChatAccount(WithSecret):
    """An XMPP account (RFC 6120) that listens: it takes messages in and writes none."""

    jid: Line
    """``sales@chat.example.com``, without a resource."""
    host: Line | None = None
    """None: the server that the domain of ``jid`` names in the DNS."""
    port: Annotated[int, Field(strict=True, gt=0, lt=65536)] | None = None
    security: Literal["starttls", "tls", "plain"] = "starttls"
    """``plain`` is for a server on this very machine only: a password would be readable."""
    ca_file: Line | None = None
    """Certificates to trust besides those of the system, for a server with one of its own."""
    password_env: Line | None = None
    password_command: tuple[Line, ...] | None = None
    since: date | None = None
    """What the server's archive holds from before this day is left alone; None: all is taken."""
    patience_seconds: Annotated[int, Field(strict=True, ge=1, le=600)] = 60
    """How long a server may stay silent before the connection is given up."""

    @property
    def domain(self) -> str:
        """The server's name: what its certificate has to be made out for."""
        return self.jid.partition("@")[2]

    @property
    def usual_port(self) -> int:
        """The port in force where the server is named by ``host``."""
        return self.port or (5223 if self.security == "tls" else 5222)

    @property
    def channel(self) -> str:
        """Which channel its messages came by: the account's address as RFC 5122 writes it."""
        return f"xmpp:{self.jid}"

    @field_validator("jid")
    @classmethod
    def _is_jid(cls, value: str) -> str:
        if not re.fullmatch(r"[^\s@/\"&'<>:]+@[^\s@/]+", value):
            raise ValueError(f"{value!r} is no address of an account: write name@server")
        return value.lower()  # RFC 7622: both halves are compared without regard to case

    @model_validator(mode="after")
    def _whole(self) -> Self:
        if self.port is not None and self.host is None:
            raise ValueError("port stands for the server named by host: give both")
        if self.security == "plain" and not is_loopback(self.host or self.domain):
            raise ValueError(
                'security = "plain" would show the password to the network: it is for a server on '
                "this machine only"
            )
        return self


class ChatSettings(Frozen):
    """All that shop.toml says of chat."""

    quiet_minutes: Annotated[int, Field(strict=True, ge=1, le=120)] = 10
    """After so long a pause, what the same person writes is a request of its own."""
    hook: Hook | None = None
    account: ChatAccount | None = None
