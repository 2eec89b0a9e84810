"""Cues for radii to one side of the bend, put together of their parts: 'äußerer Bogenradius',
'buitenste straal', 'rayon d'extrados'. Written out one by one, one of them is always missing.
"""

from __future__ import annotations

from itertools import product

_RADII_BEHIND = (
    "radius bogenradius biegeradius biegungsradius halbmesser straal bochtradius bochtstraal "
    "buigradius buigstraal"
).split()
_INNER_AHEAD = "innere inneren innerer innerem inwendige inwendig binnenste interne intern".split()
_OUTER_AHEAD = (
    "äussere äusseren äusserer äusserem uitwendige uitwendig buitenste externe extern"
).split()
_RADII_AHEAD = (
    "rayon", "rayon de cintrage", "rayon de courbure", "radio", "radio de curvatura",
    "radio de doblado", "raggio", "raggio di curvatura", "raggio di piega", "raggio della curva",
)  # fmt: skip
_INNER_BEHIND = (
    "intrados", "à l'intrados", "d'intrados", "de l'intrados", "interne", "intradosso",
    "all'intradosso", "di intradosso", "dell'intradosso", "intradós", "del intradós",
    "en el intradós", "interior", "interno", "int", "intérieur", "intérieure", "più interno",
    "de adentro", "por adentro",
)  # fmt: skip
_OUTER_BEHIND = (
    "extrados", "à l'extrados", "d'extrados", "de l'extrados", "externe", "estradosso",
    "all'estradosso", "di estradosso", "dell'estradosso", "extradós", "del extradós",
    "en el extradós", "exterior", "externo", "esterno", "ext", "extérieur", "extérieure",
    "più esterno", "de afuera", "por afuera",
)  # fmt: skip


def _put_together(ahead: list[str], behind: tuple[str, ...], joined: tuple[str, ...]) -> str:
    before = (f"{side} {radius}" for side, radius in product(ahead, _RADII_BEHIND))
    after = (f"{radius} {side}" for radius, side in product(_RADII_AHEAD, behind))
    return " | ".join([*before, *after, *joined])


TO_INSIDE = _put_together(
    _INNER_AHEAD, _INNER_BEHIND,
    ("kehlradius", "kehlenradius", "radius in der kehle", "radius innenbogen", "innenbogenradius",
     "binnenbochtradius", "radius binnenbocht"),
)  # fmt: skip
TO_OUTSIDE = _put_together(
    _OUTER_AHEAD, _OUTER_BEHIND,
    ("rückenradius", "bogenrückenradius", "radius aussenbogen",
     "aussenbogenradius", "buitenbochtradius", "radius buitenbocht",
     "rugradius"),
)  # fmt: skip
