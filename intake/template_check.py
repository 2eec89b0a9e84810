"""Are a shop's reply templates fit for use? Every fault is named before a customer's mail meets it.

Each file is read, parsed and filled in once for every sort of reply, so that a misspelt variable
in a rare branch shows too.
"""

from __future__ import annotations

from collections.abc import Iterator
from datetime import date
from decimal import Decimal
from pathlib import Path
from typing import TYPE_CHECKING

from ..rules.assessment import (
    Alternative,
    Assessment,
    Decision,
    Finding,
    MandrelNeeded,
    StockMatch,
)
from ..rules.request import Doubt, Material, SizeRequest
from .drafting import draft
from .model import Address, Attachment, Kind, Message, OwnText, Question
from .near_phrases import phrase_terms, tells_something
from .reply_facts import Facts
from .templates import (
    ANSWER_SUFFIX,
    ANSWERS,
    FOLDER,
    SUFFIX,
    BadTemplate,
    EndlessTemplate,
    Templates,
)

if TYPE_CHECKING:
    from ..rules.shop import Shop

VARIABLES = frozenset(Facts.__dataclass_fields__)


def check_templates(shop_folder: Path | None, shop: Shop | None = None) -> list[BadTemplate]:
    """Every fault in the reply templates and answers of one shop folder, in order of file and line.

    ``shop`` is what replies are tried with, by default the sample shop. An empty list is "fit for
    use".
    """
    from ..rules.shop import sample_shop

    templates = Templates(shop_folder)
    if shop_folder and (folder := shop_folder / FOLDER).exists() and not folder.is_dir():
        return [BadTemplate("", None, "it is a file, not a folder with templates in it.")]
    faults = [*_files(templates, shop_folder), *_answers(templates)]
    if not faults:
        # Filled in only when all files can be parsed, or one fault would be told many times.
        faults = list(_trials(templates, shop or sample_shop()))
    once = {str(fault): fault for fault in faults}
    return sorted(once.values(), key=lambda fault: (fault.file, fault.line or 0, fault.why))


def overdue_answers(shop_folder: Path | None, today: date) -> list[str]:
    """One sentence for each answer whose day of review has passed by ``today``: it stays in use."""
    return [
        f"{FOLDER}/{ANSWERS}/{answer.name}{ANSWER_SUFFIX}: it was to be reviewed by "
        f"{answer.review_by.isoformat()}."
        for answer in Templates(shop_folder).answers
        if answer.review_by < today
    ]


def _files(templates: Templates, shop_folder: Path | None) -> Iterator[BadTemplate]:
    """Faults that show without filling in: can't be read, syntax, unknown variable, unused file."""
    from jinja2 import TemplateSyntaxError, meta

    used = set(Templates().files(SUFFIX))
    for file in templates.files(SUFFIX):
        try:
            parsed = templates.environment.parse(templates.text(file) or "", file)
        except BadTemplate as fault:
            yield fault
            continue
        except TemplateSyntaxError as error:
            yield BadTemplate(file, error.lineno, f"{error.message}.")
            continue
        used |= {name for name in meta.find_referenced_templates(parsed) if name}
        for name in sorted(meta.find_undeclared_variables(parsed) - VARIABLES):
            yield BadTemplate(file, None, f"there is no variable {name!r}.")
    used |= set(templates.files(ANSWER_SUFFIX, ANSWERS))
    for file in _owners(shop_folder):
        if file not in used:
            yield BadTemplate(file, None, "no reply uses a file of this name.")


def _owners(shop_folder: Path | None) -> Iterator[str]:
    """The files that the owner put into the shop folder, as templates are named."""
    folder = shop_folder / FOLDER if shop_folder else None
    if folder is None or not folder.is_dir():
        return
    for path in sorted(folder.rglob("*")):
        name = path.relative_to(folder).as_posix()
        if path.is_file() and not any(part.startswith((".", "__")) for part in name.split("/")):
            yield name


def _answers(templates: Templates) -> Iterator[BadTemplate]:
    """Faults of the answers' settings: unreadable, too vague a phrase, a phrase claimed twice."""
    claimed: dict[frozenset[str], tuple[str, str]] = {}
    for file in templates.files(ANSWER_SUFFIX, ANSWERS):
        try:
            answer = templates.answer(file)
        except BadTemplate as fault:
            yield fault
            continue
        if not answer.phrases:
            yield BadTemplate(file, None, "it has no phrases, so no question would find it.")
        for phrase in answer.phrases:
            keys = phrase_terms(phrase)
            if not tells_something(phrase):
                yield BadTemplate(file, None, f"phrase {phrase!r} has no word that tells it apart.")
            elif (first := claimed.setdefault(keys, (file, phrase)))[0] != file:
                yield BadTemplate(
                    file,
                    None,
                    f"phrase {phrase!r} asks the same as {first[1]!r} in {first[0]}: take one out"
                    " (of an answer of ours in a copy of its file in your folder).",
                )


