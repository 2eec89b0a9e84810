"""Sizes in a file beside those of the message: joined where alike, doubted where they differ."""

from __future__ import annotations

from collections.abc import Callable
from decimal import Decimal

import pytest

from bendreply.intake.desk import backlog, show, take_in
from bendreply.intake.model import Result
from bendreply.intake.output import json_line, message_out
from bendreply.intake.pipeline import process
from bendreply.intake.screen import answer_view, console
from bendreply.intake.screen_desk import Line, inquiry_view, triage_table
from bendreply.intake.store import Store
from bendreply.intake.templates import default_templates
from bendreply.rules.request import Doubt
from bendreply.rules.shop import sample_shop

from .made import lengths, mail, said

HEAD = "OD in,Wall in,CLR in,Qty\n"
A, B, C = ("44.45", "1.651", "101.6"), ("44.45", "2.1082", "133.35"), ("50.8", "3.048", "152.4")
ROW_A, ROW_B, ROW_C = "1.75,.065,4,2\n", "1.75,.083,5.25,1\n", "2,.12,6,1\n"
"""1.75 x 25.4 = 44.45, .065 x 25.4 = 1.651, 4 x 25.4 = 101.6, and so on."""


def heard(body: str, *rows: str) -> list[tuple[tuple[str, ...], set[str]]]:
    """Each size with its doubted fields."""
    found = said("list.csv", (HEAD + "".join(rows)).encode(), "text/csv", body).requests
    return [
        (size, {d.field for d in one.doubts})
        for size, one in zip(lengths(found), found, strict=True)
    ]


@pytest.mark.parametrize(
    ("body", "rows", "sizes"),
    [
        ("Please quote mandrels for the list.", (ROW_A, ROW_C), [(A, set()), (C, set())]),
        ("A mandrel for 1.75 x .083 on 5.25 CLR, list attached.", (ROW_B,), [(B, set())]),
        ("A mandrel for 1.75 x .083 on 5.25 CLR, and the list.", (ROW_B, ROW_C),
         [(B, set()), (C, set())]),
        ("A mandrel for 1.75 x .083, radius on the list.", (ROW_B,), [(B, set())]),
        ("Mandrels for 1.75 OD tube, see the list.", (ROW_A, ROW_B), [(A, set()), (B, set())]),
        ("A mandrel for 1.75 x .095 on 5.25 CLR, list attached.", (ROW_B,),
         [(("44.45", "2.413", "133.35"), {"wall"})]),
        ("A mandrel for 1.75 x .095 on 5.25 CLR, list attached.", (ROW_B, ROW_C),
         [(("44.45", "2.413", "133.35"), {"wall"}), (C, set())]),
        ("A mandrel for 1.5 x .083 on 5.25 CLR, list attached.", (ROW_B,),
         [(("38.1", "2.1082", "133.35"), {"od"})]),
        ("3 mandrels for 1.75 x .083 on 5.25 CLR, list attached.", (ROW_B,),
         [(B, {"quantity"})]),
        ("Mandrels for 1.75 x .083 on 5.25 CLR and 2 x .12 on 6 CLR.", (ROW_C, ROW_B),
         [(B, set()), (C, set())]),
    ],
    ids=["file only", "the same", "one more", "gap filled", "partly named", "other wall",
         "other wall of two", "other OD", "other count", "both the same"],
)  # fmt: skip
def test_a_file_is_held_against_the_message(
    body: str, rows: tuple[str, ...], sizes: list[tuple[tuple[str, ...], set[str]]]
) -> None:
    assert heard(body, *rows) == sizes


def test_a_contradiction_names_both_readings_and_the_file() -> None:
    (request,) = said(
        "list.csv", (HEAD + ROW_B).encode(), "text/csv", "A mandrel for 1.75 x .095 on 5.25 CLR."
    ).requests
    assert request.doubts == (
        Doubt(
            field="wall",
            readings=(Decimal("2.413"), Decimal("2.1082")),
            why="the attachment list.csv says otherwise",
        ),
    )


