"""The second reader: what was learnt of how mail speaks of its figures, held against the rules."""

from __future__ import annotations

from decimal import Decimal
from pathlib import Path

import pytest
from hypothesis import given
from hypothesis import strategies as st

from bendreply.intake.message import parse_message
from bendreply.intake.pipeline import understand
from bendreply.intake.reading.nets.around_figure import Figures, overlapping
from bendreply.intake.reading.nets.roles_learnt import ROLES, shares
from bendreply.intake.reading.nets.second_reading import with_second_reading

from ...corpus.asked.marked import Marked, marked, messages, named
from .support import read_text

HEAD = b"""From: a@example.com
Date: Tue, 06 Oct 2026 10:00:00 +0000
Content-Type: text/plain; charset=utf-8
Content-Transfer-Encoding: 8bit

"""
ASKED = Path(__file__).parents[2] / "corpus" / "asked"


def lead(text: str) -> int:
    """Characters of white space before a text."""
    return len(text) - len(text.lstrip())


def heard(text: str, figure: str) -> dict[str, float]:
    """The shares of the figure that begins where ``figure`` stands in the text."""
    figures = Figures(text)
    [at, *_] = overlapping(figures, place := text.index(figure), place + len(figure))
    return shares(figures.traits(at))


@pytest.mark.parametrize(
    "text",
    [
        # told of, and then asked for: words of our own, in none of the marked messages
        "We got on fine with {told} until the frame grew. What would a mandrel for {asked} cost?",
        "{told} is what the old jig was made for. The new jig calls for {asked}, please quote.",
        "My brother swears by {told}. I'd rather have {asked}, can you make that mandrel?",
        "Please quote a mandrel for {asked}. (The {told} from last winter is still going strong.)",
        "Bisher lief bei uns nur {told}. Jetzt brauchen wir einen Dorn für {asked}.",
        "Jusqu'ici nous faisions {told}. Maintenant il nous faut un mandrin pour {asked}.",
        "Hasta ahora hacíamos {told}. Ahora necesitamos un mandril para {asked}.",
        "Finora facevamo {told}. Adesso ci serve un'anima per {asked}.",
        "Tot nu toe deden we {told}. Nu hebben we een doorn nodig voor {asked}.",
    ],
)
def test_the_size_asked_for_is_likelier_a_size_than_the_one_told_of(text: str) -> None:
    said = text.format(told="38 x 2", asked="42.4 x 1.5")
    assert heard(said, "42.4")["od"] > heard(said, "38")["od"]


@pytest.mark.parametrize(
    ("text", "figure", "role"),
    [
        ("Need a mandrel for 1.75 x .095 DOM on a 5.25 CLR.", "1.75", "od"),
        ("Need a mandrel for 1.75 x .095 DOM on a 5.25 CLR.", ".095", "wall"),
        ("Need a mandrel for 1.75 x .095 DOM on a 5.25 CLR.", "5.25", "clr"),
        ("Dorn für Rohr 42,4 x 2, Biegeradius 85 mm", "85", "clr"),
        ("mandrin pour tube de 33,7, épaisseur 2,6, rayon 100", "2,6", "wall"),
    ],
)
def test_a_plain_figure_is_heard_as_what_it_is(text: str, figure: str, role: str) -> None:
    found = heard(text, figure)
    assert max(found, key=lambda one: found[one]) == role
    assert found[role] > 0.8


@pytest.mark.parametrize(
    ("text", "figure"),
    [
        ("Please call me on 555 0142 before 4 pm.", "0142"),
        ("Delivery by 29/01 would suit us.", "29/01"),
        ("We need 400 bends at 90 degrees a year.", "90"),
        ("Invoice 2231 of 12 May is still open.", "2231"),
    ],
)
def test_a_figure_that_is_no_length_is_heard_as_none(text: str, figure: str) -> None:
    assert sum(heard(text, figure).values()) < 0.2


@given(st.text(max_size=80))
def test_any_text_has_shares(text: str) -> None:
    figures = Figures(text)
    for at in figures.at:
        found = shares(figures.traits(at))
        assert set(found) == set(ROLES)
        assert 0 <= sum(found.values()) <= 1


