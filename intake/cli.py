"""The command line: one command run, and what becomes of its faults.

Only the standard library is imported here, so that ``bendreply --help`` answers at once; each
command's own file is imported when that command runs.
"""

from __future__ import annotations

import argparse
import os
import sys
from collections.abc import Sequence
from importlib import import_module

from .cli_commands import build_parser
from .cli_common import UNUSABLE_INPUT, RefusedError, complain


def main(argv: Sequence[str] | None = None) -> int:
    """Run one command and return its exit status."""
    if sys.stdout is None:  # closed by the caller; a file opened from here on would take its place
        if sys.stderr is not None:
            complain("the output can't be written: standard output is closed")
        return UNUSABLE_INPUT
    for stream in (sys.stdout, sys.stderr):
        # A customer's odd character must not stop the run on a terminal that can't show it.
        if reconfigure := getattr(stream, "reconfigure", None):
            reconfigure(errors="backslashreplace")
    try:
        status = _outcome(argv)
        sys.stdout.flush()
    except BrokenPipeError:  # the reader (`| head`) has seen enough
        _forget_output()
        return 0
    except OSError as error:
        _forget_output()
        complain(f"{error.filename or 'the output'} can't be used: {error.strerror or error}")
        return UNUSABLE_INPUT
    return status


def _forget_output() -> None:
    """What is still buffered goes nowhere, or the interpreter would complain on its way out."""
    os.dup2(os.open(os.devnull, os.O_WRONLY), sys.stdout.fileno())


def _outcome(argv: Sequence[str] | None) -> int:
    try:
        return _run(build_parser().parse_args(argv))
    except RefusedError as refused:
        for sentence in refused.sentences:
            complain(sentence)
        return refused.status
    except KeyboardInterrupt:
        complain("stopped; what was finished before is kept")
        return 130
    except SystemExit as stop:  # argparse: --help, --version, or a wrong call
        return stop.code if isinstance(stop.code, int) else 2


def _run(args: argparse.Namespace) -> int:
    module, function = args.carried_out_by
    status: int = getattr(import_module(f".{module}", __package__), function)(args)
    return status
