"""What strangers can't do: run their words as a program, change anything, or get in by a name."""

from __future__ import annotations

import json
import shutil
import socket
import time
from collections.abc import Iterator
from datetime import UTC, datetime
from pathlib import Path

import pytest
from selectolax.lexbor import LexborHTMLParser

from bendreply.intake import desk
from bendreply.intake.chat_hook import signature_of
from bendreply.intake.model import Address, Attachment
from bendreply.intake.review.guard import LARGEST_FORM

from ...servers.page import ROBIN, Browser, Page, fields_of, new_shop, running
from ..conftest import made_result

AT = "/inquiry/1"

PAYLOADS = [
    "<script>alert(1)</script>",
    "<img src=x onerror=alert(1)>",
    "<svg onload=alert(1)>",
    "<svg><script>alert(1)</script></svg>",
    '"><script>alert(1)</script>',
    "'><img src=x onerror=alert(1)>",
    '" onfocus=alert(1) autofocus x="',
    "' onmouseover='alert(1)",
    "</textarea><script>alert(1)</script>",
    "</title><script>alert(1)</script>",
    "</pre><iframe src=javascript:alert(1)></iframe>",
    "<a href=javascript:alert(1)>x</a>",
    "<math><mtext><table><mglyph><style><img src=x onerror=alert(1)>",
    "{{ 7*7 }}{% for x in ().__class__.__bases__ %}{% endfor %}",
    "<!--<img src=--><img src=x onerror=alert(1)>//",
    "<body onload=alert(1)>",
    "<style>*{display:none}</style><link rel=stylesheet href=//example.org/x.css>",
    "<meta http-equiv=refresh content='0;url=http://example.org/'>",
    "<base href=http://example.org/><form action=http://example.org/>",
    "\u202e<script\u200b>alert(1)</script>\x00<img src=http://example.org/pixel.gif>",
]


@pytest.fixture(scope="module")
def page(shop_folder: Path, tmp_path_factory: pytest.TempPathFactory) -> Iterator[Page]:
    """One page for all: nothing in here changes inquiry 1."""
    folder = tmp_path_factory.mktemp("guarded") / "shop"
    shutil.copytree(shop_folder, folder)
    with running(folder) as page:
        yield page


@pytest.fixture
def hostile(page: Page) -> dict[int, str]:
    """An inquiry for each payload, in every place that a stranger fills: number to payload."""
    numbers = {}
    for index, payload in enumerate(PAYLOADS):
        result = made_result(
            f"p{index}",
            sender=Address(name=payload, address=f"p{index}@example.net"),
            subject=payload,
            body=f"{payload}\n1.75 x .095 on a 4.5 clr {payload}",
            attachments=(
                Attachment(name=payload, content_type=payload, size=9, text=payload),
                Attachment(name=f"a{payload}", content_type="image/png", size=9),
            ),
            faults=(payload,),
            draft=f"Hello {payload}",
        )
        numbers[desk.take_in(page.store, result, payload).inquiry] = payload
    return numbers


def shape(page: LexborHTMLParser) -> list[tuple[str, tuple[str, ...]]]:
    """Elements and the names of their attributes, in order: what words must not change."""
    for one in page.css(".case nav"):
        one.decompose()  # the first has none before it, the last none after
    return [
        (one.tag, tuple(sorted(one.attributes)))
        for one in page.root.traverse()
        if one.tag not in ("-text", "-comment")
    ]


def test_no_words_of_a_stranger_become_part_of_a_page(
    robin: Browser, page: Page, hostile: dict[int, str]
) -> None:
    plain = desk.take_in(
        page.store,
        made_result(
            "plain",
            body="hello\n1.75 x .095 on a 4.5 clr hello",
            attachments=(
                Attachment(name="hello", content_type="hello", size=9, text="hello"),
                Attachment(name="ahello", content_type="image/png", size=9),
            ),
            faults=("hello",),
            draft="Hello hello",
        ),
        "hello",
    ).inquiry
    expected = shape(robin.get(f"/inquiry/{plain}").page)
    for number, payload in hostile.items():
        answer = robin.get(f"/inquiry/{number}")
        assert answer.status == 200
        assert shape(answer.page) == expected, payload
        assert "49" not in answer.words(".subject")
    scripts = {one.attributes.get("src") for one in robin.get("/").page.css("script")}
    assert scripts == {"/static/review.js"}
    assert {one for one, _ in shape(robin.get("/").page)} & {"img", "iframe", "style"} == set()


def test_typed_words_come_back_as_words(robin: Browser) -> None:
    for payload in PAYLOADS:
        shown = robin.submit(AT, {"wall-1": payload, "body": payload}, press="do=save")
        assert shown.status == 422
        assert len(shown.page.css("script")) == 1


