"""A customer's further messages: one inquiry, its fields filled or replaced, nothing in silence."""

from __future__ import annotations

from decimal import Decimal
from pathlib import Path

import pytest

from bendreply.intake import desk
from bendreply.intake.cli import main
from bendreply.intake.inquiry import Inquiry, State
from bendreply.intake.store import open_store

from ..servers.postgres import PASSWORD

FIRST = "Please quote a mandrel for 1.75 in OD, 5.25 in CLR."  # neither wall nor material
WHOLE = "Please quote a mandrel for 1.75 in OD x .095 in wall DOM, 5.25 in CLR."
BY = ("--by", "Robin Ashdown")


class Desk:
    """A shop folder, and customers' mail that comes in one by one."""

    def __init__(self, folder: Path, where: str | Path, capsys: pytest.CaptureFixture[str]) -> None:
        self.folder, self.where, self.capsys, self.count = folder, where, capsys, 0
        assert main(["shop", "new", str(folder)]) == 0
        with (folder / "shop.toml").open("a", encoding="utf-8") as toml:
            if isinstance(where, Path):
                toml.write(f'\n[store]\npath = "{where}"\n')
            else:  # no password in that file
                url = where.replace(f":{PASSWORD}@", "@")
                toml.write(f'\n[store]\nurl = "{url}"\npassword_env = "STORE_PASSWORD"\n')

    def run(self, *call: str) -> str:
        self.capsys.readouterr()
        assert main(["--shop", str(self.folder), *call]) == 0
        return self.capsys.readouterr().out

    def comes(self, body: str, *, sender: str = "ada", day: int = 16, **fields: str) -> str:
        """A mail with id m1, m2 ... comes in; what the command said."""
        self.count += 1
        head = {
            "From": f"{sender.title()} <{sender}@example.net>",
            "To": "sales@fernhollow.example.com",
            "Subject": "Mandrel",
            "Date": f"{day} Nov 2026 10:{self.count:02}:00 +0000",
            "Message-ID": f"<m{self.count}@example.net>",
        } | {name.replace("_", "-"): value for name, value in fields.items()}
        text = "".join(f"{name}: {value}\n" for name, value in head.items())
        file = self.folder / f"{self.count}.eml"
        file.write_text(f"{text}\n{body}\n", "utf-8")
        return self.run("collect", str(file))

    def inquiries(self) -> list[Inquiry]:
        with open_store(self.where) as store:
            return [desk.show(store, one.id) for one in desk.askings(store)]

    def one(self) -> Inquiry:
        (inquiry,) = self.inquiries()
        return inquiry


@pytest.fixture
def shop(
    tmp_path: Path,
    where: str | Path,
    capsys: pytest.CaptureFixture[str],
    monkeypatch: pytest.MonkeyPatch,
) -> Desk:
    """A shop with its store in a file, and one with its store on PostgreSQL."""
    monkeypatch.setenv("STORE_PASSWORD", PASSWORD)
    return Desk(tmp_path / "shop", where, capsys)


def lengths(inquiry: Inquiry) -> list[tuple[Decimal | None, ...]]:
    """OD, wall, CLR of each size, in mm."""
    sizes = [one.request for one in inquiry.assessments]
    return [(one.od_mm, one.wall_mm, one.clr_mm) for one in sizes]


def mm(*inches: str) -> tuple[Decimal, ...]:
    return tuple(Decimal(one) * Decimal("25.4") for one in inches)


REPLY = {"Subject": "Re: Mandrel", "In_Reply_To": "<m1@example.net>"}


def test_an_answer_fills_what_was_missing_and_is_drafted_anew(shop: Desk) -> None:
    shop.comes(FIRST)
    assert shop.one().decision == "ask"
    said = shop.comes("wall is .065, 4130", **REPLY)
    assert "1 joined to earlier inquiries" in said
    inquiry = shop.one()
    assert lengths(inquiry) == [mm("1.75", "0.065", "5.25")]
    (request,) = (one.request for one in inquiry.assessments)
    assert (request.grade, request.doubts) == ("4130", ())
    assert inquiry.decision != "ask"
    assert [one.withdrawn for one in inquiry.drafts] == [True, False]
    assert "0.065 in" in inquiry.draft.body
    # Evidence of each figure slices back to the message that it stands in.
    texts = {one.message.message_id: one.message.text for one in inquiry.messages}
    for seen in request.evidence:
        text = texts[seen.message_id or inquiry.message.message_id]
        assert text[seen.start : seen.end] == seen.surface


@pytest.mark.parametrize(
    ("first", "answer", "expected", "doubtful"),
    [
        ("1.75 x .095, DOM. One mandrel please.", "5.25 in", ("1.75", "0.095", "5.25"), ["clr"]),
        (FIRST, "1. .065\n2. 4130 steel", ("1.75", "0.065", "5.25"), ["wall"]),
        (WHOLE, "Sorry, the CLR should be 6 in, not 5.25.", ("1.75", "0.095", "6"), []),
        (WHOLE, "The wall is .083.", ("1.75", "0.083", "5.25"), ["wall"]),
        (WHOLE, "We would like it soon.", ("1.75", "0.095", "5.25"), []),
    ],
    ids=["bare", "numbered", "corrected", "differs", "no-size"],
)
def test_what_an_answer_does_to_the_fields(
    shop: Desk, first: str, answer: str, expected: tuple[str, ...], doubtful: list[str]
) -> None:
    shop.comes(first)
    shop.comes(answer, **REPLY)
    inquiry = shop.one()
    assert lengths(inquiry) == [mm(*expected)]
    assert [one.field for one in inquiry.assessments[0].request.doubts] == doubtful


