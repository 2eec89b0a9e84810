"""A material that answers '> Material?': there '1020 drawn' is a grade, and no length or code."""

from __future__ import annotations

import re
from collections.abc import Sequence

from ....rules.request import Doubt, Evidence, Material, SizeRequest
from ...late import Late
from ...model import OwnText
from ...words_relying import FIELDS
from ..material.grades import Grade, grade_at

_ASKS = Late(
    (
        FIELDS["material"],
        r"\b(?:what|which) (?:kind of |type of |sort of )?(?:steel|alloy|metal|stainless)\b",
        r"\b(?:welche[rsnm]?|was für ein(?:en?)?) (?:stahl|werkstoff|material|legierung)\b"
        r"|\bquel(?:le)? (?:acier|matière|matériau|nuance|alliage)\b"
        r"|\b(?:qué|cuál) (?:acero|material|aleación|calidad)\b"
        r"|\b(?:che|quale) (?:acciaio|materiale|lega)\b|\b(?:welk|wat voor) (?:staal|materiaal)\b",
    )
)
_WORD = re.compile(r"(?<![\w.,/-])\w")
_FAR = 60
"""Characters of an answer in which the grade stands."""


def with_material_answered(requests: list[SizeRequest], own: OwnText) -> list[SizeRequest]:
    """The requests that name no material with the one that an inline answer gives."""
    answers = [found for prompt in own.prompts if _ASKS.search(prompt.question)
               for found in _grades(own.text, prompt.start, prompt.end)]  # fmt: skip
    families = {grade.family for grade in answers}
    if len(families) > 1:
        return [_doubted(request, families) for request in requests]
    if not families:
        return requests
    grade = answers[0]
    evidence = Evidence(
        field="material",
        start=grade.start,
        end=grade.end,
        surface=own.text[grade.start : grade.end],
        how="answers the quoted question",
    )
    name = own.text[grade.name_start : grade.name_end]
    return [_with(request, grade, name, evidence) for request in requests]


def _doubted(request: SizeRequest, families: set[Material]) -> SizeRequest:
    """'1020 or 5052': either, until it is settled."""
    if request.material not in families or request.doubt_on("material") is not None:
        return request
    named = tuple(sorted(family.value for family in families))
    doubt = Doubt(field="material", readings=named, why="more than one material is named")
    return request.model_copy(update={"doubts": (*request.doubts, doubt)})


def _with(request: SizeRequest, grade: Grade, name: str, evidence: Evidence) -> SizeRequest:
    if request.material is not None:
        return request
    told = tuple(sorted((*request.evidence, evidence), key=lambda item: item.start))
    return request.model_copy(update={"material": grade.family, "grade": name, "evidence": told})


def _grades(text: str, start: int, end: int) -> Sequence[Grade]:
    """The grades that an answer names."""
    found: list[Grade] = []
    for match in _WORD.finditer(text, start, min(end, start + _FAR)):
        grade = grade_at(text, match.start())
        if grade is not None and (not found or grade.start >= found[-1].end):
            found.append(grade)
    return found
