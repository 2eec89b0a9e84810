"""A throw-away PostgreSQL on loopback, in a folder that is removed afterwards.

Needs Debian's ``postgresql``. It refuses to run as root: started by root, it runs as ``postgres``.
"""

from __future__ import annotations

import os
import shutil
import subprocess
import tempfile
from dataclasses import dataclass, field
from itertools import count
from pathlib import Path

from .dovecot import free_port

USER, PASSWORD = "shop", "hush-4711"


def programs() -> Path | None:
    """The folder of the newest installed server's programs; None where there is none."""
    found = sorted(Path("/usr/lib/postgresql").glob("*/bin/initdb"), key=_version)
    return found[-1].parent if found else None


def _version(initdb: Path) -> float:
    return float(initdb.parent.parent.name)


@dataclass
class Postgres:
    """One server. Start it, use it, stop it. Every login needs the password."""

    folder: Path = field(
        default_factory=lambda: Path(tempfile.mkdtemp(prefix="bendreply-postgres-"))
    )
    port: int = field(default_factory=free_port)
    _numbers: count[int] = field(default_factory=lambda: count(1))

    def start(self) -> Postgres:
        """Make its files and start it; it answers when this returns."""
        word = self.folder / "password"
        word.write_text(PASSWORD)
        if os.getuid() == 0:
            shutil.chown(self.folder, "postgres", "postgres")
            shutil.chown(word, "postgres", "postgres")
        self._run(
            "initdb", "-D", self.data, "-U", USER, "-A", "scram-sha-256", f"--pwfile={word}",
            "--no-sync", "-E", "UTF8", "--locale=C.UTF-8",
        )  # fmt: skip
        # Nothing of it has to outlive a power cut: that is not what is tested here.
        settings = (
            f"-c listen_addresses=127.0.0.1 -p {self.port} -c unix_socket_directories= "
            "-c fsync=off -c full_page_writes=off -c max_connections=60"
        )
        log = self.folder / "log"
        self._run("pg_ctl", "-D", self.data, "-o", settings, "-l", log, "-w", "start")
        return self

    @property
    def data(self) -> Path:
        """Where its files are."""
        return self.folder / "data"

    def stop(self) -> None:
        """End it and remove its folder."""
        if (self.data / "postmaster.pid").exists():
            self._run("pg_ctl", "-D", self.data, "-m", "immediate", "-w", "stop")
        shutil.rmtree(self.folder)

    def url(self, database: str, *, password: bool = True) -> str:
        """Where one database is."""
        secret = f":{PASSWORD}" if password else ""
        return f"postgresql://{USER}{secret}@127.0.0.1:{self.port}/{database}"

    def new_database(self, like: str = "template0", more: str = "") -> str:
        """A database that nobody has used, a copy of another; its name."""
        name = f"desk{next(self._numbers)}"
        self.say(f"CREATE DATABASE {name} TEMPLATE {like} {more}")
        return name

    def drop(self, database: str) -> None:
        """A database is not needed any more."""
        self.say(f"DROP DATABASE {database} WITH (FORCE)")

    def say(self, statement: str, database: str = "postgres") -> list[tuple[object, ...]]:
        """One statement as the server's owner; its rows."""
        import psycopg

        with psycopg.connect(self.url(database), autocommit=True) as connection:
            done = connection.execute(statement.encode())
            return done.fetchall() if done.description else []

    def _run(self, program: str, *call: object) -> None:
        where = programs()
        assert where is not None, "see missing()"
        command = [str(where / program), *map(str, call)]
        if os.getuid() == 0:
            drop = ["setpriv", "--reuid", "postgres", "--regid", "postgres", "--clear-groups"]
            command = [*drop, *command]
        done = subprocess.run(command, capture_output=True, text=True, check=False, cwd="/")
        assert done.returncode == 0, f"{program}: {done.stdout}{done.stderr}"


def missing() -> str:
    """What is lacking to start one; empty where nothing is."""
    if programs() is None:
        return "apt-get install postgresql"
    try:
        import psycopg  # noqa: F401 - only whether it is there
    except ImportError:
        return "pip install psycopg[binary]"
    return ""
