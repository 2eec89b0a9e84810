"""Replies above our quoted reply: bare answers by number, in order or to the only question, one
thing changed; and what our own reply worked out, which is no figure of the customer's."""

# ruff: noqa: E501 - a row of a table stands on one line

from __future__ import annotations

import pytest

from bendreply.intake.message import parse_message
from bendreply.intake.model import Kind
from bendreply.intake.pipeline import understand
from bendreply.rules.request import SizeRequest

from .support import read_text

ASKED = {
    "od": "What is the tube's OD?",
    "wall": "What is the tube's wall?",
    "clr": "What is the centerline radius (CLR) of the bend?",
    "material": "What is the tube material?",
    "quantity": "How many mandrels do you need?",
}
WORDS = {"od": "1.75 in (44.45 mm) OD", "wall": "0.095 in (2.413 mm) wall", "clr": "5.25 in (133.35 mm) CLR"}  # fmt: skip
GAPS = {"od": "OD not given", "wall": "wall not given", "clr": "CLR not given"}


def _quoted(*asked: str) -> str:
    """Our reply, as it is quoted: what was read, what follows from it, what is asked."""
    od, wall, clr = (GAPS[f] if f in asked else WORDS[f] for f in ("od", "wall", "clr"))
    told = f"{od} x {wall}, {clr}" + ("" if "material" in asked else ", 304 stainless steel")
    ratios = [] if {"od", "wall"} & set(asked) else ["Wall factor 18.4, our limit 30"]
    ratios += [] if {"od", "clr"} & set(asked) else ["bend 3.0 D, our limit 2.5 D"]
    questions = "\n".join(f"> {n}. {ASKED[field]}" for n, field in enumerate(asked, 1))
    return (
        "On Fri, Oct 9, 2026 at 2:14 PM Mandrels <shop@example.org> wrote:\n> Hello Jo,\n>\n"
        f"> We read your request as:\n> {told}\n> {'; '.join(ratios).capitalize()}.\n>\n"
        "> It would be about 1.483 to 1.491 in (37.67 to 37.87 mm) diameter, 0 to 1 balls.\n>\n"
        f"> Please answer (a word or a figure is enough):\n{questions}\n>\n> Robin\n"
    )


def _read(new: str, quoted: str) -> tuple[Kind, tuple[SizeRequest, ...]]:
    head = (
        "From: Jo Smith <jo@example.com>\nSubject: Re: mandrel\nDate: Mon, 12 Oct 2026 10:00:00 "
        "+0000\nContent-Type: text/plain; charset=utf-8\nContent-Transfer-Encoding: 8bit\n\n"
    )
    found = understand(parse_message((head + new + "\n\n" + quoted).encode()))
    return found.kind, found.requests


@pytest.mark.parametrize(
    ("asked", "new"),
    [
        (("wall",), ".095"),
        (("wall",), "its .095"),
        (("wall",), "Hi,\n\n.095 inch\n\nJo"),
        (("wall",), "1. .095"),
        (("clr",), "5.25"),
        (("clr",), "5.25 in\n\nJo Smith\nTube Lab\n214 W 4th St\n555-0142"),
        (("od",), '1.75"'),
        (("material",), "304"),
        (("material",), "its 304 stainless"),
        (("material",), "1) Material is 304"),
        (("wall", "clr"), "1. .095\n2. 5.25"),
        (("wall", "clr"), ".095\n5.25\n\nJo"),
        (("od", "clr"), "1.75, 5.25"),
        (("wall", "clr", "material"), ".095, 5.25, 304\n\nJo Smith\nTube Lab\n214 W 4th St\n555-0142"),
        (("wall", "material"), "1) .095\n2) 304 stainless"),
        (("wall", "material"), "2) 304 stainless\n1) .095 wall"),
        (("od", "material"), "1) 1.75 OD\n2) its 304"),
        (("od", "wall"), "1. 1.75\n2. .095"),
        (("wall", "clr"), "wall is .095 and the radius is 5.25"),
    ],
)  # fmt: skip
def test_bare_answers_complete_the_quoted_size(asked: tuple[str, ...], new: str) -> None:
    kind, requests = _read(new, _quoted(*asked))
    assert kind is Kind.SIZES
    (size,) = requests
    assert [float(mm or 0) for mm in (size.od_mm, size.wall_mm, size.clr_mm)] == [
        44.45,
        2.413,
        133.35,
    ]
    assert size.material is not None
    assert size.material.value == "stainless_steel"
    assert not size.doubts


@pytest.mark.parametrize(
    ("new", "count"),
    [
        ("2", 2),
        ("two", 2),
        ("just 2", 2),
        ("2 please", 2),
        ("zwei Stück", 2),
        ("Il nous en faut 3.", 3),
        ("three mandrels", 3),
    ],
)
def test_a_bare_count_answers(new: str, count: int) -> None:
    (size,) = _read(new, _quoted("quantity"))[1]
    assert size.quantity == count


@pytest.mark.parametrize(
    "new",
    [
        "Give me 2 days, I have to ask.",
        "Will call you at 3 pm.",
        "We have .095 and .120 on the rack, not sure.",
        "No idea, the print from 2019 does not say.",
    ],
)
def test_other_figures_answer_nothing(new: str) -> None:
    assert all(
        size.wall_mm is None or size.doubt_on("wall") for size in _read(new, _quoted("wall"))[1]
    )


