"""The report on the demo's last week, recounted from the labels by other means, and printed."""

from __future__ import annotations

import csv
import email
import email.utils
import json
import os
import re
import shutil
import subprocess
from collections import Counter, defaultdict
from collections.abc import Iterator
from datetime import UTC, date, timedelta
from pathlib import Path
from typing import Any

import pytest

from bendreply.intake.cli import main

DEMO = Path(__file__).parents[2] / "demo_mailbox"
SHELF = Path(__file__).parents[2] / "rules" / "sample_shop" / "catalogue.csv"
MONDAY = date(2026, 11, 16)  # of 2026-W47
CHICAGO = timedelta(hours=-6)  # all of it lies after the clocks went back
BROWSERS = ("chromium", "chromium-browser", "google-chrome")

# What is not labelled, read by hand: enquiries.mbox and counter-chat.jsonl.
BY_HAND: list[tuple[date, str, str, tuple[Any, ...]]] = [
    (date(2026, 11, 9), "osgood@example.com", "sizes", (38.1, 1.651, 114.3, "carbon_steel")),
    (date(2026, 11, 11), "liv@example.org", "sizes", (38, 1.5, 95, "stainless_steel")),
    (date(2026, 11, 17), "tobias@example.net", "question", ()),
    (date(2026, 11, 19), "minna@example.com", "automatic", ()),
    (date(2026, 11, 18), "ramona.dix@example.net", "sizes", (44.45, 2.413, 114.3, "alloy_steel")),
    (date(2026, 11, 19), "ingo@example.org", "sizes", (42.4, 2, 106, "stainless_steel")),
    (date(2026, 11, 19), "lettie@example.com", "question", ()),
    (date(2026, 11, 20), "cole@example.net", "other", ()),
]


def labelled() -> Iterator[tuple[date, str, str, list[dict[str, Any]]]]:
    """(day in Chicago, sender, kind, sizes) of every message of the demo, from its labels."""
    for line in (DEMO / "gold.jsonl").read_text("utf-8").splitlines():
        label = json.loads(line)
        mail = email.message_from_bytes((DEMO / label["file"]).read_bytes())
        moment = email.utils.parsedate_to_datetime(str(mail["Date"])).astimezone(UTC) + CHICAGO
        sender = email.utils.parseaddr(str(mail["From"]))[1].lower()
        yield moment.date(), sender, label["kind"], label["requests"]
    for day, sender, kind, size in BY_HAND:
        fields = ("od_mm", "wall_mm", "clr_mm", "material")
        sizes = [{**dict(zip(fields, size, strict=True)), "doubt": []}] if size else []
        yield day, sender, kind, sizes


def same(size: dict[str, Any]) -> tuple[Any, ...]:
    """What two notations of one size share: the demo's lie within a hundredth of a mm."""
    return (
        size["material"],
        round(size["od_mm"], 1),
        round(size["wall_mm"], 2),
        round(size["clr_mm"], 1),
    )


