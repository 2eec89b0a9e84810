"""Mail collected from a real server: all of it, once, and nothing in the mailbox changed."""

from __future__ import annotations

import logging
import os
import socket
from datetime import timedelta
from pathlib import Path

import pytest

from bendreply.intake import desk
from bendreply.intake.inquiry import Inquiry
from bendreply.intake.mailbox import fetch
from bendreply.intake.model import Message
from bendreply.intake.store import open_store

from ...servers.dovecot import PASSWORD
from ...servers.proxy import Proxy, after
from .conftest import Dovecot, Shop, lay, new_shop, running, settings_of, the_mail
from .mails import ASKS, mail


def state_of(server: Dovecot, folder: str = "INBOX") -> dict[int, object]:
    """UID -> flags of a folder, looked at without leaving a mark."""
    with the_mail(server) as client:
        client.select_folder(folder, readonly=True)
        return {uid: one[b"FLAGS"] for uid, one in client.fetch(client.search(), "FLAGS").items()}


def counts(shop: Shop) -> tuple[int, int]:
    """(new, known before) of a collecting without any fault."""
    status, out, err = shop.run("collect")
    assert (status, err) == (0, "")
    words = out.split(" The store")[0].splitlines()[-1].split()
    assert words[words.index("not") - 1] == "0"
    return int(words[0]), int(words[words.index("known") - 1])


def inquiries(shop: Shop) -> list[Inquiry]:
    with open_store(shop.folder / "store.sqlite") as store:
        return [desk.show(store, one.id) for one in desk.askings(store)]


def people(shop: Shop) -> list[str]:
    return [one.message.sender.name for one in inquiries(shop)]


def test_new_mail_is_taken_in_once_and_left_as_it_was(server: Dovecot, shop: Shop) -> None:
    lay(server, mail("ada"), mail("bo"))
    lay(server, mail("cy"), flags=(b"\\Flagged", b"\\Seen"))
    before = state_of(server)
    assert counts(shop) == (3, 0)
    assert counts(shop) == (0, 0)
    lay(server, mail("di"))
    assert counts(shop) == (1, 0)
    after_all = state_of(server)
    assert {uid: after_all[uid] for uid in before} == before
    assert [b"\\Seen" in flags for flags in after_all.values()] == [False, False, True, False]


def test_the_same_mail_in_two_folders_is_one_inquiry(server: Dovecot, shop: Shop) -> None:
    with the_mail(server) as client:
        if not client.folder_exists("Web form"):
            client.create_folder("Web form")
    shop.set('inbox = ["INBOX", "Web form", "INBOX"]')
    lay(server, mail("ada"), mail("bo"))
    lay(server, mail("ada"), mail("cy"), folder="Web form")
    assert counts(shop) == (3, 1)
    assert people(shop) == ["Ada", "Bo", "Cy"]


def test_a_folder_numbered_anew_is_looked_through_without_doubles(
    server: Dovecot, shop: Shop
) -> None:
    lay(server, mail("ada"), mail("bo"))
    assert counts(shop) == (2, 0)
    lay(server, mail("cy"))
    with the_mail(server) as client:
        now = client.folder_status("INBOX", "UIDVALIDITY")[b"UIDVALIDITY"]
    server.renumber("INBOX", now + 1000)
    assert counts(shop) == (1, 2)
    assert people(shop) == ["Ada", "Bo", "Cy"]
    assert counts(shop) == (0, 0)


def test_web_form_mails_of_one_id_survive_a_renumbering(server: Dovecot, shop: Shop) -> None:
    """Two customers under one Message-ID: the second must not pass for the first."""
    form = {"subject": "Form", "number": 7}
    first = mail("web", f"{ASKS} Ana", **form)
    second = mail("web", f"{ASKS} Bo, and 2 of them", after=timedelta(hours=1), **form)
    lay(server, first)
    assert counts(shop) == (1, 0)
    with the_mail(server) as client:
        now = client.folder_status("INBOX", "UIDVALIDITY")[b"UIDVALIDITY"]
        client.select_folder("INBOX")
        client.delete_messages(client.search())
        client.expunge()
    lay(server, second)
    server.renumber("INBOX", now + 1000)
    assert counts(shop) == (1, 0)


