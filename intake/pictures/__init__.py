"""Pictures of a request, each also in words: the bend to scale, and the map of the shop's limits.

Every function takes one judged size and the shop that judged it. A picture that can't be drawn,
since a figure is missing or the tube is not round, is None, and its text says why in one sentence.
The same request gives the same bytes. Drawing needs matplotlib (the extra ``charts``) and raises
NoPicturesError without it; the texts need nothing.
"""

from __future__ import annotations

from typing import TYPE_CHECKING

from .bend_words import bend_text, bend_title, why_no_bend
from .sheet import NoPicturesError, settings

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
    "why_no_bend",
]


def bend_svg(assessment: Assessment, shop: Shop) -> str | None:
    """The bend as one ``<svg role="img">`` element, to stand in a page or a file of its own."""
    from .bend import bend_figure
    from .svg import as_svg

    with settings():
        figure = bend_figure(assessment, shop)
        if figure is None:
            return None
        return as_svg(figure, bend_title(assessment), bend_text(assessment, shop))


def bend_png(assessment: Assessment, shop: Shop) -> bytes | None:
    """The bend as a PNG, sharp in print at 5 inches wide."""
    from .bend import bend_figure
    from .sheet import saved

    with settings():
        figure = bend_figure(assessment, shop)
        return None if figure is None else saved(figure, "png", bend_title(assessment))


def bend_pdf(assessment: Assessment, shop: Shop) -> bytes | None:
    """The bend as a PDF of one page."""
    from .bend import bend_figure
    from .sheet import saved

    with settings():
        figure = bend_figure(assessment, shop)
        return None if figure is None else saved(figure, "pdf", bend_title(assessment))
