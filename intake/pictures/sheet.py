"""A picture while it is drawn: a figure measured in points, and the forms that it is saved in.

It is 360 points wide, so that on a phone, where a point is a pixel, no word is below 10 of them.
matplotlib is imported when a first picture is drawn: it takes a second, and not every shop has it.
"""

from __future__ import annotations

import io
from collections.abc import Iterator, Sequence
from contextlib import contextmanager
from functools import lru_cache
from threading import Lock
from typing import TYPE_CHECKING, Any, Literal

if TYPE_CHECKING:
    from matplotlib.artist import Artist
    from matplotlib.figure import Figure
    from matplotlib.path import Path
    from matplotlib.text import Text
    from PIL.Image import Image

WIDTH = 360.0
MARGIN = 10.0
INK, GREY, PAPER = "#111111", "#6b6b6b", "white"
SMALL, NORMAL, LARGE = 10.0, 11.0, 12.0
PIXELS_PER_INCH = 216
"""Of a PNG: three pixels a point, which prints sharp at 4 inches wide."""

FileKind = Literal["png", "pdf"]

_SETTINGS: dict[Any, Any] = {
    "font.family": ["DejaVu Sans"],  # comes with matplotlib: the same words have the same width
    "hatch.linewidth": 0.5,
    "path.simplify": False,
    "pdf.fonttype": 3,
    "svg.fonttype": "path",
    "svg.hashsalt": "bendreply",
    "text.usetex": False,
}
_drawing = Lock()


class NoPicturesError(Exception):
    """Nothing can be drawn on this computer; the message says what is missing."""


@contextmanager
def settings() -> Iterator[None]:
    """What is drawn in here looks the same on every computer. One thread at a time: matplotlib
    keeps its settings once for all.

    Raises NoPicturesError where matplotlib is not installed.
    """
    try:
        from matplotlib import rc_context
    except ImportError as error:
        raise NoPicturesError(
            "pictures are drawn with matplotlib, which is not installed here: "
            "install bendreply with its extra 'charts'"
        ) from error
    with _drawing, rc_context(_SETTINGS):
        yield


