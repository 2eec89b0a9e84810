"""Fits intake/learnt.txt to the labelled questions of this folder; run after they change.

    pip install -e '.[fit]'
    python tests/corpus/questions/fit.py               # writes intake/learnt.txt
    python tests/corpus/questions/fit.py --without FILE.tsv --to OTHER.txt

A linear support vector machine (scikit-learn's ``LinearSVC``), one answer against all else.
Questions that no answer fits are labelled '-', the sentences of labelled mail that asks nothing
'.'. The closed sets are left out. ``--without`` leaves one more out, to score it unread.
"""

from __future__ import annotations

import argparse
import email
import email.policy
import json
import re
import sys
from collections import Counter
from collections.abc import Iterator
from pathlib import Path

import numpy as np
from scipy.sparse import diags
from sklearn.feature_extraction import DictVectorizer
from sklearn.preprocessing import normalize
from sklearn.svm import LinearSVC

from bendreply.intake import learnt
from bendreply.intake.templates import default_templates

HERE = Path(__file__).parent
CLOSED = "closed*.tsv"
SEEN_IN = 3
"""A trait of fewer questions is left out,"""
LEAST = 0.1
"""and so is a weight that is smaller."""
SHORTEST = 9
"""Characters of a mail's sentence that is worth learning from."""


def questions(without: str) -> Iterator[tuple[str, str]]:
    """Label and words of every open question; one with two labels comes twice."""
    closed = set(HERE.glob(CLOSED))
    unread = {words for file in closed for _, words in _rows(file)}
    for file in sorted(set(HERE.glob("*.tsv")) - closed):
        for names, words in _rows(file) if file.name != without else ():
            if words in unread:
                continue  # a few short ones are in both, by chance
            for name in names.split(",") if names else [""]:
                yield name.strip(), words.replace("\\n", "\n")


def _rows(file: Path) -> Iterator[tuple[str, str]]:
    for line in file.read_text("utf-8").splitlines():
        names, _, words = line.partition("\t")
        yield names, words


def phrases() -> Iterator[tuple[str, str]]:
    """The phrases and titles of the approved answers."""
    for answer in default_templates().answers:
        yield from ((answer.name, phrase) for phrase in (*answer.phrases, answer.title))


def plain_mail() -> Iterator[tuple[str, str]]:
    """The sentences of labelled mail that asks nothing."""
    for gold in sorted(HERE.parent.glob("dev*/gold.jsonl")):
        for row in map(json.loads, gold.read_text("utf-8").splitlines()):
            if row.get("questions"):
                continue
            raw = (gold.parent / row["file"]).read_bytes()
            part = email.message_from_bytes(raw, policy=email.policy.default).get_body(("plain",))
            try:
                text = part.get_content() if part else ""
            except LookupError:  # an unknown charset: nothing to learn from
                continue
            for sentence in re.split(r"(?<=[.?!])\s+|\n+", text):
                if len(sentence) >= SHORTEST:
                    yield learnt.PLAIN, sentence


def fit(rows: list[tuple[str, str]]) -> str:
    """The text of ``learnt.txt``."""
    by_hand = {one.name for one in default_templates().answers if one.for_a_person}
    labels = [learnt.NOTHING if name in by_hand | {""} else name for name, _ in rows]
    taken = [learnt.traits(words) for _, words in rows]
    seen = Counter(trait for traits in taken for trait in traits)
    vectors = DictVectorizer()
    amounts = vectors.fit_transform(
        [{t: n for t, n in traits.items() if seen[t] >= SEEN_IN} for traits in taken]
    )
    found = np.asarray((amounts > 0).sum(axis=0)).ravel()
    seldom = np.round(np.log((1 + len(rows)) / (1 + found)) + 1, 2)
    machine = LinearSVC(C=1, class_weight="balanced", random_state=0)
    machine.fit(normalize(amounts @ diags(seldom)), labels)
    weights = np.where(abs(machine.coef_) < LEAST, 0, machine.coef_)
    lines = [
        "// What tests/corpus/questions/fit.py made of the labelled questions; see learnt.py.",
        "// Answers; then by answer where it starts; then trait, how seldom, weight by answer.",
        " ".join(machine.classes_),
        "\t" + _row(machine.intercept_),
    ]
    for trait, rare, column in zip(vectors.feature_names_, seldom, weights.T, strict=True):
        lines.append(f"{trait}\t{round(rare * 100)}\t{_row(column)}")
    return "\n".join(lines) + "\n"


def _row(weights: np.ndarray) -> str:
    hundredths = np.round(weights * 100).astype(int)
    return " ".join(f"{place}:{hundredths[place]}" for place in np.flatnonzero(hundredths))


if __name__ == "__main__":
    asked = argparse.ArgumentParser(description=__doc__.split("\n")[0])
    asked.add_argument("--without", default="")
    asked.add_argument("--to", type=Path, default=HERE.parents[2] / "intake" / learnt.FILE)
    given = asked.parse_args()
    everything = [*questions(given.without), *phrases(), *plain_mail()]
    given.to.write_text(fit(everything), "utf-8")
    sys.stdout.write(f"{len(everything)} rows, {given.to.stat().st_size // 1000} kB\n")
