"""The reply templates: ours, each replaced by the shop's own file of that name where it has one.

Jinja2 in its sandbox. A variable that does not exist is an error, never an empty place in a letter.
What a customer wrote is only ever a value: it is not read as a template, so "{{ ... }}" in a mail
stays those characters. Jinja2 is imported on first rendering (it costs more than reading a mail).
"""

from __future__ import annotations

import re
from collections.abc import Mapping
from functools import cached_property, lru_cache
from importlib import resources
from pathlib import Path
from typing import TYPE_CHECKING

from .answers import Answer, BadAnswer, parse_answer

if TYPE_CHECKING:
    from jinja2.sandbox import SandboxedEnvironment

PACKAGE = "bendreply.reply_templates"
FOLDER = "reply_templates"
"""Name of the folder, in a shop folder, that holds what differs."""
ANSWERS = "answers"
SUFFIX = ".j2"
ANSWER_SUFFIX = ".md"


class BadTemplate(ValueError):
    """A reply template or answer that can't be used: one sentence with its file and line."""

    def __init__(self, file: str, line: int | None, why: str) -> None:
        self.file, self.line, self.why = file, line, why
        place = f"{FOLDER}/{file}" if file else FOLDER
        super().__init__(f"{place}, line {line}: {why}" if line else f"{place}: {why}")


class EndlessTemplate(BadTemplate):
    """One that takes too long to fill in, or gives too much: trying again takes as long."""


class Templates:
    """The wording in force for one shop. Read once; make a new one after the owner's edits."""

    def __init__(self, shop_folder: Path | None = None) -> None:
        """``shop_folder`` is the folder with shop.toml in it; None means our own wording only."""
        self._own = shop_folder / FOLDER if shop_folder else None

    def text(self, file: str) -> str | None:
        """The text of ``file`` ('stock.j2', 'answers/wall-factor.md'), the shop's before ours.

        None where there is no such file. Raises BadTemplate where it can't be read.
        """
        if ".." in file.split("/") or file.startswith("/"):
            return None
        places = [resources.files(PACKAGE).joinpath(file)]
        if self._own:
            places.insert(0, self._own / file)
        for place in places:
            if place.is_dir():
                raise BadTemplate(file, None, "it is a folder, not a file.")
            if place.is_file():
                try:
                    return place.read_text(encoding="utf-8")
                except UnicodeDecodeError as error:
                    raise BadTemplate(file, None, "it is not UTF-8 text.") from error
                except OSError as error:
                    raise BadTemplate(file, None, f"it can't be read: {error.strerror}.") from error
        return None

    def files(self, suffix: str, below: str = "") -> tuple[str, ...]:
        """Names of all files in force that end with ``suffix``, ours and the shop's, sorted."""
        ours = resources.files(PACKAGE).joinpath(below) if below else resources.files(PACKAGE)
        names = {place.name for place in ours.iterdir()}
        if self._own and (own := self._own / below).is_dir():
            names |= {place.name for place in own.iterdir()}
        prefix = f"{below}/" if below else ""
        wanted = sorted(n for n in names if n.endswith(suffix) and not n.startswith("."))
        return tuple(prefix + name for name in wanted)

    @cached_property
    def answers(self) -> tuple[Answer, ...]:
        """All approved answers. Raises BadTemplate for the first that can't be used."""
        return tuple(self.answer(file) for file in self.files(ANSWER_SUFFIX, ANSWERS))

    def answer(self, file: str) -> Answer:
        """The answer in ``file`` ('answers/wall-factor.md'). Raises BadTemplate."""
        name = file.removeprefix(f"{ANSWERS}/").removesuffix(ANSWER_SUFFIX)
        text = self.text(file)
        if text is None:
            raise BadTemplate(file, None, "there is no such answer.")
        try:
            return parse_answer(name, text)
        except BadAnswer as error:
            raise BadTemplate(file, None, str(error)) from error

    def render(self, file: str, facts: Mapping[str, object]) -> str:
        """``file`` filled with ``facts``. Raises BadTemplate for any fault in a template."""
        from jinja2 import TemplateError, TemplateNotFound, TemplateSyntaxError, UndefinedError

        from .template_limits import PastLimit, fill

        try:
            return tidy(fill(self.environment.get_template(file), facts))
        except BadTemplate:
            raise  # a file that our loader refused: already named, with its reason
        except TemplateSyntaxError as error:
            raise BadTemplate(error.name or file, error.lineno, f"{error.message}.") from error
        except TemplateNotFound as error:
            raise BadTemplate(file, None, f"there is no template {error.name!r}.") from error
        except UndefinedError as error:
            raise BadTemplate(*_place(error, file), _unknown(str(error.message))) from error
        except PastLimit as error:
            place = _place(error, file)
            raise EndlessTemplate(*place, f"it can't be filled in: {error}.") from error
        except RecursionError as error:
            why = "it can't be filled in: it includes or calls itself without end."
            raise EndlessTemplate(file, None, why) from error
        except (TemplateError, ArithmeticError, LookupError, TypeError, ValueError) as error:
            raise BadTemplate(*_place(error, file), f"it can't be filled in: {error}.") from error

    @cached_property
    def environment(self) -> SandboxedEnvironment:
        """Sandboxed and strict; loads reply templates and the bodies of answers only."""
        from jinja2 import FunctionLoader, StrictUndefined

        from .template_limits import LimitedEnvironment

        return LimitedEnvironment(
            loader=FunctionLoader(self._source),
            undefined=StrictUndefined,
            autoescape=False,  # replies are plain text: "&amp;" in one would be wrong
            trim_blocks=True,
            lstrip_blocks=True,
            auto_reload=False,
        )

    def _source(self, file: str) -> tuple[str, str, None] | None:
        """What jinja2 asks of a loader: text, file name for tracebacks, nothing to reload."""
        if file.startswith(f"{ANSWERS}/"):
            answer = self.answer(file)
            # Blank lines instead of the settings, so that a fault names the file's own line.
            return "\n" * (answer.body_line - 1) + answer.body, f"{FOLDER}/{file}", None
        text = self.text(file)
        return None if text is None else (text, f"{FOLDER}/{file}", None)


def _unknown(told: str) -> str:
    """Jinja2's words for a missing variable in the owner's: no Python types."""
    if name := re.fullmatch(r"'(\w+)' is undefined", told):
        return f"there is no variable '{name[1]}'."
    if name := re.fullmatch(r"'([\w.]+\.(\w+?)(?:Words)?) object' has no attribute '(\w+)'", told):
        return f"'{name[2].lower()}' has no '{name[3]}'."
    return f"unknown variable: {told}."


def _place(error: BaseException, file: str) -> tuple[str, int | None]:
    """Template and line that raised: jinja2 rewrites its tracebacks to name them."""
    found: tuple[str, int | None] = (file, None)
    trace = error.__traceback__
    while trace is not None:
        name = trace.tb_frame.f_code.co_filename
        if name.startswith(f"{FOLDER}/"):
            found = (name.removeprefix(f"{FOLDER}/"), trace.tb_lineno)
        trace = trace.tb_next
    return found


def tidy(text: str) -> str:
    """Rendered text without trailing spaces, and never more than one blank line in a row."""
    lines = "\n".join(line.rstrip() for line in text.split("\n"))
    return re.sub(r"\n{3,}", "\n\n", lines).strip() + "\n"


@lru_cache(maxsize=8)
def default_templates() -> Templates:
    """Our own wording, without any shop's changes."""
    return Templates()
