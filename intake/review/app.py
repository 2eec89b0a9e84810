"""The review page put together: addresses, what each shows, and how faults are told."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from contextlib import AbstractContextManager
from dataclasses import dataclass
from datetime import datetime
from typing import TYPE_CHECKING

from starlette.applications import Starlette
from starlette.concurrency import run_in_threadpool
from starlette.exceptions import HTTPException
from starlette.middleware import Middleware
from starlette.requests import Request
from starlette.responses import RedirectResponse, Response
from starlette.routing import BaseRoute, Mount, Route
from starlette.staticfiles import StaticFiles

from .. import desk
from ..desk_errors import DeskError, NoNameError, UnknownInquiryError
from ..inquiry import State
from ..model import Address
from ..pictures import NoPicturesError
from .acts import Outcome, Worker, words_of
from .board import Board, Wanted
from .door import SHORT, Door, form_of
from .drawn import Drawn
from .guard import LOOPBACK_NAMES, Guard
from .lines import ORDER
from .notices import Notices
from .people import People
from .render import STATIC, Pages, with_query
from .sheet import sheet_of
from .typed import LONGEST

if TYPE_CHECKING:
    from collections.abc import Iterable

    from ...rules.shop import Shop
    from ..deliver import Target
    from ..store import Store
    from ..templates import Templates

A_PAGE = 50
"""Lines of what waits on one page."""


@dataclass(frozen=True, slots=True)
class Settings:
    """What the page works with, and for whom."""

    store: Store
    shop: Shop
    templates: Templates
    target: Callable[[], AbstractContextManager[Target]]
    """Where approved drafts are laid down."""
    secret: str | None = None
    """What people sign in with; None: a name is enough, as on loopback."""
    names: frozenset[str] = LOOPBACK_NAMES
    """Hosts that the page may be called by."""
    secure: bool = False
    """Whether it is served over TLS."""


def make_app(
    settings: Settings,
    more: Iterable[BaseRoute] = (),
    machines: frozenset[str] = frozenset(),
) -> Starlette:
    """The app. ``more``: routes for other programs; ``machines``: their paths, see ``Guard``."""
    review = Review(settings)
    inquiry = f"/inquiry/{{number:{SHORT}}}"
    return Starlette(
        routes=[
            Route("/", review.waiting, name="waiting"),
            Route(inquiry, review.inquiry, methods=["GET", "POST"]),
            Route(f"{inquiry}/set-aside", review.set_aside, methods=["POST"]),
            Route(f"{inquiry}/{{size:{SHORT}}}-{{which}}.svg", review.picture),
            Route("/deliver", review.deliver, methods=["POST"]),
            Route("/who", review.door.who, methods=["GET", "POST"]),
            Route("/leave", review.door.leave, methods=["POST"]),
            Mount("/static", StaticFiles(directory=STATIC)),
            *more,
        ],
        middleware=[Middleware(Guard, names=settings.names, machines=machines)],
        exception_handlers={
            404: review.nowhere,
            413: review.too_much,
            NoPicturesError: review.nowhere,
            UnknownInquiryError: review.unknown,
            DeskError: review.refused,
            Exception: review.broken,
        },
    )


class Review:
    """The pages. Whatever touches the store runs in a thread, so that nobody waits for another."""

    def __init__(self, settings: Settings) -> None:
        self._settings = settings
        self._pages = Pages(settings.shop.name)
        self._people = People(settings.shop.people, settings.secret, secure=settings.secure)
        self._notices = Notices()
        self.door = Door(self._pages, self._people, self._notices)
        self._board = Board(settings.store)
        self._drawn = Drawn(settings.shop)
        self._worker = Worker(settings.store, settings.shop, settings.templates)

    # ---- what waits

    async def waiting(self, request: Request) -> Response:
        """What waits, most urgent first."""
        if shut := self.door.shut_out(request):
            return shut
        return await run_in_threadpool(self._waiting, request)

    def _waiting(self, request: Request) -> Response:
        wanted = Wanted.of(request.query_params)
        waiting = self._board.waiting()
        chosen = waiting.chosen(wanted)
        told = request.query_params.get("from", "0")
        start = int(told) if told.isdecimal() and len(told) < 8 else 0
        start = min(start, max(0, len(chosen) - 1)) // A_PAGE * A_PAGE
        with self._settings.store.reading() as book:
            approved = book.numbers(State.APPROVED)
        return self._pages.page(
            "waiting",
            waiting=waiting,
            wanted=wanted,
            lines=chosen[start : start + A_PAGE],
            start=start,
            page=A_PAGE,
            found=len(chosen),
            answers=[one for one in ORDER if waiting.answers.get(one)],
            approved=approved,
            today=datetime.now(self._settings.shop.zone).date(),
            zone=self._settings.shop.zone,
            **self.door.common(request),
        )

    async def deliver(self, request: Request) -> Response:
        """Lay all approved drafts down."""
        if shut := self.door.shut_out(request):
            return shut
        return await run_in_threadpool(self._deliver)

    def _deliver(self) -> Response:
        shop = self._settings.shop
        sender = Address(name=shop.reply_name, address=shop.reply_address or "")
        with self._settings.target() as target:
            done = desk.deliver(self._settings.store, target, sender)
        told = [f"Inquiry {one.inquiry}: the draft lies in {one.place}." for one in done.delivered]
        told += [one.note for one in done.delivered] + [one.why for one in done.left]
        return self._on("/", {}, *(told or ["There was no approved draft to lay down."]))

    # ---- one inquiry

    async def inquiry(self, request: Request) -> Response:
        """One inquiry; a form of it is carried out."""
        if shut := self.door.shut_out(request):
            return shut
        number: int = request.path_params["number"]
        if request.method != "POST":
            return await run_in_threadpool(self._show, request, number)
        form = await form_of(request)
        return await run_in_threadpool(self._work, request, number, form, self._worker.work)

    async def set_aside(self, request: Request) -> Response:
        """An inquiry put away with a reason."""
        if shut := self.door.shut_out(request):
            return shut
        number: int = request.path_params["number"]
        form = await form_of(request)
        return await run_in_threadpool(self._work, request, number, form, self._worker.set_aside)

    def _work(
        self,
        request: Request,
        number: int,
        form: Mapping[str, str],
        act: Callable[[int, Mapping[str, str], str], Outcome],
    ) -> Response:
        name = self._people.who(request.cookies)
        try:
            name = name or self._people.named(form.get("by", ""))
        except NoNameError as error:
            return self._show(request, number, form, Outcome(refused=str(error)))
        wanted = Wanted.of(request.query_params)
        after = self._board.waiting().around(number, wanted)[1]
        outcome = act(number, form, name)
        if outcome.status:
            answer = self._show(request, number, form, outcome)
        elif outcome.approved or outcome.set_aside:
            path = f"/inquiry/{after}" if after else "/"
            answer = self._on(path, wanted.query(), *outcome.told)
        else:
            answer = self._on(f"/inquiry/{number}", wanted.query(), *outcome.told)
        self._people.remember(answer, name)
        return answer

    def _show(
        self,
        request: Request,
        number: int,
        form: Mapping[str, str] | None = None,
        outcome: Outcome | None = None,
    ) -> Response:
        outcome = outcome or Outcome()
        store, shop = self._settings.store, self._settings.shop
        inquiry = desk.show(store, number)
        typed = {} if outcome.meanwhile or form is None else form
        wanted = Wanted.of(request.query_params)
        before, after = self._board.waiting().around(number, wanted)
        common = self.door.common(request)
        kept = ""
        if outcome.meanwhile and form is not None and "body" in form:
            subject, body = words_of(form, inquiry)
            draft = inquiry.draft
            if draft is None or (draft.subject, draft.body) != (subject, body):
                kept = f"{subject}\n\n{body}"
        return self._pages.page(
            "inquiry",
            status=outcome.status or 200,
            sheet=sheet_of(inquiry, desk.history(store, number), shop, typed, outcome.wrong),
            outcome=outcome,
            kept=kept,
            why=typed.get("why", ""),
            wanted=wanted,
            before=before,
            after=after,
            longest=LONGEST,
            **common,
        )

    async def picture(self, request: Request) -> Response:
        """A picture of one size as it is judged now."""
        if shut := self.door.shut_out(request):
            return shut
        return await run_in_threadpool(self._picture, request)

    def _picture(self, request: Request) -> Response:
        number, size = request.path_params["number"], request.path_params["size"]
        inquiry = desk.show(self._settings.store, number)
        which = request.path_params["which"]
        if (which != "bend" and which != "limits") or not 1 <= size <= len(inquiry.assessments):
            raise HTTPException(404)
        judged = inquiry.assessments[size - 1]
        drawn = self._drawn.answer(judged, which, number, inquiry.version, size - 1)
        if drawn is None:
            raise HTTPException(404)
        return drawn

    # ---- what went wrong, and where next

    def _on(self, path: str, query: dict[str, str], *told: str) -> RedirectResponse:
        if told:
            query = {**query, "told": self._notices.keep(*told)}
        return RedirectResponse(with_query(path, query), 303)

    async def nowhere(self, request: Request, _: Exception) -> Response:
        """No such page."""
        return self._fault(request, 404, "There is no such page here.")

    async def too_much(self, request: Request, _: Exception) -> Response:
        """A form with more fields than any page of ours has."""
        return self._fault(request, 413, "That form has more fields than a page here.")

    async def unknown(self, request: Request, error: Exception) -> Response:
        """No such inquiry."""
        told = str(error).partition(":")[0]  # what follows is for the command line
        return self._fault(request, 404, f"{told}.")

    async def refused(self, request: Request, error: Exception) -> Response:
        """The store, the mailbox or the desk can't do it; the sentence says why."""
        return self._fault(request, 503, str(error))

    async def broken(self, request: Request, _: Exception) -> Response:
        """A fault of our own; Starlette hands it on to where the program's complaints go."""
        sentence = (
            "The program itself has a fault here, and what you asked for was not done. What it was "
            "stands where the page was started."
        )
        return self._fault(request, 500, sentence)

    def _fault(self, request: Request, status: int, sentence: str) -> Response:
        return self._pages.page(
            "fault", status=status, sentence=sentence, **self.door.common(request)
        )
