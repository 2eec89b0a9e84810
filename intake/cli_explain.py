"""``explain``: every figure of a bend with its formula and where it comes from."""

from __future__ import annotations

import argparse
import json
from decimal import Decimal
from typing import TYPE_CHECKING, Any

from .cli_common import RefusedError, shop_of, standard_input, today_of

if TYPE_CHECKING:
    from ..rules.assessment import Assessment
    from ..rules.sheet import Figure, Section


def explain(args: argparse.Namespace) -> int:
    """The sheet of each size read in TEXT or on standard input."""
    from ..rules.assess import assess
    from ..rules.sheet import sheet
    from .own_text import mask
    from .pasted import text_message
    from .reading import read
    from .uses import safety_uses

    shop = shop_of(args)
    text = " ".join(args.text) if args.text else standard_input()
    today = today_of(shop)
    message = text_message(text, today)
    own = mask(message)
    requests = read(own, message).requests
    if not requests:
        raise RefusedError("no tube size could be read: give OD, wall and CLR, each with its unit")
    uses = safety_uses(own.text)
    sheets = [
        (assessment, sheet(assessment, shop))
        for assessment in (assess(request, shop, uses, today=today) for request in requests)
    ]
    if args.json:
        print(json.dumps([_json(assessment, sections) for assessment, sections in sheets]))
        return 0
    from .screen import console
    from .screen_explain import explain_view

    out = console()
    for number, (assessment, sections) in enumerate(sheets, start=1):
        if len(sheets) > 1:
            out.print(f"Size {number} of {len(sheets)}", style="bold")
        explain_view(out, assessment, sections)
        out.print()
    return 0


def _json(assessment: Assessment, sections: tuple[Section, ...]) -> dict[str, Any]:
    from .output import request_out

    return {
        "request": request_out(assessment).model_dump(mode="json"),
        "sections": [
            {"title": section.title, "figures": [_figure(figure) for figure in section.figures]}
            for section in sections
        ],
    }


def _figure(figure: Figure) -> dict[str, Any]:
    return {
        "name": figure.name,
        "values": [_number(value) for value in figure.values],
        "unit": figure.unit,
        "text": figure.text,
        "formula": figure.formula,
        "symbols": figure.symbols,
        "range": figure.valid,
        "source": figure.source,
        "note": figure.note,
        "outside": figure.outside or None,
    }


def _number(value: Decimal) -> float:
    return float(value)
