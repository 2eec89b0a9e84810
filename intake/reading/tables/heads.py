"""Heads of columns whose figures are no part of a size: counts of parts, bends, years, prices.

'Pcs per year' counts, but no mandrels; 'Unit price' holds the word of a count; 'OD/t' names two
lengths and measures neither.
"""

from __future__ import annotations

from ...late_pattern import late_pattern
from ..counts.words import is_mandrel
from ..text.patterns import any_of, word_set

_YEARS = word_set(
    "year years yr yrs yearly annual annually annum eau month monthly jahr jahre jährlich p.a pa",
    "an ans annuel annuelle annuelles mois año anual anuales mes anno annuo annua annui annue mese",
    "jaar jaarlijks maand",
)
_YEAR_STEMS = ("jahres", "jaar", "monats", "maand")
_PRICES = word_set(
    "price prices pricing cost costs preis preise prix tarif precio precios coste importe prezzo",
    "prezzi costo prijs prijzen kosten target budget zielpreis einzelpreis stückpreis stuksprijs",
    "richtprijs amount € $ eur usd gbp p.u",
)
_OTHER_COUNTS = word_set(
    "bends balls bögen boegen biegungen kugeln glieder cintres cintrages coudes billes rotules",
    "curvas codos bolas curve sfere bochten kogels machines maschinen parts teile",
)
"""What a count in a table may be of, beside mandrels; a radius of bends is one all the same."""
_WEIGHT = late_pattern(
    r"\b(?:kg|lbs?|weight|gewicht|poids|peso)\b|\b(?:wt|w|g)\s?/\s?(?:ft|m|foot|mtr)\b"
)
_REFERENCES = word_set(
    "part sku article artikel artikelnummer teil sachnummer référence referencia riferimento",
    "codice código codigo cod code réf ref",
)
_KINDS = word_set("type types style styles typ typen tipo tipos tipi soort model modell modèle")
_LENGTHS = late_pattern(
    r"\b"
    + any_of(
        r"o\.?d | i\.?d | clr | wall | radius | radii | rad | r | dia | diameter | ø | wand",
        "biegeradius | rayon | radio | raggio | straal | épaisseur | espesor | spessore",
    )
    + r"\b"
)
_BEND_RATIO = late_pattern(
    r"(?:r|rm|rc|clr|c ?l ?r|radius|rad)\s?/\s?(?:o ?d|d|da|ø)|(?:r|clr) zu d|d of bend|bend ratio"
)
_WALL_RATIO = late_pattern(r"(?:o ?d|d|da|ø)\s?/\s?(?:t|s|e|w|wt)")


def is_ratio(head: str) -> bool:
    """Whether a head, in small letters without points, is radius by diameter: 'R/D', 'CLR/OD'."""
    return _BEND_RATIO.fullmatch(head) is not None


def measures_else(head: str) -> bool:
    """Whether a head tells that nothing below it measures the tube or counts mandrels."""
    words = frozenset(head.replace("all'", "").split())
    if words & _YEARS or any(word.startswith(_YEAR_STEMS) for word in words):
        return True
    if (
        words & _PRICES
        or _WEIGHT.search(head) is not None
        or _WALL_RATIO.fullmatch(head) is not None
    ):
        return True
    mandrels = any(map(is_mandrel, words))
    if words & _KINDS:
        return mandrels
    if words & _OTHER_COUNTS and not mandrels:
        return _LENGTHS.search(head) is None
    return bool(words & _REFERENCES) and len(words) > 1 and _LENGTHS.search(head) is None
