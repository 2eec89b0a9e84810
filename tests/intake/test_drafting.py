"""Replies as a shop owner would accept them: what the customer wrote, what the reply must say."""

from __future__ import annotations

from datetime import date
from decimal import Decimal
from itertools import pairwise

import pytest
from hypothesis import given
from hypothesis import strategies as st

from bendreply.intake.model import (
    Question,
)
from bendreply.intake.templates import default_templates
from bendreply.rules.assessment import (
    Decision,
    Finding,
)
from bendreply.rules.request import Doubt, Material, Shape, SizeRequest

from .drafting_support import (
    EASY,
    LARGER_RADIUS,
    MANDREL,
    SHOP,
    STOCK,
    judged,
    message,
    reply,
    size,
)

# -- one size ------------------------------------------------------------------------------------


def test_every_figure_comes_back_in_both_units_the_senders_first() -> None:
    body = reply(judged(EASY, Decision.STOCK, stock=STOCK)).body
    assert (
        "1.75 in (44.45 mm) OD x 0.095 in (2.413 mm) wall, 5.25 in (133.35 mm) CLR, "
        "DOM carbon steel" in body
    )
    metric = SizeRequest(
        od_mm=Decimal(38), wall_mm=Decimal("1.5"), clr_mm=Decimal(114), written_in="mm"
    )
    # 38 / 25.4 = 1.496, 1.5 / 25.4 = 0.0591, 114 / 25.4 = 4.488
    body = reply(judged(metric, Decision.CUSTOM_MAKE)).body
    assert "38 mm (1.496 in) OD x 1.5 mm (0.059 in) wall, 114 mm (4.488 in) CLR" in body


def test_ratios_stand_beside_the_shops_limits() -> None:
    body = reply(judged(EASY, Decision.STOCK, stock=STOCK)).body
    assert "Wall factor 18.4, our limit 30; bend 3.0 D, our limit 2.5 D." in body


def test_a_ratio_just_over_the_limit_is_not_shown_as_the_limit() -> None:
    barely = size("1.5", "0.0499", "4.5")  # 1.5 / 0.0499 = 30.06
    body = reply(judged(barely, Decision.DECLINE)).body
    assert "Wall factor 30.1, our limit 30;" in body
    closer = size("1.5", "0.04999", "4.5")  # 1.5 / 0.04999 = 30.006
    assert "Wall factor 30.01," in reply(judged(closer, Decision.DECLINE)).body


def test_stock_names_the_part_and_that_it_is_on_hand_without_a_price() -> None:
    made = reply(judged(EASY, Decision.STOCK, stock=STOCK))
    assert made.template == "stock"
    assert "in stock: part M-1750-095" in made.body
    assert "3 on hand" in made.body
    assert "price" not in made.body.lower()


def test_a_price_is_told_only_where_the_catalogue_has_one() -> None:
    priced = STOCK.model_copy(update={"price": "185 USD"})
    assert "185 USD each" in reply(judged(EASY, Decision.STOCK, stock=priced)).body


def test_custom_make_gives_the_usual_lead_time_and_the_balls_as_a_range() -> None:
    made = reply(judged(EASY, Decision.CUSTOM_MAKE, mandrel=MANDREL))
    assert made.template == "custom-make"
    assert "usually takes about 15 working days" in made.body
    # 39.324 / 25.4 = 1.5482, 39.524 / 25.4 = 1.5561
    assert "1.548 to 1.556 in (39.32 to 39.52 mm) diameter, 2 to 3 balls" in made.body
    assert "to be confirmed" in made.body


def test_no_date_is_promised() -> None:
    wanted = EASY.model_copy(update={"needed_by": date(2026, 12, 4)})
    body = reply(judged(wanted, Decision.CUSTOM_MAKE, mandrel=MANDREL)).body
    assert "You need it by 4 December 2026; we will tell you" in body


def test_more_wanted_than_on_hand_is_said() -> None:
    note = Finding(
        rule="enough-on-hand",
        effect="notes",
        text="M-1 would fit, but 2 on hand is less than 3.",
        source="catalogue.csv",
    )
    body = reply(judged(EASY, Decision.CUSTOM_MAKE, findings=(note,))).body
    assert "M-1 would fit, but 2 on hand is less than 3." in body


def test_decline_gives_reason_and_nearest_alternatives() -> None:
    tight = size("1.75", "0.095", "3.5")  # 3.5 / 1.75 = 2
    finding = Finding(
        rule="d-of-bend-limit",
        effect="declines",
        text="D of bend 2 is below our limit of 2.5 (our bender).",
        source="our bender",
        measured=Decimal(2),
        limit=Decimal("2.5"),
    )
    made = reply(
        judged(tight, Decision.DECLINE, findings=(finding,), alternatives=(LARGER_RADIUS,))
    )
    assert made.template == "decline"
    assert "bend 2.0 D, our limit 2.5 D" in made.body
    assert "not likely to be feasible with our tooling: the radius is too tight" in made.body
    assert "(our bender)" in made.body
    assert "4.5 in (114.3 mm) CLR (larger radius: the next die we have)" in made.body
    assert "D of bend 2 is below" not in made.body, "the ratio line has said it"
    assert "impossible" not in made.body.lower()


