"""Fits intake/reading/asked_learnt.txt to the messages of this folder and the open labelled mail.

    pip install -e '.[fit]'
    python tests/corpus/asked/fit.py               # writes intake/reading/asked_learnt.txt
    python tests/corpus/asked/fit.py --without tradesmen.txt --to OTHER.txt

A logistic regression (scikit-learn) over the traits of ``around_size.py``, one example for each
figure that the reader takes for a length. ``--without`` leaves a file or a folder out, to score it
unread. The closed folders (evaluation*) are never learnt from.
"""

from __future__ import annotations

import argparse
import json
import sys
from collections import Counter
from collections.abc import Iterator
from decimal import Decimal
from pathlib import Path
from typing import Any

from marked import messages
from sklearn.feature_extraction import DictVectorizer
from sklearn.linear_model import LogisticRegression

from bendreply.intake.message import parse_message
from bendreply.intake.own_text import mask
from bendreply.intake.reading import asked_learnt
from bendreply.intake.reading.around_size import Surroundings
from bendreply.intake.reading.figures import Figure
from bendreply.intake.reading.stretch import read_stretch

HERE = Path(__file__).parent
CORPUS = HERE.parent
STRENGTH = 0.5
"""The inverse of the penalty on large weights."""
SEEN_IN = 3
"""A trait of fewer messages is left out,"""
LEAST = 0.02
"""and so is a weight that is smaller."""
_MARKED = "marked"
"""A trait of all marked messages: more sizes are told of in them than in mail."""
_INCH = Decimal("25.4")
_DERIVED = frozenset(
    "nps dn id inside_r outside_r inside_d outside_d bend_dia centres dash schedule".split()
)
"""What these say is another value than theirs, so that no label decides on them."""
Example = tuple[dict[str, float], bool, int]
"""Traits, whether it is asked for, and the number of its message."""


def main() -> int:
    args = _arguments()
    examples = list(_examples(args.without))
    args.to.write_text(fitted(examples), "utf-8")
    count = sum(asked for _, asked, _ in examples)
    sys.stdout.write(f"{len(examples)} figures, {count} of them asked for\n")
    return 0


def _arguments() -> argparse.Namespace:
    parser = argparse.ArgumentParser(description=__doc__.split("\n", 1)[0])
    parser.add_argument("--without", default="", metavar="NAME", help="a file or folder")
    default = CORPUS.parents[1] / "intake" / "reading" / asked_learnt.FILE
    parser.add_argument("--to", type=Path, default=default)
    return parser.parse_args()


def fitted(examples: list[Example]) -> str:
    """The text of ``asked_learnt.txt``."""
    seen: Counter[str] = Counter()
    for trait in {(trait, number) for traits, _, number in examples for trait in traits}:
        seen[trait[0]] += 1
    kept = [{t: a for t, a in traits.items() if seen[t] >= SEEN_IN} for traits, _, _ in examples]
    vectors = DictVectorizer()
    rows = vectors.fit_transform(kept)
    rows.indices, rows.indptr = rows.indices.astype("int32"), rows.indptr.astype("int32")
    machine = LogisticRegression(C=STRENGTH, solver="liblinear", max_iter=500, random_state=1)
    machine.fit(rows, [asked for _, asked, _ in examples])
    weights = dict(zip(vectors.get_feature_names_out(), machine.coef_[0], strict=True))
    del weights[_MARKED]
    lines = [
        "// What tests/corpus/asked/fit.py made of the marked messages; see asked_learnt.py.",
        "// trait, weight x 100",
        f"{asked_learnt.START}\t{round(machine.intercept_[0] * 100)}",
        *(f"{t}\t{round(w * 100)}" for t, w in sorted(weights.items()) if abs(w) >= LEAST),
    ]
    return "\n".join(lines) + "\n"


def _examples(without: str) -> Iterator[Example]:
    number = 0
    for file in sorted(HERE.glob("*.txt")):
        for message in messages(file) if file.name != without else ():
            number += 1
            around = Surroundings(message.text)
            for start, _ in _figures(message.text, 0):
                yield around.traits(start) | {_MARKED: 3.0}, message.asks_at(start), number
    for folder in sorted(CORPUS.glob("dev*")):
        for line in _lines(folder) if folder.name != without else ():
            number += 1
            for traits, asked in _of_mail(folder, json.loads(line)):
                yield traits, asked, number


def _lines(folder: Path) -> list[str]:
    lines = (folder / "gold.jsonl").read_text("utf-8").splitlines()
    return [line for line in lines if line.strip()]


def _of_mail(folder: Path, label: dict[str, Any]) -> Iterator[tuple[dict[str, float], bool]]:
    """The figures of a labelled mail that its label decides on by their value."""
    own = mask(parse_message((folder / label["file"]).read_bytes()))
    around = Surroundings(own.text)
    body = own.body_start
    stretches = [(own.text[body:], body)]
    if own.subject_counts:
        stretches.append((own.text[: max(0, body - 2)], 0))
    for text, offset in stretches:
        for start, figure in _figures(text, offset):
            if not figure.is_gauge and figure.role not in _DERIVED:
                yield around.traits(start), _is_labelled(figure, label["requests"])


def _figures(text: str, offset: int) -> Iterator[tuple[int, Figure]]:
    """Where each figure begins that is taken for a length, whoever wants it, and the figure."""
    stretch = read_stretch(text, offset)
    for figure in stretch.layout.figures:
        if figure.role not in (None, "noise", "quantity"):
            yield stretch.plain.span(figure.start, figure.end)[0] + offset, figure


def _is_labelled(figure: Figure, requests: list[dict[str, Any]]) -> bool:
    """Whether a labelled length has the figure's value, in whichever unit it is."""
    value = figure.number.value
    for request in requests:
        for name in ("od_mm", "wall_mm", "clr_mm"):
            wanted = request.get(name)
            scales = [Decimal(1), _INCH, Decimal(10)]
            if name == "clr_mm" and request.get("od_mm"):
                scales.append(Decimal(str(request["od_mm"])))  # "3D"
            if wanted is not None and any(_same(value * s, Decimal(str(wanted))) for s in scales):
                return True
    return False


def _same(value: Decimal, wanted: Decimal) -> bool:
    return abs(value - wanted) <= max(wanted * Decimal("0.005"), Decimal("0.03"))


if __name__ == "__main__":
    sys.exit(main())
