"""Pieces that are no mandrels: 'Bögen, ca. 14 Stück', '180 degree bends, about 300 pieces',
'25 ea 2 x .083 elbows to make'."""

from __future__ import annotations

from ..text.phrases import Words, word_set
from . import words as w

_ABOUT = word_set(
    "about approx approximately around roughly some ca circa etwa ungefähr rund zirka environ",
    "autour unas unos aproximadamente alrededor cerca ongeveer zo'n",
)
_PARTS = word_set(
    "bends bend elbows elbow hoops parts frames rails tubes legs bögen bogen rohrbögen biegungen",
    "teile rohre bügel coudes coude cintrages arceaux tubes pièces curvas curva codos piezas tubos",
    "arcos curve pieghe pezzi tubi archi bochten bocht bogen beugels buizen delen",
)
_TUBES = _PARTS | word_set("tube tubing pipe pipes rohr rohren tuyau tuyaux tubo buis")
_MADE = word_set(
    "make bend bending bent make made making elbows elbow bends frames hoops rails legs run",
    "biegen gebogen machen bögen cintrer coudes doblar codos curvare curve buigen bochten",
)
"""Words that say that the pieces are bent, or what they become."""
_BETWEEN = frozenset(
    (",", ":", "(", "-", ".", "en", "de", "di", "van", "total", "in", "zu", "je", "\n")
)
_RUNS = word_set("prototype prototypes proto run batch production trial series serie lot charge")
_EACH = word_set("jedes jede jeden every each per pro chaque par cada por ogni elk elke")
_PERIODS = word_set(
    "year month week season jahr monat woche saison année an mois semaine año mes semana temporada",
    "anno mese settimana stagione jaar maand seizoen",
)
_NEAR = 3
_FEW = 4
"""So many mandrels may stand as pieces behind a part without more words."""
_FAR = 8
_FOR = word_set("for für pour para per voor")
_SIZE_LONG = 22
"""Words of a size between the pieces and what they are of."""


def counts_parts(words: Words, at: int, count: int) -> bool:
    """Whether the pieces counted by the number at ``at`` are bends or parts: a noun of those stands
    right before it, and the number is a guess, or more than a few."""
    if any(words.at(index) in _RUNS for index in words.before(at, _NEAR)):
        return True  # "the prototype is 3 pieces"
    if count > _FEW and _is_of_each_period(words, at):
        return True  # "we build stoves, every year some 30 pieces"
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


def _is_of_each_period(words: Words, at: int) -> bool:
    """Whether 'every year' or the like is said of the number at ``at``; in '400 per year, 10
    pieces' it is said of another."""
    for index in words.before(at, _NEAR):
        if words.at(index) in _PERIODS and words.at(index - 1) in _EACH:
            return not any(words.at(n).isdecimal() for n in words.before(index, _NEAR + 1))
    return False


def counts_tubes(words: Words, end: int, count: int) -> bool:
    """Whether the pieces, a word that ends before ``end``, are tubes of the size behind them: no
    mandrel is named before, none before the tube, and one in other words behind."""
    if words.at(end) in _FOR or any(w.is_mandrel(words.at(at)) for at in range(end)):
        return False
    of_tubes = made = False
    behind = words.behind[end] if end < len(words) else end
    for at in range(end, min(behind, end + _SIZE_LONG)):
        word = words.at(at)
        if word == "." and words.start[at + 1 : at + 2] > words.end[at : at + 1]:
            behind = at  # a full stop before a small letter
            break
        if w.is_mandrel(word):
            return False
        of_tubes = of_tubes or word in _TUBES
        made = made or word in _MADE
        if of_tubes and w.is_mandrel(words.at(at + 1)):
            return False
    named = any(w.is_mandrel(words.at(at)) for at in range(behind, len(words)))
    return of_tubes and named and (made or count > _FEW)
