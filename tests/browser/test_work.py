"""A day's work in the browser: with the mouse, with keys only, without scripts, and two at once."""

from __future__ import annotations

import os
import re
import subprocess
import sys
from collections.abc import Iterator
from email import message_from_bytes
from email.policy import default
from pathlib import Path
from typing import TYPE_CHECKING

import pytest

from bendreply.intake import desk
from bendreply.intake.inquiry import State

from ..intake.mailbox.conftest import in_folder, lay, settings_of
from ..intake.mailbox.mails import mail
from ..intake.review.conftest import EITHER, THIN
from ..servers.dovecot import PASSWORD, Dovecot
from ..servers.page import KIT, ROBIN, Page
from .conftest import PHONE, Windows, sign_in

if TYPE_CHECKING:
    from playwright.sync_api import Browser

RUN = [sys.executable, "-c", "from bendreply.intake.cli import main; raise SystemExit(main())"]


@pytest.fixture
def command(dovecot: Dovecot, tmp_path: Path) -> Iterator[str]:
    """The address of ``bendreply review`` as an owner starts it, after collecting real mail."""
    folder = tmp_path / "shop"
    environment = {**os.environ, "SHOP_PASSWORD": PASSWORD, "PYTHONUNBUFFERED": "1"}
    subprocess.run([*RUN, "shop", "new", str(folder)], check=True, capture_output=True)
    with (folder / "shop.toml").open("a", encoding="utf-8") as file:
        file.write(settings_of(dovecot))
    lay(dovecot, mail("ada", THIN, subject="Mandrel for ada"), mail("ned", EITHER, number=2))
    call = [*RUN, "--shop", str(folder)]
    subprocess.run([*call, "collect"], check=True, capture_output=True, env=environment)
    with subprocess.Popen(
        [*call, "review", "--port", "0"], stdout=subprocess.PIPE, text=True, env=environment
    ) as program:
        assert program.stdout is not None
        found = re.search(r"http://\S+", program.stdout.readline())
        assert found is not None
        yield found[0].rstrip("/")
        program.terminate()


def test_the_whole_way_from_a_mailbox_to_its_drafts(
    chromium: Browser, command: str, dovecot: Dovecot
) -> None:
    windows = Windows(chromium, command)
    tab = windows.new()
    tab.goto("/")
    assert tab.locator(".list tbody").count() == 2
    tab.get_by_role("link", name="decline 1").click()
    assert tab.locator(".list .who a").all_inner_texts() == ["Ada"]
    tab.get_by_role("link", name="Ada").click()

    assert tab.locator(".verdict").inner_text() == "Decline"
    before = tab.locator(".pictures img").evaluate_all("all => all.map(one => one.src)")
    wall = tab.get_by_label("Wall", exact=True)
    assert wall.input_value() == "0.083 in"
    tab.get_by_label("Who are you?").first.select_option(ROBIN)
    wall.fill(".095")
    wall.press("Enter")

    assert tab.locator(".verdict").inner_text() == "Custom make"
    assert wall.input_value() == "0.095 in"
    reply = tab.get_by_label("Reply", exact=True)
    assert "0.095 in (2.413 mm) wall" in reply.input_value()
    after = tab.locator(".pictures img").evaluate_all("all => all.map(one => one.src)")
    assert not set(before) & set(after)
    if after:
        tab.wait_for_load_state("networkidle")
        widths = tab.locator(".pictures img").evaluate_all(
            "all => all.map(one => one.naturalWidth)"
        )
        assert all(widths), "each picture is shown"

    reply.fill("Hello Ada,\n\nby all means.\n")
    tab.get_by_role("button", name="Approve").click()
    assert "is approved by Robin Ashdown" in tab.locator(".told").inner_text()
    tab.get_by_role("link", name="What waits").click()
    tab.get_by_role("button", name="Lay down in Drafts").click()
    assert "the draft lies in Entwurf" in tab.locator(".told").inner_text()

    (laid,) = in_folder(dovecot, "Entwurf")
    draft = message_from_bytes(laid, policy=default)
    assert draft["To"] == "Ada <ada@example.net>"
    assert draft["In-Reply-To"] == "<ada-1@example.net>"
    assert "by all means." in draft.get_content()
    windows.close()
    assert windows.faults == []


