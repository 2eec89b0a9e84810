"""A tolerance, a cut length and the shaft that the mandrel is screwed to, beside a tube that is told
in full: none of them is a second size, and none puts the first in doubt."""

# ruff: noqa: E501 - a message stands on one line

from __future__ import annotations

from decimal import Decimal

import pytest

from .support import read_text


@pytest.mark.parametrize(
    "text",
    [
        "One mandrel.\nOutside diameter 31.75 mm +0.10/-0\nWall thickness 1.65 mm\nCentreline radius 95.25 mm",
        "One mandrel: OD 31.75 mm +0.10 -0, wall 1.65 mm, CLR 95.25 mm.",
        "One mandrel: OD 31.75 mm +0/-0.1, wall 1.65 mm, CLR 95.25 mm.",
        "Un mandrin: Ø ext. 31,75 +0,1/0, ép. 1,65, R 95,25 à l'axe.",
        "Ein Dorn: Rohr 31,75 mm, Wandstärke 1,65 mm, Radius 95,25 mm. Gesamtlänge des gestreckten Rohrs 2.840 mm.",
        "Ein Dorn: Rohr 31,75 mm, Wandstärke 1,65 mm, Radius 95,25 mm. Länge vom Rohr 2.840 mm.",
        "One mandrel: tube 31.75 mm, wall 1.65, CLR 95.25. Overall length of the straightened tube 2.840 mm.",
        "Een doorn: buis 31,75 mm, wand 1,65, radius 95,25. Totale lengte van de gestrekte buis 2.840 mm.",
        "One mandrel: tube 31.75 x 1.65 mm, R 95.25. Shaft of our machine have thread M20 and diameter 36.",
        "Ein Dorn: Rohr 31,75 x 1,65 mm, R 95,25. Dornstange hat Gewinde M20 und Durchmesser 36.",
        "Un mandrin: tube 31,75 x 1,65 mm, R 95,25. La tige a un filetage M20 et un diamètre de 36.",
        "Un mandril: tubo 31,75 x 1,65 mm, R 95,25. La varilla tiene rosca M20 y diámetro 36.",
        "Un mandrino: tubo 31,75 x 1,65 mm, R 95,25. L'asta ha filetto M20 e diametro 36.",
        "Een doorn: buis 31,75 x 1,65 mm, R 95,25. De stang heeft draad M20 en diameter 36.",
    ],
)
def test_no_second_size(text: str) -> None:
    (size,) = read_text(text)
    lengths = (size.od_mm, size.wall_mm, size.clr_mm)
    assert lengths == (Decimal("31.75"), Decimal("1.65"), Decimal("95.25"))
    assert not size.doubts
