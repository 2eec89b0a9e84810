"""How pages look on paper and on a phone, as far as it can be measured."""

from __future__ import annotations

from itertools import pairwise
from pathlib import Path

import pytest

from bendreply.intake import desk
from bendreply.intake.cli import main
from bendreply.intake.model import Address

from ..intake.conftest import made_result
from ..intake.mailbox.mails import mail
from ..servers.page import Page
from .conftest import PHONE, Windows

A4 = {"width": 718, "height": 1047}
"""[px at 96 dpi] 210 x 297 mm without margins of 10 mm."""
LINES_OF_EACH_WORD = """link => {
  const text = link.firstChild, words = [...text.data.matchAll(/[^ -]+/g)];
  return words.map(word => {
    const range = document.createRange();
    range.setStart(text, word.index);
    range.setEnd(text, word.index + word[0].length);
    return new Set([...range.getClientRects()].map(box => Math.round(box.top))).size;
  });
}"""


def test_on_paper_no_name_is_broken_within_a_word(windows: Windows, page: Page) -> None:
    for name in ("Wendelin Achenbach", "Kunigunde Steinröder", "Hettie Vandermolen"):
        sender = Address(name=name, address="somebody@example.net")
        desk.take_in(page.store, made_result(name.split()[0], sender=sender), name)
    tab = windows.new(viewport=A4)
    tab.emulate_media(media="print")
    tab.goto("/")
    names = tab.locator("a.open")
    assert names.count() == 7
    for one in names.all():
        assert set(one.evaluate(LINES_OF_EACH_WORD)) == {1}, one.inner_text()


@pytest.mark.parametrize("what", [".beside", "#needed_by-1", "#quantity-1", ".settle button"])
def test_on_paper_nothing_is_left_of_what_only_a_screen_needs(windows: Windows, what: str) -> None:
    tab = windows.new(viewport=A4)
    tab.goto("/inquiry/2")
    field = tab.locator(what).first
    if what.startswith("#"):  # only an empty one says nothing on paper
        assert field.get_attribute("value") == ("1" if what == "#quantity-1" else "")
    tab.emulate_media(media="print")
    assert field.is_visible() is (what == "#quantity-1")


def test_a_figures_name_stays_in_one_piece_where_lines_break(
    windows: Windows, page: Page, tmp_path: Path
) -> None:
    spoken = (
        "Talking this into the phone. After one mandrel, inch and three quarter by ninety five "
        "wall, chromoly, on a five and a quarter inch center line radius."
    )
    (tmp_path / "5.eml").write_bytes(mail("al", spoken))
    assert main(["--shop", str(page.folder), "collect", str(tmp_path / "5.eml")]) == 0
    tab = windows.new()
    tab.goto("/inquiry/5")
    for width in (*range(940, 1280, 20), PHONE["width"]):
        tab.set_viewport_size({"width": width, "height": 900})
        pieces = tab.evaluate(
            "[...document.querySelectorAll('.letter rt')].map(one => one.getClientRects().length)"
        )
        assert len(pieces) >= 4
        assert set(pieces) == {1}, width


def test_names_of_neighbouring_figures_stand_apart(
    windows: Windows, page: Page, tmp_path: Path
) -> None:
    spoken = "whats one mandrel cost for 15/8 x .083 moly, 5 clr. funny car back half"
    (tmp_path / "5.eml").write_bytes(mail("al", spoken))
    assert main(["--shop", str(page.folder), "collect", str(tmp_path / "5.eml")]) == 0
    tab = windows.new()
    tab.goto("/inquiry/5")
    for width in (1000, 1280):
        tab.set_viewport_size({"width": width, "height": 900})
        words = tab.evaluate(
            """[...document.querySelectorAll('.letter rt')].map(one => {
              const range = document.createRange();
              range.selectNodeContents(one);
              const box = range.getBoundingClientRect();
              return [box.top, box.left, box.right];
            })"""
        )
        assert len(words) >= 4
        for (top, _, right), (next_top, left, _) in pairwise(words):
            assert top != next_top or left - right >= 4, width


@pytest.mark.parametrize("path", ["/", "/inquiry/1"])
def test_on_a_phone_what_is_tapped_is_large_enough(windows: Windows, path: str) -> None:
    # WCAG 2.2, 2.5.8: 24 px, but for links within a sentence, as the figures are.
    tab = windows.new(viewport=PHONE, is_mobile=True)
    tab.goto(path)
    tapped = tab.locator("button:visible, summary:visible, nav a:visible, a.open:visible")
    assert tapped.count() > 5
    for one in tapped.all():
        box = one.bounding_box()
        assert box is not None
        assert box["height"] >= 24 or one.get_attribute("class") == "first", one.inner_text()


def test_on_a_phone_each_answer_begins_a_line(windows: Windows) -> None:
    tab = windows.new(viewport=PHONE, is_mobile=True)
    tab.goto("/")
    left = tab.locator(".list").bounding_box()
    assert left is not None
    for mark in tab.locator(".list .ans .mark").all():
        box = mark.bounding_box()
        assert box is not None
        assert box["x"] - left["x"] < 4