def test_the_whole_by_keyboard(windows: Windows, page: Page) -> None:
    tab = windows.new()
    keys = tab.keyboard
    tab.goto("/who")
    tab.get_by_label("Who are you?").focus()
    keys.type("R")
    keys.press("Tab")
    keys.press("Enter")
    tab.wait_for_url(page.address + "/")

    keys.press("/")
    keys.type("decline")
    keys.press("Enter")
    tab.wait_for_url(re.compile("text=decline"))
    keys.press("n")
    assert tab.evaluate("document.activeElement.textContent") == "Ada"
    keys.press("Enter")
    tab.wait_for_url(re.compile("/inquiry/1"))

    keys.press("f")
    assert tab.evaluate("document.activeElement.id") == "od-1"
    keys.press("Tab")
    keys.press("Control+A")
    keys.type(".095")
    keys.press("Enter")
    tab.wait_for_url(re.compile("told="))
    assert tab.locator(".verdict").inner_text() == "Custom make"

    keys.press("e")
    keys.press("Control+Home")
    keys.type("Good day,\n")
    keys.press("n")  # typed, since a field has the focus
    keys.press("Escape")
    keys.press("a")
    assert tab.evaluate("document.activeElement.id") == "approve"
    keys.press("Enter")
    tab.wait_for_url(lambda url: "/inquiry/1" not in url)
    inquiry = desk.show(page.store, 1)
    assert inquiry.state is State.APPROVED
    assert inquiry.draft is not None
    assert inquiry.draft.body.startswith("Good day,\nn")

    tab.goto("/")
    for _ in range(9):
        keys.press("n")
    last = tab.evaluate("document.activeElement.textContent")
    keys.press("p")
    assert tab.evaluate("document.activeElement.textContent") != last
    keys.press("s")
    tab.wait_for_url(re.compile("#why"))
    number = int(re.findall(r"/inquiry/(\d+)", tab.url)[0])
    assert tab.evaluate("document.activeElement.id") == "why"
    keys.type("answered by phone")
    keys.press("Enter")
    tab.wait_for_url(re.compile("told="))
    assert desk.show(page.store, number).state is State.SET_ASIDE
    keys.press("w")
    tab.wait_for_url(page.address + "/")


def test_keys_can_be_switched_off(windows: Windows) -> None:
    tab = windows.new()
    tab.goto("/inquiry/1")
    tab.keyboard.press("?")
    tab.get_by_label("Single keys do this here").uncheck()
    tab.reload()
    tab.keyboard.press("e")
    assert tab.evaluate("document.activeElement.id") != "body"


def test_everything_works_without_scripts(windows: Windows, page: Page) -> None:
    tab = windows.new(java_script_enabled=False)
    sign_in(tab, KIT)
    tab.get_by_label("Name, size, part, word").fill("ned")
    tab.get_by_role("button", name="Show").click()
    tab.get_by_role("link", name="Ned").click()
    tab.get_by_role("button", name=re.compile("1.875 in")).click()
    assert tab.get_by_label("OD", exact=True).input_value() == "1.875 in"
    tab.get_by_role("button", name="Approve").click()
    assert desk.show(page.store, 2).words[-1].by == KIT


def test_two_people_race_for_one_inquiry(windows: Windows, page: Page) -> None:
    robin, kit = windows.new(), windows.new()
    sign_in(robin, ROBIN)
    sign_in(kit, KIT)
    for tab in (robin, kit):
        tab.goto("/inquiry/1")
    kit.get_by_label("Reply", exact=True).fill("Kit's words")
    robin.get_by_role("button", name="Approve").click()
    kit.get_by_role("button", name="Approve").click()
    told = kit.get_by_role("alert").inner_text()
    assert "changed meanwhile" in told
    assert ROBIN in told
    assert "Kit's words" in kit.get_by_label("Copy from here").input_value()
    inquiry = desk.show(page.store, 1)
    assert [(one.said, one.by) for one in inquiry.words] == [("approved", ROBIN)]
    assert len(inquiry.drafts) == 1


@pytest.mark.parametrize("how", ["hover", "focus"])
def test_a_figure_shows_its_reading(windows: Windows, how: str) -> None:
    tab = windows.new()
    tab.goto("/inquiry/1")
    figure = tab.locator(".letter .read").filter(has_text="2.75")
    assert not figure.get_by_role("tooltip").is_visible()
    if how == "hover":
        figure.hover()
    else:
        figure.locator("a").focus()
    assert figure.get_by_role("tooltip").inner_text() == "2.75 → 2.75 in, 69.85 mm; OD"


@pytest.mark.parametrize("path", ["/", "/inquiry/1", "/inquiry/2", "/inquiry/4", "/who"])
def test_a_phone_shows_pages_without_scrolling_sideways(windows: Windows, path: str) -> None:
    tab = windows.new(viewport=PHONE, is_mobile=True, has_touch=True)
    tab.goto(path)
    tab.wait_for_load_state("networkidle")
    assert tab.evaluate("document.documentElement.scrollWidth") <= PHONE["width"]


def test_words_typed_and_not_kept_are_not_lost_without_a_question(windows: Windows) -> None:
    tab = windows.new()
    tab.goto("/inquiry/1")
    asked: list[str] = []
    tab.on("dialog", lambda dialog: asked.append(dialog.type))
    tab.get_by_label("Reply", exact=True).fill("half a reply")
    tab.get_by_role("link", name="Next").click()
    assert asked == ["beforeunload"]