def test_a_further_size_is_added_and_the_first_one_stands(shop: Desk) -> None:
    shop.comes(WHOLE)
    shop.comes("Also a mandrel for 2 in OD x .120 wall DOM, 6 in CLR please.", **REPLY)
    assert lengths(shop.one()) == [mm("1.75", "0.095", "5.25"), mm("2", "0.120", "6")]


def test_a_figure_for_no_size_in_particular_is_not_guessed_at(shop: Desk) -> None:
    shop.comes("Mandrels for 1.75 OD x .095 x 5.25 CLR and 2 OD x .120 x 6 CLR, all DOM.")
    before = lengths(shop.one())
    shop.comes("The wall is .083.", **REPLY)
    assert lengths(shop.one()) == before
    assert "it is not clear for which size" in shop.run("show", "1").replace("\n", " ")


def test_an_approval_is_withdrawn_when_the_customer_writes_again(shop: Desk) -> None:
    shop.comes(WHOLE)
    shop.run("approve", "1", *BY)
    assert "approval by Robin Ashdown" in shop.comes("Make the CLR 6 in instead.", **REPLY)
    assert shop.one().state is State.WAITING
    assert shop.run("deliver").startswith("Nothing to lay down")


def test_a_draft_laid_before_the_customer_wrote_again_is_replaced(shop: Desk) -> None:
    shop.comes(WHOLE)
    shop.run("approve", "1", *BY)
    shop.run("deliver")
    assert "don't send it as it is" in shop.comes("Make the CLR 6 in instead.", **REPLY)
    shop.run("approve", "1", *BY)
    shop.run("deliver")
    (file,) = (shop.folder / "drafts").glob("*.eml")
    assert "6 in (152.4 mm) CLR" in file.read_text("utf-8")


def test_uses_named_before_still_count(shop: Desk) -> None:
    shop.comes(f"{FIRST} It is for a roll cage.")
    caution = [word for word in shop.one().draft.body.split() if word.startswith("cage")]
    assert caution
    shop.comes("wall is .095, DOM", **REPLY)
    assert "cage" in shop.one().draft.body


@pytest.mark.parametrize(
    ("body", "fields", "joins"),
    [
        ("wall is .095, DOM", {"Subject": "AW: Mandrel"}, True),
        (FIRST, {"Subject": "Mandrel"}, True),  # the same words once more
        ("> " + FIRST, {"Subject": "Fwd: Mandrel", "sender": "kit"}, True),
        ("wall is .095, DOM", {"Subject": "Re: Mandrel", "sender": "bo"}, False),
        (WHOLE, {"Subject": "Mandrel"}, False),  # another enquiry of the same customer
        (WHOLE, {"Subject": "Re: Header"}, False),
        (FIRST, {"Subject": "Mandrel", "Reply_To": "other@example.org"}, False),
    ],
    ids=["subject", "twice", "forward", "other-sender", "new", "other-subject", "web-form"],
)
def test_without_a_reference_words_or_subject_tell(
    shop: Desk, body: str, fields: dict[str, str], joins: bool
) -> None:
    shop.comes(FIRST)
    shop.comes(body, **fields)
    assert len(shop.inquiries()) == (1 if joins else 2)


def test_what_only_the_subject_joins_is_put_for_a_yes(shop: Desk) -> None:
    shop.comes(FIRST)
    said = shop.comes("wall is .095, DOM", Subject="Re: Mandrel")
    assert "by sender and subject only" in said
    request = shop.one().assessments[0].request
    assert {"od", "clr"} <= {one.field for one in request.doubts}
    assert shop.one().decision == "ask"


def test_a_copy_changes_nothing(shop: Desk) -> None:
    shop.comes(FIRST)
    shop.run("approve", "1", *BY)
    before = shop.one()
    shop.comes(FIRST, Subject="Mandrel")
    after = shop.one()
    assert (after.state, after.version, after.draft) == (before.state, before.version, before.draft)
    assert after.message == before.message


def test_same_as_last_time_finds_the_last_size_and_asks(shop: Desk) -> None:
    shop.comes(WHOLE, day=2)
    shop.comes("Same as last time please, 2 mandrels.", day=20, Subject="Reorder")
    _, again = shop.inquiries()
    assert lengths(again) == [mm("1.75", "0.095", "5.25")]
    doubts = again.assessments[0].request.doubts
    assert {one.field for one in doubts} == {"od", "wall", "clr", "material"}
    assert "your request of 2 November 2026" in doubts[0].why
    assert again.decision == "ask"


def test_same_as_last_time_of_a_stranger_finds_nothing(shop: Desk) -> None:
    shop.comes(WHOLE, day=2)
    shop.comes("Same as last time please.", sender="bo", Subject="Reorder")
    assert shop.inquiries()[1].assessments == () or lengths(shop.inquiries()[1]) == [(None,) * 3]


def test_the_first_message_may_come_in_last(shop: Desk) -> None:
    shop.comes("wall is .095, DOM", Subject="Re: Mandrel", In_Reply_To="<m2@example.net>")
    said = shop.comes(FIRST)
    assert "came in only now" in said
    assert shop.one().message.message_id == "m1@example.net"


def test_our_own_mail_is_never_taken_for_the_customers(shop: Desk) -> None:
    shop.comes(WHOLE)
    ours = {"From": "Shop <sales@fernhollow.example.com>"}
    shop.comes("Your 1.75 x .083 mandrel is on the shelf.", **REPLY, **ours)
    inquiry = shop.one()
    assert lengths(inquiry) == [mm("1.75", "0.095", "5.25")]
    assert inquiry.message.sender.address == "ada@example.net"
