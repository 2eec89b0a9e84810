"""Login with an OAuth 2 bearer token (RFC 7628) instead of a password, on a real server."""

from __future__ import annotations

import base64
import hashlib
import hmac
import json
import time
from pathlib import Path

import pytest

from ...servers.dovecot import USER
from .conftest import lay, new_shop, running, settings_of
from .mails import mail

KEY = b"a key that only this test and its server know"
CONFIG = """
auth_mechanisms = plain {mechanism}
passdb {{
  driver = oauth2
  mechanisms = {mechanism}
  args = {folder}/oauth2.conf
}}
"""


def token(subject: str, *, seconds: int = 600) -> str:
    """A signed token (RFC 7519, HS256) for a user."""
    now = int(time.time())
    claims = {"sub": subject, "iat": now - 5, "nbf": now - 5, "exp": now + seconds}
    parts = [
        base64.urlsafe_b64encode(json.dumps(one).encode()).rstrip(b"=")
        for one in ({"alg": "HS256", "typ": "JWT"}, claims)
    ]
    signed = hmac.new(KEY, b".".join(parts), hashlib.sha256).digest()
    return b".".join([*parts, base64.urlsafe_b64encode(signed).rstrip(b"=")]).decode()


@pytest.mark.parametrize("mechanism", ["oauthbearer", "xoauth2"])
def test_a_token_opens_the_mailbox_and_a_stale_one_does_not(
    mechanism: str,
    tmp_path: Path,
    capsys: pytest.CaptureFixture[str],
    monkeypatch: pytest.MonkeyPatch,
) -> None:
    with running(prepare=lambda folder: _prepare(folder, mechanism)) as server:
        lay(server, mail("ada"))
        settings = settings_of(server).replace("password_env", "token_env")
        shop = new_shop(tmp_path, settings.replace("SHOP_PASSWORD", "SHOP_TOKEN"), capsys)
        good, stale = token(USER), token(USER, seconds=-60)
        monkeypatch.setenv("SHOP_TOKEN", good)
        status, out, err = shop.run("collect")
        assert (status, err) == (0, ""), (server.folder / "dovecot.log").read_text()
        assert out.startswith("1 new (1 with sizes)")
        monkeypatch.setenv("SHOP_TOKEN", stale)
        status, _, err = shop.run("collect")
        assert status == 1
        assert err.startswith("bendreply: 127.0.0.1 does not let shop in with this token: ")
        assert stale not in err


def _prepare(folder: Path, mechanism: str) -> str:
    """The server's own copy of the key; the lines of configuration that use it."""
    key = folder / "keys" / "default" / "HS256" / "default"
    key.parent.mkdir(parents=True)
    key.write_bytes(base64.b64encode(KEY))
    (folder / "oauth2.conf").write_text(
        "introspection_mode = local\n"
        f"local_validation_key_dict = fs:posix:prefix={folder}/keys/\n"
        "username_attribute = sub\n"
    )
    return CONFIG.format(folder=folder, mechanism=mechanism)
