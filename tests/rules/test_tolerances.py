"""How a tube is made, as customers name it, and the table of tolerances behind it."""

from __future__ import annotations

import csv
from decimal import Decimal
from pathlib import Path

import pytest

import bendreply.rules
from bendreply.rules.request import Evidence, Material, SizeRequest
from bendreply.rules.tolerances import heat_treated_factor, make_named, make_of, makes

DATA = Path(bendreply.rules.__file__).parent / "data"

# what the customer writes, the make it names
NAMED = [
    ("DOM", "dom"),
    ("1020 dom", "dom"),
    ("A513-T5", "dom"),
    ("A513 Type 5", "dom"),
    ("drawn over mandrel", "dom"),
    ("ERW", "erw"),
    ("A513 type 2", "erw"),
    ("CREW", "erw"),
    ("hrew", "hrew"),
    ("A513 Type 1", "hrew"),
    ("ERW flash-in", "erw-flash-in"),
    ("ERW, as welded", "erw-flash-in"),
    ("ERW flash controlled", "erw-flash-005"),
    ("ERW flash-controlled to 0.005", "erw-flash-005"),
    ("flash controlled .010 max ERW", "erw-flash-010"),
    ("CDS", "a519"),
    ("cold drawn seamless", "a519"),
    ("A519 4130", "a519"),
    ("TP304L A269", "a269"),
    ("SA-249", "a249"),
    ("A554", "a554"),
    ("A312 TP316L", "a312"),
    ("A53 Gr B", "a53"),
    ("A106 Grade B", "a106"),
    ("E235+C EN 10305-1", "en10305-1"),
    ("BS EN 10305-3", "en10305-3"),
    ("DIN 2391 St 35 NBK", "en10305-1"),
    ("EN 10305 Teil 2", "en10305-2"),
    ("EN 10296-2 1.4301", "en10296-2"),
    ("seamless", "seamless"),
    ("nahtlos", "seamless"),
    ("welded", "welded"),
    ("geschweißt", "welded"),
]
NOT_NAMED = [
    "304",
    "4130",
    "E235",  # EN 10305-1, -2 and -3 all have it
    "St 35 NBK",  # seamless or welded
    "A513",  # ERW or DOM
    "A53/A106",  # two standards
    "A500",
    "domex",
    "screwed",
    "",
]


@pytest.mark.parametrize(("words", "key"), NAMED, ids=[words for words, _ in NAMED])
def test_words_that_name_a_make(words: str, key: str) -> None:
    make = make_named(words)
    assert make is not None
    assert make.key == key


@pytest.mark.parametrize("words", NOT_NAMED)
def test_words_that_name_none(words: str) -> None:
    assert make_named(words) is None


def test_a_make_that_the_material_does_not_have_is_not_taken() -> None:
    assert make_named("DOM", Material.ALLOY_STEEL) is not None
    assert make_named("304 DOM", Material.STAINLESS_STEEL) is None
    assert make_named("A269", Material.ALUMINIUM) is None


@pytest.mark.parametrize(
    ("words", "state"),
    [
        ("EN 10296-2, finish B", "B"),
        ("EN 10296-2", ""),
        ("E235+N EN 10305-1", "heat treated"),
        ("EN 10305-1 E235 +SR", "heat treated"),
        ("E235+C EN 10305-1", ""),
        ("DIN 2391 NBK", "heat treated"),
        ("DIN 2391 BK", ""),
    ],
)
def test_the_state_is_read_with_it(words: str, state: str) -> None:
    make = make_named(words)
    assert make is not None
    assert make.state == state


def test_a_request_names_it_in_its_grade_or_beside_it() -> None:
    assert make_of(SizeRequest()) is None
    by_grade = make_of(SizeRequest(grade="DOM"))
    assert by_grade is not None
    assert by_grade.key == "dom"
    evidence = (Evidence(field="material", start=0, end=9, surface="304L A269"),)
    beside = make_of(SizeRequest(grade="304L", evidence=evidence))
    assert beside is not None
    assert beside.key == "a269"


# EN 10305-1, from memory (M): 1 down to T/D 1/20, 1.5 down to 1/40, then 2
@pytest.mark.parametrize(
    ("wall", "factor"), [("2.5", "1"), ("2.4999", "1.5"), ("1.25", "1.5"), ("1.2499", "2")]
)
def test_heat_treated_tube_has_wider_tolerances(wall: str, factor: str) -> None:
    assert heat_treated_factor(od_mm=Decimal(50), wall_mm=Decimal(wall)) == Decimal(factor)


def table() -> list[dict[str, str]]:
    with (DATA / "tolerance.csv").open(encoding="utf-8") as file:
        return list(csv.DictReader(file))


def test_every_row_is_of_a_known_make_with_its_source_and_how_sure_it_is() -> None:
    for row in table():
        assert row["make"] in makes(), row
        assert row["source"], row
        assert row["confidence"].split()[0] in {"seen", "memory"}, row
        assert (row["source"] == "M") <= (row["confidence"] == "memory"), row
        assert row["unit"] in {"in", "mm"}, row


def test_bands_ascend_and_one_kind_of_figure_stands_in_each() -> None:
    for row in table():
        assert Decimal(row["od_from"]) < Decimal(row["od_to"]), row
        assert bool(row["od_minus"]) != bool(row["od_pct"]), row
        assert bool(row["id_plus"]) == bool(row["id_minus"]), row
