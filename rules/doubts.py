"""What each doubt means for the answer: it has to be asked first, or is only confirmed."""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Iterator, Sequence
from dataclasses import astuple
from decimal import Decimal
from typing import TYPE_CHECKING

from .assessment import Decision, Finding
from .checks import ratio_text
from .readings import READ_FIELDS, Reading
from .request import LENGTH_FIELDS, Doubt, FieldName

if TYPE_CHECKING:
    from .case import Case
    from .judgement import Judgement
    from .request import SizeRequest

_NAMES: dict[FieldName, str] = {
    "od": "OD",
    "wall": "wall",
    "clr": "CLR",
    "material": "material",
    "shape": "shape",
    "quantity": "number of mandrels",
    "needed_by": "date",
}
_SOURCE = "reading of the message"


def doubt_findings(
    request: SizeRequest, stated: Case, judgements: Sequence[Judgement]
) -> tuple[Finding, ...]:
    """One finding a doubt: ``asks`` where the answer hangs on it, else ``notes``.

    ``judgements`` are those of all readings; empty where there are too many to work out, and then
    every doubt that could matter is asked.
    """
    if not request.doubts:
        return ()
    declined = bool(judgements) and all(j.decision is Decision.DECLINE for j in judgements)
    asked = set() if declined else _fields_to_ask(request, judgements)
    of_size = [doubt for doubt in request.doubts if doubt.about == "size"]
    return tuple(
        _asks(doubt, request, stated, judgements)
        if doubt.field in asked
        else _notes(doubt, request, stated, declined=declined)
        for doubt in request.doubts
        if doubt.about == "value"
    ) + tuple(_whether_wanted(doubt, stated, declined=declined) for doubt in of_size[:1])


def _whether_wanted(doubt: Doubt, stated: Case, *, declined: bool) -> Finding:
    """One question for all that is doubted of a size that may only be mentioned."""
    od = stated.reading.od_mm
    which = f"the tube of {_listed('od', (od,), stated)} OD" if od is not None else "this size"
    return Finding(
        rule="doubt-size",
        effect="notes" if declined else "asks",
        text=f"Whether this size is asked for has to be confirmed ({doubt.why}).",
        source=_SOURCE,
        field=doubt.field,
        question=None if declined else f"Is a mandrel wanted for {which}?",
    )


def _fields_to_ask(request: SizeRequest, judgements: Sequence[Judgement]) -> set[FieldName]:
    doubtful = {doubt.field for doubt in request.doubts} - {"needed_by"}
    if not judgements:
        return doubtful
    unsettled = {f for f in LENGTH_FIELDS if f in doubtful and request.length_mm(f) is None}
    asked = unsettled | {f for f in doubtful if _matters(f, request, judgements)}
    if not asked and len({_outcome(j) for j in judgements}) > 1:
        # No single doubt turns the answer, but several together do.
        return doubtful
    return asked


def _matters(field: FieldName, request: SizeRequest, judgements: Sequence[Judgement]) -> bool:
    """Whether the answer, or the mandrel that is made, hangs on this field."""
    index = READ_FIELDS.index(field)
    by_rest: dict[tuple[object, ...], set[object]] = defaultdict(set)
    for judgement in judgements:
        values = astuple(judgement.case.reading)
        by_rest[values[:index] + values[index + 1 :]].add(_outcome(judgement))
    if any(len(outcomes) > 1 for outcomes in by_rest.values()):
        return True
    if field == "shape":
        return True
    if field in ("od", "wall"):
        # Another OD or wall is another bore: a different mandrel, unless one on the shelf serves
        # every reading. Of a value that is only to be confirmed we don't know what else it may be.
        parts = {judgement.part for judgement in judgements}
        return len(_options(field, request)) < 2 or len(parts) > 1 or None in parts
    return False


def _outcome(judgement: Judgement) -> tuple[Decision, str | None]:
    return judgement.decision, judgement.part