def test_an_item_of_a_list_asks_without_a_question_mark() -> None:
    quoted = (
        "On Fri, Oct 9, 2026, Mandrels wrote:\n> Hi Jo,\n>\n> you asked for 1.75 x .095, 5.25 CLR. "
        "We still need to know:\n>\n> - the tube material\n>\n> Sales\n"
    )
    (size,) = _read("We run 4130.", quoted)[1]
    assert size.material is not None
    assert size.material.value == "alloy_steel"


@pytest.mark.parametrize(
    ("text", "wall", "clr"),
    [
        ("Mandrin pour tube Ø 50 mm. L'épaisseur est de 2 mm, 120 mm à la fibre neutre.", 2.0, 120.0),
        ("Mandrino per tubo Ø 50 mm, lo spessore è 2 mm, 120 mm alla fibra neutra.", 2.0, 120.0),
        ("Dorn für Rohr Ø 50 mm, Wand 2 mm, 120 mm zur neutralen Faser.", 2.0, 120.0),
        ("Mandrel for 2 in OD tube, .095 wall.\n\nJo Smith\n214 W 4th St", 2.413, None),
        ("Mandrel for 2 in OD tube, .095 wall.\n\nJo Smith\n120 W. Main Street", 2.413, None),
        ("Need a mandrel for .095 wall.\n  1. Which radius?\n  2. Which OD?\n  3. How soon?", 2.413, None),
    ],
)  # fmt: skip
def test_articles_streets_and_indented_items(text: str, wall: float, clr: float | None) -> None:
    (size,) = read_text(text)
    assert float(size.wall_mm or 0) == wall
    assert (None if size.clr_mm is None else float(size.clr_mm)) == clr
    assert size.doubt_on("wall") is None


OFFER = (
    "On Fri, Oct 9, 2026 at 2:14 PM Mandrels <shop@example.org> wrote:\n> Hi Jo,\n>\n"
    "> we can make a mandrel for 1.75 x .095, 5.25 CLR, DOM.\n> Price $640.00 each, 3 weeks.\n"
)


@pytest.mark.parametrize(
    ("new", "material", "count"),
    [
        ("Change material to 304 stainless", "stainless_steel", None),
        ("make it 304 stainless instead", "stainless_steel", None),
        ("Sorry, it is 4130, not DOM.", "alloy_steel", None),
        ("Actually the tube is 4130.", "alloy_steel", None),
        ("Werkstoff ist Edelstahl 1.4301, nicht Stahl.", "stainless_steel", None),
        ("Finalement le tube est en inox 304.", "stainless_steel", None),
        ("El tubo es de inox 304, no de acero al carbono.", "stainless_steel", None),
        ("Il tubo è in inox 304, non in acciaio.", "stainless_steel", None),
        ("De buis is van rvs 304, niet van staal.", "stainless_steel", None),
        ("We will take 2.", "carbon_steel", 2),
        ("make that two", "carbon_steel", 2),
        ("OK for 2.", "carbon_steel", 2),
        ("Bitte 2 Stück statt einem.", "carbon_steel", 2),
        ("Finalement il nous en faut deux.", "carbon_steel", 2),
        ("Mejor que sean 2.", "carbon_steel", 2),
        ("Ne prendiamo 2.", "carbon_steel", 2),
        ("Graag 2 stuks in plaats van één.", "carbon_steel", 2),
    ],
)
def test_one_thing_of_the_quoted_size_is_changed(
    new: str, material: str, count: int | None
) -> None:
    kind, (size,) = _read(new, OFFER)
    assert kind is Kind.SIZES
    assert [float(mm or 0) for mm in (size.od_mm, size.wall_mm, size.clr_mm)] == [
        44.45,
        2.413,
        133.35,
    ]
    assert size.material is not None
    assert size.material.value == material
    assert size.quantity == count
    assert not size.doubts


@pytest.mark.parametrize(
    "new",
    [
        "The 2 mandrels arrived, one is cracked.",
        "Please send the invoice for the 2 mandrels.",
        "We have 2 in stock, thanks.",
        "We got 2 other quotes.",
        "Our 304 stainless customer cancelled, sorry.",
        "Thanks, not what we need, stainless is too expensive.",
    ],
)
def test_what_changes_nothing_asks_for_nothing(new: str) -> None:
    kind, requests = _read(new, OFFER)
    assert kind is not Kind.SIZES
    assert not requests


@pytest.mark.parametrize(
    "text",
    [
        "Mandrel for 38 mm tube.\nWhat's the wall, and the centreline radius?\n2 wall\nradius 100",
        "Dorn für Rohr 38 mm.\nWelche Wand, welcher Biegeradius?\n2 mm Wand\nRadius 100",
        "Mandrin pour tube de 38 mm.\nQuelle épaisseur, quel rayon ?\n2 mm d'épaisseur\nrayon 100",
    ],
)
def test_a_figure_that_its_line_names_answers_by_that_name(text: str) -> None:
    (size,) = read_text(text)
    assert (size.od_mm, size.wall_mm, size.clr_mm) == (38, 2, 100)
    assert not size.doubts
