"""Bytes of a mail -> Message. Each test shows the mail as it came, then what must be understood.

Expected texts are written by hand from the mail shown and the RFC section named.
"""

from __future__ import annotations

import email.policy
import hashlib
from datetime import UTC, date, datetime
from email.message import EmailMessage

import pytest
from hypothesis import given
from hypothesis import strategies as st

from bendreply.intake.message import parse_message
from bendreply.intake.model import Address, Kind, Message
from bendreply.intake.pipeline import understand

HEAD = (
    "From: Lou <lou@example.net>\n"
    "Date: Mon, 19 Oct 2026 11:25:00 +0530\n"
    "Message-ID: <m-1@example.net>\n"
)


def mail(header: str, body: str | bytes = "hello\n") -> Message:
    data = body if isinstance(body, bytes) else body.encode()
    return parse_message((HEAD + header).encode() + b"\n" + data)


def subject(coded: str) -> str:
    return mail(f"Subject: {coded}\n").subject


# ---- header


def test_a_plain_mail_needs_no_mime_header_and_has_no_fault() -> None:
    message = mail("To: quotes@example.com\nSubject: 3 inch\n", 'one mandrel, 3" OD 18 GA\n')
    assert message.message_id == "m-1@example.net"
    assert message.sender == Address(name="Lou", address="lou@example.net")
    assert message.to == (Address(name="", address="quotes@example.com"),)
    assert message.text == '3 inch\n\none mandrel, 3" OD 18 GA'
    assert message.text[message.body_start :] == message.body
    assert message.part_types == ("text/plain",)
    assert message.faults == ()


@pytest.mark.parametrize(
    ("coded", "meant"),
    [
        pytest.param("=?utf-8?b?MeKFnSDDlyAuMDgz?= price?", "1⅝ × .083 price?", id="base64"),
        pytest.param("=?utf-8?q?=C3=98_25?=", "Ø 25", id="q: underscore is a blank"),
        # RFC 2047 6.2: blanks between two encoded words are not shown.
        pytest.param("=?utf-8?q?R_1?=\n =?utf-8?q?00?=", "R 100", id="number over two words"),
        # Forbidden by RFC 2047 5 (3), and done: Ø is C3 98.
        pytest.param("=?utf-8?q?=C3?= =?utf-8?q?=98_25?=", "Ø 25", id="letter over two words"),
        pytest.param("=?iso-8859-1?q?=D8_25_=D7_2=2C0?=", "Ø 25 × 2,0", id="latin-1"),
        pytest.param("=?iso-2022-jp?b?GyRCI08jRBsoQg==?=", "ＯＤ", id="full-width letters"),
        pytest.param("=?utf-8*en?q?tube?=", "tube", id="language tag, RFC 2231 5"),
        pytest.param("=?utf-8?q?a?= b =?utf-8?q?c?=", "a b c", id="mixed with plain words"),
        pytest.param("=?utf8mb4?q?=C3=98?= 25", "Ø 25", id="unknown charset"),
        pytest.param("=?utf-8?q?can you?_yes?=", "can you? yes", id="careless question mark"),
        pytest.param("=?utf-8?x?abc?= =?utf-8?q?open", "=?utf-8?x?abc?= =?utf-8?q?open", id="none"),
        pytest.param("one\n two\n\tthree", "one two three", id="folded"),
    ],
)
def test_subject_is_decoded(coded: str, meant: str) -> None:
    assert subject(coded) == meant


@pytest.mark.parametrize("breaker", ["=0D=0A", "=0A", "=0D", "=00", "=E2=80=A8", "=C2=85"])
def test_no_line_break_comes_out_of_an_encoded_word(breaker: str) -> None:
    # "a\nBcc: x@example.org" in a reply's header would be a second recipient.
    assert subject(f"=?utf-8?q?a{breaker}Bcc:_x@example.org?=") == "a Bcc: x@example.org"