def test_decline_without_alternatives_says_so() -> None:
    made = reply(judged(size("1.75", "0.02", "2"), Decision.DECLINE))
    assert "no near size" in made.body


def test_gaps_and_doubts_that_decide_are_numbered_questions() -> None:
    findings = tuple(
        Finding.model_validate(
            {"rule": f"r{i}", "effect": "asks", "text": q, "source": "x", "field": f, "question": q}
        )
        for i, (f, q) in enumerate(
            [("wall", "What is the tube's wall?"), ("od", "Which OD is meant: A or B?")]
        )
    )
    made = reply(judged(size("1.75", None, "5.25"), Decision.ASK, findings=findings))
    assert made.template == "ask"
    assert "1. What is the tube's wall?\n2. Which OD is meant: A or B?\n" in made.body
    assert "wall not given" in made.body


def test_an_ask_without_a_question_goes_to_a_person() -> None:
    body = reply(judged(EASY, Decision.ASK)).body
    assert "A person here has to look at this size" in body
    assert "please answer" not in body


def test_a_gap_that_no_rule_asked_about_is_asked_all_the_same() -> None:
    bare = size("1.75", "0.095", "5.25", material=None, grade=None)
    body = reply(judged(bare, Decision.CUSTOM_MAKE, mandrel=MANDREL)).body
    assert "1. What is the tube material?" in body


def test_a_question_left_to_us_names_both_readings() -> None:
    doubt = Doubt(field="wall", readings=(Decimal("2.1082"), Decimal("21.082")), why="a slip")
    doubtful = size("1.75", "0.083", "5.25", doubts=(doubt,))
    finding = Finding(rule="doubt-wall", effect="asks", text="?", source="x", field="wall")
    body = reply(judged(doubtful, Decision.ASK, findings=(finding,))).body
    assert "Is the wall 0.083 in (2.108 mm) or 0.830 in (21.082 mm)? (a slip)" in body


def test_a_doubt_that_decides_nothing_is_put_for_confirmation() -> None:
    doubt = Doubt(
        field="od", readings=(Decimal("44.45"), Decimal("41.275")), why="a space may be missing"
    )
    doubtful = size("1.75", "0.095", "5.25", doubts=(doubt,))
    body = reply(judged(doubtful, Decision.STOCK, stock=STOCK)).body
    assert "- OD 1.75 in (44.45 mm), not 1.625 in (41.275 mm)? (a space may be missing)" in body
    assert "M-1750-095" in body


def test_a_declined_size_is_asked_nothing() -> None:
    bare = size("1.75", "0.02", None, material=None, grade=None)
    assert "?" not in reply(judged(bare, Decision.DECLINE)).body


def test_a_square_tube_is_called_one() -> None:
    square = size("1.5", "0.12", None, shape=Shape.SQUARE)
    assert "square tube, 1.5 in (38.1 mm) x 0.120 in" in reply(judged(square, Decision.ASK)).body


@pytest.mark.parametrize(
    ("family", "grade", "words"),
    [
        (Material.CARBON_STEEL, "DOM", "DOM carbon steel"),
        (Material.CARBON_STEEL, "mild steel", ", mild steel\n"),
        (Material.STAINLESS_STEEL, "304", "304 stainless steel"),
        (Material.STAINLESS_STEEL, "stainless 304", ", stainless 304\n"),
        (Material.ALUMINIUM, "6061-T6", "6061-T6 aluminum"),
        (Material.OTHER, "Inox-X", ", Inox-X\n"),
    ],
)
def test_material_is_named_once(family: Material, grade: str, words: str) -> None:
    request = size("1.75", "0.095", "5.25", material=family, grade=grade)
    assert words in reply(judged(request, Decision.STOCK, stock=STOCK)).body


def test_british_shops_get_british_words() -> None:
    british = SHOP.model_copy(update={"spelling": "british"})
    aluminium = size("1.75", "0.095", None, material=Material.ALUMINIUM, grade=None)
    body = reply(judged(aluminium, Decision.ASK), shop=british).body
    assert "aluminium" in body
    assert "centreline radius" in body
    body = reply(judged(aluminium, Decision.ASK)).body
    assert "aluminum" in body
    assert "centerline radius" in body


# -- several sizes -------------------------------------------------------------------------------

SEVERAL = (
    judged(EASY, Decision.STOCK, stock=STOCK),
    judged(size("2", "0.12", "6"), Decision.CUSTOM_MAKE, mandrel=MANDREL),
    judged(size("1.75", "0.049", "3.5"), Decision.DECLINE, alternatives=(LARGER_RADIUS,)),
    judged(size("1.5", "0.065", None), Decision.ASK),
)


