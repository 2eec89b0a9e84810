"""Listening at a real server: nothing lost, nothing twice, nothing said."""

from __future__ import annotations

import asyncio
import os
import random
import signal
import subprocess
import sys
import time
from pathlib import Path

import pytest

from bendreply.intake import desk
from bendreply.intake.store import open_store
from bendreply.intake.store_check import check_store

from ...servers.prosody import HOST, PASSWORD, SHOP, Prosody
from .conftest import CONTACTS, MUST, Contact, Shop, new_shop, running, say, settings_of

pytest.importorskip("slixmpp", reason="listening needs the extra xmpp")


def test_what_waits_is_taken_in_once(server: Prosody, shop: Shop) -> None:
    say(server, "lou1", "1.75", ".095 wall", "4.5 clr oh and its 4130")
    status, out, _ = shop.run("listen", "--once")
    assert (status, out.partition(" (")[0]) == (0, "1 new")
    (inquiry,) = shop.inquiries()
    (request,) = (one.request for one in inquiry.assessments)
    assert (str(request.od_mm), str(request.clr_mm), request.grade) == ("44.45", "114.3", "4130")
    assert inquiry.message.sender.address == f"lou1@{HOST}"
    assert "0 new" in shop.run("listen", "--once")[1]
    say(server, "lou1", "2 mandrels pls")
    assert "1 joined to earlier inquiries" in shop.run("listen", "--once")[1]
    assert shop.inquiries()[0].assessments[0].request.quantity == 2
    assert "message" not in {kind for kind, _ in server.written_by(SHOP)}


def test_a_draft_is_laid_down_to_be_copied(server: Prosody, shop: Shop) -> None:
    say(server, "lou2", "1.75 x .095 DOM, 4.5 clr, one mandrel please")
    shop.run("listen", "--once")
    (inquiry,) = [one for one in shop.inquiries() if "lou2" in one.message.sender.address]
    shop.run("approve", str(inquiry.id), "--by", "Robin Ashdown")
    assert f"{inquiry.id}.txt" in shop.run("deliver")[1]
    assert "message" not in {kind for kind, _ in server.written_by(SHOP)}


@pytest.mark.parametrize(
    ("other", "status", "why"),
    [
        ({"password_env": '"NO_SUCH"'}, 1, "the variable NO_SUCH"),
        ({"password_env": None, "password_command": '["echo", "wrong"]'}, 1, "does not let"),
        ({"ca_file": None}, 1, "can't be trusted"),
        ({"port": "1"}, 1, "no connection to the chat server of shop@localhost"),
        ({"jid": '"shop"'}, 2, "is no address of an account"),
        ({"security": '"plain"', "host": '"chat.example.com"'}, 2, "would show the password"),
        ({"password": '"hush"'}, 2, "a password doesn't belong in this file"),
    ],
)
def test_what_a_person_has_to_mend_is_one_sentence(
    server: Prosody,
    tmp_path: Path,
    capsys: pytest.CaptureFixture[str],
    other: dict[str, str],
    status: int,
    why: str,
) -> None:
    shop = new_shop(tmp_path, capsys, settings_of(server, **other))
    got, _, err = shop.run("listen", "--once")
    assert (got, len(err.splitlines())) == (status, 1)
    assert why in err
    assert PASSWORD not in err


