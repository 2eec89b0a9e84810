"""The pictures of the report as SVG, to be set into its page. Needs matplotlib, imported late."""

from __future__ import annotations

import io
from collections.abc import Callable
from dataclasses import dataclass
from typing import TYPE_CHECKING, Any

from ..rules.assessment import Decision
from .report import Report
from .report_words import request_of
from .screen import ANSWERS, material, size

if TYPE_CHECKING:
    from matplotlib.axes import Axes
    from matplotlib.axis import Axis

INK, PALE, GRID = "#22313a", "#b9c7cd", "#dfe5e8"
COLOURS = {
    Decision.STOCK: "#2f6f73",
    Decision.CUSTOM_MAKE: "#7fa7a3",
    Decision.DECLINE: "#b4532a",
    Decision.ASK: "#d9b36a",
}
MOST_BARS = 8
FEWEST_BARS = 5
"""Room is left for so many, lest one size alone fill the picture."""
FAINT = "#566770"
MM = 1 / 25.4
"""Pictures are measured in inches there."""


@dataclass(frozen=True, slots=True)
class Pictures:
    """SVG elements, each with a title for those who can't see it."""

    sizes: str
    trend: str
    map: str
    outcomes: str


def pictures(report: Report) -> Pictures | None:
    """The report's pictures; None where matplotlib is not installed."""
    try:
        import matplotlib
    except ModuleNotFoundError:
        return None
    settings: dict[Any, Any] = {
        "font.family": "sans-serif",
        "font.size": 7.5,
        "text.color": INK,
        "axes.edgecolor": PALE,
        "axes.labelcolor": INK,
        "xtick.color": INK,
        "ytick.color": INK,
        "axes.spines.top": False,
        "axes.spines.right": False,
        "axes.linewidth": 0.6,
        "xtick.major.width": 0.6,
        "ytick.major.width": 0.6,
        "svg.fonttype": "path",  # letters as outlines: the same on every computer and printer
        "svg.hashsalt": "bendreply",  # the same figures give the same picture
    }
    with matplotlib.rc_context(settings):
        return Pictures(
            sizes=_drawn(_sizes, report, 92, 34, "The most-requested sizes, by customers"),
            trend=_drawn(_trend, report, 92, 34, "Requests and customers, week by week"),
            map=_drawn(_map, report, 92, 54, "Wall factor against D of bend, and the limits"),
            outcomes=_drawn(_outcomes, report, 92, 14, "What became of the requests"),
        )


def _drawn(
    draw: Callable[[Axes, Report], None],
    report: Report,
    wide_mm: float,
    high_mm: float,
    title: str,
) -> str:
    from matplotlib.figure import Figure

    figure = Figure(figsize=(wide_mm * MM, high_mm * MM), layout="constrained")
    draw(figure.add_subplot(), report)
    out = io.StringIO()
    figure.savefig(out, format="svg", transparent=True, metadata={"Date": None, "Title": title})
    svg = out.getvalue()
    # The element alone: what stands before it belongs to a file of its own.
    svg = svg[svg.index("<svg ") :]
    return svg.replace("<svg ", f'<svg role="img" aria-label="{title}" ', 1)


def _whole_numbers(axis: Axis) -> None:
    from matplotlib.ticker import MaxNLocator

    axis.set_major_locator(MaxNLocator(nbins=5, integer=True, min_n_ticks=1))


def _sizes(axes: Axes, report: Report) -> None:
    counts = report.count.sizes[:MOST_BARS]
    if not counts:
        _nothing(axes)
        return
    labels = []
    for count in counts:
        request = request_of(count)
        labels.append(f"{size(request)}  {material(request)}")
    places = range(len(counts))
    axes.barh(places, [count.customers for count in counts], height=0.62, color="#2f6f73")
    axes.set_yticks(places, labels)
    axes.set_ylim(max(len(counts), FEWEST_BARS) - 0.5, -0.5)  # the first on top
    for place, count in zip(places, counts, strict=True):
        axes.annotate(
            f"{count.customers}", (count.customers, place), (2, 0), textcoords="offset points",
            va="center",
        )  # fmt: skip
    axes.set_xlim(0, max(count.customers for count in counts) * 1.12)
    axes.tick_params(axis="y", length=0)
    axes.spines["bottom"].set_visible(False)
    axes.set_xticks([])


