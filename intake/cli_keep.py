"""``store``: customers' words taken out of the store, the figures left."""

from __future__ import annotations

import argparse
from typing import TYPE_CHECKING

from .cli_common import WRONG_CALL, RefusedError, complain, printable
from .cli_desk import opened

if TYPE_CHECKING:
    from .desk_forget import Reduced


def forget(args: argparse.Namespace) -> int:
    """Take out all that one customer wrote."""
    from .desk_forget import forget as take_out

    with opened(args) as (_, store):
        gone = take_out(store, args.address, args.by)
        backups = store.backups
    inquiries = "1 inquiry" if len(gone.inquiries) == 1 else f"{len(gone.inquiries)} inquiries"
    messages = "1 message" if gone.messages == 1 else f"{gone.messages} messages"
    numbers = ", ".join(map(str, gone.inquiries[:20]))
    more = ", ..." if len(gone.inquiries) > 20 else ""
    print(printable(f"{messages} of {args.address} forgotten, in {inquiries} ({numbers}{more}); "
                    "the counts stay, without a name."))  # fmt: skip
    print("Your mailbox, files you collected from and drafts laid down are yours to clear.")
    if gone.mentioned:
        others = ", ".join(map(str, gone.mentioned[:20]))
        complain(f"the address still stands in words of others: look at inquiry {others}")
    for copy in backups:
        complain(f"an older copy of the store may hold the messages: {copy}")
    return 0


def reduced_in_words(done: Reduced, months: int) -> str:
    """What was reduced to its figures, in a sentence."""
    inquiries = "1 inquiry" if done.inquiries == 1 else f"{done.inquiries} inquiries"
    age = "1 month" if months == 1 else f"{months} months"
    return f"{inquiries} older than {age} reduced to figures."


def reduce(args: argparse.Namespace) -> int:
    """Reduce what has grown old to its figures, as shop.toml says."""
    from .desk_forget import reduce_old

    with opened(args) as (shop, store):
        if shop.keep is None:
            raise RefusedError(
                "shop.toml doesn't say how long words are kept: give messages_months in [keep]",
                status=WRONG_CALL,
            )
        done = reduce_old(store, shop.keep.messages_months, shop.zone)
    print(reduced_in_words(done, shop.keep.messages_months))
    if done.unsettled:
        complain(f"{done.unsettled} as old were left, since they still wait: see backlog")
    return 0
