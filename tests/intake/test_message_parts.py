"""MIME parts of any quality -> one body, the files beside it, and what was forwarded (RFC 2046)."""

from __future__ import annotations

import base64
import csv
import io

import pytest

from bendreply.intake.message import parse_message
from bendreply.intake.model import Message

from ..pace import assert_quick

HEAD = "From: lou@example.net\nDate: Mon, 19 Oct 2026 11:25:00 +0530\nMessage-ID: <m-1@x>\n"
PLAIN = "Content-Type: text/plain; charset=utf-8\n\n"
HTML = "Content-Type: text/html; charset=utf-8\n\n"


def parts(kind: str, *inner: str, boundary: str = "b-1") -> str:
    """A multipart entity, header and all."""
    body = "".join(f"--{boundary}\n{one}\n" for one in inner)
    return f'Content-Type: {kind}; boundary="{boundary}"\n\n{body}--{boundary}--\n'


def read(entity: str) -> Message:
    return parse_message((HEAD + entity).encode())


# ---- whose words are the body


def test_alternative_prefers_the_plain_part() -> None:
    message = read(
        parts("multipart/alternative", PLAIN + "1.75 x .095", HTML + "<p>1.75 x .095</p>")
    )
    assert message.body == "1.75 x .095"
    assert message.part_types == ("multipart/alternative", "text/plain", "text/html")
    assert message.faults == ()


@pytest.mark.parametrize(
    "stub",
    [
        "",
        " \n",
        "Please view this message in HTML.",
        "Your mail program does not support HTML.",
        "To see this e-mail correctly, open it in your browser",
        "Bitte öffnen Sie die HTML-Ansicht dieser Nachricht.",
    ],
)
def test_alternative_takes_the_html_where_the_plain_part_says_nothing(stub: str) -> None:
    message = read(parts("multipart/alternative", PLAIN + stub, HTML + "<p>1.75 x .095</p>"))
    assert message.body == "1.75 x .095"


def test_a_customer_who_speaks_of_html_is_no_stub() -> None:
    words = "I can not view the html page of your catalogue. " * 9 + "Need 1.75 x .095"
    assert read(parts("multipart/alternative", PLAIN + words, HTML + "<p>x</p>")).body == words
    assert read(parts("multipart/alternative", PLAIN + "see the html version")).body != ""


def test_parts_one_after_another_are_one_text() -> None:
    message = read(parts("multipart/mixed", PLAIN + "1.75 x .095\n", PLAIN + "on 5.25"))
    assert message.body == "1.75 x .095\n\non 5.25"


def test_the_same_words_sent_twice_as_mixed_are_said_once() -> None:
    message = read(parts("multipart/mixed", PLAIN + "1.75 x\n.095", HTML + "<p>1.75 x .095</p>"))
    assert message.body == "1.75 x\n.095"


def test_a_drawing_in_the_html_branch_is_not_lost() -> None:
    drawing = "Content-Type: application/pdf; name=a.pdf\n\n%PDF"
    related = parts("multipart/mixed", HTML + "<p>hi</p>", drawing, boundary="b-2")
    message = read(parts("multipart/alternative", PLAIN + "1.75", related))
    assert message.body == "1.75"
    assert [one.name for one in message.attachments] == ["a.pdf"]


def test_multipart_without_a_boundary() -> None:
    """Both parts would show as one text with delimiter lines in it."""
    inner = f"--=_a7\n{PLAIN}48.3 mm, 2.6 wall\n--=_a7\n{HTML}<p>48.3 mm, 2.6 wall</p>\n--=_a7--\n"
    message = read("Content-Type: multipart/alternative\n\n" + inner)
    assert message.body == "48.3 mm, 2.6 wall"
    assert message.faults == (
        "multipart/alternative without a usable boundary: parts found by guess",
    )


def test_multipart_whose_content_type_was_lost() -> None:
    message = read(f"\nThis is a multi-part message.\n--x\n{PLAIN}1.75\n--x--\n")
    assert message.body == "1.75"
    assert "the Content-Type is missing: parts found by their delimiter lines" in message.faults


def test_multipart_without_any_part_is_text() -> None:
    assert read("Content-Type: multipart/mixed; boundary=x\n\n1.75 x .095\n").body == "1.75 x .095"