def test_mail_deleted_while_we_read_costs_nothing_else(
    server: Dovecot, shop: Shop, monkeypatch: pytest.MonkeyPatch
) -> None:
    lay(server, mail("ada"), mail("bo"), mail("cy"))
    monkeypatch.setattr(fetch, "FETCHED_AT_ONCE", 1)
    take_in = desk.take_in

    def delete_the_second(*args: object, **more: object) -> object:
        with the_mail(server) as client:
            client.select_folder("INBOX")
            if uids := client.search(["FROM", "bo@example.net"]):
                client.delete_messages(uids)
                client.expunge()
        return take_in(*args, **more)

    monkeypatch.setattr(desk, "take_in", delete_the_second)
    assert counts(shop) == (2, 0)
    assert people(shop) == ["Ada", "Cy"]


def test_older_mail_is_left_alone_until_it_is_wanted(server: Dovecot, shop: Shop) -> None:
    from datetime import UTC, datetime

    toml = (shop.folder / "shop.toml").read_text("utf-8")
    with the_mail(server) as client:
        client.append("INBOX", mail("ada"), msg_time=datetime(2020, 5, 1, 12, tzinfo=UTC))
        client.append("INBOX", mail("bo"))
    shop.set("since = 2026-01-01")
    assert counts(shop) == (1, 0)
    (shop.folder / "shop.toml").write_text(toml + "since = 2019-01-01\n", "utf-8")
    assert counts(shop) == (1, 1)
    assert people(shop) == ["Bo", "Ada"]
    assert counts(shop) == (0, 0)


def test_what_can_not_be_used_is_tried_again_and_not_lost(
    server: Dovecot, shop: Shop, monkeypatch: pytest.MonkeyPatch
) -> None:
    """A fault of ours with one message; the next version of the program has it mended."""
    from bendreply.intake import pipeline

    lay(server, mail("ada"), mail("bo"), mail("cy"))
    process = pipeline.process

    def broken(message: Message, *args: object, **more: object) -> object:
        if message.sender.name == "Bo":
            raise ZeroDivisionError("oh")
        return process(message, *args, **more)

    with monkeypatch.context() as faulty:
        faulty.setattr(pipeline, "process", broken)
        for expected in ("2 new (2 with sizes)", "0 new"):
            status, out, err = shop.run("collect")
            assert status == 1
            assert out.startswith(f"{expected}, 0 known before, 1 not usable.")
            assert "UID=" in err
            assert "internal fault (ZeroDivisionError: oh); left out" in err
    assert counts(shop) == (1, 0)
    assert counts(shop) == (0, 0)
    assert people(shop) == ["Ada", "Cy", "Bo"]


# Large and odd mail


def test_of_a_very_large_mail_the_beginning_is_read_and_that_is_said(
    server: Dovecot, shop: Shop
) -> None:
    head, _, _ = mail("ada").partition(b"\r\n\r\n")
    parts = [
        b"MIME-Version: 1.0\r\nContent-Type: multipart/mixed; boundary=cut\r\n\r\n--cut\r\n\r\n",
        ASKS.encode(),
        b"\r\n--cut\r\nContent-Type: application/octet-stream; name=drawing.dwg\r\n"
        b"Content-Transfer-Encoding: base64\r\n\r\n",
        (b"QUJD" * 19 + b"\r\n") * 640_000,  # 50 MB
        b"--cut--\r\n",
    ]
    kept = [
        line for line in head.split(b"\r\n") if not line.lower().startswith((b"content", b"mime"))
    ]
    lay(server, b"\r\n".join([*kept, b"".join(parts)]))
    assert counts(shop) == (1, 0)
    (one,) = inquiries(shop)
    assert one.message.faults[0] == (
        "only the first 10 MB of 50 MB were fetched: what comes after them was not read"
    )
    assert one.decision == "stock"
    assert "only the first 10 MB of 50 MB were fetched" in shop.run("show", "1")[1]