def _options(field: FieldName, request: SizeRequest) -> tuple[object, ...]:
    """The stated value and the others, each once."""
    doubt = request.doubt_on(field)
    stated = {
        "od": request.od_mm,
        "wall": request.wall_mm,
        "clr": request.clr_mm,
        "material": request.material,
        "shape": request.shape,
        "quantity": None if request.quantity is None else str(request.quantity),
        "needed_by": None if request.needed_by is None else request.needed_by.isoformat(),
    }[field]
    others = doubt.readings if doubt else ()
    return tuple(dict.fromkeys((stated, *others) if stated is not None else others))


def _asks(
    doubt: Doubt, request: SizeRequest, stated: Case, judgements: Sequence[Judgement]
) -> Finding:
    name = _NAMES[doubt.field]
    options = _options(doubt.field, request)
    words = _listed(doubt.field, options, stated)
    text = f"The {name} can be read as {words} ({doubt.why})."
    question = f"Which {name} is meant: {words}?"
    if len(options) < 2:
        text = f"The {name} is read as {words} and has to be confirmed ({doubt.why})."
        question = f"Is the {name} {words}?"
    leads = tuple(_leads(doubt.field, options, stated, judgements))
    if leads:
        joined = "; ".join(leads)
        text += f" {joined[0].upper()}{joined[1:]}."
    return Finding(
        rule=f"doubt-{doubt.field}",
        effect="asks",
        text=text,
        source=_SOURCE,
        field=doubt.field,
        question=question,
        leads=leads,
    )


def _notes(doubt: Doubt, request: SizeRequest, stated: Case, *, declined: bool) -> Finding:
    name = _NAMES[doubt.field]
    options = _options(doubt.field, request)
    words = _listed(doubt.field, options, stated)
    if len(options) < 2:
        text = f"The {name} is taken to be {words} ({doubt.why})."
        question = f"Is the {name} {words}?"
    else:
        text = f"The {name} can be read as {words} ({doubt.why}); our answer is the same for each."
        question = f"Which {name} is meant: {words}?"
    return Finding(
        rule=f"doubt-{doubt.field}",
        effect="notes",
        text=text,
        source=_SOURCE,
        field=doubt.field,
        question=None if declined else question,
    )


def _listed(field: FieldName, options: Sequence[object], stated: Case) -> str:
    words = [_word(field, option, stated) for option in options]
    return " or ".join((", ".join(words[:-1]), words[-1]) if len(words) > 1 else words)


def _word(field: FieldName, option: object, stated: Case) -> str:
    if isinstance(option, Decimal):
        return stated.length(option, wall=field == "wall")
    return str(option).replace("_", " ")


def _leads(
    field: FieldName, options: Sequence[object], stated: Case, judgements: Sequence[Judgement]
) -> Iterator[str]:
    """Which answer leads where, the other fields as stated; nothing if all lead to the same."""
    index = READ_FIELDS.index(field)
    rest = _without(stated.reading, index)
    found = {
        _as_option(astuple(j.case.reading)[index]): _lead(j)
        for j in judgements
        if _without(j.case.reading, index) == rest
    }
    if len(options) > 1 and field in ("od", "wall") and set(found.values()) == {_MAKE}:
        yield "each would need a mandrel of its own"
    if len(set(found.values())) < 2:
        return
    for option in options:
        if option in found:
            yield f"if {_word(field, option, stated)}: {found[option]}"


def _without(reading: Reading, index: int) -> tuple[object, ...]:
    values = astuple(reading)
    return values[:index] + values[index + 1 :]


def _as_option(value: object) -> object:
    return str(value) if isinstance(value, int) else value


_MAKE = "we would make the mandrel"


def _lead(judgement: Judgement) -> str:
    match judgement.decision:
        case Decision.STOCK:
            return f"{judgement.part} from our shelf"
        case Decision.CUSTOM_MAKE:
            return _MAKE
        case Decision.ASK:
            return "we would need to know more"
    broken = ", ".join(
        f"{'wall factor' if f.rule == 'wall-factor-limit' else 'D of bend'} "
        f"{ratio_text(f.measured, f.limit)}"
        for f in judgement.findings
        if f.effect == "declines" and f.measured is not None
    )
    return f"not likely to be feasible ({broken})"
