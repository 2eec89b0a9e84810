"""Short requests on one topic each (tests/corpus/short), in the halves that were mended for: what
was reached once stays. The labels are their writers' own."""

from __future__ import annotations

import importlib.util
import sys
from pathlib import Path
from types import ModuleType

import pytest

FILE = Path(__file__).parents[1] / "corpus" / "short" / "score.py"


@pytest.fixture(scope="module")
def short() -> ModuleType:
    spec = importlib.util.spec_from_file_location("short_score", FILE)
    assert spec is not None
    assert spec.loader is not None
    module = importlib.util.module_from_spec(spec)
    sys.modules["short_score"] = module
    spec.loader.exec_module(module)
    return module


@pytest.mark.parametrize(
    ("topic", "right", "silent"),
    [
        ("radii_en", 0.97, 0.005),
        ("radii_eu", 0.93, 0.018),
        ("walls", 0.96, 0.009),
        ("counts", 0.95, 0.004),
        ("lists", 0.91, 0.005),
        ("told", 0.96, 0.020),
    ],
)
def test_what_was_reached_on_a_topic_stays(
    short: ModuleType, topic: str, right: float, silent: float
) -> None:
    score = short.scored(topic)
    assert score.fully_right / score.requests >= right
    assert len(score.silent_misreads) / score.stated <= silent


def test_both_halves_have_the_same_number_of_messages(short: ModuleType) -> None:
    for topic in short.TOPICS:
        open_half = len(list(short.shorts(topic)))
        assert 0 <= open_half - len(list(short.shorts(topic + short.CLOSED))) <= 1