@pytest.mark.parametrize(
    ("odd", "told"),
    [
        pytest.param(
            b"Content-Type: multipart/mixed; boundary=x\r\n\r\n"
            + b"".join(b"--x\r\n\r\npart %d\r\n" % n for n in range(1000))
            + b"--x--\r\n",
            "more than 200 parts",
            id="1000-parts",
        ),
        pytest.param(
            b"X-Long: " + b"a" * 1_000_000 + b"\r\n\r\n" + ASKS.encode(), "", id="header-of-1-MB"
        ),
        pytest.param(b"\r\n\x00\xff\xfe" * 50, "", id="zeroes"),
    ],
)
def test_odd_mail_is_read_as_far_as_it_goes(
    server: Dovecot, shop: Shop, odd: bytes, told: str
) -> None:
    head, _, _ = mail("ada").partition(b"\r\n\r\n")
    kept = [
        line for line in head.split(b"\r\n") if not line.lower().startswith((b"content", b"mime"))
    ]
    folder = server.mail / "new"
    file = folder / "1764000000.odd.example"  # no server takes a NUL by APPEND, but mail has them
    file.write_bytes(b"\r\n".join([*kept, odd]))
    os.chmod(file, 0o666)
    lay(server, mail("bo"))
    assert counts(shop) == (2, 0)
    assert sorted(people(shop)) == ["Ada", "Bo"]
    assert told in " ".join(
        next(one for one in inquiries(shop) if one.message.sender.name == "Ada").message.faults
    )


# What goes wrong on the way


def refusal(shop: Shop, *call: str) -> str:
    """The one sentence of a command that could not be carried out."""
    status, _, err = shop.run(*(call or ("collect",)))
    assert status == 1
    (line,) = err.splitlines()
    assert "Traceback" not in line
    return line.removeprefix("bendreply: ")


