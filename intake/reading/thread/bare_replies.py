"""A reply above the quoted question that is hardly more than its figures: '4 inch. And .065.' below
which the shop has asked 'What are the wall and the CLR?', or 'sorry, it is 100 mm' where one length
was asked for.

Which of two figures answers what is told by their sizes alone, so in whatever order they come;
where sizes can't tell (an OD and a radius), nothing is taken. A single one must suit the tube that
is quoted.
"""

from __future__ import annotations

from collections.abc import Sequence
from decimal import Decimal
from typing import Literal

from ....rules.request import SizeRequest
from ...model import OwnText, Prompt
from ..text.lexer import lex
from ..text.patterns import whole_words, word_set
from ..text.plain import flatten
from ..text.roles import LENGTH_ROLES
from ..text.tokens import Token
from .quoted import Relied

_LONGEST = 240
"""Characters of a reply that says hardly more than its figures."""
_TIMES_THE_WALL = 4
"""An OD or a radius is at least so many walls."""
Length = Literal["od", "wall", "clr"]
_LENGTHS: tuple[Length, ...] = ("od", "wall", "clr")
_QUESTION: dict[Length, str] = {"od": "OD?", "wall": "Wall?", "clr": "CLR?"}
_TIGHTEST, _WIDEST = Decimal("0.6"), Decimal(20)
"""Radii that a tube is bent to, in ODs."""
_GAUGES = ("ga", "bwg", "swg")
_UNITS = frozenset(("in", "mm", "cm", "D", *_GAUGES))
_LITTLE = word_set(
    "to on at please thanks thank as sorry cheers and but for auf bis zur zum bitte danke sorry in"
    " à au merci al a por gracias all alla grazie per tot op graag bedankt"
    " according laut gemäß selon d'après según secondo volgens nach if because since measured"
)
_PUT_OFF = whole_words(
    r"(?:will|i'll|we'll|shall|to|must|let me|have to) (?:\w+ )?(?:measure|check|ask|look|find"
    r"|confirm)",
    r"tell you|let you know|come back to you|tomorrow|later|don't know|do not know|not known yet",
    r"(?:the|my|our) (?:old|last|previous|other) \w+ (?:was|is|had)|(?:part|drawing|job) number",
    r"(?:muss|werde|müssen|werden) (?:\w+ ){0,4}(?:messen|nachmessen|fragen|nachfragen|nachsehen)",
    r"melde mich|morgen|später|weiß (?:ich )?(?:es )?(?:noch )?nicht|(?:der|das|die) alte \w+",
    r"(?:je|nous) (?:vais|allons|dois|devons) (?:\w+ )?(?:mesurer|vérifier|demander|regarder)",
    r"demain|plus tard|(?:je|nous) ne (?:sais|savons) pas|l'ancien\w*|(?:voy|vamos) a \w+|mañana",
    r"más tarde",
    r"no (?:lo )?(?:sé|sabemos)|(?:el|la) (?:viejo|vieja|anterior)|domani|più tardi|non (?:lo )?so",
    r"(?:devo|dobbiamo) (?:\w+ )?(?:misurare|chiedere|controllare)|(?:quello|il|la) vecchi[oa]",
    r"later|weet (?:ik|wij|we) (?:het )?(?:nog )?niet|(?:moet|zal|ga) (?:\w+ ){0,3}(?:meten|vragen)"
    r"|(?:de|het) oude \w+",
)
"""Whoever has to look it up has not answered: another figure of the reply is something else."""
_IN_MM = {"in": Decimal("25.4"), "mm": Decimal(1), "cm": Decimal(10)}


def bare_replies(own: OwnText, relied: Relied | None) -> tuple[Prompt, ...]:
    """One answer for each of the one or two lengths that the quoted mail asks for, or none."""
    if relied is None or own.prompts:
        return ()
    words = own.text[own.body_start :]
    if len(words.strip()) > _LONGEST:
        return ()
    asked = [field for field in _LENGTHS if field in relied.asked]
    open_ones = [f for f in asked if all(one.length_mm(f) is None for one in relied.known)]
    plain = flatten(words)
    tokens = lex(plain.text)
    if len(open_ones) == 1 and len(relied.known) == 1 and not _PUT_OFF.search(plain.text):
        found = _only_answer(tokens, open_ones[0], relied.known[0])
    elif len(asked) == 2 and "wall" in asked:
        found = _two_answers(tokens, asked)
    else:
        found = {}
    prompts = []
    for field, token in found.items():
        start, end = (at + own.body_start for at in plain.span(token.start, token.end))
        prompts.append(Prompt(question=_QUESTION[field], start=start, end=end))
    return tuple(prompts)


def _two_answers(tokens: Sequence[Token], asked: Sequence[Length]) -> dict[Length, Token]:
    if any(cue.role in LENGTH_ROLES for token in tokens for cue in token.cues):
        return {}  # the words say which is which
    numbers = [token for token in tokens if token.number is not None and not token.block]
    if len(numbers) != 2 or any(token.kind == "times" for token in tokens):
        return {}
    wall = _wall_of(numbers)
    if wall is None:
        return {}
    other = next(token for token in numbers if token is not wall)
    return {field: wall if field == "wall" else other for field in asked}


def _only_answer(tokens: Sequence[Token], asked: Length, known: SizeRequest) -> dict[Length, Token]:
    """'It is 100 mm, to the middle of the tube': the one figure that measures anything."""
    measured = [
        at
        for at, token in enumerate(tokens)
        if token.number is not None
        and not token.block
        and (token.unit in _UNITS or (token.unit is None and _stands_alone(tokens, at)))
    ]
    if len(measured) != 1 or any(token.kind == "times" for token in tokens):
        return {}
    answer = tokens[measured[0]]
    return {asked: answer} if _suits(answer, asked, known) else {}


def _stands_alone(tokens: Sequence[Token], at: int) -> bool:
    """Whether a bare figure counts nothing: a mark, the end, or a little word comes behind it."""
    behind = tokens[at + 1] if at + 1 < len(tokens) else None
    if behind is None or behind.kind in ("line", "para"):
        return True
    return not behind.text[:1].isalnum() or behind.text.casefold() in _LITTLE


def _suits(answer: Token, asked: Length, known: SizeRequest) -> bool:
    """Whether the quoted tube can have such a wall, or be bent to such a radius."""
    if answer.unit == "D":
        return asked == "clr"
    if answer.unit in _GAUGES:
        return asked == "wall"
    length = _length(answer, known.written_in)
    od, wall = known.od_mm, known.wall_mm
    if asked == "wall":
        return od is not None and length * _TIMES_THE_WALL <= od
    if asked == "clr":
        return od is not None and od * _TIGHTEST <= length <= od * _WIDEST
    return wall is None or wall * _TIMES_THE_WALL <= length


def _wall_of(numbers: Sequence[Token]) -> Token | None:
    """The one of two figures that is the wall by far, or None; a gauge is one by its unit."""
    gauges = [token for token in numbers if token.unit in _GAUGES]
    if gauges:
        return gauges[0] if len(gauges) == 1 else None
    unit = next((token.unit for token in numbers if token.unit), None)
    small, large = sorted(numbers, key=lambda token: _length(token, unit))
    return small if _length(small, unit) * _TIMES_THE_WALL <= _length(large, unit) else None


def _length(token: Token, other: str | None) -> Decimal:
    """In mm; a bare figure has the other one's unit, and two bare ones are alike."""
    value = token.number.value if token.number is not None else Decimal(0)
    return value * _IN_MM.get(token.unit or other or "", Decimal(1))
