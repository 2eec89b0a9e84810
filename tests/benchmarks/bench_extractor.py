"""Reading sizes: this project beside a general-purpose quantity extractor, on labelled messages.

pip install quantulum3                                              # for this only
python tests/benchmarks/bench_extractor.py                          # our labelled messages
python tests/benchmarks/bench_extractor.py FOLDER ...               # others with a gold.jsonl

quantulum3 finds quantities; which is which says the naive rule: the first length is the OD, the
second the wall, the third the CLR. As it calls most of the numbers that customers write ("1.75 x
.095") dimensionless, 5" an angle and "5.5 CLR" centilitre roentgen, the rule is also tried kindly:
bare numbers, and those with such made-up units, are lengths in the unit that the message's marked
lengths have, else in inches; 5" is an inch. All are given the same text: decoded, without what is
quoted, and nothing of automatic mail.
"""

from __future__ import annotations

import argparse
import sys
import time
import warnings
from collections.abc import Callable, Iterable
from dataclasses import dataclass, field
from decimal import Decimal
from functools import partial
from pathlib import Path
from typing import TYPE_CHECKING

from bendreply.intake.message import parse_message
from bendreply.intake.model import Kind, Message
from bendreply.intake.own_text import mask
from bendreply.intake.pipeline import Understanding, understand
from bendreply.intake.score import Score, score_folder
from bendreply.intake.triage import automatic
from bendreply.rules.request import LENGTH_FIELDS, SizeRequest

if TYPE_CHECKING:
    from quantulum3.classes import Quantity

HERE = Path(__file__).parents[2]
FOLDERS = ("tests/corpus/dev", "tests/corpus/dev2", "demo_mailbox")
TURNS = 3
Reader = Callable[[Message], Understanding]


@dataclass
class Naive:
    """The extractor with the naive rule; ``kind``: what may well be a length is one, too."""

    kind: bool
    raised: list[str] = field(default_factory=list)
    """What the extractor raised, and on which message."""

    def __call__(self, message: Message) -> Understanding:
        own = mask(message)
        if reason := automatic(message, own):
            return Understanding(message, own, Kind.AUTOMATIC, reason)
        lengths = self._lengths(own.text, message)[: len(LENGTH_FIELDS)]
        if not lengths:
            return Understanding(message, own, Kind.OTHER, "no length found")
        values = {f"{name}_mm": mm for name, mm in zip(LENGTH_FIELDS, lengths, strict=False)}
        return Understanding(message, own, Kind.SIZES, "lengths found", (SizeRequest(**values),))

    def _lengths(self, text: str, message: Message) -> list[Decimal]:
        """All lengths in order of the text [mm]."""
        from quantulum3 import parser

        try:
            found = parser.parse(text)
        except Exception as error:  # noqa: BLE001 - another's faults are counted, not mended
            self.raised.append(f"{message.message_id}: {type(error).__name__}: {error}")
            return []
        marked = [unit for quantity in found if (unit := self._unit(quantity))]
        usual = max(set(marked), key=marked.count) if marked else "inch"
        lengths = []
        for quantity in found:
            unit = self._unit(quantity)
            if unit is None and self.kind and _is_bare(quantity):
                unit = usual
            mm = _mm(quantity.value, unit) if unit else None
            if mm is not None and mm > 0:
                lengths.append(mm)
        return lengths

    def _unit(self, quantity: Quantity) -> str | None:
        """The unit of a length, None for all else."""
        if self.kind and quantity.surface.rstrip().endswith(('"', "”", "''")):
            return "inch"
        return quantity.unit.name if quantity.unit.entity.name == "length" else None


def _is_bare(quantity: Quantity) -> bool:
    """A number without a unit, or with one made of letters that are none."""
    return quantity.unit.name == "dimensionless" or quantity.unit.entity.name == "unknown"


def _mm(value: float, unit: str) -> Decimal | None:
    """A length in mm; None where pint does not know the extractor's name for the unit."""
    from bendreply.rules.units import UnknownUnit, to_mm

    try:
        return to_mm(Decimal(repr(value)), unit).quantize(Decimal("0.0000001"))
    except (UnknownUnit, ArithmeticError):
        return None


def rate(reader: Reader, messages: list[Message]) -> float:
    """Messages a second of processor time."""
    begin = time.process_time()
    for message in messages:
        reader(message)
    return len(messages) / (time.process_time() - begin)


def rates(readers: dict[str, Reader], messages: list[Message]) -> dict[str, float]:
    """The best of some turns each, taken in turns, after one for warming up."""
    best = dict.fromkeys(readers, 0.0)
    for turn in range(TURNS + 1):
        for name, reader in readers.items():
            found = rate(reader, messages)
            if turn:
                best[name] = max(best[name], found)
    return best


def lengths_right(score: Score) -> int:
    """Labelled sizes whose OD, wall and CLR are all as labelled."""
    wrong = {
        (o.file, o.request)
        for o in score.outcomes
        if o.field in LENGTH_FIELDS and o.verdict not in ("right", "empty")
    }
    labelled = {(o.file, o.request) for o in score.outcomes if o.request is not None}
    return len(labelled - wrong)


def made_up(score: Score) -> int:
    """Values of sizes that the sender has not asked for, stated as sure."""
    return sum(o.request is None for o in score.silent_misreads)


def row(name: str, score: Score, per_second: float) -> Iterable[str]:
    yield name
    yield share(score.fully_right, score.requests)
    yield share(lengths_right(score), score.requests)
    yield share(len(score.silent_misreads), score.stated)
    yield str(made_up(score))
    yield f"{per_second:.0f}"


def share(part: int, whole: int) -> str:
    return f"{100 * part / whole:.1f} % ({part} of {whole})" if whole else "-"


HEAD = (
    "reader", "sizes fully right", "OD, wall, CLR right", "silent misreads, of values stated",
    "of which made up", "messages a second",
)  # fmt: skip


def main() -> int:
    parser = argparse.ArgumentParser(
        description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter
    )
    parser.add_argument("folders", nargs="*", type=Path, metavar="FOLDER")
    args = parser.parse_args()
    warnings.filterwarnings("ignore", message="Classifier dependencies not installed")
    say = partial(print, file=sys.stdout, flush=True)
    for folder in args.folders or [HERE / name for name in FOLDERS]:
        strict, kind = Naive(kind=False), Naive(kind=True)
        readers: dict[str, Reader] = {
            "bendreply": understand,
            "quantulum3, naive rule": strict,
            "the same, taken kindly": kind,
        }
        scores = {name: score_folder(folder, reader) for name, reader in readers.items()}
        files = sorted(folder.glob("*.eml"))
        speed = rates(readers, [parse_message(file.read_bytes()) for file in files])
        say(f"\n{folder.name}: {scores['bendreply'].messages} messages\n")
        say(f"| {' | '.join(HEAD)} |\n|{'---|' * len(HEAD)}")
        for name, score in scores.items():
            say(f"| {' | '.join(row(name, score, speed[name]))} |")
            for fault in score.faults:
                say(f"\nnot scored: {fault}")
        for raised in sorted({*strict.raised, *kind.raised}):
            say(f"quantulum3 raised on {raised}")
    return 0


if __name__ == "__main__":
    sys.exit(main())
