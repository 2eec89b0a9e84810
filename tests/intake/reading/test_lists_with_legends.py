"""Lists of sizes as shops type them: rows without a head and a legend beside them, labelled lists
for each length, and counts told by places; every message in words made for this table.
"""

from __future__ import annotations

from decimal import Decimal

import pytest

from .support import read_text

Size = tuple[str, str, str]
METRIC: list[Size] = [("14", "1.5", "35"), ("16", "2", "40"), ("20", "2", "50")]
ROWS = [
    "14x1.5 → 35\n16x2 → 40\n20x2 → 50\n(OD x wall → bend radius; mm; E355)",
    "14x1.5 = 35\n16x2 = 40\n20x2 = 50\n(OD x wall = CLR; mm; E355)",
    "We bend 14 x 1.5 at 35, 16 x 2 at 40 and 20 x 2 at 50 (OD x wall at CLR, mm, E355).",
    "1 | 14 | 1.5 | 35\n2 | 16 | 2 | 40\n3 | 20 | 2 | 50\n(OD | wall | CLR, mm, E355)",
    "14 1,5 35\n16 2 40\n20 2 50\ncolonne: diametro, spessore, raggio. mm, E355",
    "14 ; 1,5 ; 35\n16 ; 2 ; 40\n20 ; 2 ; 50\n(diámetro; espesor; radio), mm, E355",
    "14x1,5 → 35\n16x2 → 40\n20x2 → 50\n(buitendiameter x wand → straal, mm, E355)",
    "Diameters: 14 / 16 / 20 mm\nWalls: 1.5 / 2 / 2 mm\nRadii: 35 / 40 / 50 mm\nSame order.",
    "Diameters 14 - 16 - 20 mm; walls 1.5 - 2 - 2 mm; radii 35 - 40 - 50 mm, in order.",
    "Diamètres 14 – 16 – 20 mm ; épaisseurs 1,5 – 2 – 2 mm ; rayons 35 – 40 – 50, même ordre.",
    "Durchmesser: 14 / 16 / 20\nWand: 1,5 / 2 / 2\nRadius: 35 / 40 / 50\nmm, Reihenfolge gleich",
    "Diametri: 14 / 16 / 20 mm\nSpessori: 1,5 / 2 / 2 mm\nRaggi: 35 / 40 / 50 mm\nStesso ordine",
    "Diameter: 14 / 16 / 20\nWanddikte: 1,5 / 2 / 2\nStraal: 35 / 40 / 50\nmm, volgorde gelijk",
]


@pytest.mark.parametrize("text", ROWS)
def test_a_legend_or_labels_name_what_stands_in_a_list(text: str) -> None:
    requests = read_text(text)
    read = [(r.od_mm, r.wall_mm, r.clr_mm) for r in requests]
    assert read == [tuple(map(Decimal, size)) for size in METRIC]
    assert not any(r.doubt_on(name) for r in requests for name in ("od", "wall", "clr"))


@pytest.mark.parametrize(
    "text",
    [
        "1 1.5 .083 4.5 2\n2 1.75 .120 5.25 1\n3 2 .083 6 4\nitem, OD, wall, CLR, mandrels",
        "1.5  .083  4.5  2\n1.75  .120  5.25  1\n2  .083  6  4\ncolumns OD, wall, CLR, mandrels",
        "1.5\t.083\t4.5\t304\t2\n1.75\t.120\t5.25\t304\t1\n2\t.083\t6\t304\t4\n"
        "Columns are OD, wall, CLR (in), material, number of mandrels.",
    ],
)
def test_a_legend_tells_the_count_at_the_end_of_a_row(text: str) -> None:
    requests = read_text(text)
    assert [r.clr_mm for r in requests] == [Decimal("114.3"), Decimal("133.35"), Decimal("152.4")]
    assert [r.quantity for r in requests] == [2, 1, 4]


