"""Questions in customers' words: which are found, and which approved answer each one gets."""

from __future__ import annotations

from datetime import date
from pathlib import Path

import pytest
from hypothesis import given
from hypothesis import strategies as st

from bendreply.intake.answers import Answer, parse_answer
from bendreply.intake.matching import matcher
from bendreply.intake.model import OwnText
from bendreply.intake.near_phrases import SMALL
from bendreply.intake.questions import find_questions
from bendreply.intake.template_check import check_templates, overdue_answers
from bendreply.intake.templates import default_templates
from bendreply.intake.terms import stem
from bendreply.intake.words_terms import SAME

from ..pace import assert_quick

ANSWERS = default_templates().answers


def match_answer(question: str, answers: tuple[Answer, ...]) -> str | None:
    return matcher(answers).match(question).answer


def own(body: str, subject: str = "", *, subject_counts: bool = True) -> OwnText:
    text = f"{subject}\n\n{body}"
    return OwnText(text=text, body_start=len(subject) + 2, subject_counts=subject_counts)


def surfaces(body: str, subject: str = "", *, subject_counts: bool = True) -> list[str]:
    found = find_questions(own(body, subject, subject_counts=subject_counts))
    return [question.surface for question in found]


# -- which sentences ask -------------------------------------------------------------------------


@pytest.mark.parametrize(
    ("body", "asked"),
    [
        ("Hi Pat,\n\nWhat is wall factor?\n\nAnn", ["What is wall factor?"]),
        ("Hello, do I need a wiper die? Thanks", ["do I need a wiper die?"]),
        ("what is a wall factor", ["what is a wall factor"]),
        (
            "1. What do you need to quote?\n2. How long do they last, 1,000 bends? 10,000?\n",
            ["What do you need to quote?", "How long do they last, 1,000 bends?"],
        ),
        (
            "- bronze or chrome?\n- how thick is 16 ga?",
            ["bronze or chrome?", "how thick is 16 ga?"],
        ),
        (
            "The tube is 1.75 O.D. x .095 wall. Does the seam\nmatter? It is ERW.",
            ["Does the seam\nmatter?"],
        ),
        ("Please advise which lubricant to use.", ["Please advise which lubricant to use."]),
        ("Kindly clarify the clamp length.", ["Kindly clarify the clamp length."]),
        ("I was wondering whether you hire out benders.", None),
        ("Brauche ich einen Dorn?", ["Brauche ich einen Dorn?"]),
        ("Guten Tag,\nwas ist der kleinste Radius?", ["was ist der kleinste Radius?"]),
        ("Faut-il un mandrin pour cela ?", ["Faut-il un mandrin pour cela ?"]),
        ("¿Cuánto cuesta?", ["¿Cuánto cuesta?"]),
        ("Quanto costa?", ["Quanto costa?"]),
        ("Heb ik een doorn nodig?", ["Heb ik een doorn nodig?"]),
    ],
)
def test_a_question_is_found(body: str, asked: list[str] | None) -> None:
    assert surfaces(body) == (asked or [body])


@pytest.mark.parametrize(
    "body",
    [
        "can you make a mandrel for 1.75 x .095?",
        "Hi, could you please quote a mandrel, 38 x 1.5 mm on 114 CLR?",
        "Do you stock a mandrel for 7/8 x .035 4130 on a 3-1/2 center line radius?",
        "Please quote two mandrels.",
        "Können Sie uns bitte einen Dorn 38 x 1,5 anbieten?",
        "Pouvez-vous fabriquer un mandrin 33,7 x 2 ?",
        "Hi Pat, how are you?",
        "How's it going?",
        "Everything ok?",
        "Please let me know if you need anything else.",
        "Don't hesitate to call if there is a question.",
        "When we bend it, it kinks. Which is why I write.",
        "What we need is one mandrel.",
        "Right?",
        "10,000?",
        "Please use the delivery address below.",
        "1.75 x .095 x 5.25 DOM. Thanks.",
        "",
    ],
)
def test_requests_pleasantries_and_statements_are_no_questions(body: str) -> None:
    assert surfaces(body) == []


def test_a_question_in_the_subject_counts_unless_it_is_an_earlier_mails() -> None:
    assert surfaces("See subject.", "Bronze or chrome?") == ["Bronze or chrome?"]
    assert surfaces("1.75 OD", "Re: Bronze or chrome?", subject_counts=False) == []


def test_what_subject_and_body_both_ask_is_one_question() -> None:
    assert len(surfaces("Hi, bronze or chrome for this?", "Bronze or chrome?")) == 1


def test_masked_words_ask_nothing() -> None:
    # Quoted mail arrives here as spaces of the same length.
    assert surfaces("What is wall factor?\n\n" + " " * 60 + "\n" + " " * 40) == [
        "What is wall factor?"
    ]


@given(st.text(max_size=500))
def test_a_surface_is_always_a_slice_of_the_text(body: str) -> None:
    said = own(body, "a subject")
    for question in find_questions(said):
        assert question.surface in said.text
        assert question.surface == question.surface.strip()


