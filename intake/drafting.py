"""The reply: which template, filled with which facts. A person approves it; nothing here sends.

One well-ordered letter: greeting, the sizes as read, what the shop can do, what has to be
confirmed or asked, answers to common questions, the caution, the signature.
"""

from __future__ import annotations

import re
from collections.abc import Sequence
from dataclasses import replace
from functools import lru_cache
from typing import TYPE_CHECKING

from ..rules.assessment import Assessment
from ..rules.request import LENGTH_FIELDS
from .addressing import first_name, one_line, reply_subject
from .bend_words import BendWords
from .late_pattern import late_pattern
from .model import Draft, Kind, Message, OwnText, Question
from .repeats import as_before
from .reply_facts import AskedWords, Facts, SizeWords, Unread
from .templates import ANSWER_SUFFIX, ANSWERS, SUFFIX, Templates
from .uses import safety_uses
from .wording import shop_words, size_words, words_of

if TYPE_CHECKING:
    from pathlib import Path

    from ..rules.shop import Shop

WHAT_TO_SEND = "what-to-send"
"""The answer that a reply to a question ends with anyway."""
LONGEST_QUOTED_QUESTION = 200
_LISTED_SINGLY = 3
"""Numbers in a row; more than so many are 'sizes 4 to 9'."""

_ATTACHED = late_pattern(
    r"\b(?:attach(?:ed|ment|ments)|enclosed|anbei|angehängt|anhang|anlage|beigefügt|ci-joint\w*"
    r"|pièces?\sjointes?|adjunt[ao]s?|allegat[oaie]|bijlagen?|bijgevoegd)\b",
    re.IGNORECASE,
)


def draft(
    message: Message,
    kind: Kind,
    assessments: tuple[Assessment, ...],
    questions: tuple[Question, ...],
    own: OwnText,
    shop: Shop,
    templates: Templates | None = None,
    uses: tuple[str, ...] | None = None,
    spoken_of: tuple[Assessment, ...] = (),
    *,
    goes_on: bool = False,
) -> Draft | None:
    """The reply to ``message`` for a person to approve.

    None for automatic and other mail, and for questions alone of which none has an approved answer.
    ``spoken_of`` are sizes that a question is about, though none is asked for; ``goes_on``: the
    message is longer than what was read of it.
    ``templates`` is the wording to use; by default that of the shop's folder, ours where it has
    none. ``uses`` are the safety-relevant ones named so far, by default those that ``own`` names.
    Raises BadTemplate, with file and line, where a template can't be filled in.
    """
    if kind not in (Kind.SIZES, Kind.QUESTION):
        return None
    answered = tuple(dict.fromkeys(q.answer for q in questions if q.answer))
    if kind is Kind.QUESTION and not answered:
        return None
    wording = templates or templates_for(shop.folder)
    template = _template(kind, assessments)
    uses = safety_uses(own.text) if uses is None else uses
    facts = _facts(message, template, assessments, own, shop, uses)
    facts = replace(facts, bend=_bend(assessments or spoken_of, shop), goes_on=goes_on)
    variables = facts.as_variables()
    facts = replace(
        facts,
        answers=tuple(
            wording.render(f"{ANSWERS}/{name}{ANSWER_SUFFIX}", variables).strip()
            for name in answered
        ),
        says_what_to_send=WHAT_TO_SEND in answered,
        open_questions=tuple(
            one_line(q.surface, LONGEST_QUOTED_QUESTION) for q in questions if not q.answer
        ),
    )
    return Draft(
        subject=reply_subject(message.subject),
        body=wording.render(template + SUFFIX, facts.as_variables()),
        template=template,
        answers=answered,
    )


def _bend(assessments: Sequence[Assessment], shop: Shop) -> BendWords:
    """The one bend that answers may give figures for; an empty one where there are several, or
    where a length of it is in doubt."""
    one = assessments[0] if len(assessments) == 1 else None
    if one is not None and any(one.request.doubt_on(field) for field in LENGTH_FIELDS):
        one = None
    return BendWords(one, shop, words_of(shop))


@lru_cache(maxsize=8)
def templates_for(shop_folder: Path | None) -> Templates:
    """The wording of one shop, kept for the run: compiling templates costs more than filling."""
    return Templates(shop_folder)


