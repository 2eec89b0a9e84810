"""``report``: the weekly report on screen, as JSON, or into a file."""

from __future__ import annotations

import argparse
from datetime import UTC, datetime
from pathlib import Path
from typing import TYPE_CHECKING

from .cli_common import WRONG_CALL, RefusedError
from .cli_desk import opened

if TYPE_CHECKING:
    from ..rules.shop import Shop
    from .report import Report
    from .report_count import Week
    from .store import Store


def report(args: argparse.Namespace) -> int:
    """Count one week and show it."""
    from .report import as_json
    from .report_count import Week

    try:
        week = Week.parse(args.week) if args.week else None
    except ValueError as error:
        raise RefusedError(f"--week: {error}", status=WRONG_CALL) from error
    with opened(args) as (shop, store):
        counted = count(store, shop, week)
    if args.json:
        text = as_json(counted) + "\n"
    elif args.out:
        from .screen_report import report_text

        text = report_text(counted)
    else:
        from .screen import console
        from .screen_report import report_view

        report_view(console(), counted)
        return 0
    if args.out is None:
        print(text, end="")
    else:
        _write(Path(args.out), text)
    return 0


def count(store: Store, shop: Shop, week: Week | None = None) -> Report:
    """The report of an open store, by the shop's clocks."""
    from .report import received, weekly_report

    with store.reading() as reader:
        messages = [received(asking) for asking in reader.askings()]
    return weekly_report(
        messages, zone=shop.zone, zone_name=shop.time_zone, now=datetime.now(UTC), week=week
    )


def _write(file: Path, text: str) -> None:
    try:
        file.write_text(text, encoding="utf-8")
    except OSError as error:
        raise RefusedError(f"{file}: the report can't be written ({error.strerror})") from error
    print(f"The report lies in {file}.")
