"""The page of one inquiry: what a person sees, and what their changes do."""

from __future__ import annotations

from email import message_from_bytes
from email.policy import default

import pytest

from bendreply.intake import desk
from bendreply.intake.inquiry import State

from ...servers.page import KIT, ROBIN, Browser, Page, fields_of

AT = "/inquiry/1"
OWN = "Dear Ada,\r\n\r\nwe will call you.\r\n"


def test_figures_are_marked_in_the_customers_words_and_say_how_they_were_read(
    robin: Browser,
) -> None:
    shown = robin.get(AT)
    marked = {
        one.css_first("rt").text(): one.css_first("ruby").text(deep=False)
        for one in shown.page.css(".letter .read")
    }
    assert marked["OD"] == "2.75"
    assert marked["wall"] == ".083"
    assert marked["CLR"] == "8.25"
    tips = shown.all_words(".letter .tip")
    # 2.75 in x 25.4 = 69.85 mm; .083 in x 25.4 = 2.1082 mm
    assert "2.75 → 2.75 in, 69.85 mm; OD" in tips
    assert ".083 → 0.083 in, 2.108 mm; wall" in tips


def test_a_wall_put_right_changes_decision_picture_and_draft(robin: Browser) -> None:
    before = robin.get(AT)
    assert before.words(".verdict") == "Decline"
    assert "33.13" in before.words(".ratios")  # 2.75 / .083
    assert "not likely to be feasible" in before.words("#body")
    after = robin.submit(AT, {"wall-1": ".095"}, press="do=save")
    assert after.words(".verdict") == "Custom make"
    assert "28.95" in after.words(".ratios")  # 2.75 / .095
    assert "0.095 in (2.413 mm) wall" in after.words("#body")
    assert "not likely" not in after.words("#body")
    pictures = [one.attributes["src"] for one in after.page.css(".pictures img")]
    assert pictures == [] or pictures != [
        one.attributes["src"] for one in before.page.css(".pictures img")
    ]
    assert ROBIN in after.words(".history")


@pytest.mark.parametrize(
    ("typed", "read"),
    [("16ga", "0.065 in"), ("2,5 mm", "0.0984 in"), ("3/32", "0.09375 in"), ("0.12", "0.120 in")],
)
def test_any_notation_will_do(robin: Browser, typed: str, read: str) -> None:
    # 16 ga BWG = .065 in; 2.5 / 25.4 = .0984; 3/32 = .09375, told as .0938
    after = robin.submit(AT, {"wall-1": typed}, press="do=save")
    assert fields_of(after)["wall-1"] in (read, "0.0938 in")


@pytest.mark.parametrize(
    ("field", "typed", "told"),
    [("quantity-1", "3", "3"), ("needed_by-1", "2026-12-24", "24 Dec 2026")],
)
def test_number_and_day_can_be_put_right_too(
    robin: Browser, field: str, typed: str, told: str
) -> None:
    after = robin.submit(AT, {field: typed}, press="do=save")
    assert fields_of(after)[field] == typed
    assert "put right by Robin Ashdown" in after.words(".fields")
    assert told in after.words("main") or told == typed
    kind = after.page.css_first(f"#{field}").attributes
    assert kind.get("type", "text") == ("date" if field.startswith("needed") else "text")


def test_what_cant_be_read_stays_as_typed_with_the_reason(robin: Browser, page: Page) -> None:
    after = robin.submit(AT, {"wall-1": "thick", "body": OWN}, press="do=save")
    assert after.status == 422
    assert "can't be read as one wall, e.g. .095 or 16ga" in after.words(".wrong")
    assert fields_of(after)["wall-1"] == "thick"
    assert fields_of(after)["body"] == OWN
    assert desk.show(page.store, 1).version == 1


def test_a_raised_figure_is_no_number_of_mandrels(robin: Browser) -> None:
    after = robin.submit(AT, {"quantity-1": "²"}, press="do=save")
    assert after.status == 422
    assert "can't be read as a number of mandrels" in after.words(".wrong")


def test_an_emptied_subject_changes_nothing_and_nothing_else_is_said(
    robin: Browser, page: Page
) -> None:
    after = robin.submit(AT, {"subject": ""}, press="do=save")
    assert after.words(".told") == "Nothing was changed."
    assert fields_of(after)["subject"] == "Re: Mandrel for ada"
    assert desk.show(page.store, 1).version == 1


