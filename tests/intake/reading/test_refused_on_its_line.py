"""What the end of one line of a list refuses is not the next line's size; a tube that is bent well
as it is needs nothing; a cross-section that is denied is none."""

from __future__ import annotations

from decimal import Decimal

import pytest

from bendreply.rules.request import Shape

from .support import mm, read_text, written_down


@pytest.mark.parametrize(
    ("text", "ods"),
    [
        (
            "All 1.4301:\n\nTube (mm)\tCLR\tNo. of mandrels\tRemark\n35 x 1.5\t70\t1\n"
            "42.4 x 2\t85\t-\tcancelled, do not quote\n50 x 1.5\t100\t1\n\nRegards",
            ["35", "50"],
        ),
        (
            "Tube (mm)\tCLR\tQty\tRemark\n35 x 1.5\t70\t1\t\n42.4 x 2\t85\t1\tdo not quote\n"
            "50 x 1.5\t100\t1\t\n60.3 x 2\t120\t1\t",
            ["35", "50", "60.3"],
        ),
        (
            "One mandrel each:\n38 x 2, R 76\n42.4 x 2, R 85 - do not quote\n50 x 2, R 100",
            ["38", "50"],
        ),
        ("One mandrel for 38 x 2, R 76.\n\nPlease do not quote\nthe 42.4 x 2.", ["38"]),
    ],
)
def test_a_refusal_is_of_its_own_line(text: str, ods: list[str]) -> None:
    requests = read_text(text)
    assert [r.od_mm for r in requests] == [Decimal(od) for od in ods], written_down(requests)
    assert not any(r.doubts for r in requests), written_down(requests)


@pytest.mark.parametrize(
    "text",
    [
        "Please offer 1 mandrel for 60.3 x 2.9, R 180. We have been bending 42.4 x 2.6 since 2019"
        " without mandrel on the same machine and that works well.",
        "Bitte Angebot für einen Dorn 60,3 x 2,9, R 180. Das 42,4 x 2,6 biegen wir seit Jahren"
        " ohne Dorn und das klappt sehr gut.",
        "Merci de chiffrer un mandrin pour 60,3 x 2,9, R 180. Nous cintrons le 42,4 x 2,6 sans"
        " mandrin et ça marche très bien.",
        "Necesitamos un mandril para 60,3 x 2,9, R 180. El 42,4 x 2,6 lo curvamos sin mandril y"
        " va muy bien.",
        "Ci serve un mandrino per 60,3 x 2,9, R 180. Il 42,4 x 2,6 lo curviamo senza anima e va"
        " benissimo.",
        "Graag een doorn voor 60,3 x 2,9, R 180. De 42,4 x 2,6 buigen we zonder doorn en dat gaat"
        " prima.",
        "I need a price on a mandrel for 60.3 x 2.9, R 180. Also have some 42.4 x 2.6 but that"
        " bends ok with what I got.",
    ],
)
def test_what_bends_well_as_it_is_is_only_told_of(text: str) -> None:
    requests = read_text(text)
    assert len(requests) == 1, written_down(requests)
    assert mm("60.3", "2.9", "180").describes(requests[0]), written_down(requests)


def test_a_later_size_is_left_out_beside_a_tube_told_by_its_bore() -> None:
    requests = read_text(
        "Nous consultons pour un mandrin : tube aluminium 6060 T4, intérieur 20, extérieur 24 (mm),"
        " rayon sur fibre neutre 60. Quantité 1.\n\nNous avons aussi du 16 x 18 à cintrer mais plus"
        " tard dans l'année, ne le chiffrez pas."
    )
    assert len(requests) == 1, written_down(requests)
    assert mm("24", "2", "60").describes(requests[0]), written_down(requests)


@pytest.mark.parametrize(
    "text",
    [
        "We bend 42.4 x 2.6 on R 100 without a mandrel but it does not work well, please quote"
        " one. Also 60.3 x 2.9, R 180.",
        "Nous cintrons le 42,4 x 2,6, R 100 sans mandrin et ça plisse. Il nous faut un mandrin,"
        " et un autre pour 60,3 x 2,9, R 180.",
    ],
)
def test_what_bends_badly_stays(text: str) -> None:
    assert Decimal("42.4") in {r.od_mm for r in read_text(text)}


@pytest.mark.parametrize(
    "text",
    [
        "Is it square? no, not the square, that one we bend by hand. The round: 30 OD, 2 mm wall,"
        " on 60 mm centerline. One mandrel.",
        "Nicht das Vierkantrohr, sondern rund: 30 x 2, R 60. Ein Dorn.",
        "Pas le carré, le rond : tube 30 x 2, R 60. Un mandrin svp.",
        "No el cuadrado, el redondo: 30 x 2, R 60. Un mandril.",
        "Non il quadro, il tondo: 30 x 2, R 60. Un mandrino.",
        "Niet de vierkante, de ronde: 30 x 2, R 60. Een doorn.",
    ],
)
def test_a_section_that_is_denied_is_none(text: str) -> None:
    requests = read_text(text)
    assert [(r.shape, r.od_mm) for r in requests] == [(Shape.ROUND, 30)], written_down(requests)
