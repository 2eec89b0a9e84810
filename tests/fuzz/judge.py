"""What must hold for every input, whatever stands in it."""

from __future__ import annotations

import io
import time
from collections.abc import Iterator
from dataclasses import dataclass
from datetime import date

from mutate import MOST, Input

from bendreply.intake.chat_bursts import Burst, read_chat
from bendreply.intake.message import parse_message
from bendreply.intake.model import Message, Result
from bendreply.intake.output import json_line, message_out
from bendreply.intake.pipeline import process
from bendreply.intake.screen import console, read_view
from bendreply.intake.sources import read_paths, split_mbox
from bendreply.intake.templates import Templates
from bendreply.rules.shop import sample_shop

SECONDS = 0.5
"""Of process time, the most that an input may take."""
_TURNS = 3
"""A slow input is slow only if it is so that many times: the machine does other work, too."""
_TODAY = date(2026, 11, 25)


@dataclass(frozen=True, slots=True)
class Fault:
    """What went wrong with an input: its kind, short and alike for alike faults, and the rest."""

    kind: str
    detail: str


class Judge:
    """Takes inputs the whole way that ``bendreply read`` takes them."""

    def __init__(self) -> None:
        self.shop = sample_shop()
        self.templates = Templates(self.shop.folder)
        self.slowest = 0.0
        """Process time of the slowest input so far [s]."""
        self.sizes = 0
        """Sizes read so far."""

    def fault(self, given: Input, *, on_screen: bool) -> Fault | None:
        """The first thing that does not hold, or None. ``on_screen``: the table view as well."""
        try:
            used = self._seconds(given, on_screen)
        except Broken as broken:
            return Fault(broken.args[0], broken.args[1])
        except Exception as error:  # noqa: BLE001 - that is what is looked for
            return Fault(*_told(error))
        if used > SECONDS and len(given.raw) <= MOST:
            used = min(used, *(self._seconds(given, on_screen) for _ in range(_TURNS - 1)))
            if used > SECONDS:
                return Fault("slow", f"{used:.2f} s for {len(given.raw)} bytes")
        self.slowest = max(self.slowest, used)
        return None

    def _seconds(self, given: Input, on_screen: bool) -> float:
        start = time.process_time()
        results = [process(m, self.shop, self.templates) for m in _messages(given)]
        lines = [json_line(message_out(result, "input")) for result in results]
        used = time.process_time() - start
        for result, line in zip(results, lines, strict=True):
            _check(result, line)
            self.sizes += len(result.assessments)
            if on_screen:
                out = console(100)
                out.file = io.StringIO()
                read_view(out, result, "input")
        return used


class Broken(Exception):
    """A promise not kept: (kind, detail)."""


def _messages(given: Input) -> Iterator[Message]:
    match given.way:
        case "pasted":
            for item in read_paths(["-"], today=_TODAY, stdin=io.BytesIO(given.raw)):
                if item.message is not None:
                    yield item.message
        case "mbox":
            yield from map(parse_message, split_mbox(io.BytesIO(given.raw)))
        case "chat":
            for said in read_chat(io.BytesIO(given.raw)):
                if isinstance(said, Burst):
                    yield said.message


def _check(result: Result, line: str) -> None:
    """The promises of the output: evidence, lengths, doubts, no draft for a machine."""
    text = result.message.text
    for assessment in result.assessments:
        request = assessment.request
        for evidence in request.evidence:
            # End 0 is evidence in an attachment, which has no place in the message.
            if evidence.end and text[evidence.start : evidence.end] != evidence.surface:
                raise Broken("evidence", repr(evidence))
            if not evidence.end and "in the attachment" not in evidence.how:
                raise Broken("evidence without a place", repr(evidence))
        for length in (request.od_mm, request.wall_mm, request.clr_mm):
            if length is not None and not (length.is_finite() and length > 0):
                raise Broken("length", repr(request))
        for doubt in request.doubts:
            if not doubt.why:
                raise Broken("doubt without a reason", repr(doubt))
    if result.kind == "automatic" and result.draft is not None:
        raise Broken("draft for automatic mail", result.draft.subject)
    if "\n" in line:
        raise Broken("more than one line of JSON", line[:200])


def _told(error: Exception) -> tuple[str, str]:
    """Where an exception came from: alike for alike faults, so that each is kept once."""
    at = error.__traceback__
    place = ""
    while at is not None:
        code = at.tb_frame.f_code
        if "bendreply" in code.co_filename or "/intake/" in code.co_filename:
            place = f"{code.co_filename.rsplit('/', 1)[-1]}:{at.tb_lineno}"
        at = at.tb_next
    return f"{type(error).__name__} {place}", str(error)
