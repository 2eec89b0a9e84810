"""New messages of the shop's folders, taken in one after another; nothing twice, nothing left.

How far a folder is read is written down after each piece. When a run is cut short, the next one
meets some messages again, which are known by their Message-ID, and misses none.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator
from dataclasses import dataclass
from typing import TYPE_CHECKING

from ...rules.shop_mailbox import Mailbox
from ..message import parse_message
from ..message_keys import same_origin
from ..store_marks import Mark
from . import fetch
from .folders import UNKNOWN_END, open_readonly

if TYPE_CHECKING:
    from imapclient import IMAPClient

    from ..model import Message
    from ..store import Store

MEGABYTE = 1_000_000

Use = Callable[[str, "Message"], bool]
"""Takes one message in (its place, the message); False where it could not be used."""
Told = Callable[[int, int], None]
"""Told how far a folder is: (messages done, messages to do)."""


@dataclass(slots=True)
class Passed:
    """What was met in a folder and not taken in."""

    known: int = 0
    """Known by their headers, after the server had numbered the folder anew."""
    gone: int = 0
    """Deleted by somebody while we were reading."""


def collect_folder(
    client: IMAPClient, settings: Mailbox, store: Store, folder: str, use: Use, told: Told
) -> Passed:
    """Take in what is new in one folder, and try again what could not be used before."""
    uidvalidity, end = open_readonly(client, folder)
    account, passed = settings.account, Passed()
    with store.reading() as book:
        mark = book.mark(account, folder)
        again = book.held_back(account, folder, uidvalidity)
    # All of it once more where the numbers mean other messages now, or where older mail was passed
    # over so far that is wanted from now on.
    afresh = mark is None or mark.uidvalidity != uidvalidity or _reaches_back(settings, mark)
    first = 1 if mark is None or afresh else mark.next_uid
    pieces = [list(again)] if again else []
    pieces += [one for one in fetch.uids_from(client, first, end, settings.since) if one]
    wanted, done = sum(map(len, pieces)), 0
    for uids in pieces:
        unknown = uids
        if mark is not None and afresh:
            unknown = list(_unknown(client, store, uids))
            passed.known += len(uids) - len(unknown)
            done += len(uids) - len(unknown)
        for group in fetch.messages(client, unknown, settings.largest_mb * MEGABYTE):
            for one in group:
                usable = one.raw is None or use(_place(settings, folder, one), _message(one))
                passed.gone += one.raw is None
                if not usable or one.uid in again:
                    with store.writing() as book:
                        book.hold_back(account, folder, uidvalidity, one.uid, usable=usable)
            done += len(group)
            told(done, wanted)
            if group[-1].uid >= first:
                _mark(store, settings, folder, uidvalidity, group[-1].uid + 1)
    if end < UNKNOWN_END and (afresh or end > first):
        _mark(store, settings, folder, uidvalidity, end)
    return passed


def _reaches_back(settings: Mailbox, mark: Mark) -> bool:
    """Whether mail is wanted now that is older than what was looked at."""
    return mark.since is not None and (settings.since is None or settings.since < mark.since)


def _place(settings: Mailbox, folder: str, one: fetch.Fetched) -> str:
    return f"imap://{settings.host}/{folder};UID={one.uid}"


def _message(one: fetch.Fetched) -> Message:
    assert one.raw is not None
    message = parse_message(one.raw)
    if not one.cut:
        return message
    said = (
        f"only the first {len(one.raw) / MEGABYTE:.0f} MB of {one.size / MEGABYTE:.0f} MB were "
        "fetched: what comes after them was not read"
    )
    return message.model_copy(update={"faults": (said, *message.faults)})


def _unknown(client: IMAPClient, store: Store, uids: list[int]) -> Iterator[int]:
    """Of those messages, the ones that the store may not have.

    Known is only what has the same Message-ID, sender and time: everything else is fetched whole,
    and known or not by its words.
    """
    for uid, header in fetch.headers(client, uids):
        came = parse_message(header)
        with store.reading() as book:
            known = any(same_origin(stored, came) for _, stored in book.messages_like(came))
        if not known:
            yield uid


def _mark(store: Store, settings: Mailbox, folder: str, uidvalidity: int, next_uid: int) -> None:
    mark = Mark(uidvalidity, next_uid, settings.since)
    with store.writing() as book:
        book.set_mark(settings.account, folder, mark)