@pytest.mark.parametrize("written", ["1/0", "0/0", "1-3/4", "1½", "½", "1.234.567", "0", ",5"])
def test_any_figure_has_traits(written: str) -> None:
    figures = Figures(f"x {written} y")
    assert all(figures.traits(at) for at in figures.at)


def test_of_several_sizes_the_one_that_is_meant_is_not_in_doubt() -> None:
    text = "I need one mandrel, 1.5 x .065 wall on a 4.5 CLR. My 2 x .120 is for the other bender."
    [meant, *_] = read_text(text)
    assert (meant.od_mm, meant.doubts) == (Decimal("38.1"), ())  # 1.5 x 25.4


@pytest.mark.parametrize(
    "text",
    [
        "Please quote a mandrel for 1.75 x .095 on 5.25 CLR. The 2 inch tubes are bent in town.",
        "Bitte einen Dorn für 42,4 x 2, R 85 anbieten. Die 60er kommen gebogen vom Zulieferer.",
        "Merci de chiffrer un mandrin pour 30 x 2, rayon 60. Le tube de 50 part chez un confrère.",
        "Presupuesto de un mandril para 38 x 1,5, radio 76. El tubo de 60 nos lo curva un vecino.",
        "Serve un'anima per 33,7 x 2, raggio 70. Il tubo da 60 lo facciamo curvare da un terzista.",
        "Graag een doorn voor 42,4 x 2, straal 85. De 60 mm buis komt gebogen binnen.",
    ],
)
def test_an_od_alone_that_is_told_of_is_in_doubt_or_left_out(text: str) -> None:
    meant, *others = read_text(text)
    assert meant.doubts == ()
    assert all(other.doubt_on("od") for other in others)


@pytest.mark.parametrize(
    "text",
    [
        "Please quote a mandrel for 1.75 x .095 on 5.25 CLR. The 2 inch tubes are bent in town.",
        "Bitte einen Dorn für 42,4 x 2, R 85 anbieten. Die 60er kommen gebogen vom Zulieferer.",
    ],
)
def test_an_od_alone_that_is_told_of_is_heard_so_without_the_rules(text: str) -> None:
    understood = understand(parse_message(HEAD + text.encode()))
    plain = [request.model_copy(update={"doubts": ()}) for request in understood.requests]
    (meant, told), _ = with_second_reading(plain, understood.own.text)
    assert meant.doubts == ()
    assert told.doubt_on("od")


def _sample() -> list[Marked]:
    return [one for file in sorted(ASKED.glob("*.txt")) for one in messages(file)][::12]


def test_marked_messages_are_read_as_marked() -> None:
    """How much is read as marked; some of the doubts were learnt from these, the rest was not."""
    asked = lost = stated = 0
    for one in _sample():
        understood = understand(parse_message(HEAD + one.text.encode()))
        begin = understood.own.text.find(one.text.strip()[:25]) - lead(one.text)
        if begin < 0:
            continue  # it begins with words that it quotes
        places = [
            (evidence.start - begin, request.doubt_on(evidence.field) is not None)
            for request in understood.requests
            for evidence in request.evidence
            if evidence.field in ("od", "wall", "clr") and evidence.surface
        ]
        asked += len(one.asked)
        lost += sum(not any(b <= at < e for at, _ in places) for b, e in one.asked)
        stated += sum(not one.asks_at(at) and not doubted for at, doubted in places)
    assert lost / asked < 0.17, f"{lost} of {asked} places asked for were not read"
    assert stated / asked < 0.26, f"{stated} figures told of were stated, beside {asked} places"


def test_marks_are_taken_off() -> None:
    one = marked("not [[38 x 2]], 42")
    assert (one.text, one.asks_at(4), one.asks_at(12)) == ("not 38 x 2, 42", True, False)


