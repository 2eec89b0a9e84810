"""``report``: the weekly report on screen, in a file, or in the mailbox."""

from __future__ import annotations

import argparse
from pathlib import Path
from typing import TYPE_CHECKING

from .cli_common import WRONG_CALL, RefusedError, printable
from .cli_desk import opened

if TYPE_CHECKING:
    from ..rules.shop import Shop
    from .report import Report
    from .report_weeks import Weeks
    from .store import Store


FORMS = {
    ".html": "html", ".htm": "html", ".csv": "csv", ".json": "json", ".txt": "text", "": "text",
}  # fmt: skip
"""As what a report is written, by how the file's name ends."""


def report(args: argparse.Namespace) -> int:
    """Count some weeks and show them."""
    weeks, form = _weeks(args.week), _form(args)
    with opened(args) as (shop, store):
        counted = count(store, shop, weeks)
        if args.deliver:
            from .report_mail import deliver_report

            print(printable(deliver_report(counted, shop, names=args.names)))
            if args.out is None:
                return 0
    if form is None:
        from .screen import console
        from .screen_report import report_view

        report_view(console(), counted, names=args.names)
    elif args.out is None:
        print(_written(counted, form, names=args.names), end="")
    else:
        _write(Path(args.out), _written(counted, form, names=args.names))
    return 0


def _weeks(text: str | None) -> Weeks | str | None:
    from .report import LAST_WEEK
    from .report_weeks import Weeks

    if text is None or text.casefold() == LAST_WEEK:
        return text and LAST_WEEK
    try:
        return Weeks.parse(text)
    except ValueError as error:
        raise RefusedError(f"--week: {error}", status=WRONG_CALL) from error


def count(store: Store, shop: Shop, weeks: Weeks | str | None = None) -> Report:
    """The report of an open store, by the shop's clocks."""
    from .report import utc_now, weekly_report

    return weekly_report(store, shop, utc_now(), weeks)


def _form(args: argparse.Namespace) -> str | None:
    """As what it is written: as told, else by the name of the file; None on screen."""
    if args.json or args.csv:
        return "json" if args.json else "csv"
    if args.out is None:
        return None
    form = FORMS.get(Path(args.out).suffix.casefold())
    if form is None:
        raise RefusedError(
            f"{args.out}: the report can't be written so; end the name in .html (a page to print, "
            "also to PDF), .csv, .json or .txt",
            status=WRONG_CALL,
        )
    return form


def _written(counted: Report, form: str, *, names: bool) -> str:
    match form:
        case "json":
            from .report_json import as_json

            return as_json(counted, names=names) + "\n"
        case "csv":
            from .report_json import as_csv

            return as_csv(counted, names=names)
        case "html":
            from .report_html import as_html

            return as_html(counted, names=names)
    from .screen_report import report_text

    return report_text(counted, names=names)


def _write(file: Path, text: str) -> None:
    try:
        # CSV has its own line ends (RFC 4180).
        file.write_text(text, encoding="utf-8", newline="")
    except OSError as error:
        raise RefusedError(f"{file}: the report can't be written ({error.strerror})") from error
    print(f"The report lies in {file}.")
