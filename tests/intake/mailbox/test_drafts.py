"""Approved drafts in the server's Drafts folder: threaded, once, and a person's hand respected."""

from __future__ import annotations

import email
import email.policy
from email.message import EmailMessage
from pathlib import Path

import pytest

from ...servers.dovecot import Dovecot
from ...servers.proxy import Proxy, after
from .conftest import Shop, in_folder, lay, new_shop, running, settings_of, the_mail
from .mails import mail

DRAFTS = "Entwurf"  # what this server marks as Drafts: the name says nothing in English
BY = ("--by", "Robin Ashdown")


def drafts(server: Dovecot, folder: str = DRAFTS) -> list[EmailMessage]:
    return [
        email.message_from_bytes(raw, policy=email.policy.default)
        for raw in in_folder(server, folder)
    ]


def approved(server: Dovecot, shop: Shop, *names: str) -> None:
    lay(server, *(mail(name) for name in names))
    assert shop.run("collect")[0] == 0
    for number in range(1, len(names) + 1):
        assert shop.run("approve", str(number), *BY)[0] == 0


def test_a_draft_lies_in_drafts_threaded_under_the_customers_mail(
    server: Dovecot, shop: Shop
) -> None:
    lay(server, mail("ada", References="<first@example.net>"))
    shop.run("collect")
    shop.run("approve", "1", *BY)
    status, out, err = shop.run("deliver")
    assert (status, out, err) == (0, f"Inquiry 1: the draft lies in {DRAFTS}\n", "")
    (draft,) = drafts(server)
    assert draft["To"] == "Ada <ada@example.net>"
    assert draft["In-Reply-To"] == "<ada-1@example.net>"
    assert draft["References"].split() == ["<first@example.net>", "<ada-1@example.net>"]
    assert draft["Bcc"] is None
    with the_mail(server) as client:
        client.select_folder(DRAFTS, readonly=True)
        ((_, said),) = client.fetch(client.search(), ["FLAGS"]).items()
    assert {b"\\Draft", b"\\Seen"} <= set(said[b"FLAGS"])


def test_the_server_threads_the_draft_with_the_mail(server: Dovecot, shop: Shop) -> None:
    """The server's own THREAD (RFC 5256), once both lie in one folder."""
    lay(server, mail("ada", subject="Roof bow"), mail("bo", subject="Header"))  # no common subject
    shop.run("collect")
    for number in ("1", "2"):
        shop.run("approve", number, *BY)
    shop.run("deliver")
    with the_mail(server) as client:
        client.select_folder(DRAFTS)
        client.copy(client.search(), "INBOX")
        client.select_folder("INBOX")
        threads = client.thread("REFERENCES")
    assert sorted(map(len, threads)) == [2, 2]


def test_a_second_run_lays_nothing(server: Dovecot, shop: Shop) -> None:
    approved(server, shop, "ada", "bo")
    assert shop.run("deliver")[0] == 0
    assert shop.run("deliver")[1].startswith("Nothing to lay down")
    assert len(drafts(server)) == 2


@pytest.mark.parametrize(
    ("side", "pattern", "more"),
    [
        pytest.param("client", rb"APPEND [^\n]*\n", 300, id="in-the-middle-of-append"),
        pytest.param("server", rb"[^\n]*APPENDUID", 0, id="before-the-answer"),
    ],
)
def test_a_connection_lost_while_laying_makes_no_second_draft(
    server: Dovecot,
    shop: Shop,
    side: str,
    pattern: bytes,
    more: int,
) -> None:
    approved(server, shop, "ada", "bo", "cy")
    cut = {f"cut_{side}": after(pattern, more)}
    with Proxy(server.port, **cut) as proxy:
        toml = shop.folder / "shop.toml"
        direct = toml.read_text("utf-8")
        toml.write_text(
            direct.replace(f"port = {server.tls_port}", f'port = {proxy.port}\nsecurity = "plain"'),
            "utf-8",
        )
        status, _, err = shop.run("deliver")
        assert status == 1
        assert err == "bendreply: the mail server 127.0.0.1 broke off the connection\n"
        assert len(drafts(server)) == (1 if side == "server" else 0)
        toml.write_text(direct, "utf-8")
    status, out, err = shop.run("deliver")
    assert (status, err) == (0, "")
    assert out.count("the draft lies in") == 3
    assert out.count("it lay there already") == (1 if side == "server" else 0)
    assert sorted(one["To"].addresses[0].username for one in drafts(server)) == ["ada", "bo", "cy"]