def test_what_makes_no_tube_is_refused_in_a_sentence(robin: Browser) -> None:
    after = robin.submit(AT, {"wall-1": "2 in"}, press="do=save")
    assert after.status == 422
    told = after.words(".refused")
    assert "make no tube" in told
    assert told[0].isupper()


def test_a_doubt_is_settled_with_one_click(robin: Browser) -> None:
    shown = robin.get("/inquiry/2")
    assert shown.words(".verdict") == "Ask first"
    choices = {one.text(): one.attributes["value"] for one in shown.page.css(".settle button")}
    wanted = next(value for words, value in choices.items() if "1.875 in" in words)
    after = robin.submit("/inquiry/2", {}, press=f"settle={wanted}")
    assert fields_of(after)["od-1"] == "1.875 in"
    assert after.page.css_first(".settle") is None
    assert after.words(".verdict") != "Ask first"


def test_a_settled_doubt_is_not_settled_twice(robin: Browser) -> None:
    robin.submit("/inquiry/2", {}, press="settle=od-1:1")
    again = robin.submit("/inquiry/2", {}, press="settle=od-1:1")
    assert again.status == 422
    assert "not there any more" in again.words(".refused")


def test_words_are_kept_as_a_person_wrote_them(robin: Browser, page: Page) -> None:
    after = robin.submit(AT, {"subject": "Re: yours", "body": OWN}, press="do=save")
    assert "in the words of Robin Ashdown" in after.words(".told-by")
    draft = desk.show(page.store, 1).draft
    assert draft is not None
    assert (draft.subject, draft.body) == ("Re: yours", OWN.replace("\r\n", "\n"))


@pytest.mark.parametrize("saved", [True, False], ids=["saved words", "words only typed"])
@pytest.mark.parametrize("choice", ["keep", "replace"])
def test_a_persons_words_are_not_replaced_before_they_are_asked(
    robin: Browser, page: Page, saved: bool, choice: str
) -> None:
    if saved:
        robin.submit(AT, {"body": OWN}, press="do=save")
    typed = {"wall-1": ".095", "body": OWN}
    asked = robin.submit(AT, typed, press="do=save")
    assert asked.status == 409
    assert "Nothing was changed yet" in asked.words(".asks")
    assert fields_of(asked)["body"] == OWN
    assert desk.show(page.store, 1).decision == "decline"
    after = robin.post(AT, {**fields_of(asked), "over": choice})
    assert after.words(".verdict") == "Custom make"
    kept = fields_of(after)["body"] == OWN
    assert kept is (choice == "keep")
    # either way both wordings can still be read
    bodies = [one.body for one in desk.show(page.store, 1).drafts]
    assert any("0.095 in (2.413 mm)" in one for one in bodies)
    assert saved is False or OWN.replace("\r\n", "\n") in bodies


def test_approving_goes_on_to_the_next_and_names_the_person(robin: Browser, page: Page) -> None:
    after = robin.submit(AT, {}, press="do=approve")
    assert "Draft 1 of inquiry 1 is approved by Robin Ashdown" in after.words(".told")
    assert after.words(".number") == "Inquiry 2"
    assert desk.show(page.store, 1).state is State.APPROVED


def test_approving_typed_words_approves_those(robin: Browser, page: Page) -> None:
    robin.submit(AT, {"body": OWN}, press="do=approve")
    inquiry = desk.show(page.store, 1)
    assert inquiry.state is State.APPROVED
    assert inquiry.draft is not None
    assert inquiry.draft.body == OWN.replace("\r\n", "\n")


def test_nobody_approves_a_draft_that_they_have_not_seen(robin: Browser, page: Page) -> None:
    after = robin.submit(AT, {"wall-1": ".095"}, press="do=approve")
    assert "nothing was approved yet" in after.words(".told")
    assert desk.show(page.store, 1).state is State.WAITING


def test_who_one_is_is_asked_once(page: Page) -> None:
    somebody = page.browser()
    shown = somebody.get(AT)
    assert shown.page.css_first("#by") is not None
    refused = somebody.submit(AT, {"by": ""}, press="do=approve")
    assert refused.status == 422
    assert desk.show(page.store, 1).state is State.WAITING
    unknown = somebody.submit(AT, {"by": "Mallory"}, press="do=approve")
    assert "not among the people" in unknown.words(".refused")
    somebody.submit(AT, {"by": KIT}, press="do=approve")
    assert desk.show(page.store, 1).words[-1].by == KIT
    assert somebody.get("/inquiry/2").page.css_first("#by") is None


