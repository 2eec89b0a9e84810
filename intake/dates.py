"""When a mail was sent: the Date header in any form that leaves no doubt (RFC 5322 3.3)."""

from __future__ import annotations

import re
from datetime import UTC, date, datetime, timedelta, timezone
from email.utils import parsedate_to_datetime

_MONTHS = "jan feb mar apr may jun jul aug sep oct nov dec".split()
_USUAL = re.compile(
    r"(?:[A-Za-z]{3},? )? ?(\d{1,2}) ([A-Za-z]{3}) (\d{4})"
    r" (\d\d):(\d\d)(?::(\d\d))? ([+-])(\d\d)(\d\d)"
)
_LONGEST = 120
_YEARS = range(1900, 3000)
"""RFC 5322 3.3 has none before 1900; days are counted from the others, past year 9999 from none."""


def parse_date(text: str, faults: list[str]) -> tuple[datetime | None, date | None]:
    """(the moment in UTC, the calendar day at the sender's clock); (None, None) where unreadable.

    A date without a time zone is taken as UTC, and that is named in ``faults``.
    """
    local = _usual(text) or _by_email(text[:_LONGEST]) or _by_dateutil(text[:_LONGEST])
    if local is None or local.year not in _YEARS:
        faults.append(f"the Date {text[:60]!r} can't be read")
        return None, None
    if local.tzinfo is None:
        # "-0000" too: RFC 5322 3.3 has it say "UTC, and nothing about the sender's clock".
        if "-0000" not in text:
            faults.append("the Date has no time zone: taken as UTC")
        local = local.replace(tzinfo=UTC)
    try:
        return local.astimezone(UTC), local.date()
    except OverflowError:
        faults.append(f"the Date {text[:60]!r} can't be read")
        return None, None


def _usual(text: str) -> datetime | None:
    match = _USUAL.match(text)
    if match is None or match[2].lower() not in _MONTHS:
        return None
    day, month, year = int(match[1]), _MONTHS.index(match[2].lower()) + 1, int(match[3])
    offset = timedelta(hours=int(match[8]), minutes=int(match[9]))
    if match[7] == "-":
        if not offset:
            return None
        offset = -offset
    try:
        zone = UTC if not offset else timezone(offset)
        return datetime(
            year, month, day, int(match[4]), int(match[5]), min(int(match[6] or 0), 59), tzinfo=zone
        )
    except ValueError:
        return None


def _by_email(text: str) -> datetime | None:
    """The old forms: zone names, two-digit years, a missing comma."""
    try:
        return parsedate_to_datetime(text)
    except (ValueError, TypeError, IndexError, OverflowError):
        return None


def _by_dateutil(text: str) -> datetime | None:
    """Any form that says day, month and year, and says them in one way only."""
    from dateutil.parser import ParserError, parse

    if not re.search(r"\d", text):
        return None
    readings = set()
    # What the text leaves out comes from the default: two defaults show that something is out.
    # Two orders of day and month show that "03/04/2026" has two readings.
    for default in (datetime(2001, 3, 7), datetime(2004, 9, 21)):  # noqa: DTZ001 (parts only)
        for day_first in (False, True):
            try:
                readings.add(
                    parse(text, default=default, dayfirst=day_first, tzinfos=_no_such_zone)
                )
            except (ParserError, ValueError, ArithmeticError, TypeError, AttributeError):
                return None
    return readings.pop() if len(readings) == 1 else None


def _no_such_zone(_name: str | None, offset: int | None) -> timezone | None:
    """Only numbers count as a zone: "IST" is three of them."""
    if offset is None or abs(offset) >= 86400:
        return None
    return timezone(timedelta(seconds=offset))
