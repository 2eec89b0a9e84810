"""What a reply takes from the mail that it quotes: what it relies on, and never in silence.

"16 gauge" answers a question about a tube that is named below; "the rest stays" takes all else
over. A reply with a tube of its own asks anew, and takes nothing that it does not name.
"""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass, replace
from decimal import Decimal
from typing import Literal

from ....rules.request import LENGTH_FIELDS, Doubt, FieldName, Shape, SizeRequest
from ....rules.units import tidy
from ..numbers.numbers import Number
from ..sizes.groups import Group, Slot
from ..text.figures import Figure, Layout
from .staying import FIELDS, Field, counts_anew, said_to_stay, sentences, takes_the_rest

FROM_QUOTED = "from the quoted mail"
_SLOTS: dict[Field, tuple[Slot, ...]] = {"od": ("od", "id"), "wall": ("wall",), "clr": ("clr",)}
_SAME = Decimal("0.006")
"""ODs nearer than this share are one tube, written in inch and in mm."""
_LEAST, _MOST = Decimal("0.4"), Decimal("2.5")
_UNREAD = "it stands in the quoted mail, and a new figure may be meant to change it"
_INCH = Decimal("25.4")
_STEP = Decimal("0.00001")


@dataclass(frozen=True, slots=True)
class Relied:
    """What the quoted mails say, the newest counting, and how the new words rely on it."""

    known: tuple[SizeRequest, ...]
    quantity: int | None = None
    """What the sender's own earlier mail counted."""
    everything: bool = False
    """'The rest stays': all that is not said anew is taken over."""
    asked: frozenset[Field] = frozenset()
    """What the newest quoted mail asks for."""
    stays: frozenset[Field] = frozenset()
    """'Radius and material stay': fields that are named as unchanged."""
    counted_anew: bool = False
    """Whether a new count stands in the new words, read or not: then none is taken over."""
    picked: tuple[SizeRequest, ...] = ()
    """The sizes of a quoted list that the new words pick out: 'the second one, please'."""
    same_tube: bool = False
    """Whether the same OD and wall again mean the same request: so in a chain of mails."""

    @property
    def figures(self) -> tuple[Figure, ...]:
        """The lengths that are known, as figures that new words may change."""
        found = (self._figure(slot) for slot in ("od", "wall", "clr"))
        return tuple(figure for figure in found if figure is not None)

    def with_tube(self, group: Group) -> Group:
        """The group with the quoted OD in it, if it is taken: it tells how 2D or '75' is meant."""
        figure = self._figure("od")
        if figure is None or group.has_tube or group.shape or "od" not in self.takes(group):
            return group
        new = group.copy()
        new.slots["od"] = [figure]
        return new

    def takes(self, group: Group) -> frozenset[Field]:
        """The fields that a request may take from the quoted mail."""
        if not self.known:
            return frozenset()
        if self.everything or _changes(group):
            return frozenset(FIELDS)
        answers: frozenset[Field] = frozenset(FIELDS) - {"quantity"}
        if _answers(group) or (not group.has_tube and group.shape is None):
            return answers
        return self.stays

    def completed(
        self, request: SizeRequest, group: Group, unread: Sequence[Decimal] = ()
    ) -> SizeRequest:
        """The request with what it takes over; each value's evidence says where it is from.

        ``unread`` are new figures that nothing explains: a quoted length near to one is doubted.
        """
        fields = set(self.takes(group))
        if "od" in fields and not group.has_tube:
            request = request.model_copy(update={"od_mm": None})  # taken below, with its evidence
        candidates = self._candidates(request, group)
        same = bool(candidates) and request.od_mm is not None and "od" in group.slots
        # A wall of its own is left open by a new request; an answer to our question has none.
        answers_us = request.wall_mm is None and bool(self.asked)
        if same and (answers_us or self._is_same_tube(request)):
            fields |= set(FIELDS) - {"quantity"}
        if self.counted_anew:
            fields.discard("quantity")
        for field in FIELDS:
            if field in fields:
                taken = _take(request, candidates, field)
                request = taken if taken is request else self._doubted(taken, field, unread)
        answers = len(fields) > 1 and not self.counted_anew
        if request.quantity is None and self.quantity is not None and answers:
            request = request.model_copy(update={"quantity": self.quantity})
        return request

    def _doubted(
        self, request: SizeRequest, field: Field, unread: Sequence[Decimal]
    ) -> SizeRequest:
        """The value just taken in doubt, where a figure that was not read may replace it."""
        known = self._figure(field) if field in ("od", "wall", "clr") else None
        length = request.length_mm(field) if field in ("od", "wall", "clr") else None
        if known is None or length is None or request.doubt_on(field) is not None:
            return request
        if not any(_LEAST < value / known.number.value < _MOST for value in unread):
            return request
        doubt = Doubt(field=field, readings=(length,), why=_UNREAD)
        return request.model_copy(update={"doubts": (*request.doubts, doubt)})

    def changed_by(self, groups: Sequence[Group]) -> bool:
        """Whether new figures answer what is asked in the quoted mail, or change what it says."""
        if not self.known:
            return any(map(_relies, groups))
        return any(self.everything or self.stays or _relies(group) for group in groups)

    def is_only_spoken_of(self, requests: Sequence[SizeRequest], groups: Sequence[Group]) -> bool:
        """'Is the 4.5 CLR to the centreline?': figures of the quoted size, none of them new."""
        known = {
            (field, request.length_mm(field)) for request in self.known for field in LENGTH_FIELDS
        }
        said = {
            (field, request.length_mm(field))
            for request, group in zip(requests, groups, strict=False)
            for field in LENGTH_FIELDS
            if any(slot in group.slots for slot in _SLOTS[field])
        }
        no_tube = not any(group.has_tube for group in groups)
        return bool(said) and no_tube and not self.changed_by(groups) and said <= known

    def only_names(self, requests: Sequence[SizeRequest]) -> bool:
        """Whether the new words name nothing but tubes of lines that they pick out, or leave."""
        return bool(requests and self.picked) and all(
            request.od_mm is not None
            and request.clr_mm is None
            and any(_names(request, request.od_mm, line) for line in (*self.picked, *self.known))
            for request in requests
        )

    def gives_tube(self, requests: Sequence[SizeRequest], groups: Sequence[Group]) -> bool:
        """Whether new figures ask for a tube that stands in the quoted mail alone."""
        own = any(group.has_tube for group in groups)
        return not own and any(request.od_mm is not None for request in requests)

    def _candidates(self, request: SizeRequest, group: Group) -> list[SizeRequest]:
        """The quoted requests that can be meant: of several those with the OD that is named."""
        if request.od_mm is None or not group.has_tube:
            return list(self.known)
        same = [k for k in self.known if self._may_be(k, request.od_mm)]
        changed = self.everything or bool(self.stays) or _relies(group)
        return same or (list(self.known) if changed else [])

    def _may_be(self, quoted: SizeRequest, od_mm: Decimal) -> bool:
        """Whether a quoted request is for that OD: it names it, or the quoted mail asks for it."""
        return "od" in self.asked if quoted.od_mm is None else _near(quoted.od_mm, od_mm)

    def _is_same_tube(self, request: SizeRequest) -> bool:
        """Whether a tube with its wall is the quoted one: the same again, or the one asked for."""
        if all(k.od_mm is None and k.wall_mm is None for k in self.known):
            return True  # "what OD and wall, for your 4.5 CLR?"
        same = any(k.wall_mm is None or k.wall_mm == request.wall_mm for k in self.known)
        return self.same_tube and same

    def _figure(self, field: Literal["od", "wall", "clr"]) -> Figure | None:
        values = {request.length_mm(field) for request in self.known} - {None}
        mm = values.pop() if len(values) == 1 else None
        if mm is None:
            return None
        unit = self.known[0].written_in
        value = tidy((mm / _INCH if unit == "in" else mm).quantize(_STEP))
        number = Number(0, 0, (value,), "decimal")
        return Figure(-1, -1, 0, 0, number, unit, role=field, how="quoted")


