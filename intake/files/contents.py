"""What was found in one attached file, on its way from the process that opened it."""

from __future__ import annotations

import json
import struct
from dataclasses import asdict, dataclass, field

MOST_TEXT = 1_000_000
"""Characters of one file that are kept, as of an attached text."""
MOST_SECONDS = 6
"""Processor time for one file."""
ENOUGH_SECONDS = MOST_SECONDS / 2
"""Processor time after which a reader stops by itself, with what it has."""
FRAME = struct.Struct("8sQ")
"""Before each file, its kind and length; before each answer, "done" or "stopped" and its length."""
TOO_MUCH = "it needs too much time or memory to open"


@dataclass(slots=True)
class Contents:
    """The words of a file, or why there are none."""

    texts: list[tuple[str, str]] = field(default_factory=list)
    """(name of the sheet, its text) of each sheet; one without a name for a PDF."""
    remarks: list[str] = field(default_factory=list)
    """What was left out, each in one clause."""
    why_unread: str = ""
    """Why nothing was read, in one clause; then there are no texts."""

    def packed(self) -> bytes:
        """As JSON, in ASCII, with no more than ``MOST_TEXT`` characters of text."""
        room, kept = MOST_TEXT, list[tuple[str, str]]()
        for name, text in self.texts:
            kept.append((name, text[:room]))
            room -= len(kept[-1][1])
        if sum(len(text) for _, text in self.texts) > MOST_TEXT:
            self.remarks.append("only the first million characters were read")
        self.texts = kept
        return json.dumps(asdict(self)).encode("ascii")

    @classmethod
    def unpacked(cls, data: bytes) -> Contents:
        """What ``packed`` gave. Raises ValueError for anything else."""
        read = json.loads(data)
        try:
            texts = [(str(name), str(text)) for name, text in read["texts"]]
            return cls(texts, [str(one) for one in read["remarks"]], str(read["why_unread"]))
        except (KeyError, TypeError) as error:
            raise ValueError("not the contents of a file") from error
