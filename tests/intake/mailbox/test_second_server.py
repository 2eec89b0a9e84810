"""A second server, written by other people (pymap): what works with one works with the other."""

from __future__ import annotations

import os
import shutil
import socket
import subprocess
import sys
import time
from collections.abc import Iterator
from pathlib import Path

import pytest
from imapclient import IMAPClient

from ...servers.dovecot import free_port
from .conftest import MUST, Shop, new_shop
from .mails import mail

USER, PASSWORD = "demouser", "demopass"  # what its demonstration data come with
START_WAIT_S = 30


@pytest.fixture
def port() -> Iterator[int]:
    """The port of a running pymap that keeps its mail in memory."""
    program = shutil.which("pymap", path=str(Path(sys.executable).parent))
    if program is None:
        sentence = "a second IMAP server is needed: pip install pymap"
        if os.environ.get(MUST):
            pytest.fail(sentence)
        pytest.skip(sentence)
    chosen = free_port()
    command = [program, "--host", "127.0.0.1", "--port", str(chosen), "--no-tls"]
    process = subprocess.Popen(
        [*command, "dict", "--demo-data"], stdout=subprocess.DEVNULL, stderr=subprocess.DEVNULL
    )
    try:
        end = time.monotonic() + START_WAIT_S
        while True:
            try:
                with socket.create_connection(("127.0.0.1", chosen), timeout=1) as server:
                    assert server.recv(4) == b"* OK"
                    break
            except OSError:
                assert process.poll() is None, "pymap ended at once"
                assert time.monotonic() < end, "pymap did not answer"
                time.sleep(0.1)
        yield chosen
    finally:
        process.terminate()
        process.wait(timeout=20)


def test_collect_and_deliver_with_another_server(
    port: int,
    tmp_path: Path,
    capsys: pytest.CaptureFixture[str],
    monkeypatch: pytest.MonkeyPatch,
) -> None:
    monkeypatch.setenv("SHOP_PASSWORD", PASSWORD)
    settings = (
        f'\n[mailbox]\nhost = "127.0.0.1"\nport = {port}\nuser = "{USER}"\nsecurity = "plain"\n'
        'password_env = "SHOP_PASSWORD"\n'
    )
    shop: Shop = new_shop(tmp_path, settings, capsys)
    with IMAPClient("127.0.0.1", port=port, ssl=False) as client:
        client.login(USER, PASSWORD)
        client.select_folder("INBOX")
        theirs = len(client.search())  # its demonstration data
        client.append("INBOX", mail("ada"))
        before = {uid: one[b"FLAGS"] for uid, one in client.fetch(client.search(), "FLAGS").items()}
    status, out, err = shop.run("collect")
    assert (status, err) == (0, "")
    words = out.splitlines()[-1].split()
    assert int(words[0]) == theirs + 1
    assert shop.run("collect")[1].startswith("0 new, 0 known before")
    number = str(theirs + 1)
    assert shop.run("approve", number, "--by", "Robin Ashdown")[0] == 0
    assert "the draft lies in" in shop.run("deliver")[1]
    assert shop.run("deliver")[1].startswith("Nothing to lay down")
    with IMAPClient("127.0.0.1", port=port, ssl=False) as client:
        client.login(USER, PASSWORD)
        client.select_folder("INBOX", readonly=True)
        after = {uid: one[b"FLAGS"] for uid, one in client.fetch(client.search(), "FLAGS").items()}
        client.select_folder("Drafts", readonly=True)
        ((_, said),) = client.fetch(client.search(), ["BODY.PEEK[]"]).items()
    # \Recent is the server's own word on its sessions, and no flag that anybody set.
    assert {uid: set(f) - {b"\\Recent"} for uid, f in after.items()} == {
        uid: set(f) - {b"\\Recent"} for uid, f in before.items()
    }
    assert b"In-Reply-To: <ada-1@example.net>" in said[b"BODY[]"]