@pytest.mark.parametrize(
    ("text", "kind"),
    [
        # no word of those listed asks, but it is spoken of as in mail that asks
        ("The shelf lacks 38 x 1,5 with R 76, and our new frame is made of nothing else.", "sizes"),
        ("Why does everybody bend 1.75 x .095 on a 5.25 die?", "question"),
        ("FYI, our neighbour's shop has 38 x 2 on the shelf.", "other"),
    ],
)
def test_the_way_a_size_is_spoken_of_tells_a_request_from_talk(text: str, kind: str) -> None:
    assert understand(parse_message(HEAD + text.encode())).kind == kind


@pytest.mark.parametrize(
    "text",
    [
        "Mandrels for 1.75 OD x .095 x 5.25 CLR and 2 OD x .120 x 6 CLR, all DOM.",
        "Mandrel for 38 x 1.5, R 76.",
        "2 x .120 DOM, 6 CLR",
        "1.5 x .065 x 4.5 CLR\n1.75 x .095 x 5.25 CLR\n2 x .120 x 6 CLR",
        "Dorn für 38 x 1,5, R 76",
    ],
)
def test_few_words_raise_no_doubt(text: str) -> None:
    assert [doubt for request in read_text(text) for doubt in request.doubts] == []


@pytest.mark.parametrize(
    "text",
    [
        "We run 1.5 x .083 on a 4.5 CLR here, with no trouble. Could you make one mandrel for"
        " 1.75 x .083, 5.25 CLR?",
        "The frames used to be 22.2 x 1.6 on R 50. Ours is to be 22.2 x 2 on R 60, so one mandrel"
        " for that please.",
        "What is in the drawer: 3/4 x .065 on 2-1/4.\nWhat I'm asking for: 7/8 x .065 on 2-5/8.",
        "Le 30 x 2 au rayon 60 est fait chez un confrère. Merci de chiffrer un mandrin pour"
        " 40 x 2, rayon 80.",
        "Die Handläufe aus 42,4 x 2, R 85 gehen gut. Jetzt suchen wir einen Dorn für 48,3 x 2,"
        " Mittenradius 95.",
    ],
)
def test_a_size_far_less_asked_for_than_another_is_in_doubt_or_left_out(text: str) -> None:
    *others, meant = read_text(text)
    assert not [doubt for doubt in meant.doubts if doubt.about == "size"]
    assert all(other.doubt_on("od") for other in others)


@pytest.mark.parametrize(
    "text",
    [
        "One mandrel for 1.5 x .065 on 4.5 please. And one mandrel for 2 x .065 on 6.",
        "I need a mandrel for 1.5 x .065, 4.5 CLR. I also need one for 2 x .065, 6 CLR.",
        "Two mandrels wanted. First: 38 x 1.5, R 76. Second: 42.4 x 2, R 85.",
        "The hoop is 1.75 x .095 on a 6. The braces are 1.5 x .065 on a 4.5. One mandrel each.",
        "Je cherche un mandrin pour 38 x 1,5, rayon 76. Il m'en faut un aussi pour 42,4 x 2,"
        " rayon 85.",
        "Wir bauen Geländer aus 42,4 x 2, R 85. Die Füllstäbe sind 26,9 x 2, R 60. Bitte je ein"
        " Dorn.",
    ],
)
def test_of_sizes_that_are_all_asked_for_none_is_in_doubt(text: str) -> None:
    assert [doubt for request in read_text(text) for doubt in request.doubts] == []


def test_words_that_point_back_leave_every_size_in_doubt() -> None:
    text = (
        "There's a 1.5 x .065 mandrel for 4.5 clr in our shop.\nPlease make a mandrel for 2 x .120,"
        " 6 clr. On reflection we'd rather replace ours."
    )
    assert all(request.doubt_on("od") for request in read_text(text))


def test_marks_of_roles_say_what_each_figure_is() -> None:
    said = named("<n two> for <o 38> x <w 1.5>, <x ID 35>, till 5")
    assert said.text == "two for 38 x 1.5, ID 35, till 5"
    places = {figure: said.text.index(figure) for figure in ("two", "38", "1.5", "35", "5")}
    places["5"] = said.text.rindex("5")
    roles = [said.role_at(place, place + 1) for place in places.values()]
    assert roles == ["count", "od", "wall", "left out", "none"]
