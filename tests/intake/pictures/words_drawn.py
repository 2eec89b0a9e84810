"""The words of a picture, and where they stand in it."""

from __future__ import annotations

from itertools import combinations

from bendreply.intake.pictures.sheet import WIDTH


def words_of(figure: object) -> list[tuple[str, tuple[float, float, float, float]]]:
    """Every text of a figure with the box that the renderer gives it."""
    from matplotlib.backends.backend_agg import FigureCanvasAgg
    from matplotlib.text import Text

    renderer = FigureCanvasAgg(figure).get_renderer()
    found = []
    for text in figure.findobj(Text):
        if text.get_text():
            box = text.get_window_extent(renderer)
            found.append((text.get_text(), (box.x0, box.y0, box.x1, box.y1)))
    return found


def check_words(figure: object, height: float) -> None:
    """No word runs out of the picture or into another, and none is too small to read."""
    boxes = words_of(figure)
    assert len(boxes) > 4
    for words, (left, bottom, right, top) in boxes:
        assert left >= 0, words
        assert bottom >= 0, words
        assert right <= WIDTH, words
        assert top <= height, words
    for (one, a), (other, b) in combinations(boxes, 2):
        # Half a point of side bearing and descender is no overlap that anybody sees.
        apart = a[2] - 0.5 <= b[0] or b[2] - 0.5 <= a[0] or a[3] - 0.5 <= b[1] or b[3] - 0.5 <= a[1]
        assert apart, f"{one!r} lies on {other!r}"
    assert all(text.get_fontsize() >= 10 for text in figure.texts)
