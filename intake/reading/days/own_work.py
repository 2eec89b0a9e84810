"""Days that are not those of the mandrel though words of coming or wishing stand before them: the
day on which customers want to be told a date, that by which they have to do their own work, and that
on which they would come by if it suits."""

# ruff: noqa: E501 - lists of words stand on one line

from __future__ import annotations

from ..text.phrases import Words, phrases, word_set
from . import words as d
from .written import Written

_TOLD = phrases(
    "delivery date | ship date | shipping date | dock date | arrival date | delivery time | eta",
    "delivery estimate | shipping estimate | liefertermin | lieferdatum | lieferzeit",
    "date de livraison | délai de livraison | délai | fecha de entrega | plazo de entrega | plazo",
    "data di consegna | tempi di consegna | leverdatum | levertijd",
)
_ASKED_OF = word_set(
    "a an your any some firm euren ihren einen un une votre vos su una il vostra een uw jullie"
)
"""Before it: it is not known yet. 'The delivery date by ...' may be the customer's own."""
_ASKS = word_set(
    "know give get have need send tell confirm advise provide want require see email brauche brauchen",
    "benotige benotigen mitteilen nennen senden teilen besoin donner donnez envoyer indiquer necesito",
    "necesitamos enviar indicar decir serve servono mandare comunicare nodig geven sturen laten",
)
_FAR = 6
_MAKES = word_set(
    "make build bend produce fabricate run assemble weld finish complete cut machine manufacture",
    "order place commit submit start begin decide",
    "anfangen beginnen starten loslegen montieren einbauen commencer démarrer lancer monter empezar",
    "comenzar arrancar montar iniziare cominciare partire montare monteren inbouwen opstarten",
    "montiert eingebaut installiert",
    "machen bauen biegen fertigen produzieren schweissen bestellen fabriquer cintrer produire souder",
    "commander fabricar doblar producir soldar pedir produrre curvare piegare saldare ordinare",
    "maken bouwen buigen lassen bestellen",
)
_HANDS_OVER = word_set("leveren afleveren uitleveren liefern ausliefern abliefern ubergeben")
"""Behind the day, where the verb ends a clause: 'wij moeten de frames op 18 december leveren'."""
_VERB_BEHIND, _CLAUSE = 3, 12
_MUST = word_set("müssen muss sollen soll wollen moeten moet willen wil")
_TOOLS = d.TOOLS - word_set("it them one")
_ITS = word_set("it them one this these those")
_IT = word_set("hem het ze deze ihn es sie diesen dorn doorn")
_OTHERS = word_set("you your u sie vous usted ustedes voi jullie")
_PERSONS_ASKED = 3
_HAVE = phrases(
    "have | ve | i got | we got | ve got | there are | there s | haben | habe | hab | es sind",
    "avons | j ai | il y a | il reste | tenemos | tengo | hay | quedan | abbiamo | ho | ci sono",
    "hebben | heb | er zijn",
)
_TO_DO = phrases(
    "to do | to make | to build | to bend | to produce | to fabricate | to run | to get through",
    "to turn out | zu machen | zu biegen | zu bauen | zu fertigen | zu produzieren | à faire",
    "à cintrer | à produire | à fabriquer | à réaliser | que hacer | por hacer | que doblar",
    "que curvar | por doblar | por curvar | da fare | da curvare | da piegare | da produrre",
    "te doen | te buigen | te maken | te produceren",
)
_AHEAD = 7
"""Words from 'we have' to 'to do': '450 elbows of that size'."""
_COMES_BY = word_set(
    "collect pick abholen holen chercher récupérer enlever recoger recogerlo ritirare ritirarlo"
    " ophalen halen"
)
_MAY = word_set(
    "can could may might happy kann konnte konnten peux pourrais peut puedo podría podríamos posso"
    " potrei kan kunnen"
)
_IF = word_set("if wenn falls si se als indien")
_BEFORE_IT = 4


def is_date_asked(words: Words, at: int) -> bool:
    """Whether the words at ``at`` name a day that customers ask for: 'let me know your ship date by
    Thursday', 'I need a delivery date by Monday'; not 'delivery date: by Monday'."""
    used = words.phrase(at, _TOLD)
    if not used or words.at(at + used) not in d.LEADS_LIMIT:
        return False
    ahead = words.text[max(words.first[at], at - _FAR) : at]
    return bool(ahead) and ahead[-1] in _ASKED_OF and bool(set(ahead) & _ASKS)


def hands_over(words: Words, start: int, end: int) -> bool:
    """Whether the day from ``start`` to ``end`` is that on which customers have to deliver their own
    goods: 'wir müssen die Geländer bis 18. Dezember liefern'; not 'Sie müssten bis 18. liefern'."""
    if not set(words.text[end : end + _VERB_BEHIND]) & _HANDS_OVER:
        return False
    clause = set(words.text[max(words.first[start], start - _CLAUSE) : start])
    ours = clause & _MUST and clause & d.PERSONS - _OTHERS
    return bool(ours) and not clause & (_OTHERS | _TOOLS | _IT)


def is_own_work(words: Words, wish: int, day: Written) -> bool:
    """Whether the wish at ``wish`` is what the customers have to do themselves until that day: 'we
    have to make 36 pieces by Jan 20', 'wir müssen am 7.12. anfangen'; not 'we need you to make it
    by Friday'."""
    between = words.text[wish : day.start]
    before = words.text[max(words.first[wish], wish - _PERSONS_ASKED) : wish]
    if set(between) & (_OTHERS | _TOOLS) or not set(before) & d.PERSONS - _OTHERS:
        return False
    if words.at(wish) in _MUST and words.at(day.end) in _MAKES and not set(between) & _IT:
        return True
    making = next((n for n, word in enumerate(between) if word in _MAKES), None)
    if making is None or making > _PERSONS_ASKED:
        return False
    return not set(between[making + 1 : making + 2]) & _ITS


def is_work_ahead(words: Words, start: int, end: int) -> bool:
    """Whether the day from ``start`` to ``end`` is that by which so many parts have to be made: 'we
    have 450 bends to do before Christmas', 'wir haben 300 Bögen bis Weihnachten zu biegen'."""
    has = next((at for at in words.before(start, _CLAUSE) if words.phrase(at, _HAVE)), None)
    if has is None or set(words.text[has:start]) & (_OTHERS | d.TOOLS):
        return False
    to_do = [at for at in range(has, start) if words.phrase(at, _TO_DO)]
    to_do = to_do or [at for at in words.after(end, _VERB_BEHIND) if words.phrase(at, _TO_DO)]
    counted = next((at for at in range(has, start) if words.at(at).isdecimal()), None)
    if not to_do or counted is None:
        return False
    return counted < to_do[0] and min(to_do[0], start) - has <= _AHEAD


def would_come_by(words: Words, start: int, end: int) -> bool:
    """Whether customers only offer to come on that day, if it suits: 'can collect Thursday if you
    are near the bridge', 'kann ihn Freitag abholen, wenn ...'."""
    near = [*words.before(start, _BEFORE_IT), *words.after(end, 2)]
    if not any(words.at(at) in _COMES_BY for at in near):
        return False
    may = any(words.at(at) in _MAY for at in words.before(start, _BEFORE_IT + 2))
    return may and any(words.at(at) in _IF for at in words.after(end, _VERB_BEHIND + 1))
