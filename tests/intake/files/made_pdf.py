"""A PDF made by hand (ISO 32000-1, 7.5): text at places on its pages, nothing more."""

from __future__ import annotations

import zlib
from collections.abc import Sequence

Line = tuple[int, int, str]
"""Points from the left, points from the bottom, the words."""


def pdf_of(
    objects: Sequence[bytes], *, root: int = 1, trailer: bytes = b"", broken_xref: bool = False
) -> bytes:
    """Objects numbered from 1 as a file, with its table of where each begins."""
    out = bytearray(b"%PDF-1.4\n")
    places: list[int] = []
    for number, body in enumerate(objects, start=1):
        places.append(len(out))
        out += b"%d 0 obj\n" % number + body + b"\nendobj\n"
    start = len(out)
    out += b"xref\n0 %d\n0000000000 65535 f \n" % (len(objects) + 1)
    for place in places:
        out += b"%010d 00000 n \n" % (place + 7777 if broken_xref else place)
    out += b"trailer\n<< /Size %d /Root %d 0 R %s >>\n" % (len(objects) + 1, root, trailer)
    return bytes(out + b"startxref\n%d\n%%%%EOF\n" % (9_999_999 if broken_xref else start))


def stream(data: bytes, *, packed: bool = False) -> bytes:
    """A stream object, its data compressed where ``packed``."""
    if packed:
        data = zlib.compress(data, 6)
    entry = b" /Filter /FlateDecode" if packed else b""
    return b"<< /Length %d%s >>\nstream\n" % (len(data), entry) + data + b"\nendstream"


def words(lines: Sequence[Line], turned: bool = False) -> bytes:
    """The content of a page: each line's words at its place, in Helvetica 10."""
    out = bytearray()
    for x, y, said in lines:
        text = (
            said.encode("cp1252").replace(b"\\", rb"\\").replace(b"(", rb"\(").replace(b")", rb"\)")
        )
        matrix = b"0 1 -1 0 %d %d" % (792 - y, x) if turned else b"1 0 0 1 %d %d" % (x, y)
        out += b"BT /F1 10 Tf %s Tm (%s) Tj ET\n" % (matrix, text)
    return bytes(out)


def made_pdf(
    *pages: Sequence[Line],
    typed_on: str = "",
    field: tuple[str, str] | None = None,
    turned: bool = False,
    trailer: bytes = b"",
    broken_xref: bool = False,
) -> bytes:
    """A PDF of pages of lines; ``typed_on`` is a note on the first page, ``field`` a form's."""
    objects: list[bytes] = [b"", b"", b"<< /Type /Font /Subtype /Type1 /BaseFont /Helvetica"
                            b" /Encoding /WinAnsiEncoding >>"]  # fmt: skip
    notes: list[bytes] = []
    form = b""
    if typed_on:
        objects.append(b"<< /Type /Annot /Subtype /FreeText /Rect [9 9 99 99] /Contents (%s) >>"
                       % typed_on.encode("cp1252"))  # fmt: skip
        notes.append(b"%d 0 R" % len(objects))
    if field:
        objects.append(b"<< /Type /Annot /Subtype /Widget /FT /Tx /Rect [9 9 99 99] /T (%s) /V (%s)"
                       b" >>" % (field[0].encode("cp1252"), field[1].encode("cp1252")))  # fmt: skip
        notes.append(b"%d 0 R" % len(objects))
        form = b"/AcroForm << /Fields [%d 0 R] >>" % len(objects)
    kids: list[bytes] = []
    for number, lines in enumerate(pages):
        objects.append(stream(words(lines, turned), packed=True))
        annotations = b"/Annots [%s]" % b" ".join(notes) if notes and not number else b""
        turn = b"/Rotate 90" if turned else b""
        objects.append(
            b"<< /Type /Page /Parent 2 0 R /MediaBox [0 0 612 792] /Contents %d 0 R"
            b" /Resources << /Font << /F1 3 0 R >> >> %s %s >>" % (len(objects), annotations, turn)
        )
        kids.append(b"%d 0 R" % len(objects))
    objects[0] = b"<< /Type /Catalog /Pages 2 0 R %s >>" % form
    objects[1] = b"<< /Type /Pages /Kids [%s] /Count %d >>" % (b" ".join(kids), len(kids))
    return pdf_of(objects, trailer=trailer, broken_xref=broken_xref)


def table(rows: Sequence[Sequence[str]], *, top: int = 740, widths: int = 90) -> list[Line]:
    """Rows of a table as lines, its columns ``widths`` points apart."""
    return [
        (50 + widths * column, top - 16 * number, cell)
        for number, row in enumerate(rows)
        for column, cell in enumerate(row)
    ]