def test_a_mail_that_is_cut_off_says_so() -> None:
    message = read(f"Content-Type: multipart/mixed; boundary=x\n\n--x\n{PLAIN}1.75 x .0")
    assert message.body == "1.75 x .0"
    assert "multipart/mixed is not closed: the mail may be cut off" in message.faults


def test_a_boundary_that_begins_with_the_outer_one() -> None:
    inner = parts("multipart/alternative", PLAIN + "1.75", HTML + "x", boundary="b-1-inner")
    assert read(parts("multipart/mixed", inner, PLAIN + "end")).body == "1.75\n\nend"


def test_dashes_inside_a_line_are_no_delimiter() -> None:
    assert read(parts("multipart/mixed", PLAIN + "a --b-1\n--b-1 x")).body == "a --b-1\n--b-1 x"


def test_html_takes_its_charset_from_its_own_head() -> None:
    page = '<html><head><meta charset="iso-8859-2"></head><body>gięcie</body></html>'
    raw = f"{HEAD}Content-Type: text/html\n\n".encode() + page.encode("iso8859-2")
    assert parse_message(raw).body == "gięcie"


# ---- files


def test_attachment_is_named_measured_and_not_read() -> None:
    coded = base64.encodebytes(b"%PDF-1.4 drawing").decode()
    header = (
        "Content-Type: application/pdf\nContent-Transfer-Encoding: base64\n"
        'Content-Disposition: attachment; filename="20437-C.pdf"\n\n'
    )
    message = read(parts("multipart/mixed", PLAIN + "see print", header + coded))
    (file,) = message.attachments
    assert (file.name, file.content_type, file.size) == ("20437-C.pdf", "application/pdf", 16)
    assert file.text is None
    assert message.body == "see print"


@pytest.mark.parametrize(
    ("parameter", "name"),
    [
        ('filename="=?utf-8?q?R=C3=B6hre.csv?="', "Röhre.csv"),
        ("filename*=utf-8''R%C3%B6hre.csv", "Röhre.csv"),  # RFC 2231 4
        ("filename*0*=iso-8859-1'de'R%F6; filename*1=\"hre.csv\"", "Röhre.csv"),  # RFC 2231 3
        ('filename="C:\\\\Users\\\\lou\\\\sizes.csv"', "sizes.csv"),
        ('filename="../../etc/passwd"', "passwd"),
        ('filename="a\\"b.csv"', "a_b.csv"),
        ("filename=sizes list.csv", "sizes list.csv"),
        ("filename=", ""),
    ],
)
def test_attachment_name(parameter: str, name: str) -> None:
    part = f"Content-Type: text/csv\nContent-Disposition: attachment; {parameter}\n\nOD;WALL\n"
    (file,) = read(parts("multipart/mixed", PLAIN + "hi", part)).attachments
    assert file.name == name


@pytest.mark.parametrize(
    ("content_type", "name"),
    [
        ("text/csv", "a.csv"),
        ("text/plain", "a.txt"),
        ("application/vnd.ms-excel", "a.csv"),
        ("application/octet-stream", "A.CSV"),
    ],
)
def test_attached_tables_are_read(content_type: str, name: str) -> None:
    coded = base64.encodebytes("Ø;wall\r\n1,75;2\r\n".encode("cp1252")).decode()
    header = (
        f"Content-Type: {content_type}; charset=windows-1252\nContent-Transfer-Encoding: base64\n"
        f"Content-Disposition: attachment; filename={name}\n\n"
    )
    (file,) = read(parts("multipart/mixed", PLAIN + "hi", header + coded)).attachments
    assert list(csv.reader(io.StringIO(file.text or ""), delimiter=";")) == [
        ["Ø", "wall"],
        ["1,75", "2"],
    ]


def test_a_picture_that_calls_itself_text_is_not_read() -> None:
    part = "Content-Type: text/plain; name=a.txt\n\nGIF\0\0\0"
    message = read(parts("multipart/mixed", PLAIN + "hi", part))
    assert message.attachments[0].text is None
    assert "the attachment 'a.txt' calls itself text, but is not" in message.faults


def test_an_invitation_is_a_file_and_a_part_type() -> None:
    message = read(parts("multipart/alternative", PLAIN + "hi", "Content-Type: text/calendar\n\nX"))
    assert (message.body, message.part_types[-1]) == ("hi", "text/calendar")
    assert message.attachments[0].content_type == "text/calendar"


# ---- mails inside a mail

INNER = "From: =?utf-8?q?In=C3=A9s?= <ines@example.org>\nDate: Tue, 20 Oct 2026 08:00:00 +0000\n"


