"""What a customer strikes out in HTML mail is not read, and the person is told of it."""

from __future__ import annotations

import pytest

from bendreply.intake.message import parse_message

HEAD = b"From: a@example.com\nTo: b@example.com\nSubject: mandrel\nMIME-Version: 1.0\n"
HTML = b"<p>1.5 x <s>.065</s> .083 on 4.5 CLR</p>"


def both(plain: bytes, html: bytes) -> bytes:
    return (
        HEAD
        + b'Content-Type: multipart/alternative; boundary="b"\n\n--b\nContent-Type: text/plain\n\n'
        + plain
        + b"\n--b\nContent-Type: text/html\n\n"
        + html
        + b"\n--b--\n"
    )


@pytest.mark.parametrize(
    "raw",
    [
        HEAD + b"Content-Type: text/html\n\n" + HTML,
        both(b"1.5 x .065 .083 on 4.5 CLR", HTML),
    ],
    ids=["html alone", "plain words that leave it standing"],
)
def test_what_is_struck_out_is_told_and_not_read(raw: bytes) -> None:
    message = parse_message(raw)
    assert message.body.split() == "1.5 x .083 on 4.5 CLR".split()
    assert "struck out in the message, and not read: .065" in message.faults


def test_the_plain_words_are_taken_where_nothing_is_struck_out() -> None:
    message = parse_message(both(b"plain 1.5 x .083", b"<p>html 1.5 x .083</p>"))
    assert message.body.strip() == "plain 1.5 x .083"
    assert not any("struck out" in fault for fault in message.faults)
