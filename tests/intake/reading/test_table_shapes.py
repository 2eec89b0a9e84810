"""Tables and forms as they are laid out: rules, empty cells, labels, sections, notes on lines.

Each case is a mail with the sizes that it asks for, worked out by hand: OD, wall and centreline
radius in mm, and the number of mandrels. Nothing of them may be in doubt.
"""

# ruff: noqa: E501 - a mail stands on one line

from __future__ import annotations

from decimal import Decimal

import pytest

from bendreply.rules.request import Material

from .support import read_text

Size = tuple[str | None, str | None, str | None, int | None]
PLAIN: list[tuple[str, list[Size]]] = [
    # Blanks, rules and fillers between cells are no cells.
    (
        'No., Balls, W.T., Tube O.D.\n1, 3, "0.083""", "2"""\n2, 2, "0.083""", "1.625"""',
        [("50.8", "2.1082", None, None), ("41.275", "2.1082", None, None)],
    ),
    (
        "| DA   | s   | Radius | Stück |\n|------|-----|--------|-------|\n| 16   | —   | 50     | 1     |\n| 42,4 | 2,6 | 85     | 2     |",
        [("16", None, "50", 1), ("42.4", "2.6", "85", 2)],
    ),
    (
        "#    OD     Wall   CLR\n-    ----   ----   ----\n1    38     1.5    76\n2    50     2      150",
        [("38", "1.5", "76", None), ("50", "2", "150", None)],
    ),
    (
        "+----+------+-----+\n| OD | Wall | CLR |\n+====+======+=====+\n| 38 | 1.5  | 76  |\n+----+------+-----+\n| 50 | 2    | 150 |\n+----+------+-----+",
        [("38", "1.5", "76", None), ("50", "2", "150", None)],
    ),
    (
        "┌────┬──────┬─────┐\n│ OD │ Wall │ CLR │\n├────┼──────┼─────┤\n│ 38 │ 1.5  │ 76  │\n│ 50 │ 2    │ 150 │\n└────┴──────┴─────┘",
        [("38", "1.5", "76", None), ("50", "2", "150", None)],
    ),
    (
        "OD    Wall   Tol      Qty\n38    1.5    ±0.1     2\n50    2      +/-0.15  1",
        [("38", "1.5", None, 2), ("50", "2", None, 1)],
    ),
    # Heads of pipe, of lines, of parts.
    (
        "Item no.   Pipe size (NPS)   SCH      Quantity\nA          1-1/2             sch 40   1\nD          3                 sch 40   2",
        [("48.26", "3.6830", None, 1), ("88.9", "5.4864", None, 2)],
    ),
    (
        "Item #, NPS, C/L Radius, SCHED., Mandrel qty\n1, 1/2, 3, sch 40, 2\n2, 1/2, -, sch 80, 2",
        [("21.336", "2.7686", "76.2", 2), ("21.336", "3.7338", None, 2)],
    ),
    ("ID no.\tOD\tThk\n1\t38\t1.5\n2\t50\t2", [("38", "1.5", None, None), ("50", "2", None, None)]),
    (
        "Cantidad piezas\tDiám. ext.\tEspesor\tCant. mandriles\n500\t38\t1,5\t1\n40\t50\t2\t2",
        [("38", "1.5", None, 1), ("50", "2", None, 2)],
    ),
    (
        "Außendurchm.;Stärke;Biegeradius;Dornanzahl\n38;1,5;76;2\n50;2;150;1",
        [("38", "1.5", "76", 2), ("50", "2", "150", 1)],
    ),
    # Labels at the left: what stands below a figure counts nothing with it.
    (
        "Ø est.\t44,5\t33,7\nsp\t2,0\t-\nR\t110\t84\nPezzi\t1\t2",
        [("44.5", "2", "110", 1), ("33.7", None, "84", 2)],
    ),
    (
        "Espesor\t1,5\t1\nØ\t15\t12\nMáquina\tball\tball\nUds.\t1\t2",
        [("15", "1.5", None, 1), ("12", "1", None, 2)],
    ),
    # Forms: each label says what stands behind it.
    ("Ø ext. = 88,9\ne = 3,2\nR = 267\nCant. mandriles = 2", [("88.9", "3.2", "267", 2)]),
    ("OD [mm]: 16\nThickness, mm: 1.5\nRadius [mm]: 30\nQty mandrels: 2", [("16", "1.5", "30", 2)]),
    ("D ext:\t42,4 mm\ne:\t2 mm\nRayon axe:\t85 mm", [("42.4", "2", "85", None)]),
    ('OD:1.125"\nWall:.065"\nQty:2\nComments:none', [("28.575", "1.651", None, 2)]),
    (
        'OD: 1.125"\nMandrel quantity: TBD\nNumber of balls: 2\nWall: .065"',
        [("28.575", "1.651", None, None)],
    ),
    (
        'OD: 1.5"\nWall: .065"\nBend radius: 3 inch\nMachine make: BB 2',
        [("38.1", "1.651", "76.2", None)],
    ),
    (
        "OD: 38\nWall: 2\nTube length: 600\n\nOD: 50\nWall: 2\nTube length: 72",
        [("38", "2", None, None), ("50", "2", None, None)],
    ),
    (
        'R 3"  Dia 1"  WT 18ga  # MANDRELS 3  Part TB-41\nR 4.5"  Dia 1.5"  WT 16ga  # MANDRELS 2  Part HR-7',
        [("25.4", "1.2446", "76.2", 3), ("38.1", "1.651", "114.3", 2)],
    ),
    (
        "OD 1.75, WT .095, OD/t 18.4, CLR 2.625, QTY 1\nOD 0.875, WT .083, OD/t 10.5, CLR 1.75, QTY 3",
        [("44.45", "2.413", "66.675", 1), ("22.225", "2.1082", "44.45", 3)],
    ),
    (
        "OD=1-5/8 / Wall=0.065 / Qty req'd=1\nOD=1/2 / Wall=0.035 / Qty req'd=2",
        [("41.275", "1.651", None, 1), ("12.7", "0.889", None, 2)],
    ),
    # A dash that begins a line begins an item, also below an inch mark.
    (
        '- 1" sch 10 pipe, CLR 4"\n- 1/2" sch 80 pipe, CLR 3"',
        [("33.401", "2.7686", "101.6", None), ("21.336", "3.7338", "76.2", None)],
    ),
    (
        "a) 3 x Ø 51 x 1.5, R75\nb) 1 x Ø 18 x 1.5, R35",
        [("51", "1.5", "75", None), ("18", "1.5", "35", None)],
    ),
    # Empty cells stay empty, and are no word on the line.
    (
        "OD\tCLR\tWall\n38\tn/a\t1.5\n50\t150\t2\n\nQty 1 each",
        [("38", "1.5", None, 1), ("50", "2", "150", 1)],
    ),
    (
        "OD\tWall\tCLR\n38\t1.5\t76\n50\tas above\t150",
        [("38", "1.5", "76", None), ("50", "1.5", "150", None)],
    ),
    # How many of each, and which line is left out.
    (
        "All lines qty 2.\nOD 38, wall 1.5\nOD 50, wall 2",
        [("38", "1.5", None, 2), ("50", "2", None, 2)],
    ),
    (
        "Alle Positionen: je 2 Stück\n\nAD\tWand\n38\t1,5\n50\t2",
        [("38", "1.5", None, 2), ("50", "2", None, 2)],
    ),
    (
        "CLR for all 76 mm.\n\nItem\tOD\tWall\n1\t38\t1.5\n2\t40\t1.5\n3\t50\t2\n\nWe already have line 2.",
        [("38", "1.5", "76", None), ("50", "2", "76", None)],
    ),
    (
        "| Pos | Durchmesser | s | Stück |\n| 1 | 42,4 | 2 | 2 |\n| 2 | 12 | 1 | 2 |\n| 3 | 33,7 | 2 | 1 |\n\nPos. 2 kann noch warten.",
        [("42.4", "2", None, 2), ("33.7", "2", None, 1)],
    ),
    (
        "Item\tOD\tWall\tIn stock?\n1\t38\t1.5\tno\n2\t40\t1.5\tyes\n3\t50\t2\tno",
        [("38", "1.5", None, None), ("50", "2", None, None)],
    ),
]


