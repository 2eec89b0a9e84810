"""``collect``: messages of files, folders or the mailbox read and taken into the store."""

from __future__ import annotations

import argparse
from collections import Counter
from collections.abc import Sequence
from dataclasses import dataclass, field
from typing import TYPE_CHECKING

from .cli_common import (
    UNUSABLE_INPUT,
    WRONG_CALL,
    RefusedError,
    attempt,
    complain,
    printable,
    shop_of,
    templates_of,
    today_of,
)
from .cli_desk import opened

if TYPE_CHECKING:
    from ..rules.shop import Shop
    from .desk import Joining, Taken
    from .model import Kind, Message, Result
    from .store import Store
    from .templates import Templates

AT_A_TIME = 20
"""Messages of a file or folder written down together: the disk is waited for once."""


@dataclass(slots=True)
class Collected:
    """What one run of ``collect`` brought in."""

    kinds: Counter[Kind] = field(default_factory=Counter)
    """New inquiries by their kind. Only counted: a long backlog would not fit into memory."""
    joined: int = 0
    """Further messages of inquiries that were there."""
    known: int = 0
    unusable: int = 0

    @property
    def new(self) -> int:
        """How many inquiries were begun."""
        return self.kinds.total()

    def counts(self) -> str:
        """How many of what, in one sentence."""
        detail = ", ".join(f"{number} {kind}" for kind, number in sorted(self.kinds.items()))
        joined = f"{self.joined} joined to earlier inquiries, " if self.joined else ""
        return (
            f"{self.new} new{f' ({detail})' if detail else ''}, {joined}"
            f"{self.known} known before, {self.unusable} not usable."
        )

    def count(self, taken: Taken, kind: Kind | None = None) -> None:
        """Count a message that the desk has seen, and say what a person should know of it."""
        if taken.joined is not None:
            self.joined += 1
        elif taken.new and kind is not None:
            self.kinds[kind] += 1
        else:
            self.known += 1
        if taken.note:
            print(printable(taken.note))


def use_message(
    collected: Collected,
    message: Message,
    place: str,
    store: Store,
    shop: Shop,
    templates: Templates,
) -> bool:
    """Take one message in and count it; False where our own fault prevents it.

    One that is known is not read again, and none of its files is opened.
    """
    from .desk import already_taken, take_in

    if known := already_taken(store, message, place):
        collected.count(known)
        return True
    result = attempt(message, place, shop, templates)
    if result is None:
        collected.unusable += 1
        return False
    collected.count(take_in(store, result, place, _joining(shop, templates)), result.kind)
    return True


def _joining(shop: Shop, templates: Templates) -> Joining:
    from .desk import Joining
    from .pipeline import process_reply

    return Joining(
        lambda message, before: process_reply(message, before, shop, templates),
        shop.reply_address or "",
    )


def collect_into(
    store: Store, shop: Shop, templates: Templates, sources: Sequence[str]
) -> Collected:
    """Take in every message of the sources; what can't be used is complained of, the rest done.

    Messages are read one by one and written down some at a time: what a kill leaves out, the next
    run finds again.
    """
    from .desk import already_taken, take_in
    from .sources import read_paths

    collected, joining = Collected(), _joining(shop, templates)
    waiting: list[tuple[Result, str]] = []

    def write_down() -> None:
        with store.together():
            taken = [take_in(store, result, place, joining) for result, place in waiting]
        for one, (result, _) in zip(taken, waiting, strict=True):
            collected.count(one, result.kind)
        waiting.clear()

    for item in read_paths(sources, today=today_of(shop)):
        if item.message is None:
            complain(item.error or f"{item.file}: cannot be read")
            collected.unusable += 1
        elif known := already_taken(store, item.message, item.file):
            collected.count(known)
        elif (result := attempt(item.message, item.file, shop, templates)) is None:
            collected.unusable += 1
        else:
            waiting.append((result, item.file))
            if len(waiting) == AT_A_TIME:
                write_down()
    write_down()
    return collected


def _reduce_old(store: Store, shop: Shop) -> None:
    """What is older than shop.toml has words kept, reduced to its figures."""
    if shop.keep is None:
        return
    from .desk_forget import reduce_old

    done = reduce_old(store, shop.keep.messages_months, shop.zone)
    if done.inquiries:
        months = shop.keep.messages_months
        print(f"{done.inquiries} inquiries older than {months} months reduced to their figures.")


def collect(args: argparse.Namespace) -> int:
    """Bring new messages into the store."""
    if args.watch and args.sources:
        raise RefusedError("--watch is for the mailbox: name no files with it", status=WRONG_CALL)
    if not args.sources and shop_of(args).mailbox is None:
        raise RefusedError(
            "nothing to collect from: shop.toml has no [mailbox]; name files, a folder of .eml, an "
            "mbox, a Maildir or a chat export (.jsonl)",
            status=WRONG_CALL,
        )
    with opened(args, create=True) as (shop, store):
        if shop.mailbox is not None and not args.sources:
            from .cli_mailbox import collect_mailbox, watch_mailbox

            if args.watch:
                _reduce_old(store, shop)
                watch_mailbox(store, shop, shop.mailbox, templates_of(shop))
                return 0
            collected = collect_mailbox(store, shop, shop.mailbox, templates_of(shop))
        else:
            collected = collect_into(store, shop, templates_of(shop), args.sources)
        print(f"{collected.counts()} The store is {store.name}.")
        _reduce_old(store, shop)
    return UNUSABLE_INPUT if collected.unusable else 0