@pytest.mark.parametrize(
    ("change", "press"),
    [({}, "do=approve"), ({"wall-1": ".1"}, "do=save"), ({"body": OWN}, "do=save")],
    ids=["approves", "corrects", "rewords"],
)
def test_the_second_of_two_is_told_and_nothing_is_overwritten(
    robin: Browser, kit: Browser, page: Page, change: dict[str, str], press: str
) -> None:
    seen_by_kit = fields_of(kit.get(AT))
    robin.submit(AT, {"wall-1": ".095"}, press="do=save")
    before = desk.show(page.store, 1)
    name, _, value = press.partition("=")
    told = kit.post(AT, {**seen_by_kit, **change, name: value})
    assert told.status == 409
    assert "changed meanwhile" in told.words(".refused")
    assert ROBIN in told.words(".refused")
    assert desk.show(page.store, 1) == before
    if "body" in change:
        assert "we will call you" in told.words("#kept")


def test_setting_aside_needs_a_reason(robin: Browser, page: Page) -> None:
    refused = robin.submit(AT, {"why": " "}, form=".aside-form")
    assert refused.status == 422
    assert "needs a reason" in refused.words(".refused")
    done = robin.submit(AT, {"why": "answered by phone"}, form=".aside-form")
    assert "Inquiry 1 is set aside" in done.words(".told")
    inquiry = desk.show(page.store, 1)
    assert (inquiry.state, inquiry.words[-1].why) == (State.SET_ASIDE, "answered by phone")


def test_an_alternative_goes_out_of_the_draft_and_in_again(robin: Browser) -> None:
    button = robin.get(AT).page.css_first(".offers button")
    assert button is not None
    assert button.text() == "Take out of the draft"
    without = robin.submit(AT, {}, press="do=drop:1-1")
    assert "nearest bend" not in without.words("#body")  # its lead goes with it
    assert "Robin Ashdown" in without.words("#body")
    again = robin.submit(AT, {}, press="do=offer:1-1")
    assert "We could make a mandrel for this instead: - 2.75 in" in again.words("#body")
    once_more = robin.submit(AT, {}, press="do=drop:1-1")
    assert once_more.words("#body") == without.words("#body")


@pytest.mark.parametrize("button", ["offer:9-1", "offer:1-9", "drop:x", "offer:", "no such thing"])
def test_a_button_of_no_page_changes_nothing(robin: Browser, page: Page, button: str) -> None:
    after = robin.submit(AT, {}, press=f"do={button}")
    assert "Nothing was changed" in after.words(".told")
    assert desk.show(page.store, 1).version == 1


def test_an_alternative_goes_into_a_persons_own_words_before_the_signature(robin: Browser) -> None:
    robin.submit(AT, {"body": "Dear Ada,\r\n\r\nRobin Ashdown\r\n"}, press="do=save")
    after = robin.submit(AT, {}, press="do=offer:1-1")
    body = fields_of(after)["body"].splitlines()
    assert body[2] == "We could make a mandrel for this instead:"
    assert body[3].startswith("- 2.75 in (69.85 mm) OD x ")
    assert body[5] == "Robin Ashdown"


def test_a_message_without_a_draft_can_be_answered_in_ones_own_words(
    robin: Browser, page: Page
) -> None:
    assert "None yet" in robin.get("/inquiry/4").words(".told-by")
    refused = robin.submit("/inquiry/4", {}, press="do=approve")
    assert "no draft to approve" in refused.words(".refused")
    robin.submit("/inquiry/4", {"body": OWN}, press="do=approve")
    assert desk.show(page.store, 4).state is State.APPROVED


def test_approved_drafts_are_laid_down_on_request(robin: Browser, page: Page) -> None:
    robin.submit(AT, {"body": OWN}, press="do=approve")
    waiting = robin.get("/")
    assert "1 approved draft is not laid down yet" in waiting.words(".laydown")
    done = robin.submit("/", {}, form=".laydown")
    assert "the draft lies in" in done.words(".told")
    laid = message_from_bytes((page.folder / "drafts" / "1.eml").read_bytes(), policy=default)
    assert "we will call you" in laid.get_content()
    shown = robin.get(AT)
    assert shown.page.css_first("#approve") is None
    refused = robin.post(AT, {**fields_of(shown), "body": "other", "do": "save"})
    assert "has been delivered" in refused.words(".refused")


