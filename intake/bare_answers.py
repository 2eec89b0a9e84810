"""Bare answers to what our reply asked: '.065', '1. 1-5/8', 'the first is 304'.

On its own such a figure means nothing. Under our numbered questions it is the answer to one.
"""

from __future__ import annotations

import re
from collections.abc import Sequence
from dataclasses import dataclass
from decimal import Decimal

from ..rules.assessment import Assessment, Decision
from ..rules.request import Doubt, Evidence, FieldName, Material, SizeRequest
from .carry_over import ATTRIBUTES
from .reading import parse_field

_NUMBERED = re.compile(r"^[ \t]*(\d{1,2})[ \t]*[.):][ \t]+(\S[^\n]*)$", re.MULTILINE)
_MOST_WORDS = 12
"""A longer text is no bare answer: the reader has had its say on it."""


@dataclass(frozen=True, slots=True)
class Asked:
    """One question of our reply: of which sizes (index from 0), about which field."""

    indexes: tuple[int, ...]
    field: FieldName


def asked_of(assessments: Sequence[Assessment]) -> tuple[Asked, ...]:
    """The questions that a reply on these sizes put, in its order."""
    found: dict[tuple[FieldName, str], list[int]] = {}
    for index, one in enumerate(assessments):
        if one.decision is Decision.DECLINE:
            continue
        fields: list[tuple[FieldName, str]] = [
            (finding.field, finding.question or "")
            for finding in one.findings
            if finding.effect == "asks" and finding.field is not None
        ]
        named = {name for name, _ in fields}
        fields += [(name, "") for name in one.request.missing if name not in named]
        for key in fields:
            found.setdefault(key, []).append(index)
    return tuple(Asked(tuple(indexes), key[0]) for key, indexes in found.items())


def bare_answers(
    own_text: str, start: int, asked: Sequence[Asked], requests: Sequence[SizeRequest]
) -> dict[int, SizeRequest]:
    """Size index -> the fields that a short answer gives; empty where it answers nothing surely.

    ``start``: where in ``own_text`` the body begins. Several questions need numbered answers.
    """
    body = own_text[start:]
    numbered = [
        (int(match[1]), match[2], start + match.start(2)) for match in _NUMBERED.finditer(body)
    ]
    told: dict[int, SizeRequest] = {}
    if numbered:
        for number, words, at in numbered:
            if not 1 <= number <= len(asked):
                return {}
            _tell(told, asked[number - 1], words, at, requests)
    elif len(asked) == 1 and len(body.split()) <= _MOST_WORDS:
        at = start + len(body) - len(body.lstrip())
        _tell(told, asked[0], body.strip(), at, requests)
    return told


def _tell(
    told: dict[int, SizeRequest],
    asked: Asked,
    words: str,
    at: int,
    requests: Sequence[SizeRequest],
) -> None:
    value = parse_field(asked.field, words)
    attribute = ATTRIBUTES[asked.field]
    wanted: type | tuple[type, ...] = Decimal if attribute.endswith("_mm") else (Material, int)
    if not isinstance(value, wanted) or asked.field in ("shape", "needed_by"):
        return
    for index in asked.indexes:
        was = requests[index].doubt_on(asked.field)
        offered = was.readings if was is not None else ()
        # One of the readings that we offered is plain; anything else is read back.
        doubts: tuple[Doubt, ...] = ()
        if isinstance(value, Decimal) and value not in offered:
            doubts = (
                Doubt(
                    field=asked.field,
                    readings=(value,),
                    why="taken from your answer, which names no dimension",
                ),
            )
        evidence = Evidence(
            field=asked.field, start=at, end=at + len(words), surface=words, how="answer"
        )
        before = told.get(index, SizeRequest(written_in=requests[index].written_in))
        told[index] = before.model_copy(
            update={
                attribute: value,
                "doubts": (*before.doubts, *doubts),
                "evidence": (*before.evidence, evidence),
            }
        )
