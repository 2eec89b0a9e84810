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
    from .templates import Templates

UNUSABLE_INPUT = 1
WRONG_CALL = 2


class RefusedError(Exception):
    """A command that can't go on: one sentence a fault, and the exit status."""

    def __init__(self, *sentences: str, status: int = UNUSABLE_INPUT) -> None:
        super().__init__(*sentences)
        self.sentences = sentences
        self.status = status


def complain(sentence: str) -> None:
    """One line on standard error."""
    print(f"bendreply: {printable(sentence)}", file=sys.stderr)


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


def today_of(shop: Shop) -> date:
    """Today by the shop's clocks."""
    return datetime.now(shop.zone).date()


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
