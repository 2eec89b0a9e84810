"""Lengths: exact conversion, shop-file lengths, and how sizes read in a reply."""

from __future__ import annotations

import os
import subprocess
import sys
from decimal import Decimal
from pathlib import Path
from typing import Literal

import pint
import pytest
from hypothesis import given
from hypothesis import strategies as st

from bendreply.rules import units
from bendreply.rules.units import (
    MM_PER_INCH,
    BadLength,
    UnknownUnit,
    both_units,
    format_in,
    format_mm,
    parse_length,
    tidy,
    to_mm,
)


def test_an_inch_is_25_4_mm_exactly() -> None:
    # International yard and pound agreement, 1959.
    assert Decimal("25.4") == MM_PER_INCH
    assert to_mm(Decimal(1), "in") == Decimal("25.4")


@given(st.integers(min_value=0, max_value=64 * 400))
def test_every_64th_of_an_inch_converts_exactly_and_back(sixty_fourths: int) -> None:
    inches = Decimal(sixty_fourths) / 64
    assert to_mm(inches, "in") * 64 * 10 == sixty_fourths * 254
    assert to_mm(inches, "in") / MM_PER_INCH == inches


# 'mil' and 'mils' are spelled 'thou' in pint, and marks are no words for it.
_AS_PINT_SPELLS = {"mil": "thou", "mils": "thou", '"': "inch", "'": "foot"}


@pytest.fixture(scope="module")
def registry() -> pint.UnitRegistry[Decimal]:
    return pint.UnitRegistry(non_int_type=Decimal)


@pytest.mark.parametrize("unit", sorted(units._MM_PER))
def test_each_everyday_unit_is_what_pint_says(
    registry: pint.UnitRegistry[Decimal], unit: str
) -> None:
    by_pint = registry.Quantity(Decimal(1), _AS_PINT_SPELLS.get(unit, unit)).to("mm").magnitude
    assert to_mm(Decimal(1), unit) == by_pint


def test_a_rare_unit_goes_through_pint() -> None:
    assert to_mm(Decimal(2), "yard") == Decimal("1828.8")  # 2 x 36 x 25.4


def test_a_rare_unit_leaves_nothing_on_the_disk(tmp_path: Path) -> None:
    """What another installation had left there once made every rare unit fail."""
    script = "from bendreply.rules import units; print(units.to_mm(units.Decimal(2), 'yard'))"
    homes = {"HOME": str(tmp_path), "XDG_CACHE_HOME": str(tmp_path / "cache")}
    told = subprocess.run(
        [sys.executable, "-c", script], env=os.environ | homes, capture_output=True, text=True
    )
    assert told.stdout.strip() == "1828.8", told.stderr
    assert list(tmp_path.iterdir()) == []


@pytest.mark.parametrize("unit", ["kg", "furlongish", "", "9**9**9", "mm; import os", "second"])
def test_what_is_no_length_is_refused_in_one_sentence(unit: str) -> None:
    with pytest.raises(UnknownUnit, match=r"is not a unit of length\.$"):
        to_mm(Decimal(1), unit)


def test_everyday_units_do_not_load_pint() -> None:
    code = (
        "import sys; from decimal import Decimal; from bendreply.rules.units import to_mm;"
        "to_mm(Decimal(1), 'in'); sys.exit('pint' in sys.modules)"
    )
    assert subprocess.run([sys.executable, "-c", code], check=False).returncode == 0


@pytest.mark.parametrize(
    ("before", "after"),
    [
        ("44.450", "44.45"),
        ("1E+2", "100"),
        ("0.000", "0"),
        ("-0", "0"),
        ("38", "38"),
        ("100", "100"),
    ],
)
def test_tidy_leaves_one_spelling_of_a_size(before: str, after: str) -> None:
    assert str(tidy(Decimal(before))) == after


@given(st.decimals(allow_nan=False, allow_infinity=False, places=9, min_value=0, max_value=10**12))
def test_tidy_never_changes_the_value(value: Decimal) -> None:
    assert tidy(value) == value


@pytest.mark.parametrize(
    ("written", "mm"),
    [
        ("1.75 in", "44.45"),
        ("1-3/4 in", "44.45"),
        ("1 3/4 in", "44.45"),
        ('1-3/4"', "44.45"),
        ("3/4in", "19.05"),
        (".065 in", "1.651"),
        ("38 mm", "38"),
        ("0.25mm", "0.25"),
        (" 5.25 inches ", "133.35"),
        ("2 ft", "609.6"),
        ("65 thou", "1.651"),
        ("1 m", "1000"),
    ],
)
def test_shop_files_write_lengths_like_this(written: str, mm: str) -> None:
    assert parse_length(written) == Decimal(mm)


@pytest.mark.parametrize(
    ("written", "says"),
    [
        ("1.75", "has no unit: write '1.75 in' or '1.75 mm'"),
        ("38,1 mm", "has a comma: write decimals with a point"),
        ("", "is not a length"),
        ("big", "is not a length"),
        ("-5 mm", "is not a length"),
        ("1.2.3 mm", "is not a length"),
        ("5 kg", "is not a unit of length"),
        ("1/3 in", "fractions are written in halves, quarters"),
        ("1/0 in", "fractions are written in halves, quarters"),
    ],
)
def test_a_bad_length_says_what_is_wrong_with_it(written: str, says: str) -> None:
    with pytest.raises(BadLength, match=says) as caught:
        parse_length(written)
    assert "\n" not in str(caught.value)


@given(st.text(max_size=40))
def test_any_text_in_a_shop_file_is_a_length_or_a_plain_complaint(written: str) -> None:
    try:
        length = parse_length(written)
    except BadLength:
        return
    assert length >= 0


@pytest.mark.parametrize(
    ("mm", "inches"),
    [("44.45", "1.75"), ("25.4", "1"), ("1.651", "0.065"), ("38", "1.4961"), ("26.9875", "1.0625")],
)
def test_inches_have_at_most_four_decimals(mm: str, inches: str) -> None:
    assert format_in(Decimal(mm)) == inches


def test_walls_keep_three_decimals_in_inches() -> None:
    assert format_in(Decimal("3.048"), wall=True) == "0.120"
    assert format_in(Decimal("6.35"), wall=True) == "0.250"
    assert format_in(Decimal("1.5875"), wall=True) == "0.0625"


def test_mm_have_at_most_three_decimals() -> None:
    assert format_mm(Decimal("44.450")) == "44.45"
    assert format_mm(Decimal("1.2446")) == "1.245"
    assert format_mm(Decimal(100)) == "100"


@pytest.mark.parametrize(
    ("mm", "first", "wall", "text"),
    [
        ("44.45", "in", False, "1.75 in (44.45 mm)"),
        ("38", "mm", False, "38 mm (1.496 in)"),
        ("1.651", "in", True, "0.065 in (1.651 mm)"),
        ("1.5", "mm", True, "1.5 mm (0.059 in)"),
        ("3.048", "mm", True, "3.048 mm (0.120 in)"),
    ],
)
def test_replies_put_the_senders_unit_first(
    mm: str, first: Literal["in", "mm"], wall: bool, text: str
) -> None:
    assert both_units(Decimal(mm), first, wall=wall) == text
