"""The weekly report as JSON, as CSV, as text and as a page."""

from __future__ import annotations

import csv
import io
import json
import re
from collections.abc import Callable
from datetime import timedelta
from html.parser import HTMLParser

import pytest

from bendreply.intake import report_charts
from bendreply.intake.report_html import as_html
from bendreply.intake.report_json import as_csv, as_json
from bendreply.intake.screen_report import report_text
from bendreply.intake.store import Store

from .report_support import IN_47, Take, report, tube


class _Links(HTMLParser):
    """What a page would fetch."""

    def __init__(self) -> None:
        super().__init__()
        self.links: list[str] = []

    def handle_starttag(self, tag: str, attrs: list[tuple[str, str | None]]) -> None:
        for name, value in attrs:
            if name in ("src", "href", "xlink:href", "data") and not (value or "").startswith("#"):
                self.links.append(f"{tag} {name}={value}")


class TestForms:
    def test_the_json_names_every_kind_and_decision_even_at_zero(
        self, store: Store, take: Take
    ) -> None:
        take(tube())
        take(tube("44.5", "2.41", "133"), at=IN_47 - timedelta(weeks=1))
        take(tube("44.45", "2.413", "133.35"))
        out = json.loads(as_json(report(store)))
        assert (out["week"], out["from"], out["to"]) == ("2026-W47", "2026-11-16", "2026-11-22")
        assert out["messages"] == {"sizes": 2, "question": 0, "other": 0, "automatic": 0}
        assert out["outcomes"] == {"stock": 2, "custom-make": 0, "decline": 0, "ask": 0}
        assert out["sizes"] == [
            {
                "shape": "round",
                "od_mm": 44.45,
                "wall_mm": 2.413,
                "clr_mm": 133.35,
                "material": "carbon_steel",
                "requests": 2,
                "customers": 1,
                "outcomes": {"stock": 2, "custom-make": 0, "decline": 0, "ask": 0},
                "customers_in_weeks_before": [0, 0, 0, 1],
            }
        ]
        assert (out["doubtful"], out["incomplete"], out["waiting"]) == ([], 0, 3)
        assert out["trend"][-1] == {"week": "2026-W47", "requests": 2, "customers": 1}

    def test_the_csv_has_the_figures_of_the_json(self, store: Store, take: Take) -> None:
        take(tube("60", "3", "180"))
        rows = list(csv.DictReader(io.StringIO(as_csv(report(store)))))
        told = {(row["section"], row["item"], row["figure"]): row["value"] for row in rows}
        assert told["sizes", "1", "od_mm"] == "60.0"
        assert told["sizes", "1 outcomes", "custom-make"] == "1"
        assert told["requests", "", "requests"] == "1"
        # bore 54 less 0.3
        assert told["demand", "plans 1 mandrels 1", "diameter_low_mm"] == "53.7"

    @pytest.mark.parametrize("form", [as_json, as_csv, as_html, report_text])
    def test_names_are_told_only_when_asked_for(
        self, store: Store, take: Take, form: Callable[..., str]
    ) -> None:
        take(tube("60", "3", "180"), sender="carla@example.com")
        assert "carla" not in form(report(store))
        assert "carla@example.com" in form(report(store), names=True)

    def test_a_name_is_no_formula_for_a_spreadsheet(self, store: Store, take: Take) -> None:
        take(tube(), sender="=cmd|' /c calc'!a1@example.com")
        rows = csv.reader(io.StringIO(as_csv(report(store), names=True)))
        names = [row[3] for row in rows if "cmd" in row[3]]
        assert names
        assert all(name.startswith("'=") for name in names)

    def test_a_name_is_no_mark_up_for_a_browser(self, store: Store, take: Take) -> None:
        take(tube("60", "3", "180"), sender="<script>alert(1)</script>@example.com")
        page = as_html(report(store), names=True)
        assert "<script" not in page
        assert "&lt;script" in page

    def test_the_text_says_the_week_and_the_size_in_both_units(
        self, store: Store, take: Take
    ) -> None:
        take(tube())
        text = report_text(report(store))
        assert text.startswith("Week 2026-W47, 16 to 22 November 2026 (the latest week")
        assert "1.75 × 0.095 × 5.25 in" in text
        assert "44.45 × 2.413 × 133.35 mm" in text
        assert "1 request from 1 customer\n" in text
        assert max(map(len, text.splitlines())) <= 100

    def test_an_empty_week_reads_plainly(self, store: Store) -> None:
        lines = report_text(report(store, "2026-W53")).splitlines()
        assert lines == [
            "Week 2026-W53, 28 December 2026 to 3 January 2027 (as asked; UTC)",
            "",
            "messages  0 (none)",
            "sizes     0 requests from 0 customers",
            "answers   none",
            "waiting   0 messages, of this or any other week",
        ]

    @pytest.mark.parametrize("week", ["2026-W47", "2026-W53"])  # one request, and none
    def test_the_page_needs_nothing_from_outside(self, store: Store, take: Take, week: str) -> None:
        take(tube("60", "3", "180"))
        page = as_html(report(store, week))
        parser = _Links()
        parser.feed(page)
        assert parser.links == []
        assert not re.search(r"url\((?!#)|@import|<script", page)

    def test_with_matplotlib_the_pictures_are_inside(self, store: Store, take: Take) -> None:
        pytest.importorskip("matplotlib", reason="the pictures need the extra 'charts'")
        take(tube("60", "3", "180"))
        page = as_html(report(store))
        assert page.count("<svg ") == 4
        assert "pictures are missing" not in page
        assert page == as_html(report(store))  # the same figures, the same page

    def test_without_it_the_page_has_its_tables_and_says_so(
        self, store: Store, take: Take, monkeypatch: pytest.MonkeyPatch
    ) -> None:
        take(tube("60", "3", "180"))
        monkeypatch.setitem(__import__("sys").modules, "matplotlib", None)
        assert report_charts.pictures(report(store)) is None
        page = as_html(report(store))
        assert "<svg" not in page
        assert page.count("The pictures are missing: they need matplotlib") == 1
        assert "60 × 3 × 180 mm" in page
        assert "1 custom make" in page
