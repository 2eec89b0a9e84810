"""Which of two materials belongs to which size, where later words say so; else it is doubted."""

from __future__ import annotations

import pytest

from bendreply.rules.request import Material

from .support import read_text

CS, AS, SS = Material.CARBON_STEEL, Material.ALLOY_STEEL, Material.STAINLESS_STEEL
AL = Material.ALUMINIUM

GIVEN: list[tuple[str, tuple[Material, Material]]] = [
    ("1.5 x .065 on 4.5 clr, 2 x .083 on 6 clr. The 1.5 is 304 and the 2 is 6061.", (SS, AL)),
    ("Rohr 38 x 1,5 R 57 und 50 x 2 R 100. Das 38er ist 1.4301, das 50er St37.", (SS, CS)),
    (
        "1.625 x .095 5.0 CLR\n1.500 x .120 4.5 CLR\n\n4130 for the 1-5/8, DOM for the other.",
        (AS, CS),
    ),
    (
        "Main hoop 1.75 x .120, braces 1.5 x .095, all 6 CLR. Hoop is DOM, braces are 4130.",
        (CS, AS),
    ),
    ("2 x .065 304 on 6 clr, 1.5 x .065 6061 on 4.5 clr", (SS, AL)),
    ("One for 2.5 x .065 aluminized on 5 clr. And one for 3 x .065 304, 4.5 clr.", (CS, SS)),
]


@pytest.mark.parametrize(("text", "materials"), GIVEN)
def test_a_size_has_the_material_given_to_it(
    text: str, materials: tuple[Material, Material]
) -> None:
    requests = read_text(text)
    assert tuple(request.material for request in requests) == materials
    assert not any(request.doubt_on("material") for request in requests)


@pytest.mark.parametrize(
    "text",
    [
        "1.5 x .065 and 2 x .083, all on 6 clr. One is 304, the other 6061.",
        "Rohr 38 x 1,5 und 50 x 2, beide R 100 mm. Eines ist 1.4301, das andere St37.",
    ],
)
def test_where_it_is_not_said_which_is_which_it_is_doubted(text: str) -> None:
    requests = read_text(text)
    assert len(requests) == 2
    assert all(request.doubt_on("material") for request in requests)


OD, WALL = "1.5 OD on a 4.5 CLR", "One mandrel for each."
BESIDE: list[tuple[str, tuple[Material | None, ...]]] = [
    # each behind its size
    ("1.5 x .065 mild steel and 2 x .083 304 on 4.5 CLR. One mandrel for each.", (CS, SS)),
    ("A mandrel for 1.5 x .065 in 304 and one for 2 x .083 in mild steel, both 6 CLR.", (SS, CS)),
    (f"{OD}: .065 mild steel and .049 304. {WALL}", (CS, SS)),
    (f"{OD}, in three walls: .049 304, .065 4130 and .095 mild. {WALL}", (SS, AS, CS)),
    ("Rohr 38 mm auf R 90: 1,5 mm 1.4301 und 2 mm S235. Je ein Dorn.", (SS, CS)),
    ("38 x 1,5 aus 1.4301 und 38 x 2 aus S235, beide R 90. Je ein Dorn.", (SS, CS)),
    ("Tube Ø 38, rayon 90 : 1,5 mm inox 304 et 2 mm acier S235. Un mandrin chacun.", (SS, CS)),
    ("Tubo Ø 38, raggio 90: spessore 1,5 AISI 304 e 2 S235. Un mandrino ciascuno.", (SS, CS)),
    ("Buis 38, straal 90: wand 1,5 in RVS 304 en wand 2 in S235. Elk één doorn.", (SS, CS)),
    # each ahead of its size
    (f"{OD}: 304 in .065 and mild steel in .095. {WALL}", (SS, CS)),
    ("We have 304 in 1.5 x .065 and mild in 2 x .083, both on 6 CLR. One each.", (SS, CS)),
    # what they all are comes first
    ("Stainless rails: 1.5 x .065 304 and 2 x .083 mild on 6 CLR. One mandrel each.", (SS, CS)),
    # the die is only what the tube is bent on
    ("The 38 x 1.5 on R 90 is 304; the 38 x 2 on that same die is mild. One each.", (SS, CS)),
    ("Das 38 x 1,5 auf R 90 ist 1.4301, das 38 x 2 auf dem Werkzeug ist S235.", (SS, CS)),
    # by place
    ("Both 1.5 OD, 4.5 CLR. #1 is .065 wall, #2 is .095. #1 is 4130; #2 is mild.", (AS, CS)),
    ("Both 1.5 OD, 4.5 CLR: A is .065 wall, B is .095 wall. A is 304, B is mild.", (SS, CS)),
    ("38 x 1,5 und 38 x 2, ersteres 1.4301, letzteres S235, beide R 90.", (SS, CS)),
    ("30 x 2 et 40 x 2, rayon 90. Le premier est en inox 304, le second en S235.", (SS, CS)),
]


@pytest.mark.parametrize(("text", "materials"), BESIDE)
def test_a_size_has_the_material_beside_it(
    text: str, materials: tuple[Material | None, ...]
) -> None:
    assert tuple(request.material for request in read_text(text)) == materials


