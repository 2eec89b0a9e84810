"""A mandrel sent back for its money: it names a size and asks for nothing new.

'I am sending back the mandrel for the 38 x 1.5 tube, please refund, I do not need a replacement.'
"""

from __future__ import annotations

from .late import Late
from .said_words import said_words

_RETURNED = Late(
    (
        r"\b(?:send|sending|sent|ship|shipping|shipped|goes|going|coming|brought)\b[^.?!\n]{0,60}"
        r"\bback\b|\breturn(?:ing|ed|s)?\b(?! bends?)",
        r"\b(?:senden|schicken|sende|schicke|geht|geben|gebe)\b(?:[^.?!\n]|[.,]\d){0,80}\bzurück\b"
        r"|\bzurück(?:gesandt|geschickt|gesendet|senden|schicken)\b|\brücksendung\b",
        r"\b(?:retourn|renvoy)\w+\b|\b(?:devolv|devuelv)\w+\b|\bdevolución\b",
        r"\b(?:restitu|rend(?:o|iamo)|rispedi)\w*\b",
        r"\bterug(?:sturen|gestuurd|zenden|gezonden)\b|\bstu(?:ren|ur)\b(?:[^.?!\n]|[.,]\d){0,80}"
        r"\bterug\b",
    )
)
_MONEY = Late(
    (
        r"\brefund\w*\b|\bmoney back\b|\bcredit (?:note|us|me|our|my|the)\b|\b(?:a|the) credit\b",
        r"\b(?:rück)?erstatt\w+\b|\bgutschrift\b|\bgutschreiben\b|\brembours\w+\b|\bavoir\b",
        r"\breembols\w+\b|\babono\b|\brimbors\w+\b|\bnota di credito\b",
        r"\bterug(?:stort|storten|betal\w+)\b|\bcrediteren\b|\bcreditnota\b",
    )
)
_OTHER = (
    r"(?:replacement|another|new one|new mandrel|ersatz\w*|neuen?|anderen?|autre|remplac\w+|otro"
    r"|reemplazo|altro|sostitu\w+|nieuwe|andere|vervang\w+)"
)
_NONE_ANEW = Late(
    (
        r"(?:\b(?:not|no need|without|no|kein\w*|nicht|pas|non|geen|niet)|n['’]t)\b"
        r"[^.?!\n]{0,40}?\b" + _OTHER + r"\b(?: (?:needed|required|necessary|one|mandrel))*",
        r"\b" + _OTHER + r"\b[^.?!\n]{0,30}?\b(?:not|nicht|niet|pas|non)\b(?: nodig| needed)?",
    )
)
_ANEW = Late(
    (
        r"\b" + _OTHER + r"\b|\binstead\b|\bswap\b|\bexchange\b|\btausch\w*\b|\béchang\w+\b"
        r"|\bcambi\w+\b|\bruil\w*\b",
        r"\bquot\w+\b|\bprice\b|\border (?:a|one|the)\b|\bangebot\b|\bdevis\b|\bpresupuesto\b"
        r"|\bcotiz\w+\b|\bpreventivo\b|\boffert[ea]\b",
        r"\b(?:need|want|make)\b(?! (?:a |the |my |our )?(?:refund|money|credit))",
        r"\b(?:brauch|benötig|besoin|necesit|serv[eo]|nodig)\w*\b",
    )
)


def is_sent_back(text: str) -> str:
    """Why the words only send a mandrel back for its money; '' where they do not, or may ask for
    another in its place."""
    returned = _RETURNED.search(text)
    if returned is None or not _MONEY.search(text):
        return ""
    rest = text
    while (none := _NONE_ANEW.search(rest)) is not None:
        rest = f"{rest[: none.start()]} . {rest[none.end() :]}"
    if _ANEW.search(rest):
        return ""
    return f'a complaint or a refund ("{said_words(returned)}")'
