"""What of an inquiry the report counts, told by its words."""

from __future__ import annotations

from datetime import date

import pytest

from bendreply.intake.model import Address, Message
from bendreply.intake.tally import customer_of, notation_of, prepared_to_buy, words_of
from bendreply.rules.request import Evidence, SizeRequest


@pytest.mark.parametrize(
    ("body", "means"),
    [
        ("I'd like to order one of these", True),
        ("We’ll take two", True),
        ("PO number 1234 follows", True),
        ("machine is down, need it by Friday", True),
        ("Wir möchten bestellen", True),
        ("Just curious what a mandrel costs", False),
        ("no rush, but we would like to order some day", False),
        ("Richtpreis für einen Dorn?", False),
        ("what is the price of one mandrel", None),
        ("in order to bend this tube", None),
        ("> We'd like to order one\n\nsee my question above", None),  # somebody else's words
    ],
)
def test_words_tell_whether_somebody_means_to_buy(body: str, means: bool | None) -> None:
    message = Message(message_id="1", sender=Address(name="", address="a@example.com"), body=body)
    assert words_of(message) is means


@pytest.mark.parametrize(
    ("request_", "words", "buying"),
    [
        (SizeRequest(quantity=1), None, False),  # "a mandrel"
        (SizeRequest(quantity=2), None, True),
        (SizeRequest(needed_by=date(2026, 12, 1)), None, True),
        (SizeRequest(), True, True),
        (SizeRequest(quantity=4), False, False),  # at his word
    ],
)
def test_who_seems_prepared_to_buy(request_: SizeRequest, words: bool | None, buying: bool) -> None:
    assert prepared_to_buy(request_, words) is buying


@pytest.mark.parametrize(
    ("surface", "how", "notation"),
    [
        ("13 ga", "gauge, BWG", "gauge"),
        ("16 swg", "SWG", "gauge"),
        ("1-1/2 sch 40", "nominal pipe size, schedule", "pipe size"),
        ("DN 40", "DN", "pipe size"),
        ("3D", "times OD", "multiple of OD"),
        ("1-3/4", "inch", "fraction"),
        ("1¾", "inch", "fraction"),
        ("inch and a half", "", "words"),
        ("2,41 mm", "mm", "decimal comma"),
        (".095", "inch", "decimal point"),
        ("38 mm", "mm", "whole number"),
    ],
)
def test_how_a_figure_was_written(surface: str, how: str, notation: str) -> None:
    evidence = Evidence(field="wall", start=0, end=len(surface), surface=surface, how=how)
    assert notation_of(evidence) == notation


def test_a_figure_that_was_not_there_was_not_read() -> None:
    assert notation_of(None) == "not read"


def test_who_leaves_no_address_is_known_by_the_inquiry() -> None:
    message = Message(message_id="1", sender=Address(name="Ada", address=""))
    assert customer_of(message, 17) == "inquiry 17"
