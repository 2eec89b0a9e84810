"""Attached PDFs: the text as laid out on the page is read; a page without text is named."""

from __future__ import annotations

import pytest

from .made import PDF, lengths, said
from .made_pdf import made_pdf, table

ROWS = [
    ["OD (mm)", "Wall (mm)", "CLR (mm)", "Material", "Qty"],
    ["38", "1.5", "57", "304", "2"],
    ["42.4", "2.0", "63.6", "316L", "1"],
    ["60.3", "2.6", "180", "S235", ""],
]
SIZES = [("38", "1.5", "57"), ("42.4", "2", "63.6"), ("60.3", "2.6", "180")]
ENCRYPTED = b"/Encrypt << /Filter /Standard /V 1 /R 2 /O (%s) /U (%s) /P -4 >> /ID [(a) (a)]" % (
    b"o" * 32,
    b"u" * 32,
)


@pytest.mark.parametrize(
    "data",
    [
        made_pdf([(50, 770, "Tube list, project 20437"), *table(ROWS)]),
        made_pdf(table(ROWS, widths=60)),
        made_pdf(table(ROWS[:3]), table([ROWS[0], ROWS[3]])),
        made_pdf(table(ROWS), turned=True),
        made_pdf(table(ROWS), broken_xref=True),
    ],
    ids=["titled", "narrow", "two pages", "on its side", "its table of places is wrong"],
)
def test_a_table_in_a_pdf_is_read_with_the_units_of_its_head(data: bytes) -> None:
    heard = said("list.pdf", data, PDF)
    assert lengths(heard.requests) == SIZES
    assert [r.quantity for r in heard.requests] == [2, 1, None]
    assert {e.attachment for r in heard.requests for e in r.evidence} == {"list.pdf"}
    assert heard.notes == ()


def test_an_empty_cell_moves_no_other() -> None:
    rows = [ROWS[0], ["38", "", "57", "304", "2"], ["42.4", "2.0", "", "", "1"]]
    heard = said("list.pdf", made_pdf(table(rows)), PDF)
    assert lengths(heard.requests) == [("38", "", "57"), ("42.4", "2", "")]


@pytest.mark.parametrize(
    "data",
    [
        made_pdf([(50, 700, "see note")], typed_on="1.75 OD x .095 wall, 5.25 CLR"),
        made_pdf([(50, 700, "enquiry form")], field=("Tube", "1.75 OD x .095 wall, 5.25 CLR")),
    ],
    ids=["typed onto the page", "filled into a form"],
)
def test_what_was_added_to_a_page_is_read(data: bytes) -> None:
    # 1.75 x 25.4 = 44.45, 0.095 x 25.4 = 2.413, 5.25 x 25.4 = 133.35
    assert lengths(said("form.pdf", data, PDF).requests) == [("44.45", "2.413", "133.35")]


@pytest.mark.parametrize(
    ("data", "note"),
    [
        (made_pdf([]), "was not read: there is no text in it: it is a scan or a picture"),
        (made_pdf([], table(ROWS)), ": no text on page 1 of 2: a scan or a picture"),
        (made_pdf(table(ROWS), trailer=ENCRYPTED), "was not read: it is locked with a password"),
        (made_pdf(table(ROWS))[:600], "was not read: it is damaged"),
        (b"%PDF-1.7 but nothing more", "was not read: it is damaged"),
        (b"", "was not read: it is damaged"),
        (
            made_pdf(*[[(50, 700, f"page {n}")] for n in range(31)]),
            ": only the first 30 of its 31 pages were read",
        ),
        (made_pdf([(50, 700, "Terms of delivery, 2026")]), "no size was found in"),
    ],
    ids=["scan", "half scan", "locked", "cut off", "rubbish", "empty", "long", "no size"],
)
def test_what_could_not_be_read_is_named(data: bytes, note: str) -> None:
    notes = said("print.pdf", data, PDF).notes
    assert any(note in one and "the attachment print.pdf" in one for one in notes), notes
