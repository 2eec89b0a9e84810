"""The day on which a quotation is due: none on which the mandrel is.

'Quotes to be with us no later than 16/10' has the words of a delivery, but what is to be with us
is the quotation: between its name and the day stand only words of coming and of time.
"""

# ruff: noqa: E501 - lists of words stand on one line

from __future__ import annotations

from ..text.phrases import Words, word_set
from .behind_words import DELIVERED

_FAR = 24
_AFTER = 9
_MANY = word_set(
    "quotes quotations bids tenders offers prices proposals submissions replies responses numbers",
    "angebote angeboten offerten preise offres devis prix propositions cotations reponses ofertas",
    "presupuestos cotizaciones precios respuestas offerte preventivi prezzi offertes prijzen",
    "prijsopgaven angebotsabgabe angebotsfrist abgabe abgabefrist remise presentacion",
)
"""None of these is a verb: who writes them means the papers."""
_ONE = word_set(
    "quote quotation bid tender offer price pricing proposal submission reply response number",
    "figure figures angebot preis offerte preisangebot offre proposition cotation reponse oferta",
    "presupuesto cotizacion precio respuesta offerta preventivo prezzo prijs prijsopgave aanbieding",
)
_VERBS = word_set("quote price offer bid tender number figure")
_BID_TO = word_set("please pls kindly to can could would you and us me")
"""Before 'quote' or 'price' these make it what is asked for: 'please quote to be with us by ...'."""
_LINKS = word_set(
    # who, where
    "us me we i our my your the a an his her their with at in on to from of for this that all",
    "hand hands inbox office desk email mail here back over bench team side",
    # coming and being there
    "be is are must should need needs have has to shall will can reach reaches arrive arrives",
    "arriving come comes get gets return returned received receive land due required needed wanted",
    "expected requested back ready submitted sent submit send in deadline date closing",
    # time
    "by before until till no not later than latest end close of business cob eod noon midday day",
    "morning afternoon am pm o clock only please pls and at the on or",
    # German
    "bis spatestens zum am vor muss mussen soll sollen sollte sollten mochten brauchen wir ich",
    "bei uns mir sein vorliegen eingehen eintreffen liegen da hier den die das der ende mittag uhr",
    "abzugeben einzureichen einreichen abgeben erbeten erwunscht ihr ihre ihres frist termin von",
    "benotigen benotigt",
    # French
    "avant le la les l pour au plus tard doit doivent nous vous parvenir etre rendu rendue rendues",
    "chez a recevoir remis remise remises des du de d limite date sous fin midi par mail remettre",
    "votre vos arriver",
    # Spanish
    "antes del el a mas tardar como muy tarde hasta debe deben llegar llegarnos recibir recibirse",
    "estar para su sus las los en nuestras manos fecha limite plazo presentar entregar de las",
    "tiene tienen que",
    # Italian
    "entro il la lo deve devono arrivare pervenire ricevere ricevuta essere per piu tardi al da",
    "noi prima nostre mani termine scadenza presentare inviare vostra vostre delle dell",
    # Dutch
    "uiterlijk voor tegen bij ons moet moeten zijn binnen hebben ontvangen graag uw onze op de het",
    "nodig indienen sluiting van inleveren",
) | {":", "-", "'"}  # fmt: skip
_HANDED_OVER = word_set(
    "delivered deliver geliefert livre livrees entregado entregadas consegnata consegnate geleverd"
)
"""Of papers too, where there can be no doubt that papers are meant."""
_NEEDS = word_set(
    "need want require have must see get receive brauchen benotigen mochten faut souhaitons",
    "voulons necesitamos queremos serve vorremmo hebben willen nodig",
)


_WANTED = _NEEDS | word_set(
    "wants needs will wollen braucht veut veux quiere quiero necesita vuole voglio wil willen heeft"
)
_WANTED_FAR = 4
_SO_MANY = word_set(
    "1 2 3 4 5 two three four several your zwei drei vier mehrere ihr trois deux quatre plusieurs",
    "tres dos cuatro varias tre due quattro drie twee vier meerdere enkele",
)


def is_of_quotation(words: Words, start: int, end: int, stop: int) -> bool:
    """Whether a day, words ``start`` to ``end``, is that of a quotation; its clause begins at
    ``stop``."""
    if words.phrase(end, DELIVERED):
        return False
    wanted = bool(set(words.text[max(stop, start - _WANTED_FAR) : start]) & _WANTED)
    return _is_led_by(words, start, stop) or _is_followed_by(words, end, wanted=wanted)


def _is_led_by(words: Words, start: int, stop: int) -> bool:
    handed = False
    for at in range(start - 1, max(stop, start - _FAR) - 1, -1):
        word = words.at(at)
        if word in _MANY:
            return True
        if word in _ONE:
            asked = word in _VERBS and words.at(at - 1) in _BID_TO
            return not asked and (not handed or words.at(at - 1) == "your")
        if word in _HANDED_OVER:
            handed = True
        elif word not in _LINKS and not word.isdecimal():
            return False
    return False


def _is_followed_by(words: Words, end: int, *, wanted: bool) -> bool:
    """'By 16 October we need your price', '... is when we want the quotes'; ``wanted``: 'the boss
    wants by Thursday three quotes'."""
    if wanted and words.at(end + 1) in _MANY | _ONE and words.at(end) in _SO_MANY:
        return True
    needs = False
    for at in words.after(end, _AFTER):
        word = words.at(at)
        if word in _MANY or word in _ONE:
            return needs
        needs = needs or word in _NEEDS
        if word not in _LINKS and word not in _NEEDS and word != "when":
            return False
    return False
