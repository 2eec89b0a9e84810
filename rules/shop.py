"""The shop: who it is, its limits, its shelf. Read from a folder that the owner edits.

The folder holds shop.toml, catalogue.csv (mandrels), dies.csv and, if the shop has a ball chart,
balls.csv. Limits and clearances are this shop's own and live there with their reason, never in
code.
"""

from __future__ import annotations

import shutil
from collections.abc import Callable, Iterable, Mapping
from datetime import tzinfo
from functools import lru_cache
from pathlib import Path
from typing import TYPE_CHECKING, TypeVar

from .ball_chart import BallChart, BallRow, ball_faults
from .shelf import CatalogueMandrel, Die, die_faults, mandrel_faults
from .shop_files import (
    ShopFault,
    ShopFaults,
    read_table,
    read_text,
    read_toml,
    validated,
    validated_rows,
)
from .shop_settings import ShopSettings, zone_of

if TYPE_CHECKING:
    from importlib.resources.abc import Traversable

__all__ = [
    "CannotMakeShop",
    "CatalogueMandrel",
    "Die",
    "Shop",
    "ShopFault",
    "ShopFaults",
    "load_shop",
    "sample_shop",
    "write_new_shop",
]

SHOP_TOML, CATALOGUE_CSV, DIES_CSV = "shop.toml", "catalogue.csv", "dies.csv"
BALLS_CSV = "balls.csv"
"""A shop may have no ball chart; then no number of balls is named."""
_SAMPLE = Path(__file__).with_name("sample_shop")

Item = TypeVar("Item", CatalogueMandrel, Die, BallRow)


class CannotMakeShop(Exception):
    """A new shop folder that can't be made; the message says why."""


class Shop(ShopSettings):
    """The shop as the rules and the drafts know it."""

    catalogue: tuple[CatalogueMandrel, ...] = ()
    dies: tuple[Die, ...] = ()
    balls: BallChart = BallChart()
    folder: Path | None = None
    """The owner's folder, for what stands beside the files; None for the sample shop."""

    @property
    def zone(self) -> tzinfo:
        """The shop's time zone: what 'today' and a week mean here."""
        zone = zone_of(self.time_zone)
        assert zone is not None, "checked when the shop was read"
        return zone


def load_shop(folder: Traversable) -> Shop:
    """The shop described in ``folder`` (a Path, or a folder inside a package).

    Raises ShopFaults with every fault of all its files.
    """
    if not folder.is_dir():
        raise ShopFaults([ShopFault(file=str(folder), text="there is no such shop folder")])
    faults: list[ShopFault] = []
    settings = _settings(folder, faults)
    catalogue = _table(folder, CATALOGUE_CSV, CatalogueMandrel, mandrel_faults, faults)
    dies = _table(folder, DIES_CSV, Die, die_faults, faults)
    balls: tuple[BallRow, ...] = ()
    if folder.joinpath(BALLS_CSV).is_file():
        balls = _table(folder, BALLS_CSV, BallRow, ball_faults(), faults)
    if faults or settings is None:
        files = (SHOP_TOML, CATALOGUE_CSV, DIES_CSV, BALLS_CSV)
        raise ShopFaults(sorted(faults, key=lambda f: (files.index(f.file), f.row or 0)))
    return Shop(
        **dict(settings),
        catalogue=catalogue,
        dies=dies,
        balls=BallChart(rows=balls),
        folder=folder if isinstance(folder, Path) else None,
    )


@lru_cache(maxsize=1)
def sample_shop() -> Shop:
    """The invented shop that comes with the package."""
    return load_shop(_SAMPLE).model_copy(update={"folder": None})


def _settings(folder: Traversable, faults: list[ShopFault]) -> ShopSettings | None:
    text = read_text(folder, SHOP_TOML, faults)
    data = None if text is None else read_toml(text, SHOP_TOML, faults)
    if text is None or data is None:
        return None
    return validated(ShopSettings, data, text, SHOP_TOML, faults)


def _table(
    folder: Traversable,
    name: str,
    model: type[Item],
    inconsistencies: Callable[[Mapping[str, str]], Iterable[tuple[str, str]]],
    faults: list[ShopFault],
) -> tuple[Item, ...]:
    text = read_text(folder, name, faults)
    if text is None:
        return ()
    columns = tuple(field.alias or key for key, field in model.model_fields.items())
    rows = read_table(text, columns, name, faults)
    return validated_rows(model, rows, name, faults, inconsistencies)


def write_new_shop(target: Path) -> None:
    """A new shop folder at ``target``, a copy of the sample shop for the owner to edit.

    Raises CannotMakeShop where something is there already, or nothing can be written.
    """
    try:
        if target.is_dir() and any(target.iterdir()):
            raise CannotMakeShop(f"{target} is not empty; name a folder that is new or empty.")
        if target.exists() and not target.is_dir():
            raise CannotMakeShop(f"{target} is a file; name a folder that is new or empty.")
        target.mkdir(parents=True, exist_ok=True)
        for name in (SHOP_TOML, CATALOGUE_CSV, DIES_CSV, BALLS_CSV):
            shutil.copyfile(_SAMPLE / name, target / name)
    except OSError as error:
        raise CannotMakeShop(f"{target} can't be made: {error.strerror or error}.") from error