def test_a_picture_of_the_bend_goes_with_the_draft_where_one_is_asked_for(
    robin: Browser, page: Page
) -> None:
    pytest.importorskip("matplotlib", reason="pictures are drawn with matplotlib (extra 'charts')")
    robin.submit(AT, {"picture": "png"}, press="do=approve")
    robin.submit("/", {}, form=".laydown")
    laid = message_from_bytes((page.folder / "drafts" / "1.eml").read_bytes(), policy=default)
    (picture,) = laid.iter_attachments()
    assert picture.get_content_type() == "image/png"
    assert picture.get_content().startswith(b"\x89PNG")


def test_pictures_are_drawn_for_the_page(robin: Browser) -> None:
    pytest.importorskip("matplotlib", reason="pictures are drawn with matplotlib (extra 'charts')")
    for one in robin.get(AT).page.css(".pictures img"):
        drawn = robin.get(one.attributes["src"])
        assert drawn.headers["content-type"] == "image/svg+xml"
        assert "sandbox" in drawn.headers["content-security-policy"]
        assert drawn.text.startswith("<svg")
    assert robin.get("/inquiry/1/2-bend.svg").status == 404
    assert robin.get("/inquiry/4/1-bend.svg").status == 404


def test_without_matplotlib_the_page_says_what_is_missing(
    robin: Browser, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr("bendreply.intake.review.drawn.can_draw", lambda: False)
    shown = robin.get(AT)
    assert "Pictures are drawn where matplotlib is installed" in shown.words(".drawings")
    assert shown.page.css_first(".drawings img") is None
    assert shown.page.css_first("#picture") is None


def test_a_broken_template_of_the_shop_is_named_and_nothing_typed_is_lost(
    robin: Browser, page: Page
) -> None:
    templates = page.folder / "reply_templates"
    templates.mkdir()
    (templates / "custom-make.j2").write_text("{{ no_such_thing }}")
    after = robin.submit(AT, {"wall-1": ".095"}, press="do=save")
    assert after.status == 422
    assert "custom-make.j2" in after.words(".refused")
    assert fields_of(after)["wall-1"] == ".095"
    assert desk.show(page.store, 1).version == 1


def test_a_fault_of_our_own_is_told_as_one(robin: Browser, monkeypatch: pytest.MonkeyPatch) -> None:
    def broken(*_: object) -> None:
        raise RuntimeError("never told to the browser")

    monkeypatch.setattr("bendreply.intake.review.app.sheet_of", broken)
    answer = robin.get(AT)
    assert answer.status == 500
    assert "fault" in answer.words()
    assert "never told" not in answer.text


def test_every_field_has_a_label(robin: Browser) -> None:
    for path in ("/", AT, "/inquiry/2", "/who"):
        shown = robin.get(path)
        labelled = {one.attributes.get("for") for one in shown.page.css("label")}
        for one in shown.page.css("input, select, textarea"):
            if one.attributes.get("type") in ("hidden", "checkbox"):
                continue
            assert one.attributes.get("id") in labelled, one.html


def test_history_tells_who_changed_what(robin: Browser) -> None:
    robin.submit(AT, {"wall-1": ".095"}, press="do=save")
    told = robin.get(AT).words(".history")
    assert "corrected" in told
    assert "wall: 0.083 in (2.108 mm) to 0.095 in (2.413 mm)" in told


@pytest.mark.parametrize(
    "path",
    [
        "/inquiry/99",
        "/inquiry/99999999999999",
        # Python turns no more than 4300 digits into a number.
        f"/inquiry/{'9' * 5000}",
        f"/inquiry/1/{'9' * 5000}-bend.svg",
        "/nothing",
    ],
    ids=lambda path: path[:30],
)
def test_what_is_not_there_is_said(robin: Browser, path: str) -> None:
    answer = robin.get(path)
    assert answer.status == 404
    assert "That did not work There is no " in answer.words()
    assert "bendreply backlog" not in answer.words()  # of no use to somebody at a browser