def test_raw_8_bit_header_is_read_in_the_charset_of_the_text() -> None:
    # 外径 in Shift_JIS is 8A 4F 8C 61 (from memory; checked with Python's codec below).
    assert "外径".encode("shift_jis") == b"\x8a\x4f\x8c\x61"
    raw = b"Subject: \x8a\x4f\x8c\x61 38.1\nContent-Type: text/plain; charset=shift_jis\n\nhi"
    message = parse_message(HEAD.encode() + raw)
    assert message.subject == "外径 38.1"
    assert "a header has raw 8-bit characters" in message.faults


@pytest.mark.parametrize(
    ("header", "name", "address"),
    [
        (
            "=?utf-8?q?In=C3=A9s?= Halvorsdottir <i@example.org>",
            "Inés Halvorsdottir",
            "i@example.org",
        ),
        ('"R. Dunaway, Buyer" <rd@example.net>', "R. Dunaway, Buyer", "rd@example.net"),
        ("Dunaway, R. <rd@example.net>", "Dunaway, R.", "rd@example.net"),
        ('"=?utf-8?q?J=C3=B6rg?=" <j@example.com>', "Jörg", "j@example.com"),
        ("=?utf-8?q?Weld=2C_Inc?= <w@example.com>", "Weld, Inc", "w@example.com"),
        ("lou@example.net (Lou at the yard)", "Lou at the yard", "lou@example.net"),
        ("lou@example.net", "", "lou@example.net"),
        ("<lou@example.net>", "", "lou@example.net"),
        ("Lou <mailto:lou@example.net>", "Lou", "lou@example.net"),
        ('"Lou "the bender" X" <lou@example.net>', "Lou the bender X", "lou@example.net"),
        ("lou <no address here>", "lou <no address here>", ""),
        ("the shop", "the shop", ""),
        ("a <>, Lou <lou@example.net>", "Lou", "lou@example.net"),
        # A name that spells addresses is still a name.
        (
            '"a@example.com, b@example.com" <lou@example.net>',
            "a@example.com, b@example.com",
            "lou@example.net",
        ),
        ("a@example.com via Lou <lou@example.net>", "a@example.com via Lou", "lou@example.net"),
        ("a@example.com, Lou <lou@example.net>", "Lou", "lou@example.net"),
        ("Lou <a@example.com> <lou@example.net>", "Lou", "lou@example.net"),
        ('"a@example.com" <lou at example.net>', '"a@example.com" <lou at example.net>', ""),
        ('"lou@example.net"', '"lou@example.net"', ""),
        ("Lou\x01 <lou@example.net\t>", "Lou", "lou@example.net"),
        (
            '"a@example.com, b@example.com" <lou@example.net\rBcc:x@example.com>',
            '"a@example.com, b@example.com" <lou@example.net Bcc:x@example.com>',
            "",
        ),
        (
            "=?utf-8?q?L=E2=80=8Bo=E2=80=AEu=0D=0ABcc:_x@example.com,_?= <lou@example.net>",
            "Lou Bcc: x@example.com,",
            "lou@example.net",
        ),
    ],
)
def test_sender(header: str, name: str, address: str) -> None:
    message = parse_message(f"From: {header}\n\nhi".encode())
    assert message.sender == Address(name=name, address=address)
    assert ("the From has no usable address" in message.faults) is (address == "")


def test_all_reply_addresses_are_kept() -> None:
    message = mail(
        "Reply-To: a@example.org, b@example.net, Team: c@example.com, D <d@example.com>;\n"
    )
    assert [one.address for one in message.reply_to_all] == [
        "a@example.org", "b@example.net", "c@example.com", "d@example.com",
    ]  # fmt: skip
    assert message.reply_to == message.reply_to_all[0]


def test_what_was_stored_with_one_reply_address_is_still_read() -> None:
    one = Address(name="", address="c@example.org")
    old = mail("Reply-To: c@example.org\n").model_dump(exclude={"reply_to_all"})
    assert Message.model_validate(old).reply_addresses == (one,)


