"""Values to stored text and back, equal to the last digit: a size must not change by being kept."""

from __future__ import annotations

import json
import re
from collections.abc import Sequence
from decimal import Decimal
from typing import Any

from ..rules.assessment import Assessment
from .model import Message, Question

# Half of a surrogate pair can come out of a broken chat export. No database keeps one, and
# PostgreSQL keeps no NUL in a text column either.
_UNKEEPABLE = re.compile("[\ud800-\udfff\x00]")
_HALF_PAIR = re.compile("[\ud800-\udfff]")


def keepable(text: str) -> str:
    """``text`` with what no database can keep marked by U+FFFD, one for one: spans stay true."""
    return _UNKEEPABLE.sub("\N{REPLACEMENT CHARACTER}", text)


def pack_message(message: Message) -> str:
    """A message as JSON."""
    return _dumps(message.model_dump(mode="json"))


def unpack_message(text: str) -> Message:
    """The message that was packed."""
    return Message.model_validate_json(text)


def pack_assessments(assessments: Sequence[Assessment]) -> str:
    """Assessments as a JSON list, lengths as decimal strings."""
    return _dumps([_pack_assessment(one) for one in assessments])


def unpack_assessments(text: str) -> tuple[Assessment, ...]:
    """The assessments that were packed."""
    return tuple(_unpack_assessment(one) for one in json.loads(text))


def pack_questions(questions: Sequence[Question]) -> str:
    """Questions as a JSON list."""
    return _dumps([one.model_dump(mode="json") for one in questions])


def unpack_questions(text: str) -> tuple[Question, ...]:
    """The questions that were packed."""
    return tuple(Question.model_validate(one) for one in json.loads(text))


def pack_words(words: Sequence[str]) -> str:
    """Plain strings (names of answers, notes) as a JSON list."""
    return _dumps(list(words))


def unpack_words(text: str) -> tuple[str, ...]:
    """The strings that were packed."""
    return tuple(json.loads(text))


def pack_detail(detail: dict[str, object]) -> str:
    """The particulars of an event as a JSON object."""
    return _dumps(detail)


def unpack_detail(text: str) -> dict[str, object]:
    """The particulars that were packed."""
    detail: dict[str, object] = json.loads(text)
    return detail


def _dumps(value: Any) -> str:
    return _HALF_PAIR.sub("\N{REPLACEMENT CHARACTER}", json.dumps(value, ensure_ascii=False))


def _pack_assessment(assessment: Assessment) -> dict[str, Any]:
    packed = assessment.model_dump(mode="json")
    # A doubt's readings are Decimals or text. As bare JSON strings, the quantity '12' would come
    # back as the length 12, so a Decimal says that it is one.
    for doubt, packed_doubt in zip(
        assessment.request.doubts, packed["request"]["doubts"], strict=True
    ):
        packed_doubt["readings"] = [
            {"decimal": str(one)} if isinstance(one, Decimal) else one for one in doubt.readings
        ]
    return packed


def _unpack_assessment(packed: dict[str, Any]) -> Assessment:
    for doubt in packed["request"]["doubts"]:
        doubt["readings"] = [
            Decimal(one["decimal"]) if isinstance(one, dict) else one for one in doubt["readings"]
        ]
    return Assessment.model_validate(packed)
