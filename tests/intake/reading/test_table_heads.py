"""Tables with plain heads: every head in every layout is read alike, empty cells or none.

One table of three sizes, written with a head, a unit, an order of columns and a layout drawn at
random; what is read must be what its cells say, without a doubt.
"""

# ruff: noqa: E501 - a row of a table stands on one line

from __future__ import annotations

from collections.abc import Callable
from decimal import Decimal

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from bendreply.intake.html_text import html_to_text

from .support import read_text

HEADS: dict[str, dict[str, str]] = {
    "en": {
        "od": "OD|OD mm|OD (mm)|O.D. [mm]|Tube OD|Ø mm|Outside dia. (mm)|Outside diameter|Tube Ø|O/D"
        "|Tube O.D. in mm|Dia. mm|OD/mm",
        "wall": "Wall|Wall mm|Wall (mm)|W.T.|Wall thk|WT (mm)|Thickness|Wall in mm|Thk.|Tube wall",
        "clr": "CLR|CLR mm|Radius|Bend radius (mm)|R|C/L radius|Centreline R|Rad|C.L.R.|R (mm)",
        "count": "Qty|No. off|Pcs|Off|Quantity|No. req'd|Mandrels|Qty (pcs)|EA|No. required|Nos",
        "item": "Item|Pos|#|Line|Ref|No.|Sr. No.|S/N|Item no.||Line no.",
        "price": "Your price|Unit price|Price each|Remarks|Delivery|Total|€|Price (EUR)|Net price|EUR",
    },
    "de": {
        "od": "Außen-Ø|Außendurchmesser|AD (mm)|Rohr-Ø|Ø außen|Ø [mm]|D (mm)|da mm",
        "wall": "Wand|Wandstärke|Wand mm|Wanddicke [mm]|s (mm)|WS|Wandst.",
        "clr": "Radius|Biegeradius|R mm|Radius mittig|mittl. Radius|Rm",
        "count": "Stück|Stk|Menge|Anzahl|Bedarf|Anzahl Dorne|St.|Stückzahl",
        "item": "Pos.|Nr.|Position|Lfd. Nr.|",
        "price": "Preis|Ihr Preis|Einzelpreis|Bemerkung|Lieferzeit|Preis/Stk.|EUR",
    },
    "fr": {
        "od": "Ø ext.|Diamètre extérieur|Diam. ext.|Ø tube|D ext|D. ext. (mm)",
        "wall": "Ép.|Épaisseur|Epaisseur mm|Paroi|ep",
        "clr": "Rayon|Rayon de cintrage|R (mm)|Rayon axe|Rc",
        "count": "Qté|Quantité|Nbre|Nombre|Pièces|Qte",
        "item": "Poste|Repère|N°|Rep.|",
        "price": "Prix|Votre prix|P.U.|Délai|Remarques|Prix HT",
    },
    "es": {
        "od": "Diámetro exterior|Ø ext.|Ø|Ø exterior (mm)|Diám. ext. mm|D.E.",
        "wall": "Espesor|Pared|Esp.|Espesor (mm)",
        "clr": "Radio|Radio de curvado|Radio (mm)|R|Radio al eje",
        "count": "Cant.|Cantidad|Uds.|Unidades|Piezas",
        "item": "Ítem|Pos.|Línea|Partida|",
        "price": "Precio|Su precio|Precio unitario|Plazo|Observaciones|Importe",
    },
    "it": {
        "od": "Diametro esterno|Ø est.|Diametro|Ø esterno (mm)|D.E.|D. est.",
        "wall": "Spessore|Sp.|Spess.|Spessore (mm)|Parete",
        "clr": "Raggio|Raggio di curvatura|R|Raggio asse|RC",
        "count": "Q.tà|Quantità|Pz.|Pezzi|N. pezzi|Qtà",
        "item": "Pos.|Voce|Riga|N.|",
        "price": "Prezzo|Vs. prezzo|Prezzo unitario|Consegna|Note|Importo",
    },
    "nl": {
        "od": "Buitendiameter|Ø uitw.|Diameter|Buis Ø|Uitw. dia.",
        "wall": "Wanddikte|Wand|Wand (mm)|Dikte",
        "clr": "Radius|Straal|Buigradius|Hartradius|Buigstraal",
        "count": "Aantal|St.|Stuks|Aantal doornen|Aantal st.",
        "item": "Pos.|Regel|Nr.|Positie|",
        "price": "Prijs|Uw prijs|Stuksprijs|Levertijd|Opmerking|Prijs p/st",
    },
}
ROWS = [
    {"od": "38", "wall": "1.5", "clr": "76", "count": "1"},
    {"od": "42.4", "wall": "2.0", "clr": "85", "count": "1"},
    {"od": "60.3", "wall": "2.0", "clr": "150", "count": "2"},
]
WANTED = [tuple(Decimal(row[name]) for name in ("od", "wall", "clr", "count")) for row in ROWS]
ORDERS = [
    ["item", "od", "wall", "clr", "count", "price"],
    ["item", "count", "od", "wall", "clr", "price"],
    ["od", "wall", "clr", "count", "price"],
    ["od", "wall", "clr", "count"],
    ["item", "clr", "od", "wall", "count", "price"],
    ["price", "od", "wall", "clr", "count"],
]
"""Orders of the columns; that of the price is empty in every row."""
Grid = list[list[str]]


