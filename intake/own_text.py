"""Whose words: blanks all that the sender did not newly write, so that no old size is read again.

The text keeps its length and its line breaks, and so every place found in what is left is a place
in the message. Quoted or forwarded mail comes back where the new words refer to it ("see below").
"""

from __future__ import annotations

import re
from collections.abc import Sequence
from dataclasses import dataclass, field
from itertools import groupby
from typing import Literal

from . import words_quoting as words
from .chat_stamps import stamp_widths
from .chat_turns import Turn, answered_turns, find_turns, turns_pointed_at
from .files.words import attached_texts
from .late import Late
from .late_pattern import LONG
from .letters_seen import look_at_first
from .model import Address, Message, OwnText, Part
from .quote_lines import mark_width, subject_prefixes
from .quoted_mails import find_mails, find_prompts, kept_words
from .quoting import LINES_EXAMINED, Block, find_blocks
from .reading.thread.staying import sentences, takes_the_rest
from .signature import bears_size, below

Whose = Literal["own", "quoted", "forwarded", "signature", "footer"]

_DEEPEST = 6
"""Forwards of forwards are followed so far; beyond that nobody's newest words are found."""
_NEARLY_EMPTY_WORDS = 14
_MOST_HANDED_OVER = 20
"""Forwarded mails in one message that are shown."""
_LONGEST_REFERENCE_TEXT = 4000
"""A reference to the mail below stands in the first lines; more is not searched for one."""


_BELOW = Late(words.POINTS_BELOW)
_AT_FORWARD = Late(words.POINTS_AT_FORWARD)
_SEVERAL = Late(words.POINTS_AT_SEVERAL)
_ANSWERS = Late(words.ANSWERS_BELOW)
_NOT_HANDED = Late(words.NOT_HANDED_OVER)
_AT_SUBJECT = Late(words.POINTS_AT_SUBJECT)
_LINE_BREAKS = re.compile(r"[\r\v\f\x1c-\x1e\x85\u2028\u2029]")
_WHOLE = re.compile(r"\d[\"”″']?\s?(?:mm|in)?\s?[x×*]\s?[.,]?\d", re.IGNORECASE)
"""A tube's OD and wall in one: the new words have a size of their own."""
_REFERENCE_TO_MAIL = Late(
    [
        r"mail|message|nachricht|thread|quoted|enquiry|inquiry|request|courriel|correo|bericht",
        r"same as",
    ]
)


@dataclass
class _Stretch:
    """Lines with their kind, and how much of each is blanked: all, none, or the quote mark."""

    lines: list[str]
    kinds: list[Whose] = field(default_factory=list)
    shown_from: list[int] = field(default_factory=list)
    """Column from which the line is shown; its length where nothing of it is."""
    blocks: list[Block] = field(default_factory=list)
    handed_over: bool = False
    """Whether what others wrote is shown, as the new words refer to it."""
    changes_quoted: bool = False
    turns: list[Turn] = field(default_factory=list)
    """Of a pasted chat with the shop, whose own lines count as quoted."""


def mask(message: Message) -> OwnText:
    """The sender's own new words in ``message.text``, all else blanked at equal length.

    Part kinds say whose the words were; an unmasked 'quoted' or 'forwarded' part is one that the
    sender's new words hand to us.
    """
    reply_prefix, forward, earlier_at = subject_prefixes(message.subject)
    answers = reply_prefix or bool(message.in_reply_to or message.references)
    lines = message.body.split("\n")
    look_at_first(message.text[:LONG])  # each line of it is a piece
    stretch = _separate(lines, answers, forward, message.sender, depth=0)
    shown = _shown_text(stretch)
    quotes_others = any(kind in ("quoted", "forwarded") for kind in stretch.kinds)
    threaded = bool(message.in_reply_to or message.references) or quotes_others
    subject_counts = _subject_counts(
        shown, prefixed=earlier_at > 0, forward=forward, threaded=threaded
    )
    subject = message.subject if subject_counts else _blank(message.subject)
    kept = None if stretch.handed_over else stretch.blocks
    prompts = find_prompts(message, lines, kept) if kept else ()
    prompts += answered_turns(message, lines, stretch.turns)
    quoted = find_mails(message, lines, kept) if kept else ()
    text = kept_words(f"{subject}\n\n{shown}", message.text, prompts)
    return OwnText(
        text=text,
        body_start=message.body_start,
        subject_counts=subject_counts,
        parts=_parts(message, stretch),
        attachment_texts=attached_texts(message),
        quoted=turns_pointed_at(message, lines, stretch.turns) + quoted,
        prompts=prompts,
        refers_to_quoted=stretch.changes_quoted,
    )


