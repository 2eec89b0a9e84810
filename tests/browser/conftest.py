"""Real headless Chromium before a real server. What it loads from elsewhere, or runs that it must
not, fails the test that is running.

Needs Debian's ``chromium`` and the Python package ``playwright``; the check of accessibility also
axe-core, a file of the npm package, which BENDREPLY_AXE names.
"""

from __future__ import annotations

import os
import shutil
from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path
from typing import TYPE_CHECKING, Any

import pytest

from ..intake.mailbox.conftest import MUST
from ..intake.mailbox.conftest import running as running_dovecot
from ..intake.review.conftest import page, shop_folder
from ..servers.dovecot import Dovecot
from ..servers.page import Page

if TYPE_CHECKING:
    from playwright.sync_api import Browser, BrowserContext
    from playwright.sync_api import Page as Tab

__all__ = ["page", "shop_folder"]

DESKTOP, PHONE = {"width": 1280, "height": 900}, {"width": 390, "height": 844}


def lacking(sentence: str) -> None:
    """Skip, or fail where nothing may be lacking."""
    if os.environ.get(MUST):
        pytest.fail(sentence)
    pytest.skip(sentence)


@pytest.fixture(scope="module")
def driver() -> Iterator[Any]:
    """What drives the browser. Ended with these tests: its loop would be in the way of others."""
    try:
        from playwright.sync_api import sync_playwright
    except ImportError:
        lacking("a browser is driven by playwright: pip install playwright")
    with sync_playwright() as started:
        yield started


@contextmanager
def launched(driver: Any, *switches: str) -> Iterator[Browser]:
    """Chromium, ended afterwards."""
    program = shutil.which("chromium")
    if program is None:
        lacking("a real browser is needed: apt-get install chromium")
    own = ["--no-sandbox"] if os.getuid() == 0 else []
    browser = driver.chromium.launch(executable_path=program, args=[*own, *switches])
    try:
        yield browser
    finally:
        browser.close()


@pytest.fixture(scope="module")
def chromium(driver: Any) -> Iterator[Browser]:
    """One browser for all tests; each has windows of its own."""
    with launched(driver) as browser:
        yield browser


class Windows:
    """Windows of separate people, watched for what must not happen."""

    def __init__(self, chromium: Browser, address: str) -> None:
        self._chromium, self._address = chromium, address
        self._open: list[BrowserContext] = []
        self.faults: list[str] = []

    def new(self, **settings: Any) -> Tab:
        """A window of somebody who has no cookies yet."""
        context = self._chromium.new_context(
            **{"viewport": DESKTOP, "base_url": self._address, **settings}
        )
        self._open.append(context)
        tab = context.new_page()
        tab.set_default_timeout(10_000)
        tab.on("pageerror", lambda error: self.faults.append(f"a script failed: {error}"))
        tab.on("dialog", self._dialog)
        tab.on("request", self._request)
        tab.on("console", self._console)
        return tab

    def _request(self, request: Any) -> None:
        if not request.url.startswith((self._address + "/", "about:", "data:")):
            self.faults.append(f"something was loaded from elsewhere: {request.url}")

    def _console(self, message: Any) -> None:
        # A page that answers 409 or 422 is one of ours, though the browser calls it a failure.
        if (
            message.type == "error"
            and "the server responded with a status of 4" not in message.text
        ):
            self.faults.append(message.text)

    def _dialog(self, dialog: Any) -> None:
        if dialog.type != "beforeunload":
            self.faults.append(f"a dialog opened: {dialog.message}")
        dialog.accept()

    def close(self) -> None:
        """Close all of them."""
        for one in self._open:
            one.close()


@pytest.fixture
def windows(chromium: Browser, page: Page) -> Iterator[Windows]:
    """For the page of the little shop."""
    made = Windows(chromium, page.address)
    yield made
    made.close()
    assert made.faults == []


@pytest.fixture(scope="module")
def dovecot() -> Iterator[Dovecot]:
    """A real IMAP server."""
    with running_dovecot() as server:
        yield server


@pytest.fixture(scope="module")
def axe() -> str:
    """The checker of accessibility, as a script."""
    named = os.environ.get("BENDREPLY_AXE", "")
    if not named or not Path(named).is_file():
        lacking("axe-core is needed: npm install axe-core, and BENDREPLY_AXE=.../axe.min.js")
    return Path(named).read_text("utf-8")


def sign_in(tab: Tab, name: str) -> None:
    """Say who sits at a window."""
    tab.goto("/who")
    tab.get_by_label("Who are you?").select_option(name)
    tab.get_by_role("button", name="Go on").click()
