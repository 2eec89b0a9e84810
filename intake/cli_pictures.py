"""``picture``: one size of an inquiry drawn into a file."""

from __future__ import annotations

import argparse
from pathlib import Path
from typing import TYPE_CHECKING

from .cli_common import WRONG_CALL, RefusedError
from .cli_desk import opened

if TYPE_CHECKING:
    from ..rules.assessment import Assessment
    from ..rules.shop import Shop

KINDS = (".svg", ".png", ".pdf")


def picture(args: argparse.Namespace) -> int:
    """Draw the bend, or the map of the limits, and say in words what it shows."""
    from .desk import show
    from .pictures import NoPicturesError

    file = Path(args.out)
    if file.suffix.lower() not in KINDS:
        raise RefusedError(
            f"--out: {file.name!r} has to end in .svg, .png or .pdf", status=WRONG_CALL
        )
    with opened(args) as (shop, store):
        inquiry = show(store, args.id)
    sizes = inquiry.assessments
    if not 1 <= args.size <= len(sizes):
        have = {0: "no size", 1: "1 size"}.get(len(sizes), f"{len(sizes)} sizes")
        raise RefusedError(f"inquiry {inquiry.id} has {have}: there is no size {args.size}")
    try:
        data, words = _drawn(sizes[args.size - 1], shop, file.suffix.lower(), of_limits=args.map)
    except NoPicturesError as error:
        raise RefusedError(str(error)) from error
    if data is None:
        raise RefusedError(words)
    try:
        file.write_bytes(data)
    except OSError as error:
        raise RefusedError(f"{file}: the picture can't be written ({error.strerror})") from error
    print(words)
    print(f"The picture lies in {file}.")
    return 0


def _drawn(
    size: Assessment, shop: Shop, suffix: str, *, of_limits: bool
) -> tuple[bytes | None, str]:
    """The picture as bytes, None where there is none; and its words."""
    from . import pictures as p

    svg, png, pdf, text = (
        (p.limit_map_svg, p.limit_map_png, p.limit_map_pdf, p.limit_map_text)
        if of_limits
        else (p.bend_svg, p.bend_png, p.bend_pdf, p.bend_text)
    )
    words = text(size, shop)
    if suffix == ".svg":
        drawing = svg(size, shop)
        return None if drawing is None else drawing.encode(), words
    return (png if suffix == ".png" else pdf)(size, shop), words
