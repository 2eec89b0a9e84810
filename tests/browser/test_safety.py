"""Strangers' words, other sites and other names, before a real browser."""

from __future__ import annotations

import threading
from collections.abc import Iterator
from contextlib import contextmanager
from html import escape
from http.server import BaseHTTPRequestHandler, ThreadingHTTPServer
from pathlib import Path
from typing import Any

from bendreply.intake import desk
from bendreply.intake.cli import main
from bendreply.intake.inquiry import State
from bendreply.intake.model import Address, Attachment

from ..intake.conftest import made_result
from ..intake.review.test_guard import PAYLOADS
from ..servers.page import ROBIN, Page
from .conftest import Windows, launched, sign_in

HTML_MAIL = b"""From: Ada <ada@example.net>
To: sales@fernhollow.example.com
Subject: 1.75 x .095 mandrel
Message-ID: <html-1@example.net>
Date: Mon, 16 Nov 2026 10:00:00 +0000
MIME-Version: 1.0
Content-Type: text/html; charset=utf-8

<p>Mandrel for 1.75 x .095 DOM on 5.25 clr please</p>
<img src="http://example.org/seen.gif"><link rel=stylesheet href="http://example.org/x.css">
<p style="background:url(http://example.org/b.gif)">Ada</p>
<script>document.title = "ran"</script>
"""


def test_strangers_words_stay_words(windows: Windows, page: Page) -> None:
    numbers = {}
    for index, payload in enumerate(PAYLOADS):
        result = made_result(
            f"mallory{index}",
            sender=Address(name=payload, address=f"mallory{index}@example.net"),
            subject=payload,
            body=f"{payload}\n1.75 x .095 on a 4.5 clr {payload}",
            attachments=(
                Attachment(name=payload, content_type="text/plain", size=9, text=payload),
            ),
            faults=(payload,),
            draft=f"Hello {payload}",
        )
        numbers[desk.take_in(page.store, result, payload).inquiry] = payload
    tab = windows.new()
    sign_in(tab, ROBIN)  # ends at what waits, where all their names are
    assert tab.locator("h1").inner_text().startswith("What waits")
    for number, payload in numbers.items():
        tab.goto(f"/inquiry/{number}")
        assert tab.locator(".number").inner_text() == f"Inquiry {number}", payload
        tab.get_by_label("Wall", exact=True).fill(payload.replace("\x00", ""))
        tab.get_by_label("Wall", exact=True).press("Enter")
        assert tab.locator(".wrong").count() == 1, payload
        assert tab.url.startswith(page.address)
        assert windows.faults == [], payload


def test_nothing_of_a_mail_is_loaded(windows: Windows, page: Page, tmp_path: Path) -> None:
    file = tmp_path / "html.eml"
    file.write_bytes(HTML_MAIL)
    assert main(["--shop", str(page.folder), "collect", str(file)]) == 0
    tab = windows.new()
    tab.goto("/inquiry/5")
    tab.wait_for_load_state("networkidle")
    assert "Mandrel for" in tab.locator(".letter").inner_text()
    sources = tab.locator("img").evaluate_all("all => all.map(one => one.src)")
    assert all(one.startswith(f"{page.address}/inquiry/5/") for one in sources)


@contextmanager
def other_site(html: str) -> Iterator[str]:
    """Somebody else's page, on a name of its own."""

    class Handler(BaseHTTPRequestHandler):
        def do_GET(self) -> None:
            self.send_response(200)
            self.send_header("Content-Type", "text/html")
            self.end_headers()
            self.wfile.write(html.encode())

        def log_message(self, *_: Any) -> None:
            """Say nothing."""

    with ThreadingHTTPServer(("127.0.0.1", 0), Handler) as server:
        threading.Thread(target=server.serve_forever, daemon=True).start()
        yield f"http://localhost:{server.server_port}/"
        server.shutdown()


def test_a_form_on_another_site_approves_nothing(chromium: Any, page: Page) -> None:
    fields = {"version": "1", "do": "approve", "by": ROBIN}
    hidden = "".join(f'<input name="{k}" value="{escape(v)}">' for k, v in fields.items())
    action = f"{page.address}/inquiry/1"
    html = (
        f'<form method="post" action="{action}">{hidden}</form>'
        "<script>document.forms[0].submit()</script>"
    )
    context = chromium.new_context(base_url=page.address)
    tab = context.new_page()
    sign_in(tab, ROBIN)
    with other_site(html) as address:
        tab.goto(address)
        tab.wait_for_url(action)
    assert "nothing was changed" in tab.locator("body").inner_text()
    assert desk.show(page.store, 1).state is State.WAITING
    context.close()


def test_another_site_can_neither_frame_nor_read_the_page(chromium: Any, page: Page) -> None:
    html = (
        f'<iframe src="{page.address}/"></iframe><img src="{page.address}/inquiry/1/1-bend.svg">'
        f'<script>fetch("{page.address}/").then(r => r.text()).then(t => document.title = t, '
        '() => document.title = "refused")</script>'
    )
    context = chromium.new_context()
    tab = context.new_page()
    with other_site(html) as address:
        tab.goto(address)
        tab.wait_for_function("document.title === 'refused'")
        framed = tab.frames[1]
        assert "What waits" not in framed.locator("body").inner_text()
        assert tab.evaluate("document.images[0].naturalWidth") == 0
    context.close()


def test_a_strangers_name_for_this_machine_gets_nothing(driver: Any, page: Page) -> None:
    with launched(driver, "--host-resolver-rules=MAP shop.example.org 127.0.0.1") as browser:
        tab = browser.new_page()
        answer = tab.goto(f"http://shop.example.org:{page.port}/")
        assert answer is not None
        assert answer.status == 421
        assert "Ada" not in tab.content()
