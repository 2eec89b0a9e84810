"""Recognises single marks of other people's words: prefixes, quote marks, rules, header blocks."""

from __future__ import annotations

import re
from collections.abc import Sequence

from . import words_quoting as words
from .late import Late

LONGEST_HEADER = 300
"""Longer lines are prose, never an attribution or a header: this bounds every pattern below."""


def _folded(entries: Sequence[str]) -> frozenset[str]:
    return frozenset(entry.casefold() for entry in entries)


_KEY_CONCEPT = {
    key.casefold(): concept for concept, keys in words.HEADER_KEYS.items() for key in keys
}
_FORM_KEYS = _folded(words.FORM_KEYS)
_ORIGINAL_MARKS = _folded(words.ORIGINAL_MARKS)
_FORWARD_MARKS = _folded(words.FORWARD_MARKS)
_REPLY_PREFIXES = _folded(words.REPLY_PREFIXES)
_FORWARD_PREFIXES = _folded(words.FORWARD_PREFIXES)

_MARK = re.compile(r"[ \t\u00a0]{0,3}(?:>(?!=)|[A-Z][A-Za-z]{0,3}>(?=[ >\n]|$))")
_MARKS = re.compile(r"[ \t\u00a0]{0,3}[A-Za-z]{0,4}>(?:[ \t]?>){0,40}[ \t]?|[ \t]{0,3}\|[ \t]")
_ONE_MARK = re.compile(r"[ \t\u00a0]{0,3}[A-Za-z]{0,4}>[ \t]?|[ \t]{0,3}\|[ \t]")
_BARE_NUMBER = re.compile(r"[ ]{0,3}>[\d.]")
_WROTE = Late(
    [
        r"(?<!\w)(?:" + "|".join(sorted(map(re.escape, words.WROTE), key=len, reverse=True)) + r")"
        # The name may follow the verb ("schrieb Pat <pat@...>:"), an aside too ("the following:").
        r"(?!\w)(?:[^:：\n]|(?<=\d):(?=\d\d)){0,120}(?:<[^>\n]{0,120}>|\([^)\n]{0,80}\))?[^:：\n]{0,40}[:：]\s*$"
        # Some programs write no verb: "2026年3月3日(火) 10:12 Pat <pat@example.com>:"
        r"|(?<!\d)(?:19|20)\d\d[^\n]{0,80}<[^>\s]{1,120}@[^>\s]{1,120}>\s?[:：]\s*$"
        r"|(?:写道|寫道|書きました)[^\n]{0,10}$"
    ],
    re.IGNORECASE,
)
_VERB_HINT = Late(
    [
        "|".join(sorted({re.escape(w.split()[-1]) for w in words.WROTE}, key=len, reverse=True))
        + r"|>\s?[:：]"
    ],
    re.IGNORECASE,
)
_FIRST_PERSON = re.compile(
    r"\b(?:i|we|ich|wir|j'ai|nous|io|ik) (?:wrote|schrieb|schrieben|écrit)\b"
)
_DATED = re.compile(
    r"@|\b(?:19|20)\d\d\b|(?:19|20)\d\d年|\b\d{1,2}:\d\d\b|\b\d{1,2}[./-]\d{1,2}[./-]\d{2,4}\b"
)
_ATTRIBUTION_START = Late(
    [r"(?:" + "|".join(map(re.escape, words.ATTRIBUTION_STARTS)) + r")[\s.,]|\d{1,4}[./年-]|<|\""],
    re.IGNORECASE,
)
_PREFIX = re.compile(
    r"\s*(?:\[[^\]\n]{1,20}\]\s*)?([^\W\d_][\w. ]{0,9}?)\s*(?:[\[(]\d+[\])])?[:：]"
)


def subject_prefixes(subject: str) -> tuple[bool, bool, int]:
    """(is a reply, is a forward, where the earlier subject starts) by the prefixes of a subject.

    'R: 133' and 'I: 3' are an Italian reply and forward only where no figure follows: R is also
    what a radius is called.
    """
    reply = forward = False
    at = 0
    while match := _PREFIX.match(subject, at):
        word = match.group(1).casefold().strip()
        figure_follows = subject[match.end() : match.end() + 2].strip()[:1].isdigit()
        if len(word) == 1 and figure_follows:
            break
        if word in _REPLY_PREFIXES:
            reply = True
        elif word in _FORWARD_PREFIXES:
            forward = True
        else:
            break
        at = match.end()
    return reply, forward, at


