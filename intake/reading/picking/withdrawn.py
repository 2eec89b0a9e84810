"""Sizes of a list that are named by their place and not wanted after all.

'On second thought drop 5', 'please leave out the last row', 'item 2 only', 'Position 3 entfällt'.
What several places in one breath mean, `place_lists` says.
"""

from __future__ import annotations

import re
from collections.abc import Sequence
from decimal import Decimal

from ...late_pattern import late_pattern
from ..text.patterns import any_of
from .lines_aside import set_aside
from .place_lists import shown, wanted
from .place_names import (
    ARTICLE,
    BARE,
    COUNTED_PLACE,
    ENDS,
    NAME,
    NO_MEASURE,
    NOUN,
    SPELLED_TWICE,
    places,
    with_digits,
)
from .place_spoken import plainly_placed
from .places_there import numbers_there

_DROP = any_of(
    "drop | scrap | strike(?: out)? | skip | cancel | delete | remove | disregard | forget",
    "ignore",
    "dropped | scrapped | cancell?ed | deleted | removed | skipped | struck out",
    "leave out | leave off | no longer need | don't need | do not need | don't want | scratch",
    "vergessen sie | vergiss | oubliez | oublie | olvid(?:e|en|ad) | dimentic(?:a|hi|ate)",
    "vergeet",
    "omit | streichen sie | streiche | annuler | supprimer | anular | quitar | togliere",
    "annullare",
)
_BUT = any_of(
    "without | except(?: for)? | not | minus | ohne | außer | sauf | sans | excepto | sin | salvo",
    "senza | eccetto | tranne | zonder | behalve",
    "(?:all|everything|each|any|every one)(?: of them)? but | alles bis auf",
)
_GONE = any_of(
    r"(?:is |are |has been |have been |was )?(?:no longer (?:needed|required|wanted)|cancelled"
    r"|canceled|dropped|not needed(?: any ?more)?|not required|not wanted|off the list)\b",
    r"can be (?:dropped|left out|ignored|deleted|skipped)\b",
    r"(?:bitte )?(?:streichen|entfällt|entfallen|weglassen)\b | fällt weg\b",
    r"(?:wird|werden|brauchen wir) nicht (?:mehr )?(?:gebraucht|benötigt|mehr)\b",
    r"(?:est |sont )?(?:annulée?s?|supprimée?s?)\b | n'est plus nécessaire",
    r"(?:queda |está )?(?:anulad[oa]|cancelad[oa])\b | ya no (?:es necesari[oa]|hace falta)",
    r"(?:è )?(?:annullat[oa])\b | non serve più | vervalt\b | is niet meer nodig",
)
_ORDER_ENDS = (
    r"(?=\s*(?:[.;,!)]|$|\(?(?:po\b|order|pedido|bestell|auftrag|commande|ordine)|(?:with|from"
    r"|by) you\b|last\b"
    r"|yesterday\b|under\b|on \d))(?![^.;!?]{0,80}\b(?:all|both|every|each|alle|tous|todos"
    r"|tutti)\b)"
)
_SHOWN = any_of(
    r"(?:is |are )?(?:only |just |given |shown |there |listed )*for (?:your |our )?(?:informat"
    r"ion|info"
    r"|reference|completeness)(?: only)?\b(?=\s*(?:[.;,!?)]|$|and\b))",
    r"(?:we|i)(?:'ve)? (?:already )?(?:have|own|got)(?: (?:already|that|it|here))?(?=\s*(?:[.;"
    r",!?)]|$))",
    r"(?:we|i)(?:'ve)? (?:still|already) (?:have|got|own)(?! (?:the|an?|to|dies?|tubes?|no"
    r"|some)\b)\b",
    rf"(?:is|are|was)(?: already| now)? (?:on order|ordered)(?: already)?{_ORDER_ENDS}",
    rf"(?:ist|sind) (?:schon|bereits) bestellt{_ORDER_ENDS} | (?:est|sont) déjà"
    rf" commandée?s?{_ORDER_ENDS}"
    rf" | (?:ya )?está(?:n)? (?:ya )?pedid[oa]s?{_ORDER_ENDS} | (?:è|sono) già (?:stat[oaie]"
    rf" )?ordinat[oaie]"
    rf"{_ORDER_ENDS} | (?:is|zijn) al besteld{_ORDER_ENDS}",
    r"(?:ist |steht )?(?:nur |lediglich )?zur (?:information|info|vollständigkeit)\b",
    r"haben wir (?:schon|bereits)(?=\s*(?:[.;,!?)]|$)) | (?:est |n'est )?(?:donnée? |là )?(?:q"
    r"ue )?pour"
    r" (?:information|mémoire|info)\b",
    r"(?:on l'a|nous l'avons) déjà\b | (?:es |va )?(?:solo |sólo )?(?:informativ[oa]|a título"
    r" informativo|como referencia)\b | ya l[ao] tenemos\b",
    r"(?:è )?(?:solo )?(?:a titolo informativo|per (?:conoscenza|informazione))\b | (?:ce )?l'"
    r"abbiamo"
    r" già\b | (?:is |staat )?(?:er )?(?:alleen |slechts )?ter informatie\b | hebben we al\b",
)
"""Shown in the list, and not asked for."""
_SHOWN_THERE = (
    any_of(
        r"(?:we|i)(?:'ve)? (?:already )?(?:have|own|got)(?: (?:already|those|them|these|both|here"
        r"|it))*",
        r"(?:are|is) (?:already )?(?:here|in stock|covered|on the shelf|in our rack)",
        r"(?:haben wir|sind)(?: (?:schon|bereits|da|vorhanden))+",
        r"(?:on les a|nous les avons|on l'a|sont)(?: déjà)(?: en stock| là)?",
        r"(?:ya )?(?:los|las) tenemos(?: ya)? | ya están",
        r"(?:li|le|ce li|ce le) abbiamo(?: già)? | (?:le|li) abbiamo già",
        r"hebben we(?: al)? | zijn (?:al )?(?:aanwezig|er al)",
    )
    + r"(?=\s*(?:[.;,!)]|$))(?![^.;!?]{0,60}\b(?:but|though|yet|worn|aber|mais|pero|ma|maar)\b)"
)
"""The same of several lines in one breath, that are there: 'A and C we have'."""
_APPROVED = r"(?:released|approved|confirmed|signed off|cleared|authori[sz]ed)"
_NOT_YET = any_of(
    rf"(?:is|are|was|were|has|have)(?: still)? not(?: yet)?(?: been)?(?: yet)? {_APPROVED}",
    rf"(?:isn't|aren't|hasn't been|haven't been)(?: yet)? {_APPROVED}",
    r"(?:is|are)(?: still| only| just)? (?:on hold|for later|for next year|parked|postponed"
    r"|pending(?: approval)?|for (?:the )?next (?:phase|season|project))",
    r"(?:ist|sind)(?: noch| aber)* nicht (?:freigegeben|genehmigt|bestätigt|beauftragt)",
    r"(?:ist|sind)(?: erst| nur)? für (?:später|nächstes jahr)",
    r"kommt erst (?:später|nächstes jahr)",
    r"(?:ist|sind) zurückgestellt",
    r"(?:n'est|ne sont) pas(?: encore)? (?:validée?s?|libérée?s?|approuvée?s?|confirmée?s?)",
    r"(?:est|sont) (?:pour plus tard|en attente)",
    r"(?:aún |todavía )?no está(?:n)?(?: aún| todavía)? (?:aprobad|liberad|confirmad)[oa]s?",
    r"(?:es|son) para (?:más adelante|el año que viene) | queda(?:n)? pendiente",
    r"non (?:è|sono)(?: ancora)? (?:approvat|rilasciat|confermat)[oaie]",
    r"(?:è|sono) (?:per (?:più avanti|dopo)|in sospeso)",
    r"(?:is|zijn)(?: nog)? niet (?:vrijgegeven|goedgekeurd|bevestigd) | (?:is|zijn) voor later",
)
_LEAVES_IT = (
    r"(?=,? (?:(?:so|and|also|und|et|y|e|en) )?(?:please |pls |bitte |s'il vous plaît |por favor |"
    r"per favore |graag )?(?:leave (?:it|that|this)(?: one)? (?:out|off)"
    r"(?: of (?:the |your |this )?(?:quot\w+|offer|price|list|order))?|skip it|omit it|drop it"
    r"|(?:do not|don't) (?:quote|price) (?:it|that)|weglassen|nicht anbieten|streichen|à omettre"
    r"|ne pas (?:la |le )?chiffrer|no (?:la |lo )?(?:coticen|cotizar|incluir)"
    r"|non (?:quotare|offrire)|niet (?:aanbieden|offreren)|weglaten)\s*(?:[.;!]|$))"
)
"""'... is on hold, please leave it out': said of that line, with nothing behind."""
_ALL_THE_SAME = (
    r"(?:\s(?:yet|for now|so far|today|by (?:the |our )?(?:customer|client|boss|management"
    r"|engineering|purchasing)|vom kunden|par le client|por el cliente|dal cliente|door de klant))*"
    r"(?=\s*(?:[.;,!?)]|$)|\s(?:so|and|also|und|et|y|e|en)\s)"
    rf"(?:{_LEAVES_IT}|"
    r"(?![^.;!?]{0,80}\b(?:but|quote|price|please|need|want|aber|bitte|mais|pero|ma|maar)\b))"
    r"(?!.{0,100}\b(?:anyway|all the same|regardless|too|as well|also|all|trotzdem|dennoch|auch"
    r"|quand même|aussi|también|comunque|anche|toch|ook)\b)"
)
"""Behind words that put a line off: nothing that asks for it all the same."""
_BUT_ALL = (
    r"(?![^.;!?\n]{0,60}\b(?:but|yet|aber|mais|pero|ma|maar)\b[^.;!?\n]{0,30}"
    r"\b(?:both|all|anyway|beide|alle|les deux|tous|ambos|todos|entrambi|tutti|allebei)\b)"
)
_MORE = (
    rf"(?P<more>(?:(?:\s?,\s?|\s?,?\s(?:and|und|et|y|e|en|&)\s)"
    rf"{BARE.replace('(?P<number>', '(?:').replace('(?P<counted>', '(?:')})*)"
)
_DROPPED = late_pattern(rf"\b{_DROP}\s{BARE}{_MORE}{_BUT_ALL}", re.IGNORECASE)
_BARE_ITEM = late_pattern(BARE, re.IGNORECASE)
_NAMED = rf"{ARTICLE}(?:{NOUN}\s?\(?{NAME}{NO_MEASURE}|{COUNTED_PLACE}{ENDS})"
_LEFT_OUT = late_pattern(rf"\b{_BUT}\s{_NAMED}", re.IGNORECASE)
_WAITS = late_pattern(
    rf"(?<![\w.,/-]){ARTICLE}(?:{NOUN}\s?\(?{NAME}{NO_MEASURE}|{COUNTED_PLACE})\s"
    rf"{_NOT_YET}{_ALL_THE_SAME}",
    re.IGNORECASE,
)
"""'The third is not released', 'the last line is for later'."""
_HELD = late_pattern(rf"\b(?:hold(?: off)?(?: on)?|park|postpone|exclude)\s{_NAMED}", re.IGNORECASE)
_IS_GONE = late_pattern(rf"(?<![\w.,/-]){BARE}\s{_GONE}", re.IGNORECASE)
_IS_SHOWN = late_pattern(
    rf"(?<![\w.,/-]){ARTICLE}(?:{NOUN}\s?\(?{NAME}{NO_MEASURE}|{COUNTED_PLACE})\s{_SHOWN}"
    r"(?![^.;!?]{0,60}\b(?:but|though|yet|aber|mais|pero|ma|maar)\b)",
    re.IGNORECASE,
)
_OF_IT = late_pattern(
    rf"(?:\b(?:for|of|on|to|with|für|zu|von|pour|de|para|per|di|voor|van)\s{ARTICLE}(?:{NOUN}\s?)?"
    r"|\d ?(?:,|and|und|et|y|e|en|&|to|-|bis) ?)$",
    re.IGNORECASE,
)
"""'Line 30 is for information'; of 'the drawing for item 1' it says nothing, and
of '2 and 3 we own' not all."""
_TOOL_FOR = late_pattern(
    r"\b(?:mandrels?|tool|one|\w*dorn|mandrin|mandril|mandrino|doorn)\s?$", re.IGNORECASE
)
_LABEL = late_pattern(
    rf"^[ \t]*(?:[-*•]\s?|\|[ \t]*)?(?:{NOUN}\s?)?\(?(?P<label>\d{{1,2}}|[a-h])"
    r"(?P<sign>\s?[).:]|\s-|\t|[ \t]*\||\s{2,})"
    r"[^\n]{0,40}$",
    re.IGNORECASE,
)


