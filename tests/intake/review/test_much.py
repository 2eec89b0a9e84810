"""Messages that are long, or ask for much: the draft and each size stay in reach."""

from __future__ import annotations

from collections.abc import Iterator
from pathlib import Path

import pytest

from ...servers.page import Answer, Page, new_shop, running
from ..mailbox.mails import mail

FILLING = "the tube came out well on our old machine last year\n"
THIRTY = "\n".join(f"1.75 x .095 DOM on a {5 + number / 8} clr" for number in range(30))


@pytest.fixture(scope="module")
def page(tmp_path_factory: pytest.TempPathFactory) -> Iterator[Page]:
    """Inquiries 1 (60 kB and a subject of 300 letters) and 2 (thirty sizes)."""
    folder = tmp_path_factory.mktemp("much")
    long: Path = folder / "1.eml"
    long.write_bytes(
        mail("ada", f"Mandrel for 1.75 x .095 DOM, 5.25 clr\n{FILLING * 1150}", subject="W" * 300)
    )
    many: Path = folder / "2.eml"
    many.write_bytes(mail("max", f"Please quote mandrels for:\n{THIRTY}\n", subject="thirty"))
    new_shop(folder / "shop", long, many)
    with running(folder / "shop") as started:
        yield started


def shown(page: Page, number: int) -> Answer:
    return page.browser().get(f"/inquiry/{number}")


def test_a_long_letter_scrolls_in_its_own_place_and_can_be_scrolled_by_keys(page: Page) -> None:
    letter = shown(page, 1).page.css_first(".letter.long")
    assert letter is not None
    assert letter.attributes["tabindex"] == "0"
    assert letter.attributes["aria-label"]
    assert letter.text().count("old machine") > 100  # nothing of it is left out
    assert shown(page, 2).page.css_first(".letter.long") is None


def test_a_long_subject_is_told_whole_once(page: Page) -> None:
    answer = shown(page, 1)
    assert len(answer.words("h1")) == 120
    assert answer.words("h1").endswith("…")
    assert answer.words(".words .subject") == "W" * 300


def test_many_sizes_are_listed_first_each_with_its_answer(page: Page) -> None:
    answer = shown(page, 2)
    assert answer.words(".all-sizes h2") == "30 sizes"
    lines = answer.all_words(".all-sizes li")
    assert len(lines) == 30
    assert lines[0] == "1.75 × 0.095 × 5 in from stock"
    for link in answer.page.css(".all-sizes a"):
        assert answer.page.css_first(link.attributes["href"] or "") is not None
    assert shown(page, 1).page.css_first(".all-sizes") is None


def test_pictures_of_many_sizes_are_folded_away_by_size(page: Page) -> None:
    folded = shown(page, 2).all_words(".folded > summary")
    assert len(folded) == 30
    assert folded[29] == "Size 30: 1.75 × 0.095 × 8.625 in"  # 5 + 29 / 8
    assert shown(page, 1).page.css_first(".folded") is None
