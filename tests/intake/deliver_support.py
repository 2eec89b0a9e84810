"""Approved drafts delivered, and read back as mail by the standard library."""

from __future__ import annotations

import email
import email.policy
from email.message import EmailMessage
from pathlib import Path

from bendreply.intake import desk
from bendreply.intake.deliver import DraftsFolder
from bendreply.intake.letter import Mailbox
from bendreply.intake.model import Address
from bendreply.intake.store import Store

SHOP = Address(name="Quill Bend Tooling", address="desk@shop.example.com")
DESK = Mailbox(SHOP.name, SHOP.address)


def approved(store: Store, result) -> int:
    number = desk.take_in(store, result, "x").inquiry
    desk.approve(store, number, "Ann")
    return number


def delivered(store: Store, folder: Path, result) -> EmailMessage:
    """The one draft of a store, read back from its file."""
    number = approved(store, result)
    delivery = desk.deliver(store, DraftsFolder(folder), SHOP)
    assert [one.inquiry for one in delivery.delivered] == [number], delivery.left
    return parse((folder / f"{number}.eml").read_bytes())


def parse(data: bytes) -> EmailMessage:
    return email.message_from_bytes(data, policy=email.policy.default)


def words(mail: EmailMessage) -> str:
    """What the person reads: mail ends its lines in CRLF."""
    return mail.get_content().replace("\r\n", "\n")
