"""Shop files written with faults, and the sentences that name them."""

from __future__ import annotations

from pathlib import Path

import pytest

from bendreply.rules.shop import ShopFaults, load_shop

HEADER = (
    "part,tube_od,tube_wall_min,tube_wall_max,mandrel_diameter,balls,surface,"
    "clr_min,clr_max,on_hand,price"
)
GOOD = "M1,1.5 in,0.118 in,0.121 in,1.253 in,1,chromed tool steel,3.75 in,9 in,2,"


def faults_of(folder: Path) -> list[str]:
    with pytest.raises(ShopFaults) as raised:
        load_shop(folder)
    return [str(fault) for fault in raised.value.faults]


def edit(folder: Path, name: str, old: str, new: str) -> None:
    text = (folder / name).read_text("utf-8")
    assert old in text
    (folder / name).write_text(text.replace(old, new, 1), "utf-8")
