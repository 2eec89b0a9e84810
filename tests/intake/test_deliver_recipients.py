"""Whom an approved draft goes to, and that no customer adds a header or a recipient."""

from __future__ import annotations

from pathlib import Path

import pytest

from bendreply.intake import desk
from bendreply.intake.deliver import DraftsFolder
from bendreply.intake.letter import recipients
from bendreply.intake.model import Address, Message
from bendreply.intake.store import Store

from .deliver_support import DESK, SHOP, approved, delivered, parse, words

HEADERS = [
    "From", "To", "Subject", "Date", "Message-ID", "In-Reply-To", "References", "X-Unsent",
    "Content-Type", "Content-Transfer-Encoding", "MIME-Version",
]  # fmt: skip


def test_a_reply_goes_where_the_customer_wants_it(
    store: Store, tmp_path: Path, make_result
) -> None:
    form = make_result(
        sender=Address(name="Web form", address="noreply@example.org"),
        reply_to=Address(name="Lou", address="lou@example.net"),
    )
    assert delivered(store, tmp_path, form)["To"] == "Lou <lou@example.net>"


def boxes(*addresses: str) -> tuple[Address, ...]:
    return tuple(Address(name="", address=one) for one in addresses)


def test_a_reply_goes_to_every_reply_address_once_and_never_to_the_shop(
    store: Store, tmp_path: Path, make_result
) -> None:
    asked = boxes(
        "a@example.org", "B@example.net", "Desk@shop.example.com", "b@example.net", "none"
    )
    result = make_result(reply_to=asked[0], reply_to_all=asked)
    mail = delivered(store, tmp_path, result)
    assert [one.addr_spec for one in mail["To"].addresses] == ["a@example.org", "B@example.net"]


def test_with_only_the_shop_to_reply_to_the_sender_is_answered() -> None:
    message = Message(
        message_id="a", sender=boxes("lou@example.net")[0], reply_to_all=boxes(SHOP.address)
    )
    assert [one.spec for one in recipients(message, DESK)] == ["lou@example.net"]


def test_the_shops_own_mail_gets_no_draft_to_itself(
    store: Store, tmp_path: Path, make_result
) -> None:
    number = approved(store, make_result(sender=SHOP))
    delivery = desk.deliver(store, DraftsFolder(tmp_path), SHOP)
    assert not delivery.delivered
    (left,) = delivery.left
    assert left.inquiry == number
    assert "no address to reply to but the shop's own" in left.why


# RFC 5322 2.2: a header ends at CRLF, and no customer may end one. Each stands in the subject, the
# names, the ids and the draft's subject; some come as encoded words, once or twice over.
PAYLOADS = [
    "x\r\nBcc: eve@example.org",
    "x\nBcc: eve@example.org",
    "x\rBcc: eve@example.org",
    "x\r\n\r\nA body of my own",
    "x\r\n Bcc: eve@example.org",
    "x\x0bBcc: eve@example.org",
    "x\x0cBcc: eve@example.org",
    "x\x1c\x1d\x1eBcc: eve@example.org",
    "x\x85Bcc: eve@example.org",
    "x\u2028Bcc: eve@example.org",
    "x\u2029Bcc: eve@example.org",
    "x\x00\r\nBcc: eve@example.org",
    "=?utf-8?q?x=0D=0ABcc=3A_eve=40example=2Eorg?=",
    "=?utf-8?b?eA0KQmNjOiBldmVAZXhhbXBsZS5vcmc=?=",
    "=?utf-8?q?=3D=3Futf-8=3Fq=3Fx=3D0D=3D0ABcc=3A_eve=3F=3D?=",
    "=?us-ascii?q?x?= =?utf-8?q?=0ABcc:_eve=40example.org?=",
    "é" * 70 + "\r\nBcc: eve@example.org",
    "é" * 40 + ", eve@example.org, " + "é" * 40,
    'x" <eve@example.org>, "y',
    "x <eve@example.org>; eve2@example.org",
    "(x\r\nBcc: eve@example.org)",
    "\\\r\nBcc: eve@example.org",
    "%0d%0aBcc: eve@example.org",
    "x\ud800\r\nBcc: eve@example.org",
    "undisclosed-recipients: eve@example.org;",
    "x" * 3000 + "\r\nBcc: eve@example.org",
]


