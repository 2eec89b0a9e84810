"""Chat lines -> messages: what one person writes in a burst is one request."""

from __future__ import annotations

import json
from datetime import UTC, date, datetime
from typing import Any

import pytest
from hypothesis import given
from hypothesis import strategies as st

from bendreply.intake.chat import ChatError, chat_schema, parse_chat_line
from bendreply.intake.chat_bursts import Burst, read_chat
from bendreply.intake.model import Address, Message

LOU = {"name": "Lou", "address": "lou@example.net"}


def line(time: str, text: str, sender: Any = LOU, thread: str = "t-1", **more: Any) -> bytes:
    said = {"channel": "counter", "thread": thread, "sender": sender, "time": time, "text": text}
    return json.dumps(said | more).encode()


def messages(*lines: bytes) -> list[Message]:
    return [said.message for said in read_chat(lines) if isinstance(said, Burst)]


def test_one_line_is_one_message() -> None:
    (message,) = messages(line("2026-10-19T23:30:00-05:00", "1.75 x .095", id="m-7"))
    assert message.channel == "chat"
    assert message.message_id == "m-7"
    assert message.sender == Address(name="Lou", address="lou@example.net")
    assert message.received_at == datetime(2026, 10, 20, 4, 30, tzinfo=UTC)
    assert message.sent_on == date(2026, 10, 19)  # the day at Lou's clock
    assert message.text == "\n\n1.75 x .095"
    assert message.headers == (("channel", "counter"), ("thread", "t-1"), ("chat-id", "m-7"))


def test_a_burst_is_one_message_with_the_id_of_its_first() -> None:
    (message,) = messages(
        line("2026-10-19T11:00:00Z", "1.75", id="a"),
        line("2026-10-19T11:01:00Z", ".095 wall", id="b"),
        line("2026-10-19T11:11:00Z", "4.5 clr oh and its 4130", id="c"),
    )
    assert message.body == "1.75\n.095 wall\n4.5 clr oh and its 4130"
    assert message.message_id == "a"
    assert [value for name, value in message.headers if name == "chat-id"] == ["a", "b", "c"]


def test_what_does_not_belong_together_stays_apart() -> None:
    said = messages(
        line("2026-10-19T11:00:00Z", "1.75"),
        line("2026-10-19T11:00:01Z", "hello", sender="Ann"),
        line("2026-10-19T11:00:02Z", "2.0", thread="t-2"),
        line("2026-10-19T11:00:03Z", ".095"),
        line("2026-10-19T11:10:04Z", "late"),
    )
    assert [one.body for one in said] == ["1.75\n.095", "hello", "2.0", "late"]


def test_repeated_and_out_of_order_lines() -> None:
    (message,) = messages(
        line("2026-10-19T11:01:00Z", ".095", id="b"),
        line("2026-10-19T11:00:00Z", "1.75", id="a"),
        line("2026-10-19T11:01:00Z", ".095", id="b"),
    )
    assert (message.message_id, message.body) == ("a", "1.75\n.095")


def test_without_an_id_the_message_names_itself_the_same_each_time() -> None:
    first = line("2026-10-19T11:00:00Z", "1.75")
    assert messages(first)[0].message_id == messages(first)[0].message_id
    other = messages(line("2026-10-19T11:00:00Z", "1.75", thread="t-2"))[0]
    assert other.message_id != messages(first)[0].message_id


def test_files_are_named_only() -> None:
    files = [{"name": "..\\x/sketch.png", "content_type": "image/png", "size": 9}, "b.csv"]
    (message,) = messages(line("2026-10-19T11:00:00Z", "see", attachments=files))
    assert [(file.name, file.size) for file in message.attachments] == [
        ("sketch.png", 9),
        ("b.csv", 0),
    ]


