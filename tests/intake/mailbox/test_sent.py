"""What the person does in the mail program is seen: replies sent, drafts changed or deleted."""

from __future__ import annotations

import email
import email.policy
import threading
import time
from datetime import timedelta

import pytest

from bendreply.intake import cli_mailbox, desk
from bendreply.intake.inquiry import Inquiry, State
from bendreply.intake.mailbox import watch
from bendreply.intake.store import open_store
from bendreply.rules.shop import load_shop

from ...servers.dovecot import Dovecot
from ...servers.proxy import Proxy
from .conftest import Shop, in_folder, lay, new_shop, settings_of, the_mail
from .mails import mail

DRAFTS, SENT = "Entwurf", "Ausgang"
BY = ("--by", "Robin Ashdown")


def inquiry(shop: Shop, number: int = 1) -> Inquiry:
    with open_store(shop.folder / "store.sqlite") as store:
        return desk.show(store, number)


def delivered(server: Dovecot, shop: Shop) -> None:
    lay(server, mail("ada"))
    assert shop.run("collect")[0] == 0
    assert shop.run("approve", "1", *BY)[0] == 0
    assert shop.run("deliver")[0] == 0


def send(server: Dovecot, *, words: str | None = None, own_id: bool = True) -> None:
    """What a mail program does: the draft goes, and what was sent lies in Sent."""
    (raw,) = in_folder(server, DRAFTS)
    sent = email.message_from_bytes(raw, policy=email.policy.default)
    if words is not None:
        sent.set_content(words)
    if not own_id:
        sent.replace_header("Message-ID", "<new-id@mail-program.example>")
    sent.replace_header("Date", "Mon, 16 Nov 2026 12:30:00 +0000")  # the mail came at 10:00
    lay(server, sent.as_bytes(), folder=SENT, flags=(b"\\Seen",))
    with the_mail(server) as client:
        client.select_folder(DRAFTS)
        client.delete_messages(client.search())
        client.expunge()


@pytest.mark.parametrize("own_id", [True, False], ids=["id-kept", "id-of-the-mail-program"])
def test_a_reply_in_sent_closes_the_inquiry(server: Dovecot, shop: Shop, own_id: bool) -> None:
    delivered(server, shop)
    send(server, own_id=own_id)
    _, out, _ = shop.run("collect")
    assert "Inquiry 1: answered, 2026-11-16 12:30 UTC, after 2 h 30 min, 100% of the words" in out
    assert inquiry(shop).state is State.ANSWERED
    assert "Inquiry 1" not in shop.run("collect")[1]
    assert len(inquiry(shop).replies) == 1


def test_how_far_the_sent_words_are_from_the_draft(server: Dovecot, shop: Shop) -> None:
    delivered(server, shop)
    send(server, words="Call me please.\n\nOn Monday, Ada wrote:\n> Please quote a mandrel\n")
    shop.run("collect")
    (reply,) = inquiry(shop).replies
    assert reply.likeness < 0.1
    assert "Please quote" not in reply.body


def test_a_reply_by_hand_closes_what_nobody_has_approved(server: Dovecot, shop: Shop) -> None:
    lay(server, mail("ada"), mail("bo"))
    shop.run("collect")
    by_hand = mail("shop", "Yes.", after=timedelta(hours=1), In_Reply_To="<ada-1@example.net>")
    lay(server, by_hand, mail("kit", "Private."), folder=SENT)
    shop.run("collect")
    assert [inquiry(shop, n).state for n in (1, 2)] == [State.ANSWERED, State.WAITING]


def test_an_answer_to_a_reply_opens_the_inquiry_again(server: Dovecot, shop: Shop) -> None:
    delivered(server, shop)
    send(server, own_id=False)
    shop.run("collect")
    lay(
        server,
        mail(
            "ada", "Make the CLR 6 in instead.", number=2, after=timedelta(hours=3),
            In_Reply_To="<new-id@mail-program.example>",
        ),
    )  # fmt: skip
    assert "1 joined to earlier inquiries" in shop.run("collect")[1]
    assert inquiry(shop).state is State.WAITING


def test_a_draft_changed_or_deleted_by_the_person_is_left_and_told_once(
    server: Dovecot, shop: Shop
) -> None:
    delivered(server, shop)
    (raw,) = in_folder(server, DRAFTS)
    with the_mail(server) as client:
        client.select_folder(DRAFTS)
        client.delete_messages(client.search())
        client.expunge()
        client.append(DRAFTS, raw.replace(b"Hello", b"Dear Ada"), (b"\\Draft",))
    told = "inquiry 1: its draft is changed in the mail program; that is left as it is"
    assert told in shop.run("collect")[1]
    assert told not in shop.run("collect")[1]
    assert b"Dear Ada" in in_folder(server, DRAFTS)[0]
    # The customer writes again: the new draft comes beside the person's own words.
    lay(server, mail("ada", "CLR 6 in instead.", number=2, In_Reply_To="<ada-1@example.net>"))
    shop.run("collect")
    shop.run("approve", "1", *BY)
    assert "was changed in the mail program and still lies" in shop.run("deliver")[1]
    assert len(in_folder(server, DRAFTS)) == 2


def test_a_draft_nobody_touched_makes_room_for_the_next(server: Dovecot, shop: Shop) -> None:
    delivered(server, shop)
    lay(server, mail("ada", "CLR 6 in instead.", number=2, In_Reply_To="<ada-1@example.net>"))
    shop.run("collect")
    shop.run("approve", "1", *BY)
    shop.run("deliver")
    (raw,) = in_folder(server, DRAFTS)
    assert b"6 in (152.4 mm) CLR" in raw


def test_mail_is_taken_in_as_it_comes_also_after_a_break(
    server: Dovecot, tmp_path, capsys: pytest.CaptureFixture[str], monkeypatch: pytest.MonkeyPatch
) -> None:
    from bendreply.intake.templates import Templates

    with Proxy(server.port) as proxy:
        shop = new_shop(tmp_path, settings_of(server, proxy.port), capsys)
        shop.set('security = "plain"')
        loaded = load_shop(shop.folder)
        with open_store(shop.folder / "store.sqlite") as store:
            stop = threading.Event()
            real = watch.watch
            monkeypatch.setattr(watch, "watch", lambda *a, **k: real(*a, **k, ended=stop.is_set))
            monkeypatch.setattr(watch, "FIRST_WAIT_S", 0.1)
            monkeypatch.setattr(watch, "IDLE_S", 2.0)
            args = (store, loaded, loaded.mailbox, Templates(shop.folder))
            worker = threading.Thread(target=cli_mailbox.watch_mailbox, args=args)
            worker.start()
            try:
                for count, name in enumerate(("ada", "bo", "cy"), start=1):
                    if name == "cy":
                        proxy.drop()
                    lay(server, mail(name))
                    end = time.monotonic() + 20
                    while len(desk.backlog(store)) < count and time.monotonic() < end:
                        time.sleep(0.05)
                    assert len(desk.backlog(store)) == count
            finally:
                stop.set()
                worker.join(timeout=20)
    assert not worker.is_alive()
    assert "broke off the connection; trying again in" in capsys.readouterr().err
