"""Sizes a label a line or in a word of shop talk, and the figures beside them that are none.

Gauges from the BWG and SWG columns, the rest by arithmetic; the sentences are made up.
"""

# ruff: noqa: E501 - a row of a table stands on one line: the words, then their meaning

from __future__ import annotations

import pytest

from .support import Size, case, inch, mm, read_text, written_down

GAUGE_LABELS = [  # BWG 16 is .065 in, SWG 16 is .064 in
    case("gauge-column", "  tube OD     31.75\n  gauge       16\n  radius      95.25\n\nAll mm but the gauge.", mm("31.75", "1.651", "95.25")),
    case("gauge-dash", 'Tube OD - 1-1/4"\nGauge - 16\nCLR - 3-3/4"\n', inch("1.25", "0.065", "3.75")),
    case("gauge-point", 'OD 1-1/4"\nGa. 16\nCLR 3-3/4"\n', inch("1.25", "0.065", "3.75")),
    case("gauge-leaders", 'Tube OD ..... 1-1/4"\nGauge ..... 16\nCLR ..... 3-3/4"\n', inch("1.25", "0.065", "3.75")),
    case("gauge-bar", 'Tube OD | 1-1/4"\nGauge | 16\nCLR | 3-3/4"\n', inch("1.25", "0.065", "3.75")),
    case("gauge-bracket", 'OD        1-1/4"\nwall (gauge)       16\nCLR       3-3/4"', inch("1.25", "0.065", "3.75")),
    case("swg-column", 'OD        1-1/4"\nSWG       16\nCLR       3-3/4"', inch("1.25", "0.064", "3.75")),
    case("bwg-no", 'OD        1-1/4"\nBWG no.       16\nCLR       3-3/4"', inch("1.25", "0.065", "3.75")),
    case("ga-then-pieces", '1-1/4" x 16 ga - 16 pieces of tube a week, CLR 3-3/4", one mandrel', inch("1.25", "0.065", "3.75")),
]  # fmt: skip

GAUGE_LISTS = [  # BWG 11, 13, 14, 16, 18: .120, .095, .083, .065, .049 in
    case("three-gauges", '1-1/2" OD, 4-1/2" CLR. We run it in 11, 13 and 16 gauge. A mandrel for each wall.', inch("1.5", "0.120", "4.5"), inch("1.5", "0.095", "4.5"), inch("1.5", "0.065", "4.5")),
    case("four-gauges", '1-1/2" OD, 4-1/2" CLR, in 18, 16, 14 and 11 ga. A mandrel for each.', inch("1.5", "0.049", "4.5"), inch("1.5", "0.065", "4.5"), inch("1.5", "0.083", "4.5"), inch("1.5", "0.120", "4.5")),
    case("inches-then-gauge", "Mandrels for 1-1/2, 1-3/4 and 2 inch, 16 ga, 6 CLR", inch("1.5", "0.065", "6"), inch("1.75", "0.065", "6"), inch("2", "0.065", "6")),
]  # fmt: skip

SIGNED_CHAINS = [
    case("sign-chain-comma", "Ø 26,9 x 2,0 mm, radius 54 mm, quantity 2\nØ 21,3 x 2,5 mm, radius 43 mm, quantity 3", mm("26.9", "2", "54"), mm("21.3", "2.5", "43")),
    case("sign-chain-numbered", "a) Ø 26,9 x 2,0 mm, Radius 54 mm, Anzahl 2\nb) Ø 21,3 x 2,5 mm, Radius 43 mm, Anzahl 3", mm("26.9", "2", "54"), mm("21.3", "2.5", "43")),
    case("sign-chain-bar", "Ø38 x 1.5 | CLR 76 | qty 1\nØ50 x 2 | CLR 100 | qty 1", mm("38", "1.5", "76"), mm("50", "2", "100")),
]  # fmt: skip

ONE_BEND = [
    case("have-one-bend", 'We have a duct with 2.5" OD, .028" wall, CLR 3.75", one 105 degree bend. Please quote a mandrel.', inch("2.5", "0.028", "3.75")),
    case("got-one-bend", "We've got a rail in 38 x 1.5, CLR 76, one bend at 90. One mandrel please.", mm("38", "1.5", "76")),
]  # fmt: skip

SHORT_WORDS = [
    case("int-x-ext", "Tube cuivre 12 x 14 (int. x ext.), rayon 42 mm. Un mandrin.", mm("14", "1", "42")),
    case("ext-x-int", "Tube inox 30 x 26 (ext x int), rayon 90 mm. Un mandrin.", mm("30", "2", "90")),
    case("int-x-est", "Tubo 26 x 30 (int. x est.), raggio 90 mm. Un mandrino.", mm("30", "2", "90")),
    case("r75c", "Mandrel for od50 t1.5 r75c, 1.4301", mm("50", "1.5", "75")),
    case("r4.5c", "Mandrel for 1.5 x .065 r4.5c please", inch("1.5", "0.065", "4.5")),
    case("heated-to-75c", "Mandrel for 20 x 2 r 60, we heat it to 75c", mm("20", "2", "60")),
    case("diam-es", "nº 1: diám. 40, pared 1,5, radio 80\nnº 2: diám. 60, pared 2, radio 120\n\nUn mandril de cada.", mm("40", "1.5", "80"), mm("60", "2", "120")),
    case("diam-ext-int-es", "Tubo: diám. int. 27, diám. ext. 30, radio 60. Un mandril.", mm("30", "1.5", "60")),
    case("durchm", "Nr. 1: Durchm. 40, Wand 1,5, Radius 80\nNr. 2: Durchm. 60, Wand 2, Radius 120\n\nJe ein Dorn.", mm("40", "1.5", "80"), mm("60", "2", "120")),
    case("diam-nl", "Buis: diam. uitw. 30, diam. inw. 27, straal 60. Een doorn graag.", mm("30", "1.5", "60")),
    case("no-1-no-2", "no 1: dia. 40, wall 1.5, radius 80\nno 2: dia. 60, wall 2, radius 120\n\nOne mandrel of each.", mm("40", "1.5", "80"), mm("60", "2", "120")),
    case("no-corrects", "1.5 x .065, clr 5. no 5.5 clr. One mandrel.", inch("1.5", "0.065", "5.5")),
]  # fmt: skip

