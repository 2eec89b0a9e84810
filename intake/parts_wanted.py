"""Finished parts that we are to make: '40 bench frames, bent from 48 x 3 tube. Can you make and
deliver them?' Their tube has a size and a radius, and no tool is wanted."""

from __future__ import annotations

import re

from .late import Late

_IN = r"(?:[^.?!\n]|[.,]\d)"
_WANTED = (
    r"\b(?:need|needs|after|want|wants|require|looking for|look for|like|order|buy|supply|quote"
    r"|price|brauch\w+|benötig\w+|such\w+|möchten|hätten|faut|faudrait|cherch\w+|besoin|voudri\w+|souhait\w+"
    r"|necesit\w+|busc\w+|quer\w+|serv\w+|cerc\w+|occorr\w+|vorrem\w+|zoek\w+|nodig|willen|wil)\b"
)
_PARTS = (
    r"(?:(?:\w+-?)?(?:frames?|benches|chairs?|tables?|stools?|racks?|rails|railings|handrails|hoops"
    r"|arches|gates|stands|legs|goals?|trolleys|barriers|balustrades|ladders|bumpers|brackets|shelters"
    r"|rahmen|gestelle?|geländer|bügel|tore|stühle|bänke|ständer|beine|leitern"
    r"|cadres|châssis|rampes|arceaux|portails|chaises|bancs|pieds|supports|barrières|échelles"
    r"|marcos|bastidores|barandillas|sillas|bancos|mesas|patas|soportes|arcos|portones|escaleras"
    r"|telai|ringhiere|corrimano|sedie|panche|panchine|tavoli|gambe|archi|cancelli|supporti|scale"
    r"|stoelen|banken|tafels|leuningen|hekken|beugels|poten|rekken|ladders))\b"
)
_NO_PURPOSE = r"(?:(?!for\b|of\b|für\b|pour\b|para\b|per\b|voor\b|di\b|de\b)[\w'’-]+ ){0,3}"
"""'2 for handrails' counts no handrails."""
_PARTS_WANTED = Late(
    (
        _WANTED + _IN + r"{0,40}\b\d{1,4} " + _NO_PURPOSE + _PARTS,
        r"\b(?:need|needs|want|looking for|after|like|order|buy)\b"
        + _IN
        + r"{0,24}?\b(?:an?|one|two|some|\d{1,3}) (?:custom |specially )?(?:bent|curved|rolled) "
        r"(?:\w+ ){0,2}?(?:rods?|(?:hand)?rails?|bars?|frames?|hoops?|arch(?:es)?|rings?)\b",
    )
)
_ASKED_TO_MAKE = Late(
    (
        r"\b(?:can|could|would|will|do)(?: you| u| ya| y'all)(?: guys| folks| lads)?"
        r"(?: also| please)? (?:make|build|fabricate|manufacture|produce|supply)\b"
        r"(?:,? (?:and|or|&) \w+)?"
        r" (?:them|these|those|it|all|such|bent parts|parts)\b",
        r"\b(?:someone|somebody|anyone|a shop|a firm|a company) (?:who (?:can|could)|to|that can) "
        r"(?:make|build|fabricate|manufacture|produce|supply)\b",
        r"\b(?:do|told|said|says|hear|heard|understand|read|if|that) (?:that )?you"
        r"(?: guys| people| folks| lot)?(?: don['’]?t| do not| can| could| also)* bend\b"
        r"(?! (?:it|this|that|without|with|a mandrel|on))",
        r"\bdo you(?: guys| people| folks)? (?:do|offer) (?:tube |pipe )?"
        r"(?:bending|bends|rolling)\b",
        r"\bknow (?:of )?(?:someone|somebody|anyone|anybody|a shop)\b",
        r"\b(?:biegen sie|biegt ihr|macht ihr|machen sie) (?:auch )?(?:rohre?|biegungen)\b",
        r"\b(?:können|könnt|könnten|könntet) (?:sie|ihr) (?:mir |uns )?"
        r"(?:so etwas|die|das|diese|sie|solche)\b"
        + _IN
        + r"{0,30}\b(?:fertigen|herstellen|bauen|machen|produzieren|anfertigen)\b",
        r"\b(?:pouvez|pourriez)[- ]vous (?:nous )?(?:les|le|la|en) "
        r"(?:fabriquer|réaliser|produire|faire)\b",
        r"\b(?:los|las|lo|la) (?:pueden?|podrían?) (?:fabricar|hacer|producir)\b"
        r"|\b(?:pueden?|podrían?) (?:fabricar|hacer|producir)(?:nos)?(?:los|las|lo|la)\b",
        r"\b(?:potete|può|potreste|potrebbe) "
        r"(?:produr|fabbricar|realizzar|far|costruir)(?:ce)?l[ieoa]\b",
        r"\b(?:kunnen jullie|kunt u|kan u|kun je) (?:die|deze|ze|dat|zoiets)\b"
        + _IN
        + r"{0,30}\b(?:maken|bouwen|produceren|fabriceren|vervaardigen)\b",
    )
)
_TO_MAKE_OURSELVES = Late(
    (
        r"\bto (?:bend|make|build|produce|form|fabricate|run)\b|\b(?:biegen|fertigen|bauen|cintrer"
        r"|fabriquer|doblar|curvar|fabricar|piegare|curvare|produrre|buigen|maken)\b",
    )
)
"""'We need to bend 40 frames': such customers want the tool."""
_END = re.compile(r"[?!\n]|\.(?!\d)")


def parts_wanted(text: str) -> str:
    """The words by which so many finished parts are wanted of us, or ''."""
    wanted = _PARTS_WANTED.search(text)
    if wanted is None or _ASKED_TO_MAKE.search(text) is None:
        return ""
    end = _END.search(text, wanted.end())
    said = text[wanted.start() : end.start() if end is not None else len(text)]
    if _TO_MAKE_OURSELVES.search(said):
        return ""
    return " ".join(wanted.group().split())
