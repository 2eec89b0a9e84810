"""Files of every kind in a message: read, or named with the reason; and nothing left behind."""

from __future__ import annotations

import subprocess
import sys
from pathlib import Path

import pytest

from bendreply.intake.chat import join, parse_chat_line
from bendreply.intake.files.nursery import NURSERY
from bendreply.intake.files.words import attached_texts, file_notes
from bendreply.intake.model import Attachment, Kind
from bendreply.intake.store_json import pack_message, unpack_message

from .made import PDF, XLSX, lengths, mail, said, saved, workbook

SIZES = saved(workbook(List=[["OD mm", "Wall mm", "CLR mm"], [38, 1.5, 57]]))


@pytest.mark.parametrize(
    ("name", "content_type", "why"),
    [
        ("photo.JPG", "image/jpeg", "it is a picture"),
        ("scan.png", "application/octet-stream", "it is a picture"),
        ("bend.dxf", "application/octet-stream", "it is a drawing or a model"),
        ("bend.STEP", "application/octet-stream", "it is a drawing or a model"),
        ("bend.dwg", "image/vnd.dwg", "it is a drawing or a model"),
        ("all.zip", "application/zip", "it is an archive, and those are not opened"),
        ("old.xls", "application/vnd.ms-excel", "it is a spreadsheet of a kind that is not read"),
        ("rfq.docx", "application/octet-stream", "it is a text document"),
        ("hello.m4a", "audio/mp4", "it is a recording"),
        ("winmail.dat", "application/ms-tnef", "it is a mail of another program's own kind"),
        ("thing.xyz", "application/octet-stream", "it is a kind of file that is not read here"),
    ],
)
def test_a_file_that_is_not_read_is_named_with_the_reason(
    name: str, content_type: str, why: str
) -> None:
    heard = said(name, b"\x89 no words", content_type, "Please quote a mandrel as per attached.")
    (note,) = heard.notes
    assert note.startswith(f"the attachment {name} was not read: {why}")


@pytest.mark.parametrize(
    ("name", "content_type"),
    [
        ("List.XLSX", "application/octet-stream"),
        ("list", XLSX),
        ("list.xlsm", "application/vnd.ms-excel.sheet.macroenabled.12"),
        ("list.xls", "application/vnd.ms-excel"),
    ],
)
def test_a_workbook_is_known_by_name_type_or_bytes(name: str, content_type: str) -> None:
    assert lengths(said(name, SIZES, content_type).requests) == [("38", "1.5", "57")]


def test_a_seal_or_a_visiting_card_is_nothing_to_read() -> None:
    assert said("smime.p7s", b"\x30", "application/pkcs7-signature").notes == ()
    assert said("lou.vcf", b"BEGIN:VCARD", "text/vcard").notes == ()


def test_many_unread_files_are_counted() -> None:
    message = mail("1.png", b"\x89", "image/png")
    pictures = tuple(
        message.attachments[0].model_copy(update={"name": f"{n}.png"}) for n in range(12)
    )
    notes = file_notes(message.model_copy(update={"attachments": pictures}))
    assert (len(notes), notes[-1]) == (9, "4 more attachments were not read")


def test_a_file_that_a_chat_export_only_names_is_said_to_be_missing() -> None:
    line = b"""{"sender": "Lou", "time": "2026-10-19T11:25:00+05:30", "text": "see list",
        "attachments": ["list.xlsx"]}"""
    assert file_notes(join([parse_chat_line(line)])) == (
        "the attachment list.xlsx was not read: the chat message only names it",
    )


CSV = [
    ("comma", "OD mm,Wall mm,CLR mm\n38,1.5,57\n40,2,60\n"),
    ("comma and blank", "OD mm, Wall mm, CLR mm\n38, 1.5, 57\n40, 2, 60\n"),
    ("semicolon", "OD mm;Wall mm;CLR mm\n38,0;1,5;57,0\n40,0;2,0;60,0\n"),
    ("quoted", '"OD mm","Wall mm","CLR mm"\n"38,0","1,5","57,0"\n"40,0","2,0","60,0"\n'),
    ("tab", "OD mm\tWall mm\tCLR mm\n38\t1.5\t57\n40\t2\t60\n"),
    ("figures in the head", "Part 7,OD mm,Wall mm,CLR mm\nA-1,38,1.5,57\nA-2,40,2,60\n"),
    ("empty cells", "OD mm,Wall mm,Remark,CLR mm\n38,1.5,,57\n40,2,urgent,60\n"),
    ("title", "Tube list,,\nOD mm,Wall mm,CLR mm\n38,1.5,57\n40,2,60\n"),
]