def unread(layout: Layout, known: Sequence[Figure]) -> list[Decimal]:
    """New figures that look measured and that nothing says what they are."""
    said = {figure.number.value for figure in known}
    return [
        figure.number.value
        for figure in layout.figures
        if figure.is_measured and not figure.negated and figure.number.value not in said
        if figure.role is None or (figure.role == "noise" and figure.link == "times")
    ]


def rely(
    known: Sequence[SizeRequest],
    text: str,
    *,
    refers: bool = False,
    quantity: int | None = None,
    asked: frozenset[Field] = frozenset(),
) -> Relied:
    """How ``text`` relies on the sizes ``known`` from the mail below it."""
    said = sentences(text)
    return Relied(
        tuple(known),
        quantity,
        everything=refers or any(map(takes_the_rest, said)),
        asked=asked,
        stays=frozenset(field for one in said for field in said_to_stay(one)),
        counted_anew=any(map(counts_anew, said)),
    )


def taken_lines(relied: Relied, said: SizeRequest) -> list[SizeRequest]:
    """The sizes picked out of a quoted list, with what the new words say beside them."""
    return [
        replace(relied, known=(line,), everything=True).completed(said, Group())
        for line in relied.picked
    ]


def answers_asked(relied: Relied, said: SizeRequest) -> bool:
    """Whether a material or a count is all that the quoted mail still asks for."""
    material = said.material is not None and "material" in relied.asked
    return material or (said.quantity is not None and "quantity" in relied.asked)


