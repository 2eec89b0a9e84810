"""What can go wrong at the desk. Each message is the one sentence that a person reads."""

from __future__ import annotations

from datetime import UTC
from typing import TYPE_CHECKING, Self

if TYPE_CHECKING:
    from .inquiry import Event


class DeskError(Exception):
    """Base of all below: the step was refused and nothing was changed."""


class StoreError(DeskError):
    """The store can't be opened, read or written."""


class NewerStoreError(StoreError):
    """The store was written by a later version of this program."""


class ClashError(StoreError):
    """Another program took the same message in after we had looked for it."""


class UnknownInquiryError(DeskError):
    """No inquiry has that number."""


class NoNameError(DeskError):
    """A person's word without a person, or by one who has no say."""


class NoReasonError(DeskError):
    """Setting aside needs a reason, for whoever looks later."""


class NoPictureError(DeskError):
    """No picture can go with the reply: nothing to draw, or nothing to draw it with."""


class NoDraftError(DeskError):
    """There is nothing to approve."""


class AlreadyApprovedError(DeskError):
    """Approved before; the first approval stands."""


class AlreadyDeliveredError(DeskError):
    """The draft lies in the shop's mailbox already: out of our hands."""


class SetAsideError(DeskError):
    """The inquiry was set aside before."""


class NoReplyError(DeskError):
    """An automatic message: nothing waits for a person."""


class ChangedMeanwhileError(DeskError):
    """Somebody else was first: the inquiry is no longer the version that was looked at."""

    @classmethod
    def of(cls, number: int, change: Event | None = None) -> Self:
        """The sentence for one inquiry, with the latest change where it is known."""
        what = ""
        if change is not None:
            at = f"{change.at.astimezone(UTC):%Y-%m-%d %H:%M} UTC"
            what = f" ({change.what}, {change.who}, {at})"
        return cls(
            f"inquiry {number} was changed meanwhile{what}: look at it again; "
            "nothing was changed now"
        )


class BadCorrectionError(DeskError):
    """A correction that names no size or field of the inquiry, or no possible value."""


class EditedDraftError(DeskError):
    """A person's own wording would be replaced, and the caller asked to be told first."""


class ShopAddressError(DeskError):
    """The shop's own reply address can't stand in a From line."""


class UndeliverableError(DeskError):
    """One approved draft can't be laid down; it stays approved."""


class DraftsPlaceError(DeskError):
    """The place for drafts is none."""


class MailboxError(DeskError):
    """The shop's mailbox can't be used as it is: a person has to change something."""


class MailboxLoginError(MailboxError):
    """The server does not let us in."""


class LostMailboxError(MailboxError):
    """The server can't be reached, or went away meanwhile: trying again may help."""


class ChatSettingsError(DeskError):
    """The chat can't be used as shop.toml has it: a person has to change something."""


class LostChatError(DeskError):
    """The chat server can't be reached, or went away meanwhile: trying again may help."""