@pytest.fixture(scope="module")
def folder(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """The demo, done."""
    into = tmp_path_factory.mktemp("demo") / "shop"
    with pytest.MonkeyPatch.context() as patch:
        patch.delenv("BENDREPLY_SHOP", raising=False)
        assert main(["demo", "--into", str(into)]) == 0
    return into


@pytest.fixture(scope="module")
def told(folder: Path) -> dict[str, Any]:
    """The report's JSON for the demo's last week."""
    file = folder / "report.json"
    call = ["--shop", str(folder), "report", "--week", "2026-W47", "--out", str(file)]
    assert main(call) == 0
    found: dict[str, Any] = json.loads(file.read_text("utf-8"))
    return found


def in_week() -> list[tuple[date, str, str, list[dict[str, Any]]]]:
    return [one for one in labelled() if MONDAY <= one[0] < MONDAY + timedelta(days=7)]


def test_messages_requests_and_customers_are_those_of_the_labels(told: dict[str, Any]) -> None:
    week = in_week()
    assert told["messages"] == Counter(kind for _, _, kind, _ in week)
    assert told["requests"] == sum(len(sizes) for *_, sizes in week)
    assert told["customers"] == len({sender for _, sender, _, sizes in week if sizes})
    incomplete = [
        one for *_, sizes in week for one in sizes
        if None in (one["od_mm"], one["wall_mm"], one["clr_mm"])
    ]  # fmt: skip
    assert told["incomplete"] == len(incomplete)


@pytest.mark.parametrize("doubtful", [False, True])
def test_every_size_has_the_customers_of_the_labels(told: dict[str, Any], doubtful: bool) -> None:
    expected: defaultdict[tuple[Any, ...], list[str]] = defaultdict(list)
    for _, sender, _, sizes in in_week():
        for size in sizes:
            whole = None not in (size["od_mm"], size["wall_mm"], size["clr_mm"])
            if whole and bool(size["doubt"]) is doubtful:
                expected[same(size)].append(sender)
    found = {
        same(size): (size["requests"], size["customers"])
        for size in told["doubtful" if doubtful else "sizes"]
    }
    assert found == {size: (len(who), len(set(who))) for size, who in expected.items()}


def test_the_weeks_before_are_those_of_the_labels(told: dict[str, Any]) -> None:
    for ago, line in enumerate(reversed(told["trend"])):
        monday = MONDAY - timedelta(weeks=ago)
        asked = [
            (sender, sizes) for day, sender, _, sizes in labelled()
            if monday <= day < monday + timedelta(days=7) and sizes
        ]  # fmt: skip
        assert line["requests"] == sum(len(sizes) for _, sizes in asked)
        assert line["customers"] == len({sender for sender, _ in asked})


def test_the_first_mandrel_to_make_is_the_best_of_all_diameters(told: dict[str, Any]) -> None:
    """Every diameter in steps of a hundredth mm, both surfaces, on the labelled sizes."""
    mm = {"in": 25.4, "mm": 1.0}

    def length(text: str) -> float:
        number, unit = text.split()
        return float(number) * mm[unit]

    shelf = [
        {key: length(row[key]) for key in ("tube_od", "tube_wall_min", "tube_wall_max")}
        | {"surface": row["surface"]}
        for row in csv.DictReader(SHELF.read_text("utf-8").splitlines())
        if int(row["on_hand"])
    ]
    # what suits: bronze in stainless and aluminium, both in carbon and alloy steel
    suits = {
        "stainless_steel": {"aluminium bronze"},
        "carbon_steel": {"aluminium bronze", "chromed tool steel"},
        "alloy_steel": {"aluminium bronze", "chromed tool steel"},
    }
    open_sizes = []
    for _, sender, _, sizes in labelled():
        for size in sizes:
            od, wall, clr = size["od_mm"], size["wall_mm"], size["clr_mm"]
            if None in (od, wall, clr) or size["doubt"]:
                continue
            on_shelf = any(
                abs(one["tube_od"] - od) < 0.05
                and one["tube_wall_min"] - 0.005 < wall < one["tube_wall_max"] + 0.005
                and one["surface"] in suits[size["material"]]
                for one in shelf
            )
            if od / wall <= 30.0001 and clr / od >= 2.4999 and not on_shelf:
                open_sizes.append((sender, od - 2 * wall, suits[size["material"]]))
    best = max(
        len(
            {
                who
                for who, bore, fits in open_sizes
                if surface in fits and 10 <= 100 * bore - at <= 30
            }
        )
        for at in range(1000, 7000)
        for surface in ("aluminium bronze", "chromed tool steel")
    )
    (mandrel,) = told["demand"]["plans"][0]["mandrels"]
    assert mandrel["customers"] == best == 3
    assert mandrel["surface"] == "aluminium bronze"
    # 25 x 1.5: bore 22, 21.7 to 21.9; 25.4 x 1.651: bore 22.098, 21.798 to 21.998
    assert (mandrel["diameter_low_mm"], mandrel["diameter_high_mm"]) == (21.798, 21.9)


@pytest.mark.parametrize(("paper", "points"), [("A4", (595, 842)), ("letter", (612, 792))])
def test_the_page_prints_on_one_sheet(
    folder: Path, tmp_path: Path, paper: str, points: tuple[int, int]
) -> None:
    pytest.importorskip("matplotlib", reason="the pictures need the extra 'charts'")
    from pypdf import PdfReader

    browser = _browser()
    page = tmp_path / "report.html"
    call = ["--shop", str(folder), "report", "--week", "2026-W47", "--out", str(page)]
    assert main(call) == 0
    # A printer chooses the paper; a browser without a printer is told in the style sheet.
    text = page.read_text("utf-8")
    page.write_text(text.replace("@page {", f"@page {{ size: {paper};"), "utf-8")
    printed = tmp_path / "report.pdf"
    subprocess.run(
        [browser, "--headless", "--no-sandbox", "--disable-gpu", "--no-pdf-header-footer",
         f"--user-data-dir={tmp_path / 'browser'}", f"--print-to-pdf={printed}", page.as_uri()],
        check=True, capture_output=True, timeout=120,
    )  # fmt: skip
    pdf = PdfReader(printed)
    assert len(pdf.pages) == 1
    box = pdf.pages[0].mediabox
    assert (round(box.width), round(box.height)) == points
    words = re.sub(r"\s+", " ", pdf.pages[0].extract_text())
    # the first line, the last, and the widest table are all on the sheet
    for said in (
        "week 2026-W47, 16 to 22 November 2026",
        "customers served together",
        "and 2 more",
    ):
        assert said in words


def _browser() -> str:
    found = next(filter(None, map(shutil.which, BROWSERS)), None)
    if found is None:
        sentence = "a browser is needed to print the page: apt-get install chromium"
        if os.environ.get("BENDREPLY_NEEDS_SERVERS"):
            pytest.fail(sentence)
        pytest.skip(sentence)
    return found