def test_an_endless_subject_does_not_crowd_out_the_body() -> None:
    ask = "Please quote one mandrel for 1.75 in OD x .095 wall, 5 in CLR.\n"
    message = mail(f"Subject: {'hello there ' * 1700}\n", ask)
    understood = understand(message)
    assert understood.kind is Kind.SIZES
    assert len(understood.requests) == 1
    assert any("subject is longer" in fault for fault in message.faults)


def test_groups_and_several_addresses() -> None:
    message = mail("To: Sales: a@example.com, B <b@example.com>;\nReply-To: <c@example.org>\n")
    assert [one.address for one in message.to] == ["a@example.com", "b@example.com"]
    assert message.reply_to == Address(name="", address="c@example.org")
    assert mail("To: undisclosed-recipients:;\n").to == ()


@pytest.mark.parametrize(
    ("text", "utc", "day"),
    [
        # The day at the sender's clock, not the day in UTC: "by Friday" counts from it.
        ("Thu, 05 Nov 2026 21:09:00 -0600", datetime(2026, 11, 6, 3, 9), date(2026, 11, 5)),
        ("19 Oct 2026 11:25 +0530", datetime(2026, 10, 19, 5, 55), date(2026, 10, 19)),
        ("Mon, 19 Oct 26 11:25:00 EST", datetime(2026, 10, 19, 16, 25), date(2026, 10, 19)),
        ("Mon, 19 Oct 2026 11:25:00 -0000", datetime(2026, 10, 19, 11, 25), date(2026, 10, 19)),
        ("2026-10-19T11:25:00+02:00", datetime(2026, 10, 19, 9, 25), date(2026, 10, 19)),
    ],
)
def test_date(text: str, utc: datetime, day: date) -> None:
    message = parse_message(f"From: a@example.com\nDate: {text}\n\nhi".encode())
    assert message.received_at == utc.replace(tzinfo=UTC)
    assert message.sent_on == day
    assert not [fault for fault in message.faults if "Date" in fault]


@pytest.mark.parametrize(
    "text",
    [
        "8:60606060606060606060606060606",  # a second of 28 digits
        "",
        "yesterday",
        "10:25",
        "03/04/2026 10:00",
        "99 Oct 2026 11:25:00 +0000",
        "Mon, 1 Jan 0001 00:00:00 +0000",  # RFC 5322 3.3: 1900 or later
        "Fri, 31 Dec 9999 23:00:00 +0000",
    ],
)
def test_a_date_that_is_missing_broken_or_has_two_readings_is_none(text: str) -> None:
    message = parse_message(f"From: a@example.com\nDate: {text}\n\nhi".encode())
    assert (message.received_at, message.sent_on) == (None, None)
    assert [fault for fault in message.faults if "Date" in fault]


def test_a_date_without_a_zone_is_said() -> None:
    message = parse_message(b"From: a@example.com\nDate: Mon, 19 Oct 2026 11:25:00\n\nhi")
    assert message.received_at == datetime(2026, 10, 19, 11, 25, tzinfo=UTC)
    assert "the Date has no time zone: taken as UTC" in message.faults


@pytest.mark.parametrize("header", ["", "Message-ID:\n", "Message-ID: a b c\n", "Message-ID: <>\n"])
def test_without_a_message_id_the_bytes_name_the_mail(header: str) -> None:
    raw = f"From: a@example.com\n{header}\nhi".encode()
    digest = hashlib.sha256(raw).hexdigest()
    message = parse_message(raw)
    assert message.message_id == f"sha256-{digest[:32]}@local"
    assert message.raw_sha256 == digest


def test_a_message_id_that_python_trips_over() -> None:
    raw = b"From: a@example.com\nMessage-ID: <a@[b>\nIn-Reply-To: <q1@x> <q2@x>\n"
    with pytest.raises(AttributeError):  # seen on Python 3.11: why we read it ourselves
        _ = email.message_from_bytes(raw, policy=email.policy.default)["message-id"]
    message = parse_message(raw + b"References: <q0@x>\n <q1@x>\n\nhi")
    assert message.message_id == "a@[b"
    assert message.in_reply_to == "q1@x"
    assert message.references == ("q0@x", "q1@x")


