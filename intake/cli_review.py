"""``review``: the page where people look at what waits, put it right and approve it."""

from __future__ import annotations

import argparse
import os
from pathlib import Path
from typing import TYPE_CHECKING

from .cli_common import WRONG_CALL, RefusedError, complain, templates_of
from .cli_desk import opened, target_of

if TYPE_CHECKING:
    from .review.serve import Place


def review(args: argparse.Namespace) -> int:
    """Serve the page until interrupted."""
    try:
        return _review(args)
    except ModuleNotFoundError as error:
        if error.name not in ("starlette", "uvicorn"):
            raise
        raise RefusedError(f"the review page needs the package {error.name}") from error


def _review(args: argparse.Namespace) -> int:
    from .chat_hook import chat_routes
    from .review.app import Settings, make_app
    from .review.serve import SECRET_ENV, CannotServe, address, checked, listen, server_of

    place = _place(args)
    try:
        secret = checked(place, os.environ.get(SECRET_ENV) or None)
    except CannotServe as error:
        raise RefusedError(str(error), status=WRONG_CALL) from error
    with opened(args) as (shop, store):
        templates = templates_of(shop)
        hook = chat_routes(store, shop, templates, told=complain)
        app = make_app(
            Settings(
                store=store,
                shop=shop,
                templates=templates,
                target=lambda: target_of(args, shop),
                secret=secret,
                names=place.hosts,
                secure=place.certificate is not None,
            ),
            more=hook,
            machines=frozenset(route.path for route in hook),
        )
        try:
            listening = listen(place)
        except CannotServe as error:
            raise RefusedError(str(error)) from error
        if not place.on_loopback and place.certificate is None:
            complain("without --certificate and --key, the secret and customers' words cross the "
                     "network readable by others")  # fmt: skip

        with listening:
            print(f"What waits: {address(place, listening)}  (Ctrl+C ends it)", flush=True)
            server_of(app, place).run(sockets=[listening])
    return 0


def _place(args: argparse.Namespace) -> Place:
    from .review.serve import Place

    return Place(
        host=args.host,
        port=args.port,
        names=tuple(args.name),
        certificate=Path(args.certificate) if args.certificate else None,
        key=Path(args.key) if args.key else None,
    )
