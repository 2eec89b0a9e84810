"""Is the store whole: every row readable, every rule of it kept. Looks only, changes nothing."""

from __future__ import annotations

from collections.abc import Iterator
from typing import TYPE_CHECKING

from .inquiry import Inquiry, Role, State

if TYPE_CHECKING:
    from .store import Store
    from .store_reader import Reader


def check_store(store: Store) -> tuple[int, list[str]]:
    """(inquiries looked at, faults), each fault one sentence. Raises StoreError where the store
    can't be read at all.
    """
    faults: list[str] = []
    with store.reading() as book:
        faults += book.damage()
        numbers = book.all_numbers()
        for number in numbers:
            try:
                inquiry = book.inquiry(number)
            except ValueError as error:  # pydantic's and json's errors are ValueErrors
                first = str(error).splitlines()[0]
                faults.append(f"inquiry {number} can't be read: {first}")
                continue
            assert inquiry is not None, "its number was just read"
            faults += (f"inquiry {number}: {fault}" for fault in _faults(book, inquiry))
    return len(numbers), faults


def _faults(book: Reader, inquiry: Inquiry) -> Iterator[str]:
    if not any(one.role is Role.CUSTOMER for one in inquiry.messages):
        yield "it has no message"
        return
    numbers = [one.number for one in inquiry.drafts]
    if numbers != list(range(1, len(numbers) + 1)):
        yield f"its drafts are numbered {', '.join(map(str, numbers))}"
    if sum(not one.withdrawn for one in inquiry.drafts) > 1:
        yield "more than one of its drafts stands"
    if inquiry.state in (State.APPROVED, State.DELIVERED):
        approval = inquiry.approval
        if approval is None:
            yield f"it is {inquiry.state}, and nobody has approved it"
        elif inquiry.draft is None or inquiry.draft.number != approval.draft_number:
            yield "the draft that was approved is not the one that stands"
    happened = [event.what for event in book.history(inquiry.id)]
    if not happened:
        yield "it has no history"
    if inquiry.state is State.DELIVERED and "delivered" not in happened:
        yield "it is delivered, and its history doesn't say where"
    if inquiry.state is State.ANSWERED and not inquiry.replies:
        yield "it is answered, and no reply is kept"
    yield from _evidence_faults(inquiry)


def _evidence_faults(inquiry: Inquiry) -> Iterator[str]:
    """A figure must be found in the words that it was read from."""
    texts = {one.message.message_id: one.message.text for one in inquiry.messages}
    latest = inquiry.message.message_id
    for index, assessment in enumerate(inquiry.assessments, start=1):
        for seen in assessment.request.evidence:
            text = texts.get(seen.message_id or latest)
            in_attachment = seen.start == seen.end == 0
            if text is None:
                if not seen.message_id:
                    yield f"the {seen.field} of size {index} has lost its message"
            elif not in_attachment and text[seen.start : seen.end] != seen.surface:
                yield f"the {seen.field} of size {index} is not in the words it was read from"