class Sheet:
    """An empty picture of WIDTH x ``height`` points; (0, 0) is its lower left corner."""

    def __init__(self, height: float) -> None:
        from matplotlib.figure import Figure
        from matplotlib.transforms import Affine2D

        self.height = height
        self.figure: Figure = Figure(figsize=(WIDTH / 72, height / 72), dpi=72, facecolor=PAPER)
        self._points = Affine2D().scale(1 / 72) + self.figure.dpi_scale_trans

    def text(
        self,
        x: float,
        y: float,
        words: str,
        *,
        size: float = NORMAL,
        bold: bool = False,
        ha: Literal["left", "center", "right"] = "left",
        va: Literal["baseline", "center", "top", "bottom"] = "baseline",
        colour: str = INK,
        rotation: float = 0,
    ) -> Text:
        """Words at a place; a ``$`` in them is a dollar, not the start of a formula."""
        return self.figure.text(
            x,
            y,
            words,
            transform=self._points,
            fontsize=size,
            fontweight="bold" if bold else "normal",
            ha=ha,
            va=va,
            color=colour,
            rotation=rotation,
            parse_math=False,
        )

    def line(
        self,
        xs: Sequence[float],
        ys: Sequence[float],
        *,
        width: float = 0.8,
        dashes: tuple[float, ...] = (),
        colour: str = INK,
        name: str = "",
    ) -> None:
        """A line through points."""
        from matplotlib.lines import Line2D

        line = Line2D(xs, ys, linewidth=width, color=colour, transform=self._points)
        if dashes:
            line.set_dashes(dashes)
        self._add(line, name)

    def shape(
        self,
        path: Path,
        *,
        fill: str | None = None,
        hatch: str = "",
        width: float = 0.8,
        colour: str = INK,
        dashes: tuple[float, ...] = (),
        name: str = "",
    ) -> None:
        """An outline in points, filled or hatched. ``name`` is its id in the SVG."""
        from matplotlib.patches import PathPatch

        patch = PathPatch(
            path,
            transform=self._points,
            facecolor=fill or "none",
            edgecolor=colour,
            hatch=hatch or None,
            linewidth=width,
        )
        if dashes:
            patch.set_linestyle((0, dashes))
        self._add(patch, name)

    def box(
        self,
        left: float,
        bottom: float,
        right: float,
        top: float,
        *,
        fill: str | None = None,
        hatch: str = "",
        width: float = 0.8,
        colour: str = INK,
        name: str = "",
    ) -> None:
        """A rectangle."""
        from matplotlib.path import Path

        corners = [(left, bottom), (right, bottom), (right, top), (left, top), (left, bottom)]
        path = Path(corners, closed=True)
        self.shape(path, fill=fill, hatch=hatch, width=width, colour=colour, name=name)

    def disc(
        self, x: float, y: float, radius: float, *, fill: str | None = None, name: str = ""
    ) -> None:
        """A small round mark."""
        from matplotlib.path import Path

        self.shape(Path.circle((x, y), radius), fill=fill, width=1.3, name=name)

    def arrow(self, start: tuple[float, float], end: tuple[float, float], *, both: bool) -> None:
        """A dimension line with a head at ``end``, or one at each end."""
        from matplotlib.patches import FancyArrowPatch

        self._add(
            FancyArrowPatch(
                start,
                end,
                arrowstyle="<|-|>" if both else "-|>",
                mutation_scale=7,
                shrinkA=0,
                shrinkB=0,
                linewidth=0.7,
                color=INK,
                transform=self._points,
            ),
            "",
        )

    def _add(self, artist: Artist, name: str) -> None:
        if name:
            artist.set_gid(name)
        artist.set_clip_on(False)
        self.figure.add_artist(artist)


@lru_cache(maxsize=4096)
def width_of(words: str, size: float = NORMAL, *, bold: bool = False) -> float:
    """How wide words will be [points]."""
    from matplotlib.font_manager import FontProperties
    from matplotlib.textpath import text_to_path

    font = FontProperties(family="DejaVu Sans", size=size, weight="bold" if bold else "normal")
    return float(text_to_path.get_text_width_height_descent(words, font, False)[0])


def wrapped(words: str, room: float, size: float = NORMAL, *, bold: bool = False) -> list[str]:
    """Words in lines of at most ``room`` points; a longer word stands alone."""
    lines: list[str] = []
    space, used = width_of(" ", size, bold=bold), 0.0
    for word in words.split():
        wide = width_of(word, size, bold=bold)
        if lines and used + space + wide <= room:
            lines[-1] += f" {word}"
            used += space + wide
        else:
            lines.append(word)
            used = wide
    return lines


def saved(figure: Figure, kind: FileKind, title: str) -> bytes:
    """The picture as a file's bytes: the same each time, for no date is in it."""
    made = io.BytesIO()
    if kind == "png":
        _in_greys(figure).save(made, format="png", dpi=(PIXELS_PER_INCH, PIXELS_PER_INCH))
    else:
        about = {"Title": title, "CreationDate": None, "Creator": None, "Producer": None}
        figure.savefig(made, format="pdf", metadata=about)
    return made.getvalue()


def _in_greys(figure: Figure) -> Image:
    """The pixels of a picture, which has no colours: a third of the bytes, and of the time."""
    from matplotlib.backends.backend_agg import FigureCanvasAgg
    from PIL.Image import frombuffer

    figure.set_dpi(PIXELS_PER_INCH)
    canvas = FigureCanvasAgg(figure)
    canvas.draw()
    size = canvas.get_width_height()
    return frombuffer("RGBA", size, canvas.buffer_rgba()).convert("L")