def _answers(group: Group) -> bool:
    """Whether a figure answers a quoted question."""
    return any(figure.how == "asked" for figures in group.slots.values() for figure in figures)


def _changes(group: Group) -> bool:
    """Whether a figure changes one thing of a quoted tube.

    Who gives another OD and another wall has another tube.
    """
    if group.has_tube and "wall" in group.slots:
        return False
    return any(figure.how == "changes" for figures in group.slots.values() for figure in figures)


def _relies(group: Group) -> bool:
    return _answers(group) or _changes(group)


def _names(request: SizeRequest, od_mm: Decimal, line: SizeRequest) -> bool:
    """Whether a request without a radius tells no more than the tube of a quoted line."""
    same = line.od_mm is not None and _near(line.od_mm, od_mm)
    return same and request.wall_mm in (None, line.wall_mm)


def _near(a: Decimal, b: Decimal) -> bool:
    return abs(a - b) <= b * _SAME


_VALUES: dict[Field, Callable[[SizeRequest], object]] = {
    "od": lambda request: request.od_mm or (request.shape if not _round(request) else None),
    "wall": lambda request: request.wall_mm,
    "clr": lambda request: request.clr_mm,
    "material": lambda request: request.material,
    "quantity": lambda request: request.quantity,
}


def _round(request: SizeRequest) -> bool:
    return request.shape is Shape.ROUND


def _take(request: SizeRequest, known: Sequence[SizeRequest], field: Field) -> SizeRequest:
    """The field from the quoted requests, where it is missing and they all say the same."""
    value = _VALUES[field]
    holders = [k for k in known if value(k) is not None]
    if value(request) is not None or len({value(k) for k in holders}) != 1:
        return request  # several and nothing says which: left open, so that it is asked
    giver = holders[0]
    update: dict[str, object] = {}
    for attribute in _ATTRIBUTES[field]:
        update[attribute] = getattr(giver, attribute)
    name: FieldName = field
    taken = [
        item.model_copy(update={"how": ", ".join(filter(None, (item.how, FROM_QUOTED)))})
        for item in giver.evidence
        if item.field == name and FROM_QUOTED not in item.how
    ]
    taken += [i for i in giver.evidence if i.field == name and FROM_QUOTED in i.how]
    doubts: tuple[Doubt, ...] = tuple(d for d in giver.doubts if d.field == name)
    update["evidence"] = tuple(sorted((*request.evidence, *taken), key=lambda item: item.start))
    update["doubts"] = (*request.doubts, *doubts)
    return request.model_copy(update=update)


_ATTRIBUTES: dict[Field, tuple[str, ...]] = {
    "od": ("od_mm", "shape"),
    "wall": ("wall_mm",),
    "clr": ("clr_mm",),
    "material": ("material", "grade"),
    "quantity": ("quantity",),
}
