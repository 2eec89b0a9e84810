"""A throw-away Dovecot on loopback: a real IMAP server, in a folder that is removed afterwards.

Needs Debian's ``dovecot-imapd`` and ``openssl``. Started without root it runs as the user it is;
started by root, as nobody.
"""

from __future__ import annotations

import os
import pwd
import shutil
import socket
import subprocess
import time
from dataclasses import dataclass, field
from pathlib import Path

PROGRAM = "/usr/sbin/dovecot"
USER, PASSWORD = "shop", "hush-4711"
START_WAIT_S = 15

CONFIG = """
base_dir = {folder}/run
state_dir = {folder}/state
log_path = {folder}/dovecot.log
protocols = imap
listen = 127.0.0.1
default_internal_user = {user}
default_internal_group = {group}
default_login_user = {user}
first_valid_uid = 1
disable_plaintext_auth = no
auth_failure_delay = 0
ssl = yes
ssl_cert = <{folder}/cert.pem
ssl_key = <{folder}/key.pem
mail_location = maildir:{folder}/mail/%u
mail_max_userip_connections = 100
passdb {{
  driver = passwd-file
  args = {folder}/passwd
}}
userdb {{
  driver = static
  args = uid={user} gid={group} home={folder}/mail/%u
}}
namespace inbox {{
  inbox = yes
  separator = /
  {folders}
}}
service anvil {{
  chroot =
  unix_listener anvil-auth-penalty {{
    mode = 0
  }}
}}
service imap-login {{
  chroot =
  inet_listener imap {{
    port = {port}
  }}
  inet_listener imaps {{
    port = {tls_port}
    ssl = yes
  }}
}}
service stats {{
  chroot =
}}
{more}
"""
FOLDERS = """
  mailbox Entwurf {
    special_use = \\Drafts
    auto = subscribe
  }
  mailbox Ausgang {
    special_use = \\Sent
    auto = subscribe
  }
"""
"""Names that no program would guess: only the server's marks say what these are for."""


def missing() -> str:
    """What is lacking to start one; empty where nothing is."""
    needed = {"dovecot-imapd": PROGRAM, "openssl": shutil.which("openssl") or "/nowhere"}
    lacking = [package for package, path in needed.items() if not Path(path).exists()]
    return " and ".join(lacking)


def free_port() -> int:
    """A port that nothing listens on just now."""
    with socket.socket() as probe:
        probe.bind(("127.0.0.1", 0))
        port: int = probe.getsockname()[1]
        return port


@dataclass
class Dovecot:
    """One server. Start it, use it, stop it."""

    folder: Path
    special: str = FOLDERS
    more: str = ""
    """Further lines of its configuration."""
    days: int = 2
    """How long its certificate holds from today; less than 0: it has run out."""
    port: int = field(default_factory=free_port)
    tls_port: int = field(default_factory=free_port)
    process: subprocess.Popen[bytes] | None = None

    @property
    def certificate(self) -> Path:
        """What a client has to trust."""
        return self.folder / "cert.pem"

    @property
    def mail(self) -> Path:
        """The Maildir of the shop's user."""
        return self.folder / "mail" / USER

    def start(self) -> Dovecot:
        """Write its files, start it, wait until it answers."""
        name = "nobody" if os.getuid() == 0 else pwd.getpwuid(os.getuid()).pw_name
        user = pwd.getpwnam(name)
        for part in ("run", "mail", "state"):
            (self.folder / part).mkdir(parents=True, exist_ok=True)
        self._make_certificate()
        (self.folder / "passwd").write_text(f"{USER}:{{PLAIN}}{PASSWORD}\n")
        group = subprocess.check_output(["id", "-gn", name], text=True).strip()
        config = CONFIG.format(
            folder=self.folder,
            user=name,
            group=group,
            folders=self.special,
            port=self.port,
            tls_port=self.tls_port,
            more=self.more,
        )
        (self.folder / "dovecot.conf").write_text(config)
        command = [PROGRAM, "-F", "-c", str(self.folder / "dovecot.conf")]
        if os.getuid() == 0:
            subprocess.run(["chown", "-R", f"{name}:{group}", self.folder], check=True)
            drop = ["setpriv", "--reuid", name, "--regid", str(user.pw_gid), "--clear-groups"]
            command = [*drop, "--no-new-privs", *command]
        self.process = subprocess.Popen(command, stderr=subprocess.DEVNULL)
        self._wait()
        return self

    def stop(self) -> None:
        """End it, and wait until its ports are free again."""
        if self.process is not None:
            self.process.terminate()
            self.process.wait(timeout=20)
            self.process = None

    def renumber(self, mailbox: str, uidvalidity: int) -> None:
        """Give a folder another UIDVALIDITY, as a server does that lost its index."""
        command = ["doveadm", "-c", str(self.folder / "dovecot.conf"), "mailbox", "update"]
        subprocess.run(
            [*command, "--uid-validity", str(uidvalidity), "-u", USER, mailbox], check=True
        )

    def _make_certificate(self) -> None:
        key, asked = self.folder / "key.pem", self.folder / "asked.pem"
        names = ["-addext", "subjectAltName=DNS:localhost,IP:127.0.0.1"]
        _openssl("req", "-new", "-newkey", "rsa:2048", "-nodes", "-keyout", key, "-out", asked,
                 "-subj", "/CN=localhost", *names)  # fmt: skip
        _openssl("x509", "-req", "-in", asked, "-signkey", key, "-days", self.days,
                 "-copy_extensions", "copy", "-out", self.certificate)  # fmt: skip

    def _wait(self) -> None:
        end = time.monotonic() + START_WAIT_S
        while time.monotonic() < end:
            assert self.process is not None
            assert self.process.poll() is None, "Dovecot ended at once: see dovecot.log"
            try:
                with socket.create_connection(("127.0.0.1", self.port), timeout=1) as server:
                    if server.recv(4) == b"* OK":
                        return
            except OSError:
                time.sleep(0.05)
        raise TimeoutError(f"Dovecot did not answer within {START_WAIT_S} s")


def _openssl(*args: object) -> None:
    made = subprocess.run(["openssl", *map(str, args)], capture_output=True, text=True, check=False)
    assert made.returncode == 0, made.stderr
