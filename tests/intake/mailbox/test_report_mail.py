"""The report laid in the mailbox: unread, once, in a folder that is not collected from."""

from __future__ import annotations

import email
import email.policy
import mailbox
from pathlib import Path

import pytest

from bendreply.intake.cli import main

from ...servers.dovecot import Dovecot
from .conftest import Shop, in_folder, lay, the_mail
from .mails import mail

WEEK = ("report", "--week", "2026-W47", "--deliver")


def test_it_lies_in_a_folder_of_its_own_unread(server: Dovecot, shop: Shop) -> None:
    lay(server, mail("ada"))
    shop.run("collect")
    status, out, err = shop.run(*WEEK)
    assert (status, out, err) == (0, "The report on 2026-W47 lies in Reports, unread.\n", "")
    (raw,) = in_folder(server, "Reports")
    message = email.message_from_bytes(raw, policy=email.policy.default)
    assert message["Subject"] == "What was asked for: 2026-W47"
    assert message["From"] == message["To"]
    assert message["Auto-Submitted"] == "auto-generated"
    plain = message.get_body(("plain",))
    assert plain is not None
    assert plain.get_content().startswith("Week 2026-W47, 16 to 22 November 2026")
    (page,) = message.iter_attachments()
    assert page.get_filename() == "report-2026-W47.html"
    assert page.get_content().startswith("<!DOCTYPE html>")
    assert b"ada@" not in raw  # no name unless asked for
    with the_mail(server) as client:
        client.select_folder("Reports", readonly=True)
        ((_, said),) = client.fetch(client.search(), ["FLAGS"]).items()
    assert b"\\Seen" not in said[b"FLAGS"]


def test_the_same_figures_are_laid_once_and_others_anew(server: Dovecot, shop: Shop) -> None:
    lay(server, mail("ada"))
    shop.run("collect")
    shop.run(*WEEK)
    assert shop.run(*WEEK)[1] == (
        "The report on 2026-W47 lies in Reports already: its figures are the same.\n"
    )
    lay(server, mail("bo"))
    shop.run("collect")
    assert shop.run(*WEEK)[1] == "The report on 2026-W47 lies in Reports, unread.\n"
    assert len(in_folder(server, "Reports")) == 2


def test_it_is_never_laid_where_customers_mail_is_collected(server: Dovecot, shop: Shop) -> None:
    lay(server, mail("ada"))
    shop.run("collect")
    shop.set('inbox = ["INBOX", "Reports"]')
    status, _, err = shop.run(*WEEK)
    assert status == 1
    assert "mail is collected from there" in err


@pytest.mark.parametrize("plain", [False, True])
def test_a_maildir_gets_it_among_its_new_mail(
    tmp_path: Path, capsys: pytest.CaptureFixture[str], plain: bool
) -> None:
    folder = tmp_path / "shop"
    assert main(["shop", "new", str(folder)]) == 0
    mailbox.Maildir(folder / "mail")
    if plain:
        mailbox.Maildir(folder / "mail" / "Reports")
    with (folder / "shop.toml").open("a", encoding="utf-8") as file:
        file.write('\n[deliver]\nmaildir = "mail"\n')
    (folder / "ada.eml").write_bytes(mail("ada"))
    assert main(["--shop", str(folder), "collect", str(folder / "ada.eml")]) == 0
    capsys.readouterr()
    for said in ("unread", "already"):
        assert main(["--shop", str(folder), *WEEK]) == 0
        assert said in capsys.readouterr().out
    lying = folder / "mail" / ("Reports" if plain else ".Reports")
    assert len(list((lying / "new").iterdir())) == 1
    assert list((lying / "cur").iterdir()) == []
