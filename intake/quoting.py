"""Recognises what somebody else wrote: reply quotes, forwards, and the headers before them.

Works on lines, by rules that mail programs follow; each line is looked at a bounded number of times
and in a bounded window, so that a megabyte of '>' costs no more than a megabyte of prose.
"""

from __future__ import annotations

import re
from collections.abc import Sequence
from typing import NamedTuple

from . import words_quoting as words

LONGEST_HEADER = 300
"""Longer lines are prose, never an attribution or a header: this bounds every pattern below."""
LINES_EXAMINED = 4000
"""Headers and attributions are looked for in so many lines; in what follows, quote marks only."""
_MOST_BLOCKS = 500
"""Nobody answers between more quotes than that: what follows counts as quoted."""


class Block(NamedTuple):
    """A run of lines ``first <= n < end`` that somebody else wrote.

    Its words start at line ``words``: what stands before is the program's header or attribution.
    """

    first: int
    words: int
    end: int
    forwarded: bool


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
_BARE_NUMBER = re.compile(r"[ ]{0,3}>[\d.]")
_WROTE = re.compile(
    r"(?<!\w)(?:" + "|".join(sorted(map(re.escape, words.WROTE), key=len, reverse=True)) + r")"
    # The name may follow the verb ("schrieb Pat <pat@...>:"), an aside too ("the following:").
    r"(?!\w)[^:：\n]{0,120}(?:<[^>\n]{0,120}>|\([^)\n]{0,80}\))?[^:：\n]{0,40}[:：]\s*$"
    # Some programs write no verb: "2026年3月3日(火) 10:12 Pat <pat@example.com>:"
    r"|(?<!\d)(?:19|20)\d\d[^\n]{0,80}<[^>\s]{1,120}@[^>\s]{1,120}>\s?[:：]\s*$"
    r"|(?:写道|寫道|書きました)[^\n]{0,10}$",
    re.IGNORECASE,
)
_VERB_HINT = re.compile(
    "|".join(sorted({re.escape(w.split()[-1]) for w in words.WROTE}, key=len, reverse=True))
    + r"|>\s?[:：]",
    re.IGNORECASE,
)
_FIRST_PERSON = re.compile(
    r"\b(?:i|we|ich|wir|j'ai|nous|io|ik) (?:wrote|schrieb|schrieben|écrit)\b"
)
_DATED = re.compile(
    r"@|\b(?:19|20)\d\d\b|(?:19|20)\d\d年|\b\d{1,2}:\d\d\b|\b\d{1,2}[./-]\d{1,2}[./-]\d{2,4}\b"
)
_ATTRIBUTION_START = re.compile(
    r"(?:" + "|".join(map(re.escape, words.ATTRIBUTION_STARTS)) + r")[\s.,]|\d{1,4}[./年-]|<|\"",
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


def _is_piped(line: str) -> bool:
    # '| text' quotes; '| OD | wall | CLR |' is a table that the customer drew.
    return line.lstrip()[:2] == "| " and line.count("|") == 1


def mark_width(line: str) -> int:
    """How many characters of quote marks a quoted line starts with."""
    match = _MARKS.match(line)
    return match.end() if match else 0


def _mark_of(line: str) -> str | None:
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


def _header_key(line: str) -> str | None:
    """The concept a header line names ('from', 'date', ...), '' for a form's key, or None."""
    colon = min((at for at in (line.find(":", 0, 32), line.find("：", 0, 32)) if at > 0), default=0)
    if not colon or len(line) > LONGEST_HEADER * 4:
        return None
    key = line[:colon].strip(" \t*_>|\u00a0").casefold()
    if key in _FORM_KEYS:
        return ""
    return _KEY_CONCEPT.get(key)


def _header_block(lines: Sequence[str], at: int) -> int | None:
    """The line after a From/Sent/To/Subject block that starts at ``at``, or None."""
    seen = {_header_key(lines[at])}
    end = at + 1
    if seen <= {None, "", "cc"}:
        return None
    strangers = 0
    # Long To: lists wrap, and HTML turned to text may put a blank line after each header.
    for number in range(at + 1, min(at + 14, len(lines))):
        line = lines[number]
        key = _header_key(line)
        if key == "":
            return None
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


def _next_written(lines: Sequence[str], at: int, within: int = 3) -> int | None:
    """The next line with something on it, at most ``within`` blank lines away."""
    return next(
        (n for n in range(at, min(at + within + 1, len(lines))) if lines[n].strip()),
        None,
    )


def _marked_run(lines: Sequence[str], at: int) -> int:
    """The line after a run of quoted lines that starts at ``at``; blank lines inside are of it."""
    end = at
    number = at
    while number < len(lines):
        line = lines[number]
        if is_marked(line) or _is_piped(line):
            number += 1
            end = number
        elif not line or line.isspace():
            number += 1
        elif (
            # A long quoted line that some program wrapped: its tail lost the mark.
            number == end
            and len(line) <= 25
            and len(lines[number - 1]) >= 66
            and lines[number - 1].rstrip()[-1] not in ".?!:"
            and number + 1 < len(lines)
            and is_marked(lines[number + 1])
        ):
            number += 1
            end = number
        else:
            break
    return end


def find_blocks(lines: Sequence[str], reply: bool, forward: bool) -> list[Block]:
    """All runs of lines that somebody else wrote, in order, none overlapping.

    ``reply`` and ``forward`` are what the headers and the subject say of the message.
    """
    blocks: list[Block] = []
    coloned = [
        ":" in line or "：" in line or "写" in line or "寫" in line
        for line in lines[: LINES_EXAMINED + 3]
    ]
    resume = 0
    written_above = False
    for number, line in enumerate(lines):
        if number < resume or not line or line.isspace():
            continue
        block: Block | None = None
        if is_marked(line):
            # ">3D only" in a first message is a limit, not a quote.
            if reply or forward or blocks or not _BARE_NUMBER.match(line):
                block = Block(number, number, _marked_run(lines, number), forward)
        elif (
            number < LINES_EXAMINED
            and len(line) <= LONGEST_HEADER * 4
            and (line[0] in _RULE_CHARS or any(coloned[number : number + 3]))
        ):
            memo_end = None
            if not (written_above or reply or forward):
                # A memo head ("To: ... From: ...") at the very top is the sender's own.
                memo_end = _header_block(lines, number)
            if memo_end is not None:
                resume = memo_end
            else:
                block = _block_at(lines, number, forward)
        written_above = True
        if block is not None:
            if len(blocks) == _MOST_BLOCKS:
                block = block._replace(end=len(lines))
            blocks.append(block)
            resume = block.end
    return blocks


def _until(lines: Sequence[str], words_at: int) -> int:
    """Where a block without quote marks ends: the next forwarded message, or the end."""
    for number in range(words_at, min(len(lines), words_at + LINES_EXAMINED)):
        line = lines[number]
        if line[:1] in "-_=*BA" and len(line) > 8 and _mark_of(line) == "forward":
            return number
    return len(lines)


def _below(lines: Sequence[str], header: int, words_at: int, forwarded: bool) -> Block:
    """The block under a header: the quoted run if marks follow, else all to the end."""
    following = _next_written(lines, words_at)
    if following is not None and is_marked(lines[following]):
        return Block(header, following, _marked_run(lines, following), forwarded)
    return Block(header, words_at, _until(lines, words_at), forwarded)


_RULE_CHARS = frozenset("-_=*| \t\u00a0")


def _block_at(lines: Sequence[str], number: int, forward: bool) -> Block | None:
    line = lines[number]
    if _is_piped(line) and number + 1 < len(lines) and _is_piped(lines[number + 1]):
        return Block(number, number, _marked_run(lines, number), forward)
    if (mark := _mark_of(line)) is not None:
        header_at = _next_written(lines, number + 1)
        words_at = number + 1
        if header_at is not None and not is_marked(lines[header_at]):
            words_at = _header_block(lines, header_at) or number + 1
        return _below(lines, number, words_at, forward or mark == "forward")
    if line.startswith("_____") and not line.strip("_ \t\r"):
        header_at = _next_written(lines, number + 1, within=1)
        words_after = _header_block(lines, header_at) if header_at is not None else None
        return None if words_after is None else _below(lines, number, words_after, forward)
    words_after = _header_block(lines, number)
    if words_after is not None:
        return _below(lines, number, words_after, forward)
    return _attributed(lines, number, forward)


def _attributed(lines: Sequence[str], number: int, forward: bool) -> Block | None:
    """A block under 'On ... wrote:' that starts at line ``number`` and may wrap over three."""
    started = _ATTRIBUTION_START.match(lines[number].lstrip(" *_")) is not None
    whole = ""
    for end in range(number, min(number + 3, len(lines))):
        line = lines[end].strip()
        if not line or len(line) > LONGEST_HEADER or (end > number and is_marked(line)):
            return None
        if end > number and _ATTRIBUTION_START.match(line) and _WROTE.search(line):
            # "On the other one we need two.\nOn 3 March 2026 Pat wrote:": it starts further down,
            # but "On 3 March 2026 at\n10:12 Pat wrote:" starts here.
            if _DATED.search(line) and not line[0].isdigit():
                return None
        whole = f"{whole} {line}"
        if _WROTE.search(whole):
            break
        if not started and _VERB_HINT.search(line) is None:
            return None
    else:
        return None
    if _FIRST_PERSON.search(whole.casefold()):
        return None
    following = _next_written(lines, end + 1)
    marks_follow = following is not None and (
        is_marked(lines[following]) or _is_piped(lines[following])
    )
    if not marks_follow and _DATED.search(whole) is None:
        return None  # "My colleague wrote:" and his size: the sender hands it to us
    return _below(lines, number, end + 1, forward)
