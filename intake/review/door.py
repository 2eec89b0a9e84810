"""The door: who is at the page, and what of a request is taken in: numbers and forms."""

from __future__ import annotations

from typing import Any
from urllib.parse import parse_qsl

from starlette.convertors import IntegerConvertor, register_url_convertor
from starlette.exceptions import HTTPException
from starlette.requests import Request
from starlette.responses import RedirectResponse, Response

from ..desk_errors import NoNameError
from .notices import Notices
from .people import People
from .render import Pages

MOST_FIELDS = 2000


class ShortNumber(IntegerConvertor):
    """A number in an address. One of thousands of digits is no number of ours, nor of Python's."""

    regex = "[0-9]{1,10}"


SHORT = "short"
register_url_convertor(SHORT, ShortNumber())


async def form_of(request: Request) -> dict[str, str]:
    """The fields of a form as browsers send one without files; the first of a name given twice."""
    body = (await request.body()).decode("utf-8", "replace")
    try:
        pairs = parse_qsl(body, keep_blank_values=True, max_num_fields=MOST_FIELDS)
    except ValueError as error:
        raise HTTPException(413) from error
    return dict(reversed(pairs))


class Door:
    """Lets people in, and gives every page what it shows of them."""

    def __init__(self, pages: Pages, people: People, notices: Notices) -> None:
        self._pages, self._people, self._notices = pages, people, notices

    def shut_out(self, request: Request) -> Response | None:
        """Where somebody is sent who has to sign in first."""
        if self._people.need_secret and self._people.who(request.cookies) is None:
            return RedirectResponse("/who", 303)
        return None

    def common(self, request: Request) -> dict[str, Any]:
        """What every page shows: who is here, and what has to be told."""
        return {
            "who": self._people.who(request.cookies),
            "people": self._people.names,
            "notices": self._notices.take(request.query_params.get("told", "")),
        }

    async def who(self, request: Request) -> Response:
        """Say who one is, with the secret where one is needed."""
        need = self._people.need_secret
        if request.method != "POST":
            return self._pages.page("who", need=need, wrong="", **self.common(request))
        form = await form_of(request)
        right = self._people.secret_is(form.get("secret", ""))
        wrong, status = "", 403
        if right is None:
            wrong, status = "Too many wrong secrets just now: try again in a minute.", 429
        elif not right:
            wrong = "That is not the secret."
        else:
            try:
                name = self._people.named(form.get("by", ""))
            except NoNameError as error:
                wrong, status = str(error), 422
        if wrong:
            return self._pages.page(
                "who", status=status, need=need, wrong=wrong, **self.common(request)
            )
        answer = RedirectResponse("/", 303)
        self._people.remember(answer, name)
        return answer

    async def leave(self, request: Request) -> Response:  # noqa: ARG002 - Starlette hands it on
        """Forget who is here."""
        answer = RedirectResponse("/who", 303)
        self._people.forget(answer)
        return answer