@pytest.mark.parametrize(("words", "sizes"), PLAIN)
def test_it_is_read_as_laid_out(words: str, sizes: list[Size]) -> None:
    requests = read_text(f"Please quote mandrels for these tubes.\n\n{words}\n\nThanks\n")
    assert [(r.od_mm, r.wall_mm, r.clr_mm, r.quantity) for r in requests] == [
        (*(None if one is None else Decimal(one) for one in size[:3]), size[3]) for size in sizes
    ]
    assert not [doubt for request in requests for doubt in request.doubts]


STEEL, STAINLESS = Material.CARBON_STEEL, Material.STAINLESS_STEEL
ALUMINIUM, COPPER, BRASS = Material.ALUMINIUM, Material.COPPER, Material.BRASS
MATERIALS: list[tuple[str, list[Material | None]]] = [
    ("Part\tOD\tWall\nA96251\t38\t1.5\nTB-21\t50\t2\n\nTube material is steel.", [STEEL, STEEL]),
    ("OD\tWall\tLega\tArticolo\n38\t1,5\talluminio\tTB-2\n50\t2\t-\tA97022", [ALUMINIUM, None]),
    ("OD\tWall\tRohrwerkstoff\n38\t1,5\tMessing\n50\t2\tVA", [BRASS, STAINLESS]),
    ("OD\tWall\tMaterial\n38\t1.5\tM/S\n50\t2\tst. steel", [STEEL, STAINLESS]),
    ("OD\tWall\n304L:\n38\t1.5\n--- copper ---\n50\t2", [STAINLESS, COPPER]),
    ("Werkstoff: St 37\nAD\tWand\n38\t1,5\n\nWerkstoff: Alu\nAD\tWand\n50\t2", [STEEL, ALUMINIUM]),
]


