"""All commands with their options, and which function of which file carries each out."""

from __future__ import annotations

import argparse
import os
from importlib import import_module
from typing import NoReturn

from .cli_common import WRONG_CALL, complain

DESCRIPTION = (
    "Reads tube sizes out of customers' messages, judges the bend by your shop's limits and shelf, "
    "and drafts the reply for a person to approve."
)
MOST_JOBS = 64
HIGHEST_PORT = 65535
EPILOG = (
    "exit status: 0 done; 1 something in the input could not be used (each named, the rest done); "
    "2 wrong call or unusable shop folder.\n"
    "Nothing here can send mail: approved replies are laid down as drafts for a person to send."
)


class _Lines(argparse.HelpFormatter):
    """Each line of a text wrapped by itself: filled as one, the last would be overlooked."""

    def _fill_text(self, text: str, width: int, indent: str) -> str:
        return "\n".join(
            super(_Lines, self)._fill_text(line, width, indent) for line in text.splitlines()
        )


class _Parser(argparse.ArgumentParser):
    def error(self, message: str) -> NoReturn:
        complain(f"{message} (see `{self.prog} --help`)")
        self.exit(WRONG_CALL)


class _Version(argparse.Action):
    def __call__(self, parser: argparse.ArgumentParser, *_: object) -> NoReturn:
        # Looking up the installed version costs more than all the rest of --help.
        version = import_module("importlib.metadata").version("bendreply")
        print(f"bendreply {version}")
        parser.exit()


def build_parser() -> argparse.ArgumentParser:
    """All commands with their options."""
    parser = _Parser(
        prog="bendreply",
        description=DESCRIPTION,
        epilog=EPILOG,
        formatter_class=_Lines,
    )
    parser.add_argument("--version", action=_Version, nargs=0, help="print the version")
    parser.add_argument(
        "--shop",
        metavar="DIR",
        default=os.environ.get("BENDREPLY_SHOP") or None,
        help="shop folder (or set BENDREPLY_SHOP); default: the sample shop that comes along",
    )
    commands = parser.add_subparsers(metavar="COMMAND", required=True, parser_class=_Parser)
    _add_reading(commands)
    _add_desk(commands)
    _add_shop(commands)
    return parser


def _jobs(text: str) -> int:
    if not text.isdecimal() or not 1 <= int(text) <= MOST_JOBS:
        raise argparse.ArgumentTypeError(f"{text!r} is not a number from 1 to {MOST_JOBS}")
    return int(text)


def _port(text: str) -> int:
    if not text.isdecimal() or int(text) > HIGHEST_PORT:
        raise argparse.ArgumentTypeError(f"{text!r} is not a number from 0 to {HIGHEST_PORT}")
    return int(text)


def _inquiry_number(words: str) -> str:
    """``17`` or ``#17``; anything else is a wrong call, not an inquiry that is not there."""
    if not words.strip().removeprefix("#").isdecimal():
        raise argparse.ArgumentTypeError(f"{words!r} is no number of an inquiry")
    return words


Commands = argparse._SubParsersAction  # typeshed knows the public name of this type by no other


def _add(commands: Commands[_Parser], name: str, module: str, function: str, help: str) -> _Parser:
    parser: _Parser = commands.add_parser(
        name, help=help, description=help[0].upper() + help[1:] + "."
    )
    parser.add_argument(
        "--shop", metavar="DIR", default=argparse.SUPPRESS, help=argparse.SUPPRESS
    )  # people write it after the command, too
    parser.set_defaults(carried_out_by=(module, function))
    return parser


_WHY = "also what each number was taken for, what else was weighed, and by how much it lost"


