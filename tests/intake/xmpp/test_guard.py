"""Nothing that the library could write is a message, and nothing goes to anybody but our server."""

from __future__ import annotations

import ast
import asyncio
from pathlib import Path
from xml.etree import ElementTree

import pytest

import bendreply.intake
from bendreply.intake.xmpp.guard import why_refused

OWN = {"shop@example.com", "example.com", "shop@example.com/desk"}
PING = "<ping xmlns='urn:xmpp:ping'/>"


@pytest.mark.parametrize(
    "data",
    [
        "<?xml version='1.0'?><stream:stream to='example.com' xmlns='jabber:client'>",
        "<starttls xmlns='urn:ietf:params:xml:ns:xmpp-tls'/>",
        "</stream:stream>",
        " ",
    ],
)
@pytest.mark.parametrize("encrypted", [False, True])
def test_what_opens_and_closes_the_stream_may_pass(data: str, encrypted: bool) -> None:
    assert why_refused(data, encrypted=encrypted, own=OWN) is None


ALLOWED = [
    "<auth xmlns='urn:ietf:params:xml:ns:xmpp-sasl' mechanism='PLAIN'>AGx</auth>",
    "<presence xmlns='jabber:client'/>",
    "<presence type='unavailable'/>",
    f"<iq type='get' to='example.com' id='1'>{PING}</iq>",
    "<iq type='set' id='2'><query xmlns='urn:xmpp:mam:2' queryid='q'/></iq>",
    "<iq type='error' to='lou@example.net/pc' id='3'/>",
]


@pytest.mark.parametrize("data", ALLOWED)
def test_what_may_pass_once_the_connection_is_encrypted(data: str) -> None:
    assert why_refused(data, encrypted=True, own=OWN) is None
    assert why_refused(data.encode(), encrypted=True, own=OWN) is None
    assert why_refused(data, encrypted=False, own=OWN) == "the connection is not encrypted"


@pytest.mark.parametrize(
    "data",
    [
        "<message to='lou@example.net'><body>hi</body></message>",
        "<message/>",
        "  <message xmlns='jabber:client' to='lou@example.net'/>",
        "<a:message xmlns:a='jabber:client'/>",
        "<!-- x --><message/>",
        "<?xml version='1.0'?><message/>",
        "<presence/><message/>",
        "</stream:stream><message/>",
        "<stream:stream xmlns:stream='s'><message/>",
        "<starttls/><message/>",
        "<presence to='lou@example.net'/>",
        "<presence type='subscribed'/>",
        f"<iq type='get' to='lou@example.net'>{PING}</iq>",
        f"<iq type='get' to='example.com'>{PING}<x xmlns='urn:other'/></iq>",
        "<iq type='set'><pubsub xmlns='http://jabber.org/protocol/pubsub'/></iq>",
        "<iq type='set'><query xmlns='jabber:iq:roster'><item jid='a@b'/></query></iq>",
        "hello",
    ],
)
def test_what_may_not_pass(data: str) -> None:
    assert why_refused(data, encrypted=True, own=OWN) is not None


class Wire:
    """Where written bytes would leave us."""

    def __init__(self) -> None:
        self.written: list[bytes] = []

    def write(self, data: bytes) -> None:
        self.written.append(data)

    def get_extra_info(self, name: str) -> object:
        return self if name == "ssl_object" else None


def test_no_way_of_the_library_puts_a_message_on_the_wire() -> None:
    pytest.importorskip("slixmpp", reason="listening needs the extra xmpp")

    async def run() -> list[bytes]:
        from bendreply.intake.xmpp.account import MutedClient

        client = MutedClient("shop@example.com/desk", "x", encrypted=True)
        wire = client.transport = Wire()
        client._session_started = True
        sending = asyncio.ensure_future(client.run_filters())
        client.send_message("lou@example.net", "hi")
        client.make_message("lou@example.net", "hi").send()
        client.Message().reply("hi").send()
        client.send(client.make_message("lou@example.net", "hi"), use_filters=False)
        client.send("<message to='lou@example.net'/>")
        client.send_xml(ElementTree.fromstring("<message xmlns='jabber:client'/>"))
        client.send_raw("<message/>")
        client.send_raw(b"<message/>")
        client.send_presence(pto="lou@example.net")
        client.send_presence_subscription("lou@example.net")
        client.send_presence()
        await client.waiting_queue.join()
        sending.cancel()
        assert len(client.dropped) == 10
        return wire.written

    (only,) = asyncio.run(run())
    assert only.startswith(b"<presence")


def test_our_own_code_asks_for_no_way_to_send() -> None:
    """Of the library's ways to write, only presence and questions are named anywhere in ours."""
    folder = Path(bendreply.intake.__file__).parent / "xmpp"
    named = {
        node.attr
        for file in folder.glob("*.py")
        for node in ast.walk(ast.parse(file.read_text("utf-8")))
        if isinstance(node, ast.Attribute)
    }
    writes = {
        "send", "send_xml", "send_message", "make_message", "reply", "Message", "Presence",
        "send_presence_subscription", "make_presence", "write",
    }  # fmt: skip
    assert named & writes == {"send"}  # of Iq, in account.py
