"""What every request has to pass before a page sees it, and what every answer carries.

- The Host has to be one of ours: a stranger's name that resolves to this machine (DNS rebinding)
  gets nothing.
- A change is taken only from our own pages: the browser's Sec-Fetch-Site and Origin say where a
  form was sent from (CSRF).
- A form has a largest size. What is over it is not read.
- No answer lets a browser run or load anything that is not a file of ours.
"""

from __future__ import annotations

import asyncio
from collections.abc import Iterable
from urllib.parse import urlsplit

from starlette.datastructures import Headers, MutableHeaders
from starlette.responses import PlainTextResponse
from starlette.types import ASGIApp, Message, Receive, Scope, Send

LARGEST_FORM = 256 * 1024
"""[bytes] Some forty pages of draft."""
MOST_THROWN_AWAY = 8 * 1024 * 1024
"""[bytes] Read and dropped of what is too large, so that the browser gets to see the answer."""
SLOWEST_FORM_S = 60
"""For a whole form to arrive, also over a slow line."""
LOOPBACK_NAMES = frozenset(("127.0.0.1", "localhost", "[::1]"))
SAFE_METHODS = frozenset(("GET", "HEAD"))

POLICY = "; ".join(
    (
        "default-src 'none'",
        "script-src 'self'",
        "style-src 'self'",
        "img-src 'self'",
        "form-action 'self'",
        "base-uri 'none'",
        "frame-ancestors 'none'",
    )
)
"""No inline script or style, no image but ours, no connection at all from a script."""
HEADERS = {
    "content-security-policy": POLICY,
    "x-content-type-options": "nosniff",
    "x-frame-options": "DENY",
    # Not "no-referrer": with that, browsers send "Origin: null" with our own forms.
    "referrer-policy": "same-origin",
    "cross-origin-opener-policy": "same-origin",
    "cross-origin-resource-policy": "same-origin",
    "permissions-policy": "camera=(), microphone=(), geolocation=()",
    "cache-control": "no-store",  # customers' words don't belong in a browser's cache
}


class Guard:
    """The outermost layer of the app.

    ``names``: hosts that the page may be called by, without port. ``machines``: paths that other
    programs call (with a token of their own, and no browser's headers).
    """

    def __init__(
        self, app: ASGIApp, names: Iterable[str], machines: frozenset[str] = frozenset()
    ) -> None:
        self._app = app
        self._names = frozenset(name.casefold() for name in names)
        self._machines = machines

    async def __call__(self, scope: Scope, receive: Receive, send: Send) -> None:
        """One request."""
        if scope["type"] != "http":
            if scope["type"] == "lifespan":
                await self._app(scope, receive, send)
            return  # nothing here speaks over a websocket
        headers = Headers(scope=scope)
        from_machine = scope["path"] in self._machines
        refusal = self._refusal(scope["method"], headers, from_machine=from_machine)
        if refusal is None and not from_machine and scope["method"] not in SAFE_METHODS:
            try:
                async with asyncio.timeout(SLOWEST_FORM_S):
                    body = await _whole(receive, _length(headers))
            except TimeoutError:
                refusal = PlainTextResponse("That took too long to arrive.", 408)
            else:
                if body is None:
                    largest = LARGEST_FORM // 1024
                    refusal = PlainTextResponse(
                        f"That is more than a form here may hold ({largest} kB).", 413
                    )
                else:
                    receive = _again(body, receive)
        app = self._app if refusal is None else refusal
        await app(scope, receive, _with_headers(send))

    def _refusal(
        self, method: str, headers: Headers, *, from_machine: bool
    ) -> PlainTextResponse | None:
        hosts = headers.getlist("host")
        if len(hosts) != 1 or _name_of(hosts[0]) not in self._names:
            return PlainTextResponse(
                "This page is not served under that name. If it should be, start it with "
                "--name NAME.",
                421,
            )
        if method in SAFE_METHODS or from_machine:
            return None
        if not _is_ours(headers, hosts[0]):
            return PlainTextResponse(
                "That was not sent from this page, so nothing was changed.", 403
            )
        return None


def _is_ours(headers: Headers, host: str) -> bool:
    """Whether a browser says that a page of ours sent this; without its word, it did not."""
    site, origin = headers.get("sec-fetch-site"), headers.get("origin")
    if site is None and origin is None:
        return False
    if site is not None and site != "same-origin":
        return False
    if origin is None:
        return True
    try:
        return urlsplit(origin).netloc.casefold() == host.casefold()
    except ValueError:  # "http://[" is no address, so none of ours
        return False


def _name_of(host: str) -> str:
    """``[::1]`` of ``[::1]:8462``, in small letters."""
    name, colon, port = host.rpartition(":")
    if not colon or not port.isdecimal():
        name = host
    return name.casefold()


def _length(headers: Headers) -> int:
    told = headers.get("content-length", "0")
    return int(told) if told.isdecimal() and len(told) < 16 else 0


async def _whole(receive: Receive, told: int) -> bytes | None:
    """The body of a request; None where it is too large."""
    body, seen = bytearray(), 0
    too_large = told > LARGEST_FORM
    while True:
        piece = await receive()
        if piece["type"] != "http.request":  # the browser has gone
            return None
        data = piece.get("body", b"")
        seen += len(data)
        too_large = too_large or seen > LARGEST_FORM
        if not too_large:
            body += data
        if not piece.get("more_body", False) or seen > MOST_THROWN_AWAY:
            return None if too_large else bytes(body)


def _again(body: bytes, receive: Receive) -> Receive:
    """``receive`` for what comes after: the body that was read already, then the rest."""
    pending: list[Message] = [{"type": "http.request", "body": body, "more_body": False}]

    async def once_more() -> Message:
        return pending.pop() if pending else await receive()

    return once_more


def _with_headers(send: Send) -> Send:
    async def sent(message: Message) -> None:
        if message["type"] == "http.response.start":
            headers = MutableHeaders(scope=message)
            for name, value in HEADERS.items():
                headers.setdefault(name, value)
        await send(message)

    return sent
