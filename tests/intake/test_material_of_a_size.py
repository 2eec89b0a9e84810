"""The material of a size, from whole messages: spelled out, hidden, denied, or somebody else's."""

from __future__ import annotations

import pytest

from bendreply.rules.request import Material

from .reading.support import read_text

CS, AS, SS = Material.CARBON_STEEL, Material.ALLOY_STEEL, Material.STAINLESS_STEEL
AL, TI, CU = Material.ALUMINIUM, Material.TITANIUM, Material.COPPER
BR, NI = Material.BRASS, Material.NICKEL_ALLOY

WORDINGS: list[tuple[str, Material | None, str | None]] = [
    ("mandrel for inch and three quarter by one twenty wall D O M, six inch radius", CS, "D O M"),
    ("mandrel 1.75 x .120 D.O.M tube 6 clr", CS, "D.O.M"),
    ("mandrel 1.5 x .120 H R E W 6 clr", CS, "H R E W"),
    ("Tube OD ... 2-1/2\"\nWall ... .065\"\nCLR ... 5\"\nMaterial ... T304\nmandrel", SS, "T304"),
    ("mandrel 2.5 x .065, 5 clr, T-304", SS, "T-304"),
    ("mandrel 2.5 x .065, 5 clr, T316L", SS, "T316L"),
    ("mandrel 2.5 x .065, 5 clr, T-321 stainless", SS, "T-321"),
    ("mandrel 2.5 x .065 type 304 on 5 clr", SS, "304"),
    ("mandrel 2.5 x .065 304 SS on 5 clr", SS, "304"),
    ("mandrel 2.5 x .065 ss304L on 5 clr", SS, "304L"),
    ("need mandrel 2 3/8 x .154 a53 on 7 1/8 clr, 1 ea", CS, "a53"),
    ("need mandrel 2 3/8 x .154 a53b on 7 1/8 clr, 1 ea", CS, "a53b"),
    ("need mandrel 2 3/8 x .154 a106 on 7 1/8 clr, 1 ea", CS, "a106"),
    ("need mandrel 1.5 x .065 a513 on 4.5 clr", CS, "a513"),
    ("need mandrel 1.5 x .065 sa179 on 4.5 clr", CS, "sa179"),
    ("I need one for 1.5\" OD x .035\" wall grade 2, 2.25\" centerline radius. titanium", TI, None),
    ("mandrel 1.5 x .035 titanium gr 2, 2.25 clr", TI, "gr 2"),
    ("mandrel 1.5 x .035 titanium grade 9, 2.25 clr", TI, "grade 9"),
    ("mandrel 1.5 x .035 Gr9 Ti, 2.25 clr", TI, "Gr9"),
    ("mandrel 1.5 x .035 CP2 titanium, 2.25 clr", TI, "CP2"),
    ("mandrel 1.5 x .035 CP titanium, 2.25 clr", TI, None),
    ("Dorn 38 x 1, R 57, 3.7035", TI, "3.7035"),
    ("Dorn 38 x 1, R 57, 3.7165 Titan", TI, "3.7165"),
    ("mandrin tube titane grade 2 38 x 1, rayon 57", TI, "grade 2"),
    ("mandril titanio grado 2 38 x 1, radio 57", TI, "grado 2"),
    ("mandrino titanio grado 2 38 x 1, raggio 57", TI, "grado 2"),
    ("mandrel for 38 x 1.5 R57 P235GH", CS, "P235GH"),
    ("mandrel for aluminized 2.5 x .065, 4 clr", CS, None),
    ("mandrel for aluminised steel 2.5 x .065, 4 clr", CS, None),
    ("mandrel for galvanized 1.5 x .065, 4.5 clr", CS, None),
    ("mandrel for galv 1.5 x .065, 4.5 clr", CS, None),
    ("mandrel for 1.5 x .065, 4.5 clr, cold rolled", CS, None),
    ("mandrel for 1.5 x .065, 4.5 clr, CDS", CS, "CDS"),
    ("mandrel for 1.5 x .065, 4.5 clr, ERW", CS, "ERW"),
    ("mandrel for 1.5 x .065, 4.5 clr, 1010 steel", CS, "1010"),
    ("mandrel for 1.5 x .065, 4.5 clr, 4130N", AS, "4130N"),
    ("mandrel for 1.5 x .065, 4.5 clr, chromoly", AS, None),
    ("mandrel for 1.5 x .065, 4.5 clr, chro-moly", AS, None),
    ("mandrel for 1.5 x .065, 4.5 clr, 4130 cond N", AS, "4130"),
    ("mandrel for 1.5 x .065, 4.5 clr, ally 6061", AL, "6061"),
    ("mandrel for 1.5 x .065, 4.5 clr, inox", SS, None),
    ("Dorn 38 x 1,5 R 57 V4A", SS, "V4A"),
    ("Dorn 38 x 1,5 R 57 Edelstahl", SS, None),
    ("Dorn 38 x 1,5 R 57 Nirosta", SS, None),
    ("Dorn 38 x 1,5 R 57 Alu", AL, None),
    ("Dorn 38 x 1,5 R 57 Messing", BR, None),
    ("Dorn 38 x 1,5 R 57 St37", CS, "St37"),
    ("Dorn 38 x 1,5 R 57 Baustahl", CS, None),
    ("Dorn 38 x 1,5 R 57 Präzisionsstahlrohr E235+N", CS, "E235+N"),
    ("mandrin tube 38 x 1,5 rayon 57 inox 304L", SS, "304L"),
    ("mandrin tube 38 x 1,5 rayon 57 en acier", CS, None),
    ("mandrin tube 38 x 1,5 rayon 57 en laiton", BR, None),
    ("mandrin tube 38 x 1,5 rayon 57 Z2CN18-10", SS, "Z2CN18-10"),
    ("mandril tubo 38 x 1,5 radio 57 acero inoxidable AISI 304", SS, "AISI 304"),
    ("mandril tubo 38 x 1,5 radio 57 acero negro", CS, None),
    ("mandril tubo 38 x 1,5 radio 57 latón", BR, None),
    ("mandrino tubo 38x1,5 raggio 57 acciaio inox AISI 316L", SS, "AISI 316L"),
    ("mandrino tubo 38x1,5 raggio 57 ferro", CS, None),
    ("mandrino tubo 38x1,5 raggio 57 Fe 360", CS, "Fe 360"),
    ("mandrino tubo 38x1,5 raggio 57 ottone", BR, None),
    ("doorn buis 38x1,5 straal 57 rvs 304", SS, "304"),
    ("doorn buis 38x1,5 straal 57 gewoon staal", CS, None),
    ("doorn buis 38x1,5 straal 57 roestvrij staal", SS, None),
    ("doorn buis 38x1,5 straal 57 messing", BR, None),
    ("doorn buis 38x1,5 straal 57 koper", CU, None),
    ("trzpień rura 38x1,5 promień 57 stal nierdzewna", SS, None),
    ("trzpień rura 38x1,5 promień 57 mosiądz", BR, None),
    ("dorn rör 38x1,5 radie 57 rostfritt", SS, None),
    ("mandrel 38 x 1.5 R 57 kunifer", CU, None),
    ("mandrel 1.5 x .065 4.5 clr Inconel 625", NI, "Inconel 625"),
    ("mandrel 1.5 x .065 4.5 clr C260 brass", BR, "C260"),
    ("mandrel 1.5 x .065 4.5 clr cartridge brass", BR, None),
    ("mandrel 1.5 x .065 4.5 clr mild", CS, None),
    ("mandrel 1.5 x .065 4.5 clr s/s", SS, None),
    ("mandrel 1.5 x .065 4.5 clr, regular steel", CS, None),
    ("mandrel 1.5 x .065 4.5 clr, plain old steel", CS, None),
    ("mandrel 1.5 x .065 4.5 clr, exhaust tube 409", SS, "409"),
    ("My crew needs a mandrel for 1.5 x .065, 4.5 clr", None, None),
    ("pit crew needs a mandrel for 1.5 x .065, 4.5 clr asap", None, None),
    ("mandrel 1.5 x .120 CREW, 4.5 clr", CS, "CREW"),
    ("mandrel 1.5 x .120 crew tube, 4.5 clr", CS, "crew"),
    ("We are on the a53 near Newcastle. mandrel 1.5 x .065, 4.5 clr", None, None),
    ("school project, grade 2 teacher here. mandrel 1.5 x .065, 4.5 clr", None, None),
    ("grade 12 shop class. mandrel 1.5 x .065, 4.5 clr, dom", CS, "dom"),
    ("bolts are grade 8. mandrel 1.5 x .065, 4.5 clr, dom", CS, "dom"),
    ("mandrel 1.5 x .065, 4.5 clr. We used to do brass, now it's all stainless.", SS, None),
    ("mandrel 1.5 x .065, 4.5 clr in stainless. Our last ones were aluminium.", SS, None),
    ("mandrel for 38 x 1,5 R 57, no stainless, only mild steel", CS, None),
    ("mandrel for 38 x 1,5 R 57, stainless not steel", SS, None),
    ("Dorn 38 x 1,5 R 57, kein Edelstahl, normaler Stahl", CS, None),
    ("Dorn 38 x 1,5 R 57, früher Kupfer, jetzt Edelstahl", SS, None),
    ("mandrin 38 x 1,5 rayon 57, pas d'inox, acier normal", CS, None),
    ("mandril 38 x 1,5 radio 57, no inox, acero normal", CS, None),
    ("mandrino 38x1,5 raggio 57, non inox ma ferro", CS, None),
    ("doorn 38x1,5 straal 57, geen rvs maar gewoon staal", CS, None),
    ("mandrel 1.5 x .065, 4.5 clr DOM. Mandrel in bronze please", CS, "DOM"),
    ("mandrel 1.5 x .065, 4.5 clr 304, chrome plated mandrel", SS, "304"),
    ("Dorn aus Bronze für Edelstahlrohr 38 x 1,5 R 57", SS, None),
    ("Dorn aus Werkzeugstahl, Rohr 38 x 1,5 R 57 1.4301", SS, "1.4301"),
    ("mandrin en bronze pour tube inox 38 x 1,5 rayon 57", SS, None),
    ("mandril de bronce para tubo inoxidable 38 x 1,5 radio 57", SS, None),
    ("mandrino in bronzo per tubo inox 38x1,5 raggio 57", SS, None),
    ("bronzen doorn voor rvs buis 38 x 1,5 straal 57", SS, None),
    ("mandrel 1.5 x .065, 4.5 clr. material same as last time", None, None),
    ("Rohr 38 x 1,5 R 57 Dorn. Stahlbau Meier GmbH", None, None),
    ("mandrel 1.5 x .065, 4.5 clr, Edelstahl Schmidt GmbH, Bremen", None, None),
    ("mandrel 1.5 x .065 4.5 clr aluminized steel", CS, None),
    ("mandrel 1.5 x .065 4.5 clr stainless clad", SS, None),
    ("mandrel 1.5 x .065 4.5 clr copper plated steel", CS, None),
    ("mandrel 1.5 x .065 4.5 clr galvanised tube, S235", CS, "S235"),
    ("mandrel 1.5 x .065 4.5 clr tube 304 extension 316", SS, "304"),
    ("mandrel 1.75 x .120 d.o.m. 6 clr", CS, "d.o.m"),
    ("mandrel 1.5 x .120 H.R.E.W. 6 clr", CS, "H.R.E.W"),
    ("mandrel 2.5 x .065 three-oh-four on 5 clr", SS, "three-oh-four"),
    ("mandrel 1.5 x .035 grade 2 ti, 2.25 clr", TI, "grade 2"),
    ("mandrel 1.5 x .035 gr 9 ti, 2.25 clr", TI, "gr 9"),
    ("mandrel 1.5 x .035 CP2 ti, 2.25 clr", TI, "CP2"),
    ("mandrel 1.5 x .035, ti, 2.25 clr", TI, None),
    ("mandrino tubo 38 x 1,5, raggio 57. ti mando il disegno", None, None),
    ("mandrino tubo 38 x 1,5, raggio 57, ti ringrazio", None, None),
    ("mandrel for 25 x 1.2 mm tube, 4130? no - plain mild steel, 50 CLR", CS, None),
    ("Dorn 30 x 1 (Messing? nein, doch Stahl, DC01), Radius 90 mm auf Mitte", CS, "DC01"),
    ("mandrel 25 x 1.2 mm, brass, sorry, mild steel, 50 mm CLR", CS, None),
    ("mandrel 25 x 1.2 mm, 6061 - no, 316L, 50 mm CLR", SS, "316L"),
    ("mandrel 1.5 x .065 4130, scratch that, 321, 3 clr", SS, "321"),
    ("mandrel 1.5 x .065 chromoly... actually DOM, 3 clr", CS, "DOM"),
    ("Dorn 38 x 1,5 R 57, Alu? nein, Edelstahl 1.4301", SS, "1.4301"),
    ("mandrin tube 38 x 1,5 R 57, laiton ? non, cuivre", CU, None),
    ("mandril tubo 38 x 1,5 radio 57, aluminio, perdón, inox 304", SS, "304"),
    ("mandrino tubo 38 x 1,5 raggio 57, alluminio, anzi inox 304", SS, "304"),
    ("doorn buis 38 x 1,5 radius 57, messing? nee, RVS 304", SS, "304"),
    ("mandrel 25 x 1.2 mm, brass? no, something else, 50 mm CLR", None, None),
    ("mandrel 25 x 1.2 mm, 304, no mild steel please, 50 mm CLR", SS, "304"),
    ("mandrel 25 x 1.2 mm, is it 304? no idea, 50 mm CLR", SS, "304"),
    ('2.5" x 1.2 mm titanium, CLR 3.75". We have one for the stainless 2.5 x 1.6.', TI, None),
    ("Mandrel for 1.5 x .065 6061, 4.5 clr. Not the 1.75 x .120 DOM from last time.", AL, "6061"),
    ("We already have the mandrel for 1.75 x .120 DOM. Need 1.5 x .095, 4.5 clr", CS, "DOM"),
    ("mandrel 7005 alloy, 25.4mm OD, 2.0mm wall, 90mm CLR", AL, "7005"),
    ("  OD      2.500\"\n  wall    .049\"\n  CLR     3.75\"\n  mat'l   321\nmandrel", SS, "321"),
    ("mandrel 6 clr, 2-1/2 tube, .083 wall 1018.", CS, "1018"),
    ("mandrels, CFS 3 tube 15.88 OD x 1.22 wall, bent to 40 CLR", CS, "CFS 3"),
    ("mandril caño de 63,5 mm, chapa aluminizada de 1,6 mm, 95 mm de radio", CS, None),
    ("mandrin tube 63,5 x 1,6 acier aluminisé, rayon 95", CS, None),
    ("mandrino tubo 63,5 x 1,6 alluminizzato, raggio 95", CS, None),
    ("doorn buis 63,5 x 1,6 gealuminiseerd, straal 95", CS, None),
    ("copper-look but it's real brass, 1.5 x .062, 6 clr", BR, None),
    ("mandrel 1.5 x .035 Ti Gr.9, 2.25 clr", TI, "Ti Gr.9"),
]  # fmt: skip


