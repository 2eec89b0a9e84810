"""A proxy on loopback that breaks a connection where a test wants it broken."""

from __future__ import annotations

import re
import socket
import threading
from collections.abc import Callable

Cut = Callable[[bytes], int | None]
"""What one side has said so far -> how many of these bytes still get through before the line is
cut; None to go on.
"""


def after(pattern: bytes, more: int = 0) -> Cut:
    """Cut ``more`` bytes after the first match of a pattern; 0: right before the match."""
    wanted = re.compile(pattern, re.DOTALL)

    def cut(said: bytes) -> int | None:
        match = wanted.search(said)
        if match is None:
            return None
        at = match.start() if more == 0 else match.end() + more
        return at if len(said) >= at else None

    return cut


class Proxy:
    """Passes everything on between its port and a server's, until one side's words are cut.

    ``silent``: takes connections and never says a word. ``times``: connections that are cut; later
    ones are passed on whole.
    """

    def __init__(
        self,
        port: int,
        *,
        cut_client: Cut | None = None,
        cut_server: Cut | None = None,
        silent: bool = False,
        times: int = 1,
    ) -> None:
        self._target = port
        self._cuts = {"client": cut_client, "server": cut_server}
        self._silent = silent
        self.times = times
        self._open: list[socket.socket] = []
        self._listener = socket.create_server(("127.0.0.1", 0))
        self.port: int = self._listener.getsockname()[1]

    def __enter__(self) -> Proxy:
        threading.Thread(target=self._accept, daemon=True).start()
        return self

    def __exit__(self, *_: object) -> None:
        # A listener that another thread waits on is not closed by close() alone.
        self._listener.shutdown(socket.SHUT_RDWR)
        self._listener.close()
        self.drop()

    def drop(self) -> None:
        """Cut every open connection."""
        while self._open:
            _close(self._open.pop())

    def _accept(self) -> None:
        while True:
            try:
                client, _ = self._listener.accept()
            except OSError:
                return
            self._open.append(client)
            if self._silent:
                continue
            server = socket.create_connection(("127.0.0.1", self._target))
            self._open.append(server)
            for source, sink, side in ((client, server, "client"), (server, client, "server")):
                args = (source, sink, self._cuts[side] if self.times > 0 else None)
                threading.Thread(target=self._pass_on, args=args, daemon=True).start()

    def _pass_on(self, source: socket.socket, sink: socket.socket, cut: Cut | None) -> None:
        said = b""
        try:
            while data := source.recv(65536):
                before, said = len(said), said + data if cut else b""
                end = cut(said) if cut else None
                if end is not None:
                    self.times -= 1
                    sink.sendall(said[before:end])
                    break
                sink.sendall(data)
        except OSError:
            return  # the other side has gone, which ends this one as well
        finally:
            _close(source)
            _close(sink)


def _close(one: socket.socket) -> None:
    try:
        one.shutdown(socket.SHUT_RDWR)
    except OSError:
        return  # closed by the other thread already
    finally:
        one.close()
