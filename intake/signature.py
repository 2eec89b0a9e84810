"""Recognises what stands below a sender's words: the signature, contact lines, legal footers.

A closing word alone hides nothing. "Thanks" and then "PS: make that 1.75" is still the customer
speaking; so below a closing only lines go that look like a name, an address or a letterhead, and a
line that could be a tube size stays unless a '-- ' delimiter (RFC 3676, section 4.3) stands above.
"""

from __future__ import annotations

import re
from collections.abc import Sequence
from typing import Literal

from . import words_signature as words
from .contact_lines import LONGEST_LINE, STILL_SPEAKING, any_of, is_address, is_contact, is_name
from .late import Late

Below = Literal["own", "signature", "footer"]

_SIGNATURE_LINES = 15
"""Contact lines are looked for in so many written lines above the end."""
_FOOTER_LINES = 2000
"""Footers are looked for in so many written lines from the top, and as many above the end."""


_NAME_WORD = r"[^\W\d_][\w.'’-]{0,24}"
_CLOSING = Late(
    [
        rf"[\s*_]{{0,4}}(?:{any_of(words.CLOSINGS)})(?!\w)"
        # "Mit freundlichen Grüßen / Best regards", "Thanks, Dale", "Thx!", "Grüße aus dem Norden"
        rf"(?:\s?[/|&+]\s?(?:{any_of(words.CLOSINGS)}))?"
        rf"(?:[\s]?[,.!;:)~-]{{0,3}}\s{{0,2}}(?:{_NAME_WORD}\s?){{0,3}})?(?:from|aus|und|and)?[^\d\n]{{0,30}}$"
    ],
    re.IGNORECASE,
)
_CLOSING_WORDS = 9
_DELIMITER = re.compile(r"(?:--|—|–|__|_{3,5}|-{2,5}|\*{3,5})$")
_SENT_FROM = Late([rf"[\s*_>-]{{0,4}}(?:{any_of(words.SENT_FROM)})"], re.IGNORECASE)
_FOOTER = Late([rf"[\s*_>!~=•-]{{0,6}}(?:{any_of(words.FOOTER_STARTS)})"], re.IGNORECASE)
_FORM = Late([rf"[\s*_>-]{{0,6}}(?:{any_of(words.FORM_LINES)})"], re.IGNORECASE)

_ADVERT = Late([any_of(words.ADVERT_WORDS)], re.IGNORECASE)

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


def bears_size(text: str) -> bool:
    """Could the text hold a tube size: a decimal, figures with a unit or an x, a trade word?"""
    return _PLAIN_SIZE.search(text) is not None or _DECIMAL.search(text) is not None


def _is_closing(line: str) -> bool:
    return (
        len(line) <= 80
        and len(line.split()) <= _CLOSING_WORDS
        and _CLOSING.match(line.strip()) is not None
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
        contact = is_contact(line)
        advert = after_closing and _is_advert(lines, near_end, position)
        # "Stammkapital 51.200 EUR" has a decimal and is no size; ".095 wall" in a contact line is.
        if (_PLAIN_SIZE.search(line) or (bears_size(line) and not contact)) and not advert:
            speaking = True
        elif contact and not _is_request(line):
            kinds[number] = "signature"
            speaking = False
        elif _has_neighbour(lines, near_end, position) and is_address(line):
            kinds[number] = "signature"
        elif after_closing and last_of_message and not speaking:
            if STILL_SPEAKING.match(line):
                speaking = True
            elif advert or is_name(line) or is_address(line):
                kinds[number] = "signature"
    return kinds


def _is_request(line: str) -> bool:
    # "call me on 312-555-0155 before you order": a sentence, kept whole; figures in it are phones.
    return len(line.split()) > 8 and STILL_SPEAKING.match(line) is not None


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
        and not STILL_SPEAKING.match(" ".join(said))
    )


def _has_neighbour(lines: Sequence[str], near_end: Sequence[int], position: int) -> bool:
    return any(
        0 <= other < len(near_end) and is_contact(lines[near_end[other]])
        for other in (position - 1, position + 1)
    )


def _is_advert(lines: Sequence[str], near_end: Sequence[int], position: int) -> bool:
    """A capacity line among contact lines ("Bending to 2.0 x .120, since 1984") asks nothing."""
    line = lines[near_end[position]]
    return (
        len(line) <= LONGEST_LINE
        and _ADVERT.search(line) is not None
        and STILL_SPEAKING.match(line) is None
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
        contact = any(is_contact(line) for line in after)
        asks = any(STILL_SPEAKING.match(line) and not is_contact(line) for line in after)
        sized = any(bears_size(line) for line in after)
        short = all(len(line) <= 120 for line in after)
        if short and not asks and (contact or (not sized and is_name(after[0]))):
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
            inside = not (bears_size(head) and STILL_SPEAKING.match(head))
        by_form = len(line) <= LONGEST_LINE and _FORM.match(head) and not bears_size(line)
        if inside or by_form:
            kinds[number] = "footer"
