"""What kind of file an attachment is: one that is opened here, or why a person has to."""

from __future__ import annotations

from typing import Literal

Opened = Literal["workbook", "pdf"]
"""The kinds that are opened for their words."""

LARGEST = 20_000_000
"""Bytes of a file that is opened: a list of tubes has some thousands, a drawing seldom millions."""
HEAD = 1024
"""Bytes by which a file's kind is known; the mark of a PDF may stand anywhere in them."""

_PDF, _ZIP, _OLE = b"%PDF-", b"PK\x03\x04", b"\xd0\xcf\x11\xe0\xa1\xb1\x1a\xe1"
_WORKBOOK_ENDINGS = frozenset("xlsx xlsm xltx xltm".split())
_SPREADSHEETML = "spreadsheetml"
_OTHER_MAIL = "it is a mail of another program's own kind"
_WHY: tuple[tuple[str, str], ...] = (
    ("jpg jpeg jpe jfif png gif bmp tif tiff webp heic heif svg", "it is a picture"),
    (
        "dxf dwg dwf step stp iges igs sldprt sldasm slddrw ipt iam idw prt asm drw par psm 3dm"
        " x_t x_b sat stl jt catpart catdrawing",
        "it is a drawing or a model",
    ),
    ("zip rar 7z gz tgz tar bz2 xz", "it is an archive, and those are not opened"),
    (
        "xls xlsb ods numbers",
        "it is a spreadsheet of a kind that is not read here; .xlsx, .csv and PDF are",
    ),
    ("doc docx docm odt rtf pages", "it is a text document; only plain text and PDF are read here"),
    ("mp3 m4a ogg opus wav amr aac mp4 mov avi webm 3gp", "it is a recording"),
    ("htm html mht mhtml", "it is a web page"),
    ("msg", _OTHER_MAIL),
    ("ics", "it is an entry of a calendar"),
)
_WHY_BY_ENDING = {ending: why for endings, why in _WHY for ending in endings.split()}
_WHY_BY_TYPE = (
    ("image/", "it is a picture"),
    ("audio/", "it is a recording"),
    ("video/", "it is a recording"),
    ("text/calendar", "it is an entry of a calendar"),
    ("text/html", "it is a web page"),
    ("application/ms-tnef", _OTHER_MAIL),
    ("application/zip", "it is an archive, and those are not opened"),
)
OTHER = "it is a kind of file that is not read here"


def ending_of(name: str) -> str:
    """The ending of a file's name in lower case, without its dot; empty where there is none."""
    return name.lower().rpartition(".")[2] if "." in name else ""


def opened_kind(content_type: str, name: str, head: bytes) -> Opened | None:
    """The kind of a file that is opened here, None for all others.

    ``head`` is how its bytes begin: they tell where name and type are vague or wrong. Whatever
    calls itself a workbook or a PDF is tried as one, so that a damaged one is named as damaged.
    """
    ending = ending_of(name)
    zipped = head.startswith(_ZIP)
    if _PDF in head and not zipped:
        return "pdf"
    if ending in _WORKBOOK_ENDINGS or (_SPREADSHEETML in content_type and ending != "xlsb"):
        return "workbook"
    if ending == "pdf" or content_type in ("application/pdf", "application/x-pdf"):
        return "pdf"
    if zipped and (b"xl/" in head or ending == "xls"):
        return "workbook"
    return None


def is_locked_workbook(head: bytes) -> bool:
    """Whether a file that calls itself .xlsx is the sealed box that a password makes of one."""
    return head.startswith(_OLE)


def why_unread(content_type: str, name: str) -> str:
    """Why a file is not opened here, in one clause for the person who has to."""
    if known := _WHY_BY_ENDING.get(ending_of(name)):
        return known
    return next((why for begins, why in _WHY_BY_TYPE if content_type.startswith(begins)), OTHER)
