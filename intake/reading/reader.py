"""The reader: own text in, size requests out. The steps in order, on one screen."""

from __future__ import annotations

import re
from dataclasses import dataclass
from datetime import date
from decimal import Decimal, InvalidOperation
from typing import Literal

from ...rules.request import Doubt, Frozen, Material, SizeRequest
from ...rules.units import tidy
from ..model import Message, OwnText
from .angles import angles_of
from .chains import assign_by_chain, share_lists
from .dates import Needed, find_needed_by, needed_by_size
from .figures import Figure, Layout, lay_out, shape_named
from .gather import Group, gather
from .lexer import lex
from .material_choice import MaterialChoice, choose_materials
from .pipes import note_names
from .places import assign_by_place
from .plain import Plain, flatten, tabulate
from .quantity import Counts, find_counts, set_counts_aside
from .roles import assign_by_cue, refine_radii
from .settle import Settler
from .talk import listen
from .text_tables import RowFacts, read_tables
from .values import readings
from .weigh import Choice, weigh


class Reading(Frozen):
    """What was read: one request for each distinct tube and radius, in the order asked for."""

    requests: tuple[SizeRequest, ...] = ()
    notes: tuple[str, ...] = ()
    """For the person, not the customer: 'the attachment print.pdf was not read'."""


@dataclass(slots=True)
class Stretch:
    """A text read as one: the body, the subject, or an attachment."""

    original: str
    offset: int
    plain: Plain
    layout: Layout
    groups: list[Group]
    rows: dict[tuple[str, int, int], RowFacts]


_ATTACHED = re.compile(
    r"\b(?:attached|attachment|enclosed|per (?:the )?(?:print|drawing)|as per drawing|see (?:the )?(?:print|drawing|sketch|photo)|on the (?:print|drawing)|anbei|im anhang|anhang|beigefügt|liegt bei|ci-joint|en pièce jointe|pièce jointe|adjunto|adjunta|in allegato|allegato|bijlage|bijgevoegd|załącz\w+)\b",
    re.IGNORECASE,
)
_TOOLING = re.compile(
    r"\b(?:mandrels?|mandrills?|dorne?|biegedorne?|mandrins?|mandrin[oi]|mandril(?:es)?|doorn(?:en)?|trzpie\w*|tooling)\b",
    re.IGNORECASE,
)


def read(own: OwnText, message: Message) -> Reading:
    """Every size the sender asks for in their own text. Never raises on any text."""
    body = _stretch(own.text[own.body_start :], own.body_start)
    subject = _stretch(own.text[: max(0, own.body_start - 2)], 0) if own.subject_counts else None
    notes: list[str] = []
    requests = _requests(body, own, message, beside=subject)
    if subject is not None and subject.groups:
        from_subject = _requests(subject, own, message, beside=body)
        requests = _with_subject(requests, from_subject)
    if not requests:
        for name, text in own.attachment_texts:
            found = _requests(_stretch(text, len(own.text)), own, message, beside=body)
            notes.append(f"{len(found)} sizes read from the attachment {name}")
            requests.extend(_from_attachment(request, name) for request in found)
    notes.extend(
        f"the attachment {a.name} was not read" for a in message.attachments if a.text is None
    )
    if not requests and _ATTACHED.search(own.text) and _TOOLING.search(own.text):
        requests = [_empty(body, own, message, beside=subject)]
    return Reading(requests=tuple(_distinct(requests)), notes=tuple(notes))


def _stretch(original: str, offset: int) -> Stretch:
    plain = tabulate(flatten(original))
    layout = lay_out(lex(plain.text), plain.text)
    listen(layout)
    set_counts_aside(layout)
    rows = read_tables(layout)
    assign_by_cue(layout)
    assign_by_chain(layout)
    share_lists(layout)
    assign_by_place(layout)
    share_lists(layout)
    refine_radii(layout)
    note_names(layout)
    return Stretch(original, offset, plain, layout, gather(layout), rows)


def _requests(
    stretch: Stretch, own: OwnText, message: Message, beside: Stretch | None
) -> list[SizeRequest]:
    """The requests of one part; ``beside`` is the part that may say how many are wanted."""
    settler = Settler(stretch.original, stretch.plain, _habit(stretch.layout), stretch.offset)
    settled: list[tuple[Group, SizeRequest]] = []
    for group in stretch.groups:
        if group.shape is None:
            group.shape = _shape_of(stretch.layout, group)
        request = settler.settle(group)
        if request is not None:
            settled.append((group, request))
    whole = [(g, r) for g, r in settled if r.od_mm is not None or g.shape]
    if whole:
        settled = whole  # a stray wall or radius beside a whole size asks for no tube of its own
    else:
        settled = settled[:1] if all(r.od_mm is None for _, r in settled) else settled
    materials = choose_materials(stretch.layout, [g for g, _ in settled], stretch.rows)
    counts = find_counts(
        stretch.layout, [g for g, _ in settled], stretch.rows, beside.layout if beside else None
    )
    american = _american(stretch.layout, message)
    needed = find_needed_by(own.text, message.sent_on, american=american)
    own_days = needed_by_size(
        stretch.layout,
        [g for g, _ in settled],
        stretch.rows,
        message.sent_on,
        american=american,
    )
    angles = angles_of(stretch.original, [_span(r, stretch.offset) for _, r in settled])
    return [
        _finish(
            request,
            materials[n],
            counts,
            n,
            own_days[n] or needed,
            stretch,
        ).model_copy(update={"angle_deg": angles[n]})
        for n, (_, request) in enumerate(settled)
    ]


