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
    "curvas codos bolas curve sfere bochten kogels machines maschinen parts teile delen onderdelen",
)
"""What a count in a table may be of, beside mandrels; a radius of bends is one all the same."""
_WEIGHT = late_pattern(
    r"\b(?:kg|lbs?|weight|gewicht|poids|peso)\b|\b(?:wt|w|g)\s?/\s?(?:ft|m|foot|mtr)\b"
)
_REFERENCES = word_set(
    "part sku article artikel articolo artículo artikelnummer teil sachnummer référence referencia",
    "riferimento codice código codigo cod code réf ref pn p/n art onderdeel teilenummer",
    "drawing dwg print zeichnung zchng zeichnungsnr plan dessin plano disegno dis tekening tek",
)
_OTHER_LENGTHS = word_set("length lengths länge longueur longitud largo lunghezza lungh lengte")
_TOLERANCES = word_set(
    "tol tolerance tolerances toleranz tolérance tolerancia tolleranza tolerantie"
)
_NUMBERED = late_pattern(
    r"(?:id|sr|serial|s) (?:no|nr|number|#)|(?:n|no|nr|número|numéro|numero|n\s?°) (?:de |di )?"
    r"(?:pièce|pieza|pezzo|outil|tool)|nb (?:de |d')?(?!mandr)\w+s"
)
"""'ID no.' and 'Nº de pieza' number a line or a part; 'Nb de tubes' is no nominal bore."""
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
    r"|(?:bend |d |r |clr |radius |bend radius )?(?:factor|multiple|multiplier)(?: of od| [x×] ?d)?"
    r"|(?:biege|radius)?faktor|(?:n |r |r = |bend |clr |radius |bend radius )?[x×] ?(?:d|od|dia)"
    r"|n ?(?:d|od)|radius in d|(?:no|number) of d"
)
_BRACKETS = str.maketrans("()[]", "    ")
_WALL_RATIO = late_pattern(r"(?:o ?d|d|da|ø)\s?/\s?(?:t|s|e|w|wt)")


_IN_STOCK = late_pattern(
    r"(?:\w*(?:mandrel|dorn|mandrin|mandril|mandrino|doorn)s? )?"
    r"(?:already |schon |déjà |ya |già |al )?"
    r"(?:in stock|on hand|have|have it|got it|owned|vorhanden|auf lager|en stock|disponible"
    r"|in magazzino|disponibile|op voorraad|aanwezig)(?: already)?"
)
YES = word_set("yes y ja j oui o sí si sì s x ✓ vorhanden")


def asks_stock(head: str) -> bool:
    """Whether a head asks if a mandrel is there already: 'In stock?', 'Dorn vorhanden?'."""
    return _IN_STOCK.fullmatch(head) is not None


def is_ratio(head: str) -> bool:
    """Whether a head, in small letters without points, is radius by diameter: 'R/D', 'CLR/OD'."""
    words = " ".join(head.translate(_BRACKETS).split())  # "bend (x D)"
    return _BEND_RATIO.fullmatch(words) is not None


def measures_else(head: str) -> bool:
    """Whether a head tells that nothing below it measures the tube or counts mandrels."""
    words = frozenset(head.replace("all'", "").split())
    if words & _YEARS or any(word.startswith(_YEAR_STEMS) for word in words):
        return True
    if words & _TOLERANCES or _NUMBERED.fullmatch(head):
        return True
    if words & _OTHER_LENGTHS and _LENGTHS.search(head) is None:
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
    return names_references(head) and len(words) > 1


def names_references(head: str) -> bool:
    """Whether what stands below a head may be the number of a part or of a drawing."""
    words = frozenset(head.replace("all'", "").split())
    return bool(words & _REFERENCES) and _LENGTHS.search(head) is None
