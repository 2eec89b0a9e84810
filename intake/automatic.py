"""Mail that no person wrote, or not to us: it is never answered.

Headers decide first (RFC 3834 Auto-Submitted, RFC 2919 and 2369 list headers, RFC 3464 reports),
wording after that, for what arrives without them. In doubt a message is a person's: an absence note
that gets a draft costs a glance, a customer who gets none is lost.
"""

from __future__ import annotations

from . import words_automatic as words
from . import words_machine
from .late import Late
from .late_cues import Cues
from .model import Message, OwnText
from .quote_lines import subject_prefixes
from .said_words import said_words
from .words_errand import TUBE_FIGURES

_BEGINNING, _END = 8_000, 4_000
"""Wording is looked for in so many characters at either end: what a program says of itself stands
first or in the footer. Headers have no such bound."""
_LIST_HEADERS = (
    "list-id",
    "list-unsubscribe",
    "list-post",
    "list-help",
    "list-subscribe",
    "list-archive",
    "list-owner",
    "list-unsubscribe-post",
)
_MACHINE_HEADERS = (
    "x-autoreply",
    "x-autorespond",
    "x-auto-reply",
    "x-autoresponder",
    "x-autoreply-from",
    "x-mail-autoreply",
    "x-vacation",
    "x-failed-recipients",
    "x-fc-machinegenerated",
    "x-csa-complaints",
    "x-campaign",
    "x-campaign-id",
    "x-campaignid",
    "x-mailgun-campaign-id",
    "x-mc-user",
)


_ABSENCE_SUBJECT = Late(words.ABSENCE_SUBJECTS)
_ABSENCE_MARK = Late(words.ABSENCE_MARKS)
_AWAY = Late(words.AWAY)
_UNTIL = Late(words.AWAY_UNTIL)
_INSTEAD = Late(words.AWAY_INSTEAD)
_MAIL_WAITS = Late(words.MAIL_WAITS)
_BOUNCE_SUBJECT = Late(words.BOUNCE_SUBJECTS)
_BOUNCE_WORDS = Late(words.BOUNCE_WORDS)
_RECEIPT_SUBJECT = Late(words.RECEIPT_SUBJECTS)
_RECEIPT_WORDS = Late(words.RECEIPT_WORDS)
_INVITATION_SUBJECT = Late(words.INVITATION_SUBJECTS)
_INVITATION_WORDS = Late(words.INVITATION_WORDS)
_DIGEST = Late(words.DIGEST_WORDS)
_FORM_FIELDS = [Late([pattern]) for pattern in words.FORM_FIELDS]
_FORM_WORDS = Late(words.FORM_WORDS)
_PERSON_ASKS = Late(words.PERSON_ASKS)
_NO_REPLY = Late([words.NO_REPLY_SENDER])
_SYSTEM_SENDER = Late([words.SYSTEM_SENDER])
_ROLE_SENDER = Late([words.ROLE_SENDER])
_SIZE = Late([TUBE_FIGURES])
_BULK = Cues((weight, Late([cue])) for weight, cue in words_machine.BULK)
_NOTICE = Cues((weight, Late([cue])) for weight, cue in words_machine.NOTICE)


def automatic(message: Message, own: OwnText) -> str | None:
    """Why the message is automatic, in one plain clause, or None where a person wrote it."""
    form = is_website_form(message)
    by_header = _by_header(message, form=form, own=own)
    if by_header is not None or form:
        return by_header
    return _by_wording(message, own)


def is_website_form(message: Message) -> bool:
    """Did a person fill in a form, whose program then mailed it in its own name?"""
    body = _ends(message.body)
    fields = sum(1 for field in _FORM_FIELDS if field.search(body))
    no_reply = _NO_REPLY.search(message.sender.address) is not None
    if not _has_person_to_answer(message):
        return no_reply and fields >= 3
    named = _FORM_WORDS.search(f"{message.subject}\n{body}") is not None
    return fields >= 2 or (named and len(body.split()) > 3)


def _has_person_to_answer(message: Message) -> bool:
    """Does a Reply-To name somebody other than the program that sent the mail?"""
    return any(
        one.address
        and one.address.casefold() != message.sender.address.casefold()
        and _NO_REPLY.search(one.address) is None
        for one in message.reply_addresses
    )


def _by_header(message: Message, *, form: bool, own: OwnText) -> str | None:
    submitted = (message.header("auto-submitted") or "no").split(";")[0].strip().casefold()
    # A website's program calls the mail generated, but a person filled in the form.
    if submitted not in ("", "no") and not (form and submitted == "auto-generated"):
        return f"header Auto-Submitted: {submitted}"
    precedence = (message.header("precedence") or "").strip().casefold()
    if precedence in ("bulk", "list", "junk", "auto_reply", "auto-reply") and not form:
        return f"header Precedence: {precedence}"
    for name in _LIST_HEADERS:
        if message.header(name) is not None and not form:
            return f"header {name.title()}: sent to a list"
    if message.report_type is not None or "multipart/report" in message.part_types:
        return f"a report by a mail program ({message.report_type or 'multipart/report'})"
    for kind in ("message/delivery-status", "message/disposition-notification"):
        if kind in message.part_types:
            return f"a report by a mail program ({kind})"
    return_path = message.header("return-path")
    if return_path is not None and return_path.strip() in ("<>", "") and not form:
        return "empty return path, as bounces have"
    if _SYSTEM_SENDER.search(message.sender.address):
        return f"sent by {message.sender.address}"
    for name in _MACHINE_HEADERS:
        if message.header(name) is not None:
            return f"header {name.title()}"
    if "text/calendar" in message.part_types and not _PERSON_ASKS.search(_own(own)):
        return "a calendar entry"
    if "multipart/digest" in message.part_types:
        return "a digest of a mailing list"
    return None


