"""What kind of message it is: that decides whether it is answered, and how."""

from __future__ import annotations

import re
from dataclasses import dataclass

from .automatic import automatic
from .errand import Errand, Leaning, weigh
from .late_pattern import late_pattern
from .model import Kind, Message, OwnText
from .not_ours import not_ours
from .offer_changed import changes_our_offer
from .only_asked import (
    asks_of_delivered,
    asks_of_running,
    asks_of_service,
    is_only_curious,
    wants_no_quotation,
)
from .order_changes import asks_in_its_place, changes_an_order
from .plainly_elsewhere import plainly_elsewhere
from .praise import only_praises
from .quote_lines import subject_prefixes
from .reading.thread.staying import without_reliance
from .rolled_for_us import rolled_for_us
from .sent_back import is_sent_back
from .wrong_parcel import wrong_parcel

__all__ = ["Found", "automatic", "classify"]

_REQUOTE = late_pattern(
    r"\b(?:updated?|revised?|new|amended?|send)(?: me| us)?(?: the| a| your| an)? "
    r"(?:quote|quotation|offer)\b"
    r"|\bre-?quote\b|\b(?:and|please|only) (?:quote|price)\b"
    r"|\b(?:neues|neue|angepasstes|geändertes) angebot\b|\bangebot (?:bitte )?(?:anpassen|ändern)\b"
    r"|\b(?:nouveau|mettre à jour le) devis\b|\bnueva (?:oferta|cotización)\b"
    r"|\bnuov[ao] (?:offerta|preventivo)\b|\b(?:nieuwe|aangepaste) offerte\b",
    re.IGNORECASE,
)
_ORDERS = re.compile(
    r"\b(?:po|order|bestellung|invoice|rechnung)\b[^.\n]{0,16}\b(?:attached|enclosed|follows|anbei)\b"
    r"|\bpo ?(?:#|no\.?)? ?\d|\binvoice\b|\bpaid\b",
    re.IGNORECASE,
)
_COUNTED = 8.0
"""A whole size, mandrels counted: a question beside it changes nothing."""
_CLEAR = 5.0
"""A leaning of less than this is a word that happened to fall."""
_TAKEN_BACK = "a request taken back"
_OFFER = "an answer to our offer"
_GENERAL = 3.0
_CAN_BE_DONE = "asks whether it can be done"
"""A question of the trade, where nothing is asked for by name."""
_WISHED = 8.0
"""Tooling asked for by name: 'need a mandrel', 'quote us for two'."""
_SHORT = 300
"""Characters of a mail that asks one thing and says little else."""
_ANSWERED = 5.0
"""How much an approved answer that fits speaks for a question: about as much as a trade word."""


@dataclass(frozen=True, slots=True)
class Found:
    """What the reading found, as far as the kind of the message depends on it."""

    sizes: int = 0
    """How many sizes the own words ask for."""
    tooling_lines: int = 0
    """How many lines name tooling without a size that could be read."""
    whole: bool = False
    """Whether one of them has OD, wall and radius."""
    in_files: bool = False
    """Whether an attached file has sizes among those."""
    no_more_than_one_length: bool = False
    """Whether none of them has two of OD, wall and radius."""
    no_tube: bool = False
    """Whether none of them has an OD."""
    radius_only: bool = False
    """Whether the sizes are no more than radii."""
    completes: bool = False
    """Whether the words answer or change the request in the mail that they quote."""
    picked: bool = False
    """Whether they pick lines of a list in the mail that they quote."""
    tube_quoted: bool = False
    """Whether the tube stands in the quoted mail alone."""
    likeliest: float | None = None
    """How the words speak of the size that is most surely asked for: above 0 as of one that is."""
    answered: bool = False
    """Whether an approved answer about bending fits one of the questions."""
    hinted: bool = False
    """Whether any does: also for price or time, which anybody may ask of anything, or one that
    takes several sentences to fit."""


def classify(message: Message, own: OwnText, found: Found) -> tuple[Kind, str]:
    """The kind and a plain reason for it, the deciding words quoted."""
    reason = automatic(message, own)
    if reason is not None:
        return Kind.AUTOMATIC, reason
    return classify_person(message, own, found)


_AS_ASKED, _NOT_AS_EXAMPLE = 3.0, 6.0
"""So sure the words are that a size is asked for, where none of those listed here asks, or where
a question may be about it. On labelled mail that nothing was learnt from, talk and questions about
a size scored 1.9 at most, requests from 3.0."""
_ASKS_TOO = late_pattern(
    r",?\s(?:and|und|et|y|e|en|also|plus)\b(?=\s"
    r"(?:(?:also|auch|aussi|también|anche|ook)\s)?"
    r"(?:(?:can|could|would|will|do) (?:you|u|ya)\s(?:please\s)?"
    r"(?:quote|make|have|do|supply|price|offer)"
    r"|what (?:would|does|will) (?:a|one|the)\b[^.?!\n]{0,60}\bcost"
    r"|how much (?:is|for|would)|(?:können|könnt|haben|habt) (?:sie|ihr)"
    r"|pouvez[- ]vous|avez[- ]vous"
    r"|(?:pueden|puede|tienen|tiene)\b|(?:potete|può|avete)\b|(?:kunt|heeft) u))",
    re.IGNORECASE,
)
"""Where a second question of one sentence asks for the piece: 'What is a wall factor, and can you
quote 1.5 x .083?'"""


