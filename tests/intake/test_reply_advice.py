"""What replies say beside the decision: a rule book that forbids, date, temper, price."""

from __future__ import annotations

from datetime import date

import pytest

from bendreply.intake.pasted import text_message
from bendreply.intake.pipeline import process
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
    body = reply("Need a mandrel for 2 x .125 6061 on 5.5 in clr")
    assert "tell us the temper" in body
    body = reply("Need a mandrel for 2 x .125 6061-T6 on 5.5 in clr")
    assert "the temper" not in body  # T6 is one
    assert "elongation on the mill certificate" in body


def test_a_question_says_where_each_answer_leads() -> None:
    # 3 D of the true OD is 5.7 in; of the nominal 1-1/2 in it is 4.5 in, 4.5 / 1.9 = 2.37
    body = reply("Need a mandrel for 1-1/2 sch 40 pipe, carbon steel, 3D bend")
    assert "if 4.5 in (114.3 mm): not likely to be feasible (D of bend 2.37)" in body
    assert "If 5.7 in (144.78 mm): FM-1900-145 from our shelf" in body


def test_a_missing_material_is_asked_with_what_hangs_on_it() -> None:
    body = reply("quote for mandrel 1.75 OD .120 wall 5.25 clr")
    assert "FM-1750-120 (chromed tool steel) on our shelf would fit" in body


def test_a_square_tube_is_not_asked_whether_it_is_round() -> None:
    body = reply("Need a mandrel for 2 x 2 x .120 square tube, 6 in clr")
    assert "A person here has to look at this size" in body
    assert "round" not in body
    assert "OD not given" not in body


def test_how_many_are_wanted_is_read_back_and_a_lead_time_told_once() -> None:
    body = reply("Two mandrels for 1.7 x .095 304 stainless, 5 in clr, by November 9, 2026")
    assert "304 stainless steel, 2 mandrels" in body
    assert body.count("15 working days") == 1


@pytest.mark.parametrize("has_price", [True, False])
def test_a_price_only_where_the_shop_has_one(has_price: bool) -> None:
    prices = Prices.model_validate({"custom": [{"price": "USD 240"}]}) if has_price else None
    shop = sample_shop().model_copy(update={"prices": prices})
    body = reply("Need a mandrel for 1.7 x .095 304 stainless, 5 in clr", shop)
    assert ("USD 240" in body) is has_price
    assert has_price or "price" not in body