@pytest.mark.parametrize(
    "text",
    [
        "? " * 40000,
        "can you " * 12000,
        "please " * 14000,
        "\n" * 100000,
        "a." * 50000,
        " " * 100000,
        " ".join(f"what is the wll factr of tube {n} and how many bals?" for n in range(2000)),
        " ".join("what a and b, how c and d, " * 8 + f"{n}?" for n in range(400)),
    ],
)
def test_long_texts_are_read_in_good_time(text: str) -> None:
    said = own(text)
    assert_quick(lambda: find_questions(said), within=2)


# -- which answer fits ---------------------------------------------------------------------------


@pytest.mark.parametrize(
    ("question", "name"),
    [
        ('what is "wall factor" exactly, and why is 27 worse than 13?', "wall-factor"),
        ("Could you explain the wall factor to me?", "wall-factor"),
        ("What does D of bend mean?", "d-of-bend"),
        ("Is there a rule of thumb for when you need a mandrel at all?", "mandrel-needed"),
        ("At that wall does a mandrel even help or am I wasting your time?", "mandrel-needed"),
        ("Can I bend this without a mandrel?", "mandrel-needed"),
        ("Brauche ich dafür einen Dorn?", "mandrel-needed"),
        ("What exactly do you need from me to quote?", "what-to-send"),
        ("What information do you need for a quotation?", "what-to-send"),
        ("How do I measure the center line radius on my die?", "measure-clr"),
        ("How do I measure the CLR?", "measure-clr"),
        ("Do you advise bronze or hardened steel for this?", "bronze-or-chrome"),
        ("Kindly clarify which mandrel material is to be used for SS 304", "bronze-or-chrome"),
        ("Can I use the same mandrel for a thinner wall?", "one-mandrel-for-two"),
        ("Does one mandrel do for both radii?", "one-mandrel-for-two"),
        ("Do you make a mandrel that adjusts?", "one-mandrel-for-two"),
        ("Which lubricant do you recommend?", "lubricant"),
        ("Is one mandrel good for both?", "one-mandrel-for-two"),
        ("What mandrel rod do I need?", "rod-and-machine"),
        ("How many balls should the mandrel have?", "how-many-balls"),
        ("What is your limit for wall factor?", "thinnest-wall"),
        ("How tight can you bend 1.75 tube?", "how-tight"),
        ("Why does my tube wrinkle on the inside?", "wrinkles"),
        ("How much springback should I expect?", "springback"),
        ("What's the difference between pipe and tube?", "pipe-or-tube"),
        ("Which gauge do you use, BWG or SWG?", "gauge"),
        ("Would you use a wiper here?", "wiper-die"),
        ("Do I need a wiper die for 1.75 x .065 on 5.25?", "wiper-die"),
        ("And how long is the delivery?", "price-and-lead-time"),
        ("And what would 3 pcs cost?", "price-and-lead-time"),
        ("1⅝ × .083 304SS, 3¼ CLR – price?", "price-and-lead-time"),
        pytest.param(
            "what do you get for a 15/8 x .083 moly mandrel 5 clr?",
            "price-and-lead-time",
            marks=pytest.mark.xfail(reason="'get for' is not known to ask for a price"),
        ),
        ("What's your lead time?", "price-and-lead-time"),
        ("Which way should the weld seam point?", "weld-seam"),
        ("Does the ERW seam matter?", "weld-seam"),
        ("Roughly how long do they last, 1,000 bends?", "mandrel-life"),
        ("Kindly also mention expected life, 5,000 or 50,000 bends.", "mandrel-life"),
    ],
)
def test_the_right_answer_is_found(question: str, name: str) -> None:
    assert [one.answer for one in find_questions(own(question))] == [name]


@pytest.mark.parametrize(
    "question",
    [
        "What is the difference in price?",
        "What is your payment condition?",
        "What's the shipping cost to Canada?",
        "Can a mandrel be added to a manual bender that never had one?",
        "Are mandrels that little a thing, or do people just fill it with something?",
        "Do you sell wiper dies?",
        "What mandrel would you use?",
        "Can the tube be chromed after bending?",
        "Is the mandrel heat treated?",
        "What would you charge to build us a trailer, price by Easter?",
        "Do you need the tube material certificate?",
        "Can you take back a used mandrel?",
        "What machine do I need to buy?",
        "Where is my order?",
        "What size is the die block?",
        "Do you have a catalogue?",
    ],
)
def test_better_no_answer_than_a_wrong_one(question: str) -> None:
    assert match_answer(question, ANSWERS) is None


def test_a_question_without_an_answer_is_still_listed() -> None:
    (question,) = find_questions(own("Do you sponsor race teams?"))
    assert question.answer is None
    assert question.score is not None
    assert question.score < 40


@pytest.mark.parametrize(
    ("body", "name"),
    [
        ("It wrinkles on the inside of the bend. Why?", "wrinkles"),
        ("The ERW bead stands .015 high inside. Is that a problem?", "weld-seam"),
        ("We get scratches in the bore. What can we do about it?", "pick-up"),
    ],
)
def test_a_question_that_says_little_is_read_with_the_sentence_before(body: str, name: str) -> None:
    (question,) = find_questions(own(body))
    assert question.answer == name


