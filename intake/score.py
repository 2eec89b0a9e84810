"""How well labelled messages are read: every figure against a named denominator.

``gold.jsonl`` lies beside the messages, one label an object a line: file, kind, requests (shape,
od_mm, wall_mm, clr_mm, material, grade, quantity, needed_by, doubt), questions, tags, perhaps
lang. A value is right within 0.5 % or 0.03 mm, whichever is more.

Denominators:

* sizes fully right: of all labelled requests, those whose od, wall, clr, material and shape all
  agree with the label (an empty label wants an empty reading);
* silent misreads: of all values stated (od, wall, clr, material, shape, quantity, needed_by), those
  that are not the label's and carry no doubt. Every value of a made-up request is one. A round
  shape that the label shares counts nowhere: nobody writes it;
* doubt raised: of all fields labelled doubtful, those doubted or left empty. A request that was
  not seen at all raised no doubt;
* needless doubts: of all right values, those doubted though the label is sure;
* grade is compared loosely (case, spaces, punctuation; one within the other), in its own row of
  the table and in no figure above, because each sender writes it another way.
"""

from __future__ import annotations

import json
from collections import Counter
from collections.abc import Callable, Iterator, Sequence
from dataclasses import dataclass, field
from pathlib import Path

from pydantic import ValidationError

from ..rules.request import SizeRequest
from .message import parse_message
from .model import Kind, Message
from .pipeline import Understanding, understand
from .score_match import (
    ALL_FIELDS,
    COUNTED_FIELDS,
    SIZE_FIELDS,
    GoldMessage,
    GoldRequest,
    Outcome,
    Verdict,
    compare,
    is_doubted,
    match,
    stated,
)


class ScoreError(Exception):
    """The labels can't be used; the message says which file and line, and why."""


@dataclass(slots=True)
class Tally:
    """The figures of one tag."""

    messages: int = 0
    requests: int = 0
    fully_right: int = 0
    silent: int = 0


@dataclass(slots=True)
class Score:
    """All outcomes of one folder, and the figures drawn from them."""

    outcomes: list[Outcome] = field(default_factory=list)
    requests: int = 0
    fully_right: int = 0
    doubts_due: int = 0
    doubts_raised: int = 0
    undoubted: list[tuple[str, int, str]] = field(default_factory=list)
    """(file, request, field) labelled doubtful, but stated as sure."""
    kinds: Counter[tuple[Kind, Kind]] = field(default_factory=Counter)
    """(labelled, read) -> messages."""
    wrong_kinds: list[tuple[str, Kind, Kind, str]] = field(default_factory=list)
    """(file, labelled, read, the reason given)."""
    tags: dict[str, Tally] = field(default_factory=dict)
    faults: list[str] = field(default_factory=list)
    """Messages that could not be scored: one sentence each."""

    @property
    def messages(self) -> int:
        """Messages scored."""
        return self.kinds.total()

    def count(self, *verdicts: Verdict, only: Sequence[str] = COUNTED_FIELDS) -> int:
        """Outcomes with one of the verdicts among the fields named."""
        return sum(o.verdict in verdicts and o.field in only for o in self.outcomes)

    @property
    def stated(self) -> int:
        """Values stated: right, wrong under a doubt, or misread in silence."""
        return self.count("right", "doubted", "silent")

    @property
    def silent_misreads(self) -> list[Outcome]:
        """Values stated as sure that are not the label's, size fields first."""
        found = [o for o in self.outcomes if o.verdict == "silent" and o.field in COUNTED_FIELDS]
        return sorted(found, key=lambda o: (COUNTED_FIELDS.index(o.field), o.file))

    @property
    def needless_doubts(self) -> list[Outcome]:
        """Right values that were doubted though the label is sure."""
        return [o for o in self.outcomes if o.needless_doubt]

    def automatic(self) -> tuple[int, int, int]:
        """(labelled automatic, read as automatic, both)."""
        labelled = sum(n for (gold, _), n in self.kinds.items() if gold is Kind.AUTOMATIC)
        read = sum(n for (_, ours), n in self.kinds.items() if ours is Kind.AUTOMATIC)
        return labelled, read, self.kinds[Kind.AUTOMATIC, Kind.AUTOMATIC]


