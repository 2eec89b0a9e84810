"""Cues put together of their parts: 'in middle of tube', 'thru the centre of the pipe', 'to tube
centre'. Written out one by one, one of them is always missing.
"""

from __future__ import annotations

from itertools import product

_LEADS = "to in on at through thru down".split()
_MIDDLES = "middle centre center centreline centerline ctr".split()
_TUBES = ("tube", "tubing", "pipe")


def _put_together() -> list[str]:
    articles = ("", "the ")
    of_tube = (
        f"{lead} {the}{middle} of {its}{tube}"
        for lead, the, middle, its, tube in product(
            _LEADS, articles, (*_MIDDLES, "axis"), articles, _TUBES
        )
    )
    tube_centre = (
        f"{lead} {the}{tube} {middle}"
        for lead, the, tube, middle in product(_LEADS, articles, _TUBES, (*_MIDDLES, "axis"))
    )
    return [*of_tube, *tube_centre]


TO_MIDDLE_OF_TUBE = " | ".join(_put_together())
"""Where a radius is measured to: behind it, or between its word and the figure."""
