"""Mandrels that were had before: 'the two mandrels you made us last year are still going strong',
'die zwei Dorne vom letzten Jahr'. They count none of those that are wanted now.
"""

from __future__ import annotations

from ...late_pattern import late_pattern
from ..text.patterns import any_of

_REACH = 60
"""Characters of the clause that are looked at on either side."""
_THE = late_pattern(
    r"(?<!\w)(?:the|those|these|both|your|die|eure|ihre|les|vos|l[oa]s|vuestros|i|gli|vostri|de"
    r"|jullie)\s(?:(?:first|last|old|other|previous|earlier|ersten|letzten|alten|otros|vecchi"
    r"|oude|vorige)\s)?$"
)
_CLAUSE = late_pattern(r"[^.;:!?\n]{0,60}$")
_WANTS = late_pattern(
    r"(?<!\w)"
    + any_of(
        "need | needs | want | like | quote | order | price | replace | repeat | remake | again",
        "brauch\\w* | benötig\\w* | möcht\\w* | bestell\\w* | anbieten | nochmal\\w*",
        "faut | besoin | voudr\\w+ | command\\w+ | necesit\\w+ | quer\\w+ | cotiz\\w+",
        "serv\\w+ | vorr\\w+ | ordin\\w+ | nodig | graag | bestel\\w*",
    )
    + r"(?!\w)"
)
_AGAIN = late_pattern(
    r"[^.;!?\n]{0,60}(?<!\w)(?:again|once more|nochmals?|noch mal|noch einmal|encore une fois"
    r"|de nuevo|otra vez|di nuovo|opnieuw|nog een keer)(?!\w)"
)
_MADE = (
    r"(?:made|did|built|sold|sent|supplied|delivered|shipped|turned|machined|provided|ground|gave"
    r"|bought|got|had|purchased|picked up)"
)
_AGO = (
    r"(?:last|earlier|previously|years? ago|(?:in |back in )?(?:spring|summer|autumn|fall|winter"
    r"|january|february|march|april|may|june|july|august|september|october|november|december"
    r"|20[12]\d)|a (?:while|year|few)|before)"
)
_HAD = late_pattern(
    r",?\s(?:"
    + any_of(
        rf"(?:that |which )?(?:you|we|i|they)(?: guys| folks| lot)?(?:'ve| have|'d| had)? {_MADE}",
        rf"(?:made|built|supplied|bought|delivered) (?:by|from|for|to|in|at)?\b"
        rf"[^.,;\n]{{0,24}}{_AGO}",
        rf"(?:from|of) (?:you(?: guys)?,? )?{_AGO}",
        r"(?:are|have been|were|keep) (?:still |all )?(?:going|running|working|doing|holding"
        r"|great|good|fine|perfect|brilliant|spot on|excellent|happy|performing|wearing|lasting)",
        r"vom (?:letzten|vorigen) | aus (?:dem )?(?:letzten|vorigen)",
        r"von (?:damals|früher|20\d\d)",
        r"(?:die )?(?:sie|ihr|wir) (?:uns |von (?:ihnen|euch) |letztes |voriges |im )",
        r"(?:laufen|funktionieren|halten|arbeiten) (?:noch|immer|sehr|gut|bestens|prima|nach)",
        r"de l'(?:an|année) (?:dernier|dernière|passée?) | que vous (?:nous |m'|m')?(?:avez|aviez)",
        r"(?:tournent|marchent|fonctionnent|tiennent) (?:bien|encore|toujours|très|parfaitement)",
        r"del año pasado | que (?:nos|me) (?:hicieron|hicisteis|vendieron|mandaron|enviaron)",
        r"(?:van|funcionan|siguen|trabajan) (?:bien|muy|perfect\w+|todavía|aún)",
        r"dell'anno scorso | che (?:ci|mi) avete | (?:vanno|funzionano|lavorano) (?:bene|ancora)",
        r"van (?:vorig|verleden) jaar | die (?:jullie|u|we) (?:ons |voor ons |vorig )",
        r"(?:doen het|werken|draaien|lopen) (?:nog|goed|prima|steeds|uitstekend)",
    )
    + r")"
)


def were_had_before(text: str, start: int, end: int) -> bool:
    """Whether the mandrels that ``text`` in small letters counts at that place are none of now."""
    ahead = text[max(0, start - _REACH) : start]
    article = _THE.search(ahead)
    if article is None or _HAD.match(text, end, end + _REACH + _REACH) is None:
        return False
    clause = _CLAUSE.search(ahead[: article.start()])
    wanted = clause is not None and _WANTS.search(clause[0]) is not None
    return not wanted and _AGAIN.match(text, end) is None
