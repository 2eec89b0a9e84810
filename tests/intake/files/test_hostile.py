"""Files made to do harm: each ends within its time, and the person is told which and why.

Time is that of the processes that opened the file, so that a busy machine fails no test.
"""

from __future__ import annotations

import os
import resource
import signal
import zlib
from collections.abc import Callable

import pytest

from bendreply.intake.files import nursery, opened
from bendreply.intake.files.nursery import NURSERY
from bendreply.intake.model import Attachment
from bendreply.intake.pipeline import understand

from .made import HEAD, PDF, SIZE_ROWS, TAIL, XLSX, lengths, mail, said, sheet_file
from .made_pdf import pdf_of, stream

DAMAGED = "was not read: it is damaged"
MOST_SECONDS = 8
"""Six for the file, and what starting a process and being stopped takes."""
CELL = b"<c><v>1</v></c>"
ENTITIES = b"".join(
    b'<!ENTITY %c "%s">' % (98 + n, b"&%c;" % (97 + n) * 10) for n in range(9)
)  # each ten times the one before: a billion in the end


def sheet(rows: bytes) -> bytes:
    return sheet_file(HEAD + rows + TAIL)


HOSTILE_SHEETS: dict[str, tuple[Callable[[], bytes], str]] = {
    "zip bomb": (
        lambda: sheet(b" " * 90_000_000),
        "was not read: unzipped it is too large (90 MB)",
    ),
    "a million cells in a row": (
        lambda: sheet(SIZE_ROWS + b'<row r="3">' + CELL * 1_000_000 + b"</row>"),
        "was not read: it has too many cells to open",
    ),
    "column 1,000,000": (
        lambda: sheet(SIZE_ROWS + b'<row r="3"><c r="BDWGN3"><v>1</v></c></row>'),
        DAMAGED,
    ),
    "the last cell there can be": (
        lambda: sheet(SIZE_ROWS + b'<row r="1048576"><c r="XFD1048576"><v>1</v></c></row>'),
        ": only the first 2000 rows of sheet S were read",
    ),
    "nested a million deep": (
        lambda: sheet(b"<a>" * 1_000_000 + b"</a>" * 1_000_000),
        "was not read: it has too many cells to open",
    ),
    "a billion laughs": (
        lambda: sheet_file(
            b'<?xml version="1.0"?><!DOCTYPE x [<!ENTITY a "ha">'
            + ENTITIES
            + b"]>"
            + HEAD[21:]
            + b'<row r="1"><c t="inlineStr"><is><t>&j;</t></is></c></row>'
            + TAIL
        ),
        DAMAGED,
    ),
    "cut off": (lambda: sheet(SIZE_ROWS)[:700], "was not read: it is damaged (BadZipFile)"),
    "no zip": (lambda: b"OD;wall", "was not read: it is damaged (BadZipFile)"),
    "locked": (
        lambda: b"\xd0\xcf\x11\xe0\xa1\xb1\x1a\xe1" + bytes(4000),
        "was not read: it is locked",
    ),
}


def page(content: bytes, *more: bytes, resources: bytes = b"", kids: bytes = b"[4 0 R]") -> bytes:
    return pdf_of(
        [
            b"<< /Type /Catalog /Pages 2 0 R >>",
            b"<< /Type /Pages /Kids %s /Count 1 >>" % kids,
            b"<< /Type /Font /Subtype /Type1 /BaseFont /Helvetica >>",
            b"<< /Type /Page /Parent 2 0 R /MediaBox [0 0 612 792] /Contents 5 0 R"
            b" /Resources << /Font << /F1 3 0 R >> %s >> >>" % resources,
            content,
            *more,
        ]
    )


def bomb_in_a_bomb() -> bytes:
    twice = zlib.compress(zlib.compress(bytes(90_000_000)))
    entries = b"<< /Length %d /Filter [/FlateDecode /FlateDecode] >>" % len(twice)
    return entries + b"\nstream\n" + twice + b"\nendstream"


NO_WORDS = "was not read: there is no text in it"
TOO_MUCH = "was not read: it needs too much time or memory to open"
HOSTILE_PDFS: dict[str, tuple[Callable[[], bytes], str]] = {
    "bomb": (lambda: page(stream(b" " * 90_000_000, packed=True)), TOO_MUCH),
    "bomb in a bomb": (
        lambda: page(bomb_in_a_bomb()),
        TOO_MUCH,
    ),
    "millions of words": (
        lambda: page(stream(b"BT /F1 9 Tf (x) Tj ET\n" * 2_700_000, packed=True)),
        TOO_MUCH,
    ),
    "nested arrays": (lambda: page(stream(b"[" * 3_000_000, packed=True)), TOO_MUCH),
    "pages in a circle": (lambda: page(stream(b""), kids=b"[2 0 R 2 0 R]"), DAMAGED),
    "a million pages": (
        lambda: page(stream(b""), kids=b"[" + b"4 0 R " * 1_000_000 + b"]"),
        TOO_MUCH,
    ),
    "a picture of itself": (
        lambda: page(
            stream(b"/X Do " * 1000),
            b"<< /Type /XObject /Subtype /Form /Resources << /XObject << /X 6 0 R >> >>"
            b" /Length 6 >>\nstream\n/X Do \nendstream",
            resources=b"/XObject << /X 6 0 R >>",
        ),
        NO_WORDS,
    ),
    "tables in a circle": (
        lambda: pdf_of(
            [b"<< /Type /Catalog /Pages 2 0 R >>", b"<< /Kids [] /Count 0 >>"], trailer=b"/Prev 9"
        ),
        NO_WORDS,
    ),
    "its table of places is wrong": (
        lambda: pdf_of([b"<< /Type /Catalog >>"], broken_xref=True),
        DAMAGED,
    ),
}


