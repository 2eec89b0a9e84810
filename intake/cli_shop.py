"""``shop new`` and ``shop check``: the folder that an owner edits."""

from __future__ import annotations

import argparse
from pathlib import Path

from .cli_common import WRONG_CALL, RefusedError, complain, shop_of, today_of


def new(args: argparse.Namespace) -> int:
    """Lay down a copy of the sample shop."""
    from ..rules.shop import CannotMakeShop, write_new_shop

    folder = Path(args.folder)
    try:
        write_new_shop(folder)
    except CannotMakeShop as error:
        raise RefusedError(str(error), status=WRONG_CALL) from error
    print(f"{folder} now holds a copy of the sample shop. Make it yours:")
    print("  shop.toml      name, signature, limits and their reasons, lead times, mailbox")
    print("  catalogue.csv  one mandrel a row")
    print("  dies.csv       one bend die a row")
    print("  balls.csv      how many balls a bend takes; delete it if you have no chart")
    print(f"Then `bendreply shop check {folder}` names what does not fit.")
    return 0


def check(args: argparse.Namespace) -> int:
    """Name every fault of the shop folder, reply templates and answers included.

    An answer whose day of review has passed is named as well, but is no fault.
    """
    from .template_check import check_templates, overdue_answers

    if args.folder is not None:
        args.shop = args.folder
    try:
        shop = shop_of(args)
    except RefusedError as refused:
        # The wording is tried with the sample shop, so that one round mends all.
        worded = map(str, check_templates(Path(args.shop)))
        raise RefusedError(*refused.sentences, *worded, status=refused.status) from refused
    if faults := check_templates(shop.folder, shop):
        raise RefusedError(*map(str, faults), status=WRONG_CALL)
    for warning in overdue_answers(shop.folder, today_of(shop)):
        complain(warning)
    where = shop.folder or "the sample shop"
    print(
        f"{where} is fit for use: {len(shop.catalogue)} mandrels, {len(shop.dies)} dies, "
        f"wall factor at most {shop.limits.wall_factor_max.value}, "
        f"D of bend at least {shop.limits.d_of_bend_min.value}."
    )
    return 0
