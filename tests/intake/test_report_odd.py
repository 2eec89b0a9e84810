"""The report at its edges: odd weeks, file names, one size only, names on screen."""

from __future__ import annotations

from datetime import UTC, datetime
from decimal import Decimal
from pathlib import Path

import pytest

from bendreply.intake import desk, report_charts
from bendreply.intake.cli import main
from bendreply.intake.report import weekly_report
from bendreply.intake.report_count import Size
from bendreply.intake.report_html import as_html
from bendreply.intake.report_weeks import Weeks
from bendreply.intake.report_words import units, waiting
from bendreply.intake.screen_report import report_text
from bendreply.intake.store import Store
from bendreply.rules.shop import sample_shop

NOW = datetime(2026, 11, 25, 12, tzinfo=UTC)
SHOP = sample_shop().model_copy(update={"time_zone": "America/Chicago"})


@pytest.mark.parametrize(
    ("text", "said"),
    [
        ("9999-W52", "outside the years"),  # the week after it is no date
        ("0001-W01", "outside the years"),  # the weeks before it are none
        ("0001-W01..2026-W47", "outside the years"),
        ("2026-W47..", "not an ISO week"),  # half a range is not one week
        ("2026-W47..2026-W46", "ends before it begins"),
    ],
)
def test_weeks_that_cannot_be_meant_are_refused(text: str, said: str) -> None:
    with pytest.raises(ValueError, match=said):
        Weeks.parse(text)


@pytest.mark.parametrize("week", ["1970-W01", "9998-W52"])
def test_the_first_and_last_weeks_there_are_can_be_told(store: Store, week: str) -> None:
    assert weekly_report(store, SHOP, NOW, Weeks.parse(week)).count.requests == 0


@pytest.fixture
def shop(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Path:
    """A shop with one message, of the second week of 2020."""
    monkeypatch.delenv("BENDREPLY_SHOP", raising=False)
    folder = tmp_path / "shop"
    main(["shop", "new", str(folder)])
    mail = tmp_path / "1.eml"
    mail.write_text(
        "From: <ada@example.net>\nSubject: x\nDate: Mon, 6 Jan 2020 10:00:00 +0000\n"
        "Message-ID: <1@example.net>\n\nA mandrel for 1.75 x .095 DOM, 5.25 clr, please.\n"
    )
    assert main(["--shop", str(folder), "collect", str(mail)]) == 0
    return folder


@pytest.mark.parametrize("name", ["week.pdf", "week.xlsx", "week.png"])
def test_text_never_goes_under_a_name_that_says_otherwise(
    shop: Path, tmp_path: Path, capsys: pytest.CaptureFixture[str], name: str
) -> None:
    file = tmp_path / name
    assert main(["--shop", str(shop), "report", "--out", str(file)]) == 2
    assert ".html (a page to print" in capsys.readouterr().err
    assert not file.exists()


@pytest.mark.parametrize(
    ("name", "start"),
    [("w.txt", "Week "), ("w", "Week "), ("w.HTML", "<!DOCTYPE"), ("w.json", "{")],
)
def test_the_end_of_the_name_says_the_form(
    shop: Path, tmp_path: Path, name: str, start: str
) -> None:
    file = tmp_path / name
    assert main(["--shop", str(shop), "report", "--week", "2020-W02", "--out", str(file)]) == 0
    assert file.read_text("utf-8").startswith(start)


def test_since_when_something_waits_is_told_by_the_shops_clocks(store: Store, make_result) -> None:
    # 03:00 UTC on the 20th is 21:00 on the 19th in Chicago (UTC-6 in November).
    desk.take_in(store, make_result("ada", received_at=datetime(2026, 11, 20, 3, tzinfo=UTC)), "x")
    report = weekly_report(store, SHOP, NOW, None)
    assert "the oldest since 19 November 2026" in waiting(report)
    assert "oldest since 19 Nov 2026" in as_html(report)


def test_one_is_told_as_one(store: Store, make_result) -> None:
    desk.take_in(store, make_result("ada"), "x")
    page = as_html(weekly_report(store, SHOP, NOW, None))
    for told in ("<b>1</b>message<", "<b>1</b>size asked for<", "<b>1</b>customer<", "waits now"):
        assert told in page


def test_the_weeks_looked_back_on_are_those_of_the_report(store: Store, make_result) -> None:
    desk.take_in(store, make_result("ada"), "x")
    page = as_html(weekly_report(store, SHOP, NOW, Weeks.parse("2026-W10")))
    assert "Dies missing most, in the 52 weeks up to 2026-W10" in page


def test_names_on_a_narrow_screen_stay_whole(store: Store, make_result) -> None:
    address = "purchasing.department@long-name.example.org"
    result = make_result("ada")
    sender = result.message.sender.model_copy(update={"address": address})
    message = result.message.model_copy(update={"sender": sender})
    desk.take_in(store, result.model_copy(update={"message": message}), "x")
    report = weekly_report(store, SHOP, NOW, None)
    assert address in report_text(report, names=True)
    assert address not in report_text(report)


def test_a_long_address_may_break_on_paper(store: Store, make_result) -> None:
    address = f"{'x' * 60}@example.org"
    result = make_result("ada")
    sender = result.message.sender.model_copy(update={"address": address})
    message = result.message.model_copy(update={"sender": sender})
    desk.take_in(store, result.model_copy(update={"message": message}), "x")
    page = as_html(weekly_report(store, SHOP, NOW, None), names=True)
    assert f'who">{address}' in page
    assert ".who { overflow-wrap: anywhere; }" in page


@pytest.mark.parametrize(
    ("size", "first"),
    [
        (("38.1", "2.413", "133"), "mm"),  # 133 mm is 5.23622 in: nobody wrote it in inches
        (("38.1", "2.413", "114.3"), "in"),  # 1.5 x .095 x 4.5 in
        (("38", "1.5", "95"), "mm"),
    ],
)
def test_the_unit_in_which_a_size_is_plain_comes_first(
    size: tuple[str, str, str], first: str
) -> None:
    assert units(Size(*map(Decimal, size)))[0] == first


def test_one_size_alone_does_not_fill_the_picture(store: Store, make_result) -> None:
    figures = pytest.importorskip(
        "matplotlib.figure", reason="the pictures need the extra 'charts'"
    )
    desk.take_in(store, make_result("ada"), "x")
    axes = figures.Figure().add_subplot()
    report_charts._sizes(axes, weekly_report(store, SHOP, NOW, None))
    low, high = axes.get_ylim()
    assert abs(high - low) >= 5  # a bar is 0.62 high