def _span(request: SizeRequest, offset: int) -> tuple[int, int]:
    """Where the words of a request stand in its part of the message."""
    starts = [e.start - offset for e in request.evidence]
    return min(starts, default=0), max((e.end - offset for e in request.evidence), default=0)


def _finish(
    request: SizeRequest,
    material: MaterialChoice,
    counts: Counts,
    number: int,
    needed: Needed,
    stretch: Stretch,
) -> SizeRequest:
    doubts = list(request.doubts)
    if material.alternatives:
        doubts.append(
            Doubt(
                field="material",
                readings=tuple(m.value for m in material.alternatives),
                why="more than one material is named",
            )
        )
    if needed.doubt is not None:
        doubts.append(needed.doubt)
    evidence = list(request.evidence) + [
        item.model_copy(
            update={
                "start": start + stretch.offset,
                "end": end + stretch.offset,
                "surface": stretch.original[start:end],
            }
        )
        for item in material.evidence
        for start, end in (stretch.plain.span(item.start, item.end),)
    ]
    return request.model_copy(
        update={
            "material": material.family,
            "grade": material.grade,
            "quantity": counts.quantity(number),
            "needed_by": needed.day,
            "doubts": tuple(doubts),
            "evidence": tuple(sorted(evidence, key=lambda e: e.start)),
        }
    )


def _empty(
    stretch: Stretch, own: OwnText, message: Message, beside: Stretch | None
) -> SizeRequest:
    """A request whose every figure is on a drawing that the tool can't read."""
    counts = find_counts(
        stretch.layout, [Group()], stretch.rows, beside.layout if beside else None
    )
    needed = find_needed_by(own.text, message.sent_on, american=_american(stretch.layout, message))
    material = choose_materials(stretch.layout, [Group()], stretch.rows)[0]
    return _finish(SizeRequest(), material, counts, 0, needed, stretch)


def _shape_of(layout: Layout, group: Group) -> str | None:
    """'2 in square tube': a cross-section named right beside the OD."""
    anchor = group.anchor
    if anchor is None:
        return None
    last = max((f.token for figures in group.slots.values() for f in figures), default=anchor.token)
    first = max(0, anchor.token - 4)
    near = [
        t for t, s in zip(layout.tokens[first : last + 5], layout.sentence_of[first : last + 5], strict=True)
        if s == anchor.sentence
    ]  # fmt: skip
    return shape_named(layout.text[near[0].start : near[-1].end]) if near else None


def _habit(layout: Layout) -> Literal["in", "mm"] | None:
    """The unit that the message's marked figures mostly use; a decimal comma speaks for mm."""
    inch = sum(1 for f in layout.figures if f.unit == "in" and not f.weak_unit)
    metric = sum(1 for f in layout.figures if f.unit in ("mm", "cm"))
    inch += sum(1 for f in layout.figures if f.number.style in ("fraction", "mixed"))
    text = layout.text
    metric += sum(1 for f in layout.figures if "," in text[f.start : f.end])
    if re.search(
        r"\b(?:unit|units|all dim\w*|dimensions|maße|masse)\b.{0,12}\bmm\b|\bin mm\b|\(mm\)",
        text,
        re.I,
    ):
        metric += 2
    if re.search(
        r"\b(?:all (?:dims?|dimensions) )?in inch(?:es)?\b|\(in(?:ches)?\.?\)", text, re.I
    ):
        inch += 2
    if inch == metric:
        return None
    return "in" if inch > metric else "mm"


def _american(layout: Layout, message: Message) -> bool:
    """Whether 4/5 is more likely April 5 to this sender: inches, dollars, a US clock."""
    date_header = message.header("date") or ""
    zone = date_header.strip()[-5:]
    if re.fullmatch(r"-0[4-9]00|-1000", zone):
        return True
    if re.fullmatch(r"[+-]\d{4}", zone):
        return False
    return _habit(layout) == "in"


