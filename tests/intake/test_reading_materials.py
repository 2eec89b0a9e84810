"""Tube materials in mail: the words, then what they mean. All messages are invented."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from bendreply.intake.reading.material.materials import MaterialMention, find_materials
from bendreply.rules.request import Material

from ..pace import assert_quick

CS, AS, SS = Material.CARBON_STEEL, Material.ALLOY_STEEL, Material.STAINLESS_STEEL
AL, TI, CU = Material.ALUMINIUM, Material.TITANIUM, Material.COPPER
BR, NI, OTHER = Material.BRASS, Material.NICKEL_ALLOY, Material.OTHER


def only(text: str) -> MaterialMention:
    found = find_materials(text)
    assert len(found) == 1, found
    return found[0]


@pytest.mark.parametrize(
    ("text", "family", "grade"),
    [
        # US tube by process and number
        ("1.75 OD x .095 wall DOM on a 5.25 CLR", CS, "DOM"),
        ("1.5 .120 dom tubing", CS, "dom"),
        ("1.500   .065   4.50   1020 DOM       1", CS, "1020 DOM"),
        ("2.000 .120 6.00 A513 Type 5   1", CS, "A513 Type 5"),
        ("pipe A106B sch 40", CS, "A106B"),
        ("A53 Gr. B pipe", CS, "A53 Gr. B"),
        ("1.500 x .065 1020 on a 4.500 CLR", CS, "1020"),
        ("1-5/8 HREW", CS, "HREW"),
        ("1-1/2 x .120 steel on a 6", CS, None),
        ("mild steel 1.5 x .083", CS, None),
        ("1.5 x .120 mild", CS, None),
        ("1-1/4 black pipe", CS, None),
        ("3/4 EMT", CS, None),
        ("MS pipe 48.3", CS, None),
        ("7/8 x .035 4130 on a 3-1/2", AS, "4130"),
        ("1.75 OD 4130", AS, "4130"),
        ("1.75 x .035 304 1.5 CLR", SS, "304"),
        ("chrome moly tube 1.5", AS, None),
        ("cromoly", AS, None),
        ("15/8 x .083 moly mandrel", AS, None),
        ("15CDV6 tube", AS, "15CDV6"),
        ("25CrMo4", AS, "25CrMo4"),
        ('3" OD 18 GA 304 stainless', SS, "304"),
        ("304SS, 3-1/4 CLR", SS, "304"),
        ("SS 316L", SS, "316L"),
        ("S.S. 304", SS, "304"),
        ("1.250 OD x .049 W, 304, 2.50 CLR", SS, "304"),
        ("1.5 x .065 - 304", SS, "304"),
        ("321 tubing 1.75 .035", SS, "321"),
        ("409 tubing", SS, "409"),
        ("304/304L", SS, "304/304L"),
        ("A269 TP316L", SS, "A269 TP316L"),
        ("CRES 321", SS, "CRES 321"),
        ("17-7 stainless", SS, "17-7"),
        ("21-6-9 tube", SS, "21-6-9"),
        ("2205 duplex", SS, "2205"),
        ("6061-T6 aluminum", AL, "6061-T6"),
        ("6061 T6 tube", AL, "6061 T6"),
        ("6061T651", AL, "6061T651"),
        ("5052-O", AL, "5052-O"),
        ("2024-T3", AL, "2024-T3"),
        ('6061 2" OD .135', AL, "6061"),
        ("Al6061", AL, "Al6061"),
        ("grade 9 titanium", TI, "grade 9"),
        ("Ti 3-2.5 tube", TI, "Ti 3-2.5"),
        ("3Al-2.5V CWSR", TI, "3Al-2.5V CWSR"),
        ("Ti-6Al-4V", TI, "Ti-6Al-4V"),
        ("22mm OD x 0.9mm wall copper", CU, None),
        ("type L copper", CU, "type L"),
        ("C12200", CU, "C12200"),
        ("90/10 CuNi", CU, "90/10 CuNi"),
        ("cupro-nickel", CU, None),
        ("The rail is brass, alloy 260, two inches", BR, "260"),
        ("CuZn37", BR, "CuZn37"),
        ("Inconel 625", NI, "Inconel 625"),
        ("alloy 718", NI, "718"),
        ("Hastelloy C-276", NI, "Hastelloy C-276"),
        ("carbon fibre tube", OTHER, None),
        ("PVC", OTHER, None),
        # EN, DIN, JIS
        ("Material E235+N, Biegeradius", CS, "E235+N"),
        ("steel P235TR1 acc. to EN 10217-1", CS, "P235TR1"),
        ("25 x 2,5 aus E235N", CS, "E235N"),
        ("St 37", CS, "St 37"),
        ("St52.3", CS, "St52.3"),
        ("S355J2H", CS, "S355J2H"),
        ("DC04", CS, "DC04"),
        ("1.0308", CS, "1.0308"),
        ("T45 tube", CS, "T45"),  # a carbon-manganese steel: see rules/data/SOURCES.md
        ("STKM13A 25.4", CS, "STKM13A"),
        ("steel 20#", CS, "20#"),
        ("Rohr 38 x 1,5 geschweißt, Werkstoff 1.4301", SS, "1.4301"),
        ("Stainless 1.4541, welded", SS, "1.4541"),
        ("V2A Rohr", SS, "V2A"),
        ("SUS304", SS, "SUS304"),
        ("X5CrNi18-10", SS, "X5CrNi18-10"),
        ("EN AW-6060 T66", AL, "EN AW-6060 T66"),
        ("AlMgSi0.5", AL, "AlMgSi0.5"),
        ("A6063-T5", AL, "A6063-T5"),
        ("CuNi10", CU, "CuNi10"),
    ],
)
def test_family_and_grade(text: str, family: Material, grade: str | None) -> None:
    mention = only(text)
    assert mention.family is family
    assert mention.grade == grade
    assert (mention.rejected, mention.alternative, mention.about_tool) == (False, False, False)


@pytest.mark.parametrize(
    ("text", "family"),
    [
        ("Edelstahlrohr 42,4 x 2", SS), ("rostfreier Stahl", SS), ("Kupferrohr 22 x 1", CU),
        ("Messing", BR), ("Stahlrohr", CS), ("acier 25 x 2", CS), ("acier inoxydable", SS),
        ("tube inox 38", SS), ("laiton", BR), ("cuivre", CU), ("acero inoxidable", SS),
        ("acero 38 x 1,5", CS), ("latón", BR), ("acciaio inox", SS), ("acciaio", CS),
        ("ottone", BR), ("alluminio", AL), ("RVS buis", SS), ("roestvast staal", SS),
        ("koperbuis", CU), ("stal nierdzewna", SS), ("mosiądz", BR), ("miedź", CU),
        ("aço inox", SS), ("latão", BR), ("rostfritt", SS), ("mässing", BR), ("Titan", TI),
        ("ステンレス", SS), ("Ｓ ＳＵＳ３０４", SS),
    ],
)  # fmt: skip
def test_words_in_other_languages(text: str, family: Material) -> None:
    assert only(text).family is family


@pytest.mark.parametrize(
    ("text", "surface", "family", "grade"),
    [
        ("DOM mild steel", "DOM mild steel", CS, "DOM"),
        ("steel DOM 1020", "steel DOM 1020", CS, "DOM 1020"),
        ("4130 chromoly", "4130 chromoly", AS, "4130"),
        ("chromoly steel", "chromoly steel", AS, None),
        ("stainless steel tube", "stainless steel", SS, None),
        ("It is stainless\nsteel tube", "stainless\nsteel", SS, None),
        ("steel tube, 304", "steel tube, 304", SS, "304"),
        ("304 ERW", "304 ERW", SS, "304"),
        ("stainless (304)", "stainless (304", SS, "304"),
    ],
)
def test_neighbours_are_one_material_and_the_exact_word_wins(
    text: str, surface: str, family: Material, grade: str | None
) -> None:
    mention = only(text)
    assert (mention.surface, mention.family, mention.grade) == (surface, family, grade)


def test_a_grade_said_twice_is_named_once() -> None:
    found = find_materials("CuNi10 (90/10, 2.1972), 57 x 1,5 mm")
    assert {m.family for m in found} == {CU}
    assert found[0].grade == "CuNi10"
    assert not any(m.alternative for m in found)


def test_rows_of_a_table_stay_apart() -> None:
    assert [m.grade for m in find_materials("1.5 .095 DOM\n1.75 .095 DOM")] == ["DOM", "DOM"]
    assert [m.grade for m in find_materials("DOM\nDOM")] == ["DOM", "DOM"]


@pytest.mark.parametrize(
    "text",
    [
        "304.8 mm",
        "321 mm long",
        "length 316",
        "Tel 316-555-0190",
        "phone 304 555 0190",
        "724-555-4130",
        "(724) 304-0190",
        "724 304 0190",
        "Ph 555 4130",
        "$304",
        "qty 304",
        "304 pcs",
        "304 of them",
        "50.8 x 304",
        "radius 304",
        "ext 304",
        "304 Main Street",
        "the 6061 Industrial Pkwy",
        "1,304",
        "in 2024",
        "201 please",
        "a .625 wall, 625 long",
        "260 bends a day",
        "1.5 x .065 110",
        "1.5 x .065 1020 pcs",
        "1.4375 OD",
        "1.0625 x .065",
        "3.1250 OD",
        "sales@steel.example.com",
        "www.brass.example.org",
        "Thanks,\nDom",
        "Ti invio il disegno",
        "mild weather",
        "Richmond, VA 23220",
        "alloy tube",
        "iron out the details",
        "Washington DC 4",
        "grade 2 bolts",
        "",
    ],
)
def test_numbers_and_words_that_are_no_material(text: str) -> None:
    assert find_materials(text) == ()


@pytest.mark.parametrize(
    ("text", "rejected", "wanted"),
    [
        ("Not 304 this time either, it's DOM.", ["304"], ["DOM"]),
        ("we used to use 4130 but now it is DOM", ["4130"], ["DOM"]),
        ("instead of steel we want aluminium", ["steel"], ["aluminium"]),
        ("nicht 1.4301 sondern S235", ["1.4301"], ["S235"]),
        ("316L rather than 304", ["304"], ["316L"]),
        ("Not 304 or 316, but 321", ["304", "316"], ["321"]),
        ("statt Kupfer diesmal Messing", ["Kupfer"], ["Messing"]),
        ("pas inox", ["inox"], []),
        ("I am not sure. 304 I think", [], ["304"]),
        ("No. 16 gauge steel", [], ["steel"]),
    ],
)
def test_what_the_sender_rules_out(text: str, rejected: list[str], wanted: list[str]) -> None:
    found = find_materials(text)
    assert [m.surface for m in found if m.rejected] == rejected
    assert [m.surface for m in found if not m.rejected] == wanted


@pytest.mark.parametrize(
    ("text", "surfaces"),
    [
        ("whether 304 or 316", ["304", "316"]),
        ("not sure if 304 or 4130", ["304", "4130"]),
        ("mild, stainless", ["mild", "stainless"]),
        ("mild steel or stainless?", ["mild steel", "stainless"]),
        ("aus Stahl oder Aluminium", ["Stahl", "Aluminium"]),
        (
            "from S235 with powder coating, as now, or from stainless 1.4301.",
            ["S235", "stainless 1.4301"],
        ),
    ],
)
def test_two_materials_left_open(text: str, surfaces: list[str]) -> None:
    assert [m.surface for m in find_materials(text) if m.alternative] == surfaces


def test_two_tubes_are_no_choice() -> None:
    found = find_materials("1.5 x .095 DOM or 2 x .083 in 304")
    assert [m.alternative for m in found] == [False, False]


@pytest.mark.parametrize(
    "text",
    [
        "steel die",
        "hardened steel mandrel",
        "aluminium bronze mandrel",
        "aluminium bronze of 200 HB",
        "brass balls",
        "tool steel",
        "hard chrome steel 60 HRC",
        "Do you advise bronze or hardened steel for this?",
        "the mandrel is steel",
        "steel yard",
        "nickel plated",
        "Example Steel Inc",
        "brass fittings",
    ],
)
def test_materials_that_are_not_the_tubes(text: str) -> None:
    assert only(text).about_tool


@pytest.mark.parametrize(
    "text",
    [
        "304 stainless mandrel bends",
        "a stainless mandrel",
        "mandrels for brass tube",
        "mandrel in 1.75 x .095 DOM",
    ],
)
def test_a_mandrel_nearby_does_not_take_the_tubes_material(text: str) -> None:
    assert not only(text).about_tool


# fmt: off
_PIECES = st.sampled_from([
    "304", "316L", "1.4301", "DOM", "1020", "4130", "steel", "stainless", "not", "or", ",", ".",
    "\n", "/", "(", ")", "6061", "-T6", "Ti", "Cu", "grade", "2", "alloy", "260", "brass", "mm",
    "x", "1½", "Ø", "“", "３０４", "é",
    "St", "37", "S.S.", "@", "#", "$", "type", "L", "CuNi",
    "90/10",
    "E235", "+N", "\u200b", "\u00a0", "ステンレス", "\r\n",
])
# fmt: on


@given(
    st.one_of(
        st.text(), st.lists(_PIECES, max_size=30).map(" ".join), st.lists(_PIECES).map("".join)
    )
)
def test_any_text_is_read_and_every_span_slices_to_its_words(text: str) -> None:
    reached = 0
    for mention in find_materials(text):
        assert text[mention.start : mention.end] == mention.surface
        assert mention.surface
        assert mention.start >= reached
        reached = mention.end
        assert mention.grade is None or mention.grade.strip()


@pytest.mark.parametrize(
    "piece",
    ["a", " ", "\n ", ".", "1", "304 ", "S ", "S.S. ", "steel or ", "not the a ", "1.4301, ",
     "6061-T6 1020 ", "al mg si ", "A 5 ", "T t6 x5 cr ", "CuNi ", "(", "1-"],
)  # fmt: skip
def test_100_kb_of_anything_takes_no_time(piece: str) -> None:
    hostile = (piece * (100_000 // len(piece) + 1))[:100_000]
    assert_quick(lambda: find_materials(hostile), within=2)  # usually 0.3 s at worst
