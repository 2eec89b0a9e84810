"""What the chat account may put on the wire: login, presence to its own server, and asking it.

The library below can send messages, so every byte that it would write passes here first. Allowed
is what is listed; a message is not on the list, in no form and to nobody.
"""

from __future__ import annotations

import re
from collections.abc import Collection
from xml.etree import ElementTree

_OPENING = re.compile(r"\s*(?:<\?xml[^>]*\?>\s*)?<(/?[A-Za-z:]+)")
_BEFORE_TLS = frozenset(("stream:stream", "/stream:stream", "starttls"))
_LOGIN = frozenset(("auth", "response", "abort"))
_ASKED = frozenset(
    (
        "urn:ietf:params:xml:ns:xmpp-bind",
        "urn:ietf:params:xml:ns:xmpp-session",
        "http://jabber.org/protocol/disco#info",
        "urn:xmpp:mam:2",
        "urn:xmpp:carbons:2",
        "urn:xmpp:ping",
    )
)
"""What the own server may be asked for (RFC 6120; XEP-0030, 0313, 0280, 0199)."""


def why_refused(data: str | bytes, *, encrypted: bool, own: Collection[str]) -> str | None:
    """Why something may not be written, in a clause; None where it may.

    ``encrypted``: whether the connection is (or need not be, on this very machine). ``own``: the
    addresses of our account and its server, the only ones that anything may be addressed to.
    """
    text = data.decode("utf-8", "replace") if isinstance(data, bytes) else data
    if not text.strip():  # a sign of life: RFC 6120 4.6.1
        return None
    opening = _OPENING.match(text)
    name = opening[1] if opening else ""
    if name in _BEFORE_TLS:
        return (
            None if text.count("<") == 1 + text.count("<?") else "it holds more than it begins with"
        )
    if not encrypted:
        return "the connection is not encrypted"
    try:
        stanza = ElementTree.fromstring(text)
    except ElementTree.ParseError:
        return "it is not one whole stanza"
    kind = stanza.tag.rpartition("}")[2]
    to = stanza.get("to")
    if kind in _LOGIN:
        return None
    if kind == "presence":
        plain = to is None and stanza.get("type") in (None, "unavailable")
        return None if plain else "presence goes to nobody by name"
    if kind != "iq":
        return f"<{kind}/> is not among what may be sent"
    if stanza.get("type") in ("result", "error"):
        return None  # RFC 6120 8.2.3: whoever asks is answered, if only that we don't know
    if to not in (None, *own):
        return "only our own server is asked for anything"
    asked = {child.tag[1:].partition("}")[0] for child in stanza}
    return None if asked <= _ASKED else "the server is not asked for that"
