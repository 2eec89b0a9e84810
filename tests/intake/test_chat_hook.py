"""POST /messages: signed messages become inquiries, everything else is refused with a reason."""

from __future__ import annotations

import asyncio
import json
import os
import re
import shutil
import socket
import subprocess
import sys
import threading
import time
from collections.abc import AsyncIterator, Callable, Iterator
from contextlib import contextmanager
from datetime import UTC, datetime
from pathlib import Path
from typing import Any

import httpx
import pytest
from starlette.applications import Starlette

from bendreply.intake import desk
from bendreply.intake.chat_hook import SIGNATURE, TIME, chat_routes, signature_of
from bendreply.intake.desk_errors import ChatSettingsError
from bendreply.intake.store import Store
from bendreply.intake.templates import Templates
from bendreply.rules.shop import Shop, load_shop, sample_shop, write_new_shop

SECRET = "correct-horse-battery"
NOW = 1_795_687_200  # 2026-11-26 10:00 UTC
LOU = {"name": "Lou", "address": "lou@example.net"}


def said(minute: int, text: str, **more: object) -> dict[str, object]:
    line = {"channel": "counter", "thread": "t-1", "id": f"m{minute}", "sender": LOU, "text": text}
    return line | {"time": f"2026-11-26T09:{minute:02}:00Z"} | more