@pytest.mark.parametrize("text", [row[1] for row in CSV], ids=[row[0] for row in CSV])
def test_an_attached_csv_is_read_with_the_units_of_its_head(text: str) -> None:
    heard = said("list.csv", text.encode(), "text/csv")
    assert lengths(heard.requests) == [("38", "1.5", "57"), ("40", "2", "60")]
    assert {e.attachment for r in heard.requests for e in r.evidence} == {"list.csv"}
    assert heard.notes == ()


def test_a_csv_that_is_no_table_stays_as_it_is() -> None:
    text = "Hello, please quote\n38 x 1.5 mm, CLR 57, one mandrel\n"
    csv = Attachment(name="a.csv", content_type="text/csv", size=9, text=text)
    message = mail("a.csv", b"", "text/csv").model_copy(update={"attachments": (csv,)})
    assert attached_texts(message) == (("a.csv", text),)


@pytest.mark.parametrize(
    ("body", "kind"),
    [
        ("", Kind.SIZES),
        ("Hi Bob, here is the list for the new project that we spoke about last week.", Kind.SIZES),
        ("Please find attached invoice 4410 for 1,250.00, due 30 days.", Kind.OTHER),
    ],
)
def test_sizes_in_a_file_are_a_request_unless_the_words_say_otherwise(
    body: str, kind: Kind
) -> None:
    heard = said("list.xlsx", SIZES, XLSX, body)
    assert heard.kind is kind
    if kind is Kind.OTHER:  # a person hears of them all the same
        assert heard.notes == ("sizes in attached files, not taken as asked for: 1",)


def test_the_bytes_of_a_file_are_never_stored() -> None:
    message = mail("list.xlsx", SIZES, XLSX)
    assert message.attachments[0].content == SIZES
    assert '"content"' not in pack_message(message)
    opened = said("list.xlsx", SIZES).message
    assert opened.attachments[0].content is None
    assert unpack_message(pack_message(opened)) == opened


@pytest.mark.parametrize(
    ("name", "content_type", "package"), [("a.xlsx", XLSX, "openpyxl"), ("a.pdf", PDF, "pypdf")]
)
def test_without_its_library_a_file_is_named(
    name: str,
    content_type: str,
    package: str,
    tmp_path: Path,
    monkeypatch: pytest.MonkeyPatch,
    request: pytest.FixtureRequest,
) -> None:
    missing = f"raise ModuleNotFoundError(name={package!r})"
    (tmp_path / f"{package}.py").write_text(missing, "utf-8")
    monkeypatch.setenv("PYTHONPATH", str(tmp_path))
    NURSERY.close()  # what it has loaded is no longer what there is
    request.addfinalizer(NURSERY.close)
    assert said(name, SIZES if package == "openpyxl" else b"%PDF-1.4", content_type).notes == (
        f"the attachment {name} was not read: reading it needs {package}: pip install {package}",
    )


def test_nothing_is_written_and_no_reader_is_loaded_into_this_process(tmp_path: Path) -> None:
    program = f"""
import sys
from bendreply.intake.files.opened import open_file
from bendreply.intake.model import Attachment
from bendreply.intake import pipeline
open_file(Attachment(name="../up.xlsx", content_type="x/y", size=1, content={SIZES!r}))
assert not {{"openpyxl", "pypdf", "bendreply.intake.files.workbook"}} & sys.modules.keys()
"""
    place = tmp_path / "here"
    place.mkdir()
    environment = {"TMPDIR": str(place), "HOME": str(place), "PATH": ""}
    subprocess.run([sys.executable, "-c", program], cwd=place, env=environment, check=True)
    assert list(tmp_path.rglob("*")) == [place]