def score_folder(
    folder: Path | str, reader: Callable[[Message], Understanding] = understand
) -> Score:
    """Read every message that ``folder/gold.jsonl`` labels and compare. ``reader`` is what reads.

    Raises ScoreError where the labels can't be read. A message that is missing or can't be
    processed is named in ``faults``; the rest is scored.
    """
    folder = Path(folder)
    score = Score()
    for gold in _labels(folder / "gold.jsonl"):
        try:
            raw = (folder / gold.file).read_bytes()
        except OSError as error:
            score.faults.append(f"{gold.file}: cannot be read ({error.strerror})")
            continue
        try:
            said = reader(parse_message(raw))
        except Exception as error:  # noqa: BLE001 - one bad message must not hide the other figures
            score.faults.append(f"{gold.file}: internal fault ({type(error).__name__}: {error})")
            continue
        enter(score, gold, said.kind, said.why_kind, said.requests)
    return score


def _labels(path: Path) -> Iterator[GoldMessage]:
    try:
        lines = path.read_text(encoding="utf-8").splitlines()
    except OSError as error:
        raise ScoreError(f"{path}: no labels to score against ({error.strerror})") from error
    for number, line in enumerate(lines, start=1):
        if not line.strip():
            continue
        try:
            yield GoldMessage.model_validate_json(line)
        except ValidationError as error:
            first = error.errors()[0]
            where = ".".join(str(step) for step in first["loc"])
            raise ScoreError(
                f"{path} line {number}: {where + ': ' if where else ''}{first['msg']}"
            ) from error


def enter(
    score: Score, gold: GoldMessage, kind: Kind, why: str, requests: Sequence[SizeRequest]
) -> None:
    """Add one message's outcomes to the score: its label, and what was read."""
    score.kinds[gold.kind, kind] += 1
    if kind is not gold.kind:
        score.wrong_kinds.append((gold.file, gold.kind, kind, why))
    pairs = match(gold.requests, requests)
    taken = {ours for ours in pairs if ours is not None}
    outcomes: list[Outcome] = []
    fully_right = 0
    for number, (label, ours) in enumerate(zip(gold.requests, pairs, strict=True), start=1):
        found = None if ours is None else requests[ours]
        compared = [compare(gold.file, number, name, label, found) for name in ALL_FIELDS]
        outcomes += compared
        fully_right += all(o.verdict in ("right", "empty") for o in compared[: len(SIZE_FIELDS)])
        for name in label.doubt:
            score.doubts_due += 1
            if found is not None and (is_doubted(found, name) or stated(found, name) is None):
                score.doubts_raised += 1
            else:
                score.undoubted.append((gold.file, number, name))
    nothing = GoldRequest()
    for index, extra in enumerate(requests):
        if index not in taken:
            outcomes += (compare(gold.file, None, name, nothing, extra) for name in ALL_FIELDS)
    score.outcomes += outcomes
    score.requests += len(gold.requests)
    score.fully_right += fully_right
    silent = sum(o.verdict == "silent" and o.field in COUNTED_FIELDS for o in outcomes)
    for tag in (*gold.tags, *([f"language {gold.lang}"] if gold.lang else [])):
        tally = score.tags.setdefault(tag, Tally())
        tally.messages += 1
        tally.requests += len(gold.requests)
        tally.fully_right += fully_right
        tally.silent += silent


def as_json(score: Score) -> str:
    """Every figure as one JSON object, shares as fractions of 1 (null where nothing counts)."""
    labelled, read_as, both = score.automatic()
    return json.dumps(
        {
            "messages": score.messages,
            "requests": score.requests,
            "fully_right": _share(score.fully_right, score.requests),
            "stated_values": score.stated,
            "silent_misreads": _share(len(score.silent_misreads), score.stated),
            "doubt_raised": _share(score.doubts_raised, score.doubts_due),
            "needless_doubts": _share(len(score.needless_doubts), score.count("right")),
            "automatic_recall": _share(both, labelled),
            "automatic_precision": _share(both, read_as),
            "kind_right": _share(
                sum(n for (gold, ours), n in score.kinds.items() if gold is ours), score.messages
            ),
            "fields": {
                name: {
                    verdict: score.count(verdict, only=(name,))
                    for verdict in ("right", "missing", "doubted", "silent")
                }
                for name in ALL_FIELDS
            },
            "kinds": [
                {"gold": gold, "read": ours, "messages": n}
                for (gold, ours), n in sorted(score.kinds.items())
            ],
            "tags": {
                tag: {
                    "messages": t.messages,
                    "requests": t.requests,
                    "fully_right": t.fully_right,
                    "silent": t.silent,
                }
                for tag, t in sorted(score.tags.items())
            },
            "silent_misread_list": [
                {"file": o.file, "field": o.field, "stated": o.stated, "gold": o.gold}
                for o in score.silent_misreads
            ],
            "faults": score.faults,
        }
    )


def _share(part: int, whole: int) -> float | None:
    return round(part / whole, 4) if whole else None
