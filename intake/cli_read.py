"""``read``, ``answer`` and ``schema``: messages judged without storing anything."""

from __future__ import annotations

import argparse
import sys
from collections.abc import Callable
from typing import TYPE_CHECKING

from .cli_common import (
    UNUSABLE_INPUT,
    RefusedError,
    attempt,
    complain,
    shop_of,
    standard_input,
    templates_of,
    today_of,
)
from .short_run import uncollected

if TYPE_CHECKING:
    from .model import Result


def read(args: argparse.Namespace) -> int:
    """Read every message of every path; go on past what can't be read."""
    from .sources import read_paths

    if "-" in args.paths and sys.stdin is None:
        raise RefusedError("standard input is closed: name a file instead of -")
    shop = shop_of(args)
    templates = templates_of(shop)
    show = _printer(as_json=args.json, why=args.why)
    status = 0
    for item in read_paths(args.paths, today=today_of(shop)):
        if item.message is None:
            complain(item.error or f"{item.file}: cannot be read")
            status = UNUSABLE_INPUT
        elif (result := attempt(item.message, item.file, shop, templates)) is None:
            status = UNUSABLE_INPUT
        else:
            show(result, item.file)
    return status


def _explain(result: Result) -> None:
    """What each number of the message was taken for, and what else was weighed."""
    from .own_text import mask
    from .reading.why import explain
    from .screen import console
    from .screen_why import why_view

    why_view(console(), explain(mask(result.message), result.message))


@uncollected()
def answer(args: argparse.Namespace) -> int:
    """One pasted message: the reading, the decision with its reasons, the draft to copy."""
    from .pasted import text_message

    shop = shop_of(args)
    templates = templates_of(shop)
    text = " ".join(args.text)
    if not args.text:
        if sys.stdin is not None and sys.stdin.isatty():
            print("Paste the message, then press Ctrl-D on a line of its own.", file=sys.stderr)
        text = standard_input()
    if not text.strip():
        raise RefusedError("there is no text to answer: give it as TEXT or on standard input")
    message = text_message(text, today_of(shop))
    result = attempt(message, "the message", shop, templates)
    if result is None:
        return UNUSABLE_INPUT
    if args.json:
        _printer(as_json=True, why=False)(result, "-")
    else:
        from .screen import answer_view, console

        answer_view(console(), result)
        if args.why:
            _explain(result)
    return 0


def schema(args: argparse.Namespace) -> int:
    """Print the JSON Schema of the output, or of a chat message that comes in."""
    from .chat import chat_schema
    from .output import json_schema

    print(chat_schema() if args.what == "chat" else json_schema())
    return 0


def _printer(*, as_json: bool, why: bool) -> Callable[[Result, str], None]:
    if as_json:
        from .output import json_line, message_out

        return lambda result, file: print(json_line(message_out(result, file)))
    from .screen import console, read_view

    out = console()

    def show(result: Result, file: str) -> None:
        read_view(out, result, file)
        if why:
            _explain(result)

    return show
