"""Recognises what stands below a sender's words: the signature, contact lines, legal footers.

A closing word alone hides nothing. "Thanks" and then "PS: make that 1.75" is still the customer
speaking; so below a closing only lines go that look like a name, an address or a letterhead, and a
line that could be a tube size stays unless a '-- ' delimiter (RFC 3676, section 4.3) stands above.
"""

from __future__ import annotations

import re
from collections.abc import Sequence
from functools import lru_cache
from typing import Literal

from . import words_signature as words
from .late import Late

Below = Literal["own", "signature", "footer"]

LONGEST_LINE = 400
_SIGNATURE_LINES = 15
"""Contact lines are looked for in so many written lines above the end."""
_FOOTER_LINES = 2000
"""Footers are looked for in so many written lines from the top, and as many above the end."""


def _any_of(entries: Sequence[str]) -> str:
    return "|".join(sorted(map(re.escape, entries), key=len, reverse=True))


_NAME_WORD = r"[^\W\d_][\w.'’-]{0,24}"
_CLOSING = Late(
    [
        rf"[\s*_]{{0,4}}(?:{_any_of(words.CLOSINGS)})(?!\w)"
        # "Mit freundlichen Grüßen / Best regards", "Thanks, Dale", "Thx!", "Grüße aus dem Norden"
        rf"(?:\s?[/|&+]\s?(?:{_any_of(words.CLOSINGS)}))?"
        rf"(?:[\s]?[,.!;:)~-]{{0,3}}\s{{0,2}}(?:{_NAME_WORD}\s?){{0,3}})?(?:from|aus|und|and)?[^\d\n]{{0,30}}$"
    ],
    re.IGNORECASE,
)
_CLOSING_WORDS = 9
_DELIMITER = re.compile(r"(?:--|—|–|__|_{3,5}|-{2,5}|\*{3,5})$")
_SENT_FROM = Late([rf"[\s*_>-]{{0,4}}(?:{_any_of(words.SENT_FROM)})"], re.IGNORECASE)
_FOOTER = Late([rf"[\s*_>!~=•-]{{0,6}}(?:{_any_of(words.FOOTER_STARTS)})"], re.IGNORECASE)
_FORM = Late([rf"[\s*_>-]{{0,6}}(?:{_any_of(words.FORM_LINES)})"], re.IGNORECASE)

