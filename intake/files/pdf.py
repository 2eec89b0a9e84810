"""A PDF to its text, laid out as on the page so that the columns of a table stay columns.

Runs in a process with limits (``child``); whatever a damaged file raises is told there.
"""

from __future__ import annotations

import io
import time
from collections.abc import Iterator
from typing import TYPE_CHECKING

from pypdf import PdfReader, PdfWriter, Transformation
from pypdf.errors import DependencyError, FileNotDecryptedError, LimitReachedError
from pypdf.generic import DictionaryObject

from .columns import tables_apart
from .contents import ENOUGH_SECONDS, MOST_TEXT, TOO_MUCH, Contents

if TYPE_CHECKING:
    from pypdf import PageObject

MOST_PAGES = 30
_MOST_FIELDS = 300
_MOST_LEFT_OUT = 1.1
"""So much more a page may have in words than laid out: what stands turned at its margin."""
_TURNS = (90, 180, 270)
_LINE_SHOWN, _MOST_SHOWN = 80, 5
_LOCKED = "it is locked with a password"


def read_pdf(data: bytes) -> Contents:
    """The text of the first pages, what was filled into a form, what was typed onto a page.

    Raises whatever a damaged file makes pypdf raise.
    """
    try:
        reader = PdfReader(io.BytesIO(data), strict=False)
        # Many a PDF is locked against changes only, and opens with an empty password.
        if reader.is_encrypted and not reader.decrypt(""):
            return Contents(why_unread=_LOCKED)
        return _read(reader)
    except (DependencyError, FileNotDecryptedError):
        return Contents(why_unread=_LOCKED)
    except LimitReachedError:
        return Contents(why_unread=TOO_MUCH)


def _read(reader: PdfReader) -> Contents:
    found = Contents()
    count = len(reader.pages)
    texts: list[str] = []
    without: list[int] = []
    for number, page in enumerate(reader.pages, start=1):
        if (
            number > MOST_PAGES
            or time.process_time() > ENOUGH_SECONDS
            or _length(texts) > MOST_TEXT
        ):
            found.remarks.append(f"only the first {number - 1} of its {count} pages were read")
            break
        text, lost = _text_of(page)
        if lost:
            found.remarks.append(f"the text of page {number} is turned: compare its columns")
        if text.strip():
            texts.append(text)
        else:
            without.append(number)
    if filled := "\n".join(_filled_in(reader)):
        texts.append(filled)
    if not texts:
        return Contents(why_unread="there is no text in it: it is a scan or a picture")
    if without:
        pages = ", ".join(map(str, without))
        found.remarks.append(f"no text on page {pages} of {count}: a scan or a picture")
    text, unplaced = tables_apart("\n\n".join(texts))
    found.remarks += [
        f"a line of a table that fits none of its columns was left out: {line[:_LINE_SHOWN]}"
        for line in unplaced[:_MOST_SHOWN]
    ]
    if len(unplaced) > _MOST_SHOWN:
        found.remarks.append(f"{len(unplaced) - _MOST_SHOWN} more such lines were left out")
    found.texts.append(("", text))
    return found


def _length(texts: list[str]) -> int:
    return sum(map(len, texts))


def _text_of(page: PageObject) -> tuple[str, bool]:
    """The words of a page with what somebody typed onto it, and whether columns may be lost."""
    typed_on = list(_typed_on(page))
    plain = page.extract_text()
    text = _laid_out(page)
    if _loses(text, plain):
        # Layout leaves out what does not stand upright: on a sheet on its side, all of it.
        text = _laid_out_turned(page)
    lost = _loses(text, plain)
    return "\n".join([plain if lost else text, *typed_on]), lost


def _laid_out(page: PageObject) -> str:
    return page.extract_text(extraction_mode="layout", layout_mode_space_vertically=False)


def _laid_out_turned(page: PageObject) -> str:
    """The page laid out after most of its text was turned upright."""
    turn = max(_TURNS, key=lambda by: _letters(page.extract_text(orientations=(by,))))
    writer = PdfWriter()
    writer.add_page(page).add_transformation(Transformation().rotate(-turn))
    # Only the page of a file that was read knows its fonts.
    turned = io.BytesIO()
    writer.write(turned)
    return _laid_out(PdfReader(turned).pages[0])


def _loses(text: str, plain: str) -> bool:
    return _letters(plain) > _letters(text) * _MOST_LEFT_OUT


def _letters(text: str) -> int:
    return len("".join(text.split()))


def _typed_on(page: PageObject) -> Iterator[str]:
    for reference in page.annotations or ():
        note = reference.get_object()
        if isinstance(note, DictionaryObject) and note.get("/Subtype") == "/FreeText":
            yield str(note.get("/Contents", ""))


def _filled_in(reader: PdfReader) -> Iterator[str]:
    """What was typed into the fields of a form: that is not part of any page's text."""
    fields = reader.get_form_text_fields() or {}
    for name, value in list(fields.items())[:_MOST_FIELDS]:
        if value:
            yield f"{name}: {value}"
