"""The reader: own text in, size requests out."""

from __future__ import annotations

import re
from collections.abc import Sequence
from dataclasses import replace
from decimal import Decimal

from ...rules.request import Frozen, SizeRequest
from ..late_pattern import late_pattern
from ..model import Message, OwnText
from .aside.other_tools import with_other_tools_doubted
from .attached import with_attached
from .counts.choices import with_choices
from .counts.for_each import with_counts_for_each
from .counts.hedged import with_counts_guessed
from .counts.left import with_counts_left
from .nets.quoted_too import with_quoted_doubted
from .nets.second_reading import with_second_reading
from .nets.tallies import with_tallies
from .requests import empty_request, requests_of, with_material_of
from .said.leaning import with_leaning
from .sizes.groups import Group
from .stretch import MOST_CHARACTERS, read_stretch
from .subject import with_subject
from .text.patterns import any_of, whole_words
from .thread.answers_above import answers_above, count_alone
from .thread.bare_replies import bare_replies
from .thread.count_changed import count_changed
from .thread.count_instead import count_instead
from .thread.earlier import read_earlier
from .thread.material_answers import with_material_answered
from .thread.prompts import count_answered
from .thread.quoted import Relied, answers_asked, taken_lines, unread
from .thread.staying import SHORT, says_otherwise
from .wanted.bought_before import with_bought_doubted
from .wanted.rule_sizes import with_rule_sizes_doubted
from .wanted.told_left_out import without_told


class Reading(Frozen):
    """What was read: one request for each distinct tube and radius, in the order asked for."""

    requests: tuple[SizeRequest, ...] = ()
    notes: tuple[str, ...] = ()
    """For the person, not the customer: 'no size was found in the attachment terms.csv'."""
    completes: bool = False
    """Whether the new words answer or change the request in the mail that they quote."""
    picked: bool = False
    """Whether the new words pick lines of a list in the mail that they quote."""
    tube_quoted: bool = False
    """Whether the tube stands in the quoted mail alone."""
    goes_on: bool = False
    """Whether there is more than was read of a very long message or attachment."""
    likeliest: float | None = None
    """How surely figures of its surest size are lengths (``second_reading``), in log odds."""


_ORDER_ATTACHED = late_pattern(
    r"\b(?:po|p\.o\.|purchase order|invoice|receipt|bestellung|rechnung|commande|facture|pedido"
    r"|factura|ordine|fattura|bestelling|factuur)\b(?:\s#?\d+)?\s(?:(?:is|was|are|comes|liegt|ist|est"
    r"|va|è|is)\s)?(?:attached|enclosed|anbei|ci-joint|adjunt[oa]|allegat[oa]|bijgevoegd)\b",
    re.IGNORECASE,
)
"""An order that is enclosed is no drawing."""
_ATTACHED = late_pattern(
    r"\b"
    + any_of(
        "attached | attachment | enclosed | per (?:the )?(?:print|drawing) | as per drawing",
        "acc\\.? to (?:the |our |your )?drawing | according to (?:the |our |your )?drawing",
        "nach zeichnung | laut zeichnung | selon plan | según plano",
        "(?:secondo|da|come da) disegno | volgens tekening",
        "see (?:the )?(?:print|drawing|sketch|photo) | on the (?:print|drawing) | anbei",
        "im anhang | anhang | beigefügt | liegt bei | ci-joint | en pièce jointe | pièce jointe",
        r"adjunto | adjunta | in allegato | allegato | bijlage | bijgevoegd | załącz\w+",
    )
    + r"\b",
    re.IGNORECASE,
)
_TOOLING = late_pattern(
    r"\b"
    + any_of(
        "mandrels? | mandrills? | dorne? | biegedorne? | mandrins? | mandrin[oi] | mandril(?:es)?",
        r"doorn(?:en)? | trzpie\w* | tooling",
    )
    + r"\b",
    re.IGNORECASE,
)
_PRICE = whole_words(
    r"price\w* | quot\w+ | cost\w* | preis\w* | angebot\w* | prix | devis | precio\w* | ofert\w+",
    r"cotiz\w+ | prezz\w+ | offert\w+ | prijs | pris | cen[ay] | preço",
)

_THOSE = late_pattern(
    r"\b(?:the|these|those|your|our|die|den|diese|les|ces|vos|los|estos|sus|i|le|questi|deze)\s"
    r"(?:\d{1,2}|two|three|zwei|drei|deux|trois|dos|tres|due|tre|twee|drie)\b",
    re.IGNORECASE,
)
"""'Please invoice the 2 mandrels': as many as are known already."""
_SHIP = late_pattern(r"\b(?:ship|invoice)\s(?:when|as soon|to|it|them|asap)\b", re.IGNORECASE)
"""'I need 2 of these, ship when ready': an order of what was offered."""


