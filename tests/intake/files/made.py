"""Mails with files made on the spot, and workbooks (ECMA-376) made by hand where openpyxl won't."""

from __future__ import annotations

import io
import zipfile
from collections.abc import Sequence
from email.message import EmailMessage

import openpyxl
from openpyxl.workbook import Workbook

from bendreply.intake.message import parse_message
from bendreply.intake.model import Message
from bendreply.intake.pipeline import Understanding, understand
from bendreply.rules.request import SizeRequest

XLSX = "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet"
PDF = "application/pdf"
ASKS = "Hello,\n\nplease quote mandrels for the attached list.\n"
Rows = Sequence[Sequence[object]]


def mail(name: str, data: bytes, content_type: str, body: str = ASKS) -> Message:
    """A mail with one file, as bytes and decoded again."""
    written = EmailMessage()
    written["From"] = "lou@example.net"
    written["Subject"] = "Mandrels"
    written["Message-ID"] = "<m-1@mail.example.net>"
    written["Date"] = "Mon, 19 Oct 2026 11:25:00 +0530"
    written.set_content(body)
    main, sub = content_type.split("/")
    written.add_attachment(data, maintype=main, subtype=sub, filename=name)
    return parse_message(written.as_bytes())


def said(name: str, data: bytes, content_type: str = XLSX, body: str = ASKS) -> Understanding:
    """What is made of a mail with one file."""
    return understand(mail(name, data, content_type, body))


def lengths(requests: Sequence[SizeRequest]) -> list[tuple[str, ...]]:
    """OD, wall and CLR [mm] of each size, '' where not given."""
    return [
        tuple("" if v is None else f"{v.normalize():f}" for v in (r.od_mm, r.wall_mm, r.clr_mm))
        for r in requests
    ]


def workbook(**sheets: Rows) -> Workbook:
    """A workbook of sheets with rows; still open, to be made odd."""
    book = openpyxl.Workbook()
    book.remove(book.worksheets[0])
    for name, rows in sheets.items():
        sheet = book.create_sheet(name)
        for row in rows:
            sheet.append(list(row))
    return book


def saved(book: Workbook) -> bytes:
    """The workbook as a file."""
    out = io.BytesIO()
    book.save(out)
    return out.getvalue()


_MAIN = "http://schemas.openxmlformats.org/spreadsheetml/2006/main"
_OFFICE = "http://schemas.openxmlformats.org/officeDocument/2006/relationships"
_PACKAGE = "http://schemas.openxmlformats.org/package/2006"
_TYPE = "application/vnd.openxmlformats-officedocument.spreadsheetml"
HEAD = f'<?xml version="1.0"?><worksheet xmlns="{_MAIN}"><sheetData>'.encode()
TAIL = b"</sheetData></worksheet>"
SIZE_ROWS = (
    b'<row r="1"><c r="A1" t="inlineStr"><is><t>OD mm</t></is></c>'
    b'<c r="B1" t="inlineStr"><is><t>Wall mm</t></is></c>'
    b'<c r="C1" t="inlineStr"><is><t>CLR mm</t></is></c></row>'
    b'<row r="2"><c r="A2"><v>38</v></c><c r="B2"><v>1.5</v></c><c r="C2"><v>57</v></c></row>'
)


def sheet_file(sheet: bytes) -> bytes:
    """A workbook around the XML of its one sheet, whatever that holds."""
    out = io.BytesIO()
    with zipfile.ZipFile(out, "w", zipfile.ZIP_DEFLATED) as archive:
        archive.writestr(
            "[Content_Types].xml",
            f'<Types xmlns="{_PACKAGE}/content-types">'
            '<Default Extension="rels" '
            'ContentType="application/vnd.openxmlformats-package.relationships+xml"/>'
            f'<Override PartName="/xl/workbook.xml" ContentType="{_TYPE}.sheet.main+xml"/>'
            f'<Override PartName="/xl/worksheets/sheet1.xml" ContentType="{_TYPE}.worksheet+xml"/>'
            "</Types>",
        )
        archive.writestr("_rels/.rels", _relation("officeDocument", "xl/workbook.xml"))
        archive.writestr(
            "xl/workbook.xml",
            f'<workbook xmlns="{_MAIN}" xmlns:r="{_OFFICE}">'
            '<sheets><sheet name="S" sheetId="1" r:id="rId1"/></sheets></workbook>',
        )
        archive.writestr(
            "xl/_rels/workbook.xml.rels", _relation("worksheet", "worksheets/sheet1.xml")
        )
        archive.writestr("xl/worksheets/sheet1.xml", sheet)
    return out.getvalue()


def _relation(kind: str, target: str) -> str:
    return (
        f'<Relationships xmlns="{_PACKAGE}/relationships">'
        f'<Relationship Id="rId1" Type="{_OFFICE}/{kind}" Target="{target}"/></Relationships>'
    )