def test_headers_for_triage_are_kept_in_order_and_decoded() -> None:
    message = mail(
        "List-Id: =?utf-8?q?R=C3=B6hren?= <r.example.org>\nX-Spam: 1\nPrecedence: bulk\n"
    )
    assert message.headers[-2:] == (("list-id", "Röhren <r.example.org>"), ("precedence", "bulk"))
    assert message.header("x-spam") is None


def test_one_broken_header_line_costs_nothing_else() -> None:
    raw = b"From: a@example.com\nX-Fold: one\nlost its blank\nSubject: 1.75\n\n.095 wall\n"
    message = parse_message(raw)
    assert (message.subject, message.body) == ("1.75", ".095 wall")
    assert "a header line without a name was joined to the one before" in message.faults


def test_text_right_after_the_header_is_text() -> None:
    message = parse_message(b"From: a@example.com\nSubject: x\nwe need 1.75 x .095\nthanks\n")
    assert message.body == "we need 1.75 x .095\nthanks"
    assert "no blank line between header and text" in message.faults


def test_words_without_any_header_are_all_text() -> None:
    message = parse_message(b"we need 1.75 x .095, 5.25 clr\n")
    assert message.body == "we need 1.75 x .095, 5.25 clr"
    assert message.sender == Address(name="", address="")
    assert "there is no header" in message.faults


@pytest.mark.parametrize("end", ["\n", "\r\n", "\r"])
def test_every_line_end(end: str) -> None:
    raw = (HEAD + "Subject: s\n\none\ntwo\n").replace("\n", end).encode()
    assert parse_message(raw).text == "s\n\none\ntwo"


# ---- any bytes; the standard library as judge


@given(st.binary(max_size=400))
def test_never_raises_on_any_bytes(raw: bytes) -> None:
    message = parse_message(raw)
    message.model_dump_json().encode()
    assert "\n" not in message.subject


PIECES = st.sampled_from(
    [
        b"From: a@b.c\n",
        b"Content-Type: multipart/mixed; boundary=x\n",
        b"Content-Type: text/html; charset=hz\n",
        b"Content-Type: text/plain; format=flowed; charset=utf-16\n",
        b"Content-Type: message/rfc822\n",
        b"Content-Transfer-Encoding: base64\n",
        b"\n",
        b"--x\n",
        b"--x--\n",
        b"=?utf-8?q?=0A",
        b"?=",
        b"\x1b$B",
        b"> ",
        b"<table><td rowspan=0>",
        b"boundary*0*=",
        b'"',
        b"\xff",
    ]
)


@given(st.lists(st.one_of(PIECES, st.binary(max_size=8)), max_size=30).map(b"".join))
def test_never_raises_on_broken_mime(raw: bytes) -> None:
    parse_message(raw)


WORDS = st.text(alphabet=st.characters(exclude_categories=["C", "Z"]) | st.just(" "), max_size=60)


@given(subject=WORDS, body=WORDS, name=WORDS, blob=st.binary(max_size=80))
def test_reads_what_pythons_email_package_writes(
    subject: str, body: str, name: str, blob: bytes
) -> None:
    """Source: the standard library's generator, an implementation that is not ours."""
    written = EmailMessage()
    written["From"] = "a@example.com"
    written["Subject"] = subject
    written.set_content(body)
    written.add_attachment(
        blob, maintype="application", subtype="pdf", filename=f"x{name.strip()}.pdf"
    )
    message = parse_message(written.as_bytes())
    squeezed = " ".join
    assert squeezed(message.subject.split()) == squeezed(subject.split())
    assert message.body == (body if body.strip() else "")
    assert message.attachments[0].size == len(blob)
