"""A mandrel made before, and the new die for the same tube: the radius made before is never stated
as the one that is asked for, and that of the new die is never lost."""

# ruff: noqa: E501 - a message stands on one line

from __future__ import annotations

from decimal import Decimal

import pytest

from .support import read_text


@pytest.mark.parametrize(
    "text",
    [
        "In spring you built order 4102 for us, that was the 32 x 2 E235 on 95 mm CLR. We've bought a bigger die, 127 mm centerline, for the same tube. Please make one mandrel for the new die. The old one is still good.",
        "Last year you made us the 32 x 2 on 95 mm CLR. We've since bought a 127 mm CLR die for the same tube. Please make one mandrel for the new die.",
        "Job 4102 was 32 x 2 on 95 mm CLR. We've got a new 127 mm CLR die. Please make one mandrel for the same tube on the new die.",
        "Im Frühjahr haben Sie uns Auftrag 4102 gebaut, das war 32 x 2, R 95. Jetzt haben wir ein größeres Werkzeug, R 127, für dasselbe Rohr. Bitte einen Dorn für das neue Werkzeug.",
        "Au printemps vous avez fait la commande 4102, c'était le 32 x 2, R 95. Nous avons acheté un plus grand outil, R 127, pour le même tube. Merci de faire un mandrin pour le nouvel outil.",
        "In primavera ci avete fatto l'ordine 4102, era il 32 x 2, R 95. Ora abbiamo una matrice più grande, R 127, per lo stesso tubo. Fateci un mandrino per la nuova.",
        "En primavera nos hicieron el pedido 4102, era el 32 x 2, R 95. Ahora tenemos una matriz mayor, R 127, para el mismo tubo. Hágannos un mandril para la nueva.",
        "In het voorjaar maakte u order 4102 voor ons, dat was 32 x 2, R 95. Nu hebben we een grotere matrijs, R 127, voor dezelfde buis. Graag een doorn voor de nieuwe.",
    ],
)
def test_the_radius_made_before_is_not_stated(text: str) -> None:
    sizes = read_text(text)
    assert Decimal(127) in {size.clr_mm for size in sizes}
    assert all(size.doubt_on("clr") for size in sizes if size.clr_mm == Decimal(95))