@pytest.mark.parametrize(
    "text",
    [
        "First 38 x 2 (E235), R 90. Second 42 x 2, R 120, material not decided yet.",
        "1.5 x .065 mild steel, 4.5 CLR; 2 x .083, 6 CLR, material TBD. One of each.",
        "38 x 2 S235 R 90\n42 x 2 R 120 Material noch offen\nJe ein Dorn bitte.",
        "30 x 2 acier S235, rayon 60 ; 40 x 2, rayon 80, matière pas encore définie.",
        "30 x 2, acero S235, radio 60; 40 x 2, radio 80, material por definir.",
        "Tubo 30 x 2 S235, raggio 60; tubo 40 x 2, raggio 80, materiale da definire.",
        "Buis 30 x 2 S235, straal 60; buis 40 x 2, straal 80, materiaal nog niet bekend.",
    ],
)
def test_where_it_is_left_open_no_other_sizes_is_taken(text: str) -> None:
    assert [request.material for request in read_text(text)] == [CS, None]


@pytest.mark.parametrize(
    "text",
    [
        "A 4 inch CLR die, 1.5 OD. I run .065 wall and .120 wall. One mandrel for each wall.",
        "Tubo 40, raggio 80: spessore 1,5 in S235 e spessore 2 in S235. Un mandrino per ciascuno.",
        "Rohr 38 mm auf R 90: 1,5 mm 1.4301 und 2 mm 1.4301. Je ein Dorn.",
    ],
)
def test_one_for_each_asks_for_the_further_wall(text: str) -> None:
    requests = read_text(text)
    assert len(requests) == 2
    assert not any(request.doubts for request in requests)


BY_LINE: list[tuple[str, tuple[Material, ...]]] = [
    # a heading is of the lines below it
    (
        "MILD\n1.5 x .065, CLR 3\n2 x .065, CLR 4\nSTAINLESS\n1.5 x .065, CLR 2.25\nOne each",
        (CS, CS, SS),
    ),
    (
        "For the aluminum job:\n1.5 x .083, 4.5 CLR\n2 x .083, 6 CLR\n"
        "For the stainless job:\n1.5 x .065, 3 CLR\n2 x .065, 4 CLR\nOne of each, inches.",
        (AL, AL, SS, SS),
    ),
    (
        "Edelstahl:\n30 x 1,5 R 60\n40 x 1,5 R 80\nStahl:\n30 x 2 R 75\n40 x 2 R 100\nJe ein Dorn",
        (SS, SS, CS, CS),
    ),
    ("INOX\n- Ø 30 x 1,5 R 60\n- Ø 35 x 1,5 R 70\nACIER\n- Ø 40 x 2 R 100", (SS, SS, CS)),
    ("INOX\n30 x 1,5 R 60\n35 x 1,5 R 70\nACERO\n40 x 2 R 100", (SS, SS, CS)),
    ("Acciaio\n30 x 1,5 R 60\n35 x 1,5 R 70\nAlluminio\n40 x 2 R 100", (CS, CS, AL)),
    ("RVS:\n30 x 1,5 R 60\n35 x 1,5 R 70\nStaal:\n40 x 2 R 100", (SS, SS, CS)),
    # but for a line with its own
    (
        "304\n1.5 x .065, CLR 3\n1.75 x .065, CLR 3.5 (mild)\n4130\n2 x .058, CLR 4",
        (SS, CS, AS),
    ),
    # as a sentence of its own does
    ("Mild, CLR 4.5: 1.5 x .065; 1.5 x .095. Stainless, CLR 6: 2 x .065. One each.", (CS, CS, SS)),
    # a remark is of its own line
    ("42 x 2 R 85\n48 x 2 R 97 (this one stainless)\n60 x 2 R 121\nThe others mild.", (CS, SS, CS)),
    ("A. 60 x 3 R 150\nB. 76 x 3 R 190\nC. 60 x 2 R 120 (316L)\nA and B in P235GH.", (CS, CS, SS)),
    (
        "(1) 45 x 2 R 112\n(2) 45 x 2.5 R 135\n(3) 50 x 4 R 150 - aluminium\n"
        "mm. All except (3) are E355.",
        (CS, CS, AL),
    ),
    ("33 x 2 R 84\n42 x 2 R 106 (aluminium)\n48 x 2 R 120\nElse it's 1.4301.", (SS, AL, SS)),
    ("30 x 1,5 R 60\n35 x 1,5 R 70 (Alu)\n40 x 2 R 80\nSonst alles Stahl E235.", (CS, AL, CS)),
    ("30 x 1,5 R 60\n35 x 1,5 R 70 (inox)\n40 x 2 R 80\nLe reste en acier.", (CS, SS, CS)),
    ("30 x 1,5 R 60\n35 x 1,5 R 70 (inox)\n40 x 2 R 80\nEl resto acero.", (CS, SS, CS)),
    ("30 x 1,5 R 60\n35 x 1,5 R 70 (inox)\n40 x 2 R 80\nGli altri acciaio.", (CS, SS, CS)),
    ("30 x 1,5 R 60\n35 x 1,5 R 70 (rvs)\n40 x 2 R 80\nDe rest gewoon staal.", (CS, SS, CS)),
]


@pytest.mark.parametrize(("text", "materials"), BY_LINE)
def test_headings_and_remarks_of_a_list(text: str, materials: tuple[Material, ...]) -> None:
    requests = read_text(text)
    assert tuple(request.material for request in requests) == materials
    assert not any(request.doubt_on("material") for request in requests)
