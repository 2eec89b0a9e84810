"""Running the page: where it may listen, and what it needs there before it starts."""

from __future__ import annotations

import socket
from dataclasses import dataclass
from pathlib import Path
from typing import TYPE_CHECKING

from ...rules.shop_mailbox import is_loopback
from .guard import LOOPBACK_NAMES
from .people import SHORTEST_SECRET

if TYPE_CHECKING:
    import uvicorn
    from starlette.types import ASGIApp

PORT = 8462
SECRET_ENV = "BENDREPLY_REVIEW_SECRET"
MOST_AT_ONCE = 100
"""Requests; a shop has a handful of people."""


class CannotServe(Exception):
    """The page can't be served as asked; the message is one sentence for the person."""


@dataclass(frozen=True, slots=True)
class Place:
    """Where the page listens."""

    host: str = "127.0.0.1"
    port: int = PORT
    names: tuple[str, ...] = ()
    """Further names that it is called by."""
    certificate: Path | None = None
    key: Path | None = None

    @property
    def on_loopback(self) -> bool:
        """Whether nobody but this machine can reach it."""
        return is_loopback(self.host.strip("[]"))

    @property
    def hosts(self) -> frozenset[str]:
        """What the Host header of a request may say, without port."""
        named = {_as_host(name) for name in (self.host, *self.names)}
        everywhere = {"0.0.0.0", "[::]"}
        return LOOPBACK_NAMES | (named - everywhere)


def checked(place: Place, secret: str | None) -> str | None:
    """The secret in force. Raises CannotServe where others could reach the page without one."""
    if secret is not None and len(secret) < SHORTEST_SECRET:
        raise CannotServe(
            f"the secret in {SECRET_ENV} is too short: take {SHORTEST_SECRET} characters or more"
        )
    if secret is None and not place.on_loopback:
        raise CannotServe(
            f"{place.host} can be reached by others: set a secret for signing in in the variable "
            f"{SECRET_ENV} ({SHORTEST_SECRET} characters or more), or leave --host out"
        )
    if (place.certificate is None) != (place.key is None):
        raise CannotServe("TLS needs both --certificate and --key")
    for file in (place.certificate, place.key):
        if file is not None and not file.is_file():
            raise CannotServe(f"there is no file {file}")
    return secret


def listen(place: Place) -> socket.socket:
    """A socket that listens there. Raises CannotServe."""
    host = place.host.strip("[]")
    family = socket.AF_INET6 if ":" in host else socket.AF_INET
    try:
        return socket.create_server((host, place.port), family=family, backlog=MOST_AT_ONCE)
    except (OSError, OverflowError) as error:
        why = getattr(error, "strerror", None) or str(error)
        raise CannotServe(f"{place.host} port {place.port} can't be used: {why}") from error


def address(place: Place, listening: socket.socket) -> str:
    """What to type into a browser."""
    scheme = "https" if place.certificate else "http"
    host = place.names[0] if place.names else _as_host(place.host)
    return f"{scheme}://{host}:{listening.getsockname()[1]}/"


def server_of(app: ASGIApp, place: Place) -> uvicorn.Server:
    """The server, not started yet."""
    import uvicorn

    config = uvicorn.Config(
        app,
        lifespan="off",
        ws="none",
        access_log=False,  # what people look for and open is not written down
        log_level="warning",
        server_header=False,
        proxy_headers=False,  # nobody's word is taken for where a request came from
        limit_concurrency=MOST_AT_ONCE,
        timeout_graceful_shutdown=5,
        ssl_certfile=place.certificate,
        ssl_keyfile=place.key,
    )
    return uvicorn.Server(config)


def _as_host(name: str) -> str:
    bare = name.strip("[]").casefold()
    return f"[{bare}]" if ":" in bare else bare
