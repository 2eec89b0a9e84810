"""Whether a line is one of contact, an address or a name, by marks that no tube size carries."""

from __future__ import annotations

import re
from collections.abc import Sequence
from functools import lru_cache

from . import words_signature as words
from .late import Late

LONGEST_LINE = 400


def any_of(entries: Sequence[str]) -> str:
    return "|".join(sorted(map(re.escape, entries), key=len, reverse=True))


# "Tel. +49 30 123", "T 555-0118", "Ph 316-555-0108 ext 204"; "t=1.5" is a wall and "F25-0172" an
# invoice, so a gap after the label, at least six digits and no decimal point between them.
_PHONE = Late(
    [
        rf"(?<!\w)(?:{any_of(words.PHONE_LABELS)})(?:\.?\s?[:.]|\s)(?:\s?\([^)\n]{{0,10}}\))?\s{{0,4}}"
        r"(?=(?:[^\d\n]{0,3}\d){6})\+?[\d(][\d\s()/−–-]{5,24}"
        r"|(?<![\d.,x×])\+\d{1,3}[\s(.-]{0,2}\d[\d\s()./-]{5,20}\d"
        r"|(?<![\d.-])\(?\d{3}\)?[\s.-]{1,2}\d{3}[.-]\d{4}(?!\d)"
        r"|(?<![\d.-])555-01\d\d(?!\d)"
    ],
    re.IGNORECASE,
)
_ONLINE = re.compile(r"[\w.+-]{1,64}@[\w-]{1,64}\.\w|\bwww\.|https?://", re.IGNORECASE)
_REGISTER = Late(
    [
        rf"(?<!\w)(?:{any_of(words.REGISTER_WORDS)})(?!\w)"
        rf"|(?<!\w)(?:{any_of(words.NUMBERED_WORDS)})(?!\w)[^\d\n]{{0,12}}\d(?:[\d\s./-]{{0,3}}\d){{4}}"
    ],
    re.IGNORECASE,
)
# "WEIGHT (KG)" and "KG/M" head a column.
_COMPANY = Late([rf"(?<![\w(\[])(?:{any_of(words.COMPANY_FORMS)})(?![\w)\]/])"], re.NOFLAG)
_STREET = Late(
    [
        rf"\b\d{{1,5}}[a-z]?\s(?:(?:[^\W\d_]|\d{{1,3}}(?:st|nd|rd|th)\b)[\w.'-]{{0,20}}\s){{1,3}}(?:{any_of(words.STREETS_AFTER)})\b"
        rf"|(?<!\w)(?:{any_of(words.STREETS_BEFORE)})\s[^\d\n]{{0,40}}\d"
        rf"|^\s*(?:{any_of(words.PREMISES)})\s\d{{1,3}}(?:\s?[-–/&]\s?\d{{1,3}})?[a-z]?,\s(?-i:[A-ZÀ-Þ])"
        r"|[^\W\d_](?:straße|strasse|str\.|weg|platz|allee|gasse|straat|laan|kade|gatan|vägen|vej)\s\d"
    ],
    re.IGNORECASE,
)
_POSTAL = Late(
    [
        r"(?<![\w.,])(?:[A-Z]{1,2}-)?\d{4,5}(?:-\d{4})?\s(?P<town>[A-ZÄÖÜÉÅŁ][^\W\d_]+)"
        r"|\b[A-Z]{2}\s\d{5}(?:-\d{4})?\b|\b[A-Z]{1,2}\d[A-Z\d]?\s\d[A-Z]{2}\b"
        r"|\b\d{2}-\d{3}\s[^\W\d_]|\b\d{4}\s[A-Z]{2}\b"
    ],
    re.NOFLAG,
)
_GRADE_WORDS = frozenset(words.AFTER_A_GRADE)
STILL_SPEAKING = Late(
    [
        r"\s*(?:p\.? ?p?\.?s\b|nb\b|n\.b|edit\b|oh\b|also\b|btw\b"
        r"|actually|sorry|correction|wait\b"
        r"|forgot|one more|and\b|ach\b|nachtrag|übrigens|au fait|otra cosa|postdata|p\.d\."
        r"|dimenticavo|oja\b)"
        r"|.{0,200}\b(?:please|need|want|quote|qty|quantity|order|mandrels?|make (?:it|that)|"
        r"should be|bitte|brauche|benötige|dorne?|stück|besoin|mandrin|necesito|mandril|serve|"
        r"mandrino|nodig|doorn|stuks?|pcs|pieces|would|could|asap)\b"
    ],
    re.IGNORECASE,
)


@lru_cache(maxsize=256)
def is_contact(line: str) -> bool:
    """Phone, web, register or company, by a mark that no tube size carries."""
    if len(line) > LONGEST_LINE or _is_sentence(line, least=8):
        return False
    phone = _PHONE.search(line)
    if phone is not None and phone.start() and line.lstrip()[:1].islower():
        # "make me a / mandrel, call me 555-0167": a sentence that was wrapped
        return STILL_SPEAKING.match(line) is None
    if phone is not None or _REGISTER.search(line):
        return True
    said = len(line.split())
    if _ONLINE.search(line) and said <= 8:
        return True
    return said <= 14 and _COMPANY.search(line) is not None and STILL_SPEAKING.match(line) is None


def _is_sentence(line: str, least: int) -> bool:
    """Prose of that many words, for all the telephone number in it: names are written large."""
    said = [word for word in line.split() if word[0].isalpha()]
    small = sum(word[0].islower() for word in said)
    return len(said) >= least and small * 2 >= len(said) and any(mark in line for mark in ".?!:")


def is_address(line: str) -> bool:
    """A street or a postcode; only believed below a closing or beside a contact line."""
    if len(line) > 90 or STILL_SPEAKING.match(line):
        return False
    if _STREET.search(line):
        return True
    postal = _POSTAL.search(line)
    return postal is not None and (postal["town"] or "").lower() not in _GRADE_WORDS


def is_name(line: str) -> bool:
    """A short line that could be a name, a title or a department."""
    said = line.split()
    return (
        0 < len(said) <= 6
        and len(line) <= 70
        and not any(char.isdigit() for char in line)
        and not (line.rstrip()[-1] in ".:?!" and _is_sentence(line, least=4))
    )
