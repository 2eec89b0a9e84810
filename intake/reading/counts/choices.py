"""Counts between which the sender has not settled: 'price for 1 and for 3', 'two if there is a
break at two, otherwise one'. The least is stated, with a doubt that names them all."""

from __future__ import annotations

import re
from collections.abc import Sequence

from ....rules.request import Doubt, SizeRequest
from ...late_pattern import late_pattern
from ..text.patterns import any_of
from . import words as w

_WHY = "several numbers of mandrels are named: which is wanted depends on the price"
_SHY = frozenset("et en um uma fem another otro otra altro".split())
_WORDS = [word for word, count in w.COUNTS.items() if count <= 10 and word not in _SHY]
_N = (
    rf"(?:\d{{1,2}}(?![.,/]?\d)|(?:{'|'.join(sorted(_WORDS, key=len, reverse=True))}"
    r"|einen|een|un|une|an?)(?!\w))"
)
_UNIT = (
    r"(?:\s?-?\s?(?:"
    + any_of(
        "pcs? | pieces? | pce | off | ea | each | mandrels? | stück | stk | stueck | pièces?",
        "pezz[io] | pz | piezas? | uds? | unidades | stuks? | dorne? | mandrins? | mandriles",
        "mandril | mandrin[oi] | doorn(?:en)? | of them",
    )
    + r")\b\.?)?"
)
_PRICED = any_of(
    r"prices? | pricing | quot(?:e|es|ation|ing) | cost | qty | quantit(?:y|ies) | price breaks?",
    "preise? | angebot | staffelpreise? | menge[n]? | stückzahl(?:en)? | prix | devis | tarif",
    r"offre | quantités? | precios? | cotiz\w+ | oferta | cantidad(?:es)? | prezz[io] | preventivo",
    r"offerta | quantità | prij(?:s|zen) | offerte | aantal(?:len)?",
)
_AND = r"(?:\s?[,/&]\s?|,?\s(?:and|or|vs|versus|und|oder|bzw\.?|sowie|et|ou|y|e|o|en|of)\s)"
_FOR = any_of(
    "for | on | at | of | für | bei | von | pour | par | para | por | per | da | voor | bij"
)
_ALSO = rf"(?:(?:also|auch|aussi|también|anche|ook)\s)?(?:(?:the\s|a\s|de\s|den\s)?{_PRICED}\s)?"
_ENDS = (
    r"(?=\s?(?:$|[.?!;)\n]|,\s|(?:please|pls|thanks|bitte|s'il|svp|por favor|per favore|graag"
    r"|to see|so we|so i|as well|for comparison|depending|and what|, depending|then)\b))"
)
_THE = "".join(
    rf"(?<!\b{word}\s)" for word in ("the", "das", "den", "le", "el", "il", "het", "other")
)
"""'Quote only the 32, 2 pcs': a tube called by its size counts nothing."""
_LIST = late_pattern(
    rf"\b{_PRICED}\s(?:[^\W\d]+\s){{0,4}}?(?:{_FOR}\s)?(?<![\d.,/-]){_THE}(?P<first>{_N}){_UNIT}"
    rf"(?P<rest>(?:{_AND}{_ALSO}(?:{_FOR}\s)?{_N}{_UNIT}){{1,4}}){_ENDS}"
)
_SLASHED = late_pattern(
    rf"\b{_PRICED}\s?:?\s(?:[^\W\d]+\s){{0,3}}?(?P<first>\d{{1,2}})"
    r"(?P<rest>(?:\s?/\s?\d{1,2}){2,4})(?![\d./\"-]|\s?(?:mm|in(?:ch)?\b|x\s?\d))"
)
"""'Price at qty 1/3/5': three or more; two would be a fraction."""
_IF = any_of(
    "if | when | should | provided | wenn | falls | sofern | si | s'il | se | als | indien | mits"
)
_BARGAIN = any_of(
    r"price | prices | (?:price )?breaks? | discount\w* | cheap\w* | deal | saving | saves? | cost",
    r"\w*rabatt\w* | staffel\w* | günstig\w* | preis\w* | prix | remise | dégress\w+",
    r"intéressant\w*",
    r"précio | precios? | descuento | barat\w+ | prezz[io] | scont[oi] | conviene",
    r"prijs | prijzen",
    r"korting | goedkop\w+ | voordelig\w* | worth | budget | nachlass",
)
_ELSE = any_of(
    "otherwise | or else | else | if not | sonst | ansonsten | andernfalls | sinon | si no | de lo",
    "contrario | altrimenti | se no | anders | zo niet | zo nee",
)
_ONLY = r"(?:\s?[,:]?\s?(?:just|only|nur|seulement|solo|sólo|solamente|soltanto|alleen|slechts))?"
_HEDGED = late_pattern(
    rf"(?<![\d.,/-])\b(?P<first>{_N}){_UNIT}\s?,?\s{_IF}\s[^.?!\n]{{0,60}}?\b{_BARGAIN}\b"
    rf"[^.?!\n]{{0,40}}?[,;.]?\s{_ELSE}\b{_ONLY}\s?,?\s(?P<rest>{_N}){_UNIT}{_ENDS}"
)
_HEDGED_AHEAD = late_pattern(
    rf"\b{_IF}\s[^.?!\n]{{0,60}}?\b{_BARGAIN}\b[^.?!\n]{{0,40}}?\s(?P<first>{_N}){_UNIT}\s?[,;.]?\s"
    rf"{_ELSE}\b{_ONLY}\s?,?\s(?P<rest>{_N}){_UNIT}{_ENDS}"
)
_DEPENDS = late_pattern(
    rf"(?<![\d.,/-])\b(?P<first>{_N}){_UNIT}(?:,?\s(?:or|maybe|oder|ou|o|of)){{1,2}}\s(?:maybe\s)?"
    rf"(?P<rest>{_N}){_UNIT}\s?,?\s(?:depending|depends|je nach|selon|según|a seconda|afhankelijk)"
)
_TOOLS = any_of(
    r"mandrels? | (?:biege)?dorne? | mandrins? | mandril(?:es)? | mandrin[oi] | anim[ae]",
    "doorn(?:en|s)? | plugs? | of (?:them|these|those)",
)
_MAYBE = any_of(
    "possibly | maybe | perhaps | potentially | might be | could be | may be | even",
    r"eventuell | evtl\.? | vielleicht | möglicherweise | womöglich | peut-être | éventuellement",
    "voire | quizás? | tal vez | posiblemente | a lo mejor | forse | magari | eventualmente",
    "misschien | eventueel | mogelijk",
)
_OR_MAYBE = (
    rf"\s?[,(;–-]{{0,2}}\s?(?:(?:and|or|und|oder|et|ou|y|o|e|en|of)\s)?{_MAYBE}"
    r"\s(?:even\s|auch\s|à\s)?"
)
_MAYBE_MORE = late_pattern(
    rf"(?<![\d.,/-])\b(?P<first>{_N}){_OR_MAYBE}(?P<rest>{_N})\s?[),]{{0,2}}\s{_TOOLS}\b"
)
_TOOLS_MAYBE_MORE = late_pattern(
    rf"(?<![\d.,/-])\b(?P<first>{_N})\s{_TOOLS}{_OR_MAYBE}(?P<rest>{_N})\s?\)?"
    r"(?=\s?(?:[.;,:!?](?!\d)|$|\n|please\b))"
)
"""'2, possibly 3, mandrels', '2 mandrels, maybe 3'."""
_ONE_SPARE = late_pattern(
    rf"(?<![\d.,/-])\b(?P<first>\d{{1,2}}(?![.,/]?\d)|{'|'.join(_WORDS)}){_UNIT}\s?[,(;:-]{{1,2}}\s?"
    r"(?:(?:with|incl(?:uding|\.)?|davon|dont|inkl\.?|met|con)\s)?"
    r"(?P<spare>one|1|einer|eins|einen|ein|un|une|uno|una|één|een)\s(?:as\s|als\s|is\s|a\s|de\s|di\s|en\s)*"
    r"(?:spare|back-?up|reserve|ersatz|rechange|repuesto|recambio|scorta|riserva)(?![^\W_])"
)
"""'Qty 2, one spare': two of which one is a spare, or three?"""
_NUMBER = late_pattern(rf"(?<![\w.,/]){_N}(?![\w]|[.,/]\d)")
_FIGURES = re.compile(r"\d+")
_DEPENDS_BEHIND = late_pattern(
    rf"(?<![\d.,/-])\b(?P<first>{_N}){_UNIT}\s[^.?!\n]{{0,60}}?\b(?:depending on|je nach|selon"
    rf"|según"
    rf"|a seconda del?|afhankelijk van)\s(?:[^\W\d]+\s)?{_BARGAIN},?\s(?:also|auch|maybe|even|aussi"
    rf"|también|anche|ook|perhaps|vielleicht|or|oder)?\s?(?P<rest>{_N}){_UNIT}{_ENDS}"
)
_ITEM_BEFORE = late_pattern(
    r"\b(?:lines?|items?|pos(?:ition)?|zeilen?|lignes?|riga|righe|regels?|n|no|nr|rev|option"
    r"|tubes?|pipes?|jobs?|parts?|rohre?|auftrag|teile?|tub[oi]s?|tuyaux?|buis|buizen)[\s.#]{1,2}$"
)
_STARTS_WITH = late_pattern(
    r"\b(?:(?:ll|will|would) (?:order|take|buy|start with)|start with|begin with|bestellen"
    r"|nehmen|commencerons|empezaremos|cominciamo|beginnen)\s(?:just\s|only\s|mit\s|nur\s)?"
    rf"(?P<count>{_N})(?:\s(?:at first|first|for now|to start|zuerst|zunächst)|{_UNIT}\b)"
)
"""'We will order just one at first': the other counts are for the price break only."""
_LARGEST = 60


