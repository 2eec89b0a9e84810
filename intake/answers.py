"""Approved answers to common questions: one file an answer, in reply_templates/answers.

A file is TOML between two '+++' lines (title, the ways people ask it, who approved it), then the
answer as reply-template text::

    +++
    title = "Wall factor"
    applies = "asks what a wall factor is"
    phrases = ["what is wall factor", "explain wall factor"]
    unless = ["limit"]
    needs = ["od", "wall"]
    source = "trade definition"
    approved_by = "Pat"
    approved_on = 2026-09-01
    review_by = 2027-09-01
    +++
    Wall factor is OD divided by wall.
"""

from __future__ import annotations

import re
import tomllib
from datetime import date
from typing import Literal

from pydantic import ConfigDict, ValidationError

from ..rules.request import Frozen

FENCE = "+++"
Need = Literal["od", "wall", "clr", "material", "angle"]
_WHY = {
    "extra_forbidden": "there is no setting of that name",
    "tuple_type": "a list in square brackets is wanted",
}
"""Faults of a setting in words for its owner, by pydantic's name."""


class BadAnswer(ValueError):
    """An answer file that can't be used; the message says why, without the file's name."""


class Answer(Frozen):
    """One approved answer."""

    # Strict, so that a quoted date or number is told to its owner instead of being guessed.
    model_config = ConfigDict(strict=True)

    name: str
    """The file's name without suffix: what ``Question.answer`` holds."""
    title: str
    applies: str = ""
    """When it is the right answer, in words for the owner; nothing is matched by it."""
    phrases: tuple[str, ...]
    """Ways people ask it, in any language; see ``matching.py`` for how a question is held against
    them."""
    unless: tuple[str, ...] = ()
    """Words that show that something else is asked; with one of them the answer stays out."""
    needs: tuple[Need, ...] = ()
    """What has to be known of the bend for the asker's own figures to stand in it."""
    for_a_person: bool = False
    """Questions that a person answers by hand, always: they are told to be without an answer. The
    text is then a note for whoever answers, and stands in no reply."""
    source: str
    approved_by: str
    approved_on: date
    review_by: date
    body: str
    """Reply-template text; may use what every reply template may use."""
    body_line: int
    """The line of its file that the body begins on."""


def parse_answer(name: str, text: str) -> Answer:
    """The answer in one file's ``text``. Raises BadAnswer with one sentence."""
    opening, *rest = text.lstrip("\ufeff").split("\n")
    closing = next((i for i, line in enumerate(rest) if line.strip() == FENCE), None)
    if opening.strip() != FENCE or closing is None:
        raise BadAnswer(f"it must begin with a block of settings between two '{FENCE}' lines.")
    try:
        settings = tomllib.loads("\n".join(rest[:closing]))
    except tomllib.TOMLDecodeError as error:
        # The block is read without its opening line: the file's own line is one more.
        told = re.sub(r"(?<=at line )\d+", lambda line: str(int(line.group()) + 1), str(error))
        raise BadAnswer(f"its settings can't be read: {told}.") from error
    after = rest[closing + 1 :]
    body = "\n".join(after).strip()
    if not body:
        raise BadAnswer("it has no text after its settings.")
    blank = next(i for i, line in enumerate(after) if line.strip())
    settings |= {"name": name, "body": body, "body_line": closing + 3 + blank}
    for key in ("phrases", "unless", "needs"):
        if isinstance(settings.get(key), list):
            settings[key] = tuple(settings[key])
    try:
        return Answer.model_validate(settings)
    except ValidationError as error:
        first = error.errors()[0]
        where = ".".join(str(part) for part in first["loc"])
        why = _WHY.get(first["type"], first["msg"].lower())
        raise BadAnswer(f"setting '{where}': {why}.") from error
