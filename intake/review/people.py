"""Who is at the page: a name that was given once, and the shop's secret where others can reach it.

On loopback a name is enough: whoever sits there could use the command line as well. Elsewhere
the page is shown only to those who know the secret.
"""

from __future__ import annotations

import base64
import hashlib
import hmac
import secrets
import time
from collections import deque
from collections.abc import Callable, Mapping, Sequence
from threading import Lock

from starlette.responses import Response

from ..desk_common import a_name

COOKIE = "bendreply-who"
HOLDS_S = 12 * 3600
"""A working day; then one is asked again."""
SHORTEST_SECRET = 12
WRONG_A_MINUTE = 10
"""Wrong secrets, of everybody together, before the page stops listening for a while."""


class People:
    """Names, and whether they have to be proved."""

    def __init__(
        self,
        names: Sequence[str],
        secret: str | None,
        *,
        secure: bool = False,
        clock: Callable[[], float] = time.time,
    ) -> None:
        self.names = tuple(names)
        """Who may be here; empty for anybody who gives a name."""
        self._secret = secret
        self._secure = secure
        self._clock = clock
        # Made from the secret, so that a restart asks nobody again, and a new secret everybody.
        self._key = (
            hmac.digest(secret.encode(), b"bendreply review cookie", "sha256")
            if secret
            else secrets.token_bytes(32)
        )
        self._wrong: deque[float] = deque(maxlen=WRONG_A_MINUTE)
        self._lock = Lock()

    @property
    def need_secret(self) -> bool:
        """Whether nothing is shown before somebody has signed in."""
        return self._secret is not None

    def who(self, cookies: Mapping[str, str]) -> str | None:
        """The person at the browser; None where nobody has said, or too long ago."""
        packed, _, seal = cookies.get(COOKIE, "").partition(".")
        if not packed or not hmac.compare_digest(seal.encode(), self._seal(packed).encode()):
            return None
        try:
            until, _, name = base64.urlsafe_b64decode(packed).decode().partition(" ")
        except ValueError:
            return None
        if int(until) < self._clock():
            return None
        known = not self.names or name in self.names  # the shop file may have changed since
        return name if known else None

    def named(self, name: str) -> str:
        """The name as the shop file spells it. Raises NoNameError."""
        return a_name(name, "working on this page", self.names)

    def secret_is(self, offered: str) -> bool | None:
        """Whether that is the secret; None where too many were wrong just now."""
        if self._secret is None:
            return True
        with self._lock:
            now = self._clock()
            if len(self._wrong) == WRONG_A_MINUTE and now - self._wrong[0] < 60:
                return None
            right = hmac.compare_digest(_digest(offered), _digest(self._secret))
            if not right:
                self._wrong.append(now)
            return right

    def remember(self, response: Response, name: str) -> None:
        """Let the browser say who it is from now on."""
        spelled = f"{int(self._clock()) + HOLDS_S} {name}".encode()
        packed = base64.urlsafe_b64encode(spelled).decode()
        response.set_cookie(
            COOKIE,
            f"{packed}.{self._seal(packed)}",
            max_age=HOLDS_S,
            httponly=True,
            samesite="strict",
            secure=self._secure,
        )

    def forget(self, response: Response) -> None:
        """The next person is asked for a name."""
        response.delete_cookie(COOKIE, httponly=True, samesite="strict", secure=self._secure)

    def _seal(self, packed: str) -> str:
        return hmac.new(self._key, packed.encode(), "sha256").hexdigest()


def _digest(words: str) -> bytes:
    return hashlib.sha256(words.encode("utf-8", "surrogatepass")).digest()
