"""Which safety-relevant uses a message names, and which words only sound like one."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from bendreply.intake.uses import safety_uses
from bendreply.rules.rulebooks import USE_WORDS


@pytest.mark.parametrize(
    ("words", "uses"),
    [
        ("1.75 x .095 DOM for a roll cage", ("cage",)),
        ("rollcage tube", ("cage",)),
        ("main hoop and roll bar, 1-3/4", ("cage",)),
        ("rollover protection on a tractor", ("cage",)),
        ("doing a narrow cage for an altered", ("cage",)),
        ("it has to pass FIA", ("cage",)),
        ("Rohr für einen Überrollkäfig", ("cage",)),
        ("a frame for race seats", ("seat",)),
        ("rear suspension links and steering column", ("chassis",)),
        ("brake lines for a rod", ("brake",)),
        ("3/8 hydraulic line, 3000 psi", ("pressure", "hydraulic")),
        ("steam coil in a boiler", ("pressure", "steam", "boiler")),
        ("gas piping for a burner", ("pressure", "gas")),
        ("ASME pressure vessel nozzle", ("pressure",)),
        ("working at 16 bar", ("pressure",)),
        ("Dampfleitung 42,4 x 2,6", ("pressure", "steam")),
        ("engine mount for a homebuilt aircraft", ("aircraft",)),
        ("roll bar with brake lines along it", ("cage", "brake")),
    ],
)
def test_a_named_use_is_seen(words: str, uses: tuple[str, ...]) -> None:
    assert safety_uses(words) == uses


@pytest.mark.parametrize(
    "words",
    [
        "a birdcage stand",
        "parrots' bird cage, 1/2 in tube",
        "batting cage frame",
        "it is not for a cage, just a bumper",
        "no roll bar, only the bumper",
        "the pressure die is 5 in long",
        "pressure die assist is set at 800",
        "we fold it on a press brake",
        "a hydraulic bender with a 2 in capacity",
        "our hydraulic cylinder is weak",
        "two bar stools and a foot rail",
        "brass bar rail in a saloon",
        "aircraft quality 4130",
        "aircraft-grade aluminum",
        "the stage is caged in by walls",
        "cattle hoops, grill guards",
        "under time pressure here",
        "steampunk lamp",
        "",
    ],
)
def test_words_that_only_sound_alike_name_no_use(words: str) -> None:
    assert safety_uses(words) == ()


def test_a_use_broken_over_two_lines_is_seen() -> None:
    assert safety_uses("tube for a roll\ncage") == ("cage",)


def test_a_denied_use_does_not_hide_a_real_one() -> None:
    assert safety_uses("not a cage for the dog: a roll cage for my car") == ("cage",)


@given(st.text(max_size=300))
def test_no_text_breaks_it(text: str) -> None:
    assert set(safety_uses(text)) <= set(USE_WORDS)
