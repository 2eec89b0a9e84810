"""Pages filled in: templates out of ``pages``, every value escaped, a missing one an error."""

from __future__ import annotations

from collections.abc import Mapping
from pathlib import Path
from typing import Any
from urllib.parse import urlencode

from jinja2 import Environment, FileSystemLoader, StrictUndefined
from starlette.responses import HTMLResponse

from .lines import ORDER, SPOKEN

PAGES = Path(__file__).with_name("pages")
STATIC = Path(__file__).with_name("static")


def with_query(path: str, query: Mapping[str, str | int]) -> str:
    """An address with what is not empty of ``query``."""
    told = {key: value for key, value in query.items() if value != ""}
    return f"{path}?{urlencode(told)}" if told else path


def sentence(words: str) -> str:
    """Words of a refusal, which start small behind a program's name, as a sentence of their own."""
    return words[:1].upper() + words[1:]


def environment() -> Environment:
    """Where pages come from. Customers' words are values, never part of a template."""
    pages = Environment(
        loader=FileSystemLoader(PAGES),
        autoescape=True,
        undefined=StrictUndefined,
        trim_blocks=True,
        lstrip_blocks=True,
        auto_reload=False,
    )
    pages.filters["sentence"] = sentence
    pages.globals |= {"spoken": SPOKEN, "order": ORDER, "with_query": with_query}
    return pages


class Pages:
    """Makes answers out of templates."""

    def __init__(self, shop_name: str) -> None:
        self._pages = environment()
        self._pages.globals["shop_name"] = shop_name

    def page(self, name: str, *, status: int = 200, **values: Any) -> HTMLResponse:
        """The template of that name, filled in."""
        return HTMLResponse(self._pages.get_template(f"{name}.html").render(values), status)