def _template(kind: Kind, assessments: Sequence[Assessment]) -> str:
    if kind is Kind.QUESTION:
        return "question"
    if not any(_has_length(assessment) for assessment in assessments):
        return "no-size"
    return assessments[0].decision.value if len(assessments) == 1 else "several-sizes"


def _has_length(assessment: Assessment) -> bool:
    return any(assessment.request.length_mm(field) is not None for field in LENGTH_FIELDS)


def _facts(
    message: Message,
    template: str,
    assessments: Sequence[Assessment],
    own: OwnText,
    shop: Shop,
    uses: tuple[str, ...],
) -> Facts:
    """Everything but the answers, which may themselves use these facts."""
    sizes = [size_words(a, shop, number=i) for i, a in enumerate(assessments, start=1)]
    shared_remarks: tuple[str, ...] = ()
    if len(sizes) > 1:
        shared_remarks = tuple(w for w in sizes[0].warnings if all(w in s.warnings for s in sizes))
        sizes = [
            replace(s, warnings=tuple(w for w in s.warnings if w not in shared_remarks))
            for s in sizes
        ]
    gaps = not sizes or any(
        assessment.request.length_mm(field) is None
        for assessment in assessments
        for field in LENGTH_FIELDS
    )
    unread, unread_name = _unread(message, own) if gaps else ("", "")
    return Facts(
        first_name=first_name(message),
        shop=shop_words(shop),
        words=words_of(shop),
        sizes=() if template == "no-size" else tuple(sizes),
        material=_shared([size.material for size in sizes]),
        needed_by=_shared([size.needed_by for size in sizes]),
        lead_times=tuple(dict.fromkeys(s.lead_time for s in sizes if s.lead_time)),
        remarks=shared_remarks,
        rule_books=_rule_books(sizes),
        questions=_numbered(sizes),
        uses=uses,
        unread=unread,
        unread_name=unread_name,
    )


def _shared(values: Sequence[str]) -> str:
    """The value that all have, '' where they differ or one lacks it."""
    return values[0] if len(set(values)) == 1 else ""


def _numbered(sizes: Sequence[SizeWords]) -> tuple[AskedWords, ...]:
    """All questions of all sizes, each once, with the sizes that it is about."""
    about: dict[str, list[int]] = {}
    for size in sizes:
        for text in size.questions:
            about.setdefault(text, []).append(size.number)
    return tuple(AskedWords(text, _about(numbers, sizes)) for text, numbers in about.items())


def _rule_books(sizes: Sequence[SizeWords]) -> tuple[str, ...]:
    """What rule books forbid; of several sizes the first in full, the others by their number."""
    tight = [size for size in sizes if size.rule_books]
    if len(sizes) < 2 or not tight:
        return tight[0].rule_books if tight else ()
    texts = [f"Size {tight[0].number}: {text}" for text in tight[0].rule_books]
    if others := [size.number for size in tight[1:]]:
        texts.append(f"The same goes for {_numbers(others)}.")
    return tuple(texts)


def _about(numbers: list[int], sizes: Sequence[SizeWords]) -> str:
    return "" if len(numbers) == len(sizes) else _numbers(numbers)


def _numbers(numbers: Sequence[int]) -> str:
    """'size 2', 'sizes 1, 3 and 4', 'sizes 1 to 6 and 9'."""
    runs: list[list[int]] = []
    for number in numbers:
        if runs and number == runs[-1][-1] + 1:
            runs[-1].append(number)
        else:
            runs.append([number])
    parts: list[str] = []
    for run in runs:
        parts += [f"{run[0]} to {run[-1]}"] if len(run) > _LISTED_SINGLY else map(str, run)
    *before, last = parts
    many = f"{', '.join(before)} and {last}" if before else last
    return f"sizes {many}" if len(numbers) > 1 else f"size {last}"


def _unread(message: Message, own: OwnText) -> tuple[Unread, str]:
    """Where the figures that are missing may stand, and the attachment's name."""
    unread = [a for a in message.attachments if a.is_unread]
    # A logo in a signature is an image too, so images count only where nothing else is there.
    documents = [a for a in unread if not a.content_type.startswith("image/")]
    if documents or (unread and _ATTACHED.search(own.text)):
        named = documents or unread
        return "attachment", one_line(named[0].name, 60) if len(named) == 1 else ""
    if _ATTACHED.search(own.text) and not message.attachments:
        return "missing attachment", ""
    return ("earlier order", "") if as_before(own.text) else ("", "")
