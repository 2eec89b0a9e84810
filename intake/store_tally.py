"""What the report counts, written with each inquiry and read in narrow rows."""

from __future__ import annotations

from abc import ABC, abstractmethod
from collections.abc import Iterator
from datetime import date, datetime
from decimal import Decimal
from functools import lru_cache
from typing import Any, NamedTuple

import sqlalchemy as sa

from ..rules.assessment import Decision
from ..rules.demand import MandrelRange
from ..rules.request import Material, Shape
from .inquiry import State
from .model import Kind, Result
from .report_count import Asked
from .store_json import keepable
from .store_schema import asked, correction, inquiry, reply, tally
from .tally import BETWEEN, NOBODY, alone, customer_of, figures_of, open_questions, words_of

AT_A_TIME = 2000
"""Rows fetched together: a report on years must not fill the memory."""


class Waiting(NamedTuple):
    """What a person still has to do, whenever it came in."""

    messages: int
    oldest: datetime | None
    approved: int
    """Approved, and not laid down yet."""
    urgent: int
    """Of those that wait: with a size needed by the day asked about."""


class TallyWrite(ABC):
    """Writing the tally. Part of ``store_writer.Writer``."""

    _connection: sa.Connection
    now: datetime

    def tally_new(self, number: int, result: Result) -> None:
        """A new inquiry, counted when its message was received."""
        row = {
            "inquiry_id": number,
            "at": result.message.received_at or self.now,
            "customer": keepable(customer_of(result.message, number)),
            "kind": result.kind,
            "open_questions": open_questions(result.questions),
        }
        self._put_all(tally, [row])
        self._tally_sizes(number, result)

    def tally_again(self, number: int, result: Result) -> None:
        """An inquiry judged anew: the same customer and day, other figures."""
        self._connection.execute(
            sa.update(tally)
            .where(tally.c.inquiry_id == number)
            .values(kind=result.kind, open_questions=open_questions(result.questions))
        )
        self._connection.execute(sa.delete(asked).where(asked.c.inquiry_id == number))
        self._tally_sizes(number, result)

    def _tally_sizes(self, number: int, result: Result) -> None:
        if not result.assessments:
            return
        words = words_of(result.message, result.own_words)
        rows = [
            {"inquiry_id": number, "request_index": index, **figures_of(assessment, words)}
            for index, assessment in enumerate(result.assessments)
        ]
        self._put_all(asked, rows)

    @abstractmethod
    def _put_all(self, table: sa.Table, rows: list[dict[str, Any]]) -> None:
        """Rows of one table, written now or with those of the next messages."""


