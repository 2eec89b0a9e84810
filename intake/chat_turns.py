"""Chat with the shop that was pasted into a mail: its own lines are the other side's words.

'Me: / Agent:', 'Customer: / You:', '[10:02] Jo: / [10:03] Kim (sales):'. Only where one side is
plainly the shop's; what two people of the customer's say to each other stays the customer's.
"""

from __future__ import annotations

import re
from collections import Counter
from collections.abc import Sequence
from itertools import pairwise
from typing import NamedTuple

from . import words_chat as words
from .chat_stamps import DAY, TIME
from .late import Late
from .late_pattern import late_pattern
from .model import Address, Message, Prompt, QuotedMail
from .quoted_mails import line_starts

_STAMP = rf"(?:{DAY}[,T]?\s{{1,2}})?{TIME}(?:,?\s{{1,2}}{DAY})?"
_CLOCK = r"\d{1,2}:\d{2}(?:[:.]\d{2})?(?:\s?[ap]\.?m\.?)?(?![\w.])"  # "5.25 CLR" is no time
_STAMPED = rf"(?:\[{_STAMP}\]|\({_STAMP}\)|(?:{DAY}[,T]?\s{{1,2}})?{_CLOCK})"
_NAME = r"[^\W\d_][^:\n\d\[\]<>|*]{0,29}?"
_HEAD = late_pattern(
    rf"[ \t*\u200e-]{{0,8}}(?P<ahead>{_STAMPED})?[ \t*,|–—-]{{0,5}}"
    rf"(?P<who>{_NAME}(?:\([^()\n\d]{{1,20}}\))?)"
    rf"[ \t*]{{0,3}}(?:[,|–—-]?[ \t]{{0,2}}(?P<behind>{_STAMPED}))?[ \t*]{{0,3}}"
    r"(?:(?P<sign>:|>(?=\s))[ \t*]{0,4}|$)",
    re.IGNORECASE,
)
"""'[10:02] Jo: ', 'Jo (10:02): ', '10:02 Jo', 'Agent: ': who speaks a line, and when."""
_FEWEST_TURNS = 3
_FEWEST_WORDS = 3
_MOST_LINES = 2000
_MOST_POINTED_AT = 3
_SPACE = re.compile(r"\s+")
_SENTENCE = re.compile(r"(?<=[.!?])\s+(?=\S)")

_SHOP = Late(words.SHOP)
_CUSTOMER = Late([rf"\A{one}\Z" for one in words.CUSTOMER])
_MYSELF = Late([rf"\A{one}\Z" for one in words.MYSELF])
_YOU = Late([rf"\A{one}\Z" for one in words.YOU])
_SELLS = Late(words.SELLS)
_POINTS = Late(words.POINTS)


class Turn(NamedTuple):
    """What one speaker says at a time: lines ``first <= n < end``, words from ``column`` on."""

    first: int
    column: int
    end: int
    who: str
    shops: bool = False

    def words(self, lines: Sequence[str]) -> str:
        return "\n".join([lines[self.first][self.column :], *lines[self.first + 1 : self.end]])


def find_turns(lines: Sequence[str], sender: Address) -> list[Turn]:
    """The turns of a chat in which one side is the shop's, in order; empty where there is none."""
    heads = [
        (number, found)
        for number, line in enumerate(lines[:_MOST_LINES])
        if line.strip() and (found := _HEAD.match(line)) is not None and _is_head(found)
    ]
    told = Counter(_name(found) for _, found in heads)
    if len(heads) < _FEWEST_TURNS or max(told.values()) < 2:
        return []
    stamped = Counter(_name(f) for _, f in heads if f["ahead"] or f["behind"])
    speakers = {
        name
        for name, times in told.items()
        if times > 1 or stamped[name] or _SHOP.search(name) or _is_customers(name, sender)
    }
    turns = _turns(lines, [(n, f) for n, f in heads if _name(f) in speakers])
    shops = _of_the_shop(lines, turns, sender)
    if not shops or (not stamped and not _is_talk(lines, turns, shops)):
        return []
    return [turn._replace(shops=turn.who in shops) for turn in turns]


def _is_head(found: re.Match[str]) -> bool:
    return found["sign"] is not None or bool(found["ahead"] or found["behind"])


def _name(found: re.Match[str]) -> str:
    return _SPACE.sub(" ", found["who"].strip(" \t*,-–—|")).casefold()


def _turns(lines: Sequence[str], heads: Sequence[tuple[int, re.Match[str]]]) -> list[Turn]:
    """Each turn goes on to the next one, the last one to the first blank line."""
    ends = [number for number, _ in heads[1:]]
    if heads:
        last, found = heads[-1]
        first_words = last if lines[last][found.end() :].strip() else last + 1
        behind = range(first_words + 1, len(lines))
        ends.append(next((n for n in behind if not lines[n].strip()), len(lines)))
    return [
        Turn(number, found.end(), end, _name(found))
        for (number, found), end in zip(heads, ends, strict=True)
    ]


def _of_the_shop(lines: Sequence[str], turns: Sequence[Turn], sender: Address) -> set[str]:
    """The names that the shop's side speaks under; none where that isn't plain."""
    names = {turn.who for turn in turns}
    if len(names) < 2:
        return set()
    you = {name for name in names if _YOU.search(name)}
    own = {name for name in names if _is_customers(name, sender)}
    shop = {name for name in names - own - you if _SHOP.search(name)}
    if shop:
        return shop if names - shop else set()
    if own and you:
        return you
    others = names - own
    if any(_CUSTOMER.search(name) for name in own):
        return others if len(others) == 1 else set()
    sells = {t.who for t in turns if t.who in others and _SELLS.search(t.words(lines))}
    return sells if len(sells) == 1 else set()


def _is_customers(name: str, sender: Address) -> bool:
    if _CUSTOMER.search(name) or _MYSELF.search(name):
        return True
    whole = sender.name.casefold().split()
    return bool(whole) and name in (whole[0], " ".join(whole))


def _is_talk(lines: Sequence[str], turns: Sequence[Turn], shops: set[str]) -> bool:
    """'Customer: Jo Smith' and 'Agent: Kim' stand in forms, too: in a talk, more is said."""
    return any(len(t.words(lines).split()) >= _FEWEST_WORDS for t in turns if t.who in shops)


def answered_turns(
    message: Message, lines: Sequence[str], turns: Sequence[Turn]
) -> tuple[Prompt, ...]:
    """The shop's questions, each with the words that the customer answers right behind it."""
    starts = line_starts(message, lines)
    return tuple(
        Prompt(
            start=starts[answer.first] + answer.column,
            end=starts[answer.end - 1] + len(lines[answer.end - 1]),
            question=_question(asked, lines),
        )
        for asked, answer in pairwise(turns)
        if asked.shops and not answer.shops
    )


def turns_pointed_at(
    message: Message, lines: Sequence[str], turns: Sequence[Turn]
) -> tuple[QuotedMail, ...]:
    """What the shop said where the customer's next words take it up: 'yes, that one please'."""
    starts = line_starts(message, lines)
    return tuple(
        QuotedMail(start=starts[said.first] + said.column, text=said.words(lines), by_sender=False)
        for said, answer in reversed(list(pairwise(turns)))
        if said.shops and not answer.shops and _POINTS.search(answer.words(lines))
    )[:_MOST_POINTED_AT]


def _question(turn: Turn, lines: Sequence[str]) -> str:
    """What a turn asks last, or its last words."""
    said = _SENTENCE.split(turn.words(lines).strip())
    return next((one for one in reversed(said) if one.endswith("?")), said[-1]).strip()