_PUT_OFF = late_pattern(
    r"(?P<later>\b(?:later|next (?:year|month|season|quarter)|eventually|down the road|some ?day|in"
    r" (?:the )?(?:spring|summer|autumn|fall|winter|future|new year))\b(?:[^.?!\n]|\.\d){0,80}?)"
    r"\b(?:(?:there's |there is )?no need to|don['’]?t bother to|you needn['’]?t) (?:quote|price)"
    r"\b(?:[^.?!\n]|\.\d){0,40}",
    re.IGNORECASE,
)
"""'Later on we'll want 2 x .065 too, no need to price it now': one waits, the rest is asked for."""


_AS_ORDERED = late_pattern(
    r"(?P<again>\b(?:repeat|same|another|again|more|nachbestell\w*|bestellen nach|gleiche|selbe"
    r"|nochmals?"
    r"|noch ?einmal|même|pareil|mismo|otr[oa]|igual|stess[oa]|altr[oa]|uguale|hetzelfde|zelfde"
    r"|nog)\b"
    r"[^.?!\n]{0,60}?)\b(?:(?:my|our|the|unser\w*"
    r"|mein\w*|ma|notre|mi|nuestro|mio|nostro|mijn|onze) )?(?:last |old |letzten )?"
    r"(?:order|po|p\.o\.|job|auftrag|bestellung|commande|pedido|ordine|bestelling)"
    r" ?(?:no\.?|nr\.?|n°|number)? ?#?[a-z]{0,3}-?\d{3,}\b",
    re.IGNORECASE,
)
"""'Run me a repeat of what you made on my order 5512': the order only says what is wanted again."""


_TOLD_TO = late_pattern(
    r"\b(?:told (?:me|us)|said|says|wrote|asked (?:me|us)|sagte?|meinte?|schrieb|a dit|dit|dijo"
    r"|escribió|ha detto|ha scritto|zei|schreef)(?: (?:just|only|simply|to|for|nur|bloß|seulement"
    r"|solo|sólo|alleen))*[:,]? ?(?:\"[^\"\d\n]{2,50}\"|“[^”\d\n]{2,50}”|„[^“”\d\n]{2,50}[“”]"
    r"|«[^»\d\n]{2,50}»)",
    re.IGNORECASE,
)
"""'My boss told me to "order the mandrel"': another's words, and no order of the sender's."""


def classify_person(message: Message, own: OwnText, found: Found) -> tuple[Kind, str]:
    """The same for a message that is known not to be automatic."""
    if not own.text.strip() and not own.attachment_texts:
        return Kind.OTHER, "nothing newly written"
    words = own.text[own.body_start :]
    if found.completes and _business(words) < _CLEAR and not _ORDERS.search(words):
        return Kind.SIZES, "answers or changes the request in the mail it quotes"
    if found.picked and _wants_line(own.text[own.body_start :]):
        return Kind.SIZES, "asks for lines of the list in the mail it quotes"
    kind, why = _of_person(message, own, own.text, found)
    if found.tube_quoted and kind is Kind.OTHER:
        kind, why = _of_person(message, own, without_reliance(own.text), found)
        if kind is Kind.OTHER and "?" not in own.text and _business(own.text) < 1:
            return Kind.SIZES, "answers the mail it quotes, which names the tube"
    return kind, why


def _with_answer(question: Leaning) -> Leaning:
    """A question that has an approved answer is one, however few words of the trade are in it."""
    why = question.why or "asks what an approved answer tells"
    return Leaning(question.weight + _ANSWERED, why)


def _asks_of_our_offer(errand: Errand, question: Leaning) -> bool:
    """'Before I talk to the boss: why three balls and not one?': the offer is not answered yet."""
    of_offer = errand.elsewhere.why.startswith(_OFFER) and errand.elsewhere.weight < _CLEAR
    return of_offer and errand.wants_knowledge and question.weight >= _GENERAL and not errand.asks


def _wants_line(text: str) -> bool:
    """Whether a line that is picked out is asked for, and not ordered: 'go ahead with line 2,
    please update the quote'."""
    if _ORDERS.search(text):
        return False
    return _business(text) < _CLEAR or _REQUOTE.search(text) is not None


def _only_asks(text: str, found: Found, errand: Errand, question: Leaning) -> bool:
    """Whether nothing is to be made yet: no size is read, and the sender wants to know something
    in general, or says that nothing is to be quoted."""
    if found.sizes or found.tooling_lines or not question.weight:
        return False
    takes_back = errand.elsewhere.why.startswith(_TAKEN_BACK)  # "kein Angebot nötig: wie ..."
    if errand.elsewhere.weight > question.weight and not takes_back:
        return False
    if wants_no_quotation(text):
        return True
    return question.weight >= _GENERAL and errand.tooling.weight < _WISHED


