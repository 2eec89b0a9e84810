"""Messages out of a folder without changing a flag, in pieces that never fill the memory."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from datetime import date
from typing import TYPE_CHECKING

from .folders import UNKNOWN_END

if TYPE_CHECKING:
    from imapclient import IMAPClient

WINDOW = 50_000
"""UIDs asked for at once: the answer is one line, and lines have a limit of about a million."""
SIZES_AT_ONCE = 500
FETCHED_AT_ONCE = 50
BYTES_AT_ONCE = 4_000_000
HEADER_FIELDS = "MESSAGE-ID FROM DATE IN-REPLY-TO REFERENCES"


@dataclass(frozen=True, slots=True)
class Fetched:
    """One message of a folder; ``raw`` is None where it was deleted meanwhile."""

    uid: int
    raw: bytes | None
    size: int
    """Bytes of the whole message, of which ``raw`` may be the beginning."""

    @property
    def cut(self) -> bool:
        """Whether only the beginning was fetched."""
        return self.raw is not None and len(self.raw) < self.size


def uids_from(client: IMAPClient, first: int, end: int, since: date | None) -> Iterator[list[int]]:
    """The UIDs of the open folder from ``first`` up to but without ``end``, in pieces, ascending.

    ``since``: only those that the server took in on that day or later.
    """
    if end >= UNKNOWN_END:  # no UIDNEXT is known: the last message says where the folder ends
        last = client.search(["UID", "*"])
        end = max(last, default=0) + 1
    for low in range(first, end, WINDOW):
        high = min(low + WINDOW, end) - 1
        criteria: list[object] = ["UID", f"{low}:{high}"]
        if since is not None:
            criteria += ["SINCE", since]
        # A server may name the last message though it lies below the range (RFC 3501 6.4.8).
        yield sorted(uid for uid in client.search(criteria) if low <= uid <= high)


def messages(client: IMAPClient, uids: Sequence[int], largest: int) -> Iterator[list[Fetched]]:
    """The messages of those UIDs in the order given, some at a time. Of one larger than
    ``largest`` bytes, the beginning.
    """
    for start in range(0, len(uids), SIZES_AT_ONCE):
        piece = uids[start : start + SIZES_AT_ONCE]
        said = client.fetch(piece, ["RFC822.SIZE"])
        sizes = {uid: int(said[uid][b"RFC822.SIZE"]) for uid in piece if uid in said}
        for group in _groups(piece, sizes, largest):
            yield _bodies(client, group, sizes, largest)


def headers(client: IMAPClient, uids: Sequence[int]) -> Iterator[tuple[int, bytes]]:
    """Of each message, the few header fields by which it is known again."""
    item = f"BODY.PEEK[HEADER.FIELDS ({HEADER_FIELDS})]"
    for start in range(0, len(uids), SIZES_AT_ONCE):
        said = client.fetch(uids[start : start + SIZES_AT_ONCE], [item])
        for uid in sorted(said):
            yield uid, body_of(said[uid]) or b""


def _groups(uids: Sequence[int], sizes: dict[int, int], largest: int) -> Iterator[list[int]]:
    group: list[int] = []
    total = 0
    for uid in uids:
        size = min(sizes.get(uid, 0), largest)
        if group and (total + size > BYTES_AT_ONCE or len(group) >= FETCHED_AT_ONCE):
            yield group
            group, total = [], 0
        group.append(uid)
        total += size
    if group:
        yield group


def _bodies(
    client: IMAPClient, uids: list[int], sizes: dict[int, int], largest: int
) -> list[Fetched]:
    whole = [uid for uid in uids if uid in sizes and sizes[uid] <= largest]
    large = [uid for uid in uids if uid in sizes and sizes[uid] > largest]
    said = client.fetch(whole, ["BODY.PEEK[]"]) if whole else {}
    if large:
        said.update(client.fetch(large, [f"BODY.PEEK[]<0.{largest}>"]))
    return [
        Fetched(uid, body_of(said[uid]) if uid in said else None, sizes.get(uid, 0)) for uid in uids
    ]


def body_of(items: dict[bytes, object]) -> bytes | None:
    """What came under ``BODY[...]``: servers spell the rest of the name in their own way."""
    for name, value in items.items():
        if name.startswith(b"BODY[") and isinstance(value, bytes):
            return value
    return None
