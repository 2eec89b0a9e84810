"""Pictures of a request, each also in words: the bend to scale, and the map of the shop's limits.

Every function takes one judged size and the shop that judged it; without the shop a bend is drawn
all the same, and only its limits are not told. A picture that can't be drawn, since a figure is
missing or the tube is not round, is None, and its text says why in one sentence. The same request
gives the same bytes. Drawing needs matplotlib (the extra ``charts``) and raises NoPicturesError
without it; the texts need nothing.
"""

from __future__ import annotations

from typing import TYPE_CHECKING

from .bend_words import bend_text, bend_title, why_no_bend
from .limit_points import why_no_map
from .limit_words import limit_map_text, limit_map_title
from .sheet import FileKind, NoPicturesError, settings

if TYPE_CHECKING:
    from ...rules.assessment import Assessment
    from ...rules.shop import Shop

__all__ = [
    "NoPicturesError",
    "bend_pdf",
    "bend_png",
    "bend_svg",
    "bend_text",
    "bend_title",
    "limit_map_pdf",
    "limit_map_png",
    "limit_map_svg",
    "limit_map_text",
    "limit_map_title",
    "why_no_bend",
    "why_no_map",
]


def bend_svg(assessment: Assessment, shop: Shop | None = None) -> str | None:
    """The bend as one ``<svg role="img">`` element, to stand in a page or a file of its own."""
    from .bend import bend_figure
    from .svg import as_svg

    with settings():
        figure = bend_figure(assessment, shop)
        if figure is None:
            return None
        return as_svg(figure, bend_title(assessment), bend_text(assessment, shop))


def bend_png(assessment: Assessment, shop: Shop | None = None) -> bytes | None:
    """The bend as a PNG, sharp in print at 5 inches wide."""
    return _bend_file(assessment, shop, "png")


def bend_pdf(assessment: Assessment, shop: Shop | None = None) -> bytes | None:
    """The bend as a PDF of one page."""
    return _bend_file(assessment, shop, "pdf")


def limit_map_svg(assessment: Assessment, shop: Shop) -> str | None:
    """The map of the limits as one ``<svg role="img">`` element."""
    from .limit_map import limit_map_figure
    from .svg import as_svg

    with settings():
        figure = limit_map_figure(assessment, shop)
        if figure is None:
            return None
        return as_svg(figure, limit_map_title(assessment), limit_map_text(assessment, shop))


def limit_map_png(assessment: Assessment, shop: Shop) -> bytes | None:
    """The map of the limits as a PNG."""
    return _map_file(assessment, shop, "png")


def limit_map_pdf(assessment: Assessment, shop: Shop) -> bytes | None:
    """The map of the limits as a PDF of one page."""
    return _map_file(assessment, shop, "pdf")


def _bend_file(assessment: Assessment, shop: Shop | None, kind: FileKind) -> bytes | None:
    from .bend import bend_figure
    from .sheet import saved

    with settings():
        figure = bend_figure(assessment, shop)
        return None if figure is None else saved(figure, kind, bend_title(assessment))


def _map_file(assessment: Assessment, shop: Shop, kind: FileKind) -> bytes | None:
    from .limit_map import limit_map_figure
    from .sheet import saved

    with settings():
        figure = limit_map_figure(assessment, shop)
        return None if figure is None else saved(figure, kind, limit_map_title(assessment))