def _subject_counts(shown: str, *, prefixed: bool, forward: bool, threaded: bool) -> bool:
    if not prefixed:
        return True
    if _AT_SUBJECT.search(shown[:_LONGEST_REFERENCE_TEXT]):
        return True
    # "RE: mandrel 2 x .120" as a heading, with no earlier mail in sight and no size in the body;
    # and a forward whose size stands only in the subject: nothing else can be meant.
    return (forward or not threaded) and not bears_size(shown[:_LONGEST_REFERENCE_TEXT])


def _separate(
    lines: list[str], reply: bool, forward: bool, sender: Address, depth: int
) -> _Stretch:
    stretch = _Stretch(lines, ["own"] * len(lines), [0] * len(lines))
    for number, width in stamp_widths(lines).items():
        stretch.shown_from[number] = width
    blocks = find_blocks(lines, reply, forward)
    for block in blocks:
        kind: Whose = "forwarded" if block.forwarded else "quoted"
        for number in range(block.first, block.end):
            stretch.kinds[number] = kind
            stretch.shown_from[number] = len(lines[number])
    stretch.blocks = blocks
    _hide_signatures(stretch, _with_chat(stretch, blocks, sender))
    if blocks and depth < _DEEPEST:
        handed_over, several = _handed_over(stretch, blocks)
        stretch.handed_over = bool(handed_over)
        for block in handed_over:
            _show_newest(stretch, block, sender, depth)
            if not several and bears_size(_shown_in(stretch, block)):
                break
    return stretch


def _with_chat(stretch: _Stretch, blocks: list[Block], sender: Address) -> list[Block]:
    """The blocks, with a pasted chat as one more: in it the shop's lines are others' words."""
    quoted = {number for block in blocks for number in range(block.first, block.end)}
    turns = find_turns(stretch.lines, sender)
    if not turns or any(n in quoted for n in range(turns[0].first, turns[-1].end)):
        return blocks
    stretch.turns = turns
    for turn in turns:
        stretch.shown_from[turn.first] = turn.column
        for number in range(turn.first, turn.end) if turn.shops else ():
            stretch.kinds[number] = "quoted"
            stretch.shown_from[number] = len(stretch.lines[number])
    chat = Block(turns[0].first, turns[0].first, turns[-1].end, forwarded=False)
    return sorted([*blocks, chat])


def _own_stretches(blocks: Sequence[Block], total: int) -> list[tuple[int, int]]:
    edges = [0]
    for block in blocks:
        edges += [block.first, block.end]
    edges.append(total)
    return [(a, b) for a, b in zip(edges[::2], edges[1::2], strict=True) if b > a]


def _hide_signatures(stretch: _Stretch, blocks: Sequence[Block]) -> None:
    stretches = _own_stretches(blocks, len(stretch.lines))
    written = [(a, b) for a, b in stretches[-50:] if any(map(str.strip, stretch.lines[a:b]))]
    # A signature stands below the last new words; between quoted lines there are answers.
    for first, end in written:
        kinds = below(stretch.lines[first:end], last_of_message=(first, end) == written[-1])
        for number, kind in enumerate(kinds, start=first):
            if kind != "own":
                stretch.kinds[number] = kind
                stretch.shown_from[number] = len(stretch.lines[number])


