"""Mail files that nobody here wrote: each is read or refused with its reason, and none crashes.

Python's own test messages come with most installations. A folder of others is named by
BENDREPLY_MAIL_FILES; .ci/run fetches one.
"""

from __future__ import annotations

import email
import email.policy
import importlib.util
import os
from pathlib import Path

import pytest

from bendreply.intake.cli import main
from bendreply.intake.desk import askings, show
from bendreply.intake.store import open_store

ALLOWED = {
    "from", "to", "subject", "date", "message-id", "in-reply-to", "references", "x-unsent",
    "content-type", "content-transfer-encoding", "mime-version",
}  # fmt: skip


def folder_of(name: str) -> Path:
    """The folder of such files; skips where there is none."""
    if name == "others":
        if not (named := os.environ.get("BENDREPLY_MAIL_FILES")):
            pytest.skip("BENDREPLY_MAIL_FILES names no folder of mail files")
        return Path(named)
    spec = importlib.util.find_spec("test")
    places = spec.submodule_search_locations if spec is not None else None
    for place in places or ():
        data = Path(place) / "test_email" / "data"
        if data.is_dir():
            return data
    pytest.skip("this Python came without its own tests, and so without their messages")


@pytest.mark.parametrize("corpus", ["python", "others"])
def test_each_is_read_or_refused_and_no_draft_bears_a_header_of_theirs(
    corpus: str, tmp_path: Path, capsys: pytest.CaptureFixture[str], monkeypatch
) -> None:
    monkeypatch.delenv("BENDREPLY_SHOP", raising=False)
    files = sorted(f for f in folder_of(corpus).iterdir() if f.is_file() and f.suffix != ".py")
    assert len(files) > 20
    shop, store_file = tmp_path / "shop", tmp_path / "shop" / "store.sqlite"
    assert main(["shop", "new", str(shop)]) == 0
    capsys.readouterr()
    main(["--shop", str(shop), "collect", *map(str, files)])
    out, err = capsys.readouterr()
    refused = err.splitlines()
    assert "internal fault" not in err
    assert all(any(str(file) in line for file in files) for line in refused)
    with open_store(store_file) as store:
        kept = [show(store, one.id) for one in askings(store)]
    messages = sum(len(one.messages) for one in kept)
    known = int(out.split(" known before")[0].split()[-1])
    assert messages + known + len(refused) == len(files)
    for one in kept:
        if one.draft is not None:
            main(["--shop", str(shop), "approve", str(one.id), "--by", "Robin Ashdown"])
    main(["--shop", str(shop), "deliver"])
    for file in (shop / "drafts").glob("*.eml"):
        draft = email.message_from_bytes(file.read_bytes(), policy=email.policy.default)
        assert {name.lower() for name in draft} <= ALLOWED
        assert draft["From"].addresses[0].addr_spec == "sales@fernhollow.example.com"
