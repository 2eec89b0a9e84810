"""The desk's commands: what waits, a person's word, what is laid down."""

from __future__ import annotations

import argparse
from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path
from typing import TYPE_CHECKING

from .cli_common import (
    UNUSABLE_INPUT,
    WRONG_CALL,
    RefusedError,
    complain,
    printable,
    shop_of,
    store_password,
    store_place,
    templates_of,
)

if TYPE_CHECKING:
    from ..rules.shop import Shop
    from .deliver import Target
    from .store import Store


MOST_SHOWN = 200
"""Lines of the backlog that are shown unless all are asked for."""


@contextmanager
def opened(args: argparse.Namespace, *, create: bool = False) -> Iterator[tuple[Shop, Store]]:
    """The shop and its store. What the desk refuses becomes a refusal of the command."""
    from .desk_errors import DeskError
    from .store import open_store

    shop = shop_of(args)
    try:
        place, password = store_place(args, shop), store_password(args, shop)
        with open_store(place, create=create, password=password) as store:
            yield shop, store
    except DeskError as error:
        raise RefusedError(str(error)) from error


def backlog(args: argparse.Namespace) -> int:
    """Show what waits, most urgent first."""
    from .desk import backlog as waiting
    from .desk import how_many_wait
    from .screen import console
    from .screen_desk import Line, triage_table

    with opened(args) as (_, store):
        rows = waiting(store, None if args.all else MOST_SHOWN)
        count = how_many_wait(store)
    if not rows:
        print("Nothing waits.")
        return 0
    title = f"{count} {'waits' if count == 1 else 'wait'} for a person"
    triage_table(console(), map(Line.of_row, rows), title=title)
    if count > len(rows):
        print(f"These are the {len(rows)} most urgent; `bendreply backlog --all` shows all.")
    return 0


def show(args: argparse.Namespace) -> int:
    """Show one inquiry in full."""
    from .desk import show as look_up
    from .screen import console
    from .screen_desk import inquiry_view

    with opened(args) as (shop, store):
        inquiry = look_up(store, args.id)
    inquiry_view(console(), inquiry, shop.reply_address or "")
    return 0


def correct(args: argparse.Namespace) -> int:
    """Put fields of one size right; the inquiry is decided and drafted again."""
    from .corrections import CorrectionError, parse_changes
    from .desk import correct as put_right
    from .desk import show as look_up
    from .pipeline import process_again
    from .screen import console
    from .screen_desk import correction_view

    with opened(args) as (shop, store):
        templates = templates_of(shop)
        inquiry = look_up(store, args.id)
        try:
            index, changes = parse_changes(
                args.changes, requests=[one.request for one in inquiry.assessments]
            )
        except CorrectionError as error:
            raise RefusedError(str(error), status=WRONG_CALL) from error
        changed = put_right(
            store,
            args.id,
            changes,
            index,
            lambda message, requests: process_again(
                message, requests, shop, templates, inquiry.earlier
            ),
            args.by,
            expected_version=inquiry.version,
        )
    correction_view(console(), changed, index)
    return 0


def approve(args: argparse.Namespace) -> int:
    """Record a person's yes to the draft."""
    from .desk import approve as say_yes

    with opened(args) as (shop, store):
        approved = say_yes(
            store,
            args.id,
            args.by,
            people=shop.people,
            shop_address=shop.reply_address or "",
            picture=args.picture,
        )
    beside = f", with the bend as a {args.picture.upper()}" if args.picture else ""
    print(f"Draft {approved.draft_number} of inquiry {approved.inquiry} is approved by "
          f"{approved.word.by}{beside}. `bendreply deliver` lays it down for sending.")  # fmt: skip
    return 0


def set_aside(args: argparse.Namespace) -> int:
    """Record a person's word that there is no reply from here."""
    from .desk import set_aside as put_away

    with opened(args) as (_, store):
        inquiry = put_away(store, args.id, args.by, args.why)
    print(f"Inquiry {inquiry.id} is set aside by {inquiry.words[-1].by}: {inquiry.words[-1].why}")
    return 0


def deliver(args: argparse.Namespace) -> int:
    """Lay every approved draft where a person will find it."""
    from .desk import deliver as lay_down
    from .model import Address

    with opened(args) as (shop, store):
        sender = Address(name=shop.reply_name, address=shop.reply_address or "")
        with target_of(args, shop) as target:
            delivery = lay_down(store, target, sender)
        take_back(args, shop, store)
    for done in delivery.delivered:
        again = " (it lay there already)" if done.was_there else ""
        print(f"Inquiry {done.inquiry}: the draft lies in {done.place}{again}")
        if done.note:
            print(done.note)
    if not delivery.delivered and not delivery.left:
        print("Nothing to lay down: no draft is approved and not yet delivered.")
    for left in delivery.left:
        complain(left.why)
    return UNUSABLE_INPUT if delivery.left else 0


def take_back(args: argparse.Namespace, shop: Shop, store: Store) -> None:
    """Take laid drafts back that are outdated by what came in since, and say so."""
    from .desk_errors import DeskError
    from .desk_outdated import any_outdated, take_back_outdated

    if not any_outdated(store):
        return
    try:
        with target_of(args, shop) as where:
            for sentence in take_back_outdated(store, where):
                print(printable(sentence))
    except (DeskError, OSError) as error:
        complain(f"an outdated draft could not be looked at: {error}")


@contextmanager
def target_of(args: argparse.Namespace, shop: Shop) -> Iterator[Target]:
    """Where drafts go: what [deliver] says, else the mailbox's Drafts folder, else files."""
    if shop.mailbox is None or shop.deliver is not None:
        yield file_target(args, shop)
        return
    from .mailbox.drafts import ImapDrafts

    with ImapDrafts(shop.mailbox, shop.folder, _beside_store(args, shop) / "drafts") as target:
        yield target


def _beside_store(args: argparse.Namespace, shop: Shop) -> Path:
    on_server = args.store is not None and "://" in args.store
    beside = shop.folder if args.store is None or on_server else Path(args.store).parent
    return beside or Path()


def file_target(args: argparse.Namespace, shop: Shop) -> Target:
    """Where shop.toml wants drafts laid as files; else the folder ``drafts`` beside the store."""
    from .deliver import DraftsFolder, MaildirDrafts
    from .deliver_mbox import MboxDrafts

    beside = _beside_store(args, shop)
    base = shop.folder or beside
    if shop.deliver is not None and shop.deliver.maildir is not None:
        return MaildirDrafts(base / shop.deliver.maildir, base / "drafts")
    if shop.deliver is not None and shop.deliver.mbox is not None:
        return MboxDrafts(base / shop.deliver.mbox, base / "drafts")
    if shop.deliver is not None and shop.deliver.folder is not None:
        return DraftsFolder(base / shop.deliver.folder)
    return DraftsFolder(beside / "drafts")
