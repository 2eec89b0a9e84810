"""Bytes to words: the charset as declared, as mailers really mean it, or as the bytes show.

Order of trust: a byte-order mark, the declared charset, UTF-8, windows-1252. What was not as
declared is named in ``faults``, because a wrong charset can turn a diameter sign into letters.
"""

from __future__ import annotations

import codecs
import re
from functools import lru_cache

# A mailer that says "gb2312" or "shift_jis" nearly always writes the larger set that its platform
# has; the larger set reads everything of the smaller (WHATWG Encoding Standard, "labels").
_MEANT = {
    "ascii": "cp1252",
    "iso8859-1": "cp1252",
    "iso8859-9": "cp1254",
    "iso8859-11": "cp874",
    "tis-620": "cp874",
    "gb2312": "gb18030",
    "gbk": "gb18030",
    "euc_kr": "cp949",
    "shift_jis": "cp932",
    "big5": "cp950",
}
# Python knows these names too, but they are no charsets of mail: escapes, host names, UTF-7.
_NOT_OF_MAIL = frozenset(
    (
        "idna",
        "mbcs",
        "oem",
        "punycode",
        "raw-unicode-escape",
        "undefined",
        "unicode-escape",
        "utf-7",
    )
)
# Names that mailers use and Python does not know.
_ALIASES = {
    "unicode-1-1-utf-8": "utf-8",
    "x-unknown": "",
    "unknown-8bit": "",
    "x-user-defined": "",
    "_iso-2022-jp": "iso2022_jp",
    "iso-8859-8-i": "iso8859-8",
    "x-sjis": "cp932",
    "x-gbk": "gb18030",
    "x-mac-roman": "mac-roman",
    "ansi": "cp1252",
}
# Charsets that spell other things than ASCII with ASCII's bytes.
_NOT_OVER_ASCII = ("utf-16", "utf-32", "hz", "cp037", "cp500", "cp1140")
_WESTERN = frozenset(("cp1252", "iso8859-15"))

_BYTE_ORDER_MARKS = (
    (codecs.BOM_UTF8, "utf-8"),
    (codecs.BOM_UTF32_LE, "utf-32-le"),  # before UTF-16: its mark begins with UTF-16's
    (codecs.BOM_UTF32_BE, "utf-32-be"),
    (codecs.BOM_UTF16_LE, "utf-16-le"),
    (codecs.BOM_UTF16_BE, "utf-16-be"),
)

_ODD = re.compile("[\r\x00-\x08\x0b-\x1f\x7f-\xa0\u2028\u2029\ud800-\udfff\ufeff]")
_LINE_ENDS = re.compile("\r\n?|[\x0b\x0c\x85\u2028\u2029]")
_CONTROLS = re.compile("[\x00-\x08\x0e-\x1f\x7f-\x9f\xa0]")
_SURROGATES = re.compile("[\ud800-\udfff]")

_JIS_DOUBLE = re.compile(rb"\x1b\$[@B]([^\x1b\n]*)")
_JIS_SINGLE = re.compile(rb"\x1b\([BJ]")


@lru_cache(maxsize=256)
def known_charset(label: str) -> str | None:
    """Python's name of a declared charset as mailers mean it; None where it is not one."""
    label = label.strip().strip("\"'").lower()
    label = _ALIASES.get(label, label)
    try:
        name = codecs.lookup(label).name
    except (LookupError, ValueError):  # ValueError: a NUL or a non-ASCII letter in the name
        return None
    if name in _NOT_OF_MAIL:
        return None
    try:
        b"a".decode(name, "replace")  # of b"" Python decodes anything
    except LookupError:  # a codec, but of bytes to bytes: "hex", "zlib"
        return None
    return _MEANT.get(name, name)


