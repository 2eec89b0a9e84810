"""An order in hand that is cancelled, put off or sent elsewhere: it names its size as a request
does, and asks for nothing new."""

from __future__ import annotations

from . import words_asking, words_errand, words_prices
from . import words_order_changes as w
from .errand import sentences
from .late import Late
from .said_words import said_words

_ORDER = Late(w.ORDER)
_CANCELS = Late(w.CANCELS)
_ANEW = Late(w.ANEW)
_OWED = Late(w.OWED)
_TAKEN_BACK = Late((*w.CANCELS, *w.WITHDRAWN))
_NEW_ONE = Late(w.NEW_ONE)
_LATER = Late((*w.PUTS_OFF, *w.SENT_ELSEWHERE))
_STAYS = Late(w.STAYS_AS_ORDERED)
_ASKS = Late((*words_errand.WANTS_TOOL, *words_prices.ASKS_PRICE, *words_asking.ASKS_PIECE))
_SAYS_WHICH = Late(w.SAYS_WHICH)
_FIGURES = Late([words_errand.TUBE_FIGURES])


def changes_an_order(text: str) -> str:
    """Why the words only change an order in hand; '' where they do not, or may ask for more.

    A size in a sentence that says nothing of the order, a price or a piece asked for, or another
    tube in the place of the one cancelled: each of these may be a request.
    """
    if asks_in_its_place(text):
        return ""
    said = None
    rest: list[str] = []
    for sentence in sentences(text):
        cancels = _CANCELS.search(sentence)
        changes = cancels or _LATER.search(sentence)
        if cancels and _ANEW.search(sentence):
            return ""
        said = said or changes
        if not changes:
            rest.append(_without_owed(sentence))
    if said is None or not _ORDER.search(text):
        return ""
    for sentence in rest:
        if _ASKS.search(sentence):
            return ""
        of_order = _ORDER.search(sentence) or _SAYS_WHICH.match(sentence) or _STAYS.search(sentence)
        if _FIGURES.search(sentence) and not of_order:
            return ""
    return f'a change to an order in hand ("{said_words(said)}")'


def asks_in_its_place(text: str) -> str:
    """Why what is taken back is followed by a request, or '': 'cancel line 2, make it 1.25 x .065
    instead', 'De aanvraag voor 38 x 1,5 mag vervallen. Nieuw: 40 x 1,5, 1 doorn'."""
    spoken = sentences(text)
    for number, sentence in enumerate(spoken):
        if not _TAKEN_BACK.search(sentence):
            continue
        for following in spoken[number + 1 :]:
            new = _FIGURES.search(following) and _NEW_ONE.search(following)
            if new and not _TAKEN_BACK.search(following):
                return f'asks for another in its place ("{" ".join(new.group().split())}")'
    for sentence in spoken:
        cancels = _CANCELS.search(sentence)
        anew = (
            _ANEW.search(sentence, cancels.end()) if cancels and _ORDER.search(sentence) else None
        )
        if anew and _FIGURES.search(sentence[cancels.end() if cancels else 0 :]):
            return f'asks for another in its place ("{" ".join(anew.group().split())}")'
    return ""


def _without_owed(sentence: str) -> str:
    """A sentence without its words on what the cancelling costs."""
    owed = _OWED.search(sentence)
    return f"{sentence[: owed.start()]} {sentence[owed.end() :]}" if owed else sentence