@pytest.fixture
def shop(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Shop:
    """A shop with a hook."""
    write_new_shop(tmp_path / "shop")
    with (tmp_path / "shop" / "shop.toml").open("a", encoding="utf-8") as file:
        file.write('\n[chat.hook]\nsecret_env = "HOOK_SECRET"\nlargest_kb = 64\n')
    monkeypatch.setenv("HOOK_SECRET", SECRET)
    return load_shop(tmp_path / "shop")


class Caller:
    """A chat system that calls the hook."""

    def __init__(self, store: Store, shop: Shop, clock: Callable[[], float] = lambda: NOW) -> None:
        self.told: list[str] = []
        templates = Templates(shop.folder)
        routes = chat_routes(store, shop, templates, told=self.told.append, clock=clock)
        self.app = Starlette(routes=routes)

    def post(
        self, body: object, *, at: int = NOW, secret: str = SECRET, **headers: str | None
    ) -> tuple[int, Any]:
        raw = body if isinstance(body, bytes) else json.dumps(body).encode()
        sent: dict[str, str | None] = {
            TIME: str(at),
            SIGNATURE: signature_of(secret.encode(), str(at), raw),
            "Content-Type": "application/json",
        }
        sent |= {name.replace("_", "-"): value for name, value in headers.items()}
        chosen = {name: value for name, value in sent.items() if value is not None}
        answer = self.call("POST", content=raw, headers=chosen)
        return answer.status_code, answer.json()

    def call(self, method: str, **more: Any) -> httpx.Response:
        async def ask() -> httpx.Response:
            transport = httpx.ASGITransport(app=self.app)
            async with httpx.AsyncClient(transport=transport, base_url="http://shop") as client:
                return await client.request(method, "/messages", **more)

        return asyncio.run(ask())


@pytest.fixture
def caller(store: Store, shop: Shop) -> Caller:
    return Caller(store, shop)


def test_a_signed_message_becomes_an_inquiry(caller: Caller, store: Store) -> None:
    status, answer = caller.post(said(1, "1.75 x .095 DOM, 4.5 clr"))
    assert (status, answer) == (200, {"taken": [{"id": "m1", "inquiry": 1, "known": False}]})
    inquiry = desk.show(store, 1)
    assert inquiry.message.channel == "chat"
    assert str(inquiry.assessments[0].request.od_mm) == "44.45"


def test_a_burst_over_several_calls_is_one_request(caller: Caller, store: Store) -> None:
    caller.post(said(1, "1.75"))
    caller.post(said(5, "4.5 clr oh and its 4130"))
    caller.post([said(3, ".095 wall"), said(1, "1.75")])
    status, answer = caller.post([said(3, ".095 wall"), said(40, "2 x .120, 6 clr", thread="t-2")])
    assert status == 200
    assert [(one["inquiry"], one["known"]) for one in answer["taken"]] == [(1, True), (2, False)]
    (request,) = (one.request for one in desk.show(store, 1).assessments)
    assert (request.missing, request.grade) == ((), "4130")
    assert [told.partition(":")[0] for told in caller.told] == ["inquiry 1"] * 2


def test_a_call_that_is_repeated_changes_nothing(caller: Caller, store: Store) -> None:
    for _ in range(3):
        assert caller.post(said(1, "1.75 x .095, 4.5 clr", id=None))[0] == 200
    assert len(list(desk.askings(store))) == 1


GOOD = said(1, "1.75 x .095, 4.5 clr")
SIGNED = signature_of(SECRET.encode(), str(NOW), json.dumps(GOOD).encode())
REFUSED: dict[str, tuple[object, dict[str, Any], int, str]] = {
    "forged": (GOOD, {"secret": "another-secret-of-mine"}, 401, "the signature does not fit"),
    "other body": (said(1, "x"), {SIGNATURE: SIGNED}, 401, "the signature does not fit"),
    "other time": (GOOD, {SIGNATURE: SIGNED, TIME: str(NOW - 1)}, 401, "the signature does not"),
    "no signature": (GOOD, {SIGNATURE: None}, 401, "the header Bendreply-Signature is missing"),
    "odd signature": (GOOD, {SIGNATURE: "sha256=ab"}, 401, "the header Bendreply-Signature is"),
    "no time": (GOOD, {TIME: None}, 401, "the header Bendreply-Time is missing"),
    "odd time": (GOOD, {TIME: "-1"}, 401, "the header Bendreply-Time is missing or no number"),
    "old": (GOOD, {"at": NOW - 301}, 401, "the signed time is more than 300 s away"),
    "from the future": (GOOD, {"at": NOW + 301}, 401, "the signed time is more than 300 s"),
    "form": (GOOD, {"Content_Type": "text/plain"}, 415, "the body has to be of Content-Type"),
    "no type": (GOOD, {"Content_Type": ""}, 415, "the body has to be of Content-Type"),
    "no JSON": (b"{", {}, 400, "the body is not valid JSON"),
    "deep": (b"[" * 50_000, {}, 400, "the body is not valid JSON"),
    "a number": (b"7", {}, 422, "not a JSON object"),
    "empty": (b"[]", {}, 422, "the body holds 0 messages"),
    "too many": ([{}] * 101, {}, 422, "the body holds 101 messages"),
    "no text": ([GOOD, {"sender": "Lou", "time": "2026-11-26T09:00:00Z"}], {}, 422, "message 2: t"),
    "bare time": (GOOD | {"time": "2026-11-26T09:00:00"}, {}, 422, "time: needs an offset"),
    "next week": (GOOD | {"time": "2026-12-01T09:00:00Z"}, {}, 422, "time: lies in the future"),
    "10 MB": (b"x" * 10_000_000, {}, 413, "the body is larger than 64 kB"),
}


@pytest.mark.parametrize("case", REFUSED)
def test_what_is_refused_and_why(caller: Caller, store: Store, case: str) -> None:
    body, how, status, why = REFUSED[case]
    got, answer = caller.post(body, **how)
    assert got == status
    assert answer["error"].startswith(why)
    assert list(desk.askings(store)) == []


def test_within_the_window_a_clock_may_be_off(caller: Caller) -> None:
    assert caller.post(GOOD, at=NOW - 300)[0] == 200
    assert caller.post(GOOD, at=NOW + 300)[0] == 200


def test_other_methods_are_none_of_it(caller: Caller) -> None:
    assert caller.call("GET").status_code == 405


def test_a_body_without_a_length_is_read_no_further_than_allowed(caller: Caller) -> None:
    read = 0

    async def pieces() -> AsyncIterator[bytes]:
        nonlocal read
        for _ in range(10_000):
            read += 1024
            yield b"x" * 1024

    headers = {"Content-Type": "application/json"}
    answer = caller.call("POST", content=pieces(), headers=headers)
    assert answer.status_code == 413
    assert read == 65 * 1024  # of the 10 MB


def test_without_settings_there_is_no_hook(store: Store) -> None:
    shop = sample_shop()
    assert chat_routes(store, shop, Templates(None), told=print) == []


@pytest.mark.parametrize(
    ("value", "why"),
    [(None, "HOOK_SECRET, which shop.toml names for the chat hook, is not"), ("short", "is too s")],
)
def test_a_secret_that_is_none(
    store: Store, shop: Shop, value: str | None, why: str, monkeypatch: pytest.MonkeyPatch
) -> None:
    if value is None:
        monkeypatch.delenv("HOOK_SECRET")
    else:
        monkeypatch.setenv("HOOK_SECRET", value)
    with pytest.raises(ChatSettingsError, match=why):
        chat_routes(store, shop, Templates(shop.folder), told=print)


@contextmanager
def served(app: Starlette) -> Iterator[int]:
    """The application on a real server on loopback; its port."""
    import uvicorn

    server = uvicorn.Server(uvicorn.Config(app, port=0, log_level="error", lifespan="off"))
    thread = threading.Thread(target=server.run)
    thread.start()
    try:
        end = time.monotonic() + 20
        while not server.started:
            assert time.monotonic() < end, "the server did not start"
            time.sleep(0.02)
        yield server.servers[0].sockets[0].getsockname()[1]
    finally:
        server.should_exit = True
        thread.join(20)


def test_a_large_body_is_refused_by_its_length_alone(caller: Caller) -> None:
    with served(caller.app) as port, socket.create_connection(("127.0.0.1", port), 10) as line:
        line.sendall(
            b"POST /messages HTTP/1.1\r\nHost: localhost\r\nContent-Type: application/json\r\n"
            b"Content-Length: 10000000\r\n\r\n"
        )
        answer = b""
        while piece := line.recv(65536):  # the server closes: nothing of the body was sent
            answer += piece
    assert answer.startswith(b"HTTP/1.1 413")
    assert b"larger than 64 kB" in answer


README = (Path(__file__).parents[2] / "README.md").read_text("utf-8")


@pytest.mark.skipif(
    not (shutil.which("curl") and shutil.which("openssl")), reason="curl and openssl are needed"
)
def test_the_readmes_examples_work(store: Store, shop: Shop) -> None:
    """As they stand there, but for the port."""
    caller = Caller(store, shop, time.time)
    with served(caller.app) as port:
        in_bash, in_python = (
            re.search(
                rf"^```{language}\n((?:(?!^```).)*Bendreply-Time.*?)^```$", README, re.M | re.S
            )
            for language in ("bash", "python")
        )
        assert in_bash is not None
        assert in_python is not None
        env = {**os.environ, "BENDREPLY_HOOK_SECRET": SECRET}
        done = subprocess.run(
            ["bash", "-euc", in_bash[1].replace("8462", str(port))],
            env=env, capture_output=True, text=True, check=True,
        )  # fmt: skip
        assert json.loads(done.stdout)["taken"][0] | {"id": ""} == {
            "id": "", "inquiry": 1, "known": False
        }  # fmt: skip
        call = f"\nprint(hand_in({said(1, '2 x .120, 6 clr')!r}))"
        now = f"{datetime.now(UTC):%Y-%m-%dT%H:%M:%SZ}"
        program = in_python[1].replace("8462", str(port)) + call.replace(
            "2026-11-26T09:01:00Z", now
        )
        done = subprocess.run(
            [sys.executable, "-c", program], env=env, capture_output=True, text=True, check=True
        )
        assert "'inquiry': 2, 'known': False" in done.stdout


def test_calls_at_the_same_time_make_one_inquiry(caller: Caller, store: Store) -> None:
    lines = [said(number, text) for number, text in enumerate(["1.75", ".095", "4.5 clr", "4130"])]
    with served(caller.app) as port:

        def post(line: dict[str, object]) -> None:
            raw = json.dumps(line).encode()
            sign = signature_of(SECRET.encode(), str(NOW), raw)
            headers = {TIME: str(NOW), SIGNATURE: sign, "Content-Type": "application/json"}
            url = f"http://127.0.0.1:{port}/messages"
            assert httpx.post(url, content=raw, headers=headers, timeout=60).status_code == 200

        threads = [threading.Thread(target=post, args=(line,)) for line in lines * 2]
        for thread in threads:
            thread.start()
        for thread in threads:
            thread.join()
    (one,) = desk.askings(store)
    assert desk.show(store, one.id).message.body == "1.75\n.095\n4.5 clr\n4130"
