"""What is drafted for questions, and where no size is given: answers, and what to send."""

from __future__ import annotations

import pytest

from bendreply.intake.drafting import draft
from bendreply.intake.model import (
    Attachment,
    Kind,
    Question,
)
from bendreply.rules.assessment import (
    Assessment,
    Decision,
)
from bendreply.rules.request import SizeRequest

from .drafting_support import (
    EASY,
    MANDREL,
    SHOP,
    STOCK,
    judged,
    message,
    own,
    reply,
)


def test_same_as_last_time_asks_for_the_figures() -> None:
    made = reply(mail=message("same as last time please x 2", name="Bev at the yard"))
    assert made.template == "no-size"
    assert "earlier order" in made.body
    assert all(word in made.body for word in ("OD?", "Wall", "(CLR)?", "material?"))


def test_per_attached_print_says_that_the_figures_could_not_be_read() -> None:
    prints = (
        Attachment(name="20437-C.pdf", content_type="application/pdf", size=900),
        Attachment(name="photo1.png", content_type="image/png", size=900),
    )
    empty = Assessment(request=SizeRequest(quantity=2), decision=Decision.ASK)
    made = reply(empty, mail=message("Pls quote per attached print.", attachments=prints))
    assert made.template == "no-size"
    assert "could not read the figures from 20437-C.pdf" in made.body


def test_an_attachment_that_never_came_is_missed() -> None:
    assert "none arrived" in reply(mail=message("Sizes are in the attached file.")).body


def test_a_logo_is_no_attachment_to_read() -> None:
    logo = (Attachment(name="logo.png", content_type="image/png", size=900),)
    body = reply(mail=message("Please quote a mandrel.", attachments=logo)).body
    assert "could not read" not in body
    assert "logo" not in body


def test_a_question_gets_its_answer_and_what_to_send_for_a_quote() -> None:
    made = reply(kind=Kind.QUESTION, questions=(Question(surface="?", answer="wall-factor"),))
    assert made.template == "question"
    assert made.answers == ("wall-factor",)
    assert "OD divided by its wall" in made.body
    assert "To quote a mandrel we need:" in made.body


def test_what_to_send_is_not_said_twice() -> None:
    asked = (Question(surface="What do you need?", answer="what-to-send"),)
    assert reply(kind=Kind.QUESTION, questions=asked).body.count("To quote a mandrel") == 1


def test_a_draft_says_nothing_of_a_question_without_an_answer() -> None:
    asked = (Question(surface="Can you engrave\nour  name?"),)
    body = reply(judged(EASY, Decision.STOCK, stock=STOCK), questions=asked).body
    assert "engrave" not in body


def test_questions_without_any_answer_get_no_draft() -> None:
    mail = message("Can you engrave our name?")
    asked = (Question(surface="Can you engrave our name?"),)
    assert draft(mail, Kind.QUESTION, (), asked, own(mail), SHOP) is None


def test_sizes_and_answers_go_into_one_reply() -> None:
    asked = (
        Question(surface="Bronze or chrome?", answer="bronze-or-chrome"),
        Question(surface="And which is better?", answer="bronze-or-chrome"),
    )
    made = reply(judged(EASY, Decision.STOCK, stock=STOCK), questions=asked)
    assert made.answers == ("bronze-or-chrome",)
    # EASY is carbon steel, and that is all the answer speaks of.
    assert made.body.index("M-1750-095") < made.body.index("For carbon steel and chromoly")
    assert made.body.count("For carbon steel and chromoly") == 1
    assert "titanium" not in made.body


def test_price_and_lead_time_say_only_what_the_shop_file_says() -> None:
    asked = (Question(surface="Price and lead time?", answer="price-and-lead-time"),)
    body = reply(kind=Kind.QUESTION, questions=asked).body
    assert "about 15 working days" in body
    assert "not a promised date" in body
    assert not any(sign in body for sign in ("$", "€", "USD", "EUR"))
    body = reply(judged(EASY, Decision.CUSTOM_MAKE, mandrel=MANDREL), questions=asked).body
    assert body.count("15 working days") == 1, "said with the size already"


@pytest.mark.parametrize("kind", [Kind.AUTOMATIC, Kind.OTHER])
def test_automatic_and_other_mail_gets_no_reply(kind: Kind) -> None:
    mail = message()
    assert draft(mail, kind, (), (), own(mail), SHOP) is None
