"""The mailbox watched: new mail as it comes (IDLE, RFC 2177), and back again after a break."""

from __future__ import annotations

import time
from collections.abc import Callable
from pathlib import Path
from typing import TYPE_CHECKING

from ...rules.shop_mailbox import Mailbox
from ..desk_errors import LostMailboxError
from .access import mailbox
from .folders import open_readonly

if TYPE_CHECKING:
    from imapclient import IMAPClient

IDLE_S = 300.0
"""How long one IDLE lasts. Servers may end it after 30 minutes (RFC 2177), routers much sooner; and
the other folders are looked at in between.
"""
POLL_S = 60.0
"""How often a server without IDLE is asked."""
FIRST_WAIT_S, LONGEST_WAIT_S = 1.0, 300.0
"""Before the connection is tried again: twice as long each time."""


def watch(
    settings: Mailbox,
    shop_folder: Path | None,
    work: Callable[[IMAPClient], int],
    told: Callable[[str], None],
    *,
    sleep: Callable[[float], None] = time.sleep,
    ended: Callable[[], bool] = lambda: False,
) -> None:
    """Do ``work`` at once and whenever something comes in, until ``ended`` or interrupted.

    ``work`` returns the UID up to which the first inbox is read. A lost connection is told and
    tried again; what a person has to mend (a wrong password) is raised as it is.
    """
    wait = FIRST_WAIT_S
    while not ended():
        try:
            with mailbox(settings, shop_folder) as client:
                while not ended():
                    read_to = work(client)
                    wait = FIRST_WAIT_S  # it works again
                    if not ended():
                        _until_something_comes(client, settings, read_to, sleep)
        except LostMailboxError as error:
            told(f"{error}; trying again in {wait:.0f} s")
            sleep(wait)
            wait = min(wait * 2, LONGEST_WAIT_S)


def _until_something_comes(
    client: IMAPClient, settings: Mailbox, read_to: int, sleep: Callable[[float], None]
) -> None:
    _, end = open_readonly(client, settings.inboxes[0])
    if end > read_to:  # it came between the reading and now: no IDLE would tell
        return
    if not client.has_capability("IDLE"):
        sleep(POLL_S)
        return
    client.idle()
    begun = time.monotonic()
    while (left := begun + IDLE_S - time.monotonic()) > 0:
        said = client.idle_check(timeout=left)
        # Nothing said before the time is up: the connection is gone, which idle_done will find.
        if not said or any(b"EXISTS" in one for one in said):
            break
    client.idle_done()
