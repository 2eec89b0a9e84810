"""What replies say beside the decision: a rule book that forbids, date, temper, price."""

from __future__ import annotations

from datetime import date

import pytest

from bendreply.intake.pipeline import process
from bendreply.intake.sources import text_message
from bendreply.intake.templates import Templates
from bendreply.rules.shop import Shop, sample_shop
from bendreply.rules.shop_prices import Prices

MONDAY = date(2026, 11, 2)


def reply(words: str, shop: Shop | None = None) -> str:
    result = process(text_message(words, MONDAY), shop or sample_shop(), Templates(None))
    assert result.draft is not None
    assert len(result.draft.body.split()) < 250
    return " ".join(result.draft.body.split())


def test_a_rule_book_is_named_once_where_it_forbids_the_bend() -> None:
    body = reply("Need a mandrel for a roll cage: 1.75 x .095 DOM on 4.5 in clr")
    assert "our tooling can bend that, but FIA Appendix J" in body
    assert body.count("FIA Appendix J") == 1
    assert "never certify" in body


def test_where_it_forbids_nothing_the_general_caution_stands() -> None:
    body = reply("Need a mandrel for a roll cage: 1.75 x .095 DOM on 6 in clr")
    assert "our tooling can bend that, but" not in body
    assert body.count("FIA Appendix J") == 1


def test_of_several_sizes_the_second_is_told_by_its_number() -> None:
    body = reply(
        "Mandrels for a roll cage please:\n1.75 x .095 DOM, 4.5 clr\n1.5 x .095 DOM, 4 clr\n"
        "1.5 x .095 DOM, 6 clr"
    )
    assert "Size 1: This bend is 2.57 x OD" in body
    assert "The same goes for size 2." in body


def test_a_date_is_judged_in_place_of_being_put_off() -> None:
    body = reply("Need a mandrel for 1.7 x .095 304, 5 in clr, by November 9, 2026")
    assert "9 November 2026 is not likely to be met" in body
    assert "with the quotation whether" not in body


def test_the_temper_is_asked() -> None:
    body = reply("Need a mandrel for 2 x .125 6061-T6 on 5.5 in clr")
    assert "tell us the temper" in body


@pytest.mark.parametrize("has_price", [True, False])
def test_a_price_only_where_the_shop_has_one(has_price: bool) -> None:
    prices = Prices.model_validate({"custom": [{"price": "USD 240"}]}) if has_price else None
    shop = sample_shop().model_copy(update={"prices": prices})
    body = reply("Need a mandrel for 1.7 x .095 304 stainless, 5 in clr", shop)
    assert ("USD 240" in body) is has_price
    assert has_price or "price" not in body
