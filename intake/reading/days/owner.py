"""Whose day it is: that of the mandrel, or of what customers make, own, wait for or deliver."""

from __future__ import annotations

from ..text.phrases import Words, word_set
from . import words as d
from .day_words import MEASURES

_FAR = 6
"""Words looked back for the subject of a clause."""
_GOODS = word_set("material materials")
_BOUGHT = word_set("parts items goods products part item")
"""'Parts required on our dock': the buyer's own are 'our parts' and 'the customer's parts'."""
_WHOSE = word_set("our my their his customer customers client finished bent other race")
_OUR_STOCK = word_set("tube tubes tubing pipe pipes raw rohr")
_OF_GOODS = word_set("required needed reqd wanted req")
"""'Material required at our works by ...': to a buyer's office all that it buys is material."""
_MEASURES = (MEASURES | word_set("centerline centreline")) - {"tube"}
_GOES_ON = word_set("is are was were be been being it them this these those the a an to and or")
_OBJECT = 6
_LEADS = d.LEADING | d.ARTICLES | d.UNTIL
_WITH = word_set(
    "with incl including mit samt inkl avec con met by bis vor avant para entro voor to per as",
    "nach laut gemass selon d apres secondo come segun volgens conform",
)
_LABELS = word_set("material materiale materiaal matière werkstoff")
_COMES = word_set(
    "ship ships arrive arrives arriving come comes coming land lands due kommt kommen trifft",
    "treffen arrivent llega llegan arriva arrivano komt komen",
)
_COMING = word_set("arriving coming due")
_OF_OURS = word_set(
    "it they them this that these those one ones everything all order orders delivery shipment",
    "you must should could can would will may might shall to please need needs want wants has have",
    "er sie es das alles bestellung lieferung ware muss müssen soll sollen sollte sollten kann",
    "können könnte könnten wann when il elle ils elles tout commande livraison colis doit doivent",
    "devrait peut puisse quand todo pedido debe deben tiene tienen que puede pueden cuando tutto",
    "ordine merce deve devono può quando che hij ze het bestelling levering moet moeten kan kunnen",
    "wanneer",
)
"""A subject that may be the mandrel, and what has a mandrel come."""
_SENTENCES_BACK = 60
"""Words looked back for what a loose 'By Nov 20' leans on."""
_NEED = {
    word: d.WISH.get(word, ()) + d.DELIVERY.get(word, ())
    for word in d.WISH.keys() | d.DELIVERY.keys()
}
"""Both tables in one: they are looked up at every one of those words."""


def is_anothers(words: Words, start: int, place: int) -> bool:
    """Whether a day is that of what customers make, own or wait for, or of their own deliveries.

    ``start`` is where the day stands, ``place`` the word that says what it is for.

    'The tube is delivered Friday', 'we have to ship the chairs on December 18', 'vessel ETA'.
    """
    if words.at(place) == "need" and words.at(place + 1) in d.LEADING:
        return False  # "its a chassis part need by nov 9": parts would be needed
    if words.at(place) in {"need"} | _OF_GOODS and _opens_line(words, place):
        return False  # "These are handrails for a boat", and on the next line "Required by 11/18"
    if words.at(place) == "delivery" and words.at(place + 1) in _OF_GOODS:
        return False  # "a 4 in radius bend die delivery needed by 12/15"
    if words.at(place) in _OF_GOODS and words.at(place - 1) in _MEASURES:
        return False  # "6061 tubing radius of 59 mm required by 18 November"
    before = clause_before(words, place)
    between = words.text[place:start]
    if _OF_GOODS & {*before, words.at(place)} and not _OUR_STOCK & set(before):
        goods = _GOODS if _WHOSE & set(before) else _GOODS | _BOUGHT
        before = tuple(word for word in before if word not in goods)
    if any(words.phrase(at, d.AT_PAYMENT) for at in range(max(0, place - 2), place)):
        return True
    if words.at(place) in d.SENDS and set(before) & d.OWN_HAND and not set(before) & d.YOURS:
        return True
    if d.TOOLS & {*before, *between}:
        return False
    if wants_papers(between) or _others_come(words, place):
        return True
    direct = [word for word in between[1:5] if word not in ("of", "the", "our", "their", "der")]
    named = bool(direct) and (direct[0] in d.THINGS or direct[0].isdecimal())
    said = next((n for n, word in enumerate(reversed(before)) if word in d.PERSONS), len(before))
    subject = before[len(before) - said :]  # "for the boat rails we need delivery"
    counted = named and direct[0].isdecimal()  # "wants 36 grab rails by 12 June"
    return bool(d.THINGS & set(subject)) or (
        named and bool(d.THINGS & set(direct[: 3 if counted else 2]))
    )