def _handed_over(stretch: _Stretch, blocks: Sequence[Block]) -> tuple[list[Block], bool]:
    """The blocks that the new words refer to, nearest first, and whether all are meant.

    Of a forward within a forward the nearer may hold no more than "can you do this?".
    """
    own_lines = [n for n, kind in enumerate(stretch.kinds[:LINES_EXAMINED]) if kind == "own"]
    own_text = "\n".join(stretch.lines[n] for n in own_lines)[:_LONGEST_REFERENCE_TEXT]
    above = "\n".join(stretch.lines[n] for n in own_lines if n < blocks[0].first)
    above = above[-_LONGEST_REFERENCE_TEXT:]
    between = any(
        stretch.lines[n].strip() for n in own_lines if blocks[0].end <= n < blocks[-1].first
    )
    several = _SEVERAL.search(own_text) is not None and not between
    if _ANSWERS.search(above):
        return [], False
    forwarded = [block for block in blocks[:_MOST_HANDED_OVER] if block.forwarded]
    if forwarded and _forward_is_request(own_text):
        return forwarded, several
    match = _BELOW.search(above)
    if match is None:
        return [], False
    says_mail = _REFERENCE_TO_MAIL.search(above, match.start(), match.end() + 40) is not None
    # "Everything as in my mail below, only the radius 100": what is below is changed, not added to.
    # "Rest as below": the new words change what is below.
    rest = any(map(takes_the_rest, sentences(above)))
    changes = rest or (says_mail and not _WHOLE.search(above))
    if changes and not blocks[0].forwarded and bears_size(above):
        stretch.changes_quoted = True
        return [], False
    # "Please quote as below:" and then the sender's own list: that list is what stands below.
    if not says_mail and (between or bears_size(above[match.end() :])):
        return [], False
    return (list(blocks[:_MOST_HANDED_OVER]) if several else [blocks[0]]), several


def _forward_is_request(own_text: str) -> bool:
    if _NOT_HANDED.search(own_text):
        return False
    if _BELOW.search(own_text):
        return True
    if bears_size(own_text):
        return False
    nearly_empty = len(own_text.split()) <= _NEARLY_EMPTY_WORDS
    return nearly_empty or _AT_FORWARD.search(own_text) is not None


def _show_newest(stretch: _Stretch, block: Block, sender: Address, depth: int) -> None:
    """Shows the newest message of a block: not its headers, signature, or what it quotes."""
    numbers = range(block.words, min(block.end, block.words + LINES_EXAMINED))
    widths = [mark_width(stretch.lines[n]) if _one_mark(stretch.lines[n]) else 0 for n in numbers]
    inner_lines = [stretch.lines[n][w:] for n, w in zip(numbers, widths, strict=True)]
    inner = _separate(inner_lines, True, block.forwarded, sender, depth + 1)
    for number, width, column, kind in zip(
        numbers, widths, inner.shown_from, inner.kinds, strict=True
    ):
        if kind in ("own", "quoted", "forwarded"):
            stretch.shown_from[number] = width + column


def _shown_in(stretch: _Stretch, block: Block) -> str:
    numbers = range(block.words, min(block.end, block.words + LINES_EXAMINED))
    shown = "\n".join(stretch.lines[n][stretch.shown_from[n] :] for n in numbers)
    return shown[:_LONGEST_REFERENCE_TEXT]


def _one_mark(line: str) -> bool:
    return line[:12].count(">") == 1 or line.lstrip()[:2] == "| "


def _blank(text: str) -> str:
    if _LINE_BREAKS.search(text) is None:
        return " " * len(text)
    return "".join(char if _LINE_BREAKS.match(char) else " " for char in text)


def _shown_text(stretch: _Stretch) -> str:
    if not any(stretch.shown_from):
        return "\n".join(stretch.lines)
    # Other line breaks than "\n" are so rare that one look saves a look at each line.
    odd_breaks = any(map(_LINE_BREAKS.search, stretch.lines))
    return "\n".join(
        line
        if not column
        else (_blank(line[:column]) if odd_breaks else " " * column) + line[column:]
        for line, column in zip(stretch.lines, stretch.shown_from, strict=True)
    )


def _parts(message: Message, stretch: _Stretch) -> tuple[Part, ...]:
    parts: list[Part] = []
    if message.subject:
        parts.append(Part(start=0, end=len(message.subject), kind="subject"))
    number, at = 0, message.body_start
    end_of_text = at + len(message.body)
    for kind, run in groupby(stretch.kinds):
        run_lines = stretch.lines[number : number + sum(1 for _ in run)]
        number += len(run_lines)
        start, at = at, at + sum(map(len, run_lines)) + len(run_lines)
        if not any(map(str.strip, run_lines)):
            continue
        end = min(at, end_of_text)
        if parts and parts[-1].kind == kind:
            start = parts.pop().start
        parts.append(Part(start=start, end=end, kind=kind))
    return tuple(parts)