LIST = "30 x 1.5 R 60\n35 x 1.5 R 70\n40 x 2 R 80\nmm, S235."
TOLD: list[tuple[str, list[int | None]]] = [
    ("Two mandrels of the first and one of each other", [2, 1, 1]),
    ("Two mandrels for the first, one for the second, three for the last", [2, 1, 3]),
    ("Item 1 - three mandrels; items 2 & 3 - one mandrel each", [3, 1, 1]),
    ("Item 1: three mandrels, items 2 and 3: one mandrel each", [3, 1, 1]),
    ("One mandrel for #1, one for #2, two for #3", [1, 1, 2]),
    ("Zwei Dorne vom ersten, je einen von den anderen", [2, 1, 1]),
    ("Deux mandrins pour le premier et un pour les autres", [2, 1, 1]),
    ("Deux mandrins n°1 et un seul des autres", [2, 1, 1]),
    ("Due mandrini per il primo e uno per gli altri", [2, 1, 1]),
    ("Dos mandriles del primero y uno de los demás", [2, 1, 1]),
    ("Twee doorns van de eerste en één van de andere", [2, 1, 1]),
    ("Merci de deviser un mandrin par tube", [1, 1, 1]),
    ("2 mandrini a misura, ok?", [2, 2, 2]),
    ("Chiediamo un mandrino per riga", [1, 1, 1]),
    ("Un mandril por línea", [1, 1, 1]),
    ("Set doorns, elk 1", [1, 1, 1]),
    ("Doorns 1x elk, bel maar", [1, 1, 1]),
    ("Bitte Dorne anbieten, 1x von jedem", [1, 1, 1]),
    ("Van elke regel 1 doorn a.u.b.", [1, 1, 1]),
    ("We need 2 numbers of each", [2, 2, 2]),
    ("We'd start with 4 mandrels of each size", [4, 4, 4]),
]


@pytest.mark.parametrize(("words", "counts"), TOLD)
def test_counts_of_a_list_told_in_words(words: str, counts: list[int | None]) -> None:
    requests = read_text(f"{LIST} {words}")
    assert [r.quantity for r in requests] == counts


@pytest.mark.parametrize(
    ("ends", "counts"),
    [
        (("-1", "-1", "-2"), [1, 1, 2]),
        (("- 1", "- 3", "- 2"), [1, 3, 2]),
    ],
)
def test_a_dash_sets_the_count_at_the_end_of_each_row(
    ends: tuple[str, ...], counts: list[int]
) -> None:
    tubes = ("1 5/8   .065   3clr", "1 3/4   .065   3 1/2clr", "1 7/8   .065   3 3/4clr")
    lines = "\n".join(f"{tube}  {end}" for tube, end in zip(tubes, ends, strict=True))
    requests = read_text(f"{lines}\nmild steel, last number is how many mandrels")
    assert [r.clr_mm for r in requests] == [Decimal("76.2"), Decimal("88.9"), Decimal("95.25")]
    assert [r.quantity for r in requests] == counts


CLAUSES = [
    "18, 20 and 28 mm OD. The first two have 1 mm wall and 40 CLR, the last 1.5 wall and 70 CLR.",
    "Rohre 18, 20 und 28 mm. Die ersten beiden haben 1 mm Wand und Biegeradius 40, das letzte "
    "1,5 mm Wand und Biegeradius 70.",
    "Tubes 18, 20 et 28 mm. Les deux premiers ont 1 mm de paroi et rayon 40, le dernier 1,5 mm de "
    "paroi et rayon 70.",
    "Tubi 18, 20 e 28 mm. I primi due hanno parete 1 mm e raggio 40, l'ultimo parete 1,5 mm e "
    "raggio 70.",
]


@pytest.mark.parametrize("text", CLAUSES)
def test_a_clause_tells_the_lengths_of_places(text: str) -> None:
    read = [(r.od_mm, r.wall_mm, r.clr_mm) for r in read_text(text)]
    assert read == [(18, 1, 40), (20, 1, 40), (28, Decimal("1.5"), 70)]


DIES = [
    "Die 1, CLR 100:\n40 x 2\n42 x 2\nDie 2, CLR 150:\n60 x 2\nmm, 304",
    "Two dies, R100 and R150. On R100 we bend 40 x 2 and 42 x 2, on R150 60 x 2. All mm.",
    "Zwei Werkzeuge, R100 und R150. Auf R100 biegen wir 40 x 2 und 42 x 2, auf R150 60 x 2.",
    "Deux formes, R100 et R150. Sur R100 on cintre 40 x 2 et 42 x 2, sur R150 60 x 2.",
]


@pytest.mark.parametrize("text", DIES)
def test_what_is_bent_on_each_die(text: str) -> None:
    read = [(r.od_mm, r.wall_mm, r.clr_mm) for r in read_text(text)]
    assert read == [(40, 2, 100), (42, 2, 100), (60, 2, 150)]


def test_the_former_and_the_latter() -> None:
    text = (
        "One mandrel for 50 x 1.6 and one for 60 x 1.6. The former bends on 76 mm centreline "
        "radius, the latter on 95."
    )
    assert [(r.od_mm, r.clr_mm) for r in read_text(text)] == [(50, 76), (60, 95)]


def test_a_line_for_next_year_is_left_out() -> None:
    text = (
        "1) 44 x 1.5, CLR 90\n2) 50 x 1.5, CLR 102\n3) 57 x 1.5, CLR 115\nmm. Line 3 is for next "
        "year so leave it out of the quote."
    )
    assert [r.od_mm for r in read_text(text)] == [44, 50]
