"""Listening: what the archive holds since last time, then what comes in, each message once.

The order is what nothing is lost by. We appear first, so that what comes from then on reaches us,
but keep it until the archive has been gone through: the latest message in the store then tells how
far back the next run has to look, wherever this one is cut short.
"""

from __future__ import annotations

import asyncio
import contextlib
import secrets
from collections.abc import Callable, Sequence
from dataclasses import dataclass, field
from datetime import UTC, datetime, timedelta, tzinfo
from pathlib import Path
from typing import TYPE_CHECKING

from ...rules.shop_chat import ChatAccount
from ..chat import ChatLine
from ..desk_errors import ChatSettingsError, LostChatError, StoreError
from ..secret import from_command, from_variable
from .stanzas import MAM, RSM, Account, archived, live

if TYPE_CHECKING:
    from xml.etree.ElementTree import Element

    from .account import Connection

PAGE = 100
"""Messages that the archive is asked for at a time."""
OVERLAP = timedelta(days=1)
"""How much of what is known is looked at again: clocks differ, and a message of which a fault of
ours kept us is tried once more."""
SIGN_OF_LIFE_S = 60.0
"""After so long without a word the server is asked whether it is there."""
FIRST_WAIT_S, LONGEST_WAIT_S = 1.0, 300.0
"""Before the connection is tried again: twice as long each time."""

Take = Callable[[Sequence[ChatLine]], None]
"""Takes messages into the store. Runs in a thread of its own, one call at a time."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Listener:
    """What listening needs from outside."""

    settings: ChatAccount
    shop_folder: Path | None
    zone: tzinfo
    take: Take
    latest: Callable[[], datetime | None]
    """When the latest message in the store was written that came by this account."""
    told: Callable[[str], None]


def password_of(settings: ChatAccount) -> str:
    """The account's password. Raises ChatSettingsError, which never holds any of it."""
    if settings.password_env is not None:
        return from_variable(settings.password_env, "chat account", ChatSettingsError)
    assert settings.password_command is not None, "the settings name exactly one"
    return from_command(settings.password_command, "password_command", ChatSettingsError)


async def listen(listener: Listener, *, once: bool = False) -> None:
    """Take messages in until interrupted; with ``once``, what is there, and end.

    A lost connection is told and tried again. What a person has to mend is raised as
    ChatSettingsError.
    """
    password, wait = password_of(listener.settings), FIRST_WAIT_S
    warned = False
    came: asyncio.Queue[ChatLine] = asyncio.Queue()
    while True:
        session = _Session(listener, came, warned)
        try:
            await session.run(password, once=once)
            return
        except LostChatError as error:
            if once:
                raise
            wait = FIRST_WAIT_S if session.caught_up else wait  # it worked in between
            listener.told(f"{error}; trying again in {wait:.0f} s")
            await asyncio.sleep(wait)
            wait = min(wait * 2, LONGEST_WAIT_S)
            warned = session.warned


