"""One size told of and one asked for, in either order: which is read, and whether it is doubted."""

# ruff: noqa: E501 - a row of a table stands on one line

from __future__ import annotations

from datetime import date
from decimal import Decimal

import pytest

from bendreply.intake.pasted import text_message
from bendreply.intake.pipeline import understand
from bendreply.intake.reading import read

from .support import read_text, row, whole, written_down

_TODAY = date(2026, 11, 26)

_TOLD = (
    "PO for the 1.5 x .065 went out to you yesterday.",
    "Later on we'll probably want 1.5 x .065 as well, no need to price it now.",
    "We may need 1.5 x .065 next year.",
    "The frame also has some 1.5 x .065 in it which we weld, not bend.",
    "The drawing also shows 1.5 x .065 for the cross tube; that is laser cut and not bent.",
    "Had a mandrel made for 1.5 x .065 by a local shop, never again.",
    "Currently we bend 1.5 x .065 on 4.5 clr with no mandrel and it comes out fine.",
)
_ASKED = (
    "Need one for {}.",
    "Tube: {}. Qty: 1 mandrel.",
    "This time it's {}, one piece please.",
    "Can you make one for {}?",
)


@pytest.mark.parametrize("told", _TOLD)
@pytest.mark.parametrize("asked", _ASKED)
@pytest.mark.parametrize("first", ["told", "asked"])
def test_the_size_asked_for_is_sure_and_the_other_is_not(told: str, asked: str, first: str) -> None:
    wish = asked.format("1.75 x .095 on a 5.25 clr")
    found = understand(
        text_message(f"{told} {wish}" if first == "told" else f"{wish} {told}", _TODAY)
    )
    sure = [r for r in found.requests if not any(d.field == "od" for d in r.doubts)]
    assert [r.od_mm for r in sure] == [Decimal("44.45")], written_down(found.requests)
    (wanted,) = sure
    assert wanted.wall_mm == Decimal("2.413")  # .095 in
    assert wanted.clr_mm == Decimal("133.35")  # 5.25 in


@pytest.mark.parametrize(
    "text",
    [
        row(
            "dies-ordered",
            "We ordered the dies for {A} already and just need mandrels for it and for {B}.",
        ),
        row(
            "by-mistake",
            "PO for {A} was sent yesterday by mistake without a price, please quote it again. Also quote {B}.",
        ),
        row(
            "went-bust",
            "The order for {A} was placed with somebody who went bust. Need that one and {B}.",
        ),
        row(
            "tube-on-order",
            "Tube {A} is on order, mandrel needed. Tube {B} is in stock, mandrel needed.",
        ),
        row(
            "a-second",
            "PO for {A} went out yesterday. Please quote {B}. And a second of the {A} please.",
        ),
        row(
            "price-both-now", "Later on we will probably want {B} too, so price both now: {A}, {B}."
        ),
        row(
            "rohr-bestellt",
            "Wir haben gestern Rohr {A} bestellt und brauchen dafür einen Dorn. Und einen für {B}.",
        ),
        row("welded-after", "{A} is welded after bending. {B} stays plain. A mandrel for each."),
        row(
            "broke-and-worn",
            "The tool for {A} broke, replace it. And the {B} one is worn, replace that as well.",
        ),
    ],
)
def test_of_two_that_are_wanted_none_is_lost(text: str) -> None:
    requests = read_text(text.format(A="1.5 x .065 on 4.5 clr", B="1.75 x .095 on 5.25 clr"))
    assert {r.od_mm for r in requests} == {Decimal("38.1"), Decimal("44.45")}, written_down(
        requests
    )


@pytest.mark.parametrize(
    ("text", "od"),
    [
        row(
            "schuifmaat",
            "Wij zeggen hier 51 x 1,5 tegen maar met de schuifmaat is het gewoon 50,8, dus maak hem voor 50,8. RVS, straal 76. Graag 1 doorn.",
            "50.8",
        ),
        row(
            "caliper",
            "We call it 51 x 1.5 but the caliper says 50.8, so make it for 50.8. 316L, CLR 76. One mandrel.",
            "50.8",
        ),
        row(
            "sold-as",
            "It's sold as 38 x 1.5 but measures 38.1, 304, R 57. One mandrel please.",
            "38.1",
        ),
        row(
            "gemessen",
            "Wir sagen 42 x 2 dazu, aber gemessen sind es 42,4. R 100, 1.4301. Ein Dorn bitte.",
            "42.4",
        ),
        row(
            "pied-a-coulisse",
            "On dit 42 x 2 mais au pied à coulisse c'est 42,4. Rayon 100, inox 304. Un mandrin svp.",
            "42.4",
        ),
    ],
)
def test_a_trade_name_gives_way_to_what_was_measured(text: str, od: str) -> None:
    (request,) = read_text(text)
    assert request.od_mm == Decimal(od)
    assert not any(doubt.field == "od" for doubt in request.doubts)


@pytest.mark.parametrize(
    ("text", "material"),
    [
        row(
            "mine-aluminium",
            "Mandrel for 2 x .065 on 4 clr. His was for stainless, mine's aluminium 6063.",
            "aluminium",
        ),
        row(
            "dieser-alu",
            "Ein Dorn 40 x 1,5 R 80. Der alte war für Edelstahl, dieser ist für Alu.",
            "aluminium",
        ),
        row(
            "mine-the-same",
            "Mandrel for 2 x .065 on 4 clr: his was stainless, mine is the same.",
            "stainless_steel",
        ),
        row(
            "this-one-too",
            "Mandrel for 2 x .065 on 4 clr. The first one was 304, this one too.",
            "stainless_steel",
        ),
    ],
)
def test_anothers_material(text: str, material: str) -> None:
    (request,) = read_text(text)
    assert request.material is not None
    assert request.material.value == material


def test_the_subject_may_name_the_die_alone() -> None:
    body = "Please quote one mandrel, 1-5/8 x .095 CDS, 5 inch CLR die."
    message, own = whole(body, "one for the 5 inch die")
    (request,) = read(own, message).requests
    assert not any(doubt.field == "od" for doubt in request.doubts)
