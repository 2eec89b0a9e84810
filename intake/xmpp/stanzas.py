"""XMPP stanzas as chat messages: whose words, when, by which ids; what is none is left out."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import UTC, datetime, tzinfo
from urllib.parse import unquote
from xml.etree.ElementTree import Element

from ..chat import MAX_TEXT, ChatAttachment, ChatLine, ChatSender

CLIENT = "{jabber:client}"
MAM = "urn:xmpp:mam:2"
RSM = "{http://jabber.org/protocol/rsm}"
FORWARD = "{urn:xmpp:forward:0}"
_LANG = "{http://www.w3.org/XML/1998/namespace}lang"
_ENCRYPTED = (
    "{eu.siacs.conversations.axolotl}encrypted",
    "{urn:xmpp:omemo:2}encrypted",
    "{urn:xmpp:openpgp:0}openpgp",
    "{jabber:x:encrypted}x",
)


@dataclass(frozen=True, slots=True)
class Account:
    """Whose messages these are: our own bare address, its channel, the shop's clock."""

    jid: str
    channel: str
    zone: tzinfo

    @property
    def domain(self) -> str:
        """Our server."""
        return self.jid.partition("@")[2]


@dataclass(frozen=True, slots=True)
class Archived:
    """A message out of the server's archive (XEP-0313): its id there, and what it says, if any."""

    id: str
    line: ChatLine | None


def bare(address: str | None) -> str:
    """An address without its resource, as addresses are compared."""
    return (address or "").partition("/")[0].lower()


def archived(stanza: Element, query: str, own: Account) -> Archived | None:
    """An answer to our query of the archive; None for any other stanza.

    Only what our own server says counts: anybody can put such an element into a message.
    """
    result = stanza.find(f"{{{MAM}}}result")
    if result is None or result.get("queryid") != query or not _of_server(stanza, own):
        return None
    forwarded = result.find(f"{FORWARD}forwarded")
    inner = None if forwarded is None else forwarded.find(f"{CLIENT}message")
    number = result.get("id", "")
    if forwarded is None or inner is None or not number:
        return None
    at = _stamp(forwarded.find("{urn:xmpp:delay}delay"))
    return Archived(number, None if at is None else _line(inner, number, at, own))


def live(stanza: Element, now: datetime, own: Account) -> ChatLine | None:
    """A message as it comes in, also one that waited at the server or went to another device of
    ours; None for what is no customer's words.
    """
    if _of_server(stanza, own):
        copy = stanza.find("{urn:xmpp:carbons:2}received")
        forwarded = None if copy is None else copy.find(f"{FORWARD}forwarded")
        inner = None if forwarded is None else forwarded.find(f"{CLIENT}message")
        if forwarded is None or inner is None:
            return None
        waited = forwarded.find("{urn:xmpp:delay}delay")
        stanza = inner
    else:
        waited = next(
            # XEP-0203: a delay is the server's word; the sender could write one, too.
            (
                one
                for one in stanza.findall("{urn:xmpp:delay}delay")
                if bare(one.get("from")) in (own.domain, own.jid)
            ),
            None,
        )
    number = next(
        (
            one.get("id")
            for one in stanza.findall("{urn:xmpp:sid:0}stanza-id")
            if bare(one.get("by")) == own.jid
        ),
        None,
    )
    return _line(stanza, number, _stamp(waited) or now, own)


def _of_server(stanza: Element, own: Account) -> bool:
    return bare(stanza.get("from") or own.jid) == own.jid


def _stamp(delay: Element | None) -> datetime | None:
    if delay is None:
        return None
    try:
        moment = datetime.fromisoformat(delay.get("stamp", ""))
    except ValueError:
        return None
    return moment if moment.tzinfo is not None else moment.replace(tzinfo=UTC)  # XEP-0082: UTC


def _line(stanza: Element, number: str | None, at: datetime, own: Account) -> ChatLine | None:
    sender = bare(stanza.get("from"))
    if sender in ("", own.jid) or stanza.get("type", "normal") not in ("chat", "normal"):
        return None
    text, files = _said(stanza)
    if not text.strip() and not files:  # that somebody is typing, has read, wants a receipt
        return None
    origin = stanza.find("{urn:xmpp:sid:0}origin-id")
    nick = stanza.findtext("{http://jabber.org/protocol/nick}nick", "")
    return ChatLine(
        channel=own.channel,
        id=number,
        origin_id=(origin.get("id") if origin is not None else None) or stanza.get("id"),
        sender=ChatSender(name=nick.strip(), address=sender),
        # The day counts at the shop's clock: that of the sender is not known.
        time=at.astimezone(own.zone),
        text=text,
        attachments=tuple(files),
    )


def _said(stanza: Element) -> tuple[str, list[ChatAttachment]]:
    """Its words, and what of it can't be read here."""
    if any(stanza.find(one) is not None for one in _ENCRYPTED):
        # The words in clear beside it are those of a program.
        why = "it is encrypted for the devices of a person"
        return "", [ChatAttachment(name="message", why_unread=why)]
    bodies = stanza.findall(f"{CLIENT}body")
    plain = [one for one in bodies if one.get(_LANG) is None]
    text = next((one.text or "" for one in (*plain, *bodies)), "")
    files = []
    for url in stanza.findall("{jabber:x:oob}x/{jabber:x:oob}url"):
        address = (url.text or "").strip()
        name = unquote(address.partition("?")[0].partition("#")[0].rpartition("/")[2]) or "file"
        why = "it lies on a server of the chat, from which nothing is fetched"
        files.append(ChatAttachment(name=name, why_unread=why))
        if text.strip() == address:
            text = ""
    if len(text) > MAX_TEXT:
        files.append(
            ChatAttachment(name="rest of the message", why_unread="the message is too long")
        )
        text = text[:MAX_TEXT]
    return text, files
