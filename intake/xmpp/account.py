"""The connection to the chat server. The one module that knows slixmpp, which could send messages:
here it is wrapped so that it can't.
"""

from __future__ import annotations

import asyncio
import logging
import secrets
import ssl
from collections.abc import AsyncIterator, Callable
from contextlib import asynccontextmanager
from pathlib import Path
from typing import TYPE_CHECKING, Any
from xml.etree.ElementTree import Element

from slixmpp import ClientXMPP
from slixmpp.exceptions import IqError, IqTimeout
from slixmpp.xmlstream.handler import Callback
from slixmpp.xmlstream.matcher import MatchXPath

from ..desk_errors import ChatSettingsError, LostChatError
from .guard import why_refused
from .stanzas import CLIENT

if TYPE_CHECKING:
    from ...rules.shop_chat import ChatAccount

# The library's own log would hold customers' words.
logging.getLogger("slixmpp").addHandler(logging.NullHandler())
logging.getLogger("slixmpp").propagate = False

FAREWELL_S = 2.0


class MutedClient(ClientXMPP):
    """A client whose every write passes the guard."""

    def __init__(self, jid: str, password: str, *, encrypted: bool) -> None:
        super().__init__(jid, password)
        self._needs_tls = encrypted
        self.dropped: list[str] = []
        """Why something was not written. Nothing that it held."""
        # Requests to see our presence are for a person to answer, in a program of their own.
        self.auto_authorize = None
        self.auto_subscribe = False

    @property
    def bare_wire(self) -> bool:
        """Whether what is written could be read on the way, and must not be."""
        tls = self.transport is not None and self.transport.get_extra_info("ssl_object") is not None
        return self._needs_tls and not tls

    def send_raw(self, data: str | bytes) -> None:
        """Write what the guard allows; anything else is dropped, and the reason kept."""
        own = {self.requested_jid.bare, self.requested_jid.domain, self.boundjid.full}
        why = why_refused(data, encrypted=not self.bare_wire, own=own)
        if why is not None:
            self.dropped.append(why)
            return
        super().send_raw(data)


class Connection:
    """A session that is logged in: what comes in, and questions to our own server."""

    def __init__(self, client: MutedClient, lost: asyncio.Future[str], patience: float) -> None:
        self._client, self._lost, self._patience = client, lost, patience

    def hear(self, told: Callable[[Element], None]) -> None:
        """Call ``told`` with each message stanza from now on."""
        self._client.register_handler(
            Callback("messages", MatchXPath(f"{CLIENT}message"), lambda one: told(one.xml))
        )

    def appear(self) -> None:
        """Be available, so that the server hands over what waits and what comes."""
        self._client.send_presence()

    async def ask(self, kind: str, to: str | None, question: Element) -> Element | None:
        """The answer of our server; None where it refuses. Raises LostChatError."""
        iq = self._client.Iq()
        iq["type"] = kind
        if to is not None:
            iq["to"] = to
        iq.append(question)
        asked: asyncio.Future[Any] = iq.send(timeout=self._patience)  # type: ignore[no-untyped-call]
        await asyncio.wait((asked, self._lost), return_when=asyncio.FIRST_COMPLETED)
        if not asked.done():
            asked.cancel()
            self.check()
        try:
            answer: Element = (await asked).xml
        except IqError:
            return None
        except IqTimeout as error:
            raise LostChatError(
                f"the chat server does not answer: given up after {self._patience:.0f} s"
            ) from error
        return answer

    def check(self) -> None:
        """Raises LostChatError where the connection is gone."""
        if self._lost.done():
            raise LostChatError(self._lost.result())

    async def wait(self, seconds: float) -> None:
        """Wait so long, or until the connection is gone: then raises LostChatError."""
        await asyncio.wait((self._lost,), timeout=seconds)
        self.check()

    async def features(self, of: str) -> set[str]:
        """What our server, or our account there, can do (XEP-0030)."""
        answer = await self.ask("get", of, Element("{http://jabber.org/protocol/disco#info}query"))
        if answer is None:
            return set()
        found = answer.iter("{http://jabber.org/protocol/disco#info}feature")
        return {one.get("var", "") for one in found}


