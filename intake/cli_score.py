"""``bendreply score DIR``: the figures of the reading, the worst of it first."""

from __future__ import annotations

import argparse
from typing import TYPE_CHECKING

from .cli_common import UNUSABLE_INPUT, RefusedError, complain

if TYPE_CHECKING:
    from rich.console import Console

    from .score import Score
    from .score_match import Verdict


def score(args: argparse.Namespace) -> int:
    """Score a labelled folder and print the figures."""
    from .score import ScoreError, as_json, score_folder

    try:
        result = score_folder(args.folder)
    except ScoreError as error:
        raise RefusedError(str(error)) from error
    if args.json:
        print(as_json(result))
    else:
        _print(result, verbose=args.verbose)
    for fault in result.faults:
        complain(fault)
    return UNUSABLE_INPUT if result.faults else 0


def _print(score: Score, *, verbose: bool) -> None:
    from .screen import console

    out = console()
    _silent_misreads(out, score)
    _figures(out, score)
    _fields(out, score)
    _kinds(out, score)
    _tags(out, score, every=verbose)
    if verbose:
        _misses(out, score)


def _silent_misreads(out: Console, score: Score) -> None:
    from .screen import table

    misreads = score.silent_misreads
    if not misreads:
        out.print("Silent misreads: none\n", style="bold")
        return
    rows = table("file", "size", "field", "stated", "label", title="Silent misreads")
    for o in misreads:
        rows.add_row(o.file, _number(o.request), o.field, o.stated, o.gold or "-")
    out.print(rows)
    out.print()


def _figures(out: Console, score: Score) -> None:
    from .screen import table

    labelled, read_as, both = score.automatic()
    right_kind = sum(n for (gold, ours), n in score.kinds.items() if gold is ours)
    rows = table("figure", "share", "of", title=f"{score.messages} messages")
    for column in rows.columns[1:]:
        column.justify = "right"
    for name, part, whole in (
        ("sizes fully right", score.fully_right, score.requests),
        ("silent misreads, of values stated", len(score.silent_misreads), score.stated),
        ("doubt raised where due", score.doubts_raised, score.doubts_due),
        ("needless doubts, of right values", len(score.needless_doubts), score.count("right")),
        ("kind right", right_kind, score.messages),
        ("automatic mail caught", both, labelled),
        ("taken for automatic, rightly", both, read_as),
    ):
        rows.add_row(name, _percent(part, whole), f"{part} / {whole}")
    out.print(rows)
    out.print()


def _fields(out: Console, score: Score) -> None:
    from .score_match import ALL_FIELDS
    from .screen import table

    verdicts: tuple[Verdict, ...] = ("right", "missing", "doubted", "silent")
    heads = ("right", "missing", "wrong, doubted", "wrong, silent")
    rows = table("field", *heads, title="By field")
    for column in rows.columns[1:]:
        column.justify = "right"
    for name in ALL_FIELDS:
        rows.add_row(name, *(str(score.count(verdict, only=(name,))) for verdict in verdicts))
    out.print(rows)
    out.print()


def _kinds(out: Console, score: Score) -> None:
    from .model import Kind
    from .screen import table

    rows = table("", *Kind, title="By kind: labelled (rows) and as read (columns)")
    for column in rows.columns[1:]:
        column.justify = "right"
    for gold in Kind:
        rows.add_row(gold, *(str(score.kinds[gold, ours]) for ours in Kind))
    out.print(rows)
    out.print()


def _tags(out: Console, score: Score, *, every: bool) -> None:
    from .screen import table

    title = "By tag" if every else "By tag, where anything was not right"
    rows = table("tag", "messages", "sizes fully right", "silent misreads", title=title)
    for column in rows.columns[1:]:
        column.justify = "right"
    for tag, tally in sorted(score.tags.items(), key=lambda item: (-item[1].messages, item[0])):
        if not every and tally.fully_right == tally.requests and not tally.silent:
            continue
        right = f"{tally.fully_right} / {tally.requests}" if tally.requests else "-"
        rows.add_row(tag, str(tally.messages), right, str(tally.silent or "-"))
    out.print(rows)
    out.print()


def _misses(out: Console, score: Score) -> None:
    """Everything that is not as labelled, message by message."""
    lines: dict[str, list[str]] = {}
    for file, gold, ours, why in score.wrong_kinds:
        lines.setdefault(file, []).append(f"kind: read as {ours}, labelled {gold} ({why})")
    for o in score.outcomes:
        where = f"size {_number(o.request)} {o.field}"
        if o.verdict not in ("right", "empty"):
            word = {"missing": "not read", "doubted": "wrong, doubted", "silent": "wrong, silent"}
            lines.setdefault(o.file, []).append(
                f"{where}: {word[o.verdict]}: {o.stated or '-'}, labelled {o.gold or '-'}"
            )
        elif o.needless_doubt:
            lines.setdefault(o.file, []).append(f"{where}: needless doubt on {o.stated}")
    for file, number, name in score.undoubted:
        lines.setdefault(file, []).append(f"size {number} {name}: no doubt raised, labelled so")
    out.print("Every miss", style="bold")
    for file in sorted(lines):
        out.print(file)
        for line in lines[file]:
            out.print(f"  {line}")


def _number(request: int | None) -> str:
    return "made up" if request is None else str(request)


def _percent(part: int, whole: int) -> str:
    return f"{100 * part / whole:.1f} %" if whole else "-"
