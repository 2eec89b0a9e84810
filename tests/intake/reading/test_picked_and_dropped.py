"""Which of several sizes are wanted: by bare numbers of a list, by an OD on its radius, by marks.

Sizes are told by their OD in mm: 1-1/4 in is 31.75, 1-1/2 is 38.1, 1-5/8 is 41.275, 1-3/4 is 44.45.
"""

from __future__ import annotations

from decimal import Decimal

import pytest

from .support import read_text

LIST = """1) main hoop 1.75 x .120
2) A pillars 1.625 x .083
3) door bars 1.75 x .095
4) seat bar 1.25 x .065

All 4130, all bent 3D. """


def sizes(text: str) -> list[tuple[str, str]]:
    """OD and wall of each size read, as written in mm."""
    return [(f"{r.od_mm:f}", f"{r.wall_mm or 0:f}") for r in read_text(text)]


def all_doubted(text: str) -> bool:
    return all(request.doubts for request in read_text(text))


TWO_AND_FOUR = [("41.275", "2.1082"), ("31.75", "1.651")]


@pytest.mark.parametrize(
    "words",
    [
        "I already have mandrels for 1 and 3, so please quote 2 and 4, one of each.",
        "We have good mandrels for 1 and 3.",
        "Mandrels for 1 and 3 are already here.",
        "I've got 1 and 3 already.",
        "Mandrels for 2 and 4 please.",
        "Please drop 1 and 3.",
        "Für 1 und 3 haben wir schon Dorne, bitte den Rest anbieten.",
        "On a déjà les mandrins pour 1 et 3.",
        "Ya tenemos mandriles para 1 y 3.",
        "Abbiamo già i mandrini per 1 e 3.",
        "We hebben al doornen voor 1 en 3.",
    ],
)
def test_lines_named_by_bare_numbers_are_left_out_or_asked_for(words: str) -> None:
    """3 x 1.625 in is 123.825 mm, 3 x 1.25 in is 95.25 mm: the numbers of lines are no radii."""
    assert sizes(LIST + words) == TWO_AND_FOUR
    assert [r.clr_mm for r in read_text(LIST + words)] == [Decimal("123.825"), Decimal("95.25")]


@pytest.mark.parametrize(
    "words",
    [
        "We already have dies for 1 and 3.",
        "If you have mandrels for 1 and 3 in stock, ship those first.",
        "I already have a mandrel for 1 and 3, but they are worn, quote all.",
        "We have mandrels for 1 and 3 but want spares.",
        "Quote all four. Mandrels for 1 and 3 are here, and we want new ones.",
        "Please quote 2 and 4.",
        "Price for 1 and 4 of each please.",
        "One each. Nobody has mandrels for 1 and 3 round here.",
    ],
)
def test_no_line_is_lost_where_its_number_may_mean_more(words: str) -> None:
    assert len(sizes(LIST + words)) == 4


@pytest.mark.parametrize("words", ["Please quote 2 and 4.", "Price 1 and 3 please."])
def test_numbers_that_may_count_leave_all_lines_in_doubt(words: str) -> None:
    assert all_doubted(LIST + words)


@pytest.mark.parametrize(
    ("text", "od"),
    [
        ("You made us 1.75 x .120 last spring. Now the down bars, 1.5 on a 4.5 CLR.", "38.1"),
        ("You made the 1.75 x .120 last year. Now we want to do 1.5 with a 4.5 CLR.", "38.1"),
        ("Dorn für 48,3 x 2,6 war gut. Jetzt brauchen wir einen für 42,4 auf R 150.", "42.4"),
        ("El año pasado hicimos 48,3 x 2,6. Ahora un mandril, 42,4 con radio 150.", "42.4"),
        ("L'an dernier 48,3 x 2,6. Maintenant 42,4 sur rayon 150, un mandrin.", "42.4"),
        ("Main hoop 1.75 x .095. Halo 1.5 at 4.5 clr. Mandrel each.", "38.1"),
    ],
)
def test_an_od_on_its_radius_is_a_size_of_its_own(text: str, od: str) -> None:
    """The radius said with it must not go to the other tube in silence."""
    assert od in [size for size, _ in sizes(text)]
    assert all(request.doubt_on("od") or f"{request.od_mm:f}" == od for request in read_text(text))


