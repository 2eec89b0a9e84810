"""A message taken in at the desk, and a stand-in for what judges it anew."""

from __future__ import annotations

from bendreply.intake import desk
from bendreply.intake.model import Draft, Kind, Result
from bendreply.intake.store import Store
from bendreply.rules.assessment import Assessment, Decision
from bendreply.rules.request import SizeRequest


def rejudge(message, requests: tuple[SizeRequest, ...]) -> Result:
    """A stand-in for rules and drafting: walls of 2 mm and more are stock."""
    assessments = tuple(
        Assessment(
            request=one,
            decision=Decision.ASK
            if one.wall_mm is None
            else Decision.STOCK
            if one.wall_mm >= 2
            else Decision.DECLINE,
        )
        for one in requests
    )
    return Result(
        message=message,
        kind=Kind.SIZES,
        why_kind="sizes",
        assessments=assessments,
        draft=Draft(
            subject="Re: Mandrel",
            body="\n".join(f"wall {one.wall_mm} mm" for one in requests),
            template="made",
        ),
    )


def taken(store: Store, result: Result) -> int:
    return desk.take_in(store, result, "in/1.eml").inquiry


def correct(store: Store, number: int | str, changes, index: int = 0, **more):
    return desk.correct(store, number, changes, index, rejudge, "Ann", **more)