# "Tel. +49 30 123", "T 555-0118", "Ph 316-555-0108 ext 204"; "t=1.5" is a wall and "F25-0172" an
# invoice, so a gap after the label, at least six digits and no decimal point between them.
_PHONE = Late(
    [
        rf"(?<!\w)(?:{_any_of(words.PHONE_LABELS)})(?:\.?\s?[:.]|\s)(?:\s?\([^)\n]{{0,10}}\))?\s{{0,4}}"
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
        rf"(?<!\w)(?:{_any_of(words.REGISTER_WORDS)})(?!\w)"
        rf"|(?<!\w)(?:{_any_of(words.NUMBERED_WORDS)})(?!\w)[^\d\n]{{0,12}}\d(?:[\d\s./-]{{0,3}}\d){{4}}"
    ],
    re.IGNORECASE,
)
# "WEIGHT (KG)" and "KG/M" head a column.
_COMPANY = Late([rf"(?<![\w(\[])(?:{_any_of(words.COMPANY_FORMS)})(?![\w)\]/])"], re.NOFLAG)
_STREET = Late(
    [
        rf"\b\d{{1,5}}[a-z]?\s(?:(?:[^\W\d_]|\d{{1,3}}(?:st|nd|rd|th)\b)[\w.'-]{{0,20}}\s){{1,3}}(?:{_any_of(words.STREETS_AFTER)})\b"
        rf"|(?<!\w)(?:{_any_of(words.STREETS_BEFORE)})\s[^\d\n]{{0,40}}\d"
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
_ADVERT = Late([_any_of(words.ADVERT_WORDS)], re.IGNORECASE)

_PLAIN_SIZE = Late(
    [
        r"\d[\"”″'’]{0,2}\s?(?:mm|in|cm)?\s?[x×*]\s?[Ø⌀.]?\d|[Øø⌀φΦ]\s?\d|[¼½¾⅛⅜⅝⅞]"
        r"|\d\s?(?:[\"”″]|''|mm\b|inch|in\b(?!\s(?:the|a|my)))|(?<![\d.])\.\d{2,3}\b"
        r"|\b\d{1,2}/(?:2|4|8|16|32|64)\b(?!/)"
        r"|\d\s?(?:ga|gauge|gage|swg|bwg)\b|\bsch(?:edule|ed)?\.?\s?\d"
        r"|\b(?:o\.?d|clr|wall|radius|radi[io]|rayon|raggio|straal|wandst|wanddikte|spessore|épaisseur|"
        r"diameter|durchmesser|diamètre|rohr|tube|pipe|buis|tubo|schedule|dn|nps)\b[^\n]{0,20}\d"
    ],
    re.IGNORECASE,
)
_DECIMAL = re.compile(r"(?<![\w.,])\d{1,3}[.,]\d{1,4}(?!\d|[.,]\d)")
_STILL_SPEAKING = Late(
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


def bears_size(text: str) -> bool:
    """Could the text hold a tube size: a decimal, figures with a unit or an x, a trade word?"""
    return _PLAIN_SIZE.search(text) is not None or _DECIMAL.search(text) is not None


def _is_closing(line: str) -> bool:
    return (
        len(line) <= 80
        and len(line.split()) <= _CLOSING_WORDS
        and _CLOSING.match(line.strip()) is not None
    )


@lru_cache(maxsize=256)
def _is_contact(line: str) -> bool:
    """Phone, web, register or company, by a mark that no tube size carries."""
    if len(line) > LONGEST_LINE or _is_sentence(line, least=8):
        return False
    phone = _PHONE.search(line)
    if phone is not None and phone.start() and line.lstrip()[:1].islower():
        # "make me a / mandrel, call me 555-0167": a sentence that was wrapped
        return _STILL_SPEAKING.match(line) is None
    if phone is not None or _REGISTER.search(line):
        return True
    said = len(line.split())
    if _ONLINE.search(line) and said <= 8:
        return True
    return said <= 14 and _COMPANY.search(line) is not None and _STILL_SPEAKING.match(line) is None


def _is_sentence(line: str, least: int) -> bool:
    """Prose of that many words, for all the telephone number in it: names are written large."""
    said = [word for word in line.split() if word[0].isalpha()]
    small = sum(word[0].islower() for word in said)
    return len(said) >= least and small * 2 >= len(said) and any(mark in line for mark in ".?!:")


def _is_address(line: str) -> bool:
    """A street or a postcode; only believed below a closing or beside a contact line."""
    if len(line) > 90 or _STILL_SPEAKING.match(line):
        return False
    if _STREET.search(line):
        return True
    postal = _POSTAL.search(line)
    return postal is not None and (postal["town"] or "").lower() not in _GRADE_WORDS


def _is_name(line: str) -> bool:
    """A short line that could be a name, a title or a department."""
    said = line.split()
    return (
        0 < len(said) <= 6
        and len(line) <= 70
        and not any(char.isdigit() for char in line)
        and not (line.rstrip()[-1] in ".:?!" and _is_sentence(line, least=4))
    )


def below(lines: Sequence[str], last_of_message: bool = True) -> list[Below]:
    """For each line of one stretch of the sender's own text: own, signature or footer.

    Where other people's words follow (``last_of_message`` False), the stretch may be an answer
    between quoted lines, so that only unmistakable signatures count.
    """
    kinds: list[Below] = ["own"] * len(lines)
    written = [n for n, line in enumerate(lines) if line and not line.isspace()]
    if not written:
        return kinds
    _mark_footers(lines, written[:_FOOTER_LINES], kinds)
    if len(written) > _FOOTER_LINES:
        _mark_footers(lines, written[_FOOTER_LINES:][-_FOOTER_LINES:], kinds)
    for _ in range(2):  # a mailing list or a company's server adds its own below the sender's
        delimiter = _find_delimiter(lines, written)
        if delimiter is None:
            break
        for number in range(delimiter, len(lines)):
            if kinds[number] == "own":
                kinds[number] = "signature"
        written = [n for n in written if n < delimiter]
    near_end = [n for n in written if kinds[n] == "own"][-_SIGNATURE_LINES:]
    closing = next((n for n in reversed(near_end) if _is_closing(lines[n])), None)
    speaking = False
    for position, number in enumerate(near_end):
        line = lines[number]
        if len(line) > LONGEST_LINE:
            speaking = True
            continue
        after_closing = closing is not None and number > closing
        if number == closing or _is_sent_from(line) or _is_dash_name(lines, near_end, position):
            kinds[number] = "signature"
            speaking = False
            continue
        contact = _is_contact(line)
        advert = after_closing and _is_advert(lines, near_end, position)
        # "Stammkapital 51.200 EUR" has a decimal and is no size; ".095 wall" in a contact line is.
        if (_PLAIN_SIZE.search(line) or (bears_size(line) and not contact)) and not advert:
            speaking = True
        elif contact and not _is_request(line):
            kinds[number] = "signature"
            speaking = False
        elif _has_neighbour(lines, near_end, position) and _is_address(line):
            kinds[number] = "signature"
        elif after_closing and last_of_message and not speaking:
            if _STILL_SPEAKING.match(line):
                speaking = True
            elif advert or _is_name(line) or _is_address(line):
                kinds[number] = "signature"
    return kinds


def _is_request(line: str) -> bool:
    # "call me on 312-555-0155 before you order": a sentence, kept whole; figures in it are phones.
    return len(line.split()) > 8 and _STILL_SPEAKING.match(line) is not None


def _is_sent_from(line: str) -> bool:
    return len(line) <= 120 and _SENT_FROM.match(line) is not None


def _is_dash_name(lines: Sequence[str], near_end: Sequence[int], position: int) -> bool:
    """'— Inés' as the last line is a name; '- 2 x .120 wall' is an item of a list."""
    line = lines[near_end[position]].strip()
    said = line.lstrip("—–- ").split()
    return (
        position >= len(near_end) - 2
        and line[:1] in "—–-"
        and (len(said) == 1 or (0 < len(said) <= 3 and said[0][0].isupper()))
        and not any(char.isdigit() for char in line)
        and not _STILL_SPEAKING.match(" ".join(said))
    )


def _has_neighbour(lines: Sequence[str], near_end: Sequence[int], position: int) -> bool:
    return any(
        0 <= other < len(near_end) and _is_contact(lines[near_end[other]])
        for other in (position - 1, position + 1)
    )


def _is_advert(lines: Sequence[str], near_end: Sequence[int], position: int) -> bool:
    """A capacity line among contact lines ("Bending to 2.0 x .120, since 1984") asks nothing."""
    line = lines[near_end[position]]
    return (
        len(line) <= LONGEST_LINE
        and _ADVERT.search(line) is not None
        and _STILL_SPEAKING.match(line) is None
        and _has_neighbour(lines, near_end, position)
    )


def _find_delimiter(lines: Sequence[str], written: Sequence[int]) -> int | None:
    """The line of the signature delimiter, or None.

    '-- ' with its blank is one by RFC 3676. Without the blank (programs strip it), or as a dash,
    it may part two items of a list, so that what follows must be short and look like a letterhead.
    """
    for number in written[-_FOOTER_LINES:]:
        if lines[number].rstrip("\r") == "-- ":
            return number
    for number in reversed(written[-_SIGNATURE_LINES:]):
        if not _DELIMITER.match(lines[number].strip()):
            continue
        after = [lines[n] for n in written[-_SIGNATURE_LINES:] if n > number]
        if not after:
            return number
        contact = any(_is_contact(line) for line in after)
        asks = any(_STILL_SPEAKING.match(line) and not _is_contact(line) for line in after)
        sized = any(bears_size(line) for line in after)
        short = all(len(line) <= 120 for line in after)
        if short and not asks and (contact or (not sized and _is_name(after[0]))):
            return number
    return None


def _mark_footers(lines: Sequence[str], written: Sequence[int], kinds: list[Below]) -> None:
    """Marks each paragraph from a legal or mailing phrase on, and each line a web form added."""
    inside = False
    previous = -2
    for number in written:
        if number != previous + 1:
            inside = False
        previous = number
        line = lines[number]
        head = line[:160]
        if not inside and _FOOTER.match(head):
            # "Confidential: tube is 1.5 x .065" would be a request; a lawyer writes more words.
            inside = not (bears_size(head) and _STILL_SPEAKING.match(head))
        by_form = len(line) <= LONGEST_LINE and _FORM.match(head) and not bears_size(line)
        if inside or by_form:
            kinds[number] = "footer"
