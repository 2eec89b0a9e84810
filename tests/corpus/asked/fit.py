"""Fits reading/nets/roles_learnt.txt to the messages of this folder and open labelled mail.

    pip install -e '.[fit]'
    python tests/corpus/asked/fit.py               # writes intake/reading/nets/roles_learnt.txt
    python tests/corpus/asked/fit.py --without dev23,workshops.txt --to OTHER.txt

A logistic regression (scikit-learn) over the traits of ``around_figure.py``, one example for each
figure: OD, wall or radius where the rules read it so and the label agrees, else none of them. Where
the rules miss a labelled length, the message teaches nothing, unless its figures are marked one by
one (``roles/*.txt``). ``--without`` leaves files or folders out, to score them unread. The closed
folders (evaluation*) are never learnt from.
"""

from __future__ import annotations

import argparse
import sys
from collections import Counter
from collections.abc import Container, Iterator
from datetime import date
from pathlib import Path

from marked import LEFT_OUT, ROLE_FILES, messages, named_messages
from sklearn.feature_extraction import DictVectorizer
from sklearn.linear_model import LogisticRegression

from bendreply.intake.message import parse_message
from bendreply.intake.model import Kind
from bendreply.intake.pasted import text_message
from bendreply.intake.pipeline import Understanding, understand
from bendreply.intake.reading.nets import roles_learnt
from bendreply.intake.reading.nets.around_figure import Figures, overlapping
from bendreply.intake.score_match import GoldMessage, GoldRequest, compare, match

HERE = Path(__file__).parent
CORPUS = HERE.parent
STRENGTH = 0.7
"""The inverse of the penalty on large weights."""
SEEN_IN = 4
"""A trait of fewer figures is left out,"""
LEAST = 10
"""and so is one whose weights [hundredths] are all smaller."""
_MARKED = "marked"
"""A trait of all marked messages: more sizes are told of in them than in mail."""
_NONE = "none"
_TODAY = date(2026, 6, 1)
Example = tuple[dict[str, float], str]
"""Traits, and what the figure is."""


def main() -> int:
    args = _arguments()
    examples = list(_examples(set(args.without.split(","))))
    args.to.write_text(fitted(examples), "utf-8")
    sys.stdout.write(f"{len(examples)} figures: {Counter(role for _, role in examples)}\n")
    return 0


def _arguments() -> argparse.Namespace:
    parser = argparse.ArgumentParser(description=__doc__.split("\n", 1)[0])
    parser.add_argument("--without", default="", metavar="NAMES", help="files or folders")
    default = CORPUS.parents[1] / "intake" / "reading" / "nets" / roles_learnt.FILE
    parser.add_argument("--to", type=Path, default=default)
    return parser.parse_args()


def fitted(examples: list[Example]) -> str:
    """The text of ``roles_learnt.txt``: weights against 'none of them', in hundredths."""
    seen = Counter(trait for traits, _ in examples for trait in traits)
    kept = [{t: a for t, a in traits.items() if seen[t] >= SEEN_IN} for traits, _ in examples]
    vectors = DictVectorizer()
    rows = vectors.fit_transform(kept)
    rows.indices, rows.indptr = rows.indices.astype("int32"), rows.indptr.astype("int32")
    machine = LogisticRegression(C=STRENGTH, max_iter=500)
    machine.fit(rows, [role for _, role in examples])
    none = list(machine.classes_).index(_NONE)
    order = [list(machine.classes_).index(role) for role in roles_learnt.ROLES]
    against = (machine.coef_ - machine.coef_[none])[order] * 100
    start = (machine.intercept_ - machine.intercept_[none])[order] * 100
    weights = dict(zip(vectors.get_feature_names_out(), against.T.round().astype(int), strict=True))
    del weights[_MARKED]
    lines = [
        "// What tests/corpus/asked/fit.py made of labelled mail; see roles_learnt.py.",
        f"// trait, and its weight x 100 for {', '.join(roles_learnt.ROLES)}",
        "\t".join((roles_learnt.START, *(str(round(one)) for one in start))),
        *(
            "\t".join((trait, *map(str, one)))
            for trait, one in sorted(weights.items())
            if max(map(abs, one)) >= LEAST
        ),
    ]
    return "\n".join(lines) + "\n"


def _examples(without: Container[str]) -> Iterator[Example]:
    for file in sorted(HERE.glob("*.txt")):
        for message in messages(file) if file.name not in without else ():
            said = understand(text_message(message.text, _TODAY))
            shift = said.own.text.find(message.text[:9])
            roles = {
                (evidence.start, evidence.end): evidence.field
                for request in said.requests
                for evidence in request.evidence
                if evidence.surface and message.asks_at(evidence.start - shift)
            }
            for start, traits, role in _figures(said, roles):
                if role != _NONE or not message.asks_at(start - shift):
                    yield traits | {_MARKED: 3.0}, role
    for file in sorted(HERE.glob(ROLE_FILES)):
        for named in named_messages(file) if file.name not in without else ():
            figures = Figures(named.text)
            for at in figures.at:
                role = named.role_at(figures[at].start, figures[at].end)
                if role != LEFT_OUT:
                    known = role if role in roles_learnt.ROLES else _NONE
                    yield figures.traits(at) | {_MARKED: 3.0}, known
    for folder in sorted(CORPUS.glob("dev*")):
        for label in _labels(folder) if folder.name not in without else ():
            said = understand(parse_message((folder / label.file).read_bytes()))
            roles = _right(label, said)
            if roles is not None and said.kind is not Kind.AUTOMATIC:
                yield from ((traits, role) for _, traits, role in _figures(said, roles))


def _labels(folder: Path) -> Iterator[GoldMessage]:
    for line in (folder / "gold.jsonl").read_text("utf-8").splitlines():
        if line.strip():
            yield GoldMessage.model_validate_json(line)


def _right(label: GoldMessage, said: Understanding) -> dict[tuple[int, int], str] | None:
    """Where in the text the labelled lengths stand, and which each is; None where one is missed."""
    found: dict[tuple[int, int], str] = {}
    pairs = match(label.requests, said.requests)
    for gold, place in zip(label.requests, pairs, strict=True):
        request = None if place is None else said.requests[place]
        outcomes = {
            field: compare(label.file, None, field, gold or GoldRequest(), request).verdict
            for field in roles_learnt.ROLES
        }
        if "missing" in outcomes.values():
            return None
        for evidence in request.evidence if request is not None else ():
            if evidence.surface and outcomes.get(evidence.field) == "right":
                found[evidence.start, evidence.end] = evidence.field
    return found


def _figures(
    said: Understanding, roles: dict[tuple[int, int], str]
) -> Iterator[tuple[int, dict[str, float], str]]:
    """Every figure of the sender's own words: where, its traits, and what it is."""
    figures = Figures(said.own.text)
    role_at = {
        at: role
        for (start, end), role in roles.items()
        if role in roles_learnt.ROLES
        for at in overlapping(figures, start, end)
    }
    for at in figures.at:
        yield figures[at].start, figures.traits(at), role_at.get(at, _NONE)


if __name__ == "__main__":
    sys.exit(main())