def test_a_short_question_with_an_answer_of_its_own_keeps_it() -> None:
    found = find_questions(own("How much does the wall thin? Do I need a mandrel?"))
    assert [one.answer for one in found] == ["wall-thinning", "mandrel-needed"]


@pytest.mark.parametrize(
    ("body", "names"),
    [
        ("How many balls does it take and do I need a wiper?", ["how-many-balls", "wiper-die"]),
        ("How much wall thinning and springback?", ["wall-thinning", "springback"]),
        ("What's the price and the lead time?", ["price-and-lead-time"]),
    ],
)
def test_two_questions_in_one_sentence_get_both_answers(body: str, names: list[str]) -> None:
    assert [question.answer for question in find_questions(own(body))] == names


@pytest.mark.parametrize(
    "wrong",
    [
        "which lubrcant do you use?",
        "do I need a wipper die",
        "how much sprinback",
        "wrinkels inside, why?",
    ],
)
def test_a_slip_of_the_pen_does_not_hide_a_question(wrong: str) -> None:
    (question,) = find_questions(own(wrong))
    assert question.answer is not None


@pytest.mark.parametrize(
    "request_",
    [
        "Could you make us a mandrel (1)?",
        "Could you quote one plug mandrel for 1.75 x .095 on 5.5 CLR?",
        "Please send pricing for a mandrel to bend 1-1/2 x .065 6061-T4 at 5 in radius.",
        "May I have one mandrel for each diameter?",
        "Can you send a quote on the subject item?",
        "Can I get a mandrel for 5/8 x .035 grade 2 titanium?",
        "Brauchen dafür 1 Dorn.",
        "Me hace falta un mandril.",
        "Wir brauchen einen Dorn für Rohr 38 x 1,5, 1.4301.",
        "Would need two mandrels as we run two benders.",
        "Can you do me 2 mandrels to suit 63.5 OD x 1.6 wall mild steel, 95 mm CLR.",
        "The radius is three inches on the centre, I can tell you that much for certain.",
        "Delivery by January 15 is fine.",
        "Il me faut un mandrin, et si possible avant les congés.",
    ],
)
def test_a_plain_request_is_given_no_lecture(request_: str) -> None:
    answers = {question.answer for question in find_questions(own(request_))}
    assert answers <= {None, "price-and-lead-time"}


@pytest.mark.parametrize("answer", ANSWERS, ids=lambda one: one.name)
def test_every_phrase_finds_its_own_answer(answer: Answer) -> None:
    for phrase in answer.phrases:
        match = matcher(ANSWERS).match(phrase)
        assert match.best == answer.name, phrase
        assert match.answer == (None if answer.for_a_person else answer.name), phrase


_ANSWER = (
    '+++\ntitle = "t"\nphrases = ["{phrase}"]\nsource = "s"\napproved_by = "Pat"\n'
    "approved_on = 2026-09-01\nreview_by = 2027-09-01\n+++\ntext\n"
)


def _answer(name: str, phrase: str) -> Answer:
    return parse_answer(name, _ANSWER.format(phrase=phrase))


def test_two_answers_that_fit_alike_are_no_answer() -> None:
    twins = (_answer("a", "which lubricant tube"), _answer("b", "which lubricant mandrel"))
    assert match_answer("Which lubricant for tube?", twins) == "a"
    assert match_answer("Which lubricant on tube and mandrel?", twins) is None


def test_the_answer_with_more_of_its_words_in_the_question_wins() -> None:
    pair = (_answer("a", "which lubricant"), _answer("b", "which lubricant stainless"))
    assert match_answer("Which lubricant for stainless?", pair) == "b"


def test_no_word_that_says_something_is_counted_as_saying_nothing() -> None:
    # German "was" and English "was", Dutch "las" and Spanish "las": one of them would be lost.
    assert not {stem(word) for word in SAME.values()} & SMALL


def test_a_phrase_that_every_request_would_meet_is_a_fault(tmp_path: Path) -> None:
    folder = tmp_path / "reply_templates" / "answers"
    folder.mkdir(parents=True)
    text = _ANSWER.format(phrase="mandrel for steel tube")
    (folder / "mine.md").write_text(text, encoding="utf-8")
    (fault,) = check_templates(tmp_path)
    assert "has no word that tells it apart" in str(fault)


def test_an_answer_past_its_day_of_review_is_named_and_stays_in_use(tmp_path: Path) -> None:
    folder = tmp_path / "reply_templates" / "answers"
    folder.mkdir(parents=True)
    text = _ANSWER.format(phrase="engrave a name").replace("2027-09-01", "2026-09-02")
    (folder / "mine.md").write_text(text, encoding="utf-8")
    assert check_templates(tmp_path) == []
    (told,) = overdue_answers(tmp_path, date(2026, 11, 25))
    assert told == "reply_templates/answers/mine.md: it was to be reviewed by 2026-09-02."


def test_what_is_for_a_person_gets_no_answer() -> None:
    (question,) = find_questions(own("What are your payment terms?"))
    assert question.answer is None
    assert question.score is not None
    assert question.score > 58
