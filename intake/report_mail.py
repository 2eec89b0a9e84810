"""``report --deliver``: the report laid in the owner's mailbox as an unread message.

It is laid there, by APPEND or as a file of a Maildir; nothing is sent. The same figures are laid
once: the message bears their digest in its Message-ID, and is looked for first.
"""

from __future__ import annotations

import hashlib
import mailbox as mailboxes
from email.headerregistry import Address as HeaderAddress
from email.message import EmailMessage
from pathlib import Path
from typing import TYPE_CHECKING

from .desk_errors import MailboxError, ShopAddressError
from .letter import mail_policy
from .report import Report
from .report_html import as_html
from .report_json import as_json
from .screen_report import report_text

if TYPE_CHECKING:
    from imapclient import IMAPClient

    from ..rules.shop import Shop
    from ..rules.shop_mailbox import Mailbox


def deliver_report(report: Report, shop: Shop, *, names: bool = False) -> str:
    """Lay the report where shop.toml says; a sentence for the person.

    Raises MailboxError where there is no mailbox, or it refuses; ShopAddressError without a
    reply address.
    """
    mail = compose_report(report, shop, names=names)
    folder = shop.report.folder
    if shop.mailbox is not None and shop.deliver is None:
        if folder in shop.mailbox.inboxes:
            raise MailboxError(
                f"the report can't go to {folder!r}: mail is collected from there, and it would "
                "come back as a customer's; name another folder in [report]"
            )
        place, was_there = _lay_by_imap(mail, shop.mailbox, shop.folder, folder)
    elif shop.deliver is not None and shop.deliver.maildir is not None:
        place, was_there = _lay_in_maildir(
            mail, (shop.folder or Path()) / shop.deliver.maildir, folder
        )
    else:
        raise MailboxError(
            "the report needs a mailbox to be laid in: give [mailbox], or a maildir in [deliver], "
            "in shop.toml; `bendreply report --out report.html` writes it to a file"
        )
    if was_there:
        return f"The report on {report.weeks} lies in {place} already: its figures are the same."
    return f"The report on {report.weeks} lies in {place}, unread."


def compose_report(report: Report, shop: Shop, *, names: bool = False) -> EmailMessage:
    """The report as a mail to the shop from itself: the short form, and the page attached."""
    address = shop.reply_address
    if address is None or not address.isascii():
        raise ShopAddressError(
            "the report needs a reply_address in shop.toml that a mail can bear: it is laid in the "
            "mailbox as a message to the shop itself"
        )
    page = as_html(report, names=names)
    figures = as_json(report, names=names)
    digest = hashlib.sha256(f"{report.shop}\n{figures}".encode()).hexdigest()[:16]
    local_part, _, domain = address.rpartition("@")
    box = HeaderAddress(shop.reply_name, local_part, domain)
    mail = EmailMessage(policy=mail_policy(utf8=False))
    mail["From"] = mail["To"] = box
    mail["Subject"] = f"What was asked for: {report.weeks}"
    # A mail without Date would be sorted anywhere: it bears the end of the weeks it tells of.
    mail["Date"] = report.ends_at
    mail["Message-ID"] = f"<report.{report.weeks}.{digest}.bendreply@{domain}>"
    mail["Auto-Submitted"] = "auto-generated"  # RFC 3834: no person wrote it
    mail.set_content(report_text(report, names=names))
    mail.add_alternative(page, subtype="html")
    name = f"report-{report.weeks}.html".replace("..", "-to-")
    mail.add_attachment(page, subtype="html", filename=name)
    return mail


def _lay_in_maildir(mail: EmailMessage, maildir: Path, folder: str) -> tuple[str, bool]:
    if not all((maildir / part).is_dir() for part in ("cur", "new", "tmp")):
        raise MailboxError(f"{maildir} is not a Maildir: it lacks cur, new or tmp")
    if (maildir / folder / "cur").is_dir():
        box = mailboxes.Maildir(maildir / folder, factory=None, create=False)
    else:
        box = mailboxes.Maildir(maildir, factory=None, create=False).add_folder(folder)
    place = str(box._path)
    wanted = mail["Message-ID"].strip()
    if any(str(lying["Message-ID"]).strip() == wanted for lying in box):
        return place, True
    box.add(mailboxes.MaildirMessage(mail.as_bytes()))  # into "new", without a flag: unread
    return place, False


def _lay_by_imap(
    mail: EmailMessage, settings: Mailbox, shop_folder: Path | None, folder: str
) -> tuple[str, bool]:
    from .mailbox.access import mailbox

    with mailbox(settings, shop_folder) as client:
        return _append(client, mail, folder)


def _append(client: IMAPClient, mail: EmailMessage, folder: str) -> tuple[str, bool]:
    from imapclient.exceptions import IMAPClientAbortError, IMAPClientError

    from .mailbox.access import said_by
    from .mailbox.folders import open_readonly, own_folder

    try:
        name = own_folder(client, folder)
        open_readonly(client, name)
        if client.search(["HEADER", "Message-ID", mail["Message-ID"].strip("<>")]):
            return name, True
        client.append(name, mail.as_bytes())  # without \Seen: unread
    except IMAPClientAbortError:
        raise
    except IMAPClientError as error:
        raise MailboxError(f"the report was not taken into {folder}: {said_by(error)}") from error
    return name, False
