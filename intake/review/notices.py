"""Sentences that outlive one answer: shown on the page that a browser is sent on to."""

from __future__ import annotations

import secrets
from collections import OrderedDict
from threading import Lock

MOST_KEPT = 200


class Notices:
    """A sentence goes with the address as a random key, so that no link can put words here."""

    def __init__(self) -> None:
        self._kept: OrderedDict[str, tuple[str, ...]] = OrderedDict()
        self._lock = Lock()

    def keep(self, *sentences: str) -> str:
        """A key for these sentences; the oldest of many are forgotten."""
        key = secrets.token_urlsafe(9)
        with self._lock:
            self._kept[key] = tuple(filter(None, sentences))
            while len(self._kept) > MOST_KEPT:
                self._kept.popitem(last=False)
        return key

    def take(self, key: str) -> tuple[str, ...]:
        """What was kept under a key, once."""
        with self._lock:
            return self._kept.pop(key, ())
