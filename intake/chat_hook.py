"""``POST /messages``: chat messages handed in by whoever knows the secret, each signed.

The header ``Bendreply-Time`` holds the seconds since 1970-01-01 UTC at which the call was made,
``Bendreply-Signature`` the HMAC-SHA-256 (RFC 2104) in hex over that number, a full stop and the
body. The body is one chat message (``chat.py`` tells its shape), or a JSON array of them, all of
which have to be right before any is taken in. What is known is answered like what is new, so that a
sender may repeat a call whose answer was lost.

Answers are JSON: ``{"taken": [...]}``, or ``{"error": "one sentence"}`` with a 4xx. Nothing of a
call is read before its size, nor believed before its signature.
"""

from __future__ import annotations

import hashlib
import hmac
import re
import time
from collections.abc import Callable, Sequence
from threading import Lock
from typing import TYPE_CHECKING

from .chat import ChatError, ChatLine, chat_line_of, json_value
from .desk_errors import ChatSettingsError, DeskError
from .secret import from_command, from_variable

if TYPE_CHECKING:
    from starlette.requests import Request
    from starlette.responses import Response
    from starlette.routing import Route

    from ..rules.shop import Shop
    from ..rules.shop_chat import Hook
    from .desk_chat import ChatReading
    from .store import Store
    from .templates import Templates

PATH = "/messages"
TIME, SIGNATURE = "Bendreply-Time", "Bendreply-Signature"
MOST_MESSAGES = 100
"""In one call."""
SHORTEST_SECRET = 16
"""Characters: a shorter one could be found by trying."""
AHEAD_S = 86_400
"""How far in the future a message may claim to have been written: its sender's clock may be off."""
_SECONDS = re.compile(r"[0-9]{1,12}")
_HEX = re.compile(r"[0-9a-f]{64}")


class RefusedCallError(Exception):
    """A call that is not taken: its HTTP status, and one sentence for whoever set up the caller."""

    def __init__(self, status: int, sentence: str) -> None:
        super().__init__(sentence)
        self.status = status


def hook_secret(settings: Hook) -> bytes:
    """The secret that calls are signed with. Raises ChatSettingsError."""
    if settings.secret_env is not None:
        words = from_variable(settings.secret_env, "chat hook", ChatSettingsError)
    else:
        assert settings.secret_command is not None, "the settings name exactly one"
        words = from_command(settings.secret_command, "secret_command", ChatSettingsError)
    if len(words) < SHORTEST_SECRET:
        raise ChatSettingsError(
            f"the secret of the chat hook is too short: take {SHORTEST_SECRET} characters or more"
        )
    return words.encode()


def signature_of(secret: bytes, seconds: str, body: bytes) -> str:
    """What signs a body at a time: lower-case hex."""
    return hmac.new(secret, seconds.encode() + b"." + body, hashlib.sha256).hexdigest()


def check_signature(
    secret: bytes, seconds: str, signature: str, body: bytes, *, now: float, window: float
) -> None:
    """Raises RefusedCallError where a call was not signed with the secret, or not just now [s]."""
    if not _SECONDS.fullmatch(seconds):
        raise RefusedCallError(
            401, f"the header {TIME} is missing or no number of seconds since 1970-01-01 UTC"
        )
    if not _HEX.fullmatch(signature):
        raise RefusedCallError(
            401, f"the header {SIGNATURE} is missing or no HMAC-SHA-256 as 64 digits of hex"
        )
    if not hmac.compare_digest(signature_of(secret, seconds, body), signature):
        raise RefusedCallError(
            401, "the signature does not fit: it is over the time, a full stop and the whole body"
        )
    # After the signature: a stranger need not learn what our clock says.
    if abs(now - int(seconds)) > window:
        raise RefusedCallError(
            401, f"the signed time is more than {window:.0f} s away from this computer's clock"
        )