def _trials(templates: Templates, shop: Shop) -> Iterator[BadTemplate]:
    """Replies of every sort, filled in with invented requests; then every answer."""
    plain = [
        (message, kind, assessments, questions)
        for message in _MESSAGES
        for kind, assessments in _REPLIES
        for questions in ((), (Question(surface="Can you engrave a name?"),))
    ]
    answering = [
        (_MESSAGES[0], kind, assessments, (Question(surface="?", answer=answer.name),))
        for answer in templates.answers
        for kind, assessments in _ANSWERED
    ]
    for message, kind, assessments, questions in plain + answering:
        own = OwnText(text=message.text, body_start=message.body_start, subject_counts=True)
        try:
            made = draft(message, kind, assessments, questions, own, shop, templates)
        except EndlessTemplate as fault:
            yield fault
            return  # the other trials would take as long
        except BadTemplate as fault:
            yield fault
            continue
        if made is not None and not made.body.strip():
            yield BadTemplate(f"{made.template}{SUFFIX}", None, "it gives a reply without a word.")


_ADDRESS = Address(name="Ada Example", address="ada@example.com")
_MESSAGES = (
    Message(message_id="a", sender=_ADDRESS, body="Same as last time."),
    Message(
        message_id="b",
        sender=Address(name="", address="shop@example.com"),
        body="For a roll cage, race seat, suspension, brake line, steam boiler and an aircraft.",
        attachments=(Attachment(name="a.pdf", content_type="application/pdf", size=1),),
    ),
    Message(message_id="c", sender=_ADDRESS, body="See the attached print."),
)
_SIZE = SizeRequest(
    od_mm=Decimal("44.45"),
    wall_mm=Decimal("2.413"),
    clr_mm=Decimal("133.35"),
    material=Material.CARBON_STEEL,
    needed_by=date(2026, 12, 4),
    quantity=2,
    doubts=(Doubt(field="od", readings=(Decimal("44.45"), Decimal("41.275")), why="a slip"),),
)
_GAPS = SizeRequest(od_mm=Decimal("44.45"))
_FINDINGS = (
    Finding(rule="trial", effect="warns", text="A remark.", source="house rule"),
    Finding(rule="enough-on-hand", effect="notes", text="A remark.", source="house rule"),
    Finding(rule="trial", effect="declines", text="A remark.", source="house rule"),
    Finding(rule="trial", effect="asks", text="A remark.", source="house rule", field="wall"),
)
_RATIOS = {"wall_factor": Decimal("18.4"), "d_of_bend": Decimal(3)}
_STOCK = StockMatch(
    part="M-1",
    mandrel_diameter_mm=Decimal("39.4"),
    balls=2,
    surface="chromed tool steel",
    on_hand=1,
    price="100 USD",
)
_MANDREL = MandrelNeeded(
    bore_mm=Decimal("39.6"),
    diameter_low_mm=Decimal("39.3"),
    diameter_high_mm=Decimal("39.5"),
    balls_low=1,
    balls_high=2,
    surfaces=("chromed tool steel",),
)
_ALTERNATIVE = Alternative(
    od_mm=Decimal("44.45"), wall_mm=Decimal("3.048"), clr_mm=Decimal("152.4"), why="a heavier wall"
)


def _assessments() -> Iterator[Assessment]:
    for decision in Decision:
        for request, ratios in ((_SIZE, _RATIOS), (_GAPS, {})):
            for findings in ((), _FINDINGS):
                whole = decision is Decision.STOCK or bool(findings)
                yield Assessment(
                    request=request,
                    decision=decision,
                    findings=findings,
                    mandrel=_MANDREL if whole else None,
                    stock=_STOCK if decision is Decision.STOCK else None,
                    alternatives=(_ALTERNATIVE, _ALTERNATIVE) if whole else (),
                    **ratios,
                )


_REPLIES: tuple[tuple[Kind, tuple[Assessment, ...]], ...] = (
    (Kind.QUESTION, ()),
    (Kind.SIZES, ()),
    *((Kind.SIZES, (assessment,)) for assessment in _assessments()),
    (Kind.SIZES, tuple(_assessments())),
)
_ANSWERED = (_REPLIES[0], _REPLIES[-1], *_REPLIES[2:-1:4])
"""An answer may look at the sizes: none, several, and one of each decision."""
