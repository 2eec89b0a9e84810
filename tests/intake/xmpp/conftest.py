"""A real XMPP server (Prosody) on loopback, a shop that listens there, and people who write."""

from __future__ import annotations

import asyncio
import os
import shutil
import ssl
import tempfile
from collections.abc import Iterator, Sequence
from contextlib import contextmanager
from dataclasses import dataclass
from pathlib import Path
from xml.etree.ElementTree import Element

import pytest

from bendreply.intake import desk
from bendreply.intake.cli import main
from bendreply.intake.inquiry import Inquiry
from bendreply.intake.store import open_store

from ...servers import prosody
from ...servers.prosody import HOST, PASSWORD, SHOP, Prosody

MUST = "BENDREPLY_NEEDS_SERVERS"
"""Where this is set, a missing server is a failure and no reason to skip."""
CONTACTS = {f"lou{number}": f"secret-{number}" for number in range(20)}


@contextmanager
def running(**settings: object) -> Iterator[Prosody]:
    """A server of its own, gone afterwards. Skips where Prosody is not installed."""
    if lacking := prosody.missing():
        sentence = f"a real XMPP server is needed: apt-get install {lacking}"
        if os.environ.get(MUST):
            pytest.fail(sentence)
        pytest.skip(sentence)
    # Not below pytest's own folder: a server that is not root has to reach it.
    folder = Path(tempfile.mkdtemp(prefix="bendreply-prosody-"))
    folder.chmod(0o755)
    server = Prosody(folder, **settings)  # type: ignore[arg-type]
    try:
        yield server.prepare({SHOP: PASSWORD, **CONTACTS}).start()
    finally:
        server.stop()
        shutil.rmtree(folder)


@pytest.fixture
def server() -> Iterator[Prosody]:
    """A server with an archive."""
    with running() as one:
        yield one


@dataclass(frozen=True)
class Shop:
    """A shop folder whose shop.toml names the account."""

    folder: Path
    capsys: pytest.CaptureFixture[str]

    def run(self, *call: str) -> tuple[int, str, str]:
        """One command of the program: exit status, output, complaints."""
        self.capsys.readouterr()
        status = main(["--shop", str(self.folder), *call])
        out, err = self.capsys.readouterr()
        return status, out, err

    def inquiries(self) -> list[Inquiry]:
        with open_store(self.folder / "store.sqlite") as store:
            return [desk.show(store, one.id) for one in desk.askings(store)]


def new_shop(tmp_path: Path, capsys: pytest.CaptureFixture[str], settings: str) -> Shop:
    """A shop folder with those settings of the account."""
    folder = tmp_path / "shop"
    assert main(["shop", "new", str(folder)]) == 0
    with (folder / "shop.toml").open("a", encoding="utf-8") as file:
        file.write(f"\n[chat.account]\n{settings}")
    return Shop(folder, capsys)


def settings_of(server: Prosody, **other: str) -> str:
    """The settings that fit a server; ``other`` replaces some, None leaves one out."""
    values: dict[str, str | None] = {
        "jid": f'"{SHOP}@{HOST}"',
        "host": '"127.0.0.1"',
        "port": str(server.port),
        "password_env": '"CHAT_PASSWORD"',
        "ca_file": f'"{server.certificate}"',
        "patience_seconds": "20",
    }
    values |= other
    return "".join(f"{key} = {value}\n" for key, value in values.items() if value is not None)


@pytest.fixture(autouse=True)
def _surroundings(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.delenv("BENDREPLY_SHOP", raising=False)
    monkeypatch.setenv("CHAT_PASSWORD", PASSWORD)
    monkeypatch.setenv("COLUMNS", "100")


@pytest.fixture
def shop(server: Prosody, tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> Shop:
    return new_shop(tmp_path, capsys, settings_of(server))


class Contact:
    """A customer's chat program: writes, and waits until the server has it."""

    def __init__(self, server: Prosody, name: str) -> None:
        self._server, self._name, self._client = server, name, None
        self._gone: asyncio.Future[None] | None = None

    async def say(self, text: str, *more: Element, id: str | None = None) -> None:
        """Write one message; after a broken connection once more, under the same id."""
        for _ in range(60):
            try:
                await self._say(text, more, id)
            except (OSError, TimeoutError):
                await self.leave()
                await asyncio.sleep(0.5)
            else:
                return
        raise AssertionError("the server took no message for a long time")

    async def _say(self, text: str, more: Sequence[Element], id: str | None) -> None:
        client = await self._logged_in()
        message = client.make_message(f"{SHOP}@{HOST}", mbody=text, mtype="chat")
        if id is not None:
            message["id"] = id
        for one in more:
            message.append(one)
        message.send()
        ping = client.Iq()
        ping["type"], ping["to"] = "get", HOST
        ping.append(Element("{urn:xmpp:ping}ping"))
        # Stanzas are handled in their order (RFC 6120 10.1): with this answer it is there.
        answer = asyncio.ensure_future(ping.send(timeout=30))
        await asyncio.wait((answer, self._gone), return_when=asyncio.FIRST_COMPLETED)
        if not answer.done() or answer.exception() is not None:
            answer.cancel()
            raise ConnectionError("no answer")

    async def _logged_in(self):
        import slixmpp

        if self._client is None:
            client = slixmpp.ClientXMPP(
                f"{self._name}@{HOST}/pc", CONTACTS[self._name], sasl_mech="PLAIN"
            )
            client.ssl_context = ssl.create_default_context(cafile=str(self._server.certificate))
            client.enable_direct_tls = False
            loop = asyncio.get_running_loop()
            begun, self._gone = loop.create_future(), loop.create_future()
            gone = self._gone
            client.add_event_handler("session_start", lambda _: begun.set_result(None))
            for event in ("connection_failed", "disconnected"):
                client.add_event_handler(event, lambda _: gone.done() or gone.set_result(None))
            client.connect("127.0.0.1", self._server.port)
            await asyncio.wait((begun, gone), timeout=30, return_when=asyncio.FIRST_COMPLETED)
            if not begun.done():
                client.cancel_connection_attempt()
                client.abort()
                raise ConnectionError("no session")
            self._client = client
        return self._client

    async def leave(self) -> None:
        """Log out."""
        client, self._client = self._client, None
        if client is not None:
            client.cancel_connection_attempt()
            if client.transport is not None:
                await client.disconnect(wait=1)


def say(server: Prosody, name: str, *texts: str) -> None:
    """Log in, write, log out."""

    async def run() -> None:
        contact = Contact(server, name)
        for text in texts:
            await contact.say(text)
        await contact.leave()

    asyncio.run(run())
