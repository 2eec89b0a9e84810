"""A person's corrections and rewording at the desk: drafted anew, and nothing lost in silence."""

from __future__ import annotations

from datetime import date
from decimal import Decimal

import pytest

from bendreply.intake import desk, desk_errors
from bendreply.intake.desk_fields import corrected
from bendreply.intake.inquiry import State
from bendreply.intake.model import Kind
from bendreply.intake.store import Store
from bendreply.rules.assessment import Decision
from bendreply.rules.request import Doubt, Evidence, Material, SizeRequest

from .desk_support import correct, taken


def test_a_corrected_wall_is_decided_and_drafted_anew(store: Store, make_result) -> None:
    number = taken(store, make_result())
    changed = correct(store, number, {"wall": Decimal("1.650")})
    shown = desk.show(store, number)
    assert shown == changed.inquiry
    assert repr(shown.assessments[0].request.wall_mm) == "Decimal('1.65')"
    assert (shown.decision, shown.state) == ("decline", State.WAITING)
    assert [(one.number, one.withdrawn) for one in shown.drafts] == [(1, True), (2, False)]
    assert shown.draft is not None
    assert shown.draft.body == "wall 1.65 mm"
    (made,) = shown.corrections
    assert (made.index, made.field, made.before, made.after, made.by) == (
        0, "wall", "2.413", "1.65", "Ann",
    )  # fmt: skip


def test_a_correction_settles_the_doubt_and_drops_the_words_it_overrules() -> None:
    request = SizeRequest(
        od_mm=Decimal("48.26"),
        wall_mm=Decimal("3.683"),
        nominal_pipe="NPS 1-1/2 schedule 40",
        doubts=(
            Doubt(field="od", readings=(Decimal("48.26"), Decimal("38.1")), why="pipe or tube"),
            Doubt(field="clr", readings=(Decimal("152.4"),), why="given as a limit"),
        ),
        evidence=(
            Evidence(field="od", start=0, end=5, surface="1-1/2"),
            Evidence(field="wall", start=6, end=12, surface="sch 40"),
        ),
    )
    tube = corrected(request, {"od": Decimal("38.1")})
    assert [one.field for one in tube.doubts] == ["clr"]
    assert [one.field for one in tube.evidence] == ["wall"]
    assert tube.nominal_pipe is None
    pipe = corrected(request, {"od": Decimal("48.26")})
    assert [one.field for one in pipe.doubts] == ["clr"]
    assert [one.field for one in pipe.evidence] == ["od", "wall"]
    assert pipe.nominal_pipe == "NPS 1-1/2 schedule 40"


def test_several_sizes_only_the_named_one_changes(store: Store, make_result) -> None:
    number = taken(store, make_result(decisions=(Decision.STOCK, Decision.STOCK)))
    correct(store, number, {"wall": Decimal(1), "material": Material.TITANIUM}, 1)
    first, second = (one.request for one in desk.show(store, number).assessments)
    assert (first.wall_mm, first.material) == (Decimal("2.413"), Material.CARBON_STEEL)
    assert (second.wall_mm, second.material) == (Decimal(1), Material.TITANIUM)


def test_a_date_put_right_moves_the_inquiry_up(store: Store, make_result) -> None:
    taken(store, make_result("ana"))
    number = taken(store, make_result("bo"))
    correct(store, number, {"needed_by": date(2026, 11, 27)})
    assert [row.id for row in desk.backlog(store)] == [number, 1]


@pytest.mark.parametrize(
    ("changes", "index", "sentence"),
    [
        ({"wall": Decimal(1)}, 1, "inquiry 1 has 1 size: there is no size 2"),
        ({"wall": Decimal(1)}, -1, "there is no size 0"),
        ({"colour": "blue"}, 0, "there is no field 'colour': the fields are od, wall, clr, "),
        ({"wall": Decimal(0)}, 0, "wall can't be 0 mm: it has to be more than 0"),
        ({"wall": Decimal("NaN")}, 0, "wall can't be NaN: "),
        ({"material": "cheese"}, 0, "material can't be cheese: "),
        ({"quantity": "a few"}, 0, "quantity can't be a few: "),
    ],
)
def test_an_impossible_correction_is_refused_in_one_sentence(
    store: Store, make_result, changes, index: int, sentence: str
) -> None:
    number = taken(store, make_result())
    before = desk.show(store, number)
    with pytest.raises(desk_errors.BadCorrectionError) as refused:
        correct(store, number, changes, index)
    assert sentence in str(refused.value)
    assert "\n" not in str(refused.value)
    assert desk.show(store, number) == before


