"""Which folder is which: by the server's own marks (RFC 6154), by name only where it has none."""

from __future__ import annotations

from typing import TYPE_CHECKING, Any, Literal

from ...rules.shop_mailbox import Mailbox
from ..desk_errors import MailboxError

if TYPE_CHECKING:
    from imapclient import IMAPClient

Use = Literal["Drafts", "Sent"]

UNKNOWN_END = 2**32
"""Above every UID (RFC 3501 9): where a server doesn't say where its numbers have got to."""

_NAMES: dict[Use, tuple[str, ...]] = {
    "Drafts": ("Drafts", "Draft", "Entwürfe", "Brouillons", "Borradores", "Bozze", "Concepten"),
    "Sent": (
        "Sent", "Sent Items", "Sent Messages", "Sent Mail", "Gesendet", "Gesendete Elemente",
        "Envoyés", "Enviados", "Posta inviata", "Inviata", "Verzonden items", "Verzonden",
    ),
}  # fmt: skip
"""What mail programs call these folders where the server marks none; looked for in this order."""


def open_readonly(client: IMAPClient, folder: str) -> tuple[int, int]:
    """Open a folder so that nothing in it can change (EXAMINE); its UIDVALIDITY and UIDNEXT.

    Raises MailboxError where there is none of that name.
    """
    said = _opened(client, folder, readonly=True)
    if b"UIDVALIDITY" not in said:
        raise MailboxError(f"the server gives no UIDVALIDITY for {folder!r}: it can't be read")
    # Without UIDNEXT (older servers) every UID is looked for.
    return int(said[b"UIDVALIDITY"]), int(said.get(b"UIDNEXT", UNKNOWN_END))


def own_folder(client: IMAPClient, name: str) -> str:
    """A folder of ours by its plain name, made where the mailbox has none; its full name.

    Raises IMAPClientError where the server refuses.
    """
    personal = client.namespace().personal if client.has_capability("NAMESPACE") else ()
    prefix = personal[0][0] if personal else ""
    full = name if name.startswith(prefix) else f"{prefix}{name}"
    if not client.folder_exists(full):
        client.create_folder(full)
        client.subscribe_folder(full)
    return full


def open_for_drafts(client: IMAPClient, folder: str) -> None:
    """Open a folder so that drafts of ours can be taken out of it. Never one with customers' mail.

    Raises MailboxError where there is none of that name.
    """
    _opened(client, folder, readonly=False)


def _opened(client: IMAPClient, folder: str, *, readonly: bool) -> dict[bytes, Any]:
    from imapclient.exceptions import IMAPClientAbortError, IMAPClientError

    try:
        said: dict[bytes, Any] = client.select_folder(folder, readonly=readonly)
    except IMAPClientAbortError:
        raise
    except IMAPClientError as error:
        raise MailboxError(
            f"the mailbox has no folder {folder!r} that can be opened: see shop.toml"
        ) from error
    return said


def special_folder(client: IMAPClient, settings: Mailbox, use: Use) -> str | None:
    """The folder for drafts or sent mail: as shop.toml says, as the server marks it, by name.

    None where there is none. Two folders with the mark are refused: a draft must not be laid where
    nobody looks.
    """
    named = settings.drafts if use == "Drafts" else settings.sent
    if named is not None:
        return named
    flag = rf"\{use}".encode()
    names: dict[str, str] = {}
    marked: list[str] = []
    for flags, delimiter, name in client.list_folders():
        if b"\\noselect" in {one.lower() for one in flags} or not isinstance(name, str):
            continue
        last = name.rpartition(delimiter.decode())[2] if delimiter else name
        names.setdefault(last.casefold(), name)
        if flag.lower() in {one.lower() for one in flags}:
            marked.append(name)
    if len(marked) > 1:
        raise MailboxError(
            f"the server marks several folders as {use} ({', '.join(marked)}): name one in "
            f"shop.toml with {use.lower()}"
        )
    if marked:
        return marked[0]
    return next((names[n.casefold()] for n in _NAMES[use] if n.casefold() in names), None)