def with_choices(requests: Sequence[SizeRequest], text: str) -> list[SizeRequest]:
    """The one request with the counts between which ``text`` leaves a choice; several as they are.

    A count that is stated already and is none of these stays.
    """
    if len(requests) != 1:
        return list(requests)
    request = requests[0]
    text = text.casefold()
    counts = _choices(text) or _with_spare(text, request.quantity)
    start = _STARTS_WITH.search(text) if len(counts) > 1 else None
    if start is not None and _value(start["count"]) in counts and not request.quantity:
        return [request.model_copy(update={"quantity": _value(start["count"])})]
    if len(counts) < 2 or request.doubt_on("quantity"):
        return [request]
    if request.quantity is not None and request.quantity not in counts:
        return [request]
    doubt = Doubt(field="quantity", readings=tuple(map(str, counts)), why=_WHY)
    return [request.model_copy(update={"quantity": counts[0], "doubts": (*request.doubts, doubt)})]


def _choices(text: str) -> list[int]:
    """The counts named, the least first; empty where the sender has settled."""
    for pattern in (
        _HEDGED,
        _HEDGED_AHEAD,
        _MAYBE_MORE,
        _TOOLS_MAYBE_MORE,
        _DEPENDS,
        _DEPENDS_BEHIND,
        _LIST,
        _SLASHED,
    ):
        match = pattern.search(text)
        if match is None:
            continue
        if _ITEM_BEFORE.search(text, max(0, match.start("first") - 12), match.start("first")):
            continue  # "quote for line 3, two mandrels"
        others = _FIGURES if pattern is _SLASHED else _NUMBER
        found = {_value(match["first"]), *map(_value, others.findall(match["rest"]))}
        if len(found) > 1 and max(found) <= _LARGEST and 0 not in found:
            return sorted(found)
    return []


def _with_spare(text: str, stated: int | None) -> list[int]:
    """Both meanings of 'qty 2, one spare', where one of them was taken."""
    match = _ONE_SPARE.search(text)
    number = _value(match["first"]) if match is not None else 0
    return [number, number + 1] if number > 1 and stated == number + 1 else []


def _value(word: str) -> int:
    return int(word) if word.isdecimal() else w.COUNTS.get(word, 1)