def test_the_same_correction_twice_changes_nothing(store: Store, make_result) -> None:
    number = taken(store, make_result())
    once = correct(store, number, {"wall": Decimal(1)})
    twice = correct(store, number, {"wall": Decimal("1.0")})
    assert twice.told == ("inquiry 1 says so already (wall): nothing was changed",)
    assert desk.show(store, number) == once.inquiry


def test_after_approval_a_correction_withdraws_it_and_says_so(store: Store, make_result) -> None:
    number = taken(store, make_result())
    desk.approve(store, number, "Ann")
    changed = correct(store, number, {"wall": Decimal(1)})
    assert changed.told == (
        "the approval by Ann of 2026-11-25 09:02 UTC was withdrawn, since a reading was corrected: "
        "the draft waits for approval again",
    )
    assert changed.inquiry.state is State.WAITING
    assert changed.inquiry.approval is None
    assert desk.approve(store, number, "Bob").draft_number == 2


def test_an_edited_draft_is_not_replaced_in_silence(store: Store, make_result) -> None:
    number = taken(store, make_result())
    desk.edit_draft(store, number, "Dear Lou, in my own words.", "Bob")
    with pytest.raises(desk_errors.EditedDraftError, match=r"draft 2 .* in the words of Bob"):
        correct(store, number, {"wall": Decimal(1)}, replace_edited=False)
    assert desk.show(store, number).assessments[0].request.wall_mm == Decimal("2.413")
    changed = correct(store, number, {"wall": Decimal(1)})
    assert "draft 2, in the words of Bob, was replaced by draft 3" in changed.told[0]
    assert [one.body for one in changed.inquiry.drafts if one.number == 2] == [
        "Dear Lou, in my own words."
    ]


def test_where_nothing_was_read_a_person_can_say_the_first_size(store: Store, make_result) -> None:
    number = taken(store, make_result(kind=Kind.OTHER))
    changed = correct(store, number, {"od": Decimal("44.45"), "wall": Decimal(3)})
    assert (changed.inquiry.kind, changed.inquiry.decision) == (Kind.SIZES, "stock")
    assert desk.approve(store, number, "Ann").draft_number == 1


def test_a_correction_takes_up_again_what_was_set_aside(store: Store, make_result) -> None:
    number = taken(store, make_result())
    desk.set_aside(store, number, "Ann", "unclear")
    assert correct(store, number, {"wall": Decimal(1)}).inquiry.state is State.WAITING


def test_an_edited_draft_is_the_one_that_is_approved(store: Store, make_result) -> None:
    number = taken(store, make_result())
    edited = desk.edit_draft(store, number, "Hello Lou.", "Bob").inquiry
    assert edited.draft is not None
    assert (edited.draft.body, edited.draft.made_by, edited.draft.subject) == (
        "Hello Lou.", "Bob", "Re: Mandrel",
    )  # fmt: skip
    assert desk.approve(store, number, "Ann").draft_number == 2


def test_editing_after_approval_withdraws_it(store: Store, make_result) -> None:
    number = taken(store, make_result())
    desk.approve(store, number, "Ann")
    changed = desk.edit_draft(store, number, "Hello Lou.", "Bob")
    assert "the approval by Ann" in changed.told[0]
    assert changed.inquiry.state is State.WAITING


def test_a_reply_by_hand_where_nothing_was_drafted(store: Store, make_result) -> None:
    number = taken(store, make_result(kind=Kind.OTHER, subject="AW: Invoice 12"))
    draft = desk.edit_draft(store, number, "We look into it.", "Bob").inquiry.draft
    assert draft is not None
    assert (draft.number, draft.subject) == (1, "Re: Invoice 12")


def test_an_empty_draft_is_refused(store: Store, make_result) -> None:
    number = taken(store, make_result())
    with pytest.raises(desk_errors.NoDraftError, match="a draft needs words"):
        desk.edit_draft(store, number, " \n", "Bob")


def test_the_report_sees_corrected_sizes(store: Store, make_result) -> None:
    number = taken(store, make_result())
    taken(store, make_result("bo", kind=Kind.AUTOMATIC))
    correct(store, number, {"wall": Decimal(1)})
    asked = list(desk.askings(store))
    assert [(one.id, one.kind, len(one.assessments)) for one in asked] == [
        (1, Kind.SIZES, 1),
        (2, Kind.AUTOMATIC, 0),
    ]
    assert asked[0].assessments[0].request.wall_mm == 1
    assert asked[0].sender.address == "lou@example.net"