@pytest.mark.parametrize(("text", "family", "grade"), WORDINGS)
def test_one_size_of_this_material(text: str, family: Material | None, grade: str | None) -> None:
    assert [(r.material, r.grade) for r in read_text(text)] == [(family, grade)]


@pytest.mark.parametrize("which", ["grade 2", "Grade 9", "gr 2", "Gr. 5", "grado 2"])
def test_the_number_of_a_grade_is_no_length(which: str) -> None:
    (request,) = read_text(f'Titanium: 1.5" OD x .035" wall {which}, 2.25" centreline radius')
    assert request.clr_mm is not None
    assert float(request.clr_mm) == 57.15  # 2.25 x 25.4


@pytest.mark.parametrize(
    ("subject", "body", "family"),
    [
        ("304 mandrel", "38 x 1.5, R 57", SS),
        ("304 mandrels", "38 x 1.5, R 57", SS),
        ("mandrel 38 x 1.5 R 57", "the tube is stainless, one please", SS),
        ("Dorn 38 x 1,5 R 57", "Rohr ist aus 1.4301", SS),
        ("mandril 38 x 1,5 R 57", "el tubo es de aluminio", AL),
        ("mandrel 4130", "1.5 x .065, 4.5 clr, DOM", CS),
        ("steel mandrel", "1.5 x .065, 4.5 clr", None),
    ],
)
def test_the_other_part_of_the_message_names_it(
    subject: str, body: str, family: Material | None
) -> None:
    (request,) = read_text(body, subject)
    assert (request.material, request.quantity in (None, 1)) == (family, True)
    for evidence in request.evidence:
        assert f"{subject}\n\n{body}"[evidence.start : evidence.end] == evidence.surface


