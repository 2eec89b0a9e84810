"""``collect`` and ``deliver`` with the shop's mailbox instead of files."""

from __future__ import annotations

import sys
from collections.abc import Iterator
from contextlib import contextmanager
from typing import TYPE_CHECKING

from .cli_desk import Collected, use_message

if TYPE_CHECKING:
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
    from .mailbox.collect import collect_folder

    collected = Collected()

    def use(place: str, message: Message) -> bool:
        return use_message(collected, message, place, store, shop, templates)

    with mailbox(settings, shop.folder) as client:
        for folder in settings.inboxes:
            with _bar(folder) as told:
                passed = collect_folder(client, settings, store, folder, use, told)
            collected.seen += passed.known
    return collected


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