@asynccontextmanager
async def connected(
    settings: ChatAccount, password: str, shop_folder: Path | None
) -> AsyncIterator[Connection]:
    """A session, closed politely at the end.

    Raises ChatSettingsError (wrong password, a certificate that can't be trusted) or LostChatError
    (no network, or a server that went away: trying again may help), each one sentence.
    """
    trust = _trust(settings, shop_folder)
    resource = f"bendreply-{secrets.token_hex(4)}"
    client = MutedClient(
        f"{settings.jid}/{resource}", password, encrypted=settings.security != "plain"
    )
    client.ssl_context = trust
    client.enable_direct_tls = settings.security == "tls"
    client.enable_starttls = settings.security == "starttls"
    client.enable_plaintext = settings.security == "plain"
    client.plugin["feature_mechanisms"].config["unencrypted_plain"] = settings.security == "plain"
    loop = asyncio.get_running_loop()
    lost: asyncio.Future[str] = loop.create_future()
    begun: asyncio.Future[None] = loop.create_future()
    _watch(client, settings, begun, lost)
    host = None if settings.host is None else (settings.host, settings.usual_port)
    try:
        client.connect(*(host or ()))
        await asyncio.wait(
            (begun, lost),
            timeout=settings.patience_seconds,
            return_when=asyncio.FIRST_COMPLETED,
        )
        if begun.done():
            begun.result()
        if lost.done():
            raise LostChatError(lost.result())
        if not begun.done():
            raise LostChatError(
                f"the chat server of {settings.jid} does not answer: given up after "
                f"{settings.patience_seconds} s"
            )
        yield Connection(client, lost, settings.patience_seconds)
    finally:
        client.cancel_connection_attempt()
        if client.transport is not None:
            await client.disconnect(wait=FAREWELL_S)
        for future in (begun, lost):
            future.cancel()


def _watch(
    client: MutedClient,
    settings: ChatAccount,
    begun: asyncio.Future[None],
    lost: asyncio.Future[str],
) -> None:
    """Let the library's events settle whether the session has begun, or is gone, and why."""

    def begin(_: object) -> None:
        if not begun.done():
            begun.set_result(None)

    def refuse(sentence: str) -> None:
        if not begun.done():
            begun.set_exception(ChatSettingsError(sentence))
        client.abort()

    def lose(sentence: str) -> None:
        if not lost.done():
            lost.set_result(sentence)
        client.cancel_connection_attempt()

    def failed(why: object) -> None:
        if isinstance(why, ssl.SSLCertVerificationError):
            distrust(why)
            return
        reason = getattr(why, "strerror", None) or str(why)
        lose(f"no connection to the chat server of {settings.jid}: {reason}")

    def distrust(why: ssl.SSLError) -> None:
        said = getattr(why, "verify_message", None) or why.reason or str(why)
        refuse(
            f"the certificate of the chat server of {settings.jid} can't be trusted: {said}; "
            "nothing was sent to it"
        )

    def gone(_: object) -> None:
        lose(f"the chat server of {settings.jid} broke off the connection")

    def no_login(_: object) -> None:
        if client.bare_wire:
            refuse(
                f"the chat server of {settings.jid} offers no encryption, so that no password was "
                "sent to it"
            )
        elif not client.plugin["feature_mechanisms"].attempted_mechs:
            refuse(f"the chat server of {settings.jid} takes no password in a way that we know")
        else:
            refuse(f"the chat server does not let {settings.jid} in with this password")

    events: dict[str, Callable[[Any], None]] = {
        "session_start": begin,
        "connection_failed": failed,
        "ssl_invalid_chain": distrust,
        "failed_all_auth": no_login,
        "disconnected": gone,
    }
    for name, handler in events.items():
        client.add_event_handler(name, handler)


def _trust(settings: ChatAccount, shop_folder: Path | None) -> ssl.SSLContext:
    context = ssl.create_default_context()
    if settings.ca_file is not None:
        path = (shop_folder or Path()) / settings.ca_file
        try:
            context.load_verify_locations(path)
        except ssl.SSLError as error:
            raise ChatSettingsError(f"ca_file: {path} holds no certificate") from error
        except OSError as error:
            raise ChatSettingsError(f"ca_file: {path} can't be read: {error.strerror}") from error
    return context