def _trend(axes: Axes, report: Report) -> None:
    places = range(len(report.trend))
    shown = report.weeks
    for values, label, width, pair in (
        ([line.requests for line in report.trend], "requests", 0.8, (PALE, "#8fa6ad")),
        ([line.customers for line in report.trend], "customers", 0.42, ("#7fa7a3", "#2f6f73")),
    ):
        colours = [pair[shown.first <= line.week <= shown.last] for line in report.trend]
        axes.bar(places, values, width=width, color=colours, label=label)
    axes.set_xticks(places, [f"{line.week.number}" for line in report.trend])
    axes.tick_params(axis="x", length=0)
    axes.set_xlabel("week")
    axes.set_ylim(0, max(1, *(line.requests for line in report.trend)) * 1.4)
    _whole_numbers(axes.yaxis)
    from matplotlib.patches import Patch

    handles = [Patch(color="#8fa6ad", label="requests"), Patch(color="#2f6f73", label="customers")]
    axes.legend(handles=handles, loc="upper left", frameon=False, ncols=2, handlelength=1)


def _map(axes: Axes, report: Report) -> None:
    # Without any request the limits are drawn all the same: they hold.
    most = max((max(spot.requests, spot.lately) for spot in report.spots), default=1)
    right = max([60.0, *(min(spot.wall_factor, 120.0) for spot in report.spots)]) + 3
    top = max([5.0, *(min(spot.d_of_bend, 10.0) for spot in report.spots)]) + 0.4
    beyond = [s for s in report.spots if s.wall_factor > right or s.d_of_bend > top]
    axes.axvspan(report.wall_factor_max, right, color="#b4532a", alpha=0.07, linewidth=0)
    axes.axhspan(0, report.d_of_bend_min, color="#b4532a", alpha=0.07, linewidth=0)
    axes.axvline(report.wall_factor_max, color="#b4532a", linewidth=1)
    axes.axhline(report.d_of_bend_min, color="#b4532a", linewidth=1)
    for spots, colour, label in (
        ([(s, s.requests) for s in report.spots], PALE, "as far back as demand is looked at"),
        ([(s, s.lately) for s in report.spots if s.lately], "#2f6f73", "in this report"),
    ):
        axes.scatter(
            [spot.wall_factor for spot, _ in spots],
            [spot.d_of_bend for spot, _ in spots],
            s=[9 + 110 * number / most for _, number in spots],
            color=colour,
            alpha=0.75,
            linewidths=0,
            label=label,
        )
    axes.set_xlim(0, right)
    axes.set_ylim(0, top)
    axes.set_xlabel("wall factor (OD / wall)")
    axes.set_ylabel("D of bend (CLR / OD)")
    # Many requests lie behind the words too, which have to be read all the same.
    plate = {"facecolor": "white", "edgecolor": "none", "alpha": 0.8, "pad": 0.6}
    axes.annotate(
        f"limit {report.wall_factor_max:g}", (report.wall_factor_max, top), (2, -7),
        textcoords="offset points", color="#b4532a", bbox=plate,
    )  # fmt: skip
    axes.annotate(
        f"limit {report.d_of_bend_min:g} D", (right, report.d_of_bend_min), (-2, -8),
        textcoords="offset points", color="#b4532a", ha="right", bbox=plate,
    )  # fmt: skip
    if beyond:
        axes.annotate(
            f"{sum(s.requests for s in beyond)} beyond the edge", (right, top), (-2, -7),
            textcoords="offset points", ha="right", bbox=plate,
        )  # fmt: skip


def _outcomes(axes: Axes, report: Report) -> None:
    left = 0
    counts = report.count.outcomes
    if not counts.total():
        _nothing(axes)
        return
    for decision, colour in COLOURS.items():
        number = counts[decision]
        axes.barh([0], [number], left=left, height=0.55, color=colour, label=ANSWERS[decision])
        if number / counts.total() > 0.05:
            dark = decision in (Decision.STOCK, Decision.DECLINE)
            axes.text(
                left + number / 2, 0, f"{number}", ha="center", va="center",
                color="white" if dark else INK,
            )  # fmt: skip
        left += number
    axes.set_xlim(0, left)
    axes.set_axis_off()
    axes.legend(loc="upper center", bbox_to_anchor=(0.5, 0.08), ncols=4, frameon=False,
                handlelength=1, columnspacing=1.2)  # fmt: skip


def _nothing(axes: Axes) -> None:
    axes.set_axis_off()
    axes.text(0.5, 0.5, "nothing to show", ha="center", va="center", color=FAINT)
