"""What an HTML element looks like, as far as it decides whether anyone can see its text."""

from __future__ import annotations

import re
from functools import lru_cache
from typing import NamedTuple


class Look(NamedTuple):
    """What an element hands down to its children."""

    too_small: bool = False
    invisible: bool = False
    white: bool = False
    on_colour: bool = False
    """Something other than white lies behind the text."""
    preformatted: bool = False
    struck: bool = False
    """Struck out: seen, and taken back."""

    @property
    def shows(self) -> bool:
        return not (self.too_small or self.invisible or (self.white and not self.on_colour))


_DECLARATION = re.compile(r"([a-z-]{1,40})\s{0,20}:\s{0,20}([^;]{1,300})")
_LENGTH = re.compile(r"(\d{0,9}(?:\.\d{0,9})?)(px|pt|em|rem|%)?")
_WHITE = re.compile(r"(?:white|#fff(?:fff)?|rgba?\(\s*255\s*,\s*255\s*,\s*255\b[^)]*\))\s*(?:!|$)")
_NO_COLOUR = re.compile(r"(?:none|transparent|inherit|initial|unset)\b")
_LONGEST_STYLE = 4000


class Change(NamedTuple):
    """What one style attribute changes; None where it says nothing."""

    removed: bool = False
    too_small: bool | None = None
    invisible: bool | None = None
    white: bool | None = None
    on_colour: bool | None = None
    preformatted: bool | None = None
    struck: bool | None = None
    no_border: bool = False


@lru_cache(maxsize=2048)
def read_style(style: str) -> Change:
    """A style attribute. ``display: none`` removes; size, colour and visibility are inherited."""
    found: dict[str, bool] = {}
    for name, value in _DECLARATION.findall(style[:_LONGEST_STYLE].lower()):
        value = value.strip()
        if name == "display" and value.startswith("none"):
            return Change(removed=True)
        if name == "opacity" and _LENGTH.match(value) and _is_zero(value):
            return Change(removed=True)
        if name == "font-size":
            found["too_small"] = _is_tiny(value)
        elif name == "visibility":
            found["invisible"] = value.startswith(("hidden", "collapse"))
        elif name == "color":
            found["white"] = _WHITE.match(value) is not None
        elif name in ("background", "background-color") and not _NO_COLOUR.match(value):
            found["on_colour"] = _WHITE.match(value) is None
        elif name == "white-space":
            found["preformatted"] = value.startswith(("pre", "break-spaces")) and not (
                value.startswith("pre-line")
            )
        elif name in ("text-decoration", "text-decoration-line"):
            if "line-through" in value:  # "none" on a child leaves the line that its parent draws
                found["struck"] = True
        elif name in ("border", "border-style") and value.startswith(("none", "0")):
            found["no_border"] = True
    return Change(**found)


def look_of(attributes: dict[str, str | None], inherited: Look) -> Look | None:
    """How an element with these attributes looks; None where it is not shown at all."""
    if "hidden" in attributes:
        return None
    background, colour = attributes.get("bgcolor"), attributes.get("color")
    if background:
        inherited = inherited._replace(on_colour=_WHITE.match(background.lower()) is None)
    if colour:
        inherited = inherited._replace(white=_WHITE.match(colour.lower()) is not None)
    style = attributes.get("style")
    if not style:
        return inherited
    change = read_style(style)
    if change.removed:
        return None
    return Look(
        *(old if new is None else new for old, new in zip(inherited, change[1:7], strict=True))
    )


def _is_zero(value: str) -> bool:
    match = _LENGTH.match(value)
    return bool(match and match[1] not in ("", ".") and float(match[1]) == 0)


def _is_tiny(value: str) -> bool:
    """Nought, or the one pixel that hides a preview line; "0.9em" is neither."""
    match = _LENGTH.match(value)
    if match is None or match[1] in ("", "."):
        return False
    return float(match[1]) == 0 or (match[2] in ("px", "pt") and float(match[1]) <= 1)