@pytest.mark.parametrize(("words", "materials"), MATERIALS)
def test_each_row_has_its_own_material(words: str, materials: list[Material | None]) -> None:
    requests = read_text(f"Please quote mandrels for these tubes.\n\n{words}\n\nThanks\n")
    assert [request.od_mm for request in requests] == [38, 50]
    assert [request.material for request in requests] == materials


@pytest.mark.parametrize(
    "words",
    [
        "solicitamos oferta de mandriles para los siguientes tubos:",
        "chiediamo offerta per i seguenti mandrini:",
        "merci de nous faire parvenir votre offre pour les mandrins suivants :",
    ],
)
def test_an_offer_asked_for_by_a_verb_alone(words: str) -> None:
    requests = read_text(f"{words}\n\nØ;e;R\n38;1,5;76\n50;2;150\n")
    assert [request.od_mm for request in requests] == [38, 50]


FORMS: list[tuple[str, int | None]] = [
    ("Cantidad -> 3\nRadio -> 76\nØ ext. -> 38\nGrosor -> 1,5", 3),
    ("Tube dia ...... 38\nWT ............ 1.5\nRadius to CL ... 76\nQty (mandrels) ... 4", 4),
    ("OD: 38\nWall: 1.5\nCLR: 76\nQty:2\nComments:", 2),
    ("OD: 38\nWall: 1.5\nCLR: 76\nQuantity: 500 parts per year", None),
    ("OD: 38\nWall: 1.5\nCLR: 76\nTube qty: 2", None),
    ("OD: 38\nWall: 1.5\nCLR: 76\nNumber of balls: 2", None),
]


@pytest.mark.parametrize(("form", "count"), FORMS)
def test_a_single_form_counts_mandrels(form: str, count: int | None) -> None:
    (request,) = read_text(f"Mandrel request, dimensions in mm.\n\n{form}\n")
    assert (request.od_mm, request.wall_mm, request.clr_mm) == (38, Decimal("1.5"), 76)
    assert request.quantity == count