@pytest.mark.parametrize(
    ("name", "content_type", "made", "note"),
    [("s.xlsx", XLSX, *row) for row in HOSTILE_SHEETS.values()]
    + [("p.pdf", PDF, *row) for row in HOSTILE_PDFS.values()],
    ids=[*HOSTILE_SHEETS, *HOSTILE_PDFS],
)
def test_a_hostile_file_ends_in_time_and_is_named(
    name: str, content_type: str, made: Callable[[], bytes], note: str
) -> None:
    message = mail(name, made(), content_type)
    NURSERY.close()  # time of processes counts once they have ended
    before = resource.getrusage(resource.RUSAGE_CHILDREN)
    heard = understand(message)
    NURSERY.close()
    after = resource.getrusage(resource.RUSAGE_CHILDREN)
    assert any(f"the attachment {name}{' ' if note[0] != ':' else ''}{note}" in one
               for one in heard.notes), heard.notes  # fmt: skip
    assert after.ru_utime + after.ru_stime - before.ru_utime - before.ru_stime < MOST_SECONDS


@pytest.mark.parametrize(
    "rows",
    [
        SIZE_ROWS,
        SIZE_ROWS + b'<row r="3"><c r="A3" t="inlineStr"><is>' + b"<r>" * 99_999 + b"</r>" * 99_999
        + b"</is></c></row>",
    ],
    ids=["a lie about its size", "a cell nested deep"],
)  # fmt: skip
def test_what_stands_beside_the_trap_is_read(rows: bytes) -> None:
    lying = HEAD.replace(b"<sheetData>", b'<dimension ref="A1:XFD1048576"/><sheetData>')
    assert lengths(said("s.xlsx", sheet_file(lying + rows + TAIL)).requests) == [
        ("38", "1.5", "57")
    ]


GOOD = sheet(SIZE_ROWS)


def opened_sheet(content: bytes) -> str:
    return opened.open_file(
        Attachment(name="s.xlsx", content_type=XLSX, size=len(content), content=content)
    ).why_unread


def test_files_are_opened_by_copies_of_one_process() -> None:
    NURSERY.close()
    assert opened_sheet(GOOD) == ""
    first = NURSERY._process
    assert first is not None
    assert "damaged" in opened_sheet(GOOD[: len(GOOD) // 2])
    assert opened_sheet(GOOD) == ""
    assert NURSERY._process is first
    assert first.poll() is None


@pytest.mark.parametrize("sign", [signal.SIGKILL, signal.SIGTERM])
def test_a_process_that_is_gone_is_begun_again(sign: signal.Signals) -> None:
    assert opened_sheet(GOOD) == ""
    gone = NURSERY._process
    assert gone is not None
    gone.send_signal(sign)
    gone.wait()
    assert opened_sheet(GOOD) == ""


def test_one_that_says_nothing_is_given_up_and_the_next_file_is_opened(
    monkeypatch: pytest.MonkeyPatch,
) -> None:
    assert opened_sheet(GOOD) == ""
    stuck = NURSERY._process
    assert stuck is not None
    stuck.send_signal(signal.SIGSTOP)
    with monkeypatch.context() as patched:
        patched.setattr(nursery, "PATIENCE_S", 0.5)
        assert opened_sheet(GOOD) == "it needs too much time or memory to open"
    assert opened_sheet(GOOD) == ""


def test_a_copy_of_this_process_makes_one_of_its_own() -> None:
    """Two that wrote into one pipe would get each other's answers."""
    assert opened_sheet(GOOD) == ""
    ours = NURSERY._process
    assert ours is not None
    copy = os.fork()
    if copy == 0:
        right = opened_sheet(GOOD) == "" and NURSERY._process is not ours
        NURSERY.close()
        os._exit(0 if right else 1)
    assert os.waitstatus_to_exitcode(os.waitpid(copy, 0)[1]) == 0
    assert opened_sheet(GOOD) == ""
    assert NURSERY._process is ours


def test_many_files_of_one_mail_are_not_all_opened(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(opened, "MOST_FILES", 2)
    message = mail("s.xlsx", sheet(SIZE_ROWS), XLSX)
    files = message.attachments * 4
    heard = understand(message.model_copy(update={"attachments": files}))
    assert [one.why_unread for one in heard.message.attachments] == [
        "",
        "",
        "only 2 files of one message are opened",
        "only 2 files of one message are opened",
    ]


def test_a_file_of_over_twenty_megabytes_is_not_even_decoded() -> None:
    (file,) = mail("s.xlsx", b"PK\x03\x04" + bytes(21_000_000), XLSX).attachments
    assert (file.content, file.why_unread) == (None, "it is too large (21 MB)")
