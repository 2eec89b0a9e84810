"""A picture of the bend beside the reply: asked for with the approval, drawn when it is laid down.

Which kind was asked for stands in the history, with the approval: that is where it belongs to a
person's word, and no table has to know of it.
"""

from __future__ import annotations

from importlib.util import find_spec
from typing import TYPE_CHECKING, Literal, get_args

from .desk_errors import NoPictureError, UndeliverableError
from .letter import Picture

if TYPE_CHECKING:
    from ..rules.assessment import Assessment
    from .inquiry import Inquiry
    from .store_reader import Reader

PictureKind = Literal["png", "pdf"]
KINDS: tuple[PictureKind, ...] = get_args(PictureKind)
MEDIA_TYPES: dict[PictureKind, tuple[str, str]] = {
    "png": ("image", "png"),
    "pdf": ("application", "pdf"),
}
MOST_PICTURES = 12
"""A mail with more is none that anybody would look through."""


def refuse_undrawable(inquiry: Inquiry) -> None:
    """Refuse a picture that could not be drawn, before anybody relies on it."""
    from .pictures import why_no_bend

    if find_spec("matplotlib") is None:
        raise NoPictureError(
            "pictures are drawn with matplotlib, which is not installed here: install bendreply "
            "with its extra 'charts', or approve without a picture; nothing was changed"
        )
    sizes = _drawable(inquiry)
    if not sizes:
        whys = [why_no_bend(one) for one in inquiry.assessments] or ["No size was read."]
        raise NoPictureError(
            f"inquiry {inquiry.id} has no size that can be drawn: {whys[0]} Approve without a "
            "picture, or put the size right; nothing was changed"
        )
    if len(sizes) > MOST_PICTURES:
        raise NoPictureError(
            f"inquiry {inquiry.id} has {len(sizes)} sizes, and at most {MOST_PICTURES} pictures go "
            "with a reply: approve without; nothing was changed"
        )


def asked_for(book: Reader, inquiry: Inquiry) -> PictureKind | None:
    """The kind of picture that the approval which stands wants; None for no picture."""
    approved = [event for event in book.history(inquiry.id) if event.what == "approved"]
    wanted = approved[-1].detail.get("picture") if approved else None
    return next((kind for kind in KINDS if kind == wanted), None)


def drawn(inquiry: Inquiry, kind: PictureKind) -> tuple[Picture, ...]:
    """The bends of an inquiry, a picture a size, named by their numbers where there are several.

    Raises UndeliverableError where nothing can be drawn here any more.
    """
    from .pictures import NoPicturesError, bend_pdf, bend_png, bend_title

    draw = bend_png if kind == "png" else bend_pdf
    made = []
    try:
        for number, one in _drawable(inquiry):
            name = "bend" if len(inquiry.assessments) == 1 else f"bend-{number}"
            data = draw(one)
            assert data is not None, "only sizes that can be drawn come here"
            made.append(Picture(f"{name}.{kind}", MEDIA_TYPES[kind], bend_title(one), data))
    except NoPicturesError as error:
        raise UndeliverableError(
            f"inquiry {inquiry.id} was approved with a picture, but {error}; it stays approved"
        ) from error
    return tuple(made)


def _drawable(inquiry: Inquiry) -> list[tuple[int, Assessment]]:
    from .pictures import why_no_bend

    numbered = enumerate(inquiry.assessments, start=1)
    return [(number, one) for number, one in numbered if not why_no_bend(one)]
