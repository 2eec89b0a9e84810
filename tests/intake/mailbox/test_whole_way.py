"""Many messages the whole way: collected, approved, laid into Drafts, and nothing more.

Five hundred in .ci/run; fewer in everyday work: each is several times written to disk for good.
"""

from __future__ import annotations

import os

from bendreply.intake import desk
from bendreply.intake.store import open_store

from ...servers.dovecot import Dovecot
from .conftest import MUST, Shop, in_folder, lay, the_mail
from .mails import ASKS, mail

MESSAGES = 500 if os.environ.get(MUST) else 50


def test_many_messages(server: Dovecot, shop: Shop) -> None:
    names = [f"p{n:03}" for n in range(MESSAGES)]
    lay(server, *(mail(name, f"{ASKS} {name}", subject=f"Job {name}") for name in names))
    assert shop.run("collect")[1].startswith(f"{MESSAGES} new ({MESSAGES} with sizes), 0 known")
    with open_store(shop.folder / "store.sqlite") as store:
        for row in desk.backlog(store):
            desk.approve(store, row.id, "Robin Ashdown")
    status, out, err = shop.run("deliver")
    assert (status, err) == (0, "")
    assert out.count("the draft lies in Entwurf") == MESSAGES
    drafts = in_folder(server, "Entwurf")
    answered = {
        line for raw in drafts for line in raw.splitlines() if line.startswith(b"In-Reply-To")
    }
    assert len(drafts) == MESSAGES
    assert answered == {f"In-Reply-To: <{name}-1@example.net>".encode() for name in names}
    with the_mail(server) as client:
        client.select_folder("INBOX", readonly=True)
        flags = {
            flag
            for one in client.fetch(client.search(), "FLAGS").values()
            for flag in one[b"FLAGS"]
        }
    assert flags <= {b"\\Recent"}
    assert shop.run("collect")[1].startswith("0 new, 0 known before, 0 not usable.")
    assert shop.run("deliver")[1].startswith("Nothing to lay down")
    assert len(in_folder(server, "Entwurf")) == MESSAGES
    assert shop.run("check")[0] == 0