def test_two_materials_in_the_other_part_are_a_doubt() -> None:
    (request,) = read_text("304 or 4130", "mandrel 38 x 1.5 R 57")
    assert [doubt.field for doubt in request.doubts] == ["material"]


@pytest.mark.parametrize(
    ("body", "family"),
    [
        ("304, 38 x 1.5, R 57. Also the same tube in 6061 someday, not now.", SS),
        ("1.4301, Rohr 38 x 1,5, R 57. Aluminium später, jetzt noch nicht.", SS),
        ("inox 304, tube 38 x 1,5, R 57. Laiton plus tard, pas maintenant.", SS),
        ("6061, 38 x 1.5, R 57. Maybe 304 later, not yet.", AL),
        ("38 x 1.5 in 304, not yet in stock, R 57", SS),
        ("6061, not now made by our usual mill. 38 x 1.5, R 57", AL),
        ("buis 42,4 x 2,6, straal 150, gewone zwarte gasbuis", CS),
        ("tubo nero 42,4 x 2,6, raggio 150", CS),
    ],
)
def test_a_material_for_some_other_day_is_not_the_tubes(body: str, family: Material) -> None:
    (request,) = read_text(body)
    assert request.material == family
    assert "material" not in [doubt.field for doubt in request.doubts]


@pytest.mark.parametrize(
    ("words", "doubted"),
    [
        ("4130? no - plain mild steel", False),
        ("Messing? nein, doch Stahl", False),
        ("brass, sorry, mild steel", False),
        ("brass? or mild steel, not sure", True),
        ("304 or 4130", True),
        ("Messing oder Stahl", True),
    ],
)
def test_a_correction_leaves_no_doubt_and_a_choice_does(words: str, doubted: bool) -> None:
    (request,) = read_text(f"mandrel 25 x 1.2 mm, {words}, 50 mm CLR")
    assert (request.doubt_on("material") is not None) is doubted


_LIST = "1) 48 x 3, R 180\n2) 60 x 3, R 220\n3) 33 x 3, R 120\n\n"


@pytest.mark.parametrize(
    ("words", "families"),
    [
        ("Items 1 and 2: A53. Item 3: 304.", [CS, CS, SS]),
        ("304 for items 1 and 3, A53 for item 2.", [SS, CS, SS]),
        ("Pos. 1 und 3 aus 1.4301, Pos. 2: S235.", [SS, CS, SS]),
        ("Lignes 1 et 2 : inox 304. Ligne 3 : aluminium.", [SS, SS, AL]),
    ],
)
def test_materials_by_the_number_of_the_item(words: str, families: list[Material]) -> None:
    assert [request.material for request in read_text(_LIST + words)] == families
