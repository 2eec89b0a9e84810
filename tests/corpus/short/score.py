"""Scores the short labelled requests of this folder, as ``bendreply score`` does mail.

python tests/corpus/short/score.py              # every file
python tests/corpus/short/score.py radii_en     # one, in both halves
python tests/corpus/short/score.py --misses told  # what is read wrong, of the open half only
"""

from __future__ import annotations

import argparse
import json
import sys
from collections.abc import Iterator
from dataclasses import dataclass
from datetime import date
from pathlib import Path

from bendreply.intake.pasted import text_message
from bendreply.intake.pipeline import understand
from bendreply.intake.score import Score, enter
from bendreply.intake.score_match import GoldMessage

HERE = Path(__file__).parent
CLOSED = ".closed"
TOPICS = ("radii_en", "radii_eu", "walls", "counts", "lists", "told")


@dataclass(frozen=True, slots=True)
class Short:
    """One message and its label."""

    text: str
    sent_on: date
    label: GoldMessage


def main() -> int:
    args = _arguments()
    for topic in args.topics or TOPICS:
        for half in ("", CLOSED):
            score = scored(topic + half)
            sys.stdout.write(f"{topic + half:16} {told(score)}\n")
            if args.misses and not half:
                sys.stdout.writelines(_misses(topic, score))
    return 0


def _arguments() -> argparse.Namespace:
    parser = argparse.ArgumentParser(description=__doc__.split("\n", 1)[0])
    parser.add_argument("topics", nargs="*", choices=[*TOPICS, []])
    parser.add_argument("--misses", action="store_true", help="with the messages, open half only")
    return parser.parse_args()


def shorts(name: str) -> Iterator[Short]:
    """The messages of one file, in order."""
    for number, line in enumerate((HERE / f"{name}.jsonl").read_text("utf-8").splitlines()):
        row = json.loads(line)
        sized = [{"shape": "round", **request} for request in row["requests"]]
        kind = "sizes" if sized else "other"
        label = GoldMessage.model_validate(
            {"file": str(number), "kind": kind, "requests": sized, "lang": row["lang"]}
        )
        yield Short(row["text"], date.fromisoformat(row["date"]), label)


def scored(name: str) -> Score:
    """All outcomes of one file. What kind a message without sizes is, is not labelled."""
    score = Score()
    for one in shorts(name):
        said = understand(text_message(one.text, one.sent_on))
        enter(score, one.label, said.kind, said.why_kind, said.requests)
    return score


def told(score: Score) -> str:
    """The figures in one line."""
    stated, right = score.stated, score.count("right")
    silent, needless = len(score.silent_misreads), len(score.needless_doubts)
    return (
        f"sizes right {score.fully_right / score.requests:6.1%} of {score.requests},"
        f" silent {silent / stated:6.2%} of {stated}, needless {needless / right:5.1%}"
    )


def _misses(topic: str, score: Score) -> Iterator[str]:
    texts = [one.text for one in shorts(topic)]
    wrong: dict[str, list[str]] = {}
    for o in score.outcomes:
        if o.verdict in ("silent", "missing", "doubted") or o.needless_doubt:
            verdict = "needless" if o.needless_doubt else o.verdict
            wrong.setdefault(o.file, []).append(
                f"    {verdict} {o.request or 'made up'} {o.field}: {o.stated}, label {o.gold}\n"
            )
    for file, lines in wrong.items():
        yield f"--- {file}\n{texts[int(file)]}\n"
        yield from lines


if __name__ == "__main__":
    raise SystemExit(main())
