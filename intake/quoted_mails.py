"""The earlier mails that a message quotes, newest first, and the answers between quoted lines.

The new words often rely on them: "16 gauge" below our question, "the rest stays as quoted". Each
mail keeps its length and its line breaks, so that every place in it is a place in the message.
"""

from __future__ import annotations

import re
from collections.abc import Sequence
from typing import NamedTuple

from . import words_relying as words
from .late import Late
from .model import Message, Prompt, QuotedMail
from .quote_lines import header_key, is_marked, is_piped, one_mark_width
from .quoting import Block, find_blocks
from .signature import below

_DEEPEST = 6
_MOST_LINES = 400
"""So much of one mail is kept: who writes more about a tube is not answering a question."""
_MOST_CHARACTERS = 8_000
_MOST_PROMPTS = 60
_FARTHEST_ANSWER = 2
"""Blank lines between a quoted question and its answer."""
_QUESTION_LINES = 3
_HOW_MANY = Late(words.HOW_MANY)
_SENTENCE = re.compile(r"[.!?:]\s+(?=\S)")
_ITEM = re.compile(r"\s*(?:[*•-]|\d{1,2}[.)])\s")
_WORD = re.compile(r"[^\W\d_]{3,}")


class _Line(NamedTuple):
    """A line of the body and the column that its words begin at, quote marks taken off."""

    number: int
    column: int


def find_mails(
    message: Message, lines: Sequence[str], blocks: Sequence[Block]
) -> tuple[QuotedMail, ...]:
    """The quoted mails, newest first: what a mail quotes itself is a mail of its own."""
    starts = line_starts(message, lines)
    mails: list[QuotedMail] = []
    level: list[_Line] = []
    found: list[Block] = []
    for block in blocks:
        first = len(level)
        level += [_Line(n, 0) for n in range(block.first, block.end)][: _MOST_LINES - first]
        if len(level) > first:
            words_at = min(first + block.words - block.first, len(level))
            found.append(Block(first, words_at, len(level), block.forwarded))
    inner = [lines[line.number] for line in level]
    for _ in range(_DEEPEST):
        if not found:
            break
        head = [inner[n] for block in found for n in range(block.first, block.words)]
        level, inner = _below_marks(level, inner, found)
        found = find_blocks(inner, reply=True, forward=False)
        written = [n for n in range(len(inner)) if not _inside(found, n)]
        kinds = below([inner[n] for n in written])
        own = [n for n, kind in zip(written, kinds, strict=True) if kind == "own"]
        if any(inner[n].strip() for n in own):
            by_sender = _names_sender(message, _writers(head)) or _signs(
                message, [inner[n] for n in written]
            )
            shown = [level[n] for n in own]
            mails.append(_mail(lines, starts, shown, by_sender=by_sender))
    return tuple(mails)


def _inside(blocks: Sequence[Block], number: int) -> bool:
    return any(block.first <= number < block.end for block in blocks)


def _below_marks(
    level: Sequence[_Line], inner: Sequence[str], blocks: Sequence[Block]
) -> tuple[list[_Line], list[str]]:
    """The lines of the blocks, each with one quote mark taken off."""
    lines: list[_Line] = []
    texts: list[str] = []
    for block in blocks:
        numbers = range(block.words, block.end)
        first = next((inner[n] for n in numbers if inner[n].strip()), "")
        marked = is_marked(first) or is_piped(first)
        for n in numbers:
            width = one_mark_width(inner[n]) if marked else 0
            lines.append(_Line(level[n].number, level[n].column + width))
            texts.append(inner[n][width:])
    return lines, texts


def line_starts(message: Message, lines: Sequence[str]) -> list[int]:
    """Where each line of the body starts in the message's text."""
    starts, at = [], message.body_start
    for line in lines:
        starts.append(at)
        at += len(line) + 1
    return starts


def _mail(
    lines: Sequence[str],
    starts: Sequence[int],
    shown: Sequence[_Line],
    *,
    by_sender: bool,
) -> QuotedMail:
    column_of = dict(shown)
    pieces: list[str] = []
    for number in range(shown[0].number, shown[-1].number + 1):
        column = column_of.get(number, len(lines[number]))
        pieces.append(" " * column + lines[number][column:])
    text = "\n".join(pieces)[:_MOST_CHARACTERS]
    return QuotedMail(start=starts[shown[0].number], text=text, by_sender=by_sender)


def _writers(head: Sequence[str]) -> list[str]:
    """The lines of a head that name who wrote: 'From:', or 'On ... Pat wrote:'."""
    keyed = [line for line in head if header_key(line) == "from"]
    return keyed or [line for line in head if header_key(line) is None]


def _names_sender(message: Message, head: Sequence[str]) -> bool:
    said = "\n".join(head).casefold()
    address = message.sender.address.casefold()
    if address and address in said:
        return True
    names = _WORD.findall(message.sender.name.casefold())
    return bool(names) and all(name in said for name in names)


def _signs(message: Message, lines: Sequence[str]) -> bool:
    """Whether a mail ends with the sender's name: quotes of quotes have no head."""
    name = message.sender.name.casefold().split()
    ends = [line.strip(" \t>|,.-–—").casefold() for line in lines if line.strip()][-3:]
    return bool(name) and any(end in (name[0], " ".join(name)) for end in ends)


def find_prompts(
    message: Message, lines: Sequence[str], blocks: Sequence[Block]
) -> tuple[Prompt, ...]:
    """Each quoted question or label that a line of the sender's own stands right below of."""
    starts = line_starts(message, lines)
    found: list[Prompt] = []
    for number, block in enumerate(blocks[:_MOST_PROMPTS]):
        last = lines[block.end - 1]
        if not (is_marked(last) or is_piped(last)):
            continue
        limit = blocks[number + 1].first if number + 1 < len(blocks) else len(lines)
        first = next((n for n in range(block.end, limit) if lines[n].strip()), None)
        if first is None or first - block.end > _FARTHEST_ANSWER:
            continue
        end = next((n for n in range(first, limit) if not lines[n].strip()), limit)
        question = _question(lines, block)
        if question:
            found.append(
                Prompt(
                    start=starts[first], end=starts[end - 1] + len(lines[end - 1]),
                    question=question,
                )
            )  # fmt: skip
    return tuple(found)


def _question(lines: Sequence[str], block: Block) -> str:
    """The last thing said in a quoted block: its last sentence where that asks, else its line."""
    said: list[str] = []
    for number in range(block.end - 1, max(block.words, block.end - _QUESTION_LINES) - 1, -1):
        line = lines[number][one_mark_width(lines[number]) :]
        if is_marked(line) or not line.strip():
            break
        said.insert(0, line.strip())
        if _ITEM.match(line):
            break  # "2. What radius do you bend on?" begins here
    if not said:
        return ""
    if not said[-1].endswith(("?", "？")):
        return said[-1]
    return _SENTENCE.split(" ".join(said))[-1]


def kept_words(shown: str, text: str, prompts: Sequence[Prompt]) -> str:
    """The own words with "how many" and "quantity" kept of the lines that they answer."""
    for prompt in prompts:
        for asked in _HOW_MANY.finditer(prompt.question):
            at = text.rfind(asked.group(), 0, prompt.start)
            if at >= 0 and prompt.start - at < 300:
                shown = shown[:at] + asked.group() + shown[at + len(asked.group()) :]
    return shown