def test_forwarded_as_attachment_stands_below_a_line_that_says_so() -> None:
    inner = (
        f"Content-Type: message/rfc822\n\n{INNER}Subject: old\nMIME-Version: 1.0\n{PLAIN}1.5 x .065"
    )
    message = read(parts("multipart/mixed", PLAIN + "see below", inner))
    assert message.body == (
        "see below\n\n"
        "-------- Forwarded message --------\n"
        "From: Inés <ines@example.org>\n"
        "Date: Tue, 20 Oct 2026 08:00:00 +0000\n"
        "Subject: old\n\n"
        "1.5 x .065"
    )
    assert message.part_types == ("multipart/mixed", "text/plain", "message/rfc822")
    assert message.subject == ""


def test_forwarded_in_base64_is_read_too() -> None:
    coded = base64.encodebytes(f"{INNER}{PLAIN}1.5 x .065".encode()).decode()
    part = f"Content-Type: message/rfc822\nContent-Transfer-Encoding: base64\n\n{coded}"
    assert read(parts("multipart/mixed", PLAIN + "fyi", part)).body.endswith("\n\n1.5 x .065")


def test_digest_parts_are_mails_by_default() -> None:
    """RFC 2046 5.1.5: a part of a digest without a Content-Type is a message/rfc822."""
    message = read(parts("multipart/digest", f"\n{INNER}\nneed 1.5", f"\n{INNER}\nneed 2.0"))
    assert message.body.count("-------- Forwarded message --------") == 2
    assert message.part_types[1:] == ("message/rfc822", "message/rfc822")


def test_bounce() -> None:
    """RFC 3464: the words first, then what the machine says, then the mail that came back."""
    message = read(
        parts(
            "multipart/report; report-type=Delivery-Status",
            PLAIN + "could not be delivered",
            "Content-Type: message/delivery-status\n\nStatus: 5.1.1\n",
            f"Content-Type: message/rfc822\n\n{INNER}\nwe can make 1.5 x .065",
        )
    )
    assert message.report_type == "delivery-status"
    own, _, rest = message.body.partition("-------- Forwarded message --------")
    assert own.strip() == "could not be delivered"
    assert "Status: 5.1.1" in rest
    assert "we can make 1.5 x .065" in rest


# ---- caps: each one that is hit is named


def test_caps_are_named() -> None:
    many = read(parts("multipart/mixed", *[PLAIN + "a"] * 300))
    assert len(many.part_types) == 200
    assert "more than 200 parts: the rest was not read" in many.faults

    deep = PLAIN + "bottom"
    for level in range(30):
        deep = parts("multipart/mixed", deep, boundary=f"level-{level}-")
    message = read(deep)
    assert "bottom" not in message.body
    assert "parts nested deeper than 20: the innermost were not read" in message.faults

    long = read(PLAIN + "1.75 x .095\n" * 200_000)  # 2.4 MB
    assert len(long.body) == 2_000_000
    assert "the text is longer than 2 MB: the rest was not read" in long.faults

    part = "Content-Type: text/csv; name=big.csv\n\n" + "1.75;.095\n" * 150_000  # 1.5 MB
    message = read(parts("multipart/mixed", PLAIN + "hi", part))
    assert len(message.attachments[0].text or "") == 1_000_000
    assert "of the attachment 'big.csv' only the first megabyte was read" in message.faults


@pytest.mark.parametrize(
    "raw",
    [
        # Python's own parser raises on the first two and runs out of stack on the third.
        b"Content-Type: multipart/mixed; boundary*" + b"1" * 5000 + b"=a\n\n1.75",
        b"Content-Type: multipart/mixed; boundary*=a\0b''x\n\n1.75",
        b"".join(
            b"Content-Type: multipart/mixed; boundary=b%d\n\n--b%d\n" % (n, n) for n in range(5000)
        ),
        b"From: " + b"=?a?q?x" * 20_000 + b"\n\n1.75",
        b"From: " + b'"\\' * 50_000 + b"\n\n1.75",
        b"Subject: x\n" + b"List-A: b\n" * 20_000 + b"\n1.75",
    ],
    ids=["digits", "nul", "nested", "words", "quotes", "fields"],
)
def test_hostile_mail_is_read_in_no_time(raw: bytes) -> None:
    assert_quick(lambda: parse_message(raw), within=1.0)
