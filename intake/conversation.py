"""What came before a customer's further message, as far as its reading needs to know."""

from __future__ import annotations

from dataclasses import dataclass

from ..rules.request import SizeRequest
from .bare_answers import Asked
from .model import Message, Question


@dataclass(frozen=True, slots=True, kw_only=True)
class Conversation:
    """An inquiry before a further message of its customer."""

    requests: tuple[SizeRequest, ...]
    """Evidence in them names its message."""
    messages: tuple[Message, ...] = ()
    questions: tuple[Question, ...] = ()
    asked: tuple[Asked, ...] = ()
    """What our reply asked, in its order."""
    answered: bool = False
    """Whether a reply went out, or lies ready to be sent."""
    why_doubtful: str = ""
    """Why it is not sure that these sizes are meant: each is then put for a yes. A clause that the
    customer would understand."""
    recalled: bool = False
    """Whether they are those of an earlier inquiry: 'same as last time'."""


def placed(requests: tuple[SizeRequest, ...], message_id: str) -> tuple[SizeRequest, ...]:
    """The requests with evidence that says in which message it stands."""
    return tuple(
        one.model_copy(
            update={
                "evidence": tuple(
                    seen if seen.message_id else seen.model_copy(update={"message_id": message_id})
                    for seen in one.evidence
                )
            }
        )
        for one in requests
    )
