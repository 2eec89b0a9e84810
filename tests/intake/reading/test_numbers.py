"""Spellings of numbers and every value they allow, before any unit or role is known."""

from __future__ import annotations

from decimal import Decimal
from fractions import Fraction

import pytest

from bendreply.intake.reading.numbers.number_words import words_at
from bendreply.intake.reading.numbers.numbers import number_at
from bendreply.intake.reading.text.plain import flatten

from .support import row


def values_of(text: str) -> tuple[Decimal, ...] | None:
    number = number_at(flatten(text).text, 0)
    return None if number is None else number.values


def exact(*parts: str) -> Decimal:
    """Sum of whole numbers, decimals and fractions: exact('1', '3/4') is 1.75."""
    total = sum((Fraction(part) for part in parts), Fraction(0))
    return Decimal(total.numerator) / Decimal(total.denominator)


ONE_VALUE = [
    ("2", exact("2")),
    ("12", exact("12")),
    ("1.75", exact("1.75")),
    ("1.750", exact("1.75")),
    (".095", exact("0.095")),
    ("0.095", exact("0.095")),
    ("38,1", exact("38.1")),
    ("1,5", exact("1.5")),
    ("0,8", exact("0.8")),
    ("2.350", exact("2.35")),
    ("1/2", exact("1/2")),
    ("1 / 2", exact("1/2")),
    ("5\\8", exact("5/8")),
    ("7/8th", exact("7/8")),
    ("5/8ths", exact("5/8")),
    ("15/16", exact("15/16")),
    ("33/64", exact("33/64")),
    ("1-3/4", exact("1", "3/4")),
    ("1 3/4", exact("1", "3/4")),
    ("1 - 3/4", exact("1", "3/4")),
    ("1 and 3/4", exact("1", "3/4")),
    ("1 & 3/4", exact("1", "3/4")),
    ("1.3/4", exact("1", "3/4")),
    ('1" 3/4', exact("1", "3/4")),
    ('1"-3/4', exact("1", "3/4")),
    ("1 in 3/4", exact("1", "3/4")),
    ("1-\n3/4", exact("1", "3/4")),
    ("2-13/16", exact("2", "13/16")),
    ("9/8", exact("9/8")),
    ("½", exact("1/2")),
    ("1½", exact("1", "1/2")),
    ("1 ½", exact("1", "1/2")),
    ("1-½", exact("1", "1/2")),
    ("4⅜", exact("4", "3/8")),
    ("⅞", exact("7/8")),
    ("1⁄2", exact("1/2")),  # fraction slash
    ("1\u00a03/4", exact("1", "3/4")),  # no-break space
    ("1‑3/4", exact("1", "3/4")),  # non-breaking hyphen
    ("1–3/4", exact("1", "3/4")),  # en dash
    ("４２．４", exact("42.4")),  # full width
    ("1.234,5", exact("1234.5")),
]  # fmt: skip


@pytest.mark.parametrize(("text", "value"), [row(t, t, v) for t, v in ONE_VALUE])
def test_one_spelling_one_value(text: str, value: Decimal) -> None:
    assert values_of(text) == (value,)


TWO_VALUES = [
    # the space of a mixed number is easily lost; the improper fraction remains possible
    ("15/8", exact("1", "5/8"), exact("15/8")),
    ("11/2", exact("1", "1/2"), exact("11/2")),
    ("13/4", exact("1", "3/4"), exact("13/4")),
    ("13/8", exact("1", "3/8"), exact("13/8")),
    ("21/2", exact("2", "1/2"), exact("21/2")),
    ("51/4", exact("5", "1/4"), exact("51/4")),
    # a thousands mark or a decimal comma
    ("1,500", exact("1500"), exact("1.5")),
]


@pytest.mark.parametrize(("text", "first", "second"), TWO_VALUES, ids=[t for t, *_ in TWO_VALUES])
def test_an_ambiguous_spelling_keeps_both_values_and_says_why(
    text: str, first: Decimal, second: Decimal
) -> None:
    number = number_at(text, 0)
    assert number is not None
    assert number.values == (first, second)
    assert number.why


NO_MEASURE = [
    ("1/3", 0),  # no inch rule is divided in thirds
    ("8/2", 0),
    ("x", 0),
]


@pytest.mark.parametrize(("text", "at"), NO_MEASURE, ids=[t for t, _ in NO_MEASURE])
def test_what_is_no_fraction_of_an_inch_is_not_read_as_one(text: str, at: int) -> None:
    number = number_at(text, at)
    assert number is None or number.style not in ("fraction", "mixed")


IN_WORDS = [
    ("six", exact("6")),
    ("ten", exact("10")),
    ("a half", exact("1/2")),
    ("half inch", exact("1/2")),
    ("three quarters", exact("3/4")),
    ("three quarter", exact("3/4")),
    ("seven eighths", exact("7/8")),
    ("five sixteenths", exact("5/16")),
    ("an eighth", exact("1/8")),
    ("inch and a half", exact("1", "1/2")),
    ("an inch and a quarter", exact("1", "1/4")),
    ("inch and three quarters", exact("1", "3/4")),
    ("inch and 5/8", exact("1", "5/8")),
    ("inch-and-three-quarter", exact("1", "3/4")),
    ("one and a half", exact("1", "1/2")),
    ("two and a quarter", exact("2", "1/4")),
    ("two and five eighths", exact("2", "5/8")),
    ("five and a quarter", exact("5", "1/4")),
    ("two inches and a half", exact("2", "1/2")),
    ("point zero nine five", exact("0.095")),
    ("point oh six five", exact("0.065")),
]


@pytest.mark.parametrize(("text", "value"), [row(t, t, v) for t, v in IN_WORDS])
def test_numbers_in_words(text: str, value: Decimal) -> None:
    number = words_at(text, 0)
    assert number is not None
    assert number.values == (value,)


SPOKEN_DIGITS = [
    ("one twenty", exact("120")),
    ("ninety five", exact("95")),
    ("ninety-five", exact("95")),
    ("sixty five", exact("65")),
    ("one thirty four", exact("134")),
]


LED_BY_OH = [("oh eighty three", "0.083"), ("oh nine five", "0.095"), ("zero sixty five", "0.065")]


@pytest.mark.parametrize(("text", "value"), LED_BY_OH)
def test_spoken_digits_behind_an_oh_are_thousandths(text: str, value: str) -> None:
    number = words_at(text, 0)
    assert number is not None
    assert number.values == (exact(value),)


@pytest.mark.parametrize(("text", "value"), SPOKEN_DIGITS, ids=[t for t, _ in SPOKEN_DIGITS])
def test_spoken_digits_stay_digits_for_the_wall_to_scale(text: str, value: Decimal) -> None:
    number = words_at(text, 0)
    assert number is not None
    assert number.values == (value,)
    assert number.style == "speech"


def test_a_number_ends_where_its_spelling_ends() -> None:
    text = "1-3/4 x .095"
    number = number_at(text, 0)
    assert number is not None
    assert text[number.start : number.end] == "1-3/4"