def test_several_sizes_are_one_numbered_list_with_shared_facts_once() -> None:
    made = reply(*SEVERAL)
    assert made.template == "several-sizes"
    assert made.body.count("DOM carbon steel") == 1
    assert made.body.count("our limit") + made.body.count("Our limits") == 1
    lines = made.body.splitlines()
    starts = [i for i, line in enumerate(lines) if line[:2] in ("1.", "2.", "3.", "4.")]
    assert [lines[i][3:7] for i in starts] == ["1.75", "2 in", "1.75", "1.5 "]
    assert all(later - earlier <= 4 for earlier, later in pairwise(starts))
    assert "in stock, part M-1750-095" in made.body
    assert "made to order, usually about 15 working days" in made.body
    assert "not likely to be feasible" in made.body
    assert "Q1 (size 4). What is the" in made.body


def test_a_question_about_all_sizes_is_asked_once() -> None:
    bare = size("1.75", "0.095", "5.25", material=None, grade=None)
    other = size("2", "0.12", "6", material=None, grade=None)
    body = reply(judged(bare, Decision.CUSTOM_MAKE), judged(other, Decision.CUSTOM_MAKE)).body
    assert body.count("What is the tube material?") == 1
    assert "Q1. What is the tube material?" in body


def test_the_numbers_of_many_sizes_in_a_row_are_told_as_a_range() -> None:
    bare = [judged(size("1.75", "0.095", str(4 + n)), Decision.ASK) for n in range(6)]
    gaps = [judged(size("1.75", "0.095", None), Decision.ASK) for _ in range(6)]
    body = reply(*bare[:2], *gaps, *bare[2:4], gaps[0]).body
    assert "Q1 (sizes 3 to 8 and 11)." in body


def test_different_materials_stand_with_their_sizes() -> None:
    other = size("2", "0.12", "6", material=Material.STAINLESS_STEEL, grade="304")
    body = reply(judged(EASY, Decision.CUSTOM_MAKE), judged(other, Decision.CUSTOM_MAKE)).body
    assert "CLR, DOM carbon steel" in body
    assert "CLR, 304 stainless steel" in body
    assert "all in" not in body


# -- the whole letter ----------------------------------------------------------------------------


@pytest.mark.parametrize("answer", [a.name for a in default_templates().answers])
@pytest.mark.parametrize("decision", list(Decision))
def test_one_size_and_one_question_stay_under_250_words(decision: Decision, answer: str) -> None:
    whole = judged(
        EASY,
        decision,
        stock=STOCK if decision is Decision.STOCK else None,
        mandrel=MANDREL,
        alternatives=(LARGER_RADIUS,) * 2 if decision is Decision.DECLINE else (),
    )
    made = reply(
        whole, mail=message("for a roll cage"), questions=(Question(surface="?", answer=answer),)
    )
    assert len(made.body.split()) < 250
    assert "\n\n\n" not in made.body
    assert not any(line != line.rstrip() for line in made.body.split("\n"))
    assert made.body.endswith("Pat Example\nLarkfield Tooling\n")


@pytest.mark.parametrize(
    ("body", "must"),
    [
        ("for a roll cage", "rule book in force"),
        ("suspension links", "someone qualified"),
        ("brake lines", "vehicle rules"),
        ("steam line", "licensed practice"),
        ("hydraulic line", "code in force"),
        ("for an aircraft", "licensed engineer"),
    ],
)
def test_safety_relevant_uses_carry_their_caution(body: str, must: str) -> None:
    made = reply(judged(EASY, Decision.STOCK, stock=STOCK), mail=message(body))
    assert must in made.body
    assert "never certify a part" in made.body


def test_a_handrail_carries_no_caution() -> None:
    made = reply(judged(EASY, Decision.STOCK, stock=STOCK), mail=message("for a handrail"))
    assert "certify" not in made.body


def test_the_greeting_uses_the_first_name_and_the_subject_answers_theirs() -> None:
    made = reply(judged(EASY, Decision.STOCK, stock=STOCK), mail=message(subject="AW: mandrel"))
    assert made.body.startswith("Hello Dale,\n")
    assert made.subject == "Re: mandrel"


def test_a_customers_template_code_stays_text() -> None:
    code = "{{ shop.name }}{% include 'parts.j2' %}"
    request = size("1.75", "0.095", "5.25", grade=code)
    made = reply(
        judged(request, Decision.STOCK, stock=STOCK),
        mail=message(subject=code),
        questions=(Question(surface=code + "?"),),
    )
    assert made.subject == f"Re: {code}"
    assert made.body.count("{{ shop.name }}") == 1
    assert "&" not in made.body


@given(st.text(max_size=200), st.text(max_size=60), st.text(max_size=60))
def test_no_text_of_a_customer_breaks_the_reply(body: str, name: str, grade: str) -> None:
    request = size("1.75", "0.095", "5.25", grade=grade)
    made = reply(
        judged(request, Decision.STOCK, stock=STOCK),
        mail=message(body, name=name),
        questions=(Question(surface=body or "?"),),
    )
    assert "M-1750-095" in made.body
    assert not any(ord(c) < 32 and c != "\n" for c in made.body)
