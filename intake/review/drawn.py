"""The pictures of a size for the page: made once for each version of an inquiry."""

from __future__ import annotations

from collections import OrderedDict
from collections.abc import Sequence
from dataclasses import dataclass
from importlib.util import find_spec
from threading import Lock
from typing import TYPE_CHECKING, Literal

from starlette.responses import Response

from .. import pictures
from ..cli_common import printable

if TYPE_CHECKING:
    from ...rules.assessment import Assessment
    from ...rules.shop import Shop

Which = Literal["bend", "limits"]
BEND = "The bend to scale"
MOST_KEPT = 64
"""Pictures of some 60 kB each."""
SVG_POLICY = "default-src 'none'; style-src 'unsafe-inline'; sandbox"
"""Opened by itself, a picture may load and run nothing."""
LACKING = "Pictures are drawn where matplotlib is installed: pip install matplotlib."


@dataclass(frozen=True, slots=True)
class PictureView:
    """A picture on the page, or the sentence that says why there is none."""

    name: str
    title: str
    text: str
    address: str
    """Empty where it can't be drawn."""


def can_draw() -> bool:
    """Whether matplotlib is there; looked for without loading it."""
    return find_spec("matplotlib") is not None


def views(
    assessment: Assessment, shop: Shop, number: int, version: int, index: int
) -> Sequence[PictureView]:
    """Both pictures of size ``index`` (from 0) of an inquiry."""
    lacking = "" if can_draw() else LACKING
    base = f"/inquiry/{number}/{index + 1}"

    def view(which: Which, name: str, title: str, text: str, why_not: str) -> PictureView:
        none = why_not or lacking
        address = "" if none else f"{base}-{which}.svg?v={version}"
        return PictureView(name, printable(title), printable(none or text), address)

    return (
        view(
            "bend",
            BEND,
            pictures.bend_title(assessment),
            pictures.bend_text(assessment, shop),
            pictures.why_no_bend(assessment),
        ),
        view(
            "limits",
            "Within our limits?",
            pictures.limit_map_title(assessment),
            pictures.limit_map_text(assessment, shop),
            pictures.why_no_map(assessment, shop),
        ),
    )


class Drawn:
    """Pictures made so far, the oldest forgotten first."""

    def __init__(self, shop: Shop) -> None:
        self._shop = shop
        self._kept: OrderedDict[tuple[int, int, int, str], str] = OrderedDict()
        self._lock = Lock()

    def answer(
        self, assessment: Assessment, which: Which, number: int, version: int, index: int
    ) -> Response | None:
        """The picture as an answer; None where it can't be drawn. Raises NoPicturesError."""
        key = (number, version, index, which)
        with self._lock:
            svg = self._kept.get(key)
        if svg is None:
            draw = pictures.bend_svg if which == "bend" else pictures.limit_map_svg
            svg = draw(assessment, self._shop)
            if svg is None:
                return None
            with self._lock:
                self._kept[key] = svg
                if len(self._kept) > MOST_KEPT:
                    self._kept.popitem(last=False)
        headers = {"content-security-policy": SVG_POLICY}
        return Response(svg, media_type="image/svg+xml", headers=headers)
