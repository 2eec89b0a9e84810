"""Lines that a noun numbers: 'Row 1 radius 1.25' above 'Row 2 radius 1.6875': 1 is no length."""

from __future__ import annotations

import re

from ...late_pattern import late_pattern

_PLACES = frozenset(
    (
        "row line item bend layer ring loop hoop leg rail part section option size set tier level "
        "stage station coil pass group type run circuit hairpin arc rung case lot job piece no nr "
        "pos position positionen reihe zeile lage bogen biegung teil größe variante stufe rang "
        "rangée ligne repère couche cintrage coude pièce taille modèle poste fila línea posición "
        "capa curva pieza medida modelo partida riga posizione strato pezzo misura modello voce "
        "rij regel positie laag bocht deel maat poz pozycja rząd"
    ).split()
)
"""Nouns that a list's lines are called by; whatever stands behind their number."""
_MEASURES = frozenset(
    (
        "wall thk clr rad radius radii dia gauge schedule sch qty quantity menge anzahl stück stk "
        "quantité qté cantidad cant quantità qta aantal wand wandstärke mur paroi pared parete "
        "rayon radio raggio straal nps need want about circa age week und and the for"
    ).split()
)
"""Words that tell what a number beside them is."""
_LINE = late_pattern(
    r"^[ \t>*•–-]*+(?P<noun>[^\W\d_]{2,14})\b\.?[ ]?#?(?P<number>\d{1,2})"
    r"(?![\d/\"'’°%]|[.,]\d|[ ]\d{1,2}/\d)"
    r"(?![ ]?(?:mm|cm|in\b|inch|zoll|x[ \d.]|×|ga\b|gauge|od\b|wall|thick|deg))"
    r"(?P<parted>[ ]?[:)=–-][ ]|,[ ]|[.]?[ \t]{2,}|\t)?(?=[^\n]{0,100}\d)",
    re.IGNORECASE | re.MULTILINE,
)


def numbered_lines(text: str) -> list[tuple[int, int, str]]:
    """The numbers of lines that one noun numbers upwards, each with its noun."""
    found = [match for match in _LINE.finditer(text) if _is_place(match)]
    names = [(match["noun"].casefold(), int(match["number"])) for match in found]
    return [
        (match.start("number"), match.end("number"), "item")
        for at, match in enumerate(found)
        if _follows(names, at, at - 1, -1) or _follows(names, at, at + 1, 1)
    ]


def _is_place(match: re.Match[str]) -> bool:
    """Behind a word that is no usual name of a line, what parts it from its line is plain."""
    noun = match["noun"].casefold()
    if noun in _PLACES or noun.removesuffix("s") in _PLACES:
        return True
    return len(noun) > 2 and noun not in _MEASURES and match["parted"] is not None


def _follows(names: list[tuple[str, int]], at: int, other: int, by: int) -> bool:
    """Whether the line before, or behind, bears the same name and the next number."""
    if not 0 <= other < len(names):
        return False
    (noun, number), (same, next_to) = names[at], names[other]
    return noun == same and next_to - number == by
