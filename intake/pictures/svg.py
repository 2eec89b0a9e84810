"""A figure as SVG that a page may hold: told in words, and without a style of its own.

A page that forbids inline styles would drop every colour that matplotlib writes as one, so these
become plain attributes. Ids get a prefix, since one page may hold several pictures.
"""

from __future__ import annotations

import hashlib
import io
import re
from html import escape
from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from matplotlib.figure import Figure

_STYLE = re.compile(r' style="([^"]*)"')
_STYLE_SHEET = re.compile(r"\s*<defs>\s*<style[^>]*>[^<]*</style>\s*</defs>")
_NUMBERED = re.compile(r' id="[A-Za-z0-9.]+_\d+"')
"""Ids that matplotlib counts up: nobody refers to them."""
_ID = re.compile(r' id="([^"]+)"')
_REFERENCE = re.compile(r'(href="#|url\(#)')
_ROOT = re.compile(r"<svg[^>]*>")


def as_svg(figure: Figure, title: str, description: str) -> str:
    """One ``<svg role="img">`` element with title and description for screen readers."""
    made = io.StringIO()
    nothing = dict.fromkeys(("Date", "Creator", "Format", "Type"))
    figure.savefig(made, format="svg", metadata=nothing)
    drawn = made.getvalue()
    root = _ROOT.search(drawn)
    assert root is not None, "what savefig wrote is an SVG"
    body = _STYLE_SHEET.sub("", drawn[root.end() :], count=1)
    body = _NUMBERED.sub("", body)
    body = _STYLE.sub(_attributes, body)
    prefix = f"p{hashlib.sha256((title + body).encode()).hexdigest()[:8]}-"
    body = _ID.sub(rf' id="{prefix}\1"', body)
    body = _REFERENCE.sub(rf"\g<1>{prefix}", body)
    width, height = figure.get_size_inches() * 72
    return (
        f'<svg xmlns="http://www.w3.org/2000/svg" xmlns:xlink="http://www.w3.org/1999/xlink" '
        f'viewBox="0 0 {width:g} {height:g}" width="{width:g}" height="{height:g}" '
        f'stroke-linejoin="round" stroke-linecap="butt" '
        f'role="img" aria-labelledby="{prefix}title {prefix}desc">\n'
        f'<title id="{prefix}title">{escape(title)}</title>\n'
        f'<desc id="{prefix}desc">{escape(description)}</desc>{body}'
    )


def _attributes(style: re.Match[str]) -> str:
    pairs = (one.partition(":") for one in style[1].split(";") if one.strip())
    return "".join(f' {name.strip()}="{value.strip()}"' for name, _, value in pairs)
