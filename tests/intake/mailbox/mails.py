"""Customers' mail as a server gets it."""

from __future__ import annotations

from datetime import UTC, datetime, timedelta
from email.message import EmailMessage
from email.utils import format_datetime

FIRST = datetime(2026, 11, 16, 10, 0, tzinfo=UTC)
ASKS = "Please quote a mandrel for 1.75 in OD x .095 in wall DOM tube, 5.25 in CLR."


def mail(
    name: str = "ada",
    body: str = ASKS,
    *,
    number: int = 1,
    subject: str = "Mandrel",
    after: timedelta = timedelta(),
    **fields: str,
) -> bytes:
    """A mail of ``name`` at example.net with Message-ID ``name-number@example.net``."""
    made = EmailMessage()
    made["From"] = f"{name.title()} <{name}@example.net>"
    made["To"] = "sales@fernhollow.example.com"
    made["Subject"] = subject
    made["Date"] = format_datetime(FIRST + after)
    made["Message-ID"] = f"<{name}-{number}@example.net>"
    for field, value in fields.items():
        made[field.replace("_", "-")] = value
    made.set_content(body)
    return made.as_bytes().replace(b"\n", b"\r\n")