def _own(own: OwnText) -> str:
    return _ends(own.text[own.body_start :])


def _ends(text: str) -> str:
    """A text, or of a long one its beginning and its end."""
    if len(text) <= _BEGINNING + _END:
        return text
    return f"{text[:_BEGINNING]}\n{text[-_END:]}"


def _unquoted(message: Message, own: OwnText) -> str:
    """The body without quoted and forwarded mail, signature and footer left in: bulk mail tells
    itself in its footer."""
    kept = (
        message.text[part.start : part.end]
        for part in own.parts
        if part.kind in ("own", "signature", "footer")
    )
    return _ends("\n".join(kept))


def _by_wording(message: Message, own: OwnText) -> str | None:
    reply, forward, _ = subject_prefixes(message.subject)
    # "Re: Automatic reply: ..." and "Fwd: Undeliverable: ..." were sent by a person.
    subject = "" if reply or forward else message.subject.strip()[:300]
    mark = None if forward else _ABSENCE_MARK.search(message.subject[-80:])
    body = _unquoted(message, own)
    asks = _PERSON_ASKS.search(_own(own)) is not None or "?" in _own(own)
    no_reply = _NO_REPLY.search(message.sender.address) is not None and not (
        _has_person_to_answer(message)
    )
    program = no_reply or _ROLE_SENDER.search(message.sender.address) is not None
    return (
        _bounce(subject, body)
        or _receipt(subject, body, own)
        or (f'an absence note ("{mark.group().strip()}")' if mark and not asks else None)
        or _absence(subject, body, asks=asks, names_size=_SIZE.search(_own(own)) is not None)
        or _invitation(subject, body)
        or ("a digest of a mailing list" if _DIGEST.search(f"{subject}\n{body}") else None)
        or _bulk(subject, body, asks=asks, no_reply=no_reply)
        or _notice(f"{subject}\n{body}", asks=asks, no_reply=no_reply, program=program)
    )


def _bounce(subject: str, body: str) -> str | None:
    hits = len({match.group().casefold() for match in _BOUNCE_WORDS.finditer(body)})
    starts = _BOUNCE_SUBJECT.match(subject)
    if starts and (hits or subject[starts.end() : starts.end() + 1] == ":"):
        return f'a bounce ("{starts.group()}")'
    # "The mandrel was not delivered" is a complaint: without a subject two signs are needed.
    if hits >= 3 or (hits >= 2 and _BOUNCE_SUBJECT.search(subject)):
        return "a bounce: it says that mail was not delivered"
    return None


def _receipt(subject: str, body: str, own: OwnText) -> str | None:
    starts = _RECEIPT_SUBJECT.match(subject)
    if starts and (_RECEIPT_WORDS.search(body) or not _own(own).strip()):
        return f'a receipt ("{starts.group().strip()}")'
    return None


def _absence(subject: str, body: str, *, asks: bool, names_size: bool) -> str | None:
    starts = _ABSENCE_SUBJECT.match(subject)
    away = _AWAY.search(body)
    if starts and (away or not asks):
        return f'an absence note ("{starts.group()}")'
    waits = _MAIL_WAITS.search(body)
    if waits and _UNTIL.search(body) and not asks and not names_size:
        return f'an absence note ("{" ".join(waits.group().split())}")'
    if away is None or asks or names_size:
        return None
    besides = bool(_UNTIL.search(body)) + bool(_INSTEAD.search(body))
    # "I am away until Monday" and nothing else asked or told is a note; a longer letter is not.
    if besides == 2 or (besides == 1 and len(body.split()) <= 60):
        return f'an absence note ("{" ".join(away.group().split())}")'
    return None


def _invitation(subject: str, body: str) -> str | None:
    starts = _INVITATION_SUBJECT.match(subject)
    if starts and _INVITATION_WORDS.search(body):
        return f'a calendar entry ("{starts.group().strip()}")'
    return None


_PROOF = 3
"""A cue of this weight stands in no person's mail."""


def _weigh(cues: Cues, text: str) -> tuple[int, int, str]:
    """The sum of the weights of all cues found, the heaviest, and its words."""
    total, heaviest, said = 0, 0, ""
    for _, (weight, pattern) in cues.that_may_stand(text):
        match = pattern.search(text)
        if match is not None:
            total += weight
            if weight > heaviest:
                heaviest, said = weight, said_words(match)
    return total, heaviest, said


def _bulk(subject: str, body: str, *, asks: bool, no_reply: bool) -> str | None:
    total, heaviest, said = _weigh(_BULK, f"{subject}\n{body}")
    # Some companies put "unsubscribe" below every clerk's mail: with a request that is no proof.
    if heaviest == _PROOF or total + no_reply >= (4 if asks else 3):
        return f'a bulk mailing ("{said}")'
    return None


def _notice(text: str, *, asks: bool, no_reply: bool, program: bool) -> str | None:
    total, heaviest, said = _weigh(_NOTICE, text)
    if no_reply:
        return f'a notification by a program ("{said or "no-reply sender, nobody to answer"}")'
    # "tickets@" writes as programs do, but a clerk may sit there too.
    if heaviest == _PROOF or total + program >= (4 if asks else 3):
        return f'a notification by a program ("{said}")'
    in_bulk, _, also_said = _weigh(_BULK, text)
    if not asks and total + in_bulk >= _PROOF:
        return f'a mailing by a program ("{said or also_said}")'
    return None