def test_controls_and_half_surrogates_never_reach_the_text() -> None:
    (message,) = messages(line("2026-10-19T11:00:00Z", "1.75\x1b[2J\r\n\ud800", sender="L\nBcc: x"))
    assert message.body == "1.75 [2J\n?"
    assert message.sender.name == "L Bcc: x"


@pytest.mark.parametrize(
    ("raw", "why"),
    [
        (b"{", "not valid JSON"),
        (b"\xff", "not valid JSON"),
        (b"[" * 100_000, "not valid JSON"),
        (b"[]", "not a JSON object"),
        (b'{"sender": "Lou", "time": "2026-10-19T11:00:00Z"}', "text: field required"),
        (line("2026-10-19T11:00:00", "x"), "time: needs an offset from UTC"),
        (line("yesterday", "x"), "time: 'yesterday' is no time as in 2026-10-19T11:25:00+02:00"),
        (line("0001-01-01T00:00:00+23:00", "x"), "time: lies outside the calendar"),
        (line(1790000000, "x"), "time: must be an ISO 8601 text"),  # type: ignore[arg-type]
        (line("2026-10-19T11:00:00Z", "x" * 100_001), "text: string should have at most"),
        (line("2026-10-19T11:00:00Z", "x", sender=3), "sender: input should be"),
    ],
)
def test_a_bad_line_is_refused_in_one_clause(raw: bytes, why: str) -> None:
    with pytest.raises(ChatError) as refused:
        parse_chat_line(raw)
    assert str(refused.value).startswith(why)
    assert "\n" not in str(refused.value)


def test_a_bad_line_does_not_stop_the_rest() -> None:
    said = list(read_chat([b"{", b"\n", line("2026-10-19T11:00:00Z", "1.75")]))
    assert isinstance(said[0], tuple)
    assert (said[0][0], type(said[0][1])) == (1, ChatError)
    assert isinstance(said[1], Burst)
    assert said[1].number == 3


def test_a_late_line_fills_the_pause_between_two_bursts() -> None:
    words = {"11:00": "1.75", "11:18": "4.5 clr", "11:09": ".095 wall"}
    said = messages(*(line(f"2026-10-19T{at}:00Z", text) for at, text in words.items()))
    assert [one.body for one in said] == ["1.75\n.095 wall\n4.5 clr"]


def test_a_transcript_is_no_burst() -> None:
    said = messages(*(line(f"2026-10-19T11:{m:02}:00Z", "x" * 9000) for m in range(3)))
    assert [len(one.body) for one in said] == [18001, 9000]


def test_an_id_counts_within_its_chat_only() -> None:
    first = parse_chat_line(line("2026-10-19T11:00:00Z", "a", id="1"))
    again = parse_chat_line(line("2026-10-19T12:00:00Z", "b", id="1"))
    other = parse_chat_line(line("2026-10-19T11:00:00Z", "a", id="1", sender="Ann"))
    assert first.key == again.key != other.key


def test_the_schema_says_what_a_message_needs() -> None:
    schema = json.loads(chat_schema())
    assert schema["required"] == ["sender", "time", "text"]
    assert schema["properties"]["time"]["format"] == "date-time"
    assert {"type": "string"} in schema["properties"]["sender"]["anyOf"]


@given(st.binary(max_size=200))
def test_any_bytes_are_read_or_refused(raw: bytes) -> None:
    list(read_chat([raw]))


@given(
    st.lists(
        st.tuples(st.integers(0, 59), st.sampled_from("AB"), st.sampled_from(["t-1", "t-2"])),
        max_size=12,
    )
)
def test_no_line_is_lost_and_none_is_told_twice(said: list[tuple[int, str, str]]) -> None:
    lines = [
        line(f"2026-10-19T11:{minute:02}:00Z", f"w{number}", sender=who, thread=thread)
        for number, (minute, who, thread) in enumerate(said)
    ]
    words = [word for message in messages(*lines) for word in message.body.split("\n")]
    assert sorted(words) == sorted(f"w{number}" for number in range(len(said)))
