"""Bytes -> words: charsets as mailers mean them, transfer encodings, flowed lines.

Expected texts are written by hand from the bytes shown and the RFC section named.
"""

from __future__ import annotations

import base64

import pytest
from hypothesis import given
from hypothesis import strategies as st

from bendreply.intake.charsets import decode_bytes
from bendreply.intake.flowed import unflow
from bendreply.intake.message import parse_message
from bendreply.intake.model import Message

HEAD = (
    "From: Lou <lou@example.net>\n"
    "Date: Mon, 19 Oct 2026 11:25:00 +0530\n"
    "Message-ID: <m-1@example.net>\n"
)


def mail(header: str, body: str | bytes = "hello\n") -> Message:
    data = body if isinstance(body, bytes) else body.encode()
    return parse_message((HEAD + header).encode() + b"\n" + data)


@pytest.mark.parametrize(
    ("content_type", "body", "text", "fault"),
    [
        ("text/plain; charset=utf-8", "Ø25".encode(), "Ø25", ""),
        ("text/plain; charset=shift_jis", "外径".encode("shift_jis"), "外径", ""),
        ("text/plain; charset=iso-8859-2", "gięcie".encode("iso8859-2"), "gięcie", ""),
        # A curly quote (0x94) is not in ISO 8859-1: WHATWG Encoding Standard reads windows-1252.
        ("text/plain; charset=iso-8859-1", b"1.5\x94 OD", "1.5” OD", "windows-1252"),
        ("text/plain; charset=us-ascii", b"\xd8 25", "Ø 25", "windows-1252"),
        ("text/plain; charset=utf-8", b"\xd8 25", "Ø 25", "windows-1252"),
        ("text/plain; charset=iso-8859-1", "Ø25".encode(), "Ø25", "UTF-8"),
        ("text/plain; charset=utf8mb4", "Ø25".encode(), "Ø25", "utf8mb4"),
        ("text/plain; charset=utf8mb4", b"\xd8 25", "Ø 25", "utf8mb4"),
        ("text/plain; charset=utf8mb4", b"OD 25", "OD 25", "utf8mb4"),
        ("text/plain", b"\xd8 25", "Ø 25", "no charset"),
        ("text/plain; charset=quopri", b"\xd8 25", "Ø 25", "unknown"),
        ("text/plain; charset=utf-16", "Ø25".encode("utf-16"), "Ø25", ""),
        ('text/plain; charset="utf-8"; format=fixed', "Ø25".encode(), "Ø25", ""),
    ],
)
def test_charset(content_type: str, body: bytes, text: str, fault: str) -> None:
    message = mail(f"Content-Type: {content_type}\n", body)
    assert message.body == text
    assert fault in " ".join(message.faults)
    assert bool(message.faults) is bool(fault)


def test_japanese_mail_with_the_square_mm_of_windows() -> None:
    # ㎜ is row 13 cell 80 of the vendor set: codes 2D 50. Python's iso-2022-jp refuses it.
    body = b"25.4\x1b$B\x2d\x50\x1b(B \x1b$B#O#D\x1b(B"
    assert mail("Content-Type: text/plain; charset=iso-2022-jp\n", body).body == "25.4㎜ ＯＤ"


@given(st.text(alphabet="外径肉厚曲半材質数量のアァヶミリＯＤ０９ΦЯ、。亜腕弌熙abc 25.4"))
def test_vendor_japanese_agrees_with_pythons_codec(text: str) -> None:
    # Source: Python's own iso2022_jp codec. The ㎜ behind it makes us take our own way.
    coded = text.encode("iso2022_jp") + b"\x1b$B\x2d\x50\x1b(B"
    assert decode_bytes(coded, "iso-2022-jp", []) == text + "㎜"


@pytest.mark.parametrize(
    ("body", "text", "fault"),
    [
        ("MS43NSBPRA==", "1.75 OD", ""),
        ("MS43NSBPR", "1.75 O", "cut off"),
        ("MS43NSBPRA==\n-- \nsent from a list", "1.75 OD", "after the end"),
        ("MS43NSBPRA==MiBXQUxM", "1.75 OD2 WALL", ""),
        ("this is 1.75 OD, not coded", "this is 1.75 OD, not coded", "not: taken as it stands"),
    ],
)
def test_base64_as_far_as_it_goes(body: str, text: str, fault: str) -> None:
    message = mail("Content-Transfer-Encoding: base64\n", body)
    assert message.body == text
    assert fault in " ".join(message.faults)
    assert bool(message.faults) is bool(fault)


def test_quoted_printable_keeps_a_number_whole_over_a_soft_break() -> None:
    body = "1.45=\n41, 2=C2=BD=E2=80=B3\n"
    header = (
        "Content-Type: text/plain; charset=utf-8\nContent-Transfer-Encoding: quoted-printable\n"
    )
    assert mail(header, body).body == "1.4541, 2½″"


def test_controls_never_reach_the_text() -> None:
    body = mail("", b"1.75\x1b[2J\x07 x .095\xc2\xa0wall\xe2\x80\xa8next").body
    assert body == "1.75 [2J  x .095 wall\nnext"


# ---- format=flowed, RFC 3676


@pytest.mark.parametrize(
    ("text", "delsp", "meant"),
    [
        ("wall .095 \non 5.25 \nclr\nThanks", False, "wall .095 on 5.25 clr\nThanks"),
        ("日本 \n語", True, "日本語"),
        (" From here\n  two blanks", False, "From here\n two blanks"),
        ("> old \n> text\n>> older \n> mixed", False, "> old text\n>> older\n> mixed"),
        ("words \n-- \nLou \nhere", False, "words\n-- \nLou here"),
        ("> -- \n> Lou", False, ">-- \n> Lou"),
    ],
)
def test_flowed_paragraphs_are_joined(text: str, delsp: bool, meant: str) -> None:
    assert unflow(text, delsp=delsp) == meant


def test_flowed_is_taken_from_the_content_type() -> None:
    assert mail('Content-Type: text/plain; format="flowed"; delsp="no"\n', "a \nb\n").body == "a b"
    assert mail("Content-Type: text/plain\n", "a \nb\n").body == "a\nb"


def test_base64_text_by_any_split() -> None:
    text = "Ø 44.45 × 2.11, R 133,35\n" * 20
    coded = base64.encodebytes(text.encode())
    header = "Content-Type: text/plain; charset=utf-8\nContent-Transfer-Encoding: BASE64\n"
    assert mail(header, coded).body == text.rstrip("\n")
