"""``listen``: the chat account's messages taken into the store as they come."""

from __future__ import annotations

import argparse
import asyncio
import signal
from collections.abc import Sequence
from contextlib import suppress
from datetime import datetime
from importlib.util import find_spec
from typing import TYPE_CHECKING

from .cli_collect import use_chat
from .cli_collected import Collected
from .cli_common import UNUSABLE_INPUT, WRONG_CALL, RefusedError, complain, shop_of, templates_of
from .cli_desk import opened

if TYPE_CHECKING:
    from ..rules.shop import Shop
    from ..rules.shop_chat import ChatAccount
    from .chat import ChatLine
    from .store import Store


def listen(args: argparse.Namespace) -> int:
    """Take in what the chat account receives, until interrupted."""
    settings = shop_of(args).chat.account
    if settings is None:
        raise RefusedError(
            "there is no account to listen with: shop.toml has no [chat.account]", status=WRONG_CALL
        )
    if find_spec("slixmpp") is None:
        raise RefusedError(
            "listening needs the package slixmpp: install bendreply with its extra xmpp, or "
            "`pip install slixmpp`",
            status=WRONG_CALL,
        )
    with opened(args, create=True) as (shop, store):
        collected = _listen(args, shop, settings, store)
        print(f"{collected.counts()} The store is {store.name}.")
    return UNUSABLE_INPUT if collected.unusable else 0


def _listen(args: argparse.Namespace, shop: Shop, settings: ChatAccount, store: Store) -> Collected:
    from .chat_bursts import bursts_of
    from .desk_chat import ChatReading
    from .xmpp.listen import Listener
    from .xmpp.listen import listen as hear

    reading = ChatReading.of(shop, templates_of(shop))
    collected = Collected()

    def take(lines: Sequence[ChatLine]) -> None:
        for burst in bursts_of(lines, reading.quiet):
            before = collected.new + collected.joined
            use_chat(collected, burst.lines, settings.channel, store, reading)
            if collected.new + collected.joined > before and not args.once:
                print(collected.counts(), flush=True)

    def latest() -> datetime | None:
        with store.reading() as book:
            return book.latest_line(settings.channel)

    listener = Listener(
        settings=settings,
        shop_folder=shop.folder,
        zone=shop.zone,
        take=take,
        latest=latest,
        told=complain,
    )

    async def run() -> None:
        task = asyncio.current_task()
        assert task is not None, "this runs in one"
        # A service manager's word is no fault: what has come in is written down first.
        with suppress(NotImplementedError):  # not on every system
            asyncio.get_running_loop().add_signal_handler(signal.SIGTERM, task.cancel)
        try:
            await hear(listener, once=args.once)
        except asyncio.CancelledError:
            return

    asyncio.run(run())
    return collected