def _with_subject(body: list[SizeRequest], subject: list[SizeRequest]) -> list[SizeRequest]:
    """The subject fills gaps; where it contradicts the body, the body stands with a doubt."""
    if not body:
        return subject
    if len(subject) != 1:
        return body
    named = subject[0]
    if len(body) > 1:
        gaps = [r for r in body if _agrees(r, named)]
        return (
            [_filled(r, named) if r in gaps else r for r in body]
            if len(gaps) == len(body)
            else body
        )
    return [_filled(_contradicted(body[0], named), named)]


def _agrees(request: SizeRequest, named: SizeRequest) -> bool:
    return all(
        a is None or b is None or abs(a - b) <= a * Decimal("0.012")
        for a, b in ((request.length_mm(f), named.length_mm(f)) for f in ("od", "wall", "clr"))
    )


def _contradicted(request: SizeRequest, named: SizeRequest) -> SizeRequest:
    doubts = list(request.doubts)
    for field in ("od", "wall", "clr"):
        a, b = request.length_mm(field), named.length_mm(field)
        if a is not None and b is not None and abs(a - b) > a * Decimal("0.012"):
            doubts.append(Doubt(field=field, readings=(a, b), why="the subject says otherwise"))
    if request.material and named.material and request.material != named.material:
        doubts.append(
            Doubt(
                field="material",
                readings=(request.material.value, named.material.value),
                why="the subject says otherwise",
            )
        )
    return request.model_copy(update={"doubts": _merged(doubts)})


def _merged(doubts: list[Doubt]) -> tuple[Doubt, ...]:
    """One doubt a field: readings and reasons joined."""
    by_field: dict[str, Doubt] = {}
    for doubt in doubts:
        held = by_field.get(doubt.field)
        if held is None:
            by_field[doubt.field] = doubt
            continue
        extra = tuple(r for r in doubt.readings if r not in held.readings)
        by_field[doubt.field] = held.model_copy(
            update={"readings": held.readings + extra, "why": f"{held.why}; {doubt.why}"}
        )
    return tuple(by_field.values())


def _filled(request: SizeRequest, named: SizeRequest) -> SizeRequest:
    update: dict[str, object] = {}
    doubts = list(request.doubts)
    plain = ("od_mm", "wall_mm", "clr_mm", "material", "grade", "quantity")
    for field in (*plain, "nominal_pipe", "angle_deg"):
        if getattr(request, field) is None and getattr(named, field) is not None:
            update[field] = getattr(named, field)
            doubts.extend(d for d in named.doubts if d.field == field.removesuffix("_mm"))
    if update:
        update["evidence"] = tuple(
            sorted((*request.evidence, *named.evidence), key=lambda e: e.start)
        )
        update["doubts"] = _merged(doubts)
    return request.model_copy(update=update) if update else request


def _from_attachment(request: SizeRequest, name: str) -> SizeRequest:
    """Evidence can't point into an attachment: it says where it was instead."""
    evidence = tuple(
        e.model_copy(
            update={
                "start": 0,
                "end": 0,
                "surface": "",
                "how": f"{e.surface}, in the attachment {name}",
            }
        )
        for e in request.evidence
    )
    return request.model_copy(update={"evidence": evidence})


def _distinct(requests: list[SizeRequest]) -> list[SizeRequest]:
    """The same tube and radius named twice is one request."""
    seen: dict[tuple[object, ...], int] = {}
    kept: list[SizeRequest] = []
    for request in requests:
        key = (request.shape, request.od_mm, request.wall_mm, request.clr_mm, request.material)
        if key in seen:
            continue
        seen[key] = len(kept)
        kept.append(request)
    return kept


def parse_field(field: str, text: str) -> Decimal | Material | str | int | date | None:
    """A person's correction in any notation the reader knows; None where it can't be read.

    Lengths in mm ('1 3/4 in', '16ga', '57mm', '2D' gives None: it needs the OD).
    """
    words = text.strip()
    if field == "material":
        return _material(words)
    if field == "quantity":
        return int(words) if words.isdigit() else None
    if field in ("od", "wall", "clr"):
        return _length(field, words)
    return words or None


def _material(words: str) -> Material | None:
    from .materials import find_materials

    try:
        return Material(words.casefold().replace(" ", "_"))
    except ValueError:
        found = find_materials(words)
        return found[0].family if found else None


def _length(field: str, words: str) -> Decimal | None:
    plain = flatten(words)
    figures = [
        Figure(n, t.start, t.end, t.number, t.unit, t.weak_unit)
        for n, t in enumerate(lex(plain.text))
        if t.number is not None and not (t.unit or "").startswith("noise:")
    ]
    if len(figures) != 1 or figures[0].unit in ("D", "sch"):
        return None
    figures[0].role = field
    try:
        choices: list[Choice] = weigh({field: readings(figures[0], field)}, "radius", None)
    except InvalidOperation:
        return None
    value = choices[0].mm(field) if choices else None
    return tidy(value) if value is not None else None