def decode_bytes(data: bytes, declared: str | None, faults: list[str]) -> str:
    """The words that ``data`` spells. Never raises; what was not as declared goes to ``faults``."""
    charset = known_charset(declared) if declared else None
    if data.isascii() and b"\x1b" not in data and not (charset or "").startswith(_NOT_OVER_ASCII):
        if declared and charset is None:
            faults.append(f"the charset {declared[:40]!r} is unknown: read as ASCII")
        return data.decode("ascii")
    for mark, name in _BYTE_ORDER_MARKS:
        if data.startswith(mark):
            return data[len(mark) :].decode(name, "replace")
    if not declared:
        return _sniff(data, "no charset is given", faults)
    if charset is None:
        return _sniff(data, f"the charset {declared[:40]!r} is unknown", faults)
    if charset == "utf-8":
        return _utf8(data, faults)
    if charset in _WESTERN and (text := _strict(data, "utf-8")) is not None:
        # Letters like Ã followed by × hardly ever stand in a Western text; as UTF-8 they are Ø.
        faults.append(f"labelled {declared[:40]}, but the bytes are UTF-8: read as UTF-8")
        return text
    if (text := _strict(data, charset)) is not None:
        if charset == "cp1252":
            _tell_windows(data, declared, faults)
        return text
    if charset.startswith("iso2022_jp") and (text := _windows_jis(data)) is not None:
        return text
    faults.append(f"some bytes are not {declared[:40]}: shown as \ufffd")
    return data.decode(charset, "replace")


def clean_text(text: str) -> str:
    """``text`` with line feeds as the only line ends, no-break spaces and controls as spaces.

    Control characters could move the cursor of the terminal that shows the mail; half surrogates
    (JSON can spell them) could not be stored.
    """
    if not _ODD.search(text):
        return text
    text = _LINE_ENDS.sub("\n", text)
    return _SURROGATES.sub("\ufffd", _CONTROLS.sub(" ", text)).replace("\ufeff", "")


def _strict(data: bytes, charset: str) -> str | None:
    try:
        return data.decode(charset)
    except UnicodeError:
        return None


def _utf8(data: bytes, faults: list[str]) -> str:
    text = _strict(data, "utf-8")
    if text is not None:
        return text
    loose = data.decode("utf-8", "replace")
    if any(char > "\x7f" and char != "\ufffd" for char in loose):
        faults.append("some bytes are not UTF-8: shown as \ufffd")
        return loose
    faults.append("labelled UTF-8, but the bytes are not: read as windows-1252")
    return data.decode("cp1252", "replace")


def _sniff(data: bytes, why: str, faults: list[str]) -> str:
    text = _strict(data, "utf-8")
    if (
        text is not None
        and b"\x1b" in data
        and (japanese := _strict(data, "iso2022_jp")) is not None
    ):
        faults.append(f"{why}: read as iso-2022-jp")
        return japanese
    faults.append(f"{why}: read as {'windows-1252' if text is None else 'UTF-8'}")
    return data.decode("cp1252", "replace") if text is None else text


def _tell_windows(data: bytes, declared: str, faults: list[str]) -> None:
    """Name what the declared charset does not have: curly quotes, or any 8-bit character."""
    label = declared.strip("\"' ").lower()
    if label in ("us-ascii", "ascii"):
        faults.append(f"labelled {label}, but has 8-bit characters: read as windows-1252")
    elif "8859" in label and any(0x80 <= byte <= 0x9F for byte in data):
        faults.append(f"labelled {label[:40]}, but has characters of windows-1252")


def _windows_jis(data: bytes) -> str | None:
    """iso-2022-jp with the vendor row 13 (①, ㎜, №), which Python's codec refuses.

    Each two-byte JIS X 0208 code is turned into Shift_JIS, whose Windows form has that row.
    """

    def shifted(match: re.Match[bytes]) -> bytes:
        codes = match[1]
        out = bytearray()
        for high, low in zip(codes[::2], codes[1::2], strict=False):
            low += (0x1F if low < 0x60 else 0x20) if high & 1 else 0x7E
            out += bytes((((high + 1) >> 1) + (0x70 if high < 0x5F else 0xB0) & 0xFF, low & 0xFF))
        return bytes(out)

    return _strict(_JIS_SINGLE.sub(b"", _JIS_DOUBLE.sub(shifted, data)), "cp932")
