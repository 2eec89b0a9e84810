"""Approved drafts laid in the mailbox's Drafts folder by APPEND. There the person presses Send.

A draft is looked for by its Message-ID before it is laid, so that one whose APPEND was answered
into a broken connection is found, not laid again.
"""

from __future__ import annotations

from contextlib import ExitStack
from pathlib import Path
from types import TracebackType
from typing import TYPE_CHECKING, Self

from ...rules.shop_mailbox import Mailbox
from ..deliver import DraftsFolder, Laid, TakenBack, draft_id_of
from ..desk_errors import MailboxError, UndeliverableError
from ..letter import DraftId, Letter, digest
from . import fetch
from .access import mailbox, said_by
from .folders import open_for_drafts, open_readonly, special_folder

if TYPE_CHECKING:
    from imapclient import IMAPClient

FLAGS = (rb"\Draft", rb"\Seen")
"""Seen: our draft is no new mail."""
NEW_FOLDER = "Drafts"


class ImapDrafts:
    """The Drafts folder on the server; chat texts go to a folder of files. Use it in a ``with``.

    The server is called when there is a first draft to lay.
    """

    def __init__(self, settings: Mailbox, shop_folder: Path | None, chat_folder: Path) -> None:
        self._settings = settings
        self._shop_folder = shop_folder
        self._chats = DraftsFolder(chat_folder)
        self._open = ExitStack()
        self._box: _Box | None = None

    def __enter__(self) -> Self:
        return self

    def __exit__(
        self,
        kind: type[BaseException] | None,
        error: BaseException | None,
        trace: TracebackType | None,
    ) -> None:
        self._open.__exit__(kind, error, trace)

    def lay(self, letter: Letter) -> Laid:
        """Add the draft, unless it lies there; an earlier one goes where nobody has changed it.

        Raises LostMailboxError where the server can't be reached or went away: whether the draft
        lies there is seen at the next try.
        """
        if letter.channel == "chat":
            return self._chats.lay(letter)
        return self._opened().lay(letter)

    def take_back(self, name: DraftId, laid: str, channel: str) -> TakenBack:
        """As ``Target`` says. Raises LostMailboxError as ``lay`` does."""
        if channel == "chat":
            return self._chats.take_back(name, laid, channel)
        return self._opened().take_back(name, laid)

    def _opened(self) -> _Box:
        if self._box is None:
            client = self._open.enter_context(mailbox(self._settings, self._shop_folder))
            self._box = _Box(client, self._settings)
        return self._box


class _Box:
    """The open Drafts folder and what of ours lies in it."""

    def __init__(self, client: IMAPClient, settings: Mailbox) -> None:
        self._client = client
        self.folder = special_folder(client, settings, "Drafts") or _make_folder(client)
        self._lying = dict(lying(client, self.folder))

    def lay(self, letter: Letter) -> Laid:
        if letter.id in self._lying:
            return Laid(self.folder, was_there=True)
        self._append(letter)
        note = self._remove_earlier(letter)
        self._lying[letter.id] = 0  # its UID is not needed in this run
        return Laid(self.folder, was_there=False, note=note)

    def take_back(self, name: DraftId, laid: str) -> TakenBack:
        uid = self._lying.get(name)
        if not uid:
            return TakenBack.GONE
        open_for_drafts(self._client, self.folder)
        found = whole(self._client, uid)
        if found is None:
            return TakenBack.GONE
        if digest(found) != laid:
            return TakenBack.CHANGED
        remove(self._client, uid)
        del self._lying[name]
        return TakenBack.DONE

    def _append(self, letter: Letter) -> None:
        from imapclient.exceptions import IMAPClientAbortError, IMAPClientError

        try:
            self._client.append(self.folder, letter.data, FLAGS)
        except IMAPClientAbortError:
            raise
        except IMAPClientError as error:
            raise UndeliverableError(
                f"the draft of inquiry {letter.id.inquiry} was not taken into {self.folder}: "
                f"{said_by(error)}; it stays approved"
            ) from error

    def _remove_earlier(self, letter: Letter) -> str:
        earlier = {one: uid for one, uid in self._lying.items() if uid and letter.id.replaces(one)}
        if not earlier:
            return ""
        open_for_drafts(self._client, self.folder)
        changed = []
        for one, uid in earlier.items():
            if letter.may_replace(one, whole(self._client, uid)):
                remove(self._client, uid)
                del self._lying[one]
            else:
                changed.append(str(one.number))
        if not changed:
            return ""
        return (
            f"draft {' and '.join(changed)} of inquiry {letter.id.inquiry} was changed in the mail "
            f"program and still lies in {self.folder}, beside the new one"
        )


def lying(client: IMAPClient, folder: str) -> list[tuple[DraftId, int]]:
    """The drafts of ours in a folder, with their UIDs."""
    _, end = open_readonly(client, folder)
    found = []
    for uids in fetch.uids_from(client, 1, end, None):
        for uid, header in fetch.headers(client, uids):
            if name := draft_id_of(header):
                found.append((name, uid))
    return found


def whole(client: IMAPClient, uid: int) -> bytes | None:
    """The bytes of one message in the open folder; None where it is gone."""
    said = client.fetch([uid], ["BODY.PEEK[]"])
    return fetch.body_of(said[uid]) if uid in said else None


def remove(client: IMAPClient, uid: int) -> None:
    """Take one message out of the open folder, and no other that somebody has marked deleted."""
    client.delete_messages([uid], silent=True)
    if client.has_capability("UIDPLUS"):  # without it, EXPUNGE would take the others too
        client.uid_expunge([uid])


def _make_folder(client: IMAPClient) -> str:
    """A Drafts folder where the mailbox has none yet."""
    from imapclient.exceptions import IMAPClientAbortError, IMAPClientError

    prefix = ""
    if client.has_capability("NAMESPACE"):
        personal = client.namespace().personal
        prefix = personal[0][0] if personal else ""
    name = f"{prefix}{NEW_FOLDER}"
    try:
        client.create_folder(name)
        client.subscribe_folder(name)
    except IMAPClientAbortError:
        raise
    except IMAPClientError as error:
        raise MailboxError(
            f"the mailbox has no folder for drafts, and none could be made ({said_by(error)}): "
            "name one in shop.toml with drafts"
        ) from error
    return name
