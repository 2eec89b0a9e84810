"""The tube that our own quoted question names: 'What wall is the 1-1/8 tube?' is answered with a
wall, and means a tube of 1-1/8 in."""

from __future__ import annotations

from decimal import Decimal
from typing import Literal

from ....rules.request import Evidence, SizeRequest
from ...late_pattern import late_pattern
from ...model import QuotedMail
from ..text.layout import lay_out
from ..text.lexer import lex
from ..text.plain import Plain, flatten
from ..text.tokens import Token
from .quoted import FROM_QUOTED

_NOUN = late_pattern(r"(?:tubes?|tubing|pipes?|rohr|tuyau|tubo|buis)$")
_BEFORE_ENGLISH = late_pattern(
    r"\b(?:the|your|this|that|these|those|of|for|das|dem|den|des|ihr|euer|het|de|die|jullie|uw) $"
)
_BEFORE_NOUN_FIRST = late_pattern(
    r"\b(?:tube|tuyau|tubo|buis|rohr|rohrs|rohres)(?: de| da| van| von| mit|:)? $"
)
_NEAREST = 2
"""Tokens between a figure and the noun behind it."""
_IN_MM = {"in": Decimal("25.4"), "mm": Decimal(1), "cm": Decimal(10)}
_LARGEST_INCH = Decimal(8)
"""A figure without a unit above this is in mm, a fraction or one below it in inches."""


def with_tube_asked_about(known: list[SizeRequest], mail: QuotedMail) -> list[SizeRequest]:
    """The sizes known, or the one tube that the newest mail, which is ours, asks about, where no
    OD is known. Where it asks about several, none of them is meant alone."""
    if mail.by_sender:
        return known
    plain = flatten(mail.text)
    tokens = lex(plain.text)
    layout = lay_out(tokens, plain.text)
    found: dict[Decimal, tuple[Token, Literal["in", "mm"]]] = {}
    for at, token in enumerate(tokens):
        asks = token.number is not None and _names_tube(plain.text, tokens, at)
        if asks and "?" in layout.sentence_text(layout.sentence_of[at]):
            mm, unit = _length(token)
            found[mm] = token, unit
    named = any(request.od_mm is not None for request in known)
    if not found or (named and not (len(found) > 1 and _of_mail(known, mail))):
        return known
    return [_asked_about(mail, plain, mm, *told) for mm, told in found.items()]


def _of_mail(known: list[SizeRequest], mail: QuotedMail) -> bool:
    """Whether all that is known stands in that mail."""
    places = [item.start for request in known for item in request.evidence]
    return all(mail.start <= place < mail.start + len(mail.text) for place in places)


def _asked_about(
    mail: QuotedMail, plain: Plain, mm: Decimal, token: Token, unit: Literal["in", "mm"]
) -> SizeRequest:
    start, end = plain.span(token.start, token.end)
    evidence = Evidence(
        field="od",
        start=mail.start + start,
        end=mail.start + end,
        surface=mail.text[start:end],
        how=FROM_QUOTED,
    )
    return SizeRequest(od_mm=mm, evidence=(evidence,), written_in=unit)


def _names_tube(text: str, tokens: list[Token], at: int) -> bool:
    token = tokens[at]
    ahead = text[max(0, token.start - 16) : token.start].replace("\n", " ").casefold()
    if _BEFORE_NOUN_FIRST.search(ahead):
        return True
    behind = tokens[at + 1 : at + 1 + _NEAREST]
    noun = any(_NOUN.match(other.text) for other in behind)
    return noun and _BEFORE_ENGLISH.search(ahead) is not None


def _length(token: Token) -> tuple[Decimal, Literal["in", "mm"]]:
    value = token.number.value if token.number is not None else Decimal(0)
    unit = token.unit if token.unit in _IN_MM else None
    if unit is None:
        parted = token.number is not None and token.number.style in ("fraction", "mixed")
        unit = "in" if parted or value <= _LARGEST_INCH else "mm"
    return value * _IN_MM[unit], "in" if unit == "in" else "mm"
