"""A throw-away Prosody on loopback: a real XMPP server, in a folder that is removed afterwards.

Needs Debian's ``prosody`` and ``openssl``. Started without root it runs as the user it is; started
by root, as nobody. A module of a few lines writes down every stanza that a client of it sends.
"""

from __future__ import annotations

import os
import pwd
import shutil
import signal
import socket
import subprocess
import time
from dataclasses import dataclass, field
from pathlib import Path

from .dovecot import free_port

PROGRAM = "/usr/bin/prosody"
HOST = "localhost"
SHOP, PASSWORD = "shop", "hush-4711"
START_WAIT_S = 20

CONFIG = """
pidfile = "{folder}/prosody.pid"
data_path = "{folder}/data"
plugin_paths = {{ "{folder}/modules" }}
log = {{ info = "{folder}/prosody.log" }}
interfaces = {{ "127.0.0.1" }}
c2s_ports = {{ {port} }}
c2s_direct_tls_ports = {{ {tls_port} }}
s2s_ports = {{}}
http_ports = {{}}
https_ports = {{}}
modules_enabled = {{ "roster", "saslauth", "disco", "ping", "offline", "written", {modules} }}
modules_disabled = {{ "s2s" }}
authentication = "internal_plain"
storage = "internal"
c2s_require_encryption = {require_tls}
allow_unencrypted_plain_auth = {plain}
ssl = {{ key = "{folder}/key.pem", certificate = "{folder}/cert.pem" }}
VirtualHost "localhost"
"""
WRITTEN = """
local out = assert(io.open("{folder}/written.log", "a"))
local function seen(event)
  local stanza, origin = event.stanza, event.origin
  if origin.type == "c2s" then
    out:write(origin.username, " ", stanza.name, " ", stanza.attr.to or "-", "\\n")
    out:flush()
  end
end
for _, kind in ipairs {{ "message", "presence", "iq" }} do
  for _, to in ipairs {{ "bare", "full", "host", "self" }} do
    module:hook("pre-" .. kind .. "/" .. to, seen, 1000)
  end
end
"""


def missing() -> str:
    """What is lacking to start one; empty where nothing is."""
    needed = {"prosody": PROGRAM, "openssl": shutil.which("openssl") or "/nowhere"}
    return " and ".join(package for package, path in needed.items() if not Path(path).exists())


@dataclass
class Prosody:
    """One server. Start it, use it, stop it, start it again."""

    folder: Path
    modules: tuple[str, ...] = ("tls", "mam", "carbons")
    tls: bool = True
    """Whether a client has to encrypt; without it none can."""
    name: str = HOST
    """Whom its certificate is made out for."""
    port: int = field(default_factory=free_port)
    tls_port: int = field(default_factory=free_port)
    process: subprocess.Popen[bytes] | None = None

    @property
    def certificate(self) -> Path:
        """What a client has to trust."""
        return self.folder / "cert.pem"

    def prepare(self, users: dict[str, str]) -> Prosody:
        """Write its files: certificate, accounts, configuration."""
        accounts = self.folder / "data" / HOST / "accounts"
        for part in (accounts, self.folder / "modules"):
            part.mkdir(parents=True, exist_ok=True)
        _make_certificate(self.folder, self.name)
        for user, password in users.items():
            (accounts / f"{user}.dat").write_text(f'return {{ ["password"] = "{password}"; }};\n')
        (self.folder / "modules" / "mod_written.lua").write_text(WRITTEN.format(folder=self.folder))
        (self.folder / "prosody.cfg.lua").write_text(
            CONFIG.format(
                folder=self.folder,
                port=self.port,
                tls_port=self.tls_port,
                modules=", ".join(f'"{one}"' for one in self.modules),
                require_tls="true" if self.tls else "false",
                plain="false" if self.tls else "true",
            )
        )
        if os.getuid() == 0:
            subprocess.run(["chown", "-R", "nobody", self.folder], check=True)
        return self

    def start(self) -> Prosody:
        """Start it and wait until it answers."""
        command = [PROGRAM, "-F", "--config", str(self.folder / "prosody.cfg.lua")]
        if os.getuid() == 0:
            user = pwd.getpwnam("nobody")
            drop = ["setpriv", "--reuid", "nobody", "--regid", str(user.pw_gid), "--clear-groups"]
            command = [*drop, "--no-new-privs", *command]
        self.process = subprocess.Popen(
            command, stdout=subprocess.DEVNULL, stderr=subprocess.DEVNULL, cwd=self.folder
        )
        end = time.monotonic() + START_WAIT_S
        while time.monotonic() < end:
            assert self.process.poll() is None, "Prosody ended at once: see prosody.log"
            try:
                with socket.create_connection(("127.0.0.1", self.port), timeout=1):
                    return self
            except OSError:
                time.sleep(0.05)
        raise TimeoutError(f"Prosody did not answer within {START_WAIT_S} s")

    def stop(self, how: int = signal.SIGTERM) -> None:
        """End it, and wait until its ports are free again."""
        if self.process is not None:
            self.process.send_signal(how)
            self.process.wait(timeout=20)
            self.process = None

    def written_by(self, user: str) -> list[tuple[str, str]]:
        """(message, presence or iq; to whom) of all stanzas that a user's clients have sent."""
        log = self.folder / "written.log"
        lines = log.read_text("utf-8").splitlines() if log.exists() else []
        found = [line.split(" ") for line in lines]
        return [(kind, to) for name, kind, to in found if name == user]


def _make_certificate(folder: Path, name: str) -> None:
    made = subprocess.run(
        ["openssl", "req", "-x509", "-newkey", "rsa:2048", "-nodes", "-days", "2", "-subj",
         f"/CN={name}", "-addext", f"subjectAltName=DNS:{name}", "-keyout", folder / "key.pem",
         "-out", folder / "cert.pem"],
        capture_output=True, text=True, check=False,
    )  # fmt: skip
    assert made.returncode == 0, made.stderr
