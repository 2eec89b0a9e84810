"""Drafts that were laid down and are outdated by what came in since: taken away, or told of.

Only a draft of ours goes whose bytes are still those that were laid, that lies where drafts lie,
and that no reply in the Sent folder was made of. Whatever a person has changed is theirs.
"""

from __future__ import annotations

from collections.abc import Iterator
from typing import TYPE_CHECKING

from .deliver import TakenBack
from .desk_common import the_inquiry
from .desk_deliver import laid_before
from .inquiry import BENDREPLY, Inquiry, State
from .letter import DraftId

if TYPE_CHECKING:
    from .deliver import Target
    from .store import Store
    from .store_reader import Reader

SETTLED = "outdated draft "
"""How the events begin that say what became of one."""
_WHAT = {
    TakenBack.DONE: SETTLED + "taken back",
    TakenBack.CHANGED: SETTLED + "left, since changed by hand",
    TakenBack.GONE: SETTLED + "no longer there",
}
_TOLD = {
    TakenBack.DONE: "its laid draft was outdated, and was taken back",
    TakenBack.CHANGED: "its laid draft is outdated, and was left since somebody has changed it: "
    "don't send it as it is",
    TakenBack.GONE: "its laid draft is outdated, and no longer lies among the drafts",
}


def any_outdated(store: Store) -> bool:
    """Whether there is anything for ``take_back_outdated`` to look at."""
    with store.reading() as book:
        return any(_outdated(book, number) for number in book.laid_and_open())


def take_back_outdated(store: Store, target: Target) -> Iterator[str]:
    """Take back what is outdated; a sentence for each such draft, told once.

    Each in its own transaction. Cut short, the next run finds it gone. Raises what ``target`` does.
    """
    with store.reading() as book:
        numbers = book.laid_and_open()
    for number in numbers:
        with store.writing() as book:
            inquiry = the_inquiry(book, number, to_change=True)
            for name, laid in _outdated(book, number, inquiry).items():
                done = target.take_back(name, laid, inquiry.message.channel)
                book.log(number, BENDREPLY, _WHAT[done], draft=name.number)
                yield f"inquiry {number}: {_TOLD[done]}"


def _outdated(book: Reader, number: int, inquiry: Inquiry | None = None) -> dict[DraftId, str]:
    """Laid drafts that no longer stand and of which nothing was said yet, with their digests."""
    laid = laid_before(book, number)
    if not laid:
        return {}
    inquiry = inquiry or the_inquiry(book, number)
    if inquiry.state not in (State.WAITING, State.SET_ASIDE):
        return {}  # approved: laying the new one replaces it; answered: it has gone out
    settled = {
        one.detail.get("draft") for one in book.history(number) if one.what.startswith(SETTLED)
    }
    sent = {DraftId.parse(one.message_id) for one in inquiry.replies}
    stands = inquiry.draft.number if inquiry.draft else None
    return {
        name: digest
        for name, digest in laid.items()
        if name.number not in settled and name not in sent and name.number != stands
    }
