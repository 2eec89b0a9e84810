"""A size in a message none of whose sentences asks for tooling, and whose own sentence tells what
became of a mandrel or asks to be told something: it may not be asked for, and is doubted.

'Have you shipped the 4 mandrels for 3/4 x .049 on 2-1/4 yet?', 'Mandrel 50.8 x 1.65 R 76 came with
a chip on the nose', 'is 38 x 1.5 on R 57 a tight bend?'. Plain requests often ask in no word
either ('38 x 1.5, R 57, 304, one piece'); those tell nothing of that kind.
"""

from __future__ import annotations

from collections.abc import Sequence

from ..rules.request import SizeRequest
from . import words_asking, words_errand
from .asking import Sentence, act
from .errand import sentences
from .late import Late
from .late_pattern import late_pattern
from .reading.requests import wholly_doubted
from .reading.text.patterns import whole_words

WHY = "nothing asks for it in so many words, and what is said of it may be news or a question"

_ASKS = 3.0
"""So much a sentence weighs that asks for a piece, a price, or whether it can be done."""
_FEW = (
    r"\b(?:just|only|still|required|nur|seulement|sólo|solo|alleen)\b[^.?!\n]{0,12}\b(?:1|one"
    r"|two|uno|una|eine[nr]?|un)\b",
    r"^\W*required\b|\b(?:sería|serían|wäre|wären|sarebbe|ce serait|het zou)\b",
)
_FIGURES = Late([words_errand.TUBE_FIGURES])
_TOOL = Late(words_errand.TOOL)
_COUNTS = Late((*words_asking.COUNTS_TOOLS, *_FEW))
_MAKES = late_pattern(
    r"\b(?:mak(?:e|ing)|sell|stock|supply|build|quote|price|need|mach(?:t|en)|fertig\w*|bau(?:t|en)"
    r"|liefer\w*|verkauf\w*|fabri\w+|fait\w*|vend\w*|hac[eé]\w*|fate|costrui\w+|maken|maakt"
    r"|lever\w*|verko\w+)\b|\$"
)
"""'Do you make mandrels for rectangular tube, too?' may ask for one."""
_KNOWN = late_pattern(
    r"\b(?:the|these|those|your|our|die|den|diese|ihre|les|ces|vos|los|estos|sus|i|gli|questi|le"
    r"|de|deze)"
    r" (?:\w{1,5})?$"
)
_HAPPENED = whole_words(
    r"came | arrived | received | (?<!be )delivered(?! by) | shipped | returned? | sent | lost "
    r"| moved "
    r"| bought",
    r"(?:turned|showed) up | in service | on your (?:site|website|page) | feedback | update",
    r"angekommen | eingetroffen | erhalten | geliefert(?! werden) | verschickt | gekommen "
    r"| bekommen "
    r"| verloren",
    r"gekauft | reçue?s? | arrivée?s? | (?<!être )livrée?s? | expédiée?s? | perdue?s? | achetée?s?",
    r"llegó | llegaron | llegad[oa]s? | recibid[oa]s? | (?<!ser )entregad[oa]s? | enviad[oa]s? "
    r"| perdid[oa]s?",
    r"comprad[oa]s? | arrivat[oaie] | ricevut[oaie] | (?<!essere )consegnat[oaie] "
    r"| spedit[oaie]",
    r"pers[oaie]",
    r"comprat[oaie] | aangekomen | ontvangen | geleverd(?! worden) | binnengekomen | verzonden "
    r"| verloren",
    r"gekocht",
)
_WORKS = whole_words(
    r"(?:is|are) (?:\w+ )?(?:bending|running|working|holding) | leaves | (?:works|runs) (?:well"
    r"|fine"
    r"|great|perfectly) | comes? out",
    r"läuft | funktioniert | fonctionne\w* | marche\w* | funciona\w* | funziona\w* | lavora "
    r"| loopt",
    r"werkt",
)
_NO_WISH = late_pattern(
    r"\b(?:nothing|not|none|no(?: \w+){0,2}|nichts|nicht|kein\w*|rien|pas|nada|niente|nulla"
    r"|niets|niet|geen)"
    r" (?:\w+ )?(?:needed|required|wanted|nötig|benötigt|nécessaire|necesari[oa]|necessari[oa]"
    r"|nodig)\b"
    r"|\b(?:when|whether|if|where|where from|rule) (?:\w+ ){0,3}(?:mandrels?|one) (?:is|are"
    r"|becomes?|gets?)"
    r" (?:\w+ )?(?:needed|required|necessary)\b"
    r"|\bbuy(?:ing)? (?:back|in) (?:used|old|second[- ]?hand)\b|\bbuy (?:used|old"
    r"|second[- ]?hand)\b"
)
_FLAW = whole_words(
    r"chip(?:s|ped)? | scratch(?:es|ed)? | dent(?:s|ed)? | burrs? | nicks? | gouge[sd]? | rust\w*",
    r"macken? | kratzer | dellen? | grat | rost | coups? | rayures? | rayée?s? | bavures? "
    r"| rouille",
    r"golpes? | arañazos? | rasguños? | rayad[oa] | rebabas? | óxido | graffi[oi]? | ammaccat\w+",
    r"bave? | ruggine | kras(?:sen)? | deuk(?:en)? | bra(?:am|men) | roest",
)
_AMENDS = whole_words(
    r"discount | rebate | reduction | (?:something|money|bit|\d+ ?%) off | compensation "
    r"| allowance",
    r"(?:preis)?nachlass | rabatt | entschädigung | minderung | remise | geste commercial | rabais",
    r"descuento | rebaja | compensación | sconto | riduzione | korting | vergoeding | compensatie",
)


def with_unasked_doubted(requests: Sequence[SizeRequest], text: str) -> tuple[SizeRequest, ...]:
    """The requests, all in doubt where the text only tells or asks about its sizes."""
    return (
        tuple(wholly_doubted(one, WHY) for one in requests) if _unasked(text) else tuple(requests)
    )


def _unasked(text: str) -> bool:
    spoken = sentences(text)
    names_tool = _TOOL.search("\n".join(spoken)) is not None
    if _FLAW.search(text.casefold()) and any(_wants_amends(said) for said in spoken):
        return not any(
            _asks(said, names_tool=names_tool) for said in spoken if not _wants_amends(said)
        )
    if any(_asks(said, names_tool=names_tool) or _counts(said) for said in spoken):
        return False
    sized = [said for said in spoken if _FIGURES.search(said)]
    return bool(sized) and all(map(_only_tells, sized))


def _asks(said: str, *, names_tool: bool) -> bool:
    plain = _NO_WISH.sub(" ", said.casefold())
    heard = Sentence(plain, _TOOL.search(plain) is not None, touched=False, spoilt=False)
    return act(heard, 1, about_tool=names_tool)[0] >= _ASKS


def _counts(said: str) -> bool:
    """Whether mandrels are counted that are not known already: 'the 4 mandrels' are."""
    words = said.casefold()
    return not any(p.search(words) for p in (_HAPPENED, _WORKS)) and any(
        not _KNOWN.search(words, 0, found.start() + 4) for found in _COUNTS.finditer(words)
    )


def _wants_amends(said: str) -> bool:
    return _AMENDS.search(said.casefold()) is not None and not _FIGURES.search(said)


def _only_tells(said: str) -> bool:
    words = said.casefold()
    asks_to_know = "?" in words and not _MAKES.search(words)
    return asks_to_know or any(p.search(words) for p in (_HAPPENED, _WORKS))
