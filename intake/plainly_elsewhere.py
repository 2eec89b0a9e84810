"""Two errands that name a size as a request does, and are plainly none: tubes to be bent for the
sender, where no tooling is named, and a tool of ours to be put right under guarantee.

Both ask a price or say what is wanted, so that weights alone do not tell them from a request.
"""

from __future__ import annotations

import re

from . import words_errand
from .late import Late
from .late_pattern import late_pattern
from .parts_wanted import parts_wanted

_TOOL = Late(words_errand.TOOL)

_NO_TOOL = late_pattern(
    r"\b(?:not|\w*n['’]?t)(?: \w+){0,2} (?:want|need|looking|after|here)(?:ing)?"
    r"(?: (?:to (?:buy|get|order)|for))?(?: (?:any|the|your|a|an|new))*"
    r" (?:bending )?(?:tooling|tools?|mandrels?|dies?)\b"
    r"|\b(?:no|without) (?:bending )?(?:tooling|mandrels?)(?: (?:needed|wanted|required))?"
    r"(?=[,.;:!]| just\b| only\b)"
    r"|\b(?:kein(?:e|en)?|nicht (?:den|das)) (?:\w*werkzeuge?|\w*dorne?)\b(?! (?:dafür|für))"
    r"|\bpas (?:d['’]|de |l['’])(?:outillages?|mandrins?)(?: de cintrage)?\b"
    r"|\b(?:no|sin) (?:(?:necesitamos|queremos|quiero|necesito) )?(?:comprar )?"
    r"(?:el |un )?(?:utillajes?|herramental|mandril(?:es)?)(?: de curvado)?\b"
    r"|\bnon (?:ci )?(?:serve|servono|vogliamo|vorrei|voglio)(?: comprare)?"
    r" (?:l['’]|il |un |dei )?(?:attrezzatur\w+|utensili|mandrin[oi])\b"
    r"|\bgeen (?:buig)?(?:gereedschap|doorn(?:en)?)\b",
    re.IGNORECASE,
)
"""'Don't want to buy tooling, just want 6 pcs bent': named, and not asked for."""
_ONLY_BENT = Late(
    (
        r"\b(?:just|only)\b(?:[^.?!\n]|\.\d){0,40}\bbent\b",
        r"\b(?:nur|lediglich|einfach)\b(?:[^.?!\n]|\.\d){0,40}\b(?:gebogen\w*|biegen lassen)\b",
        r"\b(?:seulement|simplement|juste)\b(?:[^.?!\n]|\.\d){0,40}\bcintrée?s?\b",
        r"\b(?:solo|solamente)\b(?:[^.?!\n]|\.\d){0,40}\b(?:curvad|doblad|curvat|piegat)[oaie]s?\b",
        r"\balleen\b(?:[^.?!\n]|\.\d){0,40}\b(?:gebogen|laten buigen)\b",
    )
)
"""Heard only beside words that want no tooling."""
_WORK = (
    r"(?:(?:hand)?rails?|railings?|bars?|hoops?|roll ?bars?|(?:roll ?)?cages?|exhausts?|pipes?"
    r"|tub(?:es?|ing)|bends?|frames?|lengths?|pieces|pcs|parts|elbows?|legs?|brackets?|tail ?p"
    r"ipes?"
    r"|downpipes?|headers?|bumpers?|balustrades?)"
)
_ASKED_OF_US = (
    r"\b(?:can|could|would|will|do|are)(?: you| u| ya| y'all| ye)(?: guys| folks| lads)?"
    r"(?: able to| be able to| willing to| also| please| possibly)?"
)
_THE_TUBE = (
    r"(?:the |our |my |your |you the |you our |you )?(?:tub(?:e|es|ing)|pipes?|material|steel|"
    r"stock|lengths|rails)"
)
_BENT_FOR_US = (
    _ASKED_OF_US
    + r" bend\b(?:[^.?!\n]|\.\d){0,80}\b(?:for (?:us|me)|if (?:we|i) (?:bring|supply|send))\b",
    _ASKED_OF_US + r" bend (?:me|us|up)\b",
    _ASKED_OF_US
    + r" bend (?:my|our|these|those|some|several|a few)\b(?: [\w\"/.-]+){0,4}? "
    + _WORK
    + r"\b",
    r"\b(?:have|get|having|getting) (?:you|y'all|somebody|someone) (?:to )?bend\b"
    r"|\b(?:someone|somebody|anyone|a shop|a firm) (?:who|that|which) (?:can|could|will) bend\b",
    r"\b(?:needs?|wants?|like)\b(?:[^.?!\n]|\.\d){0,40}\b"
    + _WORK
    + r"\b(?:[^.?!\n]|\.\d){0,30}\bbent\b(?! (?:tube|on (?:our|my)|it))",
    r"\b(?:need|want|like|quote|price)\b(?:[^.?!\n]|\.\d){0,40}\bbends? (?:made|done)\b(?! (?:"
    r"on|with) "
    r"(?:our"
    r"|my))",
    r"\byou bend\b(?:[^.?!\n]|\.\d){0,20}\b(?:and )?(?:we|i) (?:collect|pick)",
    r"\b(?:könn(?:t|en|ten|tet)|würde[nt]|kann|macht) (?:ihr|sie)\b(?:[^.?!\n]|\.\d){0,60}\b(?"
    r":für (?:uns|"
    r"mich)|uns|mir)\b(?:[^.?!\n]|\.\d){0,60}\bbiegen\b|\b(?:biegt ihr|biegen sie) (?:auch |fü"
    r"r |uns )",
    r"\b(?:pouvez|pourriez)[- ]vous (?:nous |me )?cintrer\b(?:[^.?!\n]|\.\d){0,60}\bpour (?:no"
    r"us|moi)\b"
    r"|\b(?:pouvez|pourriez)[- ]vous (?:nous|me) cintrer\b|\bfaites[- ]vous du cintrage\b",
    r"\b(?:nos|me) (?:pueden?|podrían?|podéis) (?:curvar|doblar)\b"
    r"|\b(?:pueden?|podrían?|podéis) (?:curvar|doblar)(?:nos|me)\b",
    r"\b(?:potete|può|potreste|potrebbe) (?:piegar|curvar)(?:ci|mi)\b|\b(?:potete|può|potreste)"
    r" (?:piegare|curvare)\b(?:[^.?!\n]|\.\d){0,60}\bper (?:noi|me)\b",
    r"\b(?:kunnen jullie|kunt u|kun je)\b(?:[^.?!\n]|\.\d){0,60}\bvoor (?:ons|mij)\b(?:[^.?!\n"
    r"]|\.\d){0,60}\bbui"
    r"gen\b",
)
_PARTS = (
    r"(?:balust\w+|spindles?|(?:hand)?rails?|railings?|hoops?|(?:table |chair |bench )?legs|frames?"
    r"|arch(?:es)?|grab ?(?:bars?|rails?)|stands?|racks?|gates?|pergolas?|trellis\w*)"
)
_MADE_FOR_US = (
    r"\b"
    + _PARTS
    + r"\b,?(?:[^.?!\n]|\.\d){0,20}\b(?:made|built|fabricated|bent|formed)(?: up)? for (?:us|me)\b"
    r"(?:[^.?!\n]|\.\d){0,20}\b(?:out of|from|in)\b",
    r"\b(?:make|build|fabricate)(?: (?:for )?(?:me|us))(?: up)? (?:\w+ ){1,4}?"
    + _PARTS
    + r"\b(?:[^.?!\n]|\.\d){0,20}\b(?:out of|from)\b",
    r"\bfür (?:uns|mich) (?:an)?gefertigt\w* aus\b|\baus\b(?:[^.?!\n]|[.,]\d){0,40}\bfür (?:uns"
    r"|mich) (?:angefertigt|gefertigt|hergestellt)\b",
    r"\b(?:fabriqué|réalisé|façonné)e?s? pour (?:nous|moi) (?:en|à partir)\b",
    r"\b(?:fabricad|hech)[oa]s? para (?:nosotros|mí) (?:en|de|con)\b",
    r"\b(?:realizzat|fatt|costruit)[oiae] per (?:noi|me) (?:in|con|da)\b",
    r"\bvoor (?:ons|mij) (?:gemaakt|vervaardigd) (?:van|uit)\b",
)
"""'Forty balusters, made up for us out of 1 x .065 tube': the parts are wanted, and no tool."""
_PRICE_OF_BENDS = (
    r"\b(?:charge|cost|price|much|rate|pay|quote|owe)\b(?:[^.?!\n]|\.\d){0,24}\b(?:per|a|for e"
    r"ach|each|an?"
    r" ?each) (?:90 (?:degree )?)?bend\b(?! (?:die|test))",
    r"\b(?:was|wie ?viel) kostet\b(?:[^.?!\n]|\.\d){0,24}\b(?:eine biegung|ein bogen|pro (?:bo"
    r"gen|biegu"
    r"ng))\b",
    r"\b(?:prix|combien|tarif)\b(?:[^.?!\n]|\.\d){0,24}\b(?:par|le|du|chaque) (?:cintre|cintra"
    r"ge|coude)\b",
    r"\b(?:precio|cuesta|vale)\b(?:[^.?!\n]|\.\d){0,24}\b(?:cada|por) (?:curva|doblez)\b",
    r"\b(?:prezzo|costa)\b(?:[^.?!\n]|\.\d){0,24}\b(?:a|per|ogni) (?:piega|curva)\b",
    r"\b(?:kost|prijs)\b(?:[^.?!\n]|\.\d){0,24}\b(?:een|per) (?:bocht|buiging)\b",
)
_OUR_TUBE = (
    r"\b(?:we|i)(?:'d|'ll| would| will| can| could)? (?:\w+ )?(?:supply|deliver|bring|drop|pro"
    r"vide|"
    r"send|furnish|ship)(?: off| in)? "
    + _THE_TUBE
    + r"\b|\b(?:drop|bring|send)(?:ping)? "
    + _THE_TUBE
    + r" (?:off|in|over|to you)\b|\bfree[- ]issue\b|\b(?:our|customer'?s?) material\b",
    r"\b(?:rohr|material|rohre) (?:würden|werden|stellen|liefern|bringen|wird)\b|\b(?:stellen|"
    r"liefern"
    r"|bringen) wir\b|\bnous (?:fournissons|apportons|livrons) (?:le|les) tubes?\b",
    r"\b(?:nosotros )?(?:ponemos|llevamos|traemos|suministramos) (?:el|los) tubos?\b|\b(?:il t"
    r"ubo|i"
    r" tubi)\b(?:[^.?!\n]|\.\d){0,16}\b(?:portiamo|forniamo)\b|\bwij leveren de bui(?:s|zen)\b",
)
_BENT = Late((*_BENT_FOR_US, *_MADE_FOR_US))
_BENDS_PRICED = Late(_PRICE_OF_BENDS)
_TUBE_OF_OURS = Late(_OUR_TUBE)
_BENDS_THEMSELVES = Late(
    (
        r"\b(?:our|my) (?:own )?(?:bender|machine|die|dies|former|shop|tube bender)\b|\b(?:we|"
        r"i)(?:'ve|"
        r" have| got)? (?:a|an|the) (?:\w+ ){0,2}(?:bender|die|former)\b|\b(?:we|i)("
        r"?:'re|'m|"
        r" are| am)? (?:bend|bending)\b|\bto bend (?:it|them|this)? ?(?:ourselves|myself)\b",
        r"\b(?:wir|ich) biegen?\b|\bunsere? (?:\w+ )?(?:biege)?maschine\b|\bnotre cintreuse\b|"
        r"\bnous cintrons\b|\bnuestra (?:curvadora|dobladora)\b|\bla nostra curvatrice\b|\bonze "
        r"(?:buig)?machine\b",
    )
)
"""Who bends themselves want the tool, whatever they call it."""

