"""Lists whose lines say how it stands with each: which are left out, which stay."""

# ruff: noqa: E501 - a row of a table stands on one line: the words, then their meaning

from __future__ import annotations

from decimal import Decimal

import pytest

from .support import read_text, row, written_down

_A, _B, _C = "1.5 x .065 on 4.5 clr", "1.75 x .095 on 5.25 clr", "2 x .120 on 6 clr"
_M, _N, _O = "25 x 2, R50", "30 x 2, R60", "40 x 2, R80"


def _lists(name: str, text: str, *ods: str) -> object:
    words = text.format(A=_A, B=_B, C=_C, M=_M, N=_N, O=_O)
    return row(name, words, [Decimal(od) for od in ods])


LEFT = [
    _lists("dots", "Tooling list:\n{A} ..... have, worn but ok\n{B} ..... NEED\n{C} ..... machine won't take it, forget it\nFor the ones we need please quote 1 each.", "44.45"),
    _lists("dashes", "Mandrels:\n{A} - got\n{B} - need 2\n{C} - on order\nPlease quote what is needed.", "44.45"),
    _lists("three-spaces", "quote mandrels pls\n{A}   ok\n{B}   urgent\n{C}   wanted", "44.45", "50.8"),
    _lists("in-front", "Mandrels\n[have] {A}\n[need] {B}\n[later] {C}\nThanks", "44.45"),
    _lists("headed", "HAVE: {A}\nNEED: {B}", "44.45"),
    _lists("missing-ones", "Quote the missing ones please.\n{A} (have)\n{B}\n{C} (in stock)", "44.45"),
    _lists("places-named", "Mandrels please\n{A} main hoop - have got\n{B} rear hoop - quote please\n{C} bumper - bought in", "44.45"),
    _lists("tabs", "OD\tWall\tCLR\tStatus\n1.5\t.065\t4.5\thave\n1.75\t.095\t5.25\tneed\n2\t.120\t6\tcancelled\nPlease quote a mandrel", "44.45"),
    _lists("german", "Dornliste, bitte anbieten was fehlt:\n1) {M}, 1.4301 - ok\n2) {N}, 1.4301 - fehlt\n3) {O}, S235 - nächstes Jahr", "30"),
    _lists("french", "mandrins:\n{M} - on a déjà\n{N} - il faut\n{O} - annulé\nprix svp", "30"),
    _lists("spanish", "Mandriles:\n{M} tenemos\n{N} falta\n{O} más adelante", "30"),
    _lists("italian", "anime\n{M} (già presente)\n{N} (serve)\n{O} (non serve)", "30"),
    _lists("dutch", "doornen\n{M} => hebben we\n{N} => nodig\n{O} => niet nodig", "30"),
]  # fmt: skip

ALL_STAY = [
    _lists("worn-out", "Mandrels, one each:\n{A} - need\n{B} - have but it's worn out", "38.1", "44.45"),
    _lists("no-rush", "Mandrels, one each:\n{A} - urgent\n{B} - no rush", "38.1", "44.45"),
    _lists("later-is-a-date", "Mandrels, one each:\n{A} - urgent\n{B} - later", "38.1", "44.45"),
    _lists("dies-in-stock", "Need mandrels\n{A} - die in stock\n{B} - die on order", "38.1", "44.45"),
    _lists("existing-die", "need mandrels\n{A}, no lube used\n{B}, good surface needed\n{C}, existing die", "38.1", "44.45", "50.8"),
    _lists("quote-both", "Quote both please.\n{A} - have, worn\n{B} - need", "38.1", "44.45"),
    _lists("status-of-dies", "Quote one of each mandrel. Status of the dies:\n{A} - have\n{B} - need", "38.1", "44.45"),
    _lists("out-of-stock", "Please price mandrels for these:\n{A} - in stock\n{B} - out of stock", "38.1", "44.45"),
    _lists("have-and-another", "mandrels\n{A} - have one, need another\n{B} - need", "38.1", "44.45"),
    _lists("have-it-question", "mandrels\n{A} - in stock?\n{B} - need", "38.1", "44.45"),
    _lists("need-by", "Sizes, we need mandrels:\n{A}, need by March\n{B}, need by May", "38.1", "44.45"),
    _lists("two-off", "Please quote:\n{A}, 2 off, urgent\n{B}, 1 off, hold for pickup", "38.1", "44.45"),
]  # fmt: skip


@pytest.mark.parametrize(("text", "ods"), [*LEFT, *ALL_STAY])
def test_lines_by_their_status(text: str, ods: list[Decimal]) -> None:
    requests = read_text(text)
    shown = f"{text}\n{written_down(requests)}"
    assert [request.od_mm for request in requests] == ods, shown


def test_a_status_that_says_more_is_doubted() -> None:
    worn = read_text(f"Mandrels:\n{_A} - need\n{_B} - have but it's worn out")[1]
    assert {doubt.field for doubt in worn.doubts} >= {"od", "wall", "clr"}


def test_the_material_of_a_line_left_out_goes_with_it() -> None:
    (left,) = read_text(f"Mandrels\n{_A} 304 - have\n{_B} DOM - need")
    assert left.material is not None
    assert left.material.value == "carbon_steel"