@pytest.mark.parametrize("payload", PAYLOADS, ids=range(len(PAYLOADS)))
def test_no_customer_adds_a_header_or_a_recipient(
    store: Store, tmp_path: Path, make_result, payload: str
) -> None:
    result = make_result(
        subject=payload,
        sender=Address(name=payload, address="lou@example.net"),
        message_id=payload,
        in_reply_to=payload,
        references=(payload, "ok@example.net"),
        headers=(("subject", payload),),
    )
    draft = result.draft.model_copy(update={"subject": f"Re: {payload}"})
    mail = delivered(store, tmp_path, result.model_copy(update={"draft": draft}))
    assert set(mail.keys()) <= set(HEADERS)
    assert len(mail.keys()) == len(set(mail.keys()))
    assert [one.addr_spec for one in mail["To"].addresses] == ["lou@example.net"]
    assert [one.addr_spec for one in mail["From"].addresses] == ["desk@shop.example.com"]
    assert words(mail).startswith("Hello,")
    assert not any(c in str(mail["Subject"]) for c in "\r\n")
    assert "<ok@example.net>" in mail["References"]
    head = (tmp_path / "1.eml").read_bytes().partition(b"\r\n\r\n")[0]
    names = [
        line.partition(b":")[0].decode() for line in head.split(b"\r\n") if line[:1] not in b" \t"
    ]
    assert set(names) <= set(HEADERS)
    assert all(len(line) <= 998 for line in head.split(b"\r\n"))


@pytest.mark.parametrize("payload", PAYLOADS, ids=range(len(PAYLOADS)))
@pytest.mark.parametrize("form", ["{}@example.net", "lou@{}", "{}"])
def test_an_address_that_is_none_is_no_recipient(payload: str, form: str) -> None:
    sender = Address(name="", address=form.format(payload))
    message = Message(message_id="a", sender=sender)
    to = "".join(map(str, recipients(message, DESK)))
    assert to == "" or to.isprintable()
    assert "eve@" not in to


@pytest.mark.parametrize(
    ("address", "written"),
    [
        ("o'hara+tube@sub.example.net", "o'hara+tube@sub.example.net"),
        (" lou@example.net ", "lou@example.net"),
        ("büro@example.net", "büro@example.net"),
        ("lou@bücher.example", "lou@xn--bcher-kva.example"),  # RFC 3492, Punycode
        ("", None),
        ("lou", None),
        ("lou@", None),
        ("@example.net", None),
        ("a@b@example.net", None),
        ("lou@example.net, eve@example.org", None),
        ("lou <lou@example.net>", None),
    ],
)
def test_addresses_that_can_be_written_to(address: str, written: str | None) -> None:
    message = Message(message_id="a", sender=Address(name="", address=address))
    to = recipients(message, DESK)
    assert [str(one) for one in to] == ([written] if written else [])


def test_a_name_in_any_script_arrives(store: Store, tmp_path: Path, make_result) -> None:
    for number, name in enumerate(
        ["Zoë Müller", "李 小龙", "शर्मा", "Dr. Ann O'Neil", "Ana-María Núñez", "Söhne & Co."], 1
    ):
        result = make_result(f"c{number}", sender=Address(name=name, address="c@example.net"))
        approved(store, result)
        desk.deliver(store, DraftsFolder(tmp_path), SHOP)
        mail = parse((tmp_path / f"{number}.eml").read_bytes())
        (to,) = mail["To"].addresses
        assert (to.display_name, to.addr_spec) == (name, "c@example.net")


def test_an_address_in_another_script_arrives(store: Store, tmp_path: Path, make_result) -> None:
    """RFC 6532: such a mail is UTF-8 in its headers, too."""
    sender = Address(name="Büro", address="büro@example.net")
    delivered(store, tmp_path, make_result(sender=sender))
    assert "<büro@example.net>".encode() in (tmp_path / "1.eml").read_bytes()
