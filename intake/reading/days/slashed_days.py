"""Days written as two figures, '20/11', '20-11', '20.11', where words make them a day.

Outside America the day comes first, so that most of them look like a tube and its bore. A word of
delivery or a limit right before them, or an article with such a word in its sentence, tells.
"""

from __future__ import annotations

import re
from collections.abc import Iterator

from ...late_pattern import late_pattern
from ..text.patterns import word_set

_DAY_MONTH = late_pattern(
    r"(?<![\d.,/\"-])(?<!\d\s)(?P<day>0?[1-9]|[12]\d|3[01])(?P<mark>[/.-])(?P<month>0?[1-9]|1[0-2])"
    r"(?![\d\"]|[/.,-]\d|\s?(?:mm|cm|in\b|inch|zoll|pouces?|pulgadas?|pollici|wall|wand|od\b|id\b"
    r"|[x×*]|ga\b|tub|rohr|buis|\(?(?:int|ext|inn|au[sß]+en)))"
)
_WORD = re.compile(r"[^\W\d_]+|[.!?;](?=\s)|\n\s*\n")
_STOPS = frozenset(".!?;")
_BEFORE = 90
"""Characters before a day in which its sentence is looked at."""
_LEADS = word_set(
    "liefertermin termin lieferdatum wunschtermin lieferung spätestens bis bedarf",
    "livraison délai délais souhaitée souhaité échéance avant tard livrer ici date delivery",
    "entrega plazo fecha antes máximo tardar",
    "consegna entro termine data massimo tardi",
    "levering leverdatum levertijd uiterlijk tegen",
    "gewünscht requise requis deseada requerida richiesta gewenst nodig benötigt necesario",
    "spaetestens delai delais souhaitee souhaite echeance maximo",
)
"""Right before two figures these make them a day."""
_ARTICLES = word_set(
    "le du au el del il dal al den am zum dem per il op den voor vor pour para por der"
)
_OF_DELIVERY = _LEADS | word_set(
    "liefern geliefert brauchen brauche bräuchten benötigen benötigt lieferbar eintreffen hier",
    "livré livrés livrable faut faudrait besoin recevoir reçu arriver disponible prêt nécessaire",
    "entregar entregado llegar llegue necesitamos necesito necesitaríamos falta tenerlo tenerlos",
    "recibir urge aquí listo querríamos sería serait",
    "consegnare consegnato serve servono servirebbe occorre occorrono bisogno arrivare ricevere",
    "qui pronto disponibile sarebbe",
    "leveren geleverd nodig ontvangen hebben binnen hier klaar",
    "offre devis offerta preventivo oferta presupuesto offerte angebot anfrage antwort réponse",
)
_NEARLY_BORE = 0.6
"""A second figure of that share of the first may be a bore: '12/10' needs a word of delivery."""
_HALVED = frozenset((2, 4, 8))
_DELIVERED_ON = late_pattern(
    r"\b(?:deliver(?:y|ed)?|shipped|liefer(?:ung|termin|datum)|termin|geliefert|livraison|livrée?s?"
    r"|délai|échéance|entrega|entregad[oa]s?|plazo|consegna|consegnat[oaie]|termine|scadenza|levering|leverdatum|geleverd|dostawa"
    r"|dostawy|toimitus|leverans|(?:needed|required|wanted|due|benötigt|nodig)(?=\s(?:by|on|before|date"
    r"|latest|bis|am|spätestens|voor|uiterlijk)"
    r"|[\s:]{1,2}\d{1,2}/(?!(?:2|4|8|16|32|64)\b)))\b"
    r"(?:[\s:.,-]{1,3}(?:date|latest|by|on|before|at|the|am|bis|zum|spätestens|vor|le|au|avant|pour"
    r"|souhaitée?|el|para|al|antes|del|il|entro|per|op|voor|uiterlijk|do|dnia|max|requested|required"
    r"|gewünscht|impératif)\b){0,4}[\s:.,-]{0,3}"
    r"(?P<day>(?:0?[1-9]|[12]\d|3[01])/(?:0?[1-9]|[12]\d|3[01]))"
    r"(?=\s?(?:$|[.;,!?)](?!\d)|\n|please|pls|latest|max|or (?:sooner|earlier)))",
    re.IGNORECASE | re.MULTILINE,
)
"""'Delivery: 13/11': a day, though 13/11 is otherwise a tube and its wall."""


def slashed_days(text: str) -> Iterator[tuple[int, int, str]]:
    """(start, end, 'date') of every such day."""
    seen: set[int] = set()
    for match in _DAY_MONTH.finditer(text):
        day, month = int(match["day"]), int(match["month"])
        if match["mark"] == "." and len(match["month"]) < 2:
            continue  # '2.5' is a length
        words = _sentence_before(text, match.start())
        if not words or not _makes_day(words, day, month, slashed=match["mark"] == "/"):
            continue
        seen.add(match.start())
        yield match.start(), match.end(), "date"
    for match in _DELIVERED_ON.finditer(text):
        if match.start("day") not in seen:
            yield *match.span("day"), "date"


def _makes_day(words: list[str], day: int, month: int, *, slashed: bool) -> bool:
    if words[-1] in _LEADS:
        return True
    if words[-1] not in _ARTICLES:
        return False
    told = any(word in _OF_DELIVERY for word in words)
    fraction = month in _HALVED and day < 2 * month
    return told or (slashed and not fraction and month < day * _NEARLY_BORE)


def _sentence_before(text: str, place: int) -> list[str]:
    """The words of the sentence before a place, its nearest last."""
    words: list[str] = []
    for match in _WORD.finditer(text, max(0, place - _BEFORE), place):
        if match[0] in _STOPS or match[0].startswith("\n"):
            words.clear()
        else:
            words.append(match[0].casefold())
    return words
