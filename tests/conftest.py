"""How property tests draw. The same examples each time, so that a change fails for what it changed;
BENDREPLY_DRAW_NEW draws new ones, to look for faults. No example has a time limit: see pace.py.
"""

from __future__ import annotations

import os

from hypothesis import settings

settings.register_profile("same", deadline=None, derandomize=True, database=None)
settings.register_profile("new", deadline=None)
settings.load_profile("new" if os.environ.get("BENDREPLY_DRAW_NEW") else "same")
