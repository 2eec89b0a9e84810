"""``collect``: messages of files, folders or the mailbox read and taken into the store."""

from __future__ import annotations

import argparse
from collections import deque
from collections.abc import Iterable, Iterator, Sequence
from functools import partial
from typing import TYPE_CHECKING

from .cli_collected import Collected
from .cli_common import (
    UNUSABLE_INPUT,
    WRONG_CALL,
    RefusedError,
    attempt,
    complain,
    shop_of,
    templates_of,
    today_of,
)
from .cli_desk import opened, take_back

if TYPE_CHECKING:
    from ..rules.shop import Shop
    from .chat import ChatLine
    from .desk import Joining
    from .desk_chat import ChatReading
    from .model import Message, Result
    from .several_readers import Unread
    from .sources import SourceItem
    from .store import Store
    from .templates import Templates

AT_A_TIME = 20
"""Messages of a file or folder written down together: the disk is waited for once."""
MOST_BYTES_AT_A_TIME = 10_000_000


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


def use_chat(
    collected: Collected,
    lines: Sequence[ChatLine],
    place: str,
    store: Store,
    reading: ChatReading,
) -> bool:
    """Take chat messages in and count them; False where our own fault prevents it.

    Raises RefusedError where a reply template of the shop can't be filled in.
    """
    from .desk_chat import take_in_chat
    from .desk_errors import DeskError
    from .templates import BadTemplate

    try:
        done = take_in_chat(store, lines, place, reading)
    except BadTemplate as error:
        raise RefusedError(str(error), status=WRONG_CALL) from error
    except DeskError:
        raise
    except Exception as error:  # noqa: BLE001 - our fault with one message must not stop the rest
        complain(f"{place}: internal fault ({type(error).__name__}: {error}); left out")
        collected.unusable += 1
        return False
    for one in done:
        collected.count(one.taken, one.kind)
    return True


def _joining(shop: Shop, templates: Templates) -> Joining:
    from .desk import Joining
    from .pipeline import process_reply

    return Joining(
        lambda message, before: process_reply(message, before, shop, templates),
        shop.reply_address or "",
    )


def collect_into(
    store: Store, shop: Shop, templates: Templates, sources: Sequence[str], jobs: int = 1
) -> Collected:
    """Take in every message of the sources; what can't be used is complained of, the rest done.

    Messages are read (by ``jobs`` processes where it is more than one) and written down some at a
    time: what a kill leaves out, the next run finds again.
    """
    from .desk_chat import ChatReading
    from .late import much_mail_comes
    from .sources import read_paths

    collected, reading = Collected(), ChatReading.of(shop, templates)
    items = read_paths(sources, today=today_of(shop), quiet=reading.quiet)
    groups = _new_ones(store, collected, items, reading)
    joining = _joining(shop, templates)
    if jobs == 1:
        for group in groups:
            if len(group) == AT_A_TIME:
                much_mail_comes()
            _write_down(
                store,
                collected,
                joining,
                ((attempt(message, file, shop, templates), file) for message, file in group),
            )
        return collected
    from .several_readers import Readers, ReaderStoppedError

    files: deque[list[str]] = deque()

    def messages() -> Iterator[list[Message]]:
        for group in groups:
            files.append([file for _, file in group])
            yield [message for message, _ in group]

    try:
        with Readers(jobs, shop) as readers:
            for results in readers.read(messages()):
                read = zip(map(_usable, results, files[0]), files.popleft(), strict=True)
                _write_down(store, collected, joining, read)
    except ReaderStoppedError as error:
        raise RefusedError(
            "a process that was reading messages has been stopped; what it had not read comes with "
            "the next collect"
        ) from error
    return collected


def _reduce_old(store: Store, shop: Shop) -> None:
    """What is older than shop.toml has words kept, reduced to its figures."""
    if shop.keep is None:
        return
    from .desk_forget import reduce_old

    done = reduce_old(store, shop.keep.messages_months, shop.zone)
    if done.inquiries:
        months = shop.keep.messages_months
        from .cli_keep import reduced_in_words

        print(reduced_in_words(done, months))


def _usable(made: Result | Unread, file: str) -> Result | None:
    """As ``attempt`` gives it and complains, for what another process has made of a message."""
    from .several_readers import Unread

    if not isinstance(made, Unread):
        return made
    if made.template:
        raise RefusedError(made.why, status=WRONG_CALL)
    complain(f"{file}: {made.why}")
    return None


def _new_ones(
    store: Store, collected: Collected, items: Iterable[SourceItem], reading: ChatReading
) -> Iterator[list[tuple[Message, str]]]:
    """The messages that are not known yet, some at a time; the others are only counted.

    Chat is taken in at once: what belongs together in it is known only in the store.
    """
    from .desk import all_already_taken

    for group in _groups(items):
        if group[0].lines:
            use_chat(collected, group[0].lines, group[0].file, store, reading)
            continue
        for unread in (one for one in group if one.message is None):
            complain(unread.error or f"{unread.file}: cannot be read")
            collected.unusable += 1
        came = [(one.message, one.file) for one in group if one.message is not None]
        new = []
        for one, known in zip(came, all_already_taken(store, came), strict=True):
            if known is None:
                new.append(one)
            else:
                collected.count(known)
        if new:
            yield new


def _write_down(
    store: Store,
    collected: Collected,
    joining: Joining,
    read: Iterable[tuple[Result | None, str]],
) -> None:
    """Keep what was made of a group of messages, all of it or, after a kill, none."""
    from .desk import take_in

    made = list(read)  # before the store is held: reading takes longer than writing
    usable = [(result, file) for result, file in made if result is not None]
    collected.unusable += len(made) - len(usable)
    with store.together():
        taken = [take_in(store, result, file, joining) for result, file in usable]
    for one, (result, _) in zip(taken, usable, strict=True):
        collected.count(one, result.kind)


def _groups(items: Iterable[SourceItem]) -> Iterator[list[SourceItem]]:
    """Some at a time: few where they have large files, which all lie in memory meanwhile.

    A burst of chat stands alone, after the mail before it: numbers are given out in order.
    """
    group: list[SourceItem] = []
    size = 0
    for item in items:
        if item.lines:
            yield from filter(None, (group, [item]))
            group, size = [], 0
            continue
        group.append(item)
        if item.message is not None:
            size += sum(one.size for one in item.message.attachments)
        if len(group) == AT_A_TIME or size > MOST_BYTES_AT_A_TIME:
            yield group
            group, size = [], 0
    if group:
        yield group


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
    if args.jobs > 1 and not args.sources:
        raise RefusedError("--jobs is for files: the mailbox is read by one", status=WRONG_CALL)
    with opened(args, create=True) as (shop, store):
        if shop.mailbox is not None and not args.sources:
            from .cli_mailbox import collect_mailbox, watch_mailbox

            if args.watch:
                _reduce_old(store, shop)
                look = partial(take_back, args, shop, store)
                watch_mailbox(store, shop, shop.mailbox, templates_of(shop), look)
                return 0
            collected = collect_mailbox(store, shop, shop.mailbox, templates_of(shop))
        else:
            collected = collect_into(store, shop, templates_of(shop), args.sources, args.jobs)
        take_back(args, shop, store)
        print(f"{collected.counts()} The store is {store.name}.")
        _reduce_old(store, shop)
    return UNUSABLE_INPUT if collected.unusable else 0