def _html(grid: Grid, head: str) -> str:
    tags = [head] + ["td"] * (len(grid) - 1)
    rows = "".join(
        "<tr>" + "".join(f"<{tag}>{cell}</{tag}>" for cell in row) + "</tr>"
        for tag, row in zip(tags, grid, strict=True)
    )
    return html_to_text(f"<html><body><table>{rows}</table></body></html>")


def _wide(grid: Grid) -> str:
    widths = [max(map(len, column)) + 2 for column in zip(*grid, strict=True)]
    return "\n".join(
        "".join(cell.ljust(width) for cell, width in zip(row, widths, strict=True)).rstrip()
        for row in grid
    )


def _ruled(grid: Grid) -> str:
    lines = ["| " + " | ".join(row) + " |" for row in grid]
    return "\n".join([lines[0], "|" + "---|" * len(grid[0]), *lines[1:]])


LAYOUTS: dict[str, Callable[[Grid], str]] = {
    "html": lambda grid: _html(grid, "th"),
    "html, head not marked": lambda grid: _html(grid, "td"),
    "tabs": lambda grid: "\n".join("\t".join(row) for row in grid),
    "tabs, cut at the end": lambda grid: "\n".join("\t".join(row).rstrip("\t") for row in grid),
    "bars around": lambda grid: "\n".join("| " + " | ".join(row) + " |" for row in grid),
    "bars between": lambda grid: "\n".join(" | ".join(row) for row in grid),
    "wide blanks": _wide,
    "commas": lambda grid: "\n".join(",".join(row) for row in grid),
    "semicolons": lambda grid: "\n".join(";".join(row) for row in grid),
    "ruled": _ruled,
}


def _grid(heads: dict[str, str], order: list[str]) -> Grid:
    rows = [
        [{"item": str(number), "price": "", **row}[name] for name in order]
        for number, row in enumerate(ROWS, 1)
    ]
    return [[heads[name] for name in order], *rows]


def _read(text: str) -> tuple[list[tuple[Decimal | int | None, ...]], set[str]]:
    requests = read_text(f"Please quote the mandrels listed:\n\n{text}\n\nRegards")
    got = [(r.od_mm, r.wall_mm, r.clr_mm, r.quantity) for r in requests]
    return got, {doubt.field for request in requests for doubt in request.doubts}


@pytest.mark.parametrize(
    ("language", "layout"),
    [
        *(("en", layout) for layout in LAYOUTS),
        *((language, "html") for language in HEADS if language != "en"),
        *((language, "bars between") for language in HEADS if language != "en"),
    ],
)
def test_every_head(language: str, layout: str) -> None:
    """Each head in turn, with the first of each other column."""
    choices = {name: heads.split("|") for name, heads in HEADS[language].items()}
    first = {name: heads[0] for name, heads in choices.items()}
    tables = [
        LAYOUTS[layout](_grid({**first, name: head}, ORDERS[0]))
        for name, heads in choices.items()
        for head in heads
        if head or layout not in ("commas", "wide blanks", "semicolons")
    ]
    assert [text for text in tables if _read(text) != (WANTED, set())] == []


@given(data=st.data())
@settings(max_examples=100, deadline=None)
def test_any_heads_together(data: st.DataObject) -> None:
    """Heads, order and layout drawn at random."""
    language = data.draw(st.sampled_from(sorted(HEADS)))
    heads = {
        name: data.draw(st.sampled_from([head for head in words.split("|") if head]))
        for name, words in HEADS[language].items()
    }
    layout = data.draw(st.sampled_from(sorted(LAYOUTS)))
    text = LAYOUTS[layout](_grid(heads, data.draw(st.sampled_from(ORDERS))))
    assert _read(text) == (WANTED, set()), text


@pytest.mark.parametrize(
    ("text", "sizes"),
    [
        ("OD\tWall\tCLR\tPrice\n38\t\t76\n42.4\t2\t85", [("38", None, "76"), ("42.4", "2", "85")]),
        ("Name\tOD\tWall\tCLR\n\t38\t1.5\t76\nhoop\t42.4\t2\t85", [("38", "1.5", "76"), ("42.4", "2", "85")]),
        ("Pos;Ref;OD;Wall;CLR;Qty;Price\n;;38;1.5;76;2;\n2;;42.4;2;85", [("38", "1.5", "76"), ("42.4", "2", "85")]),
        ("OD in\tWall in\tCLR in\tNotes\n1.5\t.065\t3", [("38.1", "1.651", "76.2")]),
        ("OD;Wall;CLR;Notes\n1.5;.065;3;", [("38.1", "1.651", "76.2")]),
    ],
)  # fmt: skip
def test_empty_cells(text: str, sizes: list[tuple[str | None, ...]]) -> None:
    """What a cell leaves out is unknown; the others keep their columns."""
    wanted = [tuple(value and Decimal(value) for value in size) for size in sizes]
    assert [size[:3] for size in _read(text)[0]] == wanted