def is_marked(line: str) -> bool:
    """Does the line carry a quote mark ('>', '>>', 'PD>')?"""
    if line[:1] == ">":
        return line[1:2] != "="
    return ">" in line[:8] and _MARK.match(line) is not None


def is_piped(line: str) -> bool:
    """Does the line carry a bar as its quote mark?"""
    # '| text' quotes; '| OD | wall | CLR |' is a table that the customer drew.
    return line.lstrip()[:2] == "| " and line.count("|") == 1


def mark_width(line: str) -> int:
    """How many characters of quote marks a quoted line starts with."""
    match = _MARKS.match(line)
    return match.end() if match else 0


def one_mark_width(line: str) -> int:
    """How many characters the first quote mark of a line takes: '>> text' is quoted twice."""
    match = _ONE_MARK.match(line)
    return match.end() if match else 0


def mark_of(line: str) -> str | None:
    """'original' or 'forward' where the line is a program's rule above an earlier message."""
    if len(line) > LONGEST_HEADER:
        return None
    bare = line.strip().lstrip("> ")
    if not bare or (bare[0] not in "-_=*" and bare[-1] not in ":：-"):
        return None
    said = bare.strip("-_=*:： \t\u00a0").replace("’", "'").casefold()
    if said in _ORIGINAL_MARKS:
        return "original"
    if said in _FORWARD_MARKS or said.startswith(words.FORWARD_MARK_STARTS):
        return "forward"
    return None


def header_key(line: str) -> str | None:
    """The concept a header line names ('from', 'date', ...), '' for a form's key, or None."""
    colon = min((at for at in (line.find(":", 0, 32), line.find("：", 0, 32)) if at > 0), default=0)
    if not colon or len(line) > LONGEST_HEADER * 4:
        return None
    key = line[:colon].strip(" \t*_>|\u00a0").casefold()
    if key in _FORM_KEYS:
        return ""
    return _KEY_CONCEPT.get(key)


def header_block(lines: Sequence[str], at: int) -> int | None:
    """The line after a From/Sent/To/Subject block that starts at ``at``, or None."""
    seen = {header_key(lines[at])}
    end = at + 1
    if seen <= {None, "", "cc"}:
        return None
    strangers = 0
    # Long To: lists wrap, and HTML turned to text may put a blank line after each header.
    for number in range(at + 1, min(at + 14, len(lines))):
        line = lines[number]
        key = header_key(line)
        if key == "":
            return None
        if key in seen and key not in (None, "date"):
            break  # two senders: a list of something else
        if key is not None:
            seen.add(key)
            end = number + 1
            strangers = 0
        else:
            strangers += 1
            if strangers > 2 or (not line.strip() and {"from", "subject"} <= seen):
                break
    whole = "from" in seen and (
        ("date" in seen and seen & {"to", "subject"}) or {"to", "subject"} <= seen
    )
    return end if whole else None


def attribution(lines: Sequence[str], number: int) -> tuple[int, bool] | None:
    """For an 'On ... wrote:' from line ``number`` on, wrapped over three lines at most: the line
    after it, and whether it is dated. None where there is none."""
    started = _ATTRIBUTION_START.match(lines[number].lstrip(" *_")) is not None
    whole = ""
    for end in range(number, min(number + 3, len(lines))):
        line = lines[end].strip()
        if not line or len(line) > LONGEST_HEADER or (end > number and is_marked(line)):
            return None
        if end > number and not line[0].isdigit() and _is_whole_attribution(line):
            # "On the other one we need two.\nOn 3 March 2026 Pat wrote:": it starts further down,
            # but "On 3 March 2026 at\n10:12 Pat wrote:" starts here.
            return None
        if line.startswith("---") and line.endswith("---"):
            line = line.strip("- ") + ":"  # "---- On ... Pat wrote ----"
            started = True
        whole = f"{whole} {line}"
        if _WROTE.search(whole):
            if _FIRST_PERSON.search(whole.casefold()):
                return None
            return end + 1, _DATED.search(whole) is not None
        if not started and _VERB_HINT.search(line) is None:
            return None
    return None


def _is_whole_attribution(line: str) -> bool:
    return all(pattern.search(line) for pattern in (_WROTE, _DATED)) and bool(
        _ATTRIBUTION_START.match(line)
    )


def may_be_a_limit(line: str) -> bool:
    """'>3D only' at the start of a line: a limit in a first message, a quote in an answer."""
    return _BARE_NUMBER.match(line) is not None
