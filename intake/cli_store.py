"""What is kept: the history of an inquiry, whether the store is whole, corrections as labels."""

from __future__ import annotations

import argparse
from collections.abc import Iterator
from pathlib import Path
from typing import TYPE_CHECKING

from .cli_common import UNUSABLE_INPUT, RefusedError, complain, printable
from .cli_desk import opened

if TYPE_CHECKING:
    from .inquiry import Inquiry

EXPORT_ADDRESS = "customer@example.net"


def history(args: argparse.Namespace) -> int:
    """Print all that happened to one inquiry, oldest first."""
    from .desk import history as look_back
    from .desk import show
    from .desk_common import when
    from .screen_history import details

    with opened(args) as (_, store):
        inquiry = show(store, args.id)
        events = look_back(store, args.id)
    for event in events:
        print(printable(f"{when(event.at)}  {event.who}: {event.what}"))
        for line in details(event, inquiry):
            print(printable(f"    {line}"))
    print()
    for line in _kept(inquiry):
        print(printable(line))
    return 0


def _kept(inquiry: Inquiry) -> Iterator[str]:
    from .addressing import one_line
    from .desk_common import when

    for one in inquiry.messages:
        sender = one.message.sender.address or one.message.sender.name or "nobody named"
        subject = one_line(one.message.subject, 60)
        yield f"message ({one.role}) of {sender}, taken in {when(one.taken_at)}: {subject}"
    for draft in inquiry.drafts:
        stands = "withdrawn" if draft.withdrawn else "stands"
        yield f"draft {draft.number} by {draft.made_by}, {when(draft.made_at)}, {stands}"


def check(args: argparse.Namespace) -> int:
    """Say whether the store is whole; every fault by its inquiry."""
    from .store_check import check_store

    with opened(args) as (_, store):
        looked_at, faults = check_store(store)
        for fault in faults:
            complain(fault)
        if faults:
            return UNUSABLE_INPUT
        print(f"The store {store.name} is whole: {looked_at} inquiries looked at, none amiss.")
    return 0


def export(args: argparse.Namespace) -> int:
    """Write corrected messages and their labels, for ``score``."""
    from .export import GOLD, export_corrections

    with opened(args) as (_, store):
        try:
            done = export_corrections(store, Path(args.folder), EXPORT_ADDRESS)
        except FileExistsError as error:
            raise RefusedError(
                f"{args.folder} holds a {GOLD} already: name a new folder"
            ) from error
        for sentence in done.left:
            complain(sentence)
    print(f"{len(done.written)} corrected messages lie in {args.folder}, labelled as corrected; "
          "they hold customers' own words.")  # fmt: skip
    return 0