def _add_reading(commands: Commands[_Parser]) -> None:
    demo = _add(commands, "demo", "demo", "demo", "the whole job on the demo mailbox")
    demo.add_argument(
        "--into", metavar="DIR", default="bendreply-demo", help="folder (default ./bendreply-demo)"
    )
    read = _add(commands, "read", "cli_read", "read", "read messages without storing anything")
    shown = read.add_mutually_exclusive_group()
    shown.add_argument("--json", action="store_true", help="one JSON object a message, one a line")
    shown.add_argument("--why", action="store_true", help=_WHY)
    read.add_argument(
        "paths",
        nargs="+",
        metavar="PATH",
        help=".eml, mbox, Maildir, a folder of .eml, a chat export (.jsonl), or - for standard "
        "input",
    )
    answer = _add(
        commands, "answer", "cli_read", "answer", "one pasted message: reading, decision, draft"
    )
    shown = answer.add_mutually_exclusive_group()
    shown.add_argument("--json", action="store_true", help="one JSON object")
    shown.add_argument("--why", action="store_true", help=_WHY)
    answer.add_argument("text", nargs="*", metavar="TEXT", help="default: standard input")
    explain = _add(
        commands, "explain", "cli_explain", "explain", "every figure of a bend, with its source"
    )
    explain.add_argument("--json", action="store_true", help="one JSON array, a sheet a size")
    explain.add_argument("text", nargs="*", metavar="TEXT", help="default: standard input")
    score = _add(
        commands, "score", "cli_score", "score", "how well messages labelled in gold.jsonl are read"
    )
    score.add_argument("folder", metavar="DIR", help="folder of messages with gold.jsonl")
    score.add_argument("--json", action="store_true", help="all figures as one JSON object")
    score.add_argument(
        "-v", "--verbose", action="store_true", help="every miss, message by message"
    )
    schema = _add(
        commands,
        "schema",
        "cli_read",
        "schema",
        "JSON Schema of what read and answer print with --json, or of a chat message",
    )
    schema.add_argument(
        "what",
        nargs="?",
        choices=("read", "chat"),
        default="read",
        help="chat: that of a chat message that comes in (default read)",
    )


