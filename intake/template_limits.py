"""The sandbox that reply templates run in: no template runs on for ever or fills the memory.

Jinja2's own sandbox bounds one ``range``, not loops within loops nor "x" * 1000000000. An owner's
slip must end in a sentence, not in a program that hangs at the first mail on Monday.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from contextvars import ContextVar
from typing import Any

from jinja2 import Template, TemplateError, nodes, pass_context
from jinja2.runtime import Context
from jinja2.sandbox import ImmutableSandboxedEnvironment

MOST_STEPS = 100_000
"""Turns of loops and calls of macros while one reply is filled in; 500 sizes take some 1,200."""
LONGEST_REPLY = 1_048_576
"""Characters. A reply to 500 sizes has some 150,000."""
LARGEST_POWER = 100
_MOST_REMEMBERED = 1000

_steps: ContextVar[int] = ContextVar("_steps", default=0)
_COUNTED = "_counted"


class PastLimit(TemplateError):
    """A template ran past a limit; the message says which, in one clause."""


class LimitedEnvironment(ImmutableSandboxedEnvironment):
    """The immutable sandbox, with every loop and call counted."""

    intercepted_binops = frozenset({"*", "**"})

    def __init__(self, **options: Any) -> None:
        super().__init__(**options)
        self.filters[_COUNTED] = _counted
        self._safe: dict[tuple[type, str], bool] = {}

    def _parse(self, source: str, name: str | None, filename: str | None) -> nodes.Template:
        tree = super()._parse(source, name, filename)
        for loop in list(tree.find_all(nodes.For)):
            loop.iter = nodes.Filter(
                loop.iter, _COUNTED, [], [], None, None, lineno=loop.lineno, environment=self
            )
        return tree

    def is_safe_attribute(self, obj: Any, attr: str, value: Any) -> bool:
        """As the sandbox says, which looks at nothing but the type and the name."""
        key = (type(obj), attr)
        safe = self._safe.get(key)
        if safe is None:
            safe = super().is_safe_attribute(obj, attr, value)
            if len(self._safe) < _MOST_REMEMBERED:
                self._safe[key] = safe
        return safe

    def call(self, context: Context, obj: Any, /, *args: Any, **kwargs: Any) -> Any:
        """Call on behalf of a template: a step."""
        _step()
        return super().call(context, obj, *args, **kwargs)

    def call_binop(self, context: Context, operator: str, left: Any, right: Any) -> Any:
        """A product or power, refused where it would be endless."""
        if operator == "**" and max(abs(left), abs(right)) > LARGEST_POWER:
            raise PastLimit(f"a power of more than {LARGEST_POWER}")
        for many, times in ((left, right), (right, left)):
            if isinstance(many, str | list | tuple) and len(many) * times > LONGEST_REPLY:
                raise PastLimit(f"it repeats something to more than {LONGEST_REPLY} characters")
        return super().call_binop(context, operator, left, right)


def fill(template: Template, facts: Any) -> str:
    """The template filled in. Raises PastLimit where it takes too long or grows too large."""
    count = _steps.set(0)
    parts, length = [], 0
    try:
        for part in template.generate(facts):
            parts.append(part)
            length += len(part)
            if length > LONGEST_REPLY:
                raise PastLimit(f"it gives more than {LONGEST_REPLY} characters")
    finally:
        _steps.reset(count)
    return "".join(parts)


# With the context, for jinja2 would otherwise run loops over constants once, when compiling.
@pass_context
def _counted(_: Context, values: Iterable[Any]) -> Iterator[Any]:
    for value in values:
        _step()
        yield value


def _step() -> None:
    count = _steps.get() + 1
    if count > MOST_STEPS:
        raise PastLimit(f"it takes more than {MOST_STEPS} turns of loops: does one never end?")
    _steps.set(count)