def test_no_address_puts_words_or_elements_on_a_page(robin: Browser) -> None:
    answer = robin.get("/?text=%22%3E%3Cscript%3E&answer=%3Cb%3E&doubt=%3Cb%3E&told=%3Cb%3Ehi")
    assert answer.status == 200
    assert len(answer.page.css("script")) == 1
    assert answer.page.css_first(".told") is None


def test_every_answer_forbids_what_is_not_ours(robin: Browser) -> None:
    for path in ("/", AT, "/nothing", "/static/review.js", "/who"):
        headers = robin.get(path).headers
        policy = headers["content-security-policy"]
        assert "default-src 'none'" in policy
        assert "script-src 'self'" in policy
        assert "unsafe" not in policy
        assert "img-src 'self'" in policy
        assert "frame-ancestors 'none'" in policy
        assert headers["x-content-type-options"] == "nosniff"
        assert headers["cache-control"] == "no-store"
        assert "server" not in headers


def test_pages_hold_no_inline_script_style_or_foreign_address(robin: Browser) -> None:
    for path in ("/", AT, "/who"):
        answer = robin.get(path)
        for one in answer.page.root.traverse():
            if one.tag.startswith("-"):
                continue
            names = set(one.attributes)
            assert not any(name.startswith("on") for name in names)
            assert "style" not in names
            for name in ("src", "href", "action", "formaction"):
                value = one.attributes.get(name) or "/"
                assert value.startswith(("/", "#")), value
                assert not value.startswith("//"), value
        assert answer.page.css_first("style") is None
        assert not any(one.text().strip() for one in answer.page.css("script"))


@pytest.mark.parametrize(
    "headers",
    [
        {"Sec-Fetch-Site": "cross-site"},
        {"Sec-Fetch-Site": "same-site"},
        {"Sec-Fetch-Site": "none"},
        {"Origin": "http://example.org"},
        {"Origin": "null"},
        {"Origin": "http://127.0.0.1:1"},
        {"Origin": "http://localhost"},
        {"Origin": "http://["},
        {"Sec-Fetch-Site": "cross-site", "Origin": "ours"},
        {"Sec-Fetch-Site": "same-origin", "Origin": "http://example.org"},
        {},
    ],
    ids=str,
)
@pytest.mark.parametrize("path", [AT, f"{AT}/set-aside", "/deliver", "/who", "/leave"])
def test_a_form_of_another_site_changes_nothing(
    robin: Browser, page: Page, headers: dict[str, str], path: str
) -> None:
    fields = {**fields_of(robin.get(AT)), "do": "approve", "why": "no", "by": ROBIN}
    sent = "&".join(f"{key}={value}" for key, value in fields.items() if key != "body").encode()
    told = {k: robin.origin if v == "ours" else v for k, v in headers.items()}
    answer = robin.ask("POST", path, sent, told)
    assert answer.status == 403
    assert "nothing was changed" in answer.text
    assert desk.show(page.store, 1).version == 1


@pytest.mark.parametrize(
    ("host", "status"),
    [
        ("127.0.0.1:{port}", 200),
        ("localhost:{port}", 200),
        ("LOCALHOST", 200),
        ("[::1]:{port}", 200),
        ("example.org", 421),
        ("example.org:{port}", 421),
        ("localhost.example.org:{port}", 421),
        ("127.0.0.1.example.org", 421),
        ("", 421),
        ("127.0.0.1:{port}:80", 421),
        ("127.0.0.1@example.org", 421),
        ("10.0.0.7:{port}", 421),
    ],
)
def test_the_page_answers_only_to_its_own_names(robin: Browser, host: str, status: int) -> None:
    answer = robin.ask("GET", "/", headers={"Host": host.format(port=robin.port)})
    assert answer.status == status
    assert ("What waits" in answer.text) is (status == 200)


@pytest.mark.parametrize("size", [LARGEST_FORM + 1, 1_000_000, 5_000_000])
def test_a_form_that_is_too_large_is_refused(robin: Browser, page: Page, size: int) -> None:
    answer = robin.post(AT, {**fields_of(robin.get(AT)), "body": "x" * size})
    assert answer.status == 413
    assert desk.show(page.store, 1).version == 1


def test_a_long_draft_is_taken(robin: Browser, page: Page) -> None:
    robin.submit("/inquiry/2", {"body": "word " * 20_000}, press="do=save")
    draft = desk.show(page.store, 2).draft
    assert draft is not None
    assert len(draft.body) == 100_000


def test_thousands_of_fields_are_refused(robin: Browser) -> None:
    answer = robin.post(AT, {f"f{number}": "" for number in range(5000)})
    assert answer.status == 413


