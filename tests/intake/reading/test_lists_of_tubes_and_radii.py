"""Lists of tubes with lists of radii, in the forms that each language has, put together at random.

One, two or three ODs, radii and one wall, in every order of words that the tables below allow.
Sizes are read as they were put in, or something is doubted; none is lost or made up in silence.
Lists of one length may be paired or crossed. Values are those put in; an inch is 25.4 mm.
"""

from __future__ import annotations

import itertools
import random
from collections.abc import Iterator
from dataclasses import dataclass
from decimal import Decimal

import pytest

from .support import read_text

IN_MM = Decimal("25.4")
DRAWN = 250
Size = tuple[Decimal | None, Decimal | None, Decimal | None]


@dataclass(frozen=True)
class Forms:
    """How a language asks, and writes its tubes, what leads over to radii, radii and walls."""

    ask: tuple[str, ...]
    last: str
    tubes: tuple[str, ...]
    leads: tuple[str, ...]
    radii: tuple[str, ...]
    walls: tuple[str, ...]
    ods: tuple[str, str, str] = ("25", "30", "35")
    clrs: tuple[str, str, str] = ("60", "75", "90")
    wall: str = "1.5"
    unit: Decimal = Decimal(1)


FORMS = {
    "en": Forms(
        ("Mandrels for {}.", "Need a price on mandrels: {}", "Interested in mandrels for {}."),
        "and",
        ("{} OD", '{}" OD', "{}", '{}" tube', "OD {}", "{} tubing"),
        (" on {}", " with {}", ", {}", " at {}"),
        ("{} CLR", '{}" CLR', "{} inch CLR", "CLR {}", "{} radius", "a {} inch radius"),
        (", .095 wall", ", all .095 wall", ". Wall is .095", ". All .095", " x .095"),
        ("1.25", "1.5", "1.75"),
        ("4", "5", "6"),
        "0.095",
        IN_MM,
    ),
    "de": Forms(
        ("Dorne für {}.", "Bitte Angebot für Dorne: {}"),
        "und",
        ("{} mm Rohr", "Rohr {}", "{} AD", "Ø {}", "{}er Rohr"),
        (" auf {}", " mit {}", ", {}", " bei {}"),
        ("Radius {}", "{} Radius", "R {}", "{} mm Radius", "Biegeradius {} mm"),
        (", Wand 1,5", ", alle 1,5 Wand", ". Wandstärke 1,5", " x 1,5"),
    ),
    "fr": Forms(
        ("Mandrins pour {}.",),
        "et",
        ("tube {}", "tubes Ø {}", "{} mm extérieur", "{} Øext"),
        (" avec {}", ", {}"),
        ("rayon {}", "{} de rayon", "R {}", "rayon de {} mm"),
        (", épaisseur 1,5", ", tous en 1,5", " x 1,5"),
    ),
    "es": Forms(
        ("Mandriles para {}.",),
        "y",
        ("tubo de {}", "tubos Ø {}", "{} mm exterior"),
        (" con {}", " a {}", ", {}"),
        ("radio {}", "radio de {} mm", "R {}", "{} de radio"),
        (", espesor 1,5", ", pared 1,5", " x 1,5"),
    ),
    "it": Forms(
        ("Mandrini per {}.",),
        "e",
        ("tubo {}", "tubi Ø {}", "{} mm esterno"),
        (" su {}", " con {}", ", {}"),
        ("raggio {}", "raggio di {} mm", "R {}", "{} di raggio"),
        (", spessore 1,5", ", sp. 1,5", " x 1,5"),
    ),
    "nl": Forms(
        ("Doorns voor {}.",),
        "en",
        ("buis {}", "buizen Ø {}", "{} mm buiten"),
        (" op {}", " met {}", ", {}"),
        ("radius {}", "straal {} mm", "R {}", "{} radius"),
        (", wand 1,5", ", wanddikte 1,5", " x 1,5"),
    ),
}
COUNTS = ((3, 3), (2, 2), (1, 3), (3, 1), (1, 2), (2, 1))


def _listed(values: tuple[str, ...], last: str) -> str:
    return f"{', '.join(values[:-1])} {last} {values[-1]}" if len(values) > 1 else values[0]


def _drawn(forms: Forms) -> Iterator[tuple[str, list[list[Size]]]]:
    parts = (forms.ask, forms.tubes, forms.leads, forms.radii, forms.walls, COUNTS)
    every = list(itertools.product(*parts))
    for ask, tube, lead, radius, wall, (tubes, radii) in random.Random(20261126).sample(
        every, min(DRAWN, len(every))
    ):
        ods, clrs = forms.ods[:tubes], forms.clrs[:radii]
        named = tube.format(_listed(ods, forms.last))
        bends = lead.format(radius.format(_listed(clrs, forms.last)))
        behind = wall.startswith(" x")
        text = ask.format(f"{named}{wall}{bends}" if behind else f"{named}{bends}{wall}")
        crossed = list(itertools.product(ods, clrs))
        meant = [crossed, list(zip(ods, clrs, strict=True))] if tubes == radii > 1 else [crossed]
        yield text, [[_size(forms, od, clr) for od, clr in pairs] for pairs in meant]


def _size(forms: Forms, od: str, clr: str) -> Size:
    return tuple(Decimal(value) * forms.unit for value in (od, forms.wall, clr))  # type: ignore[return-value]


@pytest.mark.parametrize("language", FORMS)
def test_no_size_of_a_list_is_lost_or_made_up_in_silence(language: str) -> None:
    wrong = []
    for text, meant in _drawn(FORMS[language]):
        requests = read_text(text)
        got: list[Size] = [(one.od_mm, one.wall_mm, one.clr_mm) for one in requests]
        incomplete = not got or any(None in size for size in got)
        if got not in meant and not incomplete and not any(one.doubts for one in requests):
            wrong.append((text, got))
    assert not wrong


@pytest.mark.parametrize(
    ("text", "ods"),
    [
        ("Mandrels: 2, 3 and 4 OD, .065 wall, 6 CLR", ["2", "3", "4"]),
        ("Mandrels: 2 and 3 OD, .065 wall, 6 CLR", ["2", "3"]),
        ("Mandrels: 2, 3 OD x .065, 6 CLR", ["3"]),
        ("Mandrels qty 2, 1.75 OD x .065 wall, 6 CLR", ["1.75"]),
    ],
)
def test_a_whole_number_behind_mandrels_begins_a_list_or_counts(text: str, ods: list[str]) -> None:
    assert [size.od_mm for size in read_text(text)] == [Decimal(od) * IN_MM for od in ods]


def test_a_french_tube_on_radii_whose_word_comes_last() -> None:
    sizes = read_text("Mandrins pour tube 25 sur 60 et 75 de rayon, épaisseur 1,5.")
    assert [size.clr_mm for size in sizes] == [Decimal(60), Decimal(75)]