def test_a_wrong_password_is_said_and_never_shown(
    shop: Shop, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setenv("SHOP_PASSWORD", "wrong-horse-99")
    sentence = refusal(shop)
    assert sentence.startswith("127.0.0.1 does not let shop in with this password: ")
    assert "wrong-horse-99" not in sentence
    monkeypatch.setenv("SHOP_PASSWORD", PASSWORD)
    assert counts(shop) == (0, 0)


def test_a_certificate_that_ran_out_is_refused_before_anything_is_sent(
    tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    with running(days=-1) as expired:
        shop = new_shop(tmp_path, settings_of(expired), capsys)
        assert refusal(shop) == (
            "the certificate of 127.0.0.1 can't be trusted: certificate has expired; nothing was "
            "sent to it"
        )


def test_a_certificate_that_nobody_vouches_for_is_refused(shop: Shop) -> None:
    toml = shop.folder / "shop.toml"
    lines = toml.read_text("utf-8").splitlines(keepends=True)
    toml.write_text("".join(line for line in lines if "ca_file" not in line), "utf-8")
    assert "can't be trusted: self-signed certificate" in refusal(shop)


def test_a_server_that_hangs_is_given_up(
    server: Dovecot, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    with Proxy(server.port, silent=True) as silent:
        waiting = new_shop(tmp_path / "b", settings_of(server, silent.port), capsys)
        waiting.set("patience_seconds = 1")
        assert refusal(waiting) == ("the mail server 127.0.0.1 does not answer: given up after 1 s")


def test_nobody_listens(
    server: Dovecot, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    away = new_shop(tmp_path / "b", settings_of(server, 1), capsys)
    assert (
        refusal(away) == "no connection to the mail server 127.0.0.1 at port 1: Connection refused"
    )


@pytest.mark.parametrize(
    ("line", "sentence"),
    [
        ('inbox = "Nowhere"', "the mailbox has no folder 'Nowhere' that can be opened"),
        ('security = "starttls"', "no TLS connection with"),
    ],
)
def test_settings_that_do_not_fit_the_server(shop: Shop, line: str, sentence: str) -> None:
    shop.set(line)
    shop.set("patience_seconds = 2")
    assert sentence in refusal(shop) or "does not answer" in refusal(shop)


def test_starttls_is_used_where_it_is_set(
    server: Dovecot, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    lay(server, mail("ada"))
    other = new_shop(tmp_path / "b", settings_of(server, server.port), capsys)
    other.set('security = "starttls"')
    assert counts(other) == (1, 0)


@pytest.mark.parametrize("where", [10, 2000, 10_000, 20_000])
def test_a_connection_cut_in_the_middle_of_a_mail_loses_and_doubles_nothing(
    server: Dovecot, tmp_path: Path, capsys: pytest.CaptureFixture[str], where: int
) -> None:
    names = [f"p{n}" for n in range(60)]  # some 700 bytes each, in two pieces
    lay(server, *(mail(name) for name in names))
    with Proxy(server.port, cut_server=after(rb"BODY\[\]", where)) as proxy:
        far = new_shop(tmp_path / "b", settings_of(server, proxy.port), capsys)
        far.set('security = "plain"')
        assert refusal(far) == "the mail server 127.0.0.1 broke off the connection"
        assert counts(far)[0] > 0
        assert sorted(people(far)) == sorted(name.title() for name in names)
        assert counts(far) == (0, 0)


# Secrets and the network


def test_the_password_is_in_no_file_log_or_output(
    server: Dovecot, shop: Shop, caplog: pytest.LogCaptureFixture
) -> None:
    lay(server, mail("ada"))
    with caplog.at_level(logging.DEBUG):
        status, out, err = shop.run("collect")
    assert status == 0
    assert PASSWORD not in out + err + caplog.text
    for file in shop.folder.rglob("*"):
        assert not file.is_file() or PASSWORD.encode() not in file.read_bytes()


def test_nothing_but_the_mail_server_is_spoken_to(
    server: Dovecot, shop: Shop, monkeypatch: pytest.MonkeyPatch
) -> None:
    called: list[object] = []
    connect = socket.socket.connect

    def watched(self: socket.socket, address: object) -> None:
        called.append(address)
        connect(self, address)  # type: ignore[arg-type]

    monkeypatch.setattr(socket.socket, "connect", watched)
    lay_address = ("127.0.0.1", server.tls_port)
    assert counts(shop) == (0, 0)
    assert called == [lay_address]


def test_a_command_gives_the_password(shop: Shop) -> None:
    toml = shop.folder / "shop.toml"
    text = toml.read_text("utf-8")
    command = '["sh", "-c", "echo %s; echo more"]'
    for printed, works in ((PASSWORD, True), ("no", False)):
        line = f"password_command = {command % printed}"
        toml.write_text(text.replace('password_env = "SHOP_PASSWORD"', line), "utf-8")
        assert shop.run("collect")[0] == (0 if works else 1)


@pytest.mark.parametrize(
    ("line", "sentence"),
    [
        ('password_env = "NOT_SET_HERE"', "the variable NOT_SET_HERE, which shop.toml names"),
        ('password_command = ["/nowhere/pass"]', "/nowhere/pass can't be run: No such file"),
        ('password_command = ["sh", "-c", "echo hush; exit 3"]', "failed with exit status 3"),
        ('password_command = ["true"]', "password_command: true printed nothing"),
    ],
)
def test_a_secret_that_can_not_be_had(
    tmp_path: Path, capsys: pytest.CaptureFixture[str], line: str, sentence: str
) -> None:
    """Before any server is asked: no server is needed here."""
    settings = f'\n[mailbox]\nhost = "127.0.0.1"\nport = 1\nuser = "shop"\n{line}\n'
    said = refusal(new_shop(tmp_path, settings, capsys))
    assert sentence in said
    assert "hush" not in said


@pytest.mark.parametrize(
    ("lines", "fault"),
    [
        ('password_env = "A"\ntoken_env = "B"', "give exactly one of password_env"),
        ("", "give exactly one of password_env"),
        ('token = "abc"', "a token doesn't belong in this file"),
        ('password_env = "A"\nsecurity = "plain"', "would show the password to the network"),
        ('password_env = "A"\nport = 0', "0 is not more than 0"),
        ('password_env = "A"\ninbox = []', "inbox names no folder"),
    ],
)
def test_settings_that_can_not_be(
    tmp_path: Path, capsys: pytest.CaptureFixture[str], lines: str, fault: str
) -> None:
    settings = f'\n[mailbox]\nhost = "imap.example.com"\nuser = "shop"\n{lines}\n'
    status, _, err = new_shop(tmp_path, settings, capsys).run("shop", "check")
    assert status == 2
    assert fault in err
