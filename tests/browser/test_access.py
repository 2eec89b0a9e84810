"""Accessibility, by axe-core: no serious fault on any page, as it comes and in its odd states."""

from __future__ import annotations

from typing import TYPE_CHECKING, Any

import pytest

from ..servers.page import ROBIN
from .conftest import DESKTOP, PHONE, Windows, sign_in

if TYPE_CHECKING:
    from playwright.sync_api import Page as Tab


def faults(tab: Tab, axe: str) -> list[dict[str, Any]]:
    """What the checker finds at the state of a page."""
    tab.evaluate(f"() => {{ {axe} }}")
    found = tab.evaluate("() => axe.run(document)")
    assert found["passes"], "it looked at the page"
    return [
        {"rule": one["id"], "impact": one["impact"], "at": [n["target"] for n in one["nodes"]]}
        for one in found["violations"]
    ]


PATHS = ("/", "/?answer=ask&text=nobody", "/inquiry/1", "/inquiry/2", "/inquiry/4", "/who", "/x")


@pytest.mark.parametrize(
    ("path", "size"),
    [*((path, DESKTOP) for path in PATHS), ("/", PHONE), ("/inquiry/2", PHONE)],
    ids=lambda value: value if isinstance(value, str) else f"{value['width']} wide",
)
def test_no_fault_on_a_page(windows: Windows, axe: str, path: str, size: dict[str, int]) -> None:
    tab = windows.new(viewport=size)
    tab.goto(path)
    for one in tab.locator("details").all():
        one.evaluate("one => { one.open = true; }")
    assert faults(tab, axe) == []


def test_no_fault_where_something_is_wrong_or_asked(windows: Windows, axe: str) -> None:
    tab = windows.new()
    sign_in(tab, ROBIN)
    tab.goto("/inquiry/1")
    tab.get_by_label("Wall", exact=True).fill("thick")
    tab.get_by_label("Wall", exact=True).press("Enter")
    assert tab.locator(".wrong").count() == 1
    assert faults(tab, axe) == []
    tab.get_by_label("Wall", exact=True).fill(".095")
    tab.get_by_label("Reply", exact=True).fill("My own words")
    tab.get_by_role("button", name="Judge again").last.click()
    assert tab.locator(".asks").count() == 1
    assert faults(tab, axe) == []
    tab.get_by_role("button", name="Keep my words").click()
    tab.get_by_role("button", name="Approve").click()
    tab.goto("/inquiry/1")
    assert faults(tab, axe) == []
    tab.goto("/")
    assert tab.locator(".laydown").count() == 1
    assert faults(tab, axe) == []
