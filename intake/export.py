"""Corrections as labelled messages: what a person put right is what ``score`` measures against."""

from __future__ import annotations

import json
from dataclasses import dataclass, field
from email.message import EmailMessage
from email.policy import SMTP
from pathlib import Path
from typing import TYPE_CHECKING, Any

from ..rules.request import SizeRequest
from .addressing import one_line
from .inquiry import Inquiry, State
from .model import Message

if TYPE_CHECKING:
    from .store import Store

GOLD = "gold.jsonl"
LONGEST_FIELD = 200


@dataclass(slots=True)
class Exported:
    """What was written, and what was not."""

    written: list[int] = field(default_factory=list)
    left: list[str] = field(default_factory=list)


def export_corrections(store: Store, folder: Path, address: str) -> Exported:
    """Every corrected inquiry as a mail and a line of labels in a new ``folder``.

    The mail is made anew from the words that are kept. Its sender becomes ``address``: the words
    themselves are the customer's, and may name anybody. Raises OSError; FileExistsError where the
    folder has labels already.
    """
    folder.mkdir(parents=True, exist_ok=True)
    exported = Exported()
    with store.reading() as book, (folder / GOLD).open("x", encoding="utf-8") as labels:
        for number in book.all_numbers():
            inquiry = book.inquiry(number)
            if inquiry is None or not inquiry.corrections or inquiry.state is State.NO_REPLY:
                continue
            if inquiry.earlier:
                exported.left.append(
                    f"inquiry {number} was asked in several messages: none of them alone says it"
                )
                continue
            name = f"{number:05}.eml"
            (folder / name).write_bytes(_mail(inquiry.message, address))
            labels.write(json.dumps(_label(inquiry, name), ensure_ascii=False) + "\n")
            exported.written.append(number)
    return exported


def _mail(message: Message, address: str) -> bytes:
    mail = EmailMessage(policy=SMTP)
    mail["From"] = f"Customer <{address}>"
    mail["Subject"] = one_line(message.subject, LONGEST_FIELD).replace("=?", "= ?")
    if message.received_at is not None:
        mail["Date"] = message.received_at
    mail.set_content(message.body, charset="utf-8")
    for attachment in message.attachments:
        if attachment.text is not None:  # under a name of ours: theirs is a stranger's text
            mail.add_attachment(attachment.text, filename="attachment.txt")
    return mail.as_bytes()


def _label(inquiry: Inquiry, name: str) -> dict[str, Any]:
    return {
        "file": name,
        "kind": str(inquiry.kind),
        "requests": [_size(one.request) for one in inquiry.assessments],
        "tags": ["corrected", *sorted({one.field for one in inquiry.corrections})],
        "why": "; ".join(
            f"size {one.index + 1} {one.field}: {one.before} to {one.after}"
            + (f" by {one.by}" if one.by else "")
            for one in inquiry.corrections
        ),
    }


def _size(request: SizeRequest) -> dict[str, Any]:
    lengths = {
        key: None if value is None else float(value)
        for key, value in (
            ("od_mm", request.od_mm),
            ("wall_mm", request.wall_mm),
            ("clr_mm", request.clr_mm),
        )
    }
    return {
        "shape": str(request.shape),
        **lengths,
        "material": None if request.material is None else str(request.material),
        "grade": request.grade,
        "quantity": request.quantity,
        "needed_by": None if request.needed_by is None else request.needed_by.isoformat(),
        "doubt": sorted({one.field for one in request.doubts}),
    }
