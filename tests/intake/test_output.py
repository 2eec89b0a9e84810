"""The JSON contract: names, numbers, spans, and a schema that the output keeps to."""

from __future__ import annotations

import json
from datetime import UTC, date, datetime
from decimal import Decimal
from typing import Any

from bendreply.intake.model import Address, Draft, Kind, Message, Question, Result
from bendreply.intake.output import MessageOut, json_line, json_schema, message_out
from bendreply.rules.assessment import (
    Alternative,
    Assessment,
    Decision,
    Finding,
    MandrelNeeded,
    StockMatch,
)
from bendreply.rules.request import Doubt, Evidence, Material, SizeRequest

BODY = "1 x .065, 4130? on 2.2 clr \u2028"
MESSAGE = Message(
    message_id="1@example.com",
    sender=Address(name="Ada", address="ada@example.com"),
    subject="Tube",
    received_at=datetime(2026, 11, 16, 15, tzinfo=UTC),
    body=BODY,
    faults=("one part could not be decoded",),
)
REQUEST = SizeRequest(
    od_mm=Decimal("25.40"),
    wall_mm=Decimal("1.651"),
    clr_mm=Decimal("55.88"),
    material=Material.ALLOY_STEEL,
    grade="4130",
    needed_by=date(2026, 12, 1),
    doubts=(
        Doubt(field="wall", readings=(Decimal("1.651"), Decimal("1.65")), why="two ways to read"),
        Doubt(field="material", readings=("alloy_steel",), why="said with a question mark"),
    ),
    evidence=(
        Evidence(field="od", start=6, end=7, surface="1", how="1 in"),
        Evidence(field="wall", start=10, end=14, surface=".065"),
    ),
)
ASSESSED = Assessment(
    request=REQUEST,
    decision=Decision.DECLINE,
    wall_factor=Decimal("25.4") / Decimal("1.651"),
    d_of_bend=Decimal("2.2"),
    findings=(
        Finding(
            rule="d-of-bend",
            effect="declines",
            text="2.2 D is below our limit of 2.5 D.",
            source="house rule",
            measured=Decimal("2.2"),
            limit=Decimal("2.5"),
        ),
    ),
    mandrel=MandrelNeeded(
        bore_mm=Decimal("22.098"),
        diameter_low_mm=Decimal("21.8"),
        diameter_high_mm=Decimal("21.9"),
        balls_low=2,
        balls_high=3,
        surfaces=("chromed tool steel",),
    ),
    stock=StockMatch(
        part="M-1",
        mandrel_diameter_mm=Decimal("21.85"),
        balls=2,
        surface="chromed tool steel",
        on_hand=1,
    ),
    alternatives=(
        Alternative(
            od_mm=Decimal("25.4"),
            wall_mm=Decimal("1.651"),
            clr_mm=Decimal("63.5"),
            why="larger radius",
        ),
    ),
)
RESULT = Result(
    message=MESSAGE,
    kind=Kind.SIZES,
    why_kind="names a tube and a radius",
    assessments=(ASSESSED,),
    questions=(Question(surface="4130?"), Question(surface="price?", answer="price")),
    draft=Draft(subject="Re: Tube", body="Hello", template="decline"),
    notes=("the attachment plan.pdf was not read",),
)


def printed(result: Result = RESULT) -> dict[str, Any]:
    line = json_line(message_out(result, "a.eml"))
    assert len(line.splitlines()) == 1
    assert line.isascii()
    loaded: dict[str, Any] = json.loads(line)
    return loaded


def test_every_name_of_the_contract_is_there() -> None:
    out = printed()
    assert {
        "file", "message_id", "subject", "sender", "received_at", "kind", "why_kind", "requests",
        "questions", "draft", "text", "faults",
    } <= out.keys()  # fmt: skip
    assert {
        "shape", "od_mm", "wall_mm", "clr_mm", "material", "grade", "quantity", "needed_by",
        "missing", "doubts", "evidence", "wall_factor", "d_of_bend", "decision", "findings",
        "mandrel", "stock", "alternatives",
    } <= out["requests"][0].keys()  # fmt: skip
    assert out["requests"][0]["doubts"][0].keys() == {"field", "readings", "why"}
    assert out["requests"][0]["evidence"][0].keys() >= {"field", "start", "end", "surface"}
    assert out["requests"][0]["findings"][0].keys() >= {"rule", "effect", "text", "source"}
    assert out["requests"][0]["alternatives"][0].keys() == {"od_mm", "wall_mm", "clr_mm", "why"}
    assert out["questions"][0].keys() == {"answer", "surface", "score"}
    assert out["draft"].keys() == {"subject", "body"}


def test_lengths_are_plain_numbers_in_mm() -> None:
    line = json_line(message_out(RESULT, "a.eml"))
    assert '"od_mm": 25.4,' in line
    assert '"wall_mm": 1.651,' in line
    request = printed()["requests"][0]
    assert request["doubts"][0]["readings"] == [1.651, 1.65]
    assert request["needed_by"] == "2026-12-01"
    assert request["quantity"] is None


def test_exactly_thirty_stays_thirty() -> None:
    # 1.5 in / 0.05 in: the contract's own example
    exact = Assessment(
        request=SizeRequest(), decision=Decision.ASK, wall_factor=Decimal("38.1") / Decimal("1.27")
    )
    assert (
        printed(RESULT.model_copy(update={"assessments": (exact,)}))["requests"][0]["wall_factor"]
        == 30
    )


def test_evidence_slices_the_text() -> None:
    out = printed()
    for evidence in out["requests"][0]["evidence"]:
        assert out["text"][evidence["start"] : evidence["end"]] == evidence["surface"]


def test_what_is_not_given_is_null_and_named_missing() -> None:
    bare = Assessment(request=SizeRequest(od_mm=Decimal(38)), decision=Decision.ASK)
    request = printed(RESULT.model_copy(update={"assessments": (bare,)}))["requests"][0]
    assert request["missing"] == ["wall", "clr", "material"]
    assert (request["wall_mm"], request["mandrel"], request["stock"]) == (None, None, None)


def test_automatic_mail_has_no_draft() -> None:
    out = printed(Result(message=MESSAGE, kind=Kind.AUTOMATIC, why_kind="Auto-Submitted"))
    assert (out["kind"], out["draft"], out["requests"]) == ("automatic", None, [])


def test_the_schema_names_what_is_printed_and_the_output_keeps_to_it() -> None:
    schema = json.loads(json_schema())
    assert schema["properties"].keys() == printed().keys()
    assert set(schema["required"]) == printed().keys()
    request = schema["$defs"]["RequestOut"]
    assert set(request["required"]) == printed()["requests"][0].keys()
    # The model the schema is made of refuses unknown and missing names.
    assert MessageOut.model_validate_json(json.dumps(printed())) == message_out(RESULT, "a.eml")
