"""The review page as it runs at a shop: a real server on loopback, a shop folder, a store."""

from __future__ import annotations

import http.client
import threading
import time
from collections.abc import Callable, Iterator, Mapping
from contextlib import AbstractContextManager, contextmanager
from dataclasses import dataclass, field
from pathlib import Path
from urllib.parse import urlencode

from selectolax.lexbor import LexborHTMLParser

from bendreply.intake.cli import main
from bendreply.intake.deliver import DraftsFolder, Target
from bendreply.intake.review.app import Settings, make_app
from bendreply.intake.review.guard import LOOPBACK_NAMES
from bendreply.intake.review.serve import Place, listen, server_of
from bendreply.intake.store import Store, open_store
from bendreply.intake.templates import Templates
from bendreply.rules.shop import Shop, load_shop

ROBIN, KIT = "Robin Ashdown", "Kit Lindgren"
"""The people of the sample shop."""
START_WAIT_S = 20


@dataclass(frozen=True)
class Answer:
    """What the server said."""

    status: int
    headers: Mapping[str, str]
    text: str

    @property
    def page(self) -> LexborHTMLParser:
        """Its elements."""
        return LexborHTMLParser(self.text)

    def words(self, selector: str = "main") -> str:
        """The visible words of the first such element, runs of space as one."""
        found = self.page.css_first(selector)
        assert found is not None, f"no {selector} in {self.text[:2000]}"
        return " ".join(found.text().split())

    def all_words(self, selector: str) -> list[str]:
        """The words of every such element."""
        return [" ".join(one.text().split()) for one in self.page.css(selector)]


@dataclass
class Browser:
    """Enough of a browser for pages that work without scripts: cookies, forms, redirects."""

    port: int
    cookies: dict[str, str] = field(default_factory=dict)

    @property
    def origin(self) -> str:
        """Where our own pages come from."""
        return f"http://127.0.0.1:{self.port}"

    def get(self, path: str, headers: Mapping[str, str] | None = None) -> Answer:
        """One page, redirects followed."""
        answer = self.ask("GET", path, headers=headers)
        return self._on(answer)

    def post(
        self, path: str, fields: Mapping[str, str], headers: Mapping[str, str] | None = None
    ) -> Answer:
        """A form sent from our own page, redirects followed."""
        ours = {"Origin": self.origin, "Sec-Fetch-Site": "same-origin"}
        return self._on(
            self.ask("POST", path, urlencode(fields).encode(), {**ours, **(headers or {})})
        )

    def submit(
        self, path: str, changes: Mapping[str, str], *, form: str = "#work", press: str = ""
    ) -> Answer:
        """The form of a page sent as a browser would, with what a person changed in it.

        ``press``: 'name=value' of the button.
        """
        shown = self.get(path)
        fields = fields_of(shown, form)
        name, _, value = press.partition("=")
        pressed = {name: value} if name else {}
        target = shown.page.css_first(form).attributes["action"] or path
        return self.post(target, {**fields, **changes, **pressed})

    def ask(
        self,
        method: str,
        path: str,
        body: bytes | None = None,
        headers: Mapping[str, str] | None = None,
    ) -> Answer:
        """One request as it is, redirects not followed. A header of None is left out."""
        line = http.client.HTTPConnection("127.0.0.1", self.port, timeout=30)
        try:
            sent = {"Content-Type": "application/x-www-form-urlencoded"} if body else {}
            if self.cookies:
                sent["Cookie"] = "; ".join(f"{k}={v}" for k, v in self.cookies.items())
            sent |= headers or {}
            line.putrequest(method, path, skip_host="Host" in sent)
            for name, value in sent.items():
                line.putheader(name, value)
            if body is not None:
                line.putheader("Content-Length", str(len(body)))
            line.endheaders(body)
            got = line.getresponse()
            told = {name.lower(): value for name, value in got.getheaders()}
            if cookie := told.get("set-cookie"):
                name, _, rest = cookie.partition("=")
                value = rest.partition(";")[0].strip('"')
                if value:
                    self.cookies[name] = value
                else:
                    self.cookies.pop(name, None)
            return Answer(got.status, told, got.read().decode("utf-8", "replace"))
        finally:
            line.close()

    def _on(self, answer: Answer) -> Answer:
        while answer.status == 303:
            answer = self.ask("GET", answer.headers["location"])
        return answer


def fields_of(answer: Answer, form: str = "#work") -> dict[str, str]:
    """What a browser would send of an unchanged form: its fields, not its buttons."""
    fields: dict[str, str] = {}
    found = answer.page.css_first(form)
    assert found is not None, f"no form {form}"
    for one in found.css("input, select, textarea"):
        name = one.attributes.get("name")
        if not name or "disabled" in one.attributes:
            continue
        if one.tag == "select":
            options = one.css("option")
            chosen = next((o for o in options if "selected" in o.attributes), options[0])
            fields[name] = chosen.attributes.get("value", chosen.text()) or ""
        elif one.tag == "textarea":
            fields[name] = one.text().removeprefix("\n").replace("\n", "\r\n")
        else:
            fields[name] = one.attributes.get("value") or ""
    return fields


@dataclass
class Page:
    """A running review page with its shop and store."""

    folder: Path
    shop: Shop
    store: Store
    port: int

    @property
    def address(self) -> str:
        """For a real browser."""
        return f"http://127.0.0.1:{self.port}"

    def browser(self, name: str = "") -> Browser:
        """A new one, of a person who has said who they are, or of nobody yet."""
        browser = Browser(self.port)
        if name:
            browser.post("/who", {"by": name})
        return browser


def new_shop(folder: Path, *messages: Path, more: str = "") -> None:
    """A shop folder with messages taken in. ``more``: further lines of shop.toml."""
    assert main(["shop", "new", str(folder)]) == 0
    if more:
        with (folder / "shop.toml").open("a", encoding="utf-8") as file:
            file.write(more)
    if messages:
        assert main(["--shop", str(folder), "collect", *map(str, messages)]) == 0


@contextmanager
def running(
    folder: Path,
    *,
    secret: str | None = None,
    target: Callable[[], AbstractContextManager[Target]] | None = None,
    create: bool = False,
) -> Iterator[Page]:
    """The page of a shop folder, served until the end of the ``with``."""

    @contextmanager
    def files() -> Iterator[Target]:
        yield DraftsFolder(folder / "drafts")

    shop = load_shop(folder)
    with open_store(folder / "store.sqlite", create=create) as store:
        settings = Settings(
            store=store,
            shop=shop,
            templates=Templates(shop.folder),
            target=target or files,
            secret=secret,
            names=LOOPBACK_NAMES,
        )
        place = Place(port=0)
        with listen(place) as listening:
            server = server_of(make_app(settings), place)
            thread = threading.Thread(target=server.run, args=([listening],), daemon=True)
            thread.start()
            end = time.monotonic() + START_WAIT_S
            while not server.started:
                assert time.monotonic() < end, "the page did not start"
                time.sleep(0.01)
            try:
                yield Page(folder, shop, store, listening.getsockname()[1])
            finally:
                server.should_exit = True
                thread.join(timeout=START_WAIT_S)
