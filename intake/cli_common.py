"""What every command shares: how it refuses, which shop it works for, text fit for a terminal."""

from __future__ import annotations

import argparse
import sys
import unicodedata
from datetime import date, datetime
from pathlib import Path
from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from ..rules.shop import Shop
    from .model import Message, Result
    from .templates import Templates

UNUSABLE_INPUT = 1
WRONG_CALL = 2
STORE_FILE = "store.sqlite"


class RefusedError(Exception):
    """A command that can't go on: one sentence a fault, and the exit status."""

    def __init__(self, *sentences: str, status: int = UNUSABLE_INPUT) -> None:
        super().__init__(*sentences)
        self.sentences = sentences
        self.status = status


def complain(sentence: str) -> None:
    """One line on standard error; on a terminal, as many as it takes not to break a word."""
    line = f"bendreply: {printable(sentence)}"
    if sys.stderr is not None and sys.stderr.isatty():
        line = _wrapped(line)
    print(line, file=sys.stderr)


def _wrapped(text: str) -> str:
    import shutil
    import textwrap

    width = shutil.get_terminal_size().columns
    whole = textwrap.TextWrapper(width, break_long_words=False, break_on_hyphens=False)
    return "\n".join(map(whole.fill, text.splitlines()))


def shop_of(args: argparse.Namespace) -> Shop:
    """The shop the command works for: --shop, BENDREPLY_SHOP, or the sample shop.

    Raises RefusedError with every fault of the folder.
    """
    from ..rules.shop import ShopFaults, load_shop, sample_shop

    if args.shop is None:
        return sample_shop()
    try:
        return load_shop(Path(args.shop))
    except ShopFaults as faults:
        raise RefusedError(*map(str, faults.faults), status=WRONG_CALL) from faults


def templates_of(shop: Shop) -> Templates:
    """The wording of the shop, approved answers included. Raises RefusedError for a bad file."""
    from .templates import BadTemplate, Templates

    templates = Templates(shop.folder)
    try:
        _ = templates.answers  # reads all of them: a bad one is the shop's fault, not a message's
    except BadTemplate as error:
        raise RefusedError(str(error), status=WRONG_CALL) from error
    return templates


def attempt(message: Message, file: str, shop: Shop, templates: Templates) -> Result | None:
    """What is made of one message; None, with a complaint, where our own fault prevents it.

    Raises RefusedError where a reply template of the shop can't be filled in.
    """
    from .pipeline import process
    from .templates import BadTemplate

    try:
        return process(message, shop, templates)
    except BadTemplate as error:
        raise RefusedError(str(error), status=WRONG_CALL) from error
    except Exception as error:  # noqa: BLE001 - our fault with one message must not stop the rest
        complain(f"{file}: internal fault ({type(error).__name__}: {error}); left out")
        return None


def standard_input() -> str:
    """All that is piped or pasted in. Raises RefusedError where it can't be read as text."""
    if sys.stdin is None:
        raise RefusedError("standard input is closed: give the words as TEXT")
    try:
        return sys.stdin.read()
    except (OSError, UnicodeDecodeError) as error:
        why = error.strerror if isinstance(error, OSError) else "it is not UTF-8 text"
        raise RefusedError(f"standard input can't be read: {why}") from error


def today_of(shop: Shop) -> date:
    """Today by the shop's clocks."""
    return datetime.now(shop.zone).date()


def store_place(args: argparse.Namespace, shop: Shop) -> str | Path:
    """Where the store is: --store, what shop.toml says, or store.sqlite in the shop folder.

    Raises RefusedError for the sample shop, which lies among the program's own files.
    """
    if args.store is not None:
        return str(args.store)
    if shop.folder is None:
        raise RefusedError(
            "the sample shop keeps no store: make a shop folder with `bendreply shop new DIR` and "
            "name it with --shop DIR, or name a store with --store FILE",
            status=WRONG_CALL,
        )
    if shop.store is not None and shop.store.url is not None:
        return shop.store.url
    path = shop.store.path if shop.store is not None else None
    return shop.folder / (path or STORE_FILE)


def store_password(args: argparse.Namespace, shop: Shop) -> str | None:
    """The password of the store's server, where shop.toml says how it is had. Raises StoreError,
    which never holds any of it.
    """
    from .desk_errors import StoreError
    from .secret import from_command, from_variable

    if args.store is not None or shop.store is None:
        return None
    if shop.store.password_env is not None:
        return from_variable(shop.store.password_env, "store", StoreError)
    if shop.store.password_command is not None:
        return from_command(shop.store.password_command, "password_command", StoreError)
    return None


def printable(text: str) -> str:
    """Customers' text fit for a terminal: control characters could move its cursor or worse."""
    return "".join(map(_harmless, text))


def _harmless(char: str) -> str:
    match unicodedata.category(char):
        case "Cc" if char not in "\n\t":
            return "\N{REPLACEMENT CHARACTER}"
        case "Cf":  # zero-width and direction marks: nothing to see, much to mislead
            return ""
        case _:
            return char
