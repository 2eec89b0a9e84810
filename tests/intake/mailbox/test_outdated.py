"""A further mail of the customer, and the draft that lies in Drafts by then."""

from __future__ import annotations

from datetime import timedelta

from ...servers.dovecot import Dovecot
from .conftest import Shop, in_folder, lay, the_mail
from .mails import mail

DRAFTS = "Entwurf"
BY = ("--by", "Robin Ashdown")
FURTHER = mail(
    number=2,
    body="Make the CLR 6 in instead.",
    subject="Re: Mandrel",
    after=timedelta(hours=2),
    In_Reply_To="<ada-1@example.net>",
    References="<ada-1@example.net>",
)


def delivered(server: Dovecot, shop: Shop) -> bytes:
    lay(server, mail())
    for call in (("collect",), ("approve", "1", *BY), ("deliver",)):
        assert shop.run(*call)[0] == 0
    (draft,) = in_folder(server, DRAFTS)
    return draft


def test_it_is_taken_back_while_nobody_has_touched_it(server: Dovecot, shop: Shop) -> None:
    delivered(server, shop)
    with the_mail(server) as client:  # another one's, which must stay
        client.append(DRAFTS, mail("bo"), (b"\\Draft",))
    lay(server, FURTHER)
    status, out, err = shop.run("collect")
    assert (status, err) == (0, "")
    assert "inquiry 1: its laid draft was outdated, and was taken back\n" in out
    assert [b"<bo-1@example.net>" in one for one in in_folder(server, DRAFTS)] == [True]
    assert "taken back" not in shop.run("collect")[1]
    assert "outdated draft taken back" in shop.run("history", "1")[1]
    assert shop.run("approve", "1", *BY)[0] == 0
    assert shop.run("deliver")[0] == 0
    newest = in_folder(server, DRAFTS)[-1]
    assert b"6 in" in newest
    assert len(in_folder(server, DRAFTS)) == 2


def test_one_changed_in_the_mail_program_stays(server: Dovecot, shop: Shop) -> None:
    draft = delivered(server, shop)
    changed = draft.replace(b"Hello", b"Good day")
    assert changed != draft
    with the_mail(server) as client:
        client.select_folder(DRAFTS)
        client.delete_messages(client.search())
        client.expunge()
        client.append(DRAFTS, changed, (b"\\Draft",))
    lay(server, FURTHER)
    out = shop.run("collect")[1]
    assert "its laid draft is outdated, and was left since somebody has changed it" in out
    assert in_folder(server, DRAFTS) == [changed]


def test_one_that_was_sent_meanwhile_is_no_draft_any_more(server: Dovecot, shop: Shop) -> None:
    """The mail program moves it to Sent; the customer writes again; nothing is taken away."""
    draft = delivered(server, shop)
    with the_mail(server) as client:
        client.select_folder(DRAFTS)
        client.delete_messages(client.search())
        client.expunge()
        client.append("Ausgang", draft, (b"\\Seen",))
    lay(server, FURTHER)
    out = shop.run("collect")[1]
    assert "taken back" not in out
    assert in_folder(server, "Ausgang") == [draft]
    assert "taken back" not in shop.run("collect")[1]
    assert in_folder(server, "Ausgang") == [draft]