@dataclass(slots=True)
class _Session:
    """One connection, from login to its end."""

    listener: Listener
    came: asyncio.Queue[ChatLine]
    """What was heard and not taken in yet; it outlives a connection that breaks."""
    warned: bool
    """That the server keeps no archive."""
    caught_up: bool = False
    _query: str = field(default_factory=lambda: secrets.token_hex(8))
    _page: list[ChatLine] = field(default_factory=list)

    async def run(self, password: str, *, once: bool) -> None:
        from .account import connected

        listener = self.listener
        settings = listener.settings
        own = Account(settings.jid, settings.channel, listener.zone)
        async with connected(settings, password, listener.shop_folder) as connection:
            connection.hear(lambda stanza: self._hear(stanza, own))
            can = await connection.features(own.jid)
            if "urn:xmpp:carbons:2" in await connection.features(own.domain):
                await connection.ask("set", None, _element("{urn:xmpp:carbons:2}enable"))
            connection.appear()
            if MAM in can:
                await self._catch_up(connection)
            elif not self.warned:
                self.warned = True
                listener.told(
                    f"the chat server keeps no archive for {own.jid} (XEP-0313): what it hands "
                    "over while this computer fails is lost"
                )
            self.caught_up = True
            if once:
                await self._ask_whether_there(connection, own)  # what waited has come before this
                await self._use_what_came()
            else:
                await self._stay(connection, own)

    def _hear(self, stanza: Element, own: Account) -> None:
        found = archived(stanza, self._query, own)
        if found is not None:
            if found.line is not None:
                self._page.append(found.line)
        elif (line := live(stanza, datetime.now(UTC), own)) is not None:
            self.came.put_nowait(line)

    async def _catch_up(self, connection: Connection) -> None:
        """What the archive holds since the latest message that is stored, oldest first."""
        latest = await asyncio.to_thread(self.listener.latest)
        since = self.listener.settings.since
        start = None
        if since is not None:
            start = datetime(since.year, since.month, since.day, tzinfo=self.listener.zone)
        if latest is not None:
            again = min(latest, datetime.now(UTC)) - OVERLAP
            start = again if start is None else max(start, again)
        after: str | None = None
        while True:
            self._page.clear()
            answer = await connection.ask("set", None, _archive_query(self._query, start, after))
            fin = None if answer is None else answer.find(f"{{{MAM}}}fin")
            if fin is None:
                raise LostChatError("the chat server did not say what its archive holds")
            if self._page:
                await self._use(list(self._page))
            after = fin.findtext(f"{RSM}set/{RSM}last")
            if fin.get("complete") == "true" or not after:
                return

    async def _stay(self, connection: Connection, own: Account) -> None:
        lost = asyncio.ensure_future(self._watch(connection, own))
        try:
            while True:
                came = asyncio.ensure_future(self.came.get())
                await asyncio.wait((came, lost), return_when=asyncio.FIRST_COMPLETED)
                if came.done():
                    await self._use([came.result(), *self._rest()])
                    continue
                came.cancel()
                lost.result()  # raises
        finally:
            lost.cancel()
            with contextlib.suppress(asyncio.CancelledError, LostChatError):
                await lost
            if lines := self._rest():
                self.listener.take(lines)

    async def _watch(self, connection: Connection, own: Account) -> None:
        while True:
            await connection.wait(SIGN_OF_LIFE_S)
            await self._ask_whether_there(connection, own)

    async def _ask_whether_there(self, connection: Connection, own: Account) -> None:
        await connection.ask("get", own.domain, _element("{urn:xmpp:ping}ping"))

    async def _use_what_came(self) -> None:
        if lines := self._rest():
            await self._use(lines)

    def _rest(self) -> list[ChatLine]:
        lines = []
        while not self.came.empty():
            lines.append(self.came.get_nowait())
        return lines

    async def _use(self, lines: list[ChatLine]) -> None:
        """Take messages in; a store that can't be written just now is waited for."""
        wait = FIRST_WAIT_S
        while True:
            work = asyncio.ensure_future(asyncio.to_thread(self.listener.take, lines))
            try:
                await asyncio.shield(work)
                return
            except asyncio.CancelledError:
                await work  # a message is taken in whole
                raise
            except StoreError as error:
                self.listener.told(f"{error}; trying again in {wait:.0f} s")
                await asyncio.sleep(wait)
                wait = min(wait * 2, LONGEST_WAIT_S)


def _archive_query(query: str, start: datetime | None, after: str | None) -> Element:
    """XEP-0313 4.1, with a form (XEP-0004) for the time and a page (XEP-0059)."""
    asked = _element(f"{{{MAM}}}query", queryid=query)
    form = _element("{jabber:x:data}x", type="submit")
    values = {"FORM_TYPE": MAM}
    if start is not None:
        values["start"] = f"{start.astimezone(UTC):%Y-%m-%dT%H:%M:%SZ}"
    for name, value in values.items():
        kind = {"type": "hidden"} if name == "FORM_TYPE" else {}
        one = _element("{jabber:x:data}field", var=name, **kind)
        one.append(_element("{jabber:x:data}value", value))
        form.append(one)
    asked.append(form)
    page = _element(f"{RSM}set")
    page.append(_element(f"{RSM}max", str(PAGE)))
    if after is not None:
        page.append(_element(f"{RSM}after", after))
    asked.append(page)
    return asked


def _element(tag: str, text: str | None = None, **attributes: str) -> Element:
    from xml.etree.ElementTree import Element

    made = Element(tag, attributes)
    made.text = text
    return made
