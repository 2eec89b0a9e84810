"""For a command that ends at once: looking for garbage takes a tenth of its time and finds none."""

from __future__ import annotations

import atexit
import gc
from collections.abc import Iterator
from contextlib import contextmanager


@contextmanager
def uncollected() -> Iterator[None]:
    """Within, objects that point at each other in a ring stay until the end; all others go as ever.

    Nor is what is left gone through once more when the interpreter ends.
    """
    collecting = gc.isenabled()
    gc.disable()
    atexit.unregister(gc.freeze)
    atexit.register(gc.freeze)
    try:
        yield
    finally:
        if collecting:
            gc.enable()
