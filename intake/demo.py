"""``demo``: the whole job on an invented shop's mailbox, in a folder that one can look around in.

The same command twice carries on where the first left off: nothing is collected, approved or laid
down a second time.
"""

from __future__ import annotations

import argparse
import shlex
import shutil
import sys
from importlib import resources
from pathlib import Path
from typing import TYPE_CHECKING

from .cli_common import STORE_FILE, UNUSABLE_INPUT, WRONG_CALL, RefusedError, templates_of

if TYPE_CHECKING:
    from collections.abc import Iterable

    from rich.console import Console

    from ..rules.shop import Shop
    from .cli_collected import Collected
    from .inquiry import Asking
    from .store import Store

MAILBOX = "mailbox"
APPROVER = "Kit Lindgren"
"""One of the invented people of the sample shop."""
APPROVALS = {"stock": 2, "custom-make": 1, "decline": 1}
"""How many clear replies of each decision are approved: enough to see, most left to be tried."""


def demo(args: argparse.Namespace) -> int:
    """Collect, decide, draft, approve a few, lay them down, count the week."""
    from .cli_collect import collect_into
    from .cli_desk import opened
    from .screen import console

    out = console()
    folder = Path(args.into)
    sources = _prepare(folder)
    args.shop, args.store = str(folder), None
    with opened(args, create=True) as (shop, store):
        collected = collect_into(store, shop, templates_of(shop), sources)
        _triage(out, store, collected)
        _approve(out, store)
        laid = _lay_down(out, args, store, shop)
        _week(out, store, shop)
        doubtful = _first_doubtful(store)
    _where(out, folder, laid, doubtful)
    return UNUSABLE_INPUT if collected.unusable else 0


def _prepare(folder: Path) -> list[str]:
    """The folder with the sample shop and the mailbox in it; what is to be collected."""
    from ..rules.shop import SHOP_TOML, CannotMakeShop, write_new_shop

    if not (folder / SHOP_TOML).exists():
        try:
            write_new_shop(folder)
        except CannotMakeShop as error:
            raise RefusedError(f"--into: {error}", status=WRONG_CALL) from error
    mailbox = folder / MAILBOX
    try:
        mailbox.mkdir(exist_ok=True)
        for item in sorted(
            resources.files("bendreply.demo_mailbox").iterdir(), key=lambda item: item.name
        ):
            wanted = item.name.endswith((".eml", ".mbox", ".jsonl")) and item.name != "gold.jsonl"
            copy = mailbox / item.name
            if wanted and not copy.exists():
                with resources.as_file(item) as original:
                    shutil.copyfile(original, copy)
    except OSError as error:
        raise RefusedError(f"--into: {mailbox} can't be written ({error.strerror})") from error
    others = [str(p) for p in sorted(mailbox.iterdir()) if p.suffix in (".mbox", ".jsonl")]
    return [str(mailbox), *others]


def _triage(out: Console, store: Store, collected: Collected) -> None:
    from .desk import askings, show
    from .screen_desk import Line, triage_table

    came = f"nothing new, {collected.known} messages known before"
    if collected.new:
        came = f"{collected.new} messages collected"
    lines = [Line.of_asking(one, show(store, one.id)) for one in askings(store)]
    triage_table(out, lines, title=f"The mailbox: {came}")
    out.print()


def _approve(out: Console, store: Store) -> None:
    """Approvals by an invented person, as an example; never where somebody has spoken already."""
    from .desk import approve, askings, show

    clear = list(_clear(askings(store)))
    for number in clear:
        if not show(store, number).words:
            approve(store, number, APPROVER)
    numbers = ", ".join(map(str, clear))
    out.print("Approved, as an example", style="bold")
    out.print(
        f"{APPROVER}, who is invented like the rest of this shop, approved the drafts of "
        f"{numbers}. With your own shop, nothing is laid down before a person has said so."
    )
    out.print()


def _clear(askings: Iterable[Asking]) -> Iterable[int]:
    """The first inquiries with one size, nothing missing and nothing in doubt."""
    wanted = dict(APPROVALS)
    for asking in askings:
        if len(asking.assessments) != 1 or asking.channel != "email":
            continue
        (assessment,) = asking.assessments
        request = assessment.request
        if request.missing or request.doubts or not wanted.get(assessment.decision):
            continue
        wanted[assessment.decision] -= 1
        yield asking.id


def _lay_down(out: Console, args: argparse.Namespace, store: Store, shop: Shop) -> list[str]:
    """The places of all drafts laid down, by this run or one before."""
    from .cli_desk import file_target
    from .desk import deliver
    from .model import Address

    sender = Address(name=shop.reply_name, address=shop.reply_address or "")
    delivery = deliver(store, file_target(args, shop), sender)
    for left in delivery.left:
        out.print(left.why)
    return [done.place for done in delivery.delivered]


def _week(out: Console, store: Store, shop: Shop) -> None:
    from .cli_report import count
    from .screen_report import report_view

    report_view(out, count(store, shop))


def _first_doubtful(store: Store) -> int:
    """An inquiry worth a look: the first with a doubt, else the first of all."""
    from .desk import askings

    doubtful = (a.id for a in askings(store) if any(one.request.doubts for one in a.assessments))
    return next(doubtful, 1)


def _where(out: Console, folder: Path, laid: list[str], doubtful: int) -> None:
    from .screen import pairs

    drafts = f"{len(laid)} approved drafts" if laid else "approved drafts, laid down before"
    out.print("Where everything lies", style="bold")
    out.print(
        pairs(
            (f"{folder / MAILBOX}", "the customers' messages"),
            (f"{folder / STORE_FILE}", "every message, reading, decision, draft and word said"),
            (f"{folder / 'drafts'}", f"{drafts}: open one in your mail program; you send it"),
            (f"{folder / 'shop.toml'}", "limits, people, lead times: edit and run again"),
        )
    )
    out.print()
    out.print("Try next", style="bold")
    called, shop = _as_called(), shlex.quote(str(folder))
    # Unbroken, so that a line can be copied whole.
    out.print(f"{called} --shop {shop} backlog", soft_wrap=True)
    out.print(f"{called} --shop {shop} show {doubtful}", soft_wrap=True)
    out.print(f'{called} answer "1.75 x .083 DOM on a 5.25 clr, do you have it?"', soft_wrap=True)


def _as_called() -> str:
    """The command as the person typed it, so that what is shown can be pasted as it stands."""
    typed = sys.argv[0]
    by_path = "/" in typed and Path(typed).name == "bendreply"
    return shlex.quote(typed) if by_path else "bendreply"
