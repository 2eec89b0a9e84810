"""Every formula of the tool says what it is: symbols with units, range, source, an example."""

from __future__ import annotations

import doctest
import importlib
import inspect
from collections.abc import Callable

import pytest

from bendreply.rules import advance, ball_chart, bore, needed, tolerances
from bendreply.rules.formula import described

FORMULAS: tuple[Callable[..., object], ...] = (
    advance.advance_advised,
    advance.advance_by_table,
    advance.advance_max,
    ball_chart.balls_that_fit,
    ball_chart.swing_per_joint,
    bore.across_weld,
    bore.en10296_bead,
    bore.flash_in_bead,
    bore.largest_bore,
    bore.smallest_bore,
    needed.mandrel_need,
    tolerances.heat_treated_factor,
)


@pytest.mark.parametrize("formula", FORMULAS, ids=lambda f: f.__name__)
def test_a_formula_says_what_it_is(formula: Callable[..., object]) -> None:
    found = described(formula)
    for symbol in found.symbols.split(";"):
        assert "[" in symbol, f"{symbol!r} has no unit"
    assert ">>>" in (inspect.getdoc(formula) or "")


@pytest.mark.parametrize(
    "name", ["advance", "ball_chart", "bore", "needed", "tolerances"], ids=lambda name: name
)
def test_the_examples_are_true(name: str) -> None:
    result = doctest.testmod(importlib.import_module(f"bendreply.rules.{name}"))
    assert result.attempted > 0
    assert result.failed == 0
