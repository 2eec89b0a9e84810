"""How quick the page is. Measured where nothing else runs: in .ci/run, or by hand with
BENDREPLY_NEEDS_SERVERS set.
"""

from __future__ import annotations

import os
import statistics
import time
from collections.abc import Callable
from datetime import UTC, datetime, timedelta
from pathlib import Path

import pytest

from bendreply.intake import desk
from bendreply.intake.store import open_store
from bendreply.rules.assessment import Decision

from ...pace import USUAL_S, fixed_piece
from ...servers.page import ROBIN, Page, new_shop, running
from ..conftest import made_result
from ..mailbox.conftest import MUST

pytestmark = pytest.mark.skipif(
    not os.environ.get(MUST), reason=f"timings count only on a quiet machine: set {MUST}"
)

MANY = 5000
START = datetime(2026, 11, 1, 8, 0, tzinfo=UTC)


def median_ms(work: Callable[[], object], times: int) -> float:
    took = []
    for _ in range(times):
        began = time.perf_counter()
        work()
        took.append((time.perf_counter() - began) * 1000)
    return statistics.median(took)


def test_thousands_that_wait_cost_little_more_than_none(tmp_path: Path) -> None:
    empty, full = tmp_path / "empty", tmp_path / "full"
    for folder in (empty, full):
        new_shop(folder)
    decisions = list(Decision)
    with open_store(full / "store.sqlite") as store, store.together():
        for number in range(MANY):
            made = made_result(
                f"n{number}",
                decisions=(decisions[number % len(decisions)],),
                received_at=START + timedelta(minutes=number),
            )
            desk.take_in(store, made, f"{number}")
    with running(empty, create=True) as nobody, running(full) as everybody:
        none, many = nobody.browser(), everybody.browser()
        assert "Nothing waits." in none.get("/").words()
        began = time.perf_counter()
        assert many.get("/").words("h1") == f"What waits {MANY}"
        first = time.perf_counter() - began
        base = median_ms(lambda: none.get("/"), 60)
        took = median_ms(lambda: many.get("/"), 60)
        chosen = median_ms(lambda: many.get("/?answer=ask&text=n4&doubt=none"), 30)
        robin = everybody.browser(ROBIN)

        def after_a_change() -> None:
            fields = {"version": "1", "why": "no", "by": ROBIN}
            robin.ask(
                "POST",
                f"/inquiry/{next(numbers)}/set-aside",
                "&".join(f"{k}={v}" for k, v in fields.items()).encode(),
                {"Origin": robin.origin},
            )
            many.get("/")

        numbers = iter(range(1, MANY))
        changed = median_ms(after_a_change, 20)
    figures = (
        f"empty {base:.1f} ms, {MANY} waiting {took:.1f} ms, chosen {chosen:.1f} ms, "
        f"set aside and list {changed:.1f} ms, very first {first * 1000:.0f} ms"
    )
    assert took <= 5 * base, figures


def test_a_correction_comes_back_at_once(page: Page) -> None:
    robin = page.browser(ROBIN)
    walls = [".095", ".083", ".12", ".109"] * 8

    def correct() -> None:
        answer = robin.post("/inquiry/1", {**fields, "wall-1": walls.pop(), "do": "save"})
        assert answer.status == 200
        fields["version"] = answer.page.css_first("[name=version]").attributes["value"]

    fields = {"version": "1"}
    took = median_ms(correct, 25)
    usual = took * USUAL_S / max(USUAL_S, fixed_piece())
    assert usual <= 200, f"a correction, with the page that it leads to: {took:.0f} ms"
