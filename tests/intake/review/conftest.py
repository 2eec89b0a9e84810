"""A shop with a handful of messages, and its review page running on loopback."""

from __future__ import annotations

import shutil
from collections.abc import Iterator
from pathlib import Path

import pytest

from ...servers.page import KIT, ROBIN, Browser, Page, new_shop, running
from ..mailbox.mails import mail

THIN = "Can you bend 2.75 x .083 tube, 304, on an 8.25 clr? One mandrel please."
"""2.75 / .083 = 33.1, above the sample shop's limit of 30; 2.75 / .095 = 28.9, below it."""
EITHER = "whats one mandrel cost for 15/8 x .083 moly, 5 clr"
QUESTION = "What is wall factor and why do you ask for it?"
OTHER = "The catalogue you sent is out of date, please call me about the invoice."


@pytest.fixture(scope="session")
def shop_folder(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """The shop as it is before anybody has looked at it; copied for each test."""
    base = tmp_path_factory.mktemp("page")
    files = []
    for number, (name, body) in enumerate(
        {"ada": THIN, "ned": EITHER, "flo": QUESTION, "bob": OTHER}.items(), start=1
    ):
        file = base / f"{number}.eml"
        file.write_bytes(mail(name, body, subject=f"Mandrel for {name}"))
        files.append(file)
    new_shop(base / "shop", *files)
    return base / "shop"


@pytest.fixture
def page(shop_folder: Path, tmp_path: Path) -> Iterator[Page]:
    """The running page of that shop: inquiries 1 (thin), 2 (either OD), 3 (question), 4 (other)."""
    folder = tmp_path / "shop"
    shutil.copytree(shop_folder, folder)
    with running(folder) as page:
        yield page


@pytest.fixture
def robin(page: Page) -> Browser:
    """Robin's browser."""
    return page.browser(ROBIN)


@pytest.fixture
def kit(page: Page) -> Browser:
    """Kit's browser."""
    return page.browser(KIT)
