"""A real IMAP server (Dovecot) on loopback, and a shop whose mailbox is there."""

from __future__ import annotations

import os
import shutil
import ssl
import tempfile
from collections.abc import Callable, Iterator
from contextlib import contextmanager
from dataclasses import dataclass
from pathlib import Path

import pytest
from imapclient import IMAPClient

from bendreply.intake.cli import main

from ...servers import dovecot
from ...servers.dovecot import PASSWORD, USER, Dovecot

MUST = "BENDREPLY_NEEDS_SERVERS"
"""Where this is set, a missing server is a failure and no reason to skip."""


@contextmanager
def running(prepare: Callable[[Path], str] | None = None, **settings: object) -> Iterator[Dovecot]:
    """A server of its own, gone afterwards. Skips where Dovecot is not installed.

    ``prepare`` puts files into its folder and gives further lines of its configuration.
    """
    if lacking := dovecot.missing():
        sentence = f"a real IMAP server is needed: apt-get install {lacking}"
        if os.environ.get(MUST):
            pytest.fail(sentence)
        pytest.skip(sentence)
    # Not below pytest's own folder: a server that is not root has to reach it.
    folder = Path(tempfile.mkdtemp(prefix="bendreply-dovecot-"))
    folder.chmod(0o755)
    if prepare is not None:
        settings["more"] = prepare(folder)
    server = Dovecot(folder, **settings)  # type: ignore[arg-type]
    try:
        yield server.start()
    finally:
        server.stop()
        shutil.rmtree(folder)


@pytest.fixture(scope="session")
def shared_server() -> Iterator[Dovecot]:
    """One server for all tests that leave no trace in it; see ``server``."""
    with running() as server:
        yield server


@pytest.fixture
def server(shared_server: Dovecot) -> Dovecot:
    """The server with an empty mailbox."""
    with the_mail(shared_server) as client:
        for _, _, name in client.list_folders():
            client.select_folder(name)
            if uids := client.search():
                client.delete_messages(uids)
                client.expunge()
    return shared_server


@contextmanager
def the_mail(server: Dovecot) -> Iterator[IMAPClient]:
    """The shop's mailbox as its owner's mail program sees it."""
    context = ssl.create_default_context(cafile=str(server.certificate))
    with IMAPClient("127.0.0.1", port=server.tls_port, ssl_context=context) as client:
        client.login(USER, PASSWORD)
        yield client


@dataclass(frozen=True)
class Shop:
    """A shop folder whose shop.toml names the server."""

    folder: Path
    capsys: pytest.CaptureFixture[str]

    def run(self, *call: str) -> tuple[int, str, str]:
        """One command of the program: exit status, output, complaints."""
        self.capsys.readouterr()
        status = main(["--shop", str(self.folder), *call])
        out, err = self.capsys.readouterr()
        return status, out, err

    def set(self, line: str) -> None:
        """One more line of the mailbox settings, which stand last in shop.toml."""
        with (self.folder / "shop.toml").open("a", encoding="utf-8") as file:
            file.write(f"{line}\n")


def settings_of(server: Dovecot, port: int | None = None) -> str:
    """The mailbox settings for a server."""
    return (
        f'\n[mailbox]\nhost = "127.0.0.1"\nport = {port or server.tls_port}\nuser = "{USER}"\n'
        f'password_env = "SHOP_PASSWORD"\nca_file = "{server.certificate}"\n'
    )


def new_shop(tmp_path: Path, settings: str, capsys: pytest.CaptureFixture[str]) -> Shop:
    """A shop folder with those mailbox settings."""
    folder = tmp_path / "shop"
    assert main(["shop", "new", str(folder)]) == 0
    shop = Shop(folder, capsys)
    shop.set(settings)
    return shop


@pytest.fixture(autouse=True)
def _surroundings(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.delenv("BENDREPLY_SHOP", raising=False)
    monkeypatch.setenv("SHOP_PASSWORD", PASSWORD)
    monkeypatch.setenv("COLUMNS", "100")


@pytest.fixture
def shop(server: Dovecot, tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> Shop:
    """A shop that collects from the server."""
    return new_shop(tmp_path, settings_of(server), capsys)


def lay(
    server: Dovecot, *mails: bytes, folder: str = "INBOX", flags: tuple[bytes, ...] = ()
) -> None:
    """Mails that come into a folder."""
    with the_mail(server) as client:
        for one in mails:
            client.append(folder, one, flags)


def in_folder(server: Dovecot, folder: str) -> list[bytes]:
    """All mails of a folder, in order, looked at without leaving a mark."""
    with the_mail(server) as client:
        client.select_folder(folder, readonly=True)
        found = client.fetch(client.search(), ["BODY.PEEK[]"])
        return [found[uid][b"BODY[]"] for uid in sorted(found)]