_PUT_RIGHT = (
    r"(?:sort|fix|repair|replac|exchang|put right|look|handl|deal|cover|settl|resolv|taken? care|"
    r"want|expect|go|free)"
)
_UNDER_GUARANTEE = Late(
    (
        r"\b" + _PUT_RIGHT + r"\w*\b(?:[^.?!\n]|\.\d){0,40}(?<!not )\b(?:under|on|in) (?:the |"
        r"your |"
        r"its )?(?:guarantee|warranty)\b(?! or)",
        r"\b(?:guarantee|warranty) (?:claim|case|job|repair)\b|\bclaim (?:on|under) (?:the |yo"
        r"ur )?"
        r"(?:guarantee|warranty)\b",
        r"\b(?:replac|repair|fix|exchang)\w*\b(?:[^.?!\n]|\.\d){0,20}\b(?:free of charge|for free|"
        r"at (?:your|no) (?:cost|expense|charge))\b",
        r"\bput (?:it|this|that|them) right at (?:your|no) (?:cost|expense|charge)\b",
        r"\bnot another (?:one )?sold\b|\b(?:won'?t|not (?:going to|gonna)) (?:buy|pay for) (?"
        r":a new|"
        r"another)\b",
        r"\bgarantie(?:fall|anspruch)\b|\b(?:auf|unter|innerhalb der) garantie\b",
        r"\bkostenlos (?:ersetz|reparier|nachbesser|austausch)\w*|\b(?:sous|en) garantie\b",
        r"\b(?:en|bajo|con) garantía\b|\bin garanzia\b|\b(?:onder|in) (?:de )?garantie\b",
    )
)
_HARMED = Late(
    (
        r"\b(?:has|have|is|are|was|were|'s|came|come|comes|got|gone|keeps?) (?:already |all |j"
        r"ust |"
        r"completely |badly |so )?(?:scored|worn|loose|cracked|broke\w*|snapped|seized|pitted|"
        r"galled|"
        r"chipped|peel\w+|flak\w+|bent|rattl\w+|split|rust\w+|scratched|marked|failed|undone|l"
        r"ost)\b"
        r"|\b(?:rattles?|galls?|sticks|jams|fell apart|came (?:loose|apart|off)|lost its)\b",
        r"\b(?:riefen|verschlissen|gebrochen|gerissen|locker|lose|klemmt|zerkratzt|abgenutzt)\b|"
        r"\b(?:rayé|usé|cassé|fissuré|desserré|abîmé)e?s?\b|\b(?:rayad|gastad|rot|partid|suelt"
        r"|dañad)"
        r"[oa]s?\b|\b(?:rigat|usurat|rott|allentat|danneggiat)[oaie]\b|\b(?:krassen|versleten|"
        r"kapot|"
        r"gebroken|gescheurd)\b",
    )
)
_BUYS = Late(
    (
        r"\bquot(?:e|ation)\b|\bprices?\b|\bhow much\b|\bcosts?\b(?<!your cost)(?<!no cost)|"
        r"\border (?:a|one|another|two)\b|\bbill (?:me|us)\b|\b(?:out of|not (?:under|in)|past|no"
        r" longer (?:under|in)) (?:the )?(?:guarantee|warranty)\b",
        r"(?<!not )(?<!n't )\b(?:need|want|send|make|buy|after) (?:\w+ ){0,2}?(?:a new|another"
        r"|new)\b",
        r"\b(?:angebot|preis|devis|prix|precio|presupuesto|prezzo|preventivo|offerte|prijs)\b",
        r"\b(?:einen neuen|un nouveau|uno nuevo|uno nuovo|een nieuwe)\b",
    )
)


def plainly_elsewhere(text: str) -> str:
    """Why the words are no request, though they name a size and ask; '' where they may be one."""
    if _UNDER_GUARANTEE.search(text) and _HARMED.search(text) and not _BUYS.search(text):
        return "a complaint or a refund (a claim under guarantee)"
    if _TOOL.search(_NO_TOOL.sub(" ", text)) or _BENDS_THEMSELVES.search(text):
        return ""
    said = _BENT.search(text)
    if said is None and _NO_TOOL.search(text):
        said = _ONLY_BENT.search(text)
    if said is None and _TUBE_OF_OURS.search(text):
        said = _BENDS_PRICED.search(text)
    if said is None:
        parts = parts_wanted(text)
        return f'wants finished parts, and no tooling ("{parts}")' if parts else ""
    return f'wants tubes bent, and no tooling ("{" ".join(said.group().split())}")'
