"""Pieces that are no mandrels: 'Bögen, ca. 14 Stück', '180 degree bends, about 300 pieces'."""

from __future__ import annotations

from .phrases import Words, word_set

_ABOUT = word_set(
    "about approx approximately around roughly some ca circa etwa ungefähr rund zirka environ",
    "autour unas unos aproximadamente alrededor cerca ongeveer zo'n",
)
_PARTS = word_set(
    "bends bend elbows elbow hoops parts frames rails tubes legs bögen bogen rohrbögen biegungen",
    "teile rohre bügel coudes coude cintrages arceaux tubes pièces curvas curva codos piezas tubos",
    "arcos curve pieghe pezzi tubi archi bochten bocht bogen beugels buizen delen",
)
_BETWEEN = frozenset(
    (",", ":", "(", "-", ".", "en", "de", "di", "van", "total", "in", "zu", "je", "\n")
)
_FEW = 4
"""So many mandrels may stand as pieces behind a part without more words."""
_FAR = 8


def counts_parts(words: Words, at: int, count: int) -> bool:
    """Whether the pieces counted by the number at ``at`` are bends or parts: a noun of those stands
    right before it, and the number is a guess, or more than a few."""
    guessed = False
    for index in words.before(at, _FAR):
        word = words.at(index)
        if word in _ABOUT:
            guessed = True
        elif word in _PARTS:
            return guessed or count > _FEW
        elif word not in _BETWEEN and word not in ("°", "90", "180", "grad", "degrees", "a", "à"):
            return False
    return False