@pytest.fixture(scope="module")
def judged() -> Callable[[str, str], Result]:
    shop = sample_shop()
    templates = default_templates()

    def judge(body: str, text: str) -> Result:
        return process(mail("list.csv", text.encode(), "text/csv", body), shop, templates)

    return judge


def test_the_draft_asks_about_the_contradiction(judged: Callable[[str, str], Result]) -> None:
    draft = judged("Please quote a mandrel for 1.75 x .095, 5.25 CLR, DOM.", HEAD + ROW_B).draft
    assert draft is not None
    assert "0.095 in" in draft.body
    assert "0.083 in" in draft.body


def test_screen_and_json_say_that_a_value_is_from_a_file(
    judged: Callable[[str, str], Result], capsys: pytest.CaptureFixture[str]
) -> None:
    result = judged("Please quote mandrels for the list.", HEAD + ROW_A)
    answer_view(console(width=100), result)
    assert "“1.75” in list.csv" in capsys.readouterr().out
    line = json_line(message_out(result, "a.eml"))
    assert '"attachment": "list.csv", "written": "1.75"' in line


def test_the_backlog_and_show_name_a_file_that_was_not_read(
    store: Store, capsys: pytest.CaptureFixture[str]
) -> None:
    shop = sample_shop()
    scan = mail("scan.png", b"\x89", "image/png", "A mandrel for 1.75 x .095, 5.25 CLR please.")
    taken = take_in(store, process(scan, shop, default_templates()), "a.eml")
    note = "the attachment scan.png was not read: it is a picture"
    assert show(store, taken.inquiry).notes == (note,)
    triage_table(console(width=160), map(Line.of_row, backlog(store)), title="")
    assert f"note: {note}" in capsys.readouterr().out


def test_the_backlog_and_show_name_what_of_a_mail_was_not_decoded(
    store: Store, capsys: pytest.CaptureFixture[str]
) -> None:
    whole = mail("scan.png", b"\x89", "image/png", "A mandrel for 1.75 x .095, 5.25 CLR please.")
    cut = whole.model_copy(update={"faults": ("the mail may be cut off",)})
    taken = take_in(store, process(cut, sample_shop(), default_templates()), "a.eml")
    inquiry_view(console(width=160), show(store, taken.inquiry))
    shown = capsys.readouterr().out
    assert shown.count("the mail may be cut off") == 1
    triage_table(console(width=160), map(Line.of_row, backlog(store)), title="")
    assert "note: the mail may be cut off (and 1 more)" in capsys.readouterr().out


@pytest.mark.parametrize(
    ("body", "rows", "materials"),
    [
        ("Mandrels for the list.", ("304", ""), ["stainless_steel", None]),
        ("Mandrels for the list, all DOM.", ("304", ""), ["stainless_steel", "carbon_steel"]),
        ("Mandrels for the list, some 304, some DOM.", ("", ""), [None, None]),
    ],
    ids=["an empty cell is open", "what is said of all", "two said: which is open"],
)
def test_an_empty_material_cell_takes_no_other_rows_material(
    body: str, rows: tuple[str, str], materials: list[str | None]
) -> None:
    sheet = f"OD in,Wall in,CLR in,Material\n1.75,.065,4,{rows[0]}\n2,.12,6,{rows[1]}\n"
    found = said("list.csv", sheet.encode(), "text/csv", body).requests
    assert [one.material for one in found] == materials


def test_a_column_of_stock_beside_an_od_is_no_size() -> None:
    sheet = "Line,OD in,Wall in,CLR in,Stock\n1,1.75,.065,4,12 ft\n2,2,.12,6,80\n"
    found = said("list.csv", sheet.encode(), "text/csv", "Mandrels for the list.").requests
    assert lengths(found) == [A, C]
