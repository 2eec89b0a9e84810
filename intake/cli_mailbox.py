"""``collect`` and ``deliver`` with the shop's mailbox instead of files."""

from __future__ import annotations

import sys
from collections.abc import Callable, Iterator
from contextlib import contextmanager
from typing import TYPE_CHECKING

from .cli_collect import use_message
from .cli_collected import Collected
from .cli_common import complain, printable
from .screen_desk import answered

if TYPE_CHECKING:
    from imapclient import IMAPClient

    from ..rules.shop import Shop
    from ..rules.shop_mailbox import Mailbox
    from .mailbox.collect import Told
    from .model import Message
    from .store import Store
    from .templates import Templates

LONG_BACKLOG = 100
"""Messages from which on a bar shows how far the work is."""


def collect_mailbox(store: Store, shop: Shop, settings: Mailbox, templates: Templates) -> Collected:
    """Take in what is new in every inbox of the shop. Raises MailboxError."""
    from .mailbox.access import mailbox

    with mailbox(settings, shop.folder) as client:
        return _collected(client, store, shop, settings, templates)[0]


def watch_mailbox(
    store: Store,
    shop: Shop,
    settings: Mailbox,
    templates: Templates,
    after: Callable[[], object] = lambda: None,
) -> None:
    """Take in what is new, then whatever comes, until it is interrupted. Raises MailboxError.

    ``after``: what is to be done each time that something came.
    """
    from .mailbox.watch import watch

    first = True

    def work(client: IMAPClient) -> int:
        nonlocal first
        collected, read_to = _collected(client, store, shop, settings, templates)
        if first or collected.new or collected.joined or collected.unusable:
            after()
            print(collected.counts(), flush=True)
        first = False
        return read_to

    watch(settings, shop.folder, work, complain)


def _collected(
    client: IMAPClient, store: Store, shop: Shop, settings: Mailbox, templates: Templates
) -> tuple[Collected, int]:
    """One round through all folders; the UID up to which the first inbox is read."""
    from .mailbox.collect import collect_folder
    from .mailbox.sent import look_at_drafts, look_at_sent

    collected = Collected()

    def use(place: str, message: Message) -> bool:
        return use_message(collected, message, place, store, shop, templates)

    for folder in settings.inboxes:
        with _bar(folder) as told:
            passed = collect_folder(client, settings, store, folder, use, told)
        collected.known += passed.known
    for inquiry in look_at_sent(client, settings, store):
        print(printable(f"Inquiry {inquiry.id}: {answered(inquiry.replies[-1])}"))
    for sentence in look_at_drafts(client, settings, store):
        print(printable(sentence))
    with store.reading() as book:
        mark = book.mark(settings.account, settings.inboxes[0])
    return collected, mark.next_uid if mark is not None else 1


@contextmanager
def _bar(folder: str) -> Iterator[Told]:
    """A bar on the terminal for a long backlog; nothing where nobody watches."""
    if not sys.stderr.isatty():
        yield lambda done, wanted: None  # noqa: ARG005 - nobody watches
        return
    from rich.console import Console
    from rich.progress import Progress

    with Progress(console=Console(stderr=True), transient=True) as progress:
        task = progress.add_task(folder, total=None, visible=False)

        def told(done: int, wanted: int) -> None:
            progress.update(task, completed=done, total=wanted, visible=wanted >= LONG_BACKLOG)

        yield told