SORRY_NO = [  # BWG 11 and 13: .120, .095 in; SWG 12: .104 in
    case("sorry-no-swg", "A mandrel for 1 inch tube, 3 inch clr.\n10 swg\nsorry no. 12 swg", inch("1", "0.104", "3")),
    case("sorry-no-comma", "A mandrel for 1 inch tube, 3 inch clr, wall .120. Sorry no, .095", inch("1", "0.095", "3")),
    case("oh-no", "A mandrel for 1 inch tube, 3 inch clr, 11 ga. Oh no. 13 ga.", inch("1", "0.095", "3")),
    case("desole-non", "Tube 25 mm, rayon 75, paroi 3 mm. Désolé, non, 2,5 mm. Un mandrin.", mm("25", "2.5", "75")),
    case("scusi-no", "Tubo 25 mm, raggio 75, parete 3 mm. Scusi no, 2,5 mm. Un mandrino.", mm("25", "2.5", "75")),
    case("sorry-nee", "Buis 25 mm, straal 75, wand 3 mm. Sorry nee, 2,5 mm. Een doorn.", mm("25", "2.5", "75")),
    case("sorry-no-drawing", "1.5 x .065, clr 4.5. Sorry, no drawing yet. One mandrel.", inch("1.5", "0.065", "4.5")),
]  # fmt: skip

ROUND_TUBE = [  # a point was lost, but no rectangle is meant
    case("round-en", "A mandrel for round tube 25 x 15 mm, clr 50.", mm("25", "1.5", "50", "wall")),
    case("round-it", "Serve un mandrino per tubo tondo inox 304, 25 x 15, curva R50 in asse.", mm("25", "1.5", "50", "wall")),
    case("round-de", "Dorn für Rundrohr 25 x 15, R 50.", mm("25", "1.5", "50", "wall")),
    case("round-bore", "Mandrin pour tube rond 12 x 14, R 42.", mm("14", "1", "42")),
    case("not-round", "A mandrel for tube 25 x 15 mm, clr 50.", mm("25", "1.5", "50", "shape wall")),
    case("half-round", "A mandrel for half round tube 25 x 15 mm, clr 50.", mm("25", "1.5", "50", "shape wall")),
]  # fmt: skip

MADE_A_WEEK = [  # output is no radius
    case("rails-a-week", "25.4 mm tube, 1.2 mm wall, brass. 2 mandrels. Rails per week about 150.", mm("25.4", "1.2")),
    case("annual-volume", "25.4 x 1.2 mm brass tube. 2 mandrels. Annual volume around 150.", mm("25.4", "1.2")),
    case("pro-woche", "Messingrohr 25,4 x 1,2 mm. 2 Dorne. Pro Woche etwa 150.", mm("25.4", "1.2")),
    case("par-semaine", "Tube 25,4 x 1,2 mm. 2 mandrins. Pièces par semaine environ 150.", mm("25.4", "1.2")),
    case("monthly-order", "Monthly order: 38 x 1.5 mm, radius 57. One mandrel.", mm("38", "1.5", "57")),
]  # fmt: skip

TO_BEND = [
    case("to-bend-bars", "Looking for tooling to bend 60mm nudge bars. Wall's 2mm, radius 180. And a smaller one for the light bar, 42mm, same wall, radius 126.", mm("60", "2", "180"), mm("42", "2", "126")),
    case("para-curvar", "Busco un mandril para curvar 42 mm inox. Pared 2 mm, radio 126 mm.", mm("42", "2", "126")),
    case("legs", "We need a mandrel to bend 90 mm legs. Tube is 20 x 1.5 mm, clr 40.", mm("20", "1.5", "40")),
]  # fmt: skip


@pytest.mark.parametrize(
    ("text", "sizes"),
    [
        *GAUGE_LABELS,
        *GAUGE_LISTS,
        *ONE_BEND,
        *SIGNED_CHAINS,
        *SHORT_WORDS,
        *SORRY_NO,
        *ROUND_TUBE,
        *MADE_A_WEEK,
        *TO_BEND,
    ],
)
def test_words_are_read_as_meant(text: str, sizes: tuple[Size, ...]) -> None:
    requests = read_text(text)
    right = len(requests) == len(sizes) and all(
        size.describes(request) for size, request in zip(sizes, requests, strict=True)
    )
    assert right, f"{text!r} was read as\n{written_down(requests)}"


def test_italian_item_numbers_count_no_mandrels() -> None:
    sizes = read_text(
        "n. 1: diametro 40, spessore 1,5, raggio 80\n"
        "n. 2: diametro 60, spessore 2, raggio 120\n\nUn mandrino per ciascuno."
    )
    assert [size.quantity for size in sizes] == [1, 1]