def _others_come(words: Words, place: int) -> bool:
    """'Stools ship Dec 18', 'snow comes to us about the 20th': a subject that can't be a mandrel;
    'a bender has been bought, arriving in week 47'."""
    before = clause_before(words, place)
    clause = (*before, words.at(place))
    comes = next((n for n, word in enumerate(clause) if word in _COMES), 0)
    if comes:
        return not set(clause[:comes]) & (_OF_OURS | d.TOOLS)
    if before or words.at(place) not in _COMING or words.at(place - 1) != ",":
        return False
    ahead = set(clause_before(words, place - 1))
    return bool(ahead & d.THINGS) and not ahead & d.TOOLS


def wants_papers(between: tuple[str, ...]) -> bool:
    """Whether the words from a wish to its day name papers: 'wants the certificate by', 'vuole il
    certificato entro'; not 'wanted with certificates by'."""
    named = next((n for n, word in enumerate(between[:_OBJECT]) if n and word in d.PAPERS), 0)
    return named > 0 and not set(between[max(1, named - 2) : named]) & _WITH


def _opens_line(words: Words, place: int) -> bool:
    """Whether a clause begins there with its line, and does not only go on in it."""
    return words.at(place - 1) == "\n" and words.at(place - 2) not in _GOES_ON


def clause_before(words: Words, place: int) -> tuple[str, ...]:
    """The few words of the clause before a place."""
    start = place
    while start > max(0, place - _FAR, words.first[place]):
        if words.at(start - 1) in d.CLAUSES or _is_label_line(words, start - 1):
            break
        start -= 1
    return words.text[start:place]


def _is_label_line(words: Words, end: int) -> bool:
    """Whether a line ends there that a label opens: 'Material inox / Debe estar aquí el 4 ...'."""
    if words.at(end) != "\n":
        return False
    opens = next((n for n in range(end - 1, max(-1, end - _FAR), -1) if words.at(n) == "\n"), -1)
    return words.at(opens + 1) in _LABELS


def is_for_papers(words: Words, start: int) -> bool:
    """Whether papers are what is wanted by a day that only 'by' leads, whatever verb wants them:
    'der Prüfer braucht die Unterlagen bis 1. März', 'le commissaire veut le dossier avant le 1er'.
    """
    before = clause_before(words, start)
    while before and before[-1] in _LEADS:
        before = before[:-1]
    return wants_papers(("", *before[-_OBJECT + 1 :])) and not d.TOOLS & set(before)


def leans_on_things(words: Words, start: int) -> bool:
    """'We need 26 rails, ... By Nov 20 at the site.': the need before speaks of other things."""
    for at in range(start - 1, max(-1, start - _SENTENCES_BACK), -1):
        if words.text[at] in _NEED and words.phrase(at, _NEED):
            behind = set(words.text[at + 1 : at + 5])
            return bool(behind & d.THINGS) and not behind & d.TOOLS
    return False


def is_last_day(words: Words, end: int) -> bool:
    """'Before the end of the month? 30 October would be the last day that is any use to us.'"""
    return any(words.phrase(at, d.LAST_DAY) for at in words.after(end, 2))


def is_before_occasion(words: Words, at: int, start: int) -> bool:
    """'Before the show so November 20 latest': the day is drawn from the show, not that of it."""
    if words.at(at) not in d.OCCASIONS:
        return False
    between = words.text[at + 1 : start]
    if set(between) & d.SO:
        return True
    beside = {*between, *words.text[start : start + 5]}
    return "," in between and bool(beside & d.LATEST)
