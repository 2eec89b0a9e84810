"""How a reply is headed: its subject, and the first name it greets, from what the customer wrote.

All of it is a stranger's text on its way into a header line or a sentence of ours, so it passes
through ``one_line`` first.
"""

from __future__ import annotations

import re
import unicodedata

from .model import Message

EMPTY_SUBJECT = "Re: your enquiry"
LONGEST_SUBJECT = 180
"""Characters kept of the customer's subject; more is cut, so that the header stays one line."""

# "Re:", "AW:", "SV:" ... as mail programs of several languages write them, also "Re[2]:".
# "R:" is Italian for it, but "R: 114 mm" is a radius.
_REPLY_PREFIXES = re.compile(
    r"(?:(?:re|aw|antw|antwort|sv|vs|odp|res|ynt|rif|回复|答复|回覆|返信)\s?(?:\[\d{1,3}\])?\s?[:：]"
    r"|r\s?[:：](?!\s*\d))\s*",
    re.IGNORECASE,
)

# A display name with one of these is a firm, a department or a mailbox, not a person; with a title
# it is somebody who may not want to be called by the first name.
_BUSINESS = """
    account accounting accounts accueil achats administrator admin and atelier bau buyer buying
    büro comercial compras comptabilité contact customer customers department dept desk design
    direction einkauf engineering enquiries enquiry fab fabrication fabrications firma form garage
    group gmbh gruppe help import inc info inkoop inquiry kg kundendienst limited llc llp ltd
    machine mail maintenance manager mandrel mandrels maschinenbau metal metals metall motorsport
    noreply oficina office online order orders parts planning plant procurement production
    purchase purchasing quality racing reply sales schlosserei service services shop shops sl spa
    srl srls steel stahl stahlbau studio supply support system systems technik technical team
    técnica the tool tooling toolroom tools tube tubes tubing ufficio verkauf versand website web
    webmaster welding werk werkstatt werkzeugbau workshop works yard
"""
_TITLES = """
    dr dr. prof prof. mr mr. mrs mrs. ms ms. miss sir herr frau ing ing. dipl.-ing. mme m. monsieur
    madame sr sr. sra sra. dott. rev pastor capt
"""
_NOT_A_PERSON = frozenset(f"{_BUSINESS} {_TITLES}".split())


def one_line(text: str, longest: int) -> str:
    """``text`` on one line: line breaks and runs of spaces to one space, control and invisible
    characters dropped, cut to ``longest`` characters (with an ellipsis).
    """
    visible = " ".join(text.split())
    if not visible.isprintable():
        visible = "".join(c for c in visible if unicodedata.category(c)[0] != "C")
        visible = " ".join(visible.split())
    return visible if len(visible) <= longest else visible[: longest - 1].rstrip() + "…"


def reply_subject(subject: str) -> str:
    """'Re: ' and the customer's subject, with no second 'Re:' (or AW:, SV: ...)."""
    said = one_line(subject, LONGEST_SUBJECT)
    while prefix := _REPLY_PREFIXES.match(said):
        said = said[prefix.end() :]
    return f"Re: {said}" if said else EMPTY_SUBJECT


def first_name(message: Message) -> str:
    """The first name to greet, '' where the display name does not give one safely.

    Safe is a two or three word name in Latin letters that no firm or department would have, or a
    single name that the sender also signs with. "Hello," beats greeting a workshop by its trade.
    """
    sender = message.reply_to if message.reply_to and message.reply_to.name else message.sender
    if message.reply_to and message.reply_to.address != sender.address:
        return ""
    words = _person(one_line(sender.name, 80))
    signed = [word for word in words if _signs(message.body, word)]
    if len(signed) == 1:
        return signed[0]
    return words[0] if len(words) > 1 and len(words[0].rstrip(".")) > 1 else ""


def _person(name: str) -> list[str]:
    """The words of a person's name, given name first; empty where it may be no person's."""
    family, comma, given = name.strip("\"' ").partition(",")
    words = [*given.split(), *family.split()] if comma else name.strip("\"' ").split()
    if not 1 <= len(words) <= 3:
        return []
    if any(word.casefold() in _NOT_A_PERSON for word in words):
        return []
    return words if all(_is_name(word) for word in words) else []


def _is_name(word: str) -> bool:
    if len(word) == 2 and word.endswith("."):
        return word[0].isupper()
    letters = word.replace("-", "").replace("'", "").replace("’", "")
    return (
        letters.isalpha()
        and all("LATIN" in unicodedata.name(c, "") for c in letters)
        and word[0].isupper()
        and not (word.isupper() and len(word) > 1)
    )


def _signs(body: str, word: str) -> bool:
    """Whether one of the body's lines is this word alone, as people sign ('Gil', '- Bev x')."""
    if len(word) < 2 or word.endswith(".") or word not in body:
        return False
    return any(
        line.startswith(word) and not line[len(word) :].strip(" \t\r.!,x:)")
        for line in (one.lstrip(" \t>*~–—-") for one in body.split("\n") if word in one)
    )
