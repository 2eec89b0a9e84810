"""A statement of its own that only tells of a size is left out, wherever it stands."""

from __future__ import annotations

from decimal import Decimal

import pytest

from .support import read_text, written_down

ASKS = {
    "de": "Wir brauchen einen Dorn für Rohr 40x2, Radius 100.",
    "fr": "Nous avons besoin d'un mandrin pour tube 40x2, rayon 100.",
    "es": "Necesitamos un mandril para tubo 40x2, radio 100.",
    "it": "Ci serve un mandrino per tubo 40x2, raggio 100.",
    "nl": "Wij hebben een doorn nodig voor buis 40x2, radius 100.",
}
TOLD = {
    "de": (
        "Der 26,9er Dorn liegt noch bei uns im Regal.",
        "Für 30 x 2 ist bereits ein Dorn vorhanden.",
        "Der Dorn für 54x2 ist noch in Ordnung, den brauchen wir nicht.",
        "Bei der letzten Bestellung war es 54 x 1,5.",
        "54x2 hat sich erledigt.",
        "Rohr 18 x 1 kommt vielleicht naechstes Jahr, das lassen wir weg.",
        "Unsere Maschine kann bis 54 x 3.",
        "Beim 30x2 sind wir versorgt.",
    ),
    "fr": (
        "Le mandrin de 26,9 est toujours au magasin.",
        "Le mandrin 54 x 2 est encore bon, pas besoin.",
        "La derniere commande etait pour du 54 x 1,5.",
        "Un collègue vous avait commandé un mandrin pour 26,9x2,3 en 2024, il marche bien.",
        "Pour le 54x2 c'est annulé.",
        "Le tube 54 x 2, on le cintre sans mandrin.",
        "Notre cintreuse va jusqu'à 54 x 3.",
        "Jusqu'ici nous n'avons cintré que du 30x2.",
    ),
    "es": (
        "El mandril de 26,9 sigue en el almacén.",
        "El mandril de 54 x 2 aun esta bien, ese no hace falta.",
        "El último pedido fue de 54 x 1,5.",
        "Un compañero os compró en 2024 uno de 26,9x2,3, va bien.",
        "La consulta de 54 x 2 de la semana pasada queda anulada.",
        "Nuestra curvadora admite máx. 60 x 3 mm.",
    ),
    "it": (
        "Il mandrino da 26,9 è ancora in magazzino.",
        "Il mandrino 54 x 2 va ancora bene, non serve.",
        "L'ultimo ordine era per 54 x 1,5.",
        "Il 54x2 è annullato.",
        "Per il 30x2 siamo a posto.",
        "Il 18 x 1 forse l'anno prossimo, lasciatelo fuori.",
        "La nostra macchina arriva a 54 x 3.",
    ),
    "nl": (
        "De doorn van 26,9 ligt nog in het magazijn.",
        "De doorn voor 54 x 2 is nog goed, die hoeft niet.",
        "De laatste bestelling was voor 54 x 1,5.",
        "De 54x2 is vervallen.",
        "Voor de 54 x 1,5 wachten we nog op de klant.",
        "Voor 30 x 2 radius 60 hebben we er een van u.",
        "De aanvraag voor 54 x 2 van vorige week trekken we in.",
    ),
}
STATEMENTS = [(language, words) for language, told in TOLD.items() for words in told]


@pytest.mark.parametrize("order", ["{asks} {told}", "{told} {asks}", "{asks}\n{told}"])
@pytest.mark.parametrize(("language", "told"), STATEMENTS)
def test_only_the_size_asked_for_is_left(language: str, told: str, order: str) -> None:
    requests = read_text(order.format(asks=ASKS[language], told=told))
    assert len(requests) == 1, written_down(requests)
    (size,) = requests
    assert [size.od_mm, size.wall_mm, size.clr_mm, size.quantity] == [40, 2, 100, 1]
    assert not size.doubts, written_down(requests)


@pytest.mark.parametrize("told", ["Das 26,9er brauchen wir nicht mehr.", "54x2 hat sich erledigt."])
def test_a_size_of_labels_is_left_alone(told: str) -> None:
    requests = read_text(f"Wir brauchen einen Dorn:\n- Radius 75\n- Rohr: 25\nWand 2\n{told}")
    assert len(requests) == 1, written_down(requests)
    assert [requests[0].od_mm, requests[0].wall_mm, requests[0].clr_mm] == [25, 2, 75]
    assert not requests[0].doubts


ASKED_ALL_THE_SAME = [
    "Bei der letzten Bestellung war es 54 x 1,5. Davon brauchen wir noch einen.",
    "Der Dorn für 54x2 liegt noch im Regal. Er ist verschlissen, bitte noch einmal anbieten.",
    "La dernière commande était pour du 54 x 1,5. Il nous faut encore une fois le même.",
    "L'ultima volta era tubo 54x2. Ci serve di nuovo lo stesso, e uno per 40x2, raggio 100.",
    "Vorige keer was het buis 54x2. Graag hetzelfde nog eens.",
]


@pytest.mark.parametrize("words", ASKED_ALL_THE_SAME)
def test_what_is_taken_up_again_stays(words: str) -> None:
    requests = read_text(f"{words} Rohr 40x2, Radius 100.")
    assert any(request.od_mm == Decimal(54) for request in requests), written_down(requests)