_NEAR = 32


def _is_of_it(ahead: str) -> bool:
    """Whether the words say something of what goes with a line; its mandrel is the line itself."""
    of_it = _OF_IT.search(ahead[-_NEAR:])
    return of_it is not None and not _TOOL_FOR.search(ahead[-_NEAR:][: of_it.start()])


def label_before(text: str, start: int) -> str | None:
    """The number or letter that the line of a figure opens with: '5) 1-1/2 x .065'."""
    begin = text.rfind("\n", 0, start) + 1
    label = _LABEL.match(text[begin:start])
    return label["label"].casefold() if label is not None else None


def label_place(text: str, start: int) -> tuple[int, int] | None:
    """Where that number or letter stands, with the sign behind it."""
    begin = text.rfind("\n", 0, start) + 1
    label = _LABEL.match(text[begin:start])
    if label is None:
        return None
    return begin + label.start("label"), begin + label.end("sign")


def left_over(words: str, labels: Sequence[str | None], sizes: Sequence[Decimal] = ()) -> list[int]:
    """Indexes of the listed sizes that ``words`` leave: all of them where none is taken back.

    ``labels`` are what the items are called; where any has no label, or two have the same, they
    are counted from 1. A place that the list doesn't have takes nothing away. ``sizes`` are figures
    of theirs: a bare number that is one of them names no line.
    """
    everything = list(range(len(labels)))
    if len(labels) < 2:
        return everything
    known = [label for label in labels if label is not None]
    names = known if len(set(known)) == len(labels) else [str(n + 1) for n in everything]
    said = SPELLED_TWICE.sub(r"\g<word>", " ".join(words.split()))
    spaced = plainly_placed(with_digits(said))
    only = wanted(spaced, names, labelled=names is known)
    gone = {
        index
        for pattern in (_DROPPED, _LEFT_OUT, _IS_GONE, _IS_SHOWN, _WAITS, _HELD)
        for match in pattern.finditer(spaced)
        if pattern not in (_IS_SHOWN, _WAITS) or not _is_of_it(spaced[: match.start()])
        for index in places(match["number"], match["counted"], names)
    }
    gone |= {
        index
        for match in _DROPPED.finditer(spaced)
        for more in _BARE_ITEM.finditer(match["more"])
        for index in places(more["number"], more["counted"], names)
    }
    gone |= set(set_aside(spaced, names))
    gone |= shown(spaced, names, _SHOWN_THERE, labelled=names is known)
    if names is known:
        gone |= numbers_there(spaced, names, sizes)
    kept = [index for index in everything if index not in gone and (not only or index in only)]
    return kept or everything
