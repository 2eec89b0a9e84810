"""Several sizes of a list that an 'only' asks for by a figure of each."""

from __future__ import annotations

import pytest

from .support import read_text

_LIST = "38 x 2, R 57\n42 x 2, R 63\n48 x 2, R 72\n"

PICKED = [
    f"Tubes:\n{_LIST}We only need mandrels for the 38 and the 48, one each please.",
    f"Tubes:\n{_LIST}Just the 38 and 48 please.",
    f"Tubes:\n{_LIST}Please quote mandrels for the 38 and the 48 only, one each.",
    f"Rohre:\n{_LIST}Wir brauchen nur Dorne für das 38er und das 48er.",
    f"Rohre:\n{_LIST}Nur die 38er und 48er bitte, je einen.",
    f"Tubes :\n{_LIST}Seulement le 38 et le 48 svp.",
    f"Tubos:\n{_LIST}Solo necesitamos mandriles para el 38 y el 48.",
    f"Tubi:\n{_LIST}Solo il 38 e il 48 per favore.",
    f"Buizen:\n{_LIST}Alleen de 38 en de 48 graag.",
]


@pytest.mark.parametrize("text", PICKED)
def test_only_those_are_asked_for(text: str) -> None:
    requests = read_text(text)
    assert [(r.od_mm, r.wall_mm, r.clr_mm) for r in requests] == [(38, 2, 57), (48, 2, 72)]
    assert not any(r.doubts for r in requests)


@pytest.mark.parametrize(
    "words",
    ["One mandrel each. Wipers only for the 38 and the 48.", "Not only the 38 and the 48, all."],
)
def test_an_only_of_something_else_leaves_all(words: str) -> None:
    assert [r.od_mm for r in read_text(f"Tubes:\n{_LIST}{words}")] == [38, 42, 48]
