"""The material tables agree with each other, and a grade leads to its figures."""

from __future__ import annotations

import re
from decimal import Decimal

import pytest

from bendreply.rules.grades import (
    System,
    family_of_designation,
    is_known_alone,
    written_forms,
)
from bendreply.rules.materials import entries, entry_of, words
from bendreply.rules.request import Material


def test_every_entry_says_where_it_is_from() -> None:
    assert len(entries()) >= 70
    for entry in entries():
        assert entry.source, entry.name
        assert entry.confidence.startswith(("seen", "memory")), entry.name
        assert entry.value_kind, entry.name


def test_figures_are_in_a_believable_range() -> None:
    for entry in entries():
        assert entry.ultimate_mpa is not None, entry.name
        if entry.yield_mpa is not None:
            assert 0 < entry.yield_mpa < entry.ultimate_mpa, entry.name
        assert entry.elongation_pct is not None, entry.name
        assert 0 < entry.elongation_pct <= 60, entry.name


def test_a_seen_table_value() -> None:
    # ASTM B241-12 Table 1 (S42): 6061-T6 drawn, 35/42 ksi = 241/290 MPa, 8 %
    entry = entry_of("6061-T6 drawn")
    assert entry is not None
    assert (entry.yield_mpa, entry.ultimate_mpa, entry.elongation_pct) == (
        Decimal(241),
        Decimal(290),
        Decimal(8),
    )


@pytest.mark.parametrize(
    ("written", "name"),
    [("316L", "316L"), ("1.4404", "316L"), ("e235 +N", "E235+N"), ("DOM", "DOM 1020")],
)
def test_a_grade_leads_to_its_entry(written: str, name: str) -> None:
    entry = entry_of(written)
    assert entry is not None
    assert entry.name == name


@pytest.mark.parametrize("written", ["H58", "unobtainium", ""])
def test_two_entries_or_none_give_none(written: str) -> None:
    assert entry_of(written) is None  # H58 is a temper of copper and of brass


def test_copper_nickel_is_copper() -> None:
    entry = entry_of("90/10 CuNi")
    assert entry is not None
    assert entry.family is Material.COPPER


_FORMS: tuple[tuple[System, str], ...] = (("number", r"\d{3,4}"), ("werkstoff", r"\d\.\d{4}"))


@pytest.mark.parametrize(
    ("system", "designation"),
    [
        (system, name)
        for entry in entries()
        for name in (entry.name, *entry.aliases)
        for system, form in _FORMS
        if re.fullmatch(form, name)
    ],
)
def test_the_grade_table_agrees_with_the_figures(system: System, designation: str) -> None:
    entry = entry_of(designation)
    assert entry is not None
    assert family_of_designation(system, designation) is entry.family


def test_no_inch_size_is_taken_for_a_werkstoff_number() -> None:
    # 1-7/16 in is 1.4375, 1-1/32 is 1.0313 (or 1.0312): sizes, not steels.
    for sixty_fourths in range(64, 4 * 64):
        exact = Decimal(sixty_fourths) / 64
        for rounded in (exact.quantize(Decimal("0.0001")), Decimal(str(exact)[:6])):
            assert family_of_designation("werkstoff", str(rounded)) is None, rounded


def test_an_unknown_number_has_no_family() -> None:
    assert family_of_designation("number", "999") is None
    assert family_of_designation("werkstoff", "1.4999") is None
    assert family_of_designation("astm", "A1") is None
    assert family_of_designation("uns", "Q00000") is None


def test_only_what_mail_writes_alone_is_known_alone() -> None:
    assert is_known_alone("number", "304")
    assert not is_known_alone("number", "260")  # brass, or 260 mm
    assert is_known_alone("astm", "A513")


@pytest.mark.parametrize(
    ("code", "family"),
    [
        ("S30403", Material.STAINLESS_STEEL),
        ("C12200", Material.COPPER),
        ("C70600", Material.COPPER),
        ("C26000", Material.BRASS),
        ("N06625", Material.NICKEL_ALLOY),
        ("R56320", Material.TITANIUM),
        ("G41300", Material.ALLOY_STEEL),
    ],
)
def test_uns_codes_are_told_by_how_they_begin(code: str, family: Material) -> None:
    assert family_of_designation("uns", code) is family


def test_word_list_is_casefolded_and_without_repeats() -> None:
    keys = [(word.words, word.needs_tube, word.is_symbol) for word in words()]
    assert len(keys) == len(set(keys))
    assert {word.family for word in words()} == set(Material)


def test_every_written_form_is_a_sound_pattern_that_starts_as_it_says() -> None:
    for form in written_forms():
        re.compile(form.pattern.replace("<temper>", ""), re.VERBOSE)
        assert len(form.first) == 1
        assert "*" not in form.pattern.replace(r"\*", ""), form.pattern  # bounded: no run-away
        assert not re.search(r"(?<!\\)(?<!\[)\+(?!\\)", form.pattern.replace(r"\+", "")), (
            form.pattern
        )
