"""Starting the page: where it may listen, and what it needs there first."""

from __future__ import annotations

import socket
from pathlib import Path

import pytest

from bendreply.intake.cli import main
from bendreply.intake.review.serve import CannotServe, Place, address, checked, listen

LONG = "a long enough secret"


@pytest.mark.parametrize("host", ["0.0.0.0", "::", "192.0.2.7", "shop.example.com", ""])
def test_where_others_can_reach_it_a_secret_is_needed(host: str) -> None:
    with pytest.raises(CannotServe, match="set a secret"):
        checked(Place(host=host), None)
    with pytest.raises(CannotServe, match="too short"):
        checked(Place(host=host), "short")
    assert checked(Place(host=host), LONG) == LONG


@pytest.mark.parametrize("host", ["127.0.0.1", "127.0.0.9", "::1", "[::1]", "localhost"])
def test_on_this_computer_a_name_is_enough(host: str) -> None:
    assert checked(Place(host=host), None) is None


@pytest.mark.parametrize(
    ("place", "hosts"),
    [
        (Place(), set()),
        (Place(host="0.0.0.0"), set()),
        (Place(host="::"), set()),
        (Place(host="192.0.2.7", names=("Shop.example.com",)), {"192.0.2.7", "shop.example.com"}),
        (Place(host="2001:db8::7"), {"[2001:db8::7]"}),
    ],
)
def test_it_is_called_by_its_address_and_the_names_given(place: Place, hosts: set[str]) -> None:
    assert place.hosts == {"127.0.0.1", "localhost", "[::1]"} | hosts


def test_the_command_refuses_in_one_sentence(
    shop_folder: Path, capsys: pytest.CaptureFixture[str], monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.delenv("BENDREPLY_REVIEW_SECRET", raising=False)
    assert main(["--shop", str(shop_folder), "review", "--host", "0.0.0.0"]) == 2
    assert "BENDREPLY_REVIEW_SECRET" in capsys.readouterr().err
    with socket.create_server(("127.0.0.1", 0)) as taken:
        port = str(taken.getsockname()[1])
        assert main(["--shop", str(shop_folder), "review", "--port", port]) == 1
    assert "can't be used" in capsys.readouterr().err


def test_tls_needs_both_files(tmp_path: Path) -> None:
    file = tmp_path / "cert.pem"
    with pytest.raises(CannotServe, match="both"):
        checked(Place(certificate=file), None)
    with pytest.raises(CannotServe, match="no file"):
        checked(Place(certificate=file, key=file), None)


def test_the_address_can_be_typed_into_a_browser() -> None:
    with listen(Place(port=0)) as listening:
        port = listening.getsockname()[1]
        assert address(Place(), listening) == f"http://127.0.0.1:{port}/"
        named = Place(host="0.0.0.0", names=("shop.example.com",), certificate=Path("c"))
        assert address(named, listening) == f"https://shop.example.com:{port}/"