def _add_desk(commands: Commands[_Parser]) -> None:
    collect = _add(
        commands,
        "collect",
        "cli_collect",
        "collect",
        "bring new messages in (repeatable)",
    )
    collect.add_argument(
        "sources",
        nargs="*",
        metavar="SOURCE",
        help="as PATH of read; without any, the mailbox that shop.toml names",
    )
    collect.add_argument(
        "--watch", action="store_true", help="stay, and take in what comes into the mailbox"
    )
    collect.add_argument(
        "--jobs",
        type=_jobs,
        default=1,
        metavar="N",
        help="read files with N processes at once, for a long backlog (default: 1)",
    )
    listen = _add(
        commands, "listen", "cli_listen", "listen", "take in what the chat account receives"
    )
    listen.add_argument("--once", action="store_true", help="what waits there, and end")
    backlog = _add(commands, "backlog", "cli_desk", "backlog", "what waits for a person")
    backlog.add_argument("--all", action="store_true", help="more than the 200 most urgent, too")
    show = _add(commands, "show", "cli_desk", "show", "one inquiry: evidence, findings, draft")
    correct = _add(commands, "correct", "cli_desk", "correct", "put a reading right")
    approve = _add(commands, "approve", "cli_desk", "approve", "approve a draft")
    aside = _add(commands, "set-aside", "cli_desk", "set_aside", "leave a message without a draft")
    history = _add(commands, "history", "cli_store", "history", "all that happened to an inquiry")
    picture = _add(commands, "picture", "cli_pictures", "picture", "a size drawn into a file")
    picture.add_argument(
        "--out", metavar="FILE", required=True, help="a file that ends in .svg, .png or .pdf"
    )
    picture.add_argument(
        "--size", metavar="N", type=int, default=1, help="which of several sizes (default 1)"
    )
    picture.add_argument(
        "--map", action="store_true", help="the map of the shop's limits instead of the bend"
    )
    for parser in (show, history, correct, approve, aside, picture):
        parser.add_argument(
            "id", metavar="ID", type=_inquiry_number, help="number of the inquiry, see backlog"
        )
    correct.add_argument(
        "changes",
        nargs="+",
        metavar="FIELD=VALUE",
        help='od="1 3/4 in" wall=16ga clr=57mm material=304; of several sizes: 2.wall=.095',
    )
    for parser in (correct, approve, aside):
        parser.add_argument(
            "--by", metavar="NAME", required=parser is not correct, help="who says so"
        )
    approve.add_argument(
        "--picture",
        choices=("png", "pdf"),
        help="the bend is drawn and laid beside the words, for the customer to confirm by looking",
    )
    aside.add_argument("--why", metavar="TEXT", required=True, help="for whoever looks later")
    deliver = _add(commands, "deliver", "cli_desk", "deliver", "lay approved drafts down")
    check = _add(commands, "check", "cli_store", "check", "is the store whole")
    export = _add(
        commands, "export", "cli_store", "export", "corrected messages, labelled for score"
    )
    export.add_argument("folder", metavar="DIR", help="a new folder")
    report = _add(commands, "report", "cli_report", "report", "the weekly report")
    report.add_argument(
        "--week",
        metavar="WEEK",
        help="ISO week, e.g. 2026-W47, several as 2026-W44..2026-W47, or last: the last whole one",
    )
    shown = report.add_mutually_exclusive_group()
    shown.add_argument("--json", action="store_true", help="as one JSON object")
    shown.add_argument("--csv", action="store_true", help="as CSV, one figure a row")
    report.add_argument(
        "--out", metavar="FILE", help="into FILE: .html a page to print, .csv, .json, .txt"
    )
    shown.add_argument(
        "--deliver", action="store_true", help="lay it in the mailbox as an unread message"
    )
    report.add_argument(
        "--names", action="store_true", help="with customers' addresses; else only counts"
    )
    keep = commands.add_parser("store", help="take customers' words out of the store")
    actions = keep.add_subparsers(metavar="ACTION", required=True, parser_class=_Parser)
    forget = _add(
        actions, "forget", "cli_keep", "forget", "take out one person's messages, keep the counts"
    )
    forget.add_argument("address", metavar="ADDRESS", help="the person's mail address")
    forget.add_argument("--by", metavar="NAME", help="who says so")
    reduce = _add(
        actions, "reduce", "cli_keep", "reduce", "reduce what is older than [keep] says to figures"
    )
    review = _add_review(commands)
    with_store = (
        collect,
        listen,
        backlog,
        show,
        history,
        correct,
        approve,
        aside,
        deliver,
        picture,
        review,
    )
    for parser in (*with_store, report, check, export, forget, reduce):
        parser.add_argument(
            "--store", metavar="FILE", help="the store (default: store.sqlite in the shop folder)"
        )


def _add_review(commands: Commands[_Parser]) -> _Parser:
    review = _add(commands, "review", "cli_review", "review", "the review page, in your browser")
    review.add_argument("--host", default="127.0.0.1", help="address to listen on (default: only "
                        "this computer; any other needs BENDREPLY_REVIEW_SECRET)")  # fmt: skip
    review.add_argument("--port", type=_port, default=8462, help="default 8462; 0: any free one")
    review.add_argument(
        "--name", action="append", default=[], metavar="HOST", help="a name it is called by"
    )
    review.add_argument("--certificate", metavar="FILE", help="for TLS, with --key")
    review.add_argument("--key", metavar="FILE", help="for TLS, with --certificate")
    return review


def _add_shop(commands: Commands[_Parser]) -> None:
    shop = commands.add_parser("shop", help="make or check a shop folder")
    actions = shop.add_subparsers(metavar="ACTION", required=True, parser_class=_Parser)
    new = _add(actions, "new", "cli_shop", "new", "a shop folder to edit")
    new.add_argument("folder", metavar="DIR", help="a folder that is new or empty")
    check = _add(
        actions, "check", "cli_shop", "check", "is the shop folder valid: name every fault"
    )
    check.add_argument("folder", metavar="DIR", nargs="?", help="default: the folder of --shop")
