"""Secrets of shop.toml, which stay outside it: each is a variable's name, or a command to ask."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any, Self

from pydantic import model_validator

from .request import Frozen

_KINDS = ("secret", "password", "token")


class WithSecret(Frozen):
    """A part of the settings with one secret, named by one of its ``..._env`` and ``..._command``.

    A secret that is written into the file itself is refused with how to name it instead.
    """

    @model_validator(mode="before")
    @classmethod
    def _no_secret_here(cls, data: Any) -> Any:
        if isinstance(data, Mapping):
            for kind in _KINDS:
                if kind in data and f"{kind}_env" in cls.model_fields:
                    raise ValueError(
                        f"a {kind} doesn't belong in this file: name a variable ({kind}_env) or a "
                        f"command ({kind}_command)"
                    )
        return data

    @model_validator(mode="after")
    def _one_secret(self) -> Self:
        keys = [key for key in type(self).model_fields if key.endswith(("_env", "_command"))]
        given = [key for key in keys if getattr(self, key) is not None]
        if len(given) != 1:
            raise ValueError(f"give exactly one of {', '.join(keys)}")
        if getattr(self, given[0]) == ():
            raise ValueError(f"{given[0]} is empty: give the command and its arguments")
        return self