def test_a_draft_that_the_person_deleted_stays_deleted(server: Dovecot, shop: Shop) -> None:
    approved(server, shop, "ada")
    shop.run("deliver")
    with the_mail(server) as client:
        client.select_folder(DRAFTS)
        client.delete_messages(client.search())
        client.expunge()
    assert shop.run("deliver")[1].startswith("Nothing to lay down")
    assert drafts(server) == []


def test_a_full_mailbox_is_said_and_the_draft_stays_approved(
    tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    quota = (
        "mail_plugins = quota\n"
        "protocol imap {\n  mail_plugins = quota imap_quota\n}\n"
        "plugin {\n  quota = maildir:User quota\n  quota_rule = *:messages=1\n}\n"
    )
    with running(more=quota) as small:
        shop = new_shop(tmp_path, settings_of(small), capsys)
        approved(small, shop, "ada")
        status, _, err = shop.run("deliver")
        assert status == 1
        assert err.startswith("bendreply: the draft of inquiry 1 was not taken into Entwurf: ")
        assert "uota" in err
        assert err.endswith("; it stays approved\n")


@pytest.mark.parametrize(
    ("special", "line", "folder"),
    [
        pytest.param("", "", "Drafts", id="made-where-there-is-none"),
        pytest.param('mailbox "Entwürfe" {\n auto = create\n}', "", "Entwürfe", id="by-name"),
        pytest.param(
            "mailbox Other {\n auto = create\n}", 'drafts = "Other"', "Other", id="as-set"
        ),
    ],
)
def test_where_the_server_marks_no_drafts(
    tmp_path: Path, capsys: pytest.CaptureFixture[str], special: str, line: str, folder: str
) -> None:
    with running(special=special) as plain:
        shop = new_shop(tmp_path, settings_of(plain), capsys)
        shop.set(line)
        approved(plain, shop, "ada")
        status, out, err = shop.run("deliver")
        assert (status, out, err) == (0, f"Inquiry 1: the draft lies in {folder}\n", "")
        assert len(drafts(plain, folder)) == 1


def test_a_draft_with_a_picture_lies_there_whole_and_once(server: Dovecot, shop: Shop) -> None:
    pytest.importorskip(
        "matplotlib", reason="pictures are drawn with matplotlib: the extra 'charts'"
    )
    lay(server, mail("ada"))
    shop.run("collect")
    shop.run("approve", "1", *BY, "--picture", "png")
    assert shop.run("deliver")[1:] == (f"Inquiry 1: the draft lies in {DRAFTS}\n", "")
    (draft,) = drafts(server)
    (picture,) = draft.iter_attachments()
    assert picture.get_content_type() == "image/png"
    assert picture.get_content().startswith(b"\x89PNG")
    assert draft.get_body().get_content().startswith("Hello")
    # The server's own reading of its structure (RFC 3501, BODYSTRUCTURE).
    with the_mail(server) as client:
        client.select_folder(DRAFTS, readonly=True)
        ((_, said),) = client.fetch(client.search(), ["BODYSTRUCTURE"]).items()
    parts, kind, *_ = said[b"BODYSTRUCTURE"]
    assert kind == b"mixed"
    assert [one[:2] for one in parts] == [(b"text", b"plain"), (b"image", b"png")]
    assert "Nothing to lay down" in shop.run("deliver")[1]


def test_a_reply_sent_with_its_picture_closes_the_inquiry(server: Dovecot, shop: Shop) -> None:
    pytest.importorskip(
        "matplotlib", reason="pictures are drawn with matplotlib: the extra 'charts'"
    )
    lay(server, mail("ada"))
    shop.run("collect")
    shop.run("approve", "1", *BY, "--picture", "pdf")
    shop.run("deliver")
    (raw,) = in_folder(server, DRAFTS)
    lay(server, raw, folder="Ausgang", flags=(b"\\Seen",))
    assert "Inquiry 1: answered" in (out := shop.run("collect")[1])
    assert "100% of the words" in out