def lines_of(body: bytes, *, now: float) -> list[ChatLine]:
    """The chat messages of a body. Raises RefusedCallError, naming message and field."""
    try:
        value = json_value(body)
    except ChatError as error:
        raise RefusedCallError(400, f"the body is {error}") from error
    values = value if isinstance(value, list) else [value]
    if not 1 <= len(values) <= MOST_MESSAGES:
        raise RefusedCallError(
            422, f"the body holds {len(values)} messages: send 1 to {MOST_MESSAGES}"
        )
    lines = []
    for number, one in enumerate(values, start=1):
        try:
            line = chat_line_of(one)
            if line.time.timestamp() > now + AHEAD_S:
                raise ChatError("time: lies in the future")  # days of delivery count from it
            lines.append(line)
        except ChatError as error:
            which = f"message {number}: " if isinstance(value, list) else ""
            raise RefusedCallError(422, f"{which}{error}; nothing was taken in") from error
    return lines


def chat_routes(
    store: Store,
    shop: Shop,
    templates: Templates,
    *,
    told: Callable[[str], None],
    clock: Callable[[], float] = time.time,
) -> list[Route]:
    """The route for a Starlette application; none where shop.toml has no [chat.hook].

    ``told`` gets what a person should know of a message that was taken in, and our own faults.
    Raises ChatSettingsError where the secret can't be had.
    """
    from starlette.routing import Route

    from .desk_chat import ChatReading

    settings = shop.chat.hook
    if settings is None:
        return []
    reading = ChatReading.of(shop, templates)
    hook = _Calls(store, settings, hook_secret(settings), reading, told, clock)
    return [Route(PATH, hook.answer, methods=["POST"])]


class _Calls:
    def __init__(
        self,
        store: Store,
        settings: Hook,
        secret: bytes,
        reading: ChatReading,
        told: Callable[[str], None],
        clock: Callable[[], float],
    ) -> None:
        self._store, self._settings, self._secret = store, settings, secret
        self._reading, self._told, self._clock = reading, told, clock
        self._one_by_one = Lock()
        """Two calls with halves of one burst: the second has to see what the first began."""

    async def answer(self, request: Request) -> Response:
        """Take a call in, or say why not."""
        from starlette.concurrency import run_in_threadpool
        from starlette.responses import JSONResponse

        from .templates import BadTemplate

        try:
            body = await self._body(request)
            now = self._clock()
            check_signature(
                self._secret,
                request.headers.get(TIME, ""),
                request.headers.get(SIGNATURE, ""),
                body,
                now=now,
                window=self._settings.window_seconds,
            )
            lines = lines_of(body, now=now)
            taken = await run_in_threadpool(self._take, lines)
        except RefusedCallError as refused:
            headers = {"Connection": "close"} if refused.status == 413 else None
            return JSONResponse({"error": str(refused)}, refused.status, headers)
        except (DeskError, BadTemplate) as error:
            self._told(f"POST {PATH}: {error}")
            return JSONResponse({"error": str(error)}, 503, {"Retry-After": "60"})
        return JSONResponse({"taken": taken})

    async def _body(self, request: Request) -> bytes:
        """The body, as far as it may be large; what is said of its size comes first."""
        largest = self._settings.largest_kb * 1024
        too_large = RefusedCallError(
            413, f"the body is larger than {self._settings.largest_kb} kB: send fewer at a time"
        )
        said = request.headers.get("Content-Length", "")
        if said.isdecimal() and int(said[:20]) > largest:
            raise too_large
        kind = request.headers.get("Content-Type", "").partition(";")[0].strip().lower()
        if kind != "application/json":
            raise RefusedCallError(415, "the body has to be of Content-Type application/json")
        body = bytearray()
        async for piece in request.stream():
            body += piece
            if len(body) > largest:
                raise too_large
        return bytes(body)

    def _take(self, lines: Sequence[ChatLine]) -> list[dict[str, object]]:
        from .desk_chat import take_in_chat

        with self._one_by_one:
            done = take_in_chat(self._store, lines, f"POST {PATH}", self._reading)
        for one in done:
            if one.taken.note:
                self._told(one.taken.note)
        inquiries = {key: one.taken for one in done for key in one.keys}
        return [
            {
                "id": line.message_id,
                "inquiry": inquiries[line.key].inquiry,
                "known": not (inquiries[line.key].new or inquiries[line.key].joined is not None),
            }
            for line in lines
        ]