def test_a_certificate_for_another_name_is_not_trusted(
    tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    with running(name="elsewhere.example.com") as server:
        shop = new_shop(tmp_path, capsys, settings_of(server))
        status, _, err = shop.run("listen", "--once")
        assert status == 1
        assert "can't be trusted" in err
        assert "Authenticated" not in (server.folder / "prosody.log").read_text()


def test_tls_from_the_start(
    server: Prosody, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    settings = settings_of(server, security='"tls"', port=str(server.tls_port))
    shop = new_shop(tmp_path, capsys, settings)
    assert shop.run("listen", "--once")[0] == 0


def test_without_encryption_no_password_is_sent(
    tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    with running(modules=("mam",), tls=False) as server:
        shop = new_shop(tmp_path, capsys, settings_of(server))
        status, _, err = shop.run("listen", "--once")
        assert status == 1
        assert "offers no encryption, so that no password was sent" in err
        assert "Authenticated" not in (server.folder / "prosody.log").read_text()
        plain = new_shop(tmp_path / "2", capsys, settings_of(server, security='"plain"'))
        assert plain.run("listen", "--once")[0] == 0  # on this machine, where one asks for it


class Listening:
    """The command in a process of its own."""

    def __init__(self, shop: Shop) -> None:
        call = ["--shop", str(shop.folder), "listen"]
        program = f"import sys; from bendreply.intake.cli import main; sys.exit(main({call!r}))"
        self._log = (shop.folder / "listen.log").open("ab")
        self.process = subprocess.Popen(
            [sys.executable, "-c", program],
            stdout=self._log,
            stderr=subprocess.STDOUT,
            env={**os.environ, "CHAT_PASSWORD": PASSWORD},
        )

    def __enter__(self) -> Listening:
        return self

    def __exit__(self, *_: object) -> None:
        if self.process.poll() is None:
            self.stop(signal.SIGKILL)

    def stop(self, how: int = signal.SIGTERM) -> int:
        self.process.send_signal(how)
        status = self.process.wait(30)
        self._log.close()
        return status


def words_in(shop: Shop) -> list[str]:
    """Every chat message in the store."""
    if not (shop.folder / "store.sqlite").exists():
        return []
    return [
        word
        for inquiry in shop.inquiries()
        for one in inquiry.messages
        for word in one.message.body.split("\n")
    ]


def until_in(shop: Shop, wanted: int, seconds: float = 90) -> list[str]:
    end = time.monotonic() + seconds
    while len(found := words_in(shop)) < wanted and time.monotonic() < end:
        time.sleep(0.5)
    return found


TEXTS = ("{n} is what i need", "1.75 x .095 nr {n}", "4.5 clr nr {n}", "call me re {n}")


async def all_write(server: Prosody, texts: list[tuple[str, str]]) -> None:
    """20 people, each with every message of theirs in its order."""
    by_name: dict[str, list[str]] = {}
    for name, text in texts:
        by_name.setdefault(name, []).append(text)

    async def one(name: str, said: list[str]) -> None:
        contact = Contact(server, name)
        for text in said:
            await contact.say(text, id=f"id of {text}")
            await asyncio.sleep(random.Random(text).random() / 10)
        await contact.leave()

    await asyncio.gather(*(one(name, said) for name, said in by_name.items()))


@pytest.mark.parametrize(
    ("modules", "wanted"),
    [
        (("tls", "mam", "carbons"), 500 if os.environ.get(MUST) else 100),
        (("tls",), 60),  # it keeps nothing but what waits for somebody who is not there
    ],
    ids=["archive", "no-archive"],
)
def test_messages_of_20_people_and_a_server_that_is_restarted(
    tmp_path: Path, capsys: pytest.CaptureFixture[str], modules: tuple[str, ...], wanted: int
) -> None:
    texts = [(f"lou{n % 20}", TEXTS[n % len(TEXTS)].format(n=f"{n:03}")) for n in range(wanted)]
    with running(modules=modules) as server:
        shop = new_shop(tmp_path, capsys, settings_of(server))

        async def write_and_restart() -> None:
            writing = asyncio.ensure_future(all_write(server, texts))
            for _ in range(2):
                await asyncio.sleep(2)
                await asyncio.to_thread(server.stop)
                await asyncio.sleep(1)
                await asyncio.to_thread(server.start)
            await writing

        # A part of it waits at the server before anybody listens.
        asyncio.run(all_write(server, texts[: wanted // 5]))
        texts = texts[wanted // 5 :]
        with Listening(shop) as listening:
            asyncio.run(write_and_restart())
            found = until_in(shop, wanted)
            assert listening.stop() == 0
        if "mam" in modules:
            shop.run("listen", "--once")
        said = server.written_by(SHOP)
    expected = [TEXTS[n % len(TEXTS)].format(n=f"{n:03}") for n in range(wanted)]
    assert sorted(found) == sorted(expected)
    assert {kind for kind, _ in said} == {"iq", "presence"}
    assert {to for _, to in said} <= {"-", HOST, f"{SHOP}@{HOST}"}
    with open_store(shop.folder / "store.sqlite") as store:
        assert check_store(store)[1] == []
        askings = list(desk.askings(store))
    assert len(askings) == len(CONTACTS)  # within minutes: one request each
    log = (shop.folder / "listen.log").read_text("utf-8")
    assert "trying again" in log


def test_a_listener_that_is_killed_loses_nothing(server: Prosody, shop: Shop) -> None:
    texts = [(f"lou{n % 5 + 10}", f"2 x .120 nr {n:03}") for n in range(50)]

    async def write_and_kill() -> None:
        writing = asyncio.ensure_future(all_write(server, texts))
        for _ in range(3):
            with Listening(shop):  # killed at its end
                await asyncio.sleep(2)
        await writing

    asyncio.run(write_and_kill())
    assert shop.run("listen", "--once")[0] == 0
    found = [word for word in words_in(shop) if word.startswith("2 x .120 nr")]
    assert sorted(found) == sorted(text for _, text in texts)
