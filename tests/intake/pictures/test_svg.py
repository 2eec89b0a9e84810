"""What a page needs of our SVG: no styles, no scripts, ids of its own, grey in print."""

from __future__ import annotations

import re
import sys
from xml.etree import ElementTree

import pytest

from bendreply.intake import pictures
from bendreply.rules.assess import assess
from bendreply.rules.request import SizeRequest
from bendreply.rules.shop import sample_shop

from .drawn import size

pytest.importorskip("matplotlib", reason="pictures are drawn with matplotlib: the extra 'charts'")

SIZES = [size("1.75", "0.095", "5.25"), size("3", "0.065", "4.5"), size("38", "1.5", "95", "mm")]


def both(request: SizeRequest) -> tuple[str, str]:
    """The two pictures of a request."""
    shop = sample_shop()
    assessment = assess(request, shop)
    drawn = pictures.bend_svg(assessment, shop), pictures.limit_map_svg(assessment, shop)
    assert drawn[0]
    assert drawn[1]
    return drawn[0], drawn[1]


def test_all_pictures_fit_in_one_page() -> None:
    """Ids are unique in it, and everything that is referred to is there."""
    page = ElementTree.fromstring(f"<html>{''.join(''.join(both(one)) for one in SIZES)}</html>")
    ids = [one.get("id") for one in page.iter() if one.get("id")]
    assert len(ids) == len(set(ids)) > 50
    used = set(re.findall(r"#([\w-]+)", ElementTree.tostring(page, "unicode"))) - {None}
    colours = {name for name in used if re.fullmatch(r"[0-9a-f]{6}", name)}
    assert used - colours <= set(ids)


@pytest.mark.parametrize("request_", SIZES)
def test_a_strict_page_drops_nothing_of_it(request_: SizeRequest) -> None:
    """Content-Security-Policy without inline styles and scripts (CSP 3, 6.7.3.3)."""
    for svg in both(request_):
        root = ElementTree.fromstring(svg)
        assert not [one for one in root.iter() if "style" in one.attrib]
        names = {one.tag.rpartition("}")[2] for one in root.iter()}
        assert not names & {"style", "script", "image", "foreignObject", "a", "metadata"}
        assert not [key for one in root.iter() for key in one.attrib if key.startswith("on")]


@pytest.mark.parametrize("request_", SIZES)
def test_nothing_is_told_by_colour(request_: SizeRequest) -> None:
    for svg in both(request_):
        colours = set(re.findall(r"#([0-9a-f]{6})\b", svg))
        assert colours
        assert all(one[:2] == one[2:4] == one[4:] for one in colours), colours


def test_without_matplotlib_one_sentence_says_what_is_missing(
    monkeypatch: pytest.MonkeyPatch,
) -> None:
    shop = sample_shop()
    assessment = assess(SIZES[0], shop)
    monkeypatch.setitem(sys.modules, "matplotlib", None)  # as if it were not installed
    with pytest.raises(pictures.NoPicturesError, match="its extra 'charts'"):
        pictures.bend_svg(assessment, shop)
    with pytest.raises(pictures.NoPicturesError, match="its extra 'charts'"):
        pictures.limit_map_png(assessment, shop)
    assert pictures.bend_text(assessment, shop).startswith("Section along the bend")
    assert pictures.limit_map_text(assessment, shop).startswith("Map of wall factor")