@pytest.mark.parametrize(
    "text",
    [
        "1.75 x .120, need 2 on a 6 CLR please.",
        "1.75 x .120 tube, springback of 1.5 with a 6 CLR die.",
        "Tube 1.75 x .120, leg 12 on a 6 CLR.",
    ],
)
def test_what_else_stands_on_a_radius_is_no_tube(text: str) -> None:
    assert [od for od, _ in sizes(text)] == ["44.45"]


WANTED = "Need a mandrel for 1.5 x .065 on 4.5 CLR. "
GESUCHT = "Wir brauchen einen Dorn für 38 x 1,5 mit R 114. "


@pytest.mark.parametrize(
    "text",
    [
        WANTED + "My cousin does 1.75 x .095 with no mandrel at all.",
        WANTED + "A neighbour in the harbour has made his with 1.75 x .095 and is happy.",
        WANTED + "The bender is from a guy who swore it had done 1.75 x .120 all its life.",
        WANTED + "Last year's set was for 1.75 x .095 and it took five weeks.",
        WANTED + "I did the last one with 1.75 x .095 and sand.",
        WANTED + "We also run 1/4 x .035 but that's bent by hand and needs nothing from you.",
        WANTED + "Also have some 1.75 x .095 left from the last build, ignore that.",
        WANTED + "There are 1.75 x .095 stays too, which we won't be using.",
        "Mandrel for 1.75 x .095 - hang on, that's the old car. New one is 1.5 x .065, CLR 4.5.",
        WANTED + "If it works we will later also need one for 1.75 x .095.",
        "Necesitamos un mandril para 38 x 1,5 con radio 114. El año pasado os compramos el de"
        " 45 x 2 y fue bien.",
        "We zoeken een doorn voor 38 x 1,5, radius 114. Wij hebben er al één voor 48,3 x 2,6.",
        "Nu buigen we 45 x 2 met een geleende doorn; die van ons moet 38 x 1,5 worden,"
        " radius 114. Graag 1 doorn.",
        "Il nous faut un mandrin pour 38 x 1,5, rayon 114. Mon voisin fait du 48,3 x 2,6.",
    ],
)
def test_a_size_that_is_only_told_of_is_left_out(text: str) -> None:
    (size,) = read_text(text)
    assert f"{size.od_mm:f}" in ("38.1", "38")
    assert not size.doubts


@pytest.mark.parametrize(
    "text",
    [
        WANTED + "My cousin makes his with 1.75 x .095 on 5.25 CLR, and wants one too.",
        WANTED + "My son does 1.75 x .095 on 5.25 CLR, quote that as well.",
        "We bend 1.5 x .065 on 4.5 CLR with a borrowed mandrel and need our own. Also 1.75 x .095"
        " on"
        " 5.25 CLR.",
        "Last year's set was for 1.5 x .065 on 4.5 CLR; the same again, plus one for 1.75 x .095 on"
        " 5.25 CLR.",
        "My customer swears he uses 1.75 x .095 on 5.25 CLR. So a mandrel for that, and 1.5 x"
        " .065 on"
        " 4.5 CLR for us.",
        "My neighbour does 1.75 x .095 on 5.25 CLR. He asked me to get him a mandrel, and I"
        " need one for 1.5 x .065 on 4.5 CLR.",
        WANTED + "The guy in our shop bends 1.75 x .095 on 5.25 CLR.",
        WANTED + "We bought 1.75 x .095 on 5.25 CLR off you and it broke.",
        WANTED + "2 mandrels for 1.75 x .095 on 5.25 CLR, those are bent by hand so far.",
        WANTED + "The 1.75 x .095 on 5.25 CLR we can't bend by hand. Price for each.",
        WANTED + "1.75 x .095 on 5.25 CLR: don't forget that one.",
        GESUCHT + "Mein Nachbar macht 45 x 2 mit R 135 bei uns. Je ein Dorn.",
        GESUCHT + "45 x 2 mit R 135 haben wir bereits als Rohr da, Dorn fehlt.",
        "Sorry, that was the old drawing. 1.5 x .065 on 4.5 CLR and 1.75 x .095 on 5.25 CLR it is.",
        WANTED
        + "If that works we later also need 1.75 x .095 on 5.25 CLR, please price it already.",
    ],
)
def test_what_may_be_asked_for_all_the_same_is_kept(text: str) -> None:
    assert len(sizes(text)) == 2