def _is_curious(text: str, found: Found, errand: Errand, question: Leaning) -> bool:
    """Whether a size is only named in a question: by one of its lengths ('I plan on 1-1/4 tube,
    does it matter whether it is seamless?', 'does a mandrel for a 1.5 wall still work if ...?'), or
    by somebody who says that nothing is to be bought."""
    if not found.sizes or found.whole or found.in_files:
        return False
    if question.weight and (wants_no_quotation(text) or is_only_curious(text)):
        return errand.elsewhere.weight < question.weight
    if question.weight < _GENERAL:
        return False
    if errand.elsewhere.weight:
        return False
    if errand.asks:
        return found.no_tube and errand.tooling.why.startswith(_CAN_BE_DONE)
    return found.no_more_than_one_length and errand.tooling.weight < _COUNTED


def _business(text: str) -> float:
    """How much the words are of an order, an invoice or a complaint, what stays left aside."""
    return weigh(without_reliance(text), 0).elsewhere.weight


def _plainly_other(text: str) -> str:
    """Why a message that names a size is plainly no request, or ''."""
    return (
        plainly_elsewhere(text)
        or not_ours(text)
        or only_praises(text)
        or changes_an_order(text)
        or is_sent_back(text)
        or wrong_parcel(text)
    )


def _of_person(message: Message, own: OwnText, text: str, found: Found) -> tuple[Kind, str]:
    text = _ASKS_TOO.sub("?", _PUT_OFF.sub(r"\g<later>", text))
    text = _AS_ORDERED.sub(r"\g<again>it", text)
    if not found.sizes:
        text = _TOLD_TO.sub(" ", text)
    errand = weigh(text, found.sizes, found.tooling_lines, in_files=found.in_files)
    tooling, elsewhere = errand.tooling, errand.elsewhere
    question = _with_answer(errand.question) if found.answered else errand.question
    if not own.subject_counts and not any((tooling.weight, question.weight, elsewhere.weight)):
        # "Re: invoice 118" and "any news on this one": the old subject tells what it is about.
        _, _, earlier_at = subject_prefixes(message.subject)
        elsewhere = weigh(message.subject[earlier_at:], 0).elsewhere
    other = Kind.OTHER, elsewhere.why
    if rolled := rolled_for_us(text):
        return Kind.OTHER, rolled
    if found.sizes and (plain := _plainly_other(text)):
        return Kind.OTHER, plain
    if found.sizes and (anew := asks_in_its_place(text)):
        return Kind.SIZES, anew
    if found.whole and (changed := changes_our_offer(text)):
        return Kind.SIZES, changed
    if _asks_of_our_offer(errand, question) and not found.sizes:
        return Kind.QUESTION, question.why
    if question.weight and not found.sizes and (asks_of_delivered(text) or asks_of_service(text)):
        return Kind.QUESTION, question.why
    if question.weight and asks_of_running(text):
        return Kind.QUESTION, question.why
    if _only_asks(text, found, errand, question):
        return Kind.QUESTION, question.why
    if elsewhere.weight >= max(_CLEAR, tooling.weight) and elsewhere.weight > question.weight:
        return other
    if elsewhere.weight > _CLEAR and not errand.asks and elsewhere.weight > question.weight:
        return other
    if _is_curious(text, found, errand, question):
        return Kind.QUESTION, question.why
    if errand.asks and tooling.weight >= _CLEAR and tooling.weight >= elsewhere.weight:
        return Kind.SIZES, tooling.why
    # Nobody asks: "we ordered 1.5 x .065" is no request, "1.5 x .065, 4.5 CLR, 4130" is.
    if elsewhere.weight >= max(1.0, tooling.weight) and elsewhere.weight > question.weight:
        return other
    # "My drawing says R80. Is that to the inside?" has no tube yet.
    example = found.radius_only and question.weight > 0
    spoken_of = errand.only_mentioned or not errand.specified or example
    counted = found.whole and tooling.weight >= _COUNTED
    if errand.sizes and (counted or not errand.wants_knowledge) and not spoken_of:
        return Kind.SIZES, tooling.why
    enough = _NOT_AS_EXAMPLE if question.weight else _AS_ASKED
    if errand.sizes and found.likeliest is not None and found.likeliest >= enough:
        return Kind.SIZES, "speaks of a size as of one that is asked for"
    if question.weight:
        return Kind.QUESTION, question.why
    if elsewhere.weight:
        return other
    if found.hinted and len(text) < _SHORT:
        return Kind.QUESTION, "asks what an approved answer tells, and nothing else"
    if found.whole and not errand.only_mentioned and "?" not in text:
        return Kind.SIZES, "tells OD, wall and radius of a tube, and nothing else"
    if errand.sizes:
        return Kind.OTHER, "a size is mentioned, but nothing asked"
    return Kind.OTHER, "neither tooling nor a question in it"