@pytest.mark.parametrize(
    "path",
    [
        "/static/../app.py",
        "/static/%2e%2e/app.py",
        "/static/..%2fapp.py",
        "/static/%2e%2e%2f%2e%2e%2f%2e%2e%2f%2e%2e%2f%2e%2e%2fetc/passwd",
        "/static/....//app.py",
        "/static//etc/passwd",
        "/static/..\\app.py",
        "/static/",
        "/inquiry/1/1-../../shop.svg",
        "/inquiry/../shop.toml",
        "/static/%00",
    ],
)
def test_no_path_leads_to_a_file_that_is_not_the_pages(robin: Browser, path: str) -> None:
    answer = robin.ask("GET", path)
    assert answer.status in (400, 404)
    assert "import" not in answer.text
    assert "root:" not in answer.text


@pytest.mark.parametrize("method", ["PUT", "DELETE", "PATCH", "OPTIONS", "TRACE"])
def test_no_other_method_does_anything(robin: Browser, page: Page, method: str) -> None:
    headers = {"Origin": robin.origin, "Sec-Fetch-Site": "same-origin"}
    assert robin.ask(method, AT, b"do=approve", headers).status == 405
    assert desk.show(page.store, 1).version == 1


@pytest.mark.parametrize("path", [f"{AT}/set-aside", "/deliver", "/leave"])
def test_following_a_link_changes_nothing(robin: Browser, page: Page, path: str) -> None:
    assert robin.ask("GET", path).status == 405
    assert desk.show(page.store, 1).version == 1


def test_a_form_without_a_version_changes_nothing(robin: Browser, page: Page) -> None:
    for version in ("", "x", "-1", "9" * 30):
        answer = robin.post(AT, {"do": "approve", "version": version})
        assert answer.status == 409
    assert desk.show(page.store, 1).version == 1


def test_with_a_secret_nothing_is_shown_before_somebody_has_signed_in(shop_folder: Path) -> None:
    with running(shop_folder, secret="a long enough secret") as page:
        stranger = page.browser()
        for path in ("/", AT, "/inquiry/1/1-bend.svg", "/inquiry/99"):
            answer = stranger.get(path)
            assert "Who are you?" in answer.words()
            assert "Ada" not in answer.text
        answer = stranger.post("/deliver", {})
        assert "Who are you?" in answer.words()
        wrong = stranger.post("/who", {"by": ROBIN, "secret": "a long enough guess"})
        assert wrong.status == 403
        assert stranger.cookies == {}
        right = stranger.post("/who", {"by": ROBIN, "secret": "a long enough secret"})
        assert "Ada" in right.text
        forged = page.browser()
        forged.cookies["bendreply-who"] = stranger.cookies["bendreply-who"][:-1] + "0x"
        assert "Who are you?" in forged.get("/").words()
        stranger.submit("/", {}, form=".me")
        assert "Who are you?" in stranger.get("/").words()


def test_guessing_the_secret_is_slowed_down(shop_folder: Path) -> None:
    with running(shop_folder, secret="a long enough secret") as page:
        stranger = page.browser()
        answers = [
            stranger.post("/who", {"by": ROBIN, "secret": f"guess number {n}"}).status
            for n in range(12)
        ]
        assert answers == [403] * 10 + [429] * 2
        right = stranger.post("/who", {"by": ROBIN, "secret": "a long enough secret"})
        assert right.status == 429


def test_the_chat_hook_is_served_beside_the_page_and_only_it_without_a_browser(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setenv("HOOK_SECRET", "sixteen characters")
    new_shop(tmp_path / "shop", more='\n[chat.hook]\nsecret_env = "HOOK_SECRET"\n')
    said = {
        "channel": "counter", "thread": "t", "id": "m-1", "sender": {"name": "Lou"},
        "time": datetime.now(UTC).isoformat(), "text": "1.75 x .095 DOM on a 5.25 clr, one mandrel",
    }  # fmt: skip
    body = json.dumps(said).encode()
    seconds = str(int(time.time()))
    as_json = {"Content-Type": "application/json"}
    signed = {
        **as_json,
        "Bendreply-Time": seconds,
        "Bendreply-Signature": signature_of(b"sixteen characters", seconds, body),
    }
    with running(tmp_path / "shop", secret="a long enough secret", create=True) as page:
        caller = page.browser()
        assert caller.ask("POST", "/messages", body, signed).status == 200
        assert caller.ask("POST", "/messages", body, as_json).status == 401
        elsewhere = caller.ask("POST", "/messages", body, {**signed, "Host": "example.org"})
        assert elsewhere.status == 421
        assert caller.ask("POST", "/deliver", b"", signed).status == 403


def test_a_slow_request_holds_up_nobody(robin: Browser) -> None:
    began = time.monotonic()
    with socket.create_connection(("127.0.0.1", robin.port)) as slow:
        slow.sendall(b"POST /inquiry/1 HTTP/1.1\r\nHost: 127.0.0.1\r\nContent-Length: 1000\r\n\r\n")
        assert robin.get("/").status == 200
    assert time.monotonic() - began < 10