class TallyRead:
    """Reading the tally: everything from one moment up to, and not including, another."""

    def __init__(self, connection: sa.Connection) -> None:
        self._connection = connection

    def latest(self, before: datetime) -> datetime | None:
        """When the last message before a moment came."""
        query = sa.select(sa.func.max(tally.c.at)).where(tally.c.at < before)
        found: datetime | None = self._connection.execute(query).scalar_one()
        return found

    def any_named(self, before: datetime) -> bool:
        """Whether of what came before a moment any customer's address is kept."""
        query = sa.select(tally.c.inquiry_id).where(
            tally.c.at < before, ~tally.c.customer.like(f"{NOBODY}%")
        )
        return self._connection.execute(query.limit(1)).one_or_none() is not None

    def kinds(self, start: datetime, end: datetime) -> dict[Kind, int]:
        """How many inquiries of each kind came in."""
        query = (
            sa.select(tally.c.kind, sa.func.count())
            .where(tally.c.at >= start, tally.c.at < end)
            .group_by(tally.c.kind)
        )
        return {Kind(kind): count for kind, count in self._connection.execute(query)}

    def sizes(self, start: datetime, end: datetime, own_address: str = "") -> Iterator[Asked]:
        """Every size asked for, in no order. What came from the shop's own address is a note for
        somebody else: each counts as a customer of its own.
        """
        query = (
            sa.select(
                tally.c.at,
                tally.c.customer,
                asked.c.inquiry_id,
                asked.c.shape,
                asked.c.od_mm,
                asked.c.wall_mm,
                asked.c.clr_mm,
                asked.c.material,
                asked.c.doubtful,
                asked.c.decision,
                asked.c.wanted,
                asked.c.buying,
                asked.c.mandrel_low_mm,
                asked.c.mandrel_high_mm,
                asked.c.balls,
                asked.c.surfaces,
            )
            .join_from(asked, tally, asked.c.inquiry_id == tally.c.inquiry_id)
            .where(tally.c.at >= start, tally.c.at < end)
        )
        own = own_address.casefold()
        found = self._connection.execute(query, execution_options={"yield_per": AT_A_TIME})
        for (
            at, customer, number, shape, od, wall, clr, material, doubtful, decision,
            wanted, buying, low, high, balls, surfaces,
        ) in found:  # fmt: skip
            yield Asked(
                received_at=at,
                customer=alone(number) if own and customer == own else customer,
                shape=_SHAPES[shape],
                od_mm=_decimal(od),
                wall_mm=_decimal(wall),
                clr_mm=_decimal(clr),
                material=_MATERIALS[material],
                doubtful=doubtful,
                decision=_DECISIONS[decision],
                inquiry=number,
                wanted=wanted,
                buying=buying,
                mandrel=_mandrel(low, high, balls, surfaces),
            )

    def waiting(self, urgent_until: date) -> Waiting:
        """What waits now; urgent: needed by that day or before."""
        waits = inquiry.c.state == State.WAITING
        count, oldest = self._connection.execute(
            sa.select(sa.func.count(), sa.func.min(inquiry.c.waiting_since)).where(waits)
        ).one()
        counted = sa.select(sa.func.count()).select_from(inquiry)
        approved = counted.where(inquiry.c.state == State.APPROVED)
        urgent = counted.where(waits, inquiry.c.needed_by <= urgent_until)
        return Waiting(
            messages=count,
            oldest=oldest,
            approved=self._connection.execute(approved).scalar_one(),
            urgent=self._connection.execute(urgent).scalar_one(),
        )

    def response_seconds(self, start: datetime, end: datetime) -> list[int]:
        """How long each inquiry waited for its first reply, of those first answered then."""
        earlier = reply.alias()
        first = ~sa.exists().where(
            earlier.c.inquiry_id == reply.c.inquiry_id, earlier.c.sent_at < reply.c.sent_at
        )
        query = sa.select(reply.c.inquiry_id, sa.func.min(reply.c.after_s)).where(
            reply.c.sent_at >= start, reply.c.sent_at < end, reply.c.after_s.is_not(None), first
        )
        found = self._connection.execute(query.group_by(reply.c.inquiry_id))
        return sorted(seconds for _, seconds in found)

    def corrections(self, start: datetime, end: datetime) -> dict[tuple[str, str], int]:
        """How often people corrected each field, by the notation that it was written in."""
        query = (
            sa.select(correction.c.field, correction.c.notation, sa.func.count())
            .where(correction.c.at >= start, correction.c.at < end)
            .group_by(correction.c.field, correction.c.notation)
        )
        found = self._connection.execute(query)
        return {(field, notation or "not noted"): count for field, notation, count in found}

    def corrected_inquiries(self, start: datetime, end: datetime) -> int:
        """Of how many inquiries somebody corrected a reading."""
        query = sa.select(sa.func.count(correction.c.inquiry_id.distinct())).where(
            correction.c.at >= start, correction.c.at < end
        )
        return int(self._connection.execute(query).scalar_one())

    def open_questions(self, start: datetime, end: datetime) -> dict[int, int]:
        """Inquiries with questions that no approved answer fits, and how many."""
        query = (
            sa.select(tally.c.inquiry_id, tally.c.open_questions)
            .where(tally.c.at >= start, tally.c.at < end, tally.c.open_questions > 0)
            .order_by(tally.c.inquiry_id)
        )
        found = self._connection.execute(query)
        return {row.inquiry_id: row.open_questions for row in found}


_SHAPES = {one.value: one for one in Shape}
_DECISIONS = {one.value: one for one in Decision}
_MATERIALS: dict[str | None, Material | None] = {None: None, **{one.value: one for one in Material}}


@lru_cache(maxsize=65536)
def _decimal(text: str | None) -> Decimal | None:
    return None if text is None else Decimal(text)


@lru_cache(maxsize=65536)
def _mandrel(
    low: str | None, high: str | None, balls: int | None, surfaces: str
) -> MandrelRange | None:
    if low is None or high is None:
        return None
    return MandrelRange(
        Decimal(low), Decimal(high), balls, tuple(filter(None, surfaces.split(BETWEEN)))
    )