LINES = "1) 1.5 x .065, 4.5 CLR{}\n2) 1.625 x .065, 5 CLR{}\n3) 1.75 x .095, 5.25 CLR{}\n\n"


@pytest.mark.parametrize(
    ("marks", "words", "ods"),
    [
        (("", "", ""), "Only the first two, the third one we still have.", "38.1 41.275"),
        (("", "", ""), "Quote the first two, the third one we already have.", "38.1 41.275"),
        (("", "", ""), "Please quote. The first is already ordered (PO 71).", "41.275 44.45"),
        (("  HOLD", "", ""), "Please quote. We do not need lines marked HOLD.", "41.275 44.45"),
        (("", "  HOLD", ""), "Excluding rows with status HOLD please quote.", "38.1 44.45"),
        (("  HOLD", "", ""), 'Zeilen mit "HOLD" bitte nicht anbieten.', "41.275 44.45"),
        (("  yes", "  no", "  no"), 'So the two "no" ones please.', "41.275 44.45"),
        (("  yes", "  no", "  no"), 'Please price the "yes" one.', "38.1"),
        (("", "", "  -> no mandrel needed, thick enough"), "Quote please.", "38.1 41.275"),
        (("", "", "  - kein Dorn nötig"), "Bitte um Angebot.", "38.1 41.275"),
        (("  .... done", "  .... pls make 2", "  .... pls make 1"), "Thanks.", "41.275 44.45"),
    ],
)
def test_lines_are_left_out_by_their_place_or_mark(
    marks: tuple[str, str, str], words: str, ods: str
) -> None:
    assert [od for od, _ in sizes(LINES.format(*marks) + words)] == ods.split()


@pytest.mark.parametrize(
    ("marks", "words"),
    [
        (("", "", ""), "Only the first two are urgent, the third one we still need too."),
        (("", "", ""), "The third one we still have the die for. Mandrel for each please."),
        (("", "", ""), "The first is already ordered at the mill, mandrels for all three please."),
        (("  HOLD", "", ""), "HOLD means that the tube is late, quote all lines please."),
        (("  HOLD", "", ""), "Do not ship lines marked HOLD before June. Quote everything."),
        (("  yes", "  no", "  no"), 'The "yes" one is worn. Quote all.'),
        (("", "", "  no mandrel needed so far, but it wrinkles"), "Quote please."),
        (("", "", "  no mandrel needed?"), "Quote please."),
        (("", "", "  no mandrel yet"), "Quote please."),
        (("", "", "  don't quote without ball"), "Quote please."),
        (("", "", "  pls make 2"), "Quote please, one each of the others."),
    ],
)
def test_no_line_is_left_out_where_its_words_may_mean_more(
    marks: tuple[str, str, str], words: str
) -> None:
    assert len(sizes(LINES.format(*marks) + words)) == 3


