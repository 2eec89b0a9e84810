"""Stanzas as chat messages; who could pretend what. Stanzas as the XEPs named print them."""

from __future__ import annotations

from datetime import UTC, datetime, timedelta, timezone
from xml.etree.ElementTree import Element, fromstring

import pytest

from bendreply.intake.chat import MAX_TEXT
from bendreply.intake.chat_bursts import join
from bendreply.intake.xmpp.stanzas import Account, archived, live

OWN = Account("shop@example.com", "xmpp:shop@example.com", timezone(timedelta(hours=-6)))
NOW = datetime(2026, 11, 25, 3, 0, tzinfo=UTC)


def message(inside: str, sender: str = "Lou@Example.net/pc", **attributes: str) -> Element:
    more = "".join(f" {name}='{value}'" for name, value in attributes.items())
    return fromstring(f"<message xmlns='jabber:client' from='{sender}'{more}>{inside}</message>")


BODY = "<body>1.75 x .095</body>"
DELAY = "<delay xmlns='urn:xmpp:delay' stamp='2026-11-24T01:00:00Z' from='{}'/>"


def test_a_message_with_its_ids_and_the_day_at_the_shop() -> None:
    line = live(
        message(
            f"{BODY}<stanza-id xmlns='urn:xmpp:sid:0' by='shop@example.com' id='a-1'/>"
            "<origin-id xmlns='urn:xmpp:sid:0' id='o-1'/>"
            "<nick xmlns='http://jabber.org/protocol/nick'>Lou Mayne</nick>",
            id="c-1",
            type="chat",
        ),
        NOW,
        OWN,
    )
    assert line is not None
    assert (line.id, line.origin_id, line.text) == ("a-1", "o-1", "1.75 x .095")
    assert (line.sender.address, line.sender.name) == ("lou@example.net", "Lou Mayne")
    assert line.time.isoformat() == "2026-11-24T21:00:00-06:00"


@pytest.mark.parametrize(
    ("by", "trusted"),
    [("shop@example.com", True), ("example.com", True), ("lou@example.net", False), ("", False)],
)
def test_only_our_server_says_when_a_message_came(by: str, trusted: bool) -> None:
    line = live(message(BODY + DELAY.format(by)), NOW, OWN)
    assert line is not None
    assert line.time == (datetime(2026, 11, 24, 1, 0, tzinfo=UTC) if trusted else NOW)


def test_an_id_by_anybody_else_is_none_of_the_servers() -> None:
    forged = "<stanza-id xmlns='urn:xmpp:sid:0' by='lou@example.net' id='a-1'/>"
    line = live(message(BODY + forged, id="c-1"), NOW, OWN)
    assert line is not None
    assert (line.id, line.origin_id) == (None, "c-1")


@pytest.mark.parametrize(
    ("inside", "attributes"),
    [
        ("<composing xmlns='http://jabber.org/protocol/chatstates'/>", {}),
        ("<received xmlns='urn:xmpp:receipts' id='c-1'/>", {}),
        ("<body>  </body>", {}),
        (BODY, {"type": "error"}),
        (BODY, {"type": "groupchat"}),
        (BODY, {"type": "headline"}),
        (BODY, {"sender": "shop@example.com/phone"}),  # our own people's words
    ],
)
def test_what_is_no_customers_words(inside: str, attributes: dict[str, str]) -> None:
    assert live(message(inside, **attributes), NOW, OWN) is None


FORWARDED = (
    "<forwarded xmlns='urn:xmpp:forward:0'>"
    "<delay xmlns='urn:xmpp:delay' stamp='2026-11-24T01:00:00Z'/>"
    f"<message xmlns='jabber:client' from='lou@example.net/pc' id='c-1' type='chat'>{BODY}"
    "</message></forwarded>"
)
COPY = f"<received xmlns='urn:xmpp:carbons:2'>{FORWARDED}</received>"
RESULT = f"<result xmlns='urn:xmpp:mam:2' queryid='q1' id='a-1'>{FORWARDED}</result>"


def test_a_copy_of_what_went_to_another_device_counts() -> None:
    line = live(message(COPY, sender="shop@example.com"), NOW, OWN)
    assert line is not None
    assert (line.sender.address, line.text) == ("lou@example.net", "1.75 x .095")
    assert line.time == datetime(2026, 11, 24, 1, 0, tzinfo=UTC)


def test_a_copy_of_our_own_peoples_words_does_not() -> None:
    sent = COPY.replace("received", "sent")
    assert live(message(sent, sender="shop@example.com"), NOW, OWN) is None


def test_the_archive_speaks_through_our_server_only() -> None:
    found = archived(message(RESULT, sender="shop@example.com"), "q1", OWN)
    assert found is not None
    assert found.line is not None
    assert (found.id, found.line.id, found.line.origin_id) == ("a-1", "a-1", "c-1")
    assert archived(message(RESULT, sender="shop@example.com"), "q2", OWN) is None
    for pretender in ("mallory@example.org", "example.org"):
        assert archived(message(RESULT, sender=pretender), "q1", OWN) is None
        assert live(message(RESULT, sender=pretender), NOW, OWN) is None
        assert live(message(COPY, sender=pretender), NOW, OWN) is None


def test_what_can_not_be_read_is_named() -> None:
    secret = "<encrypted xmlns='eu.siacs.conversations.axolotl'/><body>I sent you ...</body>"
    url = "https://files.example.net/a/offset%20list.pdf"
    shared = f"<body>{url}</body><x xmlns='jabber:x:oob'><url>{url}</url></x>"
    long = f"<body>{'x' * (MAX_TEXT + 1)}</body>"
    told = []
    for one in (secret, shared, long):
        line = live(message(one), NOW, OWN)
        assert line is not None
        (file,) = join([line]).attachments
        told.append((len(line.text), file.name, file.why_unread))
    assert told == [
        (0, "message", "it is encrypted for the devices of a person"),
        (0, "offset list.pdf", "it lies on a server of the chat, from which nothing is fetched"),
        (MAX_TEXT, "rest of the message", "the message is too long"),
    ]


def test_of_several_languages_the_one_without_a_name_counts() -> None:
    bodies = "<body xml:lang='de'>zwei</body><body>two</body>"
    line = live(message(bodies), NOW, OWN)
    assert line is not None
    assert line.text == "two"
