"""Recognises what somebody else wrote: reply quotes, forwards, and the headers before them.

Works on lines, by rules that mail programs follow; each line is looked at a bounded number of times
and in a bounded window, so that a megabyte of '>' costs no more than a megabyte of prose.
"""

from __future__ import annotations

from collections.abc import Sequence
from typing import NamedTuple

from .quote_lines import (
    LONGEST_HEADER,
    attribution,
    header_block,
    is_marked,
    is_piped,
    mark_of,
    may_be_a_limit,
)

LINES_EXAMINED = 2000
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
        if is_marked(line) or is_piped(line):
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
            if reply or forward or blocks or not may_be_a_limit(line):
                block = Block(number, number, _marked_run(lines, number), forward)
        elif (
            number < LINES_EXAMINED
            and len(line) <= LONGEST_HEADER * 4
            and (line[0] in _RULE_CHARS or any(coloned[number : number + 3]))
        ):
            memo_end = None
            if not (written_above or reply or forward):
                # A memo head ("To: ... From: ...") at the very top is the sender's own.
                memo_end = header_block(lines, number)
            if memo_end is not None:
                resume = memo_end
            else:
                block = _block_at(lines, number, reply, forward)
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
        if line[:1] in "-_=*BA" and len(line) > 8 and mark_of(line) == "forward":
            return number
    return len(lines)


def _below(lines: Sequence[str], header: int, words_at: int, forwarded: bool) -> Block:
    """The block under a header: the quoted run if marks follow, else all to the end."""
    following = _next_written(lines, words_at)
    if following is not None and is_marked(lines[following]):
        return Block(header, following, _marked_run(lines, following), forwarded)
    return Block(header, words_at, _until(lines, words_at), forwarded)


_RULE_CHARS = frozenset("-_=*| \t\u00a0")


def _block_at(lines: Sequence[str], number: int, reply: bool, forward: bool) -> Block | None:
    line = lines[number]
    # One bar by itself quotes in an answer only: a table may have a line of one cell.
    if is_piped(line) and (reply or (number + 1 < len(lines) and is_piped(lines[number + 1]))):
        return Block(number, number, _marked_run(lines, number), forward)
    if (mark := mark_of(line)) is not None:
        header_at = _next_written(lines, number + 1)
        words_at = number + 1
        if header_at is not None and not is_marked(lines[header_at]):
            words_at = header_block(lines, header_at) or number + 1
        return _below(lines, number, words_at, forward or mark == "forward")
    if line.startswith("_____") and not line.strip("_ \t\r"):
        header_at = _next_written(lines, number + 1, within=1)
        words_after = header_block(lines, header_at) if header_at is not None else None
        return None if words_after is None else _below(lines, number, words_after, forward)
    words_after = header_block(lines, number)
    if words_after is not None:
        return _below(lines, number, words_after, forward)
    return _attributed(lines, number, forward)


def _attributed(lines: Sequence[str], number: int, forward: bool) -> Block | None:
    """A block under an 'On ... wrote:' that starts at line ``number``, or None."""
    found = attribution(lines, number)
    if found is None:
        return None
    end, dated = found
    following = _next_written(lines, end)
    marks_follow = following is not None and (
        is_marked(lines[following]) or is_piped(lines[following])
    )
    if not marks_follow and not dated:
        return None  # "My colleague wrote:" and his size: the sender hands it to us
    return _below(lines, number, end, forward)