@pytest.mark.parametrize(
    ("text", "expected"),
    [
        # 1-1/4 in sch 10 is 42.164 x 2.7686 mm
        ("1-1/4 sch 10 pipe, R 150 mm. Machine goes to 2 sch 40.", [("42.164", "2.7686")]),
        ("1.5 x .065 on 4.5 CLR. The bender tops out at 3 x .120.", [("38.1", "1.651")]),
        ("Rohr 38 x 1,5, R 114. Unsere Maschine schafft 60 x 3.", [("38", "1.5")]),
        ("38 x 1,5 rayon 114. La cintreuse monte jusqu'à 60 x 3.", [("38", "1.5")]),
        (
            'Dies for 1", 1-1/4" and 1-1/2", none of which interest me apart from the 1-1/2. .120'
            " wall, 5.5 CLR.",
            [("38.1", "3.048")],
        ),
        (
            "Sizes 1, 1.25 and 1.5 OD, .065 wall, 5 CLR. None of these matter except the 1.25.",
            [("31.75", "1.651")],
        ),
        (
            'All in .120 wall DOM: 2" on 6" centerline, and 1-3/4 on 5-1/4.',
            [("50.8", "3.048"), ("44.45", "3.048")],
        ),
        (
            "Need 2 on 6 clr and 3 on 9 clr, wall .120",
            [("50.8", "3.048"), ("76.2", "3.048")],
        ),
        (
            "All 304 and all .065. One each:\n\n1 on 4 clr\n1-1/4 on 5 clr\n",
            [("25.4", "1.651"), ("31.75", "1.651")],
        ),
        (
            "Everything is .065. Mandrels:\n\n1 on 4 clr\n1-1/4 on 5 clr\n",
            [("25.4", "1.651"), ("31.75", "1.651")],
        ),
        # near misses
        (
            "Dies for 1 and 1.5 are fine, except the 1.5 is worn. 1 x .065 on 4 CLR, 1.5 x .065"
            " on 5"
            " CLR.",
            [("25.4", "1.651"), ("38.1", "1.651")],
        ),
    ],
)
def test_machines_exceptions_and_pairs(text: str, expected: list[tuple[str, str]]) -> None:
    assert [size for size in sizes(text) if size in expected] == expected
    assert len(sizes(text)) == len(expected) or all_doubted(text)


@pytest.mark.parametrize(
    "text",
    [
        "Pos  Description   Qty\n010  MANDREL 1.000 OD X .049 W X 2.000 CLR   1 EA\n020  MANDREL"
        " 1.250 OD X .065 W X 2.500 CLR"
        "   1 EA\n\nOur last price for pos 010 was $285.00.",
        "1 x .049, CLR 2. 1.25 x .065, CLR 2.5. Same again next year. Mandrel each.",
    ],
)
def test_words_on_a_price_or_a_run_take_no_size_back(text: str) -> None:
    assert len(sizes(text)) == 2
    assert not any(request.doubts for request in read_text(text))


@pytest.mark.parametrize(
    ("text", "od", "wall"),
    [
        ("Tubo 55 x 1,5, raggio 81: ho sbagliato, è 54 x 1,5. Un mandrino.", "54", "1.5"),
        ("Rohr 55 x 1,5, R 81. Hab mich vertan, es sind 54 x 1,5. Ein Dorn.", "54", "1.5"),
        ("1.5 x .065 on 4.5 CLR. I made a mistake, it's 1.5 x .083.", "38.1", "2.1082"),
        ("Tube 55 x 1,5, rayon 81. Je me suis trompé, c'est 54 x 1,5.", "54", "1.5"),
    ],
)
def test_a_mistake_that_is_owned_up_to_is_put_right(text: str, od: str, wall: str) -> None:
    assert sizes(text) == [(od, wall)]


def test_a_term_of_payment_is_no_radius() -> None:
    (size,) = read_text("Un mandrino per tubo 42,4 x 2,6, raggio 110. Pagamento: RB 60 gg d.f.f.m.")
    assert size.clr_mm == 110


def test_what_a_tool_cost_then_asks_for_none() -> None:
    text = "Mandrel for 32 x 2, R 64. Could you tell me what the 30 mm one cost back in August?"
    assert sizes(text) == [("32", "2")]


@pytest.mark.parametrize(
    "text",
    [
        "Je ein Dorn für 38 x 1,5 R76 und 50 x 2 R100. Vergessen Sie den zweiten.",
        "Un mandrin pour 38 x 1,5 rayon 76 et un pour 50 x 2 rayon 100. Oubliez le second.",
        "One mandrel each for 38 x 1.5 CLR 76 and 50 x 2 CLR 100. Forget the second one.",
    ],
)
def test_a_size_that_is_to_be_forgotten_by_its_place(text: str) -> None:
    (size,) = read_text(text)
    assert (size.od_mm, size.wall_mm, size.clr_mm) == (38, Decimal("1.5"), 76)
