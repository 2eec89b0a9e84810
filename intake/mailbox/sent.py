"""The Sent and Drafts folders looked at, never changed: which inquiries are answered, and which
drafts a person has changed or taken away.
"""

from __future__ import annotations

from collections.abc import Iterator
from typing import TYPE_CHECKING

from ...rules.shop_mailbox import Mailbox
from ..desk_deliver import laid_before
from ..desk_sent import inquiry_answered, note_sent
from ..inquiry import BENDREPLY, Inquiry, State
from ..letter import digest
from ..message import parse_message
from ..store_marks import Mark
from . import fetch
from .drafts import lying, whole
from .folders import UNKNOWN_END, open_readonly, special_folder

if TYPE_CHECKING:
    from imapclient import IMAPClient

    from ..store import Store

MEGABYTE = 1_000_000


def look_at_sent(client: IMAPClient, settings: Mailbox, store: Store) -> Iterator[Inquiry]:
    """Inquiries that a new mail in the Sent folder answers. Of other mail only the few header
    fields are looked at that tell whom it answers, and nothing is kept.
    """
    folder = special_folder(client, settings, "Sent")
    if folder is None:
        return
    uidvalidity, end = open_readonly(client, folder)
    account = settings.account
    with store.reading() as book:
        mark = book.mark(account, folder)
        oldest = book.oldest_message()
    if oldest is None:
        return
    first = mark.next_uid if mark is not None and mark.uidvalidity == uidvalidity else 1
    # A reply is no older than what it answers.
    for uids in fetch.uids_from(client, first, end, oldest.date()):
        wanted = []
        for uid, header in fetch.headers(client, uids):
            with store.reading() as book:
                if inquiry_answered(book, parse_message(header)) is not None:
                    wanted.append(uid)
        for group in fetch.messages(client, wanted, settings.largest_mb * MEGABYTE):
            for one in group:
                if one.raw is not None and (seen := note_sent(store, parse_message(one.raw))):
                    yield seen
    if end < UNKNOWN_END and (mark is None or mark.uidvalidity != uidvalidity or end > first):
        with store.writing() as book:
            book.set_mark(account, folder, Mark(uidvalidity, end))


def look_at_drafts(client: IMAPClient, settings: Mailbox, store: Store) -> Iterator[str]:
    """What a person has done with drafts of ours in the mail program, each told once."""
    folder = special_folder(client, settings, "Drafts")
    with store.reading() as book:
        waiting = {}
        for number in book.numbers(State.DELIVERED) if folder is not None else ():
            history = book.history(number)
            # Chat texts and drafts laid before there was a mailbox lie elsewhere.
            in_box = history[-1].what == "delivered" and history[-1].detail["place"] == folder
            if in_box and (laid := laid_before(book, number)):
                waiting[number] = list(laid.items())[-1]
    if not waiting or folder is None:
        return
    there = dict(lying(client, folder))
    for number, (name, laid_digest) in waiting.items():
        uid = there.get(name)
        found = None if uid is None else whole(client, uid)
        if found is not None and digest(found) == laid_digest:
            continue
        done = "changed in the mail program" if found is not None else "no longer in Drafts"
        with store.writing() as book:
            book.log(number, BENDREPLY, f"draft {done}", draft=name.number)
        yield f"inquiry {number}: its draft is {done}; that is left as it is"