def read(own: OwnText, message: Message) -> Reading:
    """Every size the sender asks for in their own text. Never raises on any text."""
    head = own.text[: max(0, own.body_start - 2)]
    subject = read_stretch(head, 0) if own.subject_counts else None
    relied = read_earlier(own, message)
    if relied is not None and not relied.everything and subject is not None:
        # A tube in the subject is asked for itself: what is quoted below has another.
        relied = None if any(group.has_tube for group in subject.groups) else relied
    recounted = count_instead(own, relied) if relied is not None else None
    if relied is not None and recounted is not None:
        relied = replace(relied, everything=True, counted_anew=True)
    known = relied.figures if relied is not None else ()
    prompts = own.prompts or answers_above(own) or bare_replies(own, relied)
    own = own.model_copy(update={"prompts": prompts})
    body = read_stretch(own.text[own.body_start :], own.body_start, known, prompts)
    notes = ["the message is very long: only its beginning was read"] if body.is_cut else []
    requests = requests_of(body, own, message, beside=subject, relied=relied)
    requests = with_material_of(requests, subject)
    if relied is not None and relied.is_only_spoken_of(requests, body.groups):
        asks = body.layout.text.casefold()
        requests = requests if "?" not in asks or _PRICE.search(asks) else []
    if len(requests) == 1 and relied is not None and relied.known:
        anew = count_changed(own.text[own.body_start :]) or requests[0].quantity
        anew = recounted.count if recounted is not None else anew
        requests = [requests[0].model_copy(update={"quantity": anew})]
    if len(requests) == 1 and requests[0].quantity is None:
        requests = [requests[0].model_copy(update={"quantity": count_answered(own)})]
    requests = with_material_answered(requests, own)
    if relied is not None:
        requests = with_quoted_doubted(requests, body.layout, relied.figures)
    picked = completes = False
    if relied is not None and relied.only_names(requests):
        requests = []  # "nur den 33,7er Dorn": a line of the quoted list
    if not requests and relied is not None:
        said = empty_request(body, own, message, beside=subject)
        strange = unread(body.layout, relied.figures)
        if recounted is not None:
            said = said.model_copy(update={"quantity": recounted.count})
            plain = recounted.sure or count_alone(own.text[own.body_start :]) == recounted.count
            strange += [] if plain else [Decimal(recounted.count)]
        elif said.quantity is None:
            counted = count_answered(own) or count_alone(own.text[own.body_start :])
            said = said.model_copy(update={"quantity": counted})
        (said,) = with_material_answered([said], own)
        requests = taken_lines(relied, said)
        picked = bool(requests)
        requests = requests or _unchanged(relied, said, body.layout.text, strange)
        completes = bool(requests) and not picked
    if subject is not None:
        of_subject = requests_of(subject, own, message, beside=body)
        requests = with_subject(requests, with_material_of(of_subject, body))
    text = own.text[: own.body_start + MOST_CHARACTERS]
    requests, told = without_told(requests, text)
    notes += told
    notes += [f"a size was taken as owned already, not asked for: {w}" for w in body.layout.owned]
    notes += [f"a size was taken as not asked for: {words}" for words in body.layout.left_out]
    notes += [f"taken as no tube to bend: {words}" for words in body.layout.aside]
    requests = with_rule_sizes_doubted(with_choices(requests, text), text)
    requests = with_counts_for_each(with_counts_guessed(requests, text), text)
    requests = with_leaning(with_counts_left(requests, text), text)
    requests = with_bought_doubted(requests, text)
    requests = with_other_tools_doubted(requests, text)
    requests, likeliest = with_second_reading(requests, text, body.in_tables())
    if not body.layout.left_out:
        requests = with_tallies(requests, text, len(told))
    requests, of_files, cut_in_files = with_attached(requests, own, message, body)
    notes += of_files
    if not requests and _ATTACHED.search(_ORDER_ATTACHED.sub(" ", text)) and _TOOLING.search(text):
        requests = [empty_request(body, own, message, beside=subject)]
    reading = Reading(
        requests=_distinct(requests),
        notes=tuple(notes),
        likeliest=likeliest,
        goes_on=body.is_cut or cut_in_files,
    )
    if relied is None or not requests:
        return reading
    return reading.model_copy(
        update={
            "completes": completes or recounted is not None or relied.changed_by(body.groups),
            "picked": picked,
            "tube_quoted": relied.gives_tube(requests, body.groups),
        }
    )


def _unchanged(
    relied: Relied, said: SizeRequest, words: str, strange: Sequence[Decimal]
) -> list[SizeRequest]:
    """'Make it two, everything else as quoted', '4130, please': no figure of a tube is new."""
    changes = relied.everything and (said.quantity is not None or said.material is not None)
    if not changes and not answers_asked(relied, said):
        if strange or not _changes_one_thing(relied, said, words):
            return []
        relied = replace(relied, everything=True)
    request = relied.completed(said, Group(), strange)
    return [request] if request.od_mm is not None else []


def _changes_one_thing(relied: Relied, said: SizeRequest, words: str) -> bool:
    """'Make it 304 instead', 'we'll take 2' above a mail on one size: of that, so many."""
    if len(relied.known) != 1 or relied.known[0].wall_mm is None:
        return False
    if said.material not in (None, relied.known[0].material):
        return says_otherwise(words)
    of_known = said.quantity is None or _THOSE.search(words) or _SHIP.search(words)
    return not of_known and len(words.strip()) <= SHORT


def _distinct(requests: list[SizeRequest]) -> tuple[SizeRequest, ...]:
    """The same tube and radius named twice is one request."""
    first: dict[tuple[object, ...], SizeRequest] = {}
    for request in requests:
        key = (request.shape, request.od_mm, request.wall_mm, request.clr_mm, request.material)
        first.setdefault(key, request)
    return tuple(first.values())
