"""'A mandrel' that somebody asks to have made, in whatever words: one. Asked in general: none."""

# ruff: noqa: E501 - a row of a table stands on one line

from __future__ import annotations

import pytest

from .support import read_text

EN = "Tube is 28 x 1.5 mm, S235, bend radius 84 mm to the centreline."
DE = "Rohr 28 x 1,5 mm, S235, Radius 84 mm Rohrmitte."
FR = "Tube 28 x 1,5 mm, S235, rayon 84 mm à l'axe."
ES = "Tubo 28 x 1,5 mm, S235, radio 84 mm al eje."
IT = "Tubo 28 x 1,5 mm, S235, raggio 84 mm in asse."
NL = "Buis 28 x 1,5 mm, S235, straal 84 mm hart."

ONE = [
    f"{EN} Could you make a mandrel for the chainstay? And do you post to Wales?",
    f"{EN} Might you be able to produce a mandrel so small? There are six elements, 22 inches long.",
    f"{EN} I'll check the rest Tuesday. Go ahead and pencil me in for a mandrel.",
    f"{EN} Could you make a mandrel to go in there?",
    f"{EN} Put us down for a mandrel.",
    f"{EN} Let's go with a mandrel.",
    f"{EN} We'd love a mandrel.",
    f"{EN} I could do with a mandrel, the bends kink.",
    f"{EN} Would it be possible to have a mandrel made?",
    f"{EN} Can a mandrel be made for that?",
    f"{EN} I was hoping you could make a mandrel.",
    f"{EN} Any chance you could turn a mandrel?",
    f"{EN} Can y'all build a mandrel?",
    f"{DE} Könnten Sie einen Dorn für die Kettenstrebe herstellen?",
    f"{DE} Könnt ihr so einen kleinen Dorn fertigen?",
    f"{DE} Macht mir einen Dorn.",
    f"{DE} Wäre es möglich, einen Dorn zu fertigen?",
    f"{DE} Wären Sie in der Lage, einen Dorn herzustellen?",
    f"{DE} Merkt mich für einen Dorn vor.",
    f"{DE} Kann ein Dorn dafür gefertigt werden?",
    f"{FR} Pourriez-vous fabriquer un mandrin aussi petit ?",
    f"{FR} Faites-moi un mandrin.",
    f"{FR} Serait-il possible de réaliser un mandrin ?",
    f"{FR} Seriez-vous en mesure de fabriquer un mandrin ?",
    f"{FR} Réservez-nous un mandrin.",
    f"{ES} ¿Podrían fabricar un mandril para el larguero?",
    f"{ES} Háganme un mandril.",
    f"{ES} ¿Sería posible fabricar un mandril?",
    f"{ES} Apúntenme un mandril.",
    f"{IT} Potreste fare un mandrino per il telaio?",
    f"{IT} Fatemi un mandrino.",
    f"{IT} Sarebbe possibile realizzare un'anima?",
    f"{IT} Sareste in grado di produrre un mandrino così piccolo?",
    f"{NL} Kunnen jullie een doorn maken voor de achtervork?",
    f"{NL} Maak mij een doorn.",
    f"{NL} Zou het mogelijk zijn een doorn te maken?",
    f"{NL} Zet mij op de lijst voor een doorn.",
    "My buddy got a mandrel off you last winter. Mine needs to be for 28 x 1.5 S235, R 84 centreline.",
    "The mandrel you made him runs well. I need mine for 28 x 1.5 S235, R 84 centreline.",
    "Mein Kollege hat von euch einen Dorn. Meiner müsste für 28 x 1,5 S235 sein, R 84 Mitte.",
    "Mon collègue a eu un mandrin chez vous. Le mien doit être pour du 28 x 1,5 S235, rayon 84 à l'axe.",
    "Mi vecino tiene un mandril de ustedes. El mío tiene que ser para 28 x 1,5 S235, radio 84 al eje.",
    "Il mio collega ha preso un mandrino da voi. Il mio deve essere per 28 x 1,5 S235, raggio 84 in asse.",
    "Mijn collega heeft een doorn van jullie. De mijne moet voor 28 x 1,5 S235 zijn, straal 84 hart.",
    "7/8 OD x .065, 3.5 CLR, same grade.\n1 mandrel.",
]  # fmt: skip


@pytest.mark.parametrize("text", ONE)
def test_one_mandrel_is_asked_for(text: str) -> None:
    assert [size.quantity for size in read_text(text)] == [1]


@pytest.mark.parametrize(
    "text",
    [
        f"{EN} How small can you make a mandrel?",
        f"{EN} I was told you can make a mandrel for anything.",
        f"{EN} Would you recommend making a mandrel?",
        f"{EN} Can you tell me how to make a mandrel?",
        f"{EN} Could you do it without a mandrel?",
        f"{EN} Could you make mandrels?",
        f"{EN} Let us not do a mandrel yet.",
        "28 x 1.5 and 28 x 2, S235, R 84 centreline. Could you make a mandrel that does both?",
        "My buddy has a bender. Mine needs to be for 28 x 1.5 S235, R 84 centreline. Do you make mandrels?",
        f"{DE} Wie klein könnt ihr einen Dorn machen?",
        f"{DE} Kann man das ohne einen Dorn machen?",
        f"{FR} Comment pouvez-vous fabriquer un mandrin aussi petit ?",
        f"{ES} ¿Cómo pueden fabricar un mandril tan pequeño?",
        f"{IT} Come si può piegare senza un mandrino?",
        f"{NL} Kunnen jullie zeggen of een doorn nodig is?",
    ],
)
def test_none_is_asked_for(text: str) -> None:
    assert {size.quantity for size in read_text(text)} == {None}


def test_grade_at_a_sentences_end_takes_no_count() -> None:
    text = (
        "1 OD x .065 316L, 5 CLR. The braces are 7/8 x .065, 3.5 CLR same grade.\n1 mandrel ea.\n"
    )
    assert [size.quantity for size in read_text(text)] == [1, 1]


@pytest.mark.parametrize("grade", ["titanium grade 2", "titanium gr. 2", "titanium Gr 2"])
def test_figures_of_a_grade_count_nothing(grade: str) -> None:
    (size,) = read_text(f"Mandrel for 28 x 1.5 {grade}, 84 CLR")
    assert (size.grade or "").lower().replace("gr.", "grade").endswith("2")
    assert size.quantity in (None, 1)
